package report

import (
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// whole is what alike parts are called among those of all cars: "harness driver (Tessel 16)",
// "helmet of A. Penrith-Vale (Tessel 16 and Dunlin 4)".
func (g alike) whole() string {
	name, cars := g.name(), g.cars()
	if len(cars) == 1 && strings.HasSuffix(name, cars[0]) {
		return name // the car itself
	}
	return name + " (" + list(cars) + ")"
}

// datedThing is one dated part with the cars it is in: the gear of a person is in several.
type datedThing struct {
	*engine.DatedPart
	cars []*vehicle.Sheet
}

// things are alike parts one by one, the gear of a person once for all cars.
func (g alike) things() []datedThing {
	var things []datedThing
	byName := map[string]int{}
	for _, d := range g {
		at, known := byName[d.Name]
		if !known {
			at = len(things)
			byName[d.Name] = at
			things = append(things, datedThing{d, nil})
		}
		things[at].cars = append(things[at].cars, d.Car)
	}
	return things
}
