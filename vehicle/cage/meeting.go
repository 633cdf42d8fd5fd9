package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

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

// MeetingsAt returns every two members that meet at a joint, in order of members, those that go
// through it first. Resting is what Structure.Resting found.
func (s *Structure) MeetingsAt(joint int, resting []Resting) []Meeting {
	members := s.Beside(-1, joint, resting)
	if len(members) < 2 {
		return nil
	}
	ways := make([]Leaving, len(members))
	for i, member := range members {
		ways[i] = s.leaving(member, joint, i >= len(s.members[joint]))
	}
	var found []Meeting
	for i, one := range members {
		for k := i + 1; k < len(members); k++ {
			found = append(found, Meeting{Joint: joint, Tubes: [2]int{one, members[k]}, Ways: [2]Leaving{ways[i], ways[k]}})
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

// LeastAngle returns the least of the angles of meetings, in radians; Everything where there
// is none. Points are those of all joints. Of two ways it works out the angle only where that
// may be the least.
func LeastAngle(meetings []Meeting, points []Point) quantity.Range {
	var few [16]twoWays
	pairs, farther := few[:0], math.Inf(1)
	for i := range meetings {
		one, other := &meetings[i].Ways[0], &meetings[i].Ways[1]
		for a := range one.count() {
			for b := range other.count() {
				pair := twoWays{one.way(meetings[i].Joint, a), other.way(meetings[i].Joint, b), one.OnTube || other.OnTube, 0}
				pairs = append(pairs, pair)
			}
		}
	}
	if len(pairs) == 1 {
		return pairs[0].angle(points)
	}
	for i := range pairs {
		var high float64
		pairs[i].low, high = pairs[i].roughly(points)
		farther = min(farther, high)
	}
	least, isFirst := quantity.Everything, true
	for _, pair := range pairs {
		if pair.low > farther {
			continue
		}
		angle := pair.angle(points)
		if !isFirst {
			angle = angle.Min(least)
		}
		least, isFirst = angle, false
	}
	return least
}

// count returns in how many ways a member leaves. A run on which the joint lies is one line.
func (l *Leaving) count() int {
	if l.OnTube {
		return 1
	}
	return len(l.To)
}

// way returns a way in which a member leaves a joint.
func (l *Leaving) way(joint, which int) [2]int {
	if l.OnTube {
		return [2]int{l.To[0], l.To[1]}
	}
	return [2]int{joint, l.To[which]}
}

// twoWays are two ways by the joints they lead from and to.
type twoWays struct {
	one, other [2]int
	isAcute    bool // the angle between the two lines is meant
	low        float64
}

func (w *twoWays) angle(points []Point) quantity.Range {
	one, other := Run{points[w.one[0]], points[w.one[1]]}, Run{points[w.other[0]], points[w.other[1]]}
	if w.isAcute {
		return AcuteAngle(one, other)
	}
	return AngleBetween(one, other)
}

// roughly returns bounds of the angle: as read, give or take what each way can turn.
func (w *twoWays) roughly(points []Point) (low, high float64) {
	one, turnOne := lean(points[w.one[0]], points[w.one[1]])
	other, turnOther := lean(points[w.other[0]], points[w.other[1]])
	angle, turn := one.Angle(other), turnOne+turnOther+1e-9
	if w.isAcute {
		angle = min(angle, math.Pi-angle)
	}
	return angle - turn, angle + turn
}

// lean returns the way from p to q as read, and by which angle it can be another within the
// ranges, at most.
func lean(p, q Point) (way Vector, turn float64) {
	way = q.Middle().Minus(p.Middle())
	off := (p.spread() + q.spread()) / 2
	if length := way.Norm(); off < length {
		return way, math.Asin(off / length)
	}
	return way, math.Pi
}
