package engine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// gatePost loads the harness in the season of three events, until it is inspected.
func gatePost(inspected string) string {
	text := "incident \"gate post\" {\n  day    = \"2027-03-20\"\n  loaded = [\"harness driver\"]\n"
	if inspected != "" {
		text += "  inspected    = \"" + inspected + "\"\n  inspected_by = \"Wold Belts\"\n"
	}
	return text + "}\n"
}

func datedNamed(t *testing.T, car *CarSeason, name string) *DatedPart {
	t.Helper()
	for _, d := range car.Dated {
		if d.Name == name {
			return d
		}
	}
	require.Fail(t, "no dated part", name)
	return nil
}

// TestLoadedHarnessDoesNotHold holds that a strap which is in date by its label does not hold
// in the season from the day of an incident on, and does again once it is inspected.
func TestLoadedHarnessDoesNotHold(t *testing.T) {
	const strap = "right shoulder strap of harness driver" // in date to 2028-06-30
	days := func(d *DatedPart) (short []string) {
		for _, s := range d.Spans {
			if s.Verdict == NotRecorded {
				short = append(short, s.From.String()+" to "+s.Until.String())
			}
		}
		return short
	}
	open := seasonOf(t, threeEvents, beltAndBottle+gatePost(""), "2027-01-10", datedBook)
	right := datedNamed(t, open.Cars[0], strap)
	require.Equal(t, "2027-03-19", right.LastDay.String())
	require.Equal(t, []string{"2027-03-20 to 2028-06-30"}, days(right), "after that it is a gap by its date")
	require.Equal(t, "Two", right.Missed.Name)
	require.Equal(t, Reinspect, right.Renewal)
	require.False(t, right.Uncertain, "it is not its date that is uncertain")
	require.Contains(t, right.Limit, "gate post")
	require.Contains(t, open.Renew, right)
	belts := clauseNumbered(open.Cars[0].Events[2].Whole, "1.1")
	require.Equal(t, []Verdict{Gap, NotRecorded}, []Verdict{belts.Subjects[0].Verdict, belts.Subjects[1].Verdict}, "a gap stays one")
	require.Empty(t, belts.Subjects[0].Causes)
	require.Contains(t, belts.Subjects[0].Notes, "loaded in the incident gate post on 2027-03-20: "+noteReinspect)
	require.Equal(t, "2030-06-30", datedNamed(t, open.Cars[0], "seat driver").LastDay.String(), "it was not loaded")

	inspected := seasonOf(t, threeEvents, beltAndBottle+gatePost("2027-08-01"), "2027-01-10", datedBook)
	right = datedNamed(t, inspected.Cars[0], strap)
	require.Equal(t, []string{"2027-03-20 to 2027-07-31"}, days(right))
	require.Nil(t, right.Missed, "no event lies between")
	require.Equal(t, Meets, clauseNumbered(inspected.Cars[0].Events[1].Whole, "1.1").Subjects[1].Verdict)
}

// TestLoadedPartIsReadWhereverItStands holds clauses that are about the car and read a date of
// a loaded part, ones that only look, and ones that read another figure of it.
func TestLoadedPartIsReadWhereverItStands(t *testing.T) {
	const car = "car \"Tried\" {\n}\nharness \"driver\" {\n  strap \"left shoulder\" {\n    made = \"2026-01\"\n    width = \"75 mm\"\n  }\n}\nseat \"driver\" {\n  made = \"2026-01\"\n}\n"
	for _, x := range []struct {
		clause string
		want   Verdict
	}{
		{"demand = \"all(harness['driver'].straps, on <= years_after(.made, 5))\"", NotRecorded},
		{"demand = \"all(harness['driver'].straps, .made >= date('2020-01-01'))\"", NotRecorded},
		{"across = \"strap in harness['driver'].straps\"\ndemand = \"on <= years_after(strap.made, 5)\"\nlook_for = \"Cuts.\"", NotRecorded},
		{"across = \"strap in harness['driver'].straps\"\ndemand = \"on <= date('2029-12-31') and strap.width >= 70*mm\"", NotRecorded},
		{"across = \"strap in harness['driver'].straps\"\ndemand = \"strap.width >= 70*mm\"", Meets},
		{"across = \"seat in seats\"\ndemand = \"on <= years_after(seat.made, 5)\"", Meets},
		{"across = \"strap in harness['driver'].straps\"\ndemand = \"on <= years_after(strap.made, 1)\"", Gap},
	} {
		p := bookOf(t, x.clause)
		r := p.Check(p.Car(sheetOf(t, car+gatePost(""))), Request{Day: on(t, "2027-04-01")})
		require.Equal(t, x.want, clauseNumbered(r, "1.1").Verdict, x.clause)
		require.Equal(t, NotRecorded, clauseNumbered(r, "incident gate post").Verdict, "its own line in the log book")
	}
}

// TestLoadedByStretches holds the stretches of clauses about dates against a check of every
// day.
func TestLoadedByStretches(t *testing.T) {
	p := programOf(t, datedBook)
	car := p.Car(sheetOf(t, beltAndBottle+gatePost("2027-08-01")))
	from := on(t, "2027-01-10")
	for _, clause := range p.clauses {
		line := &timeline{}
		k := p.checker(car, Request{})
		k.editions = Editions{{p, car}}
		stretches, _ := line.stretches(k, clause, from, from.PlusYears(2))
		single, day, loaded := p.checker(car, Request{}), from, quantity.Day(0)
		for _, s := range stretches {
			for ; day <= s.until; day++ {
				single.setDay(day)
				got := single.onDay(clause)
				require.Equal(t, outcomeOf(s.result), outcomeOf(got), "%s on %s", clause.Number, day)
				if got.Verdict == NotRecorded {
					loaded++
				}
			}
		}
		want := quantity.Day(0)
		if clause.Number == "1.1" { // the left strap is a gap from 1 July on
			want = on(t, "2027-07-01") - on(t, "2027-03-20")
		}
		require.Equal(t, want, loaded, clause.Number)
	}
}

// TestIncidentDuringAnEvent holds that an event is as bad as its worst day.
func TestIncidentDuringAnEvent(t *testing.T) {
	event := &vehicle.Event{Name: "Two", Inspection: on(t, "2027-03-19"), First: on(t, "2027-03-19"), Last: on(t, "2027-03-21")}
	p := programOf(t, datedBook)
	r := p.Check(p.Car(sheetOf(t, beltAndBottle+gatePost(""))), Request{Day: event.Inspection, Event: event})
	strap := clauseNumbered(r, "1.1").Subjects[0]
	require.Equal(t, NotRecorded, strap.Verdict)
	require.Contains(t, strap.Notes, "from 2027-03-20 to 2027-03-21")
}
