package vehicle

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// sizes reads a tube size, or several readings of one, and fills the two figures that it
// is made of.
func (n *entry) sizes(readings []hclsyntax.Expression) {
	var outside, wall Value
	var texts []string
	first := n.part.Type.Particular(n.particular.Fills[0])
	second := n.part.Type.Particular(n.particular.Fills[1])
	for _, e := range readings {
		if !isText(e) {
			n.wrongKind(e, "Write outside and wall with their unit in double quotes, as in "+n.example()+".")
			continue
		}
		text, at, fault := n.source.Text(e)
		if fault != nil {
			n.faults = append(n.faults, fault)
			continue
		}
		texts = append(texts, strings.TrimSpace(text))
		o, w, wrong := quantity.ParseSize(text)
		if wrong != nil {
			n.faults = append(n.faults, FigureFault(wrong, at.Range))
			continue
		}
		left, right := halves(text, at)
		n.addReading(&outside, first, o, left)
		n.addReading(&wall, second, w, right)
	}
	if len(outside.Readings) == len(readings) && len(wall.Readings) == len(readings) {
		n.set(first, outside)
		n.set(second, wall)
		n.set(n.particular, Value{Text: strings.Join(texts, ", ")})
	}
}

// halves are the places of the two figures of a size.
func halves(text string, at *PositionMap) (left, right hcl.Range) {
	runes := []rune(text)
	sign := 0
	for i, c := range runes {
		after := strings.TrimLeftFunc(string(runes[i+1:]), unicode.IsSpace)
		if strings.ContainsRune("xX×", c) && after != "" && strings.ContainsRune("0123456789.", rune(after[0])) {
			sign = i
		}
	}
	from := utf8.RuneCountInString(text) - utf8.RuneCountInString(strings.TrimLeftFunc(text, unicode.IsSpace))
	to := utf8.RuneCountInString(strings.TrimRightFunc(text, unicode.IsSpace))
	middle := utf8.RuneCountInString(strings.TrimRightFunc(string(runes[:sign]), unicode.IsSpace))
	next := len(runes) - utf8.RuneCountInString(strings.TrimLeftFunc(string(runes[sign+1:]), unicode.IsSpace))
	return at.Range(from, middle), at.Range(next, to)
}
