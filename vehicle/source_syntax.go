package vehicle

import (
	"bytes"
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// syntaxFault is our wording of one of the parser's faults.
type syntaxFault struct {
	code    Code
	summary string
	advice  string // what to write instead
}

// attributeTwice is the parser's title for a name given twice in one block.
const attributeTwice = "Attribute redefined"

// The parser gives its faults no code, so its short titles are the only thing to tell them
// by; a test pins each of them.
var syntaxFaults = map[string]syntaxFault{
	"Invalid argument name":                 {"line-not-understood", "A name in quotes", "Names stand without quotes, only values and labels have them: name = \"value\"."},
	"Unclosed configuration block":          {"not-closed", "A block without its end", "No closing } was found for the block that begins here. Write } on a line of its own after its last line, and look for a { too many inside it."},
	"Unclosed configuration body":           {"not-closed", "A block without its end", "Write the closing } of the block."},
	"Argument or block definition required": {"line-not-understood", "A line that says nothing", "A line is either name = value, or the beginning of a block: name \"label\" {."},
	"Argument definition required": {"one-line-block", "Too much on one line", "A block written on one line holds one name = value only, and no other block. " +
		"Write what is inside it on lines of its own, and its } on a line below."},
	"Invalid single-argument block definition": {"one-line-block", "Too much on one line",
		"A block written on one line holds one name = value only and ends with } on that line. Give each its own line."},
	"Invalid block definition":               {"line-not-understood", "A block that does not begin", "A block begins name \"label\" { with the { on the same line; a value is written name = value."},
	"Missing newline after argument":         {"line-too-long", "Something after the value", "A value ends its line. A figure with its unit stands in double quotes, as in wall = \"2.5 mm\"."},
	"Unexpected comma after argument":        {"line-too-long", "A comma after the value", "Take the comma out: each name = value has its own line and needs none."},
	"Missing newline after block definition": {"line-too-long", "Something after the block", "After the } of a block begin a new line."},
	"Missing expression":                     {"value-missing", "A value is missing", "Write a value after the =, as in wall = \"2.5 mm\"."},
	"Invalid expression":                     {"value-missing", "Not a value", "Write a text or a figure with its unit in double quotes, a plain number, true or false, a list in [ ] or a group in { }."},
	"Invalid number literal":                 {"value-missing", "Not a number", "Write a plain decimal number such as 12 or 0.095, or a figure with its unit in double quotes."},
	"Unterminated tuple constructor expression": {"not-closed", "A list without its end",
		"Write the closing ] of the list that begins here."},
	"Missing item separator":                     {"comma-missing", "A comma is missing", "Members of a list are separated by commas: [\"a\", \"b\"]."},
	"Missing attribute value":                    {"value-missing", "A value is missing", "Inside { } write name = value, separated by commas or line breaks."},
	"Missing key/value separator":                {"value-missing", "An = is missing", "Inside { } write name = value, separated by commas or line breaks."},
	"Unterminated object constructor expression": {"not-closed", "A group without its end", "Write the closing } of the group that begins here."},
	"Missing attribute separator":                {"comma-missing", "A comma is missing", "Inside { } write name = value, separated by commas or line breaks."},
	"Invalid string literal":                     {"not-literal", "Not a plain label", "A label is a plain text in double quotes: nothing is filled in."},
	"Unterminated string literal":                {"not-closed", "A text without its end", "Write the closing double quote of the label."},
	"Unterminated template string":               {"not-closed", "A text without its end", "Write the closing double quote; a text opened by <<-WORD ends with a line that holds WORD alone, and a line break after it."},
	"Invalid multi-line string":                  {"not-closed", "A text over several lines", "A text in double quotes ends on its line. For a longer one open it with <<-TEXT and end it with a line that holds TEXT alone."},
	"Invalid escape sequence":                    {"bad-escape", "A backslash that means nothing", "In double quotes write \\\\ for a backslash, \\\" for a quote, \\n for a line break."},
	"Invalid character":                          {"strange-character", "A character out of place", "Texts stand in straight double quotes (\"), lists in [ ], groups and blocks in { }. Take it out or put the text around it in double quotes."},
	"Unsupported operator":                       {"not-literal", "Something to work out", "Values are literals: write the result itself."},
}

// syntaxRest is the wording for what remains: formulas, calls and fillings-in, none of
// which is ever wanted.
var syntaxRest = syntaxFault{"not-literal", "Not a literal value",
	"Values are literals: write the value itself, a text or a figure with its unit in double quotes."}

// syntaxLimit is how many syntax faults of one file are told one by one.
const syntaxLimit = 50

// rewordSyntax puts the parser's faults in our words, in file order. Of several at one place
// the first is kept. usable is false when the body does not hold all that was written.
func rewordSyntax(source *Source, found hcl.Diagnostics) (faults hcl.Diagnostics, usable bool) {
	usable = true
	for _, d := range found {
		usable = usable && (d.Summary == attributeTwice || d.Summary == "Invalid escape sequence")
	}
	found, quotes := source.printersQuotesOnce(found)
	if quotes != nil {
		faults = append(faults, quotes)
	}
	byPlace := func(a, b *hcl.Diagnostic) int { return cmp.Compare(a.Subject.Start.Byte, b.Subject.Start.Byte) }
	slices.SortStableFunc(found, byPlace)
	found = slices.CompactFunc(found, func(a, b *hcl.Diagnostic) bool { return byPlace(a, b) == 0 })
	for i, d := range found {
		if i > 0 && found[i-1].Summary == "Invalid multi-line string" {
			break // from there on the parser has taken texts for what is between them
		}
		if i == syntaxLimit {
			faults = append(faults, Fault("more-faults", *d.Subject, "More faults follow", fmt.Sprintf(
				"Found %d more faults of this sort in the file. Mend those above first.", len(found)-i)))
			break
		}
		faults = append(faults, source.rewordOne(d))
	}
	return sortFaults(faults), usable
}

// rewordOne puts one of the parser's faults in our words.
func (s *Source) rewordOne(d *hcl.Diagnostic) *hcl.Diagnostic {
	if d.Summary == attributeTwice {
		return s.namedTwice(*d.Subject)
	}
	if fault := s.labelWithoutQuotes(*d.Subject); fault != nil {
		return fault
	}
	words, known := syntaxFaults[d.Summary]
	if !known {
		words = syntaxRest
	}
	if d.Summary == "Invalid expression" && s.lineEnds(*d.Subject) {
		words = syntaxFaults["Missing expression"]
	}
	at := *d.Subject
	if strings.HasPrefix(d.Summary, "Unterminated ") && d.Context != nil {
		at = s.opening(d.Context.Start)
	}
	return Fault(words.code, at, words.summary, s.foundAt(*d.Subject)+words.advice)
}

// opening is where a text begins that has no end. The parser points at the end of the
// file, which is no help, and knows where the opening quote, or the line with <<, ends.
func (s *Source) opening(behind hcl.Pos) hcl.Range {
	before := s.Bytes[:min(behind.Byte, len(s.Bytes))]
	sign := "<<"
	if bytes.HasSuffix(before, []byte{'"'}) {
		sign = `"`
	}
	if at := bytes.LastIndex(before, []byte(sign)); at >= 0 {
		return placeAt(s.Name, s.Bytes, at, len(sign))
	}
	return hcl.Range{Filename: s.Name, Start: behind, End: behind}
}

// foundAt says what stands at a range: its first line.
func (s *Source) foundAt(at hcl.Range) string {
	switch {
	case at.Start.Byte >= len(s.Bytes):
		return "The file ends here. "
	case s.lineEnds(at):
		return "The line ends here. "
	}
	line, _, _ := strings.Cut(string(s.Bytes[at.Start.Byte:min(at.End.Byte, len(s.Bytes))]), "\n")
	return "Found " + Quote(strings.TrimSpace(line)) + ". "
}

// lineEnds reports whether nothing but a remark follows at a range in its line.
func (s *Source) lineEnds(at hcl.Range) bool {
	line, _, _ := bytes.Cut(s.Bytes[min(at.Start.Byte, len(s.Bytes)):min(at.End.Byte, len(s.Bytes))], []byte("\n"))
	line = bytes.TrimSpace(line)
	return len(line) == 0 || line[0] == '#' || bytes.HasPrefix(line, []byte("//"))
}

// namedTwice is the fault for a name that is given a second time, at at, in one block.
func (s *Source) namedTwice(at hcl.Range) *hcl.Diagnostic {
	name := string(s.Bytes[at.Start.Byte:at.End.Byte])
	return SaidTwice(at, name, firstNamed(s.Body, name, at))
}

// firstNamed finds the first place of a name in the innermost block around at.
func firstNamed(body *hclsyntax.Body, name string, at hcl.Range) hcl.Range {
	for _, block := range body.Blocks {
		if inner := block.Body.SrcRange; inner.Start.Byte <= at.Start.Byte && at.End.Byte <= inner.End.Byte {
			return firstNamed(block.Body, name, at)
		}
	}
	return body.Attributes[name].NameRange
}

// SaidTwice is the fault for a thing said a second time, at at, after it was said at first.
func SaidTwice(at hcl.Range, what string, first hcl.Range) *hcl.Diagnostic {
	return Fault("said-twice", at, "Said twice", fmt.Sprintf(
		"Found %s again; it was said first at %s. Keep one of the two.", what, PlaceText(first)))
}

// PlaceText is a place as file:line:column.
func PlaceText(at hcl.Range) string {
	return fmt.Sprintf("%s:%d:%d", at.Filename, at.Start.Line, at.Start.Column)
}
