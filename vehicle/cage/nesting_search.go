package cage

import (
	"math"
	"slices"
)

// fillSearch looks for the cuts that fill one bar best, among open ones in order of length.
// The budget counts places tried.
type fillSearch struct {
	task   *nestTask
	open   []int
	chosen []int // places in open
	found  []int
	best   float64 // what the found ones leave
	budget int
}

// fill tries the cuts from a place on for the rest of a bar. Of cuts as long as one another
// only the first is tried at one depth.
func (s *fillSearch) fill(from int, rest float64) {
	if rest < s.best-closest {
		s.best, s.found = rest, slices.Clone(s.chosen)
	}
	for i := from; i < len(s.open) && s.best > 10*closest && s.budget > 0; i++ {
		length := s.task.length[s.open[i]]
		if i > from && length == s.task.length[s.open[i-1]] {
			continue
		}
		s.budget--
		if need := length + s.task.kerf; need <= rest {
			s.chosen = append(s.chosen, i)
			s.fill(i+1, rest-need)
			s.chosen = s.chosen[:len(s.chosen)-1]
		}
	}
}

// finished exchanges every bar for the shortest that holds its cuts, takes the kerf behind
// the last cut off only as far as there is bar for it, and adds up.
func (t *nestTask) finished(uses []BarUse, left []int) Nesting {
	var n Nesting
	for i := range uses {
		use := &uses[i]
		taken := 0.0
		for _, cut := range use.Cuts {
			taken += t.length[cut] + t.kerf
		}
		for _, kind := range slices.Backward(t.kinds) {
			if taken <= t.room(kind) && t.bars[kind].Length < t.bars[use.Bar].Length && t.hasMore(kind, uses) {
				use.Bar = kind
				break
			}
		}
		use.Rest = max(0, t.bars[use.Bar].Length-taken)
		n.Bought += t.bars[use.Bar].Length
	}
	n.Bars = uses
	for _, cut := range left {
		n.Faults = append(n.Faults, &Fault{Problem: BarsUsedUp, At: cut})
	}
	return n
}

// leastLength returns a length of bars that no way of cutting can do with less of. A bar of
// length L holds cuts and kerfs of no more than L + kerf together, so that the cuts with
// their kerfs are to be covered by numbers of L + kerf. For one kind of bar that is a whole
// number of bars, and no two cuts longer than half of L + kerf share one; for more kinds, it
// is the share of the kind with which it costs least.
func (t *nestTask) leastLength() float64 {
	if len(t.order) == 0 {
		return 0
	}
	sum := 0.0
	for _, cut := range t.order {
		sum += t.length[cut] + t.kerf
	}
	if len(t.kinds) == 1 {
		length := t.bars[t.kinds[0]].Length
		return float64(t.leastBars(length+t.kerf)) * length
	}
	share, shortest := math.Inf(1), math.Inf(1)
	for _, kind := range t.kinds {
		length := t.bars[kind].Length
		share = min(share, length/(length+t.kerf))
		if length+closest >= t.length[t.order[0]] {
			shortest = min(shortest, length)
		}
	}
	return max(sum*share, shortest)
}

// leastBars returns the greatest of the bounds of S. Martello and P. Toth (Knapsack
// Problems, 1990, section 8.3, from memory): cuts longer than room - k have a bar each, cuts
// longer than half a bar too, and those down to k fill what these leave.
func (t *nestTask) leastBars(room float64) int {
	bound := 0
	thresholds := []float64{0}
	for _, cut := range t.order {
		if need := t.length[cut] + t.kerf; need <= room/2 {
			thresholds = append(thresholds, need)
		}
	}
	for _, k := range thresholds {
		alone, half, halfSum, smallSum := 0, 0, 0.0, 0.0
		for _, cut := range t.order {
			switch need := t.length[cut] + t.kerf; {
			case need > room-k+closest:
				alone++
			case need > room/2+closest:
				half++
				halfSum += need
			case need >= k:
				smallSum += need
			}
		}
		more := math.Ceil((smallSum-(float64(half)*room-halfSum))/room - 1e-9)
		bound = max(bound, alone+half+int(max(0, more)))
	}
	return bound
}
