package report

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

func TestWordsOfTheWrongSide(t *testing.T) {
	saysOf := func(image string) []string {
		f := cageOf(t, `
joint "E left" {
  at          = ["0 mm", "482 mm", "500 mm"]
  mirrored_as = "E right"
}
joint "E right" { `+image+` }
unfinished = ["tube"]`)
		lines, _ := findingLines(f, f.FindingsOnce(), vehicle.ToLookAt)
		return lines
	}
	require.Equal(t, []string{"Joint E right is on the same side as its original joint E left, y 470.0 mm. Is its y -470.0 mm? (cars/car.hcl:7)"}, saysOf(`y = "470 mm"`))
	require.Equal(t, []string{"Joint E right is 52.0 mm from the mirror place of its original joint E left: it is at (0, -430, 500) mm, that at (0, 482, 500) mm. Measure both again if the shell is not meant to be so. (cars/car.hcl:7)"}, saysOf(`y = "-430 mm"`))
	require.Contains(t, saysOf(`y = "482 mm"`)[0], "Joint E left and its image joint E right are at one place, within 1.0 mm: y 482.0 mm.")
	f := cageOf(t, `
joint "sill right" { at = ["0 mm", "600 mm", "500 mm"] }
unfinished = ["tube"]`)
	lines, _ := findingLines(f, f.FindingsOnce(), vehicle.ToLookAt)
	require.Equal(t, []string{"Joint sill right is on the left of the car, y 600.0 mm, as y counts to the left. Is its sign right, and its name? (cars/car.hcl:3)"}, lines)
}
