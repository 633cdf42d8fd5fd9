package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// bases gathers what a derivation follows from, each once.
type bases struct {
	list  []Base
	takes []string     // what is taken for granted beside
	at    map[Base]int // only of many
}

// fewBases is up to how many bases a walk through them finds one sooner than a map would.
const fewBases = 48

// put returns the number of a base, and adds it where it is not there yet.
func (b *bases) put(base Base) int {
	if b.at == nil {
		for i, known := range b.list {
			if known == base {
				return i
			}
		}
	} else if i, ok := b.at[base]; ok {
		return i
	}
	b.list = append(b.list, base)
	if b.at == nil && len(b.list) > fewBases {
		b.at = make(map[Base]int, 4*fewBases)
		for i, known := range b.list {
			b.at[known] = i
		}
	} else if b.at != nil {
		b.at[base] = len(b.list) - 1
	}
	return len(b.list) - 1
}

// take notes what is taken for granted, once.
func (b *bases) take(text string) {
	if !slices.Contains(b.takes, text) {
		b.takes = append(b.takes, text)
	}
}

// copy returns a copy that can be added to.
func (b *bases) copy() bases { return bases{list: slices.Clone(b.list), takes: slices.Clone(b.takes)} }

// known returns what the sheet says of the bases, in order.
func (b *bases) known() []quantity.Range {
	ranges := make([]quantity.Range, len(b.list))
	for i, base := range b.list {
		ranges[i] = base.known()
	}
	return ranges
}

// known returns what the sheet says of a figure, all its readings taken together: the whole
// plausible range where it says nothing. Of what is no figure it returns Everything.
func (b Base) known() quantity.Range {
	v := &b.Part.Values[b.Particular.Index]
	switch {
	case b.Particular.Kind != KindNumber && b.Particular.Kind != KindCount:
		return quantity.Everything
	case v.State != Stated || len(v.Readings) == 0:
		return b.Particular.Plausible
	}
	return v.hull()
}

// hull returns the range of all readings of a figure taken together.
func (v *Value) hull() quantity.Range {
	r := v.Readings[0].Figure.Range
	for _, reading := range v.Readings[1:] {
		r = r.Hull(reading.Figure.Range)
	}
	return r
}

// figure is a figure that something follows from: the number of its base, or what it is
// taken to be without one.
type figure struct {
	at int // -1 for none
	is quantity.Range
}

func fixed(r quantity.Range) figure { return figure{-1, r} }

func (f figure) in(from []quantity.Range) quantity.Range {
	if f.at < 0 {
		return f.is
	}
	return from[f.at]
}

// figure adds a figure of a part.
func (d *deriver) figure(b *bases, part *Part, name string) figure {
	return figure{at: b.put(d.base(part, name))}
}

// place is a point of which the three coordinates are bases.
type place struct {
	x, y, z    int
	reading    int
	isMirrored bool // y is that of its original on the other side
	isOwn      bool // and yet the point is no image of the same reading, as another coordinate is its own
}

// in returns the point within the ranges of its coordinates.
func (p *place) in(from []quantity.Range) cage.Point {
	at := cage.Point{X: from[p.x], Y: from[p.y], Z: from[p.z], Reading: p.reading}
	if p.isMirrored {
		at.Y, at.Mirrored = at.Y.Negate(), !p.isOwn
	}
	return at
}

// pointsIn returns several points within the ranges of their coordinates.
func pointsIn(places []place, from []quantity.Range) []cage.Point {
	points := make([]cage.Point, 0, len(places))
	for i := range places {
		points = append(points, places[i].in(from))
	}
	return points
}

// coordinates are what the place of a joint follows from. The y of a mirror image that states
// none is that of its original on the other side.
type coordinates struct {
	three      [3]Base
	isMirrored bool
}

func (d *deriver) coordinatesOf(joint *Part) coordinates {
	c := coordinates{three: [3]Base{d.base(joint, "x"), d.base(joint, "y"), d.base(joint, "z")}}
	if original := joint.Original; original != nil && joint.Values[c.three[1].Particular.Index].State == Nothing {
		c.three[1], c.isMirrored = d.base(original, "y"), true
	}
	return c
}

// placeAt adds the coordinates of a joint. A mirror image is the reading of its original,
// unless it states a coordinate of its own.
func (d *deriver) placeAt(b *bases, joint int) place {
	c := &d.coordinates[joint]
	at := place{x: b.put(c.three[0]), y: b.put(c.three[1]), z: b.put(c.three[2]), reading: joint + 1, isMirrored: c.isMirrored}
	if part := d.joints[joint]; c.isMirrored {
		at.isOwn = c.three[0].Part == part || c.three[2].Part == part
		if !at.isOwn {
			at.reading = d.numbers[part.Original] + 1
		}
	}
	return at
}

// placesAt adds the coordinates of several joints, by their numbers.
func (d *deriver) placesAt(b *bases, joints []int) []place {
	places := make([]place, 0, len(joints))
	b.list = slices.Grow(b.list, 3*len(joints))
	for _, joint := range joints {
		places = append(places, d.placeAt(b, joint))
	}
	return places
}

// pointOf adds the coordinates of a point particular of a part, such as the anchorage of a
// strap. It shares its reading with no other.
func (d *deriver) pointOf(b *bases, part *Part, name string) place {
	fills := d.particular(part.Type, name).Fills
	return place{x: b.put(d.base(part, fills[0])), y: b.put(d.base(part, fills[1])), z: b.put(d.base(part, fills[2]))}
}

// saysAny reports whether the sheet says anything of any of some particulars of a part.
func (d *deriver) saysAny(part *Part, names ...string) bool {
	for _, name := range names {
		if d.value(part, name).State != Nothing {
			return true
		}
	}
	return false
}
