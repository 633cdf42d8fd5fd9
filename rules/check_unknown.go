package rules

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// unknownName is the fault of a name that means nothing, with the nearest that does.
func (c *checker) unknownName(name string, at Span) Node {
	found := fmt.Sprintf("%s is not the name of anything.", quoteCode(name))
	if advice, refused := refusedNames[name]; refused {
		return c.fault(CodeFormulaRefused, at, advice, "%s is not part of the language.", quoteCode(name))
	}
	if name == "club" {
		return c.fault(CodeFormulaName, at, "Declare them in particular blocks.", "This rulebook adds no particulars to the car itself.")
	}
	if FunctionNamed(name) != nil || isListFunction(name) {
		return c.fault(CodeFormulaName, at, "Write what it is applied to in brackets behind it.", "%s is a function.", quoteCode(name))
	}
	if c.scope.isEmpty() {
		if t, _ := within(vehicle.BuiltIn().Root, name); t != nil {
			return c.fault(CodeFormulaName, at, "Hand in what it should read under a name of its own.",
				"%s is a part of a car, but neither a build sheet nor a rulebook was given.", quoteCode(name))
		}
	}
	if table := c.tableMeant(name); table != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write table.%s for its rows.", table), "%s is not read by its bare name.", quoteCode(name))
	}
	if owner := c.ownerOf(name); owner != "" {
		if path := c.inFull(name); path != "" {
			return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s, or %s.%s if that is meant.", path, owner, name), "%s does not say what it belongs to.", quoteCode(name))
		}
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s.%s.", owner, name), "%s is a particular, and it does not say of which part.", quoteCode(name))
	}
	if advice := twoUnits[strings.ToLower(name)]; advice != "" {
		return c.fault(CodeFormulaName, at, advice, "%s can be two things.", quoteCode(name))
	}
	if path := c.pathOf(name); path != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s.", path), "%s does not say what it belongs to.", quoteCode(name))
	}
	if path := c.inFull(name); path != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s, or name it in across.", path), "%s does not say what it belongs to.", quoteCode(name))
	}
	if advice := c.choiceMeant(name); advice != "" {
		return c.fault(CodeFormulaName, at, advice, "%s says what a tube is for, and is not the name of a part.", quoteCode(name))
	}
	if call := callForSpan[strings.ToLower(name)]; call != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("For a later day write %s(date, 5).", call), "A date is not reckoned with in %s.", quoteCode(name))
	}
	unit, err := quantity.FindUnit(name)
	if err == nil && unit.Formula() != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Write %s for the unit.", unit.Formula()), "%s", found)
	}
	if near := nearest(name, c.knownNames()); near != "" {
		return c.fault(CodeFormulaName, at, fmt.Sprintf("Did you mean %s?", near), "%s", found)
	}
	return c.fault(CodeFormulaName, at, "A text stands between quotes; a part, table, term or unit is written by its name.", "%s", found)
}

// twoUnits is the names of units that mean one thing to one reader and another to the next.
var twoUnits = map[string]string{
	"mil":    "Write mm for a millimetre, thou for a thousandth of an inch.",
	"mils":   "Write mm for millimetres, thou for thousandths of an inch.",
	"gal":    "Write us_gal or imp_gal.",
	"gallon": "Write us_gal or imp_gal.",
}

// callForSpan is the function that goes on by so many of a span of time.
var callForSpan = map[string]string{
	"day": "days_after", "days": "days_after", "week": "weeks_after", "weeks": "weeks_after",
	"month": "months_after", "months": "months_after", "year": "years_after", "years": "years_after",
}

// isEmpty reports whether formulas of the scope read nothing but what is handed in.
func (s *Scope) isEmpty() bool {
	return s.names.vocabulary == nil || len(s.names.vocabulary.Root.Parts) == 0
}

// tableMeant is the table of the rulebook that a bare name means, "" for none: the table of
// that name, or the only one whose name begins with it.
func (c *checker) tableMeant(name string) string {
	if c.scope.names.tables[name] != nil {
		return name
	}
	meant := ""
	for _, table := range sortedKeys(c.scope.names.tables) {
		if strings.HasPrefix(table, name+"_") {
			if meant != "" {
				return ""
			}
			meant = table
		}
	}
	return meant
}

// pathOf is how a type of parts that does not stand at the root is written from there, ""
// when there is none of that plural or singular, or when it stands within a list.
func (c *checker) pathOf(name string) string {
	if c.scope.names.vocabulary == nil {
		return ""
	}
	return pathWithin(c.scope.names.vocabulary.Root, "", name)
}

// pathWithin looks for a type of parts below one that is written as prefix.
func pathWithin(of *vehicle.PartType, prefix, name string) string {
	for _, t := range of.Parts {
		if prefix != "" && (t.Name == name && !t.Repeats() || t.Plural == name) {
			return prefix + name
		}
		if !t.Repeats() {
			if path := pathWithin(t, prefix+t.Name+".", name); path != "" {
				return path
			}
		}
	}
	return ""
}

// ownerOf returns what a particular that stands by itself could have been meant to belong
// to: a variable of the clause, or the one part of the car that has it; else "".
func (c *checker) ownerOf(name string) string {
	for _, b := range c.scope.variables {
		if b.Is.Kind == Part && b.Is.PartType.Particular(name) != nil {
			return b.Name
		}
	}
	if c.scope.names.vocabulary == nil {
		return ""
	}
	owner := ""
	for _, t := range c.scope.names.vocabulary.Root.Parts {
		if !t.Repeats() && t.Particular(name) != nil {
			if owner != "" {
				return ""
			}
			owner = t.Name
		}
	}
	return owner
}

// knownNames is every name that can begin a formula here, for finding the nearest.
func (c *checker) knownNames() []string {
	list := []string{"on", "event", "table", "pi", "true", "false"}
	for _, b := range slices.Concat(c.locals, c.scope.variables) {
		list = append(list, b.Name)
	}
	for _, g := range c.scope.given {
		list = append(list, g.Name)
	}
	if v := c.scope.names.vocabulary; v != nil {
		list = append(list, partNames(v.Root)...)
	}
	list = append(list, sortedKeys(c.scope.names.terms)...)
	return append(list, sortedKeys(unitNames())...)
}

// partNames is the names of the parts that belong to a part, lists by their plural.
func partNames(t *vehicle.PartType) []string {
	var list []string
	for _, p := range t.Parts {
		list = append(list, rootName(p))
	}
	return list
}
