package cage

import "gapsheet/vehicle/quantity"

// Meeting is a joint at which two tubes meet, and the least angle between the directions in
// which they leave it, in radians. A tube that goes through leaves in two directions; on one
// that the joint lies on without being one of its joints, both directions are those of the
// run it lies on.
type Meeting struct {
	Joint int
	Tubes [2]int
	Ways  [2]Leaving
	Angle quantity.Range
}

// Leaving is how a member leaves a joint.
type Leaving struct {
	To     []int // the next joints in the directions in which it leaves
	OnTube bool  // the joint is none of its own and lies on its run between the two of To
}

// Meetings returns every two members that meet at a joint, in order of joints and members,
// those that go through it first; their angles are left out. Resting is what
// Structure.Resting found.
func (s *Structure) Meetings(resting []Resting) []Meeting {
	var found []Meeting
	for joint := range s.Joints {
		members := s.Beside(-1, joint, resting)
		if len(members) < 2 {
			continue
		}
		ways := make([]Leaving, len(members))
		for i, member := range members {
			ways[i] = s.leaving(member, joint, i >= len(s.members[joint]))
		}
		for i, one := range members {
			for k := i + 1; k < len(members); k++ {
				found = append(found, Meeting{Joint: joint, Tubes: [2]int{one, members[k]}, Ways: [2]Leaving{ways[i], ways[k]}})
			}
		}
	}
	return found
}

// leaving returns how a member leaves a joint that it goes through or that lies on it.
func (s *Structure) leaving(member, joint int, onTube bool) Leaving {
	m := s.Members[member]
	if onTube {
		run, _ := m.onRun(s.Joints[joint])
		return Leaving{[]int{m.Through[run], m.Through[run+1]}, true}
	}
	return LeavingOf(m.Through, joint)
}

// LeavingOf returns how a member through joints leaves one of them.
func LeavingOf(through []int, joint int) Leaving {
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
	return Leaving{To: next}
}

// AngleOf returns the angle of a meeting, in radians; points are those of all joints.
func (m *Meeting) AngleOf(points []Point) quantity.Range {
	corner := points[m.Joint]
	one, other := m.Ways[0], m.Ways[1]
	if one.OnTube {
		one, other = other, one
	}
	var angles least
	switch {
	case one.OnTube:
		angles.add(AcuteAngle(Run{points[one.To[0]], points[one.To[1]]}, Run{points[other.To[0]], points[other.To[1]]}))
	case other.OnTube:
		for _, a := range one.To {
			angles.add(AcuteAngle(Run{corner, points[a]}, Run{points[other.To[0]], points[other.To[1]]}))
		}
	default:
		for _, a := range one.To {
			for _, b := range other.To {
				angles.add(AngleAt(points[a], corner, points[b]))
			}
		}
	}
	return angles.value
}

// least gathers the least of some ranges.
type least struct {
	value quantity.Range
	count int
}

func (l *least) add(r quantity.Range) {
	if l.count++; l.count == 1 {
		l.value = r
		return
	}
	l.value = l.value.Min(r)
}
