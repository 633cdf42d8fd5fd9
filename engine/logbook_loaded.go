package engine

import (
	"slices"

	"gapsheet/vehicle"
)

// loadedBeside makes a subject not recorded where its clause reads a date of a part that an
// incident loaded, up to the day on which that is inspected: what is in date may still be
// broken. A clause that asks for a day without a date of the part counts as well where the
// part is its subject. A gap stays a gap.
func (k *checker) loadedBeside(s *SubjectResult, c *compiledClause) {
	if !c.mentions.dates {
		return
	}
	var read []dateOf
	for i, n := range k.openIncidents() {
		if i == 0 {
			read = k.datesRead(c)
		}
		causes := loadedCauses(n, read)
		if len(causes) == 0 && c.mentions.days {
			causes = loadedCauses(n, asDates(s.Parts))
		}
		if len(causes) == 0 {
			continue
		}
		s.Notes = append(s.Notes, loadedIn(n)+": "+noteReinspect)
		if s.Verdict != Gap {
			s.Verdict = NotRecorded
			s.Causes = append(s.Causes, causes...)
		}
	}
}

// openIncidents are the incidents up to the day of which nobody has looked at what they loaded.
func (k *checker) openIncidents() []*vehicle.Incident {
	var open []*vehicle.Incident
	for _, n := range k.car.log.papers.Incidents {
		if n.Day <= k.request.Day && !k.isInspected(n) {
			open = append(open, n)
		}
	}
	return open
}

// datesRead are the dates that a clause reads for the subject that its across variables stand
// for at present.
func (k *checker) datesRead(c *compiledClause) []dateOf {
	s := newSurvey(true)
	c.whole.survey(k.full, s)
	return k.car.datesIn(k.full, s)
}

// asDates are parts of which no date is known.
func asDates(parts []*vehicle.Part) []dateOf {
	var dates []dateOf
	for _, p := range parts {
		dates = append(dates, dateOf{part: p})
	}
	return dates
}

// loadedCauses are the dates of parts that an incident loaded, as reasons why nothing can be
// said of those parts, each once.
func loadedCauses(n *vehicle.Incident, dates []dateOf) []Cause {
	var causes []Cause
	var known []dateOf
	for _, d := range dates {
		loaded := loadedPart(n, d.part)
		if loaded == nil || slices.Contains(known, d) {
			continue
		}
		known = append(known, d)
		causes = append(causes, Cause{Kind: Loaded, Part: d.part, Particular: d.particular, Text: loaded.Name() + ", " + loadedIn(n), Place: n.Range})
	}
	return causes
}

// loadedPart is the part that an incident loaded which a part is or belongs to, nil for none.
// A person is no part: what they wear stands for itself.
func loadedPart(n *vehicle.Incident, p *vehicle.Part) *vehicle.Part {
	for ; p != nil && p.Within != nil; p = p.Within {
		name := p.Name()
		for _, loaded := range n.Loaded {
			if loaded.Type.Name != "crew_member" && loaded.Name() == name {
				return loaded
			}
		}
	}
	return nil
}

// loadedIn says in which incident something was loaded.
func loadedIn(n *vehicle.Incident) string {
	return "loaded in the incident " + n.Label + " on " + n.Day.String()
}
