package report

import "gapsheet/vehicle"

// tubeFlag stands behind the number of a tube on which something was found that cannot be built.
const tubeFlag = " !"

// setFlags marks the numbers of tubes on which something was found that cannot be built as
// it is written.
func (d *drawing) setFlags() {
	if d.frame.Structure == nil {
		return
	}
	flagged := map[int]bool{}
	for _, found := range d.frame.Findings() {
		for _, tube := range found.Tubes {
			if found.Weight == vehicle.CannotBeBuilt && !flagged[tube] {
				flagged[tube] = true
				d.numbers[tube] += tubeFlag
				d.flagged = true
			}
		}
	}
}
