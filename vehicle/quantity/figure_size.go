package quantity

import "strings"

// ParseSize reads the size of a round tube, outside diameter and wall: "45 x 2.5 mm",
// "1.75 x .095 in", "1.75 in x 13 bwg", "45 mm x 2.5 mm". A part without a unit takes that
// of the other part. Either part may have a tolerance. Both must be lengths, and the
// outside more than two walls.
func ParseSize(text string) (outside, wall Figure, fault *Fault) {
	runes, fault := readable(text, adviceSize)
	if fault != nil {
		return Figure{}, Figure{}, fault
	}
	from, to := trimmed(runes)
	between, fault := sizeSign(runes, from, to)
	if fault != nil {
		return Figure{}, Figure{}, fault
	}
	first, second := figureReader{text: runes, at: from, to: between}, figureReader{text: runes, at: between + 1, to: to}
	left, fault := first.written()
	if fault != nil {
		return Figure{}, Figure{}, fault
	}
	right, fault := second.written()
	if fault != nil {
		return Figure{}, Figure{}, fault
	}
	lent, ok := left.lender()
	if !ok {
		lent, ok = right.lender()
	}
	right.lend(right.lender())
	right.lend(lent, ok)
	left.lend(lent, ok)
	if outside, fault = left.length(); fault != nil {
		return Figure{}, Figure{}, fault
	}
	if wall, fault = right.length(); fault != nil {
		return Figure{}, Figure{}, fault
	}
	if !(wall.Reading > 0) || wall.Reading*2 >= outside.Reading {
		return Figure{}, Figure{}, &Fault{FaultOrder, from, to,
			"A tube of " + outside.String() + " outside cannot have a wall of " + wall.String() + ".",
			"Write the outside diameter first and then the wall, as in 45 x 2.5 mm."}
	}
	return outside, wall, nil
}

// sizeSign finds the one x between the two figures of a size.
func sizeSign(text []rune, from, to int) (int, *Fault) {
	r := figureReader{text: text, to: to}
	signs := []int{}
	for i := from; i < to; i++ {
		next := r.blanks(i + 1)
		if strings.ContainsRune("xX×", text[i]) && startsNumber(r.runeAt(next), r.runeAt(next+1)) {
			signs = append(signs, i)
		}
	}
	switch {
	case len(signs) == 1 && signs[0] > from:
		return signs[0], nil
	case len(signs) > 1:
		return 0, &Fault{FaultForm, signs[1], to, "There are more than two figures here.", "Write the outside diameter and the wall alone, as in 45 x 2.5 mm."}
	case from == to:
		return 0, &Fault{FaultEmpty, 0, len(text), "There is no size here.", adviceSize}
	}
	return 0, &Fault{FaultForm, from, to, quoted(string(text[from:to])) + " is not the size of a tube.", "Write the outside diameter and the wall with an x between them, as in 45 x 2.5 mm."}
}

// length is figure for a part of a size: a length, and not one with one side only.
func (f writtenFigure) length() (Figure, *Fault) {
	reading := f.parts[0]
	fault := func(code, found, advice string) (Figure, *Fault) {
		return Figure{}, &Fault{code, reading.from, reading.to, found, advice}
	}
	switch {
	case f.kind == sidedFigure:
		return fault(FaultForm, "A tube's size cannot be one-sided.", "Write the two figures as they are on the certificate, as in 45 x 2.5 mm.")
	case !reading.hasUnit:
		return fault(FaultUnitMissing, quoted(reading.text)+" has no unit.", "Write mm or in behind the size, as in 45 x 2.5 mm.")
	case reading.unit.dimension != Length:
		return fault(FaultUnitMixed, quoted(reading.written())+" is "+withArticle(reading.unit)+", and a tube's size is two lengths.", "Write mm or in behind the size, as in 45 x 2.5 mm.")
	}
	return f.figure()
}
