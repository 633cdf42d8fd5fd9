package engine

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// tyre is a car with one wheel whose tyre has a date code, written as given.
func tyre(code string) string {
	return fmt.Sprintf("wheel \"front left\" {\n  tyre { date_code = %q }\n}\n", code)
}

// TestWeekOfATyre holds what comes of the date code of a tyre: a week, of which any day may
// be the one, and which ends on its Sunday.
func TestWeekOfATyre(t *testing.T) {
	const across = "    across = \"wheel in wheels\"\n"
	asks := func(formula string) string { return across + demand(formula) }
	hold(t, []clauseCase{
		{why: "after the week", clause: asks("week_year(wheel.tyre.date_code) <= date('2008-10-26')"), sheet: tyre("4308"), want: Meets},
		{why: "before the week", clause: asks("week_year(wheel.tyre.date_code) <= date('2008-10-19')"), sheet: tyre("4308"), want: Gap},
		{why: "within the week", clause: asks("week_year(wheel.tyre.date_code) <= date('2008-10-22')"), sheet: tyre("4308"), want: Marginal, says: []string{"date code of tyre"}},
		{why: "its label ends on the Sunday", clause: asks("end_of_label(week_year(wheel.tyre.date_code)) == date('2008-10-26')"), sheet: tyre("4308"), want: Meets},
		{why: "six years from the Sunday, the last day", clause: asks("years_after(end_of_label(week_year(wheel.tyre.date_code)), 6) >= date('2027-03-14')"), sheet: tyre("1021"), want: Meets},
		{why: "six years from the Sunday, a day too late", clause: asks("years_after(end_of_label(week_year(wheel.tyre.date_code)), 6) >= date('2027-03-15')"), sheet: tyre("1021"), want: Gap},
		{why: "through a name", clause: asks("let week = week_year(wheel.tyre.date_code); end_of_label(week) == date('2008-10-26')"), sheet: tyre("4308"), want: Meets},
		{why: "the earliest of several", clause: demand("end_of_label(first(map(wheels, week_year(.tyre.date_code)))) == date('2008-10-26')"), sheet: tyre("4308"), want: Meets},
		{why: "written out", clause: demand("week_year('4308') >= date('2008-10-20') and end_of_label(week_year('4308')) == date('2008-10-26')"), sheet: "", want: Meets},
		{why: "of one that has none", clause: asks("year_of(week_year((wheel.tyre.date_code ?? '0101'))) == 2001"), sheet: tyre("none"), want: Meets},
		{why: "stated to be none", clause: asks("week_year(wheel.tyre.date_code) <= on"), sheet: tyre("none"), want: Gap, says: []string{"date code"}},
		{why: "not recorded", clause: asks("week_year(wheel.tyre.date_code) <= on"), sheet: "wheel \"front left\" {\n  tyre {}\n}\n", want: NotRecorded, says: []string{"date code of tyre"}},
		{why: "not recorded, and another date not either", clause: asks("week_year(wheel.tyre.date_code) <= seat['driver'].made"), sheet: "wheel \"front left\" {\n  tyre {}\n}\nseat \"driver\" {}\n", want: NotRecorded, says: []string{"date code of tyre", "made of seat driver"}},
		{why: "three figures", clause: asks("week_year(wheel.tyre.date_code) <= on"), sheet: tyre("408"), want: NotRecorded, says: []string{`date code of tyre`, `"408" has three figures: such tyres were made before 2000`}},
		{why: "no week 53", clause: asks("week_year(wheel.tyre.date_code) <= on"), sheet: tyre("5321"), want: NotRecorded, says: []string{"would be week 53 of 2021, which has 52 weeks"}},
		{why: "no code, behind a condition", clause: asks("week_year(wheel.tyre.hand_cut ? wheel.tyre.date_code : wheel.tyre.date_code) <= on"), sheet: tyre("x"), want: NotRecorded, says: []string{`"x" is not the date code of a tyre`}},
		{why: "no code, and it does not matter", clause: asks("week_year(wheel.tyre.date_code) <= on or car.seat_count == 2"), sheet: "car \"Tessel 16\" { seat_count = 2 }\n" + tyre("x"), want: Meets},
	})
}

// TestUnknownCodeIsSound holds that nothing is said of a code that is not known which one
// that agrees with the sheet contradicts: it may be no code at all.
func TestUnknownCodeIsSound(t *testing.T) {
	x := clauseCase{clause: demand("week_year(wheel['front left'].tyre.date_code) >= date('1999-01-01')"), sheet: "wheel \"front left\" {\n  tyre {}\n}\n"}
	require.Equal(t, NotRecorded, x.work(t).Verdict)
	require.Equal(t, quantity.Range{Low: 10959, High: 47484}, everyWeek, "2000-01-03 to 2100-01-03: 2099 has 53 weeks")
}

// TestWeeksAgreeWithEachOfTheirDays holds a comparison with a week against the same one with
// each day of it: it is yes or no where all seven say so, and undecided where they differ.
func TestWeeksAgreeWithEachOfTheirDays(t *testing.T) {
	for _, code := range []string{"0100", "0109", "5309", "5304", "4308", "5399"} {
		week, fault := rules.WeekOfCode(code)
		require.Empty(t, fault)
		for shift := quantity.Day(-1); shift <= 7; shift++ {
			limit := week.From + shift
			for sign, holds := range map[string]func(d quantity.Day) bool{
				"<":  func(d quantity.Day) bool { return d < limit },
				"<=": func(d quantity.Day) bool { return d <= limit },
				">=": func(d quantity.Day) bool { return d >= limit },
				"==": func(d quantity.Day) bool { return d == limit },
				"!=": func(d quantity.Day) bool { return d != limit },
			} {
				yes := 0
				for d := week.From; d <= week.To; d++ {
					if holds(d) {
						yes++
					}
				}
				want := map[int]Verdict{0: Gap, 7: Meets}[yes]
				if yes > 0 && yes < 7 {
					want = Marginal
				}
				x := clauseCase{
					clause: demand(fmt.Sprintf("week_year(wheel['front left'].tyre.date_code) %s date('%s')", sign, limit)),
					sheet:  tyre(code),
				}
				require.Equal(t, want.String(), x.work(t).Verdict.String(), "%s %s %s", code, sign, limit)
			}
		}
	}
}
