package rules

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"gapsheet/vehicle"
)

// readRows reads the rows as written, from the table itself or from the CSV file it names.
func (l *loader) readRows(t *Table, f *fields) []rawRow {
	switch inline, beside := f.has("rows"), f.has("rows_from"); {
	case inline && beside:
		f.fault("rows-twice", f.block.Body.Attributes["rows_from"].NameRange, "Rows said in two ways", fmt.Sprintf(
			"The %s has rows and rows_from. Keep one of the two.", f.what))
		return nil
	case beside:
		return l.rowsBeside(t, f)
	case inline:
		return f.rowsInline(t)
	}
	f.fault("key-missing", vehicle.HeaderOf(f.block), "Something is missing", fmt.Sprintf(
		"The %s has no rows. Write rows = [[\"45 mm\", \"2.5 mm\"]], or rows_from = \"sizes.csv\" for a file beside the rulebook.", f.what))
	return nil
}

// rowsInline reads rows = [[…], […]].
func (f *fields) rowsInline(t *Table) []rawRow {
	list, ok := f.value("rows").(*hclsyntax.TupleConsExpr)
	if !ok || len(list.Exprs) == 0 {
		f.fault("rows-form", f.at("rows"), "Rows are wanted", fmt.Sprintf(
			"Found %s as rows of the %s. Write a list with a list for each row: [[\"45 mm\", \"2.5 mm\"], [\"50 mm\", \"2 mm\"]].",
			emptyOr(f.value("rows")), f.what))
		return nil
	}
	var rows []rawRow
	for _, e := range list.Exprs {
		row, ok := e.(*hclsyntax.TupleConsExpr)
		if !ok {
			f.fault("rows-form", e.Range(), "A row is wanted", fmt.Sprintf(
				"Found %s among the rows of the %s. Write each row as a list in square brackets.", vehicle.Describe(e), f.what))
			continue
		}
		if len(row.Exprs) != len(t.Columns) {
			f.fault("row-length", e.Range(), "Cells do not fit the columns", fmt.Sprintf(
				"Found a row of %d for the %d columns %s. Write one cell for each.", len(row.Exprs), len(t.Columns), listOf(columnNames(t), "and")))
			continue
		}
		raw := rawRow{at: e.Range()}
		for _, cell := range row.Exprs {
			raw.cells = append(raw.cells, f.cellInline(cell))
		}
		rows = append(rows, raw)
	}
	return rows
}

// emptyOr describes an expression, an empty list as such.
func emptyOr(e hclsyntax.Expression) string {
	if list, ok := e.(*hclsyntax.TupleConsExpr); ok && len(list.Exprs) == 0 {
		return "an empty list"
	}
	return vehicle.Describe(e)
}

// cellInline reads a cell: a text, or a plain number, true or false without quotes. A cell
// that is none of these has no place and has been reported.
func (f *fields) cellInline(e hclsyntax.Expression) rawCell {
	whole := e.Range()
	all := func(int, int) hcl.Range { return whole }
	if number, ok := f.source.Number(e); ok {
		return rawCell{text: number, place: all, all: whole}
	}
	if literal, ok := e.(*hclsyntax.LiteralValueExpr); ok && !literal.Val.IsNull() && literal.Val.Type() == cty.Bool {
		return rawCell{text: f.writtenAt(whole), place: all, all: whole}
	}
	text, at, fault := f.source.Text(e)
	if fault != nil {
		f.report(fault)
		return rawCell{}
	}
	return rawCell{text: text, place: at.Range, all: whole}
}

// writtenAt is the text of the file at a range.
func (f *fields) writtenAt(at hcl.Range) string {
	return string(f.source.Bytes[at.Start.Byte:at.End.Byte])
}

// readCells reads the cells of the rows into the table.
func (l *loader) readCells(t *Table, rows []rawRow) {
	places := map[string]hcl.Range{}
	for _, raw := range rows {
		row, good := l.readRow(t, raw)
		if !good {
			continue
		}
		said := rowText(row)
		if first, twice := places[said]; twice {
			l.report(vehicle.SaidTwice(raw.at, "the same row", first))
			continue
		}
		places[said] = raw.at
		t.Rows = append(t.Rows, row)
	}
}

// readRow reads the cells of a row.
func (l *loader) readRow(t *Table, raw rawRow) (row []TableCell, good bool) {
	row, good = make([]TableCell, len(raw.cells)), true
	for i, cell := range raw.cells {
		if cell.place == nil {
			good = false
			continue
		}
		if fault := t.readCell(&row[i], i, cell); fault != nil {
			l.report(fault)
			good = false
		}
	}
	if good {
		if fault := t.bandFault(row, raw.at); fault != nil {
			l.report(fault)
			good = false
		}
	}
	return row, good
}

// rowText is what a row says, whatever units and capitals it is written in.
func rowText(row []TableCell) string {
	var out strings.Builder
	for _, c := range row {
		fmt.Fprintf(&out, "%t|%v|%v|%q|%d|%t\n", c.Empty, c.Figure.Reading, c.Days, vehicle.FoldText(c.Text), c.Choice, c.Truth)
	}
	return out.String()
}

// isBand reports whether a column holds an end of the table's bands.
func (t *Table) isBand(column int) bool {
	return t.Band != nil && (t.Band.Low == column || t.Band.High == column)
}

// trimmed is a cell's text without the blanks around it.
func (c rawCell) trimmed() string { return strings.TrimSpace(c.text) }
