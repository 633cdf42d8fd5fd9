package report

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// shopTube is a tube of a cage made by hand.
type shopTube struct {
	number  string
	outside float64 // millimetres
	through []int
	radius  float64 // of the bends, metres
	onto    [2]int  // -1 where the end is cut square
}

// shopFrameOf makes a frame of joints in millimetres and tubes.
func shopFrameOf(t *testing.T, joints []vehicle.FrameJoint, tubes []shopTube) *vehicle.Frame {
	f := &vehicle.Frame{Joints: joints}
	var at []cage.Vector
	for i := range f.Joints {
		f.Joints[i].At = f.Joints[i].At.Times(0.001)
		at = append(at, f.Joints[i].At)
	}
	var through [][]int
	var radii []float64
	for _, tube := range tubes {
		course := cage.Course{Radius: tube.radius}
		for _, joint := range tube.through {
			course.Points = append(course.Points, at[joint])
		}
		f.Tubes = append(f.Tubes, vehicle.FrameTube{Number: tube.number, Through: tube.through, Course: course, Outside: tube.outside / 1000, Wall: 0.0025})
		through, radii = append(through, tube.through), append(radii, tube.radius)
	}
	structure, faults := cage.NewStructure(at, through, radii, nil, 0.003)
	require.Empty(t, faults)
	f.Structure = structure
	for i, tube := range tubes {
		points := f.Tubes[i].Course.Points
		last := len(points) - 1
		f.Tubes[i].Ends[0] = shopEndOf(f, i, tube.through[0], tube.onto[0], points[1].Minus(points[0]))
		f.Tubes[i].Ends[1] = shopEndOf(f, i, tube.through[last], tube.onto[1], points[last-1].Minus(points[last]))
	}
	return f
}

// shopEndOf seats a tube's end on the run of the main tube that is nearest to its joint.
func shopEndOf(f *vehicle.Frame, tube, joint, onto int, out cage.Vector) vehicle.FrameEnd {
	end := vehicle.FrameEnd{Joint: joint, Onto: onto}
	if onto < 0 {
		return end
	}
	main := f.Tubes[onto]
	nearest := math.Inf(1)
	for i := 1; i < len(main.Course.Points); i++ {
		run := cage.Segment{From: main.Course.Points[i-1], To: main.Course.Points[i]}
		if _, away := run.Nearest(f.Joints[joint].At); away < nearest {
			nearest = away
			way := run.To.Minus(run.From)
			if out.Angle(way) > math.Pi/2+1e-6 { // the acute side first, as a frame has it
				way = way.Times(-1)
			}
			end.Seat, end.Fault = cage.Seat(f.Joints[joint].At, out, f.Tubes[tube].Outside, run.From, way, main.Outside)
		}
	}
	return end
}

func shopJoint(name string, x, y, z float64) vehicle.FrameJoint {
	return vehicle.FrameJoint{Name: name, At: cage.Vector{X: x, Y: y, Z: z}}
}

// shopFrame is a cage with every kind of end: 38 mm square on 45 mm, at 45 degrees, set off
// to one side, ends turned against each other, bends between them, ends cut square, a tube
// thicker than the one it meets, one that hangs over its side. Of the rack behind it one
// tube needs a page across and one needs two halves; one notch is too deep for any page.
func shopFrame(t *testing.T) *vehicle.Frame {
	joints := []vehicle.FrameJoint{
		shopJoint("A left", 0, 600, 0), shopJoint("B left", 0, 560, 1100), shopJoint("B right", 0, -560, 1100), shopJoint("A right", 0, -600, 0), // 0 to 3
		shopJoint("M left", 0, 580, 550), shopJoint("M right", 0, -580, 550), // 4, 5
		shopJoint("C left", -1100, 560, 0), shopJoint("C right", -1100, -560, 0), // 6, 7
		shopJoint("T left", 0, 300, 1100), shopJoint("T right", 0, -300, 1100), // 8, 9
		shopJoint("K", -1100, 300, 0), shopJoint("L", 1.5, 300, 1098.5), shopJoint("L off", 7, 100, 1100), // 10 to 12
		shopJoint("S", -1100, 560, 300), shopJoint("V", -1100, 0, 550), // 13, 14
		shopJoint("H", -400, 0, 1100), shopJoint("H on B", 0, -400, 1100), // 15, 16
		shopJoint("P", -2000, 0, 0), shopJoint("P top", -2000, 0, 1200), // 17, 18
		shopJoint("Q", -3000, 0, 0), shopJoint("Q top", -3000, 0, 1200), // 19, 20
		shopJoint("P half", -2000, 0, 600), shopJoint("Q half", -3000, 0, 600), shopJoint("Q low", -3000, 0, 200), // 21 to 23
		shopJoint("flat", -1060, -300, 0), shopJoint("flat end", -1100, 460, 0), // 24, 25
	}
	return shopFrameOf(t, joints, []shopTube{
		{"1", 45, []int{0, 1, 2, 3}, 0.15, [2]int{-1, -1}},
		{"2", 38, []int{4, 5}, 0, [2]int{0, 0}},
		{"3", 45, []int{6, 7}, 0, [2]int{-1, -1}},
		{"4", 38, []int{8, 10}, 0, [2]int{0, 2}},
		{"5", 38, []int{15, 16}, 0, [2]int{-1, 0}},
		{"6", 38, []int{11, 7}, 0, [2]int{0, 2}},
		{"7", 25, []int{4, 10}, 0, [2]int{0, 2}},
		{"8", 38, []int{13, 14, 9}, 0.15, [2]int{-1, 0}},
		{"9", 38, []int{5, 14, 6}, 0.12, [2]int{0, 2}},
		{"10", 76.1, []int{17, 18}, 0, [2]int{-1, -1}},
		{"11", 114.3, []int{19, 20}, 0, [2]int{-1, -1}},
		{"12", 76.1, []int{21, 23}, 0, [2]int{9, 10}},
		{"13", 101.6, []int{17, 22}, 0, [2]int{9, 10}},
		{"14", 45, []int{24, 25}, 0, [2]int{-1, 2}},
		{"15", 50, []int{5, 6}, 0, [2]int{0, -1}},
		{"16", 38, []int{12, 7}, 0, [2]int{0, -1}},
	})
}

func shopHead() CageHead {
	return CageHead{Sheet: "cars/tessel-16.hcl", Car: "Tessel 16", Version: "0.3", Rulebook: "Saltmarsh Stage Rally Car Rules", Edition: "2027", Standing: "for trying the program, not a rulebook to build to"}
}
