package engine

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// loadBook loads a rulebook whose chapter 1 holds the clauses.
func loadBook(t *testing.T, head, clauses string) *Program {
	t.Helper()
	text := "rulebook \"Invented Rules\" {\n  edition = \"2027\"\n" + head + "\n}\nchapter \"1\" {\n  title = \"Cage\"\n" + clauses + "\n}\n"
	book, faults := rules.Load(fstest.MapFS{"book.hcl": {Data: []byte(text)}}, "book.hcl", "book.hcl", vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), "%v\n%s", faults, text)
	p, diagnostics := Compile(book)
	require.Empty(t, diagnostics)
	return p
}

// loadCar loads a build sheet of a car with what it says beside its name.
func loadCar(t *testing.T, p *Program, says string) *Car {
	t.Helper()
	text := says
	if !strings.Contains(says, "car \"") {
		text = "car \"Tessel 16\" {}\n" + says
	}
	sheet, faults := vehicle.Load(fstest.MapFS{"car.hcl": {Data: []byte(text)}}, "car.hcl", "car.hcl", p.Book.Vocabulary, vehicle.Options{})
	require.False(t, faults.HasErrors(), "%v\n%s", faults, text)
	return p.Car(sheet)
}

// A clauseCase is one clause over one car: what it says and what has to come of it.
type clauseCase struct {
	why    string
	head   string // of the rulebook
	clause string // its lines; a title and a concern are added
	sheet  string
	stage  vehicle.Stage
	want   Verdict
	says   []string // each must stand in a note, a cause or a missing paper
	silent []string // none may
}

// work works the clause and returns its result.
func (x *clauseCase) work(t *testing.T) *ClauseResult {
	t.Helper()
	p := loadBook(t, x.head, "  clause \"1.1\" {\n    title = \"Clause\"\n    concern = \"safety\"\n"+x.clause+"\n  }")
	day, _ := quantity.CivilDay(2027, 3, 14)
	r := p.Check(loadCar(t, p, x.sheet), Request{Day: day, Stage: x.stage, All: true})
	require.Len(t, r.Chapters, 1)
	require.Len(t, r.Chapters[0].Clauses, 1)
	return r.Chapters[0].Clauses[0]
}

// told is every note, cause and missing paper of a clause.
func (c *ClauseResult) told() []string {
	all := []string{c.Note}
	for _, s := range c.Subjects {
		all = append(all, s.Notes...)
		for _, cause := range s.Causes {
			all = append(all, cause.Text)
		}
		for _, paper := range s.MissingPapers {
			all = append(all, "missing paper "+paper)
		}
	}
	return all
}

// hold works each case and holds it to what is wanted of it.
func hold(t *testing.T, cases []clauseCase) {
	t.Helper()
	for _, x := range cases {
		t.Run(x.why, func(t *testing.T) {
			got := x.work(t)
			said := got.told()
			require.Equal(t, x.want.String(), got.Verdict.String(), "%s\n%s\n%v", x.clause, x.sheet, said)
			for _, want := range x.says {
				require.True(t, slices.ContainsFunc(said, func(s string) bool { return strings.Contains(s, want) }), "%q in %q", want, said)
			}
			for _, no := range x.silent {
				require.False(t, slices.ContainsFunc(said, func(s string) bool { return strings.Contains(s, no) }), "%q in %q", no, said)
			}
		})
	}
}

func demand(formula string) string { return fmt.Sprintf("    demand = %q", formula) }

// tubes writes a tube for each text that says something of it.
func tubes(says ...string) string {
	var out strings.Builder
	for i, s := range says {
		fmt.Fprintf(&out, "tube \"%d\" {\n%s\n}\n", i+1, s)
	}
	return out.String()
}

// TestLists holds what lists come to that are empty, incomplete or not spoken of.
func TestLists(t *testing.T) {
	const none = "not_fitted = [\"tube\"]\n"
	const more = "unfinished = [\"tube\"]\n"
	thick, thin := tubes("wall = \"2.6 mm\""), tubes("wall = \"2.4 mm\"")
	all, any := demand("all(cage.tubes, .wall >= 2.5*mm)"), demand("any(cage.tubes, .wall >= 2.5*mm)")
	hold(t, []clauseCase{
		{why: "all of none is yes", clause: all, sheet: none, want: Meets},
		{why: "any of none is no", clause: any, sheet: none, want: Gap},
		{why: "none of none is yes", clause: demand("none(cage.tubes, .wall >= 2.5*mm)"), sheet: none, want: Meets},
		{why: "one of none is no", clause: demand("one(cage.tubes, .wall >= 2.5*mm)"), sheet: none, want: Gap},
		{why: "the count of none is nought", clause: demand("len(cage.tubes) == 0"), sheet: none, want: Meets},
		{why: "the sum of none is nought", clause: demand("sum(cage.tubes, .wall) == 0"), sheet: none, want: Meets},
		{why: "the least of none is not fitted", clause: demand("min(map(cage.tubes, .wall)) >= 2*mm"), sheet: none, want: Gap, says: []string{"not fitted"}},
		{why: "the mean of none is not fitted", clause: demand("mean(map(cage.tubes, .wall)) >= 2*mm"), sheet: none, want: Gap, says: []string{"not fitted"}},
		{why: "the first of none is not fitted", clause: demand("first(cage.tubes).wall >= 2*mm"), sheet: none, want: Gap, says: []string{"not fitted"}},
		{
			why: "the least of what may be none is open", clause: demand("min(map(filter(cage.tubes, .straight), .wall)) >= 2*mm"),
			sheet: thick, want: NotRecorded, says: []string{"straight"},
		},
		{
			why: "the first of what may be none is open", clause: demand("find(cage.tubes, .straight).wall >= 2*mm"),
			sheet: thick, want: NotRecorded, says: []string{"straight of tube 1"},
		},
		{
			why:    "though its wall is known, a member that may not count is in the sum with all or nothing",
			clause: demand("sum(filter(cage.tubes, .straight), .wall) <= 3*mm"), sheet: thick, want: Meets,
		},
		{why: "others may spoil all", clause: all, sheet: thick + more, want: NotRecorded, says: []string{"tubes"}},
		{why: "one known spoils all, whatever the others", clause: all, sheet: thin + more, want: Gap},
		{why: "one known is any, whatever the others", clause: any, sheet: thick + more, want: Meets},
		{why: "others may be any", clause: any, sheet: thin + more, want: NotRecorded, says: []string{"tubes"}},
		{why: "a count of known ones is enough", clause: demand("count(cage.tubes, .wall >= 2.5*mm) >= 1"), sheet: thick + more, want: Meets},
		{why: "a count has no upper end", clause: demand("count(cage.tubes, .wall >= 2.5*mm) <= 4"), sheet: thick + more, want: NotRecorded},
		{why: "too many are too many, whatever the others", clause: demand("len(cage.tubes) < 1"), sheet: thick + more, want: Gap},
		{why: "the least of the known is none of the others", clause: demand("min(map(cage.tubes, .wall)) < 2.5*mm"), sheet: thin + more, want: Meets},
		{why: "nothing is said of the list", clause: all, sheet: "", want: NotRecorded, says: []string{"tubes"}},
		{why: "later operators see all and any as they are", clause: demand("all(cage.tubes, .wall >= 2.5*mm) or any(cage.tubes, .wall < 2.5*mm)"), sheet: tubes("wall = \"2.5 mm +/- 0.1 mm\""), want: Meets},
	})
}

// TestPartsThatAreNotThere holds what comes of parts and particulars that are not there.
func TestPartsThatAreNotThere(t *testing.T) {
	const none = "not_fitted = [\"fire_system\"]\n"
	const there = "fire_system {\n  agent_mass = \"4 kg\"\n}\n"
	mass, fitted := demand("fire_system.agent_mass >= 3*kg"), demand("fitted(fire_system)")
	dent, filled := "    across = \"tube in cage.tubes\"\n"+demand("tube.deepest_dent <= 1*mm"), "    across = \"tube in cage.tubes\"\n"+demand("(tube.deepest_dent ?? 0) <= 1*mm")
	hold(t, []clauseCase{
		{why: "fitted with a block", clause: fitted, sheet: there, want: Meets},
		{why: "fitted is no where it is said", clause: fitted, sheet: none, want: Gap},
		{why: "fitted is open where nothing is said", clause: fitted, sheet: "", want: NotRecorded, says: []string{"whether fire system is fitted"}},
		{why: "a reading of it", clause: mass, sheet: there, want: Meets},
		{why: "a reading of what is not fitted is a gap", clause: mass, sheet: none, want: Gap, says: []string{"not fitted: fire system"}},
		{why: "a reading of what nobody has spoken of", clause: mass, sheet: "", want: NotRecorded},
		{why: "applies guards it", clause: "    applies = \"fitted(fire_system)\"\n" + mass, sheet: none, want: DoesNotApply},
		{why: "what is not fitted does not spoil another way", clause: demand("fire_system.agent_mass >= 3*kg or car.seat_count == 2"), sheet: "car \"Tessel 16\" { seat_count = 2 }\n" + none, want: Meets},
		{why: "nor make good a way that fails", clause: demand("fire_system.agent_mass >= 3*kg and car.seat_count == 2"), sheet: "car \"Tessel 16\" { seat_count = 4 }\n" + none, want: Gap, silent: []string{"not fitted"}},
		{why: "an uncertain date may yet say that it does not apply", clause: "    applies = \"fuel_cell.made <= date('2022-03-15')\"\n" + mass, sheet: none + "fuel_cell {\n  made = \"2022-03\"\n}\n", want: Marginal, says: []string{"made of fuel cell"}},
		{why: "no date makes good what is not fitted", clause: demand("fire_system.agent_mass >= 3*kg and fuel_cell.made <= date('2022-03-15')"), sheet: none + "fuel_cell {\n  made = \"2022-03\"\n}\n", want: Gap, says: []string{"not fitted: fire system"}},
		{why: "a date may stand in for what is not fitted", clause: demand("fire_system.agent_mass >= 3*kg or fuel_cell.made <= date('2022-03-15')"), sheet: none + "fuel_cell {\n  made = \"2022-03\"\n}\n", want: Marginal},
		{why: "a particular stated not to exist is a gap", clause: dent, sheet: tubes("deepest_dent = \"none\""), want: Gap, says: []string{"stated not to exist: deepest dent of tube 1"}},
		{why: "what stands in for none", clause: filled, sheet: tubes("deepest_dent = \"none\""), want: Meets},
		{why: "nothing stands in for what is not recorded", clause: filled, sheet: tubes(""), want: NotRecorded, says: []string{"deepest dent of tube 1"}},
		{why: "recorded is no for none", clause: demand("all(cage.tubes, recorded(.deepest_dent))"), sheet: tubes("deepest_dent = \"none\""), want: Gap},
		{why: "recorded is open for nothing", clause: demand("all(cage.tubes, recorded(.deepest_dent))"), sheet: tubes(""), want: NotRecorded, says: []string{"deepest dent of tube 1"}},
		{
			why: "none is not the cause where what stands in for it is", clause: "    judged = \"proved\"\n    across = \"tube in cage.tubes\"\n" + demand("(tube.deepest_dent ?? tube.wall) >= 2.5*mm"),
			sheet: tubes("deepest_dent = \"none\"\nwall = \"2.5 mm +/- 0.05 mm\""), want: Marginal, silent: []string{"stated not to exist"},
		},
		{why: "a part by a label that nobody has spoken of", clause: demand("harness['driver'].points >= 6"), sheet: "harness \"co-driver\" {\n  points = 6\n}\nunfinished = [\"harness\"]\n", want: NotRecorded, says: []string{"driver"}},
		{why: "a part by a label that is not there", clause: demand("harness['driver'].points >= 6"), sheet: "harness \"co-driver\" {\n  points = 6\n}\n", want: Gap, says: []string{"not fitted", "driver"}},
	})
}

// TestReadings holds what tolerances and several readings come to.
func TestReadings(t *testing.T) {
	const proved = "    judged = \"proved\"\n"
	const across = "    across = \"tube in cage.tubes\"\n"
	wall := across + demand("tube.wall >= 2.5*mm")
	hold(t, []clauseCase{
		{why: "as read it meets", clause: wall, sheet: tubes("wall = \"2.52 mm +/- 0.05 mm\""), want: Meets, says: []string{"as read, not proved"}},
		{why: "as read it falls short", clause: wall, sheet: tubes("wall = \"2.48 mm +/- 0.05 mm\""), want: Gap, says: []string{"as read, not proved"}},
		{why: "it meets over its whole range", clause: wall, sheet: tubes("wall = \"2.6 mm +/- 0.05 mm\""), want: Meets, silent: []string{"not proved"}},
		{why: "proved is marginal, though it meets as read", clause: proved + wall, sheet: tubes("wall = \"2.52 mm +/- 0.05 mm\""), want: Marginal, says: []string{"meets as read"}},
		{why: "proved is marginal, though it is short as read", clause: proved + wall, sheet: tubes("wall = \"2.48 mm +/- 0.05 mm\""), want: Marginal, says: []string{"short as read"}},
		{why: "proved over its whole range", clause: proved + wall, sheet: tubes("wall = \"2.56 mm +/- 0.05 mm\""), want: Meets},
		{why: "short over its whole range", clause: proved + wall, sheet: tubes("wall = \"2.4 mm +/- 0.05 mm\""), want: Gap},
		{why: "the whole rulebook proves", head: "  judged = \"proved\"", clause: wall, sheet: tubes("wall = \"2.52 mm +/- 0.05 mm\""), want: Marginal},
		{why: "on the limit it meets", clause: proved + wall, sheet: tubes("wall = \"2.5 mm\""), want: Meets},
		{why: "on the limit in inches it meets", clause: proved + across + demand("tube.outside >= 44.45*mm"), sheet: tubes("outside = \"1.75 in\""), want: Meets},
		{why: "a thousandth below it falls short", clause: wall, sheet: tubes("wall = \"2.499 mm\""), want: Gap},
		{why: "more than a bound may be the bound itself", clause: across + demand("tube.wall > 2.5*mm"), sheet: tubes("wall = \"> 2.5 mm\""), want: Marginal},
		{why: "the least favourable reading falls short", clause: wall, sheet: tubes("wall = { readings = [\"2.52 mm\", \"2.49 mm\"] }"), want: Gap},
		{why: "from the other side as well", clause: across + demand("tube.wall <= 2.5*mm"), sheet: tubes("wall = { readings = [\"2.52 mm\", \"2.49 mm\"] }"), want: Gap},
		{why: "all readings meet", clause: wall, sheet: tubes("wall = { readings = [\"2.52 mm\", \"2.5 mm\"] }"), want: Meets},
		{why: "the mean governs where the rulebook says so", head: "  readings = \"mean\"", clause: wall, sheet: tubes("wall = { readings = [\"2.52 mm\", \"2.49 mm\"] }"), want: Meets},
		{why: "an instrument's tolerance counts", clause: proved + wall, sheet: "instrument \"ultrasonic\" { tolerance = \"0.05 mm\" }\n" + tubes("wall = { reading = \"2.52 mm\", measured_with = \"ultrasonic\" }"), want: Marginal},
		{why: "nothing recorded", clause: wall, sheet: tubes("outside = \"45 mm\""), want: NotRecorded, says: []string{"wall of tube 1"}},
		{why: "what cannot matter is not asked for", clause: across + demand("tube.outside >= 40*mm or tube.wall >= 2.5*mm"), sheet: tubes("outside = \"45 mm\""), want: Meets, silent: []string{"wall"}},
		{why: "an uncertain date is never taken as read", clause: demand("years_after(fuel_cell.made, 5) >= date('2027-03-15')"), sheet: "fuel_cell {\n  made = \"2022-03\"\n}\n", want: Marginal, says: []string{"made of fuel cell"}},
		{why: "its label ends on one day", clause: demand("years_after(end_of_label(fuel_cell.made), 5) >= date('2027-03-15')"), sheet: "fuel_cell {\n  made = \"2022-03\"\n}\n", want: Meets},
	})
}
