package rules

import (
	"fmt"
	"strings"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// isValue reports whether a node can be compared or reckoned with by its kind, unlike a
// place, and unlike the names of several parts. Both are only ever read of a particular:
// nothing that makes one value of another lets them through.
func isValue(n Node) bool {
	read, ok := n.(*Read)
	return !ok || read.Particular.Kind != vehicle.KindPoint && read.Particular.Kind != vehicle.KindPartNames
}

// notValue is the fault of a place, or of the names of several parts, where a value is
// wanted.
func (c *checker) notValue(of *Read) Node {
	at := of.Span()
	if of.Particular.Kind == vehicle.KindPoint {
		return c.fault(CodeFormulaKind, at, fmt.Sprintf("Give it to distance, above or ahead_of, or read %s.", c.coordinates(of)),
			"%s is a place, which is no figure by itself.", c.quote(at))
	}
	named := "parts"
	if of.Particular.Names != nil {
		named = spoken(of.Particular.Names.Plural)
	}
	return c.fault(CodeFormulaKind, at, c.insteadOfNames(of), "%s names %s, which are no value by themselves.", c.quote(at), named)
}

// owner is the part of a particular as it would be written again before another one.
func (c *checker) owner(of *Read) string {
	if written := c.code(of.Of.Span()); written != "." {
		return written
	}
	return "#"
}

// coordinates is the three figures of a place as they are read.
func (c *checker) coordinates(of *Read) string {
	owner := c.owner(of)
	var list []string
	for _, name := range of.Particular.Fills {
		list = append(list, owner+"."+name)
	}
	return listOf(list, "and")
}

// insteadOfNames says what to ask instead of the names of several parts.
func (c *checker) insteadOfNames(of *Read) string {
	owner := c.owner(of)
	var lists []string
	for _, inner := range of.Particular.Part.Parts {
		if inner.Repeats() && PlaceOf(inner) != nil {
			lists = append(lists, owner+"."+inner.Plural)
		}
	}
	if isTube(of.Particular.Part) {
		lists = append(lists, fmt.Sprintf("meet(%s, …)", owner))
	}
	recorded := fmt.Sprintf("recorded(%s)", c.code(of.Span()))
	if len(lists) == 0 {
		return fmt.Sprintf("Ask %s whether they are on the sheet.", recorded)
	}
	return fmt.Sprintf("Ask %s instead, or %s whether they are on the sheet.", listOf(lists, "or"), recorded)
}

// memberOfPlace is the fault of joint.at.x, and of the like behind the names of parts.
func (c *checker) memberOfPlace(of *Read, name string, at, end Span) Node {
	if of.Particular.Kind != vehicle.KindPoint {
		return c.notValue(of)
	}
	advice := fmt.Sprintf("Read %s.", c.coordinates(of))
	for _, coordinate := range of.Particular.Fills {
		if axis := coordinate[strings.LastIndex(coordinate, "_")+1:]; name == axis || name == coordinate {
			advice = fmt.Sprintf("Write %s.%s.", c.owner(of), coordinate)
		}
	}
	return c.fault(CodeFormulaKind, end, advice, "%s is a place; nothing follows it after a dot.", c.quote(of.Span()))
}

// comparedPlaces is the fault of a comparison with a place, or with the names of several
// parts.
func (c *checker) comparedPlaces(at Span, left, right Node) Node {
	if left.Type().Kind == Place && right.Type().Kind == Place {
		return c.fault(CodeFormulaKind, at, fmt.Sprintf("Write distance(%s, %s) <= 1*mm.", c.code(left.Span()), c.code(right.Span())),
			"Two places are never the same to the last digit.")
	}
	for _, side := range []Node{left, right} {
		if !isValue(side) {
			c.notValue(side.(*Read))
		}
	}
	return nil
}

// recordedPlace checks recorded(joint.at): a place is recorded when its coordinates are,
// and an answer that stays open names those that are missing.
func (c *checker) recordedPlace(at Span, of *Read) Node {
	truth := Type{Kind: Truth}
	all := &Logic{Base: Base{at, truth}, All: true}
	for _, name := range of.Particular.Fills {
		p := of.Particular.Part.Particular(name)
		all.Of = append(all.Of, &Recorded{Base{at, truth}, &Read{Base{of.At, typeOfParticular(p)}, of.Of, p}})
	}
	c.chained = true // what stands before the dot is in the tree three times
	return all
}

// place checks an argument that is a place or a tube.
func (c *checker) place(f *Function, takes parameter, argument ast.Node) Node {
	if c.unplaced(f, takes, argument) {
		return nil
	}
	n := c.node(argument)
	if n == nil {
		return nil
	}
	is := n.Type()
	switch {
	case is.Kind == Place && takes != takesTube, is.Kind == Part && isTaken(takes, is.PartType):
		return n
	case is.Kind != Place && !isValue(n):
		return c.notValue(n.(*Read))
	}
	wanted := map[parameter]string{takesPlace: "a place", takesTube: "a tube", takesPlaceOrTube: "a place or a tube"}[takes]
	return c.fault(CodeFormulaKind, n.Span(), c.placeAdvice(f, takes, n), "%s is %s, where %s takes %s.", c.quote(n.Span()), is, f.Name, wanted)
}

// isTaken reports whether a part of a type can stand where a place or a tube is wanted.
func isTaken(takes parameter, t *vehicle.PartType) bool {
	if isTube(t) {
		return takes != takesPlace
	}
	return takes != takesTube && PlaceOf(t) != nil
}

// length checks the length within which tubes meet.
func (c *checker) length(f *Function, n Node) Node {
	if isBareZero(n) {
		return zeroOf(n, Type{Dimension: quantity.Length})
	}
	is := n.Type()
	k, written := n.(*Constant)
	switch {
	case is.Kind == Number && is.Dimension == quantity.Length:
		if written && k.Number < 0 {
			return c.fault(CodeFormulaConstant, k.At, "Write a length from zero up.", "Nothing comes as near as %s.", c.quote(k.At))
		}
		return n
	case written && is.Kind == Number && is.Dimension.IsNone():
		return c.fault(CodeFormulaDimension, k.At, fmt.Sprintf("Write %s*mm.", c.code(k.At)), "%s has no unit, but %s takes a length.", c.quote(k.At), f.Name)
	}
	return c.fault(CodeFormulaKind, n.Span(), fmt.Sprintf("Write %s, as in 5*mm.", f.Usage), "%s is %s, where %s takes a length.", c.quote(n.Span()), is, f.Name)
}

// isSame notes the fault of a function on places that is given one twice, and returns
// whether it was: the answer would be one for all cars.
func (c *checker) isSame(f *Function, at Span, of []Node) bool {
	if c.code(of[0].Span()) != c.code(of[1].Span()) {
		return false
	}
	c.fault(CodeFormulaArguments, at, fmt.Sprintf("Name two: %s.", f.Usage), "Both are %s.", c.quote(of[0].Span()))
	return true
}
