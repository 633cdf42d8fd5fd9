package engine

import (
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A derived particular is a pure function of others: a tube's angle of the places of its
// joints. Its cell holds what follows from the cells of those, within what the sheet states
// of it beside. Whoever narrows one of those works it out again.

// A derived is one derivation laid out on cells.
type derived struct {
	of    *vehicle.Derivation
	from  []int32 // cells
	gives []int32
	plain []cell  // what the sheet alone says of the particulars it gives
	lists []int32 // lists that may hold more, so that nothing follows yet
	known bool    // nothing that it follows from is missing
}

// derive lays out what follows from others, by both ways of reading.
func (l *laying) derive() {
	c := l.car
	for _, of := range c.Sheet.Derivations() {
		d := &derived{of: of, known: len(of.Open) == 0}
		for _, from := range of.From {
			at := c.cellOf(from.Part, from.Particular)
			d.from = append(d.from, at)
			d.known = d.known && c.full[at].flags&written != 0
		}
		for _, particular := range of.Gives {
			at := c.cellOf(of.Part, particular)
			d.gives = append(d.gives, at)
			d.plain = append(d.plain, c.full[at])
			c.derived[at] = d
		}
		for _, list := range of.Open {
			d.lists = append(d.lists, l.listOf[list])
		}
		d.work(c.full, c.read)
		c.derivations = append(c.derivations, d)
		if slices.ContainsFunc(c.several, func(x severalReadings) bool { return slices.Contains(d.from, x.cell) }) {
			c.hanging = append(c.hanging, d)
		}
	}
}

// cellOf is the cell of a particular of a part that is laid out.
func (c *Car) cellOf(p *vehicle.Part, x *vehicle.Particular) int32 {
	return c.refs[c.bases[p]+particularOffset(x)]
}

// work works the derivation out by both ways of reading and puts what follows in place,
// whatever was there before.
func (d *derived) work(full, read []cell) {
	d.over(full)
	d.over(read)
	for i, at := range d.gives {
		if d.plain[i].flags&written != 0 {
			read[at] = d.asStated(i, &full[at])
		}
	}
}

// over works the derivation out over the cells as they stand.
func (d *derived) over(cells []cell) {
	for i, r := range d.follows(cells) {
		c := d.plain[i]
		if r == vehicle.NoSuch {
			cells[d.gives[i]] = d.without(c)
			continue
		}
		if narrowed := c; d.mayTell(&c) && narrowed.narrow(r) {
			c = narrowed
			c.flags = mayHold
			if d.known || d.plain[i].flags&written != 0 {
				c.flags |= written
			}
		} else if d.mayTell(&c) && r != quantity.Everything && c.flags&written == 0 {
			// Beyond what is plausible, and yet it follows.
			c.take(r)
			c.flags &^= mayBeNone
			if d.known {
				c.flags |= written
			}
		}
		cells[d.gives[i]] = c
	}
}

// without is the cell of something that surely does not exist: a particular that may be
// absent is, and of any other nothing follows.
func (d *derived) without(c cell) cell {
	if c.flags&(mayBeNone|mayLack|written) == mayBeNone && d.known {
		c.flags = mayBeNone | written
	}
	return c
}

// mayTell reports whether a cell that the sheet has something to say of can be narrowed by
// what follows: not where the thing is stated not to exist, or its part may not be there.
func (d *derived) mayTell(c *cell) bool { return c.flags&mayHold != 0 && c.flags&mayLack == 0 }

// asStated is the cell of a particular that is stated as well, as read: its own reading
// goes before what follows from others, within what both leave possible.
func (d *derived) asStated(i int, full *cell) cell {
	c := *full
	value := d.of.Part.Values[d.of.Gives[i].Index]
	if len(value.Readings) == 0 || full.low == full.high {
		return c
	}
	r := asRead(value.Readings[0].Figure)
	for _, other := range value.Readings[1:] {
		r = r.Hull(asRead(other.Figure))
	}
	c.low = min(max(r.Low, full.low), full.high)
	c.high = max(min(r.High, full.high), full.low)
	return c
}

// follows is what follows from the cells as they stand, one range for each particular.
func (d *derived) follows(cells []cell) []quantity.Range {
	ranges := make([]quantity.Range, len(d.from)+len(d.gives))
	from, gives := ranges[:len(d.from)], ranges[len(d.from):]
	for i, at := range d.from {
		from[i] = quantity.Range{Low: cells[at].low, High: cells[at].high}
	}
	if len(d.lists) > 0 {
		for i := range gives {
			gives[i] = quantity.Everything
		}
		return gives
	}
	d.of.Work(from, gives)
	return gives
}

// narrow narrows a cell to what else is known of it; false where nothing is left.
func (c *cell) narrow(r quantity.Range) bool {
	if r == quantity.Everything {
		return false
	}
	if c.kind == holdsTruth {
		c.set &= truthsIn(r)
		return c.set != 0
	}
	if r.High < c.low || r.Low > c.high {
		return false
	}
	c.low, c.high = max(c.low, r.Low), min(c.high, r.High)
	return true
}

// take makes a cell hold a range whatever it held before.
func (c *cell) take(r quantity.Range) {
	if c.kind == holdsTruth {
		c.set = truthsIn(r)
		return
	}
	c.low, c.high = r.Low, r.High
}

// truthsIn is the truths that a range from 0, no, to 1, yes, leaves possible.
func truthsIn(r quantity.Range) uint64 {
	var set uint64
	if r.Contains(0) {
		set |= bitNo
	}
	if r.Contains(1) {
		set |= bitYes
	}
	return set
}

// derivedIn are the derivations behind the cells that a survey touched, each once, in the
// order of the touches.
func (m *machine) derivedIn(s *survey) []*derived {
	var found []*derived
	if len(m.derived) == 0 {
		return nil
	}
	for i := range s.touched {
		if d := m.derived[s.touched[i].cell]; d != nil && !slices.Contains(found, d) {
			found = append(found, d)
		}
	}
	return found
}

// rework works out again, within what their cells may be at present, the derived cells that
// a survey touched; false where no exact car is like that.
func (m *machine) rework(s *survey) bool {
	for _, d := range s.derived {
		m.left -= len(d.from)
		for i, r := range d.follows(m.cells) {
			at := d.gives[i]
			if _, ok := s.where[at]; ok && r != quantity.Everything && r != vehicle.NoSuch && d.mayTell(&m.cells[at]) && !m.cells[at].narrow(r) {
				return false
			}
		}
	}
	return true
}

// missing are the cells that a derived cell wants and the sheet does not record, those
// alone that make a difference where some do.
func (m *machine) missing(d *derived) []int32 {
	var all, bearing []int32
	for i, at := range d.from {
		if m.cells[at].flags&written != 0 || slices.Contains(all, at) {
			continue
		}
		all = append(all, at)
		if m.bears(d, i) {
			bearing = append(bearing, at)
		}
	}
	if len(bearing) > 0 {
		return bearing
	}
	return all
}

// bears reports whether the value of one thing that a derivation follows from makes a
// difference to what follows, with all others in the middle of what they may be.
func (m *machine) bears(d *derived, which int) bool {
	from := make([]quantity.Range, len(d.from))
	for i, at := range d.from {
		c := &m.cells[at]
		from[i] = quantity.Exactly(middle(c.low, c.high))
	}
	c := &m.cells[d.from[which]]
	if c.kind == holdsText {
		return true // which joints it goes through: all hangs on it
	}
	var first []quantity.Range
	for _, share := range []float64{0, 0.25, 0.5, 0.75, 1} {
		low, high := finite(c.low, c.high), -finite(-c.high, -c.low)
		from[which] = quantity.Exactly(low + share*(high-low))
		gives := make([]quantity.Range, len(d.gives))
		d.of.Work(from, gives)
		if first == nil {
			first = gives
		} else if !slices.Equal(first, gives) {
			return true
		}
	}
	return false
}
