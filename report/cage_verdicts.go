package report

import (
	"slices"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// CageVerdicts returns the worst verdict of each tube of a frame over the clauses that look
// at it, at one of its ends, corners or meetings, or at the stock it is cut from. What is
// advice, or not due, does not count. A tube that no clause looks at is not in it.
func CageVerdicts(f *vehicle.Frame, result *engine.Result) map[*vehicle.Part]engine.Verdict {
	verdicts := map[*vehicle.Part]engine.Verdict{}
	eachVerdict(f, result, func(_ *rules.Clause, tube *vehicle.Part, verdict engine.Verdict) {
		if before, ok := verdicts[tube]; ok {
			verdict = verdict.Worse(before)
		}
		verdicts[tube] = verdict
	})
	return verdicts
}

// eachVerdict calls said for every tube that a clause looks at, with the verdict on it.
func eachVerdict(f *vehicle.Frame, result *engine.Result, said func(*rules.Clause, *vehicle.Part, engine.Verdict)) {
	for _, chapter := range result.Chapters {
		for _, clause := range chapter.Clauses {
			if clause.NotDue || clause.Clause.Concern == rules.Advice {
				continue
			}
			for _, subject := range clause.Subjects {
				for _, part := range subject.Parts {
					for _, tube := range tubesOf(f, part) {
						said(clause.Clause, tube, subject.Verdict)
					}
				}
			}
		}
	}
}

// tubesOf returns the tubes of the frame that a part is, is part of, or supplies.
func tubesOf(f *vehicle.Frame, part *vehicle.Part) []*vehicle.Part {
	var found []*vehicle.Part
	for _, tube := range f.Tubes {
		if tube.Part == part || tube.Part == part.Within || tube.Stock != nil && tube.Stock == part || meets(part, tube.Part) {
			found = append(found, tube.Part)
		}
	}
	return found
}

// meets reports whether a part is the meeting of a tube with another.
func meets(part, tube *vehicle.Part) bool {
	for _, name := range []string{"one", "other"} {
		x := part.Type.Particular(name)
		if x == nil || x.Kind != vehicle.KindPartName {
			continue
		}
		if v, _ := part.Value(x); v.Named == tube {
			return true
		}
	}
	return false
}

// writeCageVerdicts lists the tubes that do not simply meet, by their worst verdict, with
// the clauses that say so.
func writeCageVerdicts(p *page, c *Cage) {
	worst := CageVerdicts(c.Frame, c.Result)
	p.heading(Strong, "VERDICTS", " of the rulebook on the tubes, the worst of each")
	told := false
	for _, verdict := range engine.Verdicts() {
		var tubes []named
		for _, tube := range c.Frame.Tubes {
			if v, ok := worst[tube.Part]; ok && v == verdict {
				tubes = append(tubes, named{tube.Part.Name(), tube.Part})
			}
		}
		if len(tubes) == 0 || verdict == engine.DoesNotApply {
			continue
		}
		told = true
		text := nameList(tubes)
		if verdict != engine.Meets {
			text += " (" + clausesWith(c, worst, verdict) + ")"
		}
		p.hanging(0, p.paint.With(InkOf(verdict), pad(verdict.String(), verdictColumn)), verdictColumn, Plain, text)
	}
	if !told {
		p.prose(0, Plain, "No clause looks at a tube that has a place.")
	}
}

// verdictColumn is the width of the verdicts' words.
const verdictColumn = 20

// clausesWith names the clauses that give a verdict to a tube whose worst it is.
func clausesWith(c *Cage, worst map[*vehicle.Part]engine.Verdict, verdict engine.Verdict) string {
	var numbers []string
	eachVerdict(c.Frame, c.Result, func(clause *rules.Clause, tube *vehicle.Part, v engine.Verdict) {
		if v == verdict && worst[tube] == verdict && !slices.Contains(numbers, clause.Number) {
			numbers = append(numbers, clause.Number)
		}
	})
	if len(numbers) == 1 {
		return "clause " + numbers[0]
	}
	return "clauses " + list(numbers)
}
