package report

import (
	"strconv"
	"strings"

	"gapsheet/vehicle"
)

// named is something to be named in a list: a part, or a name alone where part is nil.
type named struct {
	name string
	part *vehicle.Part
}

// nameList names things for a sentence. Several parts of one type share the type's word:
// "tubes 1, 2 and 7 and foot A".
func nameList(things []named) string {
	var words []string
	for len(things) > 0 {
		kind := sharedKind(things[0])
		count := 1
		for kind != "" && count < len(things) && sharedKind(things[count]) == kind {
			count++
		}
		if count == 1 {
			words = append(words, things[0].name)
		} else {
			words = append(words, kind+" "+list(runs(things[:count])))
		}
		things = things[count:]
	}
	return list(words)
}

// sharedKind is the plural under which a thing can be named by its label alone; "" for a
// thing whose name says more.
func sharedKind(thing named) string {
	if thing.part == nil || !thing.part.Type.Repeats() {
		return ""
	}
	kind := thing.part.Type
	if thing.name != strings.ReplaceAll(kind.Name, "_", " ")+" "+thing.part.Label {
		return ""
	}
	return strings.ReplaceAll(kind.Plural, "_", " ")
}

// runs lists the labels of parts; three or more whole numbers in a row become "3 to 7".
func runs(things []named) []string {
	var words []string
	for at := 0; at < len(things); {
		end := at + 1
		first, err := strconv.Atoi(things[at].part.Label)
		for err == nil && end < len(things) && things[end].part.Label == strconv.Itoa(first+end-at) {
			end++
		}
		if end-at >= 3 {
			words = append(words, things[at].part.Label+" to "+things[end-1].part.Label)
		} else {
			end = at + 1
			words = append(words, things[at].part.Label)
		}
		at = end
	}
	return words
}
