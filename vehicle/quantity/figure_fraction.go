package quantity

import (
	"math/big"
	"strings"
)

// fraction reads the rest of 3/4, 1 3/4, 1-3/4 or 1¾ after the whole digits. The answer is
// false when there is no fraction here.
func (r *figureReader) fraction(from int, digits string) (writtenNumber, bool, *Fault) {
	start, whole, top, bottom := r.at, digits, "", ""
	if isDigit(r.after(r.at)) || r.here() == '-' && isDigit(r.ahead(1)) {
		if r.here() == '-' {
			r.at++
		} else {
			r.at = r.blanks(r.at)
		}
		top = r.digits()
	} else if vulgar := vulgarFraction(r.after(r.at)); vulgar != "" {
		r.at = r.blanks(r.at) + 1
		top, bottom, _ = strings.Cut(vulgar, "/")
	} else {
		whole, top = "", digits
	}
	if bottom == "" && r.here() == '/' && isDigit(r.ahead(1)) {
		r.at++
		bottom = r.digits()
	}
	if bottom == "" || len(top) > mostDigits || len(bottom) > mostDigits {
		r.at = start
		return writtenNumber{}, false, nil
	}
	text := top + "/" + bottom
	if strings.Trim(bottom, "0") == "" {
		return writtenNumber{}, true, &Fault{FaultFraction, from, r.at, "The fraction " + text + " divides by zero.", "Write the figure as a decimal number."}
	}
	value := new(big.Rat).SetFrac(wholeNumber(top), wholeNumber(bottom))
	if whole != "" {
		if value.Cmp(big.NewRat(1, 1)) >= 0 {
			return writtenNumber{}, true, &Fault{FaultFraction, from, r.at, "The fraction " + text + " behind a whole number is not less than one.", "Write the figure as a decimal number."}
		}
		value.Add(value, new(big.Rat).SetInt(wholeNumber(whole)))
		text = whole + " " + text
	}
	return writtenNumber{value: value, decimals: decimalsOfFraction(value), text: text}, true, nil
}

// wholeNumber reads plain digits. A leading zero means nothing, as it does to a fabricator;
// big.Rat would take a fraction behind one for octal.
func wholeNumber(digits string) *big.Int {
	number, ok := new(big.Int).SetString(digits, 10)
	if !ok {
		return new(big.Int)
	}
	return number
}

// vulgarFraction returns "1/2" for ½, and "" for a rune that is no such sign.
func vulgarFraction(c rune) string {
	const signs = "½¼¾⅛⅜⅝⅞⅓⅔"
	for i, sign := range []rune(signs) {
		if c == sign {
			return [...]string{"1/2", "1/4", "3/4", "1/8", "3/8", "5/8", "7/8", "1/3", "2/3"}[i]
		}
	}
	return ""
}

// decimalsOfFraction counts the digits after the point that a fraction takes, four when
// it never ends.
func decimalsOfFraction(value *big.Rat) int {
	scaled := new(big.Rat).Set(value)
	for decimals := range mostDecimals + 1 {
		if scaled.IsInt() {
			return decimals
		}
		scaled.Mul(scaled, big.NewRat(10, 1))
	}
	return 4
}
