package vehicle

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/vehicle/quantity"
)

// figuresOf are the figures that anything on a sheet follows from, in order.
func figuresOf(sheet *Sheet) []Base {
	var all bases
	for _, d := range sheet.Derivations() {
		for _, base := range d.From {
			if base.Particular.Kind == KindNumber {
				all.put(base)
			}
		}
	}
	return all.list
}

// TestDerivedRangesHoldEveryExactCar draws cages with tolerances, cars that agree with them,
// at corners of all ranges as often as within, and holds every derived range against what
// elementary geometry says of the exact car.
func TestDerivedRangesHoldEveryExactCar(t *testing.T) {
	compared, seen := 0, map[*Particular]bool{}
	rapid.Check(t, func(rt *rapid.T) {
		sheet := readDrawn(rt, drawnCage(rt))
		figures, liesOn := figuresOf(sheet), liesOnAsRead(sheet)
		source := rand.New(rand.NewPCG(rapid.Uint64().Draw(rt, "cars"), 1))
		for range 3 {
			car := &exactCar{sheet, map[Base]float64{}, liesOn}
			corner := source.IntN(2) == 0
			for _, base := range figures {
				share := source.Float64()
				if corner {
					share = math.Round(share)
				}
				r := base.known()
				car.is[base] = min(r.High, max(r.Low, r.Low+share*(r.High-r.Low)))
			}
			for _, d := range sheet.Derivations() {
				compared += car.check(rt, d, seen)
			}
		}
	})
	t.Logf("%d values of %d particulars", compared, len(seen))
	for _, x := range derivedParticulars() {
		require.True(t, seen[x], "%s of a %s was not compared", x.Name, x.Part.Name)
	}
}

// derivedParticulars are those of the vocabulary that follow from others.
func derivedParticulars() []*Particular {
	var derived []*Particular
	for _, t := range BuiltIn().Types() {
		for _, x := range t.Particulars {
			if x.Derived {
				derived = append(derived, x)
			}
		}
	}
	return derived
}

// check holds what follows for an exact car against the ranges that follow from the sheet,
// and against those that follow from its own figures.
func (e *exactCar) check(rt *rapid.T, d *Derivation, seen map[*Particular]bool) (compared int) {
	of := bases{list: d.From}
	full, exact := make([]quantity.Range, len(d.Gives)), make([]quantity.Range, len(d.Gives))
	d.Work(of.known(), full)
	from := make([]quantity.Range, len(d.From))
	for i, base := range d.From {
		from[i] = quantity.Exactly(e.is[base])
	}
	d.Work(from, exact)
	for i, x := range d.Gives {
		want, ok := e.exactly(d.Part, x.Name)
		if !ok {
			continue
		}
		compared++
		seen[x] = true
		margin := 1e-12 * max(1, math.Abs(want))
		for _, r := range []quantity.Range{full[i], exact[i]} {
			if want < r.Low-margin || want > r.High+margin {
				rt.Fatalf("%s of the %s is %v, not in %v", x.Name, d.Part.Name(), want, r)
			}
		}
		isEndOn := strings.Contains(x.Name, "_angle_to_") && exact[i].Low == 0 && exact[i].High > math.Pi/2
		if exact[i] != quantity.Everything && !isEndOn && exact[i].Width() > 1e-7*max(1, math.Abs(want)) {
			rt.Fatalf("%s of the %s is %v for an exact car", x.Name, d.Part.Name(), exact[i])
		}
	}
	return compared
}
