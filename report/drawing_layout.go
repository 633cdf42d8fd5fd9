package report

import (
	"math"

	"gapsheet/vehicle/cage"
)

// Sizes of the layout, in millimetres.
const (
	titleHigh    = 4.2 // the line above a view
	viewMargin   = 8.0 // around what is seen, for labels
	leastKeyWide = 54.0
)

// The least room for views, so that a title and the notes find theirs beside a thin cage.
const (
	leastSideWide, leastFrontWide, leastViewHigh = 92.0, 44.0, 30.0
)

// layout is where everything stands on the sheet.
type layout struct {
	scale             scale
	side, front, plan area // fields of the views
	key, notes        area
	notesLines        []string
}

// layOut chooses the greatest common scale at which side, front and plan stand beside and
// below each other and the notes below them.
func layOut(b *bounds, notes func(wide float64) []string) layout {
	size := b.size()
	var l layout
	for _, scale := range commonScales {
		factor := scale.factor()
		field := func(wide, least, high float64) (float64, float64) {
			return max(least, wide*factor+2*viewMargin), max(leastViewHigh, high*factor+2*viewMargin)
		}
		sideWide, sideHigh := field(size.X, leastSideWide, size.Z)
		frontWide, _ := field(size.Y, leastFrontWide, size.Z)
		_, planHigh := field(size.X, leastSideWide, size.Y)
		lines := notes(sideWide - 2)
		notesHigh := float64(len(lines)) * noteLine
		top := sheetFrame.y + headHigh
		l = layout{scale: scale, notesLines: lines}
		l.side = area{sheetFrame.x, top + titleHigh, sideWide, sideHigh}
		l.front = area{l.side.right(), l.side.y, frontWide, sideHigh}
		l.plan = area{l.side.x, l.side.bottom() + titleHigh, sideWide, planHigh}
		l.key = area{l.front.right() + 2, top, sheetFrame.right() - l.front.right() - 2, 0}
		l.notes = area{l.plan.x, sheetFrame.bottom() - notesHigh, sideWide - 2, notesHigh}
		if l.key.wide >= leastKeyWide && l.plan.bottom() <= l.notes.y {
			break
		}
	}
	return l
}

// views are the four views with their places. The three orthographic ones share the middle
// of the bounds, so that they are in line.
func (l *layout) views(b *bounds, places []cage.Vector, keyBottom float64) []*view {
	views := []*view{
		{viewpoint: sideView, scale: l.scale, field: l.side, lettered: true},
		{viewpoint: frontView, scale: l.scale, field: l.front},
		{viewpoint: planView, scale: l.scale, field: l.plan},
	}
	for _, v := range views {
		v.place(v.seen(b.middle()), v.field.middle())
	}
	return append(views, l.isometric(places, keyBottom))
}

// isometric gives the isometric view the room that is left, at the greatest scale that has
// a place where nothing of it comes near the front view or the key. Of several places at
// that scale it is the one nearest to the middle of the room.
func (l *layout) isometric(places []cage.Vector, keyBottom float64) *view {
	v := &view{viewpoint: isometric, lettered: true}
	v.field = area{l.side.right(), l.side.y, sheetFrame.right() - l.side.right(), sheetFrame.bottom() - l.side.y}
	v.closed = []area{
		{l.front.x, l.front.y - titleHigh, l.front.wide, l.front.high + titleHigh + isometricTitle},
		{l.key.x - 2, l.key.y, sheetFrame.right() - l.key.x + 2, keyBottom - l.key.y},
	}
	low, high := spot{math.Inf(1), math.Inf(1)}, spot{math.Inf(-1), math.Inf(-1)}
	seen := make([]spot, len(places))
	for i, place := range places {
		p := v.seen(place)
		seen[i] = p
		low, high = spot{min(low.x, p.x), min(low.y, p.y)}, spot{max(high.x, p.x), max(high.y, p.y)}
	}
	if len(places) == 0 {
		low, high = spot{}, spot{}
	}
	middle := spot{(low.x + high.x) / 2, (low.y + high.y) / 2}
	for _, v.scale = range isometricScales {
		if v.scale < l.scale/2 {
			continue // a tube that points at the eye has no size to go by
		}
		if onto, ok := v.roomFor(seen, middle, spot{high.x - low.x, high.y - low.y}); ok {
			v.place(middle, onto)
			break
		}
	}
	return v
}

// isometricTitle is the height of the isometric view's title, below the front view.
const isometricTitle = 9.0

// isometricMargin is how far what is seen stays from everything else, millimetres.
const isometricMargin = 6.5

// roomFor finds where the middle of what is seen can come to lie.
func (v *view) roomFor(seen []spot, middle, size spot) (spot, bool) {
	factor := v.scale.factor()
	room := v.field.grown(-isometricMargin)
	// Where the room has the size left over, the middle may stand within it.
	room = area{room.x + size.x*factor/2, room.y + size.y*factor/2, room.wide - size.x*factor, room.high - size.y*factor}
	if room.wide < 0 || room.high < 0 {
		return spot{}, false
	}
	home := spot{v.field.middle().x, (v.closed[0].bottom() + v.field.bottom()) / 2}
	best, found := spot{}, false
	for y := room.y; y <= room.bottom(); y += 1.5 {
		for x := room.x; x <= room.right(); x += 1.5 {
			onto := spot{x, y}
			if found && onto.distance(home) >= best.distance(home) || v.collides(seen, middle, onto) {
				continue
			}
			best, found = onto, true
		}
	}
	return best, found
}

// collides says whether anything of what is seen would come near a closed part.
func (v *view) collides(seen []spot, middle, onto spot) bool {
	factor := v.scale.factor()
	for _, closed := range v.closed {
		closed = closed.grown(isometricMargin)
		for _, p := range seen {
			if closed.holds(spot{onto.x + (p.x-middle.x)*factor, onto.y + (p.y-middle.y)*factor}) {
				return true
			}
		}
	}
	return false
}
