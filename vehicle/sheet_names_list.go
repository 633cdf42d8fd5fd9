package vehicle

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// mostNames is how many parts one value can name: a tube with more joints would have more
// bends than any bender has patience for.
const mostNames = 42

// namesWanted is how many parts are to be named where that number is given, by the type of
// part and the particular.
var namesWanted = map[[2]string]int{
	{"door_aperture", "corners"}: 4,
	{"padding", "between"}:       2,
}

// partNames reads the labels of parts of another type, in their order. They are looked up
// once all parts are known.
func (n *entry) partNames(e hclsyntax.Expression) {
	x := n.particular
	list, ok := e.(*hclsyntax.TupleConsExpr)
	advice := fmt.Sprintf("Write the labels of %s in a list, as in %s.", plain(x.Names.Plural), n.example())
	if !ok {
		n.wrongKind(e, advice)
		return
	}
	wanted, isGiven := namesWanted[[2]string{x.Part.Name, x.Name}]
	switch count := len(list.Exprs); {
	case count == 0:
		n.wrong("list-empty", e.Range(), "An empty list", "an empty list", advice)
		return
	case isGiven && count != wanted:
		n.wrong("names-count", e.Range(), "Too many or too few names", fmt.Sprintf("a list of %d", count),
			fmt.Sprintf("There have to be %d. %s", wanted, x.Help))
		return
	case count > mostNames:
		n.wrong("names-count", e.Range(), "Too many names", fmt.Sprintf("a list of %d", count),
			fmt.Sprintf("There can be at most %d. Write a part for each piece.", mostNames))
		return
	}
	names := make([]told, 0, len(list.Exprs))
	var labels []string
	for _, member := range list.Exprs {
		if t, ok := n.words(member, fmt.Sprintf("Write the label of a %s in double quotes.", x.Names.Name)); ok {
			names, labels = append(names, t), append(labels, t.text)
		}
	}
	if len(names) < len(list.Exprs) || n.namesTooMany(len(names)) {
		return
	}
	n.set(x, Value{Text: strings.Join(labels, ", "), Several: make([]*Part, len(names))})
	for i, name := range names {
		n.links = append(n.links, link{value: &n.part.Values[x.Index], part: n.part, particular: x, what: n.what, name: name, at: i})
	}
}

// namesTooMany counts the names in all lists of the sheet. Beyond what a cage has they are
// not looked up any more, of which the first is told.
func (n *entry) namesTooMany(count int) bool {
	before := n.namesRead
	n.namesRead += count
	if before <= mostNamed && n.namesRead > mostNamed {
		n.wrong("cage-too-large", n.all, "More than a cage has", fmt.Sprintf("more than %d names in the lists of this sheet, the first too many", mostNamed),
			"Those that follow are not read. Write one car in a sheet.")
	}
	return n.namesRead > mostNamed
}

// plain is a name of the vocabulary in the words of a sentence.
func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }
