package report

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

func TestNameList(t *testing.T) {
	tube := &vehicle.PartType{Name: "tube", Plural: "tubes"}
	stock := &vehicle.PartType{Name: "tube_stock", Plural: "tube_stocks"}
	car := &vehicle.PartType{Name: "car"}
	strap := &vehicle.PartType{Name: "strap", Plural: "straps"}
	part := func(kind *vehicle.PartType, label, name string) named {
		return named{name, &vehicle.Part{Type: kind, Label: label}}
	}
	tubes := func(labels ...string) (things []named) {
		for _, label := range labels {
			things = append(things, part(tube, label, "tube "+label))
		}
		return things
	}
	for want, things := range map[string][]named{
		"":                           nil,
		"tube 4":                     tubes("4"),
		"tubes 4 and 7":              tubes("4", "7"),
		"tubes 1, 2 and A":           tubes("1", "2", "A"),
		"tubes 1 to 3, 5 to 7 and 9": tubes("1", "2", "3", "5", "6", "7", "9"),
		"tubes 01, 02 and 03":        tubes("01", "02", "03"),
		"tubes 1 and 2; tube stocks A and B": append(tubes("1", "2"),
			part(stock, "A", "tube stock A"), part(stock, "B", "tube stock B")),
		"car, tube 1 and padding": append([]named{part(car, "Tessel", "car")}, append(tubes("1"), named{name: "padding"})...),
		"left lap and right lap straps of harness driver; left lap strap of harness co-driver": {
			part(strap, "left lap", "left lap strap of harness driver"), part(strap, "right lap", "right lap strap of harness driver"),
			part(strap, "left lap", "left lap strap of harness co-driver")},
	} {
		require.Equal(t, want, nameList(things))
	}
}
