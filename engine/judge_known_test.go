package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// A known is a formula with the answer that it must get, and why.
type known struct {
	why     string
	formula string
	given   []string
	want    quantity.Truth
}

func holdKnown(t *testing.T, all []known) {
	t.Helper()
	for _, x := range all {
		a, err := try(x.formula, given(t, x.given...)...)
		require.NoError(t, err, x.formula)
		assert.Equal(t, x.want, a.Truth, "%s: %s with %v", x.why, x.formula, x.given)
	}
}

// TestTraps holds answers that a slip would get wrong where random draws seldom look.
func TestTraps(t *testing.T) {
	holdKnown(t, []known{
		{
			"the least of a list is not that of a member who may not be in it",
			"min(filter([4*mm, 2*mm], # >= 3*mm or a)) < 3*mm", []string{"a", "truth"}, quantity.Open,
		},
		{
			"nor the greatest",
			"max(filter([4*mm, 6*mm], # <= 5*mm or a)) > 5*mm", []string{"a", "truth"}, quantity.Open,
		},
		{
			"a sure member bounds the least from above",
			"min(filter([4*mm, 2*mm], # >= 3*mm or a)) <= 4*mm", []string{"a", "truth"}, quantity.Yes,
		},
		{
			"the label of a day that is not known may end after every day that it can be",
			"d <= date('2024-02-29') and end_of_label(d) > date('2024-02-29')", []string{"d", "date"}, quantity.Open,
		},
		{
			"a label ends no earlier than its day",
			"d > date('2024-02-29') and end_of_label(d) <= date('2024-02-29')", []string{"d", "date"}, quantity.No,
		},
		{
			"a figure is not both above and below the same one",
			"count([x, y], # > 45*mm) == 2 and min(x, y) <= 45*mm", []string{"x", "44 to 46 mm", "y", "44 to 46 mm"}, quantity.No,
		},
		{
			"the first of two that may be there is either, or none",
			"first(filter([2*mm, 4*mm], a)) == 2*mm", []string{"a", "truth"}, quantity.Open,
		},
	})
}

// TestFoundByJudges holds answers that a judge once found wrong.
func TestFoundByJudges(t *testing.T) {
	holdKnown(t, []known{
		{
			"what is looked for is worked out beside the list, not on top of it",
			"last([x, y]) in map([x, x, x], # + 1*mm)", []string{"x", "1 mm", "y", "5 mm"}, quantity.No,
		},
		{
			"a named sum is not lost when a comparison with it is surveyed",
			"let total = sum(map([x, y], # * 2)); (total > 6*mm and a) or (total > 6*mm and not a) or total <= 6*mm",
			[]string{"x", "1 to 2 mm", "y", "1 to 2 mm", "a", "truth"}, quantity.Yes,
		},
		{
			"the label goes with a date through a name",
			"let made = d; end_of_label(made) == date('2027-03-31')", []string{"d", "2027-03"}, quantity.Yes,
		},
		{
			"and through a condition",
			"end_of_label(a ? d : e) == date('2027-03-31')", []string{"d", "2027-03", "e", "2027-03", "a", "truth"}, quantity.Yes,
		},
		{
			"and through a list",
			"all([d, e], end_of_label(#) == date('2027-03-31')) and end_of_label(first([d, e])) == date('2027-03-31')",
			[]string{"d", "2027-03", "e", "2027-03"}, quantity.Yes,
		},
		{
			"a text that is held against another by a name can be that other",
			"t == 'z' ? false : (let name = t; name == 'a')", []string{"t", "text"}, quantity.Open,
		},
		{
			"or by a condition",
			"t == 'z' ? false : t == (a ? 'x' : 'y')", []string{"t", "text", "a", "truth"}, quantity.Open,
		},
		{
			"or in a list",
			"t == 'z' ? false : any([t], # == 'x')", []string{"t", "text"}, quantity.Open,
		},
		{
			"what has no upper end is not halved for ever",
			"one([1, 2], a and any(filter([45*mm, 50*mm], a), # >= sum([x, y])))", []string{"a", "truth", "x", "length", "y", "length"}, quantity.Open,
		},
		{
			"a median within a median leaves the outer one alone",
			"median([1*mm, median([x, y])]) == 3*mm", []string{"x", "4 mm", "y", "6 mm"}, quantity.Yes,
		},
		{
			"nor is one that the sheet states left out",
			"t == 'z' ? false : t == s", []string{"t", "text", "s", "a"}, quantity.Open,
		},
		{
			"either of two texts is neither of others",
			"t == (a ? 'x' : 'y')", []string{"t", "z", "a", "truth"}, quantity.No,
		},
		{
			"either of two numbers is not one between them",
			"(a ? 2*mm : 4*mm) == 3*mm", []string{"a", "truth"}, quantity.No,
		},
		{
			"a member that may not be in a list is in it with all of itself or not at all",
			"sum(filter([2*mm, 5*mm], a)) in [0*mm, 7*mm]", []string{"a", "truth"}, quantity.Yes,
		},
	})
}

// TestSignatures holds that comparisons have one signature where they are the same or each
// other's negation, and not where they differ.
func TestSignatures(t *testing.T) {
	names := given(t, "x", "1 to 3 mm", "y", "1 to 3 mm", "z", "1 to 3 mm", "p", "0 to 9", "q", "0 to 9")
	signed := func(formula string) string {
		made, m := onEmptyBench(t, formula, names)
		return signature(m, made)
	}
	for _, same := range [][2]string{
		{"x >= y", "x < y"}, {"x >= y", "y <= x"}, {"x > y", "y < x"}, {"x > y", "x <= y"}, {"x == y", "y == x"}, {"x == y", "x != y"},
		{"2*mm <= x", "x >= 2*mm"}, {"2*mm <= x", "x < 0.2*cm"}, {"all([x, y], # >= z)", "all([x, y], z <= #)"},
	} {
		require.Equal(t, signed(same[0]), signed(same[1]), "%v", same)
	}
	for _, different := range [][2]string{
		{"x >= y", "x <= y"}, {"x >= y", "x == y"}, {"x >= 2*mm", "x >= 3*mm"}, {"x >= y", "x >= z"},
		{"max(min(x, y, z), z) >= x", "max(min(x, y), z, z) >= x"}, {"floor(floor(p, 2)) == q", "floor(floor(p), 2) == q"},
		{"x - y >= z", "y - x >= z"}, {"sum([x, y]) >= z", "sum([x, y, y]) >= z"}, {"p**2 >= q", "p**3 >= q"}, {"min([x, y]) >= z", "max([x, y]) >= z"},
	} {
		require.NotEqual(t, signed(different[0]), signed(different[1]), "%v", different)
	}
}
