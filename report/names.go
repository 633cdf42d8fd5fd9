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

// nameList names things for a sentence. Several parts of one type in one place share the
// type's word: "tubes 1, 2 and 7; left lap and right lap straps of harness driver".
func nameList(things []named) string {
	var words []string
	joint := list
	for len(things) > 0 {
		before, after := shared(things[0])
		count := 1
		for before+after != "" && count < len(things) {
			if b, a := shared(things[count]); b != before || a != after {
				break
			}
			count++
		}
		if count == 1 {
			words = append(words, things[0].name)
		} else {
			words = append(words, before+list(runs(things[:count]))+after)
			joint = func(words []string) string { return strings.Join(words, "; ") }
		}
		things = things[count:]
	}
	return joint(words)
}

// shared is what a list of several parts says once, before their labels or behind them:
// "tubes " or " straps of harness driver". Both are empty for a thing that is named some
// other way.
func shared(thing named) (before, after string) {
	if thing.part == nil || !thing.part.Type.Repeats() {
		return "", ""
	}
	one, many := inWords(thing.part.Type.Name), inWords(thing.part.Type.Plural)
	if thing.name == one+" "+thing.part.Label {
		return many + " ", ""
	}
	if within, ok := strings.CutPrefix(thing.name, thing.part.Label+" "+one+" of "); ok {
		return "", " " + many + " of " + within
	}
	return "", ""
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
