package report

import "math"

// The axes' arrows of a view, in millimetres from where they begin.
const (
	axisLong   = 5.5
	axisLetter = 7.3 // to the middle of an arrow's letter
	eyeLetter  = 2.6 // to the middle of the letter of an axis that points at the eye
	letterHalf = 1.3 // half of a letter's width and height with some room
)

// drawAxes puts the arrows of the axes (ISO 8855) where there is the most room, the lower
// left corner if it has as much as any. Circles stand for axes that point at the eye.
func drawAxes(out *svgText, v *view, g *ground) {
	letters := v.axisLetters()
	box := boxOf(append([]spot{{}}, letters[:]...)).grown(letterHalf)
	v.arrows = g.roomFor(box.wide, box.high)
	g.take(v.arrows)
	zero := spot{v.arrows.x - box.x, v.arrows.y - box.y}
	for i, letter := range []string{"x", "y", "z"} {
		drawAxis(out, zero, v.axes[i])
		out.words(spot{zero.x + letters[i].x, zero.y + letters[i].y + 0.27*smallText}, smallText, "middle", letter)
	}
}

// axisLetters are where the letters of the axes stand, from where the axes begin: beyond
// the arrow, and of an axis that points at the eye opposite to the other two.
func (v *view) axisLetters() [3]spot {
	var letters [3]spot
	var sum spot
	for _, way := range v.axes {
		sum = spot{sum.x + way.x, sum.y + way.y}
	}
	for i, way := range v.axes {
		letters[i] = spot{way.x * axisLetter, way.y * axisLetter}
		if pointsAtEye(way) {
			letters[i] = spot{}.toward(sum, -eyeLetter)
		}
	}
	return letters
}

func pointsAtEye(way spot) bool { return math.Hypot(way.x, way.y) < 1e-9 }

// drawAxis draws one axis: an arrow, or a circle with a dot where it points at the eye.
func drawAxis(out *svgText, zero, way spot) {
	if pointsAtEye(way) {
		out.put(`<circle cx="%v" cy="%v" r="0.9" fill="#fff" stroke="#000" stroke-width="0.2"/>`, mm(zero.x), mm(zero.y))
		out.put(`<circle cx="%v" cy="%v" r="0.3" fill="#000"/>`, mm(zero.x), mm(zero.y))
		return
	}
	tip := spot{zero.x + way.x*axisLong, zero.y + way.y*axisLong}
	out.line(zero, tip, 0.2)
	back := tip.toward(zero, 1.5)
	side := spot{-way.y * 0.4, way.x * 0.4}
	out.put(`<path d="%sZ" fill="#000"/>`, path([]spot{tip, {back.x + side.x, back.y + side.y}, {back.x - side.x, back.y - side.y}}))
}

// roomFor is the area of a size with the least of tubes in it; of several, the one nearest
// to the field's lower left corner.
func (g *ground) roomFor(wide, high float64) area {
	corner := spot{g.field.x, g.field.bottom() - high}
	best, least := area{corner.x, corner.y, wide, high}, math.Inf(1)
	for y := corner.y; y >= g.field.y && corner.y-y < least; y-- {
		for x := corner.x; x+wide <= g.field.right(); x++ {
			a := area{x, y, wide, high}
			if !g.free(a) {
				continue
			}
			if cost := math.Ceil(g.covered(a)*50)*1000 + corner.distance(spot{x, y}); cost < least {
				best, least = a, cost
			}
		}
	}
	return best
}
