package vehicle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/vehicle/cage"
)

// handFrame makes a frame without a sheet: joints by place, tubes by the joints they go
// through with outside diameter and bend radius, feet by joint.
func handFrame(joints []cage.Vector, tubes []FrameTube, feet ...int) *Frame {
	f := &Frame{Tubes: tubes}
	for i, at := range joints {
		f.Joints = append(f.Joints, FrameJoint{Name: string(rune('A' + i)), At: at})
	}
	for _, joint := range feet {
		f.Feet = append(f.Feet, FrameFoot{Joint: joint})
	}
	f.Build(leastTolerance)
	return f
}

func tubeOf(outside, radius float64, through ...int) FrameTube {
	return FrameTube{Outside: outside, Through: through, Course: cage.Course{Radius: radius}}
}

// A 38 mm tube square on a 45 mm one ends half of 45 mm short of the node on its centreline
// (elementary geometry), and its long point the depth of the saddle nearer to it:
// 22.5 - sqrt(22.5² - 19²) mm.
func TestSquareEndIsHalfTheMainTubeShort(t *testing.T) {
	f := handFrame(
		[]cage.Vector{{}, {Z: 1}, {Z: 2}, {X: 1, Z: 1}},
		[]FrameTube{tubeOf(0.045, 0, 0, 1, 2), tubeOf(0.038, 0, 3, 1)}, 0, 3)
	branch := f.Tubes[1]
	require.Equal(t, -1, branch.Ends[0].Onto)
	require.Equal(t, 0, branch.Ends[1].Onto)
	require.Nil(t, branch.Ends[1].Fault)
	require.InDelta(t, math.Pi/2, branch.Ends[1].Seat.Notch.Angle, 1e-12)
	cut := branch.Lengths()
	require.InDelta(t, 1, cut.Node, 1e-12)
	require.InDelta(t, 1-0.0225, cut.Centre, 1e-12)
	require.InDelta(t, 1-math.Sqrt(0.0225*0.0225-0.019*0.019), cut.LongPoint, 1e-9)
	require.Equal(t, [2]int{-1, -1}, [2]int{f.Tubes[0].Ends[0].Onto, f.Tubes[0].Ends[1].Onto})
}

func TestTheThickestThatPassesTakesTheNotch(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {Z: 2}, {Y: -1, Z: 1}, {Y: 1, Z: 1}, {X: 1, Z: 1}}
	upright, across, branch := tubeOf(0.040, 0, 0, 1, 2), tubeOf(0.045, 0, 3, 1, 4), tubeOf(0.038, 0, 1, 5)
	f := handFrame(joints, []FrameTube{upright, across, branch})
	require.Equal(t, 1, f.Tubes[2].Ends[0].Onto)
	across.Outside = 0.040
	f = handFrame(joints, []FrameTube{upright, across, branch})
	require.Equal(t, 0, f.Tubes[2].Ends[0].Onto, "of equal ones the first in the sheet")
	// One that passes is met though one that ends there is thicker.
	f = handFrame(joints, []FrameTube{upright, tubeOf(0.050, 0, 3, 1), branch})
	require.Equal(t, 0, f.Tubes[2].Ends[0].Onto)
	require.Equal(t, 0, f.Tubes[1].Ends[1].Onto)
	require.Equal(t, cage.BranchTooBig, f.Tubes[1].Ends[1].Fault.Problem)
	require.InDelta(t, 0.005, f.Tubes[1].Ends[1].Fault.Missing, 1e-12)
	require.False(t, f.Tubes[1].Ends[1].IsNotched())
}

func TestWhereAllEndTheThickestRunsThrough(t *testing.T) {
	joints := []cage.Vector{{}, {X: 1}, {Y: 1}, {Z: 1}}
	f := handFrame(joints, []FrameTube{tubeOf(0.038, 0, 0, 1), tubeOf(0.045, 0, 0, 2), tubeOf(0.045, 0, 3, 0)}, 1, 2, 3)
	require.Equal(t, 1, f.Tubes[0].Ends[0].Onto)
	require.Equal(t, -1, f.Tubes[1].Ends[0].Onto, "the first of the thickest is cut square")
	require.Equal(t, 1, f.Tubes[2].Ends[1].Onto)
}

// A joint that lies on a tube, or at the place of one of its joints, is met as well.
func TestJointsThatLieOnATube(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 2}, {Z: 0.7}, {X: 1, Z: 1}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.045, 0, 2, 3)})
	require.Equal(t, 0, f.Tubes[1].Ends[0].Onto)
	require.InDelta(t, math.Atan2(1, 0.3), f.Tubes[1].Ends[0].Seat.Notch.Angle, 1e-12)
	// Half a millimetre beside it counts, and is made up for.
	joints[2].X = 0.0005
	f = handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.045, 0, 2, 3)})
	require.Equal(t, 0, f.Tubes[1].Ends[0].Onto)
	require.Less(t, f.Tubes[1].Ends[0].Short, -0.0004)
	// Two joints at one place, of which the tube goes through the other.
	joints = []cage.Vector{{}, {Z: 1}, {Z: 2}, {Y: 0.0004, Z: 1}, {X: 1, Z: 1}}
	f = handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1, 2), tubeOf(0.045, 0, 3, 4)})
	require.Equal(t, 0, f.Tubes[1].Ends[0].Onto)
	require.True(t, f.Tubes[1].Ends[0].IsNotched(), "axes that no tolerance parts meet")
	require.Zero(t, f.Tubes[1].Ends[0].Seat.Notch.Offset)
}

// Tubes of one size differ by what was measured, and still saddle each other.
func TestTubesOfOneSizeAsMeasured(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {Z: 2}, {Y: -1, Z: 1}, {Y: 1, Z: 1}, {X: 1, Z: 1}}
	f := handFrame(joints, []FrameTube{tubeOf(0.0399, 0, 0, 1, 2), tubeOf(0.0403, 0, 3, 1, 4), tubeOf(0.0401, 0, 1, 5)})
	end := f.Tubes[2].Ends[0]
	require.Equal(t, 0, end.Onto, "the first in the sheet")
	require.True(t, end.IsNotched())
	require.Equal(t, end.Seat.Notch.Branch, end.Seat.Notch.Main)
}

// Where the main tube bends at the joint, its axis passes the corner at R (1/cos(β/2) - 1)
// (elementary geometry), square to a branch that halves the corner.
func TestASeatInABend(t *testing.T) {
	const radius = 0.150
	joints := []cage.Vector{{}, {Z: 1}, {X: 1, Z: 1}, {X: 0.6, Z: 0.4}, {X: -0.3, Z: 1.3}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, radius, 0, 1, 2), tubeOf(0.038, 0, 3, 1), tubeOf(0.038, 0, 1, 4)})
	away := radius * (math.Sqrt2 - 1)
	inner, outer := f.Tubes[1], f.Tubes[2]
	require.Nil(t, inner.Ends[1].Fault)
	require.InDelta(t, away, inner.Ends[1].Short, 1e-12)
	require.InDelta(t, math.Pi/2, inner.Ends[1].Seat.Notch.Angle, 1e-9)
	require.InDelta(t, 0.6*math.Sqrt2-away-0.0225, inner.Lengths().Centre, 1e-9)
	require.InDelta(t, -away, outer.Ends[0].Short, 1e-12)
	require.InDelta(t, 0.3*math.Sqrt2+away-0.0225, outer.Lengths().Centre, 1e-9)
	// Square to the plane of the bend the branch misses the tube.
	joints[3] = cage.Vector{Y: 1, Z: 1}
	f = handFrame(joints, []FrameTube{tubeOf(0.045, radius, 0, 1, 2), tubeOf(0.038, 0, 3, 1)})
	require.Equal(t, cage.BranchTooBig, f.Tubes[1].Ends[1].Fault.Problem)
	require.InDelta(t, away-0.0225+0.019, f.Tubes[1].Ends[1].Fault.Missing, 1e-9)
}

// In a bend's plane the branch's straight meets the arc itself: the seat's node lies on the
// main tube's centreline, whatever the angle.
func TestSeatsInABendLieOnTheArc(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		turn := rapid.Float64Range(0.3, 2).Draw(t, "turn")
		lean := rapid.Float64Range(-0.6, 0.6).Draw(t, "lean") * (math.Pi - turn) / 2
		radius := rapid.Float64Range(0.1, 0.3).Draw(t, "radius")
		sine, cosine := math.Sincos(turn)
		corner := cage.Vector{Z: 2}
		// The way that halves the corner, leaned.
		half := (math.Pi + turn) / 2
		way := cage.Vector{X: math.Sin(half + lean), Z: math.Cos(half + lean)}
		f := handFrame([]cage.Vector{{}, corner, corner.Plus(cage.Vector{X: 2 * sine, Z: 2 * cosine}), corner.Plus(way)},
			[]FrameTube{tubeOf(0.045, radius, 0, 1, 2), tubeOf(0.038, 0, 1, 3)})
		end := f.Tubes[1].Ends[0]
		require.Nil(t, end.Fault)
		_, away := f.Tubes[0].Course.Nearest(corner.Plus(way.Times(end.Short)))
		require.InDelta(t, 0, away, 1e-7)
		require.LessOrEqual(t, end.Seat.Notch.Angle, math.Pi/2+squareAngle)
	})
}

// The notch begins on the side to which the branch leans onto the main tube, however the
// main tube is drawn.
func TestTheNotchBeginsOnTheAcuteSide(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {Z: 2}, {X: 1, Z: 1.5}}
	for _, through := range [][]int{{0, 1, 2}, {2, 1, 0}} {
		f := handFrame(joints, []FrameTube{tubeOf(0.045, 0, through...), tubeOf(0.038, 0, 1, 3)})
		end := f.Tubes[1].Ends[0]
		require.Less(t, end.Seat.Notch.Angle, math.Pi/2)
		require.Greater(t, end.Seat.Toward.Z, 0.0)
	}
}

// A square notch begins upward, else forward, else to the left, however the main tube is
// drawn.
func TestWhereASquareNotchBegins(t *testing.T) {
	for _, along := range []cage.Vector{{Z: 1}, {X: 1}, {Y: 1}} {
		out := cage.Vector{X: along.Y, Y: along.Z, Z: along.X}
		for _, through := range [][]int{{0, 1, 2}, {2, 1, 0}} {
			f := handFrame([]cage.Vector{along.Times(-1), {}, along, out}, []FrameTube{tubeOf(0.045, 0, through...), tubeOf(0.038, 0, 1, 3)})
			require.InDelta(t, 1, f.Tubes[1].Ends[0].Seat.Toward.Dot(along), 1e-12)
		}
	}
}

func TestTubesInOneLineHaveNoNotch(t *testing.T) {
	f := handFrame([]cage.Vector{{}, {X: 1}, {X: 2}}, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.045, 0, 1, 2)}, 0, 2)
	require.Equal(t, 0, f.Tubes[1].Ends[0].Onto)
	require.Equal(t, cage.NoMeeting, f.Tubes[1].Ends[0].Fault.Problem)
	require.InDelta(t, 1, f.Tubes[1].Lengths().Centre, 1e-12)
}
