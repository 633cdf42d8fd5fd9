package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestConstantsOfTheReductionAgreeWithMachin(t *testing.T) {
	twice := new(big.Float).SetPrec(wide).Quo(big.NewFloat(2), bigPi)
	digits, _ := new(big.Float).SetPrec(wide).SetMantExp(twice, 64*len(twoOverPi)).Int(nil)
	want := new(big.Int)
	for _, word := range twoOverPi {
		want.Lsh(want, 64).Or(want, new(big.Int).SetUint64(word))
	}
	require.Zero(t, digits.Cmp(want), "bits of 2/π")

	rest := new(big.Float).SetPrec(wide).SetMantExp(bigPi, -1)
	for _, part := range []float64{rightAngle, rightAngleSecond, rightAngleThird} {
		nearest, _ := rest.Float64()
		require.Equal(t, nearest, part)
		rest.Sub(rest, bigFloat(part))
	}
	require.Less(t, rest.MantExp(nil), -162, "what three parts leave out of π/2")
	require.Equal(t, halfTurn, 2*rightAngle)
	require.Equal(t, halfTurnSecond, 2*rightAngleSecond)
}

// bigDoubled returns the exact value.
func bigDoubled(d doubled) *big.Float {
	return new(big.Float).SetPrec(wide).Add(bigFloat(d.high), bigFloat(d.low))
}

// requireError wants a doubled number to be within 2^exponent, relative, of a real one.
func requireError(t require.TestingT, got doubled, want *big.Float, exponent int, what ...any) {
	off := new(big.Float).SetPrec(wide).Sub(bigDoubled(got), want)
	if off.Sign() != 0 && off.MantExp(nil)-want.MantExp(nil) >= exponent {
		require.Failf(t, "error too large", "2^%d relative: %x", off.MantExp(nil)-want.MantExp(nil)+1, what)
	}
}

// The bound said at turnOf is 2^-72; what is seen is far below.
func TestRestOfAnAngleIsAsGoodAsSaid(t *testing.T) {
	sweep(t, 10_000, func(source *rand.Rand) {
		angle := drawAngle(source)
		if source.IntN(2) == 0 {
			angle = math.Ldexp(1+source.Float64(), 20+source.IntN(1003))
		}
		if angle == 0 {
			return
		}
		got := turnOf(angle)
		n, rest := bigRest(angle)
		// Half-way between two multiples either of them will do.
		apart := got.nearest - int(new(big.Int).And(n, big.NewInt(7)).Int64())
		if apart &= 7; apart == 7 {
			apart = -1
		}
		require.LessOrEqual(t, max(apart, -apart), 1, "%x", angle)
		right := new(big.Float).SetPrec(wide).SetMantExp(bigPi, -1)
		rest.Sub(rest, right.Mul(right, bigFloat(float64(apart))))
		requireError(t, got.rest, rest, -76, angle)
		require.Less(t, math.Abs(got.rest.high), 0.7854, "%x", angle)
	})
}

// The bounds said at the series are 2^-72 for each.
func TestSeriesAreAsGoodAsSaid(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) {
		angle := doubledSum(math.Ldexp(source.Float64()*1.5708-0.7854, -source.IntN(4)*source.IntN(12)), 0)
		angle.low = angle.high * (source.Float64() - 0.5) * 0x1p-53
		requireError(t, sineSeries(angle), bigSeries(bigDoubled(angle), 1), -72, "sine", angle)
		requireError(t, cosineSeries(angle), bigSeries(bigDoubled(angle), 0), -72, "cosine", angle)
	})
}

func TestDoubledOperationsAreAsGoodAsSaid(t *testing.T) {
	draw := func(source *rand.Rand) doubled {
		high := (source.Float64() - 0.5) * math.Ldexp(1, source.IntN(60)-30)
		return doubledSum(high, high*(source.Float64()-0.5)*0x1p-53)
	}
	sweep(t, 5_000, func(source *rand.Rand) {
		a, b := draw(source), draw(source)
		if a.high == 0 || b.high == 0 {
			return
		}
		number := func() *big.Float { return new(big.Float).SetPrec(wide) }
		requireError(t, a.times(b), number().Mul(bigDoubled(a), bigDoubled(b)), -102, a, b)
		requireError(t, a.plus(b), number().Add(bigDoubled(a), bigDoubled(b)), -102, a, b)
		requireError(t, a.over(b), number().Quo(bigDoubled(a), bigDoubled(b)), -101, a, b)
		requireError(t, a.timesNumber(b.high), number().Mul(bigDoubled(a), bigFloat(b.high)), -102, a, b)
	})
}

// No float64 but 0 is within 2^-62 of a multiple of π/2, counted in right angles. A
// float64 is m × 2^e with m < 2^53. Among all m up to a bound, the one that brings
// m × 2^e × 2/π nearest to a whole number is a denominator of a convergent of the
// continued fraction of 2^e × 2/π (Lagrange's law of best approximation).
func TestNoAngleIsTooNearToARightAngle(t *testing.T) {
	const bits = 1300
	scale := new(big.Int).Lsh(big.NewInt(1), bits)
	least := new(big.Float).SetInt64(1)
	ratio := new(big.Float).SetPrec(wide).Quo(big.NewFloat(2), bigPi)
	for e := -53; e <= 971; e++ {
		fixed, _ := new(big.Float).SetPrec(bits+64).SetMantExp(ratio, e+bits).Int(nil)
		fixed.Mod(fixed, scale)
		if distance := nearestToWhole(fixed, scale); distance.Cmp(least) < 0 {
			least = distance
		}
	}
	exponent := least.MantExp(nil)
	t.Logf("the least distance is a little over 2^%d", exponent-1)
	require.GreaterOrEqual(t, exponent-1, -62)
}

// nearestToWhole returns the least distance of m × part/whole from a whole number over
// 0 < m < 2^53, for 0 < part < whole.
func nearestToWhole(part, whole *big.Int) *big.Float {
	limit := new(big.Int).Lsh(big.NewInt(1), 53)
	before, now := big.NewInt(0), big.NewInt(1) // denominators of convergents
	// Euclid's remainders are the distances that belong to them, in units of 1/whole.
	dividend, remainder := new(big.Int).Set(whole), new(big.Int).Set(part)
	for {
		quotient, next := new(big.Int).QuoRem(dividend, remainder, new(big.Int))
		denominator := new(big.Int).Add(before, quotient.Mul(quotient, now))
		if denominator.Cmp(limit) >= 0 {
			break
		}
		before, now = now, denominator
		dividend, remainder = remainder, next
	}
	return new(big.Float).Quo(new(big.Float).SetInt(remainder), new(big.Float).SetInt(whole))
}
