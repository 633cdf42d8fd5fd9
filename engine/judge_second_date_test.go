package engine

import (
	"math"
	"time"
)

// secondDates are the date functions, by package time. Months and years that have no such
// day end at the month's end.
var secondDates = map[string]func(of []*fraction) *fraction{
	"days_after":  func(of []*fraction) *fraction { return moved(of[0], 0, 0, of[1], 1) },
	"weeks_after": func(of []*fraction) *fraction { return moved(of[0], 0, 0, of[1], 7) },
	"months_after": func(of []*fraction) *fraction {
		return moved(of[0], 0, 1, of[1], 0)
	},
	"years_after": func(of []*fraction) *fraction { return moved(of[0], 1, 0, of[1], 0) },
	"end_of_month": func(of []*fraction) *fraction {
		return calendar(of[0], func(t time.Time) time.Time { return monthEnd(t.Year(), t.Month()) })
	},
	"end_of_year": func(of []*fraction) *fraction {
		return calendar(of[0], func(t time.Time) time.Time { return monthEnd(t.Year(), 12) })
	},
	"start_of_year": func(of []*fraction) *fraction {
		return calendar(of[0], func(t time.Time) time.Time { return time.Date(t.Year(), 1, 1, 0, 0, 0, 0, time.UTC) })
	},
	"end_of_label": func(of []*fraction) *fraction {
		if of[0].lacking || math.IsNaN(of[0].label) {
			return of[0]
		}
		return dayFraction(of[0].label, math.NaN())
	},
	"year_of": func(of []*fraction) *fraction { return wholeOf(of, func(a, _ time.Time) int { return a.Year() }) },
	"days_between": func(of []*fraction) *fraction {
		return wholeOf(of, func(a, b time.Time) int { return int(b.Sub(a).Hours() / 24) })
	},
	"months_between": func(of []*fraction) *fraction { return wholeOf(of, wholeMonths) },
	"years_between": func(of []*fraction) *fraction {
		return wholeOf(of, func(a, b time.Time) int { return wholeMonths(a, b) / 12 })
	},
}

func onDay(f *fraction) time.Time { return time.Unix(int64(f.near)*86400, 0).UTC() }

func ofDay(t time.Time) float64 { return math.Floor(float64(t.Unix()) / 86400) }

func monthEnd(year int, month time.Month) time.Time {
	return time.Date(year, month+1, 0, 0, 0, 0, 0, time.UTC)
}

func calendar(f *fraction, to func(time.Time) time.Time) *fraction {
	if f.lacking {
		return nothingThere
	}
	return dayFraction(ofDay(to(onDay(f))), math.NaN())
}

// moved is a day so many years, months or days later.
func moved(f *fraction, years, months int, n *fraction, days int) *fraction {
	if lacks(f, n) {
		return nothingThere
	}
	t, by := onDay(f), int(n.near)
	if days != 0 {
		return dayFraction(f.near+n.near*float64(days), math.NaN())
	}
	first := time.Date(t.Year()+years*by, t.Month()+time.Month(months*by), 1, 0, 0, 0, 0, time.UTC)
	last := monthEnd(first.Year(), first.Month()).Day()
	return dayFraction(ofDay(first.AddDate(0, 0, min(t.Day(), last)-1)), math.NaN())
}

func wholeOf(of []*fraction, f func(a, b time.Time) int) *fraction {
	if lacks(of...) {
		return nothingThere
	}
	return exactFraction(float64(f(onDay(of[0]), onDay(of[len(of)-1]))), exponents{}, true)
}

// wholeMonths counts the whole months from a to b, towards zero, by trying: the greatest
// number of months that can be put to a's month without going past b's day.
func wholeMonths(a, b time.Time) int {
	n := (b.Year()-a.Year())*12 + int(b.Month()) - int(a.Month())
	switch {
	case n > 0 && b.Day() < a.Day():
		return n - 1
	case n < 0 && b.Day() > a.Day():
		return n + 1
	}
	return n
}
