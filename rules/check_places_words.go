package rules

import (
	"fmt"

	"github.com/expr-lang/expr/ast"

	"gapsheet/vehicle"
)

// placedBy is the type of parts by which the sheet places what a word means: the helmet of
// whoever sits there by a head, the back of a seat by the seat.
var placedBy = map[string]string{
	"helmet": "head", "helmets": "head", "driver": "head", "co_driver": "head", "codriver": "head",
	"crew": "head", "crew_member": "head", "crew_members": "head", "occupant": "head",
	"seat_back": "seat", "seatback": "seat", "backrest": "seat", "squab": "seat", "seat_cushion": "seat",
	"anchor": "strap", "anchorage": "strap", "belt": "strap",
}

// placeMeant says which place stands for what a word means, "" where the sheet has none.
func (c *checker) placeMeant(takes parameter, word string) string {
	name := placedBy[word]
	if name == "" || takes == takesTube {
		return ""
	}
	for _, t := range c.typesNamed(name) {
		written := c.variableFor(t)
		if written == "" {
			written = c.pathTo(t, fmt.Sprintf("%s['%s']", t.Name, exampleLabel(t)))
		}
		if written == "" {
			continue
		}
		places := placesIn(written, t)
		switch {
		case PlaceOf(t) == nil && len(places) > 0:
			return fmt.Sprintf("The sheet has the places of a %s: %s.", spoken(name), listOf(places, "or"))
		case PlaceOf(t) == nil:
			continue
		case name == "head":
			return fmt.Sprintf("Write %s: for distance the top point of a helmet, for clearance the helmet.", written)
		}
		return fmt.Sprintf("Of a %s the sheet has one place, its %s: write %s.", spoken(name), spoken(PlaceOf(t).Name), written)
	}
	return ""
}

// placesIn is the places that a part has, each as it is written after the part.
func placesIn(written string, t *vehicle.PartType) []string {
	var places []string
	for _, added := range []bool{false, true} {
		for _, p := range tellingPlace(t, added) {
			places = append(places, written+"."+p.Name)
		}
	}
	return places
}

// unplaced notes the fault of a name that means nothing where a place is wanted and that the
// sheet has a place for under another, and returns whether it did.
func (c *checker) unplaced(f *Function, takes parameter, argument ast.Node) bool {
	name, ok := argument.(*ast.IdentifierNode)
	if !ok || c.isShadowed(name.Value) || c.scope.names.terms[name.Value] != nil {
		return false
	}
	advice := c.placeMeant(takes, name.Value)
	if t, _ := c.scope.root(name.Value); t != nil || advice == "" {
		return false
	}
	c.fault(CodeFormulaName, c.spanOf(name), advice, "%s is not the name of a place.", quoteCode(name.Value))
	return true
}

// tubesKnown says what can stand where a tube is wanted, and where the angle is found that
// a joint or a corner was named for.
func (c *checker) tubesKnown(f *Function, n Node) string {
	advice := fmt.Sprintf("Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, %s).", c.asked(f, "#"))
	if f.Code != FunctionAngleBetween || n.Type().Kind != Part {
		return advice
	}
	t, written := n.Type().PartType, c.code(n.Span())
	switch {
	case t.Name == "joint" && t.Particular("least_angle") != nil:
		return fmt.Sprintf("The least angle between tubes at a joint is %s.least_angle. %s", written, advice)
	case t.Name == "corner" && t.Particular("angle") != nil:
		return fmt.Sprintf("How far a tube turns at a corner is %s.angle. %s", written, advice)
	}
	return advice
}
