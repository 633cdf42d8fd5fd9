package engine

import (
	"math"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// isRefusal reports whether the inspection at an index refused something that has not been
// accepted since, up to the day.
func (k *checker) isRefusal(at int) bool {
	all := k.car.log.papers.Inspections
	n := all[at]
	if n.Outcome != vehicle.Refused || n.Day > k.request.Day {
		return false
	}
	for i, later := range all {
		isAfter := later.Day > n.Day || later.Day == n.Day && i > at
		if isAfter && later.Day <= k.request.Day && sameMatter(n, later) && (later.Outcome == vehicle.Accepted || later.Outcome == vehicle.Corrected) {
			return false
		}
	}
	return true
}

// sameMatter reports whether two inspections are of one clause and one subject.
func sameMatter(a, b *vehicle.Inspection) bool {
	return vehicle.FoldText(a.Clause) == vehicle.FoldText(b.Clause) && subjectOf(a) == subjectOf(b)
}

func subjectOf(n *vehicle.Inspection) string {
	if n.SubjectPart != nil {
		return vehicle.FoldText(n.SubjectPart.Name())
	}
	return vehicle.FoldText(n.Subject)
}

// refusedAt says where and when something was refused.
func refusedAt(n *vehicle.Inspection) string {
	text := "refused"
	if n.Event != "" {
		text += " at " + n.Event
	}
	return text + " on " + n.Day.String()
}

// inspectionInLog is what is left of an inspection on the day. A refusal that has not been
// taken back a person has to look at, even where the figures meet now. What was read or
// noted is a remark; nil for anything else.
func (k *checker) inspectionInLog(clause *rules.Clause, at int, result *Result) *ClauseResult {
	n := k.car.log.papers.Inspections[at]
	reading := ""
	if n.HasReading {
		reading = result.comparison(n)
	}
	switch {
	case n.Day > k.request.Day:
		return nil
	case k.isRefusal(at):
		return k.refusalInLog(clause, n, result, reading)
	case reading != "" || n.Note != "":
		return &ClauseResult{Clause: clause, Remark: true, Note: strings.Trim(reading+"; "+n.Note, "; ")}
	}
	return nil
}

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

// refusalInLog is a refusal that has not been taken back.
func (k *checker) refusalInLog(clause *rules.Clause, n *vehicle.Inspection, result *Result, reading string) *ClauseResult {
	s := &SubjectResult{Verdict: ByEye, Place: n.Range}
	if reading != "" {
		s.Notes = append(s.Notes, reading)
	}
	if n.SubjectPart != nil {
		s.Parts, s.Name = []*vehicle.Part{n.SubjectPart}, n.SubjectPart.Name()
	}
	now := result.standing(n.Clause)
	switch {
	case n.Clause == "":
		s.Notes = append(s.Notes, "show what was done")
	case now == nil || now.NotDue:
		s.Notes = append(s.Notes, "clause "+n.Clause+" was not worked: show what was done")
	default:
		verdict := now.verdictOn(n)
		s.Verdict = s.Verdict.Worse(verdict)
		if verdict <= ByEye {
			s.Notes = append(s.Notes, "clause "+n.Clause+" says now: "+verdict.String()+"; show what was done")
		} else {
			s.Notes = append(s.Notes, "clause "+n.Clause+" still says: "+verdict.String())
		}
	}
	out := &ClauseResult{Clause: clause, Note: n.Note}
	out.add(s)
	return out
}

// verdictOn is the worst verdict of the subjects that an inspection is about, of all where it
// is about none of them.
func (c *ClauseResult) verdictOn(n *vehicle.Inspection) Verdict {
	verdict, found := DoesNotApply, false
	for _, s := range c.Subjects {
		if isAbout(n.SubjectPart, n.Subject, s) {
			verdict, found = verdict.Worse(s.Verdict), true
		}
	}
	if !found {
		return c.Verdict
	}
	return verdict
}

// refusalsBeside notes beside the subjects of a clause what was refused before: on those that
// the inspection was about, on all where it was about none of them.
func (k *checker) refusalsBeside(c *compiledClause, out *ClauseResult) {
	for i, n := range k.car.log.papers.Inspections {
		if !isNumber(n.Clause, c.Clause) || !k.isRefusal(i) {
			continue
		}
		var about []*SubjectResult
		for _, s := range out.Subjects {
			if isAbout(n.SubjectPart, n.Subject, s) {
				about = append(about, s)
			}
		}
		if len(about) == 0 {
			about = out.Subjects
		}
		for _, s := range about {
			s.Notes = append(s.Notes, refusedAt(n))
		}
	}
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
