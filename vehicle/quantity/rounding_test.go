package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// exactBounds returns the greatest float64 not above a real number and the least not below
// it, given the number's nearest float64 and where that lies: -1 below the number, 0 on it,
// 1 above.
func exactBounds(nearest float64, side int) (below, above float64) {
	switch {
	case nearest > math.MaxFloat64:
		return math.MaxFloat64, nearest
	case nearest < -math.MaxFloat64:
		return nearest, -math.MaxFloat64
	case side < 0:
		return nearest, math.Nextafter(nearest, math.Inf(1))
	case side > 0:
		return math.Nextafter(nearest, math.Inf(-1)), nearest
	}
	return nearest, nearest
}

func boundsOfRational(x *big.Rat) (below, above float64) {
	nearest, _ := x.Float64() // its second result calls an underflow exact
	if math.IsInf(nearest, 0) {
		return exactBounds(nearest, 0)
	}
	return exactBounds(nearest, new(big.Rat).SetFloat64(nearest).Cmp(x))
}

// boundsOfFloat is for numbers that have no float64 of their own.
func boundsOfFloat(x *big.Float) (below, above float64) {
	nearest, accuracy := x.Float64()
	return exactBounds(nearest, int(accuracy))
}

func rational(x float64) *big.Rat { return new(big.Rat).SetFloat64(x) }

// boundsOfRoot takes the root in 400 bits and settles by exact squares where that lies.
func boundsOfRoot(x *big.Rat) (below, above float64) {
	root := new(big.Float).SetPrec(400).SetRat(x)
	nearest, _ := root.Sqrt(root).Float64()
	if math.IsInf(nearest, 0) {
		return exactBounds(nearest, 0)
	}
	return exactBounds(nearest, new(big.Rat).Mul(rational(nearest), rational(nearest)).Cmp(x))
}

// requireBounds wants the very bounds.
func requireBounds(t require.TestingT, low, high, below, above float64, what ...any) {
	if low != below || high != above {
		require.Failf(t, "not the nearest floats around the exact result",
			"got %x to %x, want %x to %x: %v", low, high, below, above, what)
	}
}

func checkDirected(t require.TestingT, a, b float64) {
	x, y := rational(a), rational(b)
	below, above := boundsOfRational(new(big.Rat).Add(x, y))
	requireBounds(t, sumBelow(a, b), sumAbove(a, b), below, above, "sum", a, b)
	below, above = boundsOfRational(new(big.Rat).Mul(x, y))
	requireBounds(t, productBelow(a, b), productAbove(a, b), below, above, "product", a, b)
	if b > 0 {
		below, above = boundsOfRational(new(big.Rat).Quo(x, y))
		requireBounds(t, quotientBelow(a, b), quotientAbove(a, b), below, above, "quotient", a, b)
		below, above = boundsOfRoot(y)
		requireBounds(t, rootBelow(b), rootAbove(b), below, above, "root", b)
	}
}

func TestDirectedRoundingIsTightAtAllCorners(t *testing.T) {
	for _, a := range corners {
		for _, b := range corners {
			for _, near := range []float64{a, nextBelow(a), finite(nextAbove(a))} {
				checkDirected(t, near, b)
				checkDirected(t, -near, b)
				checkDirected(t, near, -b)
				checkDirected(t, -near, -b)
			}
		}
	}
}

func TestDirectedRoundingIsTight(t *testing.T) {
	sweep(t, 10_000, func(source *rand.Rand) {
		a, b := drawFloat(source), drawFloat(source)
		checkDirected(t, a, b)
		checkDirected(t, a, -finite(floatSteps(a, source.IntN(5)-2))) // cancellation
		checkDirected(t, math.Ldexp(a, -source.IntN(1100)), b)
		// Where the error itself underflows.
		small := math.Ldexp(source.Float64()-0.5, -1000-source.IntN(70))
		checkDirected(t, small, math.Ldexp(source.Float64(), -source.IntN(200)))
		nearOne := func() float64 { return floatSteps(1, source.IntN(9)-4) }
		checkDirected(t, math.Ldexp(nearOne(), -450-source.IntN(100)), math.Ldexp(nearOne(), -450-source.IntN(100)))
		checkDirected(t, math.Ldexp(nearOne(), -950-source.IntN(100)), nearOne())
	})
}

func TestDirectedRoundingIsTightOnShrunkDraws(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		a := rapid.Float64Range(-math.MaxFloat64, math.MaxFloat64).Draw(t, "a")
		b := rapid.Float64Range(-math.MaxFloat64, math.MaxFloat64).Draw(t, "b")
		checkDirected(t, a, b)
	})
}

func TestSumWithOverflowOnTheWayIsTight(t *testing.T) {
	ulp := 0x1p971
	for _, part := range []float64{0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3} {
		for _, sign := range []float64{1, -1} {
			checkDirected(t, math.MaxFloat64*sign, -part*ulp*sign)
			checkDirected(t, -part*ulp*sign, math.MaxFloat64*sign)
			checkDirected(t, -part*ulp*sign, (math.MaxFloat64-ulp)*sign)
		}
	}
}

func TestBoundsOfWhatHasNoMeaning(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	require.Equal(t, -inf, sumBelow(inf, -inf))
	require.Equal(t, inf, sumAbove(inf, -inf))
	require.Equal(t, -inf, productBelow(nan, 1))
	require.Equal(t, inf, productAbove(1, nan))
	require.Equal(t, -inf, quotientBelow(nan, 1))
	require.Equal(t, inf, quotientAbove(inf, inf))
	require.Equal(t, 0.0, productBelow(0, inf))
	require.Equal(t, 0.0, quotientBelow(1, inf))
}
