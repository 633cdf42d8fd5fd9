package rules

// The nodes for lists, and for names given to values.

// Fold says what a Gather makes of a list.
type Fold uint8

// The list functions.
const (
	FoldAll Fold = iota
	FoldAny
	FoldNone
	FoldOne   // exactly one
	FoldCount // how many, or len
	FoldSum
	FoldMin
	FoldMax
	FoldMean
	FoldMedian
	FoldFirst // first member
	FoldLast  // last member
)

// Gather is a list function. Its list is Parts, Rows, InBand, Items, Given, Filter, Map,
// or a Variable or Conditional of a list type. find(l, p) is first(filter(l, p)),
// findLast likewise, count(l, p) is count(filter(l, p)), sum(l, m) is sum(map(l, m)),
// len(l) is count(l). all, any, none and one keep their predicate in Body.
type Gather struct {
	Base
	Fold    Fold
	List    Node
	Element *Binding // the member that Body sees; nil when Body is
	Body    Node     // Truth; only for FoldAll, FoldAny, FoldNone, FoldOne
}

// Filter is the members of a list for which Body holds.
type Filter struct {
	Base
	List    Node
	Element *Binding
	Body    Node
}

// Map is Body for each member of a list.
type Map struct {
	Base
	List    Node
	Element *Binding
	Body    Node
}

// Items is a list written out.
type Items struct {
	Base
	Of []Node
}

// Define is let name = value; the rest: Binding stands for Value in Rest. A term with a
// given is also a Define, of the part it is applied to.
type Define struct {
	Base
	Binding *Binding
	Value   Node
	Rest    Node
}

// Mention is the use of a term; Body is the term's own checked tree, in the term's text.
type Mention struct {
	Base
	Term  *Term
	Given Node // the part it is applied to, nil for a term without one
	Body  Node // spans are in the term's formula; reads of the given are Variable nodes of Term.Given
}
