package report

import (
	"bytes"
	"fmt"
	"io"
	"strings"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"gapsheet/vehicle"
)

// Paper is a size of paper that templates can be printed on, upright, in millimetres.
type Paper struct {
	Name          string
	Width, Height float64
}

// The sizes of paper: A4 of ISO 216, Letter (size A) of ANSI/ASME Y14.1.
var (
	A4     = Paper{"A4", 210, 297}
	Letter = Paper{"Letter", 215.9, 279.4}
)

// ParsePaper returns the paper of a name, in capitals or not. The error says which there are.
func ParsePaper(name string) (Paper, error) {
	for _, paper := range []Paper{A4, Letter} {
		if strings.EqualFold(name, paper.Name) {
			return paper, nil
		}
	}
	return Paper{}, fmt.Errorf("there is no paper %q here: write A4 or Letter", Safe(name))
}

// Templates writes wrap-round templates of all notches of a cage as a PDF at 1:1: a list of
// them with how to use them, then as many on a page as fit, upright pages first. The same
// frame, paper and head give the same bytes. The error is that of the writer.
func Templates(w io.Writer, f *vehicle.Frame, paper Paper, h CageHead) error {
	s := newTemplateSheet(paper, h)
	planned, without := planTemplates(s, f)
	pages, refused := layTemplates(s, planned)
	without = append(without, refused...)
	// The list names pages, and how many pages it fills itself is only known once it is
	// laid out; page numbers do not change that, as they have a column of their own.
	front := s.frontPages(f, pages, without, 0)
	front = s.frontPages(f, pages, without, len(front))
	s.pages = len(front) + len(pages)
	for _, lines := range front {
		s.addPage(false)
		s.drawFront(lines)
	}
	for _, page := range pages {
		s.addPage(page.landscape)
		s.drawCheckLines()
		for _, placed := range page.placed {
			s.drawPiece(placed.piece, placed.x, placed.y)
		}
	}
	var out bytes.Buffer
	if err := s.pdf.Output(&out); err != nil {
		return fmt.Errorf("making the templates: %w", err)
	}
	_, err := w.Write(printedAtFullSize(out.Bytes()))
	return err
}

// newTemplateSheet returns an empty document. Its date is fixed, so that the same cage gives
// the same bytes; the library would take it from the clock.
func newTemplateSheet(paper Paper, h CageHead) *templateSheet {
	pdf := fpdf.NewCustom(&fpdf.InitType{
		OrientationStr: "P", UnitStr: "mm", Size: fpdf.SizeType{Wd: paper.Width, Ht: paper.Height},
	})
	day := time.Date(2000, 1, 1, 0, 0, 0, 0, time.UTC)
	pdf.SetCreationDate(day)
	pdf.SetModificationDate(day)
	pdf.SetCatalogSort(true)
	pdf.SetAutoPageBreak(false, 0)
	pdf.SetCellMargin(0)
	s := &templateSheet{pdf: pdf, paper: paper, head: h}
	s.addFonts()
	pdf.SetTitle(s.printable("Notch templates, "+h.Sheet), true)
	pdf.SetCreator(s.printable(strings.TrimSpace("gapsheet "+h.Version)), true)
	return s
}

// printedAtFullSize asks the program that prints the file not to scale it (PrintScaling
// None, ISO 32000-1, table 150), which the library cannot say. The catalog is the last
// object, so that only the place of the table of objects moves.
func printedAtFullSize(pdf []byte) []byte {
	const catalog, wish, start = "/Type /Catalog\n", "/ViewerPreferences << /PrintScaling /None >>\n", "\nstartxref\n"
	at := bytes.LastIndex(pdf, []byte(catalog)) + len(catalog)
	tail := bytes.LastIndex(pdf, []byte(start))
	var table int
	if _, err := fmt.Sscan(string(pdf[tail+len(start):]), &table); at < len(catalog) || tail < at || table < at || err != nil {
		panic("the catalog is no longer the last object of a PDF")
	}
	var out bytes.Buffer
	out.Write(pdf[:at])
	out.WriteString(wish)
	out.Write(pdf[at:tail])
	fmt.Fprintf(&out, "%s%d\n%%%%EOF\n", start, table+len(wish))
	return out.Bytes()
}
