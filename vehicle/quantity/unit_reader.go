package quantity

import (
	"strings"
)

// productReader reads a product or quotient of units from left to right.
type productReader struct {
	text     []rune // signs that mean alike written as one
	at, to   int
	brackets int
}

// The most that a written unit may hold.
const (
	mostFactors  = 8
	mostExponent = 9
	mostPower    = 30 // of a base dimension
)

// findProduct reads text[from:to] as a product or quotient of known units.
func findProduct(text []rune, from, to int) (Unit, *Fault) {
	r := &productReader{text: text, at: from, to: to}
	product, fault := r.product()
	if fault != nil {
		return Unit{}, fault
	}
	if r.at < r.to {
		return Unit{}, r.fault(r.at, r.to, "The unit ends before "+quoted(string(text[r.at:to]))+".", "Write powers as mm2, products as N.m, quotients as kg/m.")
	}
	if fault := poundWithoutForce(product, from, to); fault != nil {
		return Unit{}, fault
	}
	var dimension Dimension
	for _, f := range product {
		dimension = dimension.Times(f.unit.dimension.Power(f.exponent))
		for _, exponent := range dimension.exponents() {
			if exponent > mostPower || exponent < -mostPower {
				return Unit{}, r.fault(from, to, "The powers in this unit are beyond ±30.", "Write the unit in lower powers.")
			}
		}
	}
	var above, below []factorOfUnit
	for _, f := range product {
		if f.exponent > 0 {
			above = append(above, f)
		} else {
			below = append(below, factorOfUnit{f.unit, -f.exponent})
		}
	}
	return unitOfProduct(above, below), nil
}

// product reads factors joined by a dot, a hyphen, a blank, a slash or the word per, up to
// the end or a closing bracket. After a slash one factor stands below it; a second one
// would leave open where it belongs.
func (r *productReader) product() ([]factorOfUnit, *Fault) {
	var product []factorOfUnit
	sign := 1
	if r.leadingOne() {
		sign = -1
	}
	for {
		start := r.at
		factors, fault := r.factor()
		if fault != nil {
			return nil, fault
		}
		for _, f := range factors {
			product = append(product, factorOfUnit{f.unit, f.exponent * sign})
		}
		if len(product) > mostFactors {
			return nil, r.fault(start, r.to, "This unit has more than eight factors.", "Write a simpler unit.")
		}
		below := sign < 0
		more, slash := r.joint()
		if !more {
			return product, nil
		}
		sign = 1
		if slash {
			sign = -1
		} else if below {
			return nil, r.fault(start, r.to, "After the slash it is not clear which units stand below it.", "Write brackets, as in kg/(m.s2).")
		}
	}
}

// leadingOne skips "1/", "/" or "per" at the start of a unit such as 1/s.
func (r *productReader) leadingOne() bool {
	if strings.HasPrefix(string(r.text[r.at:r.to]), "per ") {
		r.at = r.blanks(r.at + len("per "))
		return true
	}
	at := r.at
	if at < r.to && r.text[at] == '1' {
		at = r.blanks(at + 1)
	}
	if at < r.to && r.text[at] == '/' {
		r.at = r.blanks(at + 1)
		return true
	}
	return false
}

// blanks returns the first place from at on that is no blank.
func (r *productReader) blanks(at int) int {
	for at < r.to && r.text[at] == ' ' {
		at++
	}
	return at
}

// joint skips what joins two factors. More is false at the end of the product.
func (r *productReader) joint() (more, slash bool) {
	at := r.blanks(r.at)
	if at >= r.to {
		r.at = at
		return false, false
	}
	switch c := r.text[at]; {
	case c == '/':
		slash = true
		at++
	case c == '.', c == '-':
		at++
	case at > r.at && strings.HasPrefix(string(r.text[at:r.to]), "per "):
		slash = true
		at += len("per ")
	case at > r.at && (isLetter(c) || c == '('), c == '(':
	default:
		return false, false
	}
	r.at = r.blanks(at)
	return true, slash
}

// fault makes a fault of form.
func (r *productReader) fault(from, to int, found, advice string) *Fault {
	return &Fault{FaultUnitForm, from, to, found, advice}
}
