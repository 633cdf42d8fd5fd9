package engine

import (
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
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

// refusalInLog is a refusal that has not been taken back. What its clause comes to by itself is
// counted there, not here a second time.
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
