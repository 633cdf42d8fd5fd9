package vehicle

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/cage"
)

// A branch on the outside of a 150 mm bend of a 45 mm tube stands off as far as the torus
// falls back over half its outside: √(172.5² + 19²) - 172.5 mm (elementary geometry).
func TestANotchOnABend(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {X: 1, Z: 1}, {X: -0.3, Z: 1.3}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, 0.150, 0, 1, 2), tubeOf(0.038, 0, 1, 3)}, 0, 2, 3)
	note := f.EndNote(1, 0)
	require.InDelta(t, math.Hypot(0.1725, 0.019)-0.1725, note.Gap, 5e-5)
	require.Less(t, note.Grind, 1e-4)
	require.Zero(t, f.EndNote(1, 1), "an end on a foot has no notch")
	// On the straight it says nothing.
	joints[3] = cage.Vector{X: -0.5, Z: 0.4}
	f = handFrame(append(joints, cage.Vector{Z: 0.4}), []FrameTube{tubeOf(0.045, 0.150, 0, 1, 2), tubeOf(0.038, 0, 4, 3)}, 0, 2, 3)
	require.Zero(t, f.EndNote(1, 0))
}

// Where all end at a joint, half the branch hangs over the end of the main tube that is cut
// square there (elementary geometry).
func TestASaddlePastTheEndOfItsTube(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {X: 1, Z: 1}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.038, 0, 1, 2)}, 0, 2)
	require.InDelta(t, 0.019, f.EndNote(1, 0).PastEnd, 1e-6)
	require.False(t, f.EndNote(1, 0).HasFoot)
	// 10 mm below the end 9 mm are left over.
	joints = []cage.Vector{{}, {Z: 1}, {X: 1, Z: 0.99}, {Z: 0.99}}
	f = handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.038, 0, 3, 2)}, 0, 1, 2)
	require.InDelta(t, 0.009, f.EndNote(1, 0).PastEnd, 1e-6)
	joints[3].Z, joints[2].Z = 0.97, 0.97
	f = handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1), tubeOf(0.038, 0, 3, 2)}, 0, 1, 2)
	require.Zero(t, f.EndNote(1, 0).PastEnd)
}

// Of two tubes that leave one node at a small angle the later one in the sheet gets the
// second notch, or the thinner one.
func TestTwoBranchesInEachOther(t *testing.T) {
	joints := []cage.Vector{{}, {Z: 1}, {Z: 2}, {X: 1, Z: 1}, {X: 1, Y: 0.5, Z: 1}, {X: -1, Z: 1}}
	f := handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1, 2), tubeOf(0.038, 0, 1, 3), tubeOf(0.038, 0, 1, 4), tubeOf(0.038, 0, 1, 5)}, 0, 2, 3, 4, 5)
	require.Empty(t, f.EndNote(1, 0).Also)
	require.Len(t, f.EndNote(2, 0).Also, 1)
	require.Equal(t, 1, f.EndNote(2, 0).Also[0].Tube)
	// The inner sides of the two part at 19 mm / tan(half the angle) along either.
	half := math.Atan2(0.5, 1) / 2
	require.InDelta(t, 0.019/math.Tan(half)-math.Sqrt(0.0225*0.0225-0.019*0.019), f.EndNote(2, 0).Also[0].For, 3e-3)
	require.Empty(t, f.EndNote(3, 0).Also, "on the other side of the main tube")
	f = handFrame(joints, []FrameTube{tubeOf(0.045, 0, 0, 1, 2), tubeOf(0.030, 0, 1, 3), tubeOf(0.038, 0, 1, 4)}, 0, 2, 3, 4)
	require.Equal(t, 2, f.EndNote(1, 0).Also[0].Tube)
	require.Empty(t, f.EndNote(2, 0).Also)
}
