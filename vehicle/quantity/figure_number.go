package quantity

import (
	"math/big"
	"strconv"
	"strings"
)

// The most that a written number may hold.
const (
	mostDigits        = 30
	mostExponentOfTen = 30
	mostDecimals      = 10 // that a fraction is printed with: 1/1024 has ten
)

// writtenNumber is a number as written.
type writtenNumber struct {
	value    *big.Rat
	decimals int    // digits after the point that it takes to write it
	text     string // in plain signs: "1 3/4", "-.095", "1.5e-3"
	from, to int
}

// number reads a decimal number or a fraction: 45, .095, 1.5e3, 3/4, 1 3/4, 1-3/4, 1¾.
func (r *figureReader) number() (writtenNumber, *Fault) {
	from, sign := r.at, ""
	if r.here() == '-' || r.here() == '+' {
		sign = strings.TrimPrefix(string(r.here()), "+")
		r.at++
	}
	digits := r.digits()
	if digits == "" && r.here() != '.' && vulgarFraction(r.here()) == "" {
		return writtenNumber{}, r.noNumber(from)
	}
	whole := r.at
	decimal, fault := r.decimal(from, digits)
	if fault != nil {
		return writtenNumber{}, fault
	}
	if r.at == whole && len(digits) <= mostDigits {
		if fraction, ok, fault := r.fraction(from, digits); ok || fault != nil {
			return r.signed(fraction, sign, from), fault
		}
	}
	if fault := r.checkDecimal(from, decimal); fault != nil {
		return writtenNumber{}, fault
	}
	value, ok := new(big.Rat).SetString(decimal)
	if !ok {
		return writtenNumber{}, r.noNumber(from)
	}
	return r.signed(writtenNumber{value: value, decimals: decimalsOf(decimal), text: decimal}, sign, from), nil
}

// signed puts sign and place on a number without them.
func (r *figureReader) signed(n writtenNumber, sign string, from int) writtenNumber {
	if sign == "-" && n.value != nil {
		n.value.Neg(n.value)
	}
	n.text, n.from, n.to = sign+n.text, from, r.at
	return n
}

// digits reads a run of plain digits, possibly none.
func (r *figureReader) digits() string {
	from := r.at
	for isDigit(r.here()) {
		r.at++
	}
	return string(r.text[from:r.at])
}

// decimal reads what may follow the whole digits of a decimal number and returns the
// number in plain signs. A comma is refused with what to write instead.
func (r *figureReader) decimal(from int, digits string) (string, *Fault) {
	text := digits
	if r.here() == '.' && r.ahead(1) != '.' {
		r.at++
		after := r.digits()
		if after == "" {
			return "", &Fault{FaultNumber, from, r.at, quoted(r.between(from, r.at)) + " has no digit after the point.", "Write the digit, or leave out the point."}
		}
		text += "." + after
	}
	if r.here() == ',' && isDigit(r.ahead(1)) {
		return "", r.comma(from)
	}
	if r.here() == '.' && isDigit(r.ahead(1)) {
		return "", &Fault{FaultNumber, from, r.at + 1, "There are two decimal points in one number.", "Write one point, and large numbers without marks between the digits, as in 1085."}
	}
	if c := r.here(); c == 'e' || c == 'E' {
		signs := 0
		if next := r.ahead(1); next == '-' || next == '+' {
			signs = 1
		}
		if isDigit(r.ahead(1 + signs)) {
			sign := strings.TrimPrefix(string(r.text[r.at+1:r.at+1+signs]), "+")
			r.at += 1 + signs
			text += "e" + sign + r.digits()
		}
	}
	return text, nil
}

// checkDecimal refuses a decimal number beyond the reach of any figure.
func (r *figureReader) checkDecimal(from int, decimal string) *Fault {
	mantissa, exponent, _ := strings.Cut(decimal, "e")
	digits := len(strings.ReplaceAll(mantissa, ".", ""))
	tens, err := strconv.Atoi("0" + strings.TrimLeft(exponent, "-0"))
	if digits <= mostDigits && err == nil && tens <= mostExponentOfTen {
		return nil
	}
	return &Fault{FaultTooLarge, from, r.at, "No figure on a car has more than 30 digits or a power of ten beyond 30.", "Write the figure in a unit that suits it."}
}

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

// comma makes the fault for a number with a comma in it.
func (r *figureReader) comma(from int) *Fault {
	end := r.at
	for end < r.to && (isDigit(r.text[end]) || strings.ContainsRune(".,", r.text[end])) {
		end++
	}
	number := strings.TrimRight(r.between(from, end), ".,")
	end = from + len([]rune(number))
	head, tail, _ := strings.Cut(number, ",")
	advice := "Write a decimal point: " + head + "." + tail + "."
	switch {
	case strings.ContainsAny(tail, ".,") || strings.Contains(head, "."):
		advice = "Write a decimal point, and no mark between thousands, as in 1085.5."
	case len(tail) == 3:
		advice = "Write " + head + tail + " if thousands are meant, or " + head + "." + tail + " with a decimal point."
	}
	return &Fault{FaultComma, from, end, quoted(number) + " has a comma in it.", advice}
}

// noNumber makes the fault for a place where a number must stand and none does.
func (r *figureReader) noNumber(from int) *Fault {
	rest := strings.TrimSpace(r.between(from, r.to))
	if rest == "" {
		return &Fault{FaultNumber, from, r.to, "A number is missing at the end.", adviceFigure}
	}
	return &Fault{FaultNumber, from, r.to, "There is no number at " + quoted(rest) + ".", adviceFigure}
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

// decimalsOf counts the digits after the point that a decimal number takes without its
// power of ten.
func decimalsOf(decimal string) int {
	mantissa, exponent, _ := strings.Cut(decimal, "e")
	_, after, _ := strings.Cut(mantissa, ".")
	tens, _ := strconv.Atoi(exponent)
	return max(0, len(after)-tens)
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

// isDigit reports whether a rune is one of 0 to 9.
func isDigit(c rune) bool { return c >= '0' && c <= '9' }
