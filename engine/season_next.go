package engine

import (
	"fmt"
	"math"
	"slices"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A nextPart is a part with another date, be it the code of a tyre for its week.
type nextPart struct {
	particular *vehicle.Particular
	without    []*vehicle.Particular // what it does not have
	isWeek     bool
	steps      dateSteps
}

// checker is a checker of a car with the part as in one of its steps.
func (t nextPart) checker(on Edition, part *vehicle.Part, step int, r Request) *checker {
	car := on.Car
	next := dateCell(t.steps.at(step))
	if t.isWeek {
		next, car = on.Car.withText(weekCode(t.steps.at(step).From))
	}
	k := on.Program.checker(car, r)
	if t.isWeek {
		k.put(attempt{part.Name(), t.particular.Name, next}) // texts have numbers of their own in every edition
	} else {
		k.try(attempt{part.Name(), t.particular.Name, next})
	}
	for _, x := range t.without {
		none := unknownCell(part.Type.Particular(x.Name))
		none.flags = mayBeNone | written
		k.try(attempt{part.Name(), x.Name, none})
	}
	return k
}

// withText is a cell that holds a text, with a car that knows it.
func (c *Car) withText(text string) (cell, *Car) {
	made := cell{label: math.NaN(), flags: mayHold | written, kind: holdsText}
	if n, known := c.numbers[vehicle.FoldText(text)]; known {
		made.set = n
		return made, c
	}
	knows := *c
	made.set = uint64(len(c.texts))
	knows.texts, knows.spelt = append(slices.Clip(c.texts), vehicle.FoldText(text)), append(slices.Clip(c.spelt), text)
	return made, &knows
}

// dateSteps are dates in one precision, from one on.
type dateSteps struct {
	from      quantity.Day
	precision quantity.Precision
	weeks     bool
	count     int // of the last step
}

// stepsFrom are the dates from a stated one up to the one of a day.
func stepsFrom(stated quantity.DayRange, last quantity.Day) dateSteps {
	s := dateSteps{from: stated.From, precision: stated.Precision}
	s.count = max(s.stepOf(last), 0)
	return s
}

// weeksFrom are the weeks from one up to the one of a day.
func weeksFrom(week quantity.DayRange, last quantity.Day) dateSteps {
	s := dateSteps{from: week.From, weeks: true}
	s.count = max(s.stepOf(last), 0)
	return s
}

// stepOf is the step that holds a day, below 0 for one before them all.
func (s dateSteps) stepOf(day quantity.Day) int {
	switch {
	case s.weeks:
		return int(math.Floor(float64(day-s.from) / 7))
	case s.precision == quantity.ToYear:
		return day.Year() - s.from.Year()
	case s.precision == quantity.ToMonth:
		return int(quantity.MonthsBetween(s.from, day))
	}
	return int(day - s.from)
}

// at is the date so many steps on.
func (s dateSteps) at(step int) quantity.DayRange {
	r := quantity.DayRange{Precision: s.precision}
	switch {
	case s.weeks:
		r.From = s.from.Plus(7 * int64(step))
		r.To = r.From + 6
	case s.precision == quantity.ToYear:
		r.From = s.from.PlusYears(int64(step))
		r.To = r.From.EndOfYear()
	case s.precision == quantity.ToMonth:
		r.From = s.from.PlusMonths(int64(step))
		r.To = r.From.EndOfMonth()
	default:
		r.From = s.from.Plus(int64(step))
		r.To = r.From
	}
	return r
}

// weekCode is the date code of a tyre of the week that begins on a Monday: the week, and the
// year to which its Thursday belongs (ISO 8601-1:2019, 3.1.1.23).
func weekCode(monday quantity.Day) string {
	thursday := monday + 3
	first, _ := quantity.CivilDay(thursday.Year(), 1, 1)
	return fmt.Sprintf("%02d%02d", int(thursday-first)/7+1, thursday.Year()%100)
}

// trials bounds the steps that are tried where the last one does not do.
const trials = 240

// search finds the first step from which on a part does, up to end: all the way where the
// last step does, as newer is better. Else there is a window, which may begin or end at one of
// the days given; it is looked for there and at strides, each half as long as the ones before.
func (s dateSteps) search(days []quantity.Day, does func(int) bool) (first, end int, ok bool) {
	tried := map[int]bool{}
	try := func(step int) bool {
		if _, known := tried[step]; !known {
			tried[step] = does(step)
		}
		return tried[step]
	}
	found := s.count
	if !try(found) {
		if found, ok = s.window(days, tried, try); !ok {
			return 0, 0, false
		}
	}
	low, high := -1, s.count+1 // the nearest that do not
	for step, did := range tried {
		switch {
		case did:
		case step < found:
			low = max(low, step)
		default:
			high = min(high, step)
		}
	}
	first, end = found, found
	for low+1 < first {
		if middle := (low + first) / 2; try(middle) {
			first = middle
		} else {
			low = middle
		}
	}
	for end+1 < high {
		if middle := (end + high) / 2; try(middle) {
			end = middle
		} else {
			high = middle
		}
	}
	return first, end, true
}

// window finds a step that does.
func (s dateSteps) window(days []quantity.Day, tried map[int]bool, try func(int) bool) (int, bool) {
	for _, day := range days {
		if step := s.stepOf(day); step >= 0 && step <= s.count && try(step) {
			return step, true
		}
	}
	for stride := max(s.count/8, 1); ; stride /= 2 {
		for step := 0; step <= s.count && len(tried) < trials; step += stride {
			if try(step) {
				return step, true
			}
		}
		if stride <= 1 || len(tried) >= trials {
			return 0, false
		}
	}
}
