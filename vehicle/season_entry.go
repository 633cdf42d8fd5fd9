package vehicle

import (
	"fmt"
	"io/fs"
	"slices"

	"github.com/hashicorp/hcl/v2"
)

// WithClass returns a sheet like this one whose car is entered in a class: the one that an
// event names. Everything else is shared with the sheet. Without a class the sheet itself is
// returned, and so it is where it has no car. It panics where the class is none of the
// vocabulary's; ClassFault tells of that before.
func (s *Sheet) WithClass(class string) *Sheet {
	car := s.Car()
	if class == "" || car == nil {
		return s
	}
	particular := car.Type.Particular("class")
	value := Value{State: Stated, Text: class, Range: car.Values[particular.Index].Range}
	if particular.Kind == KindChoice {
		if value.Choice = particular.Choices.Find(class); value.Choice < 0 {
			panic("vehicle: no class of the name " + Quote(class))
		}
	}
	entered := *car
	entered.Values = slices.Clone(car.Values)
	entered.Values[particular.Index] = value
	root := *s.Root
	root.Lists = slices.Clone(s.Root.Lists)
	list := &root.Lists[car.Type.Index]
	list.Parts = []*Part{&entered}
	entered.Within = &root
	with := *s
	with.Root = &root
	with.Logbook = s.Logbook.about(car, &entered)
	return &with
}

// about returns a log book like this one that speaks of another part in place of one.
func (l *Logbook) about(before, now *Part) *Logbook {
	with := *l
	instead := func(p *Part) *Part {
		if p == before {
			return now
		}
		return p
	}
	with.Incidents = make([]*Incident, len(l.Incidents))
	for i, incident := range l.Incidents {
		copied := *incident
		copied.Loaded = make([]*Part, len(incident.Loaded))
		for j, part := range incident.Loaded {
			copied.Loaded[j] = instead(part)
		}
		with.Incidents[i] = &copied
	}
	with.Inspections = make([]*Inspection, len(l.Inspections))
	for i, inspection := range l.Inspections {
		copied := *inspection
		copied.SubjectPart = instead(inspection.SubjectPart)
		with.Inspections[i] = &copied
	}
	with.Dispensations = make([]*Dispensation, len(l.Dispensations))
	for i, dispensation := range l.Dispensations {
		copied := *dispensation
		copied.SubjectPart = instead(dispensation.SubjectPart)
		with.Dispensations[i] = &copied
	}
	return &with
}

// ClassFault reports an event whose class is none of a rulebook's, with the nearest. of
// names the rulebook and its edition. It is nil where the class is known, where the event
// names none, and where the rulebook has no classes.
func (e *Event) ClassFault(v *Vocabulary, of string) *hcl.Diagnostic {
	class := v.Type("car").Particular("class")
	if e.Class == "" || class.Kind != KindChoice || class.Choices.Find(e.Class) >= 0 {
		return nil
	}
	return Fault("unknown-choice", e.ClassRange, "Unknown class", fmt.Sprintf(
		"Found %s as class of the event %s, which is no class of %s. %s", Quote(e.Class), Quote(e.Name), of, class.Choices.Advice(e.Class)))
}

// RulebookPath is where an event says which rulebook it runs under.
type RulebookPath struct {
	Path  string // slash path from the season's folder, as Event.Rulebook
	Event string // name of the event
	Range hcl.Range
}

// SeasonRulebooks lists the rulebooks that the events of a season name, in the order of the
// files. A season is read in the words of its rulebooks, so they have to be known before.
// What cannot be read, or is at fault, is left out: LoadSeason tells of it.
func SeasonRulebooks(fsys fs.FS, name, shown string) []RulebookPath {
	sources, _ := ReadSources(fsys, name, shown, "season")
	var found []RulebookPath
	for _, source := range sources {
		for _, season := range source.Body.Blocks {
			if season.Type != "season" {
				continue
			}
			for _, block := range season.Body.Blocks {
				k := &keys{source: source, block: block, what: "event"}
				label, ok := k.label(`"Saltmarsh Opening Stages"`)
				if block.Type != "event" || !ok {
					continue
				}
				if path, at := k.rulebook(); path != "" {
					found = append(found, RulebookPath{path, label.text, at})
				}
			}
		}
	}
	return found
}
