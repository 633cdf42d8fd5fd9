package report

import (
	"fmt"
	"math"
)

// takeHeads takes the helmets into the bounds.
func (d *drawing) takeHeads() {
	for _, head := range d.frame.Heads {
		if isFinite(head.Top) && head.Radius > 0 {
			d.bounds.add(head.Centre(), head.Radius)
		}
	}
}

// hasHelmets reports whether any helmet is drawn.
func (d *drawing) hasHelmets() bool {
	for _, head := range d.frame.Heads {
		if isFinite(head.Top) && head.Radius > 0 {
			return true
		}
	}
	return false
}

// drawHelmets draws the helmets as the balls they are taken for, under the tubes.
func drawHelmets(out *svgText, v *view, d *drawing) {
	for _, head := range d.frame.Heads {
		if isFinite(head.Top) && head.Radius > 0 {
			drawHelmet(out, v.on(head.Centre()), head.Radius*v.ballFactor())
		}
	}
}

// ballFactor is how large a ball is seen, as a radius on paper in millimetres for each metre:
// an isometric view with lengths along the axes to scale shows it larger by √1.5.
func (v *view) ballFactor() float64 {
	return v.scale.factor() * v.up.Norm()
}

func drawHelmet(out *svgText, at spot, radius float64) {
	out.put(`<circle cx="%v" cy="%v" r="%v" fill="#eee" stroke="#000" stroke-width="0.2" stroke-dasharray="1.2 0.6"/>`, mm(at.x), mm(at.y), mm(radius))
}

// overAll says how long, wide and high the cage is from axis to axis, "" for nothing drawn.
func (d *drawing) overAll() string {
	if d.drawn() == 0 {
		return ""
	}
	var axes bounds
	for _, course := range d.courses {
		for _, place := range course {
			axes.add(place, 0)
		}
	}
	size := axes.high.Minus(axes.low)
	whole := func(metres float64) int { return int(math.Round(1000 * metres)) }
	return fmt.Sprintf("Overall, over the axes of its tubes: %d mm long, %d mm wide, %d mm high.", whole(size.X), whole(size.Y), whole(size.Z))
}
