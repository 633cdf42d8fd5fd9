package quantity

import "fmt"

// The years that a written date may have.
const (
	firstYear = 1900
	lastYear  = 2200
)

// ParseDays reads a written date: a day 2027-03-14, a month 2027-03 or a year 2027, from
// 1900 to 2200, in these forms only (ISO 8601-1:2019, calendar dates, extended format). A
// month or a year is the range of its days. The fault for another form says how the date
// is written, with both readings where 3/4/2027 has two.
func ParseDays(text string) (DayRange, *Fault) {
	if _, fault := readable(text, adviceDate); fault != nil {
		return DayRange{}, fault
	}
	numbers, precision := dateNumbers(text)
	if precision == PrecisionNone {
		return DayRange{}, dateForm(text)
	}
	return calendarRange(numbers, precision)
}

// dateNumbers reads year, month and day from text in the right form, as far as they are
// written. Without that form it gives no precision.
func dateNumbers(text string) (numbers [3]int, precision Precision) {
	runes := []rune(text)
	for part, place := range [...]struct{ from, to int }{{0, 4}, {5, 7}, {8, 10}} {
		if len(runes) < place.to {
			return numbers, PrecisionNone
		}
		var ok bool
		if numbers[part], ok = plainNumber(runes[place.from:place.to]); !ok {
			return numbers, PrecisionNone
		}
		if len(runes) == place.to {
			return numbers, ToYear - Precision(part)
		}
		if runes[place.to] != '-' {
			return numbers, PrecisionNone
		}
	}
	return numbers, PrecisionNone
}

// plainNumber reads runes that must all be plain digits.
func plainNumber(digits []rune) (int, bool) {
	number := 0
	for _, c := range digits {
		if !isDigit(c) {
			return 0, false
		}
		number = number*10 + int(c-'0')
	}
	return number, true
}

// calendarRange makes the days of a year, month and day that are written in the right
// form, or says that the calendar does not have them.
func calendarRange(numbers [3]int, precision Precision) (DayRange, *Fault) {
	year, month, day := numbers[0], numbers[1], numbers[2]
	if year < firstYear || year > lastYear {
		return DayRange{}, &Fault{FaultDateReach, 0, 4, fmt.Sprintf("The year %04d is not one in which a car is inspected.", year), "Write a year from 1900 to 2200."}
	}
	if precision == ToYear {
		month, day = 1, 1
	}
	if month < 1 || month > 12 {
		return DayRange{}, &Fault{FaultDateNoSuchDay, 5, 7, fmt.Sprintf("There is no month %02d.", month), "Write year, month and day, the month from 01 to 12."}
	}
	if precision == ToMonth {
		day = 1
	}
	from, ok := CivilDay(year, month, day)
	if !ok {
		days := daysInMonth(int64(year), month)
		return DayRange{}, &Fault{FaultDateNoSuchDay, 8, 10, fmt.Sprintf("%s %d has %d days, so there is no day %02d.", monthNames()[month-1], year, days, day), fmt.Sprintf("Write a day from 01 to %d.", days)}
	}
	to := from
	switch precision {
	case ToMonth:
		to = from.EndOfMonth()
	case ToYear:
		to = from.EndOfYear()
	}
	return DayRange{from, to, precision}, nil
}

// monthNames lists the months in English.
func monthNames() [12]string {
	return [...]string{"January", "February", "March", "April", "May", "June", "July",
		"August", "September", "October", "November", "December"}
}
