package quantity

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// The references below know nothing of the code under test: π by Machin's formula,
// π/4 = 4 arctan 1/5 - arctan 1/239, and plain Taylor series of big floats.

// wide is enough for the greatest float64 less a multiple of π/2, with 200 bits to spare.
const wide = 1400

func bigFloat(x float64) *big.Float { return new(big.Float).SetPrec(wide).SetFloat64(x) }

var bigPi = func() *big.Float {
	const bits = wide + 100
	arc := func(n int64) *big.Int {
		power := new(big.Int).Div(new(big.Int).Lsh(big.NewInt(1), bits), big.NewInt(n))
		sum := new(big.Int)
		for i := int64(0); power.Sign() != 0; i++ {
			term := new(big.Int).Div(power, big.NewInt(2*i+1))
			if i%2 == 1 {
				term.Neg(term)
			}
			sum.Add(sum, term)
			power.Div(power, big.NewInt(n*n))
		}
		return sum
	}
	quarter := arc(5)
	quarter.Lsh(quarter, 2).Sub(quarter, arc(239))
	return new(big.Float).SetPrec(wide).SetMantExp(new(big.Float).SetInt(quarter), 2-bits)
}()

// bigRest returns the number n of right angles nearest to an angle, and the angle less
// n × π/2.
func bigRest(angle float64) (n *big.Int, rest *big.Float) {
	right := new(big.Float).SetPrec(wide).SetMantExp(bigPi, -1)
	turns := new(big.Float).SetPrec(wide).Quo(bigFloat(angle), right)
	n, _ = turns.Add(turns, bigFloat(math.Copysign(0.5, angle))).Int(nil)
	rest = new(big.Float).SetPrec(wide).SetInt(n)
	return n, rest.Sub(bigFloat(angle), rest.Mul(rest, right))
}

// bigSeries sums the terms x^n/n! for n = first, first+2, … with signs that take turns.
func bigSeries(x *big.Float, first int) *big.Float {
	number := func() *big.Float { return new(big.Float).SetPrec(400) }
	square := number().Mul(x, x)
	term := number().SetInt64(1)
	if first == 1 {
		term.Set(x)
	}
	sum := number().Set(term)
	for n := first + 1; term.Sign() != 0 && term.MantExp(nil) > sum.MantExp(nil)-300; n += 2 {
		term.Mul(term, square)
		term.Quo(term, number().SetInt64(-int64(n)*int64(n+1)))
		sum.Add(sum, term)
	}
	return sum
}

func bigSineAndCosine(angle float64) (sine, cosine *big.Float) {
	n, rest := bigRest(angle)
	sine, cosine = bigSeries(rest, 1), bigSeries(rest, 0)
	switch new(big.Int).And(n, big.NewInt(3)).Int64() {
	case 1:
		return cosine, sine.Neg(sine)
	case 2:
		return sine.Neg(sine), cosine.Neg(cosine)
	case 3:
		return cosine.Neg(cosine), sine
	}
	return sine, cosine
}

// requireEnclosure wants the range to hold a number that is no float64, and to be at most
// so many ulp wider at each end than the floats next to it.
func requireEnclosure(t require.TestingT, got Range, want *big.Float, ulps int, what ...any) {
	below, above := boundsOfFloat(want)
	if got.Low > below || got.High < above || got.Low < floatSteps(below, -ulps) || got.High > floatSteps(above, ulps) {
		require.Failf(t, "not an enclosure, or too wide", "%x, want [%x %x] and %d ulp: %x", got, below, above, ulps, what)
	}
}

func drawAngle(source *rand.Rand) float64 {
	switch source.IntN(4) {
	case 0:
		return drawFloat(source)
	case 1: // near a multiple of a quarter of π
		return floatSteps(math.Pi/4*float64(source.IntN(2000)-1000), source.IntN(5)-2)
	case 2:
		return float64(source.IntN(720)-360) * math.Pi / 180
	}
	return (source.Float64() - 0.5) * math.Ldexp(1, source.IntN(30))
}

func checkAngle(t require.TestingT, angle float64) {
	if angle == 0 {
		return
	}
	sine, cosine := bigSineAndCosine(angle)
	requireEnclosure(t, Exactly(angle).Sin(), sine, 1, "sine", angle)
	requireEnclosure(t, Exactly(angle).Cos(), cosine, 1, "cosine", angle)
	requireEnclosure(t, Exactly(angle).Tan(), new(big.Float).Quo(sine, cosine), 1, "tangent", angle)
}

func TestSineCosineTangentEncloseTheSeries(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) { checkAngle(t, drawAngle(source)) })
	for _, angle := range corners {
		checkAngle(t, angle)
		checkAngle(t, -angle)
	}
	// The float64 nearest to a multiple of π/2 (W. Kahan; quoted in J.-M. Muller, Elementary
	// Functions, 3rd edition, 11.2, from memory).
	checkAngle(t, 6381956970095103*0x1p797)
	checkAngle(t, 1e308)
}

func TestSineCosineTangentEncloseShrunkDraws(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		checkAngle(t, rapid.Float64Range(-math.MaxFloat64, math.MaxFloat64).Draw(t, "angle"))
		checkAngle(t, rapid.Float64Range(-10, 10).Draw(t, "small angle"))
	})
}

func TestAnglesOfZeroAreExact(t *testing.T) {
	require.Equal(t, Exactly(0), Exactly(0).Sin())
	require.Equal(t, Exactly(1), Exactly(0).Cos())
	require.Equal(t, Exactly(0), Exactly(0).Tan())
}

// Extremes of the waves within a range: multiples of π/2, counted by big floats.
func TestWavesOverRanges(t *testing.T) {
	sweep(t, 2_000, func(source *rand.Rand) {
		a := drawAngle(source)
		b := a + source.Float64()*math.Ldexp(40, -source.IntN(20))
		r := Between(a, b)
		if math.IsInf(b, 0) {
			return
		}
		first, rest := bigRest(a)
		if rest.Sign() > 0 {
			first.Add(first, big.NewInt(1))
		}
		last, rest := bigRest(b)
		if rest.Sign() < 0 {
			last.Sub(last, big.NewInt(1))
		}
		sine := Exactly(a).Sin().Hull(Exactly(b).Sin())
		cosine := Exactly(a).Cos().Hull(Exactly(b).Cos())
		tangent := Range{Exactly(a).Tan().Low, Exactly(b).Tan().High}
		for n, left := new(big.Int).Set(first), 4; n.Cmp(last) <= 0 && left > 0; left-- {
			quarter := int(new(big.Int).And(n, big.NewInt(3)).Int64())
			sine = sine.Hull(Exactly([]float64{0, 1, 0, -1}[quarter]))
			cosine = cosine.Hull(Exactly([]float64{1, 0, -1, 0}[quarter]))
			if quarter%2 == 1 {
				tangent = Everything
			}
			n.Add(n, big.NewInt(1))
		}
		require.Equal(t, sine, r.Sin(), "sine of %x", r)
		require.Equal(t, cosine, r.Cos(), "cosine of %x", r)
		require.Equal(t, tangent, r.Tan(), "tangent of %x", r)
	})
}

func TestWavesOverWideRanges(t *testing.T) {
	all := Range{-1, 1}
	for _, r := range []Range{Everything, {0, math.Inf(1)}, {-1e308, 1e308}, {0, 7}, {1e300, 2e300}, {0, 6.4}} {
		require.Equal(t, all, r.Sin(), "%v", r)
		require.Equal(t, all, r.Cos(), "%v", r)
		require.Equal(t, Everything, r.Tan(), "%v", r)
	}
}
