package vehicle

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/cage"
)

// sheetWith fills a line into a sheet.
func sheetWith(sheet, line string) string { return strings.Replace(sheet, "%s", line, 1) }

// hoopSheet is a hoop on two feet with what is written behind it.
const hoopSheet = `
tube_stock "A" {
  ordered    = "45 x 2.5 mm"
  bar_length = "4 m"
}
tube_stock "B" { ordered = "38 x 2.5 mm" }
joint "A" { at = ["0 mm", "600 mm", "0 mm"] }
joint "B" { at = ["0 mm", "600 mm", "1000 mm"] }
joint "C" { at = ["0 mm", "-600 mm", "1000 mm"] }
joint "D" { at = ["0 mm", "-600 mm", "0 mm"] }
tube "1" {
  stock       = "A"
  through     = ["A", "B", "C", "D"]
  bend_radius = "150 mm"
}
foot "1" { joint = "A" }
foot "2" { joint = "D" }
%s`

// saidOf puts findings into short words: weight, kind, tubes by number and joints by name.
func saidOf(f *Frame) []string {
	var said []string
	for _, found := range f.Findings() {
		words := fmt.Sprintf("%d:%d", found.Weight, found.Kind)
		for _, tube := range found.Tubes {
			words += " " + f.Tubes[tube].Number
		}
		for _, joint := range found.Joints {
			words += " " + f.Joints[joint].Name
		}
		if found.DieFault.Problem != "" {
			words += " " + string(found.DieFault.Problem)
		}
		said = append(said, words)
	}
	return said
}

func said(weight Weight, kind FindingKind, words string) string {
	return strings.TrimRight(fmt.Sprintf("%d:%d %s", weight, kind, words), " ")
}

func TestFindings(t *testing.T) {
	for _, one := range []struct {
		name, sheet string
		want        []string
	}{
		{"a hoop on its feet", "", nil},
		{"a joint that nothing holds", `joint "Q" { at = ["500 mm", "0 mm", "0 mm"] }`, []string{said(CannotBeBuilt, LooseJoint, "Q")}},
		{"a joint that lies on a tube", `joint "Q" { at = ["0 mm", "600 mm", "500 mm"] }`, nil},
		{"an end in the air", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["900 mm", "600 mm", "500 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}`, []string{said(CannotBeBuilt, EndInTheAir, "2 F")}},
		{"an end in the air while tubes are to come", `
unfinished = ["tube"]
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["900 mm", "600 mm", "500 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}`, []string{said(StillOpen, EndInTheAir, "2 F")}},
		{"an end in the air while a foot has no place", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["900 mm", "600 mm", "500 mm"] }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
foot "3" {}`, []string{said(StillOpen, EndInTheAir, "2 F"), said(ToLookAt, FootWithoutPlace, "")}},
		{"an end where a tube without a place goes", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["900 mm", "600 mm", "500 mm"] }
joint "G" { x = "10 mm" }
tube "2" {
  stock   = "B"
  through = ["E", "F"]
}
tube "3" { through = ["F", "G"] }`, []string{said(StillOpen, EndInTheAir, "2 F"), said(StillOpen, PartUnplaced, ""), said(StillOpen, PartUnplaced, "")}},
		{"a tube twice", `
tube "2" {
  stock       = "A"
  through     = ["D", "C", "B", "A"]
  bend_radius = "150 mm"
}`, []string{said(CannotBeBuilt, DoubledTube, "2 1")}},
		{"another way between the same ends", `
tube "2" {
  stock   = "B"
  through = ["D", "A"]
}`, []string{said(ToLookAt, SameEnds, "2 1")}},
		{"two joints at one place", `joint "Q" { at = ["0 mm", "600 mm", "0.5 mm"] }`, []string{said(ToLookAt, OnePlace, "A Q")}},
		{"a size that is not recorded", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
tube "2" { through = ["E", "F"] }`, []string{said(StillOpen, SizeUnknown, "2 1 E"), said(StillOpen, SizeUnknown, "2 1 F")}},
		{"too thick for what it meets, and straight on", `
tube_stock "C" { ordered = "50 x 2 mm" }
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "0 mm", "500 mm"] }
joint "G" { at = ["0 mm", "-600 mm", "500 mm"] }
tube "2" {
  stock   = "C"
  through = ["E", "F"]
}
tube "3" {
  stock   = "B"
  through = ["F", "G"]
}`, []string{said(CannotBeBuilt, NotchImpossible, "2 1 E"), said(ToLookAt, RunsStraightOn, "3 2 F")}},
		{"a bend radius that is not recorded", `
joint "E" { at = ["900 mm", "0 mm", "0 mm"] }
tube "2" {
  stock   = "B"
  through = ["A", "E", "D"]
}`, []string{said(StillOpen, RadiusUnknown, "2 E"), said(ToLookAt, SameEnds, "2 1")}},
		{"a notch that reaches into a bend", `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "520 mm", "500 mm"] }
joint "G" { at = ["0 mm", "520 mm", "0 mm"] }
tube "2" {
  stock       = "B"
  through     = ["E", "F", "G"]
  bend_radius = "70 mm"
}
foot "3" { joint = "G" }`, []string{said(ToLookAt, NotchInBend, "2 1 E")}},
	} {
		t.Run(one.name, func(t *testing.T) {
			require.Equal(t, one.want, saidOf(frameOf(t, sheetWith(hoopSheet, one.sheet))))
		})
	}
}

func TestASheetWithoutTubes(t *testing.T) {
	require.Equal(t, []string{said(StillOpen, NoTubes, "")}, saidOf(frameOf(t, "")))
	require.Empty(t, saidOf(frameOf(t, `not_fitted = ["cage"]`)))
}

func TestBendsThatDoNotFit(t *testing.T) {
	f := handFrame([]cage.Vector{{}, {Z: 0.1}, {X: 1, Z: 0.1}}, []FrameTube{tubeOf(0.045, 0.15, 0, 1, 2)}, 0, 2)
	require.Equal(t, []string{said(CannotBeBuilt, BendsDoNotFit, " A B")}, saidOf(f))
	require.InDelta(t, 0.05, f.Findings()[0].Fault.Missing, 1e-12, "the tangent of a square bend is its radius")
}

func TestDies(t *testing.T) {
	die := func(outside, radius, grip, straight string) string {
		return fmt.Sprintf("die %q {\n  outside           = %q\n  centreline_radius = %q\n  grip_length       = %q\n  minimum_straight  = %q\n}\n",
			outside+" "+radius, outside, radius, grip, straight)
	}
	find := func(sheet string) []string { return saidOf(frameOf(t, sheetWith(hoopSheet, sheet))) }
	require.Empty(t, find(die("45 mm", "150 mm", "100 mm", "100 mm")))
	require.Equal(t, []string{said(CannotBeBuilt, DieImpossible, "1 "+string(cage.OtherRadius))}, find(die("45 mm", "135 mm", "100 mm", "100 mm")))
	require.Empty(t, find(die("45 mm", "135 mm", "100 mm", "100 mm")+die("45 mm", "150 mm", "100 mm", "100 mm")), "of two for its outside the one with its radius")
	// The straights at the ends are 1000 - 150 mm, that between the bends 1200 - 300 mm.
	require.Empty(t, find(die("45 mm", "150 mm", "850 mm", "900 mm")))
	require.Equal(t, []string{said(CannotBeBuilt, DieImpossible, "1 "+string(cage.TooLittleGrip)), said(CannotBeBuilt, DieImpossible, "1 "+string(cage.BendsTooClose))},
		find(die("45 mm", "150 mm", "851 mm", "901 mm")))
	require.Equal(t, []string{said(CannotBeBuilt, NoDieFits, "1")}, find(die("38 mm", "150 mm", "0 mm", "0 mm")))
	require.Empty(t, find(die("38 mm", "150 mm", "0 mm", "0 mm")+`unfinished = ["die"]`), "another die may come")
	named := strings.Replace(hoopSheet, `stock       = "A"`, "stock = \"A\"\n  die = \"38 mm 150 mm\"", 1)
	require.Equal(t, []string{said(CannotBeBuilt, DieImpossible, "1 "+string(cage.OtherOutside))},
		saidOf(frameOf(t, sheetWith(named, die("38 mm", "150 mm", "0 mm", "0 mm")+die("45 mm", "150 mm", "0 mm", "0 mm")))), "the die it names counts")
}

func TestStocks(t *testing.T) {
	f := frameOf(t, sheetWith(hoopSheet, `
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["0 mm", "600 mm", "300 mm"] }
joint "H" { at = ["0 mm", "-600 mm", "300 mm"] }
cage { saw_kerf = "3 mm" }
tube "2" { through = ["E", "F"] }
tube "3" {
  stock   = "A"
  through = ["G", "H"]
}
tube_stock "Z" {
  ordered    = "38 x 2 mm"
  bar_length = "1 m"
  bars       = 2
}
joint "I" { at = ["0 mm", "600 mm", "700 mm"] }
joint "J" { at = ["0 mm", "-600 mm", "700 mm"] }
tube "4" {
  stock   = "Z"
  through = ["I", "J"]
}
`))
	stocks := f.Stocks()
	require.Len(t, stocks, 3)
	require.Equal(t, []int{0, 2}, stocks[0].Tubes, "in the order of the stocks")
	require.Equal(t, 2, stocks[0].Weighed)
	require.Len(t, stocks[0].Nesting.Bars, 2, "2871 and 1200 mm do not go into 4 m")
	require.False(t, stocks[0].HasBought)
	require.InDelta(t, f.Tubes[0].Course.Developed()+1.2, stocks[0].Length, 1e-9)
	require.Equal(t, 2, stocks[1].Bought)
	require.Equal(t, cage.CutTooLong, stocks[1].Nesting.Faults[0].Problem)
	// Its long points reach to the main tubes' sides: 1200 mm less twice √(22.5² - 19²) mm.
	require.InDelta(t, 0.2-2*0.012052, stocks[1].Nesting.Faults[0].Missing, 1e-6)
	require.Nil(t, stocks[2].Part, "tubes without a stock come last")
	require.Zero(t, stocks[2].Weighed)
	require.Contains(t, saidOf(f), said(CannotBeBuilt, LongerThanBars, "4"))
	bar, rest := stocks[0].TightBar()
	require.Equal(t, 0, bar)
	require.InDelta(t, stocks[0].Nesting.Bars[0].Rest, rest, 1e-12)
	kerf, ok := f.SawKerf()
	require.True(t, ok)
	require.InDelta(t, 0.003, kerf, 1e-12)
}

// What is sawn longer counts when tubes are taken out of bars, and bars that are missing are
// told.
func TestCutAllowance(t *testing.T) {
	sheet := `
tube_stock "Z" {
  ordered    = "38 x 2 mm"
  bar_length = "2.4 m"
  bars       = 1
}
joint "E" { at = ["0 mm", "600 mm", "500 mm"] }
joint "F" { at = ["0 mm", "-600 mm", "500 mm"] }
joint "G" { at = ["0 mm", "600 mm", "300 mm"] }
joint "H" { at = ["0 mm", "-600 mm", "300 mm"] }
tube "2" {
  stock   = "Z"
  through = ["E", "F"]
}
tube "3" {
  stock   = "Z"
  through = ["G", "H"]
}
%s`
	f := frameOf(t, sheetWith(hoopSheet, sheetWith(sheet, "")))
	require.Len(t, f.Stocks()[1].Nesting.Bars, 1)
	require.Empty(t, saidOf(f))
	f = frameOf(t, sheetWith(hoopSheet, sheetWith(sheet, `cage { cut_allowance = "40 mm" }`)))
	require.Len(t, f.Stocks()[1].Nesting.Bars, 2, "twice 1175.9 + 40 mm do not go into 2.4 m")
	require.Equal(t, []string{said(ToLookAt, TooFewBars, "")}, saidOf(f))
	require.Equal(t, 1, f.Findings()[0].Count)
}
