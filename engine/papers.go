package engine

import (
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// papers checks the evidence that the clause asks for. Of a subject it must stand with the
// subject's parts, with the parts they belong to or name (a tube's stock), or with the car.
// Of a clause about the car as a whole it may stand anywhere in the sheet. What is missing,
// or does not count on the day, is a gap of its own, beside what the figures say.
func (k *checker) papers(s *SubjectResult, c *compiledClause, out *ClauseResult) {
	if len(c.Evidence) == 0 || k.request.NoPapers {
		return
	}
	on := k.papersOf(s.Parts)
	missing := &SubjectResult{Parts: s.Parts, Name: s.Name, Verdict: Gap, car: k.car.Sheet.Car()}
	if len(s.Parts) > 0 {
		missing.Place = s.Parts[len(s.Parts)-1].Range
	} else if car := k.car.Sheet.Car(); car != nil {
		missing.Place = car.Range
	}
	for _, wanted := range c.Evidence {
		switch why, named := countsOn(on, wanted, k.request.Day); {
		case !named:
			missing.MissingPapers = append(missing.MissingPapers, wanted)
		case why != "":
			missing.OutdatedPapers = append(missing.OutdatedPapers, OutdatedPaper{wanted, why})
		}
	}
	if len(missing.MissingPapers)+len(missing.OutdatedPapers) > 0 {
		out.add(missing)
	}
}

// countsOn looks for a paper of a label that counts on a day: why tells why none does, of
// those that ended the one that ended last; named is false where there is none at all.
func countsOn(papers []*vehicle.Evidence, label string, day quantity.Day) (why string, named bool) {
	var ended quantity.Day
	hasEnded := false
	for _, e := range papers {
		if vehicle.FoldText(e.Label) != vehicle.FoldText(label) {
			continue
		}
		switch {
		case e.HasEnd && e.ValidUntil < day:
			if !hasEnded || e.ValidUntil > ended {
				ended, hasEnded = e.ValidUntil, true
			}
		case e.HasDate && e.Dated.From > day:
			why = "dated " + e.Dated.String() + ", after the day of the check"
		default:
			return "", true
		}
		named = true
	}
	if hasEnded {
		why = "ended " + ended.String()
	}
	return why, named
}

// papersOf are the papers that can count for a subject.
func (k *checker) papersOf(parts []*vehicle.Part) []*vehicle.Evidence {
	var papers []*vehicle.Evidence
	add := func(p *vehicle.Part) {
		for i := range p.Evidence {
			papers = append(papers, &p.Evidence[i])
		}
	}
	if len(parts) == 0 {
		everyPart(k.car.Sheet.Root, add)
		return papers
	}
	for _, part := range append([]*vehicle.Part{k.car.Sheet.Car()}, parts...) {
		for ; part != nil; part = part.Within {
			add(part)
			for i := range part.Values {
				if named := part.Values[i].Named; named != nil {
					add(named)
				}
			}
		}
	}
	return papers
}

// everyPart visits a part and all that belong to it.
func everyPart(p *vehicle.Part, visit func(*vehicle.Part)) {
	visit(p)
	for i := range p.Lists {
		for _, part := range p.Lists[i].Parts {
			everyPart(part, visit)
		}
	}
}
