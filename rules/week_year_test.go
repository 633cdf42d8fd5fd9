package rules

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// TestYearsOf53Weeks holds which years have a week 53: those that begin on a Thursday, and
// leap years that begin on a Wednesday (ISO 8601-1:2019, 3.1.1.23).
func TestYearsOf53Weeks(t *testing.T) {
	long := map[int]bool{2004: true, 2009: true, 2015: true, 2020: true, 2026: true, 2032: true}
	for year := 2000; year <= 2035; year++ {
		_, fault := WeekOfCode(fmt.Sprintf("53%02d", year-2000))
		if long[year] {
			require.Equal(t, 53, weeksOfYear(year), year)
			require.Empty(t, fault, year)
			continue
		}
		require.Equal(t, 52, weeksOfYear(year), year)
		require.Equal(t, fmt.Sprintf("would be week 53 of %d, which has 52 weeks", year), fault)
	}
}

// TestWeeksOfCodes holds known weeks. 2008-W39, 2009-W01, 2009-W53 and 2004-W53 are the usual
// examples of week dates at the turn of a year; 0203 and 4308 are those of tyres.
func TestWeeksOfCodes(t *testing.T) {
	for code, want := range map[string][2]string{
		"4308":   {"2008-10-20", "2008-10-26"},
		"0203":   {"2003-01-06", "2003-01-12"},
		"3908":   {"2008-09-22", "2008-09-28"},
		"0109":   {"2008-12-29", "2009-01-04"},
		"5309":   {"2009-12-28", "2010-01-03"},
		"5304":   {"2004-12-27", "2005-01-02"},
		"0100":   {"2000-01-03", "2000-01-09"},
		"5299":   {"2099-12-21", "2099-12-27"},
		" 4308 ": {"2008-10-20", "2008-10-26"},
	} {
		week, fault := WeekOfCode(code)
		require.Empty(t, fault, code)
		require.Equal(t, days(t, want[0]).From, week.From, code)
		require.Equal(t, days(t, want[1]).From, week.To, code)
		require.Equal(t, quantity.PrecisionNone, week.Precision)
	}
}

// TestEveryCodeIsTheWeekOfPackageTime goes through all codes by another's calendar.
func TestEveryCodeIsTheWeekOfPackageTime(t *testing.T) {
	next := WeekCodes.From
	for year := 2000; year <= 2099; year++ {
		for week := 1; week <= weeksOfYear(year); week++ {
			got, fault := WeekOfCode(fmt.Sprintf("%02d%02d", week, year-2000))
			require.Empty(t, fault)
			require.Equal(t, next, got.From, "one week follows the other")
			for day := got.From; day <= got.To; day++ {
				y, w := time.Unix(int64(day)*86400, 0).UTC().ISOWeek()
				require.Equal(t, [2]int{year, week}, [2]int{y, w}, day)
			}
			next = got.To + 1
		}
	}
	require.Equal(t, WeekCodes.To+1, next)
}

// TestWeeksOfJavaTime holds codes against the weeks that java.time (OpenJDK 17) has for drawn
// days.
func TestWeeksOfJavaTime(t *testing.T) {
	file, err := os.Open("../../shared/oracles/java-time/between.csv")
	if err != nil {
		t.Skip("outside vectors not at hand")
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	run := 0
	for _, row := range rows[1:] {
		year, week, _ := strings.Cut(row[6], "-W")
		if number, err := strconv.Atoi(year); err != nil || number < firstCodeYear || number > lastCodeYear {
			continue
		}
		if len(week) == 1 {
			week = "0" + week
		}
		got, fault := WeekOfCode(week + year[2:])
		require.Empty(t, fault, row[6])
		day := days(t, row[0]).From
		require.True(t, got.From <= day && day <= got.To, "%s is in week %s", row[0], row[6])
		run++
	}
	require.Greater(t, run, 100)
}

// TestTextsThatAreNoCode holds what is said of them.
func TestTextsThatAreNoCode(t *testing.T) {
	for text, want := range map[string]string{
		"0008":                  "would be week 00, and the first week of a year is 01",
		"9908":                  "would be week 99 of 2008, which has 52 weeks",
		"408":                   "has three figures: such tyres were made before 2000, and the decade is not in the code",
		"43":                    "has 2 figures, and the date code of a tyre has four",
		"43082":                 "has 5 figures, and the date code of a tyre has four",
		"":                      "is not the date code of a tyre, which is four figures",
		"DOT 4308":              "is not the date code of a tyre, which is four figures",
		"43.8":                  "is not the date code of a tyre, which is four figures",
		"٤٣٠٨":                  "is not the date code of a tyre, which is four figures",
		strings.Repeat("1", 90): "has 90 figures, and the date code of a tyre has four",
	} {
		_, fault := WeekOfCode(text)
		require.Equal(t, want, fault, text)
	}
}
