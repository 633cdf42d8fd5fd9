package quantity

import (
	"bufio"
	"encoding/json"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// dayAt reads a full date that a vector holds, whatever its year.
func dayAt(t *testing.T, text string) Day {
	t.Helper()
	var year, month, day int
	_, err := fmt.Sscanf(text, "%d-%d-%d", &year, &month, &day)
	require.NoError(t, err, text)
	d, ok := CivilDay(year, month, day)
	require.True(t, ok, text)
	require.Equal(t, text, d.String())
	return d
}

// whole reads a whole number.
func whole(t *testing.T, text string) int64 {
	t.Helper()
	n, err := strconv.ParseInt(text, 10, 64)
	require.NoError(t, err)
	return n
}

// Days that java.time of OpenJDK 17 reaches: LocalDate.plusYears, plusMonths, plus and
// minus of a Period, whose years and months come first.
func TestDaysLaterAgainstJavaTime(t *testing.T) {
	var c tally
	for _, row := range outsideRows(t, "java-time/plus.csv") {
		from := dayAt(t, row[0])
		years, months, days := whole(t, row[1]), whole(t, row[2]), whole(t, row[4])
		for _, v := range []struct {
			what   string
			got    Day
			wanted string
		}{
			{"plusYears", from.PlusYears(years), row[5]},
			{"plusMonths", from.PlusMonths(months), row[6]},
			{"plus of a period", from.PlusMonths(years*12 + months).Plus(days), row[7]},
			{"minus of a period", from.PlusMonths(-years*12 - months).Plus(-days), row[8]},
		} {
			c.run++
			if v.got != dayAt(t, v.wanted) {
				c.wrong++
				t.Errorf("%s %v: %s", v.what, row, v.got)
			}
		}
	}
	c.report(t, 1000)
}

// Counts that java.time of OpenJDK 17 gives: ChronoUnit.DAYS, MONTHS and YEARS.between, and
// the calendar facts beside them.
func TestDaysBetweenAgainstJavaTime(t *testing.T) {
	var c tally
	for _, row := range outsideRows(t, "java-time/between.csv") {
		a, b := dayAt(t, row[0]), dayAt(t, row[1])
		_, _, lengthOfMonth := a.EndOfMonth().Civil()
		for _, v := range []struct {
			what        string
			got, wanted int64
		}{
			{"days", DaysBetween(a, b), whole(t, row[2])},
			{"months", MonthsBetween(a, b), whole(t, row[3])},
			{"years", YearsBetween(a, b), whole(t, row[4])},
			{"day of the year", DaysBetween(a.StartOfYear(), a) + 1, whole(t, row[7])},
			{"length of the month", int64(lengthOfMonth), whole(t, row[10])},
		} {
			c.run++
			if v.got != v.wanted {
				c.wrong++
				t.Errorf("%s %v: %d", v.what, row, v.got)
			}
		}
		c.run++
		if leap := DaysBetween(a.StartOfYear(), a.EndOfYear()) == 365; leap != (row[9] == "true") {
			c.wrong++
			t.Errorf("leap year %v: %v", row, leap)
		}
	}
	c.report(t, 5000)
}

// temporalCase is one assertion of test262's tests of Temporal.PlainDate.
type temporalCase struct {
	Op, Date, Arg, Text, A, B, Desc, File, ExpectError string
	Expect                                             json.RawMessage
	Overflow                                           any // a word, or nothing of use
	Options                                            map[string]any
}

var durationForm = regexp.MustCompile(`^(-?)P(?:(\d+)Y)?(?:(\d+)M)?(?:(\d+)W)?(?:(\d+)D)?$`)

// check runs one case and says what is wrong, or why it does not apply.
func (v temporalCase) check(t *testing.T) (wrong, reason string) {
	switch v.Op {
	case "add", "subtract":
		return v.checkSum(t)
	case "until", "since":
		return v.checkDifference(t)
	case "compare":
		if sign := sign(int64(dayAt(t, v.A) - dayAt(t, v.B))); strconv.Itoa(sign) != string(v.Expect) {
			return fmt.Sprint(sign), ""
		}
		return "", ""
	case "from":
		return v.checkReading(t)
	}
	return "", "durations are not written down here"
}

func (v temporalCase) checkSum(t *testing.T) (wrong, reason string) {
	form := durationForm.FindStringSubmatch(v.Arg)
	switch {
	case form == nil:
		return "", "has hours and minutes"
	case v.ExpectError != "" && v.Overflow != any("reject"):
		return "", "has limits of its own where days go on here"
	}
	var n [4]int64
	for i := range n {
		if digits := form[i+2]; digits != "" {
			n[i] = whole(t, digits)
		}
	}
	sign := int64(1)
	if (form[1] == "-") != (v.Op == "subtract") {
		sign = -1
	}
	from := dayAt(t, v.Date)
	month := from.PlusMonths(sign * (12*n[0] + n[1]))
	if v.ExpectError != "" { // told to refuse a day that is not there, which is clamped here
		_, _, before := from.Civil()
		if _, _, after := month.Civil(); after >= before {
			return "not clamped: " + month.String(), ""
		}
		return "", ""
	}
	day := month.Plus(sign * (7*n[2] + n[3]))
	if wanted := strings.Trim(string(v.Expect), `"`); day.String() != wanted {
		return day.String(), ""
	}
	return "", ""
}

func (v temporalCase) checkDifference(t *testing.T) (wrong, reason string) {
	for _, option := range []string{"smallestUnit", "roundingMode", "roundingIncrement"} {
		if v.Options[option] != nil {
			return "", "rounds the difference"
		}
	}
	largest, ok := v.Options["largestUnit"].(string)
	if v.Options["largestUnit"] != nil && !ok {
		return "", "tries JavaScript's conversion of options"
	}
	var parts []int64
	require.NoError(t, json.Unmarshal(v.Expect, &parts), v.Desc)
	a, b, sense := dayAt(t, v.Date), dayAt(t, v.Arg), int64(1)
	if v.Op == "since" {
		sense = -1
	}
	got, wanted := []int64(nil), []int64(nil)
	switch strings.TrimSuffix(largest, "s") {
	case "year":
		got, wanted = []int64{YearsBetween(a, b), MonthsBetween(a, b)}, []int64{parts[0], parts[0]*12 + parts[1]}
	case "month":
		got, wanted = []int64{MonthsBetween(a, b)}, []int64{parts[1]}
	default:
		got, wanted = []int64{DaysBetween(a, b)}, []int64{parts[2]*7 + parts[3]}
	}
	for i := range got {
		if got[i] != sense*wanted[i] {
			return fmt.Sprint(got), ""
		}
	}
	return "", ""
}

func (v temporalCase) checkReading(t *testing.T) (wrong, reason string) {
	days, fault := ParseDays(v.Text)
	switch {
	case v.ExpectError == "" && v.Text != strings.Trim(string(v.Expect), `"`):
		return "", "has a time, a zone or another form of date, which are refused here"
	case v.ExpectError == "" && (strings.HasPrefix(v.Text, "+") || strings.HasPrefix(v.Text, "-")):
		return "", "has a year with a sign, before 1900 or after 2200"
	case strings.Contains(v.File, "/overflow-") && v.ExpectError != "":
		return "", "tries JavaScript's conversion of options"
	case v.ExpectError != "" && days.Precision == ToMonth:
		return "", "a month alone is a date here"
	case v.ExpectError != "":
		if fault == nil {
			return days.String(), ""
		}
		return "", ""
	case fault != nil && fault.Code == FaultDateReach:
		return "", "before 1900 or after 2200"
	case fault != nil:
		return fault.Error(), ""
	}
	if days.String() != v.Text || days.From != days.To {
		return days.String(), ""
	}
	return "", ""
}

// sign is -1, 0 or 1.
func sign(n int64) int {
	switch {
	case n < 0:
		return -1
	case n > 0:
		return 1
	}
	return 0
}

// The assertions of test262 for Temporal.PlainDate, ECMAScript's calendar dates.
func TestDaysAgainstTemporal(t *testing.T) {
	var c tally
	lines := bufio.NewScanner(outside(t, "temporal-test262/plaindate-core.jsonl"))
	for lines.Scan() {
		var v temporalCase
		require.NoError(t, json.Unmarshal(lines.Bytes(), &v), lines.Text())
		wrong, reason := v.check(t)
		if reason != "" {
			c.skip(reason)
			continue
		}
		c.run++
		if wrong != "" {
			c.wrong++
			t.Errorf("%s: %s", lines.Text(), wrong)
		}
	}
	require.NoError(t, lines.Err())
	c.report(t, 400)
}

// The date strings of the JSON Schema test suite (draft 2020-12, format date: RFC 3339).
func TestDateStringsAgainstJSONSchema(t *testing.T) {
	var c tally
	lines := bufio.NewScanner(outside(t, "json-schema-formats/cases.jsonl"))
	for lines.Scan() {
		var v struct {
			Format, Text, Why string
			Valid             bool
		}
		require.NoError(t, json.Unmarshal(lines.Bytes(), &v))
		if v.Format != "date" {
			c.skip("not a date")
			continue
		}
		_, fault := ParseDays(v.Text)
		if v.Valid && fault != nil && fault.Code == FaultDateReach {
			c.skip("before 1900 or after 2200")
			continue
		}
		c.run++
		if v.Valid != (fault == nil) {
			c.wrong++
			t.Errorf("%q: %s: %v", v.Text, v.Why, fault)
		}
	}
	require.NoError(t, lines.Err())
	c.report(t, 30)
}
