package examples_test

import (
	"bytes"
	"io/fs"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/examples"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// rulebook loads the club's rulebook of the day of the demo.
func rulebook(t *testing.T) (*rules.Rulebook, *engine.Program) {
	t.Helper()
	return loadEdition(t, examples.Rulebook)
}

// loadEdition loads an edition of the club's rulebook, which has neither faults nor warnings.
func loadEdition(t *testing.T, edition string) (*rules.Rulebook, *engine.Program) {
	t.Helper()
	book, found := rules.Load(examples.Files(), edition, edition, vehicle.BuiltIn())
	require.Empty(t, found)
	program, found := engine.Compile(book)
	require.Empty(t, found)
	return book, program
}

// check holds a sheet in files against the rulebook on the day of the demo. The sheet has
// neither faults nor warnings, so every paper that it names is there.
func check(t *testing.T, files fs.FS, sheet string, stage vehicle.Stage, only ...string) *engine.Result {
	t.Helper()
	book, program := rulebook(t)
	car, found := vehicle.Load(files, sheet, sheet, book.Vocabulary, vehicle.Options{})
	require.Empty(t, found)
	return program.Check(program.Car(car), engine.Request{Day: day(t), Stage: stage, Only: only})
}

// demo is the check of the demo's car, made once for all tests that only look at it.
var demo = sync.OnceValue(func() *engine.Result {
	book, _ := rules.Load(examples.Files(), examples.Rulebook, examples.Rulebook, vehicle.BuiltIn())
	program, _ := engine.Compile(book)
	car, _ := vehicle.Load(examples.Files(), examples.Sheet, examples.Sheet, book.Vocabulary, vehicle.Options{})
	days, _ := quantity.ParseDays(examples.Day)
	return program.Check(program.Car(car), engine.Request{Day: days.From})
})

// The demo's files have neither faults nor warnings, and every paper that they name is there.
func TestFilesAreFaultless(t *testing.T) {
	for _, edition := range []string{examples.Rulebook, examples.NextBook} {
		book, _ := loadEdition(t, edition)
		for _, sheet := range []string{examples.Sheet, examples.WrongCage, examples.BareShell} {
			_, found := vehicle.Load(examples.Files(), sheet, sheet, book.Vocabulary, vehicle.Options{})
			require.Empty(t, found, sheet)
		}
	}
}

func day(t *testing.T) quantity.Day {
	t.Helper()
	return dayOf(t, examples.Day)
}

func dayOf(t *testing.T, text string) quantity.Day {
	t.Helper()
	days, fault := quantity.ParseDays(text)
	require.Nil(t, fault)
	require.Equal(t, days.From, days.To)
	return days.From
}

// numbered lists the clauses with a verdict, advice left out.
func numbered(r *engine.Result, v engine.Verdict) []string {
	var numbers []string
	for _, c := range clauses(r) {
		if c.Verdict == v && !c.NotDue && c.Clause.Concern != rules.Advice {
			numbers = append(numbers, c.Clause.Number)
		}
	}
	return numbers
}

func clauses(r *engine.Result) []*engine.ClauseResult {
	var all []*engine.ClauseResult
	for _, chapter := range r.Chapters {
		all = append(all, chapter.Clauses...)
	}
	return all
}

func clause(t *testing.T, r *engine.Result, number string) *engine.ClauseResult {
	t.Helper()
	i := slices.IndexFunc(clauses(r), func(c *engine.ClauseResult) bool { return c.Clause.Number == number })
	require.GreaterOrEqual(t, i, 0, "no clause %s", number)
	return clauses(r)[i]
}

// subjects lists the subjects of a clause with a verdict.
func subjects(c *engine.ClauseResult, v engine.Verdict) []string {
	var names []string
	for _, s := range c.Subjects {
		if s.Verdict == v {
			names = append(names, s.Name)
		}
	}
	return names
}

// Three figures that do not meet, and a note of the log book that nobody has struck out.
func TestCarHasItsGaps(t *testing.T) {
	r := demo()
	require.Equal(t, []string{"4.4", "7.5", "8.2", "note L2"}, numbered(r, engine.Gap))
	for _, c := range []struct{ clause, subject, reading, limit string }{
		{"4.4", "tube 6", "1.86", "2.0 mm"},
		{"7.5", "rear right seat mount of seat co-driver", "6 mm", "8 mm"},
		{"8.2", "right lap strap of harness co-driver", "2026", "2027-03-14"},
	} {
		result := clause(t, r, c.clause)
		require.Equal(t, []string{c.subject}, subjects(result, engine.Gap), c.clause)
		at := slices.IndexFunc(result.Subjects, func(s *engine.SubjectResult) bool { return s.Verdict == engine.Gap })
		decided := result.Subjects[at].Decided
		require.Len(t, decided, 1, c.clause)
		require.Contains(t, decided[0].Reading, c.reading)
		require.Equal(t, c.limit, decided[0].Limit)
	}
}

// A wall that was read too coarsely, and a slope that follows from joints whose places are
// known to 3 mm: 30.1 degrees, give or take 0.6. The other backstay is its mirror image and
// was read with an angle gauge as well; what both say together proves it.
func TestCarHasTwoMarginalReadings(t *testing.T) {
	r := demo()
	require.Equal(t, []string{"4.6", "4.9"}, numbered(r, engine.Marginal))
	for number, tube := range map[string]string{"4.6": "tube 9", "4.9": "tube 5"} {
		c := clause(t, r, number)
		require.Equal(t, rules.Proved, c.Clause.Judged)
		require.Equal(t, []string{tube}, subjects(c, engine.Marginal))
		require.Contains(t, c.Subjects[0].Notes, "meets as read")
	}
	require.Equal(t, []string{"tube 6"}, subjects(clause(t, r, "4.9"), engine.ByEye))
}

func TestCarHasTwoParticularsNotRecorded(t *testing.T) {
	r := demo()
	require.Equal(t, []string{"11.4", "15.9"}, numbered(r, engine.NotRecorded))
	var missing []string
	for _, c := range clauses(r) {
		for _, s := range c.Subjects {
			for _, cause := range s.Causes {
				if cause.Kind == engine.Missing {
					missing = append(missing, cause.Particular.Name+" of "+cause.Part.Name())
				}
			}
		}
	}
	require.Equal(t, []string{"weighed_mass of engine bay fire bottle of fire system", "noise of exhaust"}, missing)
}

func TestRestOfCarIsInOrder(t *testing.T) {
	r := demo()
	require.Equal(t, engine.Gap, r.Worst)
	require.Equal(t, []string{"1.4", "2.3", "2.4", "4.22", "4.46", "5.1", "5.2", "5.3", "5.4", "5.5", "5.6", "7.8", "10.4", "13.8", "15.1", "15.2", "inspection I1"},
		numbered(r, engine.DoesNotApply))
	require.Greater(t, r.Counts[engine.Meets], 80)
	require.Greater(t, r.Counts[engine.ByEye], 30)
	for _, c := range clauses(r) {
		if c.Clause.Concern == rules.Advice {
			require.Equal(t, engine.Meets, c.Verdict, c.Clause.Number)
		}
	}
	require.Equal(t, []string{"tube 5", "tube 7", "tube 8", "tube 16", "tube 17", "tube 18", "tube 19",
		"tube 20", "tube 21", "tube 22", "tube 23", "tube 24"}, subjects(clause(t, r, "4.4"), engine.Meets))
	require.Equal(t, []string{"tube 1"}, subjects(clause(t, r, "4.2"), engine.Meets))
	require.Equal(t, []string{"tube 2", "tube 3", "tube 4"}, subjects(clause(t, r, "4.3"), engine.Meets))
}

// Papers: what the club has let pass, what its reading says beside the shop's, a note that is
// closed, and a part that was loaded and looked at since.
func TestPapersOfTheDemo(t *testing.T) {
	r := demo()
	require.Equal(t, engine.UnderDispensation, clause(t, r, "13.3").Verdict)
	require.Equal(t, []string{"mud flap rear right"}, subjects(clause(t, r, "13.3"), engine.UnderDispensation))
	require.Contains(t, strings.Join(clause(t, r, "4.9").Subjects[0].Notes, "\n"),
		"read 29.7 deg with angle gauge; the sheet says 30.09 ± 0.61 deg, 0.39 deg apart")
	require.Equal(t, engine.Meets, clause(t, r, "note L1").Verdict)
	require.Equal(t, []string{"open; to be cleared by 2027-06-11"}, clause(t, r, "note L2").Subjects[0].Notes)
	require.Equal(t, engine.Meets, clause(t, r, "incident bales").Verdict)
	require.Equal(t, []string{"inspected or replaced on 2027-02-20 by O. Marram"}, clause(t, r, "incident bales").Subjects[0].Notes)
}

// repair is a line of the car's sheet and what it would be after the work.
type repair struct{ file, from, to string }

// repairs put right and write down all that the demo finds.
var repairs = []repair{
	{"2_tubes.hcl", `readings      = ["1.86 mm", "1.89 mm"]`, `readings      = ["2.07 mm", "2.06 mm"]`},
	{"2_tubes.hcl", `reading       = "2.03 mm"`, `reading       = "2.06 mm"`},
	{"2_tubes.hcl", `mirrored_as        = "6"`, `mirrored_as        = "6"` + "\n" + `  angle_to_vertical = { reading = "30.6 deg", measured_with = "angle gauge" }`},
	{"4_seats_and_harnesses.hcl", `bolt_diameter          = "6 mm"`, `bolt_diameter          = "8 mm"`},
	{"4_seats_and_harnesses.hcl", `not_after           = "2026"`, `not_after           = "2029"`},
	{"6_fuel_and_fire.hcl", `full_mass    = "2.65 kg"`, `full_mass    = "2.65 kg"` + "\n" + `    weighed_mass = "2.61 kg"`},
	{"10_log_book.hcl", `before = "2027-06-11"`, `cleared_on = "2027-03-13"` + "\n" + `  cleared_by = "O. Marram"`},
	{"8_running_gear_and_engine.hcl", `outlet            = "rear"`, `outlet            = "rear"` + "\n" + `  noise             = "96 dB(A)"`},
}

// repaired is the demo with lines of the car's sheet replaced; each stands there once.
func repaired(t *testing.T, repairs ...repair) fstest.MapFS {
	t.Helper()
	files := fstest.MapFS{}
	require.NoError(t, fs.WalkDir(examples.Files(), ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		data, err := fs.ReadFile(examples.Files(), name)
		files[name] = &fstest.MapFile{Data: data}
		return err
	}))
	for _, r := range repairs {
		file := files[examples.Sheet+"/"+r.file]
		require.NotNil(t, file, r.file)
		require.Equal(t, 1, bytes.Count(file.Data, []byte(r.from)), "%s: %s", r.file, r.from)
		file.Data = bytes.Replace(file.Data, []byte(r.from), []byte(r.to), 1)
	}
	return files
}

func TestRepairedCarLeavesWhatOnlyAPersonCanJudge(t *testing.T) {
	r := check(t, repaired(t, repairs...), examples.Sheet, vehicle.StageUnset)
	require.Equal(t, engine.ByEye, r.Worst)
	require.Zero(t, r.Counts[engine.Gap]+r.Counts[engine.NotRecorded]+r.Counts[engine.Marginal])
}

func TestEachRepairEndsOneFinding(t *testing.T) {
	open := func(r *engine.Result) []string {
		return slices.Concat(numbered(r, engine.Gap), numbered(r, engine.NotRecorded), numbered(r, engine.Marginal))
	}
	found := open(demo())
	require.Len(t, found, len(repairs))
	for _, one := range repairs {
		r := check(t, repaired(t, one), examples.Sheet, vehicle.StageUnset, append(found, "10.12")...) // which the note is about
		require.Len(t, open(r), len(repairs)-1, "%s: %s", one.file, one.to)
	}
}

// The other way to have a cage accepted: chapter 5 is asked then, and the tables are not.
func TestCertifiedCageIsNotHeldAgainstTheTables(t *testing.T) {
	certified := append([]repair{
		{"3_cage.hcl", `"built to the tables"`, `"certified"`},
		{"3_cage.hcl", `not_fitted = ["certificate", "identity_plate"]`, `not_fitted = ["identity_plate"]
  certificate {
    number        = "CC/0093"
    issued        = "2026-11-20"
    not_after     = "none"
    basis_mass    = "1090 kg"
    chassis       = "TS-0417"
    drawing_pages = 4
  }`},
		{"1_car.hcl", `evidence "rescue card"`, `evidence "cage certificate" {}` + "\n" + `  evidence "rescue card"`},
	}, repairs[1:]...)
	r := check(t, repaired(t, certified...), examples.Sheet, vehicle.StageUnset)
	require.Equal(t, engine.ByEye, r.Worst, "the short backstay is the certificate's business")
	for number, want := range map[string]engine.Verdict{
		"3.1": engine.DoesNotApply, "4.4": engine.DoesNotApply, "4.6": engine.DoesNotApply, "6.5": engine.DoesNotApply,
		"4.21": engine.Meets, "5.1": engine.ByEye, "5.2": engine.Meets, "5.3": engine.Meets,
		"5.4": engine.Meets, "5.5": engine.ByEye, "5.6": engine.DoesNotApply,
	} {
		require.Equal(t, want, clause(t, r, number).Verdict, number)
	}
}

// The second built car has the cage of the first but for a backstay whose foot was moved
// forward and a diagonal that lands 200 mm up a leg.
func TestWrongCageHasItsTwoGaps(t *testing.T) {
	r := check(t, examples.Files(), examples.WrongCage, vehicle.StageUnset, "4")
	require.Equal(t, []string{"4.9", "4.10"}, numbered(r, engine.Gap))
	require.Empty(t, numbered(r, engine.Marginal))
	for number, want := range map[string][3]string{
		"4.9":  {"tube 6", "23.98", "30 deg"},
		"4.10": {"tube 21", "140.35 mm", "100 mm"},
	} {
		c := clause(t, r, number)
		require.Equal(t, []string{want[0]}, subjects(c, engine.Gap), number)
		at := slices.IndexFunc(c.Subjects, func(s *engine.SubjectResult) bool { return s.Verdict == engine.Gap })
		require.Contains(t, c.Subjects[at].Decided[0].Reading, want[1], number)
		require.Equal(t, want[2], c.Subjects[at].Decided[0].Limit, number)
	}
}

// The cages stand: nothing in them is loose, ends in the air or cannot be bent.
func TestCagesCanBeBuilt(t *testing.T) {
	book, _ := rulebook(t)
	for sheet, tubes := range map[string]int{examples.Sheet: 36, examples.WrongCage: 25} {
		car, _ := vehicle.Load(examples.Files(), sheet, sheet, book.Vocabulary, vehicle.Options{})
		frame := car.Frame()
		require.Len(t, frame.Tubes, tubes, sheet)
		for _, finding := range frame.Findings() {
			require.Equal(t, vehicle.ToLookAt, finding.Weight, "%s: %+v", sheet, finding)
		}
	}
}

func TestBareShellIsBarelyBegun(t *testing.T) {
	stage, known := vehicle.StageNamed(examples.Stage)
	require.True(t, known)
	r := check(t, examples.Files(), examples.BareShell, stage)
	require.Equal(t, engine.NotRecorded, r.Worst)
	require.Equal(t, []string{"1.6", "2.7", "3.1", "3.2", "3.4", "3.6", "4.11"}, numbered(r, engine.Meets))
	require.Equal(t, []string{"1.2", "2.6", "3.3"}, numbered(r, engine.ByEye))
	require.Equal(t, []string{"1.3", "1.4", "2.5", "4.28", "4.29", "6.5", "6.6"}, numbered(r, engine.DoesNotApply))
	require.Len(t, numbered(r, engine.NotRecorded), 48)
	require.Empty(t, numbered(r, engine.Gap))
	require.Empty(t, numbered(r, engine.Marginal))
	require.Greater(t, r.NotDue, 100)
	for _, number := range []string{"4.2", "4.3"} { // the tube that is there is right already
		require.Len(t, subjects(clause(t, r, number), engine.Meets), 1, number)
	}
}

func TestRulebookHasContent(t *testing.T) {
	book, _ := rulebook(t)
	require.GreaterOrEqual(t, len(book.Chapters), 10)
	texts, count := map[string]string{}, 0
	concerns, judged := map[rules.Concern]int{}, map[rules.Judged]int{}
	for _, chapter := range book.Chapters {
		require.NotEmpty(t, chapter.Clauses, chapter.Number)
		for _, c := range chapter.Clauses {
			count++
			concerns[c.Concern]++
			judged[c.Judged]++
			require.NotEmpty(t, c.Text, c.Number)
			require.NotEmpty(t, c.Page, c.Number)
			require.NotEqual(t, vehicle.StageUnset, c.Stage, c.Number)
			require.NotEmpty(t, c.Rectify+c.LookFor, c.Number)
			require.Empty(t, texts[c.Text], "clauses %s and %s have one wording", texts[c.Text], c.Number)
			texts[c.Text] = c.Number
		}
	}
	require.GreaterOrEqual(t, count, 150)
	cage := slices.IndexFunc(book.Chapters, func(c *rules.Chapter) bool { return c.Number == "4" })
	require.GreaterOrEqual(t, len(book.Chapters[cage].Clauses), 35)
	require.Len(t, concerns, 3)
	require.Len(t, judged, 2)
	require.Equal(t, "for trying the program, not a rulebook to build to", book.Standing)
}

// answer is the verdict of a clause for the subject of a label, or as a whole for "".
func answer(t *testing.T, c *engine.ClauseResult, subject string) engine.Verdict {
	t.Helper()
	if subject == "" {
		return c.Verdict
	}
	at := slices.IndexFunc(c.Subjects, func(s *engine.SubjectResult) bool {
		return slices.ContainsFunc(s.Parts, func(p *vehicle.Part) bool { return p.Label == subject })
	})
	require.GreaterOrEqual(t, at, 0, "clause %s has no subject %s", c.Clause.Number, subject)
	return c.Subjects[at].Verdict
}

func TestWorkedCasesAnswerAsStated(t *testing.T) {
	book, program := rulebook(t)
	require.Greater(t, len(book.Cases), 40)
	answers := map[string]int{}
	for _, one := range book.Cases {
		on := day(t)
		if one.HasOn {
			on = one.On.From
		}
		r := program.Check(program.Car(one.AsBuilt), engine.Request{Day: on, Only: []string{one.Clause.Number}})
		require.Equal(t, one.Answer, answer(t, clause(t, r, one.Clause.Number), one.Subject).String(), "worked case %q: %s", one.Name, one.Reason)
		answers[one.Answer]++
	}
	for _, v := range engine.Verdicts() {
		if v != engine.UnderDispensation {
			require.NotZero(t, answers[v.String()], "no worked case answers %q", v)
		}
	}
}

// What is embedded is what the repository has: a file whose name begins with a dot or an
// underscore would be left out.
func TestEverythingIsEmbedded(t *testing.T) {
	list := func(files fs.FS) (names []string) {
		require.NoError(t, fs.WalkDir(files, "saltmarsh", func(name string, entry fs.DirEntry, err error) error {
			if err == nil && !entry.IsDir() {
				names = append(names, name)
			}
			return err
		}))
		return names
	}
	require.Equal(t, list(os.DirFS(".")), list(examples.Files()))
	for _, name := range list(examples.Files()) {
		data, err := fs.ReadFile(examples.Files(), name)
		require.NoError(t, err)
		require.NotEmpty(t, data, name)
		require.False(t, strings.ContainsRune(string(data), '\r'), name)
	}
}
