package vehicle

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
	"golang.org/x/text/unicode/norm"
)

// Label reads a label of a block, quoted or a bare word, in Unicode NFC. It has to be there.
func (s *Source) Label(block *hclsyntax.Block, index int) (string, *hcl.Diagnostic) {
	at := block.LabelRanges[index]
	if s.Bytes[at.Start.Byte] != '"' {
		return norm.NFC.String(block.Labels[index]), nil
	}
	text, _, fault := s.decodeText(at)
	return text, fault
}

// Number reads a plain number, a sign in front of it included, as it is written. It
// answers false for anything else.
func (s *Source) Number(e hclsyntax.Expression) (text string, ok bool) {
	literal := e
	if signed, is := e.(*hclsyntax.UnaryOpExpr); is && signed.Op == hclsyntax.OpNegate {
		literal = signed.Val
	}
	if n, is := literal.(*hclsyntax.LiteralValueExpr); !is || n.Val.IsNull() || n.Val.Type() != cty.Number {
		return "", false
	}
	return string(s.Bytes[e.Range().Start.Byte:e.Range().End.Byte]), true
}

// truthOf reads true or false. It answers ok false for anything else.
func truthOf(e hclsyntax.Expression) (truth, ok bool) {
	literal, is := e.(*hclsyntax.LiteralValueExpr)
	if !is || literal.Val.IsNull() || literal.Val.Type() != cty.Bool {
		return false, false
	}
	return literal.Val.True(), true
}

// isText reports whether an expression is written as a text, be it one with something to
// fill in.
func isText(e hclsyntax.Expression) bool {
	switch e.(type) {
	case *hclsyntax.TemplateExpr, *hclsyntax.TemplateWrapExpr:
		return true
	}
	return false
}

// isLiteral reports whether an expression stands for itself, so that nothing is left to
// work out in it but perhaps inside a text, list or group.
func (s *Source) isLiteral(e hclsyntax.Expression) bool {
	switch e.(type) {
	case *hclsyntax.LiteralValueExpr, *hclsyntax.TupleConsExpr, *hclsyntax.ObjectConsExpr:
		return true
	}
	_, number := s.Number(e)
	return number || isText(e)
}

// attributesInOrder returns the attributes of a body in the order of the file.
func attributesInOrder(body *hclsyntax.Body) []*hclsyntax.Attribute {
	return slices.SortedFunc(maps.Values(body.Attributes), func(a, b *hclsyntax.Attribute) int {
		return cmp.Compare(a.NameRange.Start.Byte, b.NameRange.Start.Byte)
	})
}

// keyOf is the name of an item of a group, and where it stands.
func (s *Source) keyOf(item hclsyntax.ObjectConsItem) (string, hcl.Range) {
	at := item.KeyExpr.Range()
	return strings.Trim(string(s.Bytes[at.Start.Byte:at.End.Byte]), `"`), at
}

// HeaderOf is the place of a block's name and labels, without its body.
func HeaderOf(block *hclsyntax.Block) hcl.Range {
	if last := len(block.LabelRanges) - 1; last >= 0 {
		return hcl.RangeBetween(block.TypeRange, block.LabelRanges[last])
	}
	return block.TypeRange
}
