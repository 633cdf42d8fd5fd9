package quantity

import (
	"fmt"
	"math"
)

// Day is a civil day of the proleptic Gregorian calendar, as days since 1970-01-01. It has
// no time of day and no time zone. Every int64 is a day; arithmetic that would go beyond
// the first or last of them stops there.
type Day int64

// The days of the calendar's cycle of 400 years, and those from 0000-03-01 to 1970-01-01.
const (
	daysInCycle = 146097
	daysToEpoch = 719468
)

// CivilDay returns the day of a year, month and day of the month. It answers false for one
// that is not in the calendar, such as 30 February, and for a year so far off that its
// days are beyond an int64.
func CivilDay(year, month, day int) (Day, bool) {
	if month < 1 || month > 12 || day < 1 || day > daysInMonth(int64(year), month) {
		return 0, false
	}
	return dayOf(int64(year), month, day)
}

// dayOf is CivilDay for a month and day that are in the calendar. Beyond an int64 it gives
// the first or last Day, and false.
//
// The method counts from 1 March, so that the leap day ends a year, in cycles of 400 years
// (H. Hinnant, "chrono-Compatible Low-Level Date Algorithms", days_from_civil).
func dayOf(year int64, month, day int) (Day, bool) {
	if month <= 2 && year > math.MinInt64 {
		year--
	}
	cycle, yearOfCycle := floorDivide(year, 400)
	dayOfYear := (153*int64((month+9)%12)+2)/5 + int64(day) - 1
	dayOfCycle := yearOfCycle*365 + yearOfCycle/4 - yearOfCycle/100 + dayOfYear - daysToEpoch
	const most = math.MaxInt64 / daysInCycle
	switch {
	case cycle > most:
		return math.MaxInt64, false
	case cycle < -most:
		return math.MinInt64, false
	}
	sum := plusCut(cycle*daysInCycle, dayOfCycle)
	return Day(sum), sum != math.MaxInt64 && sum != math.MinInt64
}

// Civil returns the day's year, month (1 to 12) and day of the month (1 to 31).
func (d Day) Civil() (year, month, day int) {
	y, month, day := d.civil()
	return int(y), month, day
}

// civil is Civil with a year that holds on any machine (civil_from_days, as above).
func (d Day) civil() (year int64, month, day int) {
	cycle, dayOfCycle := floorDivide(int64(d), daysInCycle)
	more, dayOfCycle := floorDivide(dayOfCycle+daysToEpoch, daysInCycle)
	cycle += more
	yearOfCycle := (dayOfCycle - dayOfCycle/1460 + dayOfCycle/36524 - dayOfCycle/146096) / 365
	dayOfYear := dayOfCycle - (365*yearOfCycle + yearOfCycle/4 - yearOfCycle/100)
	fromMarch := (5*dayOfYear + 2) / 153
	day = int(dayOfYear-(153*fromMarch+2)/5) + 1
	month = int(fromMarch+2)%12 + 1
	year = cycle*400 + yearOfCycle
	if month <= 2 {
		year++
	}
	return year, month, day
}

// String writes the day as ISO 8601 does: 2027-03-14. A year beyond 0000 to 9999 has a
// sign: +12027-03-14, -0001-12-31.
func (d Day) String() string {
	year, month, day := d.civil()
	return fmt.Sprintf("%s-%02d-%02d", yearText(year), month, day)
}

// yearText writes a year with four digits, or with a sign and at least four.
func yearText(year int64) string {
	switch {
	case year < 0:
		return fmt.Sprintf("-%04d", -year)
	case year > 9999:
		return fmt.Sprintf("+%d", year)
	}
	return fmt.Sprintf("%04d", year)
}

// Plus returns the day so many days later, earlier for a negative count.
func (d Day) Plus(days int64) Day { return Day(plusCut(int64(d), days)) }

// PlusMonths returns the day so many months later, earlier for a negative count. The day
// of the month stays, or becomes the last day of the month where the month is too short:
// one month after 31 January is 28 or 29 February.
func (d Day) PlusMonths(months int64) Day {
	year, month, day := d.civil()
	total := plusCut(year*12+int64(month-1), months)
	year, inYear := floorDivide(total, 12)
	return clampedDay(year, int(inYear)+1, day)
}

// PlusYears returns the day so many years later, earlier for a negative count; 29 February
// becomes the 28th in a year without it.
func (d Day) PlusYears(years int64) Day {
	year, month, day := d.civil()
	return clampedDay(plusCut(year, years), month, day)
}

// EndOfMonth returns the last day of the day's month.
func (d Day) EndOfMonth() Day {
	year, month, _ := d.civil()
	return clampedDay(year, month, 31)
}

// StartOfYear returns 1 January of the day's year.
func (d Day) StartOfYear() Day {
	year, _, _ := d.civil()
	return clampedDay(year, 1, 1)
}

// EndOfYear returns 31 December of the day's year.
func (d Day) EndOfYear() Day {
	year, _, _ := d.civil()
	return clampedDay(year, 12, 31)
}

// Year returns the day's year.
func (d Day) Year() int {
	year, _, _ := d.civil()
	return int(year)
}

// clampedDay is dayOf with the day of the month cut to the last one of the month.
func clampedDay(year int64, month, day int) Day {
	d, _ := dayOf(year, month, min(day, daysInMonth(year, month)))
	return d
}

// daysInMonth returns 28 to 31.
func daysInMonth(year int64, month int) int {
	switch month {
	case 4, 6, 9, 11:
		return 30
	case 2:
		if isLeap(year) {
			return 29
		}
		return 28
	}
	return 31
}

// isLeap reports whether a year has a 29 February.
func isLeap(year int64) bool { return year%4 == 0 && (year%100 != 0 || year%400 == 0) }

// floorDivide returns the quotient rounded down and the remainder, which is never
// negative. The divisor is above zero.
func floorDivide(n, by int64) (quotient, remainder int64) {
	quotient, remainder = n/by, n%by
	if remainder < 0 {
		quotient--
		remainder += by
	}
	return quotient, remainder
}

// plusCut adds, and stops at the ends of int64.
func plusCut(a, b int64) int64 {
	sum := a + b
	switch {
	case a > 0 && b > 0 && sum < 0:
		return math.MaxInt64
	case a < 0 && b < 0 && sum >= 0:
		return math.MinInt64
	}
	return sum
}
