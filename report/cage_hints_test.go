package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// foundIn are all findings of a sheet in words, one text.
func foundIn(t *testing.T, sheet string) string {
	t.Helper()
	f := cageOf(t, sheet)
	var all []string
	for _, weight := range []vehicle.Weight{vehicle.CannotBeBuilt, vehicle.StillOpen, vehicle.ToLookAt} {
		lines, _ := findingLines(f, f.FindingsOnce(), weight)
		all = append(all, lines...)
	}
	return strings.Join(append(all, exactWords(f)...), "\n")
}

const hintHoop = `
tube_stock "A" { ordered = "45 x 2.5 mm" }
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1150 mm"] }
joint "C" { at = ["0 mm", "-600 mm", "1150 mm"] }
joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
tube "1" {
  stock       = "A"
  through     = ["A", "B", "C", "D"]
  bend_radius = "135 mm"
}
foot "1" { joint = "A" }
foot "2" { tube = "1" }
`

func TestHints(t *testing.T) {
	said := foundIn(t, hintHoop+`
joint "E" { at = ["0 mm", "590 mm", "500 mm"] }
joint "F" { at = ["900 mm", "590 mm", "500 mm"] }
tube "2" {
  stock   = "A"
  through = ["E", "F"]
}`)
	require.Contains(t, said, "Tube 2 ends in the air at joint E: neither a foot nor another tube is there. The nearest tube is tube 1: its axis passes 10.0 mm away at (0, 600, 500) mm, and the readings allow 1.0 mm. So the joint is inside the metal of tube 1: give it that place.")
	require.Regexp(t, `Tube 2 ends in the air at joint F.* its axis passes 900\.1 mm away.*allow 1\.0 mm\.( What is not .*)? \(.*\.hcl:\d+\)`, said)
	require.Contains(t, said, `Foot 2 names tube 1, but no joint: write joint = "A" in it, the end of the tube that it stands under.`)
	require.Contains(t, said, "no tolerance of a joint is stated: figures that follow count as exact")
	require.NotContains(t, foundIn(t, strings.Replace(hintHoop, `"0 mm"] }`, `"0 mm ± 2 mm"] }`, 1)), "no tolerance of a joint")
}

func TestHintsOfDies(t *testing.T) {
	die := func(name, outside, radius string) string {
		return "die \"" + name + "\" {\n  outside           = \"" + outside + "\"\n  centreline_radius = \"" + radius + "\"\n}\n"
	}
	require.Contains(t, foundIn(t, hintHoop+die("small", "38 mm", "110 mm")), "There are dies for 38.0 mm (die small): take a stock of such a size, or another die.")
	require.Contains(t, foundIn(t, hintHoop+die("wide", "45 mm", "180 mm")), "For its outside there is a bend_radius of 180.0 mm (die wide): take that, or another die.")
	named := strings.Replace(hintHoop, `stock       = "A"`, "stock = \"A\"\n  die = \"small\"", 1)
	said := foundIn(t, named+die("small", "38 mm", "135 mm")+die("right", "45 mm", "135 mm"))
	require.Contains(t, said, `Die right fits: write die = "right".`)
	require.Contains(t, said, "no springback is recorded of die small and die right: bend angles are those of the finished tube")
}
