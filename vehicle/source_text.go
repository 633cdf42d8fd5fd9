package vehicle

import (
	"bytes"
	"fmt"
	"unicode"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// Text reads a literal text: quoted, or a heredoc with its indent cut where it begins with
// <<-. The text is in Unicode NFC; at leads from its characters to the file. Refused with
// a fault are anything that is not a text, a text with something to fill in (${…} or
// %{…}), and control characters other than line breaks and tabs.
func (s *Source) Text(e hclsyntax.Expression) (text string, at *PositionMap, fault *hcl.Diagnostic) {
	switch e := e.(type) {
	case *hclsyntax.TemplateExpr:
		return s.decodeText(e.SrcRange)
	case *hclsyntax.TemplateWrapExpr:
		return s.decodeText(e.SrcRange)
	case *hclsyntax.ObjectConsKeyExpr: // a name in a group, where it is quoted
		return s.Text(e.Wrapped)
	}
	return "", nil, Fault("text-wanted", e.Range(), "Not a text",
		fmt.Sprintf("Found %s where a text is wanted. Write it in double quotes: \"…\".", s.Describe(e)))
}

// decodeText decodes the text that stands at a range, delimiters included.
func (s *Source) decodeText(at hcl.Range) (string, *PositionMap, *hcl.Diagnostic) {
	raw := s.Bytes[at.Start.Byte:at.End.Byte]
	out := mappedText{at: &PositionMap{source: s, anchors: []hcl.Pos{at.Start}, empty: at.Start.Byte}}
	if len(raw) >= 2 && raw[0] == '"' && !bytes.ContainsAny(raw, `\$%`) {
		inner := at.Start
		inner.Byte++
		inner.Column++
		out.at.anchors[0], out.at.empty = inner, inner.Byte
		out.addPlain(raw[1:len(raw)-1], inner.Byte)
	} else if fault := s.decodeTokens(raw, at, &out); fault != nil {
		return "", nil, fault
	}
	text := out.compose()
	return text, out.at, refuseControl(text, out.at)
}

// decodeTokens decodes a text by its tokens.
func (s *Source) decodeTokens(raw []byte, at hcl.Range, out *mappedText) *hcl.Diagnostic {
	// The closing word of a heredoc is one only before a line break.
	raw = append(bytes.Clone(raw), '\n')
	tokens, _ := hclsyntax.LexConfig(raw, s.Name, at.Start)
	var literals []hclsyntax.Token
	for _, token := range tokens {
		switch token.Type {
		case hclsyntax.TokenStringLit, hclsyntax.TokenQuotedLit:
			literals = append(literals, token)
		case hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateControl:
			return Fault("not-literal", token.Range, "Something to fill in inside a text", fmt.Sprintf(
				"Found %s, but texts and values are literals: nothing is filled in. Write the value itself; for the characters themselves write %c%s.",
				token.Bytes, token.Bytes[0], token.Bytes))
		}
	}
	open := tokens[0]
	out.at.empty = open.Range.End.Byte
	out.at.anchors = append(out.at.anchors, open.Range.End)
	cuts := make([]int, len(literals))
	if bytes.HasPrefix(open.Bytes, []byte("<<-")) {
		cuts = indents(literals)
	}
	for i, token := range literals {
		out.addToken(token, cuts[i])
	}
	return nil
}

// refuseControl finds the first character that could steer a terminal or turn the reading
// order of a line around.
func refuseControl(text string, at *PositionMap) *hcl.Diagnostic {
	rune := 0
	for _, r := range text {
		if isSteering(r) && r != '\n' && r != '\r' && r != '\t' {
			return Fault("control-character", at.Range(rune, rune+1), "A control character in a text",
				fmt.Sprintf("Found the invisible character U+%04X. Take it out.", r))
		}
		rune++
	}
	return nil
}

// isSteering reports whether a character is a control character or one that overrides the
// direction of writing (Unicode Standard Annex 9, section 2).
func isSteering(r rune) bool {
	return unicode.IsControl(r) || '\u202a' <= r && r <= '\u202e' || '\u2066' <= r && r <= '\u2069'
}

// Describe says what an expression is and how it is written, for messages: "the number 3",
// "the text \"three\"", "the formula \"1 + 2\"".
func (s *Source) Describe(e hclsyntax.Expression) string {
	written := string(s.Bytes[e.Range().Start.Byte:e.Range().End.Byte])
	if _, ok := s.Number(e); ok {
		return "the number " + written
	}
	switch e := e.(type) {
	case *hclsyntax.TemplateExpr:
		if text, _, fault := s.Text(e); fault == nil {
			return "the text " + Quote(text)
		}
	case *hclsyntax.TupleConsExpr:
		if len(e.Exprs) == 0 {
			return "an empty list"
		}
	case *hclsyntax.ScopeTraversalExpr:
		return "the bare word " + Quote(written)
	}
	if !s.isLiteral(e) {
		return "the formula " + Quote(written)
	}
	return Describe(e)
}

// Describe says in a few words what sort of thing an expression is, for messages: "the
// number 3", "a list", "a formula".
func Describe(e hclsyntax.Expression) string {
	switch e := e.(type) {
	case *hclsyntax.TemplateExpr, *hclsyntax.TemplateWrapExpr:
		return "a text"
	case *hclsyntax.TupleConsExpr:
		return "a list"
	case *hclsyntax.ObjectConsExpr:
		return "a group in braces"
	case *hclsyntax.LiteralValueExpr:
		switch {
		case e.Val.IsNull():
			return "null"
		case e.Val.Type() == cty.Bool && e.Val.True():
			return "true"
		case e.Val.Type() == cty.Bool:
			return "false"
		}
		return "a number"
	case *hclsyntax.ScopeTraversalExpr:
		return "the bare word " + Quote(e.Traversal.RootName())
	case *hclsyntax.FunctionCallExpr:
		return "a call of " + Quote(e.Name)
	}
	return "something to work out"
}
