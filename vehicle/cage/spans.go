package cage

import (
	"cmp"
	"slices"
)

// Station is a place along a member where something holds it: a foot, or another member.
type Station struct {
	Joint  int
	After  int // the run it is on: after the member's inner point of this number, 0 for the first run
	Along  float64
	IsFoot bool
}

// Stations returns the places along a member that are held, from its first end to its last:
// joints of its own that are feet or that another member has, and joints of other members
// that lie on it. Resting is what Structure.Resting found.
func (s *Structure) Stations(member int, resting []Resting) []Station {
	m := s.Members[member]
	var stations []Station
	along := 0.0
	restsOn := map[int]bool{}
	for _, rest := range resting {
		restsOn[rest.Joint] = true
	}
	for k, joint := range m.Through {
		if k > 0 {
			along += m.Course.Points[k].Distance(m.Course.Points[k-1])
		}
		if s.isFoot[joint] || len(s.members[joint]) > 1 || restsOn[joint] {
			stations = append(stations, Station{joint, min(k, max(0, len(m.Through)-2)), along, s.isFoot[joint]})
		}
	}
	for _, rest := range resting {
		if rest.Member == member && len(s.members[rest.Joint]) > 0 {
			after, at := m.onRun(s.Joints[rest.Joint])
			stations = append(stations, Station{rest.Joint, after, at, s.isFoot[rest.Joint]})
		}
	}
	slices.SortStableFunc(stations, func(a, b Station) int { return cmp.Compare(a.Along, b.Along) })
	return stations
}

// onRun returns the run of a member that is nearest to a place, and how far along the way
// from point to point that is.
func (m Member) onRun(place Vector) (run int, along float64) {
	passed, nearest := 0.0, farthest
	for k := 1; k < len(m.Course.Points); k++ {
		segment := Segment{m.Course.Points[k-1], m.Course.Points[k]}
		if share, away := segment.Nearest(place); away < nearest {
			run, along, nearest = k-1, passed+share*segment.Length(), away
		}
		passed += segment.Length()
	}
	return run, along
}

// Ways returns the stretches of a member between its stations, and at either end the
// stretch to an end that nothing holds, each as the joints it goes through. A member
// without stations is one stretch.
func (s *Structure) Ways(member int, resting []Resting) [][]int {
	m := s.Members[member]
	if len(m.Through) == 0 {
		return nil
	}
	stations := s.Stations(member, resting)
	last := len(m.Through) - 1
	if len(stations) == 0 || stations[0].Along > s.Tolerance {
		stations = append([]Station{{Joint: m.Through[0]}}, stations...)
	}
	if end := m.Course.NodeLength(); stations[len(stations)-1].Along < end-s.Tolerance {
		stations = append(stations, Station{Joint: m.Through[last], After: max(0, last-1), Along: end})
	}
	var ways [][]int
	for i := 1; i < len(stations); i++ {
		from, to := stations[i-1], stations[i]
		way := []int{from.Joint}
		for k := from.After + 1; k <= to.After; k++ {
			if joint := m.Through[k]; joint != from.Joint && joint != to.Joint {
				way = append(way, joint)
			}
		}
		ways = append(ways, append(way, to.Joint))
	}
	return ways
}
