package vehicle

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// keys reads the keys of one block of a vocabulary: each is asked for by name, and what
// nobody has asked for is a fault in the end.
type keys struct {
	source *Source
	block  *hclsyntax.Block
	what   string // what the block is, for messages: `particular "wall"`
	added  bool   // the block is a particular that a rulebook adds
	asked  []string
	faults hcl.Diagnostics
}

// told is a text as an author gave it, trimmed, with the way back to the file.
type told struct {
	text string
	at   *PositionMap // of the text before it was trimmed; nil for a label
	lead int          // runes that were trimmed in front
	all  hcl.Range
}

// place is where some runes of the text stand in the file.
func (t told) place(from, to int) hcl.Range { return t.at.Range(from+t.lead, to+t.lead) }

// fault notes a fault.
func (k *keys) fault(code Code, at hcl.Range, summary, detail string) {
	k.faults = append(k.faults, Fault(code, at, summary, detail))
}

// header is the place of the block's name and labels.
func (k *keys) header() hcl.Range { return HeaderOf(k.block) }

// inner returns the blocks of one type inside the block, in the order of the file.
func (k *keys) inner(name string) []*hclsyntax.Block {
	var blocks []*hclsyntax.Block
	for _, block := range k.block.Body.Blocks {
		if block.Type == name {
			blocks = append(blocks, block)
		}
	}
	return blocks
}

// label reads the one label of the block; example is how it could be written.
func (k *keys) label(example string) (told, bool) {
	if n := len(k.block.LabelRanges); n != 1 {
		k.fault("label-count", k.header(), "One name is wanted", fmt.Sprintf(
			"Found %d names of the %s. Write one in double quotes, as in %s %s {.", n, k.what, k.block.Type, example))
		return told{}, false
	}
	text, fault := k.source.Label(k.block, 0)
	return k.line("name", told{text: text, all: k.block.LabelRanges[0]}, fault)
}

// value returns the expression of a key, nil when it is not given.
func (k *keys) value(key string) hclsyntax.Expression {
	k.asked = append(k.asked, key)
	if a := k.block.Body.Attributes[key]; a != nil {
		return a.Expr
	}
	return nil
}

// text reads a text of one line; it is empty when not given or not usable.
func (k *keys) text(key string) told {
	t := told{all: k.header()}
	if e := k.value(key); e != nil {
		t, _ = k.one(key, e)
	}
	return t
}

// wanted is text for a key that has to be there; example is how it could be written, and
// why, a sentence, may be empty.
func (k *keys) wanted(key, example, why string) told {
	t := k.text(key)
	if k.block.Body.Attributes[key] == nil {
		k.fault("key-missing", k.header(), "Something is missing",
			strings.TrimSpace(fmt.Sprintf("The %s has no %s. Write %s = %q. %s", k.what, key, key, example, why)))
	}
	return t
}

// one reads the expression of a key, or a member of its list, as a text of one line.
func (k *keys) one(key string, e hclsyntax.Expression) (told, bool) {
	text, at, fault := k.source.Text(e)
	return k.line(key, told{text: text, at: at, all: e.Range()}, fault)
}

// line trims a text, which must be neither faulty nor empty nor longer than a line.
func (k *keys) line(key string, t told, fault *hcl.Diagnostic) (told, bool) {
	begins := strings.TrimLeftFunc(t.text, unicode.IsSpace)
	t.lead = utf8.RuneCountInString(t.text) - utf8.RuneCountInString(begins)
	t.text = strings.TrimSpace(begins)
	switch {
	case fault != nil:
		k.faults = append(k.faults, fault)
	case t.text == "":
		k.fault("text-empty", t.all, "An empty text",
			fmt.Sprintf("The %s of the %s is empty. Write it out, or leave the key away.", key, k.what))
	case strings.ContainsAny(t.text, "\r\n"):
		k.fault("one-line-wanted", t.all, "Several lines where one is wanted",
			fmt.Sprintf("The %s of the %s has several lines. Write it on one.", key, k.what))
	default:
		return t, true
	}
	return told{all: t.all}, false
}

// texts reads a list of texts, none when the key is not given.
func (k *keys) texts(key string) []told {
	e := k.value(key)
	if e == nil {
		return nil
	}
	list, ok := e.(*hclsyntax.TupleConsExpr)
	if !ok {
		k.fault("list-wanted", e.Range(), "Not a list",
			fmt.Sprintf("Found %s as %s of the %s. Write a list of texts: [\"…\", \"…\"].", Describe(e), key, k.what))
		return nil
	}
	var texts []told
	for _, member := range list.Exprs {
		if t, ok := k.one(key, member); ok {
			texts = append(texts, t)
		}
	}
	return texts
}

// truth reads true or false; it is otherwise when the key is not given.
func (k *keys) truth(key string, otherwise bool) bool {
	e := k.value(key)
	if e == nil {
		return otherwise
	}
	if truth, ok := truthOf(e); ok {
		return truth
	}
	k.fault("truth-wanted", e.Range(), "Neither true nor false",
		fmt.Sprintf("Found %s as %s of the %s. Write true or false, without quotes.", Describe(e), key, k.what))
	return otherwise
}

// done reports every key that is not in known, every one in known that was not asked for,
// which does not go with suits ("a date"), and every block that is not in blocks.
func (k *keys) done(known []string, suits string, blocks ...string) {
	for _, a := range attributesInOrder(k.block.Body) {
		switch {
		case !slices.Contains(known, a.Name):
			k.unknown("unknown-key", a.NameRange, a.Name, known)
		case !slices.Contains(k.asked, a.Name):
			k.fault("key-unfit", a.NameRange, "A key that does not fit",
				fmt.Sprintf("Found %s in the %s, but it means nothing for %s. Take the line out.", a.Name, k.what, suits))
		}
	}
	for _, block := range k.block.Body.Blocks {
		if !slices.Contains(blocks, block.Type) {
			k.unknown("unknown-block", block.TypeRange, block.Type, slices.Concat(blocks, known))
		}
	}
}

// unknown reports a name that the block does not have.
func (k *keys) unknown(code Code, at hcl.Range, name string, known []string) {
	advice := "It can have " + strings.Join(known, ", ") + "."
	if near := Nearest(name, known); near != "" {
		advice = fmt.Sprintf("Did you mean %s? %s", near, advice)
	}
	k.fault(code, at, "Unknown name", fmt.Sprintf("Found %s in the %s. %s", name, k.what, advice))
}
