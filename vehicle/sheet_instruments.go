package vehicle

import (
	"fmt"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// instrument reads an instrument block of the top level.
func (r *sheetReader) instrument(source *Source, block *hclsyntax.Block) {
	k := &keys{source: source, block: block, what: "instrument"}
	defer func() { r.faults = append(r.faults, k.faults...) }()
	label, ok := k.label(`"caliper"`)
	if ok {
		k.what += " " + Quote(label.text)
	}
	tolerance, usable := k.tolerance()
	note := k.value("note")
	k.done([]string{"tolerance", "note"}, "an instrument")
	if !ok {
		return
	}
	made := &Instrument{Label: label.text, Range: HeaderOf(block)}
	if first := r.instruments[FoldText(label.text)]; first != nil {
		k.faults = append(k.faults, SaidTwice(made.Range, k.what, first.Range))
		return
	}
	if usable {
		made.Tolerance = tolerance
	}
	if note != nil {
		made.Note = k.prose("note", note)
	}
	r.sheet.Instruments = append(r.sheet.Instruments, made)
	r.instruments[FoldText(label.text)] = made
}

// tolerance reads the tolerance of an instrument, written with or without its sign.
func (k *keys) tolerance() (quantity.Figure, bool) {
	if t := k.wanted("tolerance", "0.05 mm", ""); t.text == "" {
		return quantity.Figure{}, false
	}
	return k.halfWidth(k.value("tolerance"), "instrument-tolerance", "0.05 mm")
}

// halfWidth reads a text as a tolerance, half the width on either side of a reading, with or
// without its sign; example is how it could be written.
func (k *keys) halfWidth(e hclsyntax.Expression, code Code, example string) (quantity.Figure, bool) {
	text, at, _ := k.source.Text(e)
	bare := strings.TrimLeft(text, " \t±")
	bare = strings.TrimPrefix(strings.TrimPrefix(bare, "+/-"), "+-")
	before := utf8.RuneCountInString(text) - utf8.RuneCountInString(bare)
	figure, fault := quantity.ParseFigure(bare)
	switch {
	case fault != nil:
		k.faults = append(k.faults, FigureFault(fault, func(from, to int) hcl.Range { return at.Range(before+from, before+to) }))
		return figure, false
	case figure.Toleranced || figure.OneSided || !(figure.Unit.FromSI(figure.Reading) > 0):
		k.fault(code, at.Range(0, utf8.RuneCountInString(text)), "Not a tolerance",
			fmt.Sprintf("Found %s as tolerance of the %s. Write one figure above zero, half the width on either side of a reading, as in %q.", Quote(text), k.what, example))
		return figure, false
	}
	return figure, true
}
