package rules

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// slips finds what is wrong by the look of neighbouring pieces alone.
func (c *checker) slips() []Fault {
	var faults []Fault
	for i, t := range c.tokens {
		text := c.source[t.start:t.end]
		switch {
		case t.kind == tokenStray:
			faults = append(faults, c.stray(i, text))
		case t.kind == tokenWord && isShouted(text):
			faults = append(faults, Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("The operator %s is written in small letters.", text), "Write " + strings.ToLower(text) + "."})
		case t.kind == tokenWord && wordSlips[text] != "":
			faults = append(faults, Fault{CodeFormulaSyntax, t.at, fmt.Sprintf("The word %s is no operator of a formula.", text), wordSlips[text]})
		case i == 0:
		case text == "in" && c.tokens[i-1].kind == tokenNumber && !c.startsValue(i+1):
			faults = append(faults, c.numberBeforeWord(c.tokens[i-1], t))
		case t.kind == tokenWord && c.tokens[i-1].kind == tokenNumber && !isOperatorWord(text):
			if fault, ok := c.spanAdded(i); ok {
				faults = append(faults, fault)
				continue
			}
			faults = append(faults, c.numberBeforeWord(c.tokens[i-1], t))
		case t.kind == tokenNumber && i >= 2 && c.isDecimalComma(i):
			faults = append(faults, c.decimalComma(i))
		}
		if t.kind == tokenOperator {
			faults = append(faults, c.operatorSlip(i, text)...)
		}
	}
	return faults
}

// wordSlips is words of plain English that stand for an operator, with what to write. They
// are looked for only in a formula that cannot be read.
var wordSlips = map[string]string{
	"is":      "Write == for equal.",
	"equals":  "Write == for equal.",
	"than":    "Write >, >=, < or <=.",
	"then":    "Write a ? b : c, or if a { b } else { c }.",
	"between": "Write 2*mm <= x <= 3*mm.",
	"xor":     "Write a != b.",
}

// isDecimalComma reports whether token i is what follows the comma in 2,5: no blanks, and
// not among the arguments of a function or the members of a list.
func (c *checker) isDecimalComma(i int) bool {
	comma, whole := c.tokens[i-1], c.tokens[i-2]
	if whole.kind != tokenNumber || c.source[comma.start:comma.end] != "," || whole.end != comma.start || comma.end != c.tokens[i].start {
		return false
	}
	open := c.around(i)
	if open < 0 {
		return true
	}
	word := open > 0 && c.tokens[open-1].kind == tokenWord && !isOperatorWord(c.source[c.tokens[open-1].start:c.tokens[open-1].end])
	return c.is(open, "(") && !word
}

// decimalComma is the fault of the comma before token i, which may stand for a point or
// between thousands.
func (c *checker) decimalComma(i int) Fault {
	whole, after := c.tokens[i-2], c.tokens[i]
	head, tail := c.source[whole.start:whole.end], c.source[after.start:after.end]
	advice := fmt.Sprintf("Write a point: %s.%s.", head, tail)
	switch {
	case strings.Contains(tail, "."):
		advice = fmt.Sprintf("Write no mark between thousands: %s%s.", head, tail)
	case len(tail) == 3 && strings.Trim(head, "0") != "" && !strings.Contains(head, "."):
		advice = fmt.Sprintf("Write %s%s if thousands are meant, or %s.%s with a decimal point.", head, tail, head, tail)
	}
	return Fault{CodeFormulaDigits, Span{whole.at.From, after.at.To}, fmt.Sprintf("%s has a comma in it.", quoteCode(head+","+tail)), advice}
}

// isOperatorWord reports whether a word joins two values.
func isOperatorWord(word string) bool {
	switch word {
	case "and", "or", "in", "not", "matches", "contains", "startsWith", "endsWith", "if", "else":
		return true
	}
	return false
}

// isShouted reports whether a word is an operator in capitals.
func isShouted(word string) bool {
	switch word {
	case "AND", "OR", "NOT", "IN", "And", "Or", "Not":
		return true
	}
	return false
}

// startsValue reports whether token i can begin a value.
func (c *checker) startsValue(i int) bool {
	if i >= len(c.tokens) || c.tokens[i].kind == tokenClose {
		return false
	}
	text := c.source[c.tokens[i].start:c.tokens[i].end]
	return c.tokens[i].kind != tokenOperator && (text == "not" || text == "if" || !isOperatorWord(text))
}

// numberBeforeWord is the fault of "45 mm".
func (c *checker) numberBeforeWord(number, word token) Fault {
	digits, name := c.source[number.start:number.end], c.source[word.start:word.end]
	at := Span{number.at.From, word.at.To}
	found := fmt.Sprintf("%s has no operator between number and word.", quoteCode(c.source[number.start:word.end]))
	if unit, err := quantity.FindUnit(name); err == nil && unit.Formula() != "" {
		return Fault{CodeFormulaSyntax, at, found, fmt.Sprintf("Write %s*%s.", digits, unit.Formula())}
	}
	return Fault{CodeFormulaSyntax, at, found, fmt.Sprintf("For a unit write %s*mm, else put the operator that is meant between them.", digits)}
}

// spanAdded is the fault of made + 5 years, where token i is the span of time; not ok for
// anything else.
func (c *checker) spanAdded(i int) (fault Fault, ok bool) {
	call := callForSpan[c.source[c.tokens[i].start:c.tokens[i].end]]
	if call == "" || i < 3 || !c.is(i-2, "+") && !c.is(i-2, "-") {
		return Fault{}, false
	}
	from := i - 3
	switch {
	case c.tokens[from].kind == tokenClose && c.tokens[from].match > 0 && c.tokens[c.tokens[from].match-1].kind == tokenWord:
		from = c.tokens[from].match - 1
	case c.tokens[from].kind != tokenWord:
		return Fault{}, false
	}
	for from >= 2 && c.is(from-1, ".") && c.tokens[from-2].kind == tokenWord {
		from -= 2
	}
	count := c.source[c.tokens[i-1].start:c.tokens[i-1].end]
	if c.is(i-2, "-") {
		count = "-" + count
	}
	at := Span{c.tokens[from].at.From, c.tokens[i].at.To}
	date := strings.TrimSpace(c.code(Span{at.From, c.tokens[i-2].at.From}))
	return Fault{CodeFormulaRefused, at, "Dates are not reckoned with by signs.", fmt.Sprintf("Write %s(%s, %s).", call, date, count)}, true
}

// operatorSlip finds signs that other languages write differently.
func (c *checker) operatorSlip(i int, text string) []Fault {
	t := c.tokens[i]
	next := ""
	if i+1 < len(c.tokens) && c.tokens[i+1].start == t.end {
		next = c.source[c.tokens[i+1].start:c.tokens[i+1].end]
	}
	meant := ""
	switch {
	case text == "=" && (i < 2 || c.source[c.tokens[i-2].start:c.tokens[i-2].end] != "let"):
		meant = "=="
		if next == "<" || next == ">" {
			meant = next + "="
		}
	case text == "==" && next == "=":
		return []Fault{{CodeFormulaSyntax, Span{t.at.From, t.at.To + 1}, "\"===\" is not an operator.", "Write ==."}}
	case text == "<" && next == ">":
		meant = "!="
	case text == "&" || text == "&=":
		meant = "and"
	}
	if before := i - 1; text == "=" && (c.is(before, "<") || c.is(before, ">") || c.is(before, "!")) {
		sign := c.source[c.tokens[before].start:c.tokens[before].end]
		return []Fault{{CodeFormulaSyntax, Span{c.tokens[before].at.From, t.at.To}, "A blank parts the operator " + sign + "=.", "Write " + sign + "=."}}
	}
	if meant == "" || i > 0 && c.source[c.tokens[i-1].start:c.tokens[i-1].end] == "==" && c.tokens[i-1].end == t.start {
		return nil
	}
	at, shown := t.at, text
	if meant != "==" && meant != "and" {
		at.To, shown = at.To+1, text+next
	}
	return []Fault{{CodeFormulaSyntax, at, fmt.Sprintf("%s is not an operator.", quoteCode(shown)), "Write " + meant + "."}}
}

// strayAdvice says what to write instead of a character that no formula holds.
var strayAdvice = map[string]string{
	"≥": "Write >=.", "≤": "Write <=.", "≠": "Write !=.", "×": "Write *.", "·": "Write *.", "÷": "Write /.",
	"−": "Write the minus of the keyboard: -.", "–": "Write the minus of the keyboard: -.", "—": "Write the minus of the keyboard: -.",
	"²": "Write **2.", "³": "Write **3.", "°": "Write an angle as 30*deg, a temperature as celsius(30).", "″": "Write an inch as 1.5*inch.", "′": "Write a foot as 3*ft.",
	"±": "A tolerance belongs to the reading in the build sheet; in a formula write the limits themselves.",
	"½": "Write 0.5.", "¼": "Write 0.25.", "¾": "Write 0.75.", "…": "Write both ends: 38*mm <= x <= 45*mm.",
}

// stray is the fault of a character that no formula holds, which is token i.
func (c *checker) stray(i int, text string) Fault {
	at, advice := c.tokens[i].at, strayAdvice[text]
	switch {
	case text == "°" && i > 0 && c.tokens[i-1].kind == tokenNumber:
		advice = c.degrees(i)
	case strings.Contains("‘’‚“”„«»´", text):
		return Fault{CodeFormulaSyntax, at, "The quotation mark " + text + " is a printer's one.", "Write a text between straight quotes: 'steel'."}
	case advice == "":
		advice = "Take it out."
	}
	return Fault{CodeFormulaSyntax, at, fmt.Sprintf("The character %s has no meaning in a formula.", vehicle.Quote(text)), advice}
}

// degrees says how 10° is written, where token i is the sign.
func (c *checker) degrees(i int) string {
	number := c.source[c.tokens[i-1].start:c.tokens[i-1].end]
	scale := ""
	if i+1 < len(c.tokens) && c.tokens[i+1].kind == tokenWord {
		scale = c.source[c.tokens[i+1].start:c.tokens[i+1].end]
	}
	switch scale {
	case "C":
		return fmt.Sprintf("Write celsius(%s).", number)
	case "F":
		return fmt.Sprintf("Write fahrenheit(%s).", number)
	}
	return fmt.Sprintf("Write %s*deg; a temperature is celsius(%s).", number, number)
}
