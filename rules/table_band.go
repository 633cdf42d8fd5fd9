package rules

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// bandEnds are the ends that a band can have. The lower ones stand before the upper ones.
var bandEnds = []string{"from", "above", "to", "below"}

// readBands reads bands = { from = "mass_from", below = "mass_below" }: which columns hold
// the ends of the rows' bands. from and to belong to the band, above and below do not.
func (l *loader) readBands(t *Table, f *fields) *Band {
	if !f.has("bands") {
		return nil
	}
	band := &Band{Low: -1, High: -1}
	for _, item := range f.group("bands", `{ from = "mass_from", to = "mass_to" }`) {
		end := slices.Index(bandEnds, item.name)
		if end < 0 {
			f.fault("band-end", item.at, "Not an end of a band", fmt.Sprintf(
				"Found %s in bands of the %s. A band goes from or above a column, to or below a column.", vehicle.Quote(item.name), f.what))
			continue
		}
		column, ok := f.bandColumn(t, item)
		if !ok {
			continue
		}
		side, open := &band.Low, &band.LowOpen
		if end >= 2 {
			side, open = &band.High, &band.HighOpen
		}
		if *side >= 0 {
			f.fault("band-end", item.at, "An end said in two ways", fmt.Sprintf(
				"Found %s beside the other word for the same end. Write from or above, and to or below.", item.name))
			continue
		}
		*side, *open = column, end%2 == 1
	}
	if band.Low < 0 && band.High < 0 {
		return nil
	}
	if band.Low >= 0 && band.High >= 0 && !sameKind(t.Columns[band.Low].Is, t.Columns[band.High].Is) {
		f.fault("band-kind", f.at("bands"), "Ends of different kinds", fmt.Sprintf(
			"Found the columns %s and %s as ends of one band, but they do not hold figures of one kind. Give both columns the kind of the same particular.",
			t.Columns[band.Low].Name, t.Columns[band.High].Name))
		return nil
	}
	return band
}

// bandColumn finds the column that holds an end of a band.
func (f *fields) bandColumn(t *Table, item item) (column int, ok bool) {
	name, ok := f.textOf("bands", item.value)
	if !ok {
		return 0, false
	}
	column = slices.IndexFunc(t.Columns, func(c Column) bool { return c.Name == name.text })
	if column < 0 {
		f.fault("band-column", name.all, "No such column", fmt.Sprintf(
			"Found %s as an end of a band, but the columns are %s. Name one of them.", vehicle.Quote(name.text), listOf(columnNames(t), "and")))
		return 0, false
	}
	if kind := t.Columns[column].Is.Kind; kind != Number && kind != Date {
		f.fault("band-kind", name.all, "Not an end of a band", fmt.Sprintf(
			"Found the column %s as an end of a band, but it holds neither figures nor dates. Name a column that does.", name.text))
		return 0, false
	}
	return column, true
}

// sameKind reports whether values of two types can be compared.
func sameKind(a, b Type) bool { return a.Kind == b.Kind && a.Dimension == b.Dimension }

// bandFault reports a row whose band holds nothing. An end that is not there is no bound.
func (t *Table) bandFault(row []TableCell, at hcl.Range) *hcl.Diagnostic {
	b := t.Band
	if b == nil || b.Low < 0 || b.High < 0 || row[b.Low].Empty || row[b.High].Empty {
		return nil
	}
	low, high := row[b.Low].order(), row[b.High].order()
	if low < high || low == high && !b.LowOpen && !b.HighOpen {
		return nil
	}
	return vehicle.Fault("band-empty", at, "A band that holds nothing", fmt.Sprintf(
		"Found a row whose band begins with %s and ends with %s. Write the lower end first, or leave an end empty (\"\") where there is no bound.",
		t.Columns[b.Low].Name, t.Columns[b.High].Name))
}

// order is where a cell of a band stands among others of its kind.
func (c TableCell) order() float64 {
	if c.Days.From != 0 || c.Days.To != 0 {
		return float64(c.Days.From)
	}
	return c.Figure.Reading
}
