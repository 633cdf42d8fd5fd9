package quantity

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestSameFigure(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	length := Tolerance{Relative: 1e-9, Absolute: 1e-9}
	for _, c := range []struct {
		t    Tolerance
		a, b float64
		want bool
	}{
		{length, 0.04445, 1.75 * 0.0254, true},
		{length, 0.045, 0.0450000000009, true},
		{length, 0.045, 0.045000002, false},
		{length, 1000, 1000.0000009, true},
		{length, 1000, 1000.0000011, false},
		{length, 0, 1e-9, true},
		{length, 0, 1.1e-9, false},
		{length, -1e-10, 1e-10, true},
		{Tolerance{}, 0, math.Copysign(0, -1), true},
		{Tolerance{}, 1, math.Nextafter(1, 2), false},
		{length, inf, inf, true},
		{length, inf, -inf, false},
		{length, inf, math.MaxFloat64, false},
		{length, -math.MaxFloat64, math.MaxFloat64, false},
		{length, nan, nan, false},
		{length, nan, 1, false},
		{Tolerance{}, inf, inf, true},
		{Tolerance{}, inf, 0, false},
	} {
		require.Equal(t, c.want, c.t.Same(c.a, c.b), "%+v %v %v", c.t, c.a, c.b)
		require.Equal(t, c.want, c.t.Same(c.b, c.a), "%+v %v %v", c.t, c.b, c.a)
		require.Equal(t, c.want, c.t.Same(-c.a, -c.b), "%+v %v %v", c.t, -c.a, -c.b)
	}
}

// The rule in real numbers, where rounding cannot blur it.
func TestSameFigureAgreesWithTheRuleInRealNumbers(t *testing.T) {
	sweep(t, 20_000, func(source *rand.Rand) {
		tolerance := Tolerance{Relative: 1e-9, Absolute: []float64{0, 1e-9, 1e-6}[source.IntN(3)]}
		a := float64(source.IntN(2_000_000)-1_000_000) / 1000
		part := source.Float64() * 2
		if math.Abs(part-1) < 1e-3 {
			return
		}
		b := a + part*max(math.Abs(a)*1e-9, tolerance.Absolute)
		require.Equal(t, part < 1 || a == b, tolerance.Same(a, b), "%v and %v, %v of the tolerance", a, b, part)
	})
}

func checkBand(t require.TestingT, tolerance Tolerance, limit float64) {
	band := tolerance.Band(limit)
	if !band.Contains(limit) || !tolerance.Same(band.Low, limit) || !tolerance.Same(band.High, limit) {
		require.Failf(t, "not the same figure", "%+v: %x in %x", tolerance, limit, band)
	}
	if tolerance.Same(nextBelow(band.Low), limit) || tolerance.Same(nextAbove(band.High), limit) {
		require.Failf(t, "still the same figure outside", "%+v: %x in %x", tolerance, limit, band)
	}
}

func TestBandEndsAtTheFloatsWhereTheFigureChanges(t *testing.T) {
	sweep(t, 5_000, func(source *rand.Rand) { checkBand(t, drawTolerance(source), drawFloat(source)) })
	for _, limit := range corners {
		for _, tolerance := range []Tolerance{{}, {1e-9, 0}, {1e-9, 1e-9}, {0, 1e-12}, {0.125, 1e300}} {
			checkBand(t, tolerance, limit)
			checkBand(t, tolerance, -limit)
		}
	}
}

func TestBandOfShrunkDraws(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		absolute := rapid.SampledFrom([]float64{0, 1e-9, 1e-6, 1e-21}).Draw(t, "absolute")
		checkBand(t, Tolerance{1e-9, absolute}, rapid.Float64Range(-1e9, 1e9).Draw(t, "limit"))
	})
}

// Cut at the band, a comparison with the limit answers yes or no in each piece, never open.
func TestComparisonsAreSettledBelowWithinAndAboveTheBand(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) {
		tolerance, limit := drawTolerance(source), drawFloat(source)
		band := tolerance.Band(limit)
		pieces := []Range{band}
		if band.Low > -math.MaxFloat64 {
			pieces = append(pieces, Range{math.Inf(-1), nextBelow(band.Low)})
		}
		if band.High < math.MaxFloat64 {
			pieces = append(pieces, Range{nextAbove(band.High), math.Inf(1)})
		}
		for _, piece := range pieces {
			for name, comparison := range comparisons {
				require.NotEqual(t, Open, comparison.ranges(piece, Exactly(limit), tolerance), "%s: %x and %x", name, piece, limit)
			}
		}
	})
}

func TestBandOfWhatIsNoNumber(t *testing.T) {
	require.Equal(t, Everything, Tolerance{}.Band(math.NaN()))
	require.Equal(t, Range{math.MaxFloat64, math.Inf(1)}, Tolerance{1e-9, 1}.Band(math.Inf(1)))
	require.Equal(t, Exactly(3), Tolerance{}.Band(3))
}

func TestRoundingToWholeNumbersTakesTheSameFigure(t *testing.T) {
	plain := Tolerance{Relative: 1e-9, Absolute: 1e-12}
	for _, c := range []struct{ x, floor, ceil, round float64 }{
		{2.9999999999, 3, 3, 3},
		{3.0000000001, 3, 3, 3},
		{2.99999, 2, 3, 3},
		{3.00001, 3, 4, 3},
		{2.5, 2, 3, 3},
		{2.4999999999, 2, 3, 3},
		{2.4999, 2, 3, 2},
		{-2.5, -3, -2, -3},
		{-2.4999999999, -3, -2, -3},
		{-2.9999999999, -3, -3, -3},
		{0.4999999999999, 0, 1, 1},
		{0x1.fffffffffffffp-2, 0, 1, 1},
		{-1e-13, 0, 0, 0},
		{1e15 + 0.5, 1e15 + 1, 1e15 + 1, 1e15 + 1},
		{math.MaxFloat64, math.MaxFloat64, math.MaxFloat64, math.MaxFloat64},
	} {
		x := Exactly(c.x)
		require.Equal(t, Exactly(c.floor), x.Floor(plain), "floor of %v", c.x)
		require.Equal(t, Exactly(c.ceil), x.Ceil(plain), "ceil of %v", c.x)
		require.Equal(t, Exactly(c.round), x.Round(plain), "round of %v", c.x)
	}
	exact := Tolerance{}
	require.Equal(t, Exactly(2), Exactly(0x1.7ffffffffffffp1).Floor(exact))
	require.Equal(t, Exactly(0), Exactly(0x1.fffffffffffffp-2).Round(exact))
	require.Equal(t, Range{-2, 5}, Range{-1.5, 4.5}.Round(exact))
	require.Equal(t, Everything, Everything.Floor(plain))
}

func TestRoundingToWholeNumbersNeverFalls(t *testing.T) {
	sweep(t, 20_000, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		if tolerance.Absolute > 1 {
			tolerance.Absolute = 0.3
		}
		x := drawFloat(source)
		if source.IntN(2) == 0 {
			x = math.Ldexp(float64(source.IntN(64)), source.IntN(34)-1)
		}
		y := max(x, drawFloat(source))
		if source.IntN(2) == 0 {
			y = x + math.Abs(x)*tolerance.Relative*source.Float64()*2 + source.Float64()*2
		}
		for name, whole := range map[string]func(Range, Tolerance) Range{
			"floor": Range.Floor, "ceil": Range.Ceil, "round": Range.Round,
		} {
			a, b := whole(Exactly(x), tolerance), whole(Exactly(y), tolerance)
			require.LessOrEqual(t, a.High, b.Low, "%s of %x and %x, %+v", name, x, y, tolerance)
			require.Equal(t, Range{a.Low, b.High}, whole(Range{x, y}, tolerance))
			require.Equal(t, a.Low, math.Trunc(a.Low))
		}
	})
}
