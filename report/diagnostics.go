package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// markShape is what a faulty piece is underlined with.
const markShape = "="

// snippetIndent is how far the line of the file is moved in.
const snippetIndent = 6

// Diagnostics writes what is wrong with files, faults first and then remarks, each in the
// order of files and places. Of each it gives the place, the line with the faulty piece
// underlined, what was found and what to write instead. file hands out the bytes of a file
// by its shown name, nil where they are not at hand; then the line is left out. A fault
// found twice, as when two rulebooks read one sheet, is written once.
func Diagnostics(screen *Screen, found hcl.Diagnostics, file func(name string) []byte) error {
	p := screen.page()
	faults, remarks := sortDiagnostics(found)
	for i, d := range faults {
		writeDiagnostic(p, d, nth("fault", i, len(faults)), file)
	}
	for i, d := range remarks {
		writeDiagnostic(p, d, nth("remark", i, len(remarks)), file)
	}
	return p.done()
}

func nth(word string, index, of int) string {
	if of == 1 {
		return word
	}
	return fmt.Sprintf("%s %d of %d", word, index+1, of)
}

func sortDiagnostics(found hcl.Diagnostics) (faults, remarks hcl.Diagnostics) {
	seen := map[string]bool{}
	for _, d := range found {
		key := fmt.Sprint(d.Severity, d.Subject, "\x00", d.Summary, "\x00", d.Detail)
		if seen[key] {
			continue
		}
		seen[key] = true
		if d.Severity == hcl.DiagError {
			faults = append(faults, d)
		} else {
			remarks = append(remarks, d)
		}
	}
	byPlace := func(a, b *hcl.Diagnostic) int {
		return cmp.Or(
			strings.Compare(filenameOf(a), filenameOf(b)),
			cmp.Compare(byteOf(a), byteOf(b)),
		)
	}
	slices.SortStableFunc(faults, byPlace)
	slices.SortStableFunc(remarks, byPlace)
	return faults, remarks
}

func filenameOf(d *hcl.Diagnostic) string {
	if d.Subject == nil {
		return ""
	}
	return d.Subject.Filename
}

func byteOf(d *hcl.Diagnostic) int {
	if d.Subject == nil {
		return -1
	}
	return d.Subject.Start.Byte
}

func writeDiagnostic(p *page, d *hcl.Diagnostic, word string, file func(string) []byte) {
	head := p.paint.With(Strong, word)
	if place := Place(d.Subject); place != "" {
		head += "  " + place
	}
	if code := vehicle.CodeOf(d); code != "" {
		head += "  " + p.paint.With(Faint, Safe(string(code)))
	}
	p.raw(head)
	p.prose(2, Strong, d.Summary)
	if d.Subject != nil {
		writeSnippet(p, file(d.Subject.Filename), *d.Subject)
	}
	p.prose(2, Plain, d.Detail)
	p.blank()
}

func writeSnippet(p *page, file []byte, at hcl.Range) {
	if file == nil || at.Start.Line < 1 {
		return
	}
	shown, ok := snippetOf(file, at, p.width-snippetIndent)
	if !ok {
		return
	}
	indent := strings.Repeat(" ", snippetIndent)
	p.raw(indent + shown.text)
	length := min(shown.markLength, max(1, p.width-snippetIndent-shown.markAt))
	p.raw(indent + strings.Repeat(" ", shown.markAt) + p.paint.With(Mark, strings.Repeat(markShape, length)))
}

// Place writes a range as "file:line:column", or as the file alone where a whole file or
// folder is meant; "" for no place. Columns count characters as a reader sees them.
func Place(at *hcl.Range) string {
	switch {
	case at == nil || at.Filename == "":
		return ""
	case at.Start.Line < 1:
		return Safe(at.Filename)
	}
	return fmt.Sprintf("%s:%d:%d", Safe(at.Filename), at.Start.Line, at.Start.Column)
}
