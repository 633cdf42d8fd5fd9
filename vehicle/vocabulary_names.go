package vehicle

import (
	"fmt"
	"regexp"
	"slices"

	"gapsheet/vehicle/quantity"
)

// nameForm is what the name of a part or particular looks like: full words in lower case.
var nameForm = regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)

// formulaWords are the words that mean something wherever they stand in a formula.
var formulaWords = []string{
	"and", "or", "not", "in", "matches", "contains", "let", "if", "else", "true", "false", "nil", "null", "env",
	"on", "event", "table", "club",
}

// sheetWords are the words that a sheet has for every part, beside its particulars.
var sheetWords = []string{
	"note", "evidence", "not_fitted", "unfinished", "instrument", "label",
	"reading", "readings", "measured_with", "none", "tolerance", "mirrored_as",
}

// checkName reports a name that is not in the right form, or means something else already
// in formulas or sheets.
func (k *keys) checkName(t told) {
	switch {
	case t.text == "":
	case !nameForm.MatchString(t.text):
		k.fault("name-form", t.all, "Not a name",
			fmt.Sprintf("Found %s. Write a name in lower case letters, words joined by an underline, as in bend_radius.", Quote(t.text)))
	case slices.Contains(formulaWords, t.text):
		k.reserved(t, "a word of the formula language")
	case slices.Contains(sheetWords, t.text):
		k.reserved(t, "a word that every part of a sheet has")
	case slices.ContainsFunc(quantity.FormulaUnits(), func(u quantity.Unit) bool { return u.Formula() == t.text }):
		k.reserved(t, "a unit")
	}
}

// reserved reports a name that means something else.
func (k *keys) reserved(t told, means string) {
	k.fault("name-reserved", t.all, "A name that is taken",
		fmt.Sprintf("Found %s, which is %s. Choose another name, such as one with a second word: %s_….", t.text, means, t.text))
}
