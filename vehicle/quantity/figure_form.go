package quantity

import (
	"strings"
	"unicode/utf8"
)

// figureKind is the form of a written figure.
type figureKind uint8

const (
	plainFigure  figureKind = iota // 45 mm
	evenFigure                     // 45 ± 0.1 mm
	unevenFigure                   // 45 +0.1/-0.2 mm
	spanFigure                     // 44.9 to 45.1 mm
	sidedFigure                    // > 44 mm
)

// writtenFigure is a figure in its parts, before missing units are lent.
type writtenFigure struct {
	kind  figureKind
	sense string     // of a sidedFigure
	parts []*measure // reading; tolerance; or above and below; or the two ends
}

// figure reads one figure up to the reader's end.
func (r *figureReader) figure() (Figure, *Fault) {
	written, fault := r.written()
	if fault != nil {
		return Figure{}, fault
	}
	written.lend(written.lender())
	return written.figure()
}

// written reads the parts of one figure up to the reader's end.
func (r *figureReader) written() (writtenFigure, *Fault) {
	f := writtenFigure{}
	if f.sense = r.sense(); f.sense != "" {
		f.kind = sidedFigure
	}
	fault := r.part(&f)
	if fault == nil && f.kind == plainFigure {
		r.at = r.blanks(r.at)
		switch {
		case r.skip("±", "+/-", "+-", "+ / -"):
			f.kind = evenFigure
			fault = r.part(&f)
		case r.wordAt(r.at, "to"):
			r.at += len("to")
			f.kind = spanFigure
			fault = r.part(&f)
		case r.here() == '+' || r.here() == '-' && r.text[r.at-1] == ' ' && r.ahead(1) != ' ':
			f.kind = unevenFigure
			fault = r.uneven(&f)
		}
	}
	if r.at = r.blanks(r.at); fault == nil && r.at < r.to {
		fault = r.leftover()
	}
	return f, fault
}

// part reads one more measure of a figure.
func (r *figureReader) part(f *writtenFigure) *Fault {
	r.at = r.blanks(r.at)
	m, fault := r.measure()
	f.parts = append(f.parts, &m)
	return fault
}

// uneven reads +0.1/-0.2 behind a reading, in either order, and puts the upper first.
func (r *figureReader) uneven(f *writtenFigure) *Fault {
	from := r.at
	if fault := r.part(f); fault != nil {
		return fault
	}
	r.at = r.blanks(r.at)
	if r.here() == '/' {
		r.at = r.blanks(r.at + 1)
	}
	first := r.text[from]
	if r.at == r.to {
		return &Fault{FaultTolerance, from, r.to, "The tolerance has one side only.", "Write both sides, as in 45 mm +0.1/-0.2 mm, or ± for the same on both."}
	}
	second := r.here()
	if fault := r.part(f); fault != nil {
		return fault
	}
	zero := f.parts[2].number.Sign() == 0
	if second == first || second != '+' && second != '-' && !zero {
		return &Fault{FaultTolerance, from, r.at, "The tolerance does not have one side with + and one with -.", "Write both sides, as in 45 mm +0.1/-0.2 mm."}
	}
	if first == '-' {
		f.parts[1], f.parts[2] = f.parts[2], f.parts[1]
	}
	below := f.parts[2]
	below.number.Neg(below.number)
	below.text = strings.TrimPrefix(below.text, "-")
	if below.number.Sign() < 0 || f.parts[1].number.Sign() < 0 {
		return &Fault{FaultTolerance, from, r.at, "A side of the tolerance has the wrong sign.", "Write both sides, as in 45 mm +0.1/-0.2 mm."}
	}
	return nil
}

// skip passes over one of several signs, if it stands here.
func (r *figureReader) skip(signs ...string) bool {
	rest := string(r.text[r.at:r.to])
	for _, sign := range signs {
		if strings.HasPrefix(rest, sign) {
			r.at += utf8.RuneCountInString(sign)
			return true
		}
	}
	return false
}

// sense passes over a sign or words of comparison and returns the sign.
func (r *figureReader) sense() string {
	switch {
	case r.skip(">=", "=>", "≥", "at least "):
		return ">="
	case r.skip("<=", "=<", "≤", "at most "):
		return "<="
	case r.skip(">", "more than "):
		return ">"
	case r.skip("<", "less than "):
		return "<"
	}
	return ""
}

// leftover makes the fault for what stands behind a figure and is no part of it.
func (r *figureReader) leftover() *Fault {
	rest := r.between(r.at, r.to)
	fault := &Fault{FaultForm, r.at, r.to, "After the figure there is " + quoted(rest) + ".", "Write one figure with its unit, as in 45 mm or 45 ± 0.1 mm."}
	c := r.here()
	switch {
	case c == ',':
		fault.Code = FaultComma
		fault.Advice = "Write a decimal point where a decimal number is meant, and one figure in each place."
	case strings.ContainsRune("×xX", c):
		fault.Found = "There are two figures with " + quoted(string(c)) + " between them where one is wanted."
		fault.Advice = "Write one figure here; a pair such as 45 x 2.5 mm stands where a tube's size is asked for."
	case strings.ContainsRune("-–—~", c) || strings.HasPrefix(rest, ".."):
		fault.Advice = "Write the word to between the ends of a range, as in 44.9 to 45.1 mm."
	case strings.ContainsRune("±+<>=≤≥", c):
		fault.Code = FaultTolerance
		fault.Advice = "Write one tolerance or one sense of comparison, as in 45 ± 0.1 mm or > 44 mm."
	case startsNumber(c, r.ahead(1)):
		fault.Found = "A second number follows the first at " + quoted(rest) + "."
		fault.Advice = "Write large numbers without blanks, as in 1085 kg, and a unit behind each figure."
	}
	return fault
}
