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

// drawDatedBooks draws one or two editions of a rulebook of clauses that read days, some in
// force for a time only, some in successive wordings, some by the rules of another day.
func drawDatedBooks(r *rand.Rand) []string {
	if r.IntN(2) == 0 {
		return []string{drawDatedBook(r, "")}
	}
	change := fmt.Sprintf("%d-%02d", 2024+r.IntN(8), 1+r.IntN(12))
	return []string{
		drawDatedBook(r, "  in_force = \"2020-01-01\"\n  until = \""+change+"-09\"\n"),
		drawDatedBook(r, "  in_force = \""+change+"-10\"\n"),
	}
}

// drawDatedBook draws one edition.
func drawDatedBook(r *rand.Rand, period string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "rulebook \"Drawn\" {\n  edition = \"1\"\n%s}\nchapter \"1\" {\n  title = \"One\"\n", period)
	for i := range 3 {
		fmt.Fprintf(&b, "  clause \"1.%d\" {\n    title = \"One\"\n    concern = \"safety\"\n    demand = \"%s\"\n", i+1, drawOnDays(r, r.IntN(3)))
		if period == "" && r.IntN(3) == 0 {
			fmt.Fprintf(&b, "    from = \"%d-%02d-15\"\n", 2024+r.IntN(4), 1+r.IntN(12))
		}
		if period == "" && r.IntN(3) == 0 {
			fmt.Fprintf(&b, "    until = \"%d-%02d-15\"\n", 2029+r.IntN(4), 1+r.IntN(12))
		}
		if r.IntN(4) == 0 {
			b.WriteString("    as_at = \"seat['driver'].not_after\"\n")
		}
		b.WriteString("  }\n")
	}
	if period == "" {
		change := 2025 + r.IntN(6)
		for _, days := range []string{fmt.Sprintf("until = \"%d-03-31\"", change), fmt.Sprintf("from = \"%d-04-01\"", change)} {
			fmt.Fprintf(&b, "  clause \"1.7\" {\n    title = \"Wording\"\n    concern = \"safety\"\n    %s\n    demand = \"%s\"\n", days, drawOnDays(r, 1))
			if r.IntN(2) == 0 {
				b.WriteString("    as_at = \"seat['driver'].not_after\"\n")
			}
			b.WriteString("  }\n")
		}
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

// drawnEditions are editions of a rulebook with a car each.
func drawnEditions(t *sitting, books []string, sheet string) Editions {
	var all []Edition
	for _, text := range books {
		p := programOf(t, text)
		all = append(all, Edition{p, p.Car(sheetOf(t, sheet))})
	}
	return NewEditions(all...)
}

// TestJudgeStretches holds stretches of days against a check on every single day of ten
// years, on drawn editions and sheets, and the evaluations that they take.
func TestJudgeStretches(t *testing.T) {
	t.Parallel()
	s := sit(t)
	from, _ := quantity.CivilDay(2024, 3, 1)
	last := from.PlusYears(10)
	s.longDraws(func(r *rand.Rand, seed uint64) {
		books, sheet := drawDatedBooks(r), drawDated(r)
		editions := drawnEditions(s, books, sheet)
		for begin := from; begin <= last; {
			until := editions.until(begin, last)
			on := editions.On(begin)
			for _, clause := range on.Program.clauses {
				if found := heldByTheDay(s, editions, on, clause, begin, until); found != "" {
					s.fail("seed %d: %s\n%s\n%s", seed, found, strings.Join(books, "\n"), sheet)
					return
				}
			}
			begin = until + 1
		}
	})
}

// heldByTheDay says on which day a stretch of a clause is not what the clause comes to, ""
// where it is so on all.
func heldByTheDay(s *sitting, editions Editions, on Edition, clause *compiledClause, from, until quantity.Day) string {
	line := &timeline{}
	k, single := on.Program.checker(on.Car, Request{}), on.Program.checker(on.Car, Request{})
	k.editions, single.editions = editions, editions
	stretches, _ := line.stretches(k, clause, from, until)
	if line.evaluations > 2*line.cuts+2 {
		return fmt.Sprintf("%d evaluations for %d cuts", line.evaluations, line.cuts)
	}
	s.count("clauses")
	day := from
	for _, stretch := range stretches {
		want := outcomeOf(stretch.result)
		for ; day <= stretch.until; day++ {
			s.count("days")
			single.setDay(day)
			var one *ClauseResult
			if single.stands(clause.Clause) {
				one = single.onDay(clause)
			}
			if got := outcomeOf(one); got != want {
				return fmt.Sprintf("clause %s comes on %s to %q, in its stretch to %q", clause.Number, day, got, want)
			}
		}
	}
	require.Equal(s, until+1, day, "the stretches leave no day out")
	return ""
}
