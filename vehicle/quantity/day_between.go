package quantity

import "math"

// DaysBetween returns how many days b is after a, negative where it is before. It stops at
// the ends of int64.
func DaysBetween(a, b Day) int64 {
	if a == math.MinInt64 { // has no opposite
		return plusCut(plusCut(int64(b), math.MaxInt64), 1)
	}
	return plusCut(int64(b), -int64(a))
}

// MonthsBetween returns how many whole months lie from a to b, negative where b is before
// a: the greatest count, towards zero, after which the same day of the month is not
// passed. From 31 May to 30 June there are none, as in ChronoUnit.MONTHS.between of
// java.time.
func MonthsBetween(a, b Day) int64 {
	yearA, monthA, dayA := a.civil()
	yearB, monthB, dayB := b.civil()
	months := (yearB-yearA)*12 + int64(monthB-monthA)
	switch {
	case months > 0 && dayB < dayA:
		months--
	case months < 0 && dayB > dayA:
		months++
	}
	return months
}

// YearsBetween returns how many whole years lie from a to b, negative where b is before a,
// counted as twelve whole months each (ChronoUnit.YEARS.between of java.time).
func YearsBetween(a, b Day) int64 { return MonthsBetween(a, b) / 12 }
