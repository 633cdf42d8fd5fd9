package vehicle

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// y counts to the left (ISO 8855), so an image is at the other sign of it.
func TestJointsOnTheWrongSide(t *testing.T) {
	bar := `
joint "E left" {
  at          = ["0 mm", "600 mm", "500 mm"]
  mirrored_as = "E right"
}
joint "E right" { %s }
tube "2" {
  stock   = "B"
  through = ["E left", "D"]
}`
	find := func(sheet, line string) []string {
		var sides []string
		for _, one := range saidOf(frameOf(t, sheetWith(hoopSheet, sheetWith(sheet, line)))) {
			for _, kind := range []FindingKind{ImageOnSameSide, ImageFarOff, LabelOfOtherSide, OnePlace} {
				if strings.HasPrefix(one, said(ToLookAt, kind, "")+" ") {
					sides = append(sides, one)
				}
			}
		}
		return sides
	}
	require.Empty(t, find(bar, ``))
	require.Empty(t, find(bar, `y = "-590 mm"`))
	require.Equal(t, []string{said(ToLookAt, ImageOnSameSide, "E right E left")}, find(bar, `y = "580 mm"`))
	require.Equal(t, []string{said(ToLookAt, ImageFarOff, "E right E left")}, find(bar, `y = "-540 mm"`))
	require.Equal(t, []string{said(ToLookAt, OnePlace, "E left E right")}, find(bar, `y = "600 mm"`)[:1])

	named := `joint "%s" { at = ["0 mm", "600 mm", "500 mm"] }`
	require.Equal(t, []string{said(ToLookAt, LabelOfOtherSide, "sill, right")}, find(named, "sill, right"))
	require.Empty(t, find(named, "sill, left"))
	require.Empty(t, find(named, "upright"), "a word in a word is none")
	require.Empty(t, find(named, "left of the right"))
	require.Empty(t, find(`joint "right" { at = ["0 mm", "0.5 mm", "0 mm"] }`, ""), "on the middle")
}

// An original and its image are told of once.
func TestFindingsOnce(t *testing.T) {
	f := frameOf(t, sheetWith(hoopSheet, `
joint "E left" {
  at          = ["0 mm", "600 mm", "500 mm"]
  mirrored_as = "E right"
}
joint "F left" {
  at          = ["900 mm", "600 mm", "500 mm"]
  mirrored_as = "F right"
}
tube "2" {
  stock       = "B"
  through     = ["E left", "F left"]
  mirrored_as = "3"
}`))
	require.Equal(t, []string{said(CannotBeBuilt, EndInTheAir, "2 F left"), said(CannotBeBuilt, EndInTheAir, "3 F right")}, saidOf(f))
	once := f.FindingsOnce()
	require.Len(t, once, 1)
	require.Equal(t, "3", once[0].Also.Label)
}
