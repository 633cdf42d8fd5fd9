package engine

import (
	"math"
	"slices"

	"gapsheet/vehicle/quantity"
)

// Of a particular that was read more than once the reading that is the least favourable
// for the clause governs, unless the rulebook takes the mean.

// An outcome is the truths of a clause for one subject.
type outcome struct {
	guard, whole quantity.Truth
	least        quantity.Truth // the least truth of the guard over all readings: whether the subject surely counts
	favour       float64        // ranks readings with the same truths; the less, the less favourable
}

// worse ranks two outcomes of the same clause by other readings.
func (o outcome) worse(than outcome) bool {
	switch {
	case o.whole != than.whole:
		return o.whole < than.whole
	case o.guard != than.guard:
		return o.guard > than.guard
	}
	return o.favour < than.favour
}

// worst works guard and demand for one subject, by the least favourable readings, which
// stay in place on both machines until restoreReadings.
func (k *checker) worst(c *compiledClause) outcome {
	several := k.severalIn(c)
	if len(several) == 0 {
		return k.outcome(c)
	}
	total := 1
	for _, x := range several {
		if total *= len(x.full); total > combinationLimit {
			return k.worstByTurns(c, several)
		}
	}
	picks := make([]int, len(several))
	var worst outcome
	var at []int
	least := quantity.Yes
	for try := range total {
		for i, x := range several {
			picks[i] = try % len(x.full)
			try /= len(x.full)
		}
		o := k.outcomeBy(c, several, picks)
		least = min(least, o.guard)
		if at == nil || o.worse(worst) {
			worst, at = o, append([]int(nil), picks...)
		}
	}
	k.takeReadings(several, at)
	worst.least = least
	return worst
}

// combinationLimit bounds the combinations of readings that are tried one by one.
const combinationLimit = 256

// worstByTurns looks for the least favourable readings where there are too many
// combinations: each particular in turn takes its least favourable reading, until none
// gets worse. Where the answer is the same over the ranges from the least to the greatest
// reading, no combination gives another, and there is nothing to look for.
func (k *checker) worstByTurns(c *compiledClause, several []severalReadings) outcome {
	if o := k.outcome(c); o.guard == quantity.No || o.whole != quantity.Open {
		return o
	}
	picks := make([]int, len(several))
	worst := k.outcomeBy(c, several, picks)
	least := worst.guard
	for changed := true; changed; {
		changed = false
		for i, x := range several {
			kept := picks[i]
			for pick := range x.full {
				picks[i] = pick
				o := k.outcomeBy(c, several, picks)
				least = min(least, o.guard)
				if o.worse(worst) {
					worst, kept, changed = o, pick, true
				}
			}
			picks[i] = kept
		}
	}
	k.takeReadings(several, picks)
	worst.least = least
	return worst
}

// outcome works guard and demand by the readings in place.
func (k *checker) outcome(c *compiledClause) outcome {
	m := k.judge(c)
	o := outcome{guard: m.decide(c.guard), whole: quantity.Yes}
	if o.guard != quantity.No {
		o.whole = m.decide(c.whole)
	}
	o.least = o.guard
	return o
}

// outcomeBy works guard and demand by one choice of readings.
func (k *checker) outcomeBy(c *compiledClause, several []severalReadings, picks []int) outcome {
	k.takeReadings(several, picks)
	o := k.outcome(c)
	o.favour = k.favour(c)
	return o
}

// favour is by how much the nearest limit is met, or missed, relative to it.
func (k *checker) favour(c *compiledClause) float64 {
	if c.traces.demand == nil {
		return 0
	}
	f := (&explainer{m: k.judge(c), car: k.car}).walk(c.traces.demand)
	switch {
	case f.failing > 0:
		return -f.short
	case math.IsInf(f.hand, 0):
		return 0
	}
	return f.hand
}

// severalIn finds the particulars with several readings that the clause reads for this
// subject.
func (k *checker) severalIn(c *compiledClause) []severalReadings {
	if len(k.car.several) == 0 || !c.mentions.anyOf(k.car) {
		return nil
	}
	s := newSurvey(true)
	c.whole.survey(k.judge(c), s)
	s.bases(k.judge(c))
	k.hangs = s.derived
	var found []severalReadings
	for _, x := range k.car.several {
		if slices.Contains(s.spots, x.cell) {
			found = append(found, x)
		}
	}
	return found
}

// takeReadings puts one reading of each particular in place, on both machines.
func (k *checker) takeReadings(several []severalReadings, picks []int) {
	for i, x := range several {
		k.full.cells[x.cell].hold(x.full[picks[i]])
		k.read.cells[x.cell].hold(x.read[picks[i]])
	}
	for _, d := range k.hangs {
		d.work(k.full.cells, k.read.cells)
	}
}

// restoreReadings takes the ranges of all readings back.
func (k *checker) restoreReadings() {
	for _, x := range k.car.several {
		k.full.cells[x.cell] = k.car.full[x.cell]
		k.read.cells[x.cell] = k.car.read[x.cell]
	}
	for _, d := range k.car.hanging {
		for _, at := range d.gives {
			k.full.cells[at], k.read.cells[at] = k.car.full[at], k.car.read[at]
		}
	}
}

// hold narrows a cell to a range.
func (c *cell) hold(r quantity.Range) { c.low, c.high = r.Low, r.High }
