package cage

import (
	"math"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// shopCage is a believable cage of sixty tubes: two hoops, roof, doors, backstays, floor and
// front, built up from bays of a box with diagonals, all with the tolerances of a tape.
func shopCage() *Cage {
	c := &Cage{Tolerance: 0.005}
	joint := func(x, y, z float64) int {
		c.Joints = append(c.Joints, Within(Vector{x, y, z}, 0.003))
		return len(c.Joints) - 1
	}
	exactly := quantity.Exactly
	add := func(outside, wall float64, through ...int) {
		c.Tubes = append(c.Tubes, CageTube{
			Through: through, Radius: exactly(0.135),
			Outside: quantity.Between(outside-0.0001, outside+0.0001), Wall: quantity.Between(wall-0.00003, wall+0.00003),
			Density: exactly(7850), Elasticity: exactly(200e9), Yield: exactly(350e6),
		})
	}
	var frames [6][4]int
	for i := range frames {
		x := 2.4 - 0.55*float64(i)
		frames[i] = [4]int{joint(x, 0.62, 0.02*float64(i)), joint(x-0.05, 0.55, 1.15), joint(x-0.05, -0.55, 1.15), joint(x, -0.62, 0.02*float64(i))}
		c.Feet = append(c.Feet, frames[i][0], frames[i][3])
		add(0.045, 0.0025, frames[i][:]...)
		add(0.038, 0.0025, frames[i][0], frames[i][2])
	}
	for i := range 5 {
		a, b := frames[i], frames[i+1]
		for _, pair := range [][2]int{{a[0], b[0]}, {a[1], b[1]}, {a[2], b[2]}, {a[3], b[3]}, {a[0], b[1]}, {a[3], b[2]}, {a[1], b[2]}, {a[2], b[1]}} {
			add(0.038, 0.0025, pair[0], pair[1])
		}
	}
	for i := range 8 {
		add(0.038, 0.002, frames[i%5][0], joint(1.9-0.3*float64(i), 0.3, 0.1), frames[i%5+1][3])
	}
	return c
}

func TestCageAddsUp(t *testing.T) {
	c := shopCage()
	require.Len(t, c.Tubes, 60)
	v := c.Derive()
	require.Empty(t, v.Faults)
	require.Empty(t, v.Findings.InTheAir)
	hoop := v.Tubes[0]
	require.InDelta(t, 0.045, hoop.Section.Outside.Middle(), 1e-9)
	require.InDelta(t, 2.6203, hoop.Mass.Middle()/hoop.Developed.Middle(), 0.002, "45 × 2.5 mm: 2.6203 kg/m")
	require.InDelta(t, 75625e-12*200e9, hoop.BendingStiffness.Middle(), 50)
	require.InDelta(t, 3361.1e-9*350e6, hoop.YieldMoment.Middle(), 2)
	require.InDelta(t, 3, hoop.RadiusRatio.Middle(), 0.01)
	require.Equal(t, 0, hoop.Ends[0].Foot)
	require.Zero(t, hoop.Ends[0].FootAway.High)
	sum := 0.0
	for _, tube := range v.Tubes {
		sum += tube.Developed.Middle()
		require.Positive(t, tube.Unsupported.Low)
		require.Less(t, tube.Chord.ToVertical.High, math.Pi/2+1e-9)
	}
	require.InDelta(t, sum, v.Length.Middle(), 0.01)
	require.Less(t, v.Mass.Width(), 0.05*v.Mass.Middle())
	require.Equal(t, v, c.Derive(), "a pure function")
	for _, meeting := range v.Meetings {
		require.True(t, meeting.Angle.Low >= 0 && meeting.Angle.High <= math.Pi+1e-9)
	}
	require.NotEmpty(t, v.Meetings)
}

func TestCageOfWhichLittleIsKnown(t *testing.T) {
	wild := Point{X: quantity.Everything, Y: quantity.Everything, Z: quantity.Everything}
	c := &Cage{
		Joints: []Point{At(Vector{}), At(Vector{X: 1}), wild, At(Vector{X: 1, Z: 1}), At(Vector{X: 0.5})},
		Tubes: []CageTube{
			{Through: []int{0, 1, 3}, Radius: quantity.Everything, Outside: quantity.Everything, Wall: quantity.Everything, Density: quantity.Everything, Elasticity: quantity.Everything, Yield: quantity.Everything},
			{Through: []int{0, 2}},
			{Through: []int{0, 7}},
			{Through: []int{4, 3}, Outside: quantity.Exactly(0.04), Wall: quantity.Exactly(0.03)},
		},
		Feet: []int{99, -1},
	}
	v := c.Derive()
	require.Len(t, v.Faults, 2)
	require.Equal(t, Fault{Problem: NotFinite, At: 1}, *v.Faults[0], "a joint of which nothing is known")
	require.Equal(t, Fault{Problem: UnknownJoint, At: 2}, *v.Faults[1])
	for _, tube := range v.Tubes {
		for _, r := range append([]quantity.Range{
			tube.NodeLength, tube.Developed, tube.Mass, tube.BendingStiffness, tube.YieldMoment, tube.RadiusRatio, tube.Unsupported,
			tube.Chord.ToVertical, tube.Ends[0].FootAway, tube.Ends[1].JointAway, tube.Ends[0].JointSurface,
		}, tube.Straights...) {
			require.False(t, math.IsNaN(r.Low) || math.IsNaN(r.High), "%+v", tube)
			require.LessOrEqual(t, r.Low, r.High)
		}
	}
	require.Equal(t, NotATube, v.Tubes[3].Faults[0].Problem)
	require.Equal(t, -1, v.Tubes[0].Ends[0].Foot)
	require.Equal(t, math.Inf(1), v.Tubes[1].NodeLength.High)
	onTube := false
	for _, m := range v.Meetings {
		onTube = onTube || m.Ways[1].OnTube
	}
	require.True(t, onTube, "joint 5 lies on the first tube")
	c.Joints[1].Reading, c.Joints[0].Reading = 5, 5
	require.NotPanics(t, func() { c.Derive() }, "two joints that claim to be one reading")
}

func BenchmarkCageOfSixtyTubes(b *testing.B) {
	c := shopCage()
	b.ReportAllocs()
	for b.Loop() {
		c.Derive()
	}
}

func BenchmarkAngleAt(b *testing.B) {
	p, q, r := Within(Vector{X: 1}, 0.003), Within(Vector{}, 0.003), Within(Vector{0.3, 0.8, 0.2}, 0.003)
	for b.Loop() {
		AngleAt(p, q, r)
	}
}

func BenchmarkHelmetToHoop(b *testing.B) {
	hoop := Tube{Radius: quantity.Exactly(0.135)}
	for _, p := range []Vector{{0, 0.6, 0}, {0, 0.55, 1.2}, {0, -0.55, 1.2}, {0, -0.6, 0}} {
		hoop.Points = append(hoop.Points, Within(p, 0.003))
	}
	helmet := Within(Vector{0.2, 0.35, 1.0}, 0.005)
	for b.Loop() {
		PointTubeClearance(helmet, hoop, quantity.Exactly(0.045))
	}
}
