package rules

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// rowsBeside reads the rows of a table from the file that rows_from names.
func (l *loader) rowsBeside(t *Table, f *fields) []rawRow {
	name, ok := f.text("rows_from")
	if !ok {
		return nil
	}
	file := strings.TrimSpace(name.text)
	if !fs.ValidPath(file) || file == "." || strings.ContainsAny(file, `\:`) {
		f.fault("path-outside", name.all, "A file out of bounds", fmt.Sprintf(
			"Found %s as rows_from. Write the path of a file in the folder of the rulebook, with / between folders and without ..: \"sizes.csv\".",
			vehicle.Quote(name.text)))
		return nil
	}
	shown := path.Join(path.Dir(f.source.Name), file)
	data, fault := vehicle.ReadBeside(l.folder, path.Join(l.dir, file), shown, "table", name.all)
	if fault != nil {
		l.report(fault)
		return nil
	}
	l.beside[file] = data
	return l.rowsOf(t, newCSVFile(shown, data))
}

// rowsOf reads the rows of a file and puts their cells in the order of the columns.
func (l *loader) rowsOf(t *Table, c *csvFile) []rawRow {
	r := csv.NewReader(bytes.NewReader(c.data[c.lines[0]:]))
	r.FieldsPerRecord = -1
	var rows []rawRow
	var order []int // for each cell of a line, its column
	for lines := 0; ; lines++ {
		record, err := r.Read()
		if errors.Is(err, io.EOF) {
			if lines < 2 {
				l.report(c.noRows(t))
			}
			return rows
		}
		if err != nil {
			l.report(c.formFault(err))
			return nil
		}
		raw := c.rowAt(r, record, mostColumns)
		if order == nil {
			if order = l.headerOrder(t, raw); order == nil {
				return nil
			}
			continue
		}
		if len(record) != len(order) {
			l.report(c.lengthFault(t, raw, len(record)))
			continue
		}
		row := rawRow{cells: make([]rawCell, len(order)), at: raw.at}
		for i, cell := range raw.cells {
			row.cells[order[i]] = cell
		}
		rows = append(rows, row)
	}
}

// noRows is the fault for a file with a first line at most.
func (c *csvFile) noRows(t *Table) *hcl.Diagnostic {
	return vehicle.Fault("rows-form", c.at(c.lines[0], c.lines[0]), "A table without rows", fmt.Sprintf(
		"Found no row in %s. Write a first line with the names of the columns (%s), and a line for each row.",
		vehicle.Quote(c.shown), listOf(columnNames(t), "and")))
}

// formFault puts a fault in the form of the file in words.
func (c *csvFile) formFault(err error) *hcl.Diagnostic {
	start := c.lines[0]
	var parse *csv.ParseError
	if errors.As(err, &parse) {
		start = min(c.lines[parse.Line-1]+parse.Column-1, len(c.data))
	}
	return vehicle.Fault("csv-form", c.at(start, min(start+1, len(c.data))), "Not a table that can be read",
		"Found a double quote out of place. A cell that holds a comma or a quote stands in double quotes, "+
			"and a quote inside it is doubled: \"1 3/4\"\" tube\".")
}

// headerOrder reads the first line: for each of its cells the column that it names. Nil
// when the line does not name every column once.
func (l *loader) headerOrder(t *Table, header rawRow) []int {
	var order []int
	good := true
	first := map[int]hcl.Range{}
	for _, cell := range header.cells {
		name := cell.trimmed()
		i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Name == name })
		if before, twice := first[i]; twice {
			l.report(vehicle.SaidTwice(cell.all, "column "+name, before))
			good = false
		} else if i < 0 {
			l.report(vehicle.Fault("csv-column", cell.all, "Unknown column", fmt.Sprintf(
				"Found %s in the first line, but the table has the columns %s. %s", vehicle.Quote(name), listOf(columnNames(t), "and"), separatorAdvice(name))))
			good = false
		} else {
			first[i] = cell.all
		}
		order = append(order, i)
	}
	for i, c := range t.Columns {
		if _, there := first[i]; !there && good {
			l.report(vehicle.Fault("csv-column", header.at, "A column is missing", fmt.Sprintf(
				"Found no column %s in the first line. Write %s there, separated by commas.", c.Name, listOf(columnNames(t), "and"))))
			good = false
		}
	}
	if !good {
		return nil
	}
	return order
}

// separatorAdvice says what to do about a name that is no column.
func separatorAdvice(name string) string {
	if strings.ContainsAny(name, ";\t") {
		return "Separate the columns by commas; a decimal comma is written as a point."
	}
	return "Add it to columns, or take it out of the file."
}

// lengthFault is the fault of a line that has not one cell for each column.
func (c *csvFile) lengthFault(t *Table, raw rawRow, length int) *hcl.Diagnostic {
	return vehicle.Fault("row-length", raw.at, "Cells do not fit the columns", fmt.Sprintf(
		"Found a line of %d for the %d columns %s. Write one cell for each, and a cell with a comma in it in double quotes.",
		length, len(t.Columns), listOf(columnNames(t), "and")))
}
