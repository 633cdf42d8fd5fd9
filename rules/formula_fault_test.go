package rules

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// told is what a fault says: its code, its column in the formula counted from 1, the piece
// of the formula it points at, and its sentences.
type told struct {
	code   vehicle.Code
	column int
	piece  string
	detail string
}

// TestFaultyFormulas holds what an author is told of each mistake: place, finding and what
// to write instead.
func TestFaultyFormulas(t *testing.T) {
	scope := clauseScope(t)
	for _, x := range faultyFormulas {
		t.Run(x.source, func(t *testing.T) {
			tree, faults := CheckText(x.source, scope, Type{Kind: Truth})
			require.Nil(t, tree)
			found := []told{}
			for _, f := range faults {
				require.NotEmpty(t, f.Summary())
				piece := string([]rune(x.source)[f.At.From:f.At.To])
				found = append(found, told{f.Code, f.At.From + 1, piece, f.Detail()})
			}
			require.Equal(t, x.told, found)
		})
	}
}

var faultyFormulas = []struct {
	source string
	told   []told
}{
	{"tube.outside >= 45 mm", []told{
		{CodeFormulaSyntax, 17, "45 mm", `"45 mm" has no operator between number and word. Write 45*mm.`},
	}},
	{"week_year('5321') <= on", []told{
		{CodeFormulaDate, 11, "'5321'", `'5321' would be week 53 of 2021, which has 52 weeks. Write two figures for the week and two for the year: week_year('4308') is week 43 of 2008.`},
	}},
	{"week_year(2021) <= on", []told{
		{CodeFormulaKind, 11, "2021", `"2021" is a count, where week_year takes a text. Write the code between quotes: week_year('2021').`},
	}},
	{"tube.outside >= 45mm", []told{
		{CodeFormulaSyntax, 17, "45mm", `"45mm" has no operator between number and word. Write 45*mm.`},
	}},
	{"tube.outside >= 1.75 in", []told{
		{CodeFormulaSyntax, 17, "1.75 in", `"1.75 in" has no operator between number and word. Write 1.75*inch.`},
	}},
	{"tube.outside >= 45", []told{
		{CodeFormulaDimension, 17, "45", `"45" has no unit, but "tube.outside" is a length. Write 45*mm.`},
	}},
	{"tube.outside >= car.weighed_mass", []told{
		{CodeFormulaDimension, 1, "tube.outside >= car.weighed_mass", `"tube.outside" is a length, "car.weighed_mass" is a mass. Only figures of one kind can be compared.`},
	}},
	{"tube.outside + car.weighed_mass > 3*mm", []told{
		{CodeFormulaDimension, 1, "tube.outside + car.weighed_mass", `"tube.outside" is a length, "car.weighed_mass" is a mass. Only figures of one kind can be added.`},
	}},
	{"car.weighed_mass >= 1,000*kg", []told{
		{CodeFormulaDigits, 21, "1,000", `"1,000" has a comma in it. Write 1000 if thousands are meant, or 1.000 with a decimal point.`},
	}},
	{"car.weighed_mass >= 1,000.5*kg", []told{
		{CodeFormulaDigits, 21, "1,000.5", `"1,000.5" has a comma in it. Write no mark between thousands: 1000.5.`},
	}},
	{"tube.outside >= 0,125*inch", []told{
		{CodeFormulaDigits, 17, "0,125", `"0,125" has a comma in it. Write a point: 0.125.`},
	}},
	{"tube.outside >= 2,5*mm", []told{
		{CodeFormulaDigits, 17, "2,5", `"2,5" has a comma in it. Write a point: 2.5.`},
	}},
	{"tube.outside = 45*mm", []told{
		{CodeFormulaSyntax, 14, "=", `"=" is not an operator. Write ==.`},
	}},
	{"tube.outside =< 45*mm", []told{
		{CodeFormulaSyntax, 14, "=<", `"=<" is not an operator. Write <=.`},
	}},
	{"tube.outside <> 45*mm", []told{
		{CodeFormulaSyntax, 14, "<>", `"<>" is not an operator. Write !=.`},
	}},
	{"tube.outside === 45*mm", []told{
		{CodeFormulaSyntax, 14, "===", `"===" is not an operator. Write ==.`},
	}},
	{"tube.outside ≥ 45*mm", []told{
		{CodeFormulaSyntax, 14, "≥", `The character "≥" has no meaning in a formula. Write >=.`},
	}},
	{"tube.part == ‘main hoop’", []told{
		{CodeFormulaSyntax, 14, "‘", "The quotation mark ‘ is a printer's one. Write a text between straight quotes: 'steel'."},
		{CodeFormulaSyntax, 24, "’", "The quotation mark ’ is a printer's one. Write a text between straight quotes: 'steel'."},
	}},
	{"tube.part == main_hoop", []told{
		{CodeFormulaName, 14, "main_hoop", `"main_hoop" is not the name of anything. A text stands between quotes; a part, table, term or unit is written by its name.`},
	}},
	{`tube.part == "main hoop`, []told{
		{CodeFormulaSyntax, 24, "", "A text has no end. Close it with the quote it begins with, on the same line."},
	}},
	{"x > 30°", []told{
		{CodeFormulaSyntax, 7, "°", `The character "°" has no meaning in a formula. Write 30*deg; a temperature is celsius(30).`},
	}},
	{"tube.wal >= 2*mm", []told{
		{CodeFormulaName, 6, "wal", `The build sheet knows no "wal" of a tube. Did you mean wall?`},
	}},
	{"tub.wall >= 2*mm", []told{
		{CodeFormulaName, 1, "tub", `"tub" is not the name of anything. Did you mean tube?`},
	}},
	{"wall >= 2*mm", []told{
		{CodeFormulaName, 1, "wall", `"wall" is a particular, and it does not say of which part. Write tube.wall.`},
	}},
	{"weighed_mass <= 3*kg", []told{
		{CodeFormulaName, 1, "weighed_mass", `"weighed_mass" is a particular, and it does not say of which part. Write car.weighed_mass.`},
	}},
	{"tubes", []told{
		{CodeFormulaName, 1, "tubes", `"tubes" does not say what it belongs to. Write cage.tubes.`},
	}},
	{"cage.tube.wall > 0", []told{
		{CodeFormulaPart, 1, "cage.tube", `There can be several of "tube", and this does not say which. Write cage.tube['…'] for one of them, or ask all of them: all(cage.tubes, …).`},
	}},
	{"cage.tubes.wall > 0", []told{
		{CodeFormulaKind, 12, "wall", `"cage.tubes" is a list, and a list has no "wall" of its own. Ask its members: all(cage.tubes, .wall …), any(cage.tubes, .wall …), or map(cage.tubes, .wall).`},
	}},
	{"harness.standard == 'SFI 16.1'", []told{
		{CodeFormulaPart, 1, "harness", `There can be several of "harness", and this does not say which. Write harness['driver'] for one of them, or ask all of them: all(harnesses, …).`},
	}},
	{"harnesses.standard == 'SFI 16.1'", []told{
		{CodeFormulaKind, 11, "standard", `"harnesses" is a list, and a list has no "standard" of its own. Name one of them, harness['driver'].standard, or ask all: all(harnesses, .standard …).`},
	}},
	{"harness['drivr'].standard == 'SFI 16.1'", []told{
		{CodeFormulaLabel, 9, "'drivr'", `No harness is called "drivr". Did you mean 'driver'?`},
	}},
	{"harnesses['driver'].standard == 'SFI 16.1'", []told{
		{CodeFormulaPart, 1, "harnesses['driver']", `"harnesses" is the list of all. Write the singular: harness['driver'].`},
	}},
	{"harnesses[0].standard == 'SFI 16.1'", []told{
		{CodeFormulaRefused, 1, "harnesses[0]", "Parts are not numbered, they have labels. Name one by its label between quotes, as in harness['driver']."},
	}},
	{"cage['x'].modified", []told{
		{CodeFormulaPart, 1, "cage['x']", `A car has one "cage" only, so it has no label. Write cage.`},
	}},
	{"tube.material == 'CDSS'", []told{
		{CodeFormulaChoice, 18, "'CDSS'", `'CDSS' is not one of the choices of "tube.material". Did you mean 'cold drawn seamless carbon steel'?`},
	}},
	{"tube.material in ['CDS', 'wood', 'brass']", []told{
		{CodeFormulaChoice, 26, "'wood'", `'wood' is not one of the choices of "tube.material". It can be 'cold drawn seamless carbon steel' or 'chromium molybdenum steel'.`},
		{CodeFormulaChoice, 34, "'brass'", `'brass' is not one of the choices of "tube.material". It can be 'cold drawn seamless carbon steel' or 'chromium molybdenum steel'.`},
	}},
	{"tube.material == tube.part", []told{
		{CodeFormulaKind, 18, "tube.part", `"tube.part" is a free text, but "tube.material" is a choice from a list. Compare it with one of the choices written out between quotes.`},
	}},
	{"tube.material >= 'CDS'", []told{
		{CodeFormulaKind, 1, "tube.material >= 'CDS'", `"tube.material" is a choice from a list, which is neither more nor less than another. Only == and != compare them; for several values write in [...].`},
	}},
	{"harness['driver'].made >= '2027-01-01'", []told{
		{CodeFormulaKind, 1, "harness['driver'].made >= '2027-01-01'", `"harness['driver'].made" is a date, '2027-01-01' is a text. Write date('2027-01-01').`},
	}},
	{"harness['driver'].made >= 2027", []told{
		{CodeFormulaKind, 1, "harness['driver'].made >= 2027", `"harness['driver'].made" is a date, "2027" is a count. Write a day, as in date('2027-01-01'), or compare the year: year_of(harness['driver'].made).`},
	}},
	{"harness['driver'].made >= date('2027')", []told{
		{CodeFormulaDate, 32, "'2027'", "'2027' is more than one day, and a limit has to be one. Write its first or its last day: '2027-01-01' or '2027-12-31'."},
	}},
	{"harness['driver'].made >= date('2027-02-30')", []told{
		{CodeFormulaDate, 32, "'2027-02-30'", "February 2027 has 28 days, so there is no day 30. Write a day from 01 to 28."},
	}},
	{"harness['driver'].made >= date(2027)", []told{
		{CodeFormulaDate, 27, "date(2027)", `"date(2027)" is not a day written out. Write the day between quotes: date('2027-01-01').`},
	}},
	{"harness['driver'].made + 30 > on", []told{
		{CodeFormulaRefused, 1, "harness['driver'].made + 30", "Dates are not reckoned with by signs. Write days_after(harness['driver'].made, 30), or weeks_after, months_after or years_after."},
	}},
	{"on - harness['driver'].made > 365", []told{
		{CodeFormulaRefused, 1, "on - harness['driver'].made", "Dates are not subtracted with a sign. Write days_between(harness['driver'].made, on)."},
	}},
	{"x in 38..45", []told{
		{CodeFormulaBetween, 1, "x in 38..45", `a..b goes by whole counts, but "x" is a length. Write 38*mm <= x <= 45*mm.`},
	}},
	{"tube.bends in 3..1", []told{
		{CodeFormulaBetween, 15, "3..1", "No count lies between 3 and 1. Write the smaller count first."},
	}},
	{"n in 1.5..3", []told{
		{CodeFormulaBetween, 1, "n in 1.5..3", `a..b goes by whole counts, but "1.5" is a plain number. Write 1.5 <= n <= 3.`},
	}},
	{"1..3", []told{
		{CodeFormulaRefused, 2, "..", "a..b stands only behind in, on a count. Write x in 1..3 for a count, 38*mm <= x <= 45*mm for a figure."},
	}},
	{"a and x", []told{
		{CodeFormulaKind, 7, "x", `"x" is a length, where yes or no is wanted. Compare it with something, as in x >= 2*mm.`},
	}},
	{"not x", []told{
		{CodeFormulaKind, 5, "x", `"x" is a length, and only yes or no can be turned around. Compare it with something, as in x >= 2*mm.`},
	}},
	{"not a == b", []told{
		{CodeFormulaNot, 1, "not a == b", `"not" turns only what follows it at once, not the whole comparison. Write not (a == b).`},
	}},
	{"not tube.part in ['a']", []told{
		{CodeFormulaNot, 1, "not tube.part in ['a']", `"not" turns only what follows it at once, not the whole comparison. Write not (tube.part in ['a']).`},
	}},
	{"! a == b", []told{
		{CodeFormulaNot, 1, "! a == b", `"!" turns only what follows it at once, not the whole comparison. Write ! (a == b).`},
	}},
	{"(x ?? 3*mm) > 0", []told{
		{CodeFormulaOtherwise, 8, "*", `?? and "*" stand side by side without brackets. Put ?? in brackets of its own, and what stands behind it too when it is more than a name: (x ?? (3*mm)) >= y.`},
	}},
	{"seat['x'].cushion ?? 0 <= 50*mm", []told{
		{CodeFormulaOtherwise, 24, "<=", `?? and "<=" stand side by side without brackets. Put ?? in brackets of its own, and what stands behind it too when it is more than a name: (x ?? (3*mm)) >= y.`},
	}},
	{"a and b ?? a", []told{
		{CodeFormulaOtherwise, 7, "b ?? a", "?? stands without brackets of its own. Write (b ?? a)."},
	}},
	{"(tube.wall ?? 0) > 0", []told{
		{CodeFormulaOtherwise, 2, "tube.wall ?? 0", `"tube.wall" cannot be stated as none, so what stands behind ?? is never used. Write tube.wall alone.`},
	}},
	{"(x ?? 0) > 0", []told{
		{CodeFormulaOtherwise, 2, "x", `"x" is not read from the build sheet, so it is never stated as none. Write a particular that may be "none" before it.`},
	}},
	{"tube.wall == nil", []told{
		{CodeFormulaRefused, 14, "nil", "nil means that something is not there, and a comparison with it would say yes where nothing was recorded. Write recorded(x), or (x ?? y) for a particular that may be none."},
	}},
	{"a; b", []told{
		{CodeFormulaRefused, 2, ";", "A formula is one sentence; a semicolon stands only behind a let. Join conditions with and."},
	}},
	{"cage.tubes[1:2]", []told{
		{CodeFormulaRefused, 1, "cage.tubes[1:2]", "Members of a list have no numbers, so no stretch of it can be cut out. Choose members by what they are: filter(cage.tubes, .part == 'main hoop')."},
	}},
	{"any(cage.tubes, #index > 0)", []told{
		{CodeFormulaRefused, 17, "#index", "Members of a list have no numbers. # is the member itself."},
	}},
	{"reduce(list, #acc + #) > 3", []told{
		{CodeFormulaRefused, 1, "reduce", "The function reduce is not part of the formula language. Use sum, count, min, max, all or any."},
	}},
	{"now() > on", []told{
		{CodeFormulaRefused, 1, "now", "The function now is not part of the formula language. The day comes from the run: write on, or event.inspection_day."},
	}},
	{"$env", []told{
		{CodeFormulaRefused, 1, "$env", `"$env" is not part of the language. Every value is read by its own name.`},
	}},
	{"lower(tube.part) == 'a'", []told{
		{CodeFormulaRefused, 1, "lower", "The function lower is not part of the formula language. Texts are compared without case or extra blanks: use ==, in, contains, startsWith, endsWith or matches."},
	}},
	{"tube.part + 'x' == 'y'", []told{
		{CodeFormulaRefused, 1, "tube.part + 'x'", "Texts are not joined in a formula. Compare each of them by itself."},
	}},
	{"n % 2 == 0", []told{
		{CodeFormulaRefused, 3, "%", "% divides and keeps the rest, which no figure with a tolerance can do. Use round, floor or ceil; for per cent write 50*percent."},
	}},
	{"n & 2", []told{
		{CodeFormulaSyntax, 3, "&", `"&" is not an operator. Write and.`},
	}},
	{"x**0.5 > 0", []told{
		{CodeFormulaRefused, 4, "0.5", `"0.5" is not a whole power. Write sqrt(x).`},
	}},
	{"x**n > 0", []told{
		{CodeFormulaRefused, 4, "n", `"n" is not a whole power. Write a whole number, as in x**2.`},
	}},
	{"x**40 > 0", []told{
		{CodeFormulaConstant, 4, "40", `The power "40" is out of reach. Powers go from -30 to 30.`},
	}},
	{"x**9**9 > 0", []told{
		{CodeFormulaRefused, 4, "9**9", `"9**9" is not a whole power. Write a whole number, as in x**2.`},
	}},
	{"sqrt(x) > 0", []told{
		{CodeFormulaDimension, 1, "sqrt(x)", `"x" is a length, and its root measures nothing. A root is taken of a plain number, of an area, or of what else is a square.`},
	}},
	{"sin(45) > 0", []told{
		{CodeFormulaDimension, 5, "45", `"45" is a count, where sin takes an angle. Write 45*deg.`},
	}},
	{"round(x) > 0", []told{
		{CodeFormulaDimension, 7, "x", `"x" is a length, and it would be a different whole number in every unit. Say to what: round(x, 1*mm).`},
	}},
	{"round(x, 0*mm) > 0", []told{
		{CodeFormulaConstant, 10, "0*mm", `The step "0*mm" leads nowhere. Write a step greater than zero.`},
	}},
	{"arc(90*deg, x) > 0", []told{
		{CodeFormulaDimension, 13, "x", `"x" is a length, where arc takes an angle. Write arc(radius, angle).`},
	}},
	{"abs() > 0", []told{
		{CodeFormulaArguments, 1, "abs()", "abs has 0 arguments here. Write abs(figure)."},
	}},
	{"abs(a)", []told{
		{CodeFormulaKind, 5, "a", `"a" is yes or no, where abs takes a figure. Write abs(figure).`},
	}},
	{"min(x) > 0", []told{
		{CodeFormulaKind, 5, "x", `"x" is a length, and min goes through a list. Write a list, such as cage.tubes or [1, 2, 3].`},
	}},
	{"min(on, d) == on", []told{
		{CodeFormulaKind, 5, "on", `"on" is a date, where min takes a figure. Write earliest for dates.`},
		{CodeFormulaKind, 9, "d", `"d" is a date, where min takes a figure. Write earliest for dates.`},
	}},
	{"max(x, n) > 0", []told{
		{CodeFormulaDimension, 5, "x, n", `"x" is a length, "n" is a count. Only figures of one kind can be used together in max.`},
	}},
	{"days_after(on, 30*day) > on", []told{
		{CodeFormulaKind, 16, "30*day", `"30*day" is a time, where days_after takes a count. Write a number alone: days_after(date, days).`},
	}},
	{"days_after('2027-01-01', 3) > on", []told{
		{CodeFormulaKind, 12, "'2027-01-01'", "'2027-01-01' is a text, where days_after takes a date. Write date('2027-01-01')."},
	}},
	{"all(cage.tubes)", []told{
		{CodeFormulaArguments, 15, ")", "A list function needs a list and what to ask of each member. Write for example all(cage.tubes, .wall >= 2*mm)."},
	}},
	{"all(x, # > 0)", []told{
		{CodeFormulaKind, 5, "x", `"x" is a length, and all goes through a list. Write a list, such as cage.tubes or [1, 2, 3].`},
	}},
	{"all(harness['driver'], true)", []told{
		{CodeFormulaKind, 5, "harness['driver']", `"harness['driver']" is a harness, and all goes through a list. It is one part; ask its particulars directly.`},
	}},
	{"all(cage.tubes, .wall)", []told{
		{CodeFormulaKind, 17, ".wall", `".wall" is a length, where yes or no is wanted. Compare it with something, as in x >= 2*mm.`},
	}},
	{"all(cage.tubes, .width > 0)", []told{
		{CodeFormulaName, 18, "width", `The build sheet knows no "width" of a tube. There is: bends, corners, cut_on, ends, material, ordered, outside, part, through, wall and yield.`},
	}},
	{"all(harnesses, any(.straps, .standard == 'SFI 16.1'))", []told{
		{CodeFormulaElement, 29, ".standard", `Inside the inner list the dot means a strap, but ".standard" belongs to a harness of the outer list. Name the outer one before the inner list, let own = .standard; and write own here.`},
	}},
	{"all(cage.tubes, all(cage.feet, all(seats, all(harnesses, .made < on))))", []told{
		{CodeFormulaDeep, 64, "<", "List functions are nested more than 3 deep here. Make a term of the inner ones."},
	}},
	{"sum(cage.tubes) > 0", []told{
		{CodeFormulaKind, 5, "cage.tubes", `"cage.tubes" gives a list of tubes, and sum cannot be made of it. Say which figure of each: sum(map(cage.tubes, …)).`},
	}},
	{"sum(cage.tubes, .part) > 0", []told{
		{CodeFormulaKind, 17, ".part", `".part" gives a list of texts, and sum cannot be made of it. It takes a list of figures.`},
	}},
	{"max(map(harnesses, .made)) < on", []told{
		{CodeFormulaKind, 5, "map(harnesses, .made)", `"map(harnesses, .made)" gives a list of dates, and max cannot be made of it. Write latest.`},
	}},
	{"map(harnesses, .straps)", []told{
		{CodeFormulaKind, 16, ".straps", `".straps" is a list of straps, and a list is made of figures, dates, texts, or yes and no. Take a particular of it, or count, sum, any or all of an inner list.`},
	}},
	{"count([true, false]) > 1", []told{
		{CodeFormulaArguments, 1, "count([true, false])", "This does not say which members are counted. Write count(list, #) for those that are yes, len(list) for all."},
	}},
	{"[]", []told{
		{CodeFormulaKind, 1, "[]", "A list without members has no kind. Write at least one member."},
	}},
	{"[1*mm, 2]", []told{
		{CodeFormulaDimension, 8, "2", `"2" has no unit, but "1*mm" is a length. Write 2*mm.`},
	}},
	{"[harness['driver']]", []told{
		{CodeFormulaKind, 2, "harness['driver']", `A list written out holds figures, dates, texts or yes and no, but "harness['driver']" is a harness. For parts take their list, such as cage.tubes.`},
	}},
	{"x in x", []told{
		{CodeFormulaKind, 6, "x", `"x" is a length, not a list. Write a list, as in x in ['a', 'b'].`},
	}},
	{"x in (1*mm, 2*mm)", []told{
		{CodeFormulaSyntax, 6, "(", "A list stands between square brackets. Write in [x, y]."},
	}},
	{"tube.part in 'main hoop'", []told{
		{CodeFormulaKind, 14, "'main hoop'", "'main hoop' is a text, not a list. For a piece of a text write 'main hoop' contains tube.part."},
	}},
	{"tube.part matches '('", []told{
		{CodeFormulaPattern, 19, "'('", "'(' is not a pattern: missing closing ). Check its brackets, stars and backslashes."},
	}},
	{"tube.part contains tube.material", []told{
		{CodeFormulaKind, 20, "tube.material", `"tube.material" is not a text written out, and contains looks only for such. Write a text between quotes.`},
	}},
	{"harness['driver'].standard startsWith 'XYZ'", []told{
		{CodeFormulaChoice, 1, "harness['driver'].standard startsWith 'XYZ'", `None of the choices of "harness['driver'].standard" passes this. It can be 'FIA 8853-2016', 'FIA 8853/98' or 'SFI 16.1'.`},
	}},
	{"x / 0 > 0", []told{
		{CodeFormulaConstant, 1, "x / 0", `"x / 0" divides by zero. Write what it should be divided by.`},
	}},
	{"1e31*mm > x", []told{
		{CodeFormulaDigits, 1, "1e31", `The exponent of "1e31" is out of reach. Exponents go from -30 to 30.`},
	}},
	{"0x1F > n", []told{
		{CodeFormulaDigits, 1, "0x1F", `"0x1F" is not a decimal number. Write it with the digits 0 to 9.`},
	}},
	{"123456789012345678901234567890 > n", []told{
		{CodeFormulaDigits, 1, "123456789012345678901234567890", "A number is too large. Write it with an exponent or in a larger unit."},
	}},
	{"9**30*9**30*1e30*1e30*9**30*9**30*9**30*9**30*9**30*9**30*9**30*9**30 > n", []told{
		{CodeFormulaConstant, 1, "9**30*9**30*1e30*1e30*9**30*9**30*9**30*9**30*9**30*9**30*9**30", `"9**30*9**30*1e30*1e30*9**30*9**30*9**30*9**30*9**30*9**30*9…" is too large or too small to work out. Write the result itself.`},
	}},
	{"celsius(n) > celsius(3)", []told{
		{CodeFormulaKind, 9, "n", `"n" is not a number written out. Write the temperature as a plain number, as in celsius(135).`},
	}},
	{"recorded(x)", []told{
		{CodeFormulaKind, 10, "x", `"x" is not read from the build sheet as one particular. Name a particular of a part, as in recorded(seat.serial).`},
	}},
	{"recorded(cage)", []told{
		{CodeFormulaKind, 10, "cage", `"cage" is not read from the build sheet as one particular. For a part write fitted(cage).`},
	}},
	{"fitted(tube)", []told{
		{CodeFormulaKind, 8, "tube", `"tube" is not the name of a part. It stands for a part that is there; ask its particulars.`},
	}},
	{"in_band(table.hoop_sizes, x)", []told{
		{CodeFormulaKind, 9, "table.hoop_sizes", `The table "hoop_sizes" has no bands. Say in the table which columns are its bands.`},
	}},
	{"in_band(table.foot_area, x)", []told{
		{CodeFormulaDimension, 1, "in_band(table.foot_area, x)", `"x" is a length, "table.foot_area" is a mass. Only figures of one kind can be looked up in each other.`},
	}},
	{"table.hoop_size", []told{
		{CodeFormulaName, 7, "hoop_size", `This rulebook has no table "hoop_size". Did you mean hoop_sizes?`},
	}},
	{"any(table.hoop_sizes, .thickness > 0)", []told{
		{CodeFormulaName, 24, "thickness", `The table "hoop_sizes" has no column "thickness". There is: material, outside and wall.`},
	}},
	{"event.day > on", []told{
		{CodeFormulaName, 7, "day", `An event has no "day". There is: first_day, inspection_day and last_day.`},
	}},
	{"thick", []told{
		{CodeFormulaArguments, 1, "thick", `The term "thick" is worked out for one part, and none is named. Write thick(tube).`},
	}},
	{"thick(seat['x'])", []told{
		{CodeFormulaKind, 7, "seat['x']", `"seat['x']" is a seat, but the term thick is for a tube. Give it a tube.`},
	}},
	{"least_wall(tube) > 0", []told{
		{CodeFormulaArguments, 1, "least_wall(tube)", `The term "least_wall" is not worked out for a part. Write least_wall alone.`},
	}},
	{"let mm = 3; a", []told{
		{CodeFormulaReserved, 5, "mm", `"mm" is a unit. Choose another name.`},
	}},
	{"let tube = 3; a", []told{
		{CodeFormulaReserved, 5, "tube", `"tube" is a name that is already given here. Choose another name.`},
	}},
	{"let X = 3; a", []told{
		{CodeFormulaReserved, 5, "X", `"X" cannot be a name. Write small letters a to z, digits and underlines, a letter first.`},
	}},
	{"a ?: b", []told{
		{CodeFormulaRefused, 1, "a", "A condition without its middle says the same thing twice. Write a ? b : c with all three."},
	}},
	{"a ? 3*mm : 3*kg", []told{
		{CodeFormulaDimension, 1, "a ? 3*mm : 3*kg", `"3*mm" is a length, "3*kg" is a mass. Only figures of one kind can be chosen between.`},
	}},
	{"(a and b", []told{
		{CodeFormulaSyntax, 1, "(", "The bracket ( is not closed. Close it where it should end."},
	}},
	{"a and b)", []told{
		{CodeFormulaSyntax, 8, ")", "The bracket ) closes nothing. Take it out, or open it where it should begin."},
	}},
	{"a and", []told{
		{CodeFormulaSyntax, 3, "and", `The formula ends after "and". Write what should follow, or take it out.`},
	}},
	{"a b", []told{
		{CodeFormulaSyntax, 1, "a b", `"a b" has no operator between its two pieces. Put the operator that is meant between them, such as and, or, ==, >=, *.`},
	}},
	{"a AND b", []told{
		{CodeFormulaSyntax, 3, "AND", "The operator AND is written in small letters. Write and."},
	}},
	{".wall > 2*mm", []told{
		{CodeFormulaElement, 1, ".", `"." means the member of a list, and there is no list here. It stands only inside a list function, as in all(cage.tubes, .wall >= 2*mm). For a part write its name before the dot; a remark begins with //.`},
	}},
	{"tube.ordered == 3", []told{
		{CodeFormulaKind, 6, "ordered", `"tube.ordered" is a size, which the sheet writes as a pair. Read outside or wall.`},
	}},
	{"tube.wall.x > 0", []told{
		{CodeFormulaKind, 11, "x", `"tube.wall" is a length; nothing follows it after a dot. Take the dot and the name away.`},
	}},
	{"tube?.wall > 0", []told{
		{CodeFormulaRefused, 1, "tube?.wall", "?. would hide that something is not recorded. Write a plain dot; what is not recorded is named in the answer."},
	}},
	{"tube.wall() > 0", []told{
		{CodeFormulaRefused, 1, "tube.wall()", "Nothing is called behind a dot. Write the function first: floor(x), not x.floor()."},
	}},
	{"{a: 1}", []told{
		{CodeFormulaRefused, 1, "{a: 1}", "Groups in braces are not part of a formula. Put figures that belong together in a table of the rulebook."},
	}},
	{`'\q' == tube.part`, []told{
		{CodeFormulaSyntax, 3, "q", "A backslash in a text begins an escape, and this is not one. Write \\\\ for the backslash itself, or put a pattern between backquotes: `\\d+`."},
	}},
	{"mil > x", []told{
		{CodeFormulaName, 1, "mil", `"mil" can be two things. Write mm for a millimetre, thou for a thousandth of an inch.`},
	}},
	{"x > 3*gal", []told{
		{CodeFormulaName, 7, "gal", `"gal" can be two things. Write us_gal or imp_gal.`},
	}},
	{"x > 3*m", []told{
		{CodeFormulaName, 7, "m", `"m" is not the name of anything. Write metre for the unit.`},
	}},
	{"x", []told{
		{CodeFormulaResult, 1, "x", "The formula yields a length, but yes or no is wanted here. Write what must hold, with a comparison: x >= 2*mm."},
	}},
	{"f(3)", []told{
		{CodeFormulaName, 1, "f", `There is no function "f". The reference lists the functions; a unit stands behind a *, as in 45*mm.`},
	}},
	{"x(3*mm)", []told{
		{CodeFormulaName, 1, "x", `"x" is a name, not a function. Write the operator that is meant before the bracket, such as *.`},
	}},
	{"sqt(x) > 0", []told{
		{CodeFormulaName, 1, "sqt", `There is no function "sqt". Did you mean sqrt?`},
	}},
	{"if a { b }", []told{
		{CodeFormulaSyntax, 1, "if", "This condition has no end. Write both branches: if a { x } else { y }."},
	}},
	{"1 < tube.outside < 45", []told{
		{CodeFormulaDimension, 1, "1", `"1" has no unit, but "tube.outside" is a length. Write 1*mm.`},
		{CodeFormulaDimension, 20, "45", `"45" has no unit, but "tube.outside" is a length. Write 45*mm.`},
	}},
	{"cage == cage", []told{
		{CodeFormulaKind, 1, "cage == cage", `"cage" is a cage, and that is not compared as a whole. Compare particulars of it, or ask the members of a list.`},
	}},
	{"-a", []told{
		{CodeFormulaKind, 2, "a", `"a" is yes or no, and only a number can have a sign. Take the sign away.`},
	}},
	{"x * x > 3*mm", []told{
		{CodeFormulaDimension, 1, "x * x > 3*mm", `"x * x" is an area, "3*mm" is a length. Only figures of one kind can be compared. Did you mean 3*sq_mm?`},
	}},
	{"tube.wall > = 2*mm", []told{
		{CodeFormulaSyntax, 11, "> =", "A blank parts the operator >=. Write >=."},
	}},
	{"tube.part is 'main hoop'", []told{
		{CodeFormulaSyntax, 11, "is", "The word is is no operator of a formula. Write == for equal."},
	}},
	{"x > 2*mm, a", []told{
		{CodeFormulaSyntax, 9, ",", "A comma joins nothing here. Write and between two conditions, a point in a number."},
	}},
	{"[2, 3]*mm", []told{
		{CodeFormulaKind, 1, "[2, 3]", `"[2, 3]" is a list of counts. A unit stands with each member of a list: [45*mm, 50*mm].`},
	}},
	{"fire_system.temperature >= 135", []told{
		{CodeFormulaDimension, 28, "135", `"135" has no unit, but "fire_system.temperature" is a temperature. Write celsius(135) or fahrenheit(135).`},
	}},
	{"club.x > 3", []told{
		{CodeFormulaName, 1, "club", "This rulebook adds no particulars to the car itself. Declare them in particular blocks."},
	}},
	{"harness['driver'].made >= '2020'", []told{
		{CodeFormulaKind, 1, "harness['driver'].made >= '2020'", `"harness['driver'].made" is a date, '2020' is a text. Write a day, as in date('2027-01-01').`},
	}},
	{"tube.wall >= '2.5 mm'", []told{
		{CodeFormulaKind, 1, "tube.wall >= '2.5 mm'", `"tube.wall" is a length, '2.5 mm' is a text. Write 2.5*mm.`},
	}},
}
