package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// NearestSurface returns which of the tubes is nearest to a point as read, the first of
// equals, and the range of the distance from the point to whichever surface is nearest, in
// metres: the clearance of a helmet in a cage. Outsides are the diameters; a tube without
// one counts as its centreline. Without tubes it returns -1 and Everything.
func NearestSurface(p Point, tubes []Tube, outsides []quantity.Range) (nearest int, clearance quantity.Range) {
	half := make([]quantity.Range, len(tubes))
	lows := make([]float64, len(tubes))
	farther := math.Inf(1)
	for i, tube := range tubes {
		if i < len(outsides) {
			half[i] = halfOf(outsides[i])
		}
		low, high := roughly(p, tube)
		lows[i] = low - half[i].High
		farther = min(farther, high-half[i].Low)
	}
	nearest, clearance = -1, quantity.Everything
	least := math.Inf(1)
	for i, tube := range tubes {
		if lows[i] > farther {
			continue
		}
		surface := DistanceToTube(p, tube).Minus(half[i])
		if nearest >= 0 {
			surface = surface.Min(clearance)
		}
		clearance = surface
		_, away := tube.AsRead().Nearest(p.Middle())
		if read := away - half[i].Middle(); read < least || nearest < 0 {
			nearest, least = i, read
		}
	}
	return nearest, clearance
}

// roughly returns bounds of the distance of a point from a tube: as read from point to
// point, give or take what all can be off and how far an arc is from its corner.
func roughly(p Point, t Tube) (low, high float64) {
	here, spread := p.Middle(), p.spread()
	if !p.isBounded() || len(t.Points) == 0 {
		return 0, math.Inf(1)
	}
	low, high = math.Inf(1), math.Inf(1)
	most := 0.0
	for i, point := range t.Points {
		if !point.isBounded() {
			return 0, math.Inf(1)
		}
		_, away := t.run(i).Nearest(here)
		margin := spread + max(point.spread(), t.Points[min(i+1, len(t.Points)-1)].spread())
		low, high = min(low, away-margin), min(high, away+margin)
		if i > 0 && i+1 < len(t.Points) {
			most = max(most, t.corner(i))
		}
	}
	return low - most, high + most
}

// run returns run i of the tube as read; of the last point that point alone.
func (t Tube) run(i int) Segment {
	return Segment{t.Points[i].Middle(), t.Points[min(i+1, len(t.Points)-1)].Middle()}
}

// corner returns how far an arc at point i and the straights into that corner can be apart,
// at most: for a turn β the middle of the arc is R (1 / cos(β/2) - 1) from the corner
// (elementary geometry). Where the tube may turn nearly straight back there is no bound.
func (t Tube) corner(i int) float64 {
	in, off := lean(t.Points[i-1], t.Points[i])
	out, offOut := lean(t.Points[i], t.Points[i+1])
	turn := in.Angle(out) + off + offOut + 1e-9
	if !(turn < 3) || !(t.Radius.High <= farthest) {
		return math.Inf(1)
	}
	return max(0, t.Radius.High) * (1/math.Cos(turn/2) - 1)
}

// piecesNear returns which pieces of a tube (see stretch) may be the nearest to a point; nil
// where nothing is known of that. A straight is nowhere nearer than its run, and an arc than
// the two runs into its corner, less how far it is from them.
func piecesNear(p Point, t Tube) func(piece int) bool {
	_, farther := roughly(p, t)
	if math.IsInf(farther, 1) || len(t.Points) < 3 {
		return nil
	}
	here, spread := p.Middle(), p.spread()
	low := func(run int) float64 {
		_, away := t.run(run).Nearest(here)
		return away - spread - max(t.Points[run].spread(), t.Points[run+1].spread())
	}
	return func(piece int) bool {
		if piece%2 == 0 {
			return low(piece/2) <= farther
		}
		i := piece/2 + 1
		return t.besideCorner(here, i)-spread <= farther && min(low(i-1), low(i))-t.corner(i) <= farther
	}
}

// besideCorner returns how far a place surely is from the arc at point i: the arc is no
// farther from its corner than its tangents are long.
func (t Tube) besideCorner(here Vector, i int) float64 {
	in, off := lean(t.Points[i-1], t.Points[i])
	out, offOut := lean(t.Points[i], t.Points[i+1])
	tangent := t.Radius.High * math.Tan((in.Angle(out)+off+offOut+1e-9)/2)
	return here.Distance(t.Points[i].Middle()) - tangent - t.Points[i].spread()
}
