package cage

import (
	"flag"
	"math"
	"math/rand/v2"
	"testing"

	"gapsheet/vehicle/quantity"

	"github.com/stretchr/testify/require"
)

var rounds = flag.Int("rounds", 1, "how many times over the heavy draws are made; 100 makes them in full")

// sweep calls a check with that many draws a round from a source of numbers whose seed it
// logs.
func sweep(t *testing.T, draws int, check func(source *rand.Rand)) {
	t.Helper()
	for round := range *rounds {
		source := rand.New(rand.NewPCG(uint64(20270314+round), 3))
		for range draws {
			check(source)
		}
	}
	t.Logf("%d draws, seeds from 20270314", draws**rounds)
}

// question is a value derived from points, over ranges and for exact places.
type question struct {
	points []Point
	ranges quantity.Range
	at     func(places []Vector) float64
}

// box is the coordinates' ranges of a question's readings; mirror images have none of their
// own.
type box struct {
	question
	ranges []quantity.Range
	own    []int // the first range of each point
}

func boxOf(q question) box {
	b := box{question: q}
	seen := map[int]int{}
	for _, p := range q.points {
		if at, ok := seen[p.Reading]; ok && p.Reading != 0 {
			b.own = append(b.own, at)
			continue
		}
		seen[p.Reading] = len(b.ranges)
		b.own = append(b.own, len(b.ranges))
		y := p.Y
		if p.Mirrored {
			y = y.Negate()
		}
		b.ranges = append(b.ranges, p.X, y, p.Z)
	}
	return b
}

func (b box) value(x []float64) float64 {
	places := make([]Vector, 0, 8)
	for i, own := range b.own {
		place := Vector{x[own], x[own+1], x[own+2]}
		if b.points[i].Mirrored {
			place.Y = -place.Y
		}
		places = append(places, place)
	}
	return b.at(places)
}

// hull returns the least and the greatest value over all corners (or as many as 4096 of
// them), improved by moving one coordinate after the other.
func (b box) hull(source *rand.Rand) (low, high float64) { return b.hullOf(source, 4096, 1e-4) }

// hullOf is hull over at most so many corners, improved by steps down to the finest share of
// a coordinate's range.
func (b box) hullOf(source *rand.Rand, corners int, finest float64) (low, high float64) {
	n := len(b.ranges)
	x, best, worst := make([]float64, n), make([]float64, n), make([]float64, n)
	low, high = math.Inf(1), math.Inf(-1)
	for corner := range min(1<<n, corners) {
		bits := uint64(corner)
		if 1<<n > corners {
			bits = source.Uint64()
		}
		for i, r := range b.ranges {
			x[i] = r.Low
			if bits>>i&1 == 1 {
				x[i] = r.High
			}
		}
		value := b.value(x)
		if value < low {
			low = value
			copy(best, x)
		}
		if value > high {
			high = value
			copy(worst, x)
		}
	}
	middle := make([]float64, n)
	for i, r := range b.ranges {
		middle[i] = r.Middle()
	}
	for _, start := range [][]float64{best, middle} {
		low = min(low, b.improved(start, 1, finest))
	}
	for _, start := range [][]float64{worst, middle} {
		high = max(high, -b.improved(start, -1, finest))
	}
	return low, high
}

// improved returns the least of sign × value that moving one coordinate after the other
// reaches from a start.
func (b box) improved(start []float64, sign, finest float64) float64 {
	x := append([]float64(nil), start...)
	least := sign * b.value(x)
	for step := 1.0; step > finest; step /= 2 {
		for range 3 {
			before := least
			for i, r := range b.ranges {
				here := x[i]
				for _, move := range []float64{-step, step} {
					x[i] = min(r.High, max(r.Low, here+move*(r.High-r.Low)))
					if value := sign * b.value(x); value < least {
						least, here = value, x[i]
					}
				}
				x[i] = here
			}
			if least == before {
				break
			}
		}
	}
	return least
}

// sample checks that the values for sampled and corner coordinates are in the range. They
// are computed in plain floats, which err by less than the margin.
func (b box) sample(t *testing.T, source *rand.Rand, draws int) {
	t.Helper()
	x := make([]float64, len(b.ranges))
	for range draws {
		corner := source.IntN(2) == 0
		for i, r := range b.ranges {
			share := source.Float64()
			if corner {
				share = math.Round(share)
			}
			x[i] = min(r.High, max(r.Low, r.Low+share*(r.High-r.Low)))
		}
		value := b.value(x)
		margin := 1e-13 * max(1, math.Abs(value))
		require.True(t, b.question.ranges.Low-margin <= value && value <= b.question.ranges.High+margin,
			"%v is not in %v\npoints %v\nat %v", value, b.question.ranges, b.points, x)
	}
}

// tightness gathers how many times as wide as the hull the ranges were. Both are taken
// wider by a nanometre and a billionth of a radian, below which lengths and angles are the
// same figure. A length whose hull is less than a twentieth of the greatest tolerance hardly
// hangs on the readings, and is held to that twentieth.
type tightness struct {
	isLength   bool
	worst, sum float64
	count      int
	over       int // wider than widest times the hull
	points     []Point
}

func (w *tightness) add(b box, low, high float64) {
	floor := 1e-9
	for _, r := range b.ranges {
		if w.isLength {
			floor = max(floor, 0.05*r.Width())
		}
	}
	ratio := (b.question.ranges.Width() + 1e-9) / max(high-low+1e-9, floor)
	if ratio > w.worst {
		w.worst, w.points = ratio, b.points
	}
	if ratio > widest {
		w.over++
	}
	w.sum += ratio
	w.count++
}

func (w *tightness) log(t *testing.T, name string) {
	t.Helper()
	t.Logf("%s: %d draws, at most %.3f times as wide as the hull, %.3f in the mean", name, w.count, w.worst, w.sum/float64(w.count))
}

// drawPoint returns a point about v with tolerances up to the given one, now and then
// without one, or with a different one on each axis.
func drawPoint(source *rand.Rand, v Vector, tolerance float64) Point {
	switch source.IntN(6) {
	case 0:
		return At(v)
	case 1:
		p := At(v)
		for _, r := range []*quantity.Range{&p.X, &p.Y, &p.Z} {
			*r = quantity.Between(r.Low-source.Float64()*tolerance, r.High+source.Float64()*tolerance)
		}
		return p
	}
	return Within(v, tolerance*(0.2+0.8*source.Float64()))
}

// drawDirection returns a unit vector, now and then along an axis.
func drawDirection(source *rand.Rand) Vector {
	for {
		v := Vector{source.NormFloat64(), source.NormFloat64(), source.NormFloat64()}
		if source.IntN(4) == 0 {
			v = [...]Vector{{X: 1}, {Y: -1}, {Z: 1}}[source.IntN(3)]
		}
		if unit, ok := v.Unit(); ok {
			return unit
		}
	}
}

// drawWay returns a way of 0.1 m to 2 m.
func drawWay(source *rand.Rand) Vector {
	return drawDirection(source).Times(0.1 * math.Pow(20, source.Float64()))
}

// drawTolerance returns a tolerance from 0.1 mm to 5 mm.
func drawTolerance(source *rand.Rand) float64 { return 1e-4 * math.Pow(50, source.Float64()) }

// drawTurn returns a way from v, turned by an angle that is as often small or nearly a half
// turn as anything.
func drawTurn(source *rand.Rand, v Vector) Vector {
	unit, _ := v.Unit()
	normal, _ := across(unit, drawDirection(source))
	if normal == (Vector{}) {
		normal, _ = across(unit, unit.leastAxis())
	}
	angle := source.Float64() * math.Pi
	switch source.IntN(4) {
	case 0:
		angle = 0.2 * math.Pow(1e-3, source.Float64())
	case 1:
		angle = math.Pi - 0.2*math.Pow(1e-3, source.Float64())
	case 2:
		angle = math.Pi / 6 * float64(source.IntN(7))
	}
	return unit.Turned(normal, angle).Times(drawWay(source).Norm())
}

// Mirror returns the mirror image of the point on the other side of the car, which is the
// same reading.
func (p Point) Mirror() Point {
	p.Y, p.Mirrored = p.Y.Negate(), !p.Mirrored
	return p
}
