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

// decimalsOf counts the digits after the point that a decimal number takes without its
// power of ten.
func decimalsOf(decimal string) int {
	mantissa, exponent, _ := strings.Cut(decimal, "e")
	_, after, _ := strings.Cut(mantissa, ".")
	tens, _ := strconv.Atoi(exponent)
	return max(0, len(after)-tens)
}

// isDigit reports whether a rune is one of 0 to 9.
func isDigit(c rune) bool { return c >= '0' && c <= '9' }
