package cage

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// A course laid out again from its schedule has its points within 1e-6 m.
func TestScheduleComesBack(t *testing.T) {
	signs := map[bool]int{}
	rapid.Check(t, func(t *rapid.T) {
		source := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 5))
		course := drawCourse(source, rapid.IntRange(2, 9).Draw(t, "points"))
		schedule, faults := course.Schedule()
		require.Empty(t, faults)
		again, fault := schedule.Course(course.Place())
		require.Nil(t, fault)
		require.Len(t, again.Points, len(course.Points))
		for i, p := range course.Points {
			require.Less(t, p.Distance(again.Points[i]), 1e-6, "point %d", i)
		}
		require.InDelta(t, course.Developed(), schedule.Developed(), 1e-9)
		for i, row := range schedule.Rows {
			require.True(t, row.Rotation > -math.Pi && row.Rotation <= math.Pi)
			if i > 0 && row.Angle > 0 {
				signs[row.Rotation > 0]++
			}
		}
	})
	require.Greater(t, signs[true], 20)
	require.Greater(t, signs[false], 20)
}

// By hand: forward, a quarter turn to the left, then one upward. A second bend without
// rotation would turn on backward. Seen along the tube, to the left, with up above, forward
// is on the right and backward on the left, so that from backward to up it is a quarter turn
// clockwise.
func TestScheduleByHand(t *testing.T) {
	course := Course{[]Vector{{}, {X: 1}, {X: 1, Y: 1}, {X: 1, Y: 1, Z: 1}}, 0.1}
	schedule, faults := course.Schedule()
	require.Empty(t, faults)
	require.Len(t, schedule.Rows, 3)
	require.InDelta(t, 0.9, schedule.Rows[0].Length, 1e-12)
	require.InDelta(t, 0.8, schedule.Rows[1].Length, 1e-12)
	require.InDelta(t, 0.9, schedule.Rows[2].Length, 1e-12)
	require.InDelta(t, math.Pi/2, schedule.Rows[1].Angle, 1e-12)
	require.InDelta(t, math.Pi/2, schedule.Rows[1].Rotation, 1e-12)
	down := Course{[]Vector{{}, {X: 1}, {X: 1, Y: 1}, {X: 1, Y: 1, Z: -1}}, 0.1}
	schedule, _ = down.Schedule()
	require.InDelta(t, -math.Pi/2, schedule.Rows[1].Rotation, 1e-12)
	zed := Course{[]Vector{{}, {X: 1}, {X: 1, Y: 1}, {X: 2, Y: 1}}, 0.1}
	schedule, _ = zed.Schedule()
	require.InDelta(t, math.Pi, schedule.Rows[1].Rotation, 1e-12, "a bend to the other side")
	passing := Course{[]Vector{{}, {X: 0.5}, {X: 1}, {X: 1, Y: 1}}, 0.1}
	schedule, _ = passing.Schedule()
	require.Len(t, schedule.Rows, 2, "a point on a straight is no bend")
	require.InDelta(t, 0.9, schedule.Rows[0].Length, 1e-12)
}

func TestSchedulesThatCannotBe(t *testing.T) {
	for problem, courses := range map[Problem][]Course{
		TooFewPoints:  {{}, {Points: []Vector{{}}}},
		RepeatedPoint: {{[]Vector{{}, {X: 1}, {X: 1}, {X: 1, Y: 1}}, 0.1}},
		Reversal:      {{[]Vector{{}, {X: 1}, {}}, 0.1}},
		RadiusTooBig:  {{[]Vector{{}, {X: 1}, {X: 1, Y: 1}}, 1.5}},
		NotFinite:     {{[]Vector{{}, {X: math.Inf(1)}}, 0.1}, {[]Vector{{X: math.NaN()}, {X: 1}}, 0.1}},
	} {
		for _, course := range courses {
			_, faults := course.Schedule()
			require.NotEmpty(t, faults, "%v", course)
			require.Equal(t, problem, faults[0].Problem)
			for _, v := range course.Polyline(0.001) {
				if problem != NotFinite {
					require.True(t, v.isFinite())
				}
			}
		}
	}
	good := Place{Way: Vector{X: 1}, Side: Vector{Y: 1}}
	for _, c := range []struct {
		schedule Schedule
		place    Place
		want     Problem
		at       int
	}{
		{Schedule{}, good, TooFewPoints, 0},
		{Schedule{Rows: []BendRow{{1, 0, 1}}, Radius: 0.1}, good, TooFewPoints, 0},
		{Schedule{Rows: []BendRow{{1, 0, 0}, {1, 0, 0}}, Radius: 0.1}, good, TooFewPoints, 0},
		{Schedule{Rows: []BendRow{{1, 0, math.Pi}, {1, 0, 0}}, Radius: 0.1}, good, Reversal, 0},
		{Schedule{Rows: []BendRow{{1, 0, 1}, {-1, 0, 0}}, Radius: 0.1}, good, NotALength, 1},
		{Schedule{Rows: []BendRow{{1, 0, 1}, {1, math.NaN(), 1}, {1, 0, 0}}, Radius: 0.1}, good, NotFinite, 1},
		{Schedule{Rows: []BendRow{{1, 0, 1}, {1, 0, 0}}}, good, NoRadius, 0},
		{Schedule{Rows: []BendRow{{1, 0, 0}}}, Place{Way: Vector{X: 1}, Side: Vector{X: 2}}, NotFinite, 0},
	} {
		_, fault := c.schedule.Course(c.place)
		require.NotNil(t, fault, "%v", c)
		require.Equal(t, c.want, fault.Problem, "%v", c)
		require.Equal(t, c.at, fault.At, "%v", c)
	}
}

func TestDieSaysWhatItCannotMake(t *testing.T) {
	course := Course{[]Vector{{}, {X: 0.4}, {X: 0.4, Y: 0.35}, {X: 0.4, Y: 0.35, Z: 0.3}}, 0.135}
	schedule, faults := course.Schedule()
	require.Empty(t, faults)
	die := Die{Outside: 0.045, Radius: 0.135, GripLength: 0.15, MinimumStraight: 0.05, Springback: 0.03, StartOffset: 0.02}
	require.Empty(t, die.Check(schedule, 0.045))
	require.InDelta(t, 92.7, die.BendTo(math.Pi/2)*180/math.Pi, 1e-9)
	marks := die.Marks(schedule)
	require.InDelta(t, 0.265-0.02, marks[0], 1e-12)
	require.InDelta(t, 0.265+0.135*math.Pi/2+0.08-0.02, marks[1], 1e-12)
	die.MinimumStraight, die.GripLength, die.Radius, die.Outside, die.Springback, die.StartOffset = 0.1, 0.3, 0.114, 0.038, 1.2, 0.5
	var problems []DieProblem
	for _, fault := range die.Check(schedule, 0.045) {
		problems = append(problems, fault.Problem)
		require.NotEqual(t, fault.Found, fault.Needed)
	}
	require.Equal(t, []DieProblem{OtherOutside, OtherRadius, TooLittleGrip, BeyondHalfTurn, BendsTooClose, BeyondHalfTurn, MarkBeforeStart}, problems)
	require.Empty(t, die.Check(Schedule{Rows: []BendRow{{Length: 1}}}, 0.045), "a straight tube needs no die")
}
