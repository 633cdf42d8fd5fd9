package engine

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// frameOf is a sheet of so many tubes: bents of a hoop and what joins them, all the way
// back, every joint with a tolerance.
func frameOf(tubes int) string {
	var b strings.Builder
	b.WriteString("car \"long\" {\n}\ntube_stock \"A\" {\n  size = \"45 x 2.5 mm\"\n  material = \"unalloyed carbon steel\"\n  yield = \"420 MPa\"\n}\n")
	frames := tubes/6 + 1
	for i := range frames {
		x := float64(-i) * 280
		for _, j := range []struct {
			name string
			y, z float64
		}{{"foot", 600, 50}, {"knee", 590, 700}, {"top", 480, 1150}} {
			fmt.Fprintf(&b, "joint \"%s %d\" {\n  at = [\"%.1f mm\", \"%.1f mm\", \"%.1f mm\"]\n  tolerance = \"3 mm\"\n  mirrored_as = \"%s %d right\"\n}\n",
				j.name, i, x, j.y, j.z, j.name, i)
		}
		fmt.Fprintf(&b, "foot \"%d\" {\n  joint = \"foot %d\"\n}\n", i, i)
	}
	n := 0
	tube := func(through ...string) {
		if n++; n <= tubes {
			fmt.Fprintf(&b, "tube \"%d\" {\n  stock = \"A\"\n  bend_radius = \"140 mm +/- 2 mm\"\n  through = [%s]\n}\n", n, `"`+strings.Join(through, `", "`)+`"`)
		}
	}
	for i := range frames {
		f := func(name string, at int) string { return fmt.Sprintf("%s %d", name, min(at, frames-1)) }
		tube(f("foot", i), f("knee", i), f("top", i), f("top", i)+" right", f("knee", i)+" right", f("foot", i)+" right")
		if i+1 == frames {
			break
		}
		tube(f("top", i), f("top", i+1))
		tube(f("top", i)+" right", f("top", i+1)+" right")
		tube(f("knee", i), f("foot", i+1))
		tube(f("top", i), f("knee", i+1)+" right")
		tube(f("top", i)+" right", f("knee", i+1))
	}
	return b.String()
}

// BenchmarkDerived lays out a cage of 60 tubes with all that follows from its joints, by
// both ways of reading, beside reading its file.
func BenchmarkDerived(b *testing.B) {
	text := frameOf(60)
	sheet := sheetOf(b, text)
	require.Len(b, sheet.Root.List(vehicle.BuiltIn().Type("cage")).Parts[0].List(vehicle.BuiltIn().Type("tube")).Parts, 60)
	p, faults := Compile(&rules.Rulebook{Vocabulary: vehicle.BuiltIn()})
	require.Empty(b, faults)
	b.Run("reading", func(b *testing.B) {
		for b.Loop() {
			sheetOf(b, text)
		}
	})
	car := p.Car(sheet)
	b.Run("following", func(b *testing.B) {
		for b.Loop() {
			for _, d := range car.derivations {
				d.over(car.full)
			}
		}
	})
	b.Run("laying out", func(b *testing.B) {
		for b.Loop() {
			p.Car(sheet)
		}
	})
}
