package report

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

const slipBook = `rulebook "Tried" {
  edition = "1"
}
chapter "1" {
  title = "Papers"
  clause "1.1" {
    title    = "Weighed"
    concern  = "eligibility"
    demand   = "recorded(car.chassis)"
    evidence = ["scale slip"]
    rectify  = "Weigh it."
  }
}
`

const slipCar = `car "Tried" {
  chassis = "TS-0417"
  evidence "scale slip" {
    valid_until = "2027-03-31"
  }
}
`

// precheckOf holds a sheet with more blocks against the book of the scale slip.
func precheckOf(t *testing.T, more, day string, all bool) *Precheck {
	t.Helper()
	book, faults := rules.Load(fstest.MapFS{"b.hcl": {Data: []byte(slipBook)}}, "b.hcl", "b.hcl", vehicle.BuiltIn())
	require.Empty(t, faults)
	program, faults := engine.Compile(book)
	require.Empty(t, faults)
	sheet, faults := vehicle.Load(fstest.MapFS{"car.hcl": {Data: []byte(slipCar + more)}}, "car.hcl", "car.hcl", book.Vocabulary, vehicle.Options{})
	require.Empty(t, faults)
	days, fault := quantity.ParseDays(day)
	require.Nil(t, fault)
	for _, n := range sheet.Logbook.Incidents {
		n.Hit, n.NotOnSheet[0] = n.Hit+hostileText, n.NotOnSheet[0]+hostileText // a file with it is refused
	}
	result := program.Check(program.Car(sheet), engine.Request{Day: days.From, All: all})
	return &Precheck{Day: days.From, All: all, Results: []*engine.Result{result, result}}
}

// hostileText would clear a screen and turn the direction of writing.
const hostileText = "\x1b[2J\u202e\x9b"

func onTerminal(t *testing.T, run *Precheck) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, WriteTerminal(screenOf(&out, 300), run))
	return out.String()
}

func TestOutdatedPaperOnTheTerminal(t *testing.T) {
	text := onTerminal(t, precheckOf(t, "", "2027-04-01", false))
	require.Contains(t, text, "- scale slip: ended 2027-03-31")
	require.Contains(t, text, "renew it   scale slip: have a new one made out")
	require.NotContains(t, text, "Weigh it.", "nothing is wrong with the car")
	require.NotContains(t, text, "the sheet names no")
	require.NotContains(t, onTerminal(t, precheckOf(t, "", "2027-03-31", false)), "scale slip")
}

const clearedNote = `logbook_note "N1" {
  day        = "2027-01-05"
  text       = "Bent arm."
  cleared_on = "2027-02-01"
  cleared_by = "R. Fennimore"
}
`

const bank = `incident "bank" {
  day    = "2027-01-06"
  hit    = "A bank."
  loaded = ["helmet driver"]
}
`

func TestLogBookIsSafeAndCarriesTheCautionOnce(t *testing.T) {
	run := precheckOf(t, clearedNote+bank, "2027-01-10", false)
	text := onTerminal(t, run)
	requireHarmless(t, text)
	require.Equal(t, 1, strings.Count(text, DateCaution), "once, of two results")
	require.Equal(t, 2, strings.Count(text, "LOG BOOK, and what else travels with the car"))
	require.Contains(t, text, "helmet driver")

	var out bytes.Buffer
	require.NoError(t, WriteJSON(screenOf(&out, 80), run))
	requireHarmless(t, out.String())
	var read struct {
		Dates  string `json:"date_caution"`
		Checks []struct {
			Papers   []map[string]any `json:"papers"`
			Chapters []struct{ Number, Title string }
		}
	}
	require.NoError(t, json.Unmarshal(out.Bytes(), &read))
	require.Equal(t, DateCaution, read.Dates)
	require.Equal(t, "2027-03-31", read.Checks[0].Papers[0]["valid_until"])
	require.Equal(t, struct{ Number, Title string }{"", "Log book"}, read.Checks[0].Chapters[1])
}

func TestClosedNotesAreShownWithAll(t *testing.T) {
	require.NotContains(t, onTerminal(t, precheckOf(t, clearedNote, "2027-02-01", false)), "LOG BOOK")
	require.Contains(t, onTerminal(t, precheckOf(t, clearedNote, "2027-02-01", true)), "cleared on 2027-02-01 by R. Fennimore")
}

// TestWorkingTellsPapersWithTheirSubject holds that papers of the first subject do not shift
// what is told of the second.
func TestWorkingTellsPapersWithTheirSubject(t *testing.T) {
	text := strings.Replace(slipBook, "demand   = \"recorded(car.chassis)\"", "across = \"tube in cage.tubes\"\n    demand = \"tube.outside >= 45*mm\"", 1)
	book, faults := rules.Load(fstest.MapFS{"b.hcl": {Data: []byte(text)}}, "b.hcl", "b.hcl", vehicle.BuiltIn())
	require.Empty(t, faults)
	program, faults := engine.Compile(book)
	require.Empty(t, faults)
	car := "car \"Tried\" {\n}\ntube \"1\" {\n  outside = \"45 mm\"\n}\ntube \"2\" {\n  outside = \"40 mm\"\n}\n"
	sheet, faults := vehicle.Load(fstest.MapFS{"car.hcl": {Data: []byte(car)}}, "car.hcl", "car.hcl", book.Vocabulary, vehicle.Options{})
	require.Empty(t, faults)
	working := program.Working(program.Car(sheet), book.Chapters[0].Clauses[0], engine.Request{})
	var out bytes.Buffer
	require.NoError(t, WriteWorking(screenOf(&out, 200), Head{Book: book, Sheet: sheet}, working))
	require.Contains(t, out.String(), "tube 1: meets\n")
	require.Contains(t, out.String(), "tube 2: gap\n")
	require.Equal(t, 2, strings.Count(out.String(), "  papers: gap\n  - the sheet names no scale slip"))
}
