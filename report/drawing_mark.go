package report

import (
	"math"
	"slices"
	"strings"

	"gapsheet/vehicle/cage"
)

// How far from tubes and joints the labels of a view may stand, in millimetres.
const (
	nearTube, farTube   = 2.0, 22.0
	nearJoint, farJoint = 0.8, 14.0
)

// drawLabels numbers the tubes of a view and letters its joints. What has the least choice
// of places comes first: joints, then tubes by their length on paper.
func drawLabels(out *svgText, tubes []*drawnTube, v *view, d *drawing) []label {
	g := newGround(v.field)
	for _, other := range v.closed {
		g.take(other)
	}
	for _, tube := range tubes {
		g.stamp(tube.line, max(tube.style.wide(tube.width), 0.4))
	}
	for _, foot := range d.frame.Feet {
		g.stamp([]spot{v.on(d.frame.Joints[foot.Joint].At)}, footSide)
	}
	g.sum()
	drawAxes(out, v, g)
	var labels []label
	add := func(l label, anchors []anchor, near, far float64) {
		if g.settle(&l, anchors, near, far) {
			labels = append(labels, l)
			return
		}
		v.noRoom++
	}
	if v.lettered {
		joints := jointSpots(v, d)
		for _, joint := range joints {
			g.lead(joint.at)
		}
		for _, joint := range joints {
			add(newLabel(joint.text, false), []anchor{{spot: joint.at}}, nearJoint, farJoint)
		}
	}
	order := slices.Clone(tubes)
	slices.SortStableFunc(order, func(a, b *drawnTube) int { return compareRounded(a.length(), b.length()) })
	for _, tube := range order {
		add(newLabel(d.numbersOf(tube.members), true), g.anchors(tube), nearTube, farTube)
	}
	for _, l := range labels {
		l.draw(out)
	}
	return labels
}

// compareRounded compares lengths that are one where they differ by less than shows.
func compareRounded(a, b float64) int {
	return int(math.Round(a*10)) - int(math.Round(b*10))
}

// anchors are the spots at which a tube may be pointed at: near its middle, where no other
// tube runs.
func (g *ground) anchors(t *drawnTube) []anchor {
	var all []anchor
	for _, share := range []float64{0.5, 0.42, 0.58, 0.34, 0.66, 0.26, 0.74, 0.18, 0.82, 0.1, 0.9} {
		a := anchor{spot: t.at(share * t.length()), cost: math.Abs(share-0.5) * 6}
		for _, step := range []spot{{0, 0}, {0.7, 0}, {-0.7, 0}, {0, 0.7}, {0, -0.7}} {
			if cell := g.cell(spot{a.x + step.x, a.y + step.y}); cell < 0 || g.tubes[cell] > 1 {
				a.cost += 4
			}
		}
		all = append(all, a)
	}
	return all
}

// numbersOf are the numbers of tubes that are one line in a view.
func (d *drawing) numbersOf(members []int) string {
	var numbers []string
	for _, member := range members {
		numbers = append(numbers, d.numbers[member])
	}
	return enumerated(numbers)
}

// mostNamed is how many names one label has.
const mostNamed = 4

func enumerated(names []string) string {
	if over := len(names) - mostNamed; over > 0 {
		names = append(slices.Clone(names[:mostNamed]), "…")
	}
	return strings.Join(names, ", ")
}

// jointSpot is a spot of a view with the letters of the joints that lie there.
type jointSpot struct {
	at   spot
	text string
}

func jointSpots(v *view, d *drawing) []jointSpot {
	var spots []spot
	var joints [][]int
	for i, joint := range d.frame.Joints {
		if !isFinite(joint.At) {
			continue
		}
		at := v.on(joint.At)
		same := slices.IndexFunc(spots, func(other spot) bool { return other.distance(at) <= 2*sameSpot })
		if same < 0 {
			spots, joints = append(spots, at), append(joints, []int{i})
			continue
		}
		joints[same] = append(joints[same], i)
	}
	var all []jointSpot
	for i, at := range spots {
		all = append(all, jointSpot{at, enumerated(d.paired(joints[i]))})
	}
	return all
}

// footSide is the side of the square that stands for a foot, millimetres.
const footSide = 2.4

// drawJoints dots the joints of a view and puts squares for its feet.
func drawJoints(out *svgText, v *view, d *drawing) {
	var feet []spot
	for _, foot := range d.frame.Feet {
		at := v.on(d.frame.Joints[foot.Joint].At)
		if !slices.Contains(feet, at) && isFinite(d.frame.Joints[foot.Joint].At) {
			feet = append(feet, at)
			drawFoot(out, at)
		}
	}
	if !v.lettered {
		return
	}
	for _, joint := range jointSpots(v, d) {
		out.put(`<circle cx="%v" cy="%v" r="0.4" fill="#000"/>`, mm(joint.at.x), mm(joint.at.y))
	}
}

func drawFoot(out *svgText, at spot) {
	out.put(`<rect x="%v" y="%v" width="%v" height="%v" fill="#fff" stroke="#000" stroke-width="0.35"/>`,
		mm(at.x-footSide/2), mm(at.y-footSide/2), mm(footSide), mm(footSide))
}

func isFinite(places ...cage.Vector) bool {
	for _, p := range places {
		if sum := p.X + p.Y + p.Z; math.IsNaN(sum) || math.IsInf(sum, 0) {
			return false
		}
	}
	return true
}
