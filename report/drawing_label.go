package report

import "math"

// Labels are placed one after the other, each where it costs least: item references
// outside the outline of the items where there is room, with leader lines that end inside
// it with a dot (ISO 6433 and ISO 128-22, from memory).

// anchor is a spot a leader line may lead to, and what it costs beside the best.
type anchor struct {
	spot
	cost float64
}

// label is a text with its place on the sheet.
type label struct {
	text   string
	box    area
	anchor spot
	framed bool // a number of tubes, which has a frame; letters of joints have none
}

// The size of labels in millimetres.
const (
	labelHigh  = 3.5
	labelRoom  = 0.3 // between labels
	directions = 24
)

// What a place costs, in millimetres of leader line.
const (
	costOfCover    = 26.0 // the whole label on tubes
	costOfTouch    = 2.5  // any of it on a tube
	costOfCrossing = 2.5  // for each cell in which its leader line crosses another or a joint
	costOfTube     = 0.35 // for each cell of other tubes that the leader line runs over
)

func newLabel(text string, framed bool) label {
	wide := textWidth(text, smallText) + 0.8
	if framed {
		wide = max(labelHigh, wide+0.8)
	}
	return label{text: text, box: area{wide: wide, high: labelHigh}, framed: framed}
}

// settle finds the place of a label, at a distance between near and far from one of the
// anchors, and takes it. It is false where there is no room.
func (g *ground) settle(l *label, anchors []anchor, near, far float64) bool {
	best, cost := label{}, math.Inf(1)
	for _, a := range anchors {
		for distance := near; distance <= far; distance += 1.25 {
			if a.cost+distance >= cost {
				break
			}
			for i := range directions {
				tried := *l
				tried.anchor = a.spot
				tried.box = beside(a.spot, l.box, float64(i)*2*math.Pi/directions, distance)
				if c := a.cost + distance + g.cost(&tried, cost-a.cost-distance); c < cost {
					best, cost = tried, c
				}
			}
		}
	}
	if math.IsInf(cost, 1) {
		return false
	}
	*l = best
	g.take(best.box.grown(labelRoom))
	g.lead(best.leader()...)
	return true
}

// beside is a box in a direction from a spot, so that the way from the spot to the box's
// edge toward its middle is as long as asked.
func beside(from spot, box area, angle, distance float64) area {
	dx, dy := math.Cos(angle), math.Sin(angle)
	inside := math.Inf(1) // from the middle to the edge
	if math.Abs(dx) > 1e-9 {
		inside = min(inside, box.wide/2/math.Abs(dx))
	}
	if math.Abs(dy) > 1e-9 {
		inside = min(inside, box.high/2/math.Abs(dy))
	}
	whole := distance + inside
	return areaAround(spot{from.x + dx*whole, from.y + dy*whole}, box.wide, box.high)
}

// leader is the line from the label's edge to its anchor.
func (l *label) leader() []spot {
	middle := l.box.middle()
	inside := math.Inf(1)
	if dx := math.Abs(l.anchor.x - middle.x); dx > 1e-9 {
		inside = min(inside, l.box.wide/2/dx)
	}
	if dy := math.Abs(l.anchor.y - middle.y); dy > 1e-9 {
		inside = min(inside, l.box.high/2/dy)
	}
	return []spot{middle.toward(l.anchor, min(inside, 1)*middle.distance(l.anchor)), l.anchor}
}

// cost is what the place of a label costs beside its distance; without bound where it
// cannot be, or is dearer than a limit anyway.
func (g *ground) cost(l *label, limit float64) float64 {
	covered := g.covered(l.box)
	cost := covered * costOfCover
	if covered > 0 {
		cost += costOfTouch
	}
	if cost >= limit {
		return math.Inf(1)
	}
	if !g.free(l.box) {
		return math.Inf(1)
	}
	walk(l.leader(), func(p spot) {
		switch cell := g.cell(p); {
		case cell < 0 || g.taken[cell]:
			cost = math.Inf(1)
		case g.led[cell]:
			cost += costOfCrossing
		case g.tubes[cell] > 0:
			cost += costOfTube
		}
	})
	return cost
}

// draw puts the label on paper, over its leader line.
func (l *label) draw(out *svgText) {
	leader := l.leader()
	out.line(leader[0], leader[1], 0.15)
	middle := l.box.middle()
	if l.framed {
		out.put(`<circle cx="%v" cy="%v" r="0.45" fill="#000" stroke="#fff" stroke-width="0.15"/>`, mm(l.anchor.x), mm(l.anchor.y))
		out.put(`<rect x="%v" y="%v" width="%v" height="%v" rx="%v" fill="#fff" stroke="#000" stroke-width="0.2"/>`,
			mm(l.box.x), mm(l.box.y), mm(l.box.wide), mm(l.box.high), mm(labelHigh/2))
	}
	out.words(spot{middle.x, middle.y + 0.36*smallText}, smallText, "middle", l.text)
}
