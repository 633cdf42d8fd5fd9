package quantity

import (
	"math"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// TestSumEncloses holds sums against exact rationals (math/big).
func TestSumEncloses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		numbers := rapid.SliceOfN(rapid.Float64Range(-1e6, 1e6), 0, 80).Draw(t, "numbers")
		widths := rapid.SliceOfN(rapid.SampledFrom([]float64{0, 0, 1e-9, 0.5}), len(numbers), len(numbers)).Draw(t, "widths")
		var sum Sum
		low, high := new(big.Rat), new(big.Rat)
		for i, v := range numbers {
			r := Between(v, v+widths[i])
			sum.Add(r)
			low.Add(low, new(big.Rat).SetFloat64(r.Low))
			high.Add(high, new(big.Rat).SetFloat64(r.High))
		}
		total := sum.Total()
		require.LessOrEqual(t, new(big.Rat).SetFloat64(total.Low).Cmp(low), 0)
		require.GreaterOrEqual(t, new(big.Rat).SetFloat64(total.High).Cmp(high), 0)
		nearest, _ := low.Float64()
		require.LessOrEqual(t, math.Nextafter(math.Nextafter(nearest, math.Inf(-1)), math.Inf(-1)), total.Low, "at most 2 ulp off")
	})
}

func TestSumCorners(t *testing.T) {
	sumOf := func(ranges ...Range) Range {
		var s Sum
		for _, r := range ranges {
			s.Add(r)
		}
		return s.Total()
	}
	require.Equal(t, Range{}, sumOf())
	require.Equal(t, Exactly(6), sumOf(Exactly(1), Exactly(2), Exactly(3)))
	lost := sumOf(Exactly(1e16), Exactly(1), Exactly(-1e16))
	require.True(t, lost.Contains(1), "nothing is lost in between")
	require.InDelta(t, 0, lost.High-lost.Low, 1e-14)
	require.Equal(t, Everything, sumOf(Exactly(1), Everything))
	require.Equal(t, Range{6, math.Inf(1)}, sumOf(Exactly(1), Range{5, math.Inf(1)}))
	require.Equal(t, Everything, sumOf(Exactly(math.MaxFloat64), Exactly(math.MaxFloat64)))
}
