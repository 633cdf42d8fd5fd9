package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// noteInLog is what a note of the log book comes to on the day; nil for one that was not
// written yet. Only a cleared one is closed.
func (k *checker) noteInLog(clause *rules.Clause, n *vehicle.LogbookNote) *ClauseResult {
	day := k.request.Day
	if n.Day > day {
		return nil
	}
	s := &SubjectResult{Verdict: Gap, Place: n.Range}
	switch {
	case n.IsCleared && n.ClearedOn <= day:
		s.Verdict = Meets
	case n.IsFixed && n.Fixed <= day:
		s.Verdict = ByEye
	}
	s.Notes = []string{k.noteStanding(n)}
	out := &ClauseResult{Clause: clause, Note: n.Text}
	out.add(s)
	return out
}

// noteStands reports whether a note is written and not cleared on the day.
func (k *checker) noteStands(n *vehicle.LogbookNote) bool {
	day := k.request.Day
	return n.Day <= day && !(n.IsCleared && n.ClearedOn <= day)
}

// noteStanding says how far a note is from being closed.
func (k *checker) noteStanding(n *vehicle.LogbookNote) string {
	day, text := k.request.Day, "open"
	switch {
	case n.IsCleared && n.ClearedOn <= day:
		return "cleared on " + n.ClearedOn.String() + " by " + n.ClearedBy
	case n.IsFixed && n.Fixed <= day:
		text = "fixed on " + n.Fixed.String() + ", not cleared: show it to an inspector, who strikes it out"
	}
	switch {
	case n.HasBefore && day > n.Before:
		return text + "; it had to be cleared by " + n.Before.String() + ", which is past"
	case n.HasBefore:
		return text + "; to be cleared by " + n.Before.String()
	}
	return text
}
