package main

import (
	"regexp"
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// givenName is what a name handed in to a formula may look like.
var givenName = regexp.MustCompile(`^[A-Za-z_][A-Za-z0-9_]*$`)

// letsOf reads the values of --let, NAME=VALUE each.
func letsOf(written []string) ([]engine.Given, error) {
	var given []engine.Given
	seen := map[string]bool{}
	for _, text := range written {
		name, value, ok := strings.Cut(text, "=")
		name, value = strings.TrimSpace(name), strings.TrimSpace(value)
		if !ok || !givenName.MatchString(name) {
			return nil, wrong("--let wants a name and a value, such as 'x=1.75 in'; found %q.", text)
		}
		if seen[name] {
			return nil, wrong("--let gives %s twice. Keep one.", name)
		}
		seen[name] = true
		g, err := letOf(name, value)
		if err != nil {
			return nil, err
		}
		given = append(given, g)
	}
	return given, nil
}

// letOf reads one value: true, false, "missing KIND", a text in double quotes, a day or
// month, a figure; what does not begin like a figure is a text as well.
func letOf(name, value string) (engine.Given, error) {
	switch {
	case value == "true":
		return engine.GivenTruth(name, quantity.Yes), nil
	case value == "false":
		return engine.GivenTruth(name, quantity.No), nil
	case value == "":
		return engine.Given{}, wrong("--let %s has no value. Write one behind the =; a text may stand in double quotes.", name)
	case len(value) > 1 && value[0] == '"' && value[len(value)-1] == '"':
		return engine.GivenText(name, value[1:len(value)-1]), nil
	}
	if kind, ok := strings.CutPrefix(value, "missing "); ok {
		given, err := engine.GivenMissing(name, strings.TrimSpace(kind))
		if err != nil {
			return given, wrong("--let %s: %v.", name, err)
		}
		return given, nil
	}
	if days, fault := quantity.ParseDays(value); fault == nil && days.Precision != quantity.ToYear {
		return engine.GivenDate(name, days), nil
	}
	if !strings.ContainsAny(value[:1], "0123456789.+-<>½¼¾⅛⅜⅝⅞") {
		return engine.GivenText(name, value), nil
	}
	figure, fault := quantity.ParseFigure(value)
	if fault != nil {
		return engine.Given{}, wrong("--let %s: %s %s", name, fault.Found, fault.Advice)
	}
	return givenFigure(name, figure), nil
}

// givenFigure hands in a figure. A whole number without a unit is a count.
func givenFigure(name string, f quantity.Figure) engine.Given {
	whole := f.Unit == quantity.Unit{} && f.Range.IsExact() && isWhole(f.Range.Low) && f.Decimals == 0
	return engine.GivenNumber(name, f.Range, f.Unit.Dimension(), whole, f.Unit)
}

// unitFor finds a unit that an answer can be given in.
func unitFor(text string, answer engine.Answer) (quantity.Unit, error) {
	unit, err := quantity.FindUnit(text)
	if err != nil {
		return unit, wrong("%v", err)
	}
	is := answer.Is
	if is.Kind == rules.List && is.Item != nil {
		is = *is.Item
	}
	switch {
	case is.Kind != rules.Number:
		return unit, wrong("The answer is no figure, so it has no unit. Leave --unit out.")
	case !unit.Convertible():
		return unit, wrong("Figures cannot be converted to %s.", unit.Name())
	case unit.Dimension() != is.Dimension:
		return unit, wrong("The answer cannot be given in %s, a unit of %s: its dimension is %s.", unit.Name(), unit.Dimension(), is.Dimension)
	}
	return unit, nil
}
