package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestNestingByHand(t *testing.T) {
	n := Nest([]float64{2, 4, 3, 3}, []Bar{{Length: 6}}, 0)
	require.Equal(t, [][]int{{1, 0}, {2, 3}}, cutsOf(n))
	require.True(t, n.IsLeast)
	require.InDelta(t, 12, n.Bought, 1e-12)
	n = Nest([]float64{3, 3, 3, 3}, []Bar{{Length: 6}}, 0.003)
	require.Len(t, n.Bars, 4, "a kerf between two halves leaves no room")
	require.InDelta(t, 24, n.Least, 1e-12)
	n = Nest([]float64{3, 2.997}, []Bar{{Length: 6}}, 0.003)
	require.Len(t, n.Bars, 1, "the last cut needs no kerf beyond the bar's end")
	require.InDelta(t, 0, n.Bars[0].Rest, 1e-9)
	n = Nest([]float64{2, 2}, []Bar{{Length: 6}, {Length: 4.5}}, 0.003)
	require.Equal(t, 1, n.Bars[0].Bar, "the shorter bar holds both")
	n = Nest([]float64{7, 0, math.NaN(), 2, 2}, []Bar{{Length: 6, Count: 0}, {Length: 3}}, 0.003)
	require.Len(t, n.Faults, 3)
	require.Equal(t, CutTooLong, n.Faults[0].Problem)
	require.InDelta(t, 1, n.Faults[0].Missing, 1e-12)
	require.Equal(t, NotALength, n.Faults[2].Problem)
	n = Nest([]float64{5, 5, 5}, []Bar{{Length: 6, Count: 2}}, 0.003)
	require.Len(t, n.Bars, 2)
	require.Equal(t, Fault{Problem: BarsUsedUp, At: 2}, *n.Faults[0])
	require.Empty(t, Nest(nil, []Bar{{Length: 6}}, 0).Bars)
	require.Len(t, Nest([]float64{1}, nil, 0).Faults, 1)
}

func cutsOf(n Nesting) (cuts [][]int) {
	for _, bar := range n.Bars {
		cuts = append(cuts, bar.Cuts)
	}
	return cuts
}

func TestNestingIsWholeAndNeverBelowTheBound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cuts := rapid.SliceOfN(rapid.Float64Range(0.05, 6.2), 0, 40).Draw(t, "cuts")
		lengths := rapid.SliceOfNDistinct(rapid.SampledFrom([]float64{3, 4, 6, 6.4, 7.5}), 1, 3, rapid.ID[float64]).Draw(t, "bars")
		kerf := rapid.SampledFrom([]float64{0, 0.002, 0.004}).Draw(t, "kerf")
		var bars []Bar
		for _, length := range lengths {
			bars = append(bars, Bar{length, rapid.SampledFrom([]int{0, 0, 5}).Draw(t, "count")})
		}
		n := Nest(cuts, bars, kerf)
		require.Equal(t, n, Nest(cuts, bars, kerf), "always the same")
		seen, bought := map[int]int{}, 0.0
		used := map[int]int{}
		for _, use := range n.Bars {
			taken := -kerf
			for _, cut := range use.Cuts {
				seen[cut]++
				taken += cuts[cut] + kerf
			}
			require.LessOrEqual(t, taken, bars[use.Bar].Length+1e-6)
			require.InDelta(t, max(0, bars[use.Bar].Length-taken-kerf), use.Rest, 1e-6)
			bought += bars[use.Bar].Length
			used[use.Bar]++
		}
		for kind, count := range used {
			require.True(t, bars[kind].Count == 0 || count <= bars[kind].Count)
		}
		for _, fault := range n.Faults {
			seen[fault.At]++
		}
		for i := range cuts {
			require.Equal(t, 1, seen[i], "cut %d", i)
		}
		require.InDelta(t, n.Bought, bought, 1e-9)
		if len(n.Faults) == 0 {
			require.GreaterOrEqual(t, n.Bought, n.Least-1e-9)
		}
	})
}

// Bars sawn up at random, without waste, can be put together again: the least is known.
func TestNestingAgainstBarsSawnUp(t *testing.T) {
	over, bars := 0.0, 0
	sweep(t, 30, func(source *rand.Rand) {
		const kerf = 0.003
		var cuts []float64
		count := 4 + source.IntN(10)
		for range count {
			rest := 6.0
			for rest > 0.9 && source.IntN(6) > 0 {
				cut := 0.2 + (rest-0.4)*source.Float64()
				cuts = append(cuts, cut)
				rest -= cut + kerf
			}
			cuts = append(cuts, rest)
		}
		n := Nest(cuts, []Bar{{Length: 6}}, kerf)
		require.Empty(t, n.Faults)
		require.LessOrEqual(t, n.Least, 6*float64(count)+1e-9, "the bound is no more than the least")
		require.LessOrEqual(t, len(n.Bars), count+1)
		over += n.Bought - 6*float64(count)
		bars += count
	})
	t.Logf("%d bars sawn up, %.0f more used", bars, over/6)
}
