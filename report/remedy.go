package report

import (
	"fmt"
	"slices"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// writeRemedy writes what puts a clause right and where to look. The clause's own remedy is
// for the car; a paper that is only not named, and a part that is only not written down
// yet, are put right on the sheet, and that is said.
func writeRemedy(p *page, found finding, column int) {
	clause := found.clause
	papers, outdated := found.missingPapers(), found.outdatedPapers()
	if clause.Rectify != "" && (len(papers)+len(outdated) == 0 || found.failsOnCar()) {
		p.labelled(column, "put right", labelWidth, clause.Rectify)
	}
	for _, paper := range papers {
		p.labelled(column, "name it", labelWidth, fmt.Sprintf("evidence %q { file = \"…\" } in its part or in the car, where there is such a paper", paper))
	}
	for _, paper := range outdated {
		p.labelled(column, "renew it", labelWidth, paper+": have a new one made out and name it beside the old; never alter the day on a paper")
	}
	for _, name := range found.perhapsUnfinished() {
		p.labelled(column, "or", labelWidth, fmt.Sprintf("put %q into unfinished, while more of them are still to be written down", name))
	}
	if clause.LookFor != "" {
		p.labelled(column, "look at", labelWidth, clause.LookFor)
	}
	if clause.TextAt != "" {
		p.labelled(column, "wording", labelWidth, clause.TextAt)
	}
}

// missingPapers is the papers that the finding asks for, each once.
func (f finding) missingPapers() []string {
	var papers []string
	for _, subject := range f.subjects {
		for _, paper := range subject.MissingPapers {
			if !slices.Contains(papers, paper) {
				papers = append(papers, paper)
			}
		}
	}
	return papers
}

// outdatedPapers is the papers of the finding that do not count on the day, each once.
func (f finding) outdatedPapers() []string {
	var papers []string
	for _, subject := range f.subjects {
		for _, paper := range subject.OutdatedPapers {
			if !slices.Contains(papers, paper.Label) {
				papers = append(papers, paper.Label)
			}
		}
	}
	return papers
}

// failsOnCar reports whether something beside papers is amiss.
func (f finding) failsOnCar() bool {
	for _, subject := range f.subjects {
		if len(subject.Causes) > 0 || slices.ContainsFunc(subject.Decided, func(d engine.Decided) bool { return d.Truth == quantity.No }) {
			return true
		}
	}
	return f.note != "" || len(f.subjects) == 0
}

// perhapsUnfinished is the types of parts of which the finding misses some: they may be on
// the car and only not on the sheet.
func (f finding) perhapsUnfinished() []string {
	if f.verdict != engine.Gap {
		return nil
	}
	var names []string
	add := func(name string) {
		if name != "" && !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	if f.note != "" && len(f.clause.Across) > 0 {
		add(f.clause.Across[len(f.clause.Across)-1].Binding.Is.PartType.Name)
	}
	for _, subject := range f.subjects {
		for _, cause := range subject.Causes {
			if cause.Kind == engine.NotFitted && cause.List != nil && cause.List.Repeats() && cause.Known > 0 {
				add(cause.List.Name)
			}
		}
	}
	return names
}
