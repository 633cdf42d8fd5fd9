package rules

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// clauseScope is the scope of a clause that runs over tubes, with two terms.
func clauseScope(t *testing.T) *Scope {
	t.Helper()
	scope := testScope()
	tube := Type{Kind: Part, PartType: scope.names.vocabulary.Root.PartNamed("cage").PartNamed("tube")}
	given := &Binding{Name: "tube", Is: tube}
	thick, faults := CheckText("tube.wall >= least_wall", scope.With(given).WithTerms(&Term{Name: "least_wall", Means: formulaOf(t, scope, "2.5*mm")}), Type{Kind: Truth})
	require.Empty(t, faults)
	scope = scope.WithTerms(
		&Term{Name: "least_wall", Means: formulaOf(t, scope, "2.5*mm")},
		&Term{Name: "thick", Given: given, Means: &Formula{Tree: thick}},
		&Term{Name: "broken", Means: &Formula{}})
	return scope.With(&Binding{Name: "tube", Is: tube}).WithGiven(testGiven()...)
}

// testGiven is the names that formulas of the tests are handed from outside.
func testGiven() []GivenName {
	count := Type{Kind: Number, Whole: true}
	return []GivenName{
		{"x", Type{Kind: Number, Dimension: quantity.Length}}, {"n", count},
		{"a", Type{Kind: Truth}}, {"b", Type{Kind: Truth}},
		{"d", Type{Kind: Date}}, {"list", Type{Kind: List, Item: &count}},
	}
}

func formulaOf(t *testing.T, scope *Scope, source string) *Formula {
	t.Helper()
	tree, faults := CheckText(source, scope, Type{})
	require.Empty(t, faults, source)
	return &Formula{Source: source, Tree: tree}
}

// TestFormulasToTrees holds what formulas become: shape and type.
func TestFormulasToTrees(t *testing.T) {
	scope := clauseScope(t)
	for _, x := range soundFormulas {
		t.Run(x.source, func(t *testing.T) {
			tree, faults := CheckText(x.source, scope, Type{})
			require.Empty(t, faults)
			require.Equal(t, x.shape, shape(tree))
			require.Equal(t, x.is, tree.Type().String())
			require.Equal(t, x.source, x.source[tree.Span().From:tree.Span().To], "the span covers the whole formula")
		})
	}
}

// soundFormulas is formulas with what they become.
var soundFormulas = []struct{ source, shape, is string }{
	// Figures written out.
	{"45*mm", "45 mm", "a length"},
	{"-3*mm", "-3 mm", "a length"},
	{"1.75*inch", "1.75 in", "a length"},
	{"mm*45", "45 mm", "a length"},
	{"350*MPa", "350 MPa", "a pressure"},
	{"90*km/hour", "90 km/h", "a speed"},
	{"11320*mm**4", "11320 mm4", "a second moment"},
	{"120*cm^2", "120 cm2", "an area"},
	{"40*sq_cm", "40 cm2", "an area"},
	{"5*ft + 2.5*inch", "5.20833333 ft", "a length"},
	{"45.0*mm", "45.0 mm", "a length"},
	{"50*percent", "50 %", "a plain number"},
	{"2/3", "0.666666667", "a plain number"},
	{"3*12", "36", "a count"},
	{"1.5e3", "1500", "a plain number"},
	{"2*pi", "6.28318531", "a plain number"},
	{"celsius(135)", "135 degC", "a temperature"},
	{"fahrenheit(-40.5)", "-40.5 degF", "a temperature"},
	{"date('2027-03-14')", "2027-03-14", "a date"},
	// Reading.
	{"car.weighed_mass", "car.weighed_mass", "a mass"},
	{"cage.certificate.number", "cage.certificate.number", "a text"},
	{`harness["driver"].standard`, "harness[driver].standard", "a choice from a list"},
	{"cage.tube['12'].wall", "cage.tube[12].wall", "a length"},
	{"harness['Co-Driver'].straps", "harness[co-driver].straps", "a list of straps"},
	{"tube.bends", "tube.bends", "a count"},
	{"on", "on", "a date"},
	{"event.first_day", "first day", "a date"},
	{"table.hoop_sizes", "table hoop_sizes", "a list of rows of the table hoop_sizes"},
	{"least_wall", "term least_wall", "a length"},
	{"thick(tube)", "term thick(tube)", "yes or no"},
	{"d", "given 4", "a date"},
	// Comparing.
	{"tube.outside >= 45*mm", ">=(tube.outside, 45 mm)", "yes or no"},
	{"tube.wall > 0", ">(tube.wall, 0)", "yes or no"},
	{"0 < x < 3*mm", "and(<(0, given 0), <(given 0, 3 mm))", "yes or no"},
	{"38*mm <= x <= 45*mm", "and(<=(38 mm, given 0), <=(given 0, 45 mm))", "yes or no"},
	{"tube.part == ' Main  HOOP '", "==(tube.part, 'main hoop')", "yes or no"},
	{"tube.material == 'cds'", "==(tube.material, 'cold drawn seamless carbon steel'!)", "yes or no"},
	{"'25crmo4' != tube.material", "!=('chromium molybdenum steel'!, tube.material)", "yes or no"},
	{"harness['driver'].standard in ['8853-1998', 'SFI 16.1']", "in(harness[driver].standard, list('FIA 8853/98'!, 'SFI 16.1'!))", "yes or no"},
	{"tube.part not in ['main hoop', 'front hoop']", "not(in(tube.part, list('main hoop', 'front hoop')))", "yes or no"},
	{"n in [1, 2]", "in(given 1, list(1, 2))", "yes or no"},
	{"n in 1..3", "between(given 1, 1, 3)", "yes or no"},
	{"x in map(cage.tubes, .outside)", "in(given 0, map(cage.tubes, #.outside))", "yes or no"},
	{"a == b", "==(given 2, given 3)", "yes or no"},
	{"cage.modified == true", "==(cage.modified, true)", "yes or no"},
	{"harness['driver'].made < date('2027-01-01')", "<(harness[driver].made, 2027-01-01)", "yes or no"},
	{`tube.part matches "^Main\\s"`, `matches ^Main\s(tube.part)`, "yes or no"},
	{"tube.part contains 'Hoop' and not (tube.part endsWith 'x')", "and(contains hoop(tube.part), not(endsWith x(tube.part)))", "yes or no"},
	{"harness['driver'].standard startsWith 'FIA 8853'", "in(harness[driver].standard, list('FIA 8853-2016'!, 'FIA 8853/98'!))", "yes or no"},
	// Logic.
	{"a and b && a", "and(given 2, given 3, given 2)", "yes or no"},
	{"a or (b or a) and b", "or(given 2, and(or(given 3, given 2), given 3))", "yes or no"},
	{"!a", "not(given 2)", "yes or no"},
	{"not a and b", "and(not(given 2), given 3)", "yes or no"},
	{"(not a) == b", "==(not(given 2), given 3)", "yes or no"},
	{"a ? 3*mm : x", "if(given 2, 3 mm, given 0)", "a length"},
	{"a ? 0 : x", "if(given 2, 0, given 0)", "a length"},
	{"if a { b } else { true }", "if(given 2, given 3, true)", "yes or no"},
	{"tube.material == (a ? 'CDS' : '25CrMo4')", "==(tube.material, if(given 2, 'cold drawn seamless carbon steel'!, 'chromium molybdenum steel'!))", "yes or no"},
	{"let k = tube.wall; k >= 2*mm", "let k(tube.wall, >=(k, 2 mm))", "yes or no"},
	// Absence.
	{"(seat['x'].cushion ?? 0) <= 50*mm", "<=(??(seat[x].cushion, 0), 50 mm)", "yes or no"},
	{"recorded(tube.wall)", "recorded(tube.wall)", "yes or no"},
	{"fitted(fire_system)", "fitted(fire_system)", "yes or no"},
	{"fitted(harness['driver'])", "fitted(harness[driver])", "yes or no"},
	{"fitted(cage.tube)", "fitted(cage.tubes)", "yes or no"},
	// Lists.
	{"all(cage.tubes, .wall >= 2*mm)", "all(cage.tubes, >=(#.wall, 2 mm))", "yes or no"},
	{"any(cage.tubes, {#.wall >= 2*mm})", "any(cage.tubes, >=(#.wall, 2 mm))", "yes or no"},
	{"none(list, # > 3)", "none(given 5, >(#, 3))", "yes or no"},
	{"one([true, false], #)", "one(list(true, false), #)", "yes or no"},
	{"count(cage.tubes, .bends > 0) >= 2", ">=(count(filter(cage.tubes, >(#.bends, 0))), 2)", "yes or no"},
	{"len(cage.tubes)", "count(cage.tubes)", "a count"},
	{"sum(cage.feet, .area)", "sum(map(cage.feet, #.area))", "an area"},
	{"sum(list)", "sum(given 5)", "a count"},
	{"mean(list)", "mean(given 5)", "a plain number"},
	{"median(map(cage.tubes, .wall))", "median(map(cage.tubes, #.wall))", "a length"},
	{"min(map(cage.tubes, .wall))", "min(map(cage.tubes, #.wall))", "a length"},
	{"max(x, 3*mm, 0)", "max(given 0, 3 mm, 0)", "a length"},
	{"min(n, list)", "min(given 1, min(given 5))", "a count"},
	{"find(cage.tubes, .part == 'main hoop').wall", "first(filter(cage.tubes, ==(#.part, 'main hoop'))).wall", "a length"},
	{"last(cage.tubes).wall", "last(cage.tubes).wall", "a length"},
	{"cage.tubes | filter(.bends == 0) | len()", "count(filter(cage.tubes, ==(#.bends, 0)))", "a count"},
	{"all(harnesses, all(.straps, .width >= 70*mm))", "all(harnesses, all(#.straps, >=(#.width, 70 mm)))", "yes or no"},
	{"all(harnesses, let m = .made; any(.straps, .not_after > m))", "all(harnesses, let m(#.made, any(#.straps, >(#.not_after, m))))", "yes or no"},
	{"any(table.hoop_sizes, tube.outside >= .outside and tube.wall >= .wall)", "any(table hoop_sizes, and(>=(tube.outside, #.outside), >=(tube.wall, #.wall)))", "yes or no"},
	{"any(table.hoop_sizes, .material == 'CDS')", "any(table hoop_sizes, ==(#.material, 'cold drawn seamless carbon steel'!))", "yes or no"},
	{"first(in_band(table.foot_area, car.weighed_mass)).area", "first(in_band foot_area(car.weighed_mass)).area", "an area"},
	{"latest(map(harnesses, .made))", "max(map(harnesses, #.made))", "a date"},
	// Functions.
	{"abs(x - 3*mm)", "abs(-(given 0, 3 mm))", "a length"},
	{"sqrt(car.length * x)", "sqrt(*(car.length, given 0))", "a length"},
	{"round(car.weighed_mass, 1*lb)", "round(car.weighed_mass, 1 lb)", "a mass"},
	{"floor(car.weighed_mass / (10*kg))", "floor(/(car.weighed_mass, 10 kg))", "a count"},
	{"hypot(x, car.length)", "hypot(given 0, car.length)", "a length"},
	{"sin(30*deg)", "sin(30 deg)", "a plain number"},
	{"atan2(x, car.length) <= 45*deg", "<=(atan2(given 0, car.length), 45 deg)", "yes or no"},
	{"arc(3*tube.outside, cage.bend_angle)", "arc(*(3, tube.outside), cage.bend_angle)", "a length"},
	{"x**2", "power 2(given 0)", "an area"},
	{"tube.wall ^ -1", "power -1(tube.wall)", "a 1 / length"},
	{"years_after(end_of_label(harness['driver'].made), 5) >= on", ">=(years_after(end_of_label(harness[driver].made), 5), on)", "yes or no"},
	{"end_of_label(week_year(car.chassis)) >= week_year('4308')", ">=(end_of_label(week_year(car.chassis)), week_year('4308'))", "yes or no"},
	{"days_after(on, -n)", "days_after(on, -(given 1))", "a date"},
	{"earliest(on, d)", "earliest(on, given 4)", "a date"},
	{"year_of(on) - 5", "-(year_of(on), 5)", "a count"},
	{"months_between(d, on) < 24", "<(months_between(given 4, on), 24)", "yes or no"},
}
