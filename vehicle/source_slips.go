package vehicle

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"

	"github.com/hashicorp/hcl/v2"
)

// printersQuotes are the quotation marks that a word processor puts in place of straight
// ones.
const printersQuotes = "“”„‟«»‘’‚"

// isPrintersQuote reports whether a fault of the parser is about such a mark.
func (s *Source) isPrintersQuote(d *hcl.Diagnostic) bool {
	at := s.Bytes[min(d.Subject.Start.Byte, len(s.Bytes)):min(d.Subject.End.Byte, len(s.Bytes))]
	return len(at) > 1 && strings.Contains(printersQuotes, string(at))
}

// printersQuotesOnce puts one fault in place of all those that the parser has for printers'
// quotation marks and for the lines that they stand in. It leaves the others.
func (s *Source) printersQuotesOnce(found hcl.Diagnostics) (rest hcl.Diagnostics, fault *hcl.Diagnostic) {
	lines, marks := map[int]bool{}, map[int]bool{} // by line, and by byte: the parser tells some twice
	for _, d := range found {
		if s.isPrintersQuote(d) {
			lines[d.Subject.Start.Line], marks[d.Subject.Start.Byte] = true, true
			if fault == nil || d.Subject.Start.Byte < fault.Subject.Start.Byte {
				fault = Fault("printers-quotes", *d.Subject, "Quotation marks of a word processor", "")
			}
		}
	}
	if fault == nil {
		return found, nil
	}
	for _, d := range found {
		if !lines[d.Subject.Start.Line] {
			rest = append(rest, d)
		}
	}
	count := "once"
	if len(marks) > 1 {
		count = fmt.Sprintf("%d of them", len(marks))
	}
	at := s.Bytes[fault.Subject.Start.Byte:fault.Subject.End.Byte]
	fault.Detail = fmt.Sprintf("Found the curly quotation mark %s (%s in the file). Texts and labels stand in straight double quotes (\"): "+
		"replace every curly one, and edit the file in a plain text editor, which leaves them straight.", at, count)
	return rest, fault
}

// bareLabel is a line that begins a block whose label has no quotes and is no plain word.
var bareLabel = regexp.MustCompile(`^([A-Za-z_][A-Za-z0-9_-]*)[ \t]+([0-9][^ \t"{}=]*)[ \t]*\{`)

// labelWithoutQuotes is the fault of a block such as tube 1 { at the beginning of a line;
// nil for any other line.
func (s *Source) labelWithoutQuotes(at hcl.Range) *hcl.Diagnostic {
	from := min(at.Start.Byte, len(s.Bytes))
	line, _, _ := bytes.Cut(s.Bytes[from:], []byte("\n"))
	words := bareLabel.FindSubmatchIndex(line)
	if words == nil {
		return nil
	}
	name, label := line[words[2]:words[3]], line[words[4]:words[5]]
	where := placeAt(s.Name, s.Bytes, from+words[4], len(label))
	where.End.Column = where.Start.Column + len([]rune(string(label)))
	return Fault("label-without-quotes", where, "A label without quotes", fmt.Sprintf(
		"Found %s behind %s. A label stands in double quotes: %s %s {.", Quote(string(label)), name, name, Quote(string(label))))
}

// sayHidden adds to the last of the faults, which leave a file unread, that they hide what
// else is wrong in it. A file that is no text at all hides nothing.
func sayHidden(faults hcl.Diagnostics) hcl.Diagnostics {
	last := faults[len(faults)-1]
	switch CodeOf(last) {
	case "file-too-large", "binary-file":
		return faults
	}
	these := "this"
	if len(faults) > 1 {
		these = "these"
	}
	last.Detail += fmt.Sprintf(" Nothing else in the file was looked at: mend %s first, more may follow.", these)
	return faults
}
