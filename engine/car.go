package engine

import (
	"maps"
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A Car is a build sheet laid out for a program. It is read-only once made and may be
// shared by several checks at once.
type Car struct {
	Sheet *vehicle.Sheet

	full    []cell // with the tolerances of readings
	read    []cell // with readings as read
	refs    []int32
	lists   []list
	texts   []string
	spelt   []string
	origins []origin
	numbers map[string]uint64 // number of each text
	several []severalReadings // particulars with more than one reading
	bases   map[*vehicle.Part]int32
	parts   map[int32]*vehicle.Part // by base

	derivations []*derived
	derived     map[int32]*derived // by the cell of what it gives
	hanging     []*derived         // those that hang on a particular with several readings
	shapes      map[shapeKey]*shape

	log        *logBook
	conditions map[*vehicle.Dispensation]*condition
}

// severalReadings is a particular that was read more than once.
type severalReadings struct {
	cell       int32
	full, read []quantity.Range
}

// laying is the state of laying a sheet out.
type laying struct {
	g       ground
	car     *Car
	mean    bool
	pending []inherited
	listOf  map[*vehicle.PartList]int32
}

// An inherited reference is settled once all parts are laid out.
type inherited struct {
	ref        int32
	holder     *vehicle.Part
	particular *vehicle.Particular
}

// Car lays out a build sheet for the program. The sheet must be of the vocabulary of the
// program's rulebook.
func (p *Program) Car(sheet *vehicle.Sheet) *Car {
	l := &laying{g: p.ground.copy(), car: newCar(sheet), mean: p.Book.MeanOfReadings, listOf: map[*vehicle.PartList]int32{}}
	l.part(sheet.Root, sheet.Root.Type, isThere)
	for _, x := range l.pending {
		l.g.refs[x.ref] = l.g.refs[l.car.bases[x.holder]+particularOffset(x.particular)]
	}
	c := l.car
	c.full, c.refs, c.lists, c.texts, c.spelt, c.origins, c.numbers = l.g.cells, l.g.refs, l.g.lists, l.g.texts, l.g.spelt, l.g.origins, l.g.numbers
	c.read = slices.Clone(c.full)
	l.collapse()
	l.derive()
	l.shape(sheet.Root)
	c.log = newLogBook(sheet)
	c.conditions = p.conditions(c)
	return c
}

func newCar(sheet *vehicle.Sheet) *Car {
	return &Car{
		Sheet: sheet, bases: map[*vehicle.Part]int32{}, parts: map[int32]*vehicle.Part{},
		derived: map[int32]*derived{}, shapes: map[shapeKey]*shape{},
	}
}

// copy is a ground that a car may be laid out on.
func (g *ground) copy() ground {
	out := *g
	out.cells, out.refs, out.lists = slices.Clone(g.cells), slices.Clone(g.refs), slices.Clone(g.lists)
	out.texts, out.spelt, out.origins = slices.Clone(g.texts), slices.Clone(g.spelt), slices.Clone(g.origins)
	out.numbers = maps.Clone(g.numbers)
	if out.numbers == nil {
		out.numbers = map[string]uint64{}
	}
	return out
}

// part lays out one part; p is nil for a part that no block of the sheet speaks of. It
// returns the part's base.
func (l *laying) part(p *vehicle.Part, t *vehicle.PartType, lacks lacking) int32 {
	base := int32(len(l.g.refs))
	l.g.refs = append(l.g.refs, make([]int32, partSize(t))...)
	if p != nil {
		l.car.bases[p], l.car.parts[base] = base, p
	}
	for _, x := range t.Particulars {
		ref := base + particularOffset(x)
		if p == nil {
			c := unknownCell(x)
			c.flags |= mayLack
			if lacks == surelyLacks {
				c.flags = mayLack
			}
			l.g.refs[ref] = l.g.add(c, origin{particular: x})
			continue
		}
		l.particular(p, x, ref)
	}
	for _, child := range t.Parts {
		l.child(p, child, base, lacks)
	}
	return base
}

// particular lays out one particular of a part that is there.
func (l *laying) particular(p *vehicle.Part, x *vehicle.Particular, ref int32) {
	v, holder := p.Value(x)
	if holder == p && v.State == vehicle.Nothing && x.Inherits != "" {
		// A stock that does not state it either is still where it has to be recorded, once
		// for all tubes that are cut from it.
		if by, _ := p.Value(p.Type.Particular(x.Inherits)); by.Named != nil {
			holder = by.Named
		}
	}
	if holder != p {
		if same := holder.Type.Particular(x.Name); same != nil {
			l.pending = append(l.pending, inherited{ref, holder, same})
			return
		}
	}
	o := origin{part: p, particular: x, value: v, unit: x.Unit}
	c := unknownCell(x)
	switch v.State {
	case vehicle.None:
		c.flags = mayBeNone | written
	case vehicle.Stated:
		c = l.stated(x, v, &o)
	}
	at := l.g.add(c, o)
	l.g.refs[ref] = at
	if len(v.Readings) > 1 && !l.mean {
		l.car.several = append(l.car.several, severalOf(at, v))
	}
}

// stated is the cell of a particular that the sheet states.
func (l *laying) stated(x *vehicle.Particular, v *vehicle.Value, o *origin) cell {
	c := unknownCell(x)
	c.flags = mayHold | written
	switch x.Kind {
	case vehicle.KindNumber, vehicle.KindCount:
		f := v.Readings[0].Figure
		o.unit, o.decimals = f.Unit, f.Decimals // its text is only made when it is shown
		r := f.Range
		for _, other := range v.Readings[1:] {
			if l.mean {
				r = r.Plus(other.Figure.Range)
			} else {
				r = r.Hull(other.Figure.Range)
			}
		}
		if n := len(v.Readings); l.mean && n > 1 {
			r = r.Over(quantity.Exactly(float64(n)))
		}
		c.low, c.high = r.Low, r.High
	case vehicle.KindDate:
		c = dateCell(v.Days)
		o.text = v.Days.String()
	case vehicle.KindTruth:
		c.set = truthBit(v.Truth)
	case vehicle.KindChoice:
		c.set = 1 << uint(v.Choice)
	default:
		c.set = l.g.text(v.Text)
		o.text = v.Text
	}
	return c
}

func severalOf(at int32, v *vehicle.Value) severalReadings {
	s := severalReadings{cell: at}
	for _, r := range v.Readings {
		s.full = append(s.full, r.Figure.Range)
		s.read = append(s.read, asRead(r.Figure))
	}
	return s
}

// asRead is a reading without its tolerance. What is only known to lie beyond a bound has
// no reading to go by and stays a range.
func asRead(f quantity.Figure) quantity.Range {
	if f.OneSided {
		return f.Range
	}
	return quantity.Exactly(f.Reading)
}

// collapse takes the tolerance of readings out of the cells as read.
func (l *laying) collapse() {
	for i, o := range l.car.origins {
		if o.value == nil || len(o.value.Readings) == 0 {
			continue
		}
		r := asRead(o.value.Readings[0].Figure)
		for _, other := range o.value.Readings[1:] {
			if l.mean {
				r = r.Plus(asRead(other.Figure))
			} else {
				r = r.Hull(asRead(other.Figure))
			}
		}
		if n := len(o.value.Readings); l.mean && n > 1 {
			r = r.Over(quantity.Exactly(float64(n)))
		}
		l.car.read[i].low, l.car.read[i].high = r.Low, r.High
	}
}

// How surely a part is missing.
type lacking uint8

const (
	isThere lacking = iota
	mayBeLacking
	surelyLacks
)

// child lays out what a part has of one type of part: the list or the one part, and
// whether it is fitted.
func (l *laying) child(p *vehicle.Part, t *vehicle.PartType, base int32, lacks lacking) {
	var parts *vehicle.PartList
	if p != nil {
		parts = p.List(t)
	}
	fitted := cell{kind: holdsTruth, flags: mayHold, set: bitNo | bitYes}
	absent := mayBeLacking // of a part that no block speaks of
	switch {
	case lacks == surelyLacks || parts != nil && parts.NotFitted:
		fitted.set, fitted.flags, absent = bitNo, mayHold|written, surelyLacks
	case parts != nil && parts.Fitted != quantity.Open:
		fitted.set, fitted.flags = truthBit(parts.Fitted == quantity.Yes), mayHold|written
	}
	l.g.refs[base+fittedOffset(t)] = l.g.add(fitted, origin{part: p, list: t})
	if t.Repeats() {
		l.several(p, parts, t, base, absent)
		return
	}
	var at int32
	if parts != nil && len(parts.Parts) > 0 {
		at = l.part(parts.Parts[0], t, isThere)
	} else {
		at = l.part(nil, t, absent)
	}
	l.g.refs[base+partOffset(t)] = at
}

// several lays out the list of all parts of a type that a part has.
func (l *laying) several(p *vehicle.Part, parts *vehicle.PartList, t *vehicle.PartType, base int32, absent lacking) {
	at := int32(len(l.g.lists))
	l.g.lists = append(l.g.lists, list{})
	l.listOf[parts] = at
	made := list{of: t, says: parts, within: p, complete: absent == surelyLacks}
	if parts != nil {
		for _, part := range parts.Parts {
			made.elements = append(made.elements, l.part(part, t, isThere))
			made.labels = append(made.labels, uint32(l.g.text(part.Label)))
		}
		if parts.Complete {
			made.complete, absent = true, surelyLacks
		}
	}
	made.phantom = l.part(nil, t, absent)
	l.g.lists[at] = made
	l.g.refs[base+partOffset(t)] = at
}

// machine is a machine that works over the car, by the full ranges or as read.
func (c *Car) machine(p *Program, asRead bool, r Request) *machine {
	cells := c.full
	if asRead {
		cells = c.read
	}
	m := &machine{cells: slices.Clone(cells), refs: c.refs, lists: c.lists, texts: c.texts, derived: c.derived, shapes: c.shapes, slots: make([]slot, p.slots), limit: stepLimit}
	m.setDays(r.days())
	return m
}
