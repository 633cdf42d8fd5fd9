package rules

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// TestGuards holds that what could exhaust the parser never reaches it, and is told in a
// sentence.
func TestGuards(t *testing.T) {
	many := func(s string, n int) string { return strings.Repeat(s, n) }
	for _, x := range []struct {
		name, source string
		code         vehicle.Code
	}{
		{"too many bytes", many("a and ", 3000) + "a", CodeFormulaLong},
		{"a million brackets", many("(", 1_000_000), CodeFormulaLong},
		{"brackets", many("(", 101) + "a" + many(")", 101), CodeFormulaDeep},
		{"square brackets", many("[", 16_000), CodeFormulaDeep},
		{"signs", many("!", 16_000) + "a", CodeFormulaDeep},
		{"minus signs", many("-", 101) + "n > 0", CodeFormulaDeep},
		{"nots", many("not ", 4000) + "a", CodeFormulaDeep},
		{"signs of both sorts", many("-+", 60) + "n > 0", CodeFormulaDeep},
		{"conditions", many("a ? b : ", 2000) + "a", CodeFormulaDeep},
		{"powers", many("n ** ", 3000) + "n", CodeFormulaDeep},
		{"lets", many("let k = ", 2000) + "a", CodeFormulaDeep},
		{"ifs", many("if ", 5000) + "a", CodeFormulaDeep},
		{"dots", "car" + many(".a", 4000), CodeFormulaLarge},
		{"members of a list function", "any(cage.tubes, " + many(".a", 4000) + ")", CodeFormulaLarge},
		{"parts", many("a and ", 300) + "a", CodeFormulaLarge},
		{"an exponent", "n > 1e31", CodeFormulaDigits},
		{"a negative exponent", "n > 1e-31", CodeFormulaDigits},
		{"an exponent without digits", "n > 1e", CodeFormulaDigits},
		{"digits", "n > " + many("9", 41), CodeFormulaDigits},
		{"a list within a list within a list within a list", "all(cage.tubes, all(cage.tubes, all(cage.tubes, all(cage.tubes, a))))", CodeFormulaDeep},
		{"not UTF-8", "a and \xff", CodeFormulaSyntax},
		{"a zero byte", "a and \x00", CodeFormulaSyntax},
		{"nothing", "", CodeFormulaSyntax},
		{"blanks", " \r\n\t", CodeFormulaSyntax},
	} {
		t.Run(x.name, func(t *testing.T) {
			tree, faults := CheckText(x.source, clauseScope(t), Type{})
			require.Nil(t, tree)
			require.NotEmpty(t, faults)
			require.Equal(t, x.code, faults[0].Code, faults[0].Detail())
			for _, f := range faults {
				require.LessOrEqual(t, len(f.Detail()), 400, "a message stays short")
				require.NotContains(t, f.Detail(), "\x00", "nothing that a terminal acts on is repeated")
			}
		})
	}
}

// TestGuardsLetThrough holds that the limits themselves are allowed.
func TestGuardsLetThrough(t *testing.T) {
	scope := clauseScope(t)
	for _, source := range []string{
		strings.Repeat("(", 100) + "a" + strings.Repeat(")", 100),
		strings.Repeat("!", 100) + "a",
		"n > 1e30 or n > 1e-30",
		"tube.part == '((((([[[[['" + strings.Repeat(" or a", 200),
		"all(cage.tubes, all(cage.tubes, all(cage.tubes, a)))",
		"a // " + strings.Repeat("(", 500),
		"a /* " + strings.Repeat("(", 500) + " */ and b",
	} {
		tree, faults := CheckText(source, scope, Type{Kind: Truth})
		require.Empty(t, faults, source)
		require.NotNil(t, tree)
	}
	_, faults := CheckText(strings.Repeat("a and ", 2000)+"a", scope.Quick(10_000), Type{})
	require.Empty(t, faults, "a larger limit for those who ask for it")
}

// TestPlaces holds that faults are found at their place in the file, however the formula is
// written there.
func TestPlaces(t *testing.T) {
	for _, x := range []struct {
		name, file string
		line       int
		column     int
		piece      string
	}{
		{"quoted", "demand = \"tube.wal >= 2*mm\"\n", 1, 16, "wal"},
		{"quoted with escapes", "demand = \"tube.part == \\\"é\\\" and tube.wal > 0\"\n", 1, 39, "wal"},
		{"heredoc", "demand = <<EOT\n  tube.wall > 0\n  and tube.wal > 0\nEOT\n", 3, 12, "wal"},
		{"heredoc with its indent cut", "demand = <<-EOT\n    tube.wall > 0\n      and tube.wal > 0\n  EOT\n", 3, 16, "wal"},
		{"heredoc with CRLF", "demand = <<-EOT\r\n    tube.wall > 0\r\n    and tube.wal > 0\r\n  EOT\r\n", 3, 14, "wal"},
		{"letters beyond ASCII before it", "demand = <<-EOT\n    tube.part == 'arceau ⌀ e\u0301' and tube.wal > 0\n  EOT\n", 2, 40, "wal"},
		{"syntax", "demand = <<-EOT\n    tube.part == 'é'\n    and tube.wall >= 2 mm\n  EOT\n", 3, 22, "2 mm"},
		{"end of the formula", "demand = \"tube.wall >=\"\n", 1, 21, ">="},
		{"a dollar sign", "demand = \"tube.part == '$${x}' and tube.wal > 0\"\n", 1, 41, "wal"},
		{"a remark before it", "demand = <<EOT\n  // outer diameter ⌀\n  tube.wal > 0\nEOT\n", 3, 8, "wal"},
	} {
		t.Run(x.name, func(t *testing.T) {
			source, faults := vehicle.ParseSource("a.hcl", []byte(x.file))
			require.Empty(t, faults)
			text, position, fault := source.Text(source.Body.Attributes["demand"].Expr)
			require.Nil(t, fault)
			tree, faults := Check(text, position, clauseScope(t), Type{Kind: Truth})
			require.Nil(t, tree)
			require.Len(t, faults, 1)
			at := faults[0].Subject
			require.Equal(t, x.piece, x.file[at.Start.Byte:at.End.Byte])
			require.Equal(t, [2]int{x.line, x.column}, [2]int{at.Start.Line, at.Start.Column})
			require.Equal(t, "a.hcl", at.Filename)
			require.NotEmpty(t, vehicle.CodeOf(faults[0]))
		})
	}
}

// TestPlacesWithoutFile holds the places of a formula from a command line.
func TestPlacesWithoutFile(t *testing.T) {
	_, faults := Check("a and\n  é > 3*mm", nil, clauseScope(t), Type{})
	require.Len(t, faults, 1)
	at := faults[0].Subject
	require.Equal(t, []any{"formula", 2, 3, 8, 10}, []any{at.Filename, at.Start.Line, at.Start.Column, at.Start.Byte, at.End.Byte})
}

// TestConstantsAreFoldedExactly holds that one figure written in several ways becomes one
// float64: exact rationals, rounded once. Factors: NIST SP 811 (2008), appendix B.
func TestConstantsAreFoldedExactly(t *testing.T) {
	scope := testScope()
	value := func(source string) float64 {
		tree, faults := CheckText(source, scope, Type{})
		require.Empty(t, faults, source)
		require.IsType(t, &Constant{}, tree, source)
		return tree.(*Constant).Number
	}
	for _, same := range [][]string{
		{"1.75*inch", "44.45*mm", "44.45e-3*metre", "4.445*cm", "(1 + 3/4)*inch", "1750*thou"},
		{"0.1*mm + 0.2*mm", "0.3*mm"},
		{"90*km/hour", "25*metre/second", "90000*metre/(3600*second)"},
		{"1000*psi", "1000*lbf/inch**2", "1000*lbf/sq_in"},
		{"1/3*3", "1", "0.1*10", "2**-1*2"},
		{"180*deg", "pi*rad", "200*deg - 20*deg"},
		{"2*pi", "360*deg/rad"},
		{"celsius(135)", "fahrenheit(275)", "celsius(1350/10)"},
		{"50*percent", "0.5", "1/2"},
		{"-(-3*mm)", "3*mm", "+3*mm"},
		{"120*sq_cm", "12000*mm**2", "120*cm^2"},
	} {
		for _, source := range same[1:] {
			require.Equal(t, value(same[0]), value(source), "%s and %s", same[0], source)
		}
	}
	require.Equal(t, 0.04445, value("1.75*inch"))
	require.False(t, negative(value("-0")), "there is no minus zero")
	require.False(t, negative(value("0*mm - 0*mm")))
}

func negative(v float64) bool { return 1/v < 0 }

// TestUnitsOfConstants holds that folding keeps the unit and the digits the author wrote.
func TestUnitsOfConstants(t *testing.T) {
	scope := testScope()
	for _, x := range []struct {
		source, unit string
		decimals     int
	}{
		{"45*mm", "mm", 0}, {"45.0*mm", "mm", 1}, {"1.750*inch", "in", 3}, {".095*inch", "in", 3}, {"2*1.5*mm", "mm", 1},
		{"90*km/hour", "km/h", 0}, {"9/10*mm", "mm", 1}, {"1/3*mm", "mm", -1}, {"3/4*inch", "in", 2}, {"5*mm + 0.25*mm", "mm", 2},
		{"-0.5*mm", "mm", 1}, {"6*mm*2*mm", "mm2", 0}, {"1.5e3*mm", "mm", 0}, {"1.5e-3*metre", "m", 4}, {"350*newton/mm**2", "N/mm2", 0},
		{"3*kg/metre", "kg/m", 0}, {"12*kg*mm", "m.kg", 3}, {"celsius(20.5)", "degC", 1}, {"30", "", 0}, {"50*percent", "%", 0},
		{"3*metre/second**2", "m/s2", 0}, {"50*percent*50*percent", "", 2}, {"3*mm/inch", "", -1},
	} {
		tree, faults := CheckText(x.source, scope, Type{})
		require.Empty(t, faults, x.source)
		k := tree.(*Constant)
		require.Equal(t, x.unit, k.Unit.Name(), x.source)
		require.Equal(t, x.decimals, k.Decimals, x.source)
	}
}

// TestUnitNamesAreFree holds that no unit has the name of a part that stands at the root.
func TestUnitNamesAreFree(t *testing.T) {
	for _, u := range quantity.FormulaUnits() {
		part, _ := within(vehicle.BuiltIn().Root, u.Formula())
		require.Nil(t, part, u.Formula())
	}
}

// TestChainsWithinChains holds that a chain in the middle of a chain, which doubles what
// is walked with every level, ends in a sentence and at once.
func TestChainsWithinChains(t *testing.T) {
	scope := clauseScope(t)
	nested := func(levels int, inner, before, after string) string {
		return strings.Repeat(before, levels) + inner + strings.Repeat(after, levels)
	}
	_, faults := CheckText(nested(2, "n", "(0 < (", ") < 3 ? 1 : 2)")+" > 0", scope, Type{})
	require.Empty(t, faults)
	for _, source := range []string{
		nested(35, "n", "(0 < (", ") < 3 ? 1 : 2)") + " > 0",
		nested(35, "n", "(!a < (", ") < 3)"),
		nested(35, "n", "(not 0 < (", ") < !a)"),
	} {
		tree, faults := CheckText(source, scope, Type{})
		require.Nil(t, tree)
		require.NotEmpty(t, faults)
	}
}
