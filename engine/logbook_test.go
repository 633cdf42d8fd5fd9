package engine

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// paperBook is a rulebook of a clause about each tube and one about the car.
const paperBook = `rulebook "Tried" {
  edition = "1"
}
chapter "4" {
  title = "Cage"
  clause "4.1" {
    title   = "Outside"
    concern = "safety"
    across  = "tube in cage.tubes"
    demand  = "tube.outside >= 45*mm"
  }
  clause "4.2" {
    title   = "Mass"
    concern = "safety"
    demand  = "car.weighed_mass >= 1000*kg"
  }
  clause "4.3" {
    title   = "Straps"
    concern = "safety"
    across  = "strap in harness['driver'].straps"
    demand  = "on <= end_of_label(strap.not_after)"
  }
}
`

// paperCar is a car for it, with a tube and a mass that fall short.
const paperCar = `car "Tried" {
  chassis        = "TS-0417"
  logbook_number = "L-55"
  weighed_mass   = "985 kg +/- 4 kg"
}
tube "5" {
  outside = "45 mm"
}
tube "6" {
  outside = "44.2 mm"
}
harness "driver" {
  strap "left shoulder" {
    not_after = "2029"
  }
}
seat "driver" {
}
`

// on is a day.
func on(t testing.TB, text string) quantity.Day {
	t.Helper()
	days, fault := quantity.ParseDays(text)
	require.Nil(t, fault, text)
	require.Equal(t, quantity.ToDay, days.Precision)
	return days.From
}

// checkedOn is what the paper book says of the paper car with more papers.
func checkedOn(t testing.TB, papers, day string, event *vehicle.Event) *Result {
	t.Helper()
	p := programOf(t, paperBook)
	sheet := sheetOf(t, paperCar+papers)
	require.Empty(t, p.Papers(sheet))
	r := Request{Day: on(t, day), All: true}
	if event != nil {
		r.Event = event
	}
	return p.Check(p.Car(sheet), r)
}

// clauseNumbered finds a clause of a result, nil where it has none.
func clauseNumbered(r *Result, number string) *ClauseResult {
	for _, chapter := range r.Chapters {
		for _, c := range chapter.Clauses {
			if c.Clause.Number == number {
				return c
			}
		}
	}
	return nil
}

// subjectNamed finds a subject of a clause.
func subjectNamed(t testing.TB, c *ClauseResult, name string) *SubjectResult {
	t.Helper()
	for _, s := range c.Subjects {
		if s.Name == name {
			return s
		}
	}
	require.Fail(t, "no subject", name)
	return nil
}

const openNote = `logbook_note "N3" {
  event      = "Saltmarsh"
  day        = "2027-05-16"
  clause     = "4.1"
  text       = "Dent in tube."
  before     = "2027-06-18"
  fixed      = "2027-06-20"
  cleared_on = "2027-07-01"
  cleared_by = "R. Fennimore"
}
`

func TestLogBookNoteByDay(t *testing.T) {
	for _, x := range []struct {
		day     string
		verdict Verdict
		said    string
	}{
		{"2027-05-16", Gap, "open; to be cleared by 2027-06-18"},
		{"2027-06-18", Gap, "open; to be cleared by 2027-06-18"},
		{"2027-06-19", Gap, "open; it had to be cleared by 2027-06-18, which is past"},
		{"2027-06-20", ByEye, "fixed on 2027-06-20, not cleared: show it to an inspector, who strikes it out; it had to be cleared by 2027-06-18, which is past"},
		{"2027-06-30", ByEye, "fixed on 2027-06-20, not cleared: show it to an inspector, who strikes it out; it had to be cleared by 2027-06-18, which is past"},
		{"2027-07-01", Meets, "cleared on 2027-07-01 by R. Fennimore"},
	} {
		r := checkedOn(t, openNote, x.day, nil)
		last := r.Chapters[len(r.Chapters)-1]
		require.True(t, last.IsLogBook(), x.day)
		require.Equal(t, "Log book", last.Chapter.Title)
		note := clauseNumbered(r, "note N3")
		require.Equal(t, x.verdict, note.Verdict, x.day)
		require.Equal(t, "Dent in tube.", note.Note)
		require.Equal(t, []string{x.said}, note.Subjects[0].Notes, x.day)
		beside := subjectNamed(t, clauseNumbered(r, "4.1"), "tube 5")
		require.Equal(t, Meets, beside.Verdict, "the figures are what they are")
		if x.verdict == Meets {
			require.Empty(t, beside.Notes)
		} else {
			require.Equal(t, []string{"log book note N3: " + x.said}, beside.Notes, x.day)
		}
	}
	require.Nil(t, clauseNumbered(checkedOn(t, openNote, "2027-05-15", nil), "note N3"), "not written yet")
}

func TestLogBookNotesCount(t *testing.T) {
	without, with := checkedOn(t, "", "2027-06-01", nil), checkedOn(t, openNote, "2027-06-01", nil)
	require.Equal(t, without.Counts[Gap]+1, with.Counts[Gap])
	require.Len(t, without.Chapters, 1, "no papers, no chapter")
	require.Equal(t, Gap, with.Chapters[1].Worst)

	p := programOf(t, paperBook)
	car := p.Car(sheetOf(t, paperCar+openNote))
	for only, stands := range map[string]bool{"4.1": true, "4": true, "4.2": false} {
		r := p.Check(car, Request{Day: on(t, "2027-06-01"), Only: []string{only}})
		require.Equal(t, stands, clauseNumbered(r, "note N3") != nil, only)
	}
}

func TestIncidentByDay(t *testing.T) {
	const papers = `incident "gate post" {
  day          = "2027-06-20"
  hit          = "Gate post."
  loaded       = ["harness", "seat driver", "helmet driver"]
  inspected    = "2027-07-01"
  inspected_by = "Wold Belts"
}
`
	for _, x := range []struct {
		day     string
		verdict Verdict
	}{{"2027-06-20", NotRecorded}, {"2027-06-30", NotRecorded}, {"2027-07-01", Meets}} {
		r := checkedOn(t, papers, x.day, nil)
		incident := clauseNumbered(r, "incident gate post")
		require.Equal(t, x.verdict, incident.Verdict, x.day)
		var names []string
		for _, s := range incident.Subjects {
			names = append(names, s.Name)
			require.Equal(t, x.verdict, s.Verdict, "%s on %s", s.Name, x.day)
		}
		require.Equal(t, []string{"harness driver", "seat driver", "helmet driver"}, names)
		strap := clauseNumbered(r, "4.3").Subjects[0]
		require.Equal(t, x.verdict, strap.Verdict, "whatever its date")
		if x.verdict == NotRecorded {
			require.Contains(t, incident.Subjects[0].Notes, noteReinspect)
			require.Equal(t, []string{"loaded in the incident gate post on 2027-06-20: " + noteReinspect}, strap.Notes)
			require.Len(t, strap.Causes, 1)
			require.Equal(t, Loaded, strap.Causes[0].Kind)
			require.Equal(t, "harness driver, loaded in the incident gate post on 2027-06-20", strap.Causes[0].Text)
			require.Equal(t, "not_after", strap.Causes[0].Particular.Name)
		} else {
			require.Empty(t, strap.Notes)
		}
	}
	require.Nil(t, clauseNumbered(checkedOn(t, papers, "2027-06-19", nil), "incident gate post"))
}

func TestIncidentFollowsTheGear(t *testing.T) {
	season, faults := vehicle.LoadSeason(fstest.MapFS{"season.hcl": {Data: []byte(crewSeason)}}, "season.hcl", "season.hcl", nil, vehicle.BuiltIn())
	require.Empty(t, faults)
	sheet := sheetOf(t, paperCar+`incident "bank" {
  day    = "2027-05-15"
  event  = "Quarry Night"
  loaded = ["helmet driver"]
}
`)
	p := programOf(t, paperBook)
	loaded := func(crew ...string) []string {
		var names []string
		if c := clauseNumbered(p.Check(p.Car(sheet.WithCrew(season, crew)), Request{Day: on(t, "2027-05-16")}), "incident bank"); c != nil {
			for _, s := range c.Subjects {
				names = append(names, s.Name)
			}
		}
		return names
	}
	require.Equal(t, []string{"helmet driver"}, loaded(), "whose it is nobody knows")
	require.Equal(t, []string{"helmet of A. Penrith-Vale"}, loaded("A. Penrith-Vale", "B. Oakhollow"))
	require.Equal(t, []string{"helmet of A. Penrith-Vale"}, loaded("B. Oakhollow", "A. Penrith-Vale"), "it goes with the person, not with the place")
	require.Empty(t, loaded("B. Oakhollow"), "it is not in the car")
}
