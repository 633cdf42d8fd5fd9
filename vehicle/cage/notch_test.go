package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// A 38 mm tube square on a 45 mm one (closed form of two crossing cylinders): 22.5 mm at the
// crown, √(22.5² - 19²) = 12.05 mm at the long point, a quarter turn from it.
func TestNotchSquare(t *testing.T) {
	n := Notch{Branch: 0.019, Main: 0.0225, Angle: math.Pi / 2}
	require.Nil(t, n.Check())
	require.InDelta(t, 0.0225, n.OnCentreline(), 1e-12)
	require.InDelta(t, 0.0225, n.Profile(0), 1e-12)
	require.InDelta(t, math.Sqrt(0.0225*0.0225-0.019*0.019), n.Profile(math.Pi/2), 1e-12)
	long, at := n.LongPoint()
	require.InDelta(t, 0.01205, long, 5e-6)
	require.InDelta(t, 1, math.Abs(math.Sin(at)), 1e-6)
	short, _ := n.ShortPoint()
	require.InDelta(t, 0.0225, short, 1e-12)
	require.InDelta(t, 0.0225-0.01205, n.Depth(), 5e-6)
	round, height := n.Template(72)
	require.Len(t, round, 73)
	require.InDelta(t, math.Pi*0.038, round[72], 1e-12)
	require.InDelta(t, height[0], height[72], 1e-12)
	require.InDelta(t, n.Depth(), height[0], 1e-12)
	cut := CutOf(1, &n, nil)
	require.InDelta(t, 0.9775, cut.Centre, 1e-12)
	require.InDelta(t, 1-0.01205, cut.LongPoint, 5e-6)
}

// The long point of a notch without offset is √(R² - r²) from the node, whatever the angle,
// unless the branch leans so far that it is on the obtuse side: R / sin a - r / |tan a|
// (where the derivative of the closed form is zero).
func TestNotchLongPointInClosedForm(t *testing.T) {
	for degrees := 5.0; degrees < 176; degrees += 2.5 {
		n := Notch{Branch: 0.019, Main: 0.0225, Angle: degrees * math.Pi / 180}
		want := math.Sqrt(n.Main*n.Main - n.Branch*n.Branch)
		if lean := math.Abs(math.Tan(n.Angle)); want > n.Branch*lean {
			want = n.Main/math.Sin(n.Angle) - n.Branch/lean
		}
		long, _ := n.LongPoint()
		require.InDelta(t, want, long, 1e-12, "at %v degrees", degrees)
	}
}

// The profile against two cylinders crossed numerically in space: along each line of the
// branch's surface, from outside toward the node, the first place that lies on the main
// tube's surface, found by halving. Over all angles, with and without offset.
func TestNotchAgainstCrossedCylinders(t *testing.T) {
	checked := 0
	for degrees := 4.0; degrees <= 176; degrees += 4 {
		for _, size := range [][3]float64{{0.019, 0.0225, 0}, {0.0225, 0.0225, 0}, {0.015, 0.025, 0.004}, {0.015, 0.025, -0.009}, {0.02, 0.0225, 0}} {
			n := Notch{Branch: size[0], Main: size[1], Offset: size[2], Angle: degrees * math.Pi / 180}
			require.Nil(t, n.Check())
			out, third := Vector{X: 1}, Vector{Z: 1}
			main := Vector{math.Cos(n.Angle), math.Sin(n.Angle), 0}
			toward := Vector{Y: 1}
			for i := range 24 {
				p := 2 * math.Pi * float64(i) / 24
				side := toward.Times(n.Branch * math.Cos(p)).Plus(third.Times(n.Branch * math.Sin(p)))
				within := func(x float64) bool {
					place := out.Times(x).Plus(side).Minus(third.Times(n.Offset))
					return place.Cross(main).Norm() < n.Main
				}
				near := n.Branch * math.Cos(p) / math.Tan(n.Angle) // nearest to the main tube's axis
				far := near + 2
				for range 60 {
					if middle := (near + far) / 2; within(middle) {
						near = middle
					} else {
						far = middle
					}
				}
				margin := 1e-10
				if n.Branch == n.Main { // the surfaces touch where the branch is widest
					margin = 1e-7
				}
				require.InDelta(t, far, n.Profile(p), margin, "%v at %v", n, p)
				checked++
			}
		}
	}
	t.Logf("%d places of %d notches", checked, checked/24)
}

func TestNotchesThatCannotBe(t *testing.T) {
	for problem, notches := range map[Problem][]Notch{
		BranchTooBig: {{0.0225, 0.019, 1, 0}, {0.019, 0.0225, 1, 0.004}, {0.019, 0.0225, 1, -0.004}},
		NoMeeting:    {{0.019, 0.0225, 0, 0}, {0.019, 0.0225, math.Pi, 0}, {0.019, 0.0225, math.NaN(), 0}},
		NotALength:   {{0, 0.0225, 1, 0}, {0.019, math.NaN(), 1, 0}, {0.019, 0.0225, 1, math.Inf(1)}},
	} {
		for _, n := range notches {
			fault := n.Check()
			require.NotNil(t, fault, "%v", n)
			require.Equal(t, problem, fault.Problem, "%v", n)
		}
	}
	require.InDelta(t, 0.0035, Notch{0.0225, 0.019, 1, 0}.Check().Missing, 1e-12)
	_, fault := Seat(Vector{}, Vector{X: 1}, 0.038, Vector{}, Vector{X: -2}, 0.045)
	require.Equal(t, NoMeeting, fault.Problem)
}

func TestSeatFindsAngleSideAndOffset(t *testing.T) {
	main := Vector{1, 1, 0}
	end, fault := Seat(Vector{}, Vector{X: 2}, 0.03, Vector{Z: 0.004}, main, 0.05)
	require.Nil(t, fault)
	require.InDelta(t, math.Pi/4, end.Notch.Angle, 1e-12)
	require.InDelta(t, 0, end.Toward.Minus(Vector{Y: 1}).Norm(), 1e-12)
	require.InDelta(t, 0.004, end.Notch.Offset, 1e-12)
	place := func(p float64) Vector {
		return Vector{X: end.Notch.Profile(p)}.Plus(Vector{Y: 0.015 * math.Cos(p), Z: 0.015 * math.Sin(p)})
	}
	axis, _ := main.Unit()
	for _, p := range []float64{0, 1, 2, 3, 4, 5} {
		require.InDelta(t, 0.025, place(p).Minus(Vector{Z: 0.004}).Cross(axis).Norm(), 1e-12, "on the main tube's surface")
	}
}

// Notches turned against each other by a known angle, on a straight tube and on one with a
// bend out of plane: bending carries the first one's direction along.
func TestNotchRotation(t *testing.T) {
	straight := Course{Points: []Vector{{}, {X: 1}}}
	ends := straight.EndsOf(Vector{Y: 1}, Vector{Z: 1})
	require.InDelta(t, math.Pi/2, ends.Between, 1e-12, "from left to up is right-handed about forward")
	require.Zero(t, ends.FirstToBend)
	quarter := Course{Points: []Vector{{}, {X: 1}, {X: 1, Y: 1}}, Radius: 0.2}
	ends = quarter.EndsOf(Vector{Y: 1}, Vector{X: -1})
	require.InDelta(t, 0, ends.Between, 1e-12, "the inner side stays the inner side")
	require.InDelta(t, 0, ends.FirstToBend, 1e-12)
	require.InDelta(t, 0, ends.LastToBend, 1e-12)
	ends = quarter.EndsOf(Vector{Z: 1}, Vector{Z: -1})
	require.InDelta(t, math.Pi, math.Abs(ends.Between), 1e-12)
	require.InDelta(t, math.Pi/2, ends.FirstToBend, 1e-12)
	source := rand.New(rand.NewPCG(7, 7))
	for range 50 {
		course := drawCourse(source, 4)
		pieces := course.Pieces()
		start, stop := pieces[0].Direction(0), pieces[len(pieces)-1].Direction(1)
		first, ok := across(start, drawDirection(source))
		last, okLast := across(stop, drawDirection(source))
		if !ok || !okLast {
			continue
		}
		forth := course.EndsOf(first, last)
		back := Course{[]Vector{course.Points[3], course.Points[2], course.Points[1], course.Points[0]}, course.Radius}.EndsOf(last, first)
		require.InDelta(t, 0, math.Remainder(forth.Between-back.Between, 2*math.Pi), 1e-9, "the same angle from either end")
		turned := course.EndsOf(first.Turned(start, 0.3), last)
		require.InDelta(t, 0.3, math.Remainder(forth.Between-turned.Between, 2*math.Pi), 1e-9)
	}
}
