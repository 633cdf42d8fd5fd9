package rules

import (
	"regexp"
	"slices"
	"sync"

	"github.com/expr-lang/expr/builtin"
	"github.com/expr-lang/expr/parser/operator"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// nameForm is what a name that an author gives may look like: across variables, terms,
// tables, columns and names in let.
var nameForm = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// words that the formula language itself has, beside its functions, operators and units.
var words = []string{"let", "if", "else", "true", "false", "nil", "not", "env"}

// names that a formula reads without anyone declaring them.
var given = []string{"on", "event", "table", "club", "pi"}

// functions of the formula language that take something else than scalars.
var special = []string{"recorded", "fitted", "in_band", "celsius", "fahrenheit"}

// reserved holds the part of the reserved list that no vocabulary changes: name to what
// it is, as it stands in a message.
var reserved = sync.OnceValue(func() map[string]string {
	list := map[string]string{}
	for _, f := range builtin.Builtins {
		list[f.Name] = "a function"
	}
	for _, f := range Functions() {
		list[f.Name] = "a function"
	}
	for _, name := range special {
		list[name] = "a function"
	}
	for name := range operator.Binary {
		list[name] = "an operator"
	}
	for _, name := range words {
		list[name] = "a word of the formula language"
	}
	for _, u := range quantity.FormulaUnits() {
		list[u.Formula()] = "a unit"
	}
	for _, name := range given {
		list[name] = "a word with a meaning of its own"
	}
	return list
})

// Reserved says what name already means in every formula, "a unit" or "a function", so
// that no author may give it to something else; "" when it is free. With a vocabulary the
// parts that stand at the root of a car (car, cage, seats) are reserved too.
func Reserved(name string, v *vehicle.Vocabulary) string {
	if means := reserved()[name]; means != "" {
		return means
	}
	if v == nil {
		return ""
	}
	if slices.ContainsFunc(v.Root.Parts, func(t *vehicle.PartType) bool { return rootName(t) == name }) {
		return "a part of the car"
	}
	return ""
}

// rootName is the name under which formulas read a type of part of the car itself: its
// plural when there can be several.
func rootName(t *vehicle.PartType) string {
	if t.Repeats() {
		return t.Plural
	}
	return t.Name
}
