package cage

import (
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// tubeValues returns what follows from tube i, which can be drawn.
func (c *Cage) tubeValues(i int, points []Point, values *Values) TubeValues {
	given, tube := c.Tubes[i], c.tube(i, points)
	v := TubeValues{Measures: tube.Measure(), Faults: tube.Check(), Chord: tube.Chord().Angles()}
	v.RadiusRatio = tube.RadiusRatio(given.Outside)
	section, fault := SectionOf(given.Outside, given.Wall)
	if fault != nil {
		section = unknownSection
		if given.Outside != quantity.Everything && given.Wall != quantity.Everything {
			v.Faults = append(v.Faults, fault)
		}
	}
	v.Section = section
	v.Mass = notBelowZero(section.MassPerLength(given.Density).Times(v.Developed))
	v.BendingStiffness = notBelowZero(section.BendingStiffness(given.Elasticity))
	v.YieldMoment = notBelowZero(section.YieldMoment(given.Yield))
	v.Spans = values.Structure.Spans(i, points, values.Findings.Resting)
	v.Unsupported = Longest(v.Spans)
	for k, joint := range []int{given.Through[0], given.Through[len(given.Through)-1]} {
		v.Ends[k] = c.endValues(i, joint, points, values)
	}
	return v
}

// tube returns the centreline of tube i.
func (c *Cage) tube(i int, points []Point) Tube {
	return Tube{Points: pick(points, c.Tubes[i].Through), Radius: c.Tubes[i].Radius}
}

// massPerLength returns the mass of a metre of tube i, in kg/m.
func (c *Cage) massPerLength(i int) quantity.Range {
	area, fault := AreaOf(c.Tubes[i].Outside, c.Tubes[i].Wall)
	if fault != nil {
		return anySize
	}
	return notBelowZero(area.Times(c.Tubes[i].Density))
}

// anySize is the range of what is not known and never below zero.
var anySize = quantity.Range{High: math.Inf(1)}

// unknownSection is the section of a tube of which no size is known.
var unknownSection = Section{anySize, anySize, anySize, anySize, anySize, anySize, anySize, anySize}

// unknownTube is what follows from a tube of which nothing is known.
var unknownTube = func() TubeValues {
	anyAngle := quantity.Range{High: quarterTurn.High}
	anyEnd := EndValues{-1, quantity.Everything, quantity.Everything, -1, quantity.Everything, quantity.Everything}
	return TubeValues{
		Measures: Measures{NodeLength: anySize, Developed: anySize},
		Section:  unknownSection,
		Mass:     anySize, BendingStiffness: anySize, YieldMoment: anySize, RadiusRatio: anySize, Unsupported: anySize,
		Chord: Angles{anyAngle, anyAngle, anyAngle, anyAngle, anyAngle, anyAngle},
		Ends:  [2]EndValues{anyEnd, anyEnd},
	}
}()

// notBelowZero cuts off what cannot be of a mass or a stiffness.
func notBelowZero(r quantity.Range) quantity.Range {
	return quantity.Range{Low: max(0, r.Low), High: max(0, r.High)}
}

func (c *Cage) endValues(tube, joint int, points []Point, values *Values) EndValues {
	s, resting := values.Structure, values.Findings.Resting
	var end EndValues
	end.Foot, end.FootAway, end.FootSurface = c.nearest(tube, joint, s.FeetInOrder(), points, values)
	end.Joint, end.JointAway, end.JointSurface = c.nearest(tube, joint, s.JointsBeside(tube, resting), points, values)
	return end
}

// nearest returns which of the joints is nearest to a tube's end, and the distances to
// whichever is, from axis to axis and between the surfaces.
func (c *Cage) nearest(tube, joint int, joints []int, points []Point, values *Values) (nearest int, away, surface quantity.Range) {
	if slices.Contains(joints, joint) {
		return joint, quantity.Range{}, quantity.Range{}
	}
	thickest := make([]quantity.Range, len(joints))
	for i, other := range joints {
		thickest[i] = c.thickest(values.Structure.Beside(tube, other, values.Findings.Resting))
	}
	others := pick(points, joints)
	nearest, away = Nearest(points[joint], others)
	if nearest >= 0 {
		nearest = joints[nearest]
	}
	return nearest, away, SurfacesApart(points[joint], c.Tubes[tube].Outside, others, thickest)
}

// thickest returns the greatest outside diameter among tubes, 0 without any.
func (c *Cage) thickest(tubes []int) quantity.Range {
	var thickest quantity.Range
	for _, tube := range tubes {
		thickest = thickest.Max(c.Tubes[tube].Outside)
	}
	return thickest
}
