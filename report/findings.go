package report

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// finding is one clause with those of its subjects that have one verdict. A clause with
// one short tube among twenty good ones shows the short one among the gaps.
type finding struct {
	clause   *rules.Clause
	verdict  engine.Verdict
	note     string // of the clause, where no subject tells it
	subjects []*engine.SubjectResult
	groups   []group // the same subjects by what is to be said of them
}

// group is subjects of one clause of which the same is to be said.
type group struct {
	subjects []*engine.SubjectResult
	lines    []string // what is to be said
}

// counted says whether a clause's verdict counts, or is advice.
type counted bool

const (
	counts counted = true
	advice counted = false
)

// findingsOf collects what has a verdict, in the rulebook's order. The papers of the car have
// a section of their own.
func findingsOf(result *engine.Result, verdict engine.Verdict, which counted) []finding {
	var found []finding
	for _, chapter := range result.Chapters {
		if chapter.IsLogBook() {
			continue
		}
		for _, clause := range chapter.Clauses {
			if clause.NotDue || (clause.Clause.Concern == rules.Advice) == bool(which) {
				continue
			}
			if f, ok := findingOf(clause, verdict); ok {
				found = append(found, f)
			}
		}
	}
	return found
}

func findingOf(clause *engine.ClauseResult, verdict engine.Verdict) (finding, bool) {
	f := finding{clause: clause.Clause, verdict: verdict}
	var said []string
	for _, subject := range clause.Subjects {
		if subject.Verdict != verdict {
			continue
		}
		f.subjects = append(f.subjects, subject)
		lines := linesOf(subject)
		key := strings.Join(lines, "\n")
		at := slices.Index(said, key)
		if at < 0 {
			at = len(said)
			said = append(said, key)
			f.groups = append(f.groups, group{lines: lines})
		}
		f.groups[at].subjects = append(f.groups[at].subjects, subject)
	}
	if clause.Verdict == verdict {
		f.note = clause.Note
		return f, true
	}
	return f, len(f.groups) > 0
}

// linesOf says why a subject has its verdict: the comparisons that decided, papers that
// are not there, causes, notes.
func linesOf(subject *engine.SubjectResult) []string {
	var lines []string
	add := func(line string) {
		if line != "" && !slices.Contains(lines, line) {
			lines = append(lines, line)
		}
	}
	for _, decided := range subject.Decided {
		if tells(decided.Truth, subject.Verdict) {
			add(decidedLine(decided))
		}
	}
	for _, paper := range subject.MissingPapers {
		add("the sheet names no " + paper)
	}
	for _, paper := range subject.OutdatedPapers {
		add(paper.Label + ": " + paper.Why)
	}
	for _, cause := range subject.Causes {
		add(causeLine(cause, subject.Verdict))
	}
	for _, note := range subject.Notes {
		add(note)
	}
	return lines
}

// tells reports whether a comparison belongs to the story of a verdict: of a gap those
// that fail, also where it is let off, of what is open those that are open, else all.
func tells(truth quantity.Truth, verdict engine.Verdict) bool {
	switch verdict {
	case engine.Gap, engine.UnderDispensation:
		return truth == quantity.No
	case engine.Marginal:
		return truth == quantity.Open
	case engine.NotRecorded:
		return false // what is missing is told by itself
	}
	return true
}

// decidedLine is one comparison in words: "tube.wall is 2.1 mm, at least 2.5 mm asked: 0.4 mm short".
func decidedLine(d engine.Decided) string {
	line := d.What
	if d.Reading != "" && d.Reading != d.What {
		line += " is " + d.Reading
	}
	if d.Limit != "" {
		line += ", " + strings.TrimSpace(d.Sense+" "+d.Limit) + " asked"
	}
	if d.Margin != "" {
		line += ": " + d.Margin
	}
	if d.Note != "" {
		line += " (" + d.Note + ")"
	}
	return line
}

// causeLine is a cause in words, "" where the verdict's own section tells it better: what
// is missing stands under "not recorded" with how to measure it, and a tolerance is told
// by its comparison.
func causeLine(cause engine.Cause, verdict engine.Verdict) string {
	switch cause.Kind {
	case engine.Missing, engine.UnknownOthers, engine.Tolerance, engine.Loaded:
		return "" // a loaded part has a note that says what to do
	case engine.NotFitted:
		return "not fitted: " + cause.Text
	case engine.StatedNone:
		if cause.Follows {
			return "there is none: " + cause.Text
		}
		return "stated not to exist: " + cause.Text
	case engine.NoSuchPart:
		if verdict == engine.NotRecorded {
			return ""
		}
		return "not on the sheet: " + cause.Text
	case engine.Undefined:
		return "cannot be worked out: " + cause.Text
	case engine.Budget:
		return "not settled within the steps allowed"
	}
	return cause.Text
}

// names lists the subjects of a group, "" for the car as a whole.
func (g group) names() string { return subjectNames(g.subjects) }

// names lists the subjects of all groups, in the order of the sheet.
func (f finding) names() string { return subjectNames(f.subjects) }

func subjectNames(subjects []*engine.SubjectResult) string {
	var things []named
	for _, subject := range subjects {
		if subject.Name == "" {
			continue
		}
		thing := named{name: subject.Name}
		if n := len(subject.Parts); n > 0 && subject.Name == subject.Parts[n-1].Name() {
			thing.part = subject.Parts[n-1] // several of its type are told in one: "tubes 1 to 3"
		}
		things = append(things, thing)
	}
	return nameList(things)
}

// places lists where in the sheet the subjects stand: "tessel.hcl:34, 41 and 48".
func (g group) places() string {
	var ranges []hcl.Range
	for _, subject := range g.subjects {
		ranges = append(ranges, subject.Place)
	}
	return placesOf(ranges)
}

func placesOf(ranges []hcl.Range) string {
	var files []string
	lines := map[string][]string{}
	for _, at := range ranges {
		if at.Filename == "" || at.Start.Line < 1 {
			continue
		}
		if _, known := lines[at.Filename]; !known {
			files = append(files, at.Filename)
		}
		line := strconv.Itoa(at.Start.Line)
		if !slices.Contains(lines[at.Filename], line) {
			lines[at.Filename] = append(lines[at.Filename], line)
		}
	}
	for i, file := range files {
		files[i] = file + ":" + list(lines[file])
	}
	return strings.Join(files, "; ")
}

// clauseTitle is a clause's title with where it stands and what it is about.
func clauseTitle(clause *rules.Clause) string {
	var about []string
	if clause.Page != "" {
		about = append(about, "p. "+clause.Page)
	}
	about = append(about, concernWord(clause.Concern))
	return fmt.Sprintf("%s (%s)", clause.Title, strings.Join(about, ", "))
}
