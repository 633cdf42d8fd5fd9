package engine

import (
	"slices"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// A pardon is what a dispensation did to a clause of its number.
type pardon struct {
	by       *vehicle.Dispensation
	why      string // it does not count on the day, "" where it does
	isAbout  bool   // the clause has such a subject
	hasGap   bool   // there is a gap that it would let off
	forWhole bool
}

// pardon lets off the gaps of a clause that a dispensation covers. One that does not fit in
// every point leaves the gap and says which point.
func (k *checker) pardon(c *compiledClause, out *ClauseResult) {
	spared := false
	for _, d := range k.car.log.papers.Dispensations {
		if !isNumber(d.Clause, c.Clause) {
			continue
		}
		made := pardon{by: d, why: strings.Join(k.unfit(d, c), "; "), forWhole: d.Subject == ""}
		note := granted(d)
		if made.why != "" {
			note = "dispensation " + d.Label + " does not count: " + made.why
		}
		for _, s := range out.Subjects {
			if !made.forWhole && !isAbout(d.SubjectPart, d.Subject, s) {
				continue
			}
			made.isAbout = true
			if s.Verdict != Gap {
				continue
			}
			made.hasGap = true
			s.Notes = append(s.Notes, note)
			if made.why == "" {
				s.Verdict, s.Dispensation = UnderDispensation, d.Label
			}
		}
		if made.forWhole && out.short && !spared {
			made.hasGap = true
			out.Note += "; " + note
			spared = made.why == ""
		}
		out.pardoned = append(out.pardoned, made)
	}
	if len(out.pardoned) > 0 {
		out.rollUp(spared)
	}
}

// rollUp is the clause's verdict over its subjects once some were let off; spared tells that
// it is let off to have too few.
func (c *ClauseResult) rollUp(spared bool) {
	c.Verdict = DoesNotApply
	for _, s := range c.Subjects {
		c.Verdict = c.Verdict.Worse(s.Verdict)
	}
	switch {
	case c.short && spared:
		c.Verdict = c.Verdict.Worse(UnderDispensation)
	case c.short:
		c.Verdict = Gap
	}
}

// granted says what a dispensation is, for a subject that stands under it.
func granted(d *vehicle.Dispensation) string {
	text := "dispensation " + d.Label + ", granted by " + d.GrantedBy
	if d.Reference != "" {
		text += ", " + d.Reference
	}
	if len(d.Events) > 0 {
		text += ", for " + named(d.Events)
	}
	if d.HasUntil {
		text += ", up to " + d.Until.String()
	}
	if d.Condition != nil {
		text += ", while " + oneLine(d.Condition.Text)
	}
	if d.Reason != "" {
		text += ": " + d.Reason
	}
	return text
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// named lists names for a sentence: "A", "A and B", "A, B and C".
func named(names []string) string {
	if n := len(names); n > 1 {
		return strings.Join(names[:n-1], ", ") + " and " + names[n-1]
	}
	return strings.Join(names, "")
}

// unfit lists in what points a dispensation does not fit the car, the event and the day.
func (k *checker) unfit(d *vehicle.Dispensation, c *compiledClause) []string {
	var why []string
	add := func(text string) {
		if text != "" {
			why = append(why, text)
		}
	}
	add(k.otherCar("chassis", "chassis", d.Chassis))
	add(k.otherCar("logbook_number", "log book number", d.LogBook))
	add(k.otherEvent(d))
	switch day := k.request.Day; {
	case d.HasFrom && day < d.From:
		add("it begins on " + d.From.String())
	case d.HasUntil && day > d.Until:
		add("it ended on " + d.Until.String())
	}
	if d.Condition != nil {
		add(k.unmet(d, c))
	}
	return why
}

// otherCar says why a dispensation that names a chassis or log book is not for this car, ""
// where it names none or the same.
func (k *checker) otherCar(particular, what, wanted string) string {
	if wanted == "" {
		return ""
	}
	is := ""
	if car := k.car.Sheet.Car(); car != nil {
		if x := car.Type.Particular(particular); x != nil {
			if v, _ := car.Value(x); v.State == vehicle.Stated {
				is = v.Text
			}
		}
	}
	switch {
	case is == "":
		return "it is for " + what + " " + wanted + ", and the sheet records none"
	case vehicle.FoldText(is) != vehicle.FoldText(wanted):
		return "it is for " + what + " " + wanted + ", not " + is
	}
	return ""
}

// otherEvent says why a dispensation limited to some events does not hold at this one.
func (k *checker) otherEvent(d *vehicle.Dispensation) string {
	if len(d.Events) == 0 {
		return ""
	}
	event := k.request.Event
	if event == nil {
		return "it holds only at " + named(d.Events) + ", and no event was asked for"
	}
	if slices.ContainsFunc(d.Events, func(name string) bool { return vehicle.FoldText(name) == vehicle.FoldText(event.Name) }) {
		return ""
	}
	return "it holds only at " + named(d.Events) + ", not at " + event.Name
}

// dispensationInLog says what a dispensation does on the day, also where that is nothing. It
// has no part in what the car comes to: the clause that it lets off has.
func (k *checker) dispensationInLog(clause *rules.Clause, d *vehicle.Dispensation, result *Result) *ClauseResult {
	out := &ClauseResult{Clause: clause, Remark: true}
	numbered := k.p.Book.ClauseNumbered(d.Clause)
	standing := result.standing(d.Clause)
	switch {
	case numbered == nil:
		out.Note = "covers nothing: the rulebook has no clause " + d.Clause
	case standing == nil || standing.NotDue:
		out.Note = "covers nothing: clause " + d.Clause + " was not worked"
	default:
		out.Note = "covers nothing: clause " + d.Clause + " is not in force on the day"
		for _, made := range standing.pardoned {
			if made.by == d {
				out.Verdict, out.Note = made.outcome(standing)
			}
		}
	}
	return out
}

// outcome says what a dispensation did to its clause.
func (p *pardon) outcome(c *ClauseResult) (Verdict, string) {
	subject := "clause " + p.by.Clause
	if !p.forWhole {
		subject += " for " + p.by.Subject
	}
	switch {
	case !p.forWhole && !p.isAbout:
		return DoesNotApply, "covers nothing: clause " + p.by.Clause + " has no subject " + p.by.Subject
	case !p.hasGap:
		return DoesNotApply, "covers nothing: there is no gap in " + subject
	case p.why != "":
		return DoesNotApply, "does not count: " + p.why
	}
	return UnderDispensation, "covers " + subject
}
