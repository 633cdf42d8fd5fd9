package quantity

import (
	"fmt"
	"strconv"
	"strings"
)

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

// dateForm makes the fault for a date in another form, with the date as it is written if
// that can be told.
func dateForm(text string) *Fault {
	count := len([]rune(text))
	fault := &Fault{FaultDate, 0, count, quoted(text) + " is not a date in the form that is read here.", adviceDate}
	trimmed := strings.TrimSpace(text)
	switch {
	case trimmed == "":
		fault.Code, fault.Found = FaultEmpty, "There is no date here."
	case trimmed != text && isDate(trimmed):
		fault.Found, fault.Advice = "There are blanks around the date "+trimmed+".", "Write it without them: "+trimmed+"."
	case len(trimmed) > 10 && isDate(trimmed[:10]) && strings.ContainsRune("Tt Z+", rune(trimmed[10])):
		fault.Found, fault.Advice = quoted(text)+" has more than a date in it.", "Write the day alone: "+trimmed[:10]+"."
	default:
		switch meant := datesMeant(trimmed); len(meant) {
		case 1:
			fault.Advice = "Write year, month and day in this order, with hyphens: " + meant[0] + "."
		case 2:
			fault.Advice = "Write year, month and day in this order, with hyphens: " + meant[0] + " or " + meant[1] + ", whichever is meant."
		}
	}
	return fault
}

// isDate reports whether text is a date that ParseDays reads.
func isDate(text string) bool {
	numbers, precision := dateNumbers(text)
	_, fault := calendarRange(numbers, precision)
	return precision != PrecisionNone && fault == nil
}

// datesMeant returns the one or two dates that text in another form can mean, written as
// ParseDays reads them, and none when nothing sensible can be told.
func datesMeant(text string) []string {
	var numbers []string
	month := 0
	for _, word := range strings.FieldsFunc(text, func(c rune) bool { return strings.ContainsRune("-/.,:_ –—−‐‑", c) }) {
		if named := monthNamed(word); named > 0 && month == 0 {
			month = named
			continue
		}
		numbers = append(numbers, strings.TrimRight(word, "stndrh")) // 1st, 2nd, 3rd, 4th
	}
	if len(numbers) == 1 && len(numbers[0]) == 8 && month == 0 {
		numbers = []string{numbers[0][:4], numbers[0][4:6], numbers[0][6:]}
	}
	values := make([]int, len(numbers))
	year := -1
	for i, number := range numbers {
		value, err := strconv.Atoi(number)
		if err != nil || value < 0 {
			return nil
		}
		if values[i] = value; len(number) == 4 {
			year = i
		}
	}
	if year < 0 {
		return nil
	}
	return orders(values, year, month)
}

// orders puts the numbers of a date in the order of ParseDays. Year is the place of the
// year among them, month the one that was named or 0.
func orders(values []int, year, month int) []string {
	var meant []string
	offer := func(form string, numbers ...any) {
		if date := fmt.Sprintf(form, numbers...); isDate(date) && !(len(meant) == 1 && meant[0] == date) {
			meant = append(meant, date)
		}
	}
	rest := append(append([]int(nil), values[:year]...), values[year+1:]...)
	switch {
	case month > 0 && len(rest) == 1:
		offer("%04d-%02d-%02d", values[year], month, rest[0])
	case month > 0 && len(rest) == 0:
		offer("%04d-%02d", values[year], month)
	case month == 0 && len(rest) == 1:
		offer("%04d-%02d", values[year], rest[0])
	case month == 0 && len(rest) == 2 && year == 0:
		offer("%04d-%02d-%02d", values[year], rest[0], rest[1])
	case month == 0 && len(rest) == 2:
		offer("%04d-%02d-%02d", values[year], rest[1], rest[0])
		offer("%04d-%02d-%02d", values[year], rest[0], rest[1])
	}
	return meant
}

// monthNamed returns 1 to 12 for an English month's name or its first three or more
// letters, 0 for any other word.
func monthNamed(word string) int {
	for i, name := range monthNames() {
		if len(word) >= 3 && len(word) <= len(name) && strings.EqualFold(name[:len(word)], word) {
			return i + 1
		}
	}
	return 0
}
