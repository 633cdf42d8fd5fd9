package vehicle

import (
	"fmt"
	"math"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// example is how a value of the particular could be written.
func (n *entry) example() string {
	x := n.particular
	switch x.Kind {
	case KindNumber:
		if x.Unit == (quantity.Unit{}) {
			return "0.5"
		}
		return fmt.Sprintf("\"12 %s\"", x.Unit.Name())
	case KindSize:
		return `"45 x 2.5 mm"`
	case KindCount:
		return "2"
	case KindDate:
		return `"2027-03-14"`
	case KindChoice:
		return Quote(x.Choices.Choices[0].Value)
	case KindTruth:
		return "true"
	case KindPartName:
		return x.Names.exampleLabel()
	case KindPartNames:
		return `["A", "B"]`
	case KindPoint:
		return examplePoint
	}
	return `"…"`
}

// count reads a whole number of things.
func (n *entry) count(e hclsyntax.Expression) {
	x := n.particular
	text, ok := n.source.Number(e)
	if !ok {
		n.wrongKind(e, "Write a whole number without quotes, as in "+n.countMeant(e)+".")
		return
	}
	figure, fault := quantity.ParseFigure(text)
	switch {
	case fault != nil || figure.Reading != math.Trunc(figure.Reading) || figure.Reading < 0:
		n.wrong("count-wanted", e.Range(), "Not a count", text, "Write a whole number, 0 or more.")
	case !x.Plausible.Contains(figure.Reading):
		n.wrong("not-plausible", e.Range(), "A count out of all proportion", text,
			fmt.Sprintf("Plausible is %s. Look at the number.", x.Plausible.In(x.Unit, 0)))
	default:
		n.set(x, Value{Readings: []Reading{{Figure: figure, Range: e.Range()}}})
	}
}

// countMeant is the count that a text such as "6" holds, else one that the particular could
// have.
func (n *entry) countMeant(e hclsyntax.Expression) string {
	if isText(e) {
		text, _, fault := n.source.Text(e)
		figure, wrong := quantity.ParseFigure(text)
		if fault == nil && wrong == nil && figure.Unit == (quantity.Unit{}) && figure.Range.IsExact() &&
			figure.Reading == math.Trunc(figure.Reading) && n.particular.Plausible.Contains(figure.Reading) {
			return quantity.FormatNumber(figure.Reading, quantity.Unit{}, 0)
		}
	}
	return n.example()
}

// words reads a text of one line. advice says what to write where something else stands.
func (n *entry) words(e hclsyntax.Expression, advice string) (told, bool) {
	if isText(e) {
		return n.one(n.particular.Name, e)
	}
	if number, ok := n.source.Number(e); ok {
		advice = fmt.Sprintf("Put it in double quotes: \"%s\".", number)
	}
	if word, ok := e.(*hclsyntax.ScopeTraversalExpr); ok && len(word.Traversal) == 1 {
		advice = fmt.Sprintf("Put it in double quotes: %s.", Quote(word.Traversal.RootName()))
	}
	n.wrongKind(e, advice)
	return told{}, false
}

// plainText reads a free text.
func (n *entry) plainText(e hclsyntax.Expression) {
	if t, ok := n.words(e, "Write a text in double quotes."); ok {
		n.set(n.particular, Value{Text: t.text})
	}
}

// choice reads one of the choices, by its value or a synonym.
func (n *entry) choice(e hclsyntax.Expression) {
	x := n.particular
	t, ok := n.words(e, "Write one of "+quotedList(x.Choices.Values(), "or")+".")
	if !ok {
		return
	}
	choice := x.Choices.Find(t.text)
	if choice < 0 && n.classGiven && x.Name == "class" && x.Part.Name == "car" {
		return
	}
	if choice < 0 {
		n.wrong("unknown-choice", t.all, "Unknown choice", Quote(t.text), x.Choices.Advice(t.text))
		return
	}
	n.set(x, Value{Choice: choice, Text: t.text})
}

// truth reads true or false.
func (n *entry) truth(e hclsyntax.Expression) {
	truth, ok := truthOf(e)
	if !ok {
		n.wrong("truth-wanted", e.Range(), "Neither true nor false", n.source.Describe(e), "Write true or false, without quotes.")
		return
	}
	n.set(n.particular, Value{Truth: truth})
}

// partName reads the label of a part of another type, which is looked up once all parts
// are known.
func (n *entry) partName(e hclsyntax.Expression) {
	x := n.particular
	t, ok := n.words(e, fmt.Sprintf("Write the label of a %s in double quotes.", x.Names.Name))
	if !ok {
		return
	}
	n.set(x, Value{Text: t.text})
	n.links = append(n.links, link{value: &n.part.Values[x.Index], part: n.part, particular: x, what: n.what, name: t})
}
