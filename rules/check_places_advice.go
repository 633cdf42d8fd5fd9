package rules

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
)

// placeAdvice says what to write where neither a place nor a tube was given.
func (c *checker) placeAdvice(f *Function, takes parameter, n Node) string {
	is := n.Type()
	switch {
	case is.Kind == List && is.Item.Kind == Part && isTaken(takes, is.Item.PartType):
		asked := fmt.Sprintf("%s, %s", c.code(n.Span()), c.asked(f, "#"))
		return fmt.Sprintf("Ask its members one by one: any(%s), all(%s).", asked, asked)
	case is.Kind == List && is.Item.Kind == Part && takes == takesTube:
		return c.tubesKnown(f, n)
	case is.Kind == List && is.Item.Kind == Part:
		return fmt.Sprintf("Ask its members one by one: any(%s, …). %s", c.code(n.Span()), c.partAdvice(f, takes, "", is.Item.PartType))
	case is.Kind == Part:
		if takes == takesTube {
			return c.tubesKnown(f, n)
		}
		return c.partAdvice(f, takes, c.code(n.Span()), is.PartType)
	case is.Kind == Text:
		return c.labelAdvice(f, takes, n)
	}
	return c.known(f, takes, n)
}

// known names what can stand where a place or a tube is wanted.
func (c *checker) known(f *Function, takes parameter, n Node) string {
	if takes == takesTube {
		return c.tubesKnown(f, n)
	}
	return c.placesKnown(takes)
}

// asked is how a function asks the member of a list, or one of its places.
func (c *checker) asked(f *Function, member string) string {
	if f.Code == FunctionMeet {
		return "meet(" + member + ", …, 5*mm)"
	}
	return f.Name + "(" + member + ", …) …"
}

// partAdvice says which places a part has that does not stand for one itself.
func (c *checker) partAdvice(f *Function, takes parameter, written string, t *vehicle.PartType) string {
	var lists []string
	places := placesIn(written, t)
	for _, inner := range t.Parts {
		switch points := placesIn("", inner); {
		case inner.Repeats() && PlaceOf(inner) != nil:
			lists = append(lists, fmt.Sprintf("any(%s.%s, %s)", written, inner.Plural, c.asked(f, "#")))
		case inner.Repeats() && len(points) > 0:
			lists = append(lists, fmt.Sprintf("any(%s.%s, %s)", written, inner.Plural, c.asked(f, points[len(points)-1])))
		}
	}
	switch {
	case len(places) > 0:
		return fmt.Sprintf("Of its places name one: %s.", listOf(places, "or"))
	case len(lists) > 0 && isTube(t):
		return fmt.Sprintf("Ask the places along it: %s.", listOf(lists, "or"))
	case len(lists) > 0:
		return fmt.Sprintf("Ask its places: %s.", listOf(lists, "or"))
	}
	if meant := c.placeMeant(takes, t.Name); meant != "" {
		return meant
	}
	return c.placesKnown(takes)
}

// labelAdvice says how the part is written that a text names.
func (c *checker) labelAdvice(f *Function, takes parameter, n Node) string {
	if read, ok := n.(*Read); ok && read.Particular.Names != nil {
		owner := read.Particular.Part
		if PlaceOf(owner) == read.Particular && takes != takesTube {
			return fmt.Sprintf("That is only the label of the joint; write %s, which stands for the place.", c.owner(read))
		}
		return fmt.Sprintf("That is only the label of %s. %s", article(spoken(read.Particular.Names.Name)), c.known(f, takes, n))
	}
	name := "joint"
	if takes == takesTube {
		name = "tube"
	}
	if k, ok := n.(*Constant); ok {
		if list := c.pathOf(name + "s"); list != "" {
			return fmt.Sprintf("Write %s[%s].", strings.TrimSuffix(list, "s"), c.code(k.At))
		}
	}
	return c.known(f, takes, n)
}

// placesKnown names what can stand where a place is wanted.
func (c *checker) placesKnown(takes parameter) string {
	var names []string
	if v := c.scope.names.vocabulary; v != nil {
		names = taken(takes, v.Root, nil)
	}
	if len(names) == 0 {
		return "A place is a joint, or a particular that is a point."
	}
	return fmt.Sprintf("It can be %s.", listOf(names, "or"))
}

// taken appends the names of the types of parts below one that can stand where a place or
// a tube is wanted.
func taken(takes parameter, below *vehicle.PartType, names []string) []string {
	for _, t := range below.Parts {
		if isTaken(takes, t) {
			names = append(names, article(spoken(t.Name)))
		}
		names = taken(takes, t, names)
	}
	return names
}
