package report

import "math"

// cellSize is the side of a cell of the ground in millimetres.
const cellSize = 0.5

// ground is the paper of one view in small cells, to find room for labels: how many tubes
// cover each cell, which cells labels have, and which leader lines and joints.
type ground struct {
	field      area
	wide, high int
	tubes      []uint8
	sums       []int32 // of cells with tubes: over all cells above and to the left
	taken, led []bool
}

func newGround(field area) *ground {
	g := &ground{field: field, wide: int(field.wide/cellSize) + 1, high: int(field.high/cellSize) + 1}
	count := g.wide * g.high
	g.tubes, g.taken, g.led = make([]uint8, count), make([]bool, count), make([]bool, count)
	return g
}

// cell is the number of the cell a spot lies in, -1 outside the field.
func (g *ground) cell(p spot) int {
	if !g.field.holds(p) {
		return -1
	}
	return int((p.y-g.field.y)/cellSize)*g.wide + int((p.x-g.field.x)/cellSize)
}

// stamp counts one more tube in every cell a band covers.
func (g *ground) stamp(line []spot, width float64) {
	own := map[int]bool{}
	half := min(width, max(g.field.wide, g.field.high)) / 2
	walk(line, func(p spot) {
		for dy := -half; dy <= half+cellSize/2; dy += cellSize {
			for dx := -half; dx <= half+cellSize/2; dx += cellSize {
				if cell := g.cell(spot{p.x + dx, p.y + dy}); cell >= 0 && !own[cell] {
					own[cell] = true
					g.tubes[cell] = min(g.tubes[cell], 254) + 1
				}
			}
		}
	})
}

// walk calls a function at spots no more than a cell apart along a line, its ends included.
func walk(line []spot, at func(spot)) {
	for i, p := range line {
		if i > 0 {
			before := line[i-1]
			whole := before.distance(p)
			for way := cellSize; way < whole; way += cellSize {
				at(before.toward(p, way))
			}
		}
		at(p)
	}
}

// sum makes the sums of cells with tubes, once all are stamped.
func (g *ground) sum() {
	g.sums = make([]int32, (g.wide+1)*(g.high+1))
	for y := range g.high {
		row := int32(0)
		for x := range g.wide {
			if g.tubes[y*g.wide+x] > 0 {
				row++
			}
			g.sums[(y+1)*(g.wide+1)+x+1] = g.sums[y*(g.wide+1)+x+1] + row
		}
	}
}

// cells are the first and last column and row that an area touches; false where it does
// not lie inside the field.
func (g *ground) cells(a area) (left, top, right, bottom int, inside bool) {
	if a.x < g.field.x || a.y < g.field.y || a.right() > g.field.right() || a.bottom() > g.field.bottom() {
		return 0, 0, 0, 0, false
	}
	number := func(from float64) int { return int(math.Floor(from / cellSize)) }
	return number(a.x - g.field.x), number(a.y - g.field.y), number(a.right() - g.field.x), number(a.bottom() - g.field.y), true
}

// covered is the share of an area that tubes cover.
func (g *ground) covered(a area) float64 {
	left, top, right, bottom, inside := g.cells(a)
	if !inside {
		return 1
	}
	at := func(x, y int) int32 { return g.sums[y*(g.wide+1)+x] }
	sum := at(right+1, bottom+1) - at(left, bottom+1) - at(right+1, top) + at(left, top)
	return float64(sum) / float64((right-left+1)*(bottom-top+1))
}

// free says whether an area lies in the field, and no label has any of it, nor any leader
// line or joint.
func (g *ground) free(a area) bool {
	left, top, right, bottom, inside := g.cells(a)
	if !inside {
		return false
	}
	for y := top; y <= bottom; y++ {
		for x := left; x <= right; x++ {
			if cell := y*g.wide + x; g.taken[cell] || g.led[cell] {
				return false
			}
		}
	}
	return true
}

// lead says that leader lines run along a line, or that a joint stands at its only spot.
func (g *ground) lead(line ...spot) {
	walk(line, func(p spot) {
		if cell := g.cell(p); cell >= 0 {
			g.led[cell] = true
		}
	})
}

// take gives an area to a label.
func (g *ground) take(a area) {
	for y := a.y; y < a.bottom()+cellSize; y += cellSize {
		for x := a.x; x < a.right()+cellSize; x += cellSize {
			if cell := g.cell(spot{min(x, a.right()), min(y, a.bottom())}); cell >= 0 {
				g.taken[cell] = true
			}
		}
	}
}
