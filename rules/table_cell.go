package rules

import (
	"fmt"
	"math"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// readCell reads a cell as its column wants it. Every cell is a single value: a limit with
// a tolerance, or one known to its month only, would be no limit.
func (t *Table) readCell(cell *TableCell, column int, raw rawCell) *hcl.Diagnostic {
	c := t.Columns[column]
	cell.Range = raw.all
	if raw.trimmed() == "" {
		cell.Empty = t.isBand(column)
		if cell.Empty {
			return nil
		}
		return vehicle.Fault("cell-empty", raw.all, "An empty cell", fmt.Sprintf(
			"Found nothing in the column %s. Write its value; only the ends of bands can be left empty, where there is no bound.", c.Name))
	}
	switch c.Is.Kind {
	case Number:
		return c.readFigure(cell, raw, t.isBand(column))
	case Date:
		return c.readDay(cell, raw)
	case Choice:
		return c.readChoice(cell, raw)
	case Truth:
		return c.readTruth(cell, raw)
	}
	return c.readText(cell, raw)
}

// readText reads a text of one line.
func (c Column) readText(cell *TableCell, raw rawCell) *hcl.Diagnostic {
	cell.Text = raw.trimmed()
	if strings.ContainsAny(cell.Text, "\r\n") {
		return vehicle.Fault("one-line-wanted", raw.all, "Several lines where one is wanted", fmt.Sprintf(
			"Found a text of several lines in the column %s. Write it on one.", c.Name))
	}
	return nil
}

// readFigure reads a figure of the column's dimension, within what is plausible.
func (c Column) readFigure(cell *TableCell, raw rawCell, band bool) *hcl.Diagnostic {
	figure, fault := quantity.ParseFigure(raw.text)
	if fault != nil {
		return vehicle.FigureFault(fault, raw.place)
	}
	switch {
	case !isOne(figure):
		return vehicle.Fault("one-figure-wanted", raw.all, "One figure is wanted", fmt.Sprintf(
			"Found %s in the column %s. A limit is a single figure: write it without a tolerance or a sign.", vehicle.Quote(raw.trimmed()), c.Name))
	case figure.Unit.Dimension() != c.Is.Dimension || c.Like != nil && figure.Unit.Convertible() != c.Like.Unit.Convertible():
		return c.wrongUnit(figure, raw)
	case c.Is.Whole && (figure.Unit != quantity.Unit{} || figure.Reading < 0 || figure.Reading != math.Trunc(figure.Reading)):
		return vehicle.Fault("count-wanted", raw.all, "A count is wanted", fmt.Sprintf(
			"Found %s in the column %s. Write a whole number.", vehicle.Quote(raw.trimmed()), c.Name))
	case c.Like != nil && !c.Like.IsPlausible(figure.Reading):
		advice := "Look at the number and its unit."
		if band {
			advice = "Leave the end of the band empty (\"\") where there is no bound."
		}
		return vehicle.Fault("not-plausible", raw.all, "A figure out of all proportion", fmt.Sprintf(
			"Found %s in the column %s, but %s is %s. %s", figure, c.Name, c.Like.Name, c.Like.Plausible.In(c.Like.Unit, -1), advice))
	}
	cell.Figure = figure
	return nil
}

// wrongUnit is the fault for a figure that does not measure what its column does.
func (c Column) wrongUnit(figure quantity.Figure, raw rawCell) *hcl.Diagnostic {
	if figure.Unit == (quantity.Unit{}) && c.Like != nil {
		return vehicle.Fault("unit-missing", raw.all, "A unit is missing", fmt.Sprintf(
			"Found %s without a unit in the column %s. %s", vehicle.Quote(raw.trimmed()), c.Name, c.Like.UnitAdvice(figure)))
	}
	if c.Like == nil || c.Like.Unit == (quantity.Unit{}) {
		return vehicle.Fault("wrong-dimension", raw.all, "A unit too many", fmt.Sprintf(
			"Found %s in the column %s, which holds plain numbers. Write it without a unit.", vehicle.Quote(raw.trimmed()), c.Name))
	}
	return vehicle.Fault("wrong-dimension", raw.all, "A unit of another kind", fmt.Sprintf(
		"Found %s in the column %s, which holds %s. Write it in a unit such as %s.",
		vehicle.Quote(raw.trimmed()), c.Name, c.Is, c.Like.Unit.Name()))
}

// readDay reads a day.
func (c Column) readDay(cell *TableCell, raw rawCell) *hcl.Diagnostic {
	days, fault := quantity.ParseDays(raw.text)
	switch {
	case fault != nil:
		return vehicle.FigureFault(fault, raw.place)
	case days.Precision != quantity.ToDay:
		return vehicle.Fault("day-wanted", raw.all, "A day is wanted", fmt.Sprintf(
			"Found %s in the column %s. Write the day, as in \"2027-12-31\".", vehicle.Quote(raw.trimmed()), c.Name))
	case c.Like != nil && (days.From < c.Like.PlausibleDays.From || days.To > c.Like.PlausibleDays.To):
		return vehicle.Fault("not-plausible", raw.all, "A date out of all proportion", fmt.Sprintf(
			"Found %s in the column %s, but %s lies from %s to %s. Look at the year.",
			days, c.Name, c.Like.Name, c.Like.PlausibleDays.From, c.Like.PlausibleDays.To))
	}
	cell.Days = days
	return nil
}

// readChoice reads one of the choices of the column's particular, or a synonym of one.
func (c Column) readChoice(cell *TableCell, raw rawCell) *hcl.Diagnostic {
	choice := c.Is.Choices.Find(raw.text)
	if choice < 0 {
		return vehicle.Fault("unknown-choice", raw.all, "Unknown choice", fmt.Sprintf(
			"Found %s in the column %s. %s", vehicle.Quote(raw.trimmed()), c.Name, c.Is.Choices.Advice(raw.text)))
	}
	cell.Choice = choice
	return nil
}

// readTruth reads true or false, as spreadsheets write it too.
func (c Column) readTruth(cell *TableCell, raw rawCell) *hcl.Diagnostic {
	switch strings.ToLower(raw.trimmed()) {
	case "true":
		cell.Truth = true
	case "false":
	default:
		return vehicle.Fault("truth-wanted", raw.all, "true or false is wanted", fmt.Sprintf(
			"Found %s in the column %s. Write true or false.", vehicle.Quote(raw.trimmed()), c.Name))
	}
	return nil
}
