package quantity

import (
	"unicode"
	"unicode/utf8"
)

// mostFigure is how many runes a written figure or size may have.
const mostFigure = 120

// What to write where nothing can be read.
const (
	adviceFigure = "Write a number in digits and its unit, as in 45 mm."
	adviceSize   = "Write the outside diameter and the wall, as in 45 x 2.5 mm."
	adviceDate   = "Write a date as 2027-03-14, or 2027-03 or 2027 where no more is known."
)

// ParseFigure reads a written figure in any of these forms, in any unit that FindUnit
// knows, or without a unit as a plain number:
//
//	45 mm   .095 in   1 3/4 in   1-3/4 in   5 ft 2 1/2 in   13 bwg   1.5e3 N
//	45 mm ± 0.1 mm   45 +/- 0.1 mm   45 mm +0.1/-0.2 mm
//	44.9 to 45.1 mm
//	> 44 mm   >= 44 mm   < 50 mm   <= 50 mm   at least 44 mm   at most 50 mm
//
// A part without a unit takes that of the other part. The signs − – ± × ≥ ≤ ½ ° ² ³ are
// read as what they look like. The fault says what is wrong and what to write instead.
func ParseFigure(text string) (Figure, *Fault) {
	runes, fault := readable(text, adviceFigure)
	if fault != nil {
		return Figure{}, fault
	}
	from, to := trimmed(runes)
	if from == to {
		return Figure{}, &Fault{FaultEmpty, 0, len(runes), "There is no figure here.", adviceFigure}
	}
	reader := figureReader{text: runes, at: from, to: to}
	return reader.figure()
}

// readable turns text into runes in which signs that mean alike are one, rune for rune,
// or says why nothing can be read from it. Advice is what to write instead.
func readable(text, advice string) ([]rune, *Fault) {
	count := utf8.RuneCountInString(text)
	switch {
	case !utf8.ValidString(text):
		return nil, &Fault{FaultText, 0, count, "This is not readable text (not UTF-8).", advice}
	case count > mostFigure:
		return nil, &Fault{FaultText, 0, count, "This is far too long: " + quoted(text) + ".", advice}
	}
	runes := []rune(text)
	for i, c := range runes {
		switch {
		case unicode.IsSpace(c):
			runes[i] = ' '
		case !unicode.IsPrint(c):
			return nil, &Fault{FaultText, i, i + 1, "There is a character here that cannot be seen: " + quoted(string(c)) + ".", advice}
		case c == '−' || c == '‐' || c == '‑':
			runes[i] = '-'
		case c == '⁄': // fraction slash
			runes[i] = '/'
		}
	}
	return runes, nil
}
