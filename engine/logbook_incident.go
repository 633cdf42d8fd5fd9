package engine

import (
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// noteReinspect is what has to be done to a part that an incident loaded, whatever its date.
const noteReinspect = "re-inspect or replace: in date is not sound"

// incidentInLog is what an incident leaves on the day: each part that it loaded counts as not
// recorded until it is inspected, whatever its dates. Nil for one that has not happened yet.
func (k *checker) incidentInLog(clause *rules.Clause, n *vehicle.Incident) *ClauseResult {
	if n.Day > k.request.Day || len(n.Loaded)+len(n.NotOnSheet) == 0 {
		return nil
	}
	out := &ClauseResult{Clause: clause}
	var said []string
	for _, text := range []string{n.Hit, n.Note} {
		if text != "" {
			said = append(said, text)
		}
	}
	out.Note = strings.Join(said, "; ")
	for _, part := range n.Loaded {
		if part.Type.Name != "crew_member" { // a person is no part; what they wear stands for itself
			out.add(k.loaded(n, &SubjectResult{Parts: []*vehicle.Part{part}, Name: part.Name(), Place: part.Range}))
		}
	}
	for _, name := range n.NotOnSheet {
		s := k.loaded(n, &SubjectResult{Name: name, Place: n.Range})
		s.Notes = append(s.Notes, "it is not on the sheet")
		out.add(s)
	}
	return out
}

// loaded gives a part that an incident loaded its verdict.
func (k *checker) loaded(n *vehicle.Incident, s *SubjectResult) *SubjectResult {
	if k.isInspected(n) {
		s.Verdict = Meets
		s.Notes = []string{"inspected or replaced on " + n.Inspected.String() + " by " + n.InspectedBy}
		return s
	}
	s.Verdict = NotRecorded
	s.Notes = []string{noteReinspect}
	if n.HasInspected {
		s.Notes = append(s.Notes, "looked at only on "+n.Inspected.String())
	}
	return s
}

// isInspected reports whether what an incident loaded has been looked at by the day.
func (k *checker) isInspected(n *vehicle.Incident) bool {
	return n.HasInspected && n.Inspected <= k.request.Day
}
