package rules

import (
	"maps"
	"slices"
	"strings"
)

// String says in words what a node yields: "a length", "a count", "a list of tubes".
func (t Type) String() string {
	switch t.Kind {
	case Truth:
		return "yes or no"
	case Number:
		if t.Whole {
			return "a count"
		}
		if t.Dimension.IsNone() {
			return "a plain number"
		}
		return article(t.Dimension.String())
	case Date:
		return "a date"
	case Text:
		return "a text"
	case Choice:
		return "a choice from a list"
	case Part:
		return article(spoken(t.PartType.Name))
	case Row:
		return "a row of the table " + t.Table.Name
	case List:
		return "a list of " + t.Item.several()
	case Place:
		return "a place"
	}
	return "nothing"
}

// several is the word for several values of a type.
func (t *Type) several() string {
	if t == nil {
		return "nothing"
	}
	switch t.Kind {
	case Truth:
		return "yes and no"
	case Number:
		if t.Whole {
			return "counts"
		}
		if t.Dimension.IsNone() {
			return "plain numbers"
		}
		return "figures (" + t.Dimension.String() + ")"
	case Date:
		return "dates"
	case Text:
		return "texts"
	case Choice:
		return "choices"
	case Part:
		return spoken(t.PartType.Plural)
	case Row:
		return "rows of the table " + t.Table.Name
	}
	return "lists"
}

// spoken is a name of the vocabulary as words: "fuel cell" for fuel_cell.
func spoken(name string) string { return strings.ReplaceAll(name, "_", " ") }

// article puts a or an before a word.
func article(word string) string {
	if word != "" && strings.ContainsRune("aeiou", rune(word[0])) {
		return "an " + word
	}
	return "a " + word
}

// sortedKeys is the keys of a map in order.
func sortedKeys[V any](m map[string]V) []string { return slices.Sorted(maps.Keys(m)) }
