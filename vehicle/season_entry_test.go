package vehicle

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

func TestACarIsEnteredInAClass(t *testing.T) {
	text := `car "Tessel 16" {
  chassis = "TS-0417"
  class   = "club car"
}
seat "driver" {}
incident "gate" {
  day    = "2027-03-14"
  loaded = ["car", "seat driver"]
}
dispensation "D1" {
  clause     = "1.1"
  subject    = "car"
  granted_by = "the club"
}
`
	sheet, _ := Load(fstest.MapFS{"a.hcl": {Data: []byte(text)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.NotNil(t, sheet)
	require.Same(t, sheet, sheet.WithClass(""))

	entered := sheet.WithClass("open")
	require.Equal(t, "open", value(t, entered.Car(), "class").Text)
	require.Equal(t, "TS-0417", value(t, entered.Car(), "chassis").Text)
	require.Same(t, entered.Root, entered.Car().Within)
	require.Equal(t, "club car", value(t, sheet.Car(), "class").Text, "the sheet itself is as it was")
	require.Same(t, list(t, sheet.Root, "seat").Parts[0], list(t, entered.Root, "seat").Parts[0])
	require.Equal(t, []*Part{entered.Car(), list(t, sheet.Root, "seat").Parts[0]}, entered.Logbook.Incidents[0].Loaded)
	require.Same(t, sheet.Car(), sheet.Logbook.Dispensations[0].SubjectPart)
	require.Same(t, entered.Car(), entered.Logbook.Dispensations[0].SubjectPart)

	classed, faults := BuiltIn().Extend("Saltmarsh", &ChoiceList{Name: "class", Choices: []Choice{{Value: "open"}, {Value: "standard", Synonyms: []string{"N"}}}}, nil)
	require.Empty(t, faults)
	sheet, faults = Load(fstest.MapFS{"a.hcl": {Data: []byte(`car "Tessel 16" {}`)}}, "a.hcl", "a.hcl", classed, Options{})
	require.Empty(t, faults)
	require.Equal(t, 1, value(t, sheet.WithClass("n").Car(), "class").Choice)
	require.Panics(t, func() { sheet.WithClass("closed") })
	fault := (&Event{Name: "Quarry Night", Class: "opn"}).ClassFault(classed, "Saltmarsh, edition 2027")
	require.Equal(t, `Found "opn" as class of the event "Quarry Night", which is no class of Saltmarsh, edition 2027. Did you mean "open"? Write one of "open" or "standard".`, fault.Detail)
	require.Nil(t, (&Event{Class: "N"}).ClassFault(classed, ""))
	require.Nil(t, (&Event{}).ClassFault(classed, ""))
	require.Nil(t, (&Event{Class: "any"}).ClassFault(BuiltIn(), ""))
}

func TestAClassThatComesFromElsewhere(t *testing.T) {
	classed, faults := BuiltIn().Extend("Saltmarsh", &ChoiceList{Name: "class", Choices: []Choice{{Value: "open"}}}, nil)
	require.Empty(t, faults)
	folder := fstest.MapFS{"a.hcl": {Data: []byte(`car "Tessel 16" { class = "club car" }`)}}
	_, faults = Load(folder, "a.hcl", "a.hcl", classed, Options{})
	require.Len(t, faults, 1)
	sheet, faults := Load(folder, "a.hcl", "a.hcl", classed, Options{ClassGiven: true})
	require.Empty(t, faults)
	require.Equal(t, Nothing, value(t, sheet.Car(), "class").State)
	require.Equal(t, "open", value(t, sheet.WithClass("open").Car(), "class").Text)
}

func TestRulebooksThatASeasonNames(t *testing.T) {
	folder := fstest.MapFS{"season.hcl": {Data: []byte(`season "2027" {
  event "One" {
    rulebook = "../rulebook"
  }
  event "Two" {
    rulebook = "/etc/rulebook"
  }
  event "Three" {}
  other "Four" {
    rulebook = "elsewhere"
  }
  event "Five" {
    rulebook = "other.hcl"
  }
}
car "X" {}
`)}}
	found := SeasonRulebooks(folder, "season.hcl", "season.hcl")
	require.Len(t, found, 2)
	require.Equal(t, []string{"../rulebook", "One", "other.hcl", "Five"}, []string{found[0].Path, found[0].Event, found[1].Path, found[1].Event})
	require.Equal(t, 3, found[0].Range.Start.Line)
	require.Empty(t, SeasonRulebooks(folder, "none.hcl", "none.hcl"))
}
