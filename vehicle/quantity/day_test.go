package quantity

import (
	"math"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// civil returns a day of the calendar that the test relies on.
func civil(t require.TestingT, year, month, day int) Day {
	d, ok := CivilDay(year, month, day)
	require.True(t, ok)
	return d
}

func TestDatesAsWritten(t *testing.T) {
	for _, c := range []struct {
		text      string
		from, to  string
		precision Precision
	}{
		{"2027-03-14", "2027-03-14", "2027-03-14", ToDay},
		{"2028-02-29", "2028-02-29", "2028-02-29", ToDay},
		{"2000-02-29", "2000-02-29", "2000-02-29", ToDay},
		{"2027-03", "2027-03-01", "2027-03-31", ToMonth},
		{"2028-02", "2028-02-01", "2028-02-29", ToMonth},
		{"2100-02", "2100-02-01", "2100-02-28", ToMonth},
		{"2027", "2027-01-01", "2027-12-31", ToYear},
		{"1900", "1900-01-01", "1900-12-31", ToYear},
		{"2200-12-31", "2200-12-31", "2200-12-31", ToDay},
	} {
		days, fault := ParseDays(c.text)
		require.Nil(t, fault, c.text)
		require.Equal(t, c.from, days.From.String(), c.text)
		require.Equal(t, c.to, days.To.String(), c.text)
		require.Equal(t, c.precision, days.Precision, c.text)
		require.Equal(t, c.text, days.String())
	}
	from, to := civil(t, 2027, 1, 1), civil(t, 2027, 3, 14)
	require.Equal(t, "2027-01-01 to 2027-03-14", DayRange{From: from, To: to}.String())
	require.Equal(t, "2027-01-01", DayRange{From: from, To: from}.String())
}

func TestFaultyDates(t *testing.T) {
	const usual = "Write a date as 2027-03-14, or 2027-03 or 2027 where no more is known."
	for _, c := range []struct {
		text, code string
		from, to   int
		advice     string
	}{
		{"", FaultEmpty, 0, 0, usual},
		{"  ", FaultEmpty, 0, 2, usual},
		{"31/12/2027", FaultDate, 0, 10, ": 2027-12-31."},
		{"12/31/2027", FaultDate, 0, 10, ": 2027-12-31."},
		{"3/4/2027", FaultDate, 0, 8, ": 2027-04-03 or 2027-03-04, whichever is meant."},
		{"4/4/2027", FaultDate, 0, 8, ": 2027-04-04."},
		{"2027-2-3", FaultDate, 0, 8, ": 2027-02-03."},
		{"2027/03/14", FaultDate, 0, 10, ": 2027-03-14."},
		{"2027.03.14", FaultDate, 0, 10, ": 2027-03-14."},
		{"2027–03–14", FaultDate, 0, 10, ": 2027-03-14."},
		{"20270314", FaultDate, 0, 8, ": 2027-03-14."},
		{"03/2027", FaultDate, 0, 7, ": 2027-03."},
		{"March 2027", FaultDate, 0, 10, ": 2027-03."},
		{"14 Mar 2027", FaultDate, 0, 11, ": 2027-03-14."},
		{"Mar 14th, 2027", FaultDate, 0, 14, ": 2027-03-14."},
		{" 2027-03-14", FaultDate, 0, 11, "Write it without them: 2027-03-14."},
		{"2027-03-14T10:00", FaultDate, 0, 16, "Write the day alone: 2027-03-14."},
		{"2027-03-14Z", FaultDate, 0, 11, "Write the day alone: 2027-03-14."},
		{"27-03-14", FaultDate, 0, 8, usual},
		{"2027-W13-2", FaultDate, 0, 10, usual},
		{"2027-073", FaultDate, 0, 8, usual},
		{"2027-100-100", FaultDate, 0, 12, usual},
		{"99999999999999999999-1-1", FaultDate, 0, 24, usual},
		{"2027-03-", FaultDate, 0, 8, ": 2027-03."},
		{"2027-03-14-15", FaultDate, 0, 13, usual},
		{"২027-01-01", FaultDate, 0, 10, usual},
		{"next year", FaultDate, 0, 9, usual},
		{"2027-02-30", FaultDateNoSuchDay, 8, 10, "Write a day from 01 to 28."},
		{"2027-02-29", FaultDateNoSuchDay, 8, 10, "Write a day from 01 to 28."},
		{"2100-02-29", FaultDateNoSuchDay, 8, 10, "Write a day from 01 to 28."},
		{"2027-04-31", FaultDateNoSuchDay, 8, 10, "Write a day from 01 to 30."},
		{"2027-03-00", FaultDateNoSuchDay, 8, 10, "Write a day from 01 to 31."},
		{"2027-13-01", FaultDateNoSuchDay, 5, 7, "the month from 01 to 12."},
		{"2027-00", FaultDateNoSuchDay, 5, 7, "the month from 01 to 12."},
		{"1899-12-31", FaultDateReach, 0, 4, "Write a year from 1900 to 2200."},
		{"2201", FaultDateReach, 0, 4, "Write a year from 1900 to 2200."},
		{"0000-01-01", FaultDateReach, 0, 4, "Write a year from 1900 to 2200."},
		{"2027-03-14\x00", FaultText, 10, 11, usual},
		{"2027-03-14 \xff", FaultText, 0, 12, usual},
		{strings.Repeat("2", 500), FaultText, 0, 500, usual},
	} {
		days, fault := ParseDays(c.text)
		require.NotNil(t, fault, c.text)
		require.Equal(t, DayRange{}, days)
		require.Equal(t, c.code, fault.Code, "%q: %v", c.text, fault)
		require.Equal(t, []int{c.from, c.to}, []int{fault.From, fault.To}, "%q: %v", c.text, fault)
		require.Contains(t, fault.Advice, c.advice, c.text)
		requireSentences(t, fault)
	}
}

// The calendar against Go's own.
func TestCalendarAgainstGo(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		d := Day(rapid.Int64Range(-1_500_000, 1_500_000).Draw(t, "day"))
		at := time.Unix(int64(d)*86400, 0).UTC()
		year, month, day := d.Civil()
		require.Equal(t, []int{at.Year(), int(at.Month()), at.Day()}, []int{year, month, day})
		require.Equal(t, d, civil(t, year, month, day))
		require.Equal(t, at.Year(), d.Year())
		if year >= 0 && year <= 9999 {
			require.Equal(t, at.Format(time.DateOnly), d.String())
		}
		require.Equal(t, civil(t, year, 1, 1), d.StartOfYear())
		require.Equal(t, civil(t, year, 12, 31), d.EndOfYear())
		require.Equal(t, int(at.Month())%12+1, int(time.Unix(int64(d.EndOfMonth()+1)*86400, 0).UTC().Month()))
	})
}

func TestDaysNotInTheCalendar(t *testing.T) {
	for _, c := range [][3]int{{2027, 2, 29}, {1900, 2, 29}, {2027, 4, 31}, {2027, 0, 1}, {2027, 13, 1}, {2027, 1, 0}, {2027, 1, 32}, {2027, -1, 1}, {math.MaxInt, 1, 1}, {math.MinInt, 12, 31}} {
		_, ok := CivilDay(c[0], c[1], c[2])
		require.False(t, ok, "%v", c)
	}
	require.Equal(t, "2000-02-29", civil(t, 2000, 2, 29).String())
}

// Calendar traps: the last days of months, and 29 February.
func TestMonthsAndYearsAreClamped(t *testing.T) {
	for _, c := range []struct {
		from          [3]int
		months, years int64
		wanted        string
	}{
		{[3]int{2027, 1, 31}, 1, 0, "2027-02-28"},
		{[3]int{2028, 1, 31}, 1, 0, "2028-02-29"},
		{[3]int{2027, 3, 31}, -1, 0, "2027-02-28"},
		{[3]int{2027, 8, 31}, 13, 0, "2028-09-30"},
		{[3]int{2024, 2, 29}, 0, 1, "2025-02-28"},
		{[3]int{2020, 2, 29}, 0, 2, "2022-02-28"},
		{[3]int{2024, 2, 29}, 0, 4, "2028-02-29"},
		{[3]int{2024, 2, 29}, 0, -24, "2000-02-29"},
		{[3]int{2027, 1, 15}, -1, 0, "2026-12-15"},
	} {
		from := civil(t, c.from[0], c.from[1], c.from[2])
		require.Equal(t, c.wanted, from.PlusMonths(c.months).PlusYears(c.years).String(), from.String())
	}
}

func TestCountsBetween(t *testing.T) {
	a, b := civil(t, 2021, 5, 31), civil(t, 2021, 6, 30)
	require.EqualValues(t, 30, DaysBetween(a, b))
	require.EqualValues(t, 0, MonthsBetween(a, b))
	require.EqualValues(t, 0, MonthsBetween(b, a))
	require.EqualValues(t, -1, MonthsBetween(civil(t, 2021, 7, 1), a))
	leap := civil(t, 2024, 2, 29)
	require.EqualValues(t, 0, YearsBetween(leap, civil(t, 2025, 2, 28)), "limits are written with years_after")
	require.EqualValues(t, 1, YearsBetween(leap, civil(t, 2025, 3, 1)))
	require.EqualValues(t, -1, YearsBetween(civil(t, 2025, 2, 28), civil(t, 2024, 2, 28)))
}

func TestDaysStopAtTheEndsOfInt64(t *testing.T) {
	const first, last = Day(math.MinInt64), Day(math.MaxInt64)
	require.Equal(t, last, last.Plus(1))
	require.Equal(t, first, first.Plus(-1))
	require.Equal(t, last, Day(0).Plus(math.MaxInt64))
	require.Equal(t, last, Day(0).PlusMonths(math.MaxInt64))
	require.Equal(t, first, Day(0).PlusMonths(math.MinInt64))
	require.Equal(t, last, last.PlusMonths(math.MaxInt64))
	require.Equal(t, first, first.PlusYears(math.MinInt64))
	require.Equal(t, last, Day(0).PlusYears(math.MaxInt64))
	require.Equal(t, last, last.EndOfYear())
	require.Equal(t, first, first.StartOfYear())
	require.LessOrEqual(t, first, first.EndOfMonth())
	require.EqualValues(t, math.MaxInt64, DaysBetween(first, last))
	require.EqualValues(t, math.MinInt64, DaysBetween(last, first))
	require.EqualValues(t, 0, DaysBetween(first, first))
	require.EqualValues(t, math.MaxInt64, DaysBetween(first, -1))
	require.Positive(t, MonthsBetween(first, last))
	require.Negative(t, YearsBetween(last, first))
	require.Equal(t, "+25252734927768524-07-27", last.String())
	require.Equal(t, "-25252734927764585-06-07", first.String())
}

// Whatever the days, arithmetic on them keeps order and undoes itself where it can.
func TestDayArithmetic(t *testing.T) {
	anyDay := rapid.OneOf(rapid.Int64(), rapid.Int64Range(-200000, 200000))
	checkRounds(t, func(t *rapid.T) {
		a, b := Day(anyDay.Draw(t, "a")), Day(anyDay.Draw(t, "b"))
		n := rapid.OneOf(rapid.Int64(), rapid.Int64Range(-5000, 5000)).Draw(t, "n")
		low, high := min(a, b), max(a, b)
		require.LessOrEqual(t, low.PlusMonths(n), high.PlusMonths(n))
		require.LessOrEqual(t, low.PlusYears(n), high.PlusYears(n))
		require.LessOrEqual(t, low.Plus(n), high.Plus(n))
		require.GreaterOrEqual(t, a.PlusMonths(max(n, 0)), a)
		require.LessOrEqual(t, a.PlusMonths(min(n, 0)), a)
		require.GreaterOrEqual(t, DaysBetween(low, high), int64(0))
		months := MonthsBetween(low, high)
		require.LessOrEqual(t, low.PlusMonths(months), high, "whole months are not past it")
		require.GreaterOrEqual(t, low.PlusMonths(months+1).EndOfMonth(), high)
		require.LessOrEqual(t, a.StartOfYear(), a)
		require.GreaterOrEqual(t, a.EndOfMonth(), a)
		require.GreaterOrEqual(t, a.EndOfYear(), a.EndOfMonth())
	})
}
