package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// senses are the comparisons in words.
var senses = [...]string{
	rules.Equal: "exactly", rules.NotEqual: "other than",
	rules.Less: "less than", rules.AtMost: "at most",
	rules.More: "more than", rules.AtLeast: "at least",
}

// daySenses are the comparisons of days in words.
var daySenses = [...]string{
	rules.Equal: "on", rules.NotEqual: "not on",
	rules.Less: "before", rules.AtMost: "not after",
	rules.More: "after", rules.AtLeast: "not before",
}

// opposite is what a comparison comes to under a negation.
var opposite = [...]rules.Comparison{
	rules.Equal: rules.NotEqual, rules.NotEqual: rules.Equal,
	rules.Less: rules.AtLeast, rules.AtLeast: rules.Less,
	rules.More: rules.AtMost, rules.AtMost: rules.More,
}

var textTests = [...]string{
	rules.Contains: "containing", rules.StartsWith: "starting with",
	rules.EndsWith: "ending with", rules.Matches: "like",
}

// margin says by how much a limit is met or missed; "" for a reading that straddles it.
func (x *explainer) margin(sense rules.Comparison, r, l quantity.Range, reading, limit *trace, t quantity.Truth) string {
	beyond := r.Minus(l)
	if sense == rules.Less || sense == rules.AtMost {
		beyond = beyond.Negate()
	}
	// The end that matters: the least to spare, the least that lacks.
	var by quantity.Range
	strict := 0.0 // of days and counts, the limit itself is one step off
	if (sense == rules.Less || sense == rules.More) && (reading.isDate() || reading.tree.Type().Whole && limit.tree.Type().Whole) {
		strict = 1
	}
	switch t {
	case quantity.Yes:
		by = quantity.Exactly(max(beyond.Low-strict, 0))
	case quantity.No:
		by = quantity.Exactly(max(strict-beyond.High, 0))
	default:
		return ""
	}
	short, over := "short", "over"
	var amount string
	if reading.isDate() {
		amount, short, over = Plural(int(by.Low), "day", "days"), "too early", "too late"
	} else {
		amount = figureText(by, differenceUnit(x.unitBeside(reading, limit)), marginDigits)
	}
	switch {
	case t == quantity.Yes && by.Low == 0:
		return "on the limit"
	case t == quantity.No && by.Low == 0:
		return "on the limit, which is not in it"
	case t == quantity.Yes:
		return amount + " to spare"
	case sense == rules.Less || sense == rules.AtMost:
		return amount + " " + over
	}
	return amount + " " + short
}
