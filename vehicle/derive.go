package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// deriver finds how the derived particulars of one sheet follow from others.
//
// Which joints lie on which tubes is settled by the figures as read, once for the sheet: it
// is a fact of how the cage is built, and not one of its tolerances. Where a coordinate of
// any joint, or the joints of any tube, is not recorded, it is not known, and nothing
// follows that hangs on it.
type deriver struct {
	joints, tubes, feet []*Part
	numbers             map[*Part]int // of joints and of tubes
	coordinates         []coordinates // by joint
	through             [][]int       // by tube: the joints it goes through; nil where not recorded
	structure           *cage.Structure
	resting             []cage.Resting
	unknown             []Base // why there is no structure
	unknownFeet         []Base // feet of which the joint is not recorded
	feetAt              []int  // the joints of those of which it is
	outsides            []Base // by tube: its outside diameter
	lists               []*PartList
	names               map[*PartType]map[string]*Particular
	found               []*Derivation
}

// derive returns all derivations of a sheet.
func derive(s *Sheet) []*Derivation {
	if s.Vocabulary == nil || s.Vocabulary.Type("joint") == nil {
		return nil
	}
	d := &deriver{numbers: map[*Part]int{}, names: map[*PartType]map[string]*Particular{}}
	d.gather(s)
	d.build()
	for _, part := range d.joints {
		d.joint(part)
	}
	for _, part := range d.tubes {
		d.tube(part)
	}
	d.small(s)
	for _, part := range s.partsNamed("cage") {
		d.cage(part)
	}
	return d.found
}

// gather finds the parts that much hangs on, and the lists that may hold more of them.
func (d *deriver) gather(s *Sheet) {
	d.joints, d.tubes, d.feet = s.partsNamed("joint"), s.partsNamed("tube"), s.partsNamed("foot")
	for i, joint := range d.joints {
		d.numbers[joint] = i
		d.coordinates = append(d.coordinates, d.coordinatesOf(joint))
	}
	for i, tube := range d.tubes {
		d.numbers[tube] = i
		var through []int
		if v := d.value(tube, "through"); v.State == Stated && len(v.Several) >= 2 {
			through = d.numbersOf(v.Several)
		}
		d.through = append(d.through, through)
		d.outsides = append(d.outsides, d.measured(tube, "outside", "ordered_outside"))
	}
	for _, part := range s.partsNamed("cage") {
		for i := range part.Lists {
			d.lists = append(d.lists, &part.Lists[i])
		}
	}
}

func (d *deriver) numbersOf(parts []*Part) []int {
	numbers := make([]int, 0, len(parts))
	for _, part := range parts {
		numbers = append(numbers, d.numbers[part])
	}
	return numbers
}

// open returns the lists of the named types of parts that may hold more than is written.
func (d *deriver) open(types ...string) []*PartList {
	var open []*PartList
	for _, list := range d.lists {
		if !list.Complete && slices.Contains(types, list.Type.Name) {
			open = append(open, list)
		}
	}
	return open
}

// build works out the structure as read, or why it is not known.
func (d *deriver) build() {
	var places []cage.Vector
	tolerance := leastTolerance
	var unknown bases
	for i, joint := range d.joints {
		at, ok := placeOf(joint)
		for _, base := range d.coordinates[i].three {
			if !ok && base.Part.Values[base.Particular.Index].State != Stated {
				unknown.put(base)
			}
		}
		places = append(places, at)
		tolerance = max(tolerance, toleranceOf(joint))
	}
	radii := make([]float64, len(d.tubes))
	for i, tube := range d.tubes {
		if d.through[i] == nil {
			unknown.put(d.base(tube, "through"))
		}
		radii[i], _ = tube.asRead("bend_radius")
	}
	for _, foot := range d.feet {
		joint := d.value(foot, "joint").Named
		if joint == nil {
			d.unknownFeet = append(d.unknownFeet, d.base(foot, "joint"))
			continue
		}
		d.feetAt = append(d.feetAt, d.numbers[joint])
	}
	if d.unknown = unknown.list; len(d.unknown) > 0 {
		return
	}
	structure, faults := cage.NewStructure(places, d.through, radii, d.feetAt, tolerance)
	for _, fault := range faults {
		unknown.put(d.base(d.tubes[fault.At], "through"))
	}
	if d.unknown = unknown.list; len(faults) == 0 {
		d.structure, d.resting = structure, structure.Resting()
	}
}

// add notes a derivation of particulars of a part.
func (d *deriver) add(part *Part, from bases, open []*PartList, work Work, gives ...string) {
	derivation := &Derivation{Part: part, Gives: make([]*Particular, 0, len(gives)), From: from.list, Open: open, Takes: from.takes, Work: work}
	for _, name := range gives {
		derivation.Gives = append(derivation.Gives, d.particular(part.Type, name))
	}
	d.found = append(d.found, derivation)
}

// nothing is the work of what cannot be told as long as something is not recorded.
func nothing(_, gives []quantity.Range) {
	for i := range gives {
		gives[i] = quantity.Everything
	}
}

// particular returns a particular of a type of part, which must be there.
func (d *deriver) particular(t *PartType, name string) *Particular {
	names := d.names[t]
	if names == nil {
		names = make(map[string]*Particular, len(t.Particulars))
		for _, x := range t.Particulars {
			if x.Club == "" {
				names[x.Name] = x
			}
		}
		d.names[t] = names
	}
	if names[name] == nil {
		panic("a " + t.Name + " has no " + name)
	}
	return names[name]
}

// value returns what the sheet says of a particular of a part.
func (d *deriver) value(part *Part, name string) *Value {
	v, _ := part.Value(d.particular(part.Type, name))
	return v
}

// base returns a particular of a part as what something follows from: of the part that
// states it, or, where none does, of the one to state it.
func (d *deriver) base(part *Part, name string) Base {
	x := d.particular(part.Type, name)
	v, holder := part.Value(x)
	if original := part.Original; x.Mirrored && original != nil && holder == part {
		// What an image names are the images of what its original names there.
		if v.State == Nothing || v.Range == original.Values[x.Index].Range {
			holder = original
		}
	}
	return Base{holder, d.particular(holder.Type, name)}
}
