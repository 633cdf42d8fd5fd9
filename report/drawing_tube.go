package report

import (
	"math"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// sameSpot is how near two lines on paper are one, in millimetres: less than half a line's
// thickness beside each other shows as none.
const sameSpot = 0.25

// drawnTube is a tube as it appears in a view; several that cover each other exactly, as
// those of left and right do from the side, are one.
type drawnTube struct {
	members []int // of the frame's tubes
	line    []spot
	toward  []float64 // of each spot: how near to the eye, metres
	along   []float64 // of each spot: how far along the line, mm
	width   float64   // to scale, mm; 0 where it is not recorded
	style   *tubeStyle
}

// length is that of the line on paper, millimetres.
func (t *drawnTube) length() float64 { return t.along[len(t.along)-1] }

// isDisc says that the tube is seen end on: it is shorter than half its width.
func (t *drawnTube) isDisc() bool { return t.length() < max(t.width, 0.4)/2 }

// drawnTubes are the tubes of a frame in a view, in the order of the frame.
func drawnTubes(v *view, d *drawing) []*drawnTube {
	var tubes []*drawnTube
	for number := range d.frame.Tubes {
		if d.courses[number] == nil {
			continue
		}
		tube := newDrawnTube(v, d, number)
		same := slices.IndexFunc(tubes, func(t *drawnTube) bool { return t.covers(tube) })
		if same < 0 {
			tubes = append(tubes, tube)
			continue
		}
		first := tubes[same]
		first.members = append(first.members, number)
		first.width = max(first.width, tube.width)
		first.style = first.style.worse(tube.style)
	}
	return tubes
}

func newDrawnTube(v *view, d *drawing, number int) *drawnTube {
	tube := &drawnTube{members: []int{number}, style: d.styleOf(number)}
	tube.width = d.frame.Tubes[number].Outside * v.scale.factor()
	along := 0.0
	for i, place := range d.courses[number] {
		at := v.on(place)
		if i > 0 {
			along += at.distance(tube.line[i-1])
		}
		tube.line = append(tube.line, at)
		tube.toward = append(tube.toward, v.toward.Dot(place))
		tube.along = append(tube.along, along)
	}
	return tube
}

// covers says whether two tubes are one line on paper, in whichever direction.
func (t *drawnTube) covers(u *drawnTube) bool {
	if len(t.line) != len(u.line) {
		return false
	}
	forward, backward := true, true
	for i, p := range t.line {
		forward = forward && p.distance(u.line[i]) <= sameSpot
		backward = backward && p.distance(u.line[len(u.line)-1-i]) <= sameSpot
		if !forward && !backward {
			return false
		}
	}
	return true
}

// at is the spot so far along the line.
func (t *drawnTube) at(along float64) spot {
	for i := 1; i < len(t.line); i++ {
		if along <= t.along[i] {
			return t.line[i-1].toward(t.line[i], along-t.along[i-1])
		}
	}
	return t.line[len(t.line)-1]
}

// stretch is the part of the line between two lengths along it.
func (t *drawnTube) stretch(from, to float64) []spot {
	line := []spot{t.at(from)}
	for i, along := range t.along {
		if along > from+0.01 && along < to-0.01 {
			line = append(line, t.line[i])
		}
	}
	return append(line, t.at(to))
}

// nearest is how far along the line it is nearest to a spot, and which way it goes there.
func (t *drawnTube) nearest(p spot) (along float64, way spot) {
	least := math.Inf(1)
	for i := 1; i < len(t.line); i++ {
		a, b := t.line[i-1], t.line[i]
		share, away := segmentOf(a, b).Nearest(cage.Vector{X: p.x, Y: p.y})
		if away < least {
			least, along, way = away, t.along[i-1]+share*a.distance(b), spot{b.x - a.x, b.y - a.y}
		}
	}
	return along, way
}

func segmentOf(a, b spot) cage.Segment {
	return cage.Segment{From: cage.Vector{X: a.x, Y: a.y}, To: cage.Vector{X: b.x, Y: b.y}}
}

// draw puts the tube on paper, with a title that a viewer shows when pointed at.
func (t *drawnTube) draw(out *svgText, d *drawing) {
	out.put(`<g><title>%s</title>`, escaped(d.titleOf(t.members)))
	if t.isDisc() {
		t.style.disc(out, t.line[0], t.width)
	} else {
		t.style.band(out, t.line, t.width, 0, 0)
	}
	out.put(`</g>`)
}

// titleOf names tubes with what a fabricator wants to know of each.
func (d *drawing) titleOf(members []int) string {
	var titles []string
	for _, number := range members {
		tube := &d.frame.Tubes[number]
		title := "tube " + shortened(tube.Number, longestName)
		if tube.Member != "" {
			title += ", " + shortened(tube.Member, longestName)
		}
		if tube.Outside > 0 {
			title += ", outside " + mm(tube.Outside*1000).String() + " mm"
		}
		titles = append(titles, title+d.verdictWords(tube.Part))
	}
	return strings.Join(titles, "; ")
}

func (d *drawing) verdictWords(part *vehicle.Part) string {
	if verdict, judged := d.verdicts[part]; judged && verdict != engine.DoesNotApply {
		return " (" + verdict.String() + ")"
	}
	return ""
}
