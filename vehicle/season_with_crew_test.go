package vehicle

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

const logbookSheet = `
car "Tessel 16" { chassis = "TS-0417" }
tube "5" {}
tube "6" {}
seat "driver" {}
harness "driver" {
  strap "left shoulder" {}
  strap "right shoulder" {}
}
harness "co-driver" {}
crew_member "driver" {
  helmet { made = "2018" }
}

logbook_note "N3" {
  event      = "Saltmarsh Opening Stages"
  day        = "2027-03-12"
  clause     = "9.4"
  text       = <<-TEXT
    Tow eye hidden by paint,
    mark it.
  TEXT
  before     = "2027-05-15"
  fixed      = "2027-03-20"
  cleared_on = "2027-05-15"
  cleared_by = "M. Saltby"
}
logbook_note "N4" {
  day  = "2027-05-16"
  text = "Battery clamp loose."
}
inspection "I1" {
  event            = "Saltmarsh Opening Stages"
  day              = "2027-03-12"
  clause           = "4.9"
  subject          = "tube 5"
  outcome          = "Corrected and re-presented"
  their_reading    = "29.4 deg"
  their_instrument = "angle gauge"
}
inspection "I2" {
  day     = "2027-05-16"
  subject = "helmet driver"
  outcome = "refused"
}
inspection "I3" {
  day           = "2027-05-16"
  subject       = "paint over the sill"
  outcome       = "noted"
  their_reading = 2
}
incident "gate" {
  day    = "2027-03-14"
  event  = "Saltmarsh Opening Stages"
  hit    = "gate post, front left, at about 40 km/h"
  loaded = ["seat driver", "harness", "cage", "helmet", "head_restraint driver"]
}
incident "bank" {
  day          = "2027-09-01"
  loaded       = ["left shoulder strap of harness driver", "helmet driver", "garment of B. Oakhollow"]
  inspected    = "2027-09-02"
  inspected_by = "M. Saltby"
}
dispensation "D1" {
  clause     = "4.3.2"
  subject    = "tube 6"
  granted_by = "the club's safety delegate"
  reference  = "2027/4"
  chassis    = "TS-0417"
  log_book   = "LB-77"
  events     = ["Quarry Night"]
  from       = "2027-05-01"
  until      = "2027-12-31"
  reason     = "Bent by the gate post, new tube ordered."
  condition  = "car.weighed_mass <= 1100*kg"
}
evidence "insurance" {
  dated       = "2026-12"
  valid_until = "2027-12-31"
}
`

// logbookOf reads the sheet above.
func logbookOf(t testing.TB) *Sheet {
	t.Helper()
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(logbookSheet)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	return sheet
}

// namesOfParts is what parts are called.
func namesOfParts(parts []*Part) []string {
	var names []string
	for _, p := range parts {
		names = append(names, p.Name())
	}
	return names
}

func TestPapersTravelWithTheCar(t *testing.T) {
	sheet := logbookOf(t)
	book := sheet.Logbook
	require.Len(t, book.Notes, 2)
	note := book.Notes[0]
	require.Equal(t, "N3", note.Label)
	require.Equal(t, "Tow eye hidden by paint,\nmark it.", note.Text)
	require.Equal(t, []quantity.Day{civil(t, "2027-03-12"), civil(t, "2027-05-15"), civil(t, "2027-03-20"), civil(t, "2027-05-15")},
		[]quantity.Day{note.Day, note.Before, note.Fixed, note.ClearedOn})
	require.True(t, note.HasBefore && note.IsFixed && note.IsCleared)
	require.Equal(t, "M. Saltby", note.ClearedBy)
	require.Equal(t, "9.4", note.Clause)
	open := book.Notes[1]
	require.False(t, open.HasBefore || open.IsFixed || open.IsCleared)

	tubes := list(t, list(t, sheet.Root, "cage").Parts[0], "tube").Parts
	found := book.Inspections[0]
	require.Same(t, tubes[0], found.SubjectPart)
	require.Equal(t, Corrected, found.Outcome)
	require.Equal(t, "corrected and re-presented", found.Outcome.String())
	require.True(t, found.HasReading)
	require.Equal(t, "29.4 deg", found.TheirReading.String())
	require.Equal(t, 38, found.ReadingRange.Start.Line)
	require.Equal(t, "angle gauge", found.TheirInstrument)
	require.Nil(t, book.Inspections[2].SubjectPart, "words, not a part")
	require.Equal(t, 2.0, book.Inspections[2].TheirReading.Reading)

	granted := book.Dispensations[0]
	require.Same(t, tubes[1], granted.SubjectPart)
	require.Equal(t, []string{"Quarry Night"}, granted.Events)
	require.True(t, granted.HasFrom && granted.HasUntil)
	require.Equal(t, "car.weighed_mass <= 1100*kg", granted.Condition.Text)
	require.Equal(t, 17, granted.Condition.Position.Range(0, 3).Start.Column)
	require.Equal(t, "TS-0417", granted.Chassis)
	require.Equal(t, "LB-77", granted.LogBook)

	paper := sheet.Root.Evidence[0]
	require.True(t, paper.HasEnd && paper.HasDate)
	require.Equal(t, civil(t, "2027-12-31"), paper.ValidUntil)
}

func TestIncidentsLoadPartsByNameOrByBlock(t *testing.T) {
	book := logbookOf(t).Logbook
	require.Equal(t, []string{"seat driver", "harness driver", "harness co-driver", "cage", "helmet of crew member driver"}, namesOfParts(book.Incidents[0].Loaded))
	require.False(t, book.Incidents[0].HasInspected)
	require.Equal(t, []string{"left shoulder strap of harness driver", "helmet of crew member driver"}, namesOfParts(book.Incidents[1].Loaded))
	require.True(t, book.Incidents[1].HasInspected)
}

func TestACrewTakesTheirGearIntoTheCar(t *testing.T) {
	sheet, season := logbookOf(t), goodSeason(t, fullSeason)
	require.Same(t, sheet, sheet.WithCrew(season, nil), "the sheet's own crew where the event names none")

	with := sheet.WithCrew(season, season.Events[0].Crew)
	crew := list(t, with.Root, "crew_member")
	require.True(t, crew.Complete)
	require.Equal(t, quantity.Yes, crew.Fitted)
	require.Equal(t, []string{"driver", "co-driver"}, []string{crew.Parts[0].Label, crew.Parts[1].Label})
	require.Equal(t, "crew member A. Penrith-Vale", crew.Parts[0].Name())
	helmet := list(t, crew.Parts[0], "helmet").Parts[0]
	require.Same(t, list(t, season.People[0].Gear, "helmet").Parts[0], helmet)

	require.Equal(t, "2018", value(t, list(t, list(t, sheet.Root, "crew_member").Parts[0], "helmet").Parts[0], "made").Days.String(), "the sheet itself is as it was")
	require.Same(t, list(t, sheet.Root, "seat").Parts[0], list(t, with.Root, "seat").Parts[0])
	require.Equal(t, sheet.Hash, with.Hash)

	alone := sheet.WithCrew(season, season.Events[1].Crew)
	require.Len(t, list(t, alone.Root, "crew_member").Parts, 1)
	require.Equal(t, "driver", list(t, alone.Root, "crew_member").Parts[0].Label)
	require.Panics(t, func() { sheet.WithCrew(season, []string{"Z. Ferrow"}) })
	require.Panics(t, func() { sheet.WithCrew(season, []string{"A. Penrith-Vale", "B. Oakhollow", "A. Penrith-Vale"}) })
	elsewhere, faults := LoadSeason(fstest.MapFS{"a.hcl": {Data: []byte(fullSeason)}, "papers/helmet.jpg": {}}, "a.hcl", "a.hcl", nil, clubVocabulary(t))
	require.Empty(t, faults)
	require.Panics(t, func() { sheet.WithCrew(elsewhere, []string{"A. Penrith-Vale"}) }, "another vocabulary")
}

func TestLoadedGearIsThatOfWhoWasInTheCar(t *testing.T) {
	sheet, season := logbookOf(t), goodSeason(t, fullSeason)
	gate := func(names ...string) []string {
		return namesOfParts(sheet.WithCrew(season, names).Logbook.Incidents[0].Loaded)
	}
	others := []string{"seat driver", "harness driver", "harness co-driver", "cage"}
	require.Equal(t, append(others, "helmet of A. Penrith-Vale", "head restraint of A. Penrith-Vale", "helmet of B. Oakhollow"),
		gate("A. Penrith-Vale", "B. Oakhollow"))
	require.Equal(t, append(others, "helmet of B. Oakhollow", "helmet of A. Penrith-Vale", "head restraint of A. Penrith-Vale"),
		gate("B. Oakhollow", "A. Penrith-Vale"), "who drove then, not who drives now")

	bank := sheet.WithCrew(season, []string{"B. Oakhollow"}).Logbook.Incidents[1]
	require.Equal(t, []string{"left shoulder strap of harness driver", "helmet of B. Oakhollow"}, namesOfParts(bank.Loaded), "anyone's, where the event is not known")
	require.True(t, bank.HasInspected)

	both := sheet.WithCrew(season, []string{"A. Penrith-Vale", "B. Oakhollow"}).Logbook.Incidents[1]
	require.Equal(t, []string{"left shoulder strap of harness driver", "helmet of A. Penrith-Vale", "helmet of B. Oakhollow"}, namesOfParts(both.Loaded))

	refused := sheet.WithCrew(season, []string{"A. Penrith-Vale"}).Logbook.Inspections[1]
	require.Equal(t, "helmet of A. Penrith-Vale", refused.SubjectPart.Name())
	require.Equal(t, "helmet of crew member driver", sheet.Logbook.Inspections[1].SubjectPart.Name())
}

func TestGearOfNobodyIsTakenForEveryones(t *testing.T) {
	text := `car "Tessel 16" {}
incident "bank" {
  day    = "2027-09-01"
  loaded = ["helmet of A. Penrith-Vole", "overalls garment of A. Penrith-Vale", "crew_member B. Oakhollow"]
}
`
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(text)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	require.Empty(t, sheet.Logbook.Incidents[0].Loaded)
	season := goodSeason(t, fullSeason)
	with := sheet.WithCrew(season, season.Events[0].Crew)
	require.Equal(t, []string{"helmet of A. Penrith-Vale", "overalls garment of A. Penrith-Vale", "crew member B. Oakhollow", "helmet of B. Oakhollow"},
		namesOfParts(with.Logbook.Incidents[0].Loaded))
	warned := season.Strangers(sheet)
	require.Len(t, warned, 1)
	require.False(t, warned.HasErrors())
	require.Equal(t, 4, warned[0].Subject.Start.Line)
	require.Contains(t, warned[0].Detail, "A. Penrith-Vole")
}

// TestEventsThatTheSeasonDoesNotHaveAreTold holds a warning at the line of each, with the name
// that was most likely meant, and none for papers of another season.
func TestEventsThatTheSeasonDoesNotHaveAreTold(t *testing.T) {
	season := goodSeason(t, fullSeason)
	known := season.Events[0]
	slip := strings.Replace(known.Name, "e", "a", 1)
	require.NotEqual(t, known.Name, slip)
	text := fmt.Sprintf(`car "Tessel 16" {}
logbook_note "N1" {
  event = %[1]q
  day   = %[3]q
  text  = "Dent."
}
inspection "I1" {
  event   = "Another Thing Entirely"
  day     = %[3]q
  outcome = "accepted"
}
incident "bank" {
  event  = %[1]q
  day    = "2020-05-01"
  loaded = ["helmet"]
}
dispensation "D1" {
  clause     = "4.1"
  granted_by = "K. Harrowgate"
  events     = [%[2]q, %[1]q]
}
inspection "I2" {
  event   = "Another Thing Entirely"
  day     = "2020-05-01"
  outcome = "accepted"
}
inspection "I3" {
  event   = %[2]q
  day     = %[3]q
  outcome = "accepted"
}
`, slip, strings.ToUpper(known.Name), known.First.String())
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(text)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	warned := season.Strangers(sheet)
	require.False(t, warned.HasErrors())
	var lines []int
	for _, w := range warned {
		lines = append(lines, w.Subject.Start.Line)
	}
	require.Equal(t, []int{3, 8, 13, 20}, lines)
	require.Contains(t, warned[0].Detail, "Did you mean "+Quote(known.Name)+"?")
	require.NotContains(t, warned[1].Detail, "Did you mean")
	require.Contains(t, warned[3].Detail, "one of the events of the dispensation \"D1\"")
}
