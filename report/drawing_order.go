package report

import (
	"cmp"
	"math"
	"slices"
)

// crossing is where one tube passes over another on paper.
type crossing struct {
	over, under int     // of the tubes of a view
	along       float64 // along the upper one, mm
	half        float64 // how far to both sides the upper one covers the lower, mm
	toward      float64 // of the upper one, metres
}

// leastSine is that of the angle below which two tubes run along each other on paper rather
// than cross.
const leastSine = 0.1

// longestCover bounds how much of a tube is drawn once more where it passes over another
// at a small angle, in millimetres.
const longestCover = 6

// crossings finds where tubes of a view cross. Where two meet neither passes over the
// other, but for a tube that is notched onto another: its end goes below, so that the edge
// of the tube it sits on shows.
func crossings(tubes []*drawnTube, v *view, d *drawing) []crossing {
	found := seats(tubes, v, d)
	boxes := make([]area, len(tubes))
	for i, tube := range tubes {
		boxes[i] = boxOf(tube.line)
	}
	for a := range tubes {
		for b := a + 1; b < len(tubes); b++ {
			if boxes[a].meets(boxes[b]) {
				found = append(found, crossingsOf(tubes, a, b, v.scale.factor())...)
			}
		}
	}
	return found
}

func boxOf(line []spot) area {
	low, high := line[0], line[0]
	for _, p := range line {
		low = spot{min(low.x, p.x), min(low.y, p.y)}
		high = spot{max(high.x, p.x), max(high.y, p.y)}
	}
	return area{low.x, low.y, high.x - low.x, high.y - low.y}
}

func (a area) meets(b area) bool {
	return a.x <= b.right() && b.x <= a.right() && a.y <= b.bottom() && b.y <= a.bottom()
}

func crossingsOf(tubes []*drawnTube, a, b int, factor float64) []crossing {
	var found []crossing
	s, t := tubes[a], tubes[b]
	meet := (s.width + t.width) / 2 / factor * 1.2
	for i := 1; i < len(s.line); i++ {
		for j := 1; j < len(t.line); j++ {
			mine, other, sine, ok := cross(s.line[i-1], s.line[i], t.line[j-1], t.line[j])
			if !ok {
				continue
			}
			near := s.toward[i-1] + mine*(s.toward[i]-s.toward[i-1])
			far := t.toward[j-1] + other*(t.toward[j]-t.toward[j-1])
			if math.Abs(near-far) <= meet {
				continue
			}
			c := crossing{over: a, under: b, along: s.along[i-1] + mine*(s.along[i]-s.along[i-1]), toward: near}
			if far > near {
				c = crossing{over: b, under: a, along: t.along[j-1] + other*(t.along[j]-t.along[j-1]), toward: far}
			}
			c.half = cover(tubes[c.under], sine)
			found = append(found, c)
		}
	}
	return found
}

// cover is how far along a tube it covers another that it crosses at an angle.
func cover(under *drawnTube, sine float64) float64 {
	return min(longestCover, (under.style.wide(under.width)/2+0.3)/sine)
}

// cross finds where two straights cross inside, as shares of each, and the sine of the
// angle between them, which is at least leastSine.
func cross(a, b, c, d spot) (mine, other, sine float64, ok bool) {
	ab, cd, ac := spot{b.x - a.x, b.y - a.y}, spot{d.x - c.x, d.y - c.y}, spot{c.x - a.x, c.y - a.y}
	whole := ab.x*cd.y - ab.y*cd.x
	lengths := a.distance(b) * c.distance(d)
	if lengths == 0 || math.Abs(whole) < leastSine*lengths {
		return 0, 0, 0, false
	}
	mine = (ac.x*cd.y - ac.y*cd.x) / whole
	other = (ac.x*ab.y - ac.y*ab.x) / whole
	return mine, other, math.Abs(whole) / lengths, mine >= 0 && mine <= 1 && other >= 0 && other <= 1
}

// seats are the places where a tube is notched onto another, as crossings of the two.
func seats(tubes []*drawnTube, v *view, d *drawing) []crossing {
	at := map[int]int{}
	for i, tube := range tubes {
		for _, member := range tube.members {
			at[member] = i
		}
	}
	var found []crossing
	for under, tube := range tubes {
		for _, member := range tube.members {
			for end, place := range d.endsOf(member) {
				over, drawn := at[d.frame.Tubes[member].Ends[end].Onto]
				if !drawn || over == under || tube.isDisc() {
					continue
				}
				along, way := tubes[over].nearest(v.on(place))
				_, own := tube.nearest(v.on(place))
				sine := math.Abs(way.x*own.y-way.y*own.x) / max(math.Hypot(way.x, way.y)*math.Hypot(own.x, own.y), 1e-9)
				if sine >= leastSine {
					found = append(found, crossing{over, under, along, cover(tube, sine), v.toward.Dot(place)})
				}
			}
		}
	}
	return found
}

// drawingOrder is the order to draw tubes in, so that few of those that pass over others
// are drawn before them; where that leaves a choice, as of tubes that run along each other,
// the worst verdict last and far ones first. Wrong are the crossings that are not in order
// even so, because each of two passes over the other somewhere, far ones first.
func drawingOrder(tubes []*drawnTube, found []crossing) (order []int, wrong []crossing) {
	below := make([]int, len(tubes)) // how many tubes that are not drawn yet pass below
	above := make([][]crossing, len(tubes))
	for _, c := range found {
		below[c.over]++
		above[c.under] = append(above[c.under], c)
	}
	left := make([]int, len(tubes))
	for i := range left {
		left[i] = i
	}
	slices.SortStableFunc(left, func(a, b int) int {
		return cmp.Or(cmp.Compare(tubes[a].style.thick, tubes[b].style.thick), cmp.Compare(depth(tubes[a]), depth(tubes[b])))
	})
	drawn := make([]bool, len(tubes))
	for len(left) > 0 {
		next := 0
		for i, tube := range left {
			if below[tube] < below[left[next]] {
				next = i
			}
		}
		tube := left[next]
		left = slices.Delete(left, next, next+1)
		order, drawn[tube] = append(order, tube), true
		for _, c := range above[tube] {
			below[c.over]--
			if drawn[c.over] {
				wrong = append(wrong, c)
			}
		}
	}
	slices.SortStableFunc(wrong, func(a, b crossing) int { return cmp.Compare(a.toward, b.toward) })
	return order, wrong
}

// depth is how near to the eye a tube is on the whole.
func depth(t *drawnTube) float64 {
	sum := 0.0
	for _, toward := range t.toward {
		sum += toward
	}
	return sum / float64(len(t.toward))
}

// drawTubes draws the tubes of a view, those that pass over others over them.
func drawTubes(out *svgText, tubes []*drawnTube, v *view, d *drawing) {
	order, wrong := drawingOrder(tubes, crossings(tubes, v, d))
	for _, i := range order {
		tubes[i].draw(out, d)
	}
	for _, c := range wrong {
		tube := tubes[c.over]
		if tube.isDisc() {
			continue
		}
		from, to := max(0, c.along-c.half), min(tube.length(), c.along+c.half)
		tube.style.band(out, tube.stretch(from, to), tube.width, from, 0.1)
	}
}
