package vehicle

import (
	"cmp"
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// crew reads the gear of a person: what stands in a crew_member block of a sheet.
func (r *seasonReader) crew(source *Source, block *hclsyntax.Block) {
	k := &keys{source: source, block: block, what: "crew"}
	label, ok := k.label(`"A. Penrith-Vale"`)
	if ok {
		k.what += " " + Quote(label.text)
	}
	t := r.crewType()
	if t == nil {
		panic("vehicle: a vocabulary without crew_member")
	}
	p := newPart(t, "", r.gear.sheet.Root, k.header())
	p.Person = label.text
	person := &Person{Name: label.text, Gear: p, Range: p.Range}
	if first := r.people[FoldText(label.text)]; ok && first != nil {
		k.fault("said-twice", k.header(), "Two people of one name", fmt.Sprintf(
			"Found a second %s; the first is at %s. Events name people: put all gear of one person into one block, and write the name of another in full.", k.what, PlaceText(first.Range)))
	} else if ok {
		r.people[FoldText(label.text)] = person
		r.season.People = append(r.season.People, person)
	}
	r.gear.body(&opened{keys: k, part: p})
	r.gear.settle(p)
	r.gear.checkDates(p)
}

// check looks up who crews the events, and holds them against each other.
func (r *seasonReader) check() {
	r.gear.resolve()
	if len(r.events) > mostEvents {
		at := r.events[mostEvents].event.Range
		r.gear.fault("season-too-large", at, "More than a season has", fmt.Sprintf(
			"Found %d events, but there can be at most %d. Write one season in a file or folder.", len(r.events), mostEvents))
		return
	}
	for i := range r.events {
		r.findCrew(&r.events[i])
	}
	r.overlaps()
}

// findCrew finds the people who crew an event.
func (r *seasonReader) findCrew(read *eventRead) {
	for _, t := range read.crew {
		person := r.people[FoldText(t.text)]
		if person != nil {
			read.event.Crew = append(read.event.Crew, person.Name)
		} else if r.gear.whole {
			r.gear.fault("unknown-person", t.all, "Nobody of that name", fmt.Sprintf(
				"Found %s as crew of the %s, but no crew block has that name. %s", Quote(t.text), read.what, r.personAdvice(t.text)))
		}
	}
}

// personAdvice says who was most likely meant.
func (r *seasonReader) personAdvice(name string) string {
	var names []string
	for _, person := range r.season.People[:min(len(r.season.People), mostLabels)] {
		names = append(names, person.Name)
	}
	block := fmt.Sprintf("crew %s { }", Quote(name))
	switch near := Nearest(name, names); {
	case near != "":
		return fmt.Sprintf("Did you mean %s?", Quote(near))
	case len(names) == 0:
		return fmt.Sprintf("Write %s with what the person wears, here or in a file of crew.", block)
	case len(names) > fewChoices:
		return fmt.Sprintf("Write the name of one, or describe the person's gear: %s.", block)
	default:
		return fmt.Sprintf("There are %s. Write one of those, or describe the person's gear: %s.", quotedList(names, "and"), block)
	}
}

// overlaps warns of people who would be at two events on one day.
func (r *seasonReader) overlaps() {
	events := make([]eventRead, 0, len(r.events))
	for _, read := range r.events {
		if read.sound {
			events = append(events, read)
		}
	}
	slices.SortStableFunc(events, func(a, b eventRead) int { return cmp.Compare(a.event.begins(), b.event.begins()) })
	latest := map[string]*Event{} // by person: of the events so far the one that ends last
	for _, read := range events {
		e := read.event
		var others []*Event
		both := map[*Event][]string{}
		for _, name := range e.Crew {
			before := latest[name]
			if before != nil && before.Last >= e.begins() {
				if both[before] == nil {
					others = append(others, before)
				}
				both[before] = append(both[before], name)
			}
			if before == nil || e.Last > before.Last {
				latest[name] = e
			}
		}
		for _, other := range others {
			r.gear.faults = append(r.gear.faults, Warning("events-overlap", e.Range, "At two events at once", fmt.Sprintf(
				"Found %s in the crew of the %s from %s to %s, and of the event %s from %s to %s. Look at the days and at the names.",
				quotedList(both[other], "and"), read.what, e.begins(), e.Last, Quote(other.Name), other.begins(), other.Last)))
		}
	}
}
