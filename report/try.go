package report

import (
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
)

// WriteTry writes what a formula came to and how. The caution and the head stand above it
// when the formula was tried on a car or in the words of a rulebook.
func WriteTry(screen *Screen, head Head, formula string, answer engine.Answer, working *engine.Working) error {
	p := screen.page()
	if head.Book != nil || head.Sheet != nil {
		writeCaution(p)
		writeHead(p, head)
		p.blank()
	}
	writeFormula(p, "formula", formula)
	p.hanging(2, p.paint.With(Faint, pad("comes to", labelWidth)), labelWidth, Strong, AnswerText(answer))
	for _, cause := range answer.Causes {
		p.labelled(2, "open by", labelWidth, OpenBy(cause))
	}
	if working != nil && len(working.Of) > 0 {
		p.blank()
		p.prose(2, Faint, `What decided stands behind ">".`)
		writeNode(p, working, 2)
	}
	return p.done()
}

// OpenBy says in a few words what keeps a truth open: "tolerance of x", "missing: wall of
// tube 4".
func OpenBy(cause engine.Cause) string {
	if cause.Kind == engine.Tolerance {
		return CauseWord(cause.Kind) + " of " + cause.Text
	}
	return CauseWord(cause.Kind) + ": " + cause.Text
}

// AnswerText is an answer in words.
func AnswerText(a engine.Answer) string {
	text := answerValue(a)
	if !a.Known && a.Is.Kind != rules.Text && a.Is.Kind != rules.Choice {
		text += ", if there is one at all"
	}
	return text
}

func answerValue(a engine.Answer) string {
	switch a.Is.Kind {
	case rules.Truth:
		return a.Truth.String()
	case rules.Number:
		return a.Range.In(a.Unit, -1)
	case rules.Date:
		return engine.DayText(a.Range)
	case rules.List:
		var members []string
		for _, member := range a.List {
			members = append(members, answerValue(member))
		}
		return "[" + strings.Join(members, ", ") + "]"
	}
	return a.Text
}
