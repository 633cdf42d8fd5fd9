package engine

import (
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// shape lays out where a part and all its parts are.
func (l *laying) shape(p *vehicle.Part) {
	l.points(p)
	if at := whereabouts(p.Type); at != nil {
		switch at.Kind {
		case vehicle.KindPartNames:
			l.tube(p, at)
		case vehicle.KindPartName:
			l.standsAt(p, at)
		}
	}
	for _, list := range p.Lists {
		for _, inner := range list.Parts {
			l.shape(inner)
		}
	}
}

// points lays out the points of a part. A part that has one only stands at it itself.
func (l *laying) points(p *vehicle.Part) {
	if l.car.shapes[shapeKey{l.car.bases[p], -1}] != nil {
		return // laid out with a tube that goes through it
	}
	for _, x := range p.Type.Particulars {
		if x.Kind == vehicle.KindPoint {
			s := &shape{points: []pointCells{l.pointOf(p, x)}, radius: -1, lacks: -1, outside: -1, ball: -1}
			l.car.shapes[shapeKey{l.car.bases[p], int32(x.Index)}] = s
			if x == whereabouts(p.Type) {
				l.car.shapes[shapeKey{l.car.bases[p], -1}] = l.helmet(p, s)
			}
		}
	}
}

// helmet is the shape of a part that stands at a point: of a head the helmet below it, of
// any other part the point.
func (l *laying) helmet(p *vehicle.Part, at *shape) *shape {
	if p.Type.Name != "head" || p.Type.Club != "" {
		return at
	}
	made := *at
	made.ball = l.car.cellOf(p, p.Type.Particular("helmet_radius"))
	return &made
}

// pointOf finds the cells of a point. The image of a joint that has no reading of its own is
// at the original's, seen in a mirror.
func (l *laying) pointOf(p *vehicle.Part, point *vehicle.Particular) pointCells {
	own := false
	for _, name := range point.Fills {
		own = own || p.Values[p.Type.Particular(name).Index].State != vehicle.Nothing
	}
	from := p
	if p.Original != nil && !own {
		from = p.Original
	}
	cell := func(axis int) int32 { return l.car.cellOf(from, p.Type.Particular(point.Fills[axis])) }
	made := pointCells{x: cell(0), y: cell(1), z: cell(2), mirrored: from != p}
	made.reading = int(made.x) + 1
	read := func(at int32) float64 { return middle(l.car.read[at].low, l.car.read[at].high) }
	made.read = cage.Vector{X: read(made.x), Y: read(made.y), Z: read(made.z)}
	if made.mirrored {
		made.read.Y = -made.read.Y
	}
	return made
}

// standsAt lays out a part that stands at a joint.
func (l *laying) standsAt(p *vehicle.Part, joint *vehicle.Particular) {
	key := shapeKey{l.car.bases[p], -1}
	if v, _ := p.Value(joint); v.Named != nil {
		l.points(v.Named)
		l.car.shapes[key] = l.car.shapes[shapeKey{l.car.bases[v.Named], -1}]
		return
	}
	l.car.shapes[key] = &shape{radius: -1, lacks: l.car.cellOf(p, joint), outside: -1, ball: -1}
}

// tube lays out the course of a tube.
func (l *laying) tube(p *vehicle.Part, through *vehicle.Particular) {
	made := &shape{
		radius: l.car.cellOf(p, p.Type.Particular("bend_radius")), lacks: -1,
		outside: l.car.cellOf(p, outsideOf(p)), ball: -1,
	}
	v, _ := p.Value(through)
	for _, joint := range v.Several {
		l.points(joint)
		made.points = append(made.points, l.car.shapes[shapeKey{l.car.bases[joint], -1}].points[0])
	}
	if len(made.points) < 2 {
		made.lacks = l.car.cellOf(p, through)
	}
	l.car.shapes[shapeKey{l.car.bases[p], -1}] = made
}

// outsideOf is the particular that tells the outside diameter of a tube: as measured, else
// as ordered; where neither is stated, as it is to be measured.
func outsideOf(p *vehicle.Part) *vehicle.Particular {
	measured, ordered := p.Type.Particular("outside"), p.Type.Particular("ordered_outside")
	if v, _ := p.Value(measured); v.State != vehicle.Nothing {
		return measured
	}
	if v, _ := p.Value(ordered); v.State != vehicle.Nothing {
		return ordered
	}
	return measured
}
