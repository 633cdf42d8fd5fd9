package vehicle

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
)

// wearing is the gear of the people in a car.
type wearing struct {
	season  *Season
	crew    *PartType
	members []*Part           // driver, co-driver
	gear    []*Part           // all of it, each crew_member before what belongs to it
	places  map[string]string // by person
}

// newWearing gathers the gear of the people in a car.
func newWearing(season *Season, crew *PartType, members []*Part) *wearing {
	w := &wearing{season: season, crew: crew, members: members, places: map[string]string{}}
	for _, member := range members {
		w.places[member.Person] = member.Label
		w.gear = append(append(w.gear, member), member.inner()...)
	}
	return w
}

// inner returns all parts that belong to a part, and those that belong to them.
func (p *Part) inner() []*Part {
	var parts []*Part
	for i := range p.Lists {
		for _, inner := range p.Lists[i].Parts {
			parts = append(append(parts, inner), inner.inner()...)
		}
	}
	return parts
}

// person is whose gear a part is.
func (p *Part) person() string {
	for ; p != nil; p = p.Within {
		if p.Person != "" {
			return p.Person
		}
	}
	return ""
}

// The ways of naming gear.
type gearForm uint8

const (
	ofNobody gearForm = iota // by a name that nobody of the season has
	ofAll                    // "helmet", "helmets", "garment overalls"
	ofPlace                  // "helmet driver"
	ofPerson                 // "helmet A. Oakhollow", "helmet of A. Oakhollow"
)

// form returns how gear is named, and the place or the person.
func (g *gearNamed) form(season *Season, crew *PartType) (gearForm, string) {
	rest := g.rest
	if rest == "" || g.of.Labels != nil && g.of != crew && g.of.Labels.Find(rest) >= 0 {
		return ofAll, rest
	}
	if at := crew.Labels.Find(rest); at >= 0 {
		return ofPlace, crew.Labels.Choices[at].Value
	}
	for _, person := range season.People {
		if name := inWords(person.Name); rest == name || strings.HasSuffix(" "+rest, " of "+name) {
			return ofPerson, person.Name
		}
	}
	return ofNobody, ""
}

// mayBe reports whether a part can be what gear names, as far as that is told by its type
// and, of a garment, its label. All that a person wears is meant by the person.
func (w *wearing) mayBe(g *gearNamed, p *Part) bool {
	if g.of == w.crew {
		return true
	}
	label := p.Label
	if p.Type != g.of {
		return false
	}
	form, said := g.form(w.season, w.crew)
	if form == ofAll && said != "" {
		return g.of.Labels.Find(said) == g.of.Labels.Find(label)
	}
	// The long form begins with the label: "overalls garment of A. Oakhollow".
	front, _, long := strings.Cut(g.rest, " "+inWords(g.of.Name)+" of ")
	return !long || front == inWords(label)
}

// wasLoaded reports whether a part is gear that an incident loaded. Gear of a place, or of
// no one in particular, is that of the people who were in the car at the event of the
// incident. Where the season does not say who they were, or has nobody of the name that is
// written, it may be anyone's: a slip of the pen makes nothing sound.
func (w *wearing) wasLoaded(g *gearNamed, p *Part, incident *Incident) bool {
	if !w.mayBe(g, p) {
		return false
	}
	var then []string
	if event := w.season.Event(incident.Event); event != nil {
		then = event.Crew
	}
	person := p.person()
	form, said := g.form(w.season, w.crew)
	switch {
	case form == ofPerson:
		return said == person
	case form == ofPlace && len(then) > 0:
		at := w.crew.Labels.Find(said)
		return at < len(then) && then[at] == person
	case form == ofAll && len(then) > 0:
		return slices.Contains(then, person)
	}
	return true
}

// incident is an incident of which the gear that was loaded is that of the people in the
// car, as far as they were in it then.
func (w *wearing) incident(before *Incident) *Incident {
	if len(before.gear) == 0 {
		return before
	}
	copied := *before
	copied.NotOnSheet = nil
	copied.Loaded = slices.DeleteFunc(slices.Clone(before.Loaded), func(p *Part) bool { return isGearOf(w.crew, p.Type) })
	for _, p := range w.gear {
		if slices.ContainsFunc(before.gear, func(g gearNamed) bool { return w.wasLoaded(&g, p, before) }) {
			copied.Loaded = append(copied.Loaded, p)
		}
	}
	return &copied
}

// subject is the part that a paper is about: the same as before, unless it is gear, then
// that of the people in the car; nil where they have no such thing, or several.
func (w *wearing) subject(before *Part, g *gearNamed) *Part {
	if g == nil {
		return before
	}
	candidates := w.gear
	if g.of == w.crew {
		candidates = w.members
	}
	var meant []*Part
	for _, p := range candidates {
		form, said := g.form(w.season, w.crew)
		person := p.person()
		if w.mayBe(g, p) && (form == ofAll || form == ofPlace && w.places[person] == said || form == ofPerson && person == said) {
			meant = append(meant, p)
		}
	}
	if len(meant) != 1 {
		return nil
	}
	return meant[0]
}

// Strangers warns of what the log book of a sheet names and the season does not have: events,
// and people whose gear it says to be loaded. Such gear is taken for everyone's.
func (s *Season) Strangers(sheet *Sheet) hcl.Diagnostics {
	faults := s.strangeEvents(sheet.Logbook)
	crew := sheet.Vocabulary.Type("crew_member")
	for _, incident := range sheet.Logbook.Incidents {
		for _, g := range incident.gear {
			if form, _ := g.form(s, crew); form == ofNobody {
				faults = append(faults, Warning("unknown-person", g.at, "Nobody of that name", fmt.Sprintf(
					"Found %s in loaded of the incident %s, but the season has nobody of that name. It is taken for everyone's %s until that is mended.", Quote(g.name), Quote(incident.Label), plain(g.of.Name))))
			}
		}
	}
	return faults
}
