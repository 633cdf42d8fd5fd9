package engine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// given makes names from written figures, truths and missing kinds.
func given(t *testing.T, pairs ...string) []Given {
	t.Helper()
	var all []Given
	for i := 0; i < len(pairs); i += 2 {
		name, what := pairs[i], pairs[i+1]
		switch what {
		case "yes":
			all = append(all, GivenTruth(name, quantity.Yes))
		case "no":
			all = append(all, GivenTruth(name, quantity.No))
		case "truth", "text", "date", "count", "number", "length", "mass":
			g, err := GivenMissing(name, what)
			require.NoError(t, err)
			all = append(all, g)
		default:
			if d, fault := quantity.ParseDays(what); fault == nil {
				all = append(all, GivenDate(name, d))
				continue
			}
			f, fault := quantity.ParseFigure(what)
			if fault != nil {
				all = append(all, GivenText(name, what))
				continue
			}
			all = append(all, GivenNumber(name, f.Range, f.Unit.Dimension(), false, f.Unit))
		}
	}
	return all
}

// TestSettled holds formulas that ranges alone leave open because one particular occurs
// twice, or because what is behind them has few values.
func TestSettled(t *testing.T) {
	for _, x := range []struct {
		formula string
		given   []string
		want    quantity.Truth
	}{
		{"(m <= 1000*kg and od >= 40*mm) or (m > 1000*kg and od >= 45*mm)", []string{"m", "1000 kg +/- 5 kg", "od", "46 mm"}, quantity.Yes},
		{"(m <= 1000*kg and od >= 40*mm) or (m > 1000*kg and od >= 45*mm)", []string{"m", "1000 kg +/- 5 kg", "od", "44 mm"}, quantity.Open},
		{"(m <= 1000*kg and od >= 40*mm) or (m > 1000*kg and od >= 45*mm)", []string{"m", "1000 kg +/- 5 kg", "od", "39 mm"}, quantity.No},
		{"a or not a", []string{"a", "truth"}, quantity.Yes},
		{"a and not a", []string{"a", "truth"}, quantity.No},
		{"(a and b) or (a and not b) or not a", []string{"a", "truth", "b", "truth"}, quantity.Yes},
		{"x >= x", []string{"x", "length"}, quantity.Yes},
		{"x != x", []string{"x", "length"}, quantity.No},
		{"x < y or y <= x", []string{"x", "length", "y", "length"}, quantity.Yes},
		{"x < y and x >= y", []string{"x", "44 to 46 mm", "y", "44 to 46 mm"}, quantity.No},
		{"t == 'a' or t != 'a'", []string{"t", "text"}, quantity.Yes},
		{"t == 'a' and t == 'b'", []string{"t", "text"}, quantity.No},
		{"t matches '^a' or not (t matches '^a')", []string{"t", "text"}, quantity.Yes},
		{"x*x >= 0*mm*mm", []string{"x", "-3 to 2 mm"}, quantity.Yes},
		{"x*x - 4*x + 5 >= 0.9", []string{"x", "0 to 4"}, quantity.Yes},
		{"x - x == 0*mm", []string{"x", "0 to 4 mm"}, quantity.Open},
		{"(x < 3*mm ? 2*mm : x) >= 2*mm", []string{"x", "0 to 9 mm"}, quantity.Yes},
		{"let wide = x >= 45*mm; wide or not wide", []string{"x", "44 to 46 mm"}, quantity.Yes},
		{"any([x, y], # >= 45*mm) or all([x, y], # < 45*mm)", []string{"x", "44 to 46 mm", "y", "44 to 46 mm"}, quantity.Yes},
		{"count([x, y], # >= 45*mm) + count([x, y], # < 45*mm) == 2", []string{"x", "44 to 46 mm", "y", "44 to 46 mm"}, quantity.Yes},
		{"end_of_label(d) == date('2027-03-31')", []string{"d", "2027-03"}, quantity.Yes},
		{"d <= date('2027-03-15') or d > date('2027-03-15')", []string{"d", "2027-03"}, quantity.Yes},
		{"months_between(d, date('2027-03-31')) == 0", []string{"d", "2027-03"}, quantity.Yes},
	} {
		a, err := try(x.formula, given(t, x.given...)...)
		require.NoError(t, err, x.formula)
		require.Equal(t, x.want, a.Truth, "%s with %v", x.formula, x.given)
	}
}

// TestMissingNamed holds which names are told: only those whose value alone can still
// change the answer.
func TestMissingNamed(t *testing.T) {
	for _, x := range []struct {
		formula string
		given   []string
		want    []string
	}{
		{"a and b", []string{"a", "yes", "b", "truth"}, []string{"b"}},
		{"a and x <= 5*mm", []string{"a", "truth", "x", "4 mm"}, []string{"a"}},
		{"(a and b) or (a and not b)", []string{"a", "truth", "b", "truth"}, []string{"a"}},
		{"a or (x > 3*mm and b)", []string{"a", "no", "b", "truth", "x", "length"}, []string{"x", "b"}},
		{"x > y", []string{"x", "length", "y", "length"}, []string{"x", "y"}},
		{"x > y", []string{"x", "length", "y", "3 mm"}, []string{"x"}},
	} {
		a, err := try(x.formula, given(t, x.given...)...)
		require.NoError(t, err, x.formula)
		require.Equal(t, quantity.Open, a.Truth, x.formula)
		require.Equal(t, x.want, a.Missing, x.formula)
	}
}
