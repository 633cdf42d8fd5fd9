package vehicle

import (
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// logbookBlocks are the blocks of the papers that travel with a car, at the top level of a
// sheet.
var logbookBlocks = []string{"logbook_note", "inspection", "incident", "dispensation"}

// logbookLabels are labels that such blocks could have.
var logbookLabels = map[string]string{
	"logbook_note": `"N3"`, "inspection": `"I7"`, "incident": `"gate post"`, "dispensation": `"D-2027-4"`,
}

// logbookBlock is one of them, to be read when all parts are known.
type logbookBlock struct {
	source *Source
	block  *hclsyntax.Block
}

// logbookKey is what no two of them have in common.
type logbookKey struct{ kind, label string }

// putAside keeps a block of the papers until all parts are known, where it stands in its
// place.
func (r *sheetReader) putAside(b *opened, block *hclsyntax.Block) {
	if b.part != r.sheet.Root {
		b.fault("block-misplaced", block.TypeRange, "A paper out of place", fmt.Sprintf(
			"Found the block %s in the %s. It travels with the whole car: write it at the top level of the sheet, outside any other block.", Quote(block.Type), b.what))
		return
	}
	r.aside = append(r.aside, logbookBlock{b.source, block})
}

// logbook reads the blocks that were put aside.
func (r *sheetReader) logbook() {
	for _, aside := range r.aside {
		k := &keys{source: aside.source, block: aside.block, what: plain(aside.block.Type)}
		label, ok := k.label(logbookLabels[aside.block.Type])
		if ok {
			k.what += " " + Quote(label.text)
			key := logbookKey{aside.block.Type, FoldText(label.text)}
			if first, twice := r.logged[key]; twice {
				k.faults = append(k.faults, SaidTwice(k.header(), k.what, first))
			} else {
				r.logged[key] = k.header()
			}
		}
		book := r.sheet.Logbook
		switch aside.block.Type {
		case "logbook_note":
			book.Notes = append(book.Notes, k.logbookNote(label.text))
		case "inspection":
			book.Inspections = append(book.Inspections, r.inspection(k, label.text))
		case "incident":
			book.Incidents = append(book.Incidents, r.incident(k, label.text))
		case "dispensation":
			book.Dispensations = append(book.Dispensations, r.dispensation(k, label.text))
		}
		r.faults = append(r.faults, k.faults...)
	}
}

// logbookNote reads what an inspector wrote into the log book.
func (k *keys) logbookNote(label string) *LogbookNote {
	n := &LogbookNote{Label: label, Range: k.header()}
	event := k.text("event")
	n.Event, n.eventAt, n.Clause = event.text, event.all, k.text("clause").text
	written := k.dayWanted("day", "It is the day on which the note was written.")
	n.Text = k.proseWanted("text", "as the inspector wrote it")
	before, fixed := k.day("before"), k.day("fixed")
	cleared, by := k.together("cleared_on", "cleared_by")
	n.Day, n.ClearedOn, n.ClearedBy, n.IsCleared = written.day, cleared.day, by, cleared.is && by != ""
	n.Before, n.HasBefore = before.day, before.is
	n.Fixed, n.IsFixed = fixed.day, fixed.is
	k.inOrder(written, before, "it was not written yet by then")
	k.inOrder(written, fixed, "it was not written yet on that day")
	if !k.inOrder(written, cleared, "it was not written yet on that day") {
		k.inOrder(fixed, cleared, "it was not fixed yet on that day")
	}
	k.done([]string{"event", "day", "clause", "text", "before", "fixed", "cleared_on", "cleared_by"}, "a log book note")
	return n
}

// inspection reads what an official inspection said.
func (r *sheetReader) inspection(k *keys, label string) *Inspection {
	n := &Inspection{Label: label, Range: k.header()}
	event := k.text("event")
	n.Event, n.eventAt, n.Clause = event.text, event.all, k.text("clause").text
	n.Day = k.dayWanted("day", "").day
	n.Subject, n.SubjectPart, n.gear = r.subject(k)
	n.Outcome = k.outcome()
	k.theirReading(n)
	n.Note = k.note()
	k.done([]string{"event", "day", "clause", "subject", "outcome", "their_reading", "their_instrument", "note"}, "an inspection")
	return n
}

// outcome reads what an inspection said.
func (k *keys) outcome() Outcome {
	words := outcomeWords[Accepted:]
	t := k.wanted("outcome", Accepted.String(), "There can be "+quotedList(words, "and")+".")
	if t.text == "" {
		return 0
	}
	if at := slices.Index(words, FoldText(t.text)); at >= 0 {
		return Accepted + Outcome(at)
	}
	advice := "Write one of " + quotedList(words, "or") + "."
	if near := Nearest(t.text, words); near != "" {
		advice = fmt.Sprintf("Did you mean %s? %s", Quote(near), advice)
	}
	k.fault("unknown-outcome", t.all, "Unknown outcome", fmt.Sprintf("Found %s as outcome of the %s. %s", Quote(t.text), k.what, advice))
	return 0
}

// theirReading reads the figure that the inspectors read, and what they read it with.
func (k *keys) theirReading(n *Inspection) {
	e := k.value("their_reading")
	n.TheirInstrument = k.text("their_instrument").text
	if e == nil {
		if a := k.block.Body.Attributes["their_instrument"]; a != nil {
			k.fault("key-missing", a.NameRange, "Something is missing", fmt.Sprintf(
				"Found their_instrument in the %s, but no reading. Write their_reading = with the figure they read, or take the line out.", k.what))
		}
		return
	}
	n.ReadingRange = e.Range()
	text, place := "", func(from, to int) hcl.Range { return e.Range() }
	if number, ok := k.source.Number(e); ok {
		text = number
	} else {
		t, ok := k.one("their_reading", e)
		if !ok {
			return
		}
		text, place = t.text, t.place
		n.ReadingRange = t.place(0, utf8.RuneCountInString(t.text))
	}
	figure, fault := quantity.ParseFigure(text)
	if fault != nil {
		k.faults = append(k.faults, FigureFault(fault, place))
		return
	}
	n.TheirReading, n.HasReading = figure, true
}

// incident reads what happened to the car, and which parts it loaded.
func (r *sheetReader) incident(k *keys, label string) *Incident {
	n := &Incident{Label: label, Range: k.header()}
	event := k.text("event")
	n.Event, n.eventAt, n.Hit = event.text, event.all, k.text("hit").text
	day := k.dayWanted("day", "")
	inspected, by := k.together("inspected", "inspected_by")
	n.Day, n.Inspected, n.InspectedBy, n.HasInspected = day.day, inspected.day, by, inspected.is && by != ""
	k.inOrder(day, inspected, "nothing had happened yet on that day")
	r.loaded(k, n)
	n.Note = k.note()
	k.done([]string{"day", "event", "hit", "loaded", "inspected", "inspected_by", "note"}, "an incident")
	return n
}

// dispensation reads a paper that lets the car off a clause.
func (r *sheetReader) dispensation(k *keys, label string) *Dispensation {
	n := &Dispensation{Label: label, Range: k.header()}
	n.Clause = k.wanted("clause", "4.3.2", "").text
	n.Subject, n.SubjectPart, n.gear = r.subject(k)
	n.GrantedBy = k.wanted("granted_by", "the club's safety delegate", "").text
	n.Reference, n.Chassis, n.LogBook = k.text("reference").text, k.text("chassis").text, k.text("log_book").text
	for _, event := range k.listOnce("events") {
		n.Events, n.eventsAt = append(n.Events, event.text), append(n.eventsAt, event.all)
	}
	from, until := k.day("from"), k.day("until")
	n.From, n.HasFrom, n.Until, n.HasUntil = from.day, from.is, until.day, until.is
	k.inOrder(from, until, "it did not hold yet on that day")
	n.Reason, n.Condition, n.Note = k.proseOf("reason"), k.condition(), k.note()
	k.done([]string{"clause", "subject", "granted_by", "reference", "chassis", "log_book", "events", "from", "until", "reason", "condition", "note"}, "a dispensation")
	return n
}

// condition reads a formula, which is checked where the rulebooks are known.
func (k *keys) condition() *Condition {
	e := k.value("condition")
	if e == nil {
		return nil
	}
	text, at, fault := k.source.Text(e)
	switch {
	case fault != nil:
		k.faults = append(k.faults, fault)
	case strings.TrimSpace(text) == "":
		k.fault("text-empty", e.Range(), "An empty formula", fmt.Sprintf(
			"The condition of the %s is empty. Write a formula, as in %q, or leave the line out.", k.what, "car.weighed_mass <= 1100*kg"))
	default:
		return &Condition{Text: text, Position: at, Range: e.Range()}
	}
	return nil
}
