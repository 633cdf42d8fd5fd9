package report

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// cageOf reads a sheet of a cage.
func cageOf(t *testing.T, text string) *vehicle.Frame {
	t.Helper()
	files := fstest.MapFS{"car.hcl": &fstest.MapFile{Data: []byte("car \"Tessel 16\" {}\n" + text)}}
	sheet, found := vehicle.Load(files, "car.hcl", "cars/car.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.False(t, found.HasErrors(), found.Error())
	return sheet.Frame()
}

// workshopSheet is a cage with a hoop bent on a die, stays on either side, a bar across, and
// bars of tube.
const workshopSheet = `
cage {
  datum    = "jig"
  origin   = "middle of the front axle line"
  saw_kerf = "3 mm"
}
tube_stock "A" {
  ordered    = "45 x 2.5 mm"
  bar_length = "6 m"
  bars       = 1
}
tube_stock "B" {
  ordered    = "38 x 2.5 mm"
  bar_length = "2 m"
}
die "D" {
  outside           = "45 mm"
  centreline_radius = "135 mm"
  grip_length       = "60 mm"
  minimum_straight  = "50 mm"
  springback        = "3 %"
  bend_start_offset = "8 mm"
}
joint "A left" {
  at          = ["0 mm", "600 mm", "0 mm"]
  mirrored_as = "A right"
}
joint "B left" {
  at          = ["0 mm", "600 mm", "1150 mm"]
  mirrored_as = "B right"
}
joint "C left" {
  at          = ["0 mm", "600 mm", "700 mm"]
  mirrored_as = "C right"
}
joint "D left" {
  at          = ["-700 mm", "600 mm", "0 mm"]
  mirrored_as = "D right"
}
tube "1" {
  part        = "main hoop"
  stock       = "A"
  through     = ["A left", "B left", "B right", "A right"]
  bend_radius = "135 mm"
}
tube "2" {
  part        = "backstay"
  stock       = "B"
  through     = ["C left", "D left"]
  mirrored_as = "3"
}
tube "4" {
  part    = "harness bar"
  stock   = "B"
  through = ["C left", "C right"]
}
foot "1" {
  joint       = "A left"
  mirrored_as = "2"
}
foot "3" {
  joint       = "D left"
  mirrored_as = "4"
}
`

func workshopHead(f *vehicle.Frame) CageHead { return CageHeadOf(f.Sheet, nil, "0.3") }

// cells writes a cut list and reads it back.
func cutListCells(t *testing.T, f *vehicle.Frame) [][]string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, CutList(&out, f, workshopHead(f)))
	rows, err := csv.NewReader(&out).ReadAll() // refuses rows of differing length
	require.NoError(t, err)
	return rows
}

// block returns the rows of a titled block by their column titles.
func block(t *testing.T, rows [][]string, title string) []map[string]string {
	t.Helper()
	for i, row := range rows {
		if row[0] != title {
			continue
		}
		var entries []map[string]string
		for _, entry := range rows[i+2:] {
			if strings.Join(entry, "") == "" {
				break
			}
			named := map[string]string{}
			for k, name := range rows[i+1] {
				if name != "" {
					named[name] = entry[k]
				}
			}
			entries = append(entries, named)
		}
		return entries
	}
	t.Fatalf("no block %q", title)
	return nil
}

func TestCutListWhole(t *testing.T) {
	var out bytes.Buffer
	f := cageOf(t, workshopSheet)
	require.NoError(t, CutList(&out, f, workshopHead(f)))
	requireGolden(t, "cut_list.csv", out.String())
	var again bytes.Buffer
	require.NoError(t, CutList(&again, cageOf(t, workshopSheet), workshopHead(f)))
	require.Equal(t, out.String(), again.String())
}

// The figures of the harness bar and the hoop, by elementary geometry: the bar is 1200 mm
// from node to node and ends 22.5 mm short of either; its long points reach to
// √(22.5² - 19²) mm. The hoop turns twice by a right angle with R = 135 mm, so that its
// straights are 1150 - 135 and 1200 - 270 mm and it saves 2 (2 - π/2) R of the corners.
func TestCutListFigures(t *testing.T) {
	rows := cutListCells(t, cageOf(t, workshopSheet))
	tubes := block(t, rows, "Tubes")
	require.Len(t, tubes, 4)
	hoop, stay, image, bar := tubes[0], tubes[1], tubes[2], tubes[3]
	mm := func(v float64) string { return strconv.FormatFloat(v, 'f', 1, 64) }
	require.Equal(t, "1200.0", bar["node length mm"])
	require.Equal(t, "1155.0", bar["length on centreline mm"])
	require.Equal(t, mm(1200-2*math.Sqrt(22.5*22.5-19*19)), bar["long-point length mm"])
	require.Equal(t, [2]string{"1", "90.0"}, [2]string{bar["first onto tube"], bar["first notch angle deg"]})
	require.Equal(t, "0.0", bar["last notch to first deg"], "both along the hoop")
	require.Equal(t, "3500.0", hoop["node length mm"])
	require.Equal(t, mm(3500-2*135*(2-math.Pi/2)), hoop["developed length mm"])
	require.Equal(t, hoop["developed length mm"], hoop["long-point length mm"], "on its feet it is cut square")
	require.Equal(t, "cut square", hoop["first onto tube"])
	require.Equal(t, "45.0", stay["first notch angle deg"])
	require.Equal(t, "1", image["first onto tube"])
	require.Equal(t, stay["long-point length mm"], image["long-point length mm"])
	require.Equal(t, mm(700*math.Sqrt2-22.5*math.Sqrt2), stay["length on centreline mm"])

	bends := block(t, rows, "Bend schedule")
	require.Len(t, bends, 3)
	require.Equal(t, "1015.0", bends[0]["straight before mm"])
	require.Equal(t, "90.0", bends[0]["angle deg"])
	require.Equal(t, "92.7", bends[0]["bend to deg"])
	require.Equal(t, "1007.0", bends[0]["mark from first joint mm"])
	require.Equal(t, "930.0", bends[1]["straight before mm"])
	require.Equal(t, "0.0", bends[1]["rotation deg"])
	require.Equal(t, mm(1015+135*math.Pi/2+930-8), bends[1]["mark from first joint mm"])
	require.Equal(t, "end", bends[2]["bend"])

	bars := block(t, rows, "Bars")
	require.Equal(t, "1 bar of 6000.0 mm, the least there can be; 1 bought.", bars[1]["remark"])
	require.Equal(t, "B", bars[2]["stock"])
	require.Contains(t, bars[2]["tubes with their long-point length and cut_allowance mm, in this order"], "4: "+bar["long-point length mm"])
	require.Equal(t, "saw kerf 3.0 mm", bars[2]["remark"])
}

// Where the first end is notched, marks are also given from the long point, where the sawn
// tube begins.
func TestMarksFromTheLongPoint(t *testing.T) {
	f := cageOf(t, workshopSheet+`
joint "E" { at = ["0 mm", "600 mm", "300 mm"] }
joint "F" { at = ["0 mm", "0 mm", "300 mm"] }
joint "G" { at = ["0 mm", "0 mm", "0 mm"] }
tube "5" {
  stock       = "B"
  through     = ["E", "F", "G"]
  bend_radius = "150 mm"
}
foot "5" { joint = "G" }
`)
	bends := block(t, cutListCells(t, f), "Bend schedule")
	last := bends[len(bends)-2]
	require.Equal(t, "5", last["tube"])
	require.Equal(t, "450.0", last["mark from first joint mm"])
	require.Equal(t, strconv.FormatFloat(450-math.Sqrt(22.5*22.5-19*19), 'f', 1, 64), last["mark from long point mm"])
	require.Contains(t, last["remark"], "No die of the sheet is for this tube")
	require.Empty(t, last["bend to deg"])
}

// A schedule in three dimensions: the sign of a rotation. Up, forward, then to the left: seen
// along the forward way the bend to the left is a quarter turn against the clock from the
// bend down that a repeated first bend would be; from the plane of the bend before, -90 deg
// (elementary geometry, right hand).
func TestRotationsInTheSchedule(t *testing.T) {
	f := cageOf(t, `
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["0 mm", "0 mm", "1000 mm"] }
joint "C" { at = ["1000 mm", "0 mm", "1000 mm"] }
joint "D left" {
  at          = ["1000 mm", "1000 mm", "1000 mm"]
  mirrored_as = "D right"
}
tube_stock "A" { ordered = "45 x 2.5 mm" }
tube "1" {
  stock       = "A"
  through     = ["A", "B", "C", "D left"]
  bend_radius = "150 mm"
  mirrored_as = "2"
}
`)
	bends := block(t, cutListCells(t, f), "Bend schedule")
	require.Len(t, bends, 6)
	// Right-handed about x from the normal y of the first bend to the normal z: +90.
	require.Equal(t, "90.0", bends[1]["rotation deg"])
	require.Equal(t, "-90.0", bends[4]["rotation deg"], "its mirror image")
}

func TestCutListOfWhatCannotBeCut(t *testing.T) {
	f := cageOf(t, workshopSheet+`
joint "E" { at = ["900 mm", "600 mm", "0 mm"] }
joint "F" { at = ["0 mm", "600 mm", "300 mm"] }
tube_stock "C" {
  ordered    = "50 x 2 mm"
  bar_length = "0.5 m"
  bars       = 0
}
tube "5" {
  stock   = "C"
  through = ["F", "E"]
}
tube "6" {
  stock   = "B"
  through = ["C left", "E", "D left"]
}
`)
	rows := cutListCells(t, f)
	tubes := block(t, rows, "Tubes")
	require.Equal(t, "1, no notch", tubes[4]["first onto tube"])
	require.Contains(t, tubes[4]["remark"], "thicker than that one's 45.0 mm: no saddle can be cut for it")
	require.Empty(t, tubes[5]["developed length mm"])
	require.Contains(t, tubes[5]["remark"], "its bend_radius is not recorded")
	remarks := ""
	for _, bar := range block(t, rows, "Bars") {
		remarks += bar["stock"] + " " + bar["remark"] + "\n"
	}
	require.Contains(t, remarks, "tube 5 is longer than every bar by ")
	require.Contains(t, remarks, "1 tube of which the length cannot be told left out")
	found := ""
	for _, row := range rows[len(rows)-6:] {
		found += strings.Join(row, " ") + "\n"
	}
	require.Contains(t, found, "cannot be built")
	require.Contains(t, found, "still open")
}

// Labels of a sheet are anybody's text: no cell is more than a text or a plain figure to a
// spreadsheet, and none breaks a line.
func TestHostileLabelsInTheCutList(t *testing.T) {
	f := cageOf(t, `
joint "=1+2" { at = ["0 mm", "0 mm", "0 mm"] }
joint "@B" { at = ["0 mm", "0 mm", "1000 mm"] }
joint "+C" { at = ["900 mm", "0 mm", "500 mm"] }
tube_stock "-S" {
  ordered    = "45 x 2.5 mm"
  bar_length = "6 m"
}
tube "=cmd|'/c calc'!A1" {
  stock   = "-S"
  through = ["=1+2", "@B"]
}
tube "＝1" {
  stock   = "-S"
  through = ["@B", "+C"]
}
tube "-3" {
  stock   = "-S"
  through = ["+C", "=1+2"]
}
`)
	// A sheet's label is one line without control characters; a frame's need not be.
	f.Tubes[1].Number, f.Tubes[1].Member = "\t\r\n=1\x1b[31m", "\u202e=\n=2"
	whole := 0
	for _, row := range cutListCells(t, f) {
		for _, cell := range row {
			require.Equal(t, Safe(cell), cell)
			if cell == "" || isFigure(cell) {
				continue
			}
			require.NotContains(t, "=+-@|\t\r\n＝＋－＠｜", string([]rune(cell)[0]), cell)
			whole++
		}
	}
	require.Greater(t, whole, 50)
	require.Equal(t, "'=cmd|'/c calc'!A1", block(t, cutListCells(t, f), "Tubes")[0]["tube"])
	require.Equal(t, "-3", block(t, cutListCells(t, f), "Tubes")[2]["tube"], "a plain figure")
}

// isFigure is a second way to tell a plain figure.
func isFigure(cell string) bool {
	_, err := strconv.ParseFloat(cell, 64)
	return err == nil && regexp.MustCompile(`^[-0-9.]+$`).MatchString(cell)
}

func TestSpreadsheetCell(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.OneOf(rapid.String(), rapid.StringMatching(`[ \t\r\n]*[=+@|-]?[-=+@0-9.eE!|']{0,6}`)).Draw(t, "text")
		cell := spreadsheetCell(text)
		require.Equal(t, cell, strings.TrimSpace(cell))
		require.NotContains(t, cell, "\n")
		if cell != "" && !isFigure(cell) {
			require.NotContains(t, "=+-@|＝＋－＠｜", string([]rune(cell)[0]))
		}
	})
}

func TestCutListThatCannotBeWritten(t *testing.T) {
	f := cageOf(t, workshopSheet)
	require.ErrorIs(t, CutList(fullWriter{}, f, workshopHead(f)), errFull)
}

func TestHeadOfACage(t *testing.T) {
	head := CageHead{Sheet: "car.hcl", SheetHash: strings.Repeat("ab", 32), Car: "Tessel 16", Version: "0.3"}
	require.Equal(t, []string{Caution, TrialCaution, CertifiedCaution}, head.Cautions())
	require.Equal(t, []string{"Sheet car.hcl, Tessel 16, hash abababababab", "Made by gapsheet 0.3"}, head.Origin())
	head.Rulebook, head.Edition, head.Standing = "Kettleford Rules", "2027", "for trying the program"
	require.Equal(t, []string{"Rulebook: For trying the program.", Bulletins}, head.Cautions()[3:])
	require.Equal(t, "Rulebook Kettleford Rules, edition 2027", head.Origin()[1])
}

// Every problem of a die has its sentence with what is missing.
func TestDieWords(t *testing.T) {
	f := cageOf(t, workshopSheet)
	for problem, want := range map[cage.DieProblem]string{
		cage.OtherOutside:    "Tube 1 (main hoop) measures 40.0 mm outside, and die D is for 60.0 mm.",
		cage.OtherRadius:     "bends of 40.0 mm radius, and die D bends to 60.0 mm: 20.0 mm apart.",
		cage.TooLittleGrip:   "no more than 40.0 mm of straight at either end, and die D grips 60.0 mm: 20.0 mm are missing.",
		cage.BendsTooClose:   "40.0 mm of straight between bends 1 and 2, and die D needs 60.0 mm: 20.0 mm are missing.",
		cage.MarkBeforeStart: "would be 8.0 mm ahead of the tube's first joint",
		cage.BeyondHalfTurn:  "would have to be bent to 185.4 deg on die D for its springback, beyond a half turn by 5.4 deg.",
	} {
		fault := cage.DieFault{Problem: problem, Bend: 1, Found: 0.04, Needed: 0.06}
		switch problem {
		case cage.MarkBeforeStart:
			fault.Found, fault.Needed = -0.008, 0
		case cage.BeyondHalfTurn:
			fault.Found, fault.Needed = 1.03*math.Pi, math.Pi
		}
		require.Contains(t, findingWords(f, vehicle.FrameFinding{Kind: vehicle.DieImpossible, Tubes: []int{0}, Die: f.Tubes[0].Die, DieFault: fault}), want)
	}
	require.Panics(t, func() {
		findingWords(f, vehicle.FrameFinding{Kind: vehicle.DieImpossible, Tubes: []int{0}, Die: f.Tubes[0].Die, DieFault: cage.DieFault{Problem: "other"}})
	})
}

// Whatever tubes go through whatever joints: a list comes out of it, with the same bytes
// each time, and no figure in it is none.
func TestCutListOfAnyFrame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		coordinate := rapid.SampledFrom([]float64{-0.5, 0, 0.0004, 0.02, 0.5, 1, 1.3})
		f := &vehicle.Frame{}
		for i := range rapid.IntRange(2, 8).Draw(t, "joints") {
			at := cage.Vector{X: coordinate.Draw(t, "x"), Y: coordinate.Draw(t, "y"), Z: coordinate.Draw(t, "z")}
			f.Joints = append(f.Joints, vehicle.FrameJoint{Name: fmt.Sprint("J", i), At: at})
		}
		for i := range rapid.IntRange(0, 8).Draw(t, "tubes") {
			through := rapid.SliceOfN(rapid.IntRange(0, len(f.Joints)-1), 2, 5).Draw(t, "through")
			course := cage.Course{Radius: rapid.SampledFrom([]float64{0, 0.1, 0.135}).Draw(t, "radius")}
			for _, joint := range through {
				course.Points = append(course.Points, f.Joints[joint].At)
			}
			if !drawable(course) {
				continue
			}
			f.Tubes = append(f.Tubes, vehicle.FrameTube{Number: fmt.Sprint(i), Through: through, Course: course,
				Outside: rapid.SampledFrom([]float64{0, 0.038, 0.045, 0.0453}).Draw(t, "outside"), Wall: 0.0025})
		}
		f.Build(0.001)
		var out, again bytes.Buffer
		require.NoError(t, CutList(&out, f, CageHead{Sheet: "car.hcl"}))
		require.NoError(t, CutList(&again, f, CageHead{Sheet: "car.hcl"}))
		require.Equal(t, out.String(), again.String())
		require.NotContains(t, out.String(), "NaN")
		require.NotContains(t, out.String(), "Inf")
		require.NotContains(t, out.String(), "%!")
	})
}

// drawable is a course that a sheet may have: no fault but of its bends.
func drawable(course cage.Course) bool {
	for _, fault := range course.Check() {
		if fault.Problem != cage.RadiusTooBig && fault.Problem != cage.NoRadius {
			return false
		}
	}
	return true
}
