package rules

import (
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"
)

// The guards. They hold before expr's parser sees a formula: it calls itself for every
// bracket and sign, and a text of a million of them would end the process.
const (
	longestFormula  = 16 << 10 // bytes
	deepestBracket  = 100
	longestNumber   = 40 // characters
	largestExponent = 30
	deepestList     = 3 // list functions within each other
)

// guard looks at the text alone and returns the faults that forbid parsing it.
func guard(source string, tokens []token) []Fault {
	var faults []Fault
	depth, signs, ladder := 0, 0, 0
	for i := range tokens {
		t := &tokens[i]
		text := source[t.start:t.end]
		sign := false
		switch t.kind {
		case tokenOpen:
			depth++
		case tokenClose:
			depth--
		case tokenNumber:
			faults = append(faults, guardNumber(text, t.at)...)
		case tokenOperator, tokenWord:
			switch text {
			case "!", "-", "+", "not":
				sign = true
			case "?", "**", "^", "let", "if":
				ladder++
			}
		}
		if signs++; !sign {
			signs = 0
		}
		if depth > deepestBracket || signs > deepestBracket || ladder > deepestBracket {
			return append(faults, Fault{CodeFormulaDeep, t.at,
				fmt.Sprintf("Brackets, signs, conditions or powers are nested more than %d deep here.", deepestBracket),
				"Split the formula into terms."})
		}
	}
	return faults
}

// guardText refuses a text that is too long or not UTF-8.
func guardText(source string) []Fault {
	if len(source) > longestFormula {
		return []Fault{{CodeFormulaLong, Span{0, 1},
			fmt.Sprintf("The formula has %d bytes, %d at most are read.", len(source), longestFormula),
			"Split it into terms or put its figures in a table."}}
	}
	if !utf8.ValidString(source) {
		return []Fault{{CodeFormulaSyntax, Span{0, 1}, "The formula is not UTF-8 text.", "Save the file as UTF-8."}}
	}
	return nil
}

// guardNumber refuses numbers that are not plain decimal ones of a sensible length.
func guardNumber(text string, at Span) []Fault {
	found, advice := "", ""
	lower := strings.ToLower(text)
	switch _, exponent, _ := strings.Cut(lower, "e"); {
	case len(lower) > 1 && lower[0] == '0' && strings.IndexByte("xob", lower[1]) >= 0:
		found, advice = quoteCode(text)+" is not a decimal number.", "Write it with the digits 0 to 9."
	case len(text) > longestNumber:
		found, advice = fmt.Sprintf("This number has %d characters.", len(text)), fmt.Sprintf("Write it with at most %d.", longestNumber)
	case exponent != "":
		if power, err := strconv.Atoi(strings.ReplaceAll(exponent, "_", "")); err != nil || power < -largestExponent || power > largestExponent {
			found, advice = fmt.Sprintf("The exponent of %s is out of reach.", quoteCode(text)),
				fmt.Sprintf("Exponents go from -%d to %d.", largestExponent, largestExponent)
		}
	}
	if found == "" {
		return nil
	}
	return []Fault{{CodeFormulaDigits, at, found, advice}}
}
