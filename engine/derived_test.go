package engine

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// stay is a cage of one hoop leg and one backstay, which leaves the vertical at 30.1 degrees
// as read: 580 mm back and 1000.6 mm down, tan 30.1° = 0.57968 (elementary geometry).
const stay = `
car "tried" {
}
joint "T" {
  at          = ["-300 mm", "500 mm", "1100.6 mm"]
  tolerance   = "6 mm"
  mirrored_as = "T right"
}
joint "F" {
  at        = ["-880 mm", "500 mm", "100 mm"]
  tolerance = "6 mm"
}
joint "N" {
}
tube "1" {
  part    = "backstay"
  through = ["T", "F"]
  size    = "40 x 2 mm"
}
tube "2" {
  part    = "transverse member"
  through = ["T", "T right"]
}
tube "3" {
  part    = "other"
  through = ["T", "N"]
}
tube "4" {
  part = "dash bar"
}
`

// sheetOf reads a sheet without fault.
func sheetOf(t testing.TB, text string) *vehicle.Sheet {
	t.Helper()
	sheet, faults := vehicle.Load(fstest.MapFS{"car.hcl": {Data: []byte(text)}}, "car.hcl", "car.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.Empty(t, faults)
	return sheet
}

// bookOf reads a rulebook of one clause without fault.
func bookOf(t testing.TB, clause string) *Program {
	t.Helper()
	text := "rulebook \"Tried\" {\n  edition = \"1\"\n  in_force = \"2026-01-01\"\n}\n" +
		"chapter \"1\" {\n  title = \"One\"\n  clause \"1.1\" {\n title = \"One\"\n concern = \"safety\"\n text = \"One.\"\n rectify = \"Mend.\"\n" + clause + "\n }\n}\n"
	book, faults := rules.Load(fstest.MapFS{"book.hcl": {Data: []byte(text)}}, "book.hcl", "book.hcl", vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), "%v", faults)
	p, faults := Compile(book)
	require.Empty(t, faults)
	return p
}

// checked is what a rulebook of one clause says of a car.
func checked(t testing.TB, sheet, clause string) *ClauseResult {
	t.Helper()
	p := bookOf(t, clause)
	return p.Check(p.Car(sheetOf(t, sheet)), Request{All: true}).Chapters[0].Clauses[0]
}

// TestDerivedVerdicts holds what a clause on a figure that follows from joints comes to.
func TestDerivedVerdicts(t *testing.T) {
	proved := "judged = \"proved\"\n"
	of := func(formula string) string { return "demand = \"" + formula + "\"" }
	for _, x := range []struct {
		name, clause string
		want         Verdict
		causes       []string
	}{
		{"as read 30.1 is 30 or more", of("cage.tube['1'].angle_to_vertical >= 30*deg"), Meets, nil},
		{"but not proved, with 6 mm either way", proved + of("cage.tube['1'].angle_to_vertical >= 30*deg"), Marginal, []string{"angle to vertical of tube 1"}},
		{"29 degrees are proved", proved + of("cage.tube['1'].angle_to_vertical >= 29*deg"), Meets, nil},
		{"what the sheet does not place is missing", of("cage.tube['3'].angle_to_vertical >= 29*deg"), NotRecorded, []string{"place of joint N"}},
		{"without joints it can still be measured", of("cage.tube['4'].angle_to_vertical >= 29*deg"), NotRecorded, []string{"angle to vertical of tube 4"}},
		{"for a function on tubes the joints are missing", of("angle_between(cage.tube['1'], cage.tube['4']) >= 20*deg"), NotRecorded, []string{"through of tube 4"}},
		{"and on places", of("distance(cage.joint['T'], cage.joint['N']) >= 1*metre"), NotRecorded, []string{"place of joint N"}},
		{"the image moves with its original: 1000 mm +/- 12 mm", proved + of("988*mm <= cage.tube['2'].node_length <= 1012*mm"), Meets, nil},
		{"and not by less", proved + of("cage.tube['2'].node_length >= 988.1*mm"), Marginal, []string{"node length of tube 2"}},
		{"tubes meet at a joint they share", proved + of("meet(cage.tube['1'], cage.tube['2'], 1*mm)"), Meets, nil},
		{"the angle between them is a right one", proved + of("89*deg <= angle_between(cage.tube['1'], cage.tube['2']) <= 91*deg"), Meets, nil},
		{"a foot is 1 m below the top and 580 mm behind it", of("above(cage.joint['T'], cage.joint['F']) > 1*metre and ahead_of(cage.joint['T'], cage.joint['F']) == 580*mm"), Meets, nil},
		{"a straight tube has no bends", of("cage.tube['1'].straight and cage.tube['1'].bends == 0"), Meets, nil},
		{"the mass hangs on every tube", of("cage.mass >= 1*kg"), NotRecorded, nil},
	} {
		t.Run(x.name, func(t *testing.T) {
			got := checked(t, stay, x.clause)
			require.Equal(t, x.want, got.Verdict, "%+v", got.Subjects[0])
			if x.causes != nil {
				var causes []string
				for _, cause := range got.Subjects[0].Causes {
					causes = append(causes, cause.Text)
				}
				require.Equal(t, x.causes, causes)
			}
		})
	}
}

// TestDerivedEnds holds how a hoop's legs lean, and what a cage without feet comes to.
func TestDerivedEnds(t *testing.T) {
	// The left leg leans back by 100 mm and in by 50 mm over 1 m: atan 0.1 = 5.71 degrees,
	// atan 0.05 = 2.86 degrees (elementary geometry).
	hoop := `
car "tried" {
}
not_fitted = ["foot"]
joint "A" {
  at          = ["0 mm", "600 mm", "0 mm"]
  mirrored_as = "D"
}
joint "B" {
  at          = ["-100 mm", "550 mm", "1000 mm"]
  mirrored_as = "C"
}
tube "1" {
  part        = "main hoop"
  through     = ["A", "B", "C", "D"]
  bend_radius = "150 mm"
}
`
	of := func(formula string) Verdict { return checked(t, hoop, "demand = \""+formula+"\"").Verdict }
	require.Equal(t, Meets, of("all(cage.tube['1'].ends, 5.71*deg <= .side_angle_to_vertical <= 5.72*deg)"))
	require.Equal(t, Meets, of("all(cage.tube['1'].ends, 2.86*deg <= .front_angle_to_vertical <= 2.87*deg)"))
	require.Equal(t, Meets, of("cage.tube['1'].angle_to_vertical > 89.9*deg")) // from foot to foot
	require.Equal(t, Gap, of("all(cage.tube['1'].ends, .to_foot <= 100*mm)"), "there is no foot to be near to")
	require.Equal(t, Meets, of("all(cage.tube['1'].ends, (.to_foot ?? (50*mm)) <= 100*mm)"))
	require.Equal(t, Gap, of("all(cage.tube['1'].ends, .to_joint <= 100*mm)"), "nor a place where two other tubes meet")
}

// TestDerivedSettled holds truths that hang on two figures which follow from the same
// joints, and are decided by splitting the joints' coordinates.
func TestDerivedSettled(t *testing.T) {
	for formula, want := range map[string]quantity.Truth{
		"cage.tube['1'].angle_to_vertical + cage.tube['1'].angle_to_horizontal <= 91.2*deg":                                             quantity.Yes,
		"cage.tube['1'].angle_to_vertical >= 30*deg or cage.tube['1'].angle_to_vertical < 30*deg":                                       quantity.Yes,
		"(cage.tube['1'].angle_to_vertical >= 30*deg and cage.mass > 1*gram) or cage.tube['1'].angle_to_vertical < 30.1*deg":            quantity.Open,
		"(cage.tube['1'].angle_to_vertical >= 30*deg and fitted(car)) or (cage.tube['1'].angle_to_vertical < 30.1*deg and fitted(car))": quantity.Yes,
		"distance(cage.joint['T'], cage.joint['F']) < distance(cage.joint['T'], cage.tube['1'])":                                        quantity.No,
		"cage.tube['1'].node_length >= above(cage.joint['T'], cage.joint['F'])":                                                         quantity.Yes,
		"cage.tube['1'].node_length - distance(cage.joint['T'], cage.joint['F']) <= 26*mm":                                              quantity.Yes,
		"cage.tube['1'].angle_to_vertical >= 30*deg":                                                                                    quantity.Open,
	} {
		j := newFrameJudge(t)
		require.Equal(t, want, j.answer(t, formula, sheetOf(t, stay)).Truth, formula)
	}
}

// TestDerivedAndStated holds a figure that is stated beside what follows from joints: both
// are true, and its own reading is the one that is read.
func TestDerivedAndStated(t *testing.T) {
	stated := strings.Replace(stay, "size    = \"40 x 2 mm\"", "size    = \"40 x 2 mm\"\n  angle_to_vertical = \"30.4 deg +/- 0.3 deg\"", 1)
	proved := "judged = \"proved\"\n"
	require.Equal(t, Meets, checked(t, stated, proved+`demand = "cage.tube['1'].angle_to_vertical >= 30*deg"`).Verdict)
	require.Equal(t, Meets, checked(t, stated, `demand = "cage.tube['1'].angle_to_vertical == 30.4*deg"`).Verdict)
	require.Equal(t, Marginal, checked(t, stated, proved+`demand = "cage.tube['1'].angle_to_vertical >= 30.2*deg"`).Verdict)
}

// TestDerivedReadings holds the least favourable of several readings of a coordinate.
func TestDerivedReadings(t *testing.T) {
	several := strings.Replace(stay, `at        = ["-880 mm", "500 mm", "100 mm"]
  tolerance = "6 mm"`, `x = { readings = ["-880 mm", "-870 mm"] }
  y = "500 mm"
  z = "100 mm"`, 1)
	got := checked(t, several, `demand = "cage.tube['1'].angle_to_vertical >= 30*deg"`)
	require.Equal(t, Gap, got.Verdict)
	require.Contains(t, got.Subjects[0].Decided[0].Reading, "29.668 deg", "%+v", got.Subjects[0])
	require.Equal(t, Meets, checked(t, several, `demand = "cage.tube['1'].angle_to_vertical >= 29*deg"`).Verdict)
}

// TestDerivedWorking shows a figure down to the joints it follows from.
func TestDerivedWorking(t *testing.T) {
	p := bookOf(t, "judged = \"proved\"\ndemand = \"cage.tube['1'].angle_to_vertical >= 30*deg\"")
	w := p.Working(p.Car(sheetOf(t, stay)), p.Book.Chapters[0].Clauses[0], Request{})
	angle := w.Subjects[0].Demand.Of[0]
	require.Equal(t, "30.10 ± 0.82 deg", angle.Value)
	require.Equal(t, noteFollows, angle.Note)
	require.Equal(t, []string{
		"joint T: x -300 ± 6 mm, y 500 ± 6 mm, z 1100.6 ± 6 mm",
		"joint F: x -880 ± 6 mm, y 500 ± 6 mm, z 100 ± 6 mm",
	}, angle.From)
}
