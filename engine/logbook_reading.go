package engine

import (
	"math"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A comparison is what an inspection read, beside what the sheet says.
type comparison struct{ inspection, text string }

// comparison is what an inspection read, with what the sheet says where that is known.
func (r *Result) comparison(n *vehicle.Inspection) string {
	if c := r.standing(n.Clause); c != nil {
		for _, s := range c.Subjects {
			for _, made := range s.compared {
				if made.inspection == n.Label {
					return made.text
				}
			}
		}
	}
	return theyRead(n)
}

// theyRead is what an inspection read, and with what.
func theyRead(n *vehicle.Inspection) string {
	text := "read " + n.TheirReading.String()
	if n.TheirInstrument != "" {
		text += " with " + n.TheirInstrument
	}
	return text
}

// readingsBeside puts what inspections read beside what the sheet says of a subject, which
// the across variables stand for at present.
func (k *checker) readingsBeside(s *SubjectResult, c *compiledClause) {
	for _, n := range k.car.log.papers.Inspections {
		if !n.HasReading || n.Day > k.request.Day || !isNumber(n.Clause, c.Clause) {
			continue
		}
		if len(c.across) == 0 || isAbout(n.SubjectPart, n.Subject, s) {
			text := k.beside(n, s, c)
			whose := "inspection of " + n.Day.String()
			if n.Event != "" {
				whose = "inspection" + when(n.Event, n.Day)
			}
			s.Notes = append(s.Notes, whose+": "+text)
			s.compared = append(s.compared, comparison{n.Label, text})
		}
	}
}

// beside is their reading with ours, and how far the two are apart.
func (k *checker) beside(n *vehicle.Inspection, s *SubjectResult, c *compiledClause) string {
	text := theyRead(n)
	at, ok := k.oursFor(n, s, c)
	if !ok {
		return text
	}
	ours := k.oursInWords(at)
	if ours == "" {
		return text + "; the sheet does not record it"
	}
	text += "; the sheet says " + ours
	cell := &k.read.cells[at]
	apart := math.Abs(n.TheirReading.Reading - (cell.low/2 + cell.high/2))
	if math.IsInf(apart, 0) || math.IsNaN(apart) || n.TheirReading.OneSided {
		return text
	}
	// One digit more than they read: what is beyond that nobody measured.
	unit := differenceUnit(n.TheirReading.Unit)
	by := trimmed(apart, unit, n.TheirReading.Decimals+1)
	if by == "0" {
		return text + ", the same"
	}
	return text + ", " + strings.TrimSpace(by+" "+unit.Name()) + " apart"
}

// oursInWords is a figure of the sheet with its tolerance, as written or as it follows from
// others; "" where nobody has recorded it.
func (k *checker) oursInWords(at int32) string {
	x := &explainer{m: k.full, car: k.car}
	cell, o := &k.full.cells[at], &k.car.origins[at]
	text := x.asWritten(at)
	if text == "" && cell.flags&written != 0 && cell.flags&mayHold != 0 {
		return toleranceText(quantity.Range{Low: cell.low, High: cell.high}, o.particular.Unit)
	}
	return text
}

// oursFor finds the one figure that their reading can be held against: the only one of its
// dimension that the demand reads, or the only one of the subject itself.
func (k *checker) oursFor(n *vehicle.Inspection, subject *SubjectResult, c *compiledClause) (at int32, ok bool) {
	s := newSurvey(true)
	c.demand.survey(k.full, s)
	var all, own []int32
	for i := range s.touched {
		cell := s.touched[i].cell
		o := &k.car.origins[cell]
		if o.part == nil || o.particular == nil || o.particular.Kind != vehicle.KindNumber || o.particular.Dimension != n.TheirReading.Unit.Dimension() {
			continue
		}
		all = append(all, cell)
		if len(subject.Parts) > 0 && o.part == subject.Parts[len(subject.Parts)-1] || n.SubjectPart == o.part {
			own = append(own, cell)
		}
	}
	switch {
	case len(own) == 1:
		return own[0], true
	case len(all) == 1:
		return all[0], true
	}
	return 0, false
}
