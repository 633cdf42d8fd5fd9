package report

import (
	"math"
	"slices"
	"strconv"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

// Of the chart's days: how many there are after the last event, at least and at most, as a
// share of those before, and how many there are without an event.
const (
	leastAfter, mostAfter = 28, 120
	shareAfter            = 10
	withoutEvents         = 365
)

// chartNames is how wide the column of names is, in millimetres.
const chartNames = 58.0

// chartDays are the days of a chart and where they lie across its sheets.
type chartDays struct {
	first, last quantity.Day
	left, right float64 // millimetres: of the beginning of the first and the end of the last day
}

// daysOf are the days from the one that is looked at to some weeks after the last event.
func daysOf(r *engine.SeasonResult) chartDays {
	d := chartDays{first: r.From, last: r.From.Plus(withoutEvents), left: sheetFrame.x + chartNames, right: sheetFrame.right()}
	end, any := r.From, false
	for _, event := range r.Season.Events {
		if event.Last >= r.From {
			end, any = max(end, event.Last, event.Inspection), true
		}
	}
	if any {
		after := min(max(quantity.DaysBetween(r.From, end)/shareAfter, leastAfter), mostAfter)
		d.last = end.Plus(after)
	}
	return d
}

// perDay is how wide a day is, in millimetres.
func (d *chartDays) perDay() float64 {
	return (d.right - d.left) / float64(d.last-d.first+1)
}

// x is where a day begins.
func (d *chartDays) x(day quantity.Day) float64 {
	return d.left + float64(day-d.first)*d.perDay()
}

// stretch is where closed days lie, cut to those of the chart. It is false where none does.
func (d *chartDays) stretch(first, last quantity.Day) (from, to float64, ok bool) {
	first, last = max(first, d.first), min(last, d.last)
	if first > last {
		return 0, 0, false
	}
	return d.x(first), d.x(last + 1), true
}

// has says whether a day is one of the chart.
func (d *chartDays) has(day quantity.Day) bool { return day >= d.first && day <= d.last }

// tick is a line of the axis with its word, "" for none.
type tick struct {
	x    float64
	word string
}

// The steps of the axis in months, and how wide the words of months and years have to have
// it, in millimetres.
var axisSteps = []int{1, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 2400}

const (
	monthWide = 7.4
	yearWide  = 9.0
)

var monthWords = []string{"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"}

// ticks are the beginnings of months and of years; months are none where years stand close.
func (d *chartDays) ticks() (months, years []tick) {
	step := axisSteps[len(axisSteps)-1]
	for _, s := range axisSteps {
		wide := d.perDay() * 30.4 * float64(s)
		if s < 12 && wide >= monthWide || s >= 12 && wide >= yearWide {
			step = s
			break
		}
	}
	year, month, _ := d.first.Civil()
	for at := (year*12 + month - 1) / step * step; ; at += step {
		day, ok := quantity.CivilDay(at/12, at%12+1, 1)
		if !ok || day > d.last {
			break
		}
		if day < d.first {
			continue
		}
		if step < 12 {
			months = append(months, d.tick(day, monthWords[at%12], monthWide))
		}
		if at%12 == 0 {
			years = append(years, d.tick(day, yearWord(at/12), yearWide))
		}
	}
	months = append(months, d.mondays(months)...)
	if len(years) == 0 || years[0].x >= d.left+yearWide {
		years = append([]tick{{d.left, yearWord(year)}}, years...)
	}
	return months, years
}

// mondays are the Mondays between the months, where weeks are wide enough for the days of
// the month that they are; none else.
func (d *chartDays) mondays(months []tick) []tick {
	if d.perDay()*7 < monthWide+1 {
		return nil
	}
	var mondays []tick
	for day := d.first; day <= d.last; day++ {
		near := func(t tick) bool { return math.Abs(t.x-d.x(day)) < monthWide }
		// Day 4 of the count is a Monday, 1970-01-05.
		if (int64(day)-4)%7 == 0 && !slices.ContainsFunc(months, near) {
			_, _, inMonth := day.Civil()
			mondays = append(mondays, d.tick(day, strconv.Itoa(inMonth), monthWide))
		}
	}
	return mondays
}

// tick is a tick at a day, without its word where the chart ends before it does.
func (d *chartDays) tick(day quantity.Day, word string, wide float64) tick {
	t := tick{d.x(day), word}
	if t.x+wide > d.right {
		t.word = ""
	}
	return t
}

// yearWord is the year as days are written.
func yearWord(year int) string {
	day, _ := quantity.CivilDay(year, 1, 1)
	text := day.String()
	return text[:len(text)-len("-01-01")]
}
