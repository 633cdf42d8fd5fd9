package report

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gapsheet/vehicle"
)

func (c *cutList) tubeRows() [][]string {
	rows := [][]string{{"Tubes"}, {
		"tube", "member", "stock", "size", "node length mm", "developed length mm",
		"length on centreline mm", "long-point length mm", "mass kg",
		"first joint", "first onto tube", "first notch angle deg", "first notch to bend deg",
		"last joint", "last onto tube", "last notch angle deg", "last notch to bend deg", "last notch to first deg",
		"remark",
	}}
	for i := range c.frame.Tubes {
		rows = append(rows, c.tubeRow(i))
	}
	return rows
}

func (c *cutList) tubeRow(number int) []string {
	f := c.frame
	tube := f.Tubes[number]
	stock := ""
	if tube.Stock != nil {
		stock = tube.Stock.Label
	}
	row := []string{tube.Number, tube.Member, stock, sizeWords(tube.Outside, tube.Wall), inMillimetres(tube.Course.NodeLength())}
	turned, between, firstToBend, lastToBend := tube.Turned()
	if tube.Cuttable() {
		cut := tube.Lengths()
		row = append(row, inMillimetres(cut.Node), inMillimetres(cut.Centre), inMillimetres(cut.LongPoint), massFigure(tube))
	} else {
		row = append(row, "", "", "", "")
	}
	row = append(row, endCells(f, tube.Ends[0], turned.FirstToBend, firstToBend)...)
	row = append(row, endCells(f, tube.Ends[1], turned.LastToBend, lastToBend)...)
	row = append(row, figureWhere(between, turned.Between))
	return append(row, strings.Join(c.tubeRemarks(number), " "))
}

func massFigure(tube vehicle.FrameTube) string {
	if tube.MassPerLength == 0 {
		return ""
	}
	return fmt.Sprintf("%.2f", tube.Mass())
}

// endCells are the joint of an end, the tube it is notched onto, the notch's angle and its
// rotation against the nearest bend.
func endCells(f *vehicle.Frame, end vehicle.FrameEnd, toBend float64, hasBend bool) []string {
	cells := []string{f.Joints[end.Joint].Name, "cut square", "", ""}
	if end.Onto < 0 {
		return cells
	}
	cells[1] = f.Tubes[end.Onto].Number
	if end.Fault != nil {
		cells[1] += ", no notch"
		return cells
	}
	angle := end.Seat.Notch.Angle
	cells[2] = inDegrees(min(angle, math.Pi-angle))
	cells[3] = figureWhere(hasBend, toBend)
	return cells
}

// figureWhere is an angle where it means something, "" where not.
func figureWhere(means bool, radians float64) string {
	if !means {
		return ""
	}
	return turnFigure(radians)
}

// turnFigure is a rotation in degrees, above -180 and at most 180.
func turnFigure(radians float64) string {
	if text := inDegrees(radians); text != "-180.0" {
		return text
	}
	return "180.0"
}

// remarkKinds are the findings that are said beside the first tube they are about.
var remarkKinds = []vehicle.FindingKind{
	vehicle.BendsDoNotFit, vehicle.RadiusUnknown, vehicle.NotchImpossible, vehicle.SizeUnknown,
	vehicle.RunsStraightOn, vehicle.NotchInBend, vehicle.EndInTheAir, vehicle.DoubledTube, vehicle.ThroughEachOther,
}

// tubeRemarks are what was found on a tube that matters to who cuts it.
func (c *cutList) tubeRemarks(number int) []string {
	var remarks []string
	for _, found := range c.findings {
		if len(found.Tubes) > 0 && found.Tubes[0] == number && slices.Contains(remarkKinds, found.Kind) {
			remarks = append(remarks, findingWords(c.frame, found))
		}
	}
	for which, end := range c.frame.Tubes[number].Ends {
		for _, words := range endNotes(c.frame, number, which) {
			remarks = append(remarks, sentence("at "+cageNames{c.frame}.joint(end.Joint)+" it "+words))
		}
	}
	return remarks
}
