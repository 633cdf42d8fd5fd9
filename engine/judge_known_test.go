package engine

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// TestFoundByJudges holds answers that a judge once found wrong.
func TestFoundByJudges(t *testing.T) {
	for _, x := range []struct {
		why     string
		formula string
		given   []string
		want    quantity.Truth
	}{
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
			"where the arguments of one function end is part of what a comparison is",
			"max(min(x, y), z, w) >= 2*mm and not (max(min(x, y, z), w) >= 2*mm)",
			[]string{"x", "1 to 3 mm", "y", "1 to 3 mm", "z", "1 to 3 mm", "w", "1 to 3 mm"}, quantity.Open,
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
	} {
		a, err := try(x.formula, given(t, x.given...)...)
		require.NoError(t, err, x.formula)
		assert.Equal(t, x.want, a.Truth, "%s: %s with %v", x.why, x.formula, x.given)
	}
}
