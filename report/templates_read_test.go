package report

import (
	"bytes"
	"compress/zlib"
	"fmt"
	"io"
	"regexp"
	"strings"
	"testing"
	"unicode/utf16"

	"codeberg.org/go-pdf/fpdf"
	"github.com/stretchr/testify/require"
)

// readPage is what a page of a PDF shows, read back from its content stream (operators of
// ISO 32000-1, 8.5 and 9.4), in millimetres from the lower left corner.
type readPage struct {
	width, height float64
	paths         []readPath
	texts         []string
	written       []fpdf.PointType // where each text begins
}

// readPath is a path that is stroked or filled.
type readPath struct {
	points []fpdf.PointType
	dashed bool
}

const millimetresInPoint = 25.4 / 72

var (
	pdfStream = regexp.MustCompile(`(?s)/Length (\d+)>>\nstream\n`)
	pdfBox    = regexp.MustCompile(`/MediaBox \[0 0 ([0-9.]+) ([0-9.]+)\]`)
	pdfPage   = regexp.MustCompile(`(?s)<</Type /Page\n.*?endobj`)
)

// readPDF reads the pages of a PDF. Streams without a path are not pages but fonts.
func readPDF(t *testing.T, pdf []byte) (pages []readPage) {
	for _, at := range pdfStream.FindAllSubmatchIndex(pdf, -1) {
		unpacked, err := zlib.NewReader(bytes.NewReader(pdf[at[1]:]))
		if err != nil {
			continue
		}
		content, err := io.ReadAll(unpacked)
		require.NoError(t, err)
		if bytes.Contains(content, []byte(" l S\n")) {
			pages = append(pages, readContent(t, string(content)))
		}
	}
	usual := pdfBox.FindAllSubmatch(pdf, -1)
	require.NotEmpty(t, usual)
	objects := pdfPage.FindAll(pdf, -1)
	require.Len(t, objects, len(pages))
	for i, object := range objects {
		box := pdfBox.FindSubmatch(object)
		if box == nil {
			box = usual[len(usual)-1]
		}
		_, err := fmt.Sscan(string(box[1])+" "+string(box[2]), &pages[i].width, &pages[i].height)
		require.NoError(t, err)
		pages[i].width *= millimetresInPoint
		pages[i].height *= millimetresInPoint
	}
	return pages
}

// readContent reads a page's paths and texts.
func readContent(t *testing.T, content string) (page readPage) {
	var path readPath
	var numbers []float64
	dashed, turned := false, 0
	for content != "" {
		word := content
		if end := strings.IndexAny(content, " \n"); end >= 0 {
			word = content[:end]
		}
		if strings.HasPrefix(word, "(") {
			text, rest := readString(t, content)
			page.texts = append(page.texts, text)
			content = rest
			continue
		}
		content = strings.TrimLeft(content[len(word):], " \n")
		var number float64
		if _, err := fmt.Sscanf(word, "%g", &number); err == nil {
			numbers = append(numbers, number*millimetresInPoint)
			continue
		}
		switch word {
		case "Td":
			page.written = append(page.written, fpdf.PointType{X: numbers[0], Y: numbers[1]})
		case "q":
			turned++
		case "Q":
			turned--
		case "d":
			// A pattern of dashes has numbers before its phase; none is "[] 0.00 d".
			dashed = path.dashed
			path = readPath{}
		case "m":
			path = readPath{points: []fpdf.PointType{{X: numbers[0], Y: numbers[1]}}, dashed: dashed}
		case "l":
			path.points = append(path.points, fpdf.PointType{X: numbers[0], Y: numbers[1]})
		case "S", "f", "B":
			page.paths = append(page.paths, path)
			path = readPath{}
		}
		if strings.HasPrefix(word, "[") {
			path = readPath{dashed: word != "[]"}
		}
		numbers = nil
	}
	require.Zero(t, turned, "graphics states are put back")
	require.Len(t, page.written, len(page.texts))
	return page
}

// readString reads a string in brackets, in UTF-16 with escapes, and returns what follows.
func readString(t *testing.T, content string) (text, rest string) {
	var plain []byte
	for i := 1; i < len(content); i++ {
		switch content[i] {
		case ')':
			require.Zero(t, len(plain)%2)
			var units []uint16
			for k := 0; k < len(plain); k += 2 {
				units = append(units, uint16(plain[k])<<8|uint16(plain[k+1]))
			}
			return string(utf16.Decode(units)), content[i+1:]
		case '\\':
			i++
			if content[i] == 'r' {
				plain = append(plain, '\r')
			} else {
				plain = append(plain, content[i])
			}
		default:
			plain = append(plain, content[i])
		}
	}
	require.Fail(t, "a string without an end")
	return "", ""
}

// curves are the page's curves: paths of many points.
func (p readPage) curves() (curves []readPath) {
	for _, path := range p.paths {
		if len(path.points) > 60 {
			curves = append(curves, path)
		}
	}
	return curves
}

// longPointLine is the height of the dashed line that spans a curve from edge to edge.
func (p readPage) longPointLine(t *testing.T, curve readPath) float64 {
	left, right := curve.points[0].X, curve.points[len(curve.points)-1].X
	least, top := curve.points[0].Y, curve.points[0].Y
	for _, point := range curve.points {
		least, top = min(least, point.Y), max(top, point.Y)
	}
	for _, path := range p.paths {
		if !path.dashed || len(path.points) != 2 {
			continue
		}
		a, b := path.points[0], path.points[1]
		if nearly(a.X, left) && nearly(b.X, right) && a.Y == b.Y && a.Y < least+0.02 && a.Y > top-300 {
			return a.Y
		}
	}
	require.Fail(t, "no line of the long point")
	return 0
}

func nearly(a, b float64) bool { return a-b < 0.005 && b-a < 0.005 }
