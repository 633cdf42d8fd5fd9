package vehicle

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// entry is what a sheet says of one particular of one part, while it is being read.
type entry struct {
	*sheetReader
	*opened
	particular *Particular
	all        hcl.Range // of the whole value
	instrument *Instrument
	note       string
}

// read reads the value: a literal, or a group { reading = …, measured_with = …, note = … }.
func (n *entry) read(e hclsyntax.Expression) {
	readings := []hclsyntax.Expression{e}
	if group, ok := e.(*hclsyntax.ObjectConsExpr); ok {
		if readings = n.group(group); len(readings) == 0 {
			return
		}
	}
	x := n.particular
	switch {
	case len(readings) > 1 && !x.isMeasurable():
		n.wrong("one-value-wanted", n.all, "Several readings where one value is wanted", "readings",
			"Only figures have several readings: write reading = and one value.")
	case len(readings) == 1 && n.saysNone(readings[0]):
		return
	default:
		n.values(readings)
	}
}

// values reads the readings by the kind of the particular.
func (n *entry) values(readings []hclsyntax.Expression) {
	e := readings[0]
	switch n.particular.Kind {
	case KindNumber:
		n.figures(readings)
	case KindSize:
		n.sizes(readings)
	case KindCount:
		n.count(e)
	case KindDate:
		n.date(e)
	case KindText:
		n.plainText(e)
	case KindChoice:
		n.choice(e)
	case KindTruth:
		n.truth(e)
	case KindPartName:
		n.partName(e)
	case KindPartNames:
		n.partNames(e)
	case KindPoint:
		n.points(readings)
	default:
		panic("vehicle: a particular of no known kind: " + n.particular.Name)
	}
}

// isMeasurable reports whether a particular is read with an instrument, perhaps several times.
func (x *Particular) isMeasurable() bool {
	return x.Kind == KindNumber || x.Kind == KindSize || x.Kind == KindPoint
}

// set keeps the value of a particular of the part. One that stands there already is a fault.
func (n *entry) set(x *Particular, v Value) {
	v.State, v.Note, v.Range = Stated, n.note, n.all
	n.keep(x, v)
}

// keep keeps a value as it is.
func (n *entry) keep(x *Particular, v Value) {
	old := &n.part.Values[x.Index]
	if old.State != Nothing {
		n.faults = append(n.faults, SaidTwice(n.all, x.Name+" of the "+n.what, old.Range))
		return
	}
	*old = v
}

// saysNone reads "none", by which a sheet says that there is no such thing.
func (n *entry) saysNone(e hclsyntax.Expression) bool {
	if !isText(e) || n.particular.Kind == KindTruth && !n.particular.MayBeAbsent {
		return false
	}
	text, _, fault := n.source.Text(e)
	if fault != nil || FoldText(text) != "none" {
		return false
	}
	if n.particular.MayBeAbsent {
		n.keep(n.particular, Value{State: None, Note: n.note, Range: n.all})
		return true
	}
	advice := "There always is one. Write what it is, or leave the line out as long as it is not recorded."
	if n.particular.Kind == KindCount {
		advice = "Write 0 where there is none, or leave the line out as long as it is not recorded."
	}
	n.wrong("none-impossible", e.Range(), "None of what cannot be absent", `"none"`, advice)
	return true
}

// wrong reports a fault in the value: Found … as wall of the tube "12".
func (n *entry) wrong(code Code, at hcl.Range, summary, found, advice string) {
	n.fault(code, at, summary, fmt.Sprintf("Found %s as %s of the %s. %s", found, n.particular.Name, n.what, advice))
}

// wrongKind reports a value of another sort than the particular's kind wants. advice says
// what to write for this particular.
func (n *entry) wrongKind(e hclsyntax.Expression, advice string) {
	code, summary := Code("wrong-kind"), "A value of another kind"
	if !n.source.isLiteral(e) {
		code, summary = "not-literal", "Not a literal value"
		advice = "Values are literals: nothing is worked out. " + advice
	}
	if literal, ok := e.(*hclsyntax.LiteralValueExpr); ok && literal.Val.IsNull() {
		advice = "Leave the line out as long as it is not recorded. " + advice
	}
	n.wrong(code, e.Range(), summary, n.source.Describe(e), advice)
}

// groupKeys are the names in a group.
var groupKeys = []string{"reading", "readings", "measured_with", "note"}

// group reads a value written as a group and returns its readings, none when it has a fault.
func (n *entry) group(group *hclsyntax.ObjectConsExpr) []hclsyntax.Expression {
	given := map[string]hclsyntax.Expression{}
	places := map[string]hcl.Range{}
	sound := true
	for _, item := range group.Items {
		key, at := n.source.keyOf(item)
		first, twice := places[key]
		switch {
		case !slices.Contains(groupKeys, key):
			advice := "There can be " + plainList(groupKeys, "and") + "."
			if near := Nearest(key, groupKeys); near != "" {
				advice = fmt.Sprintf("Did you mean %s? %s", near, advice)
			}
			n.fault("unknown-key", at, "Unknown name",
				fmt.Sprintf("Found %s in the %s of the %s. %s", Quote(key), n.particular.Name, n.what, advice))
			sound = false
		case twice:
			n.faults = append(n.faults, SaidTwice(at, key, first))
			sound = false
		default:
			given[key], places[key] = item.ValueExpr, at
		}
	}
	if note := given["note"]; note != nil {
		n.note = n.prose("note", note)
	}
	if with := given["measured_with"]; with != nil {
		sound = n.measuredWith(with) && sound
	}
	if !sound {
		return nil
	}
	return n.readingsOf(group, given["reading"], given["readings"])
}

// readingsOf picks the readings out of a group.
func (n *entry) readingsOf(group *hclsyntax.ObjectConsExpr, one, several hclsyntax.Expression) []hclsyntax.Expression {
	example := n.example()
	switch {
	case one != nil && several != nil:
		n.wrong("said-twice", several.Range(), "Reading and readings at once", "both reading and readings", "Put all of them into readings.")
	case one != nil:
		return []hclsyntax.Expression{one}
	case several == nil:
		n.wrong("key-missing", group.OpenRange, "Something is missing", "a group without a reading", fmt.Sprintf("Write { reading = %s }.", example))
	default:
		list, ok := several.(*hclsyntax.TupleConsExpr)
		if ok && len(list.Exprs) > 0 {
			return list.Exprs
		}
		n.wrong("list-wanted", several.Range(), "Not a list", n.source.Describe(several)+" in readings", fmt.Sprintf("Write a list: readings = [%s, %s].", example, example))
	}
	return nil
}

// measuredWith reads the name of the instrument. It reports whether it is usable.
func (n *entry) measuredWith(e hclsyntax.Expression) bool {
	t, ok := n.one("measured_with", e)
	if !ok {
		return false
	}
	if !n.particular.isMeasurable() {
		n.wrong("key-unfit", t.all, "An instrument where nothing is measured", "measured_with", "Only figures are measured: take it out.")
		return false
	}
	if n.instrument = n.instruments[FoldText(t.text)]; n.instrument != nil || !n.whole {
		return true
	}
	var labels []string
	for _, i := range n.sheet.Instruments[:min(len(n.sheet.Instruments), mostLabels)] {
		labels = append(labels, i.Label)
	}
	advice := "Describe it"
	if near := Nearest(t.text, labels); near != "" {
		advice = fmt.Sprintf("Did you mean %s? If not, describe it", Quote(near))
	}
	advice += fmt.Sprintf(" at the top level: instrument %s { tolerance = \"0.05 mm\" }.", Quote(t.text))
	n.wrong("unknown-instrument", t.all, "Unknown instrument", "measured_with = "+Quote(t.text), advice)
	return false
}
