package vehicle

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

// shopCage is a believable cage of sixty tubes, as a shop would write it with a tape: six
// frames with a diagonal each, bays of eight tubes between them, and braces of a bend each;
// two of the crew.
func shopCage() string {
	var text strings.Builder
	joint := func(name string, x, y, z float64, image string) {
		fmt.Fprintf(&text, "joint %q {\nat = [\"%.0f mm\", \"%.0f mm\", \"%.0f mm\"]\ntolerance = \"3 mm\"\n%s}\n", name, x, y, z, image)
	}
	tube := func(stock string, through ...string) {
		fmt.Fprintf(&text, "tube \"%d\" {\npart = \"other\"\nstock = %q\nbend_radius = \"135 mm\"\nthrough = [\"%s\"]\n}\n", strings.Count(text.String(), "tube ")+1, stock, strings.Join(through, `", "`))
	}
	text.WriteString("car \"Tessel 16\" {}\n")
	for stock, size := range []string{"45 x 2.5", "38 x 2.5", "38 x 2"} {
		fmt.Fprintf(&text, "tube_stock \"%c\" {\nordered = \"%s mm\"\nmaterial = \"T45\"\nyield = \"350 MPa\"\noutside = \"%.1f mm ± 0.1 mm\"\n}\n", 'A'+stock, size, []float64{45, 38, 38}[stock])
	}
	corners := "bcde"
	for i := range 6 {
		x := 2400 - 550*float64(i)
		for k, at := range [][2]float64{{620, 20 * float64(i)}, {550, 1150}} {
			left, right := fmt.Sprintf("%d%c", i, corners[k]), fmt.Sprintf("%d%c", i, corners[3-k])
			joint(left, x-50*float64(k), at[0], at[1], fmt.Sprintf("mirrored_as = %q\n", right))
		}
		fmt.Fprintf(&text, "foot \"%d\" {\njoint = \"%db\"\nmirrored_as = \"%d right\"\n}\n", i, i, i)
	}
	for i := range 8 {
		joint(fmt.Sprintf("k%d", i), 1900-300*float64(i), 300, 100, "")
	}
	at := func(i, k int) string { return fmt.Sprintf("%d%c", i, corners[k]) }
	for i := range 6 {
		tube("A", at(i, 0), at(i, 1), at(i, 2), at(i, 3))
		tube("B", at(i, 0), at(i, 2))
	}
	for i := range 5 {
		for _, pair := range [][2]int{{0, 0}, {1, 1}, {2, 2}, {3, 3}, {0, 1}, {3, 2}, {1, 2}, {2, 1}} {
			tube("B", at(i, pair[0]), at(i+1, pair[1]))
		}
	}
	for i := range 8 {
		tube("C", at(i%5, 0), fmt.Sprintf("k%d", i), at(i%5+1, 3))
	}
	for i, crew := range []string{"driver", "co-driver"} {
		fmt.Fprintf(&text, "head %q {\ntop = [\"200 mm\", \"%d mm\", \"1000 mm\"]\ntolerance = \"5 mm\"\nhelmet_radius = \"140 mm\"\n}\n", crew, 350-700*i)
	}
	return text.String()
}

// worked works out all derivations of a sheet, from what it says.
func worked(sheet *Sheet, from [][]quantity.Range, gives []quantity.Range) {
	for i, d := range sheet.Derivations() {
		d.Work(from[i], gives[:len(d.Gives)])
	}
}

func knownOf(sheet *Sheet) [][]quantity.Range {
	var from [][]quantity.Range
	for _, d := range sheet.Derivations() {
		from = append(from, (&bases{list: d.From}).known())
	}
	return from
}

func TestTheCageOfTheBenchmark(t *testing.T) {
	sheet := goodSheet(t, shopCage())
	require.Len(t, sheet.partsNamed("tube"), 60)
	require.Len(t, sheet.partsNamed("joint"), 32)
	mass := derived(t, sheet, sheet.partsNamed("cage")[0], "mass")
	car := &exactCar{sheet: sheet, is: map[Base]float64{}, liesOn: liesOnAsRead(sheet)}
	for _, base := range figuresOf(sheet) {
		car.is[base] = base.known().Middle()
	}
	want, _ := car.ofAll(sheet.partsNamed("cage")[0], "mass")
	require.InDelta(t, want, mass.Middle(), 0.05)
	require.Less(t, mass.Width(), 0.03*mass.Middle())
	count := 0
	for _, d := range sheet.Derivations() {
		count += len(d.Gives)
	}
	t.Logf("%d derivations of %d particulars", len(sheet.Derivations()), count)
}

func BenchmarkDerivations(b *testing.B) {
	sheet := goodSheet(b, shopCage())
	text := fstest.MapFS{"a.hcl": {Data: []byte(shopCage())}}
	from, gives := knownOf(sheet), make([]quantity.Range, 8)
	b.Run("worked out", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			worked(sheet, from, gives)
		}
	})
	b.Run("found", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			derive(sheet)
		}
	})
	b.Run("reading the file", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			Load(text, "a.hcl", "a.hcl", BuiltIn(), Options{})
		}
	})
}

// BenchmarkDerivedBy shows which derivations cost most.
func BenchmarkDerivedBy(b *testing.B) {
	sheet := goodSheet(b, shopCage())
	from, gives := knownOf(sheet), make([]quantity.Range, 8)
	kinds := map[string][]int{}
	var order []string
	for i, d := range sheet.Derivations() {
		name := d.Part.Type.Name + " " + d.Gives[0].Name
		if kinds[name] == nil {
			order = append(order, name)
		}
		kinds[name] = append(kinds[name], i)
	}
	for _, name := range order {
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				for _, i := range kinds[name] {
					sheet.Derivations()[i].Work(from[i], gives)
				}
			}
		})
	}
}
