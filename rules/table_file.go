package rules

import (
	"bytes"
	"encoding/csv"
	"sort"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
	"github.com/hashicorp/hcl/v2"
)

// csvFile is a CSV file beside a rulebook (RFC 4180, in UTF-8): commas, double quotes
// where a cell holds a comma, a first line with the names of the columns.
type csvFile struct {
	shown string  // path to show
	data  []byte  // as read; ranges count bytes from its start, a byte order mark included
	lines []int   // byte where each line starts, after the byte order mark
	last  hcl.Pos // the place that was worked out last: the next one is mostly near
}

// newCSVFile notes where the lines of a file start.
func newCSVFile(shown string, data []byte) *csvFile {
	start := 0
	if bytes.HasPrefix(data, []byte("\xef\xbb\xbf")) { // some spreadsheets begin with it
		start = 3
	}
	c := &csvFile{shown: shown, data: data, lines: []int{start}}
	for i, b := range data {
		if b == '\n' {
			c.lines = append(c.lines, i+1)
		}
	}
	return c
}

// at is the range between two bytes of the file.
func (c *csvFile) at(start, end int) hcl.Range {
	return hcl.Range{Filename: c.shown, Start: c.place(start), End: c.place(end)}
}

// place is the line and column of a byte. Columns count grapheme clusters, as in hcl.
func (c *csvFile) place(offset int) hcl.Pos {
	line := sort.SearchInts(c.lines, offset+1)
	line = max(line, 1)
	at := hcl.Pos{Line: line, Column: 1, Byte: c.lines[line-1]}
	if c.last.Line == line && c.last.Byte <= offset {
		at = c.last
	}
	at.Column += columnsOf(c.data[at.Byte:max(at.Byte, offset)])
	at.Byte = offset
	c.last = at
	return at
}

// columnsOf counts the grapheme clusters of a piece of a line. In plain ASCII each
// character is one, but for CR LF, which ends a line.
func columnsOf(text []byte) int {
	for _, b := range text {
		if b >= utf8.RuneSelf || b == '\r' {
			clusters, _ := textseg.TokenCount(text, textseg.ScanGraphemeClusters)
			return clusters
		}
	}
	return len(text)
}

// rowAt gives the first cells of a line, at most most, their places.
func (c *csvFile) rowAt(r *csv.Reader, record []string, most int) rawRow {
	var raw rawRow
	for i, text := range record[:min(len(record), most)] {
		line, column := r.FieldPos(i)
		raw.cells = append(raw.cells, c.cellAt(text, c.lines[line-1]+column-1))
	}
	raw.at = hcl.RangeBetween(raw.cells[0].all, raw.cells[len(raw.cells)-1].all)
	return raw
}

// cellAt is a cell whose writing starts at a byte, quote included. The text of a cell in
// quotes has doubled quotes undone, so a place in it is that of the whole cell.
func (c *csvFile) cellAt(text string, start int) rawCell {
	if start >= len(c.data) || c.data[start] != '"' {
		return rawCell{
			text: text,
			all:  c.at(start, start+len(text)),
			place: func(from, to int) hcl.Range {
				return c.at(start+bytesOf(text, from), start+bytesOf(text, to))
			},
		}
	}
	all := c.at(start, c.closing(start))
	return rawCell{text: text, all: all, place: func(int, int) hcl.Range { return all }}
}

// closing is the byte after the quote that closes the cell whose quote opens at start.
func (c *csvFile) closing(start int) int {
	for at := start + 1; at < len(c.data); at++ {
		if c.data[at] != '"' {
			continue
		}
		if at+1 == len(c.data) || c.data[at+1] != '"' {
			return at + 1
		}
		at++
	}
	return len(c.data)
}

// bytesOf is how many bytes the first n runes of a text take.
func bytesOf(text string, n int) int {
	for i := range text {
		if n == 0 {
			return i
		}
		n--
	}
	return len(text)
}
