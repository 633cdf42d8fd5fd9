package engine

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// letOff writes a dispensation for tube 6 with more keys.
func letOff(more string) string {
	return "dispensation \"D-1\" {\n  clause = \"4.1\"\n  subject = \"tube 6\"\n  granted_by = \"K. Harrowgate\"\n" + more + "}\n"
}

func TestDispensationFitsInEveryPoint(t *testing.T) {
	at := func(name string) *vehicle.Event {
		day := on(t, "2027-06-01")
		return &vehicle.Event{Name: name, Inspection: day, First: day, Last: day}
	}
	for _, x := range []struct {
		more, day string
		event     *vehicle.Event
		why       string // "" where it covers
	}{
		{"", "2027-06-01", nil, ""},
		{"from = \"2027-06-01\"\nuntil = \"2027-06-01\"\n", "2027-06-01", nil, ""},
		{"from = \"2027-06-01\"\n", "2027-05-31", nil, "it begins on 2027-06-01"},
		{"until = \"2027-06-01\"\n", "2027-06-02", nil, "it ended on 2027-06-01"},
		{"chassis = \"ts-0417\"\nlog_book = \"l-55\"\n", "2027-06-01", nil, ""},
		{"chassis = \"TS-0418\"\n", "2027-06-01", nil, "it is for chassis TS-0418, not TS-0417"},
		{"log_book = \"L-56\"\n", "2027-06-01", nil, "it is for log book number L-56, not L-55"},
		{"events = [\"Saltmarsh\", \"Dunlin\"]\n", "2027-06-01", nil, "it holds only at Saltmarsh and Dunlin, and no event was asked for"},
		{"events = [\"Saltmarsh\", \"Dunlin\"]\n", "2027-06-01", at("dunlin"), ""},
		{"events = [\"Saltmarsh\"]\n", "2027-06-01", at("Dunlin"), "it holds only at Saltmarsh, not at Dunlin"},
		{"condition = \"car.weighed_mass <= 985*kg\"\n", "2027-06-01", nil, ""}, // as read
		{"condition = \"car.weighed_mass > 985*kg\"\n", "2027-06-01", nil, "its condition is not met: car.weighed_mass > 985*kg"},
		{"condition = \"car.ground_clearance > 100*mm\"\n", "2027-06-01", nil,
			"whether its condition is met is open (ground clearance of car Tried): car.ground_clearance > 100*mm"},
		{"condition = \"on <= date('2027-06-01')\"\n", "2027-06-01", nil, ""},
		{"condition = \"on <= date('2027-06-01')\"\n", "2027-06-02", nil, "its condition is not met: on <= date('2027-06-01')"},
		{"until = \"2027-06-01\"\nchassis = \"X\"\n", "2027-06-02", nil, "it is for chassis X, not TS-0417; it ended on 2027-06-01"},
	} {
		r := checkedOn(t, letOff(x.more), x.day, x.event)
		clause, entry := clauseNumbered(r, "4.1"), clauseNumbered(r, "dispensation D-1")
		tube := subjectNamed(t, clause, "tube 6")
		require.True(t, entry.Remark)
		if x.why == "" {
			require.Equal(t, UnderDispensation, tube.Verdict, x.more)
			require.Equal(t, "D-1", tube.Dispensation)
			require.Equal(t, UnderDispensation, clause.Verdict, "the other tube meets")
			require.Contains(t, tube.Notes[0], "dispensation D-1, granted by K. Harrowgate")
			require.Equal(t, "covers clause 4.1 for tube 6", entry.Note)
			continue
		}
		require.Equal(t, Gap, tube.Verdict, x.more)
		require.Empty(t, tube.Dispensation)
		require.Equal(t, Gap, clause.Verdict)
		require.Equal(t, []string{"dispensation D-1 does not count: " + x.why}, tube.Notes)
		require.Equal(t, "does not count: "+x.why, entry.Note)
	}
}

func TestDispensationThatCoversNothing(t *testing.T) {
	for _, x := range []struct{ clause, subject, want string }{
		{"9.9", "", "covers nothing: the rulebook has no clause 9.9"},
		{"4.1", "tube 5", "covers nothing: there is no gap in clause 4.1 for tube 5"},
		{"4.1", "mud flap", "covers nothing: clause 4.1 has no subject mud flap"},
		{"4.3", "", "covers nothing: there is no gap in clause 4.3"},
		{"4.2", "the car", "covers clause 4.2 for the car"},
		{"4.2", "", "covers clause 4.2"},
	} {
		subject := ""
		if x.subject != "" {
			subject = "subject = \"" + x.subject + "\"\n"
		}
		papers := "dispensation \"D-1\" {\n  clause = \"" + x.clause + "\"\n  granted_by = \"K. Harrowgate\"\n" + subject + "}\n"
		with, without := checkedOn(t, papers, "2027-06-01", nil), checkedOn(t, "", "2027-06-01", nil)
		entry := clauseNumbered(with, "dispensation D-1")
		require.Equal(t, x.want, entry.Note)
		require.True(t, entry.Remark)
		total := func(r *Result) (sum int) {
			for _, n := range r.Counts {
				sum += n
			}
			return sum
		}
		require.Equal(t, total(without), total(with), "a remark counts towards nothing")
	}
}

func TestDispensationLetsOffTooFew(t *testing.T) {
	p := bookOf(t, "across = \"tube in cage.tubes\"\nwhere = \"tube.part == 'main hoop'\"\nat_least = 2\ndemand = \"tube.outside >= 45*mm\"")
	const car = "car \"Tried\" {\n}\ntube \"1\" {\n  part = \"main hoop\"\n  outside = \"45 mm\"\n}\n"
	check := func(papers string) *ClauseResult {
		return clauseNumbered(p.Check(p.Car(sheetOf(t, car+papers)), Request{Day: on(t, "2027-06-01")}), "1.1")
	}
	require.Equal(t, Gap, check("").Verdict)
	whole := check("dispensation \"D-1\" {\n  clause = \"1.1\"\n  granted_by = \"K. Harrowgate\"\n}\n")
	require.Equal(t, UnderDispensation, whole.Verdict)
	require.Equal(t, "1 on the sheet, at least 2 asked; dispensation D-1, granted by K. Harrowgate", whole.Note)
	one := check("dispensation \"D-1\" {\n  clause = \"1.1\"\n  subject = \"tube 1\"\n  granted_by = \"K. Harrowgate\"\n}\n")
	require.Equal(t, Gap, one.Verdict, "that there are too few is no matter of the one that is there")
}

func TestConditionsAreChecked(t *testing.T) {
	p := programOf(t, paperBook)
	sheet := sheetOf(t, paperCar+letOff("condition = \"car.weighed_mas <= 5*kg and tube.x\"\n"))
	faults := p.Papers(sheet)
	require.Len(t, faults, 2)
	require.Equal(t, "car.hcl", faults[0].Subject.Filename)
	require.Equal(t, 23, faults[0].Subject.Start.Line)
	require.Equal(t, 18, faults[0].Subject.Start.Column)
	wrong := p.Papers(sheetOf(t, paperCar+letOff("condition = \"car.weighed_mass\"\n")))
	require.Len(t, wrong, 1, "a figure is no condition")

	r := p.Check(p.Car(sheet), Request{Day: on(t, "2027-06-01")})
	require.Equal(t, Gap, subjectNamed(t, clauseNumbered(r, "4.1"), "tube 6").Verdict, "what cannot be read lets nothing off")
}

// TestPapersByStretches holds the stretches of a clause that papers bear on against a check
// of every day.
func TestPapersByStretches(t *testing.T) {
	p := programOf(t, paperBook)
	sheet := sheetOf(t, paperCar+letOff("from = \"2027-02-01\"\nuntil = \"2027-03-15\"\n")+openNote+`dispensation "D-2" {
  clause     = "4.1"
  granted_by = "K. Harrowgate"
  condition  = "on >= date('2027-04-10') and on < date('2027-04-12') or year_of(on) == 2028"
}
inspection "I1" {
  day     = "2027-08-01"
  clause  = "4.1"
  outcome = "refused"
}
`)
	car := p.Car(sheet)
	from := on(t, "2026-12-01")
	said := func(c *ClauseResult) string {
		text := outcomeOf(c)
		for _, s := range c.Subjects {
			text += fmt.Sprint(s.Notes)
		}
		return text
	}
	for _, clause := range p.clauses {
		line := &timeline{}
		stretches, _ := line.stretches(p.checker(car, Request{}), clause, from, from.PlusYears(3))
		require.LessOrEqual(t, line.evaluations, 2*line.cuts+2)
		single, day := p.checker(car, Request{}), from
		let := 0
		for _, stretch := range stretches {
			for ; day <= stretch.until; day++ {
				single.setDay(day)
				got := single.onDay(clause)
				if clause.Number == "4.1" && got.Verdict == UnderDispensation {
					let++
				}
				require.Equal(t, outcomeOf(stretch.result), outcomeOf(got), "%s on %s", clause.Number, day)
				if stretch.from == day {
					require.Equal(t, said(stretch.result), said(got), "%s on %s", clause.Number, day)
				}
			}
		}
		if clause.Number == "4.1" {
			require.Equal(t, 28+15+2+366, let, "February and half of March, two days of April, a leap year")
		}
	}
}

// TestDispensationThatEndsDuringAnEvent holds that an event is as bad as its worst day.
func TestDispensationThatEndsDuringAnEvent(t *testing.T) {
	event := &vehicle.Event{Name: "Dunlin", Inspection: on(t, "2027-06-04"), First: on(t, "2027-06-05"), Last: on(t, "2027-06-06")}
	lasting := checkedOn(t, letOff("until = \"2027-06-06\"\n"), "2027-06-04", event)
	require.Equal(t, UnderDispensation, clauseNumbered(lasting, "4.1").Verdict)
	ending := checkedOn(t, letOff("until = \"2027-06-05\"\n"), "2027-06-04", event)
	tube := subjectNamed(t, clauseNumbered(ending, "4.1"), "tube 6")
	require.Equal(t, Gap, tube.Verdict)
	require.Equal(t, []string{"dispensation D-1 does not count: it ended on 2027-06-05", "on 2027-06-06"}, tube.Notes)

	note := checkedOn(t, "logbook_note \"N1\" {\n  day = \"2027-06-05\"\n  text = \"Bent.\"\n  cleared_on = \"2027-06-06\"\n  cleared_by = \"R. Fennimore\"\n}\n", "2027-06-04", event)
	require.Equal(t, Gap, clauseNumbered(note, "note N1").Verdict)
	require.True(t, note.Chapters[len(note.Chapters)-1].IsLogBook())
}
