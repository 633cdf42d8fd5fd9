package report

import (
	"fmt"
	"io"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// Drawing writes the cage as one SVG sheet, A4 across and in millimetres: side, front and
// plan at one scale in first-angle projection (ISO 5456-2) and an isometric view
// (ISO 5456-3), with a scale bar and the axes of ISO 8855. Tubes are as wide as they are to
// scale and have the numbers of the cut list, joints are lettered in the side and the
// isometric view. With verdicts, nil for none, tubes of a gap, marginal ones and such as
// are not recorded differ in line pattern, width and colour; where tubes cover each other
// the worst verdict shows. What has no place, or one that is no number, is named and left
// out. The error is that of the writer.
func Drawing(w io.Writer, f *vehicle.Frame, verdicts map[*vehicle.Part]engine.Verdict, h CageHead) error {
	if _, err := io.WriteString(w, newDrawing(f, verdicts, h).sheet()); err != nil {
		return fmt.Errorf("writing the drawing: %w", err)
	}
	return nil
}

// drawing is all that goes on a sheet.
type drawing struct {
	frame    *vehicle.Frame
	verdicts map[*vehicle.Part]engine.Verdict
	head     CageHead
	numbers  []string        // of tubes, as they are drawn
	letters  []string        // of joints
	pairs    []string        // of joints: what each has in common with its image's name, may be ""
	flagged  bool            // some tubes have a flag behind their number
	listed   [2]bool         // some tubes, some joints have the place in their list for a name
	courses  [][]cage.Vector // of tubes, as lines of straights; nil for one that cannot be drawn
	bounds   bounds
	places   []cage.Vector // along all tubes, close enough to stand for them
}

// arcHeightShare is how far the straights of an arc may lie inside it, as a share of its
// radius: a tenth of a millimetre of the car, or nothing that shows on paper.
const arcHeightShare = 0.001

func newDrawing(f *vehicle.Frame, verdicts map[*vehicle.Part]engine.Verdict, h CageHead) *drawing {
	d := &drawing{frame: f, verdicts: verdicts, head: bounded(h)}
	var numbers, letters []string
	for i := range f.Tubes {
		numbers = append(numbers, f.Tubes[i].Number)
		d.courses = append(d.courses, d.courseOf(&f.Tubes[i]))
	}
	for _, joint := range f.Joints {
		letters = append(letters, joint.Name)
		d.pairs = append(d.pairs, pairName(joint.Name, longestLetter))
		if isFinite(joint.At) {
			d.bounds.add(joint.At, 0)
			d.places = append(d.places, joint.At)
		}
	}
	d.takeHeads()
	d.numbers, d.listed[0] = shortNames(numbers, longestNumber, "T")
	d.setFlags()
	d.letters, d.listed[1] = shortNames(letters, longestLetter, "J")
	return d
}

// bounded is a head whose texts from files are no longer than the sheet has room for.
func bounded(h CageHead) CageHead {
	h.Sheet, h.Car, h.Rulebook = shortened(h.Sheet, 60), shortened(h.Car, longestName), shortened(h.Rulebook, longestName)
	h.Edition, h.Standing, h.Version = shortened(h.Edition, 20), shortened(h.Standing, 120), shortened(h.Version, 20)
	return h
}

// courseOf is the line of a tube, and takes it into the bounds.
func (d *drawing) courseOf(tube *vehicle.FrameTube) []cage.Vector {
	if !isFinite(tube.Course.Points...) {
		return nil
	}
	line := tube.Course.Polyline(tube.Course.Radius * arcHeightShare)
	if len(line) < 2 || !isFinite(line...) {
		return nil
	}
	for i, p := range line {
		d.bounds.add(p, tube.Outside/2)
		if i > 0 {
			const between = 8
			for share := range between {
				d.places = append(d.places, line[i-1].Along(p, float64(share+1)/between))
			}
		}
	}
	d.places = append(d.places, line[0])
	return line
}

// endsOf are the places of a tube's two ends.
func (d *drawing) endsOf(number int) [2]cage.Vector {
	line := d.courses[number]
	return [2]cage.Vector{line[0], line[len(line)-1]}
}

// styleOf is the style of a tube.
func (d *drawing) styleOf(number int) *tubeStyle {
	return styleOf(d.verdicts, d.frame.Tubes[number].Part)
}

// sheet is the whole document.
func (d *drawing) sheet() string {
	plan, key, views := d.arrange()
	var out svgText
	d.open(&out)
	d.drawHead(&out)
	noRoom := 0
	for _, v := range views {
		d.drawView(&out, v)
		noRoom += v.noRoom
	}
	key.scaleOf(views[3], noRoom)
	key.draw(&out)
	for i, line := range plan.notesLines {
		out.words(spot{plan.notes.x, plan.notes.y + float64(i+1)*noteLine - 0.7}, smallText, "start", line)
	}
	out.put(`</g>`)
	out.put(`</svg>`)
	return out.String()
}

// arrange gives everything its place on the sheet.
func (d *drawing) arrange() (layout, *key, []*view) {
	plan := layOut(&d.bounds, d.notes)
	key := d.key(plan.scale, plan.key)
	return plan, key, plan.views(&d.bounds, d.places, key.bottom())
}

// open begins the document, with what it is for those who hear it rather than see it.
func (d *drawing) open(out *svgText) {
	out.put(`<?xml version="1.0" encoding="UTF-8"?>`)
	out.put(`<svg xmlns="http://www.w3.org/2000/svg" width="%vmm" height="%vmm" viewBox="0 0 %v %v" role="img" aria-labelledby="title desc">`,
		mm(sheetWide), mm(sheetHigh), mm(sheetWide), mm(sheetHigh))
	out.put(`<title id="title">%s</title>`, escaped(d.title()))
	out.put(`<desc id="desc">%s</desc>`, escaped(d.description()))
	out.put(`<rect width="%v" height="%v" fill="#fff"/>`, mm(sheetWide), mm(sheetHigh))
	out.put(`<g fill="none" stroke-linejoin="round" font-family="sans-serif">`)
}

func (d *drawing) title() string {
	if d.head.Car == "" {
		return "Safety cage"
	}
	return "Safety cage of " + d.head.Car
}

func (d *drawing) description() string {
	words := []string{"Side, front, plan and isometric view of " + engine.Plural(d.drawn(), "tube", "tubes") + "."}
	for _, count := range d.counts() {
		words = append(words, sentence(count.words()))
	}
	return strings.Join(append(words, d.head.Cautions()...), " ")
}

// drawn counts the tubes that are drawn.
func (d *drawing) drawn() int {
	count := 0
	for _, course := range d.courses {
		if course != nil {
			count++
		}
	}
	return count
}

// drawView draws one view: its title, tubes, feet and joints, and the labels over them.
func (d *drawing) drawView(out *svgText, v *view) {
	out.put(`<g><title>%s</title>`, escaped(v.title))
	at := spot{v.field.x + 1, v.field.y - 1}
	if len(v.closed) > 0 {
		at = spot{v.closed[0].x + 1, v.closed[0].bottom() - 2}
	}
	out.words(at, smallText, "start", v.title+", "+v.scale.String())
	drawHelmets(out, v, d)
	tubes := drawnTubes(v, d)
	drawTubes(out, tubes, v, d)
	drawJoints(out, v, d)
	drawLabels(out, tubes, v, d)
	out.put(`</g>`)
}
