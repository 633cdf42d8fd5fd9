package vehicle

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// dayTold is a whole day as an author gave it.
type dayTold struct {
	key string
	day quantity.Day
	is  bool      // it is given, and usable
	all hcl.Range // of the value
}

// day reads a whole day; it is none when not given or not usable.
func (k *keys) day(key string) dayTold {
	told := dayTold{key: key}
	t := k.text(key)
	if t.text == "" {
		return told
	}
	told.all = t.all
	days, fault := quantity.ParseDays(t.text)
	switch {
	case fault != nil:
		k.faults = append(k.faults, FigureFault(fault, t.place))
	case days.Precision != quantity.ToDay:
		k.fault("day-wanted", t.all, "Not a whole day", fmt.Sprintf(
			"Found %s as %s of the %s. Write year, month and day, as in %q.", Quote(t.text), key, k.what, "2027-03-14"))
	default:
		told.day, told.is = days.From, true
	}
	return told
}

// dayWanted is day for a key that has to be there; why, a sentence, may be empty.
func (k *keys) dayWanted(key, why string) dayTold {
	if k.block.Body.Attributes[key] == nil {
		k.asked = append(k.asked, key)
		k.fault("key-missing", k.header(), "Something is missing", strings.TrimSpace(fmt.Sprintf(
			"The %s has no %s. Write %s = \"2027-05-16\", with the day it is. %s", k.what, key, key, why)))
		return dayTold{key: key}
	}
	return k.day(key)
}

// inOrder reports a later day that is before an earlier one, and whether it had to. because
// is the rest of a sentence.
func (k *keys) inOrder(earlier, later dayTold, because string) bool {
	if !earlier.is || !later.is || later.day >= earlier.day {
		return false
	}
	k.fault("days-order", later.all, "Days out of order", fmt.Sprintf(
		"Found %s as %s of the %s, whose %s is %s: %s. Look at both days.", later.day, later.key, k.what, earlier.key, earlier.day, because))
	return true
}

// together reads a day and who did something on it, of which neither stands without the
// other.
func (k *keys) together(on, by string) (day dayTold, who string) {
	day, who = k.day(on), k.text(by).text
	attributes := k.block.Body.Attributes
	switch first, second := attributes[on], attributes[by]; {
	case first != nil && second == nil:
		k.fault("key-missing", first.NameRange, "Something is missing", fmt.Sprintf(
			"Found %s in the %s without %s. The two go together: write %s = with the name of the one who did it.", on, k.what, by, by))
	case first == nil && second != nil:
		k.fault("key-missing", second.NameRange, "Something is missing", fmt.Sprintf(
			"Found %s in the %s without %s. The two go together: write %s = \"2027-06-19\", with the day it is.", by, k.what, on, on))
	}
	return day, who
}

// note reads a note of one or several lines.
func (k *keys) note() string { return k.proseOf("note") }

// proseOf reads a text of one or several lines, "" where it is not given.
func (k *keys) proseOf(key string) string {
	if e := k.value(key); e != nil {
		return k.prose(key, e)
	}
	return ""
}

// proseWanted is proseOf for a key that has to be there and say something.
func (k *keys) proseWanted(key, how string) string {
	text := k.proseOf(key)
	switch a := k.block.Body.Attributes[key]; {
	case a == nil:
		k.fault("key-missing", k.header(), "Something is missing",
			fmt.Sprintf("The %s has no %s. Write %s = %q, %s.", k.what, key, key, "…", how))
	case text == "" && isText(a.Expr):
		k.fault("text-empty", a.Expr.Range(), "An empty text", fmt.Sprintf("The %s of the %s is empty. Write it out, %s.", key, k.what, how))
	}
	return text
}

// mostListed is how many names a list of a paper or an event can have.
const mostListed = 500

// listOnce reads a list of texts, none of them twice and at least one; none where it is not
// given.
func (k *keys) listOnce(key string) []told {
	a := k.block.Body.Attributes[key]
	list := k.texts(key)
	if len(list) > mostListed {
		k.fault("names-count", a.Expr.Range(), "Too many names", fmt.Sprintf(
			"Found %d names as %s of the %s. There can be at most %d.", len(list), key, k.what, mostListed))
		return nil
	}
	if a != nil {
		if tuple, ok := a.Expr.(*hclsyntax.TupleConsExpr); ok && len(tuple.Exprs) == 0 {
			k.fault("list-empty", a.Expr.Range(), "An empty list", fmt.Sprintf(
				"Found an empty list as %s of the %s. Write the names in it, or leave the line out.", key, k.what))
		}
	}
	var once []told
	first := map[string]hcl.Range{}
	for _, t := range list {
		if at, twice := first[FoldText(t.text)]; twice {
			k.faults = append(k.faults, SaidTwice(t.all, Quote(t.text)+" in "+key+" of the "+k.what, at))
			continue
		}
		first[FoldText(t.text)] = t.all
		once = append(once, t)
	}
	return once
}
