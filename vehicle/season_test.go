package vehicle

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

const fullSeason = `
season "2027 and 2028" {
  lead  = "21 days"
  leads = { harness = "4 weeks", fire_system = "10 days" }
  note  = "both cars"

  event "Harbour Sprint" {
    first_day = "2027-06-12"
    last_day  = "2027-06-12"
  }
  event "Saltmarsh Opening Stages" {
    inspection_day = "2027-03-12"
    first_day      = "2027-03-13"
    last_day       = "2027-03-14"
    place          = "Saltmarsh quay"
    class          = "two-wheel drive open"
    crew           = ["a. penrith-vale", "B. Oakhollow"]
    rulebook       = "../rulebook"
    entry_closes   = "2027-02-26"
  }
  event "Quarry Night" {
    inspection_day = "2027-05-16"
    first_day      = "2027-05-15"
    last_day       = "2027-05-16"
    crew           = ["B. Oakhollow"]
  }
}

crew "A. Penrith-Vale" {
  dressed_mass = { reading = "82 kg", measured_with = "scale" }
  helmet {
    standard = "8859-2015"
    made     = "2021-04"
    evidence "helmet label" { file = "papers/helmet.jpg" }
  }
  head_restraint { standard = "FIA 8858-2010" }
  garment "suit" { made = "2020" }
  garment "gloves" {}
}
crew "B. Oakhollow" {
  helmet { made = "2019" }
  unfinished = ["garment"]
}
instrument "scale" { tolerance = "0.5 kg" }
`

// goodSeason reads a season without fault, with papers beside it.
func goodSeason(t testing.TB, text string, crew ...*Source) *Season {
	t.Helper()
	folder := fstest.MapFS{"shop/season.hcl": {Data: []byte(text)}, "shop/papers/helmet.jpg": {}}
	season, faults := LoadSeason(folder, "shop/season.hcl", "shop/season.hcl", crew, BuiltIn())
	require.Empty(t, faults)
	require.NotNil(t, season)
	return season
}

// civil is a day of the calendar.
func civil(t testing.TB, text string) quantity.Day {
	t.Helper()
	days, fault := quantity.ParseDays(text)
	require.Nil(t, fault)
	require.Equal(t, quantity.ToDay, days.Precision)
	return days.From
}

func TestASeasonIsReadByItsDays(t *testing.T) {
	season := goodSeason(t, fullSeason)
	require.Equal(t, "2027 and 2028", season.Name)
	require.Equal(t, "both cars", season.Note)
	require.Len(t, season.Hash, 64)
	require.Len(t, season.Sources, 1)
	var names []string
	for _, event := range season.Events {
		names = append(names, event.Name)
	}
	require.Equal(t, []string{"Saltmarsh Opening Stages", "Quarry Night", "Harbour Sprint"}, names)

	opening := season.Event("saltmarsh  opening STAGES")
	require.Same(t, season.Events[0], opening)
	require.Equal(t, "Saltmarsh quay", opening.Place)
	require.Equal(t, "two-wheel drive open", opening.Class)
	require.Equal(t, "../rulebook", opening.Rulebook)
	require.Equal(t, 18, opening.RulebookRange.Start.Line)
	require.Equal(t, []string{"A. Penrith-Vale", "B. Oakhollow"}, opening.Crew, "as the crew blocks have them")
	require.Equal(t, civil(t, "2027-03-12"), opening.Inspection)
	require.True(t, opening.HasEntryCloses)
	require.Equal(t, civil(t, "2027-02-26"), opening.EntryCloses)
	require.Equal(t, []quantity.Day{civil(t, "2027-03-12"), civil(t, "2027-03-13"), civil(t, "2027-03-14")}, opening.Days())

	require.Equal(t, []quantity.Day{civil(t, "2027-05-15"), civil(t, "2027-05-16")}, season.Events[1].Days(), "inspected on its second day")
	harbour := season.Event("Harbour Sprint")
	require.Equal(t, civil(t, "2027-06-12"), harbour.Inspection, "the first day where none is given")
	require.Equal(t, []quantity.Day{civil(t, "2027-06-12")}, harbour.Days())
	require.False(t, harbour.HasEntryCloses)
	require.Empty(t, harbour.Crew)
	require.Nil(t, season.Event("Moor Stages"))
}

func TestLeadTimesAreOfAPartOrOfWhatItBelongsTo(t *testing.T) {
	season := goodSeason(t, fullSeason)
	for name, days := range map[string]int64{"harness": 28, "strap": 28, "anchorage": 28, "fire_system": 10, "fire_bottle": 10, "seat": 21, "helmet": 21} {
		require.Equal(t, days, season.LeadOf(BuiltIn().Type(name)), name)
	}
	without := goodSeason(t, strings.Replace(fullSeason, `lead  = "21 days"`, "", 1))
	require.Zero(t, without.LeadOf(BuiltIn().Type("seat")))
}

func TestGearBelongsToPeople(t *testing.T) {
	season := goodSeason(t, fullSeason)
	require.Len(t, season.People, 2)
	person := season.Person("a. Penrith-Vale")
	require.Equal(t, "A. Penrith-Vale", person.Name)
	require.Nil(t, season.Person("Z. Ferrow"))
	gear := person.Gear
	require.Equal(t, "crew_member", gear.Type.Name)
	require.Empty(t, gear.Label)
	require.Equal(t, "scale", value(t, gear, "dressed_mass").Readings[0].Instrument)

	helmet := list(t, gear, "helmet").Parts[0]
	require.Equal(t, "helmet of A. Penrith-Vale", helmet.Name())
	require.Equal(t, "2021-04", value(t, helmet, "made").Days.String())
	require.True(t, helmet.Evidence[0].Found, "looked for beside the season")
	garments := list(t, gear, "garment")
	require.True(t, garments.Complete)
	require.Equal(t, "overalls garment of A. Penrith-Vale", garments.Parts[0].Name())
	require.False(t, list(t, season.People[1].Gear, "garment").Complete)
}

func TestCrewCanStandInFilesOfItsOwn(t *testing.T) {
	events, crew, ok := strings.Cut(fullSeason, "\ncrew ")
	require.True(t, ok)
	source, faults := ParseSource("people/both.hcl", []byte("crew "+crew))
	require.Empty(t, faults)
	apart := goodSeason(t, events, source)
	require.Len(t, apart.People, 2)
	require.Len(t, apart.Sources, 2)
	require.False(t, list(t, apart.People[0].Gear, "helmet").Parts[0].Evidence[0].Found, "not looked for beside other files")
	require.NotEqual(t, goodSeason(t, fullSeason).Hash, apart.Hash)

	folder := fstest.MapFS{"season/a.hcl": {Data: []byte(events)}, "season/people.hcl": {Data: []byte("crew " + crew)}, "season/papers/helmet.jpg": {}}
	together, faults := LoadSeason(folder, "season", "season", nil, BuiltIn())
	require.Empty(t, faults)
	require.Len(t, together.People, 2)
	require.True(t, list(t, together.People[0].Gear, "helmet").Parts[0].Evidence[0].Found)

	_, faults = LoadSeason(folder, "season", "season", []*Source{source}, BuiltIn())
	require.Len(t, faults, 3, "both people and the instrument once more")
}

func TestAFileOfCrewHoldsNoEvents(t *testing.T) {
	source, faults := ParseSource("more.hcl", []byte("season \"2028\" {}\n"))
	require.Empty(t, faults)
	_, faults = LoadSeason(fstest.MapFS{"a.hcl": {Data: []byte(fullSeason)}, "papers/helmet.jpg": {}}, "a.hcl", "a.hcl", []*Source{source}, BuiltIn())
	require.Len(t, faults, 1)
	require.Equal(t, Code("unknown-block"), CodeOf(faults[0]))
	require.Contains(t, faults[0].Detail, "It can have crew, instrument.")
}

func TestOfWhatHappensOftenTheLastCounts(t *testing.T) {
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(`car "Tessel 16" {}
fire_system {
  serviced = ["2026-02-27", "2022", "2024-03"]
}
fuel_cell {
  recertified  = ["2026-06-10"]
  foam_renewed = ["2025-06", "2025-06-10"]
}
`)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	serviced := value(t, list(t, sheet.Root, "fire_system").Parts[0], "serviced")
	require.Equal(t, "2026-02-27", serviced.Days.String())
	require.Equal(t, []string{"2022", "2024-03"}, []string{serviced.Earlier[0].String(), serviced.Earlier[1].String()})
	cell := list(t, sheet.Root, "fuel_cell").Parts[0]
	require.Equal(t, "2026-06-10", value(t, cell, "recertified").Days.String())
	require.Equal(t, "2025-06", value(t, cell, "foam_renewed").Days.String(), "the one that may be the later")
}
