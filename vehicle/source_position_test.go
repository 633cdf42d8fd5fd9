package vehicle

import (
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/stretchr/testify/require"
	"golang.org/x/text/unicode/norm"
	"pgregory.net/rapid"
)

// textOf parses a file and reads the text of its attribute a.
func textOf(t require.TestingT, file string) (*Source, string, *PositionMap) {
	source, faults := ParseSource("a.hcl", []byte(file))
	require.Empty(t, faults, "%q", file)
	text, at, fault := source.Text(source.Body.Attributes["a"].Expr)
	require.Nil(t, fault, "%q", file)
	return source, text, at
}

// TestTextsLeadBackToTheFile gives a text and what of it to look for, and where that stands.
func TestTextsLeadBackToTheFile(t *testing.T) {
	for name, want := range map[string]struct {
		file, text, piece          string
		line, column, byte, length int
	}{
		"quoted":                {`a = "45 mm"`, "45 mm", "mm", 1, 9, 8, 2},
		"escapes before it":     {`a = "\"\\\n\u00e9\U0001f697 mm"`, "\"\\\né🚗 mm", "mm", 1, 29, 28, 2},
		"an escape itself":      {`a = "x \u00e9"`, "x é", "é", 1, 8, 7, 6},
		"a filling spelt out":   {`a = "$${x} %%{y} mm"`, "${x} %{y} mm", "mm", 1, 18, 17, 2},
		"the filling itself":    {`a = "x $${y}"`, "x ${y}", "${", 1, 8, 7, 3},
		"signs that are none":   {`a = "5 % or $5 mm"`, "5 % or $5 mm", "mm", 1, 16, 15, 2},
		"letters of two bytes":  {`a = "é mm"`, "é mm", "mm", 1, 8, 8, 2},
		"a composed letter":     {"a = \"e\u0301e\u0301 mm\"", "éé mm", "mm", 1, 9, 12, 2},
		"the letter itself":     {"a = \"xe\u0301x\"", "xéx", "é", 1, 7, 6, 3},
		"composed by an escape": {`a = "xe\u0301x mm"`, "xéx mm", "é", 1, 7, 6, 7},
		"a byte order mark":     {"\ufeffa = \"45 mm\"", "45 mm", "mm", 1, 9, 11, 2},
		"a heredoc":             {"a = <<TEXT\n  45 mm\nTEXT\n", "  45 mm\n", "mm", 2, 6, 16, 2},
		"an indent cut": {"a = <<-TEXT\n    45 mm\n      2 in\n    TEXT\n",
			"45 mm\n  2 in\n", "in", 3, 9, 30, 2},
		"a blank line between": {"a = <<-TEXT\n    45 mm\n\n  \n    2 in\n    TEXT\n",
			"45 mm\n\n  \n2 in\n", "in", 5, 7, 32, 2},
		"an indent by tabs": {"a = <<-TEXT\n\t45 mm\n\t\t2 in\nTEXT\n",
			"45 mm\n\t2 in\n", "in", 3, 5, 23, 2},
		"line ends of Windows": {"a = <<-TEXT\r\n  45 mm\r\n  2 in\r\n  TEXT\r\n",
			"45 mm\r\n2 in\r\n", "in", 3, 5, 26, 2},
		"a backslash in a heredoc": {"a = <<TEXT\n\\d mm\nTEXT\n", "\\d mm\n", "mm", 2, 4, 14, 2},
		"a filling in a heredoc":   {"a = <<-TEXT\n  $${x} mm\n  TEXT\n", "${x} mm\n", "mm", 2, 9, 20, 2},
		"blanks before a filling":  {"a = <<-TEXT\n    x\n  $${y} mm\n  TEXT\n", "  x\n${y} mm\n", "mm", 3, 9, 26, 2},
		"a heredoc with letters":   {"a = <<-TEXT\n  e\u0301 é mm\n  TEXT\n", "é é mm\n", "mm", 2, 7, 21, 2},
	} {
		t.Run(name, func(t *testing.T) {
			source, text, at := textOf(t, want.file)
			require.Equal(t, want.text, text)
			from := utf8.RuneCountInString(text[:strings.Index(text, want.piece)])
			place := at.Range(from, from+utf8.RuneCountInString(want.piece))
			require.Equal(t, hcl.Pos{Line: want.line, Column: want.column, Byte: want.byte}, place.Start)
			require.Equal(t, want.length, place.End.Byte-place.Start.Byte)
			require.Equal(t, "a.hcl", place.Filename)
			if !strings.ContainsAny(want.file, "\\$%\u0301") {
				require.Equal(t, want.piece, string(source.Bytes[place.Start.Byte:place.End.Byte]))
			}
		})
	}
}

func TestOffsetsOutsideATextAreItsEnds(t *testing.T) {
	_, _, at := textOf(t, "a = \"45 mm\"\nb = 1")
	require.Equal(t, "a.hcl:1,6-11", at.Range(-5, 99).String())
	require.Equal(t, "a.hcl:1,11-11", at.Range(99, 120).String())
	require.Equal(t, "a.hcl:1,9-9", at.Range(3, 1).String())
	require.Equal(t, "a.hcl:1,6-6", at.Range(0, 0).String())
	_, text, at := textOf(t, `a = ""`)
	require.Empty(t, text)
	require.Equal(t, "a.hcl:1,6-6", at.Range(0, 5).String())
	_, text, at = textOf(t, "a = <<-TEXT\nTEXT\n")
	require.Empty(t, text)
	require.Equal(t, 2, at.Range(0, 5).Start.Line)
}

func TestWhatIsNoLiteralTextIsRefused(t *testing.T) {
	for text, want := range map[string]struct {
		code   Code
		column int
	}{
		`a = "x ${y} z"`:         {"not-literal", 8},
		`a = "${y}"`:             {"not-literal", 6},
		`a = "%{if y}x%{endif}"`: {"not-literal", 6},
		`a = "\u0007"`:           {"control-character", 6},
		`a = "xy\u202e"`:         {"control-character", 8},
		"a = 5":                  {"text-wanted", 5},
		"a = -5":                 {"text-wanted", 5},
		"a = b.c":                {"text-wanted", 5},
		"a = (\"x\")":            {"text-wanted", 5},
		"a = [\"x\"]":            {"text-wanted", 5},
		"a = null":               {"text-wanted", 5},
	} {
		source, faults := ParseSource("a.hcl", []byte(text))
		require.Empty(t, faults, text)
		_, _, fault := source.Text(source.Body.Attributes["a"].Expr)
		require.NotNil(t, fault, text)
		require.Equal(t, want.code, CodeOf(fault), text)
		require.Equal(t, want.column, fault.Subject.Start.Column, text)
	}
}

func TestAQuotedNameInAGroupIsAText(t *testing.T) {
	source, faults := ParseSource("a.hcl", []byte("a = { \"\\u00e9 b\" = 1 }"))
	require.Empty(t, faults)
	group := source.Body.Attributes["a"].Expr.(*hclsyntax.ObjectConsExpr)
	text, at, fault := source.Text(group.Items[0].KeyExpr)
	require.Nil(t, fault)
	require.Equal(t, "é b", text)
	require.Equal(t, "a.hcl:1,15-16", at.Range(2, 3).String())
}

// requireMapped wants a text to be what hcl makes of it, and every place to be one of the
// file, in its order.
func requireMapped(t require.TestingT, source *Source, e hclsyntax.Expression) {
	text, at, fault := source.Text(e)
	if fault != nil {
		require.NotEmpty(t, fault.Detail)
		return
	}
	value, faults := e.Value(nil)
	require.Empty(t, faults)
	require.Equal(t, value.AsString(), text)
	require.True(t, norm.NFC.IsNormalString(text))
	length := utf8.RuneCountInString(text)
	last := e.Range().Start.Byte
	for i := range length {
		place := at.Range(i, i+1)
		require.LessOrEqual(t, last, place.Start.Byte)
		require.Less(t, place.Start.Byte, place.End.Byte)
		require.Equal(t, place.Start, at.Range(i, i).Start)
		last = place.Start.Byte
	}
	whole := at.Range(0, length)
	require.LessOrEqual(t, e.Range().Start.Byte, whole.Start.Byte)
	require.LessOrEqual(t, whole.End.Byte, e.Range().End.Byte)
	require.LessOrEqual(t, whole.Start.Line, whole.End.Line)
}

// walkTexts calls do for every expression of a body that is not made of others.
func walkTexts(body *hclsyntax.Body, do func(e hclsyntax.Expression)) {
	for _, a := range attributesInOrder(body) {
		walkExpression(a.Expr, do)
	}
	for _, block := range body.Blocks {
		walkTexts(block.Body, do)
	}
}

func walkExpression(e hclsyntax.Expression, do func(e hclsyntax.Expression)) {
	switch e := e.(type) {
	case *hclsyntax.TupleConsExpr:
		for _, member := range e.Exprs {
			walkExpression(member, do)
		}
	case *hclsyntax.ObjectConsExpr:
		for _, item := range e.Items {
			walkExpression(item.ValueExpr, do)
		}
	default:
		do(e)
	}
}

// TestDrawnTextsLeadBackToTheFile writes drawn texts as an author could and looks whether
// each character is found where it was put.
func TestDrawnTextsLeadBackToTheFile(t *testing.T) {
	piece := rapid.SampledFrom([]string{"a", "mm", " ", "  ", "\t", "é", "e\u0301", "\u0301", "🚗", "日", "$", "%", "{", "}", "$${", "%%{", "\"", "\\", "\n", "\r\n", "\u1100\u1161", "A\u030a", "\u212b"})
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(piece, 0, 30).Draw(t, "pieces"), "")
		var file string
		if rapid.Bool().Draw(t, "heredoc") {
			opening := rapid.SampledFrom([]string{"<<TEXT", "<<-TEXT"}).Draw(t, "opening")
			indent := rapid.SampledFrom([]string{"", "  ", "\t", "\u00a0 "}).Draw(t, "indent")
			lines := strings.Split(strings.ReplaceAll(text, "\"", "'"), "\n")
			file = "a = " + opening + "\n" + indent + strings.Join(lines, "\n"+indent) + "\nTEXT\n"
		} else {
			escaped := strings.NewReplacer("\\", "\\\\", "\"", "\\\"", "\r", "\\r", "\n", "\\n", "🚗", "\\U0001f697").Replace(text)
			file = "b = \"é\"\na = \"" + escaped + "\"\n"
		}
		source, faults := ParseSource("a.hcl", []byte(file))
		if faults.HasErrors() {
			return // a filling or a lone carriage return came about, which is refused
		}
		requireMapped(t, source, source.Body.Attributes["a"].Expr)
	})
}

func FuzzPositionMap(f *testing.F) {
	for _, seed := range []string{
		"a = \"\\\"\\\\\\n\\u00e9 mm\"\n", "a = <<-TEXT\n    e\u0301 mm\r\n\r\n  $${x} 5 %\n    TEXT\n", "\ufeffa = \"e\u0301\"", "a = [\"x ${y}\", { b = \"%%{z}\" }]\n",
		"a = <<-T\n\u00a0\u00a0x\n\t y\nT\n", "a = <<-T\n  \n x\n\u3000y\nT\n", "a = \"\\ud800\"", "a = <<T\n$\n%\n$$\n%%{\nT\n", "b \"x\" {\n  a = \"\\u0301\"\n}\n",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		source, faults := ParseSource("a.hcl", data)
		for _, d := range faults {
			requireInside(t, d, map[string][]byte{"a.hcl": data})
		}
		if source != nil && !faults.HasErrors() {
			walkTexts(source.Body, func(e hclsyntax.Expression) {
				if isText(e) {
					requireMapped(t, source, e)
				}
			})
		}
	})
}

// requireInside wants a fault that says something, at a place inside the file it names.
func requireInside(t require.TestingT, d *hcl.Diagnostic, files map[string][]byte) {
	require.NotEmpty(t, d.Summary)
	require.NotEmpty(t, d.Detail)
	require.NotEmpty(t, CodeOf(d))
	require.NotNil(t, d.Subject)
	data, known := files[d.Subject.Filename]
	require.True(t, known, d.Subject.Filename)
	require.LessOrEqual(t, 0, d.Subject.Start.Byte)
	require.LessOrEqual(t, d.Subject.Start.Byte, d.Subject.End.Byte, d)
	require.LessOrEqual(t, d.Subject.End.Byte, len(data), d)
	require.LessOrEqual(t, 1, d.Subject.Start.Line)
	require.LessOrEqual(t, 1, d.Subject.Start.Column)
	require.LessOrEqual(t, d.Subject.Start.Line, strings.Count(string(data), "\n")+1)
}

// FuzzShape holds the guard of the nesting against hcl's own scanner: what the guard lets
// through is nowhere deeper for the scanner than the guard allows.
func FuzzShape(f *testing.F) {
	for _, seed := range []string{
		"a = \"({[\" # ({[\nb = [(1)]", "a = \"${\"${[1]}\"}\"", "a = <<T\n((\n T\nb = [[[[", "/* ( */ // (\n# (\n((((", "a = \"\\\"((\\\\\"((((", "a = <<T\n${<<U\n((\nU\n}\nT\n((((",
		"a = \"%{if b}(%{endif}\"((((", "a = }}\"${\"}(((", "a = <<-T\r\n(\r\nT\r\n((((", "\"\n\"((((", "a = \"$\"((((", "a = \"$${\"((((", "<<T\nx${1}\nT\n((((", "a~}((((", "{~}((((", "<<T\n$T\nT\n((((", "é-(\"((((",
	} {
		f.Add([]byte(seed))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		if guardCharacters("a.hcl", data) != nil {
			return
		}
		s := shape{name: "a.hcl", data: data, limit: 3}
		s.walk()
		if s.faults.HasErrors() {
			return
		}
		require.LessOrEqual(t, scannedDepth(data), 3, "%q", data)
	})
}

// scannedDepth is the greatest number of brackets that are open at once for hcl's scanner.
func scannedDepth(data []byte) int {
	tokens, _ := hclsyntax.LexConfig(data, "a.hcl", hcl.InitialPos)
	var parens, squares, braces, deepest int
	for _, token := range tokens {
		switch token.Type {
		case hclsyntax.TokenOParen:
			parens++
		case hclsyntax.TokenOBrack:
			squares++
		case hclsyntax.TokenOBrace, hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateControl:
			braces++
		case hclsyntax.TokenCParen:
			parens = max(parens-1, 0)
		case hclsyntax.TokenCBrack:
			squares = max(squares-1, 0)
		case hclsyntax.TokenCBrace, hclsyntax.TokenTemplateSeqEnd:
			braces = max(braces-1, 0)
		}
		deepest = max(deepest, parens+squares+braces)
	}
	return deepest
}
