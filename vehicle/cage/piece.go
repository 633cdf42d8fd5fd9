package cage

import "math"

// Piece is a straight or an arc of a centreline.
type Piece struct {
	From, To Vector
	Centre   Vector  // of an arc
	Normal   Vector  // of an arc's plane, of length 1: it turns right-handed about it
	Radius   float64 // of an arc, metres
	Turn     float64 // of an arc, radians; 0 for a straight
}

// Length returns the length along the piece, in metres.
func (p Piece) Length() float64 {
	if p.Turn > 0 {
		return p.Radius * p.Turn
	}
	return p.From.Distance(p.To)
}

// At returns the place that is the given share of the way along.
func (p Piece) At(share float64) Vector {
	if p.Turn > 0 {
		return p.Centre.Plus(p.From.Minus(p.Centre).Turned(p.Normal, share*p.Turn))
	}
	return p.From.Along(p.To, share)
}

// Direction returns the direction of travel at the given share of the way, of length 1.
func (p Piece) Direction(share float64) Vector {
	way := p.To.Minus(p.From)
	if p.Turn > 0 {
		way = p.Normal.Cross(p.At(share).Minus(p.Centre))
	}
	direction, _ := way.Unit()
	return direction
}

// Nearest returns the share of the way along at which the piece is nearest to a place, and
// how far away that is, in metres.
func (p Piece) Nearest(place Vector) (share, distance float64) {
	if p.Turn == 0 {
		return Segment{p.From, p.To}.Nearest(place)
	}
	start, way := p.From.Minus(p.Centre), place.Minus(p.Centre)
	angle := math.Atan2(p.Normal.Cross(start).Dot(way), start.Dot(way))
	if angle < p.Turn/2-math.Pi { // nearer to the arc's end, the other way round
		angle += 2 * math.Pi
	}
	share = min(1, max(0, angle/p.Turn))
	return share, p.At(share).Distance(place)
}

// Pieces returns the straights and arcs of the course in order, without straights of no
// length. Without a radius its corners stay sharp, as does a turn straight back. Where the
// arcs do not fit, straights run backward; Check says so.
func (c Course) Pieces() []Piece {
	var pieces []Piece
	if len(c.Points) < 2 {
		return nil
	}
	here := c.Points[0]
	straightTo := func(place Vector) {
		if here.Distance(place) > closest {
			pieces = append(pieces, Piece{From: here, To: place})
		}
		here = place
	}
	for i := 1; i+1 < len(c.Points); i++ {
		if arc, ok := c.arc(i); ok {
			straightTo(arc.From)
			pieces = append(pieces, arc)
			here = arc.To
		} else if c.Turn(i-1) > straightOn {
			straightTo(c.Points[i])
		}
	}
	straightTo(c.Points[len(c.Points)-1])
	return pieces
}

// arc returns the arc at point i, and whether there is one.
func (c Course) arc(i int) (Piece, bool) {
	corner := c.Points[i]
	in, okIn := corner.Minus(c.Points[i-1]).Unit()
	out, okOut := c.Points[i+1].Minus(corner).Unit()
	normal, okNormal := in.Cross(out).Unit()
	turn := in.Angle(out)
	if !okIn || !okOut || !okNormal || turn <= straightOn || turn > math.Pi-turnsBack || !(c.Radius > 0) {
		return Piece{}, false
	}
	tangent := c.Radius * math.Tan(turn/2)
	arc := Piece{From: corner.Minus(in.Times(tangent)), To: corner.Plus(out.Times(tangent)), Normal: normal, Radius: c.Radius, Turn: turn}
	arc.Centre = arc.From.Plus(normal.Cross(in).Times(c.Radius))
	return arc, true
}

// Nearest returns how far along the centreline it is nearest to a place, and how far away
// that is, both in metres. A course of fewer than two points, or of one place, is that place.
func (c Course) Nearest(place Vector) (along, distance float64) {
	distance = math.Inf(1)
	if len(c.Points) > 0 {
		distance = c.Points[0].Distance(place)
	}
	passed := 0.0
	for _, piece := range c.Pieces() {
		length := piece.Length()
		if share, d := piece.Nearest(place); d < distance {
			along, distance = passed+share*length, d
		}
		passed += length
	}
	return along, distance
}

// Polyline returns places along the centreline for a drawing, ends included: arcs are drawn
// as chords that are nowhere farther from the arc than the given height, in metres; at least
// four chords to an arc.
func (c Course) Polyline(height float64) []Vector {
	if len(c.Points) == 0 {
		return nil
	}
	places := []Vector{c.Points[0]}
	for _, piece := range c.Pieces() {
		chords := 1
		if piece.Turn > 0 {
			step := 2 * math.Acos(max(0, 1-max(height, piece.Radius*1e-6)/piece.Radius))
			chords = max(4, int(math.Ceil(piece.Turn/step)))
		}
		for i := 1; i < chords; i++ {
			places = append(places, piece.At(float64(i)/float64(chords)))
		}
		places = append(places, piece.To)
	}
	return places
}
