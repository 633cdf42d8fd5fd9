package report

import (
	"encoding/csv"
	"fmt"
	"io"
	"strings"

	"gapsheet/vehicle"
)

// CutList writes the cut list of a cage as CSV (RFC 4180, UTF-8, one line feed to a line) in
// blocks with a title each, a blank row between them: the cautions, what the list was made
// from and what its figures mean; the tubes; the bend schedule; the bars; what was found.
// Every row has as many cells as the widest. Lengths are in millimetres, angles in degrees.
// No cell can begin a formula in a spreadsheet. The error is that of the writer.
func CutList(w io.Writer, f *vehicle.Frame, h CageHead) error {
	c := &cutList{f, f.Findings()}
	var rows [][]string
	for i, block := range [][][]string{cautionRows(h), c.tubeRows(), c.scheduleRows(), c.barRows(), c.foundRows()} {
		if i > 0 {
			rows = append(rows, nil)
		}
		rows = append(rows, block...)
	}
	widest := 0
	for _, row := range rows {
		widest = max(widest, len(row))
	}
	out := csv.NewWriter(w)
	for _, row := range rows {
		cells := make([]string, widest)
		for i, cell := range row {
			cells[i] = spreadsheetCell(cell)
		}
		if err := out.Write(cells); err != nil {
			return fmt.Errorf("writing the cut list: %w", err)
		}
	}
	out.Flush()
	return out.Error()
}

// cutList is a cut list in the making.
type cutList struct {
	frame    *vehicle.Frame
	findings []vehicle.FrameFinding
}

// cutListMeaning says what the figures of a cut list mean, and which way angles count.
var cutListMeaning = []string{
	"Lengths are in mm, angles in deg. Tubes, members, stocks and joints are named as in the sheet.",
	"Node length is from joint to joint along the straights, corners and all. Developed length follows the bends. Length on centreline ends where the centreline meets the other tube's surface. Long-point length is what is sawn off the bar before the ends are notched. An end without a notch is taken to its joint. Mass is that of the developed length.",
	"Notch angle is between the axes of the two tubes; 90 is square. The place of a notch round its tube is the side on which that angle is acute; of a square notch, the side along the other tube that is upward, else forward, else to the left.",
	"Rotations count about the way from the tube's first end to its last: seen along that way, clockwise is positive. A notch to bend is turned against the side to which the nearest bend turns. The last notch to first is turned against the first notch, as on the tube before it is bent.",
	"Bend schedule: the tube is fed with its first end ahead. Feed it by the straight, turn it by the rotation, clockwise positive as above, from the plane of the bend before, bend it by the angle. A bend to the other side is a rotation by 180. A joint at which the tube turns by no more than half a degree is no bend. The angle is that of the finished tube; bend to has the die's springback added.",
	"The first straight begins at the first joint. The mark is where the arc begins, less the die's bend_start_offset: from the first joint, and from the long point, where the sawn tube begins.",
}

func cautionRows(h CageHead) [][]string {
	rows := [][]string{{"Cage cut list"}}
	for _, caution := range h.Cautions() {
		rows = append(rows, []string{"caution", caution})
	}
	for _, origin := range h.Origin() {
		rows = append(rows, []string{"made from", origin})
	}
	rows = append(rows, []string{"ends", vehicle.EndRule})
	for _, meaning := range cutListMeaning {
		rows = append(rows, []string{"meaning", meaning})
	}
	return rows
}

// foundRows tells what was found on the cage, and what has no place and so is not in the
// list.
func (c *cutList) foundRows() [][]string {
	rows := [][]string{{"Found"}}
	for _, weight := range []vehicle.Weight{vehicle.CannotBeBuilt, vehicle.StillOpen, vehicle.ToLookAt} {
		_, word, _ := weightHeading(weight)
		lines, _ := findingLines(c.frame, c.frame.FindingsOnce(), weight)
		for _, line := range lines {
			rows = append(rows, []string{strings.ToLower(word), line})
		}
	}
	if len(rows) == 1 {
		rows = append(rows, []string{"nothing", "Nothing was found loose, in the air or doubled, and no bend or notch that cannot be made, among what has a place."})
	}
	return rows
}
