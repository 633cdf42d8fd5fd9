package cage

import (
	"math"
	"slices"
)

// Member is one tube of a cage as it is read, without tolerance: the joints it goes through,
// by their number, and the course through them.
type Member struct {
	Through []int
	Course  Course
}

// Structure is a cage's joints and members as read, to be looked over for what is not held.
// Joints that no tolerance parts count as one.
type Structure struct {
	Joints    []Vector
	Members   []Member
	Feet      []int   // joints that a foot holds to the shell
	Tolerance float64 // how near is at the same place, metres

	members [][]int // by joint: the members that go through it
	isFoot  []bool
	courses []traced
}

// traced is a member's course with the box it lies in.
type traced struct {
	course    Course
	low, high Vector
}

// NewStructure returns the structure of members that go straight from joint to joint, with
// arcs of the given radius for each, or the faults: a member through a joint that is not
// there, one that cannot be drawn because a joint repeats, turns straight back or is not
// finite (At is the member). A radius that does not fit is no fault here; Course.Check says
// so.
func NewStructure(joints []Vector, through [][]int, radii []float64, feet []int, tolerance float64) (*Structure, []*Fault) {
	s := &Structure{Joints: joints, Feet: feet, Tolerance: max(tolerance, closest)}
	var faults []*Fault
	for i, list := range through {
		member := Member{Through: list}
		if i < len(radii) {
			member.Course.Radius = radii[i]
		}
		isWhole := true
		for _, joint := range list {
			if joint < 0 || joint >= len(joints) {
				isWhole = false
				break
			}
			member.Course.Points = append(member.Course.Points, joints[joint])
		}
		if !isWhole {
			faults = append(faults, &Fault{Problem: UnknownJoint, At: i})
		}
		for _, fault := range member.Course.Check() {
			if isWhole && fault.Problem != RadiusTooBig && fault.Problem != NoRadius {
				faults = append(faults, &Fault{Problem: fault.Problem, At: i})
				isWhole = false
			}
		}
		if !isWhole {
			member = Member{}
		}
		s.Members = append(s.Members, member)
	}
	s.trace()
	return s, faults
}

func (s *Structure) trace() {
	s.members, s.isFoot = make([][]int, len(s.Joints)), make([]bool, len(s.Joints))
	for _, joint := range s.Feet {
		if joint >= 0 && joint < len(s.Joints) {
			s.isFoot[joint] = true
		}
	}
	for i, member := range s.Members {
		t := traced{course: member.Course}
		for k, joint := range member.Through {
			if last := len(s.members[joint]) - 1; last < 0 || s.members[joint][last] != i {
				s.members[joint] = append(s.members[joint], i)
			}
			t.include(s.Joints[joint], k == 0)
		}
		s.courses = append(s.courses, t)
	}
}

func (t *traced) include(p Vector, isFirst bool) {
	if isFirst {
		t.low, t.high = p, p
	}
	t.low = Vector{math.Min(t.low.X, p.X), math.Min(t.low.Y, p.Y), math.Min(t.low.Z, p.Z)}
	t.high = Vector{math.Max(t.high.X, p.X), math.Max(t.high.Y, p.Y), math.Max(t.high.Z, p.Z)}
}

// isNear reports whether p is within the member's box, made wider by the margin.
func (t *traced) isNear(p Vector, margin float64) bool {
	return p.X >= t.low.X-margin && p.X <= t.high.X+margin &&
		p.Y >= t.low.Y-margin && p.Y <= t.high.Y+margin &&
		p.Z >= t.low.Z-margin && p.Z <= t.high.Z+margin
}

// MembersAt returns the members that go through a joint, in order.
func (s *Structure) MembersAt(joint int) []int { return s.members[joint] }

// Resting is a joint that lies on a member which does not go through it.
type Resting struct {
	Joint, Member int
	Along         float64 // how far along the member's centreline, metres
	Away          float64 // how far the joint is from it, metres
}

// Resting returns the joints that lie on a member without being one of its joints, within
// the tolerance, in order of joints and members.
func (s *Structure) Resting() []Resting {
	var found []Resting
	for joint, place := range s.Joints {
		for i := range s.courses {
			if len(s.Members[i].Through) == 0 || !s.courses[i].isNear(place, s.Tolerance) || s.goesThrough(i, joint) {
				continue
			}
			if along, away := s.courses[i].course.Nearest(place); away <= s.Tolerance {
				found = append(found, Resting{joint, i, along, away})
			}
		}
	}
	return found
}

func (s *Structure) goesThrough(member, joint int) bool {
	return slices.Contains(s.Members[member].Through, joint)
}
