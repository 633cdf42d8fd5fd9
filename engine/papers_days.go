package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// paperBounds are the days on which a paper that bears on a clause begins or ceases to count.
func (k *checker) paperBounds(c *rules.Clause) []quantity.Day {
	log := k.car.Sheet.Logbook
	if log == nil {
		return nil
	}
	var days []quantity.Day
	for _, d := range log.Dispensations {
		if d.HasFrom {
			days = append(days, d.From)
		}
		if d.HasUntil {
			days = append(days, d.Until+1)
		}
	}
	return days
}
