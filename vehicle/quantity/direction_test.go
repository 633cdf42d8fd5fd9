package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// bigDirection returns the direction of the point (x, y), not (0, 0), by halving the angle
// and Gregory's series.
func bigDirection(y, x float64) *big.Float {
	number := func() *big.Float { return new(big.Float).SetPrec(300) }
	up, across := number().SetFloat64(math.Abs(y)), number().SetFloat64(math.Abs(x))
	steep := up.Cmp(across) > 0
	if steep {
		up, across = across, up
	}
	t := number().Quo(up, across)
	const halvings = 8
	for range halvings { // tan a/2 = tan a / (1 + √(1 + tan² a))
		root := number().Mul(t, t)
		root.Sqrt(root.Add(root, number().SetInt64(1)))
		t.Quo(t, root.Add(root, number().SetInt64(1)))
	}
	square, power, angle := number().Mul(t, t), number().Set(t), number()
	for n := int64(1); power.Sign() != 0 && n < 40; n += 2 {
		angle.Add(angle, number().Quo(power, number().SetInt64(n)))
		power.Neg(power.Mul(power, square))
	}
	angle.SetMantExp(angle, halvings)
	if steep {
		angle.Sub(number().SetMantExp(bigPi, -1), angle)
	}
	if x < 0 {
		angle.Sub(number().Set(bigPi), angle)
	}
	if y < 0 {
		angle.Neg(angle)
	}
	return angle
}

func checkDirection(t require.TestingT, y, x float64) {
	if y == 0 && x >= 0 {
		return
	}
	requireEnclosure(t, Atan2(Exactly(y), Exactly(x)), bigDirection(y, x), 1, "direction", y, x)
}

func TestDirectionEnclosesTheSeries(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) {
		y := drawFloat(source)
		checkDirection(t, y, drawFloat(source))
		checkDirection(t, y, finite(y*math.Ldexp(source.Float64()-0.5, source.IntN(70)-35)))
	})
	for _, y := range corners {
		for _, x := range corners {
			checkDirection(t, y, x)
			checkDirection(t, -y, x)
			checkDirection(t, y, -x)
			checkDirection(t, -y, -x)
		}
	}
}

func TestDirectionOfShrunkDrawsEnclosesTheSeries(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		y := rapid.Float64Range(-math.MaxFloat64, math.MaxFloat64).Draw(t, "y")
		checkDirection(t, y, rapid.Float64Range(-math.MaxFloat64, math.MaxFloat64).Draw(t, "x"))
		checkDirection(t, rapid.Float64Range(-1, 1).Draw(t, "small y"), rapid.Float64Range(-1, 1).Draw(t, "small x"))
	})
}

// A range of points is all directions if it has points on both sides of the cut along the
// negative x axis; else its ends are directions of corners.
func TestDirectionOverRanges(t *testing.T) {
	sweep(t, 5_000, func(source *rand.Rand) {
		y, x := drawRange(source), drawRange(source)
		got := Atan2(y, x)
		for range 10 {
			v, u := drawMember(source, y), drawMember(source, x)
			if v != 0 || u != 0 {
				r := Atan2(Exactly(v), Exactly(u))
				require.True(t, got.Low <= r.Low && r.High <= got.High, "(%x, %x) in (%x, %x): %v not in %v", u, v, x, y, r, got)
			}
		}
		if x.Low < 0 && y.Low < 0 && y.High >= 0 || y.Contains(0) && x.Contains(0) ||
			math.IsInf(y.Width(), 0) || math.IsInf(x.Width(), 0) {
			return
		}
		low, high := math.Inf(1), math.Inf(-1)
		for _, v := range []float64{y.Low, y.High} {
			for _, u := range []float64{x.Low, x.High} {
				r := Atan2(Exactly(v), Exactly(u))
				low, high = min(low, r.Low), max(high, r.High)
			}
		}
		require.Equal(t, Range{low, high}, got, "(%x, %x)", x, y)
	})
}

func TestDirectionAtTheOriginAndWithoutBounds(t *testing.T) {
	inf := math.Inf(1)
	right, half := Range{rightAngle, nextAbove(rightAngle)}, Range{halfTurn, nextAbove(halfTurn)}
	require.Equal(t, anyDirection, Atan2(Range{}, Range{}))
	require.Equal(t, Range{}, Atan2(Range{}, Range{0, inf}))
	require.Equal(t, half, Atan2(Range{}, Range{-inf, 0}))
	require.Equal(t, right, Atan2(Range{0, inf}, Range{}))
	require.Equal(t, right.Negate(), Atan2(Range{-inf, 0}, Range{}))
	require.Equal(t, Range{0, right.High}, Atan2(Range{0, inf}, Range{0, inf}))
	require.Equal(t, Range{0, half.High}, Atan2(Range{0, inf}, Everything))
	require.Equal(t, anyDirection, Atan2(Range{-1, 0}, Range{-2, -1}))
}
