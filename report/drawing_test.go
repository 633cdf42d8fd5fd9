package report

import (
	"encoding/xml"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

func TestDrawingGolden(t *testing.T) {
	frame := handMadeCage()
	requireGolden(t, "drawing_plain.svg", requireSheet(t, frame, nil, handMadeHead()))
	judged := requireSheet(t, frame, handMadeVerdicts(frame), judgedHead())
	requireGolden(t, "drawing_judged.svg", judged)
	require.Equal(t, judged, drawn(t, frame, handMadeVerdicts(frame), judgedHead()), "the same bytes again")
}

var (
	numbersIn = regexp.MustCompile(`-?\d+(?:\.\d+)?|NaN|Inf`)
	decimals  = regexp.MustCompile(`^-?\d+(\.\d{1,2})?$`)
)

// allowed are the two characters that XML 1.0 forbids beside those that Safe writes out.
var allowed = strings.NewReplacer("\ufffe", "\ufffd", "\uffff", "\ufffd")

// requireSheet draws a sheet and holds it to what every sheet has to be: XML that a strict
// reader takes (XML 1.0), nothing in it that runs or is fetched, a title for those who
// hear it, no number that is none or has more than two decimals, no text below 2 mm, all
// cautions.
func requireSheet(t *testing.T, f *vehicle.Frame, verdicts map[*vehicle.Part]engine.Verdict, h CageHead) string {
	t.Helper()
	sheet := drawn(t, f, verdicts, h)
	requireHarmless(t, sheet)
	reader := xml.NewDecoder(strings.NewReader(sheet))
	names := map[string]int{}
	var words []string
	for {
		token, err := reader.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.CharData:
			words = append(words, strings.TrimSpace(string(token)))
		case xml.StartElement:
			names[token.Name.Local]++
			requireAttributes(t, token)
		}
	}
	for name := range names {
		require.Contains(t, []string{"svg", "title", "desc", "rect", "g", "path", "line", "circle", "text"}, name)
	}
	require.True(t, strings.HasPrefix(sheet, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"297mm\" height=\"210mm\" viewBox=\"0 0 297 210\" role=\"img\""))
	said := strings.Join(words, " ")
	for _, caution := range newDrawing(f, verdicts, h).head.Cautions() {
		require.Contains(t, said, allowed.Replace(Safe(caution)))
	}
	require.Contains(t, said, Caution, "whole and on one line in the head")
	return sheet
}

func requireAttributes(t *testing.T, element xml.StartElement) {
	t.Helper()
	for _, attribute := range element.Attr {
		switch attribute.Name.Local {
		case "x", "y", "x1", "y1", "x2", "y2", "cx", "cy", "r", "rx", "d", "stroke-width", "stroke-dasharray", "stroke-dashoffset", "font-size":
			require.NotRegexp(t, "NaN|Inf|-0( |$)", attribute.Value)
			for _, number := range numbersIn.FindAllString(attribute.Value, -1) {
				require.Regexp(t, decimals, number)
			}
		case "href", "src", "style":
			t.Errorf("%s refers to something outside or hides it", attribute.Name.Local)
		}
		if attribute.Name.Local == "font-size" {
			size, err := strconv.ParseFloat(attribute.Value, 64)
			require.NoError(t, err)
			require.GreaterOrEqual(t, size*0.716, 2.0, "capital letters of common sans-serif faces are 0.716 of the size high")
		}
		require.False(t, strings.HasPrefix(attribute.Name.Local, "on"), "nothing runs")
	}
}

// ISO 5456-2 (from memory), first-angle projection with the side, seen from the left, as
// principal view, and the axes of ISO 8855: closed forms of the coordinates on paper.
func TestDrawingProjections(t *testing.T) {
	p := cage.Vector{X: 1.25, Y: 0.5, Z: 0.75}
	require.Equal(t, spot{-1.25, -0.75}, sideView.seen(p), "forward is to the left, up is up")
	require.Equal(t, spot{0.5, -0.75}, frontView.seen(p), "the car's left is to the right of who faces it")
	require.Equal(t, spot{-1.25, 0.5}, planView.seen(p), "below the side view the car's left is at the bottom")
	for _, v := range []viewpoint{sideView, frontView, planView} {
		right, up, eye := v.across, v.up, v.toward
		require.Equal(t, eye, right.Cross(up), "a view of the car and not of its mirror image: %s", v.title)
	}
}

// ISO 5456-3 (from memory): x, y and z 120° apart on paper, x and y at 30° to the level,
// all three to the same scale. The corners of a unit cube are those of a regular hexagon,
// and two of them its middle.
func TestDrawingIsometricCube(t *testing.T) {
	half, long := 0.5, math.Sqrt(3)/2
	for corner, want := range map[cage.Vector]spot{
		{}:                 {0, 0},
		{X: 1}:             {-long, half},
		{Y: 1}:             {long, half},
		{Z: 1}:             {0, -1},
		{X: 1, Y: 1}:       {0, 1},
		{X: 1, Z: 1}:       {-long, -half},
		{Y: 1, Z: 1}:       {long, -half},
		{X: 1, Y: 1, Z: 1}: {0, 0},
	} {
		seen := isometric.seen(corner)
		require.InDelta(t, want.x, seen.x, 1e-15, "%v", corner)
		require.InDelta(t, want.y, seen.y, 1e-15, "%v", corner)
	}
	require.InDelta(t, 0, isometric.toward.Angle(isometric.across.Cross(isometric.up)), 1e-15, "seen along the cube's diagonal, not mirrored")
	require.InDelta(t, 1, isometric.toward.Norm(), 1e-15)
}

// ISO 5455 (from memory): recommended scales are 1, 2 and 5 times powers of ten.
func TestDrawingScales(t *testing.T) {
	var words []string
	for _, s := range commonScales[6:19] {
		words = append(words, s.String())
	}
	require.Equal(t, strings.Fields("10:1 5:1 2:1 1:1 1:2 1:2.5 1:5 1:10 1:20 1:25 1:50 1:100 1:200"), words)
	for _, scales := range [][]scale{commonScales, isometricScales} {
		for i := 1; i < len(scales); i++ {
			require.Greater(t, scales[i], scales[i-1])
		}
	}
}

// The scale bar is as long on paper as its length of car at the scale: 1000 mm at 1:25 are
// 40 mm.
func TestDrawingScaleBar(t *testing.T) {
	require.InDelta(t, 1000, scale(25).barLength(longestBar), 1e-9)
	for _, s := range commonScales {
		parts := barAreas(area{}, s)
		length := s.barLength(longestBar)
		require.InDelta(t, length, (parts[0].wide+parts[1].wide)*float64(s), 1e-9*length)
		require.Equal(t, parts[0].right(), parts[1].x)
		require.LessOrEqual(t, parts[1].right()-parts[0].x, float64(longestBar)+1e-9)
		require.Greater(t, parts[1].right()-parts[0].x, longestBar/2.5-1e-9)
	}
	d := newDrawing(handMadeCage(), nil, handMadeHead())
	plan, _, _ := d.arrange()
	require.Equal(t, scale(25), plan.scale)
	require.Regexp(t, `<rect [^>]*width="20" height="1.4" fill="#000"[^>]*/>\n<rect [^>]*width="20" height="1.4" fill="#fff"`, d.sheet())
}

// What one view shows across or up the others show in line with it, at one scale: a metre
// is 40 mm at 1:25.
func TestDrawingViewsAreInLine(t *testing.T) {
	d := newDrawing(handMadeCage(), nil, handMadeHead())
	_, _, views := d.arrange()
	side, front, plan := views[0], views[1], views[2]
	for _, p := range []cage.Vector{{}, {X: 1, Y: 1, Z: 1}, {X: -0.3, Y: 0.65, Z: 0.06}} {
		require.InDelta(t, side.on(p).x, plan.on(p).x, 1e-9)
		require.InDelta(t, side.on(p).y, front.on(p).y, 1e-9)
	}
	require.InDelta(t, 40, side.on(cage.Vector{}).x-side.on(cage.Vector{X: 1}).x, 1e-9)
	require.InDelta(t, 40, front.on(cage.Vector{Y: 1}).x-front.on(cage.Vector{}).x, 1e-9)
	require.InDelta(t, 40, plan.on(cage.Vector{Y: 1}).y-plan.on(cage.Vector{}).y, 1e-9)
	require.InDelta(t, 1000/float64(views[3].scale), views[3].on(cage.Vector{}).y-views[3].on(cage.Vector{Z: 1}).y, 1e-9)
}

// Of two tubes that cross on paper the one nearer to the eye is drawn over the other; where one is notched onto the
// other its end goes below.
func TestDrawingNearTubesPassOver(t *testing.T) {
	m := newFrame()
	m.joint("A", 0, 0, 0)
	m.joint("B", 1000, 0, 1000)
	m.joint("C", 1000, 300, 0)
	m.joint("D", 0, 300, 1000)
	m.joint("E", 500, 0, 500)
	m.joint("F", 900, 400, 500)
	m.tube("near", "", 40, "C", "D")
	m.tube("far", "", 40, "A", "B")
	m.tube("onto far", "", 40, "E", "F")
	d := newDrawing(m.notched(), nil, handMadeHead())
	require.Equal(t, 1, m.Tubes[2].Ends[0].Onto)
	_, _, views := d.arrange()
	tubes := drawnTubes(views[0], d)
	found := crossings(tubes, views[0], d)
	pairs := map[[2]int]bool{}
	for _, c := range found {
		pairs[[2]int{c.over, c.under}] = true
	}
	require.Equal(t, map[[2]int]bool{{0, 1}: true, {0, 2}: true, {1, 2}: true}, pairs)
	order, wrong := drawingOrder(tubes, found)
	require.Equal(t, []int{2, 1, 0}, order)
	require.Empty(t, wrong)

	order, wrong = drawingOrder(tubes, append(found, crossing{over: 2, under: 0, along: 1, half: 2}))
	require.Len(t, order, 3)
	require.NotEmpty(t, wrong, "in a circle one of them has to be drawn once more")
}

func TestDrawingTellsOfAWriterThatFails(t *testing.T) {
	require.ErrorIs(t, Drawing(fullWriter{}, handMadeCage(), nil, handMadeHead()), errFull)
}
