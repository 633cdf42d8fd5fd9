package report

import (
	"slices"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// seasonRow is dated parts that are told of as one: alike parts of one whole, and the gear of
// a person once for all cars that the person is in.
type seasonRow struct {
	parts alike
	cars  []*vehicle.Sheet
}

// seasonRows puts dated parts of several cars into rows, each where its first part is. Of a
// person's gear the part that misses an event first, else the one that ends first, stands for
// all cars.
func seasonRows(dated []*engine.DatedPart) []seasonRow {
	var kept []*engine.DatedPart
	cars := map[*engine.DatedPart][]*vehicle.Sheet{}
	for _, d := range dated {
		at := slices.IndexFunc(kept, func(k *engine.DatedPart) bool { return isOneGear(k, d) })
		if at < 0 {
			kept = append(kept, d)
			cars[d] = []*vehicle.Sheet{d.Car}
			continue
		}
		before := kept[at]
		one := joined(before, d)
		kept[at] = one
		cars[one] = append(cars[before], d.Car)
	}
	var rows []seasonRow
	for _, group := range alikes(kept) {
		rows = append(rows, seasonRow{group, cars[group[0]]})
	}
	return rows
}

// isOneGear reports whether two dated parts are one thing that a person takes from car to car.
func isOneGear(a, b *engine.DatedPart) bool {
	person := personOf(a.Part)
	return person != "" && a.Car != b.Car && a.Name == b.Name && vehicle.FoldText(person) == vehicle.FoldText(personOf(b.Part))
}

// joined is what holds of a person's gear in both of two cars: it lasts as long as in the
// stricter one, and the next one must do for both.
func joined(a, b *engine.DatedPart) *engine.DatedPart {
	if isSooner(b, a) {
		a, b = b, a
	}
	one := *a
	switch {
	case b.Missed == nil || a.Missed == nil:
	case a.Particular != b.Particular || !b.HasEarliest:
		one.HasEarliest = false
	case one.HasEarliest && b.Earliest.From > one.Earliest.From:
		one.Earliest = b.Earliest
	}
	return &one
}

// isSooner reports whether a part misses an event before another, or ends before it.
func isSooner(a, b *engine.DatedPart) bool {
	if a.Missed != b.Missed {
		return b.Missed == nil || a.Missed != nil && a.Missed.Inspection < b.Missed.Inspection
	}
	if a.IsOver != b.IsOver {
		return a.IsOver
	}
	return a.HasLastDay && (!b.HasLastDay || a.LastDay < b.LastDay)
}

// whole is the parts of a row with whose they are: "harness driver of Tessel 16", "helmet of
// A. Penrith-Vale (Tessel 16 and Dunlin 4)".
func (r seasonRow) whole() string {
	var cars []string
	for _, car := range r.cars {
		cars = append(cars, carName(car))
	}
	return r.parts.name() + " (" + list(cars) + ")"
}
