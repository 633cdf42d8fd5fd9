package engine

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// crewSeason is two people, of whom one has an old helmet.
const crewSeason = `season "2027" {
  event "Quarry Night" {
    first_day = "2027-05-15"
    last_day  = "2027-05-16"
    crew      = ["A. Penrith-Vale", "B. Oakhollow"]
  }
}
crew "A. Penrith-Vale" {
  helmet { made = "2021-04" }
}
crew "B. Oakhollow" {
  helmet { made = "2014" }
}
`

// TestACarWithAnotherCrewIsCheckedAsOne holds that gear of a season is laid out with the
// car, and what follows from its joints is as before.
func TestACarWithAnotherCrewIsCheckedAsOne(t *testing.T) {
	season, faults := vehicle.LoadSeason(fstest.MapFS{"season.hcl": {Data: []byte(crewSeason)}}, "season.hcl", "season.hcl", nil, vehicle.BuiltIn())
	require.Empty(t, faults)
	sheet := sheetOf(t, stay)
	p := bookOf(t, "across = \"member in crew_members\"\ndemand = \"years_after(member.helmet.made, 10) >= event.last_day and cage.tube['1'].angle_to_vertical >= 29*deg\"")
	request := Request{All: true, Event: season.Events[0], Day: season.Events[0].First}
	check := func(sheet *vehicle.Sheet) *ClauseResult {
		return p.Check(p.Car(sheet), request).Chapters[0].Clauses[0]
	}
	require.Equal(t, NotRecorded, check(sheet).Verdict, "the sheet says nothing of its crew")

	both := check(sheet.WithCrew(season, season.Events[0].Crew))
	require.Equal(t, Gap, both.Verdict)
	require.Len(t, both.Subjects, 2)
	require.Equal(t, []Verdict{Meets, Gap}, []Verdict{both.Subjects[0].Verdict, both.Subjects[1].Verdict})
	require.Equal(t, "crew member B. Oakhollow", both.Subjects[1].Name)

	alone := check(sheet.WithCrew(season, []string{"A. Penrith-Vale"}))
	require.Equal(t, Meets, alone.Verdict)
	require.Len(t, alone.Subjects, 1)
}
