package report

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// Whatever a frame holds, the sheet is whole, everything on it has its room, and what is
// drawn has a size that can be seen.
func TestDrawingOddFrames(t *testing.T) {
	one := func(x, y, z float64) *vehicle.Frame {
		m := newFrame()
		m.joint("A", 0, 0, 0)
		m.joint("B", x, y, z)
		m.tube("1", "", 40, "A", "B")
		return m.notched()
	}
	for name, frame := range map[string]*vehicle.Frame{
		"nothing":         {},
		"upright tube":    one(0, 0, 1200),
		"tube along x":    one(900, 0, 0),
		"tube along y":    one(0, 900, 0),
		"tube to the eye": one(700, 700, 700),
		"far away":        resized(handMadeCage(), 1, cage.Vector{X: 900e3, Y: -900e3, Z: 5}),
		"flat":            flattened(handMadeCage()),
		"huge":            resized(handMadeCage(), 3e5, cage.Vector{}),
		"tiny":            resized(handMadeCage(), 1e-3, cage.Vector{}),
		"tiny, one tube":  resized(one(500, 0, 0), 1e-3, cage.Vector{}),
		"six metres":      one(6000, 200, 100),
		"many in a place": crowd(40, 0),
		"many":            crowd(80, 30),
	} {
		t.Run(name, func(t *testing.T) {
			verdicts := map[*vehicle.Part]engine.Verdict{}
			for i := range frame.Tubes {
				verdicts[frame.Tubes[i].Part] = engine.Verdicts()[i%len(engine.Verdicts())]
			}
			requireSheet(t, frame, verdicts, judgedHead())
			d := newDrawing(frame, verdicts, judgedHead())
			views := requireRoom(t, d)
			widest := 0.0
			for _, v := range views {
				for _, tube := range drawnTubes(v, d) {
					box := boxOf(tube.line)
					widest = max(widest, box.wide, box.high)
				}
			}
			if len(frame.Tubes) > 0 {
				require.Greater(t, widest, 15.0, "not lost on the paper")
			}
		})
	}
}

// resized is a frame so many times as large, moved.
func resized(f *vehicle.Frame, times float64, by cage.Vector) *vehicle.Frame {
	for i := range f.Joints {
		f.Joints[i].At = f.Joints[i].At.Times(times).Plus(by)
	}
	for i := range f.Tubes {
		tube := &f.Tubes[i]
		tube.Outside *= times
		tube.Course.Radius *= times
		for j, joint := range tube.Through {
			tube.Course.Points[j] = f.Joints[joint].At
		}
	}
	return f
}

// flattened is a frame with all its joints on y = 0; tubes across have no length left.
func flattened(f *vehicle.Frame) *vehicle.Frame {
	for i := range f.Joints {
		f.Joints[i].At.Y = 0
	}
	return resized(f, 1, cage.Vector{})
}

// crowd is a frame of many tubes beside each other, so many millimetres apart.
func crowd(count int, between float64) *vehicle.Frame {
	m := newFrame()
	for i := range count {
		from, to := fmt.Sprintf("joint %d", 2*i), fmt.Sprintf("joint %d", 2*i+1)
		m.joint(from, float64(i)*between, 0, 0)
		m.joint(to, float64(i)*between, 800, 600)
		m.tube(fmt.Sprintf("tube %d", i), "other", 38, from, to)
	}
	return m.notched()
}

// Labels without room are left out, and the key says how many.
func TestDrawingSaysWhatHasNoRoom(t *testing.T) {
	sheet := drawn(t, crowd(80, 30), nil, handMadeHead())
	require.Regexp(t, `>\d+ labels left out for<|>\d+ labels left out for want of`, sheet)
	require.NotContains(t, drawn(t, handMadeCage(), nil, handMadeHead()), "left out")
}

func TestDrawingNamesWhatHasNoPlace(t *testing.T) {
	frame := handMadeCage()
	frame.Tubes[3].Course.Points[1].Y = math.NaN()
	frame.Joints[0].At.Z = math.Inf(1)
	gone := partOf("tube", "41")
	frame.Unplaced = []*vehicle.Part{gone, partOf("joint", "X left")}
	sheet := requireSheet(t, frame, map[*vehicle.Part]engine.Verdict{gone: engine.NotRecorded}, judgedHead())
	require.Contains(t, wordsOf(sheet), "Not drawn, as the place is not known: tube 41 (not recorded), joint X left and tube 4.")

	frame = &vehicle.Frame{}
	for i := range 500 {
		frame.Unplaced = append(frame.Unplaced, partOf("tube", fmt.Sprint(i)))
	}
	sheet = wordsOf(requireSheet(t, frame, nil, handMadeHead()))
	require.Contains(t, sheet, "No tube can be drawn. Not drawn, as the place is not known: tube 0, tube 1,")
	require.Contains(t, sheet, "tube 11 and 488 others.")
	require.Contains(t, wordsOf(requireSheet(t, &vehicle.Frame{}, nil, handMadeHead())), "No tube can be drawn.")
}

// wordsOf joins the texts of a sheet, so that a sentence that is broken into lines is whole.
func wordsOf(sheet string) string {
	var words []string
	for _, line := range strings.Split(sheet, "\n") {
		if strings.HasPrefix(line, "<text") {
			_, line, _ = strings.Cut(line, ">")
			words = append(words, strings.TrimSuffix(line, "</text>"))
		}
	}
	return strings.Join(words, " ")
}

// Texts from files end no element, steer no reader and run out of no field.
func TestDrawingHostileTexts(t *testing.T) {
	hostile := []string{
		`<script>alert("x")</script>`, `"/><image href="http://invalid/"/>`, "a\x00b\x1b[2J\ufffe\uffff", "\xff\xfe", "]]>&amp;&lt;",
		strings.Repeat("W", 4000), strings.Repeat("very long ", 400), "日本語" + strings.Repeat("工", 300), "\u202etfel", "", "  \n\t ", "e\u0301\u0301\u0301",
	}
	frame := handMadeCage()
	for i := range frame.Tubes {
		text := hostile[i%len(hostile)]
		frame.Tubes[i].Number, frame.Tubes[i].Member = text, text
	}
	for i := range frame.Joints {
		frame.Joints[i].Name = hostile[i%len(hostile)]
	}
	for _, text := range hostile {
		frame.Unplaced = append(frame.Unplaced, partOf("tube", text))
	}
	for _, text := range hostile {
		head := CageHead{Sheet: text, SheetHash: "0123456789abcdef", Car: text, Rulebook: text + "a", Edition: text, BookHash: "fedcba9876543210", Standing: text, Version: text}
		sheet := requireSheet(t, frame, handMadeVerdicts(frame), head)
		require.NotContains(t, sheet, "<script")
		require.NotContains(t, sheet, "<image")
		require.Less(t, len(sheet), 300_000)
		requireRoom(t, newDrawing(frame, handMadeVerdicts(frame), head))
	}
}

// The greatest cage a sheet may hold is drawn, too, in a moment.
func TestDrawingOfManyTubes(t *testing.T) {
	if testing.Short() {
		t.Skip("takes a second")
	}
	frame := crowd(1000, 5)
	sheet := drawn(t, frame, nil, handMadeHead())
	require.Contains(t, sheet, "labels left out")
}
