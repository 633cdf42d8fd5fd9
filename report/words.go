package report

import (
	"fmt"
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// concernWord is the word of a concern as a rulebook writes it.
func concernWord(c rules.Concern) string {
	switch c {
	case rules.Safety:
		return "safety"
	case rules.Eligibility:
		return "eligibility"
	}
	return "advice"
}

// stageWord is the word of a stage as a sheet or rulebook writes it, "" when none is set.
func stageWord(s vehicle.Stage) string {
	if s == vehicle.StageUnset {
		return ""
	}
	return s.String()
}

// CauseWord is the word of a cause's kind, the same in every form of report.
func CauseWord(kind engine.CauseKind) string {
	switch kind {
	case engine.Missing:
		return "missing"
	case engine.Tolerance:
		return "tolerance"
	case engine.NoSuchPart:
		return "no such part"
	case engine.NotFitted:
		return "not fitted"
	case engine.StatedNone:
		return "stated none"
	case engine.UnknownOthers:
		return "unknown others"
	case engine.Undefined:
		return "undefined"
	case engine.Budget:
		return "budget"
	case engine.Loaded:
		return "loaded"
	}
	panic(fmt.Sprintf("a kind of cause without a word: %d", kind))
}

// list joins words for a sentence: "a", "a and b", "a, b and c".
func list(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}

// sentence gives a text a capital letter and a full stop.
func sentence(text string) string {
	text = strings.TrimSpace(text)
	if text == "" {
		return ""
	}
	letters := []rune(text)
	text = strings.ToUpper(string(letters[:1])) + string(letters[1:])
	if strings.ContainsAny(text[len(text)-1:], ".!?") {
		return text
	}
	return text + "."
}
