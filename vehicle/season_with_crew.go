package vehicle

import (
	"slices"

	"gapsheet/vehicle/quantity"
)

// WithCrew returns a sheet like this one whose crew are some people of a season: the
// driver, then the co-driver. Their gear takes the place of all that the sheet says of its
// crew, also in its log book. Everything else is shared with the sheet. Without names the
// sheet itself is returned. It panics where the season has nobody of a name, where there are
// more than two, or where season and sheet were not read with one vocabulary.
//
// The gear of a person is the same *Part in every sheet, the crew_member part that holds it
// one of its own.
func (s *Sheet) WithCrew(season *Season, names []string) *Sheet {
	if len(names) == 0 {
		return s
	}
	crew := s.Vocabulary.Type("crew_member")
	places := crew.Labels.Choices
	if len(names) > min(len(places), mostPeopleInCar) {
		panic("vehicle: more people than places in a car")
	}
	root := *s.Root
	root.Lists = slices.Clone(s.Root.Lists)
	members := make([]*Part, 0, len(names))
	for i, name := range names {
		person := season.Person(name)
		if person == nil {
			panic("vehicle: nobody of the name " + Quote(name) + " in the season")
		}
		if person.Gear.Type != crew {
			panic("vehicle: a season and a sheet of two vocabularies")
		}
		member := *person.Gear
		member.Label, member.Within = places[i].Value, &root
		members = append(members, &member)
	}
	root.Lists[crew.Index] = PartList{Type: crew, Parts: members, Complete: true, Fitted: quantity.Yes}
	with := *s
	with.Root = &root
	with.Logbook = s.Logbook.withCrew(season, crew, members)
	return &with
}

// withCrew returns a log book like this one, of what the crew wear.
func (l *Logbook) withCrew(season *Season, crew *PartType, members []*Part) *Logbook {
	wearing := newWearing(season, crew, members)
	with := *l
	with.Incidents = make([]*Incident, len(l.Incidents))
	for i, incident := range l.Incidents {
		with.Incidents[i] = wearing.incident(incident)
	}
	with.Inspections = make([]*Inspection, len(l.Inspections))
	for i, inspection := range l.Inspections {
		copied := *inspection
		copied.SubjectPart = wearing.subject(inspection.SubjectPart, inspection.gear)
		with.Inspections[i] = &copied
	}
	with.Dispensations = make([]*Dispensation, len(l.Dispensations))
	for i, dispensation := range l.Dispensations {
		copied := *dispensation
		copied.SubjectPart = wearing.subject(dispensation.SubjectPart, dispensation.gear)
		with.Dispensations[i] = &copied
	}
	return &with
}
