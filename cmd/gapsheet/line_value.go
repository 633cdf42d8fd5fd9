package main

import (
	"encoding/json"
	"math"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// valueForms are the objects a value can be, told by the names in them.
var valueForms = []string{"missing", "low", "high", "value", "number", "unit", "figure", "date", "from", "to"}

// objectValue reads a value that is written as an object.
func objectValue(name string, text json.RawMessage) (engine.Given, error) {
	members, err := objectOf(text)
	if err != nil {
		return engine.Given{}, err
	}
	has := map[string]json.RawMessage{}
	for _, m := range members {
		has[m.name] = m.value
	}
	for _, m := range members {
		if !isOneOf(m.name, valueForms) {
			return engine.Given{}, unknownMember(m.name, valueForms)
		}
	}
	for _, form := range []struct {
		told, all []string
		read      func(string, map[string]json.RawMessage) (engine.Given, error)
	}{
		{[]string{"missing"}, []string{"missing"}, missingValue},
		{[]string{"low", "high"}, []string{"low", "high", "unit"}, rangeValue},
		{[]string{"value"}, []string{"value", "unit"}, numberValue},
		{[]string{"number"}, []string{"number", "unit"}, numberValue},
		{[]string{"figure"}, []string{"figure"}, figureValue},
		{[]string{"date"}, []string{"date"}, dateValue},
		{[]string{"from", "to"}, []string{"from", "to"}, daysValue},
	} {
		if !hasOne(has, form.told) {
			continue
		}
		for _, m := range members {
			if !isOneOf(m.name, form.all) {
				return engine.Given{}, wrong("Found %s beside %s, which do not go together.", m.name, form.told[0])
			}
		}
		return form.read(name, has)
	}
	return engine.Given{}, wrong(`Found an object that holds no value. Write {"low": 1, "high": 2, "unit": "mm"}, {"missing": "length"} or {"date": "2024-02-29"}.`)
}

func isOneOf(name string, known []string) bool {
	for _, k := range known {
		if k == name {
			return true
		}
	}
	return false
}

func hasOne(has map[string]json.RawMessage, names []string) bool {
	for _, name := range names {
		if _, ok := has[name]; ok {
			return true
		}
	}
	return false
}

func missingValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	kind, err := textOf(member{"missing", has["missing"]})
	if err != nil {
		return engine.Given{}, err
	}
	given, err := engine.GivenMissing(name, kind)
	if err != nil {
		return given, wrong("%v.", err)
	}
	return given, nil
}

func rangeValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	unit, err := unitOf(has)
	if err != nil {
		return engine.Given{}, err
	}
	low, err := endOf(has["low"], math.Inf(-1))
	if err != nil {
		return engine.Given{}, err
	}
	high, err := endOf(has["high"], math.Inf(1))
	if err != nil {
		return engine.Given{}, err
	}
	low, high = inSI(has["low"], low, unit), inSI(has["high"], high, unit)
	if low > high || math.IsInf(low, 1) || math.IsInf(high, -1) {
		return engine.Given{}, wrong("No number lies from low %s to high %s. low is the lesser.", shortened(has["low"]), shortened(has["high"]))
	}
	return engine.GivenNumber(name, quantity.Between(low, high), unit.Dimension(), false, unit), nil
}

func numberValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	unit, err := unitOf(has)
	if err != nil {
		return engine.Given{}, err
	}
	text := has["value"]
	if text == nil {
		text = has["number"]
	}
	if string(text) == "null" || len(text) > 0 && text[0] == '"' {
		return engine.Given{}, wrong("Found %s where a number is wanted.", shortened(text))
	}
	number, err := endOf(text, 0)
	if err != nil {
		return engine.Given{}, err
	}
	return engine.GivenNumber(name, quantity.Exactly(inSI(text, number, unit)), unit.Dimension(), false, unit), nil
}

func unitOf(has map[string]json.RawMessage) (quantity.Unit, error) {
	text, ok := has["unit"]
	if !ok || string(text) == `""` {
		return quantity.Unit{}, nil
	}
	written, err := textOf(member{"unit", text})
	if err != nil {
		return quantity.Unit{}, err
	}
	unit, err := quantity.FindUnit(written)
	if err != nil {
		return unit, wrong("%v", err)
	}
	return unit, nil
}

func figureValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	written, err := textOf(member{"figure", has["figure"]})
	if err != nil {
		return engine.Given{}, err
	}
	figure, fault := quantity.ParseFigure(written)
	if fault != nil {
		return engine.Given{}, wrong("%s %s", fault.Found, fault.Advice)
	}
	return givenFigure(name, figure), nil
}

func dateValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	days, err := daysOf("date", has)
	return engine.GivenDate(name, days), err
}

// daysValue reads a date of which only the first and the last possible day are known.
func daysValue(name string, has map[string]json.RawMessage) (engine.Given, error) {
	if len(has) < 2 {
		return engine.Given{}, wrong("A time has both ends: from and to.")
	}
	from, err := daysOf("from", has)
	if err != nil {
		return engine.Given{}, err
	}
	to, err := daysOf("to", has)
	if err != nil {
		return engine.Given{}, err
	}
	if from.From > to.To {
		return engine.Given{}, wrong("No day lies from %s to %s.", from.From, to.To)
	}
	return engine.GivenDate(name, quantity.DayRange{From: from.From, To: to.To, Precision: quantity.ToDay}), nil
}

func daysOf(key string, has map[string]json.RawMessage) (quantity.DayRange, error) {
	written, err := textOf(member{key, has[key]})
	if err != nil {
		return quantity.DayRange{}, err
	}
	days, fault := quantity.ParseDays(written)
	if fault != nil {
		return days, wrong("%s %s", fault.Found, fault.Advice)
	}
	return days, nil
}
