package cage

import (
	"math"
	"slices"
)

// Findings is what a look over a structure finds wrong with it.
type Findings struct {
	Loose      []int           // joints that no member goes through and that lie on none
	InTheAir   []LooseEnd      // ends of members that nothing holds
	Doubled    []DoubledMember // members between the same two ends
	SamePlaces [][2]int        // joints at one place, within the tolerance
	Resting    []Resting       // joints that lie on a member which does not go through them
}

// LooseEnd is an end of a member that is no foot, where no other member goes through, and
// that lies on none.
type LooseEnd struct {
	Member int
	Joint  int
	IsLast bool // the end of the last joint, not of the first
}

// DoubledMember is a member that runs between the same two ends as one before.
type DoubledMember struct {
	Member, Other int
	IsSameCourse  bool // and goes the same way between them: most likely written twice
}

// LookOver finds what is wrong with the structure.
func (s *Structure) LookOver() Findings {
	f := Findings{Resting: s.Resting(), SamePlaces: s.samePlaces()}
	held := make([]map[int]bool, len(s.Joints)) // by joint: what else holds it
	hold := func(joint, member int) {
		if held[joint] == nil {
			held[joint] = map[int]bool{}
		}
		held[joint][member] = true
	}
	for joint, members := range s.members {
		for _, member := range members {
			hold(joint, member)
		}
	}
	for _, rest := range f.Resting {
		hold(rest.Joint, rest.Member)
	}
	isFoot := slices.Clone(s.isFoot)
	for _, pair := range f.SamePlaces {
		isFoot[pair[0]] = isFoot[pair[0]] || s.isFoot[pair[1]]
		isFoot[pair[1]] = isFoot[pair[1]] || s.isFoot[pair[0]]
		for _, member := range s.members[pair[0]] {
			hold(pair[1], member)
		}
		for _, member := range s.members[pair[1]] {
			hold(pair[0], member)
		}
	}
	for joint := range s.Joints {
		if len(held[joint]) == 0 {
			f.Loose = append(f.Loose, joint)
		}
	}
	for i, member := range s.Members {
		for k, joint := range member.Through {
			isEnd := k == 0 || k == len(member.Through)-1
			if isEnd && !isFoot[joint] && len(held[joint]) < 2 {
				f.InTheAir = append(f.InTheAir, LooseEnd{i, joint, k > 0})
			}
		}
	}
	f.Doubled = s.doubled()
	return f
}

// samePlaces returns the pairs of joints within the tolerance of each other. It goes through
// them from back to front of the car, and looks ahead no farther than the tolerance.
func (s *Structure) samePlaces() [][2]int {
	order := make([]int, len(s.Joints))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		switch x, y := s.Joints[a].X, s.Joints[b].X; {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	var pairs [][2]int
	for i, a := range order {
		for _, b := range order[i+1:] {
			if !(s.Joints[b].X-s.Joints[a].X <= s.Tolerance) || len(pairs) > 10*len(s.Joints) {
				break
			}
			if s.Joints[a].Distance(s.Joints[b]) <= s.Tolerance {
				pairs = append(pairs, [2]int{min(a, b), max(a, b)})
			}
		}
	}
	slices.SortFunc(pairs, func(a, b [2]int) int { return slices.Compare(a[:], b[:]) })
	return pairs
}

// doubled returns every member whose two ends are those of one before it.
func (s *Structure) doubled() []DoubledMember {
	var found []DoubledMember
	byPlace := map[[3]int64][]int{}
	for i, member := range s.Members {
		if len(member.Through) == 0 {
			continue
		}
		one, other := member.ends()
		middle := one.Along(other, 0.5)
		for _, before := range s.nearby(byPlace, middle) {
			if same, isSame := s.sameEnds(member, s.Members[before]); same {
				found = append(found, DoubledMember{i, before, isSame})
				break
			}
		}
		cell := s.cell(middle)
		byPlace[cell] = append(byPlace[cell], i)
	}
	return found
}

func (m Member) ends() (first, last Vector) {
	return m.Course.Points[0], m.Course.Points[len(m.Course.Points)-1]
}

// cell returns the cube with sides of twice the tolerance in which a place lies.
func (s *Structure) cell(p Vector) [3]int64 {
	side := 2 * s.Tolerance
	return [3]int64{int64(math.Floor(p.X / side)), int64(math.Floor(p.Y / side)), int64(math.Floor(p.Z / side))}
}

// nearby returns what is kept in the cube of a place and in those around it, in order.
func (s *Structure) nearby(kept map[[3]int64][]int, p Vector) []int {
	var found []int
	cell := s.cell(p)
	for i := range 27 {
		around := [3]int64{cell[0] + int64(i%3) - 1, cell[1] + int64(i/3%3) - 1, cell[2] + int64(i/9) - 1}
		found = append(found, kept[around]...)
	}
	slices.Sort(found)
	return found
}

// sameEnds reports whether two members have the same ends, either way round, and whether
// they go the same way between them: whether the points of each lie on the other.
func (s *Structure) sameEnds(a, b Member) (same, sameCourse bool) {
	aFirst, aLast := a.ends()
	bFirst, bLast := b.ends()
	near := func(p, q Vector) bool { return p.Distance(q) <= s.Tolerance }
	if !(near(aFirst, bFirst) && near(aLast, bLast)) && !(near(aFirst, bLast) && near(aLast, bFirst)) {
		return false, false
	}
	lies := func(points []Vector, on Course) bool {
		for _, p := range points {
			if _, away := (Course{Points: on.Points}).Nearest(p); away > s.Tolerance {
				return false
			}
		}
		return true
	}
	return true, lies(a.Course.Points, b.Course) && lies(b.Course.Points, a.Course)
}
