package vehicle

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// derivation is how a particular of a part follows, nil when it does not.
func derivation(sheet *Sheet, part *Part, name string) (d *Derivation, which int) {
	for _, d := range sheet.Derivations() {
		for i, x := range d.Gives {
			if d.Part == part && x.Name == name {
				return d, i
			}
		}
	}
	return nil, 0
}

// derived is what follows for a particular of a part from what the sheet says.
func derived(t testing.TB, sheet *Sheet, part *Part, name string) quantity.Range {
	t.Helper()
	d, which := derivation(sheet, part, name)
	require.NotNil(t, d, "%s of %s", name, part.Name())
	from := bases{list: d.From}
	gives := make([]quantity.Range, len(d.Gives))
	d.Work(from.known(), gives)
	return gives[which]
}

func requireDegrees(t testing.TB, want float64, got quantity.Range) {
	t.Helper()
	require.InDelta(t, want, got.Low*180/math.Pi, 5e-5)
	require.InDelta(t, want, got.High*180/math.Pi, 5e-5)
}

func TestDerivationsGiveOnlyDerivedParticulars(t *testing.T) {
	sheet := goodSheet(t, geometrySheet)
	require.NotEmpty(t, sheet.Derivations())
	given := map[string]bool{}
	for _, d := range sheet.Derivations() {
		require.NotEmpty(t, d.Gives)
		for _, x := range d.Gives {
			require.True(t, x.Derived, x.Name)
			require.Same(t, d.Part.Type, x.Part)
			key := d.Part.Name() + " " + x.Name
			require.False(t, given[key], "%s follows twice", key)
			given[key] = true
		}
		for _, base := range d.From {
			require.Same(t, base.Part.Type, base.Particular.Part)
			require.False(t, base.Particular.Derived && base.Part.Original != nil, "%s of %s follows itself", base.Particular.Name, base.Part.Name())
		}
	}
	require.Empty(t, goodSheet(t, `car "Tessel 16" {}`).Derivations())
}

// solids writes a tetrahedron with edges of 2√2 m, on every second corner of a cube with
// sides of 2 m, and the space and face diagonals of that cube.
const solids = `car "Tessel 16" {}
joint "1" { at = ["1 m", "1 m", "1 m"] }
joint "2" { at = ["1 m", "-1 m", "-1 m"] }
joint "3" { at = ["-1 m", "1 m", "-1 m"] }
joint "4" { at = ["-1 m", "-1 m", "1 m"] }
joint "5" { at = ["-1 m", "-1 m", "-1 m"] }
tube "12" { through = ["1", "2"] }
tube "13" { through = ["1", "3"] }
tube "14" { through = ["1", "4"] }
tube "15" { through = ["5", "1"] }
tube "341" {
  through     = ["3", "4", "1"]
  bend_radius = "100 mm"
}
`

// Regular solids: edges of a tetrahedron meet at 60°; a cube's space diagonal is √12 long
// for sides of 2 and arctan √2 = 54.7356° from each edge, a face diagonal is at 45° to two
// of them, and arccos √(2/3) = 35.2644° from the space diagonal (elementary solid geometry).
func TestRegularSolids(t *testing.T) {
	sheet := goodSheet(t, solids)
	requireDegrees(t, 54.7356, derived(t, sheet, find(t, sheet, "tube", "15"), "angle_to_vertical"))
	requireDegrees(t, 35.2644, derived(t, sheet, find(t, sheet, "tube", "15"), "angle_to_horizontal"))
	requireDegrees(t, 45, derived(t, sheet, find(t, sheet, "tube", "15"), "side_angle_to_vertical"))
	requireDegrees(t, 45, derived(t, sheet, find(t, sheet, "tube", "12"), "front_angle_to_horizontal"))
	length := derived(t, sheet, find(t, sheet, "tube", "15"), "node_length")
	require.InDelta(t, math.Sqrt(12), length.Low, 1e-15)
	require.InDelta(t, math.Sqrt(12), length.High, 1e-15)
	corner := list(t, find(t, sheet, "tube", "341"), "corner").Parts[0]
	requireDegrees(t, 120, derived(t, sheet, corner, "angle"))
	// At 120° the tangents are R √3 each.
	after := derived(t, sheet, corner, "straight_after")
	require.InDelta(t, 2*math.Sqrt2-0.1*math.Sqrt(3), after.Low, 1e-14)
	developed := derived(t, sheet, find(t, sheet, "tube", "341"), "developed_length")
	require.InDelta(t, 4*math.Sqrt2-0.2*math.Sqrt(3)+0.1*math.Pi*2/3, developed.High, 1e-14)

	at := find(t, sheet, "joint", "1")
	require.Equal(t, quantity.Exactly(5), derived(t, sheet, at, "tubes_meeting"))
	requireDegrees(t, 0, derived(t, sheet, at, "least_angle")) // two tubes from 4 to 1
	for _, meeting := range list(t, at, "meeting").Parts {
		want := 60.0
		switch {
		case strings.Contains(meeting.Label, "14 and 341"):
			want = 0
		case strings.Contains(meeting.Label, "15"):
			want = 35.2644
		}
		requireDegrees(t, want, derived(t, sheet, meeting, "angle"))
	}
}

// A backstay at 30.1° to the vertical, measured so that it may be 0.6° less or more: whether
// it is at least 30° cannot be told.
func TestABackstayThatMayBeTooSteep(t *testing.T) {
	sheet := goodSheet(t, `car "Tessel 16" {}
joint "a" { at = ["0 mm", "0 mm", "1000 mm"] }
joint "b" {
  at        = ["-579.7 mm", "0 mm", "0 mm"]
  tolerance = ["9.2 mm", "1 mm", "9.2 mm"]
}
tube "5" { through = ["a", "b"] }
`)
	angle := derived(t, sheet, find(t, sheet, "tube", "5"), "angle_to_vertical")
	require.InDelta(t, 29.5, angle.Low*180/math.Pi, 0.05)
	require.InDelta(t, 30.7, angle.High*180/math.Pi, 0.05)
	limit := 30 * math.Pi / 180
	require.True(t, angle.Contains(limit))
	d, _ := derivation(sheet, find(t, sheet, "tube", "5"), "angle_to_vertical")
	require.Len(t, d.From, 6, "both joints, and nothing else")
	require.Empty(t, d.Open)
}

func TestStraightAsAShopSeesIt(t *testing.T) {
	for offset, want := range map[string]quantity.Range{
		"0 mm":         quantity.Exactly(1), // 2 m with a joint in the middle: 4 mm off is 0.46°
		"4 mm":         quantity.Exactly(1),
		"5 mm":         quantity.Exactly(0),
		"4 mm ± 1 mm":  quantity.Between(0, 1),
		"8 mm ± 12 mm": quantity.Between(0, 1),
	} {
		sheet := goodSheet(t, fmt.Sprintf(`car "Tessel 16" {}
joint "a" { at = ["-1 m", "0 mm", "0 mm"] }
joint "b" { at = ["0 mm", "0 mm", %q] }
joint "c" { at = ["1 m", "0 mm", "0 mm"] }
tube "1" { through = ["a", "b", "c"] }
tube "2" { through = ["a", "c"] }
`, offset))
		tube := find(t, sheet, "tube", "1")
		require.Equal(t, want, derived(t, sheet, tube, "straight"), offset)
		bends := derived(t, sheet, tube, "bends")
		require.Equal(t, quantity.Between(1-want.High, 1-want.Low), bends, offset)
		greatest := derived(t, sheet, tube, "greatest_bend_angle")
		require.Equal(t, want.High == 1, greatest == quantity.Everything, "%s: only of a tube that surely has a bend", offset)
		require.Equal(t, quantity.Exactly(1), derived(t, sheet, find(t, sheet, "tube", "2"), "straight"))
		asksRadius := func(part *Part, name string) bool {
			lacks, _ := derivation(sheet, part, name)
			return slices.ContainsFunc(lacks.From, func(base Base) bool { return base.Particular.Name == "bend_radius" })
		}
		require.Equal(t, want.Low == 0, asksRadius(tube, "developed_length"), "%s: a straight tube needs no bend radius", offset)
		// Tangents at 0.46° are 8 mm long round 2 m.
		corner := list(t, tube, "corner").Parts[0]
		require.Equal(t, offset != "0 mm", asksRadius(corner, "straight_before"), offset)
	}
}

// What is not recorded is named, by the part that would state it.
func TestWhatIsMissingIsNamed(t *testing.T) {
	sheet := goodSheet(t, `car "Tessel 16" {}
tube_stock "A" { material = "T45" }
joint "a left" {
  x           = "0 mm"
  y           = "500 mm"
  mirrored_as = "a right"
}
joint "b" { at = ["1 m", "0 mm", "0 mm"] }
joint "c" { at = ["0 mm", "0 mm", "0 mm"] }
tube "1" {
  stock       = "A"
  through     = ["a left", "b"]
  mirrored_as = "2"
}
tube "3" { stock = "A" }
tube "4" { through = ["b", "c"] }
tube "5" { through = ["c", "b"] }
unfinished = ["tube"]
`)
	missing := func(part *Part, name string) []string {
		d, _ := derivation(sheet, part, name)
		require.NotNil(t, d, name)
		var named []string
		for _, base := range d.From {
			if base.Part.Values[base.Particular.Index].State == Nothing {
				named = append(named, base.Part.Name()+": "+base.Particular.Name)
			}
		}
		return named
	}
	image := find(t, sheet, "tube", "2")
	require.Equal(t, []string{"joint a left: z"}, missing(image, "node_length"))
	require.Equal(t, []string{"joint a left: z", "tube 2: outside", "tube 2: wall"}, missing(image, "mass"))
	require.Equal(t, []string{"joint a left: z", "tube 3: through"}, missing(image, "unsupported_span"))
	require.Equal(t, []string{"tube 3: through"}, missing(image.Within, "mass"))
	require.Equal(t, []string{"tube 4: outside", "tube 4: wall", "tube 4: material"}, missing(find(t, sheet, "tube", "4"), "mass"))
	require.Equal(t, []string{"tube 4: yield"}, missing(find(t, sheet, "tube", "4"), "yield_moment")[2:])
	d, _ := derivation(sheet, image.Within, "mass")
	require.Equal(t, "tube", d.Open[0].Type.Name)
	d, _ = derivation(sheet, image, "node_length")
	require.Empty(t, d.Open, "it hangs on its own joints")
	requireDegrees(t, 0, derived(t, sheet, list(t, find(t, sheet, "joint", "b"), "meeting").Parts[5], "angle"))
	d, _ = derivation(sheet, find(t, sheet, "joint", "b"), "least_angle")
	require.Equal(t, []string{"joint a left: z", "tube 3: through"}, missing(d.Part, "least_angle"))
	require.Equal(t, quantity.Everything, derived(t, sheet, d.Part, "least_angle"))
	far := derived(t, sheet, image, "angle_to_vertical")
	require.Less(t, far.Low, 0.2, "a joint at any height")
	require.Greater(t, far.High, 1.5)
	require.Equal(t, quantity.Exactly(-0.5), derived(t, sheet, find(t, sheet, "joint", "a right"), "y"))
}

// Steel is 7850 kg/m³ (EN 10219-2) and 210 GPa (EN 1993-1-1); a tube of 45 × 2.5 mm then has
// 2.6203 kg/m, and a second moment of 7.5625 cm⁴ (by the formulas for a ring). Another
// material has no such figure.
func TestMaterialsThatAreNoSteel(t *testing.T) {
	text := `car "Tessel 16" {}
joint "a" { at = ["0 mm", "0 mm", "0 mm"] }
joint "b" { at = ["1 m", "0 mm", "0 mm"] }
tube "1" {
  through  = ["a", "b"]
  ordered  = "45 x 2.5 mm"
  material = %q
}
`
	sheet := goodSheet(t, fmt.Sprintf(text, "T45"))
	tube := find(t, sheet, "tube", "1")
	require.InDelta(t, 2.6203, derived(t, sheet, tube, "mass").Low, 5e-5)
	require.InDelta(t, 2.6203, derived(t, sheet, tube.Within, "mass").High, 5e-5)
	require.InDelta(t, 7.5625e-8*210e9, derived(t, sheet, tube, "bending_stiffness").Low, 1)
	takes := func(part *Part, name string) []string {
		d, _ := derivation(sheet, part, name)
		return d.Takes
	}
	require.Equal(t, []string{"density of steel: 7850 kg/m3 (EN 10219-2)"}, takes(tube, "mass"))
	require.Equal(t, []string{"density of steel: 7850 kg/m3 (EN 10219-2)"}, takes(tube.Within, "mass"))
	require.Equal(t, []string{"elasticity of steel: 210 GPa (EN 1993-1-1)"}, takes(tube, "bending_stiffness"))
	require.Empty(t, takes(tube, "section_area"))
	sheet = goodSheet(t, fmt.Sprintf(text, "aluminium alloy"))
	d, _ := derivation(sheet, find(t, sheet, "tube", "1"), "mass")
	require.Equal(t, "density", d.From[len(d.From)-1].Particular.Name)
	require.Empty(t, d.Takes)
}

func TestDerivationsMayBeWorkedOutAtOnce(t *testing.T) {
	sheet := goodSheet(t, geometrySheet)
	once := func() (all []quantity.Range) {
		for _, d := range sheet.Derivations() {
			from := bases{list: d.From}
			gives := make([]quantity.Range, len(d.Gives))
			d.Work(from.known(), gives)
			all = append(all, gives...)
		}
		return all
	}
	want := once()
	var wait sync.WaitGroup
	got := make([][]quantity.Range, 4)
	for i := range got {
		wait.Go(func() { got[i] = once() })
	}
	wait.Wait()
	for _, all := range got {
		require.Equal(t, want, all)
	}
}
