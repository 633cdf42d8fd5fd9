package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func rationalPower(x float64, n int) *big.Rat {
	power := big.NewRat(1, 1)
	for range max(n, -n) {
		power.Mul(power, rational(x))
	}
	if n < 0 {
		power.Inv(power)
	}
	return power
}

// requireBoundsOrNext wants the very bounds of an exact result, and of any other at most
// one float more at each end.
func requireBoundsOrNext(t require.TestingT, got Range, below, above float64, what ...any) {
	if below != above && got.Low == nextBelow(below) {
		got.Low = below
	}
	if below != above && got.High == nextAbove(above) {
		got.High = above
	}
	requireBounds(t, got.Low, got.High, below, above, what...)
}

func checkPower(t require.TestingT, x float64, n int) {
	if x == 0 && n < 0 {
		return
	}
	below, above := boundsOfRational(rationalPower(x, n))
	requireBoundsOrNext(t, Exactly(x).Power(n), below, above, "power", x, n)
}

func TestPowerOfANumberIsTight(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) { checkPower(t, drawFloat(source), source.IntN(24)-8) })
	for _, x := range corners {
		for n := -5; n <= 5; n++ {
			checkPower(t, x, n)
			checkPower(t, -x, n)
		}
	}
	for x := 3.0; x < 100; x += 2 { // exact ones
		for n := 2; n <= 34; n++ {
			checkPower(t, x, n)
		}
	}
}

func TestPowerOfShrunkDrawsIsTight(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		checkPower(t, rapid.Float64Range(-1e60, 1e60).Draw(t, "x"), rapid.IntRange(-12, 12).Draw(t, "n"))
	})
}

func TestPowerHoldsEveryMember(t *testing.T) {
	sweep(t, 3_000, func(source *rand.Rand) {
		r, n := drawRange(source), source.IntN(12)-5
		x := drawMember(source, r)
		if x == 0 && n < 0 {
			return
		}
		require.True(t, holds(r.Power(n), rationalPower(x, n)), "%x of %x to the %d in %v", x, r, n, r.Power(n))
	})
}

func TestPowersOfRanges(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		r    Range
		n    int
		want Range
	}{
		{Range{-2, 3}, 2, Range{0, 9}},
		{Range{-2, 3}, 3, Range{-8, 27}},
		{Range{-3, -2}, 4, Range{16, 81}},
		{Range{-2, 3}, 0, Range{1, 1}},
		{Range{0, 0}, 0, Range{1, 1}},
		{Range{2, 4}, -1, Range{0.25, 0.5}},
		{Range{-4, 2}, -2, Range{0.0625, inf}},
		{Range{-4, 2}, -3, Everything},
		{Range{0, 2}, -3, Range{0.125, inf}},
		{Range{-2, 0}, -3, Range{-inf, -0.125}},
		{Range{0, 0}, -2, Everything},
		{Range{2, inf}, -1, Range{0, 0.5}},
		{Range{-inf, -2}, 3, Range{-inf, -8}},
		{Range{2, 2}, math.MaxInt, Range{math.MaxFloat64, inf}},
		{Range{2, 2}, math.MinInt, Range{0, math.SmallestNonzeroFloat64}},
		{Range{-1, -1}, math.MaxInt, Range{-1, -1}},
		{Range{-1, -1}, math.MinInt, Range{1, 1}},
		{Range{0.5, 0.5}, 1074, Exactly(math.SmallestNonzeroFloat64)},
		{Range{0.5, 0.5}, -1023, Exactly(0x1p1023)},
	} {
		require.Equal(t, c.want, c.r.Power(c.n), "%v to the %d", c.r, c.n)
	}
}

// Huge exponents keep their digits: (1 + 2^-30) to the 2^30, by squaring in 300 bits.
func TestHugeExponents(t *testing.T) {
	want := new(big.Float).SetPrec(300).SetFloat64(1 + 0x1p-30)
	for range 30 {
		want.Mul(want, want)
	}
	requireEnclosure(t, Exactly(1+0x1p-30).Power(1<<30), want, 1)
	requireEnclosure(t, Exactly(1+0x1p-30).Power(-1<<30), new(big.Float).Quo(big.NewFloat(1).SetPrec(300), want), 1)
	require.Equal(t, Range{math.MaxFloat64, math.Inf(1)}, Exactly(1.5).Power(math.MaxInt))
}

func checkHypotenuse(t require.TestingT, x, y float64) {
	squares := new(big.Rat).Mul(rational(x), rational(x))
	squares.Add(squares, new(big.Rat).Mul(rational(y), rational(y)))
	below, above := boundsOfRoot(squares)
	requireBoundsOrNext(t, Exactly(x).Hypot(Exactly(y)), below, above, "hypotenuse", x, y)
}

func TestHypotenuseIsTight(t *testing.T) {
	sweep(t, 5_000, func(source *rand.Rand) {
		x := drawFloat(source)
		checkHypotenuse(t, x, drawFloat(source))
		checkHypotenuse(t, x, finite(math.Ldexp(x, -source.IntN(60))*source.Float64()))
	})
	for _, x := range corners {
		for _, y := range corners {
			checkHypotenuse(t, x, y)
		}
	}
}

// Whole-numbered right triangles (Euclid, Elements, book X, lemma 1 before proposition 29).
func TestWholeTrianglesAreExact(t *testing.T) {
	sweep(t, 5_000, func(source *rand.Rand) {
		most := int64(1) << (1 + source.IntN(25))
		p, q := float64(source.Int64N(most)+1), float64(source.Int64N(most)+1)
		scale := math.Ldexp(1, source.IntN(1800)-950)
		got := Exactly((p*p - q*q) * scale).Hypot(Exactly(2 * p * q * scale))
		require.Equal(t, Exactly((p*p+q*q)*scale), got, "%v %v %v", p, q, scale)
	})
}

func TestHypotOfRanges(t *testing.T) {
	require.Equal(t, Range{5, 13}, Range{-5, -3}.Hypot(Range{4, 12}))
	require.Equal(t, Range{0, 5}, Range{-3, 1}.Hypot(Range{-1, 4}))
	require.Equal(t, Range{3, math.Inf(1)}, Everything.Hypot(Range{-5, -3}))
}
