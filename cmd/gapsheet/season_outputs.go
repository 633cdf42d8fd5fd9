package main

import (
	"bytes"
	"errors"
	"fmt"
	"path/filepath"

	"github.com/spf13/cobra"

	"gapsheet/report"
)

// seasonOutputs are the files that the season command writes, "" for one that is not asked
// for.
type seasonOutputs struct{ chart, calendar string }

func (o *seasonOutputs) flags(command *cobra.Command) {
	command.Flags().StringVar(&o.chart, "chart", "", "`FILE.svg` to write a chart into: dated parts as bars against the events' days")
	command.Flags().StringVar(&o.calendar, "calendar", "", "`FILE.ics` to write a calendar into: events, last days and days to order by, with reminders")
}

// asked lists the outputs that were asked for.
func (o *seasonOutputs) asked() []output {
	return wanted(
		output{flag: "--chart", path: o.chart, what: "chart", begins: svgBegins},
		output{flag: "--calendar", path: o.calendar, what: "calendar", begins: "BEGIN:VCALENDAR"},
	)
}

// write makes every output that was asked for and then writes them, all or none. It returns
// what was written, a sentence each.
func (o *seasonOutputs) write(season *report.Season, read []input) ([]string, error) {
	outputs := o.asked()
	var said []string
	for i := range outputs {
		one := &outputs[i]
		var text bytes.Buffer
		make, holds := report.SeasonChart, "the chart of the season"
		if one.flag == "--calendar" {
			make, holds = report.Calendar, "the calendar of the season; import it again when dates have changed, and its entries move"
		}
		if err := make(&text, season.Result, season.Head); errors.Is(err, report.ErrEmptyCalendar) {
			return nil, wrong("--calendar has nothing to write: %v.", err)
		} else if err != nil {
			return nil, err
		}
		one.text = text.Bytes()
		if err := one.refuse(read); err != nil {
			return nil, err
		}
		said = append(said, fmt.Sprintf("Written: %s, %s.", filepath.ToSlash(one.path), holds))
	}
	return said, writeAll(outputs)
}
