package cage

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

func TestPointToTubeIsSharpOverRanges(t *testing.T) {
	var points, exact tightness
	points.isLength = true
	sweep(t, 40, func(source *rand.Rand) {
		tube := drawTube(source, drawCourse(source, 3), drawTolerance(source))
		course := tube.AsRead()
		pieces := course.Pieces()
		piece := pieces[source.IntN(len(pieces))]
		p := drawPoint(source, piece.At(source.Float64()).Plus(drawDirection(source).Times(0.02+0.3*source.Float64())), 0.005)
		got := DistanceToTube(p, tube)
		low, high := math.Inf(1), math.Inf(-1)
		all := append([]Point{p}, tube.Points...)
		for _, radius := range []float64{tube.Radius.Low, tube.Radius.High} {
			asked := boxOf(question{all, got, func(v []Vector) float64 {
				_, distance := Course{v[1:], radius}.Nearest(v[0])
				return distance
			}})
			asked.sample(t, source, 30)
			one, other := asked.hull(source)
			low, high = min(low, one), max(high, other)
		}
		points.add(boxOf(question{all, got, nil}), low, high)

		for i := range tube.Points {
			tube.Points[i] = tube.Points[i].AsRead()
		}
		tube.Radius = quantity.Exactly(course.Radius)
		_, want := course.Nearest(p.Middle())
		got = DistanceToTube(p.AsRead(), tube)
		require.InDelta(t, want, got.Low, 3e-9)
		require.InDelta(t, want, got.High, 3e-9)
		require.True(t, got.Low <= want+1e-12 && want-1e-12 <= got.High)
		exact.count++
	})
	points.log(t, "point and bent tube")
	require.LessOrEqual(t, points.worst, widest, "%v", points.points)
	require.LessOrEqual(t, points.sum/float64(points.count), 1.05)
}

// walked returns the distance of two courses, found by walking along each piece of one of
// them in steps of a share of it, and in finer ones about each place that is nearer than
// those beside it.
func walked(a, b Course, steps int) float64 {
	nearest, away := math.Inf(1), make([]float64, steps+1)
	for _, piece := range a.Pieces() {
		at := func(s float64) float64 { _, d := b.Nearest(piece.At(s)); return d }
		for i := range away {
			away[i] = at(float64(i) / float64(steps))
		}
		for i, least := range away {
			if least > away[max(0, i-1)] || least > away[min(steps, i+1)] {
				continue
			}
			share := float64(i) / float64(steps)
			for step := 0.5 / float64(steps); step > 1e-9 && least < nearest+2*step*piece.Length(); step /= 2 {
				for _, s := range []float64{max(0, share-step), min(1, share+step)} {
					if d := at(s); d < least {
						least, share = d, s
					}
				}
			}
			nearest = min(nearest, least)
		}
	}
	return nearest
}

func TestTubeToTubeIsSharpOverRanges(t *testing.T) {
	var tubes tightness
	tubes.isLength = true
	sweep(t, 3, func(source *rand.Rand) {
		one := drawTube(source, drawCourse(source, 3), drawTolerance(source))
		pieces := one.AsRead().Pieces()
		course := drawCourse(source, 2+source.IntN(2))
		// Moved so that the two pass each other somewhere about the middle of both.
		way := pieces[source.IntN(len(pieces))].At(source.Float64()).Plus(drawDirection(source).Times(0.02 + 0.3*source.Float64()))
		own := course.Pieces()
		way = way.Minus(own[source.IntN(len(own))].At(source.Float64()))
		for i := range course.Points {
			course.Points[i] = course.Points[i].Plus(way)
		}
		other := drawTube(source, course, drawTolerance(source))
		got := DistanceBetweenTubes(one, other)
		low, high := math.Inf(1), math.Inf(-1)
		all := slices.Concat(one.Points, other.Points)
		for _, radii := range [][2]float64{{one.Radius.Low, other.Radius.Low}, {one.Radius.Low, other.Radius.High}, {one.Radius.High, other.Radius.Low}, {one.Radius.High, other.Radius.High}} {
			asked := boxOf(question{all, got, func(v []Vector) float64 {
				return walked(Course{v[:len(one.Points)], radii[0]}, Course{v[len(one.Points):], radii[1]}, 12)
			}})
			least, greatest := asked.hullOf(source, 64, 0.1)
			low, high = min(low, least), max(high, greatest)
		}
		require.True(t, got.Low <= low+1e-9, "%v below %v", low, got)
		require.True(t, high <= got.High+1e-6, "%v above %v", high, got)
		tubes.add(boxOf(question{all, got, nil}), low, high)
	})
	tubes.log(t, "tube and bent tube")
	// Where an arc is nearest to a part of the other tube, a few are up to twice as wide.
	require.LessOrEqual(t, tubes.worst, 2.5, "%v", tubes.points)
	require.LessOrEqual(t, tubes.over, 1+tubes.count/20, "%v", tubes.points)
	require.LessOrEqual(t, tubes.sum/float64(tubes.count), 1.06)
}

// The nearest places of two bent tubes, found by walking along one of them in fine steps.
func TestTubeToTubeHoldsWhatWalkingFinds(t *testing.T) {
	var widths []float64
	sweep(t, 25, func(source *rand.Rand) {
		a, b := drawCourse(source, 3+source.IntN(2)), drawCourse(source, 2+source.IntN(3))
		tubeA, tubeB := drawTube(source, a, 0.003), drawTube(source, b, 0.003)
		got := DistanceBetweenTubes(tubeA, tubeB)
		for range 4 {
			drawn := func(tube Tube) Course {
				c := Course{Radius: tube.Radius.Low + source.Float64()*tube.Radius.Width()}
				for _, p := range tube.Points {
					in := func(r quantity.Range) float64 { return r.Low + math.Round(source.Float64())*(r.High-r.Low) }
					c.Points = append(c.Points, Vector{in(p.X), in(p.Y), in(p.Z)})
				}
				return c
			}
			distance := walked(drawn(tubeA), drawn(tubeB), 200)
			require.True(t, got.Low <= distance+1e-9, "%v below %v", distance, got)
			require.True(t, distance <= got.High+1e-6, "%v above %v", distance, got)
		}
		widths = append(widths, got.Width())
		require.Equal(t, got, DistanceBetweenTubes(tubeA, tubeB))
	})
	slices.Sort(widths)
	t.Logf("widths: %.1f mm in the middle, %.1f mm at most", widths[len(widths)/2]*1000, widths[len(widths)-1]*1000)
	require.Less(t, widths[len(widths)/2], 0.02)
}

// A tube bent in a full quarter round a point is its radius away from it, all along.
func TestPointInTheMiddleOfABend(t *testing.T) {
	tube := Tube{Points: []Point{At(Vector{}), At(Vector{X: 1}), At(Vector{X: 1, Y: 1})}, Radius: quantity.Exactly(0.135)}
	got := DistanceToTube(At(Vector{X: 1 - 0.135, Y: 0.135}), tube)
	require.InDelta(t, 0.135, got.Low, 1e-6)
	require.InDelta(t, 0.135, got.High, 1e-6)
	_, clear := NearestSurface(At(Vector{X: 1}), []Tube{tube}, []quantity.Range{quantity.Exactly(0.045)})
	require.InDelta(t, 0.135*(math.Sqrt2-1)-0.0225, clear.Low, 1e-8, "the corner is outside the bend")
	other := Tube{Points: []Point{At(Vector{X: 1, Z: -1}), At(Vector{X: 1, Z: 1})}}
	between := DistanceBetweenTubes(tube, other)
	require.InDelta(t, 0.135*(math.Sqrt2-1), between.High, 1e-8)
	require.Equal(t, math.Inf(1), DistanceToTube(At(Vector{}), Tube{}).High)
	back := Tube{Points: []Point{At(Vector{}), At(Vector{X: 1}), At(Vector{})}, Radius: quantity.Exactly(0.1)}
	require.Equal(t, quantity.Range{High: math.Inf(1)}, DistanceToTube(At(Vector{}), back))
}

func TestNearestSurfaceIsTheLeastOfAll(t *testing.T) {
	sweep(t, 10, func(source *rand.Rand) {
		p := Within(drawWay(source), 0.005)
		var tubes []Tube
		var outsides []quantity.Range
		want := quantity.Range{Low: math.Inf(1), High: math.Inf(1)}
		for range 12 {
			tubes = append(tubes, drawTube(source, drawCourse(source, 2+source.IntN(3)), 0.003))
			outsides = append(outsides, quantity.Between(0.038, 0.038+0.01*source.Float64()))
			want = want.Min(DistanceToTube(p, tubes[len(tubes)-1]).Minus(halfOf(outsides[len(outsides)-1])))
		}
		nearest, clearance := NearestSurface(p, tubes, outsides)
		require.Equal(t, want, clearance)
		_, away := tubes[nearest].AsRead().Nearest(p.Middle())
		require.True(t, clearance.Low <= away-outsides[nearest].Middle()/2 && away-outsides[nearest].Middle()/2 <= clearance.High)
	})
	nearest, clearance := NearestSurface(Point{}, nil, nil)
	require.Equal(t, -1, nearest)
	require.Equal(t, quantity.Everything, clearance)
}
