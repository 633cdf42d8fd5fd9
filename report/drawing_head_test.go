package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// A helmet is a ball: a circle of its radius in the three views, larger by √1.5 in the
// isometric one, whose lengths along the axes are to scale (elementary geometry).
func TestHelmetsAndOverallSizes(t *testing.T) {
	f := cageOf(t, hintHoop)
	d := newDrawing(f, nil, CageHead{})
	require.Equal(t, "Overall, over the axes of its tubes: 0 mm long, 1200 mm wide, 1150 mm high.", d.overAll())
	require.NotContains(t, d.sheet(), "helmet")
	f.Heads = []vehicle.FrameHead{{Part: f.Feet[0].Part, Top: cage.Vector{Z: 1}, Radius: 0.14}}
	d = newDrawing(f, nil, CageHead{})
	sheet := d.sheet()
	require.Contains(t, sheet, "helmet, as a ball")
	_, _, views := d.arrange()
	require.InDelta(t, 0.14*views[0].scale.factor(), 0.14*views[0].ballFactor(), 1e-12)
	require.InDelta(t, 1.2247, views[3].ballFactor()/views[3].scale.factor(), 1e-4)
	require.InDelta(t, 0.14, d.bounds.high.X, 1e-9, "the sheet has room for it")
	require.Empty(t, newDrawing(&vehicle.Frame{}, nil, CageHead{}).overAll())
}

// A tube that cannot be built as it is written has a flag behind its number, and the key
// says what that is.
func TestFlagsOnTheDrawing(t *testing.T) {
	sound := newDrawing(cageOf(t, workshopSheet), nil, CageHead{})
	require.NotContains(t, sound.sheet(), "cannot be built as")
	f := cageOf(t, strings.Replace(hintHoop, `tube = "1"`, `joint = "D"`, 1)+`
joint "E" { at = ["0 mm", "590 mm", "500 mm"] }
joint "F" { at = ["900 mm", "590 mm", "500 mm"] }
joint "G" { at = ["900 mm", "-590 mm", "500 mm"] }
tube "2" {
  stock   = "A"
  through = ["E", "F"]
}
tube "3" {
  stock   = "A"
  through = ["F", "G"]
}
foot "3" { joint = "G" }`)
	d := newDrawing(f, nil, CageHead{})
	require.Equal(t, []string{"1", "2 !", "3"}, d.numbers)
	require.Contains(t, d.sheet(), ">2 !<")
	require.Contains(t, d.sheet(), "tube that cannot be built as")
}
