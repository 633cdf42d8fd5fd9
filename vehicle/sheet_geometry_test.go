package vehicle

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// geometrySheet is half of a small cage: two hoops' legs and two backstays, with a hoop from
// side to side. Coordinates are made up.
const geometrySheet = `car "Tessel 16" {}
cage {
  datum    = "jig"
  origin   = "middle of the front axle line, top of the jig table"
  saw_kerf = "3 mm"
}
instrument "laser" { tolerance = "1 mm" }
tube_stock "A" {
  ordered = "45 x 2.5 mm"
  size    = "45.0 x 2.53 mm"
}
die "1" { centreline_radius = "135 mm" }
joint "foot left" {
  at          = ["-300 mm", "600 mm", "100 mm"]
  tolerance   = "3 mm"
  mirrored_as = "foot right"
}
joint "roof left" {
  at          = ["-310 mm", "560 mm ± 1 mm", "1190 mm"]
  tolerance   = ["2 mm", "2 mm", "4 mm"]
  mirrored_as = "roof right"
}
joint "rear left" {
  x           = { reading = "-1200 mm", measured_with = "laser" }
  y           = "500 mm"
  z           = { readings = ["400 mm", "402 mm"] }
  mirrored_as = "rear right"
}
joint "rear right" { note = "as the left one" }
joint "roof middle" {
  at        = { readings = [["-310 mm", "1 mm", "1190 mm"], ["-311 mm", "-2 mm", "1192 mm"]], measured_with = "laser" }
}
tube "1" {
  part        = "main hoop"
  stock       = "A"
  through     = ["foot left", "roof left", "roof right", "foot right"]
  bend_radius = "150 mm"
}
tube "2" {
  part        = "rear brace"
  stock       = "A"
  mandatory   = true
  through     = ["roof left", "rear left"]
  mirrored_as = "3"
}
tube "3" { welded_all_round = true }
tube "4" {
  part        = "backstay diagonal"
  stock       = "A"
  through     = ["roof middle", "rear left"]
  mirrored_as = "5"
}
foot "1" {
  joint       = "foot left"
  tube        = "1"
  fixing      = "bolted"
  mirrored_as = "2"
}
foot "3" {
  joint       = "rear left"
  tube        = "2"
  mirrored_as = "4"
}
padding "1" { between = ["foot left", "roof left"] }
head "driver" {
  top           = ["-500 mm", "350 mm", "1080 mm"]
  tolerance     = "10 mm"
  helmet_radius = "140 mm"
}
`

// find is a part of a sheet by its type and label.
func find(t testing.TB, sheet *Sheet, name, label string) *Part {
	t.Helper()
	for _, p := range sheet.partsNamed(name) {
		if p.Label == label {
			return p
		}
	}
	require.Fail(t, "no "+name+" "+label)
	return nil
}

// labelsOf are the labels of parts.
func labelsOf(parts []*Part) []string {
	labels := []string{}
	for _, p := range parts {
		labels = append(labels, p.Label)
	}
	return labels
}

func TestAPlaceFillsItsThreeCoordinates(t *testing.T) {
	sheet := goodSheet(t, geometrySheet)
	roof := find(t, sheet, "joint", "roof left")
	require.Equal(t, "-310 mm, 560 ± 1 mm, 1190 mm", value(t, roof, "at").Text)
	for name, want := range map[string]string{"x": "-310 ± 2 mm", "y": "560 ± 1 mm", "z": "1190 ± 4 mm"} {
		v := value(t, roof, name)
		require.Len(t, v.Readings, 1)
		require.Equal(t, want, v.Readings[0].Figure.String(), "a tolerance of its own goes before that of the block")
	}
	require.Equal(t, 19, value(t, roof, "x").Range.Start.Line)
	require.Less(t, value(t, roof, "x").Range.Start.Column, value(t, roof, "y").Range.Start.Column)

	rear := find(t, sheet, "joint", "rear left")
	require.Equal(t, Nothing, value(t, rear, "at").State, "coordinates written singly")
	require.Equal(t, "-1200 ± 1 mm", value(t, rear, "x").Readings[0].Figure.String())
	require.Len(t, value(t, rear, "z").Readings, 2)
	middle := find(t, sheet, "joint", "roof middle")
	require.Equal(t, "-310 mm, 1 mm, 1190 mm; -311 mm, -2 mm, 1192 mm", value(t, middle, "at").Text)
	require.Equal(t, "laser", value(t, middle, "y").Readings[1].Instrument)
	require.Equal(t, "1080 ± 10 mm", value(t, find(t, sheet, "head", "driver"), "top_z").Readings[0].Figure.String())
	require.Equal(t, "jig", find(t, sheet, "cage", "").choiceWord("datum"))
}

func TestAnImageHasWhatItsOriginalSays(t *testing.T) {
	sheet := goodSheet(t, geometrySheet)
	left, right := find(t, sheet, "joint", "roof left"), find(t, sheet, "joint", "roof right")
	require.Same(t, left, right.Original)
	require.Nil(t, left.Original)
	require.Equal(t, 21, right.Range.Start.Line, "where it is named")
	v, holder := right.Value(right.Type.Particular("x"))
	require.Same(t, left, holder)
	require.Equal(t, "-310 ± 2 mm", v.Readings[0].Figure.String())
	_, holder = right.Value(right.Type.Particular("y"))
	require.Same(t, right, holder, "to the other side it is not the same figure")
	require.Equal(t, "as the left one", find(t, sheet, "joint", "rear right").Note)

	other := find(t, sheet, "tube", "3")
	require.Equal(t, []string{"roof right", "rear right"}, labelsOf(other.stated("through").Several))
	require.Equal(t, "roof right, rear right", other.stated("through").Text)
	require.Equal(t, "backstay", other.choiceWord("part"))
	require.True(t, other.stated("mandatory").Truth)
	require.True(t, other.stated("welded_all_round").Truth)
	require.Equal(t, Nothing, find(t, sheet, "tube", "2").stated("welded_all_round").State)
	v, holder = other.Value(other.Type.Particular("outside"))
	require.Equal(t, Stated, v.State)
	require.Equal(t, "tube_stock A", strings.ReplaceAll(holder.Type.Name+" "+holder.Label, "  ", " "), "the stock of its original")
	require.Equal(t, []string{"roof middle", "rear right"}, labelsOf(find(t, sheet, "tube", "5").stated("through").Several), "on the middle a joint is its own image")

	require.Equal(t, []string{"1", "2", "3", "4"}, labelsOf(sheet.partsNamed("foot")), "each image behind its original")
	foot := find(t, sheet, "foot", "2")
	require.Equal(t, "foot right", foot.stated("joint").Named.Label)
	require.Equal(t, "1", foot.stated("tube").Named.Label, "one hoop from side to side")
	require.Equal(t, "3", find(t, sheet, "foot", "4").stated("tube").Named.Label)
	require.Equal(t, "bolted", foot.choiceWord("fixing"))
}

func TestAnImageMaySpeakForItself(t *testing.T) {
	sheet := goodSheet(t, `car "C" {}
tube_stock "A" { ordered = "45 x 2.5 mm" }
tube_stock "B" { ordered = "38 x 2.5 mm" }
tube "2" {
  stock     = "B"
  mandatory = false
  through   = ["Q", "R"]
}
joint "P2" { at = ["1 mm", "-498 mm", "3 mm"] }
joint "P" {
  at = ["0 mm", "500 mm", "0 mm"]
  mirrored_as = "P2"
}
joint "Q" { at = ["0 mm", "-500 mm", "1000 mm"] }
joint "R" { at = ["0 mm", "0 mm", "1000 mm"] }
tube "1" {
  stock       = "A"
  mandatory   = true
  through     = ["P", "R"]
  mirrored_as = "2"
}
`)
	image := find(t, sheet, "joint", "P2")
	require.Same(t, find(t, sheet, "joint", "P"), image.Original)
	at, known := placeOf(image)
	require.True(t, known)
	require.InDelta(t, 0.001, at.X, 1e-12)
	require.InDelta(t, -0.498, at.Y, 1e-12)
	tube := find(t, sheet, "tube", "2")
	require.Equal(t, []string{"Q", "R"}, labelsOf(tube.stated("through").Several))
	require.False(t, tube.stated("mandatory").Truth)
	v, holder := tube.Value(tube.Type.Particular("ordered_outside"))
	require.Equal(t, "B", holder.Label, "its own stock goes before its original's")
	require.InDelta(t, 0.038, v.Readings[0].Figure.Reading, 1e-12)
}

func TestCornersEndsAndMeetingsFollow(t *testing.T) {
	sheet := goodSheet(t, geometrySheet)
	hoop := find(t, sheet, "tube", "1")
	corners, ends := list(t, hoop, "corner"), list(t, hoop, "end")
	require.Equal(t, []string{"roof left", "roof right"}, labelsOf(corners.Parts))
	require.Same(t, find(t, sheet, "joint", "roof right"), corners.Parts[1].stated("joint").Named)
	require.Zero(t, corners.Parts[0].Range)
	require.True(t, corners.Complete)
	require.Equal(t, []string{"first", "last"}, labelsOf(ends.Parts))
	require.Equal(t, "foot right", ends.Parts[1].stated("joint").Named.Label)
	require.True(t, ends.Complete)

	straight := list(t, find(t, sheet, "tube", "3"), "corner")
	require.Empty(t, straight.Parts)
	require.True(t, straight.Complete)
	require.Equal(t, quantity.No, straight.Fitted)

	meetings := list(t, find(t, sheet, "joint", "rear left"), "meeting")
	require.Equal(t, []string{"2 and 4"}, labelsOf(meetings.Parts))
	require.True(t, meetings.Complete)
	require.Equal(t, "4", meetings.Parts[0].stated("other").Named.Label)
	middle := list(t, find(t, sheet, "joint", "roof middle"), "meeting")
	require.Equal(t, []string{"1 and 4", "1 and 5", "4 and 5"}, labelsOf(middle.Parts), "it lies on the hoop")
	require.Equal(t, []string{"1 and 2"}, labelsOf(list(t, find(t, sheet, "joint", "roof left"), "meeting").Parts))
}

func TestWhatFollowsIsCompleteOnlyWhereNothingCanBeAdded(t *testing.T) {
	sheet := goodSheet(t, geometrySheet+"unfinished = [\"tube\"]\n")
	meetings := list(t, find(t, sheet, "joint", "rear left"), "meeting")
	require.Len(t, meetings.Parts, 1)
	require.False(t, meetings.Complete)
	require.True(t, list(t, find(t, sheet, "tube", "1"), "corner").Complete)

	sheet = goodSheet(t, geometrySheet+"tube \"6\" {\ncorner \"knee\" { angle = \"30 deg\" }\n}\n")
	require.False(t, list(t, find(t, sheet, "joint", "rear left"), "meeting").Complete, "tube 6 may go anywhere")
	require.False(t, list(t, find(t, sheet, "joint", "foot left"), "meeting").Complete)
	byHand := list(t, find(t, sheet, "tube", "6"), "corner")
	require.Equal(t, []string{"knee"}, labelsOf(byHand.Parts))
	require.True(t, byHand.Complete)
	require.False(t, list(t, find(t, sheet, "tube", "6"), "end").Complete)
}

func TestABlockCompletesWhatFollows(t *testing.T) {
	text := strings.Replace(geometrySheet, `  bend_radius = "150 mm"
`, `  bend_radius = "150 mm"
  corner "roof left" { angle = "88 deg" }
  end "last" { to_foot = "0 mm" }
`, 1)
	text = strings.Replace(text, `joint "rear right" { note`, `joint "rear right" {
  meeting "5 and 3" { angle = "25.6 deg" }
  note`, 1)
	sheet := goodSheet(t, strings.Replace(text, `"as the left one" }`, `"as the left one"
}`, 1))
	hoop := find(t, sheet, "tube", "1")
	corners := list(t, hoop, "corner").Parts
	require.Len(t, corners, 2)
	require.Equal(t, Stated, corners[0].stated("angle").State)
	require.Equal(t, "roof left", corners[0].stated("joint").Named.Label)
	require.Len(t, list(t, hoop, "end").Parts, 2)
	meetings := list(t, find(t, sheet, "joint", "rear right"), "meeting")
	require.Equal(t, []string{"5 and 3"}, labelsOf(meetings.Parts))
	require.Equal(t, "5", meetings.Parts[0].stated("one").Named.Label)
}

func TestFilesMayStandInAnyOrder(t *testing.T) {
	blocks := strings.Split(geometrySheet, "\n}\n")
	var turned []string
	for i := len(blocks) - 1; i >= 0; i-- {
		if block := strings.TrimSpace(blocks[i]); block != "" {
			turned = append(turned, block+"\n}\n")
		}
	}
	sheet := goodSheet(t, strings.Join(turned, ""))
	require.Equal(t, []string{"roof right", "rear right"}, labelsOf(find(t, sheet, "tube", "3").stated("through").Several))
	require.Len(t, list(t, find(t, sheet, "joint", "roof middle"), "meeting").Parts, 3)
}

func TestFarTooManyJointsAreOneMessage(t *testing.T) {
	var text strings.Builder
	text.WriteString("car \"C\" {}\n")
	for i := range 10000 {
		fmt.Fprintf(&text, "joint \"%d\" {\nat = [\"%d mm\", \"0 mm\", \"0 mm\"]\n}\n", i, i)
	}
	begin := time.Now()
	sheet, faults := loadText(t, text.String())
	require.Nil(t, sheet)
	require.Len(t, faults, 1)
	require.Equal(t, Code("cage-too-large"), CodeOf(faults[0]))
	require.Contains(t, faults[0].Detail, "more than 1000 joints")
	require.Less(t, time.Since(begin), 5*time.Second)

	text.Reset()
	text.WriteString("car \"C\" {}\n")
	for i := range 151 {
		fmt.Fprintf(&text, "tube \"%d\" { mirrored_as = \"m%d\" }\n", i, i)
	}
	_, faults = loadText(t, text.String())
	require.Len(t, faults, 1)
	require.Contains(t, faults[0].Detail, "more than 300 tubes, mirror images counted")
}
