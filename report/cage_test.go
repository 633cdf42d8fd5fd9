package report

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

func dayOf(t *testing.T, text string) quantity.Day {
	t.Helper()
	days, fault := quantity.ParseDays(text)
	require.Nil(t, fault)
	return days.From
}

// cageText writes what there is to say of a cage, at a width.
func cageText(t *testing.T, c *Cage, width int) string {
	t.Helper()
	var out bytes.Buffer
	screen := &Screen{Writer: &out, Width: width, Paint: NewPaint(false)}
	require.NoError(t, WriteCage(screen, c))
	for _, line := range strings.Split(out.String(), "\n") {
		require.LessOrEqual(t, Width(line), width, line)
	}
	return out.String()
}

func cageSaid(f *vehicle.Frame) *Cage {
	return &Cage{Head: CageHeadOf(f.Sheet, nil, "0.3"), Frame: f, Findings: f.FindingsOnce()}
}

// faultyCage has one of each finding.
const faultyCage = `
cage { saw_kerf = "2 mm" }
unfinished = ["foot"]
tube_stock "A" {
  ordered    = "45 x 2.5 mm"
  bar_length = "3 m"
  bars       = 1
}
tube_stock "B" { ordered = "38 x 2.5 mm" }
die "D" {
  outside           = "45 mm"
  centreline_radius = "135 mm"
  grip_length       = "60 mm"
  minimum_straight  = "1000 mm"
}
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1150 mm"] }
joint "C" { at = ["0 mm", "-600 mm", "1150 mm"] }
joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
joint "E" { at = ["-900 mm", "600 mm", "0 mm"] }
joint "F" { at = ["0 mm", "600 mm", "500 mm"] }
joint "K" { x = "100 mm" }
joint "Q" { at = ["900 mm", "0 mm", "0 mm"] }
joint "R" { at = ["0 mm", "600 mm", "0.5 mm"] }
tube "1" {
  part        = "main hoop"
  stock       = "A"
  through     = ["A", "B", "C", "D"]
  bend_radius = "135 mm"
}
tube "2" {
  part    = "backstay"
  stock   = "B"
  through = ["B", "E"]
}
tube "3" {
  stock   = "B"
  through = ["F", "E"]
}
tube "4" {
  stock   = "B"
  through = ["E", "F"]
}
tube "5" { through = ["F", "K"] }
tube "6" {}
tube "7" {}
tube "8" {
  stock   = "B"
  through = ["F", "E", "D"]
}
foot "1" { joint = "A" }
foot "2" { joint = "D" }
`

func TestCageText(t *testing.T) {
	sound := cageSaid(cageOf(t, workshopSheet))
	sound.Written = []string{"Written: cut.csv, the cut list of 4 tubes with bend schedule and bars."}
	requireGolden(t, "cage_sound.txt", cageText(t, sound, 80))
	faulty := cageSaid(cageOf(t, faultyCage))
	requireGolden(t, "cage_faulty.txt", cageText(t, faulty, 80))
	require.NotEqual(t, cageText(t, faulty, 80), cageText(t, faulty, 40))
}

// Labels cannot steer the terminal or break a line.
func TestHostileLabelsOnTheScreen(t *testing.T) {
	f := cageOf(t, faultyCage)
	for i := range f.Tubes {
		f.Tubes[i].Number += "\x1b[2J\n"
	}
	for i := range f.Joints {
		f.Joints[i].Name += "\u202e\r"
	}
	text := cageText(t, cageSaid(f), 80)
	require.NotContains(t, text, "\x1b")
	require.NotContains(t, text, "\u202e")
	require.NotContains(t, text, "\r")
	require.Contains(t, text, "<U+001B>[2J")
}

func TestCageThatCannotBeWritten(t *testing.T) {
	screen := &Screen{Writer: fullWriter{}, Width: 80, Paint: NewPaint(false)}
	require.ErrorIs(t, WriteCage(screen, cageSaid(cageOf(t, workshopSheet))), errFull)
}

// resultOn makes up a result: of each clause its subjects with a verdict on them.
func resultOn(f *vehicle.Frame, verdicts map[string]map[*vehicle.Part]engine.Verdict, order ...string) *engine.Result {
	book := &rules.Rulebook{Name: "Kettleford Rules", Edition: "2027", Hash: strings.Repeat("ab", 32)}
	chapter := &engine.ChapterResult{Chapter: &rules.Chapter{Number: "4"}}
	for _, number := range order {
		clause := &engine.ClauseResult{Clause: &rules.Clause{Number: number, Concern: rules.Safety}}
		if number == "advice" {
			clause.Clause.Concern = rules.Advice
		}
		clause.NotDue = number == "not due"
		for part, verdict := range verdicts[number] {
			clause.Subjects = append(clause.Subjects, &engine.SubjectResult{Parts: []*vehicle.Part{part}, Verdict: verdict})
		}
		chapter.Clauses = append(chapter.Clauses, clause)
	}
	return &engine.Result{Book: book, Sheet: f.Sheet, Chapters: []*engine.ChapterResult{chapter}}
}

func TestCageVerdicts(t *testing.T) {
	f := cageOf(t, workshopSheet)
	tube := func(number int) *vehicle.Part { return f.Tubes[number].Part }
	end := tube(3).List(tube(3).Type.PartNamed("end")).Parts[0]
	joint := f.Joints[f.Tubes[1].Through[0]].Part
	meeting := joint.List(joint.Type.PartNamed("meeting")).Parts[0]
	require.Equal(t, "1 and 2", meeting.Label)
	result := resultOn(f, map[string]map[*vehicle.Part]engine.Verdict{
		"4.1":     {tube(0): engine.Meets, tube(1): engine.Meets},
		"4.2":     {tube(0): engine.Gap, tube(2): engine.DoesNotApply},
		"4.3":     {end: engine.Marginal},
		"4.4":     {meeting: engine.NotRecorded},
		"advice":  {tube(2): engine.Gap},
		"not due": {tube(2): engine.Gap},
	}, "4.1", "4.2", "4.3", "4.4", "advice", "not due")
	require.Equal(t, map[*vehicle.Part]engine.Verdict{
		tube(0): engine.Gap, tube(1): engine.NotRecorded, tube(2): engine.DoesNotApply, tube(3): engine.Marginal,
	}, CageVerdicts(f, result))
	stock := resultOn(f, map[string]map[*vehicle.Part]engine.Verdict{"4.5": {f.Tubes[1].Stock: engine.ByEye}}, "4.5")
	require.Equal(t, map[*vehicle.Part]engine.Verdict{tube(1): engine.ByEye, tube(2): engine.ByEye, tube(3): engine.ByEye},
		CageVerdicts(f, stock), "a stock's verdict is that of all its tubes")

	said := cageSaid(f)
	said.Result, said.Day, said.DayIsToday = result, dayOf(t, "2027-03-14"), true
	said.Head = CageHeadOf(f.Sheet, result.Book, "0.3")
	text := cageText(t, said, 80)
	require.Contains(t, text, "Rulebook  Kettleford Rules, edition 2027, hash abababababab\n")
	require.Contains(t, text, "Day       2027-03-14, today by this machine's clock, as no day was named\n")
	require.Contains(t, text, "gap                 tube 1 (clause 4.2)\nnot recorded        tube 2 (clause 4.4)\nmarginal            tube 4 (clause 4.3)\n")
	said.Result = resultOn(f, nil)
	require.Contains(t, cageText(t, said, 80), "No clause looks at a tube that has a place.")
}

// Every kind of finding has its sentence.
func TestEveryFindingHasWords(t *testing.T) {
	f := cageOf(t, workshopSheet)
	for kind := vehicle.LooseJoint; kind <= vehicle.FootWithoutPlace; kind++ {
		found := vehicle.FrameFinding{Kind: kind, Tubes: []int{3, 0}, Joints: []int{0, 1}, Part: f.Feet[0].Part,
			Fault: f.Tubes[3].Ends[0].Fault, Die: f.Tubes[0].Die}
		switch kind {
		case vehicle.PartUnplaced, vehicle.DieImpossible, vehicle.NotchImpossible, vehicle.BendsDoNotFit:
			continue // they need what brings them about; see the golden and TestDieWords
		}
		words := findingWords(f, found)
		require.Greater(t, len(words), 30, kind)
		require.Regexp(t, `^[A-Z].*[.?]$`, words)
	}
}
