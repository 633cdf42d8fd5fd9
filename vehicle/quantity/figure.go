package quantity

// Figure is a figure as somebody wrote it down: a reading with its unit and, where it has
// one, its tolerance. Figures are compared with == as pieces of writing; to compare what
// they say, compare their Ranges.
type Figure struct {
	Range      Range   // SI, own tolerance included
	Reading    float64 // SI, as read: the middle of "a to b", the limit itself of "> a"
	Unit       Unit    // as written, no unit for a plain number; the last one of "5 ft 2 in", in for a gauge
	Decimals   int     // digits after the point in Unit that the author meant, those of the tolerance included
	Toleranced bool    // has a tolerance of its own, or two ends
	OneSided   bool    // > >= < <=: the range has no bound on one side
	text       string  // in the one form that is printed; "" for a figure made by hand
}

// WithTolerance adds the tolerance of an instrument, half the width of the range on either
// side, to a figure without one. Half is a plain figure of the same dimension, not
// negative; for a temperature it is a difference. The answer is false, and the figure
// unchanged, when f has a tolerance of its own or only one side, or half is not such a
// figure.
func (f Figure) WithTolerance(half Figure) (Figure, bool) {
	plain := !f.Toleranced && !f.OneSided && !half.Toleranced && !half.OneSided
	if !plain || !f.Unit.sameKind(half.Unit) {
		return f, false
	}
	text := []rune(f.String() + " ± " + half.String())
	reader := figureReader{text: text, to: len(text)}
	together, fault := reader.figure()
	if fault != nil {
		return f, false
	}
	return together, true
}

// String writes the figure as its author would: in the author's unit, with the digits that
// were written, in one spelling for each form: "45 mm", ".095 in", "1 3/4 in",
// "45 ± 0.1 mm", "45 +0.1/-0.2 mm", "44.9 to 45.1 mm", "> 44 mm", "13 bwg". ParseFigure
// reads the text back as the same figure.
func (f Figure) String() string {
	if f.text != "" {
		return f.text
	}
	return f.Range.In(f.Unit, f.Decimals)
}
