package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// need is one thing to measure, look up or write down, with every part it is needed of
// and every clause that waits for it. Whoever goes to the car with a gauge wants the work
// by what is measured, not by clause.
type need struct {
	what    string
	written string // how the sheet says it: the key, and its block where there is none yet
	how     string
	parts   []named
	clauses []*rules.Clause
	ranges  []hcl.Range
}

// needsOf collects what the clauses that are not recorded wait for: first particulars, then
// what is not settled about whole lists, each in the order in which the rulebook first asks
// for it.
func needsOf(found []finding) []*need {
	collector := needCollector{byParticular: map[*vehicle.Particular]*need{}, byText: map[string]*need{}}
	for _, f := range found {
		told := false
		for _, subject := range f.subjects {
			told = collector.subject(f.clause, subject) || collector.notes(f.clause, subject) || told
		}
		if !told {
			collector.text(f.clause, noteOr(f.note, "not recorded"), "")
		}
	}
	slices.SortStableFunc(collector.needs, func(a, b *need) int { return cmp.Compare(a.rank(), b.rank()) })
	return collector.needs
}

func noteOr(note, otherwise string) string {
	if note == "" {
		return otherwise
	}
	return note
}

// rank sorts particulars, which are measured, before the rest.
func (n *need) rank() int {
	if n.written != "" {
		return 0
	}
	return 1
}

type needCollector struct {
	needs        []*need
	byParticular map[*vehicle.Particular]*need
	byText       map[string]*need
}

// subject adds what one subject waits for and reports whether there was anything.
func (c *needCollector) subject(clause *rules.Clause, subject *engine.SubjectResult) bool {
	told := false
	for _, cause := range subject.Causes {
		switch cause.Kind {
		case engine.Missing:
			c.missing(clause, cause)
		case engine.UnknownOthers:
			c.others(clause, cause)
		case engine.Undefined:
			c.text(clause, "cannot be worked out: "+cause.Text, "")
		case engine.Loaded:
			c.text(clause, cause.Text, "Re-inspect or replace it, then write inspected and inspected_by into the incident.")
		case engine.NoSuchPart:
			c.text(clause, "whether there is one: "+cause.Text, writeOrDeny(cause))
		default:
			continue
		}
		told = true
	}
	return told
}

// notes adds what is said of a subject that waits for nothing on the sheet, such as an edition
// that is not given. It reports whether there was anything.
func (c *needCollector) notes(clause *rules.Clause, subject *engine.SubjectResult) bool {
	for _, note := range subject.Notes {
		c.text(clause, note, "")
	}
	return len(subject.Notes) > 0
}

func (c *needCollector) missing(clause *rules.Clause, cause engine.Cause) {
	if cause.Particular == nil {
		c.text(clause, cause.Text, writeOrDeny(cause))
		return
	}
	n := c.byParticular[cause.Particular]
	if n == nil {
		n = &need{what: inWords(cause.Particular.Name), how: cause.Particular.How, written: cause.Particular.Name}
		if cause.Part == nil || cause.Part.Range.Filename == "" {
			n.written += " in a block " + cause.Particular.Part.Name
		}
		c.byParticular[cause.Particular] = n
		c.needs = append(c.needs, n)
	}
	n.add(clause, named{partName(cause), cause.Part})
	if cause.Part != nil && cause.Part.Range.Filename != "" {
		n.ranges = append(n.ranges, cause.Part.Range)
	}
}

// others adds a list of which the sheet does not say that it is complete.
func (c *needCollector) others(clause *rules.Clause, cause engine.Cause) {
	if cause.Known == 0 || cause.Label != "" {
		c.text(clause, cause.Text, writeOrDeny(cause))
		return
	}
	c.text(clause, "whether there are more: "+cause.Text,
		fmt.Sprintf("Write the rest down, then take %q out of unfinished.", cause.List.Name))
}

// writeOrDeny says how a sheet tells whether there is a part of a type.
func writeOrDeny(cause engine.Cause) string {
	if cause.List == nil {
		return ""
	}
	name := cause.List.Name
	if cause.Label != "" {
		return fmt.Sprintf("Write it down as a block %s %q; where the car has no such part, take %q out of unfinished once the others are written down.", name, cause.Label, name)
	}
	return fmt.Sprintf("Write it down as a block %s; where there is none, put %q into not_fitted.", name, name)
}

// partName names the part whose particular is missing. One that no block of the sheet
// speaks of is named by its type.
func partName(cause engine.Cause) string {
	if cause.Part == nil {
		return inWords(cause.Particular.Part.Name)
	}
	return cause.Part.Name()
}

// inWords turns a name of the vocabulary into words.
func inWords(name string) string { return strings.ReplaceAll(name, "_", " ") }

func (c *needCollector) text(clause *rules.Clause, what, how string) {
	n := c.byText[what]
	if n == nil {
		n = &need{what: what, how: how}
		c.byText[what] = n
		c.needs = append(c.needs, n)
	}
	n.add(clause, named{})
}

func (n *need) add(clause *rules.Clause, part named) {
	if part.name != "" && !slices.Contains(n.parts, part) {
		n.parts = append(n.parts, part)
	}
	if !slices.Contains(n.clauses, clause) {
		n.clauses = append(n.clauses, clause)
	}
}

// title is what is needed and of which parts: "wall of tube 4 and tube 7".
func (n *need) title() string {
	if len(n.parts) == 0 {
		return n.what
	}
	return n.what + " of " + nameList(n.parts)
}

// kindTitle is what is needed, of which type of part, where there is but one of it:
// "elongation of tube stock".
func (n *need) kindTitle() string {
	if len(n.parts) == 0 || n.parts[0].part == nil {
		return n.title()
	}
	return n.what + " of " + inWords(n.parts[0].part.Type.Name)
}

// clausesNamed is how many of the clauses that wait are named; a list of forty numbers
// tells nobody where to begin.
const clausesNamed = 6

// clauseList names the clauses that wait: "4.3.2 Main hoop tube (p. 31, safety)".
func (n *need) clauseList() string {
	var named []string
	for i, clause := range n.clauses {
		if i == clausesNamed && len(n.clauses) > clausesNamed+1 {
			return strings.Join(named, ", ") + fmt.Sprintf(" and %d more", len(n.clauses)-i)
		}
		named = append(named, fmt.Sprintf("%s %s", clause.Number, clauseTitle(clause)))
	}
	return list(named)
}

// place is where in the sheet it is to be written, and as what.
func (n *need) place() string {
	places := placesOf(n.ranges)
	switch {
	case n.written == "":
		return places
	case places == "":
		return "as " + n.written
	}
	return places + ", as " + n.written
}
