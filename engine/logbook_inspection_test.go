package engine

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestRefusalByDay(t *testing.T) {
	const refused = `inspection "I1" {
  event   = "Saltmarsh"
  day     = "2027-05-16"
  clause  = "4.1"
  subject = "tube 5"
  outcome = "refused"
}
`
	const accepted = `inspection "I2" {
  day     = "2027-06-18"
  clause  = "4.1"
  subject = "tube 5"
  outcome = "corrected and re-presented"
}
`
	const otherTube = `inspection "I3" {
  day     = "2027-05-20"
  clause  = "4.1"
  subject = "tube 6"
  outcome = "accepted"
}
`
	for _, x := range []struct {
		papers, day string
		verdict     Verdict // DoesNotApply for none
	}{
		{refused, "2027-05-15", DoesNotApply},
		{refused, "2027-05-16", ByEye},
		{refused + otherTube, "2027-06-17", ByEye},
		{refused + accepted, "2027-06-17", ByEye},
		{refused + accepted, "2027-06-18", DoesNotApply},
		{accepted + refused, "2027-06-18", DoesNotApply},
	} {
		r := checkedOn(t, x.papers, x.day, nil)
		tube := subjectNamed(t, clauseNumbered(r, "4.1"), "tube 5")
		require.Equal(t, Meets, tube.Verdict, "the figures are what they are")
		entry := clauseNumbered(r, "inspection I1")
		if x.verdict == DoesNotApply {
			require.Nil(t, entry, x.day)
			require.Empty(t, tube.Notes)
			continue
		}
		require.Equal(t, x.verdict, entry.Verdict, x.day)
		require.Equal(t, []string{"clause 4.1 says now: meets; show what was done"}, entry.Subjects[0].Notes)
		require.Equal(t, []string{"refused at Saltmarsh on 2027-05-16"}, tube.Notes)
		require.Empty(t, subjectNamed(t, clauseNumbered(r, "4.1"), "tube 6").Notes, "another tube")
	}
}

func TestRefusalCountsNoGapTwice(t *testing.T) {
	r := checkedOn(t, `inspection "I1" {
  day     = "2027-05-16"
  clause  = "4.1"
  subject = "tube 6"
  outcome = "refused"
}
inspection "I2" {
  day     = "2027-05-16"
  clause  = "9.9"
  outcome = "refused"
}
inspection "I3" {
  day     = "2027-05-16"
  subject = "left mud flap"
  outcome = "refused"
}
inspection "I4" {
  day     = "2027-05-16"
  clause  = "4.1"
  subject = "the weld at the foot"
  outcome = "refused"
}
`, "2027-06-01", nil)
	require.Equal(t, Gap, clauseNumbered(r, "4.1").Verdict)
	require.Equal(t, ByEye, clauseNumbered(r, "inspection I1").Verdict, "the gap is that of its clause")
	require.Equal(t, []string{"clause 4.1 still says: gap"}, clauseNumbered(r, "inspection I1").Subjects[0].Notes)
	require.Equal(t, ByEye, clauseNumbered(r, "inspection I2").Verdict)
	require.Equal(t, ByEye, clauseNumbered(r, "inspection I3").Verdict)
	require.Equal(t, ByEye, clauseNumbered(r, "inspection I4").Verdict)
	require.Equal(t, []string{"clause 4.1 still says: gap"}, clauseNumbered(r, "inspection I4").Subjects[0].Notes, "about none of the subjects, so about the clause")
	require.Equal(t, checkedOn(t, "", "2027-06-01", nil).Counts[Gap], r.Counts[Gap])
	require.Contains(t, subjectNamed(t, clauseNumbered(r, "4.1"), "tube 5").Notes, "refused on 2027-05-16")
}

func TestTheirReadingBesideOurs(t *testing.T) {
	for _, x := range []struct{ clause, subject, reading, want string }{
		{"4.1", "tube 6", "44 mm", "read 44 mm with a caliper; the sheet says 44.2 mm, 0.2 mm apart"},
		{"4.1", "tube 6", "1.74 in", "read 1.74 in with a caliper; the sheet says 44.2 mm, the same"},
		{"4.1", "tube 6", "44.2 mm", "read 44.2 mm with a caliper; the sheet says 44.2 mm, the same"},
		{"4.1", "tube 6", "12 kg", "read 12 kg with a caliper"},
		{"4.1", "tube 6", "> 44 mm", "read > 44 mm with a caliper; the sheet says 44.2 mm"},
		{"4.2", "", "1003 kg", "read 1003 kg with a caliper; the sheet says 985 ± 4 kg, 18 kg apart"},
	} {
		subject := ""
		if x.subject != "" {
			subject = "  subject = \"" + x.subject + "\"\n"
		}
		papers := "inspection \"I1\" {\n  event = \"Saltmarsh\"\n  day = \"2027-05-16\"\n  clause = \"" + x.clause + "\"\n" + subject +
			"  outcome = \"noted\"\n  their_reading = \"" + x.reading + "\"\n  their_instrument = \"a caliper\"\n}\n"
		r := checkedOn(t, papers, "2027-05-16", nil)
		name := x.subject
		require.Contains(t, subjectNamed(t, clauseNumbered(r, x.clause), name).Notes, "inspection at Saltmarsh, 2027-05-16: "+x.want)
		entry := clauseNumbered(r, "inspection I1")
		require.True(t, entry.Remark)
		require.Equal(t, x.want, entry.Note)

		before := checkedOn(t, papers, "2027-05-15", nil)
		require.Nil(t, clauseNumbered(before, "inspection I1"))
		require.Empty(t, subjectNamed(t, clauseNumbered(before, x.clause), name).Notes)
		require.Equal(t, before.Counts, r.Counts, "a reading counts towards nothing")
	}
}

// TestTheirReadingBesideWhatFollows holds a reading of an angle against the one that follows
// from the places of the joints: elementary geometry, 450 along over 800 down is 29.36 deg.
func TestTheirReadingBesideWhatFollows(t *testing.T) {
	p := bookOf(t, "across = \"tube in cage.tubes\"\ndemand = \"tube.angle_to_vertical >= 30*deg\"")
	check := func(foot string) string {
		sheet := sheetOf(t, `car "Tried" {
}
joint "A" {
  at = ["0 mm", "0 mm", "800 mm"]
}
joint "B" {
  at = [`+foot+`]
}
tube "5" {
  through = ["A", "B"]
}
inspection "I1" {
  day           = "2027-05-16"
  clause        = "1.1"
  subject       = "tube 5"
  outcome       = "noted"
  their_reading = "29.9 deg"
}
`)
		return clauseNumbered(p.Check(p.Car(sheet), Request{Day: on(t, "2027-06-01")}), "inspection I1").Note
	}
	require.Equal(t, "read 29.9 deg; the sheet says 29.358 deg, 0.54 deg apart", check(`"-450 mm", "0 mm", "0 mm"`))
	require.Contains(t, check(`"-450 mm +/- 5 mm", "0 mm", "0 mm"`), "; the sheet says 29.36 ± 0.27 deg, 0.54 deg apart")
}
