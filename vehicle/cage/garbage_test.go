package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// drawWildNumber returns a number of any size, now and then none.
func drawWildNumber(source *rand.Rand) float64 {
	switch source.IntN(8) {
	case 0:
		return [...]float64{math.NaN(), math.Inf(1), math.Inf(-1), math.MaxFloat64, -1e200, math.SmallestNonzeroFloat64}[source.IntN(6)]
	case 1:
		return float64(source.IntN(3) - 1)
	case 2:
		return source.NormFloat64() * 1e-12
	}
	return source.NormFloat64()
}

func drawWildRange(source *rand.Rand) quantity.Range {
	if source.IntN(2) == 0 {
		return quantity.Exactly(drawWildNumber(source))
	}
	a, b := drawWildNumber(source), drawWildNumber(source)
	return quantity.Between(min(a, b), max(a, b))
}

// Whatever the coordinates and sizes, nothing panics, no range has a NaN in it or its ends
// the wrong way round, and nothing takes long.
func TestNothingIsNaNOrPanics(t *testing.T) {
	sweep(t, 400, func(source *rand.Rand) {
		var points []Point
		for range 2 + source.IntN(5) {
			p := Point{X: drawWildRange(source), Y: drawWildRange(source), Z: drawWildRange(source), Reading: source.IntN(4), Mirrored: source.IntN(3) == 0}
			if source.IntN(5) == 0 && len(points) > 0 {
				p = points[source.IntN(len(points))].Mirror()
			}
			points = append(points, p)
		}
		of := func() Point { return points[source.IntN(len(points))] }
		a, b := Run{of(), of()}, Run{of(), of()}
		tube := Tube{Points: points, Radius: drawWildRange(source)}
		ranges := append([]quantity.Range{
			a.Length(), AngleBetween(a, b), AngleAt(of(), of(), of()), AcuteAngle(a, b), a.AngleBelowHorizontal(),
			a.AngleToVertical(), a.AngleToHorizontal(), a.SideViewToVertical(), a.SideViewToHorizontal(), a.FrontViewToVertical(), a.FrontViewToHorizontal(),
			distanceToRun(of(), a), distanceBetween(a, b),
			tube.NodeLength(), tube.Developed(), tube.GreatestTurn(), tube.RadiusRatio(drawWildRange(source)),
			DistanceToTube(of(), tube), DistanceBetweenTubes(tube, Tube{Points: []Point{of(), of()}}),
		}, straightsOf(tube)...)
		for i := range tube.inner() {
			ranges = append(ranges, tube.Turn(i))
		}
		if s, fault := SectionOf(drawWildRange(source), drawWildRange(source)); fault == nil {
			ranges = append(ranges, s.Area, s.SecondMoment, s.SectionModulus, s.PlasticModulus, s.RadiusOfGyration, s.MassPerLength(drawWildRange(source)))
		}
		for i, r := range ranges {
			require.True(t, r.Low <= r.High, "number %d is %v\npoints %v", i, r, points)
		}
		course := tube.AsRead()
		if schedule, faults := course.Schedule(); len(faults) == 0 {
			for _, row := range schedule.Rows {
				require.False(t, math.IsNaN(row.Length+row.Rotation+row.Angle))
			}
		}
		for _, fault := range course.Check() {
			require.NotEmpty(t, fault.Error())
		}
		n := Notch{drawWildNumber(source), drawWildNumber(source), drawWildNumber(source), drawWildNumber(source)}
		if n.Check() == nil {
			long, _ := n.LongPoint()
			require.False(t, math.IsNaN(long+n.OnCentreline()+n.Depth()))
		}
		Nest([]float64{drawWildNumber(source), drawWildNumber(source)}, []Bar{{drawWildNumber(source), source.IntN(3) - 1}}, drawWildNumber(source))
	})
}
