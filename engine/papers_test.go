package engine

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestEvidenceByDay(t *testing.T) {
	p := bookOf(t, "demand = \"recorded(car.chassis)\"\nevidence = [\"scale slip\"]")
	const two = `car "Tried" {
  chassis = "TS-0417"
  evidence "Scale slip" {
    dated       = "2026-03-01"
    valid_until = "2027-03-31"
  }
}
cage {
  evidence "scale slip" {
    dated       = "2027-05"
    valid_until = "2028-12-31"
  }
}
`
	for _, x := range []struct{ day, why string }{
		{"2026-02-28", "dated 2027-05, after the day of the check"},
		{"2026-03-01", ""},
		{"2027-03-31", ""},
		{"2027-04-01", "ended 2027-03-31"},
		{"2027-04-30", "ended 2027-03-31"},
		{"2027-05-01", ""}, // some day of May
		{"2028-12-31", ""},
		{"2029-01-01", "ended 2028-12-31"},
	} {
		c := p.Check(p.Car(sheetOf(t, two)), Request{Day: on(t, x.day)}).Chapters[0].Clauses[0]
		if x.why == "" {
			require.Equal(t, Meets, c.Verdict, x.day)
			continue
		}
		require.Equal(t, Gap, c.Verdict, x.day)
		paper := c.Subjects[len(c.Subjects)-1]
		require.Empty(t, paper.MissingPapers, "it is named, it only does not count")
		require.Equal(t, []OutdatedPaper{{"scale slip", x.why}}, paper.OutdatedPapers, x.day)
	}
	none := p.Check(p.Car(sheetOf(t, "car \"Tried\" {\n  chassis = \"A\"\n}\n")), Request{Day: on(t, "2027-01-01")}).Chapters[0].Clauses[0]
	require.Equal(t, []string{"scale slip"}, none.Subjects[1].MissingPapers)
}

// TestEvidenceCutsDays holds that the days on which papers begin and cease are days on which
// a clause that asks for them is looked at anew.
func TestEvidenceCutsDays(t *testing.T) {
	p := bookOf(t, "evidence = [\"scale slip\"]\nlook_for = \"The slip.\"")
	car := p.Car(sheetOf(t, "car \"Tried\" {\n  evidence \"scale slip\" {\n    dated = \"2027-02-10\"\n    valid_until = \"2027-03-31\"\n  }\n}\n"))
	line := &timeline{}
	stretches, _ := line.stretches(p.checker(car, Request{}), p.clauses[0], on(t, "2027-01-01"), on(t, "2027-12-31"))
	var ends []string
	for _, s := range stretches {
		ends = append(ends, s.until.String()+" "+s.result.Verdict.String())
	}
	require.Equal(t, []string{"2027-02-09 gap", "2027-03-31 by eye", "2027-12-31 gap"}, ends)
}
