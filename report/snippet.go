package report

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
	"github.com/hashicorp/hcl/v2"
)

// tabStop is how far apart tab stops are shown in a line of a file.
const tabStop = 4

// reach is how many bytes of a line are looked at on either side of a faulty piece. It
// bounds the work on a file that is one enormous line; no screen shows more.
const reach = 1000

// cell is one grapheme cluster of a line as it is shown.
type cell struct {
	text  string // made safe, tabs spread out
	width int
	from  int // its first byte in the file
}

// snippet is the part of a line that holds a faulty piece, as it is shown: the text, and
// where under it the mark stands.
type snippet struct {
	text       string
	markAt     int // in cells
	markLength int // in cells, at least 1
}

// snippetOf cuts the line at a range out of a file, to fit into width cells. Of a range of
// several lines it marks the first line to its end. It answers false where the file has no
// such place or nothing but blanks there.
func snippetOf(file []byte, at hcl.Range, width int) (snippet, bool) {
	start := at.Start.Byte
	if start < 0 || start > len(file) {
		return snippet{}, false
	}
	lineStart := 1 + bytes.LastIndexByte(file[:start], '\n')
	lineEnd := len(file)
	if length := bytes.IndexByte(file[start:], '\n'); length >= 0 {
		lineEnd = start + length
	}
	lineEnd = lineStart + len(bytes.TrimRight(file[lineStart:lineEnd], "\r"))
	row := rowOf(file, max(lineStart, start-reach), min(lineEnd, start+reach))
	cutLeft, cutRight := lineStart < start-reach, lineEnd > start+reach
	if !cutLeft {
		row = withoutIndent(row, start)
	}
	if len(row) == 0 {
		return snippet{}, false
	}
	return window(row, start, max(at.End.Byte, start+1), width, cutLeft, cutRight), true
}

// rowOf makes cells of the bytes from from to to, from moved to the start of a character.
func rowOf(file []byte, from, to int) []cell {
	for from < to && !utf8.RuneStart(file[from]) {
		from++
	}
	var row []cell
	column := 0
	for at := from; at < to; {
		size, cluster, err := textseg.ScanGraphemeClusters(file[at:to], true)
		if err != nil || size == 0 {
			size, cluster = 1, file[at:at+1]
		}
		text := Safe(string(cluster))
		if len(cluster) == 1 && cluster[0] == '\t' {
			text = strings.Repeat(" ", tabStop-column%tabStop)
		}
		row = append(row, cell{text: text, width: Width(text), from: at})
		column += Width(text)
		at += size
	}
	return row
}

// withoutIndent leaves the blanks at a line's start out, up to the faulty piece.
func withoutIndent(row []cell, start int) []cell {
	for len(row) > 0 && row[0].from < start && strings.TrimSpace(row[0].text) == "" {
		row = row[1:]
	}
	return row
}

// window picks the part of a row that fits into width cells and shows the faulty piece,
// with some of what stands before it. An ellipsis stands where the row goes on.
func window(row []cell, start, end, width int, cutLeft, cutRight bool) snippet {
	total, before := 0, 0
	for _, c := range row {
		if c.from < start {
			before += c.width
		}
		total += c.width
	}
	first := 0
	if total > width {
		for skip := before - width/3; skip > 0 && first < len(row) && row[first].from < start; first++ {
			skip -= row[first].width
			cutLeft = true
		}
	}
	var out snippet
	var text strings.Builder
	filled, marked := 0, false
	if cutLeft {
		text.WriteString("…")
		filled = 1
	}
	for i, c := range row[first:] {
		room := width - filled
		if c.width > room || c.width == room && (cutRight || first+i+1 < len(row)) {
			cutRight = true
			break
		}
		if c.from >= start && !marked {
			out.markAt, marked = filled, true
		}
		if c.from >= start && c.from < end {
			out.markLength += c.width
		}
		text.WriteString(c.text)
		filled += c.width
	}
	if cutRight {
		text.WriteString("…")
	}
	if !marked {
		out.markAt = filled
	}
	out.text, out.markLength = text.String(), max(out.markLength, 1)
	return out
}
