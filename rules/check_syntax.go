package rules

import (
	"errors"
	"fmt"
	"strings"

	"github.com/expr-lang/expr/file"
)

// rewordSyntax says in an officer's words why expr's parser could not read the formula.
// The parser stops at its first error; slips that show in the pieces alone are all told.
func (c *checker) rewordSyntax(err error) []Fault {
	var found *file.Error
	if !errors.As(err, &found) {
		return []Fault{{CodeFormulaSyntax, Span{0, c.runes}, "The formula cannot be read.", "Look for a missing operator or bracket."}}
	}
	at := Span{min(found.From, c.runes), min(max(found.To, found.From), c.runes)}
	if strings.Contains(found.Message, "maximum allowed nodes") {
		return []Fault{c.tooLarge()}
	}
	if faults := c.slips(); len(faults) > 0 {
		return faults
	}
	if fault, ok := c.unbalanced(); ok {
		return []Fault{fault}
	}
	return []Fault{c.rewordMessage(found.Message, at)}
}

// tooLarge is the fault of a formula with more parts than the scope allows.
func (c *checker) tooLarge() Fault {
	return Fault{CodeFormulaLarge, Span{0, c.runes},
		fmt.Sprintf("The formula has more than %d parts.", c.scope.names.parts),
		"Split it into terms, or put its figures in a table."}
}

// unbalanced finds a bracket without its partner.
func (c *checker) unbalanced() (Fault, bool) {
	for _, t := range c.tokens {
		bracket := c.source[t.start:t.end]
		switch {
		case t.match >= 0:
		case t.kind == tokenOpen:
			return Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("The bracket %s is not closed.", bracket), "Close it where it should end."}, true
		case t.kind == tokenClose:
			return Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("The bracket %s closes nothing.", bracket), "Take it out, or open it where it should begin."}, true
		}
	}
	return Fault{}, false
}

// rewordMessage puts one message of expr's parser in other words.
func (c *checker) rewordMessage(message string, at Span) Fault {
	has := func(part string) bool { return strings.Contains(message, part) }
	switch {
	case has("literal not terminated"):
		return Fault{CodeFormulaSyntax, at, "A text has no end.", "Close it with the quote it begins with, on the same line."}
	case has("unclosed comment"):
		return Fault{CodeFormulaSyntax, at, "A remark that begins with /* has no end.", "End it with */."}
	case has("escape"):
		return Fault{CodeFormulaSyntax, at, "A backslash in a text begins an escape, and this is not one.", `Write \\ for the backslash itself, or put a pattern between backquotes: ` + "`\\d+`."}
	case has("literal is too large"), has("invalid integer"), has("invalid float"):
		if i := c.tokenFrom(at.From); i > 0 && (i >= len(c.tokens) || c.tokens[i].kind != tokenNumber) {
			at = c.tokens[i-1].at // the parser had gone on by one
		}
		return Fault{CodeFormulaDigits, at, "A number is too large.", "Write it with an exponent or in a larger unit."}
	case has("coalesce"):
		return Fault{CodeFormulaOtherwise, at, fmt.Sprintf("?? and %s stand side by side without brackets.", c.quote(at)),
			"Put ?? in brackets of its own, and what stands behind it too when it is more than a name: (x ?? (3*mm)) >= y."}
	case has("wrap predicate"), has(`Operator(";")`):
		return refusedFault("sequence", at)
	case has("map key"):
		return refusedFault("map", at)
	case has("expected at least"):
		return Fault{CodeFormulaArguments, at, "A list function needs a list and what to ask of each member.", "Write for example all(cage.tubes, .wall >= 2*mm)."}
	case has("EOF"), has("unexpected end"):
		if len(c.tokens) == 0 {
			return Fault{CodeFormulaSyntax, Span{0, c.runes}, "The formula is empty.", "Write one, or leave the attribute out."}
		}
		for i, t := range c.tokens {
			if c.is(i, "if") {
				return Fault{CodeFormulaSyntax, t.at, "This condition has no end.", "Write both branches: if a { x } else { y }."}
			}
		}
		last := c.tokens[len(c.tokens)-1]
		return Fault{CodeFormulaSyntax, last.at, fmt.Sprintf("The formula ends after %s.", quoteCode(c.source[last.start:last.end])), "Write what should follow, or take it out."}
	}
	return c.unexpected(at)
}

// unexpected is the fault of a piece that cannot stand where it stands.
func (c *checker) unexpected(at Span) Fault {
	i := c.tokenFrom(at.From)
	if i >= len(c.tokens) {
		return Fault{CodeFormulaSyntax, at, "The formula cannot be read.", "Look for a missing operator or bracket."}
	}
	t := c.tokens[i]
	text := c.source[t.start:t.end]
	if open := c.around(i); open > 0 && c.is(open-1, "in") && !c.is(open, "[") {
		return Fault{CodeFormulaSyntax, c.tokens[open].at, "A list stands between square brackets.", "Write in [x, y]."}
	}
	switch {
	case t.kind == tokenOperator && (text == "." || text == "#" || text == "##"):
		return Fault{CodeFormulaElement, t.at, fmt.Sprintf("%s means the member of a list, and there is no list here.", quoteCode(text)),
			"It stands only inside a list function, as in all(cage.tubes, .wall >= 2*mm). For a part write its name before the dot; a remark begins with //."}
	case text == "," && c.around(i) < 0:
		return Fault{CodeFormulaSyntax, t.at, "A comma joins nothing here.", "Write and between two conditions, a point in a number."}
	case t.kind == tokenWord && isOperatorWord(text):
		return Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("%s cannot stand here.", quoteCode(text)), "Look for a missing value before it."}
	case i > 0 && t.kind <= tokenText && c.tokens[i-1].kind <= tokenText:
		return Fault{CodeFormulaSyntax, Span{c.tokens[i-1].at.From, t.at.To}, fmt.Sprintf("%s has no operator between its two pieces.", quoteCode(c.source[c.tokens[i-1].start:t.end])),
			"Put the operator that is meant between them, such as and, or, ==, >=, *."}
	}
	return Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("%s cannot stand here.", quoteCode(text)), "Look for a missing operator, value or comma before it."}
}

// around is the index of the bracket that is open at token i, -1 when none is.
func (c *checker) around(i int) int {
	for j := i - 1; j >= 0; j-- {
		switch t := c.tokens[j]; {
		case t.kind == tokenClose && t.match >= 0:
			j = t.match
		case t.kind == tokenOpen:
			return j
		}
	}
	return -1
}
