package engine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// TestSubjects holds which subjects a clause has, and what comes of too few of them.
func TestSubjects(t *testing.T) {
	const hoops = "    across = \"tube in cage.tubes\"\n    where = \"tube.part == 'main hoop'\"\n"
	const one = "    at_least = 1\n"
	wall := demand("tube.wall >= 2.5*mm")
	hoop, stay := "part = \"main hoop\"\nwall = \"2.6 mm\"", "part = \"backstay\"\nwall = \"1 mm\""
	nobodySaid := "wall = \"2.6 mm\""
	hold(t, []clauseCase{
		{why: "the subject meets", clause: hoops + one + wall, sheet: tubes(hoop, stay), want: Meets},
		{why: "the worst subject counts", clause: hoops + one + wall, sheet: tubes(hoop, "part = \"main hoop\"\nwall = \"2.4 mm\""), want: Gap},
		{why: "no subject, and none is asked for", clause: hoops + wall, sheet: tubes(stay), want: DoesNotApply, says: []string{"nothing on the sheet"}},
		{why: "no subject, and one is asked for", clause: hoops + one + wall, sheet: tubes(stay), want: Gap, says: []string{"0 on the sheet, at least 1 asked"}},
		{why: "one of two", clause: hoops + "    at_least = 2\n" + wall, sheet: tubes(hoop, stay), want: Gap, says: []string{"1 on the sheet, at least 2 asked"}},
		{why: "none of the list", clause: hoops + one + wall, sheet: "not_fitted = [\"tube\"]\n", want: Gap},
		{why: "nothing is said of the list", clause: hoops + one + wall, sheet: "", want: NotRecorded, says: []string{"tubes"}},
		{why: "the list is not complete", clause: hoops + one + wall, sheet: tubes(hoop) + "unfinished = [\"tube\"]\n", want: NotRecorded, says: []string{"tubes"}},
		{why: "not complete, and one falls short", clause: hoops + one + wall, sheet: tubes("part = \"main hoop\"\nwall = \"1 mm\"") + "unfinished = [\"tube\"]\n", want: Gap},
		{why: "it may be one, and meets", clause: hoops + wall, sheet: tubes(nobodySaid), want: Meets},
		{why: "it may be one, and falls short", clause: hoops + wall, sheet: tubes("wall = \"2.4 mm\""), want: NotRecorded, says: []string{"part of tube 1"}},
		{why: "it may be the one asked for", clause: hoops + one + wall, sheet: tubes(nobodySaid), want: NotRecorded, says: []string{"part of tube 1"}},
		{why: "one surely is", clause: hoops + one + wall, sheet: tubes(hoop, nobodySaid), want: Meets},
		{
			why: "two lists at once", clause: "    across = [\"harness in harnesses\", \"strap in harness.straps\"]\n" + demand("strap.width >= 70*mm"),
			sheet: "harness \"driver\" {\n  strap \"left shoulder\" { width = \"75 mm\" }\n  strap \"left lap\" { width = \"44 mm\" }\n}\n", want: Gap,
		},
		{
			why: "the inner list is not complete", clause: "    across = [\"harness in harnesses\", \"strap in harness.straps\"]\n" + demand("strap.width >= 40*mm"),
			sheet: "harness \"driver\" {\n  strap \"left lap\" { width = \"44 mm\" }\n  unfinished = [\"strap\"]\n}\n", want: NotRecorded, says: []string{"straps of harness driver"},
		},
		{why: "it does not apply to this car", clause: "    applies = \"car.seat_count == 4\"\n" + hoops + one + wall, sheet: "car \"Tessel 16\" { seat_count = 2 }\n" + tubes(stay), want: DoesNotApply},
		{why: "whether it applies is open, and it is met", clause: "    applies = \"car.seat_count == 4\"\n" + hoops + one + wall, sheet: tubes(hoop), want: Meets},
		{why: "whether it applies is open, and it is not met", clause: "    applies = \"car.seat_count == 4\"\n" + demand("all(cage.tubes, .wall >= 2.5*mm)"), sheet: tubes(stay), want: NotRecorded, says: []string{"seat count"}},
		{why: "whether it applies is open, and there are too few", clause: "    applies = \"car.seat_count == 4\"\n" + hoops + one + wall, sheet: tubes(stay), want: NotRecorded, says: []string{"seat count"}},
	})
}

// TestLookedAt holds what a person has to look at, and which papers are asked for.
func TestLookedAt(t *testing.T) {
	const look = "    look_for = \"One piece, no joint.\"\n"
	const across = "    across = \"tube in cage.tubes\"\n"
	const paper = "    evidence = [\"material certificate\"]\n"
	wall := demand("tube.wall >= 2.5*mm")
	const certificate = "evidence \"Material  certificate\" { note = \"in the folder\" }"
	hold(t, []clauseCase{
		{why: "without a demand it is by eye always", clause: look, sheet: "", want: ByEye},
		{why: "the figures meet, still to be looked at", clause: across + look + wall, sheet: tubes("wall = \"2.6 mm\""), want: ByEye, says: []string{"figures meet, still to be looked at"}},
		{why: "the figures do not meet", clause: across + look + wall, sheet: tubes("wall = \"2.4 mm\""), want: Gap, silent: []string{"figures meet"}},
		{why: "the figures are not known", clause: across + look + wall, sheet: tubes(""), want: NotRecorded},
		{why: "whether there is anything to look at is open", clause: "    applies = \"car.seat_count == 2\"\n" + look, sheet: "", want: NotRecorded, says: []string{"seat count"}},
		{why: "there is nothing to look at", clause: "    applies = \"car.seat_count == 2\"\n" + look, sheet: "car \"Tessel 16\" { seat_count = 4 }\n", want: DoesNotApply},
		{why: "a paper that is not there is a gap", clause: across + paper + wall, sheet: tubes("wall = \"2.6 mm\""), want: Gap, says: []string{"missing paper material certificate"}},
		{why: "the paper is there, however it is spelt", clause: across + paper + wall, sheet: tubes("wall = \"2.6 mm\"\n" + certificate), want: Meets},
		{why: "a paper alone", clause: paper, sheet: "", want: Gap, says: []string{"missing paper"}},
		{why: "no paper where it does not apply", clause: "    applies = \"car.seat_count == 2\"\n" + paper, sheet: "car \"Tessel 16\" { seat_count = 4 }\n", want: DoesNotApply},
	})
}

// TestAllowance holds that an allowance loosens a limit as the clause asks it, once,
// whichever way the formula is written.
func TestAllowance(t *testing.T) {
	const head = "    across = \"tube in cage.tubes\"\n    allowance = \"0.1 mm\"\n    judged = \"proved\"\n"
	for _, x := range []struct {
		formula  string
		within   string // meets by the allowance alone
		beyond   string
		particul string
	}{
		{"tube.wall >= 2.5*mm", "2.41 mm", "2.38 mm", "wall"},
		{"2.5*mm <= tube.wall", "2.41 mm", "2.38 mm", "wall"},
		{"not (tube.wall < 2.5*mm)", "2.41 mm", "2.38 mm", "wall"},
		{"not (2.5*mm > tube.wall)", "2.41 mm", "2.38 mm", "wall"},
		{"not (not (tube.wall >= 2.5*mm))", "2.41 mm", "2.38 mm", "wall"},
		{"not (tube.wall < 2.5*mm or tube.wall > 9*mm)", "2.41 mm", "2.38 mm", "wall"},
		{"any([2.5*mm, 3*mm], tube.wall >= #)", "2.41 mm", "2.38 mm", "wall"},
		{"none([2.5*mm], tube.wall < #)", "2.41 mm", "2.38 mm", "wall"},
		{"tube.wall > 2.5*mm", "2.41 mm", "2.4 mm", "wall"},
		{"tube.outside <= 45*mm", "45.09 mm", "45.2 mm", "outside"},
		{"not (tube.outside > 45*mm)", "45.09 mm", "45.2 mm", "outside"},
		{"40*mm <= tube.outside <= 45*mm", "39.91 mm", "39.89 mm", "outside"},
		{"40*mm <= tube.outside <= 45*mm", "45.1 mm", "45.11 mm", "outside"},
	} {
		for said, want := range map[string]Verdict{x.within: Meets, x.beyond: Gap} {
			c := clauseCase{clause: head + demand(x.formula), sheet: tubes(x.particul + " = \"" + said + "\"")}
			require.Equal(t, want.String(), c.work(t).Verdict.String(), "%s, %s", x.formula, said)
		}
	}
	mass := clauseCase{clause: "    allowance = \"0.1 mm\"\n" + demand("car.weighed_mass >= 1000*kg and car.ground_clearance >= 0.1*metre"), sheet: "car \"Tessel 16\" {\n  weighed_mass = \"999.99 kg\"\n  ground_clearance = \"150 mm\"\n}\n"}
	require.Equal(t, Gap, mass.work(t).Verdict, "an allowance of a length does nothing to a mass")
}

// TestStages holds when a clause is due, and TestRollUp what a whole car comes to.
func TestStages(t *testing.T) {
	late := clauseCase{clause: "    stage = \"before event\"\n" + demand("car.seat_count == 2"), sheet: "", stage: vehicle.StageBareShell}
	require.True(t, late.work(t).NotDue)
	require.Equal(t, DoesNotApply, late.work(t).Verdict, "it never turns into meets")
	due := clauseCase{clause: "    stage = \"before cutting\"\n" + demand("car.seat_count == 2"), sheet: "", stage: vehicle.StageBareShell}
	require.False(t, due.work(t).NotDue)
	require.Equal(t, NotRecorded, due.work(t).Verdict)
}

func TestRollUp(t *testing.T) {
	clause := func(number, concern, lines string) string {
		return "  clause \"" + number + "\" {\n    title = \"Clause\"\n    concern = \"" + concern + "\"\n" + lines + "\n  }\n"
	}
	p := loadBook(t, "", clause("1.1", "safety", demand("car.seat_count == 2"))+
		clause("1.2", "eligibility", "    stage = \"before trim\"\n"+demand("car.weighed_mass >= 1000*kg"))+
		clause("1.3", "advice", demand("car.seat_count == 4"))+
		clause("1.4", "safety", "    stage = \"bare shell\"\n    look_for = \"Welds.\"")+
		clause("1.5", "safety", "    stage = \"before event\"\n"+demand("car.seat_count == 2"))+
		"}\nchapter \"2\" {\n  title = \"Lamps\"\n"+clause("2.1", "safety", demand("car.seat_count == 4")))
	c := loadCar(t, p, "car \"Tessel 16\" { seat_count = 2 }")
	day, _ := quantity.CivilDay(2027, 3, 14)
	r := p.Check(c, Request{Day: day, Stage: vehicle.StageBeforeTrim})
	require.Equal(t, Gap, r.Worst)
	require.Equal(t, NotRecorded, r.Chapters[0].Worst)
	require.Equal(t, Gap, r.Chapters[1].Worst)
	require.Equal(t, 1, r.Counts[Meets])
	require.Equal(t, 1, r.Counts[NotRecorded])
	require.Equal(t, 1, r.Counts[ByEye])
	require.Equal(t, 1, r.Counts[Gap], "the advice that is not met counts towards nothing")
	require.Equal(t, 1, r.Advice[Gap])
	require.Equal(t, 1, r.NotDue)
	only := p.Check(c, Request{Day: day, Only: []string{"2"}})
	require.Len(t, only.Chapters, 1)
	require.Equal(t, "2", only.Chapters[0].Chapter.Number)
	verdicts := []Verdict{Gap, NotRecorded, Marginal, ByEye, UnderDispensation, Meets, DoesNotApply}
	require.Equal(t, verdicts, Verdicts())
	for i, v := range verdicts[:len(verdicts)-1] {
		require.Equal(t, v, verdicts[i+1].Worse(v), "worst first: gap, not recorded, marginal, by eye, under dispensation, meets, does not apply")
	}
}
