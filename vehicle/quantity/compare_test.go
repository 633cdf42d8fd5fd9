package quantity

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

var comparisons = map[string]struct {
	ranges func(a, b Range, t Tolerance) Truth
	exact  func(x, y float64, t Tolerance) bool
}{
	"at least":  {IsAtLeast, func(x, y float64, t Tolerance) bool { return x > y || t.Same(x, y) }},
	"more than": {IsMoreThan, func(x, y float64, t Tolerance) bool { return x > y && !t.Same(x, y) }},
	"at most":   {IsAtMost, func(x, y float64, t Tolerance) bool { return x < y || t.Same(x, y) }},
	"less than": {IsLessThan, func(x, y float64, t Tolerance) bool { return x < y && !t.Same(x, y) }},
	"equal":     {IsEqual, func(x, y float64, t Tolerance) bool { return t.Same(x, y) }},
	"different": {IsDifferent, func(x, y float64, t Tolerance) bool { return !t.Same(x, y) }},
}

func drawTolerance(source *rand.Rand) Tolerance {
	absolutes := []float64{0, 1e-9, 1e-6, 1e-12, 1e-21, 1e-3, math.SmallestNonzeroFloat64, 1e300}
	relatives := []float64{0, 1e-9, 1e-9, 0.125, 0x1p-52, 1e-3}
	return Tolerance{
		Relative: relatives[source.IntN(len(relatives))],
		Absolute: absolutes[source.IntN(len(absolutes))],
	}
}

// drawPair returns two ranges that often lie close to each other or share an end.
func drawPair(source *rand.Rand, t Tolerance) (a, b Range) {
	a, b = drawRange(source), drawRange(source)
	x := drawFloat(source)
	nudged := func(y float64) float64 {
		return finite(floatSteps(y, source.IntN(7)-3))
	}
	band := t.Band(x)
	switch source.IntN(4) {
	case 0:
		a, b = Exactly(x), Exactly(nudged(band.High))
	case 1:
		a, b = Exactly(nudged(band.Low)), Exactly(x)
	case 2:
		high := nudged(band.High)
		a, b = Between(min(a.Low, x), x), Between(high, max(b.High, high))
	}
	if source.IntN(2) == 0 {
		return b, a
	}
	return a, b
}

// checkComparisons wants every answer to agree with the exact comparison of every pair.
func checkComparisons(t require.TestingT, a, b Range, x, y float64, tolerance Tolerance) {
	for name, comparison := range comparisons {
		truth := comparison.ranges(a, b, tolerance)
		exact := comparison.exact(x, y, tolerance)
		if truth != Open && truth != TruthOf(exact) {
			require.Failf(t, "unsound", "%s, %+v: %x and %x are %v, but %x and %x %v", name, tolerance, a, b, truth, x, y, exact)
		}
		if exactly := comparison.ranges(Exactly(x), Exactly(y), tolerance); exactly != TruthOf(exact) {
			require.Failf(t, "exact ranges differ", "%s, %+v: %x and %x are %v", name, tolerance, x, y, exactly)
		}
	}
}

func TestComparisonsHoldForEveryPair(t *testing.T) {
	sweep(t, 20_000, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		a, b := drawPair(source, tolerance)
		for range 3 {
			checkComparisons(t, a, b, drawMember(source, a), drawMember(source, b), tolerance)
		}
	})
}

func TestComparisonsHoldForShrunkDraws(t *testing.T) {
	number := rapid.Float64Range(-1e6, 1e6)
	checkRounds(t, func(t *rapid.T) {
		draw := func(name string) (Range, float64) {
			low := number.Draw(t, name+" low")
			high := max(low, number.Draw(t, name+" high"))
			return Range{low, high}, rapid.Float64Range(low, high).Draw(t, name+" member")
		}
		a, x := draw("a")
		b, y := draw("b")
		tolerance := Tolerance{1e-9, rapid.SampledFrom([]float64{0, 1e-9, 1e-3}).Draw(t, "absolute")}
		checkComparisons(t, a, b, x, y, tolerance)
		checkComparisons(t, a, b, a.Low, b.High, tolerance)
		checkComparisons(t, a, b, a.High, b.Low, tolerance)
	})
}

// An answer is open only if pairs at the ends differ, so that nothing is held back.
func TestComparisonsAreOpenOnlyWherePairsDiffer(t *testing.T) {
	sweep(t, 20_000, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		a, b := drawPair(source, tolerance)
		if math.IsInf(a.Width(), 0) || math.IsInf(b.Width(), 0) {
			return
		}
		for name, comparison := range comparisons {
			if comparison.ranges(a, b, tolerance) != Open {
				continue
			}
			seen := map[bool]bool{}
			for _, x := range []float64{a.Low, a.High, max(a.Low, min(b.Low, a.High)), max(a.Low, min(b.High, a.High))} {
				for _, y := range []float64{b.Low, b.High, max(b.Low, min(a.Low, b.High)), max(b.Low, min(a.High, b.High))} {
					seen[comparison.exact(x, y, tolerance)] = true
				}
			}
			require.Len(t, seen, 2, "%s of %x and %x, %+v", name, a, b, tolerance)
		}
	})
}

// If a is surely below b, whatever is lower is surely below whatever is higher.
func TestSameFigureRuleIsMonotonic(t *testing.T) {
	sweep(t, 20_000, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		a, b := drawPair(source, tolerance)
		low, high := drawMember(source, a), drawMember(source, b)
		lower, higher := low, high
		if source.IntN(2) == 0 {
			lower = finite(floatSteps(low, -source.IntN(4)))
			higher = finite(floatSteps(high, source.IntN(4)))
		} else {
			lower = min(low, drawFloat(source))
			higher = max(high, drawFloat(source))
		}
		if tolerance.surelyBelow(low, high) {
			require.True(t, tolerance.surelyBelow(lower, higher), "%+v: %x below %x, but not %x below %x", tolerance, low, high, lower, higher)
		}
		require.NotEqual(t, tolerance.surelyBelow(low, high), tolerance.notBelow(low, high), "%+v: %x %x", tolerance, low, high)
		require.Equal(t, low < high && !tolerance.Same(low, high), tolerance.surelyBelow(low, high))
	})
}

func TestComparisonsOfReadings(t *testing.T) {
	wall := Tolerance{1e-9, 1e-9} // metres
	limit := Exactly(0.0025)
	require.Equal(t, Yes, IsAtLeast(Range{0.00250, 0.00256}, limit, wall))
	require.Equal(t, Open, IsAtLeast(Range{0.00249, 0.00255}, limit, wall))
	require.Equal(t, No, IsAtLeast(Range{0.00240, 0.00249}, limit, wall))
	require.Equal(t, Yes, IsAtLeast(Exactly(0.0024999999), limit, wall), "0.1 nm short")
	require.Equal(t, No, IsMoreThan(Exactly(0.0025000001), limit, wall), "0.1 nm over")
	require.Equal(t, Open, IsMoreThan(Range{0.0025, math.Inf(1)}, limit, wall), "a reading \"> 2.5 mm\"")
	require.Equal(t, Yes, IsAtLeast(Range{0.0025, math.Inf(1)}, limit, wall))
	require.Equal(t, Yes, IsEqual(Range{0.0025 - 1e-10, 0.0025 + 1e-10}, limit, wall))
	require.Equal(t, Open, IsEqual(Range{0.0024, 0.0026}, limit, wall))
	require.Equal(t, No, IsEqual(Range{0.0026, 0.0027}, limit, wall))
	count := Tolerance{}
	require.Equal(t, No, IsAtLeast(Exactly(2), Exactly(3), count))
	require.Equal(t, No, IsEqual(Exactly(2), Exactly(math.Nextafter(2, 3)), count))
	require.Equal(t, Open, IsAtLeast(Everything, Everything, count))
}
