package report

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

func (c *cutList) scheduleRows() [][]string {
	rows := [][]string{{"Bend schedule"}, {
		"tube", "die", "bend radius mm", "bend", "straight before mm", "rotation deg", "angle deg", "bend to deg",
		"mark from long point mm", "mark from first joint mm", "remark",
	}}
	for i := range c.frame.Tubes {
		rows = append(rows, c.bendRows(i)...)
	}
	return rows
}

// bendRows are the rows of one tube's schedule, none where it has no bend or the bends do
// not fit.
func (c *cutList) bendRows(number int) [][]string {
	tube := c.frame.Tubes[number]
	schedule, faults := tube.Course.Schedule()
	if len(faults) > 0 || tube.Bends() == 0 {
		return nil
	}
	die, label := cage.Die{}, ""
	if tube.Die != nil {
		die, label = tube.Die.Die, tube.Die.Part.Label
	}
	ahead := tube.AheadOfNode(0)
	marks := die.Marks(schedule)
	remark := strings.Join(c.bendRemarks(number), " ")
	var rows [][]string
	for i, step := range schedule.Rows {
		row := []string{tube.Number, label, inMillimetres(schedule.Radius), "end", inMillimetres(step.Length), "", "", "", "", "", ""}
		if step.Angle > 0 {
			row[3], row[5], row[6] = fmt.Sprint(i+1), turnFigure(step.Rotation), inDegrees(step.Angle)
			if tube.Die != nil && tube.Die.HasSpringback {
				row[7] = inDegrees(die.BendTo(step.Angle))
			}
			row[8], row[9] = inMillimetres(marks[i]-ahead), inMillimetres(marks[i])
		}
		if i == 0 {
			row[10] = remark
		}
		rows = append(rows, row)
	}
	return rows
}

// bendRemarks are what a bender has to know of a tube beside its schedule.
func (c *cutList) bendRemarks(number int) []string {
	var remarks []string
	die := c.frame.Tubes[number].Die
	switch {
	case die == nil:
		remarks = append(remarks, "No die of the sheet is for this tube: its bends are not checked, springback is not added, and the marks are where the arcs begin.")
	case !die.HasSpringback && !die.HasOffset:
		remarks = append(remarks, "Springback and bend_start_offset of the die are not recorded: make a trial bend; the marks are where the arcs begin.")
	case !die.HasSpringback:
		remarks = append(remarks, "Springback of the die is not recorded: make a trial bend.")
	case !die.HasOffset:
		remarks = append(remarks, "bend_start_offset of the die is not recorded: the marks are where the arcs begin.")
	}
	for _, found := range c.findings {
		if found.Kind == vehicle.DieImpossible && found.Tubes[0] == number {
			remarks = append(remarks, findingWords(c.frame, found))
		}
	}
	return remarks
}
