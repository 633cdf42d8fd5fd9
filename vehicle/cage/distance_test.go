package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

func segment(p, q Vector) Segment { return Segment{p, q} }

func straight(r Run) Tube { return Tube{Points: []Point{r.From, r.To}} }

func distanceToRun(p Point, r Run) quantity.Range { return DistanceToTube(p, straight(r)) }

func distanceBetween(a, b Run) quantity.Range { return DistanceBetweenTubes(straight(a), straight(b)) }

func TestLengthsAndDistancesAreSharpOverRanges(t *testing.T) {
	var lengths, runs, pairs tightness
	kinds := map[string]*tightness{"length": &lengths, "point and run": &runs, "run and run": &pairs}
	for _, kind := range kinds {
		kind.isLength = true
	}
	sweep(t, 250, func(source *rand.Rand) {
		tolerance := drawTolerance(source)
		from := drawWay(source)
		a, b := drawPoint(source, from, tolerance), drawPoint(source, from.Plus(drawWay(source)), tolerance)
		run := Run{a, b}
		check := func(kind *tightness, share int, q question) {
			asked := boxOf(q)
			asked.sample(t, source, 60)
			if source.IntN(share) == 0 {
				low, high := asked.hull(source)
				kind.add(asked, low, high)
			}
		}
		check(&lengths, 1, question{[]Point{a, b}, run.Length(), func(p []Vector) float64 { return p[0].Distance(p[1]) }})

		p := drawPoint(source, drawNear(source, a.Middle(), b.Middle()), tolerance)
		check(&runs, 1, question{[]Point{a, b, p}, distanceToRun(p, run), func(p []Vector) float64 {
			_, distance := segment(p[0], p[1]).Nearest(p[2])
			return distance
		}})
		q := drawPoint(source, p.Middle().Plus(drawTurn(source, b.Middle().Minus(a.Middle()))), tolerance)
		if source.IntN(3) == 0 { // passing close by
			q = drawPoint(source, drawNear(source, a.Middle(), b.Middle()), tolerance)
		}
		check(&pairs, 6, question{[]Point{a, b, p, q}, distanceBetween(run, Run{p, q}), func(p []Vector) float64 {
			_, _, distance := segment(p[0], p[1]).NearestTo(segment(p[2], p[3]))
			return distance
		}})
	})
	for name, kind := range kinds {
		kind.log(t, name)
		require.LessOrEqual(t, kind.over, 1+kind.count/500, "%s %v", name, kind.points)
		if kind != &pairs { // the nearest ends of two tubes side by side may change with the readings
			require.LessOrEqual(t, kind.worst, widest, "%s %v", name, kind.points)
		}
	}
}

// drawNear returns a place about a run: on it, close by, past its ends, or far off.
func drawNear(source *rand.Rand, from, to Vector) Vector {
	place := from.Along(to, source.Float64()*1.6-0.3)
	switch source.IntN(5) {
	case 0:
		return place
	case 1:
		return from.Along(to, float64(source.IntN(2))).Plus(drawDirection(source).Times(0.3 * source.Float64()))
	case 2:
		return place.Plus(drawDirection(source).Times(0.01 * source.Float64()))
	}
	return place.Plus(drawDirection(source).Times(math.Pow(source.Float64(), 2)))
}

// A regular tetrahedron's opposite edges of length a are a/√2 apart, a corner is √(2/3) a
// above the face, and a corner √3/2 a from an edge. Cube: a corner is √(2/3) a from the
// space diagonal (elementary solid geometry).
func TestDistancesOfRegularSolids(t *testing.T) {
	corners := tetrahedron()
	edge := corners[0].Distance(corners[1])
	near := func(want float64, got quantity.Range) {
		t.Helper()
		require.InDelta(t, want, got.Low, 1e-12)
		require.InDelta(t, want, got.High, 1e-12)
		require.True(t, got.Low <= want+1e-15 && want-1e-15 <= got.High)
	}
	opposite := distanceBetween(Run{At(corners[0]), At(corners[1])}, Run{At(corners[2]), At(corners[3])})
	near(edge/math.Sqrt2, opposite)
	height := distanceToRun(At(corners[2]), Run{At(corners[0]), At(corners[1])})
	near(edge*math.Sqrt(3)/2, height)
	cube := distanceToRun(At(Vector{X: 1}), Run{At(Vector{}), At(Vector{1, 1, 1})})
	near(math.Sqrt(2.0/3), cube)
}

// tetrahedron returns the corners of a regular one with edges of 2√2: every second corner of
// a cube with sides of 2.
func tetrahedron() [4]Vector {
	return [4]Vector{{1, 1, 1}, {1, -1, -1}, {-1, 1, -1}, {-1, -1, 1}}
}
