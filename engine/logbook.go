package engine

import (
	"fmt"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A logBook is the papers that travel with a car as a chapter: a clause for each of them,
// made once, so that a paper is the same clause on every day.
type logBook struct {
	papers        *vehicle.Logbook
	notes         []*rules.Clause // by the notes of the papers, and so on
	incidents     []*rules.Clause
	inspections   []*rules.Clause
	dispensations []*rules.Clause
}

func newLogBook(sheet *vehicle.Sheet) *logBook {
	papers := sheet.Logbook
	if papers == nil {
		papers = &vehicle.Logbook{}
	}
	b := &logBook{papers: papers}
	chapter := &rules.Chapter{Title: "Log book"}
	clause := func(kind, label, title string) *rules.Clause {
		made := &rules.Clause{Number: kind + " " + label, Title: title, Concern: rules.Eligibility, Period: rules.Always, Chapter: chapter}
		chapter.Clauses = append(chapter.Clauses, made)
		return made
	}
	for _, n := range papers.Notes {
		b.notes = append(b.notes, clause("note", n.Label, "Log book note"+when(n.Event, n.Day)+aboutClause(n.Clause, "")))
	}
	for _, n := range papers.Incidents {
		made := clause("incident", n.Label, "Incident"+when(n.Event, n.Day))
		made.Concern = rules.Safety
		b.incidents = append(b.incidents, made)
	}
	for _, n := range papers.Inspections {
		title := "Inspection, " + n.Outcome.String() + when(n.Event, n.Day) + aboutClause(n.Clause, n.Subject)
		b.inspections = append(b.inspections, clause("inspection", n.Label, title))
	}
	for _, d := range papers.Dispensations {
		b.dispensations = append(b.dispensations, clause("dispensation", d.Label, "Dispensation"+aboutClause(d.Clause, d.Subject)))
	}
	return b
}

// when says where and on which day something was: " at Saltmarsh, 2027-05-16".
func when(event string, day quantity.Day) string {
	if event == "" {
		return ", " + day.String()
	}
	return " at " + event + ", " + day.String()
}

// aboutClause says what a paper is about: ", clause 4.9, tube 5".
func aboutClause(number, subject string) string {
	var text strings.Builder
	if number != "" {
		fmt.Fprintf(&text, ", clause %s", number)
	}
	if subject != "" {
		text.WriteString(", " + subject)
	}
	return text.String()
}

// logBook adds the chapter of the papers to a result, where there are any on the day.
func (k *checker) logBook(result *Result) {
	var chapter *ChapterResult
	add := func(about string, one *ClauseResult) {
		if one == nil || !k.picksPaper(about) {
			return
		}
		if chapter == nil {
			chapter = &ChapterResult{Chapter: one.Clause.Chapter}
			result.Chapters = append(result.Chapters, chapter)
		}
		chapter.Clauses = append(chapter.Clauses, one)
		result.Count(chapter, one)
	}
	b := k.car.log
	for i, n := range b.papers.Notes {
		add(n.Clause, k.noteInLog(b.notes[i], n))
	}
	for i, n := range b.papers.Incidents {
		add("", k.incidentInLog(b.incidents[i], n))
	}
	for i, n := range b.papers.Inspections {
		add(n.Clause, k.inspectionInLog(b.inspections[i], i, result))
	}
	for i, d := range b.papers.Dispensations {
		add(d.Clause, k.dispensationInLog(b.dispensations[i], d, result))
	}
}

// picksPaper reports whether a paper about a clause is asked for. Where only some clauses
// are, papers about none of them are left out.
func (k *checker) picksPaper(about string) bool {
	if len(k.request.Only) == 0 {
		return true
	}
	clause := k.p.Book.ClauseNumbered(about)
	return about != "" && clause != nil && k.request.picks(clause)
}

// besidePapers puts beside a clause what the papers say of it, and lets off what they let off.
func (k *checker) besidePapers(c *compiledClause, out *ClauseResult) {
	for _, n := range k.car.log.papers.Notes {
		if !isNumber(n.Clause, c.Clause) || !k.noteStands(n) {
			continue
		}
		for _, s := range out.Subjects {
			s.Notes = append(s.Notes, "log book note "+n.Label+": "+k.noteStanding(n))
		}
	}
	k.refusalsBeside(c, out)
	k.pardon(c, out)
}

// isNumber reports whether a paper's number of a clause is that of a clause, however its
// letters are written.
func isNumber(number string, c *rules.Clause) bool {
	return number != "" && vehicle.FoldText(number) == vehicle.FoldText(c.Number)
}

// isAbout reports whether a paper is about a subject: by the part it names, or the name
// itself. The car is a clause's subject where it has no other.
func isAbout(part *vehicle.Part, name string, s *SubjectResult) bool {
	if len(s.Parts) == 0 {
		folded := vehicle.FoldText(name)
		return folded == "car" || folded == "the car" || part != nil && part.Type.Name == "car"
	}
	if part != nil {
		name = part.Name()
	}
	for _, p := range s.Parts {
		if vehicle.FoldText(p.Name()) == vehicle.FoldText(name) {
			return true
		}
	}
	return false
}

// standing finds what a clause of a number came to; nil where it was not worked.
func (r *Result) standing(number string) *ClauseResult {
	var found *ClauseResult
	for _, chapter := range r.Chapters {
		for _, c := range chapter.Clauses {
			if !chapter.IsLogBook() && isNumber(number, c.Clause) && (found == nil || found.Verdict < c.Verdict) {
				found = c
			}
		}
	}
	return found
}
