package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// tubeValues returns what follows from tube i, which can be drawn.
func (c *Cage) tubeValues(i int, points []Point, values *Values, at *neighbours) TubeValues {
	given := c.Tubes[i]
	tube := Tube{Radius: given.Radius}
	for _, joint := range given.Through {
		tube.Points = append(tube.Points, points[joint])
	}
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
		v.Ends[k] = c.endValues(i, joint, values, at)
	}
	return v
}

// anySize is the range of what is not known and never below zero.
var anySize = quantity.Range{High: math.Inf(1)}

// unknownSection is the section of a tube of which no size is known.
var unknownSection = Section{anySize, anySize, anySize, anySize, anySize, anySize, anySize, anySize}

// unknownTube is what follows from a tube of which nothing is known.
var unknownTube = func() TubeValues {
	anyAngle := quantity.Range{High: quarterTurn.High}
	anyEnd := EndValues{-1, quantity.Everything, -1, quantity.Everything, quantity.Everything}
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

func (c *Cage) endValues(tube, joint int, values *Values, at *neighbours) EndValues {
	var end EndValues
	end.Foot, end.FootAway = at.nearest(joint, at.feet, true)
	end.Joint, end.JointAway = at.nearest(joint, at.joints, false)
	end.JointSurface = quantity.Everything
	if end.Joint < 0 {
		return end
	}
	thickest := quantity.Range{}
	for _, other := range values.Structure.MembersAt(end.Joint) {
		if other != tube {
			thickest = thickest.Max(c.Tubes[other].Outside)
		}
	}
	end.JointSurface = notBelowZero(end.JointAway.Minus(halfOf(c.Tubes[tube].Outside)).Minus(halfOf(thickest)))
	return end
}

// nearest returns which of the joints is nearest to one as read, itself among them if it may
// be, and the range of the distance to whichever is. Only joints that may be the nearest
// within their ranges count for that.
func (n *neighbours) nearest(joint int, joints []int, itself bool) (nearest int, away quantity.Range) {
	nearest, away = -1, quantity.Everything
	here, spread := n.places[joint], n.spreads[joint]
	least, farther := math.Inf(1), math.Inf(1)
	for _, other := range joints {
		if other == joint && !itself {
			continue
		}
		read := here.Distance(n.places[other])
		farther = min(farther, read+spread+n.spreads[other])
		if read < least {
			nearest, least = other, read
		}
	}
	isFirst := true
	for _, other := range joints {
		if other == joint && !itself || here.Distance(n.places[other])-spread-n.spreads[other] > farther {
			continue
		}
		way := Distance(n.points[joint], n.points[other])
		if isFirst {
			away, isFirst = way, false
		}
		away = away.Min(way)
	}
	return nearest, away
}

// meetings returns every two tubes that meet at a joint.
func meetings(points []Point, values *Values) []Meeting {
	s := values.Structure
	resting := values.Findings.Resting
	var found []Meeting
	for joint := range points {
		members := s.MembersAt(joint)
		for i, one := range members {
			for _, other := range members[i+1:] {
				angle := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
				for _, a := range s.leaving(one, joint) {
					for _, b := range s.leaving(other, joint) {
						angle = angle.Min(AngleAt(points[a], points[joint], points[b]))
					}
				}
				found = append(found, Meeting{Joint: joint, Tubes: [2]int{one, other}, Angle: angle})
			}
		}
		for ; len(resting) > 0 && resting[0].Joint == joint; resting = resting[1:] {
			through := s.Members[resting[0].Member].Through
			run, _ := s.Members[resting[0].Member].onRun(s.Joints[joint])
			on := Run{points[through[run]], points[through[run+1]]}
			for _, one := range members {
				angle := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
				for _, a := range s.leaving(one, joint) {
					angle = angle.Min(AcuteAngle(Run{points[joint], points[a]}, on))
				}
				found = append(found, Meeting{joint, [2]int{one, resting[0].Member}, angle, true})
			}
		}
	}
	return found
}

// leaving returns the next joints along a member in the directions in which it leaves a
// joint.
func (s *Structure) leaving(member, joint int) []int {
	through := s.Members[member].Through
	var next []int
	for k, other := range through {
		if other != joint {
			continue
		}
		if k > 0 {
			next = append(next, through[k-1])
		}
		if k+1 < len(through) {
			next = append(next, through[k+1])
		}
	}
	return next
}
