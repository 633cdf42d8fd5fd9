package rules

import "github.com/expr-lang/expr/ast"

// refusal says why something is not part of the language, and what to write instead.
type refusal struct{ found, advice string }

// refusals is what expr's own language has and formulas here do not.
var refusals = map[string]refusal{
	"nil":               {"nil means that something is not there, and a comparison with it would say yes where nothing was recorded.", "Write recorded(x), or (x ?? y) for a particular that may be none."},
	"index":             {"Members of a list have no numbers.", "Name a part by its label, as in harness['driver'], or ask all of them: all(harnesses, …)."},
	"slice":             {"Members of a list have no numbers, so no stretch of it can be cut out.", "Choose members by what they are: filter(cage.tubes, .part == 'main hoop')."},
	"sequence":          {"A formula is one sentence; a semicolon stands only behind a let.", "Join conditions with and."},
	"optional chaining": {"?. would hide that something is not recorded.", "Write a plain dot; what is not recorded is named in the answer."},
	"method":            {"Nothing is called behind a dot.", "Write the function first: floor(x), not x.floor()."},
	"map":               {"Groups in braces are not part of a formula.", "Put figures that belong together in a table of the rulebook."},
	"bytes":             {"Bytes are not part of a formula.", "Write a text between quotes."},
	"range":             {"a..b stands only behind in, on a count.", "Write x in 1..3 for a count, 38*mm <= x <= 45*mm for a figure."},
	"remainder":         {"% divides and keeps the rest, which no figure with a tolerance can do.", "Use round, floor or ceil; for per cent write 50*percent."},
	"short condition":   {"A condition without its middle says the same thing twice.", "Write a ? b : c with all three."},
	"operator":          {"This operator is not part of a formula.", "Use and, or, not, comparisons and + - * / **."},
	"counter":           {"Members of a list have no numbers.", "# is the member itself."},
}

// refused is the fault of something that is left out of the language.
func (c *checker) refused(what string, at Span) Node {
	c.faults = append(c.faults, refusedFault(what, at))
	return nil
}

func refusedFault(what string, at Span) Fault {
	r := refusals[what]
	return Fault{CodeFormulaRefused, at, r.found, r.advice}
}

// refusedNode refuses nodes of expr's tree that no formula has.
func (c *checker) refusedNode(n ast.Node) Node {
	switch n := n.(type) {
	case *ast.NilNode:
		return c.refused("nil", c.spanOf(n))
	case *ast.SequenceNode:
		return c.refused("sequence", c.semicolon())
	case *ast.ChainNode:
		return c.refused("optional chaining", Span{c.startOf(n.Node), c.spanOf(n).To})
	case *ast.SliceNode:
		return c.refused("slice", c.toClosing(c.startOf(n.Node), n.Location().From))
	case *ast.MapNode:
		return c.refused("map", c.toClosing(c.spanOf(n).From, c.spanOf(n).From))
	case *ast.BytesNode:
		return c.refused("bytes", c.spanOf(n))
	}
	return c.refused("operator", c.spanOf(n))
}

// semicolon is the place of the first semicolon that ends no let.
func (c *checker) semicolon() Span {
	lets := 0
	for i, t := range c.tokens {
		switch {
		case c.is(i, "let"):
			lets++
		case c.is(i, ";") && lets > 0:
			lets--
		case c.is(i, ";"):
			return t.at
		}
	}
	return Span{0, c.runes}
}

// refusedNames is names that expr's own language has and formulas here do not.
var refusedNames = map[string]string{
	"$env": "Every value is read by its own name.",
	"env":  "Every value is read by its own name.",
	"now":  "The day comes from the run: write on, or event.inspection_day.",
	"null": "Write recorded(x), or (x ?? y) for a particular that may be none.",
	"none": "Write not any(list, …), or none(list, …); for a particular that is stated as none write (x ?? y).",
}

// refusedFunctions is expr's own functions that formulas do not have, with what to write
// instead.
var refusedFunctions = func() map[string]string {
	out := map[string]string{
		"now":           "The day comes from the run: write on, or event.inspection_day.",
		"duration":      "Write days_after(date, 30), or a figure of time such as 30*minute.",
		"timezone":      "Dates are civil days everywhere.",
		"reduce":        "Use sum, count, min, max, all or any.",
		"groupBy":       "Use filter for each group.",
		"findIndex":     "Members of a list have no numbers; use find.",
		"findLastIndex": "Members of a list have no numbers; use findLast.",
		"get":           "Name what is read: harness['driver'], or a particular after a dot.",
		"int":           "Use floor, ceil or round.",
		"float":         "All numbers are of one sort; leave it out.",
		"type":          "The kind of every particular is known before a car is read.",
	}
	lists := []string{"sortBy", "sort", "take", "reverse", "uniq", "concat", "flatten", "keys", "values", "toPairs", "fromPairs"}
	texts := []string{"string", "trim", "trimPrefix", "trimSuffix", "upper", "lower", "split", "splitAfter", "replace", "repeat", "join",
		"indexOf", "lastIndexOf", "hasPrefix", "hasSuffix", "toJSON", "fromJSON", "toBase64", "fromBase64"}
	bits := []string{"bitand", "bitor", "bitxor", "bitnand", "bitnot", "bitshl", "bitshr", "bitushr"}
	for _, name := range lists {
		out[name] = "A list is asked with all, any, count, sum, min, max, filter or map."
	}
	for _, name := range texts {
		out[name] = "Texts are compared without case or extra blanks: use ==, in, contains, startsWith, endsWith or matches."
	}
	for _, name := range bits {
		out[name] = "Use and, or, not."
	}
	return out
}()
