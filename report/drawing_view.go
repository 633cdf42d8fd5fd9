package report

import (
	"math"

	"gapsheet/vehicle/cage"
)

// viewpoint is a parallel projection: how far a place lies across and up on the paper, and
// how far toward the eye, all as scalar products with directions of the car's axes.
type viewpoint struct {
	title              string
	across, up, toward cage.Vector
	axes               [3]spot // where x, y and z point on the paper, y down; both 0: toward the eye
}

// cos30 is by how much a length along x or y goes across in an isometric view.
var cos30 = math.Cos(math.Pi / 6)

// The viewpoints. Side, plan and front are orthographic views in first-angle projection
// (ISO 5456-2, from memory): the side as seen from the car's left is the principal view,
// the plan stands below it and the view from ahead, which the car faces on the paper's
// left, to the right of it. The isometric view (ISO 5456-3, from memory) has x and y at 30°
// to the level and lengths along all three axes to scale, 1:1:1, as is practice there; a
// true projection would be smaller by √(2/3).
var (
	sideView  = newViewpoint("Side, from the left", cage.Vector{X: -1}, cage.Vector{Z: 1}, cage.Vector{Y: 1})
	frontView = newViewpoint("Front, from ahead", cage.Vector{Y: 1}, cage.Vector{Z: 1}, cage.Vector{X: 1})
	planView  = newViewpoint("Plan, from above", cage.Vector{X: -1}, cage.Vector{Y: -1}, cage.Vector{Z: 1})
	isometric = newViewpoint("Isometric, from ahead, left and above",
		cage.Vector{X: -cos30, Y: cos30}, cage.Vector{X: -0.5, Y: -0.5, Z: 1},
		cage.Vector{X: 1 / math.Sqrt(3), Y: 1 / math.Sqrt(3), Z: 1 / math.Sqrt(3)})
)

func newViewpoint(title string, across, up, toward cage.Vector) viewpoint {
	axis := func(v cage.Vector) spot { return spot{across.Dot(v), -up.Dot(v)} }
	return viewpoint{title, across, up, toward, [3]spot{axis(cage.Vector{X: 1}), axis(cage.Vector{Y: 1}), axis(cage.Vector{Z: 1})}}
}

// seen is where a place lies on the paper, metres, y down.
func (v viewpoint) seen(place cage.Vector) spot {
	return spot{v.across.Dot(place), -v.up.Dot(place)}
}

// view is a viewpoint with its place on the sheet and its scale.
type view struct {
	viewpoint
	scale    scale
	field    area   // what its lines and labels may fill
	closed   []area // parts of the field that belong to something else
	zero     spot   // where the origin of the car's axes lies
	lettered bool   // its joints are lettered
	arrows   area   // where the axes' arrows stand
	noRoom   int    // labels left out
}

// place puts the middle of what is seen onto a spot of the sheet.
func (v *view) place(middle, onto spot) {
	factor := v.scale.factor()
	v.zero = spot{onto.x - middle.x*factor, onto.y - middle.y*factor}
}

// on is where a place lies on the sheet, millimetres.
func (v *view) on(place cage.Vector) spot {
	seen, factor := v.seen(place), v.scale.factor()
	return spot{v.zero.x + seen.x*factor, v.zero.y + seen.y*factor}
}

// bounds are the least and greatest coordinates of what is drawn, metres.
type bounds struct {
	low, high cage.Vector
	any       bool
}

func (b *bounds) add(p cage.Vector, around float64) {
	low := cage.Vector{X: p.X - around, Y: p.Y - around, Z: p.Z - around}
	high := cage.Vector{X: p.X + around, Y: p.Y + around, Z: p.Z + around}
	if !b.any {
		b.low, b.high, b.any = low, high, true
		return
	}
	b.low = cage.Vector{X: min(b.low.X, low.X), Y: min(b.low.Y, low.Y), Z: min(b.low.Z, low.Z)}
	b.high = cage.Vector{X: max(b.high.X, high.X), Y: max(b.high.Y, high.Y), Z: max(b.high.Z, high.Z)}
}

func (b *bounds) middle() cage.Vector { return b.low.Along(b.high, 0.5) }

// size is how far the bounds are apart; where that is nothing at all, a metre, so that
// there is something to scale.
func (b *bounds) size() cage.Vector {
	size := b.high.Minus(b.low)
	if size.Norm() == 0 {
		return cage.Vector{X: 1, Y: 1, Z: 1}
	}
	return size
}
