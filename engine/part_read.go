package engine

import (
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A partRead is a comparison that fails, with the first particular of the car that it read.
type partRead struct {
	decided    Decided
	part       *vehicle.Part
	particular *vehicle.Particular
}

// keepPart keeps which part is behind a comparison that fails.
func (x *explainer) keepPart(t *trace, d Decided) {
	if !x.dates || d.Truth != quantity.No {
		return
	}
	s := newSurvey(true)
	t.value.node().survey(x.m, s)
	for i := range s.touched {
		if o := &x.car.origins[s.touched[i].cell]; o.part != nil && o.particular != nil {
			x.reads = append(x.reads, partRead{d, o.part, o.particular})
			return
		}
	}
}

// failedPart is the part of which the first comparison that fails read something: of those
// that decided, else of any beside them; in either case one of the car itself, such as its
// class, comes last. It has no part where none read the car.
func (s *SubjectResult) failedPart() partRead {
	var best partRead
	least := 4
	for _, read := range s.reads {
		rank := 0
		if isWhole(read.part) {
			rank += 2
		}
		if !read.decided.isAmong(s.Decided) {
			rank++
		}
		if rank < least {
			best, least = read, rank
		}
	}
	return best
}
