package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// question is one line of try --lines.
type question struct {
	id      json.RawMessage // as written; empty when none was given
	formula string
	unit    string
	given   []engine.Given
}

// member is one name and value of a JSON object, in the order they were written.
type member struct {
	name  string
	value json.RawMessage
}

// readQuestion reads a line. The id is there even with an error, when it could be read.
func readQuestion(line []byte) (q question, err error) {
	if !utf8.Valid(line) {
		return q, wrong("The line is not UTF-8.")
	}
	if len(bytes.TrimSpace(line)) == 0 {
		return q, wrong("The line is empty. Each line holds one JSON object.")
	}
	members, err := objectOf(line)
	for _, m := range members {
		if m.name == "id" {
			q.id = m.value
		}
	}
	if err != nil {
		return q, err
	}
	asked := false
	for _, m := range members {
		switch m.name {
		case "id":
		case "formula":
			q.formula, err = textOf(m)
			asked = true
		case "unit":
			q.unit, err = textOf(m)
		case "let":
			q.given, err = givenOf(m.value)
		default:
			err = unknownMember(m.name, []string{"id", "formula", "let", "unit"})
		}
		if err != nil {
			return q, err
		}
	}
	if !asked {
		return q, wrong("The line has no formula. Write it as {\"id\": 1, \"formula\": \"x >= 44.45*mm\", \"let\": {…}}.")
	}
	return q, nil
}

func unknownMember(name string, known []string) error {
	return wrong("Found the name %q, which means nothing here.%s Known are %s.", name, didYouMean(name, known, ""), strings.Join(known, ", "))
}

// objectOf takes a JSON object apart. A name said twice is an error.
func objectOf(text []byte) ([]member, error) {
	decoder := json.NewDecoder(bytes.NewReader(text))
	start, err := decoder.Token()
	if err != nil {
		return nil, notJSON(text)
	}
	if start != json.Delim('{') {
		return nil, wrong("Found no JSON object. A line is written as {\"id\": 1, \"formula\": \"…\"}, a value such as {\"low\": 1, \"high\": 2}.")
	}
	var members []member
	for decoder.More() {
		token, err := decoder.Token()
		if err != nil {
			return members, notJSON(text)
		}
		m := member{name: token.(string)}
		if err := decoder.Decode(&m.value); err != nil {
			return members, notJSON(text)
		}
		for _, earlier := range members {
			if earlier.name == m.name {
				return members, wrong("The name %q is said twice. Keep one.", m.name)
			}
		}
		members = append(members, m)
	}
	if _, err := decoder.Token(); err != nil {
		return members, notJSON(text)
	}
	if rest := bytes.TrimSpace(text[decoder.InputOffset():]); len(rest) > 0 {
		return members, wrong("Found more behind the JSON object. Write one object a line.")
	}
	return members, nil
}

func textOf(m member) (string, error) {
	var text string
	if len(m.value) == 0 || m.value[0] != '"' || json.Unmarshal(m.value, &text) != nil {
		return "", wrong("%s wants a text in double quotes; found %s.", m.name, shortened(m.value))
	}
	return text, nil
}

func shortened(value json.RawMessage) string {
	if len(value) > 40 {
		return strings.ToValidUTF8(string(value[:40]), "") + "…"
	}
	return string(value)
}

// givenOf reads the values by name.
func givenOf(text json.RawMessage) ([]engine.Given, error) {
	members, err := objectOf(text)
	if err != nil {
		return nil, err
	}
	given := make([]engine.Given, 0, len(members))
	for _, m := range members {
		if !givenName.MatchString(m.name) {
			return nil, wrong("%q cannot be a name in a formula. Use letters, digits and _, a letter first.", m.name)
		}
		g, err := valueOf(m.name, m.value)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", m.name, err)
		}
		given = append(given, g)
	}
	return given, nil
}

// valueOf reads one value.
func valueOf(name string, text json.RawMessage) (engine.Given, error) {
	switch text[0] {
	case 't':
		return engine.GivenTruth(name, quantity.Yes), nil
	case 'f':
		return engine.GivenTruth(name, quantity.No), nil
	case '"':
		written, err := textOf(member{name, text})
		return engine.GivenText(name, written), err
	case '[':
		return listOf(name, text)
	case '{':
		return objectValue(name, text)
	case 'n':
		return engine.Given{}, wrong(`null says neither a value nor a kind. Write {"missing": "length"}, or another kind.`)
	}
	number, err := endOf(text, 0)
	if err != nil {
		return engine.Given{}, err
	}
	whole := isWhole(number) && !strings.ContainsAny(string(text), ".eE")
	return engine.GivenNumber(name, quantity.Exactly(number), quantity.Plain, whole, quantity.Unit{}), nil
}

func listOf(name string, text json.RawMessage) (engine.Given, error) {
	var values []json.RawMessage
	if err := json.Unmarshal(text, &values); err != nil {
		return engine.Given{}, notJSON(text)
	}
	given := make([]engine.Given, 0, len(values))
	for _, value := range values {
		if value[0] == '[' {
			return engine.Given{}, wrong("A list holds no lists. Write its values one after the other.")
		}
		g, err := valueOf(name, value)
		if err != nil {
			return engine.Given{}, err
		}
		given = append(given, g)
	}
	g, err := engine.GivenList(name, given)
	if err != nil {
		return g, wrong("%v.", err)
	}
	return g, nil
}

// isWhole reports whether a number is whole and small enough to be exact as such.
func isWhole(number float64) bool {
	return number == math.Trunc(number) && math.Abs(number) <= 1<<53
}

// endOf reads a number, or the end of a range: nothing, null, "inf" and "-inf" are no
// bound, which is noBound.
func endOf(text json.RawMessage, noBound float64) (float64, error) {
	switch string(text) {
	case "", "null":
		return noBound, nil
	case `"inf"`, `"+inf"`:
		return math.Inf(1), nil
	case `"-inf"`:
		return math.Inf(-1), nil
	}
	if text[0] != '-' && (text[0] < '0' || text[0] > '9') {
		return 0, wrong(`Found %s where a number is wanted. Write a number, null, "inf" or "-inf".`, shortened(text))
	}
	number, err := strconv.ParseFloat(string(text), 64)
	if err != nil {
		return 0, wrong("The number %s is beyond what can be worked with, about 1.8e308.", shortened(text))
	}
	return number, nil
}

// inSI converts a number as written, exactly and rounded once.
func inSI(text json.RawMessage, number float64, unit quantity.Unit) float64 {
	if unit == (quantity.Unit{}) || math.IsInf(number, 0) || number == 0 && !unit.Affine() {
		return number
	}
	exact, ok := new(big.Rat).SetString(string(text))
	if !ok {
		exact = new(big.Rat)
		exact.SetFloat64(number)
	}
	return unit.ToSI(exact)
}
