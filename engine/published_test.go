package engine_test

import (
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// publishedStatuses says how far a published figure was confirmed.
var publishedStatuses = []string{"confirmed", "quoted by others", "from memory", "computed"}

// publishedTraps are the cases that published texts are known to trip a reader over.
var publishedTraps = []string{
	"inch pair 1.75 x .095",
	"inch tube against the metric pairs",
	"2 of 3 bolts by nominal section, exactly two thirds",
	"2 of 3 bolts by stress area, exactly two thirds",
	"2 of 3 bolts by count, exactly two thirds",
	"8508.8 against 8509, strict",
	"8508.8 against 8509, rounded",
	"1500 lb in two bands, either will do",
	"1500 lb in two bands, both have to be met",
	"2500 lb in two bands, either will do",
	"2500 lb in two bands, both have to be met",
	"between 1700 and 1701 lb",
	"between 2699 and 2700 lb",
	"yield or tensile: a 235/360 steel by its yield",
	"yield or tensile: a 235/360 steel by its tensile strength",
	"month label on the last day of its month",
	"month label on the day after",
	"29 February: made on it, two years on",
	"29 February: a month label that ends on it",
	"30 degrees three ways: to the horizontal, 580 mm back",
	"30 degrees three ways: included, hoop upright",
	"30 degrees three ways: included, hoop leaning forward",
	"backstay that runs inward as well",
	"2 of 3 bolts by joints, exactly two thirds",
	"25.4 x 1.6 mm as size B, followed, to the letter",
	"1.375 x 0.049 in as size D, followed, to the letter",
	"section of 1.75 x .095 in against 45 x 2.5 mm",
	"belt of 1999 on the day before the memo",
	"belt of 1999 on the day of the memo",
	"8853/98 on its last day",
	"8853/98 on the day after its withdrawal",
	"list 25: SA2015 on 2023-12-31",
	"list 25: SA2015 on 2024-01-01",
	"national list: SA2015 on 2026-12-31",
	"car of the last day of 2018 with an unhomologated system in 2021",
	"tyre 4308 once its week is over",
	"tyre 5309, a year of 53 weeks",
	"tyre 408, made before 2000",
	"straps of 2025 and 2027, the day after",
	"29 February: a year on, the last day",
	"29 February: a year on, the day after",
	"29 February: FIA system serviced on it",
	"month label of a February of 28 days",
}

// publishedBook loads the rulebook of published figures.
func publishedBook(t *testing.T) *rules.Rulebook {
	t.Helper()
	book, faults := rules.Load(os.DirFS("../testdata"), "published", "testdata/published", vehicle.BuiltIn())
	for _, d := range faults {
		t.Errorf("%s %s: %s", vehicle.PlaceText(*d.Subject), d.Summary, d.Detail)
	}
	require.NotNil(t, book)
	return book
}

// TestPublishedCases works every case of the rulebook of published figures and compares
// the verdict with the one that the source gives or implies. Document, article and edition
// stand beside each case.
func TestPublishedCases(t *testing.T) {
	book := publishedBook(t)
	p, faults := engine.Compile(book)
	require.Empty(t, faults)
	counts := map[string]int{}
	for _, w := range book.Cases {
		counts[w.Status]++
		result := workPublished(t, p, w)
		if got := publishedVerdict(result, w.Subject); got != w.Answer {
			t.Errorf("%s %q: clause %s gives %q, the source says %q: %s (%s, %s)\n%s",
				vehicle.PlaceText(w.Range), w.Name, w.Clause.Number, got, w.Answer, w.Reason, w.Source, w.Status, tellPublished(result))
		}
		for _, s := range result.Subjects {
			if s.Verdict == engine.Gap && !tellsWhy(s) {
				t.Errorf("%s %q: a gap without a reason\n%s", vehicle.PlaceText(w.Range), w.Name, tellPublished(result))
			}
		}
	}
	for _, status := range slices.Sorted(maps.Keys(counts)) {
		t.Logf("%-17s %d", status, counts[status])
	}
	t.Logf("%d cases of %d clauses", len(book.Cases), len(publishedClauses(book)))
}

// workPublished works one case: its clause alone, on its day.
func workPublished(t *testing.T, p *engine.Program, w *rules.WorkedCase) *engine.ClauseResult {
	t.Helper()
	day, ok := quantity.CivilDay(2026, 6, 1)
	require.True(t, ok)
	if w.HasOn {
		require.Equal(t, w.On.From, w.On.To, "%q: a case is worked on one day", w.Name)
		day = w.On.From
	}
	result := p.Check(p.Car(w.AsBuilt), engine.Request{Day: day, Only: []string{w.Clause.Number}, All: true})
	for _, chapter := range result.Chapters {
		for _, c := range chapter.Clauses {
			if c.Clause == w.Clause {
				return c
			}
		}
	}
	t.Fatalf("%q: the clause %s was not worked", w.Name, w.Clause.Number)
	return nil
}

// publishedVerdict is the verdict of a clause as a whole, or of one of its subjects.
func publishedVerdict(c *engine.ClauseResult, subject string) string {
	if subject == "" {
		return c.Verdict.String()
	}
	for _, s := range c.Subjects {
		if slices.ContainsFunc(s.Parts, func(p *vehicle.Part) bool { return vehicle.FoldText(p.Label) == vehicle.FoldText(subject) }) {
			return s.Verdict.String()
		}
	}
	return engine.DoesNotApply.String()
}

// tellsWhy reports whether a gap names a comparison that fails, or what else is wrong.
func tellsWhy(s *engine.SubjectResult) bool {
	fails := slices.ContainsFunc(s.Decided, func(d engine.Decided) bool { return d.Truth == quantity.No })
	return fails || len(s.Causes) > 0 || len(s.Notes) > 0 || len(s.MissingPapers) > 0
}

// tellPublished is what a clause came to, for a failing test.
func tellPublished(c *engine.ClauseResult) string {
	var b strings.Builder
	fmt.Fprintf(&b, "  %s %s\n", c.Verdict, c.Note)
	for _, s := range c.Subjects {
		fmt.Fprintf(&b, "  %s: %s %s\n", s.Name, s.Verdict, strings.Join(s.Notes, "; "))
		for _, cause := range s.Causes {
			fmt.Fprintf(&b, "    open by %s\n", cause.Text)
		}
		for _, d := range s.Decided {
			fmt.Fprintf(&b, "    %s %s %s %s: %s %s\n", d.What, d.Reading, d.Sense, d.Limit, d.Truth, d.Note)
		}
	}
	return b.String()
}

func publishedClauses(book *rules.Rulebook) []*rules.Clause {
	var all []*rules.Clause
	for _, chapter := range book.Chapters {
		all = append(all, chapter.Clauses...)
	}
	return all
}

// TestPublishedSources holds that nothing in the rulebook stands without its source, and
// that it cannot be taken for a rulebook in force.
func TestPublishedSources(t *testing.T) {
	book := publishedBook(t)
	require.Equal(t, "for trying the program, not a rulebook to build to", book.Standing)
	for _, c := range publishedClauses(book) {
		require.NotEmpty(t, c.TextAt, "clause %s names no source", c.Number)
	}
	for _, w := range book.Cases {
		require.NotEmpty(t, w.Source, "%q names no source", w.Name)
		require.NotEmpty(t, w.Reason, "%q gives no reason", w.Name)
		require.Contains(t, publishedStatuses, w.Status, "%q", w.Name)
	}
}

// TestPublishedCoverage holds that every clause has a case that meets it and one that does
// not, and that the known traps are cases by name.
func TestPublishedCoverage(t *testing.T) {
	book := publishedBook(t)
	require.Len(t, book.Cases, 1677)
	require.Len(t, publishedClauses(book), 251)
	answers, names := map[*rules.Clause][]string{}, map[string]bool{}
	for _, w := range book.Cases {
		answers[w.Clause] = append(answers[w.Clause], w.Answer)
		names[w.Name] = true
	}
	for _, c := range publishedClauses(book) {
		require.NotEmpty(t, answers[c], "clause %s has no case", c.Number)
		if c.Demand == nil {
			continue
		}
		require.Contains(t, answers[c], engine.Meets.String(), "clause %s has no case that meets it", c.Number)
		require.Contains(t, answers[c], engine.Gap.String(), "clause %s has no case that falls short of it", c.Number)
	}
	for _, trap := range publishedTraps {
		require.True(t, names[trap], "the trap %q is not a case", trap)
	}
}

// publishedByTheDay are the clauses that go by the day, so that a date of which only the
// month or year is known leaves some days undecided.
var publishedByTheDay = []string{
	"10.12", "11.1", "11.2", "11.3", "11.4", "11.5", "11.6", "11.7", "11.8", "11.14",
	"18.1", "18.2", "18.14", "18.16", "18.22", "18.23", "18.24", "18.26", "18.30", "18.31",
}

// publishedUnknownChange is the first day of a wording whose change no source dates: it is
// the month of the edition that has it, and no case is about the day before.
const publishedUnknownChange = "2017-11-01"

// TestPublishedDates holds that each clause on dates has a case with something not recorded,
// that one that goes by the day has a case that a month or year leaves undecided, and that
// where a wording begins there is a case on that day and one on the day before.
func TestPublishedDates(t *testing.T) {
	book := publishedBook(t)
	answers, asked := map[*rules.Clause][]string{}, map[string][]string{}
	for _, w := range book.Cases {
		answers[w.Clause] = append(answers[w.Clause], w.Answer)
		if w.HasOn {
			asked[w.Clause.Number] = append(asked[w.Clause.Number], w.On.From.String())
		}
	}
	wordings, undecided := 0, map[string]bool{}
	for _, c := range publishedClauses(book) {
		if !slices.Contains([]string{"10", "11", "18"}, c.Chapter.Number) {
			continue
		}
		require.Contains(t, answers[c], engine.NotRecorded.String(), "clause %s of %s has no case with something not recorded", c.Number, c.Period)
		if slices.Contains(answers[c], engine.Marginal.String()) {
			undecided[c.Number] = true
		}
		if from := c.Period.From; from != rules.BeforeAll {
			wordings++
			require.Contains(t, asked[c.Number], from.String(), "clause %s", c.Number)
			if from.String() != publishedUnknownChange {
				require.Contains(t, asked[c.Number], (from - 1).String(), "clause %s", c.Number)
			}
		}
	}
	require.Equal(t, 15, wordings)
	for _, number := range publishedByTheDay {
		require.True(t, undecided[number], "clause %s has no case that is undecided within a month or year", number)
	}
}

// TestPublishedGeometry holds that the chapters on what follows from joints and sizes state
// nothing that follows, and that each of their clauses has a case that cannot be told.
func TestPublishedGeometry(t *testing.T) {
	book := publishedBook(t)
	untold := map[*rules.Clause]bool{}
	for _, w := range book.Cases {
		untold[w.Clause] = untold[w.Clause] || w.Answer == engine.NotRecorded.String()
	}
	clauses := 0
	for _, chapter := range book.Chapters {
		if !slices.Contains([]string{"15", "16", "17"}, chapter.Number) {
			continue
		}
		for _, c := range chapter.Clauses {
			clauses++
			require.True(t, untold[c], "clause %s has no case with something not recorded", c.Number)
		}
		for _, w := range book.Cases {
			if slices.Contains(chapter.Clauses, w.Clause) {
				require.Empty(t, statedThoughDerived(w.AsBuilt.Root), "%q", w.Name)
			}
		}
	}
	require.Equal(t, 46, clauses)
}

// statedThoughDerived names what a part and the parts within it state that else follows. The
// y of a joint is stated but for mirror images.
func statedThoughDerived(part *vehicle.Part) []string {
	var found []string
	for i, x := range part.Type.Particulars {
		isOwnPlace := part.Type.Name == "joint" && x.Name == "y"
		if x.Derived && !isOwnPlace && part.Values[i].State != vehicle.Nothing {
			found = append(found, part.Name()+": "+x.Name)
		}
	}
	for _, list := range part.Lists {
		for _, inner := range list.Parts {
			found = append(found, statedThoughDerived(inner)...)
		}
	}
	return found
}
