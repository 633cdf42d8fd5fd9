package quantity

import (
	"math"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestNumbersArePrintedInAUnit(t *testing.T) {
	for _, c := range []struct {
		si       float64
		unit     string
		decimals int
		printed  string
	}{
		{0.04445, "mm", 2, "44.45"},
		{0.04445, "in", 2, "1.75"},
		{0.04445, "in", 1, "1.8"}, // the half goes away from zero
		{-0.04445, "in", 1, "-1.8"},
		{0.0024, "mm", 2, "2.40"},
		{0.0000001, "mm", 2, "0.00"},
		{-0.0000001, "mm", 2, "0.00"},
		{0.04445, "in", -1, "1.75"},
		{0.002413, "mm", -1, "2.413"},
		{0.1 + 0.2, "", -1, "0.3"},
		{1. / 3, "", -1, "0.333333333"},
		{math.Pi / 4, "deg", -1, "45"},
		{408.15, "degC", -1, "135"},
		{1e20, "", -1, "1e20"},
		{-1.25e-9, "kg", -1, "0"}, // less than a milligram is nothing
		{0, "mm", -1, "0"},
		{0, "mm", 3, "0.000"},
		{1.5e16, "", 2, "1.5e16"},
		{123456.789, "", 2, "123456.79"},
		{math.Inf(1), "mm", 1, "infinite"},
		{math.Inf(-1), "mm", -1, "-infinite"},
		{math.NaN(), "mm", -1, "unknown"},
		{0.9, "%", 0, "90"},
	} {
		u := Unit{}
		if c.unit != "" {
			u = mustUnit(t, c.unit)
		}
		require.Equal(t, c.printed, FormatNumber(c.si, u, c.decimals), "%v %s %d", c.si, c.unit, c.decimals)
	}
}

func TestRangesArePrintedInAUnit(t *testing.T) {
	mm, none := mustUnit(t, "mm"), Unit{}
	inf := math.Inf(1)
	for _, c := range []struct {
		r        Range
		unit     Unit
		decimals int
		printed  string
	}{
		{Range{0.0025, 0.00256}, mm, 2, "2.50 to 2.56 mm"},
		{Range{0.045, 0.045}, mm, 0, "45 mm"},
		{Range{0.045, 0.045}, mustUnit(t, "in"), -1, "1.77165354 in"},
		{Range{0.044, inf}, mm, 0, "at least 44 mm"},
		{Range{-inf, 0.05}, mm, 0, "at most 50 mm"},
		{Everything, mm, 0, "any"},
		{Range{math.NaN(), math.NaN()}, mm, 0, "any"},
		{Range{2, 3}, none, 0, "2 to 3"},
		{Range{3, 3}, none, -1, "3"},
		{Range{0.04496, 0.04504}, mm, 0, "44.96 to 45.04 mm"},      // never "45 to 45"
		{Range{0.045, 0.045000000000001}, mm, 0, "45 mm"},          // one figure
		{Range{0.0449, 0.0451}, mustUnit(t, "cm"), 0, "4 to 5 cm"}, // as few digits as asked for
		{Range{0.04499, 0.04501}, mm, -1, "44.99 to 45.01 mm"},
	} {
		require.Equal(t, c.printed, c.r.In(c.unit, c.decimals), "%v", c.r)
	}
}

// What is printed without a wish for digits reads back as the same figure, and no shorter
// text would.
func TestShortestNumbersReadBack(t *testing.T) {
	units := append(FormulaUnits(), Unit{}, mustUnit(t, "degC"), mustUnit(t, "degF"))
	checkRounds(t, func(t *rapid.T) {
		u := rapid.SampledFrom(units).Draw(t, "unit")
		number := strconv.FormatFloat(rapid.Float64Range(-1e9, 1e9).Draw(t, "number"), 'g', rapid.IntRange(1, 8).Draw(t, "digits"), 64)
		v := u.ToSI(rat(t, number))
		printed := FormatNumber(v, u, -1)
		require.True(t, u.Dimension().Same().Same(v, u.ToSI(rat(t, printed))), "%s as %s %s", number, printed, u)
		require.LessOrEqual(t, len(printed), len(FormatNumber(v, u, 12))+4)
	})
}

// A figure printed with its own decimals shows the digits that were written.
func TestDecimalsAsMeant(t *testing.T) {
	units := FormulaUnits()
	checkRounds(t, func(t *rapid.T) {
		u := rapid.SampledFrom(units).Draw(t, "unit")
		decimals := rapid.IntRange(0, 5).Draw(t, "decimals")
		number := strconv.FormatFloat(rapid.Float64Range(-99999, 99999).Draw(t, "number"), 'f', decimals, 64)
		f := mustFigure(t, number+" "+u.Name())
		require.Equal(t, decimals, f.Decimals)
		if rat(t, number).Sign() != 0 {
			require.Equal(t, number, FormatNumber(f.Reading, u, f.Decimals))
			require.Equal(t, number+" "+u.Name(), f.Range.In(u, f.Decimals))
		}
		require.Equal(t, number+" "+u.Name(), f.String())
	})
}
