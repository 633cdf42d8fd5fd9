package report

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// handWorkSheet has a brace on the outside of a bend, two braces at one place, and one past
// the end of a tube.
const handWorkSheet = `
tube_stock "A" { ordered = "45 x 2.5 mm" }
tube_stock "B" { ordered = "38 x 2.5 mm" }
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1150 mm"] }
joint "C" { at = ["0 mm", "-600 mm", "1150 mm"] }
joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
joint "E" { at = ["0 mm", "900 mm", "1450 mm"] }
joint "F" { at = ["0 mm", "600 mm", "500 mm"] }
joint "G" { at = ["-900 mm", "600 mm", "0 mm"] }
joint "H" { at = ["-900 mm", "600 mm", "200 mm"] }
tube "1" {
  stock       = "A"
  through     = ["A", "B", "C", "D"]
  bend_radius = "135 mm"
}
tube "2" {
  stock   = "B"
  through = ["B", "E"]
}
tube "3" {
  stock   = "B"
  through = ["F", "G"]
}
tube "4" {
  stock   = "B"
  through = ["F", "H"]
}
tube "5" {
  stock   = "B"
  through = ["A", "G"]
}
foot "1" { joint = "A" }
foot "2" { joint = "D" }
foot "3" { joint = "E" }
foot "4" { joint = "G" }
foot "5" { joint = "H" }
`

func TestWhatATemplateAloneWillNotDo(t *testing.T) {
	f := cageOf(t, handWorkSheet)
	lines := endNoteLines(f)
	require.Len(t, lines, 4, lines)
	require.Regexp(t, `^Tube 2 at joint B lands on a bend of tube 1: the template is for a straight tube, and it stands off by up to 1\.\d mm: cut it that much longer\.$`, lines[0])
	require.Regexp(t, `^Tube 4 at joint F also runs into tube 3 for \d+ mm there, beyond tube 1: a second notch by hand\.$`, lines[1])
	require.Contains(t, lines, "Tube 5 at joint A reaches with its saddle 19.0 mm past the end of tube 1, where a foot is: move its joint as far from the foot, or trim it to the plate.")
	text := cageText(t, cageSaid(f), 80)
	require.Contains(t, text, "NOTCHES BY HAND, where a template alone will not do\n")
	var list bytes.Buffer
	require.NoError(t, CutList(&list, f, CageHeadOf(f.Sheet, nil, "0.3")))
	require.Regexp(t, `(?m)^2,.*At joint B it lands on a bend of tube 1`, list.String())
	s := newTemplateSheet(A4, CageHead{})
	planned, _ := planTemplates(s, f)
	require.Regexp(t, `^Lands on a bend of tube 1`, planned[0].notes[0])
	piece := s.newPiece(planned[0], 0, 1)
	bare := *planned[0]
	bare.notes = nil
	require.Greater(t, piece.height, s.newPiece(&bare, 0, 1).height, "the remark has room on the template")
}

// An original and its image share a line.
func TestNotesOfImages(t *testing.T) {
	f := cageOf(t, `
tube_stock "A" { ordered = "45 x 2.5 mm" }
joint "A left" {
  at          = ["0 mm", "600 mm", "0 mm"]
  mirrored_as = "A right"
}
joint "B left" {
  at          = ["0 mm", "600 mm", "1150 mm"]
  mirrored_as = "B right"
}
joint "C left" {
  at          = ["-900 mm", "600 mm", "1150 mm"]
  mirrored_as = "C right"
}
tube "1" {
  stock       = "A"
  through     = ["A left", "B left"]
  mirrored_as = "2"
}
tube "3" {
  stock       = "A"
  through     = ["B left", "C left"]
  mirrored_as = "4"
}
foot "1" {
  joint       = "A left"
  mirrored_as = "2"
}
unfinished = ["tube"]`)
	require.Equal(t, 3, f.ImageNotes(2, 0))
	require.Equal(t, []string{"Tube 3 at joint B left reaches with its saddle 22.5 mm past the end of tube 1: leave that tube as much longer there, and close it. Also tube 4, on the other side."}, endNoteLines(f))
	require.Equal(t, vehicle.EndNote{}, f.EndNote(0, 0))
}
