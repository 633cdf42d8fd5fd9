package quantity

import (
	"fmt"
	"strconv"
	"strings"
)

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
