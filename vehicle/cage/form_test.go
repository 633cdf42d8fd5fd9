package cage

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// drawForm returns a form about a middle with slopes of the given readings, and a rest, that
// reach as far as the given share of the middle.
func drawForm(source *rand.Rand, middle, share float64, readings ...int) form {
	f := form{middle: middle}
	parts := make([]float64, len(readings)+1)
	sum := 0.0
	for i := range parts {
		parts[i] = source.NormFloat64()
		sum += math.Abs(parts[i])
	}
	reach := math.Abs(middle) * share
	for i, at := range readings {
		f.slope[at] = reach * parts[i] / sum
	}
	if source.IntN(2) == 0 {
		f.rest = reach * math.Abs(parts[len(readings)]) / sum
	}
	return f
}

// point is one place within the box of all readings: a number from -1 to 1 for each, and where
// the value of each of two forms is within its rest.
type point struct {
	readings [slots]float64
	rests    [2]float64
}

// exactly returns the value that a form stands for at a point, without rounding.
func (p *point) exactly(f *form, which int) *big.Float {
	sum := big.NewFloat(f.middle).SetPrec(400)
	put := func(a, b float64) {
		product := new(big.Float).SetPrec(400).Mul(big.NewFloat(a), big.NewFloat(b))
		sum.Add(sum, product)
	}
	for i, slope := range f.slope {
		put(slope, p.readings[i])
	}
	put(f.rest, p.rests[which])
	return sum
}

// drawPlace returns a point at a corner of the box, or within it, or at the same distance from
// the middle in all readings: on its diagonals.
func drawPlace(source *rand.Rand) point {
	var p point
	kind, share := source.IntN(3), 2*source.Float64()-1
	draw := func() float64 {
		sign := float64(2*source.IntN(2) - 1)
		return [...]float64{sign, 2*source.Float64() - 1, sign * share}[kind]
	}
	for i := range p.readings {
		p.readings[i] = draw()
	}
	p.rests = [2]float64{draw(), draw()}
	return p
}

// toward returns the point in the box at which a form is at the given share of its reach.
func (f *form) toward(share float64) point {
	p := point{rests: [2]float64{share, share}}
	for i, slope := range f.slope {
		p.readings[i] = math.Copysign(share, share*slope)
	}
	return p
}

// holds checks that a form holds an exact value at the readings of a point: that it is no
// farther from the sum of middle and slopes than the rest.
func (f *form) holds(t *testing.T, p *point, value *big.Float, what string) {
	t.Helper()
	known := *f
	known.rest = 0
	off := new(big.Float).SetPrec(400).Sub(value, p.exactly(&known, 0))
	require.True(t, off.Abs(off).Cmp(big.NewFloat(f.rest)) <= 0, "%s: %v off, rest %v", what, off, f.rest)
}

func exact() *big.Float { return new(big.Float).SetPrec(400) }

// Sums and products of two forms hold those of the exact values of both, wherever the
// readings and rests are.
func TestFormsHoldExactSumsAndProducts(t *testing.T) {
	sweep(t, 400, func(source *rand.Rand) {
		share := math.Pow(10, -6*source.Float64())
		a := drawForm(source, source.NormFloat64(), share, 0, 1, 2, radiusSlot)
		b := drawForm(source, source.NormFloat64()*math.Pow(10, 4*source.Float64()-2), share, 1, 2, 5)
		if source.IntN(4) == 0 {
			b = a
		}
		f, s := source.NormFloat64(), source.NormFloat64()
		sum, difference, more, scaled, product := a.plus(&b), a.minus(&b), a.plusTimes(&b, f), a.scaled(s), a.times(&b)
		shrunk, by := a, source.Float64()
		shrunk.shrinkBy(by, a.size())
		for range 20 {
			p := drawPlace(source)
			if source.IntN(3) == 0 { // where the first is far from its middle, as are the squares of its readings
				p = a.toward(float64(2*source.IntN(2) - 1))
				p.rests[1] = float64(2*source.IntN(2) - 1)
			}
			x, y := p.exactly(&a, 0), p.exactly(&b, 1)
			sum.holds(t, &p, exact().Add(x, y), "plus")
			difference.holds(t, &p, exact().Sub(x, y), "minus")
			more.holds(t, &p, exact().Add(x, exact().Mul(big.NewFloat(f), y)), "plusTimes")
			scaled.holds(t, &p, exact().Mul(big.NewFloat(s), x), "scaled")
			product.holds(t, &p, exact().Mul(x, y), "times")
			shrunk.holds(t, &p, x, "shrinkBy")
			shrunk.holds(t, &p, exact().Mul(x, exact().Sub(big.NewFloat(1), big.NewFloat(by))), "shrinkBy")
			for _, form := range []struct {
				of    *form
				value *big.Float
			}{{&a, x}, {&b, y}} {
				require.True(t, form.value.Cmp(big.NewFloat(form.of.low())) >= 0 && form.value.Cmp(big.NewFloat(form.of.high())) <= 0)
				require.LessOrEqual(t, exact().Abs(form.value).Cmp(big.NewFloat(form.of.size())), 0)
			}
		}
	})
}

// The inverse touches its bounds at the ends of the form's range, and where it runs along the
// chord between them: at the mean proportional of the ends.
func TestInverseOfAFormHoldsWhereItIsFarthestOff(t *testing.T) {
	sweep(t, 400, func(source *rand.Rand) {
		share := 0.99 * math.Pow(10, -9*source.Float64())
		a := drawForm(source, math.Pow(10, 6*source.Float64()-3), share, 0, 3, 7, radiusSlot)
		inverse, ok := a.inverse()
		require.True(t, ok)
		touch := (math.Sqrt(a.low()*a.high()) - a.middle) / a.reach()
		places := []point{a.toward(-1), a.toward(1), a.toward(touch), drawPlace(source), drawPlace(source)}
		for i := range places {
			x := places[i].exactly(&a, 0)
			inverse.holds(t, &places[i], exact().Quo(big.NewFloat(1), x), "inverse")
		}
	})
	for _, f := range []form{{}, {middle: -1}, {middle: 1, rest: 1}, {middle: 1e20}, {middle: 1e-20}, {middle: math.NaN()}} {
		_, ok := f.inverse()
		require.False(t, ok, "%v", f)
	}
}

// A curve lies farthest below its chord where its slope is that of the chord, and nowhere as
// far as the point at which the tangents of its ends cross.
func TestCurvesOfAFormHoldWhereTheyAreFarthestOff(t *testing.T) {
	curves := map[string]struct {
		f     curve
		exact func(x float64) float64
	}{
		"tangent":    {tangentOf, func(x float64) float64 { return math.Tan(math.Asin(x)) }},
		"saving":     {savedBy, func(x float64) float64 { return 2*math.Tan(math.Asin(x)) - 2*math.Asin(x) }},
		"two slopes": {func(x float64) (value, slope float64) { return max(0, 3*(x-0.25)), map[bool]float64{true: 3}[x > 0.25] }, func(x float64) float64 { return max(0, 3*(x-0.25)) }},
	}
	sweep(t, 200, func(source *rand.Rand) {
		middle := 0.02 + 0.9*source.Float64()
		share := min(0.99, 0.97/middle-1) * math.Pow(10, -5*source.Float64())
		a := drawForm(source, middle, share, 0, 1, 4)
		for name, c := range curves {
			result, ok := a.through(c.f)
			require.True(t, ok)
			low, high := a.low(), a.high()
			valueLow, _ := c.f(low)
			valueHigh, _ := c.f(high)
			chord, least, most := (valueHigh-valueLow)/(high-low), low, high
			for range 60 { // where the slope is the chord's
				if half := (least + most) / 2; true {
					if _, slope := c.f(half); slope < chord {
						least = half
					} else {
						most = half
					}
				}
			}
			touch := min(1, max(-1, (least-a.middle)/a.reach()))
			places := []point{a.toward(-1), a.toward(1), a.toward(touch), drawPlace(source), drawPlace(source)}
			for i := range places {
				x, _ := places[i].exactly(&a, 0).Float64()
				result.holds(t, &places[i], big.NewFloat(c.exact(x)), name)
			}
		}
	})
	for _, f := range []form{{middle: 1}, {middle: 0.9, rest: 0.1}, {middle: math.NaN()}} {
		_, ok := f.through(tangentOf)
		require.False(t, ok, "%v", f)
	}
}
