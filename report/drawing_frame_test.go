package report

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// frameMaker puts a frame together by hand.
type frameMaker struct {
	*vehicle.Frame
	joints map[string]int
}

func newFrame() *frameMaker {
	return &frameMaker{Frame: &vehicle.Frame{}, joints: map[string]int{}}
}

func partOf(kind, label string) *vehicle.Part {
	return &vehicle.Part{Type: vehicle.BuiltIn().Type(kind), Label: label}
}

// joint adds one joint, coordinates in millimetres.
func (m *frameMaker) joint(name string, x, y, z float64) {
	m.joints[name] = len(m.Joints)
	m.Joints = append(m.Joints, vehicle.FrameJoint{Part: partOf("joint", name), Name: name, At: cage.Vector{X: x / 1000, Y: y / 1000, Z: z / 1000}})
}

// pair adds a joint on the left and its image on the right.
func (m *frameMaker) pair(name string, x, y, z float64) {
	m.joint(name+" left", x, y, z)
	m.joint(name+" right", x, -y, z)
}

// tube adds a tube with an outside diameter in millimetres, bent with three times that.
func (m *frameMaker) tube(number, member string, outside float64, through ...string) {
	tube := vehicle.FrameTube{Part: partOf("tube", number), Number: number, Member: member, Outside: outside / 1000,
		Course: cage.Course{Radius: max(outside, 40) * 3 / 1000}, Ends: [2]vehicle.FrameEnd{{Onto: -1}, {Onto: -1}}}
	for _, name := range through {
		joint, ok := m.joints[name]
		if !ok {
			panic("no joint " + name)
		}
		tube.Through = append(tube.Through, joint)
		tube.Course.Points = append(tube.Course.Points, m.Joints[joint].At)
	}
	m.Tubes = append(m.Tubes, tube)
}

// sides adds a tube on the left and its image on the right.
func (m *frameMaker) sides(left, right, member string, outside float64, from, to string) {
	m.tube(left, member, outside, from+" left", to+" left")
	m.tube(right, member, outside, from+" right", to+" right")
}

func (m *frameMaker) foot(joint string) {
	m.Feet = append(m.Feet, vehicle.FrameFoot{Part: partOf("foot", joint), Joint: m.joints[joint]})
}

// notched says of every end that another tube passes that it is notched onto that one.
func (m *frameMaker) notched() *vehicle.Frame {
	for i := range m.Tubes {
		ends := m.Tubes[i].Course.Points
		for e, place := range []cage.Vector{ends[0], ends[len(ends)-1]} {
			for j := range m.Tubes {
				if _, away := m.Tubes[j].Course.Nearest(place); i != j && away < 0.003 && m.Tubes[i].Ends[e].Onto < 0 {
					m.Tubes[i].Ends[e].Onto = j
				}
			}
		}
		for e, end := range m.Tubes[i].Ends {
			if end.Onto > i { // of two that end at one place the first goes through
				m.Tubes[i].Ends[e].Onto = -1
			}
		}
	}
	return m.Frame
}

// handMadeCage is a cage of 34 tubes: two hoops with bends, backstays, crosses behind the
// crew, in the roof and in the doors, sills, bars for harness and dash, braces.
func handMadeCage() *vehicle.Frame {
	m := newFrame()
	m.pair("A", -300, 650, 60)
	m.pair("B", -350, 590, 1180)
	m.pair("C", 960, 640, 100)
	m.pair("D", 860, 620, 640)
	m.pair("E", 250, 530, 1160)
	m.pair("F", -350, 380, 1180)
	m.pair("G", 250, 360, 1160)
	m.pair("H", -1280, 480, 380)
	m.pair("K", -332, 612, 780)
	m.pair("L", -311, 637, 310)
	m.pair("M", -322, 624, 560)
	m.pair("N", 934, 635, 240)
	m.pair("P", 880, 624, 530)
	m.pair("Q", 620, 586, 845)
	m.pair("R", 1450, 470, 560)
	m.pair("S", -985, 447, 634)
	m.pair("T", 200, 645, 73)
	m.joint("U", 330, 0, 73)
	m.pair("V", -75, 628, 380)
	m.tube("1", "main hoop", 45, "A left", "B left", "B right", "A right")
	m.tube("2", "front hoop", 45, "C left", "D left", "E left", "E right", "D right", "C right")
	m.sides("3", "4", "longitudinal member", 40, "F", "G")
	m.sides("5", "6", "backstay", 40, "F", "H")
	m.tube("7", "hoop diagonal", 40, "F left", "A right")
	m.tube("8", "hoop diagonal", 40, "F right", "A left")
	m.tube("9", "backstay diagonal", 40, "F left", "H right")
	m.tube("10", "backstay diagonal", 40, "F right", "H left")
	m.sides("11", "12", "door bar", 40, "L", "P")
	m.sides("13", "14", "door bar", 40, "M", "N")
	m.tube("15", "roof diagonal", 40, "F left", "G right")
	m.tube("16", "roof diagonal", 40, "F right", "G left")
	m.tube("17", "harness bar", 40, "K left", "K right")
	m.tube("18", "dash bar", 38, "D left", "D right")
	m.sides("19", "20", "sill bar", 40, "A", "C")
	m.sides("21", "22", "windscreen pillar reinforcement", 38, "Q", "N")
	m.tube("23", "rear strut brace", 38, "S left", "S right")
	m.sides("24", "25", "front strut brace", 38, "D", "R")
	m.tube("26", "seat bar", 38, "T left", "T right")
	m.sides("27", "28", "corner brace", 30, "K", "V")
	m.tube("29", "seat bar", 38, "L left", "L right")
	m.sides("30", "31", "sill bar", 0, "L", "T")
	m.tube("32", "backstay", 38, "S left", "F right")
	m.tube("33", "other", 30, "U", "T left")
	m.tube("34", "other", 30, "U", "T right")
	for _, joint := range []string{"A left", "A right", "C left", "C right", "H left", "H right", "R left", "R right"} {
		m.foot(joint)
	}
	return m.notched()
}

// judged gives the tubes of a frame verdicts by their number; all others meet.
func judged(f *vehicle.Frame, by map[string]engine.Verdict) map[*vehicle.Part]engine.Verdict {
	verdicts := map[*vehicle.Part]engine.Verdict{}
	for i := range f.Tubes {
		verdict, ok := by[f.Tubes[i].Number]
		if !ok {
			verdict = engine.Meets
		}
		verdicts[f.Tubes[i].Part] = verdict
	}
	return verdicts
}

func handMadeVerdicts(f *vehicle.Frame) map[*vehicle.Part]engine.Verdict {
	return judged(f, map[string]engine.Verdict{
		"7": engine.Gap, "5": engine.Marginal, "6": engine.Marginal, "12": engine.Gap, "17": engine.NotRecorded,
		"19": engine.NotRecorded, "30": engine.NotRecorded, "31": engine.NotRecorded, "1": engine.ByEye, "2": engine.ByEye,
		"16": engine.Marginal, "23": engine.NotRecorded,
	})
}

func handMadeHead() CageHead {
	return CageHead{Sheet: "cars/tessel.hcl", SheetHash: "0123456789abcdef", Car: "Tessel 16", Version: "0.3"}
}

func judgedHead() CageHead {
	h := handMadeHead()
	h.Rulebook, h.Edition, h.BookHash = "Kettleford Stage Car Rules", "2027", "fedcba9876543210"
	h.Standing = "for trying the program, not a rulebook to build to"
	return h
}

func drawn(t *testing.T, f *vehicle.Frame, verdicts map[*vehicle.Part]engine.Verdict, h CageHead) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, Drawing(&out, f, verdicts, h))
	return out.String()
}
