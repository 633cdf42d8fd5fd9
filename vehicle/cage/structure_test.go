package cage

import (
	"bufio"
	"encoding/json"
	"math"
	"math/rand/v2"
	"os"
	"slices"
	"testing"
	"time"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// portal is a hoop with two legs, a diagonal from a foot to the middle of the other leg's
// upper part, and, on top of it, mistakes to be found.
func portal() (joints []Vector, through [][]int, feet []int) {
	joints = []Vector{
		{0, 0.6, 0}, {0, 0.6, 1.2}, {0, -0.6, 1.2}, {0, -0.6, 0}, // 0–3: the hoop
		{0, -0.6, 0.9}, // 4: on its right leg
		{1, 0.6, 1.2},  // 5: in the air
		{2, 0, 0},      // 6: held by nothing
		{0, 0.6, 1.2},  // 7: again where 1 is
		{0, 0.601, 0},  // 8: a millimetre from 0
	}
	through = [][]int{{0, 1, 2, 3}, {0, 4}, {7, 5}, {4, 8}, {3, 2, 1, 0}}
	return joints, through, []int{0, 3}
}

func TestLookOverFindsWhatIsNotHeld(t *testing.T) {
	joints, through, feet := portal()
	s, faults := NewStructure(joints, through, make([]float64, len(through)), feet, 0.002)
	require.Empty(t, faults)
	f := s.LookOver()
	require.Equal(t, []int{6}, f.Loose)
	require.Equal(t, []LooseEnd{{2, 5, true}}, f.InTheAir)
	require.Equal(t, []DoubledMember{{3, 1, true}, {4, 0, true}}, f.Doubled)
	require.Equal(t, [][2]int{{0, 8}, {1, 7}}, f.SamePlaces)
	require.Equal(t, []int{4, 0}, []int{f.Resting[2].Joint, f.Resting[2].Member})
	require.InDelta(t, 1.2+1.2+0.3, f.Resting[2].Along, 1e-9)
	require.InDelta(t, 0, f.Resting[2].Away, 1e-12)
	joints[4].Y = -0.7 // off the leg
	s, _ = NewStructure(joints, through[:2], nil, feet, 0.002)
	require.Equal(t, []LooseEnd{{1, 4, true}}, s.LookOver().InTheAir)
	s, _ = NewStructure(joints, [][]int{{0, 1, 2, 3}, {0, 3}}, nil, feet, 0.002)
	require.Equal(t, []DoubledMember{{1, 0, false}}, s.LookOver().Doubled, "between the same ends on another course")
}

func TestStructureNamesMembersThatCannotBe(t *testing.T) {
	joints := []Vector{{}, {X: 1}, {X: 1}, {X: math.NaN()}, {Y: 1}}
	_, faults := NewStructure(joints, [][]int{{0, 9}, {1, 2}, {0, 3}, {0}, {0, 1, 0}, {0, 4}, {-1, 0}, nil}, nil, nil, 0.001)
	var got []Fault
	for _, fault := range faults {
		got = append(got, Fault{Problem: fault.Problem, At: fault.At})
	}
	require.Equal(t, []Fault{
		{UnknownJoint, 0, 0}, {RepeatedPoint, 1, 0}, {NotFinite, 2, 0}, {TooFewPoints, 3, 0}, {Reversal, 4, 0}, {UnknownJoint, 6, 0}, {TooFewPoints, 7, 0},
	}, got)
}

func TestSpansBetweenWhatHoldsATube(t *testing.T) {
	joints, through, feet := portal()
	s, _ := NewStructure(joints, through[:2], nil, feet, 0.002)
	var points []Point
	for i, j := range joints {
		p := Within(j, 0.001)
		p.Reading = i + 1
		points = append(points, p)
	}
	resting := s.Resting()
	ways := s.Ways(0, resting)
	require.Equal(t, [][]int{{0, 1, 2, 4}, {4, 3}}, ways, "from the left foot over the top to the diagonal, and on to the right foot")
	length := func(way []int) float64 {
		course := Course{}
		for _, joint := range way {
			course.Points = append(course.Points, joints[joint])
		}
		return course.NodeLength()
	}
	require.InDelta(t, 1.2+1.2+0.3, length(ways[0]), 1e-4)
	require.InDelta(t, 0.9, length(ways[1]), 1e-4)
	alone, _ := NewStructure(joints[:2], [][]int{{0, 1}}, nil, nil, 0.001)
	require.Len(t, alone.Ways(0, nil), 1)
	nearest, away := Nearest(points[4], []Point{points[0], points[3], points[2]})
	require.Equal(t, 2, nearest)
	require.InDelta(t, 0.3, away.Middle(), 1e-4)
	nearest, _ = Nearest(points[4], nil)
	require.Equal(t, -1, nearest)
}

// Ten thousand joints, with as many tubes, are looked over while one waits.
func TestTenThousandJoints(t *testing.T) {
	source := rand.New(rand.NewPCG(3, 3))
	var joints []Vector
	var through [][]int
	for i := range 10_000 {
		joints = append(joints, Vector{3 * source.Float64(), 2 * source.Float64(), 1.5 * source.Float64()})
		if i > 0 {
			through = append(through, []int{i - 1, i})
		}
	}
	started := time.Now()
	s, faults := NewStructure(joints, through, nil, []int{0}, 1e-4)
	require.Empty(t, faults)
	f := s.LookOver()
	require.Len(t, f.InTheAir, 1)
	t.Logf("%v", time.Since(started).Round(time.Millisecond))
	require.Less(t, time.Since(started), 20*time.Second)

	for i := range joints {
		joints[i] = Vector{}
	}
	_, faults = NewStructure(joints, through, nil, nil, 1e-4)
	require.Len(t, faults, len(through))
}

// Total lengths of members in the linear space frames solved by two independent open
// solvers (textbook cases of Logan, Bedford and Fowler, MacNeal and Harder, and frames drawn
// at random).
func TestMemberLengthsOfOutsideFrames(t *testing.T) {
	file, err := os.Open("../../../shared/oracles/frames/cases.jsonl")
	if err != nil {
		t.Skip("outside vectors not at hand")
	}
	defer file.Close()
	lines := bufio.NewScanner(file)
	lines.Buffer(nil, 1<<20)
	frames, members := 0, 0
	for lines.Scan() {
		var frame struct {
			ID      string
			Nodes   map[string][3]float64
			Members []map[string]any // "j" is a joint and "J" a torsion constant
			Total   float64          `json:"total_length"`
		}
		require.NoError(t, json.Unmarshal(lines.Bytes(), &frame))
		exact, read := 0.0, quantity.Range{}
		for _, m := range frame.Members {
			p, q := frame.Nodes[m["i"].(string)], frame.Nodes[m["j"].(string)]
			from, to := Vector{p[0], p[1], p[2]}, Vector{q[0], q[1], q[2]}
			exact += from.Distance(to)
			read = read.Plus(Run{At(from), At(to)}.Length())
			members++
		}
		require.InEpsilon(t, frame.Total, exact, 1e-12, frame.ID)
		require.InEpsilon(t, frame.Total, read.Low, 1e-12, frame.ID)
		require.InEpsilon(t, frame.Total, read.High, 1e-12, frame.ID)
		frames++
	}
	require.NoError(t, lines.Err())
	require.NotZero(t, frames)
	t.Logf("%d frames, %d members", frames, members)
}

// A regular tetrahedron: faces meet at arccos(1/3) = 70.5288°, edges at 60°, opposite edges
// are square to each other. A cube: the space diagonal is arctan √2 = 54.7356° from each
// edge (elementary solid geometry).
func TestAnglesOfRegularSolids(t *testing.T) {
	c := tetrahedron()
	run := func(i, j int) Run { return Run{At(c[i]), At(c[j])} }
	normal := func(i, j, k int) Vector { return c[j].Minus(c[i]).Cross(c[k].Minus(c[i])) }
	degrees := func(want float64, got ...float64) {
		t.Helper()
		for _, angle := range got {
			require.InDelta(t, want, angle*180/math.Pi, 5e-5)
		}
	}
	sixty := AngleAt(At(c[1]), At(c[0]), At(c[2]))
	degrees(60, sixty.Low, sixty.High)
	square := AngleBetween(run(0, 1), run(2, 3))
	degrees(90, square.Low, square.High)
	dihedral := math.Pi - normal(0, 1, 2).Angle(normal(0, 3, 1))
	degrees(70.5288, min(dihedral, math.Pi-dihedral))
	diagonal := Run{At(Vector{}), At(Vector{1, 1, 1})}
	for _, axis := range []Vector{{X: 1}, {Y: 1}, {Z: 1}} {
		angle := AngleBetween(diagonal, Run{At(Vector{}), At(axis)})
		degrees(54.7356, angle.Low, angle.High)
	}
	degrees(54.7356, diagonal.AngleToVertical().Low, diagonal.AngleToVertical().High)
	degrees(35.2644, diagonal.AngleToHorizontal().Low)
	degrees(45, diagonal.SideViewToVertical().Low, diagonal.FrontViewToHorizontal().High, diagonal.SideViewToHorizontal().High, diagonal.FrontViewToVertical().Low)
	degrees(-35.2644, diagonal.AngleBelowHorizontal().Low)
	require.Less(t, square.Width(), 1e-14)
	require.True(t, slices.IsSorted([]float64{sixty.Low, math.Pi / 3, sixty.High}))
}
