package rules

import (
	"fmt"
	"math/big"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// lines reads a list of texts of one line each; a single text is a list of one.
// None is given twice.
func (f *fields) lines(key string) []written {
	members := []hclsyntax.Expression{}
	switch e := f.value(key).(type) {
	case nil:
		return nil
	case *hclsyntax.TupleConsExpr:
		members = e.Exprs
	default:
		members = append(members, e)
	}
	var list []written
	for _, e := range members {
		t, ok := f.textOf(key, e)
		if !ok || !f.onOneLine(key, t) {
			continue
		}
		folded := vehicle.FoldText(t.text)
		if i := slices.IndexFunc(list, func(o written) bool { return vehicle.FoldText(o.text) == folded }); i >= 0 {
			f.report(vehicle.SaidTwice(t.all, vehicle.Quote(t.text), list[i].all))
			continue
		}
		list = append(list, t)
	}
	return list
}

// word reads one of a list of words; its place in the list, -1 when not given or unknown.
func (f *fields) word(key string, words []string) int {
	t, ok := f.text(key)
	if !ok {
		return -1
	}
	i := slices.Index(words, vehicle.FoldText(t.text))
	if i < 0 {
		advice := "Write one of: " + listOf(words, "or") + "."
		if near := vehicle.Nearest(t.text, words); near != "" {
			advice = fmt.Sprintf("Did you mean %s? %s", vehicle.Quote(near), advice)
		}
		f.fault("unknown-word", t.all, "Unknown word", fmt.Sprintf(
			"Found %s as %s of the %s. %s", vehicle.Quote(t.text), key, f.what, advice))
	}
	return i
}

// days reads a day, month or year; not ok when it is not given or not usable.
func (f *fields) days(key string) (days quantity.DayRange, ok bool) {
	t, ok := f.text(key)
	if !ok {
		return days, false
	}
	days, fault := quantity.ParseDays(t.text)
	if fault != nil {
		f.report(vehicle.FigureFault(fault, t.at.Range))
		return days, false
	}
	return days, true
}

// day reads a day known to the day; not ok when it is not given or not usable.
func (f *fields) day(key string) (days quantity.DayRange, ok bool) {
	days, ok = f.days(key)
	if ok && days.Precision != quantity.ToDay {
		f.fault("day-wanted", f.at(key), "A day is wanted", fmt.Sprintf(
			"Found %s as %s of the %s. Write the day, as in \"2027-03-14\".", days, key, f.what))
		return days, false
	}
	return days, ok
}

// count reads a whole number from 1 to most; 0 when it is not given or not usable.
func (f *fields) count(key string, most int) int {
	e := f.value(key)
	if e == nil {
		return 0
	}
	if literal, ok := e.(*hclsyntax.LiteralValueExpr); ok && !literal.Val.IsNull() && literal.Val.Type() == cty.Number {
		if n, accuracy := literal.Val.AsBigFloat().Int64(); accuracy == big.Exact && 1 <= n && n <= int64(most) {
			return int(n)
		}
	}
	found := vehicle.Describe(e)
	if number, ok := f.source.Number(e); ok {
		found = "the number " + number
	}
	f.fault("count-wanted", e.Range(), "A count is wanted", fmt.Sprintf(
		"Found %s as %s of the %s. Write a whole number from 1 to %d without quotes.", found, key, f.what, most))
	return 0
}

// page reads a page: a plain number, or a text such as "31 to 33".
func (f *fields) page() string {
	if e := f.value("page"); e != nil {
		if number, ok := f.source.Number(e); ok {
			return number
		}
	}
	return f.line("page")
}

// stage reads the stage by which a clause is due; unset when not given.
func (f *fields) stage() vehicle.Stage {
	words := vehicle.StageWords()
	i := f.word("stage", words)
	if i < 0 {
		return vehicle.StageUnset
	}
	stage, _ := vehicle.StageNamed(words[i])
	return stage
}

// texts is the texts alone.
func texts(list []written) []string {
	var out []string
	for _, w := range list {
		out = append(out, strings.TrimSpace(w.text))
	}
	return out
}

// listOf joins words for a sentence: "a, b and c".
func listOf(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	most := len(words) - 1
	return strings.Join(words[:most], ", ") + " " + last + " " + words[most]
}
