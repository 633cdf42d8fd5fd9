package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// lineWorker works out the lines of try --lines. Bench and scope may be shared.
type lineWorker struct {
	bench *engine.Bench
	scope *rules.Scope
}

// The answers, by kind. Fields stand in the order in which they are written.
type (
	truthAnswer struct {
		ID      json.RawMessage `json:"id,omitempty"`
		Kind    string          `json:"kind"`
		Truth   string          `json:"truth"`
		Missing []string        `json:"missing"`
		OpenBy  []string        `json:"open_by,omitempty"` // what keeps it open where nothing is missing
	}
	numberAnswer struct {
		ID   json.RawMessage `json:"id,omitempty"`
		Kind string          `json:"kind"`
		Low  *float64        `json:"low"`  // null: no bound
		High *float64        `json:"high"` // null: no bound
		Unit string          `json:"unit,omitempty"`
		None bool            `json:"may_not_exist,omitempty"` // such as the least of a list that may be empty
	}
	dateAnswer struct {
		ID   json.RawMessage `json:"id,omitempty"`
		Kind string          `json:"kind"`
		From *string         `json:"from"`
		To   *string         `json:"to"`
		None bool            `json:"may_not_exist,omitempty"`
	}
	textAnswer struct {
		ID   json.RawMessage `json:"id,omitempty"`
		Kind string          `json:"kind"`
		Text *string         `json:"text"` // null: not known
	}
	listAnswer struct {
		ID   json.RawMessage `json:"id,omitempty"`
		Kind string          `json:"kind"`
		Of   []any           `json:"of"`
		More bool            `json:"may_differ,omitempty"` // members may be missing or too many
	}
	errorAnswer struct {
		ID    json.RawMessage `json:"id,omitempty"`
		Line  int             `json:"line,omitempty"` // number of the line, where it has no id to tell it by
		Error string          `json:"error"`
	}
)

func (w *lineWorker) answer(number int, line []byte) []byte {
	q, err := readQuestion(line)
	if err != nil {
		return encodeError(number, q.id, err.Error())
	}
	answer, err := w.workOut(q)
	if err != nil {
		return encodeError(number, q.id, err.Error())
	}
	return encodeLine(answerOf(q.id, answer))
}

// encodeError answers a line with an error.
func encodeError(number int, id json.RawMessage, sentence string) []byte {
	if len(id) > 0 {
		number = 0 // the id tells which line it is
	}
	return encodeLine(errorAnswer{id, number, sentence})
}

func (w *lineWorker) workOut(q question) (engine.Answer, error) {
	tree, faults := engine.CheckGiven(q.formula, w.scope, q.given)
	if len(faults) > 0 {
		told := make([]string, len(faults))
		for i, fault := range faults {
			told[i] = fault.Error()
		}
		return engine.Answer{}, wrong("%s", strings.Join(told, " "))
	}
	answer, _, err := w.bench.Try(tree, q.formula, q.given, false)
	if err != nil {
		return answer, wrong("It cannot be worked out: %v.", err)
	}
	if q.unit != "" && isFigure(answer.Is) {
		if answer.Unit, err = unitFor(q.unit, answer); err != nil {
			return answer, err
		}
		for i := range answer.List {
			answer.List[i].Unit = answer.Unit
		}
	}
	return answer, nil
}

// isFigure reports whether an answer has a unit: a number, or a list of numbers. The unit
// asked for means nothing to any other answer.
func isFigure(is rules.Type) bool {
	return is.Kind == rules.Number || is.Kind == rules.List && is.Item != nil && is.Item.Kind == rules.Number
}

func (w *lineWorker) tooLong(number int) []byte {
	return encodeError(number, nil, fmt.Sprintf("The line is longer than %d bytes (1 MB). Split it up.", longestLine))
}

func (w *lineWorker) failed(number int, line []byte) []byte {
	q, _ := readQuestion(line)
	return encodeError(number, q.id, "This is a fault of gapsheet itself, not of the line. Please report it with the line.")
}

// answerOf puts an answer into the shape of its kind.
func answerOf(id json.RawMessage, a engine.Answer) any {
	switch a.Is.Kind {
	case rules.Truth:
		missing := a.Missing
		if missing == nil {
			missing = []string{}
		}
		return truthAnswer{id, "truth", a.Truth.String(), missing, openBy(a)}
	case rules.Number:
		unit := a.Unit
		if unit == (quantity.Unit{}) {
			unit = quantity.CoherentUnit(a.Is.Dimension)
		}
		return numberAnswer{id, "number", numberIn(unit, a.Range.Low), numberIn(unit, a.Range.High), unit.Name(), !a.Known}
	case rules.Date:
		return dateAnswer{id, "date", dayAt(a.Range.Low), dayAt(a.Range.High), !a.Known}
	case rules.List:
		of := []any{}
		for _, member := range a.List {
			of = append(of, answerOf(nil, member))
		}
		return listAnswer{id, "list", of, !a.Known}
	}
	if !a.Known {
		return textAnswer{id, "text", nil}
	}
	return textAnswer{id, "text", &a.Text}
}

// openBy says what keeps a truth open where nothing that is missing does.
func openBy(a engine.Answer) []string {
	if a.Truth != quantity.Open || len(a.Missing) > 0 {
		return nil
	}
	var reasons []string
	for _, cause := range a.Causes {
		if reason := report.OpenBy(cause); !slices.Contains(reasons, reason) {
			reasons = append(reasons, reason)
		}
	}
	return reasons
}

// numberIn is a number in a unit, nil where there is no bound.
func numberIn(unit quantity.Unit, v float64) *float64 {
	if unit != (quantity.Unit{}) {
		v = unit.FromSI(v)
	}
	if math.IsInf(v, 0) || math.IsNaN(v) {
		return nil
	}
	v += 0 // of the two zeros, the one without a sign
	return &v
}

// dayAt is the day of a day number, nil where there is no bound.
func dayAt(v float64) *string {
	if math.IsInf(v, 0) || math.Abs(v) > 1<<40 {
		return nil
	}
	day := quantity.Day(v).String()
	return &day
}

// encodeLine writes an answer on one line.
func encodeLine(answer any) []byte {
	var line bytes.Buffer
	encoder := json.NewEncoder(&line)
	encoder.SetEscapeHTML(false)
	if err := encoder.Encode(answer); err != nil {
		panic(fmt.Errorf("an answer that is no JSON: %w", err))
	}
	return report.SafeJSON(bytes.TrimSuffix(line.Bytes(), []byte("\n")))
}
