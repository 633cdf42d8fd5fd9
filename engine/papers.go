package engine

import (
	"slices"

	"gapsheet/vehicle"
)

// papers checks the evidence that the clause asks for. Of a subject it must stand with the
// subject's parts, with the parts they belong to or name (a tube's stock), or with the car.
// Of a clause about the car as a whole it may stand anywhere in the sheet. What is missing
// is a gap of its own, beside what the figures say.
func (k *checker) papers(s *SubjectResult, c *compiledClause, out *ClauseResult) {
	if len(c.Evidence) == 0 || k.request.NoPapers {
		return
	}
	on := k.papersOf(s.Parts)
	missing := &SubjectResult{Parts: s.Parts, Name: s.Name, Verdict: Gap}
	if len(s.Parts) > 0 {
		missing.Place = s.Parts[len(s.Parts)-1].Range
	} else if car := k.car.Sheet.Car(); car != nil {
		missing.Place = car.Range
	}
	for _, wanted := range c.Evidence {
		if !slices.Contains(on, vehicle.FoldText(wanted)) {
			missing.MissingPapers = append(missing.MissingPapers, wanted)
		}
	}
	if len(missing.MissingPapers) > 0 {
		out.add(missing)
	}
}

// papersOf is the labels of the papers that count for a subject.
func (k *checker) papersOf(parts []*vehicle.Part) []string {
	var labels []string
	if len(parts) == 0 {
		everyPart(k.car.Sheet.Root, func(p *vehicle.Part) { labels = append(labels, labelsOf(p)...) })
		return labels
	}
	for _, part := range append([]*vehicle.Part{k.car.Sheet.Car()}, parts...) {
		for ; part != nil; part = part.Within {
			labels = append(labels, labelsOf(part)...)
			for i := range part.Values {
				if named := part.Values[i].Named; named != nil {
					labels = append(labels, labelsOf(named)...)
				}
			}
		}
	}
	return labels
}

func labelsOf(p *vehicle.Part) []string {
	labels := make([]string, len(p.Evidence))
	for i := range p.Evidence {
		labels[i] = vehicle.FoldText(p.Evidence[i].Label)
	}
	return labels
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
