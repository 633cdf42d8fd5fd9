package quantity

import (
	"fmt"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// drawnNumber draws a number as somebody may write it, without a sign.
func drawnNumber(t *rapid.T, label string) string {
	top := rapid.IntRange(1, 63).Draw(t, label+" top")
	bottom := top + rapid.IntRange(1, 64).Draw(t, label+" bottom")
	whole := rapid.IntRange(0, 99999).Draw(t, label+" whole")
	switch rapid.IntRange(0, 5).Draw(t, label+" form") {
	case 0:
		return strconv.Itoa(whole)
	case 1:
		return fmt.Sprintf("%d.%0*d", whole, rapid.IntRange(1, 6).Draw(t, label+" digits"), top%10)
	case 2:
		return fmt.Sprintf(".%03d", whole%1000)
	case 3:
		return fmt.Sprintf("%d/%d", top, bottom)
	case 4:
		return fmt.Sprintf("%d%s%d/%d", whole, rapid.SampledFrom([]string{" ", "-", "  "}).Draw(t, label+" joint"), top, bottom)
	}
	return fmt.Sprintf("%d.%de%d", whole, top, rapid.IntRange(-30, 30).Draw(t, label+" power"))
}

// drawnUnit draws a spelling of a unit, or a product or quotient, that can have a tolerance.
func drawnUnit(t *rapid.T) string {
	spelling := rapid.SampledFrom(append([]string{"", "kg/m", "N/mm^2", "lb/in3", "kg/(m.s2)", "m s-2", "/s", "ft lbf/s"}, knownUnits.order...)).Draw(t, "unit")
	return spelling
}

// drawnFigure draws a figure in any of the forms that have no fault.
func drawnFigure(t *rapid.T) string {
	unit := drawnUnit(t)
	a, b := drawnNumber(t, "a"), drawnNumber(t, "b")
	minus := rapid.SampledFrom([]string{"", "", "-", "−", "+"}).Draw(t, "sign")
	blank := rapid.SampledFrom([]string{" ", "", "\u00a0"}).Draw(t, "blank")
	if unit == "" || unit == "/s" {
		blank = ""
	}
	switch rapid.IntRange(0, 7).Draw(t, "form of figure") {
	case 0:
		return minus + a + blank + unit
	case 1:
		return minus + a + " " + rapid.SampledFrom([]string{"±", "+/-", "+-"}).Draw(t, "plus minus") + " " + b + blank + unit
	case 2:
		return minus + a + blank + unit + "±" + b
	case 3:
		return minus + a + " " + unit + " +" + a + "/-" + b + blank + unit
	case 4:
		return "-" + a + " to " + b + blank + unit
	case 5:
		return rapid.SampledFrom([]string{">", ">=", "<", "≤ ", "at least "}).Draw(t, "sense") + minus + a + blank + unit
	case 6:
		return rapid.SampledFrom([]string{"13 bwg", "7 swg"}).Draw(t, "gauge") + " ± " + b + " mm"
	}
	return minus + "5 ft " + strconv.Itoa(rapid.IntRange(0, 11).Draw(t, "inches")) + " in"
}

// A figure prints as one that reads back the same, and holds its own reading.
func TestFiguresReadBack(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		text := drawnFigure(t)
		f := mustFigure(t, text)
		requireSound(t, f)
		require.Equal(t, f, mustFigure(t, f.String()), "%q prints as %q", text, f)
	})
}

// requireSound checks what every figure promises.
func requireSound(t require.TestingT, f Figure) {
	require.True(t, f.Range.Low <= f.Reading && f.Reading <= f.Range.High, "%v", f)
	require.True(t, f.OneSided || f.Range.Width() < 1e300, "%v", f)
	require.False(t, f.OneSided && f.Toleranced)
	require.True(t, f.Toleranced || f.OneSided || f.Range.IsExact())
	require.GreaterOrEqual(t, f.Decimals, 0)
}

// The two ways to write one figure give one float: a reading with its tolerance and the
// ends that they come to.
func TestTolerancesAndEndsAgree(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		unit := rapid.SampledFrom(FormulaUnits()).Draw(t, "unit").Name()
		reading := rapid.IntRange(-100000, 100000).Draw(t, "reading")
		half := rapid.IntRange(0, 5000).Draw(t, "half")
		hundredths := func(n int) string { return strconv.FormatFloat(float64(n)/100, 'f', 2, 64) }
		around := mustFigure(t, hundredths(reading)+" ± "+hundredths(half)+" "+unit)
		ends := mustFigure(t, hundredths(reading-half)+" to "+hundredths(reading+half)+" "+unit)
		require.Equal(t, ends.Range, around.Range)
		require.Equal(t, ends.Reading, around.Reading)
	})
}
