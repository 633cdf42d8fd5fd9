package vehicle

import (
	"flag"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/vehicle/quantity"
)

var rounds = flag.Int("rounds", 1, "how many times over heavy draws are made; 8 makes them in full")

// tightest is how many times as wide as the hull a derived range may be, and loose are the
// particulars of which now and then one is wider, with how wide: beside a bend that may be
// none, what a straight loses to it is taken as independent of its length.
const tightest = 1.3

var loose = map[string]float64{"corner straight_before": 1.6, "corner straight_after": 1.6}

// hull is the range of a particular over corners of the ranges of what it follows from,
// improved by moving one figure after the other to an end or to the middle.
func hull(sheet *Sheet, liesOn map[[2]*Part]int, d *Derivation, x *Particular, source *rand.Rand) (low, high float64) {
	car := &exactCar{sheet, map[Base]float64{}, liesOn}
	var figures []Base
	for _, base := range d.From {
		if base.Particular.Kind == KindNumber && !base.known().IsExact() {
			figures = append(figures, base)
		}
		car.is[base] = base.known().Middle()
	}
	middle := make(map[Base]float64, len(car.is))
	for base, is := range car.is {
		middle[base] = is
	}
	best := func(sign float64) float64 {
		least := math.Inf(1)
		for start := range 3 {
			for _, base := range figures {
				r := base.known()
				car.is[base] = middle[base]
				if start > 0 {
					car.is[base] = []float64{r.Low, r.High}[source.IntN(2)]
				}
			}
			least = min(least, car.improve(d.Part, x.Name, figures, sign))
		}
		return sign * least
	}
	return best(1), best(-1)
}

// improve returns the least of a particular, times a sign, that moving one figure after the
// other reaches.
func (e *exactCar) improve(part *Part, name string, figures []Base, sign float64) float64 {
	at := func() float64 { v, _ := e.exactly(part, name); return sign * v }
	least := at()
	for range 6 {
		before := least
		for _, base := range figures {
			here, r := e.is[base], base.known()
			for _, move := range []float64{r.Low, r.High, (here + r.Low) / 2, (here + r.High) / 2} {
				e.is[base] = move
				if v := at(); v < least {
					least, here = v, move
				}
			}
			e.is[base] = here
		}
		if least == before {
			break
		}
	}
	return least
}

// TestDerivedRangesAreTight holds the width of derived ranges against the hull of what exact
// cars reach. What hardly hangs on the readings is not compared, nor the angle in a view in
// which a tube is seen end on, which can be any.
func TestDerivedRangesAreTight(t *testing.T) {
	worst, count := map[string]float64{}, 0
	example := rapid.Custom(func(rt *rapid.T) string { return drawnCage(rt) })
	for seed := range 5 * *rounds {
		text := example.Example(seed)
		sheet := goodSheet(t, text)
		liesOn, source := liesOnAsRead(sheet), rand.New(rand.NewPCG(uint64(seed), 7))
		for _, d := range sheet.Derivations() {
			if slices.ContainsFunc(d.From, func(b Base) bool { return b.Part.Values[b.Particular.Index].State != Stated }) {
				continue
			}
			for _, x := range d.Gives {
				if x.Kind != KindNumber {
					continue
				}
				got := derived(t, sheet, d.Part, x.Name)
				isEndOn := strings.Contains(x.Name, "_angle_to_") && got.Low == 0 && got.High > math.Pi/2
				if got == quantity.Everything || isEndOn || got.Width() < 1e-6*math.Abs(got.High) {
					continue
				}
				low, high := hull(sheet, liesOn, d, x, source)
				ratio := got.Width() / max(high-low, 1e-300)
				name := d.Part.Type.Name + " " + x.Name
				if worst[name] = max(worst[name], ratio); ratio > tightest {
					t.Logf("%s of the %s, seed %d: %v, reached %v to %v", x.Name, d.Part.Name(), seed, got, low, high)
				}
				count++
			}
		}
	}
	for _, name := range slices.Sorted(maps.Keys(worst)) {
		ratio := worst[name]
		t.Logf("%s: at most %.3f times as wide as the hull", name, ratio)
		require.LessOrEqual(t, ratio, max(tightest, loose[name]), name)
	}
	t.Logf("%d ranges", count)
}
