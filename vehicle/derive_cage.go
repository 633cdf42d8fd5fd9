package vehicle

import (
	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// cage derives what follows for the cage as a whole, from all its tubes.
func (d *deriver) cage(part *Part) {
	if d.anyThrough(d.tubes) {
		open := d.open("tube")
		d.sums(part, d.tubes, open, "tube_length", "mass")
		var from bases
		work := d.spansOf(&from, d.numbersOf(d.tubes)...)
		d.add(part, from, d.open("tube", "joint", "foot"), work, "longest_span")
	}
	for _, stock := range d.listed(part, "tube_stock") {
		d.stock(stock)
	}
}

// anyThrough reports whether the joints of any of some tubes are recorded.
func (d *deriver) anyThrough(tubes []*Part) bool {
	for _, tube := range tubes {
		if d.through[d.numbers[tube]] != nil {
			return true
		}
	}
	return false
}

// listed returns the parts of one type that belong to a part.
func (d *deriver) listed(part *Part, name string) []*Part {
	for i := range part.Lists {
		if part.Lists[i].Type.Name == name {
			return part.Lists[i].Parts
		}
	}
	return nil
}

// stock derives the length and the mass of the tubes of one delivery. A tube of which
// neither the stock nor a size of its own is recorded may be one of them.
func (d *deriver) stock(stock *Part) {
	var of []*Part
	var unknown bases
	for _, tube := range d.tubes {
		switch named := d.value(tube, "stock").Named; {
		case named == stock:
			of = append(of, tube)
		case named == nil && !d.saysAny(tube, "outside", "ordered_outside"):
			unknown.put(d.base(tube, "stock"))
		}
	}
	if !d.anyThrough(of) {
		return
	}
	open := d.open("tube")
	if len(unknown.list) > 0 {
		d.add(stock, unknown, open, nothing, "length_used", "mass_used")
		return
	}
	d.sums(stock, of, open, "length_used", "mass_used")
}

// sums derives the length and the mass of some tubes together.
func (d *deriver) sums(part *Part, tubes []*Part, open []*PartList, length, mass string) {
	var unknown bases
	for _, tube := range tubes {
		if d.through[d.numbers[tube]] == nil {
			unknown.put(d.base(tube, "through"))
		}
	}
	if len(unknown.list) > 0 {
		d.add(part, unknown, open, nothing, length, mass)
		return
	}
	var long bases
	var lines []line
	for _, tube := range tubes {
		lines = append(lines, d.lineOf(&long, tube))
	}
	d.add(part, long, open, func(from, gives []quantity.Range) {
		parts := make([]cage.Weighed, 0, len(lines))
		points := roomFor(lines)
		for i := range lines {
			parts = append(parts, cage.Weighed{Tube: points.put(&lines[i], from), PerMetre: quantity.Exactly(1)})
		}
		gives[0] = cage.SumOf(parts)
	}, length)

	var heavy bases
	var weights []weight
	var weighedLines []line
	for _, tube := range tubes {
		weights = append(weights, d.weighed(&heavy, tube))
		weighedLines = append(weighedLines, weights[len(weights)-1].line)
	}
	d.add(part, heavy, open, func(from, gives []quantity.Range) {
		parts := make([]cage.Weighed, 0, len(weights))
		points := roomFor(weighedLines)
		for i := range weights {
			parts = append(parts, cage.Weighed{Tube: points.put(&weighedLines[i], from), PerMetre: weights[i].perMetre(from)})
		}
		gives[0] = cage.SumOf(parts)
	}, mass)
}
