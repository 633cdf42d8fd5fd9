package rules

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle"
)

// fields reads the values of one block. What cannot be read is reported once and then
// taken as not given, so that the rest of the block is still looked at.
type fields struct {
	source *vehicle.Source
	block  *hclsyntax.Block
	what   string // what the block is, for messages: "clause 4.3.2"
	report func(*hcl.Diagnostic)
}

// fieldsOf begins to read a block that may hold the attributes keys and the blocks inner.
// Anything else in it is a fault.
func (l *loader) fieldsOf(block located, what string, keys, inner []string) *fields {
	f := &fields{source: block.source, block: block.Block, what: what, report: l.report}
	for name, attribute := range block.Body.Attributes {
		if !slices.Contains(keys, name) {
			f.unknown("unknown-key", attribute.NameRange, name, keys)
		}
	}
	for _, b := range block.Body.Blocks {
		if !slices.Contains(inner, b.Type) {
			f.unknown("unknown-block", b.TypeRange, b.Type, slices.Concat(inner, keys))
		}
	}
	return f
}

// unknown reports a name that the block does not have.
func (f *fields) unknown(code vehicle.Code, at hcl.Range, name string, known []string) {
	advice := "It has " + listOf(known, "and") + "."
	if near := vehicle.Nearest(name, known); near != "" {
		advice = fmt.Sprintf("Did you mean %s? %s", near, advice)
	}
	f.fault(code, at, "Unknown name", fmt.Sprintf("Found %s in the %s. %s", name, f.what, advice))
}

// fault reports a fault.
func (f *fields) fault(code vehicle.Code, at hcl.Range, summary, detail string) {
	f.report(vehicle.Fault(code, at, summary, detail))
}

// has reports whether key is given.
func (f *fields) has(key string) bool { return f.block.Body.Attributes[key] != nil }

// blocks returns the blocks of one type inside the block, in the order of the file.
func (f *fields) blocks(name string) []located {
	var list []located
	for _, b := range f.block.Body.Blocks {
		if b.Type == name {
			list = append(list, located{b, f.source})
		}
	}
	return list
}

// value returns the expression of key, nil when it is not given.
func (f *fields) value(key string) hclsyntax.Expression {
	if a := f.block.Body.Attributes[key]; a != nil {
		return a.Expr
	}
	return nil
}

// at is the range of key's value, that of the block's header when it is not given.
func (f *fields) at(key string) hcl.Range {
	if e := f.value(key); e != nil {
		return e.Range()
	}
	return vehicle.HeaderOf(f.block)
}

// want reports that key, written as in example, is missing. It returns whether it is there.
func (f *fields) want(key, example string) bool {
	if f.has(key) {
		return true
	}
	f.fault("key-missing", vehicle.HeaderOf(f.block), "Something is missing", fmt.Sprintf(
		"The %s has no %s. Write %s = %s.", f.what, key, key, example))
	return false
}

// written is a text as decoded, with its way back to the file.
type written struct {
	text string
	at   *vehicle.PositionMap
	all  hcl.Range // of the whole expression
}

// text reads a text, heredocs included; not ok when it is not given or not usable. An
// empty text is a fault.
func (f *fields) text(key string) (t written, ok bool) {
	e := f.value(key)
	if e == nil {
		return t, false
	}
	return f.textOf(key, e)
}

// textOf reads the expression of key, or one member of its list, as a text.
func (f *fields) textOf(key string, e hclsyntax.Expression) (t written, ok bool) {
	text, at, fault := f.source.Text(e)
	if fault != nil {
		f.report(fault)
		return t, false
	}
	if strings.TrimSpace(text) == "" {
		f.fault("text-empty", e.Range(), "An empty text", fmt.Sprintf(
			"The %s of the %s is empty. Write its text, or take the line out.", key, f.what))
		return t, false
	}
	return written{text: text, at: at, all: e.Range()}, true
}

// lineBreaks makes every line break one that a screen takes as no more than that.
var lineBreaks = strings.NewReplacer("\r\n", "\n", "\r", "\n")

// prose reads a text of any number of lines without blanks around it, "" when not given.
func (f *fields) prose(key string) string {
	t, _ := f.text(key)
	return strings.TrimSpace(lineBreaks.Replace(t.text))
}

// line reads a text that has to stand on one line, "" when not given.
func (f *fields) line(key string) string {
	t, ok := f.text(key)
	if !ok {
		return ""
	}
	if !f.onOneLine(key, t) {
		return ""
	}
	return strings.TrimSpace(t.text)
}

// onOneLine reports a text that has several lines.
func (f *fields) onOneLine(key string, t written) bool {
	if !strings.ContainsAny(strings.TrimSpace(t.text), "\r\n") {
		return true
	}
	f.fault("one-line-wanted", t.all, "Several lines where one is wanted", fmt.Sprintf(
		"The %s of the %s has several lines. Write it on one.", key, f.what))
	return false
}

// labelAt reads one label of the block: one line, not empty.
func (f *fields) labelAt(i int) (text string, ok bool) {
	at := f.block.LabelRanges[i]
	text, fault := f.source.Label(f.block, i)
	if fault != nil {
		f.report(fault)
		return "", false
	}
	text = strings.TrimSpace(text)
	switch {
	case text == "":
		f.fault("text-empty", at, "An empty name", fmt.Sprintf("The name of the %s is empty. Write it out.", f.what))
	case f.onOneLine("name", written{text: text, all: at}):
		return text, true
	}
	return "", false
}
