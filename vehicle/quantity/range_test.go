package quantity

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestBetweenWidensWhatIsNoRange(t *testing.T) {
	inf := math.Inf(1)
	require.Equal(t, Range{1, 2}, Between(1, 2))
	require.Equal(t, Everything, Between(2, 1))
	require.Equal(t, Everything, Between(math.NaN(), 1))
	require.Equal(t, Everything, Between(1, math.NaN()))
	require.Equal(t, Everything, Exactly(math.NaN()))
	require.Equal(t, Range{math.MaxFloat64, inf}, Exactly(inf))
	require.Equal(t, Range{-inf, -math.MaxFloat64}, Exactly(-inf))
}

func TestWidthAndMiddle(t *testing.T) {
	inf, least := math.Inf(1), math.SmallestNonzeroFloat64
	for _, c := range []struct {
		r             Range
		width, middle float64
	}{
		{Range{1, 2}, 1, 1.5},
		{Range{-1, 3}, 4, 1},
		{Exactly(0.1), 0, 0.1},
		{Range{-0.2, 0.1}, 0x1.3333333333334p-2, -0.05}, // the float64 next to 0.3, which is too little
		{Range{math.MaxFloat64 / 2, math.MaxFloat64}, math.MaxFloat64 / 2, math.MaxFloat64 * 0.75},
		{Range{-math.MaxFloat64, math.MaxFloat64}, inf, 0},
		{Range{least, least}, 0, least},
		{Range{least, 3 * least}, 2 * least, 2 * least},
		{Everything, inf, 0},
		{Range{5, inf}, inf, math.MaxFloat64},
		{Range{-inf, 5}, inf, -math.MaxFloat64},
	} {
		require.Equal(t, c.width, c.r.Width(), "width of %v", c.r)
		require.Equal(t, c.middle, c.r.Middle(), "middle of %v", c.r)
	}
	require.True(t, Exactly(3).IsExact())
	require.False(t, Range{3, nextAbove(3)}.IsExact())
}

func TestHullAndMeet(t *testing.T) {
	require.Equal(t, Range{1, 5}, Range{1, 2}.Hull(Range{4, 5}))
	meet, meets := Range{1, 3}.Meet(Range{2, 5})
	require.True(t, meets)
	require.Equal(t, Range{2, 3}, meet)
	meet, meets = Range{1, 2}.Meet(Range{2, 5})
	require.True(t, meets)
	require.Equal(t, Exactly(2), meet)
	_, meets = Range{1, 2}.Meet(Range{3, 5})
	require.False(t, meets)
}

func TestMiddleHullAndMeetOfDraws(t *testing.T) {
	sweep(t, 10_000, func(source *rand.Rand) {
		a, b := drawRange(source), drawRange(source)
		x, y := drawMember(source, a), drawMember(source, b)
		middle := a.Middle()
		require.True(t, a.Contains(middle) && math.Abs(middle) <= math.MaxFloat64, "middle of %x: %x", a, middle)
		require.True(t, a.Hull(b).Contains(x) && a.Hull(b).Contains(y))
		meet, meets := a.Meet(b)
		require.Equal(t, a.Contains(x) && b.Contains(x), meets && meet.Contains(x))
		require.Equal(t, meets, a.Contains(b.Low) || b.Contains(a.Low) || a.Low == b.Low)
	})
}

// Whatever two floats a range is put together from, no result has a NaN in it.
func TestNothingIsEverNaN(t *testing.T) {
	odd := append([]float64{math.NaN(), math.Inf(1), math.Inf(-1), math.Copysign(0, -1), 1e308, -1e308}, corners...)
	draw := func(source *rand.Rand) float64 {
		if source.IntN(2) == 0 {
			return odd[source.IntN(len(odd))]
		}
		return math.Float64frombits(source.Uint64())
	}
	sweep(t, 20_000, func(source *rand.Rand) {
		a, b := Range{draw(source), draw(source)}, Range{draw(source), draw(source)}
		tolerance := Tolerance{1e-9, 1e-9}
		meet, _ := a.Meet(b)
		for name, r := range map[string]Range{
			"plus": a.Plus(b), "minus": a.Minus(b), "times": a.Times(b), "over": a.Over(b), "negate": a.Negate(),
			"abs": a.Abs(), "square": a.Square(), "sqrt": a.Sqrt(), "power": a.Power(source.IntN(20) - 10),
			"min": a.Min(b), "max": a.Max(b), "floor": a.Floor(tolerance), "ceil": a.Ceil(tolerance),
			"round": a.Round(tolerance), "hypot": a.Hypot(b), "sin": a.Sin(), "cos": a.Cos(), "tan": a.Tan(),
			"atan2": Atan2(a, b), "hull": a.Hull(b), "meet": meet, "band": tolerance.Band(a.Low),
			"between": Between(a.Low, a.High), "exactly": Exactly(a.Low),
		} {
			require.False(t, math.IsNaN(r.Low) || math.IsNaN(r.High), "%s of %v and %v: %v", name, a, b, r)
			if Between(a.Low, a.High) == a && Between(b.Low, b.High) == b {
				require.LessOrEqual(t, r.Low, r.High, "%s of %v and %v", name, a, b)
				require.True(t, r.Low <= math.MaxFloat64 && r.High >= -math.MaxFloat64, "%s of %v and %v: %v", name, a, b, r)
			}
		}
		require.False(t, math.IsNaN(a.Middle()))
		require.False(t, math.IsNaN(a.Width()))
		for name, comparison := range comparisons {
			truth := comparison.ranges(a, b, tolerance)
			nan := math.IsNaN(a.Low + a.High + b.Low + b.High)
			require.LessOrEqual(t, truth, Yes, "%s of %v and %v, NaN %v", name, a, b, nan)
		}
	})
	nowhere := Range{math.NaN(), math.NaN()}
	for name, comparison := range comparisons {
		require.Equal(t, Open, comparison.ranges(nowhere, Exactly(1), Tolerance{}), name)
	}
}
