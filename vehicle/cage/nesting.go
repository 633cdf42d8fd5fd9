package cage

import (
	"math"
	"slices"
)

// Bar is a length of tube as it is supplied, in metres, and how many there are; 0 for as
// many as it takes.
type Bar struct {
	Length float64
	Count  int
}

// BarUse is one bar and the cuts taken out of it, by their number, longest first.
type BarUse struct {
	Bar  int // which of the supplied lengths
	Cuts []int
	Rest float64 // what is left of it behind the last cut and its kerf, metres
}

// Nesting is how cuts are taken out of bars.
type Nesting struct {
	Bars    []BarUse
	Faults  []*Fault // cuts that are in no bar: At says which
	Bought  float64  // length of all bars used, metres
	Least   float64  // no way of cutting can do with less, metres
	IsLeast bool     // surely no other way uses less
}

// OverLeast returns by which share more is bought than the lower bound; 0 without cuts.
func (n Nesting) OverLeast() float64 {
	if !(n.Least > 0) {
		return 0
	}
	return max(0, n.Bought/n.Least-1)
}

// Nest takes cuts of the given lengths out of bars, all in metres. Every cut but one that
// ends with the bar costs a kerf beside its length. It tries the first bar that has room,
// longest cuts first (which uses no more than 11/9 of the least number of bars and one, for
// one length of bar: D. S. Johnson 1973, from memory), and then filling one bar after the
// other as full as a search of bounded depth finds; the better of the two is kept, and every
// bar exchanged for the shortest that holds its cuts. It always gives the same answer.
func Nest(cuts []float64, bars []Bar, kerf float64) Nesting {
	task := newNestTask(cuts, bars, kerf)
	best := task.finished(task.firstFit())
	if len(best.Bars) > 1 {
		if other := task.finished(task.fullBars()); len(other.Faults) < len(best.Faults) ||
			len(other.Faults) == len(best.Faults) && other.Bought < best.Bought-closest {
			best = other
		}
	}
	best.Faults = append(task.faults, best.Faults...)
	slices.SortFunc(best.Faults, func(a, b *Fault) int { return a.At - b.At })
	best.Least = task.leastLength()
	best.IsLeast = best.Bought <= best.Least+closest
	return best
}

// nestTask is what there is to nest: the cuts that fit into some bar, longest first, and
// the kinds of bar, longest first.
type nestTask struct {
	length []float64 // of each cut, by its number
	order  []int
	bars   []Bar
	kinds  []int
	kerf   float64
	faults []*Fault
}

func newNestTask(cuts []float64, bars []Bar, kerf float64) *nestTask {
	task := &nestTask{length: cuts, bars: bars, kerf: kerf}
	if !(kerf >= 0 && kerf <= farthest) {
		task.kerf = 0
	}
	longest := 0.0
	for i, bar := range bars {
		if bar.Length > 0 && bar.Length <= farthest && bar.Count >= 0 {
			task.kinds = append(task.kinds, i)
			longest = max(longest, bar.Length)
		}
	}
	slices.SortStableFunc(task.kinds, func(a, b int) int { return descending(bars[a].Length, bars[b].Length) })
	for i, length := range cuts {
		switch {
		case !(length > 0 && length <= farthest):
			task.faults = append(task.faults, &Fault{Problem: NotALength, At: i})
		case length > longest+closest:
			task.faults = append(task.faults, &Fault{Problem: CutTooLong, At: i, Missing: length - longest})
		default:
			task.order = append(task.order, i)
		}
	}
	slices.SortStableFunc(task.order, func(a, b int) int { return descending(cuts[a], cuts[b]) })
	return task
}

func descending(a, b float64) int {
	switch {
	case a > b:
		return -1
	case a < b:
		return 1
	}
	return 0
}

// room is what is left of a bar for cuts with a kerf each: the last cut's kerf may lie
// beyond its end.
func (t *nestTask) room(kind int) float64 { return t.bars[kind].Length + t.kerf + closest }

// taken counts the bars used of each kind.
func (t *nestTask) hasMore(kind int, uses []BarUse) bool {
	if t.bars[kind].Count == 0 {
		return true
	}
	used := 0
	for _, use := range uses {
		if use.Bar == kind {
			used++
		}
	}
	return used < t.bars[kind].Count
}

// nextBar returns the longest kind of bar of which there is one left that holds a length.
func (t *nestTask) nextBar(uses []BarUse, length float64) (kind int, ok bool) {
	for _, kind := range t.kinds {
		if length+t.kerf <= t.room(kind) && t.hasMore(kind, uses) {
			return kind, true
		}
	}
	return 0, false
}

// firstFit puts every cut, longest first, into the first bar with room for it. A bar's rest
// counts its last kerf until the nesting is finished.
func (t *nestTask) firstFit() (uses []BarUse, left []int) {
	for _, cut := range t.order {
		need := t.length[cut] + t.kerf
		at := slices.IndexFunc(uses, func(use BarUse) bool { return use.Rest >= need })
		if at < 0 {
			kind, ok := t.nextBar(uses, t.length[cut])
			if !ok {
				left = append(left, cut)
				continue
			}
			uses = append(uses, BarUse{Bar: kind, Rest: t.room(kind)})
			at = len(uses) - 1
		}
		uses[at].Cuts = append(uses[at].Cuts, cut)
		uses[at].Rest -= need
	}
	return uses, left
}

// fullBars fills one bar after the other, each with the longest cut left and with those of
// the others that fill it best.
func (t *nestTask) fullBars() (uses []BarUse, left []int) {
	open := slices.Clone(t.order)
	for len(open) > 0 {
		kind, ok := t.nextBar(uses, t.length[open[0]])
		if !ok {
			left = append(left, open[0])
			open = open[1:]
			continue
		}
		search := fillSearch{task: t, open: open, budget: max(200, min(20_000, 2_000_000/len(t.order)))}
		search.best = math.Inf(1)
		search.chosen = []int{0}
		search.fill(1, t.room(kind)-t.length[open[0]]-t.kerf)
		use := BarUse{Bar: kind, Rest: search.best}
		var rest []int
		for i, cut := range open {
			if slices.Contains(search.found, i) {
				use.Cuts = append(use.Cuts, cut)
			} else {
				rest = append(rest, cut)
			}
		}
		uses, open = append(uses, use), rest
	}
	return uses, left
}
