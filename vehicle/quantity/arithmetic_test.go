package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// exactly named pairs of an operation on ranges and on rational numbers.
var pairOperations = map[string]struct {
	ranges func(a, b Range) Range
	exact  func(z, x, y *big.Rat) *big.Rat
}{
	"plus":  {Range.Plus, (*big.Rat).Add},
	"minus": {Range.Minus, (*big.Rat).Sub},
	"times": {Range.Times, (*big.Rat).Mul},
	"over":  {Range.Over, (*big.Rat).Quo},
}

// holds reports whether the range holds the rational number.
func holds(r Range, x *big.Rat) bool {
	return (math.IsInf(r.Low, -1) || rational(r.Low).Cmp(x) <= 0) &&
		(math.IsInf(r.High, 1) || rational(r.High).Cmp(x) >= 0)
}

func TestArithmeticHoldsEveryMember(t *testing.T) {
	sweep(t, 3_000, func(source *rand.Rand) {
		a, b := drawRange(source), drawRange(source)
		x, y := drawMember(source, a), drawMember(source, b)
		for name, operation := range pairOperations {
			if name == "over" && y == 0 {
				continue
			}
			got := operation.ranges(a, b)
			want := operation.exact(new(big.Rat), rational(x), rational(y))
			require.True(t, holds(got, want), "%s: %x of %v and %x of %v not in %v", name, x, a, y, b, got)
		}
		square := new(big.Rat).Mul(rational(x), rational(x))
		require.True(t, holds(a.Square(), square), "square of %x in %v", x, a)
		require.True(t, holds(a.Negate(), new(big.Rat).Neg(rational(x))), "negate")
		require.True(t, holds(a.Abs(), new(big.Rat).Abs(rational(x))), "abs")
		require.True(t, a.Min(b).Contains(min(x, y)), "min")
		require.True(t, a.Max(b).Contains(max(x, y)), "max")
		require.True(t, a.Hull(b).Contains(x) && a.Hull(b).Contains(y), "hull")
		if x >= 0 {
			require.True(t, holds(a.Sqrt().Square(), rational(x)), "square root of %x in %v", x, a)
		}
	})
}

// The ends of a sum, difference, product or quotient are those of the exact results at the
// corners, rounded outward and no further.
func TestArithmeticIsTight(t *testing.T) {
	sweep(t, 3_000, func(source *rand.Rand) {
		a, b := drawRange(source), drawRange(source)
		if math.IsInf(a.Width(), 0) || math.IsInf(b.Width(), 0) {
			return
		}
		for name, operation := range pairOperations {
			if name == "over" && b.Contains(0) {
				continue
			}
			low, high := math.Inf(1), math.Inf(-1)
			for _, x := range []float64{a.Low, a.High} {
				for _, y := range []float64{b.Low, b.High} {
					below, above := boundsOfRational(operation.exact(new(big.Rat), rational(x), rational(y)))
					low, high = min(low, below), max(high, above)
				}
			}
			require.Equal(t, Range{low, high}, operation.ranges(a, b), "%s of %x and %x", name, a, b)
		}
	})
}

func TestExactArithmeticStaysExact(t *testing.T) {
	require.Equal(t, Exactly(45), Exactly(40).Plus(Exactly(5)))
	require.Equal(t, Exactly(-0.25), Exactly(1).Minus(Exactly(1.25)))
	require.Equal(t, Exactly(0.375), Exactly(0.75).Times(Exactly(0.5)))
	require.Equal(t, Exactly(0.125), Exactly(1).Over(Exactly(8)))
	require.Equal(t, Exactly(12), Exactly(144).Sqrt())
	require.Equal(t, Exactly(5), Exactly(3).Hypot(Exactly(-4)))
	require.Equal(t, Exactly(-27), Exactly(-3).Power(3))
	require.Equal(t, Exactly(0.0625), Exactly(-2).Power(-4))
	require.NotEqual(t, 0.0, Exactly(0.1).Plus(Exactly(0.2)).Width(), "0.1 + 0.2 is no float64")
}

func TestDivisionThroughZero(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct{ a, b, want Range }{
		{Range{1, 2}, Range{0, 5}, Range{quotientBelow(1, 5), inf}},
		{Range{1, 2}, Range{-4, 0}, Range{-inf, -0.25}},
		{Range{-2, -1}, Range{0, 4}, Range{-inf, -0.25}},
		{Range{-2, -1}, Range{-4, 0}, Range{0.25, inf}},
		{Range{-1, 1}, Range{0, 4}, Everything},
		{Range{1, 2}, Range{-1, 1}, Everything},
		{Range{1, 2}, Range{0, 0}, Everything},
		{Range{0, 0}, Range{0, 0}, Everything},
		{Range{0, 0}, Range{-1, 1}, Range{0, 0}},
		{Range{0, 1}, Range{0, 2}, Range{0, inf}},
		{Range{1, 1}, Everything, Everything},
		{Range{1, 2}, Range{1, inf}, Range{0, 2}},
	} {
		require.Equal(t, c.want, c.a.Over(c.b), "%v / %v", c.a, c.b)
	}
}

func TestUnboundedTimesZeroIsZero(t *testing.T) {
	require.Equal(t, Range{}, Range{}.Times(Everything))
	require.Equal(t, Range{}, Everything.Times(Range{}))
	require.Equal(t, Range{0, math.Inf(1)}, Range{0, 1}.Times(Range{0, math.Inf(1)}))
}

func TestOverflowLeavesTheOtherEndFinite(t *testing.T) {
	huge := Exactly(1e308)
	require.Equal(t, Range{math.MaxFloat64, math.Inf(1)}, huge.Plus(huge))
	require.Equal(t, Range{math.MaxFloat64, math.Inf(1)}, huge.Times(huge))
	require.Equal(t, Range{math.Inf(-1), -math.MaxFloat64}, huge.Negate().Minus(huge))
	require.Equal(t, Range{math.MaxFloat64, math.Inf(1)}, huge.Over(Exactly(1e-308)))
}

func TestRootLeavesOutNegativeNumbers(t *testing.T) {
	require.Equal(t, Range{0, 3}, Range{-4, 9}.Sqrt())
	require.Equal(t, Everything, Range{-4, -1}.Sqrt())
	require.Equal(t, Range{0, math.Inf(1)}, Everything.Sqrt())
}

func TestNoResultIsNegativeZero(t *testing.T) {
	zero := Exactly(math.Copysign(0, -1))
	exact := Tolerance{}
	for name, r := range map[string]Range{
		"exactly": zero, "negate": Range{}.Negate(), "minus": Exactly(1).Minus(Exactly(1)),
		"times": Exactly(-1).Times(Range{}), "over": Range{}.Over(Exactly(-2)), "ceil": Exactly(-0.5).Ceil(exact),
		"round": Exactly(-0.25).Round(exact), "abs": zero.Abs(), "sqrt": zero.Sqrt(), "sin": zero.Sin(), "tan": zero.Tan(),
		"atan2": Atan2(zero, Exactly(1)), "power": zero.Power(3), "band": exact.Band(0),
	} {
		require.False(t, math.Signbit(r.Low) || math.Signbit(r.High), "%s: %v", name, r)
		require.Equal(t, Range{}, r, name)
	}
}
