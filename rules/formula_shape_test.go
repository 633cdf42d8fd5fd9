package rules

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// shape writes a tree on one line, so that tables of formulas can say what they become.
func shape(n Node) string {
	list := func(name string, of ...Node) string {
		texts := make([]string, len(of))
		for i, n := range of {
			texts[i] = shape(n)
		}
		return name + "(" + strings.Join(texts, ", ") + ")"
	}
	dotted := func(of Node, name string) string {
		if of == nil {
			return name
		}
		return shape(of) + "." + name
	}
	switch n := n.(type) {
	case nil:
		return "nil"
	case *Constant:
		return constantShape(n)
	case *Root:
		return dotted(n.Of, n.IsPart.Name)
	case *Pick:
		return dotted(n.Of, n.IsPart.Name) + "[" + n.Label + "]"
	case *Parts:
		return dotted(n.Of, n.IsPart.Plural)
	case *Read:
		return shape(n.Of) + "." + n.Particular.Name
	case *Cell:
		return shape(n.Of) + "." + n.Of.Type().Table.Columns[n.Column].Name
	case *Rows:
		return "table " + n.Table.Name
	case *InBand:
		return list("in_band "+n.Table.Name, n.Value)
	case *Variable:
		if n.Binding.Name == "" {
			return "#"
		}
		return n.Binding.Name
	case *Given:
		return fmt.Sprintf("given %d", n.Index)
	case *Moment:
		return []string{"on", "inspection day", "first day", "last day"}[n.Day]
	case *Not:
		return list("not", n.Of)
	case *Logic:
		return list(map[bool]string{true: "and", false: "or"}[n.All], n.Of...)
	case *Compare:
		return list([]string{"==", "!=", "<", "<=", ">", ">="}[n.Sense], n.Left, n.Right)
	case *Within:
		return list("in", n.Of, n.List)
	case *CountBetween:
		return list("between", n.Of, n.Low, n.High)
	case *TextTest:
		return list([]string{"contains", "startsWith", "endsWith", "matches"}[n.Test]+" "+n.Text, n.Of)
	case *Arithmetic:
		return list(string(n.Operator), n.Left, n.Right)
	case *Negate:
		return list("-", n.Of)
	case *Power:
		return list(fmt.Sprintf("power %d", n.Exponent), n.Of)
	case *Conditional:
		return list("if", n.If, n.Then, n.Else)
	case *Otherwise:
		return list("??", n.Of, n.Else)
	case *Recorded:
		return list("recorded", n.Of)
	case *Fitted:
		return list("fitted", n.Of)
	case *Call:
		return list(n.Function.Name, n.Of...)
	case *Gather:
		name := []string{"all", "any", "none", "one", "count", "sum", "min", "max", "mean", "median", "first", "last"}[n.Fold]
		if n.Body != nil {
			return list(name, n.List, n.Body)
		}
		return list(name, n.List)
	case *Filter:
		return list("filter", n.List, n.Body)
	case *Map:
		return list("map", n.List, n.Body)
	case *Items:
		return list("list", n.Of...)
	case *Define:
		return list("let "+n.Binding.Name, n.Value, n.Rest)
	case *Mention:
		if n.Given != nil {
			return list("term "+n.Term.Name, n.Given)
		}
		return "term " + n.Term.Name
	}
	panic(fmt.Sprintf("no shape for %T", n))
}

// constantShape writes a constant as it would be printed back.
func constantShape(k *Constant) string {
	switch k.Is.Kind {
	case Truth:
		return fmt.Sprint(k.Truth)
	case Date:
		return k.Days.From.String()
	case Text:
		return "'" + k.Text + "'"
	case Choice:
		return "'" + k.Is.Choices.Choices[k.Choice].Value + "'!"
	}
	text := quantity.FormatNumber(k.Number, k.Unit, k.Decimals)
	if k.Unit.Name() != "" {
		text += " " + k.Unit.Name()
	}
	return text
}

// testScope is a scope over a small vocabulary of its own, one of the builder's words.
func testScope() *Scope {
	v := testVocabulary()
	tube := v.Root.PartNamed("cage").PartNamed("tube")
	like := func(p string) Column {
		of := tube.Particular(p)
		return Column{Name: p, Is: typeOfParticular(of), Like: of}
	}
	mass := v.Root.PartNamed("car").Particular("weighed_mass")
	sizes := &Table{Name: "hoop_sizes", Columns: []Column{like("outside"), like("wall"), like("material")}}
	bands := &Table{Name: "foot_area", Band: &Band{Low: 0, High: 1}, Columns: []Column{
		{Name: "from", Is: typeOfParticular(mass), Like: mass}, {Name: "below", Is: typeOfParticular(mass), Like: mass},
		{Name: "area", Is: Type{Kind: Number, Dimension: quantity.Area}}}}
	return NewScope(v, sizes, bands)
}

// testVocabulary is a vocabulary made by hand, so that the tests of formulas do not change
// with the real one.
func testVocabulary() *vehicle.Vocabulary {
	root := &vehicle.PartType{}
	standards := &vehicle.ChoiceList{Name: "standard", Choices: []vehicle.Choice{
		{Value: "FIA 8853-2016"}, {Value: "FIA 8853/98", Synonyms: []string{"8853-1998", "8853/98"}}, {Value: "SFI 16.1"}}}
	materials := &vehicle.ChoiceList{Name: "material", Choices: []vehicle.Choice{
		{Value: "cold drawn seamless carbon steel", Synonyms: []string{"CDS"}}, {Value: "chromium molybdenum steel", Synonyms: []string{"25CrMo4"}}}}
	crew := &vehicle.ChoiceList{Name: "crew", Choices: []vehicle.Choice{{Value: "driver"}, {Value: "co-driver"}}}
	car := addPart(root, "car", "")
	addFigure(car, "weighed_mass", quantity.Mass, "kg")
	addFigure(car, "length", quantity.Length, "mm")
	addParticular(car, "chassis", vehicle.KindText)
	addParticular(car, "first_registered", vehicle.KindDate)
	addChoice(car, "class", &vehicle.ChoiceList{Choices: []vehicle.Choice{{Value: "open"}, {Value: "classic"}}})
	cage := addPart(root, "cage", "")
	addParticular(cage, "modified", vehicle.KindTruth)
	addFigure(cage, "bend_angle", quantity.Angle, "deg")
	joint := addPlaces(root, cage)
	certificate := addPart(cage, "certificate", "")
	addParticular(certificate, "number", vehicle.KindText)
	addParticular(certificate, "issued", vehicle.KindDate)
	tube := addPart(cage, "tube", "tubes")
	addFigure(tube, "outside", quantity.Length, "mm")
	addFigure(tube, "wall", quantity.Length, "mm")
	addFigure(tube, "yield", quantity.Pressure, "MPa")
	addParticular(tube, "part", vehicle.KindText)
	addParticular(tube, "bends", vehicle.KindCount)
	addParticular(tube, "cut_on", vehicle.KindDate)
	addChoice(tube, "material", materials)
	addParticular(tube, "ordered", vehicle.KindSize).Fills = []string{"outside", "wall"}
	addParticular(tube, "through", vehicle.KindPartNames).Names = joint
	addParticular(addPart(tube, "end", "ends"), "joint", vehicle.KindPartName).Names = joint
	addParticular(addPart(tube, "corner", "corners"), "joint", vehicle.KindPartName).Names = joint
	addParticular(addPart(joint, "meeting", "meetings"), "one", vehicle.KindPartName).Names = tube
	foot := addPart(cage, "foot", "feet")
	addParticular(foot, "joint", vehicle.KindPartName).Names = joint
	addFigure(foot, "area", quantity.Area, "cm2")
	addParticular(foot, "bolts", vehicle.KindCount)
	seat := addPart(root, "seat", "seats")
	addFigure(seat, "cushion", quantity.Length, "mm").MayBeAbsent = true
	addParticular(seat, "made", vehicle.KindDate)
	harness := addPart(root, "harness", "harnesses")
	harness.Labels = crew
	addChoice(harness, "standard", standards)
	addParticular(harness, "made", vehicle.KindDate)
	strap := addPart(harness, "strap", "straps")
	addFigure(strap, "width", quantity.Length, "mm")
	addPoint(strap, "leaves_body", "leaves_body_")
	addPoint(strap, "anchor_at", "anchor_at_")
	addParticular(strap, "not_after", vehicle.KindDate)
	fire := addPart(root, "fire_system", "")
	addParticular(fire, "bottles", vehicle.KindCount)
	addParticular(fire, "serviced", vehicle.KindDate).MayBeAbsent = true
	addFigure(fire, "temperature", quantity.Temperature, "degC")
	return &vehicle.Vocabulary{Root: root}
}

func addPart(of *vehicle.PartType, name, plural string) *vehicle.PartType {
	t := &vehicle.PartType{Name: name, Plural: plural, Within: of, Index: len(of.Parts)}
	of.Parts = append(of.Parts, t)
	return t
}

func addParticular(of *vehicle.PartType, name string, kind vehicle.Kind) *vehicle.Particular {
	p := &vehicle.Particular{Name: name, Part: of, Index: len(of.Particulars), Kind: kind}
	of.Particulars = append(of.Particulars, p)
	return p
}

func addFigure(of *vehicle.PartType, name string, d quantity.Dimension, unit string) *vehicle.Particular {
	p := addParticular(of, name, vehicle.KindNumber)
	u, err := quantity.FindUnit(unit)
	if err != nil {
		panic(err)
	}
	p.Dimension, p.Unit = d, u
	return p
}

// addPlaces adds the joints of a cage, which it returns, and heads.
func addPlaces(root, cage *vehicle.PartType) *vehicle.PartType {
	joint := addPart(cage, "joint", "joints")
	addPoint(joint, "at", "")
	head := addPart(root, "head", "heads")
	head.Labels = &vehicle.ChoiceList{Choices: []vehicle.Choice{{Value: "driver"}, {Value: "co-driver"}}}
	addPoint(head, "top", "top_")
	addFigure(head, "helmet_radius", quantity.Length, "mm")
	return joint
}

// addPoint adds a point and its coordinates.
func addPoint(of *vehicle.PartType, name, prefix string) {
	point := addParticular(of, name, vehicle.KindPoint)
	for _, axis := range []string{"x", "y", "z"} {
		addFigure(of, prefix+axis, quantity.Length, "mm")
		point.Fills = append(point.Fills, prefix+axis)
	}
}

func addChoice(of *vehicle.PartType, name string, list *vehicle.ChoiceList) {
	addParticular(of, name, vehicle.KindChoice).Choices = list
}
