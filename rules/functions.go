package rules

import (
	"strings"
	"sync"
)

// javaTime names where the date functions take their meaning from.
const javaTime = "java.time, as in Java SE 21: plusDays, plusMonths and plusYears clamp to the month's end; ChronoUnit.between counts whole units"

// Where the functions on places take their meaning from.
const (
	geometry = "elementary geometry"
	axes     = "ISO 8855:2011: x forward, z upward"
)

// functionTable is every function on scalars and on places, in the order of the reference.
var functionTable = sync.OnceValue(func() []*Function {
	return []*Function{
		{"abs", FunctionAbs, "abs(figure)", "The figure without its sign.", ""},
		{"sqrt", FunctionSqrt, "sqrt(figure)", "The square root; of an area a length.", ""},
		{"min", FunctionMin, "min(figure, figure, …) or min(list)", "The least of figures of one kind.", ""},
		{"max", FunctionMax, "max(figure, figure, …) or max(list)", "The greatest of figures of one kind.", ""},
		{"floor", FunctionFloor, "floor(number) or floor(figure, step)", "Down to a whole number, or to a multiple of the step.", ""},
		{"ceil", FunctionCeil, "ceil(number) or ceil(figure, step)", "Up to a whole number, or to a multiple of the step.", ""},
		{"round", FunctionRound, "round(number) or round(figure, step)", "To the nearest whole number or multiple of the step, a half away from zero.", ""},
		{"hypot", FunctionHypot, "hypot(figure, figure)", "The diagonal over two sides at a right angle.", ""},
		{"sin", FunctionSin, "sin(angle)", "The sine.", ""},
		{"cos", FunctionCos, "cos(angle)", "The cosine.", ""},
		{"tan", FunctionTan, "tan(angle)", "The tangent.", ""},
		{"atan2", FunctionAtan2, "atan2(rise, run)", "The angle of a slope that rises so far over such a run.", ""},
		{"arc", FunctionArc, "arc(radius, angle)", "The length of a bend along its radius.", ""},
		{"days_after", FunctionDaysAfter, "days_after(date, days)", "So many days later.", javaTime},
		{"weeks_after", FunctionWeeksAfter, "weeks_after(date, weeks)", "So many weeks later.", javaTime},
		{"months_after", FunctionMonthsAfter, "months_after(date, months)", "So many months later, at most at the month's last day.", javaTime},
		{"years_after", FunctionYearsAfter, "years_after(date, years)", "So many years later; 29 February becomes 28 February where there is none.", javaTime},
		{"end_of_month", FunctionEndOfMonth, "end_of_month(date)", "The last day of its month.", ""},
		{"end_of_year", FunctionEndOfYear, "end_of_year(date)", "31 December of its year.", ""},
		{"start_of_year", FunctionStartOfYear, "start_of_year(date)", "1 January of its year.", ""},
		{"end_of_label", FunctionEndOfLabel, "end_of_label(date)", "The last day of what the label says: of the day, the month or the year.", ""},
		{"year_of", FunctionYearOf, "year_of(date)", "Its year, as a count.", ""},
		{"earliest", FunctionEarliest, "earliest(date, date, …) or earliest(list)", "The earliest of dates.", ""},
		{"latest", FunctionLatest, "latest(date, date, …) or latest(list)", "The latest of dates.", ""},
		{"days_between", FunctionDaysBetween, "days_between(from, to)", "How many days from one date to the other, as a count.", javaTime},
		{"months_between", FunctionMonthsBetween, "months_between(from, to)", "How many whole months; 31 May to 30 June is none. For a limit write months_after.", javaTime},
		{"years_between", FunctionYearsBetween, "years_between(from, to)", "How many whole years. For a limit write years_after.", javaTime},
		{"week_year", FunctionWeekYear, "week_year(text)", "The week that a tyre's date code means, four figures as in '4308': some day from its Monday to its Sunday.", weekCode},
		{"distance", FunctionDistance, "distance(a, b)", "How far two places or tubes are apart, of a tube the nearest point of its centre line.", geometry},
		{"clearance", FunctionClearance, "clearance(a, b)", "How far the surfaces of two places or tubes are apart, negative where one is within the other: a tube with its outside diameter, a head as its helmet, any other place as a point.", geometry},
		{"angle_between", FunctionAngleBetween, "angle_between(tube, tube)", "The angle at which two tubes leave the joint they share, or at which one lands on the other; else the acute angle between their straights from end to end.", geometry},
		{"above", FunctionAbove, "above(place, place)", "How far the first place is higher than the second; negative where it is lower.", axes},
		{"ahead_of", FunctionAheadOf, "ahead_of(place, place)", "How far the first place is further forward than the second; negative where it is further back.", axes},
		{"meet", FunctionMeet, "meet(tube, tube, within)", "Yes where the centre lines of two tubes come as near to each other as that length.", geometry},
	}
})

// functionsByName is functionTable by name.
var functionsByName = sync.OnceValue(func() map[string]*Function {
	byName := map[string]*Function{}
	for _, f := range functionTable() {
		byName[f.Name] = f
	}
	return byName
})

// Functions returns every function on scalars and on places that a formula may call, in the order of
// the reference. The list is shared: it is not to be changed.
func Functions() []*Function { return functionTable() }

// FunctionNamed returns the function on scalars or on places with a name, nil when there is none.
func FunctionNamed(name string) *Function { return functionsByName()[name] }

// Usage is how something that is called is written and what it does, for the reference.
type Usage struct {
	Name, Usage, Help string
}

// listUsages is the functions on lists and those on something else than values, in the
// order of the reference.
var listUsages = []Usage{
	{"all", "all(list, condition)", "Yes when every member meets the condition; yes for an empty list."},
	{"any", "any(list, condition)", "Yes when at least one member does."},
	{"none", "none(list, condition)", "Yes when no member does."},
	{"one", "one(list, condition)", "Yes when exactly one member does."},
	{"count", "count(list, condition)", "How many members meet the condition."},
	{"len", "len(list)", "How many members there are."},
	{"filter", "filter(list, condition)", "The members that meet the condition."},
	{"map", "map(list, value)", "The value for each member, as a list."},
	{"sum", "sum(list) or sum(list, value)", "The sum of the figures, or of the value of each member."},
	{"mean", "mean(list)", "The mean of the figures."},
	{"median", "median(list)", "The middle one of the figures, between two the mean of both."},
	{"find", "find(list, condition)", "The first member that meets the condition."},
	{"findLast", "findLast(list, condition)", "The last member that does."},
	{"first", "first(list)", "The first member, in the order of the sheet."},
	{"last", "last(list)", "The last member."},
	{"in_band", "in_band(table.name, figure)", "The rows of a table whose band holds the figure."},
	{"recorded", "recorded(particular)", "Yes when the sheet has it, no when it is stated as none, open when it says nothing."},
	{"fitted", "fitted(part)", "Yes when the sheet has the part, no when it is in not_fitted, else open."},
	{"date", "date('2027-01-01')", "A day."},
	{"celsius", "celsius(135)", "A temperature in degrees Celsius."},
	{"fahrenheit", "fahrenheit(275)", "A temperature in degrees Fahrenheit."},
}

// Usages is every function of the language with its usage and one line of help: first
// those on lists, then those on single values and on places.
func Usages() []Usage {
	list := append([]Usage(nil), listUsages...)
	for _, f := range Functions() {
		list = append(list, Usage{f.Name, f.Usage, f.Help})
	}
	return list
}

// listUsage is the usage of a function, for a message.
func listUsage(name string) string {
	for _, u := range Usages() {
		if u.Name == name {
			return strings.ReplaceAll(u.Usage, " or ", ", or ")
		}
	}
	return name + "(…)"
}
