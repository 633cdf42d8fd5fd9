package vehicle

import (
	"fmt"
	"math"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// Of a lead time: the seconds of a day, and how many days there can be.
const (
	secondsOfDay = 86400
	longestLead  = 1000
)

// leadOf reads how long a new part takes to come, in days. It answers false where that is
// not given or not usable.
func (k *keys) leadOf(what string, e hclsyntax.Expression) (int64, bool) {
	if e == nil {
		return 0, false
	}
	wrong := func(at hcl.Range, found, advice string) (int64, bool) {
		k.fault("lead-wanted", at, "Not a lead time", fmt.Sprintf(
			"Found %s as %s of the %s. %s", found, what, k.what, advice))
		return 0, false
	}
	const advice = `Write a number of days or weeks in double quotes, as in "21 days".`
	if number, ok := k.source.Number(e); ok {
		return wrong(e.Range(), number, fmt.Sprintf("Write the unit too, and all in double quotes: \"%s days\".", number))
	}
	t, ok := k.one(what, e)
	if !ok {
		return 0, false
	}
	figure, fault := quantity.ParseFigure(t.text)
	if fault != nil {
		k.faults = append(k.faults, FigureFault(fault, t.place))
		return 0, false
	}
	at := t.place(0, utf8.RuneCountInString(t.text))
	days := math.Round(figure.Reading / secondsOfDay)
	switch unit := figure.Unit; {
	case unit == (quantity.Unit{}):
		return wrong(at, Quote(t.text), fmt.Sprintf("Write the unit too: %q.", t.text+" days"))
	case unit.Dimension() != quantity.Time:
		return wrong(at, Quote(t.text), advice)
	case figure.Toleranced || figure.OneSided || !figure.Range.IsExact():
		return wrong(at, Quote(t.text), "It is one figure: write the longest that you reckon with.")
	case figure.Reading < 0:
		return wrong(at, Quote(t.text), "A part does not come before it is ordered: write 0 days or more.")
	case !quantity.Time.Same().Same(days*secondsOfDay, figure.Reading):
		return wrong(at, Quote(t.text), "Write whole days.")
	case days > longestLead:
		return wrong(at, Quote(t.text), fmt.Sprintf("There can be up to %d days. Look at the number and its unit.", longestLead))
	}
	return int64(days), true
}

// leads reads the lead times of single types of parts.
func (r *seasonReader) leads(k *keys) {
	e := k.value("leads")
	if e == nil {
		return
	}
	group, ok := e.(*hclsyntax.ObjectConsExpr)
	if !ok {
		k.fault("group-wanted", e.Range(), "Not a group", fmt.Sprintf(
			"Found %s as leads of the %s. Write the names of blocks with their lead times: { harness = \"28 days\", fire_system = \"10 days\" }.", k.source.Describe(e), k.what))
		return
	}
	given := map[string]hcl.Range{}
	for _, item := range group.Items {
		name, at := k.source.keyOf(item)
		days, ok := k.leadOf(fmt.Sprintf("lead of %s", name), item.ValueExpr)
		first, twice := given[name]
		switch {
		case twice:
			k.faults = append(k.faults, SaidTwice(at, name+" in leads of the "+k.what, first))
		case r.gear.typeNamed(name) == nil:
			k.fault("unknown-part", at, "Unknown part", fmt.Sprintf("Found %s in leads of the %s, but there is no such part. %s", Quote(name), k.what, r.leadAdvice(name)))
		case ok:
			r.season.leads[name] = days
		}
		given[name] = at
	}
}

// leadAdvice says which part was most likely meant.
func (r *seasonReader) leadAdvice(name string) string {
	var known []string
	for _, t := range r.gear.sheet.Vocabulary.Types() {
		if t.Club != "" || t.Within == nil {
			continue
		}
		if t.Plural == name {
			return fmt.Sprintf("Write the name of its block: %s.", t.Name)
		}
		known = append(known, t.Name)
	}
	if near := Nearest(name, known); near != "" {
		return fmt.Sprintf("Did you mean %s?", near)
	}
	return "Write the name of a part's block, such as harness or fire_system."
}
