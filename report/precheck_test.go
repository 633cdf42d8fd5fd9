package report

import (
	"bytes"
	"encoding/json"
	"os"
	"reflect"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// The results below are made up by hand, so that every verdict and every cause is there,
// those included that no small rulebook brings about.

const madeUpSheet = `car "Tessel 16" {}
tube "1" {}
tube "2" {}
tube "3" {}
harness "driver" {}
`

func readSheet(t *testing.T) *vehicle.Sheet {
	t.Helper()
	files := fstest.MapFS{"tessel.hcl": &fstest.MapFile{Data: []byte(madeUpSheet)}}
	sheet, found := vehicle.Load(files, "tessel.hcl", "cars/tessel.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.Empty(t, found)
	return sheet
}

// madeUp puts clauses and their results together.
type madeUp struct {
	sheet  *vehicle.Sheet
	result *engine.Result
}

func (m *madeUp) tube(label string) *vehicle.Part {
	kind := m.sheet.Vocabulary.Type("tube")
	for _, part := range m.sheet.Root.List(kind.Within).Parts[0].List(kind).Parts {
		if part.Label == label {
			return part
		}
	}
	panic("no tube " + label)
}

func (m *madeUp) clause(clause rules.Clause, subjects ...*engine.SubjectResult) *engine.ClauseResult {
	chapter := m.result.Chapters[len(m.result.Chapters)-1]
	clause.Chapter = chapter.Chapter
	chapter.Chapter.Clauses = append(chapter.Chapter.Clauses, &clause)
	made := &engine.ClauseResult{Clause: &clause, Subjects: subjects}
	for _, subject := range subjects {
		made.Verdict = made.Verdict.Worse(subject.Verdict)
	}
	chapter.Clauses = append(chapter.Clauses, made)
	return made
}

func (m *madeUp) count() *engine.Result {
	for _, chapter := range m.result.Chapters {
		for _, clause := range chapter.Clauses {
			if clause.NotDue {
				m.result.NotDue++
				continue
			}
			m.result.Count(chapter, clause)
		}
	}
	return m.result
}

func lineOf(line int) hcl.Range {
	return hcl.Range{Filename: "cars/tessel.hcl", Start: hcl.Pos{Line: line, Column: 3}, End: hcl.Pos{Line: line, Column: 9}}
}

func resultOf(t *testing.T) *engine.Result {
	t.Helper()
	m := &madeUp{sheet: readSheet(t)}
	chapter := &rules.Chapter{Number: "4", Title: "Safety cage"}
	book := &rules.Rulebook{
		Name: "Kettleford Stage Car Rules\x1b[2J", Edition: "2027", Hash: strings.Repeat("0123456789", 4),
		Period: rules.Always, Standing: "for trying the program, not a rulebook to build to", Chapters: []*rules.Chapter{chapter},
	}
	m.result = &engine.Result{Book: book, Sheet: m.sheet, Chapters: []*engine.ChapterResult{{Chapter: chapter}}}
	wall := m.sheet.Vocabulary.Type("tube").Particular("wall")
	m.addGaps(wall)
	m.addOpen(wall)
	m.addQuiet()
	return m.count()
}

func (m *madeUp) addGaps(wall *vehicle.Particular) {
	short := func(tube, reading, margin string, line int) *engine.SubjectResult {
		return &engine.SubjectResult{
			Parts: []*vehicle.Part{m.tube(tube)}, Name: "tube " + tube, Verdict: engine.Gap, Place: lineOf(line),
			Decided: []engine.Decided{
				{What: "tube.outside", Reading: "45 mm", Sense: "at least", Limit: "45 mm", Margin: "on the limit", Truth: quantity.Yes},
				{What: "tube.wall", Reading: reading, Sense: "at least", Limit: "2.5 mm", Margin: margin, Truth: quantity.No, Place: lineOf(line)},
			},
		}
	}
	m.clause(rules.Clause{Number: "4.1", Title: "Hoop tube", Concern: rules.Safety, Page: "31",
		LookFor: "One piece, no joint.", Rectify: "Re-make the hoop in a listed size; sleeving is not accepted."},
		short("1", "2.1 mm", "0.4 mm short", 2), short("2", "2.1 mm", "0.4 mm short", 3), short("3", "2.4 mm", "0.1 mm short", 4))
	m.clause(rules.Clause{Number: "4.2", Title: "Fire system", Concern: rules.Safety, TextAt: "yearbook, p. 9"},
		&engine.SubjectResult{Verdict: engine.Gap, Place: lineOf(1), MissingPapers: []string{"label photo"},
			Causes: []engine.Cause{
				{Kind: engine.NotFitted, Text: "fire system"}, {Kind: engine.StatedNone, Text: "net of seat"},
				{Kind: engine.NoSuchPart, Text: "bottle"},
			}})
	m.clause(rules.Clause{Number: "4.2(a)-long", Title: "Two backstays", Concern: rules.Eligibility}).Note = "1 of 2 required"
	m.result.Chapters[0].Clauses[2].Verdict = engine.Gap
}

func (m *madeUp) addOpen(wall *vehicle.Particular) {
	missing := func(tube string) *engine.SubjectResult {
		return &engine.SubjectResult{Name: "tube " + tube, Verdict: engine.NotRecorded, Causes: []engine.Cause{
			{Kind: engine.Missing, Part: m.tube(tube), Particular: wall, Text: "wall of tube " + tube}}}
	}
	m.clause(rules.Clause{Number: "4.3", Title: "Wall", Concern: rules.Safety}, missing("1"), missing("2"))
	m.clause(rules.Clause{Number: "4.4", Title: "Wall again", Concern: rules.Safety}, missing("2"),
		&engine.SubjectResult{Verdict: engine.NotRecorded, Causes: []engine.Cause{
			{Kind: engine.UnknownOthers, Text: "tubes"}, {Kind: engine.NoSuchPart, Text: "feet"}, {Kind: engine.Undefined, Text: "car.weighed_mass / 0"}}})
	m.clause(rules.Clause{Number: "4.5", Title: "All tubes", Concern: rules.Safety}).Verdict = engine.NotRecorded
	m.clause(rules.Clause{Number: "4.6", Title: "Proved wall", Concern: rules.Safety, Rectify: "Replace it."},
		&engine.SubjectResult{Name: "tube 3", Verdict: engine.Marginal, Place: lineOf(4), Notes: []string{"meets as read"},
			Decided: []engine.Decided{{What: "tube.wall", Reading: "2.5 ± 0.1 mm", Sense: "at least", Limit: "2.5 mm", Truth: quantity.Open}},
			Causes:  []engine.Cause{{Kind: engine.Tolerance, Part: m.tube("3"), Particular: wall, Text: "wall of tube 3"}}},
		&engine.SubjectResult{Name: "tube 1", Verdict: engine.Marginal, Causes: []engine.Cause{{Kind: engine.Budget}}})
}

func (m *madeUp) addQuiet() {
	m.clause(rules.Clause{Number: "4.7", Title: "Welds", Concern: rules.Safety, LookFor: "Welded all round, no undercut."},
		&engine.SubjectResult{Name: "tube 1", Verdict: engine.ByEye}, &engine.SubjectResult{Name: "tube 2", Verdict: engine.ByEye})
	m.clause(rules.Clause{Number: "4.8", Title: "Old net", Concern: rules.Eligibility},
		&engine.SubjectResult{Verdict: engine.UnderDispensation, Notes: []string{"dispensation 7 of the club"}})
	m.clause(rules.Clause{Number: "4.9", Title: "Mass", Concern: rules.Eligibility},
		&engine.SubjectResult{Verdict: engine.Meets, Notes: []string{engine.NoteNotProved},
			Decided: []engine.Decided{{What: "car.weighed_mass", Reading: "1001 ± 2 kg", Sense: "at least", Limit: "1000 kg", Margin: "1 kg to spare", Truth: quantity.Yes}}})
	m.clause(rules.Clause{Number: "4.10", Title: "Certified cages", Concern: rules.Eligibility})
	m.clause(rules.Clause{Number: "4.11", Title: "Lamps", Concern: rules.Advice, Rectify: "Aim them."},
		&engine.SubjectResult{Verdict: engine.Gap, Decided: []engine.Decided{{What: "lamp.height", Reading: "500 mm", Sense: "at most", Limit: "400 mm", Margin: "100 mm over", Truth: quantity.No}}})
	m.clause(rules.Clause{Number: "4.14", Title: "Yield", Concern: rules.Advice},
		&engine.SubjectResult{Name: "tube 1", Verdict: engine.NotRecorded, Causes: []engine.Cause{{Kind: engine.UnknownOthers, Text: "tubes"}}})
	m.clause(rules.Clause{Number: "4.12", Title: "Tidy wiring", Concern: rules.Advice, LookFor: "Tidy."},
		&engine.SubjectResult{Verdict: engine.ByEye})
	m.clause(rules.Clause{Number: "4.13", Title: "Tyres", Concern: rules.Safety}).NotDue = true
}

func runOf(t *testing.T) *Precheck {
	result := resultOf(t)
	return &Precheck{
		Version: "1.2.3", Day: 20891, Stage: vehicle.StageBareShell, Only: []string{"4"},
		Results: []*engine.Result{result},
	}
}

func TestTerminal(t *testing.T) {
	for _, c := range []struct {
		file  string
		width int
		all   bool
	}{{"terminal.txt", 80, false}, {"terminal_all_narrow.txt", 44, true}} {
		var out bytes.Buffer
		run := runOf(t)
		run.All = c.all
		require.NoError(t, WriteTerminal(screenOf(&out, c.width), run))
		requireHarmless(t, out.String())
		require.NotRegexp(t, `(?i)\b(ready|ok|legal|safe)\b`, out.String())
		for _, line := range strings.Split(out.String(), "\n") {
			require.LessOrEqual(t, Width(line), c.width, line)
		}
		requireGolden(t, c.file, out.String())
	}
}

func TestTerminalOfSeveralSheets(t *testing.T) {
	var out bytes.Buffer
	run := runOf(t)
	run.Results = append(run.Results, run.Results[0])
	require.NoError(t, WriteTerminal(screenOf(&out, 80), run))
	require.Equal(t, 1, strings.Count(out.String(), "It has not seen the car"))
	require.Equal(t, 2, strings.Count(out.String(), "\n  Rulebook  "))
	_, summary, found := strings.Cut(out.String(), "ALL SHEETS")
	require.True(t, found)
	require.Equal(t, 2, strings.Count(summary, "gap  cars/tessel.hcl, Tessel 16 against"))
}

// Colours add to the text and take nothing away.
func TestColoursAreNeverTheOnlyCarrier(t *testing.T) {
	var plain, colored bytes.Buffer
	require.NoError(t, WriteTerminal(screenOf(&plain, 80), runOf(t)))
	require.NoError(t, WriteTerminal(&Screen{Writer: &colored, Width: 80, Paint: NewPaint(true)}, runOf(t)))
	require.NotEqual(t, plain.String(), colored.String())
	require.Equal(t, plain.String(), withoutColours(colored.String()))
}

// withoutColours takes out the sequences "ESC [ digits m" that set colours.
func withoutColours(text string) string {
	var out strings.Builder
	for {
		before, after, found := strings.Cut(text, "\x1b[")
		out.WriteString(before)
		if !found {
			return out.String()
		}
		text = after[strings.IndexByte(after, 'm')+1:]
	}
}

func TestJSON(t *testing.T) {
	var out bytes.Buffer
	require.NoError(t, WriteJSON(screenOf(&out, 80), runOf(t)))
	requireHarmless(t, out.String())
	require.True(t, strings.HasPrefix(out.String(), "{\n  \"caution\": \"Pre-check of what was written down."))
	requireGolden(t, "precheck.json", out.String())

	var again bytes.Buffer
	require.NoError(t, WriteJSON(screenOf(&again, 40), runOf(t)))
	require.Equal(t, out.String(), again.String(), "the same whatever the screen")

	var document struct {
		Checks []struct{ Counts map[string]int }
	}
	require.NoError(t, json.Unmarshal(out.Bytes(), &document))
	require.Len(t, document.Checks[0].Counts, len(engine.Verdicts()), "every verdict has its count")
}

func TestFormats(t *testing.T) {
	require.Equal(t, "terminal", Formats()[0].Name)
	for _, format := range Formats() {
		found, ok := FormatNamed(format.Name)
		require.True(t, ok)
		require.Equal(t, format.Help, found.Help)
		var out bytes.Buffer
		require.NoError(t, format.Write(screenOf(&out, 80), runOf(t)))
		require.Contains(t, strings.ReplaceAll(out.String(), "\n", " "), "It has not seen the car: no weld, crack, rust, fit or workmanship.")
	}
	_, ok := FormatNamed("paper")
	require.False(t, ok)
}

// Of each of these failures to write the caller is told.
func TestFaultsOfTheWriterAreTold(t *testing.T) {
	for _, format := range Formats() {
		err := format.Write(&Screen{Writer: fullWriter{}, Width: 80, Paint: NewPaint(false)}, runOf(t))
		require.ErrorIs(t, err, errFull, format.Name)
	}
}

// Every name of the form is told of in JSON.md.
func TestJSONNamesAreDocumented(t *testing.T) {
	documented, err := os.ReadFile("JSON.md")
	require.NoError(t, err)
	names := map[string]bool{}
	collectNames(reflect.TypeFor[jsonRun](), names)
	require.Greater(t, len(names), 40)
	for name := range names {
		require.Contains(t, string(documented), "`"+name+"`")
	}
	for _, verdict := range engine.Verdicts() {
		require.Contains(t, string(documented), "`"+verdict.String()+"`")
	}
	for kind := engine.Missing; kind <= engine.Budget; kind++ {
		require.Contains(t, string(documented), "`"+CauseWord(kind)+"`")
	}
}

func collectNames(of reflect.Type, names map[string]bool) {
	switch of.Kind() {
	case reflect.Pointer, reflect.Slice:
		collectNames(of.Elem(), names)
	case reflect.Struct:
		for i := range of.NumField() {
			name, _, _ := strings.Cut(of.Field(i).Tag.Get("json"), ",")
			names[name] = true
			collectNames(of.Field(i).Type, names)
		}
	}
}
