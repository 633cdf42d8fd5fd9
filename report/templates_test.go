package report

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// templatesOf writes templates and reads them back.
func templatesOf(t *testing.T, f *vehicle.Frame, paper Paper, head CageHead) ([]byte, []readPage) {
	var out bytes.Buffer
	require.NoError(t, Templates(&out, f, paper, head))
	return out.Bytes(), readPDF(t, out.Bytes())
}

// placedOn are the pieces in the order in which they are drawn, with the page of each.
func placedOn(f *vehicle.Frame, paper Paper, head CageHead) (pieces []*templatePiece, pages []int) {
	s := newTemplateSheet(paper, head)
	planned, _ := planTemplates(s, f)
	laid, _ := layTemplates(s, planned)
	for i, page := range laid {
		for _, placed := range page.placed {
			pieces, pages = append(pieces, placed.piece), append(pages, i)
		}
	}
	return pieces, pages
}

// Every point of every curve, as it is on the page, wrapped round its tube in space with the
// print outside and the joint below: it must lie on the main tube's surface, and the edges
// must be on one line along the tube at both its ends. The surface is that of a cylinder
// (elementary geometry); nothing of the profile's formula is used. Points are written to a
// hundredth of a typographic point, 0.0035 mm.
func TestTemplatesWrapOntoTheMainTube(t *testing.T) {
	for _, paper := range []Paper{A4, Letter} {
		f := shopFrame(t)
		_, pages := templatesOf(t, f, paper, shopHead())
		pieces, at := placedOn(f, paper, shopHead())
		front := len(pages) - at[len(at)-1] - 1
		next, checked := map[int]int{}, 0
		for i, piece := range pieces {
			page := pages[front+at[i]]
			curve := page.curves()[next[at[i]]]
			next[at[i]]++
			tube := piece.of.end.tube
			radius := 500 * tube.Outside
			width := curve.points[len(curve.points)-1].X - curve.points[0].X
			require.InDelta(t, 2*math.Pi*radius/float64(piece.parts), width, 0.01, "the way round tube %s", tube.Number)
			line := page.longPointLine(t, curve)
			long, _ := piece.of.notch.LongPoint()
			along, witness, node, surface := wrapping(f, tube, piece.of.end.last)
			witness = witness.Turned(along, 2*math.Pi*float64(piece.part)/float64(piece.parts))
			for _, point := range curve.points {
				out := witness.Turned(along, (point.X-curve.points[0].X)/radius)
				place := node.Plus(out.Times(radius)).Plus(along.Times(1000*long + point.Y - line))
				require.InDelta(t, 0, surface(place), 0.02, "tube %s, %s", tube.Number, piece.of.end.name())
				checked++
			}
		}
		for i := range pages[front:] {
			require.Len(t, pages[front+i].curves(), next[i])
		}
		require.Greater(t, checked, 16*100)
	}
}

// wrapping returns, in millimetres: the way out of a tube's end, the side of the line W
// there (of a bent tube as the bends carry it), the node, and how far a place is from the
// surface of the tube that the end sits on.
func wrapping(f *vehicle.Frame, tube *vehicle.FrameTube, last bool) (along, witness, node cage.Vector, surface func(cage.Vector) float64) {
	end := tube.Ends[0]
	witness = end.Seat.Toward
	along = tube.Course.Pieces()[0].Direction(0)
	if last {
		end = tube.Ends[1]
		pieces := tube.Course.Pieces()
		along = pieces[len(pieces)-1].Direction(1).Times(-1)
		if tube.Ends[0].Onto < 0 || tube.Ends[0].Seat.Notch.Check() != nil {
			witness = end.Seat.Toward // nothing to match
		} else {
			for _, piece := range pieces {
				if piece.Turn != 0 {
					witness = witness.Turned(piece.Normal, piece.Turn)
				}
			}
		}
	}
	main := f.Tubes[end.Onto]
	node = f.Joints[end.Joint].At.Times(1000)
	nearest, axis, through := math.Inf(1), cage.Vector{}, cage.Vector{}
	for i := 1; i < len(main.Course.Points); i++ {
		run := cage.Segment{From: main.Course.Points[i-1].Times(1000), To: main.Course.Points[i].Times(1000)}
		if _, away := run.Nearest(node); away < nearest {
			nearest, through = away, run.From
			axis, _ = run.To.Minus(run.From).Unit()
		}
	}
	return along, witness, node, func(place cage.Vector) float64 {
		return place.Minus(through).Cross(axis).Norm() - 500*main.Outside
	}
}

// The height of the curve against the closed form of two crossing cylinders without offset,
// 38 mm at right angles on 45 mm: √(R² - r² sin² p) above the node, so R - √(R² - r²) =
// 10.447 mm deep, and no chord farther than 0.05 mm off.
func TestTemplateOfASquareNotch(t *testing.T) {
	f := shopFrameOf(t, []vehicle.FrameJoint{shopJoint("A", 0, -500, 0), shopJoint("B", 0, 500, 0), shopJoint("C", 0, 0, 0), shopJoint("D", 0, 0, 900)},
		[]shopTube{{"1", 45, []int{0, 1}, 0, [2]int{-1, -1}}, {"2", 38, []int{2, 3}, 0, [2]int{0, -1}}})
	_, pages := templatesOf(t, f, A4, CageHead{Sheet: "square.hcl"})
	curves := pages[1].curves()
	require.Len(t, curves, 1)
	points := curves[0].points
	base := 22.5 - 10.4473
	height := func(round float64) float64 {
		side := 19 * math.Sin(round/19)
		return math.Sqrt(22.5*22.5-side*side) - base
	}
	line := pages[1].longPointLine(t, curves[0])
	deepest := 0.0
	for i, point := range points {
		round := point.X - points[0].X
		require.InDelta(t, height(round), point.Y-line, 0.01)
		deepest = max(deepest, point.Y-line)
		if i > 0 {
			middle := (round + points[i-1].X - points[0].X) / 2
			require.InDelta(t, height(middle), (point.Y+points[i-1].Y)/2-line, 0.05)
		}
	}
	require.InDelta(t, 10.447, deepest, 0.005)
	last := points[len(points)-1]
	require.InDelta(t, 119.381, last.X-points[0].X, 0.01)
	// The straight edge is square to the edges that meet, as far up as is written on it.
	top := 0.0
	for _, text := range pages[1].texts {
		if _, err := fmt.Sscanf(text, "straight edge is %f mm from the long point", &top); err == nil {
			break
		}
	}
	require.Positive(t, top)
	edges := 0
	for _, path := range pages[1].paths {
		if len(path.points) != 2 || path.dashed || math.Abs(path.points[0].Y-line-top) > 0.06 {
			continue
		}
		from, to := path.points[0], path.points[1]
		switch {
		case nearly(from.X, points[0].X) && nearly(to.X, last.X):
			require.InDelta(t, from.Y, to.Y, 1e-9)
			edges++
		case nearly(from.X, points[0].X) && nearly(to.X, from.X) && nearly(to.Y, points[0].Y),
			nearly(from.X, last.X) && nearly(to.X, from.X) && nearly(to.Y, last.Y):
			edges++
		}
	}
	require.Equal(t, 3, edges)
}

// Both check lines of every page with templates measure 100.00 mm, and say so.
func TestTemplatesCheckLines(t *testing.T) {
	for _, paper := range []Paper{A4, Letter} {
		_, pages := templatesOf(t, shopFrame(t), paper, shopHead())
		for _, page := range pages {
			along, across := 0, 0
			for _, path := range page.paths {
				if len(path.points) != 2 || path.dashed {
					continue
				}
				dx, dy := path.points[1].X-path.points[0].X, path.points[1].Y-path.points[0].Y
				if dy == 0 && math.Abs(math.Abs(dx)-100) < 0.005 {
					across++
				}
				if dx == 0 && math.Abs(math.Abs(dy)-100) < 0.005 {
					along++
				}
			}
			if len(page.curves()) == 0 {
				continue
			}
			require.Equal(t, 1, across)
			require.Equal(t, 1, along)
			text := strings.Join(page.texts, "\n")
			require.Equal(t, 2, strings.Count(text, "must measure 100 mm, else do not use"))
			require.Contains(t, text, "print at 100 %, no fit to page")
		}
	}
}

// The sizes of pages are those of ISO 216 and ANSI/ASME Y14.1; nothing is drawn outside of
// them, or nearer than 5 mm to an edge, where many printers cannot print.
func TestTemplatesStayOnThePaper(t *testing.T) {
	for _, paper := range []Paper{A4, Letter} {
		_, pages := templatesOf(t, shopFrame(t), paper, shopHead())
		turned := 0
		for _, page := range pages {
			width, height := paper.Width, paper.Height
			if page.width > page.height {
				width, height = height, width
				turned++
			}
			require.InDelta(t, width, page.width, 0.005)
			require.InDelta(t, height, page.height, 0.005)
			for _, path := range page.paths {
				for _, point := range path.points {
					require.True(t, point.X > 5 && point.X < width-5 && point.Y > 5 && point.Y < height-5, "%v", point)
				}
			}
		}
		require.Positive(t, turned, "a tube of 76.1 mm needs a page across")
		require.Less(t, turned, len(pages)-1)
	}
}

// What stands on each page, and how the templates are laid out on both papers.
func TestTemplatesText(t *testing.T) {
	for _, paper := range []Paper{A4, Letter} {
		_, pages := templatesOf(t, shopFrame(t), paper, shopHead())
		var text strings.Builder
		for i, page := range pages {
			fmt.Fprintf(&text, "--- page %d, %.1f x %.1f mm, %d curves\n%s\n", i+1, page.width, page.height, len(page.curves()), strings.Join(page.texts, "\n"))
		}
		requireGolden(t, "templates_"+paper.Name+".txt", text.String())
	}
}

// Another program reads the cautions on every page: pdftotext of Poppler.
func TestTemplatesCarryTheCautionsOnEveryPage(t *testing.T) {
	pdf, pages := templatesOf(t, shopFrame(t), A4, shopHead())
	require.Greater(t, len(pages), 3)
	reader, err := exec.LookPath("pdftotext")
	if err != nil {
		t.Skip("pdftotext not at hand")
	}
	file := filepath.Join(t.TempDir(), "templates.pdf")
	require.NoError(t, os.WriteFile(file, pdf, 0o600))
	for i := range pages {
		number := fmt.Sprint(i + 1)
		text, err := exec.Command(reader, "-f", number, "-l", number, file, "-").Output()
		require.NoError(t, err)
		words := strings.Join(strings.Fields(string(text)), " ")
		for _, caution := range shopHead().Cautions() {
			require.Contains(t, words, caution, "page %d", i+1)
		}
		require.Contains(t, words, fmt.Sprintf("page %d of %d", i+1, len(pages)))
	}
}
