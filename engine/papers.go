package engine

import (
	"slices"

	"gapsheet/vehicle"
)

// papers checks the evidence that the clause asks for. Of a subject it must stand with the
// subject's parts, with the parts they belong to or name (a tube's stock), or with the car.
// Of a clause about the car as a whole it may stand anywhere in the sheet.
func (k *checker) papers(s *SubjectResult, c *compiledClause) {
	if len(c.Evidence) == 0 || k.request.NoPapers {
		return
	}
	on := k.papersOf(s.Parts)
	for _, wanted := range c.Evidence {
		if !slices.Contains(on, vehicle.FoldText(wanted)) {
			s.MissingPapers = append(s.MissingPapers, wanted)
			s.Verdict = s.Verdict.Worse(Gap)
		}
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
