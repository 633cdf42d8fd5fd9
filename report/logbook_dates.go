package report

import (
	"slices"

	"gapsheet/engine"
	"gapsheet/rules"
)

// writeDateCaution writes what no date says of a part, where results show dates or papers of
// the car.
func writeDateCaution(p *page, results []*engine.Result, all bool) {
	if slices.ContainsFunc(results, func(r *engine.Result) bool { return showsDates(r, all) }) {
		p.prose(0, Strong, DateCaution)
	}
}

// showsDates reports whether a result shows a clause about dates, or a paper of the car.
func showsDates(result *engine.Result, all bool) bool {
	for _, chapter := range result.Chapters {
		if chapter.IsLogBook() {
			return true
		}
		for _, clause := range chapter.Clauses {
			quiet := clause.Verdict == engine.Meets || clause.Verdict == engine.DoesNotApply
			if !clause.NotDue && (all || !quiet) && readsDates(clause.Clause) {
				return true
			}
		}
	}
	return false
}

// readsDates reports whether a clause is about dates.
func readsDates(clause *rules.Clause) bool {
	for _, formula := range []*rules.Formula{clause.Applies, clause.Where, clause.Demand, clause.AsAt} {
		if formula == nil {
			continue
		}
		for node := range rules.Walk(formula.Tree) {
			if node.Type().Kind == rules.Date {
				return true
			}
		}
	}
	return false
}
