package engine

import (
	"math"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// The days of the run stand in the first cells of every machine: on, and the event's. Over a
// stretch of days they are all of it at once; where a comparison of days is cut within it is
// found by looking at each half for itself.

// days are the days of the run in the order of their cells.
func (r Request) days() [moments]quantity.DayRange {
	exactly := func(day quantity.Day) quantity.DayRange {
		return quantity.DayRange{From: day, To: day, Precision: quantity.ToDay}
	}
	all := [moments]quantity.DayRange{exactly(r.Day), exactly(r.Day), exactly(r.Day), exactly(r.Day)}
	if r.Event != nil {
		all[rules.InspectionDay] = exactly(r.Event.Inspection)
		all[rules.FirstDay], all[rules.LastDay] = exactly(r.Event.First), exactly(r.Event.Last)
	}
	return all
}

// setDays puts the days of the run in place.
func (m *machine) setDays(days [moments]quantity.DayRange) {
	for i, d := range days {
		c := &m.cells[i]
		c.low, c.high, c.label = float64(d.From), float64(d.To), float64(d.To)
		if d.From != d.To {
			c.label = math.NaN() // of one day each
		}
	}
}

// wholeStretch is every day of the run at some day of a stretch.
func wholeStretch(from, until quantity.Day) [moments]quantity.DayRange {
	one := quantity.DayRange{From: from, To: until, Precision: quantity.ToDay}
	return [moments]quantity.DayRange{one, one, one, one}
}

// dayCuts gathers the days at which a comparison that reads a day of the run changes.
type dayCuts struct {
	from, until quantity.Day
	at          map[quantity.Day]bool // first days of what is different from the day before
	dates       map[int32]bool        // cells of dates that are held against days
	refresh     []func()              // works out again what names and members stand for, outermost first
}

func newDayCuts(from, until quantity.Day) *dayCuts {
	return &dayCuts{from: from, until: until, at: map[quantity.Day]bool{}, dates: map[int32]bool{}}
}

// during runs then with a way to work out again what a name or member stands for.
func (s *survey) during(again, then func()) {
	if s.days == nil {
		then()
		return
	}
	s.days.refresh = append(s.days.refresh, again)
	then()
	s.days.refresh = s.days.refresh[:len(s.days.refresh)-1]
}

// look finds the cuts of one comparison as its names and members stand.
func (d *dayCuts) look(m *machine, n truthNode) {
	if !d.readsDays(m, n) || n.truth(m) != quantity.Open {
		return
	}
	var last quantity.Truth
	begun := false
	d.halve(m, n, d.from, d.until, func(from quantity.Day, t quantity.Truth) {
		if begun && t != last {
			d.at[from] = true
		}
		last, begun = t, true
	})
	d.over(m, d.from, d.until)
}

// halve visits stretches of the days over which the comparison has one truth, in order.
func (d *dayCuts) halve(m *machine, n truthNode, from, until quantity.Day, visit func(quantity.Day, quantity.Truth)) {
	d.over(m, from, until)
	t := n.truth(m)
	if t != quantity.Open || from == until {
		visit(from, t)
		return
	}
	middle := from + (until-from)/2
	d.halve(m, n, from, middle, visit)
	d.halve(m, n, middle+1, until, visit)
}

// over puts a stretch of days in place, and what hangs on it.
func (d *dayCuts) over(m *machine, from, until quantity.Day) {
	m.setDays(wholeStretch(from, until))
	for _, again := range d.refresh {
		again()
	}
}

// readsDay reports whether a survey touched a day of the run.
func (s *survey) readsDay() bool {
	return slices.ContainsFunc(s.touched, func(t touch) bool { return t.cell < moments })
}

// isDated reports whether a cell holds a date of the car, be it a code for a week.
func (m *machine) isDated(at int32) bool {
	c := &m.cells[at]
	if c.kind == holdsText && c.set >= firstText {
		_, fault := rules.WeekOfCode(m.texts[c.set])
		return fault == ""
	}
	return at >= moments && c.kind == holdsDate
}

// readsDays reports whether a node reads a day of the run, and keeps the dates that it reads
// beside.
func (d *dayCuts) readsDays(m *machine, n node) bool {
	s := newSurvey(true)
	n.survey(m, s)
	if !s.readsDay() {
		return false
	}
	for _, t := range s.touched {
		if m.isDated(t.cell) {
			d.dates[t.cell] = true
		}
	}
	return true
}
