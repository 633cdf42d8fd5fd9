package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// widest is how many times as wide as the hull of all corners, improved by local search, a
// derived range may be.
const widest = 1.3

func TestAngleIsSharpOverRanges(t *testing.T) {
	var at, between tightness
	sweep(t, 250, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		corner := drawWay(source)
		u := drawWay(source)
		v := drawTurn(source, u)
		a, c, b := drawPoint(source, corner.Plus(u), tolerance), drawPoint(source, corner, tolerance), drawPoint(source, corner.Plus(v), tolerance)
		q := boxOf(question{[]Point{a, c, b}, AngleAt(a, c, b), func(p []Vector) float64 {
			return p[0].Minus(p[1]).Angle(p[2].Minus(p[1]))
		}})
		low, high := q.hull(source)
		q.sample(t, source, 100)
		at.add(q, low, high)

		d := drawPoint(source, drawWay(source), tolerance)
		e := drawPoint(source, d.Middle().Plus(v), tolerance)
		q = boxOf(question{[]Point{a, c, d, e}, AngleBetween(Run{c, a}, Run{d, e}), func(p []Vector) float64 {
			return p[0].Minus(p[1]).Angle(p[3].Minus(p[2]))
		}})
		q.sample(t, source, 100)
		if source.IntN(4) == 0 {
			low, high = q.hull(source)
			between.add(q, low, high)
		}
	})
	at.log(t, "angle at a corner")
	between.log(t, "angle between runs apart")
	require.LessOrEqual(t, at.worst, widest, "%v", at.points)
	require.LessOrEqual(t, between.worst, widest, "%v", between.points)
}

func TestAngleOfMirrorImagesAndSharedReadings(t *testing.T) {
	hoopTop := Within(Vector{0, 0.5, 1.2}, 0.003)
	hoopTop.Reading = 1
	foot := Within(Vector{0, 0.6, 0}, 0.003)
	foot.Reading = 2
	cross := Run{hoopTop, hoopTop.Mirror()}
	require.Zero(t, cross.AngleToHorizontal().High, "both ends rise and fall together")
	require.InDelta(t, 1.006, cross.Length().High, 1e-12)
	left, right := Run{foot, hoopTop}, Run{foot.Mirror(), hoopTop.Mirror()}
	var wide tightness
	q := boxOf(question{[]Point{foot, hoopTop, foot.Mirror(), hoopTop.Mirror()}, AngleBetween(left, right),
		func(p []Vector) float64 { return p[1].Minus(p[0]).Angle(p[3].Minus(p[2])) }})
	source := rand.New(rand.NewPCG(1, 1))
	q.sample(t, source, 1000)
	low, high := q.hull(source)
	wide.add(q, low, high)
	require.LessOrEqual(t, wide.worst, widest)
	require.Equal(t, quarterTurn.High, AcuteAngle(Run{foot, hoopTop}, Run{At(Vector{}), At(Vector{X: 1})}).High)
	require.InDelta(t, math.Pi/2, AcuteAngle(Run{foot, hoopTop}, Run{At(Vector{}), At(Vector{X: 1})}).Low, 0.01)
}
