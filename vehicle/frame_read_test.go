package vehicle

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/cage"
)

// frameOf reads a sheet and takes its cage as read.
func frameOf(t *testing.T, text string) *Frame {
	t.Helper()
	files := fstest.MapFS{"car.hcl": &fstest.MapFile{Data: []byte("car \"Tessel 16\" {}\n" + text)}}
	sheet, found := Load(files, "car.hcl", "car.hcl", BuiltIn(), Options{})
	require.False(t, found.HasErrors(), found.Error())
	return sheet.Frame()
}

func TestFrameHasFiguresAsRead(t *testing.T) {
	f := frameOf(t, `
tube_stock "A" {
  ordered = "45 x 2.5 mm"
  outside = { readings = ["44.9 mm", "45.3 mm"] }
}
joint "A left" {
  x           = { readings = ["100 mm +/- 1 mm", "104 mm +/- 1 mm"] }
  y           = "598 mm to 602 mm"
  z           = "0.0 mm +/- 2 mm"
  mirrored_as = "A right"
}
joint "A right" { y = "-597 mm" }
joint "B" { at = ["100 mm", "0 mm", "1000 mm"] }
tube "1" {
  part        = "door bar"
  stock       = "A"
  through     = ["A left", "B"]
  mirrored_as = "2"
}
foot "1" {
  joint       = "A left"
  mirrored_as = "2"
}
`)
	require.Empty(t, f.Unplaced)
	places := map[string]cage.Vector{}
	for _, joint := range f.Joints {
		places[joint.Name] = joint.At
	}
	require.InDelta(t, 0.102, places["A left"].X, 1e-12, "the mean of two readings")
	require.InDelta(t, 0.6, places["A left"].Y, 1e-12, "the middle of a span")
	require.InDelta(t, 0.102, places["A right"].X, 1e-12, "the image shares the reading")
	require.InDelta(t, -0.597, places["A right"].Y, 1e-12, "but for a reading of its own")
	require.Len(t, f.Tubes, 2)
	for i, number := range []string{"1", "2"} {
		tube := f.Tubes[i]
		require.Equal(t, number, tube.Number)
		require.Equal(t, "door bar", tube.Member)
		require.InDelta(t, 0.0451, tube.Outside, 1e-12, "as measured")
		require.InDelta(t, 0.0025, tube.Wall, 1e-12, "as ordered, where nothing was measured")
	}
	require.Equal(t, "A right", f.Joints[f.Tubes[1].Through[0]].Name)
	require.Equal(t, "A right", f.Joints[f.Feet[1].Joint].Name)
	require.InDelta(t, 0.002, f.Structure.Tolerance, 1e-9, "the greatest of the joints' tolerances")
}

// The y of an image that states none is that of its original with the other sign.
func TestFrameMirrorsJoints(t *testing.T) {
	f := frameOf(t, `joint "A" {
  at          = ["100 mm", "600 mm", "5 mm"]
  mirrored_as = "B"
}`)
	require.Equal(t, f.Joints[0].At.Mirror(), f.Joints[1].At)
}

// Masses by length are those of EN 10219-2's table (as read from a copy of the edition of
// 2006), which rounds to 0.01 kg/m.
func TestFrameMassByLength(t *testing.T) {
	const sheet = `
tube_stock "A" {
  ordered  = "48.3 x 3.0 mm"
  %s
}
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["0 mm", "0 mm", "2000 mm"] }
tube "1" {
  stock   = "A"
  through = ["A", "B"]
}`
	with := func(line string) FrameTube {
		return frameOf(t, sheetWith(sheet, line)).Tubes[0]
	}
	require.InDelta(t, 3.35, with("").MassPerLength, 0.005)
	require.InDelta(t, 2*3.35, with("").Mass(), 0.01)
	require.InDelta(t, 3.35*2700/7850, with(`density = "2700 kg/m3"`).MassPerLength, 0.005)
	require.Zero(t, with(`material = "aluminium alloy"`).MassPerLength, "a density that is not steel's and not stated")
	require.InDelta(t, 3.35, with(`material = "25CrMo4"`).MassPerLength, 0.005)
}

func TestWhatHasNoPlace(t *testing.T) {
	f := frameOf(t, `
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["0 mm", "0 mm", "2000 mm"] }
joint "K left" {
  x           = "100 mm"
  mirrored_as = "K right"
}
tube "1" { through = ["A", "B"] }
tube "2" { through = ["A", "K right"] }
tube "3" {}
`)
	require.Len(t, f.Tubes, 1)
	var told []string
	for _, part := range f.Unplaced {
		lacking, fault := f.WhyUnplaced(part)
		require.Nil(t, fault)
		for _, base := range lacking {
			told = append(told, part.Name()+" lacks "+base.Particular.Name+" of "+base.Part.Name())
		}
	}
	require.Equal(t, []string{
		"joint K left lacks y of joint K left", "joint K left lacks z of joint K left",
		"joint K right lacks y of joint K left", "joint K right lacks z of joint K left",
		"tube 2 lacks y of joint K left", "tube 2 lacks z of joint K left",
		"tube 3 lacks through of tube 3",
	}, told)
	require.Equal(t, 0.001, f.Structure.Tolerance)
}

// A tube that turns by no more than half a degree at a joint has no bend there, and so needs
// no bend radius.
func TestStraightThroughAJointBesideTheLine(t *testing.T) {
	f := frameOf(t, `
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["1 mm", "0 mm", "1000 mm"] }
joint "C" { at = ["0 mm", "0 mm", "2000 mm"] }
joint "D" { at = ["1000 mm", "0 mm", "2000 mm"] }
tube "1" { through = ["A", "B", "C"] }
tube "2" {
  through     = ["A", "B", "C", "D"]
  bend_radius = "150 mm"
}
`)
	require.True(t, f.Tubes[0].Cuttable())
	require.Zero(t, f.Tubes[0].Bends())
	require.Equal(t, []int{0, 2, 3}, f.Tubes[1].Corners)
	require.Equal(t, []int{0, 1, 2, 3}, f.Tubes[1].Through)
	require.Equal(t, 1, f.Tubes[1].Bends())
}

// A 38 mm tube square on a 45 mm one ends 22.5 mm short of the node on its centreline
// (elementary geometry).
func TestCheckValueThroughASheet(t *testing.T) {
	f := frameOf(t, `
tube_stock "A" { ordered = "45 x 2.5 mm" }
tube_stock "B" { ordered = "38 x 2.5 mm" }
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
joint "C" { at = ["0 mm", "0 mm", "2000 mm"] }
joint "D" { at = ["0 mm", "1000 mm", "1000 mm"] }
tube "1" {
  stock   = "A"
  through = ["A", "B", "C"]
}
tube "2" {
  stock   = "B"
  through = ["D", "B"]
}
`)
	cut := f.Tubes[1].Lengths()
	require.InDelta(t, 1, cut.Node, 1e-12)
	require.InDelta(t, 1-0.0225, cut.Centre, 1e-12)
}
