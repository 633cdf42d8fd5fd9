package engine

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// twoBars is two level bars, one above the other, and helmets of 140 mm radius beneath and
// beside them.
const twoBars = `
car "tried" {
}
joint "A" {
  at = ["0 mm", "500 mm", "1000 mm"]
}
joint "B" {
  at = ["0 mm", "-500 mm", "1000 mm"]
}
joint "C" {
  at = ["0 mm", "500 mm", "1300 mm"]
}
joint "D" {
  at = ["0 mm", "-500 mm", "1300 mm"]
}
tube "upper" {
  through = ["C", "D"]
  outside = "45 mm"
  ordered = "48 x 2 mm"
}
tube "lower" {
  through = ["A", "B"]
  ordered = "40 x 2 mm"
}
tube "unsized" {
  through = ["A", "D"]
}
head "driver" {
  top           = ["200 mm", "0 mm", "1140 mm"]
  helmet_radius = "140 mm"
}
head "co-driver" {
  top = ["-400 mm", "0 mm", "1140 mm"]
}
foot "1" {
  joint = "A"
}
`

// TestClearance holds distances between surfaces: elementary geometry. The middle of the
// driver's helmet is level with the lower bar, 200 mm ahead of it, and 300 mm below the
// upper one.
func TestClearance(t *testing.T) {
	of := func(formula string) string { return "judged = \"proved\"\ndemand = \"" + formula + "\"" }
	for _, x := range []struct {
		name, clause string
		want         Verdict
		causes       []string
	}{
		{"bar to bar, as measured before as ordered", of("clearance(cage.tube['upper'], cage.tube['lower']) == 257.5*mm"), Meets, nil},
		{"bar to helmet", of("clearance(cage.tube['lower'], head['driver']) == 40*mm"), Meets, nil},
		{"helmet to bar", of("clearance(head['driver'], cage.tube['lower']) == 40*mm"), Meets, nil},
		{"by its centre line the bar is further from the top", of("clearance(head['driver'], cage.tube['lower']) == 40*mm and distance(head['driver'], cage.tube['lower']) > 240*mm"), Meets, nil},
		{"helmet to joint", of("clearance(head['driver'], cage.joint['A']) == hypot(200*mm, 500*mm) - 140*mm"), Meets, nil},
		{"helmet to a foot at that joint", of("clearance(head['driver'], cage.foot['1']) == clearance(head['driver'], cage.joint['A'])"), Meets, nil},
		{"its top is a place", of("clearance(head['driver'].top, cage.joint['A']) == distance(head['driver'], cage.joint['A'])"), Meets, nil},
		{"places have no thickness", of("clearance(cage.joint['A'], cage.joint['C']) == 300*mm"), Meets, nil},
		{"a bar about its own joint", of("clearance(cage.tube['upper'], cage.joint['C']) == -22.5*mm"), Meets, nil},
		{"a helmet about its own top", of("clearance(head['driver'], head['driver'].top) == 0"), Meets, nil},
		{"asked of every bar, one of them whatever its size", of("all(cage.tubes, clearance(#, head['driver']) >= 30*mm)"), Meets, nil},
		{"and of one that may be too thick", of("all(cage.tubes, clearance(#, head['driver']) >= 40*mm) and clearance(cage.tube['unsized'], head['driver']) >= 60*mm"), NotRecorded, []string{"outside of tube unsized"}},
		{"too near whatever its size", of("clearance(cage.tube['unsized'], head['driver']) >= 300*mm"), Gap, nil},
		{"a helmet of unknown size", of("clearance(head['co-driver'], cage.tube['lower']) >= 250*mm"), NotRecorded, []string{"helmet radius of head co-driver"}},
		{"between helmets", of("clearance(head['driver'], head['co-driver']) >= 250*mm"), NotRecorded, []string{"helmet radius of head co-driver"}},
	} {
		t.Run(x.name, func(t *testing.T) {
			got := checked(t, twoBars, x.clause)
			require.Equal(t, x.want, got.Verdict, "%+v", got.Subjects[0])
			var causes []string
			for _, cause := range got.Subjects[0].Causes {
				causes = append(causes, cause.Text)
			}
			if x.want == NotRecorded {
				require.Equal(t, x.causes, causes)
			}
		})
	}
}

// TestClearanceOfReadings holds that a size which was read twice counts by its least
// favourable reading where a clause asks for surfaces.
func TestClearanceOfReadings(t *testing.T) {
	sheet := twoBars + `
joint "E" {
  at = ["500 mm", "0 mm", "1000 mm"]
}
joint "F" {
  at = ["900 mm", "0 mm", "1000 mm"]
}
tube "twice" {
  through = ["E", "F"]
  outside = { readings = ["38 mm", "42 mm"] }
}
`
	limit := func(mm string) Verdict {
		return checked(t, sheet, "demand = \"clearance(cage.tube['twice'], cage.tube['lower']) >= "+mm+"*mm\"").Verdict
	}
	require.Equal(t, Meets, limit("459"), "500 - 20 - 21 mm")
	require.Equal(t, Gap, limit("460"))
}

// TestClearanceSettled holds truths that hang on a size more than once.
func TestClearanceSettled(t *testing.T) {
	j := newFrameJudge(t)
	sheet := sheetOf(t, twoBars)
	for formula, want := range map[string]quantity.Truth{
		"clearance(cage.tube['unsized'], head['driver']) <= distance(cage.tube['unsized'], head['driver']) + 1*mm":          quantity.Yes,
		"clearance(cage.tube['unsized'], cage.joint['C']) + cage.tube['unsized'].outside / 2 >= 1*mm":                       quantity.Yes,
		"clearance(cage.tube['unsized'], cage.joint['C']) > 0 or clearance(cage.joint['C'], cage.tube['unsized']) <= 30*mm": quantity.Yes,
		"clearance(head['co-driver'], cage.tube['lower']) >= 250*mm":                                                        quantity.Open,
	} {
		require.Equal(t, want, j.answer(t, formula, sheet).Truth, formula)
	}
}
