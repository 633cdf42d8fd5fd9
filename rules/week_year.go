package rules

import (
	"fmt"
	"strings"

	"gapsheet/vehicle/quantity"
)

// weekCode names where the function week_year takes its meaning from.
const weekCode = "49 CFR 574.5(b)(4), date code: two figures for the week and two for the year; weeks taken as in ISO 8601-1:2019, 5.2.3"

// The years that a tyre's code of four figures can mean.
const (
	firstCodeYear = 2000
	lastCodeYear  = 2099
)

// WeekCodes are the days of all weeks that a tyre's code can mean.
var WeekCodes = quantity.DayRange{From: mondayOfYear(firstCodeYear), To: mondayOfYear(lastCodeYear+1) - 1}

// WeekOfCode reads the date code that ends the identification number of a tyre made from
// 2000 on: four figures, the week and the year within its century (49 CFR 574.5). It gives
// the days of that week, Monday to Sunday, of which any may be the one on which the tyre was
// made. The week is the maker's own; it is taken for the week of ISO 8601, which begins on a
// Monday and is the first of a year when it holds 4 January.
//
// fault says what is wrong with a text that is no such code, to stand behind the text: "has
// no week 53 in 2021 …". It is empty for a code.
func WeekOfCode(text string) (week quantity.DayRange, fault string) {
	code := strings.TrimSpace(text)
	if strings.Trim(code, "0123456789") != "" || code == "" {
		return week, "is not the date code of a tyre, which is four figures"
	}
	switch len(code) {
	case 4:
	case 3:
		return week, "has three figures: such tyres were made before 2000, and the decade is not in the code"
	default:
		return week, fmt.Sprintf("has %d figures, and the date code of a tyre has four", len(code))
	}
	number, year := number(code[:2]), firstCodeYear+number(code[2:])
	switch last := weeksOfYear(year); {
	case number == 0:
		return week, "would be week 00, and the first week of a year is 01"
	case number > last:
		return week, fmt.Sprintf("would be week %d of %d, which has %d weeks", number, year, last)
	}
	monday := mondayOfYear(year).Plus(7 * int64(number-1))
	return quantity.DayRange{From: monday, To: monday + 6}, ""
}

// number is two figures as a number.
func number(figures string) int { return 10*int(figures[0]-'0') + int(figures[1]-'0') }

// mondayOfYear is the first day of the first week of a year: the Monday of the week that
// holds 4 January (ISO 8601-1:2019, 3.1.1.23).
func mondayOfYear(year int) quantity.Day {
	fourth, ok := quantity.CivilDay(year, 1, 4)
	if !ok {
		panic("rules: no such year")
	}
	return fourth - (fourth+3)%7 // 1970-01-01 was a Thursday
}

// weeksOfYear is how many weeks a year has: 52 or 53.
func weeksOfYear(year int) int { return int(mondayOfYear(year+1)-mondayOfYear(year)) / 7 }

// codeText checks the argument of week_year: a text, each code written out among what it may
// be is read now.
func (c *checker) codeText(f *Function, n Node) Node {
	if is := n.Type(); is.Kind != Text {
		advice := "Write " + f.Usage + "."
		if k, ok := n.(*Constant); ok && is.Kind == Number && is.Whole {
			advice = fmt.Sprintf("Write the code between quotes: %s('%s').", f.Name, c.code(k.At))
		}
		return c.fault(CodeFormulaKind, n.Span(), advice, "%s is %s, where %s takes a text.", c.quote(n.Span()), is, f.Name)
	}
	sound := true
	for _, code := range textsOf(n) {
		if _, fault := WeekOfCode(code.Text); fault != "" {
			sound = false
			c.fault(CodeFormulaDate, code.At, "Write two figures for the week and two for the year: week_year('4308') is week 43 of 2008.", "%s %s.", c.quote(code.At), fault)
		}
	}
	if !sound {
		return nil
	}
	return n
}

// textsOf are the texts written out that a node may come to.
func textsOf(n Node) []*Constant {
	switch n := n.(type) {
	case *Constant:
		return []*Constant{n}
	case *Conditional:
		return append(textsOf(n.Then), textsOf(n.Else)...)
	case *Otherwise:
		return textsOf(n.Else)
	case *Define:
		return textsOf(n.Rest)
	}
	return nil
}
