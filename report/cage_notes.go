package report

import (
	"fmt"
	"math"
	"strings"

	"gapsheet/vehicle"
)

// endNotes are what a tube's end wants beside its template, each the end of a sentence that
// begins with the tube.
func endNotes(f *vehicle.Frame, number, which int) []string {
	n := cageNames{f}
	note := f.EndNote(number, which)
	var words []string
	main := ""
	if onto := f.Tubes[number].Ends[which].Onto; onto >= 0 {
		main = n.tube(onto)
	}
	if note.Grind > 0 || note.Gap > 0 {
		line := fmt.Sprintf("lands on a bend of %s: the template is for a straight tube", main)
		if note.Grind >= 0.05e-3 {
			line += fmt.Sprintf(", up to %s mm to grind", inMillimetres(note.Grind))
		}
		if note.Gap >= 0.05e-3 {
			line += fmt.Sprintf(", and it stands off by up to %s mm: cut it that much longer", inMillimetres(note.Gap))
		}
		words = append(words, line)
	}
	var others []string
	for _, into := range note.Also {
		others = append(others, fmt.Sprintf("%s for %d mm", n.tube(into.Tube), int(math.Round(1000*into.For))))
	}
	if len(others) > 0 {
		words = append(words, fmt.Sprintf("also runs into %s there, beyond %s: a second notch by hand", list(others), main))
	}
	switch {
	case note.PastEnd > 0 && note.HasFoot:
		words = append(words, fmt.Sprintf("reaches with its saddle %s mm past the end of %s, where a foot is: move its joint as far from the foot, or trim it to the plate", inMillimetres(note.PastEnd), main))
	case note.PastEnd > 0:
		words = append(words, fmt.Sprintf("reaches with its saddle %s mm past the end of %s: leave that tube as much longer there, and close it", inMillimetres(note.PastEnd), main))
	}
	return words
}

// endNoteLines are what the ends of all tubes want beside their templates, a sentence for
// each end; an original and its image share one.
func endNoteLines(f *vehicle.Frame) []string {
	n := cageNames{f}
	var lines []string
	for i, tube := range f.Tubes {
		for which, end := range tube.Ends {
			words := endNotes(f, i, which)
			if len(words) == 0 {
				continue
			}
			image := f.ImageNotes(i, which)
			if image >= 0 && image < i {
				continue
			}
			line := sentence(n.tube(i) + " at " + n.joint(end.Joint) + " " + strings.Join(words, "; it "))
			if image >= 0 {
				line += " Also " + n.tube(image) + ", on the other side."
			}
			lines = append(lines, line)
		}
	}
	return lines
}

// writeEndNotes tells what ends want beside their templates.
func writeEndNotes(p *page, f *vehicle.Frame) {
	lines := endNoteLines(f)
	if len(lines) == 0 {
		return
	}
	p.heading(Strong, "NOTCHES BY HAND", ", where a template alone will not do")
	for _, line := range lines {
		p.hanging(0, "- ", 2, Plain, line)
	}
}
