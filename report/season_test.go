package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

const workedBook = `rulebook "Kettleford Stage Car Rules" {
  edition  = "2027"
  in_force = "2027-01-01"
  until    = "2027-12-31"
}
chapter "7" {
  title = "Dates"
  clause "7.1" {
    title   = "Belts, five years"
    concern = "safety"
    page    = 41
    across  = ["harness in harnesses", "strap in harness.straps"]
    demand  = "on <= years_after(strap.made, 5)"
  }
  clause "7.2" {
    title   = "Seats on a list of the year"
    concern = "safety"
    across  = "seat in seats"
    demand  = "seat.made >= date('2022-01-01') and on <= date('2027-06-30')"
  }
  clause "7.3" {
    title   = "Winter tyres"
    concern = "safety"
    from    = "2027-11-01"
    demand  = "car.weighed_mass >= 900*kg"
  }
}
`

const workedSheet = `car "Tern 2" { weighed_mass = "950 kg" }
harness "driver" {
  strap "left shoulder" { made = "2022-03-01" }
  strap "right shoulder" { made = "2022-03-01" }
  strap "left lap" { made = "2022-03-01" }
}
seat "driver" { made = "2023-05-04" }
`

// workedSeason is a season that has been worked, of a book and sheets without fault.
func workedSeason(t *testing.T, season, day string, sheets ...string) *Season {
	t.Helper()
	book, found := rules.Load(fstest.MapFS{"club.hcl": {Data: []byte(workedBook)}}, "club.hcl", "club.hcl", vehicle.BuiltIn())
	require.Empty(t, found)
	program, found := engine.Compile(book)
	require.Empty(t, found)
	events, found := vehicle.LoadSeason(fstest.MapFS{"season.hcl": {Data: []byte(season)}}, "season.hcl", "season.hcl", nil, book.Vocabulary)
	require.Empty(t, found)
	var cars []engine.CarEntries
	for _, text := range sheets {
		sheet, found := vehicle.Load(fstest.MapFS{"tern.hcl": {Data: []byte(text)}}, "tern.hcl", "tern.hcl", book.Vocabulary, vehicle.Options{})
		require.Empty(t, found)
		car := engine.CarEntries{Sheet: sheet}
		for _, event := range events.Events {
			entered := program.Car(sheet.WithCrew(events, event.Crew))
			car.Entries = append(car.Entries, engine.Entry{Event: event, Editions: engine.NewEditions(engine.Edition{Program: program, Car: entered})})
		}
		cars = append(cars, car)
	}
	on := dayOf(t, day)
	return &Season{Head: SeasonHead{Version: "0.4"}, Day: on, Result: engine.WorkSeason(events, cars, engine.Request{Day: on})}
}

func seasonText(t *testing.T, s *Season, width int) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, WriteSeason(&Screen{Writer: &out, Width: width, Paint: NewPaint(false)}, s))
	for _, line := range strings.Split(out.String(), "\n") {
		require.LessOrEqual(t, Width(line), width, line)
	}
	return out.String()
}

func TestSeasonOfManyEvents(t *testing.T) {
	s := workedSeason(t, eventsIn(60, dayOf(t, "2027-02-20"), 6), "2027-03-08", workedSheet)
	text := seasonText(t, s, 80)
	require.Contains(t, text, "  Next      Stages number 4, inspection 2027-03-10\n")
	require.Contains(t, text, "\n2  Stages number 2 (over)\n")

	// What was over before the day of the check misses the next event.
	require.Contains(t, text, "4 Stages number 4, inspection 2027-03-10\n   replace  3 straps of harness driver (Tern 2)\n     last day  held to 2027-03-01\n")
	require.Contains(t, text, "     when      order by 2027-03-10\n     next one  made 2023-02-10 or later carries the rest of the season\n")

	// The columns stand in blocks, each under the numbers of its events.
	require.Contains(t, text, "\n  1  2  3  4  5  6  7  8  9 10 11 12 13 14 15 16 17\n")
	require.Contains(t, text, "\n 52 53 54 55 56 57 58 59 60\n")
	require.Contains(t, text, "  +  +  G  G  G")
	require.Contains(t, text, "7.3 Winter tyres")

	// Of an edition that is not in force any more it is said.
	require.Equal(t, strings.Count(text, "days      inspection 2028"), strings.Count(text, "That edition is in force from 2027-01-01 to 2027-12-31"))

	narrow := seasonText(t, s, 40)
	require.Contains(t, narrow, "\n  1  2  3  4\n")
	require.Contains(t, narrow, "7.1 Belts, five")
}

func TestSeasonWithoutADate(t *testing.T) {
	s := workedSeason(t, eventsIn(2, dayOf(t, "2027-05-01"), 10), "2027-06-05", `car "Tern 2" { weighed_mass = "950 kg" }`+"\nnot_fitted = [\"harness\", \"seat\"]\n")
	text := seasonText(t, s, 80)
	for _, said := range []string{
		"0 things to replace or service", "no event of the season is still to come", "nothing runs out before the last day of",
		"Nothing: every clause comes to the same", "No clause reads a date that is written down.",
	} {
		require.Contains(t, text, said)
	}
}

// A lead time that is longer than what is left is said to be past; what other date would do
// is not said of a part that none would help.
func TestSeasonOrderedTooLate(t *testing.T) {
	season := strings.Replace(eventsIn(1, dayOf(t, "2027-03-20"), 1), "\n", "\n  lead = \"21 days\"\n", 1)
	s := workedSeason(t, season, "2027-03-08", workedSheet)
	s.Result.Renew[0].HasEarliest = false
	text := strings.Join(strings.Fields(seasonText(t, s, 80)), " ")
	require.Contains(t, text, "when order by 2027-02-27, 21 days before the inspection; that day is past next one")
	require.Contains(t, text, "no date is seen that alone would carry the rest of the season")
}

// steering is a text that steers a terminal, if it is let.
const steering = "\x1b[31m\u202eneb\r\nNEXT\u0007"

func (s *Season) steer() {
	s.Result.Season.Name = steering
	for _, event := range s.Result.Season.Events {
		event.Name, event.Place, event.Class, event.Crew = steering, steering, steering, []string{steering}
	}
	for _, car := range s.Result.Cars {
		car.Sheet.Name, car.Sheet.Car().Label = steering, steering
		for _, e := range car.Events {
			e.Book.Name, e.Book.Edition, e.Book.Standing = steering, steering, steering
			for _, chapter := range e.Book.Chapters {
				for _, clause := range chapter.Clauses {
					clause.Number, clause.Title, clause.Page = steering, steering, steering
				}
			}
		}
		for _, change := range car.Changes {
			change.Rulebook, change.Subject = steering, steering
		}
		for _, d := range car.Dated {
			d.Name, d.Limit = steering, steering
		}
	}
	s.Written = []string{steering}
}

func TestSeasonOfHostileTexts(t *testing.T) {
	s := workedSeason(t, eventsIn(3, dayOf(t, "2027-02-20"), 90), "2027-01-05", workedSheet)
	s.steer()
	text := seasonText(t, s, 80)
	require.NotContains(t, strings.ReplaceAll(text, "\n", ""), "\x1b")
	for _, r := range strings.ReplaceAll(text, "\n", "") {
		require.False(t, steers(r), "%U", r)
	}
	require.NotContains(t, text, "\nNEXT")

	var out bytes.Buffer
	require.NoError(t, WriteSeasonJSON(&Screen{Writer: &out}, s))
	for _, r := range strings.ReplaceAll(out.String(), "\n", "") {
		require.False(t, steers(r), "%U", r)
	}
	var read struct{ Season struct{ Name string } }
	require.NoError(t, json.Unmarshal(out.Bytes(), &read))
	require.Equal(t, steering, read.Season.Name)
}

// What the gear of one person comes to in two cars is told once, with both.
func TestGearOfAPersonInTwoCars(t *testing.T) {
	season := strings.Replace(eventsIn(2, dayOf(t, "2027-02-20"), 90), "    first_day", "    crew = [\"A. Penrith-Vale\"]\n    first_day", 1) +
		"crew \"A. Penrith-Vale\" {\n  garment \"overalls\" {}\n}\n"
	s := workedSeason(t, season, "2027-01-05", workedSheet, strings.Replace(workedSheet, "Tern 2", "Gull 1", 1))
	gear := &vehicle.Part{Type: vehicle.BuiltIn().Type("helmet"), Within: s.Result.Season.People[0].Gear}
	for _, car := range s.Result.Cars {
		d := &engine.DatedPart{Car: car.Sheet, Part: gear, Name: "helmet of A. Penrith-Vale", LastDay: dayOf(t, "2027-04-01"), HasLastDay: true}
		car.Dated = append(car.Dated, d)
	}
	text := strings.Join(strings.Fields(seasonText(t, s, 80)), " ")
	require.Equal(t, 1, strings.Count(text, "helmet of A. Penrith-Vale"))
	require.Contains(t, text, "helmet of A. Penrith-Vale (Tern 2 and Gull 1): holds to 2027-04-01")
}

func TestSeasonJSON(t *testing.T) {
	s := workedSeason(t, eventsIn(2, dayOf(t, "2027-02-20"), 90), "2027-01-05", workedSheet)
	var out bytes.Buffer
	require.NoError(t, WriteSeasonJSON(&Screen{Writer: &out}, s))
	var read jsonSeasonRun
	require.NoError(t, json.Unmarshal(out.Bytes(), &read))
	require.Equal(t, []string{Caution, DateCaution}, []string{read.Caution, read.DateCaution})
	require.Len(t, read.Renew, 3, "part by part, though a screen shows them as one")
	strap := read.Renew[0]
	require.Equal(t, []string{"left shoulder strap of harness driver", "made", "replace", "2027-03-01", "7.1", "Stages number 2", "2027-05-21"},
		[]string{strap.Part, strap.Particular, strap.Renewal, strap.LastDay, strap.Clause.Number, strap.Missed, strap.OrderBy})
	for _, part := range read.Cars[0].Dated {
		until := s.Day - 1
		for _, span := range part.Spans {
			require.Equal(t, (until + 1).String(), span.From, "without a hole")
			until = dayOf(t, span.Until)
		}
		require.Equal(t, read.Until, until.String())
	}
	require.Equal(t, [][]string{{"meets", "gap"}}, [][]string{read.Cars[0].Changes[0].Verdicts})
	require.ErrorIs(t, WriteSeasonJSON(&Screen{Writer: fullWriter{}}, s), errFull)
	require.ErrorIs(t, WriteSeason(&Screen{Writer: fullWriter{}, Width: 80, Paint: NewPaint(false)}, s), errFull)
}

// Every name of the form is told of in SEASON_JSON.md, or in JSON.md to which it leads.
func TestSeasonJSONNamesAreDocumented(t *testing.T) {
	documented, err := os.ReadFile("SEASON_JSON.md")
	require.NoError(t, err)
	general, err := os.ReadFile("JSON.md")
	require.NoError(t, err)
	names, known := map[string]bool{}, map[string]bool{}
	collectNames(reflect.TypeFor[jsonSeasonRun](), names)
	collectNames(reflect.TypeFor[jsonRun](), known)
	for name := range names {
		text := string(documented)
		if known[name] {
			text += string(general)
		}
		require.Contains(t, text, "`"+name+"`")
	}
	require.Greater(t, len(names), 60)
}

func TestVerdictLettersDiffer(t *testing.T) {
	letters := map[string]bool{}
	for _, v := range engine.Verdicts() {
		letter := verdictLetter(v)
		require.Equal(t, 1, Width(letter), fmt.Sprint(v))
		require.False(t, letters[letter], letter)
		letters[letter] = true
	}
}
