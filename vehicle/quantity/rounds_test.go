package quantity

import (
	"flag"
	"math"
	"math/rand/v2"
	"testing"

	"pgregory.net/rapid"
)

var rounds = flag.Int("rounds", 1, "how many times over the heavy draws are made; 100 makes them in full")

// checkRounds checks a property on a hundred draws a round. rapid logs the seed of a draw
// that fails.
func checkRounds(t *testing.T, property func(t *rapid.T)) {
	t.Helper()
	for range *rounds {
		rapid.Check(t, property)
	}
}

// sweep calls a check with that many draws a round from a source of numbers whose seed it
// logs.
func sweep(t *testing.T, draws int, check func(source *rand.Rand)) {
	t.Helper()
	for round := range *rounds {
		seed := uint64(20270314 + round)
		source := rand.New(rand.NewPCG(seed, 1))
		for range draws {
			check(source)
		}
	}
	t.Logf("%d draws, seeds from 20270314", draws**rounds)
}

// corners are the numbers at which floating-point arithmetic has its corners.
var corners = []float64{
	0, math.SmallestNonzeroFloat64, 3 * math.SmallestNonzeroFloat64, 0x1p-1022, 0x0.fffffffffffffp-1022,
	0x1p-1000, 0x1p-970, 0x1p-968, 0x1p-960, 0x1.8p-540, 0x1p-537, 0x1p-53, 1e-12, 1e-9, 0.1, 1.0 / 3, 0.5,
	0x1.fffffffffffffp-1, 1, 0x1.0000000000001p+0, 1.5, math.Sqrt2, 3, 25.4, math.Pi, 0x1p52, 0x1p53, 0x1p54, 1e22,
	0x1p511, 0x1p512, 0x1p970, 0x1p971, 0x1p1022, 0x1p1023, 0x1.ffffffffffffep+1023, math.MaxFloat64,
}

// drawFloat returns a finite float64 of any size: a corner or its neighbour, any pattern of
// bits, a number of everyday size, or a short decimal.
func drawFloat(source *rand.Rand) float64 {
	x := 0.0
	switch source.IntN(5) {
	case 0:
		x = corners[source.IntN(len(corners))]
	case 1:
		x = corners[source.IntN(len(corners))]
		for range source.IntN(4) {
			x = math.Nextafter(x, math.Inf(source.IntN(2)*2-1))
		}
	case 2:
		x = math.Float64frombits(source.Uint64())
	case 3:
		x = math.Ldexp(source.Float64(), source.IntN(40)-20)
	default:
		x = float64(source.IntN(100000)) / 1000
	}
	if source.IntN(2) == 0 {
		x = -x
	}
	if x != x || math.Abs(x) > math.MaxFloat64 {
		return 0
	}
	return x
}

// drawRange returns a range: exact, bounded or without a bound.
func drawRange(source *rand.Rand) Range {
	a, b := drawFloat(source), drawFloat(source)
	switch r := Between(min(a, b), max(a, b)); source.IntN(10) {
	case 0:
		return Range{r.Low, math.Inf(1)}
	case 1:
		return Range{math.Inf(-1), r.High}
	case 2, 3, 4:
		return Exactly(a)
	case 5:
		return Between(a, a+math.Abs(a)*1e-3)
	default:
		return r
	}
}

// drawMember returns a number of the range, often one of its ends; a finite one where an
// end is missing.
func drawMember(source *rand.Rand, r Range) float64 {
	low, high := finite(r.Low), finite(r.High)
	switch source.IntN(4) {
	case 0:
		return low
	case 1:
		return high
	case 2:
		return max(low, min(drawFloat(source), high))
	default:
		part := source.Float64()
		return max(low, min(low*(1-part)+high*part, high))
	}
}
