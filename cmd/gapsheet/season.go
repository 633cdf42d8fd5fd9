package main

import (
	"github.com/spf13/cobra"

	"gapsheet/engine"
	"gapsheet/report"
	"gapsheet/vehicle/quantity"
)

// seasonAsked is the flags of the season command.
type seasonAsked struct {
	asked
	season string
	crew   []string
	json   bool
}

func (a *app) seasonCommand() *cobra.Command {
	var flags seasonAsked
	var outputs seasonOutputs
	command := &cobra.Command{
		Use:   "season SHEET... --season SEASON --rulebook RULEBOOK",
		Short: "Say what runs out before which event, and when to order or send it in",
		Long: `Works build sheets over the events of a season, with the crew and in the class of
each, on the day of the inspection and every day of the event. Shown first is what
has to be replaced or serviced, by the first event it misses, with the last day it
holds, the clause that ends it, the day to order by, and how new the next one has to
be; then each event; then what changes from event to event; then every dated part.

A SEASON is a file, or a folder whose .hcl files are read as one: a season block
with its events, and crew blocks with what each person wears. An event may name its
rulebook itself. Several editions of one rulebook are given together, with the flag
repeated; each event is judged by the edition in force on the day of its inspection.

Exit codes, by the events that are not over on the day of the check: 0 no gap and
nothing open, 1 a gap, 2 no gap, but something marginal or not recorded, 3 what was
given is wrong.`,
		Example: `  gapsheet season tessel16 --season season --rulebook rulebook --rulebook rulebook_2028 --on 2027-03-01
  gapsheet season tessel16 --season season --rulebook rulebook --rulebook rulebook_2028 --json`,
		Args: wantArguments(1, -1, "at least one build SHEET"),
		RunE: func(_ *cobra.Command, sheets []string) error {
			return a.season(sheets, flags, outputs)
		},
	}
	command.Flags().StringVar(&flags.season, "season", "", "`SEASON` with its events and people, a file or a folder")
	command.Flags().StringArrayVar(&flags.crew, "crew", nil, "`FILE` or folder with further crew blocks; several with the flag repeated")
	command.Flags().StringArrayVar(&flags.books, "rulebook", nil,
		"`RULEBOOK` of the events that name none, a file or a folder; further editions of it with the flag repeated")
	flags.dayFlag(command)
	flags.papersFlag(command)
	command.Flags().BoolVar(&flags.json, "json", false, "write the results as JSON, for other programs")
	outputs.flags(command)
	return command
}

func (a *app) season(sheets []string, flags seasonAsked, outputs seasonOutputs) error {
	if flags.season == "" {
		return wrong("No season was named. Name its file or folder: --season season.hcl.")
	}
	if err := onePlaceEach(outputs.asked()); err != nil {
		return err
	}
	day, today, err := flags.dayOf(a.now)
	if err != nil {
		return err
	}
	var files shelf
	load, err := files.loadSeason(sheets, flags)
	if err != nil {
		return err
	}
	season := &report.Season{
		Head: report.SeasonHead{Version: programVersion(), DayIsToday: today},
		Day:  day, Result: engine.WorkSeason(load.season, load.cars(), engine.Request{Day: day}),
	}
	if season.Written, err = outputs.write(season, load.inputs()); err != nil {
		return err
	}
	if err := a.remarks(&files); err != nil {
		return err
	}
	a.code = codeOf(ahead(season.Result, day))
	if flags.json {
		return report.WriteSeasonJSON(a.screen(), season)
	}
	return report.WriteSeason(a.screen(), season)
}

// ahead are the results of the events that are not over on a day.
func ahead(r *engine.SeasonResult, day quantity.Day) []*engine.Result {
	var results []*engine.Result
	for _, car := range r.Cars {
		for _, e := range car.Events {
			if !report.IsPast(e.Event, day) {
				results = append(results, e.Whole)
			}
		}
	}
	return results
}
