package report

import (
	"bytes"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/sfnt"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

func TestParsePaper(t *testing.T) {
	for name, want := range map[string]Paper{"A4": A4, "a4": A4, "Letter": Letter, "LETTER": Letter} {
		paper, err := ParsePaper(name)
		require.NoError(t, err)
		require.Equal(t, want, paper)
	}
	_, err := ParsePaper("A3\x1b[2J")
	require.EqualError(t, err, `there is no paper "A3<U+001B>[2J" here: write A4 or Letter`)
}

func TestTemplatesAreTheSameBytesAgain(t *testing.T) {
	want, _ := templatesOf(t, shopFrame(t), A4, shopHead())
	for range 5 {
		again, _ := templatesOf(t, shopFrame(t), A4, shopHead())
		require.True(t, bytes.Equal(want, again))
	}
	require.Contains(t, string(want), "/ViewerPreferences << /PrintScaling /None >>")
	require.ErrorIs(t, Templates(fullWriter{}, shopFrame(t), A4, shopHead()), errFull)
}

// hostile is a text that would steer a reader, break out of a string of a PDF, or turn the
// order of letters round; with letters that the font has not.
const hostile = "5) Tj ET\nendstream \\(\x1b[2J\u202e日本 αβ Ж ñ"

// Text of the sheet stays text on the page, whole where there is room.
func TestTemplatesOfAHostileSheet(t *testing.T) {
	f := shopFrame(t)
	f.Tubes[1].Number = hostile
	f.Joints[4].Name = strings.Repeat("very long name ", 5000)
	f.Joints[5].Name = hostile
	part := &vehicle.Part{Type: &vehicle.PartType{Name: "tube"}, Label: hostile}
	f.Unplaced = append(f.Unplaced, part)
	head := CageHead{Sheet: hostile, Car: strings.Repeat("W", 3000), Rulebook: "R", Standing: strings.Repeat("never mind the cautions ", 400)}
	for _, paper := range []Paper{A4, Letter} {
		pdf, pages := templatesOf(t, f, paper, head)
		require.Equal(t, 1, bytes.Count(pdf, []byte("/Type /Catalog")))
		var all strings.Builder
		for _, page := range pages {
			for _, text := range page.texts {
				all.WriteString(text + "\n")
				require.NotContains(t, text, "\x1b")
				require.NotContains(t, text, "\u202e")
			}
			text := strings.Join(page.texts, " ")
			for _, caution := range []string{Caution, TrialCaution, CertifiedCaution, Bulletins} {
				require.Contains(t, text, caution)
			}
		}
		require.Contains(t, all.String(), `Not known where it is, so left out: tube 5) Tj ET endstream \(<U+001B>[2J<U+202E>?? αβ Ж ñ.`)
		require.Contains(t, all.String(), "…, last end", "a number is cut, the end stays")
		require.Regexp(t, `at joint very long name .*\n.*…\n`, all.String())
	}
}

// Nothing is written outside the template it belongs to, however narrow the tube.
func TestTemplatesFitWordsToTheTube(t *testing.T) {
	for _, outside := range []float64{6, 12, 20, 30} {
		f := shopFrameOf(t, []vehicle.FrameJoint{shopJoint("A", 0, -500, 0), shopJoint("B", 0, 500, 0), shopJoint("upper joint of the seat bar", 0, 0, 0), shopJoint("D", 0, 200, 900)},
			[]shopTube{{"1", 45, []int{0, 1}, 0, [2]int{-1, -1}}, {"2", outside, []int{2, 3}, 0, [2]int{0, -1}}})
		s := newTemplateSheet(A4, shopHead())
		planned, _ := planTemplates(s, f)
		piece := s.newPiece(planned[0], 0, 1)
		for i, line := range piece.lines {
			s.use(regularType, textType)
			if i == 0 {
				s.use(boldType, headType)
			}
			require.LessOrEqual(t, s.pdf.GetStringWidth(line), max(0, piece.round()-2*textInset)+2, "%v mm: %q", outside, line)
		}
		_, pages := templatesOf(t, f, A4, shopHead())
		require.Len(t, pages[1].curves(), 1)
	}
}

// What a regular font has not, the bold one has not either, so that one check is enough.
func TestTemplateFontsHaveTheSameLetters(t *testing.T) {
	s := newTemplateSheet(A4, CageHead{})
	heavy, err := sfnt.Parse(gobold.TTF)
	require.NoError(t, err)
	letters := 0
	for r := rune(32); r < 0xffff; r++ {
		regular, _ := s.glyphs.GlyphIndex(&s.buffer, r)
		other, _ := heavy.GlyphIndex(&s.buffer, r)
		require.Equal(t, regular == 0, other == 0, "%U", r)
		if regular != 0 {
			letters++
		}
	}
	require.Greater(t, letters, 600)
}

// The mark for the inside of the bend stands where the tube bends to, at either end
// (elementary geometry: the inside is the side of the arc's centre).
func TestTemplateMarksTheInsideOfTheBend(t *testing.T) {
	f := shopFrame(t)
	planned, _ := planTemplates(newTemplateSheet(A4, shopHead()), f)
	checked := 0
	for _, template := range planned {
		for _, mark := range template.marks {
			if !strings.HasPrefix(mark.words, "inside of bend") {
				continue
			}
			tube := template.end.tube
			pieces := tube.Course.Pieces()
			end, out, near := tube.Ends[0], pieces[0].Direction(0), pieces[1]
			inward := near.Centre.Minus(near.From)
			if template.end.last {
				end, out, near = tube.Ends[1], pieces[len(pieces)-1].Direction(1).Times(-1), pieces[len(pieces)-2]
				inward = near.Centre.Minus(near.To)
			}
			side := end.Seat.Toward.Turned(out, mark.at)
			require.InDelta(t, 0, side.Angle(inward), 1e-9, "tube %s", tube.Number)
			checked++
		}
	}
	require.Equal(t, 3, checked)
}

// The mark "faces" looks along the main tube toward the joint it names.
func TestTemplateMarksTheJointItFaces(t *testing.T) {
	f := shopFrame(t)
	places := map[string]cage.Vector{}
	for _, joint := range f.Joints {
		places[joint.Name] = joint.At
	}
	planned, _ := planTemplates(newTemplateSheet(A4, shopHead()), f)
	checked := 0
	for _, template := range planned {
		name, ok := strings.CutPrefix(template.marks[0].words, "faces ")
		require.True(t, ok)
		along, _, node, _ := wrapping(f, template.end.tube, template.end.last)
		end := template.end.tube.Ends[0]
		if template.end.last {
			end = template.end.tube.Ends[1]
		}
		side := end.Seat.Toward.Turned(along, template.marks[0].at)
		toward := places[name].Minus(node.Times(0.001))
		require.Less(t, side.Angle(toward.Minus(along.Times(toward.Dot(along)))), 10*math.Pi/180, "tube %s, %s", template.end.tube.Number, name)
		checked++
	}
	require.Greater(t, checked, 10)
}

// A cage without any notch still says what it is, and what becomes of each end.
func TestTemplatesOfNothing(t *testing.T) {
	f := shopFrameOf(t, []vehicle.FrameJoint{shopJoint("A", 0, 0, 0), shopJoint("B", 0, 900, 0)}, []shopTube{{"1", 38, []int{0, 1}, 0, [2]int{-1, -1}}})
	_, pages := templatesOf(t, f, A4, CageHead{Sheet: "one.hcl"})
	require.Len(t, pages, 1)
	text := strings.Join(pages[0].texts, "\n")
	require.Contains(t, text, "Cut square, no notch: tubes 1 first end, 1 last end.")
	require.Contains(t, text, "None: no end of a tube needs a notch that can be drawn.")
	_, pages = templatesOf(t, &vehicle.Frame{}, A4, CageHead{Sheet: "none.hcl"})
	require.Len(t, pages, 1)
}

// A long list goes on over several pages, with the right numbers.
func TestTemplatesOfManyTubes(t *testing.T) {
	joints := []vehicle.FrameJoint{shopJoint("A", 0, -500, 0), shopJoint("B", 0, 500, 0)}
	tubes := []shopTube{{"main", 45, []int{0, 1}, 0, [2]int{-1, -1}}}
	for i := range 60 {
		y := float64(i*15 - 450)
		joints = append(joints, shopJoint("", 0, y, 0), shopJoint("", 0, y, 900))
		tubes = append(tubes, shopTube{"t", 38, []int{2 + 2*i, 3 + 2*i}, 0, [2]int{0, -1}})
	}
	_, pages := templatesOf(t, shopFrameOf(t, joints, tubes), A4, shopHead())
	front, curves := 0, 0
	for _, page := range pages {
		curves += len(page.curves())
		if len(page.curves()) == 0 {
			front++
		}
	}
	require.Equal(t, 60, curves)
	require.Greater(t, front, 1)
	for _, page := range pages {
		for i, at := range page.written {
			require.False(t, at.Y > 20.5 && at.Y < 23, "%q runs into the foot", page.texts[i])
		}
	}
	last := pages[front-1].texts
	require.Contains(t, last, "90.0°")
	require.Contains(t, strings.Join(last, "\n"), "\n"+fmt.Sprint(len(pages)), "the last template is on the last page")
}
