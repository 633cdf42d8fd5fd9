package cage

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func straightSolid(outside float64, from, to Vector) Solid {
	return SolidOf(Course{Points: []Vector{from, to}}, outside, 0, from.Distance(to))
}

// Two square tubes whose axes pass each other 0.2 mm apart (elementary geometry).
func TestTubesThroughEachOther(t *testing.T) {
	a := straightSolid(0.04, Vector{X: -1}, Vector{X: 1})
	b := straightSolid(0.04, Vector{X: 0.3, Y: -1, Z: 0.0002}, Vector{X: 0.3, Y: 1, Z: 0.0002})
	found := a.Overlaps(&b, 1e-3)
	require.Len(t, found, 1)
	require.InDelta(t, 1.3, found[0].Along, 1e-6)
	require.InDelta(t, 1, found[0].OtherAlong, 1e-6)
	require.InDelta(t, 0.0002, found[0].Apart, 1e-9)
	require.InDelta(t, 0.3, found[0].At.X, 1e-6)
	require.InDelta(t, 0.078, found[0].To-found[0].From, 2*stretchStep+1e-9, "as far as 39 mm to both sides")
	// Side by side and touching is no overlap, half inside each other is one all along.
	b = straightSolid(0.04, Vector{X: -1, Y: 0.04}, Vector{X: 1, Y: 0.04})
	require.Empty(t, a.Overlaps(&b, 1e-3))
	b = straightSolid(0.04, Vector{X: -1, Y: 0.02}, Vector{X: 1, Y: 0.02})
	found = a.Overlaps(&b, 1e-3)
	require.Len(t, found, 1)
	require.InDelta(t, 2, found[0].To-found[0].From, 1e-9)
	// The metal begins where it is said to.
	b = SolidOf(Course{Points: []Vector{{X: 0.3}, {X: 0.3, Y: 1}}}, 0.04, 0.045, 1)
	require.Empty(t, a.Overlaps(&b, 1e-3))
	b = SolidOf(Course{Points: []Vector{{X: 0.3}, {X: 0.3, Y: 1}}}, 0.04, 1, 1)
	require.Empty(t, a.Overlaps(&b, 1e-3), "nothing is left of it")
}

// What is found is as near as the nearest of closely set places of both tubes, arcs
// included, and nothing is found where those stay apart.
func TestOverlapsAgainstSampledTubes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		place := func(name string) Vector {
			axis := rapid.Float64Range(-0.3, 0.3)
			return Vector{axis.Draw(t, name+" x"), axis.Draw(t, name+" y"), axis.Draw(t, name+" z")}
		}
		a := Course{Points: []Vector{place("a"), place("b"), place("c")}, Radius: 0.05}
		b := Course{Points: []Vector{place("d"), place("e")}}
		if len(a.Check())+len(b.Check()) > 0 {
			t.Skip("a bend that does not fit")
		}
		one, other := SolidOf(a, 0.04, 0, a.Developed()), SolidOf(b, 0.04, 0, b.Developed())
		least := math.Inf(1)
		for _, p := range a.Polyline(1e-5) {
			_, away := b.Nearest(p)
			least = min(least, away)
		}
		for i := range 2001 {
			along, _ := other.Nearest(one.at(a.Developed() * float64(i) / 2000))
			least = min(least, other.at(along).Distance(one.at(a.Developed()*float64(i)/2000)))
		}
		nearest := math.Inf(1)
		for _, o := range one.Overlaps(&other, 1e-3) {
			nearest = min(nearest, o.Apart)
		}
		if least < 0.038 {
			require.LessOrEqual(t, nearest, least+1e-4)
		}
		if least > 0.0391 {
			require.True(t, math.IsInf(nearest, 1))
		}
	})
}
