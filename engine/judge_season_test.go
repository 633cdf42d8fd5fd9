package engine

import (
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// drawDate draws a date in one of the precisions in which labels have it.
func drawDate(r *rand.Rand) string {
	year, month, day := 2021+r.IntN(9), 1+r.IntN(12), 1+r.IntN(28)
	switch r.IntN(3) {
	case 0:
		return fmt.Sprintf("%d", year)
	case 1:
		return fmt.Sprintf("%d-%02d", year, month)
	}
	return fmt.Sprintf("%d-%02d-%02d", year, month, day)
}

// drawDated draws a sheet of a seat and a harness with dates; some are not recorded.
func drawDated(r *rand.Rand) string {
	var b strings.Builder
	b.WriteString("car \"drawn\" {\n}\n")
	date := func(name string) {
		if r.IntN(8) > 0 {
			fmt.Fprintf(&b, "  %s = %q\n", name, drawDate(r))
		}
	}
	b.WriteString("seat \"driver\" {\n")
	date("not_after")
	b.WriteString("}\nharness \"driver\" {\n")
	for _, strap := range []string{"left shoulder", "right shoulder", "left lap"} {
		fmt.Fprintf(&b, "strap %q {\n", strap)
		date("first_used")
		b.WriteString("}\n")
	}
	b.WriteString("}\n")
	return b.String()
}

// drawOnDays draws a condition that reads the day of the check.
func drawOnDays(r *rand.Rand, depth int) string {
	straps, seat := "harness['driver'].straps", "seat['driver'].not_after"
	day := func() string {
		return fmt.Sprintf("date('%d-%02d-%02d')", 2024+r.IntN(9), 1+r.IntN(12), 1+r.IntN(28))
	}
	if depth > 0 {
		a, b := drawOnDays(r, depth-1), drawOnDays(r, depth-1)
		switch r.IntN(4) {
		case 0:
			return fmt.Sprintf("(%s) and (%s)", a, b)
		case 1:
			return fmt.Sprintf("(%s) or (%s)", a, b)
		case 2:
			return fmt.Sprintf("not (%s)", a)
		default:
			return fmt.Sprintf("(%s ? (%s) : (%s))", drawOnDays(r, 0), a, b)
		}
	}
	n := 1 + r.IntN(5)
	switch r.IntN(10) {
	case 0:
		return fmt.Sprintf("all(%s, on <= end_of_year(years_after(.first_used, %d)))", straps, n)
	case 1:
		return "on <= end_of_label(" + seat + ")"
	case 2:
		return fmt.Sprintf("on <= years_after(%s, %d)", seat, n)
	case 3:
		return fmt.Sprintf("days_between(%s, on) <= %d", seat, r.IntN(1500))
	case 4:
		return fmt.Sprintf("all(%s, let age = years_between(.first_used, on); age <= %d)", straps, n)
	case 5:
		return fmt.Sprintf("count(%s, on <= months_after(.first_used, %d)) >= %d", straps, 12*n, 1+r.IntN(3))
	case 6:
		return fmt.Sprintf("year_of(on) == %d", 2025+r.IntN(8))
	case 7:
		return fmt.Sprintf("on < %s", day())
	case 8:
		return fmt.Sprintf("earliest(map(%s, .first_used)) >= years_after(event.first_day, -%d)", straps, n)
	default:
		return fmt.Sprintf("abs(days_between(on, %s)) > %d", day(), 1+r.IntN(400))
	}
}

// drawDatedBook draws a rulebook of clauses that read days, some in force for a time only.
func drawDatedBook(r *rand.Rand) string {
	var b strings.Builder
	b.WriteString("rulebook \"Drawn\" {\n  edition = \"1\"\n}\nchapter \"1\" {\n  title = \"One\"\n")
	for i := range 3 {
		fmt.Fprintf(&b, "  clause \"1.%d\" {\n    title = \"One\"\n    concern = \"safety\"\n    demand = \"%s\"\n", i+1, drawOnDays(r, r.IntN(3)))
		if r.IntN(3) == 0 {
			fmt.Fprintf(&b, "    from = \"%d-%02d-15\"\n", 2024+r.IntN(4), 1+r.IntN(12))
		}
		if r.IntN(3) == 0 {
			fmt.Fprintf(&b, "    until = \"%d-%02d-15\"\n", 2029+r.IntN(4), 1+r.IntN(12))
		}
		b.WriteString("  }\n")
	}
	fmt.Fprintf(&b, "  clause \"1.9\" {\n    title = \"Each\"\n    concern = \"safety\"\n    across = \"strap in harness['driver'].straps\"\n    where = \"recorded(strap.first_used)\"\n    demand = \"on <= end_of_label(years_after(strap.first_used, %d))\"\n  }\n}\n", 1+r.IntN(6))
	return b.String()
}

// outcomeOf is what a clause comes to, subject by subject, in words.
func outcomeOf(c *ClauseResult) string {
	if c == nil {
		return "not in force"
	}
	text := c.Verdict.String()
	for _, s := range c.Subjects {
		text += "; " + s.Name + " " + s.Verdict.String()
	}
	return text
}

// TestJudgeStretches holds stretches of days against a check on every single day of ten
// years, on drawn rulebooks and sheets, and the evaluations that they take.
func TestJudgeStretches(t *testing.T) {
	t.Parallel()
	s := sit(t)
	from, _ := quantity.CivilDay(2024, 3, 1)
	until := from.PlusYears(10)
	s.draws(1, func(r *rand.Rand, seed uint64) {
		text, sheetText := drawDatedBook(r), drawDated(r)
		p := programOf(s, text)
		car := p.Car(sheetOf(s, sheetText))
		for _, clause := range p.clauses {
			line := &timeline{editions: Editions{{p, car}}}
			k := p.checker(car, Request{})
			k.editions = line.editions
			stretches, _ := line.stretches(k, clause, from, until)
			if line.evaluations > 2*line.cuts+2 {
				s.fail("seed %d: %d evaluations for %d cuts", seed, line.evaluations, line.cuts)
			}
			s.count("clauses")
			day, single := from, p.checker(car, Request{})
			single.editions = line.editions
			for _, stretch := range stretches {
				want := outcomeOf(stretch.result)
				for ; day <= stretch.until; day++ {
					s.count("days")
					single.setDay(day)
					if got := outcomeOf(single.onDay(clause)); got != want {
						s.fail("seed %d: clause %s comes on %s to %q, in its stretch to %q\n%s\n%s", seed, clause.Number, day, got, want, text, sheetText)
						return
					}
				}
			}
			require.Equal(s, until+1, day, "the stretches leave no day out")
		}
	})
}
