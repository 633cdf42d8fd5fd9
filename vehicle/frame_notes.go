package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// EndNote is what a notched end wants beside its template, which is for one straight main
// tube that goes on to both sides. All lengths are in metres, 0 where there is nothing.
type EndNote struct {
	Grind, Gap float64 // on a bend of the main tube the saddle lies so deep in its metal at most, and stands off so far
	PastEnd    float64 // the saddle reaches so far past the end of the main tube
	HasFoot    bool    // where that is, so that the main tube cannot be longer
	Also       []EndInto
}

// EndInto is another tube into which an end runs beyond its saddle.
type EndInto struct {
	Tube int
	For  float64 // along the end, from the saddle
}

// What is too little to be said of an end, in metres: a file takes it away.
const (
	leastOffBend = 0.5e-3
	leastPastEnd = 0.5e-3
	leastInto    = 3e-3
)

// EndNote returns what an end, 0 the first and 1 the last, wants beside its template.
func (f *Frame) EndNote(number, which int) EndNote {
	end := f.Tubes[number].Ends[which]
	if !end.IsNotched() {
		return EndNote{}
	}
	saddle := f.saddle(number, which)
	note := EndNote{PastEnd: f.pastEnd(saddle, f.Tubes[end.Onto]), Also: f.alsoInto(number, which, saddle)}
	note.HasFoot = slices.ContainsFunc(f.Feet, func(foot FrameFoot) bool { return foot.Joint == end.Joint })
	note.Grind, note.Gap = saddle.OffCourse(f.Tubes[end.Onto].Course)
	if max(note.Grind, note.Gap) < leastOffBend || !f.Tubes[end.Onto].Cuttable() { // a corner without a radius is no bend yet
		note.Grind, note.Gap = 0, 0
	}
	return note
}

// saddle returns where the notch of an end stands.
func (f *Frame) saddle(number, which int) cage.Saddle {
	tube := f.Tubes[number]
	node, out := endOf(tube.Course, which == 1)
	return cage.Saddle{Node: node.Plus(out.Times(tube.Ends[which].Short)), Out: out, End: tube.Ends[which].Seat}
}

// pastEnd returns how far a saddle reaches past the nearer end of its main tube.
func (f *Frame) pastEnd(saddle cage.Saddle, main FrameTube) float64 {
	along, _ := main.Course.Nearest(saddle.Node)
	_, way := axisAt(main.Course, saddle.Node)
	back, ahead := saddle.Reach(way)
	past := max(main.AheadOfNode(0)-(along+back), along+ahead-(main.Course.Developed()-main.AheadOfNode(1)))
	if past < leastPastEnd {
		return 0
	}
	return past
}

// alsoInto returns the other tubes into which an end runs beside the one it is notched onto,
// and which stay whole: those that pass there, and of those that end there too, by EndRule,
// the thicker and then the earlier in the sheet.
func (f *Frame) alsoInto(number, which int, saddle cage.Saddle) []EndInto {
	var into []EndInto
	end := f.Tubes[number].Ends[which]
	at := f.Joints[end.Joint].At
	for i, other := range f.Tubes {
		if i == number || i == end.Onto || other.Outside == 0 || f.isDoubled(number, i) {
			continue
		}
		if _, away := other.Course.Nearest(at); away > f.Tubes[end.Onto].Outside+other.Outside {
			continue
		}
		endsThere := slices.ContainsFunc(other.Ends[:], func(e FrameEnd) bool {
			return f.Joints[e.Joint].At.Distance(at) <= other.Outside+f.Tubes[end.Onto].Outside
		})
		if endsThere && f.thickest([]int{number, i}) == number {
			continue
		}
		solid := cage.SolidOf(other.Course, other.Outside, 0, other.Course.Developed())
		if length := saddle.RunsInto(&solid); length >= leastInto {
			into = append(into, EndInto{i, length})
		}
	}
	return into
}

// isDoubled reports whether two tubes are one written twice.
func (f *Frame) isDoubled(one, other int) bool {
	return slices.ContainsFunc(f.looked.Doubled, func(d cage.DoubledMember) bool {
		return d.IsSameCourse && (d.Member == one && d.Other == other || d.Member == other && d.Other == one)
	})
}

// ImageNotes returns the tube on the other side of the car that says the same at an end as a
// tube does: its mirror image, or its original; -1 for none.
func (f *Frame) ImageNotes(number, which int) int {
	images := f.images().tubes
	image := images[number]
	if image == number {
		return -1
	}
	note, other := f.EndNote(number, which), f.EndNote(image, which)
	isLike := func(a, b float64) bool { return math.Abs(a-b) < 0.05e-3 }
	isSame := isLike(note.Grind, other.Grind) && isLike(note.Gap, other.Gap) && isLike(note.PastEnd, other.PastEnd) && len(note.Also) == len(other.Also)
	for _, into := range note.Also {
		isSame = isSame && slices.ContainsFunc(other.Also, func(o EndInto) bool { return o.Tube == images[into.Tube] && math.Abs(o.For-into.For) < 1.5e-3 })
	}
	if !isSame {
		return -1
	}
	return image
}
