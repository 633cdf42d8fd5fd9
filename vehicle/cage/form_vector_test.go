package cage

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// drawFormVector returns a way of forms of the same readings, none of which reaches farther
// than a share of the way's length.
func drawFormVector(source *rand.Rand, way Vector, share float64) formVector {
	var a formVector
	for i, middle := range []float64{way.X, way.Y, way.Z} {
		a[i] = drawForm(source, way.Norm(), share, 0, 1, 2, 3+source.IntN(slots-3))
		a[i].middle = middle
	}
	return a
}

// drawVectorPlace returns a place at which a way is at one end of its reach in one direction,
// or anywhere; all rests are there at one share.
func drawVectorPlace(source *rand.Rand, a *formVector) point {
	p := drawPlace(source)
	if source.IntN(2) == 0 {
		along := a.along(drawDirection(source))
		p = along.toward(float64(2*source.IntN(2) - 1))
	}
	p.rests[1] = p.rests[0]
	return p
}

func (p *point) way(a *formVector) [3]*big.Float {
	return [3]*big.Float{p.exactly(&a[0], 0), p.exactly(&a[1], 0), p.exactly(&a[2], 0)}
}

func exactDot(a, b [3]*big.Float) *big.Float {
	sum := exact()
	for i := range a {
		sum.Add(sum, exact().Mul(a[i], b[i]))
	}
	return sum
}

func exactly(v Vector) [3]*big.Float {
	return [3]*big.Float{big.NewFloat(v.X), big.NewFloat(v.Y), big.NewFloat(v.Z)}
}

// Products of ways, their parts along directions, their lengths and unit vectors hold those of
// the exact ways, wherever the readings and rests are.
func TestWaysOfFormsHoldExactOnes(t *testing.T) {
	sweep(t, 300, func(source *rand.Rand) {
		share := 0.2 * math.Pow(10, -5*source.Float64())
		way, other := drawWay(source), drawWay(source)
		a, b := drawFormVector(source, way, share), drawFormVector(source, other, share)
		direction := drawDirection(source)
		dot, cross, along := a.dot(&b), a.cross(&b), a.along(direction)
		between := a.toward(&b, 0.3)
		unitWay, _ := way.Unit()
		norm, okNorm := a.norm(unitWay)
		f, _ := frameAlong(way, direction)
		unit, okUnit := a.unit(f)
		require.True(t, okNorm && okUnit)
		thin := a // along a frame in whose third direction it is thin
		thin[2] = thin[2].scaled(0.01)
		length, apart, sharp := thin.length(), a.apart(), a.sharplyApart()
		for range 12 {
			p := drawVectorPlace(source, &a)
			x, y := p.way(&a), p.way(&b)
			dot.holds(t, &p, exactDot(x, y), "dot")
			along.holds(t, &p, exactDot(x, exactly(direction)), "along")
			for i := range 3 {
				j, k := (i+1)%3, (i+2)%3
				cross[i].holds(t, &p, exact().Sub(exact().Mul(x[j], y[k]), exact().Mul(x[k], y[j])), "cross")
				part := exact().Add(exact().Mul(x[i], big.NewFloat(1-0.3)), exact().Mul(y[i], big.NewFloat(0.3)))
				between[i].holds(t, &p, part, "toward")
			}
			size := exact().Sqrt(exactDot(x, x))
			norm.holds(t, &p, size, "norm")
			for i, axis := range []Vector{f.first, f.second, f.third} {
				unit[i].holds(t, &p, exact().Quo(exactDot(x, exactly(axis)), size), "unit")
			}
			of, _ := size.Float64()
			require.True(t, apart.Low <= of && of <= apart.High, "%v not in %v", of, apart)
			require.True(t, sharp.Low <= of && of <= sharp.High, "%v not in %v", of, sharp)
			z := p.way(&thin)
			of, _ = exact().Sqrt(exactDot(z, z)).Float64()
			require.True(t, length.Low <= of && of <= length.High, "%v not in %v", of, length)
		}
	})
}
