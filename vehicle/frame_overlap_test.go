package vehicle

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/cage"
)

// Tubes that share metal where no joint of both is; expected by elementary geometry.
func TestTubesThatGoThroughEachOther(t *testing.T) {
	for _, one := range []struct {
		name, sheet string
		want        []string
	}{
		{"a diagonal through a bar, the axes 0.2 mm apart", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["0.2 mm", "600 mm", "800 mm"] }
joint "H" { at = ["0.2 mm", "-600 mm", "200 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "H"]
}`, []string{said(CannotBeBuilt, ThroughEachOther, "2 3")}},
		{"the same with a joint that both go through", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "X" { at = ["0 mm", "0 mm", "500 mm"] }
joint "G" { at = ["0 mm", "600 mm", "800 mm"] }
joint "H" { at = ["0 mm", "-600 mm", "200 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "X"]
}
tube "4" {
  stock   = "B"
  through = ["X", "H"]
}`, nil},
		{"side by side, half inside each other", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["20 mm", "590 mm", "500 mm"] }
joint "H" { at = ["20 mm", "-590 mm", "500 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "H"]
}
foot "3" { joint = "G" }
foot "4" { joint = "H" }`, []string{said(CannotBeBuilt, ThroughEachOther, "1 3"), said(CannotBeBuilt, ThroughEachOther, "1 3"), said(CannotBeBuilt, ThroughEachOther, "2 3")}},
		{"side by side, touching", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["0 mm", "600 mm", "538 mm"] }
joint "H" { at = ["0 mm", "-600 mm", "538 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "H"]
}`, nil},
		{"two that land beside each other on a third want a second notch", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["0 mm", "600 mm", "520 mm"] }
joint "H" { at = ["0 mm", "-600 mm", "800 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "H"]
}`, nil},
		{"two that part from one joint at a small angle", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["900 mm", "600 mm", "500 mm"] }
joint "G" { at = ["900 mm", "680 mm", "500 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["G", "E"]
}
foot "3" { joint = "F" }
foot "4" { joint = "G" }`, nil},
	} {
		t.Run(one.name, func(t *testing.T) {
			require.Equal(t, one.want, saidOf(frameOf(t, sheetWith(hoopSheet, one.sheet))))
		})
	}
}

// The top of a helmet reaches into the metal where it is above the lower side of the roof
// tube, 22.5 mm below its axis.
func TestAHelmetInsideATube(t *testing.T) {
	sheet := `
head "driver" {
  top           = ["0 mm", "0 mm", "%s"]
  helmet_radius = "140 mm"
}`
	f := frameOf(t, sheetWith(hoopSheet, sheetWith(sheet, "985 mm")))
	require.Equal(t, []string{said(CannotBeBuilt, HeadInTube, "1")}, saidOf(f))
	require.InDelta(t, 0.0075, f.Findings()[0].Away, 1e-9)
	require.Empty(t, saidOf(frameOf(t, sheetWith(hoopSheet, sheetWith(sheet, "977 mm")))))
}

// Of two tubes that part from one joint at a small angle one is cut far along the other: that
// belongs to their joint.
func TestASmallAngleBelongsToItsJoint(t *testing.T) {
	joints := []cage.Vector{{}, {X: 1}, {X: 1, Y: 0.05}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.045, 0, 0, 2)}, 1, 2)
	for _, found := range f.Findings() {
		require.NotEqual(t, ThroughEachOther, found.Kind)
	}
}
