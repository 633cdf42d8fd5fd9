package examples_test

import (
	"io/fs"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/examples"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// seasonOf works sheets over the demo's events, under both editions. Nothing that is read has
// faults or warnings.
func seasonOf(t *testing.T, files fs.FS, sheets ...string) *engine.SeasonResult {
	t.Helper()
	type edition struct {
		book    *rules.Rulebook
		program *engine.Program
		season  *vehicle.Season
	}
	var editions []edition
	for _, name := range []string{examples.Rulebook, examples.NextBook} {
		book, program := loadEdition(t, name)
		season, found := vehicle.LoadSeason(files, examples.Season, examples.Season, nil, book.Vocabulary)
		require.Empty(t, found)
		editions = append(editions, edition{book, program, season})
	}
	var cars []engine.CarEntries
	for _, name := range sheets {
		car := engine.CarEntries{}
		entered := map[string]engine.Editions{} // by crew and class
		for _, event := range editions[0].season.Events {
			as := event.Class + event.Crew[1]
			if entered[as] == nil {
				var given []engine.Edition
				for _, e := range editions {
					sheet, found := vehicle.Load(files, name, name, e.book.Vocabulary, vehicle.Options{})
					require.Empty(t, found)
					require.Nil(t, event.ClassFault(e.book.Vocabulary, e.book.Edition))
					given = append(given, engine.Edition{Program: e.program,
						Car: e.program.Car(sheet.WithCrew(e.season, event.Crew).WithClass(event.Class))})
					car.Sheet = sheet
				}
				entered[as] = engine.NewEditions(given...)
			}
			car.Entries = append(car.Entries, engine.Entry{Event: event, Editions: entered[as]})
		}
		cars = append(cars, car)
	}
	return engine.WorkSeason(editions[0].season, cars, engine.Request{Day: day(t)})
}

// atEvents is the verdict of a subject of a clause at each event; of the clause for "".
func atEvents(t *testing.T, car *engine.CarSeason, number, subject string) []engine.Verdict {
	t.Helper()
	var all []engine.Verdict
	for _, e := range car.Events {
		c := clause(t, e.Whole, number)
		if subject == "" {
			all = append(all, c.Verdict)
			continue
		}
		at := slices.IndexFunc(c.Subjects, func(s *engine.SubjectResult) bool { return s.Name == subject })
		require.GreaterOrEqual(t, at, 0, "%s at %s", subject, e.Event.Name)
		all = append(all, c.Subjects[at].Verdict)
	}
	return all
}

// upTo is eight verdicts: one for as many events, another for the rest.
func upTo(events int, first, rest engine.Verdict) []engine.Verdict {
	return append(slices.Repeat([]engine.Verdict{first}, events), slices.Repeat([]engine.Verdict{rest}, 8-events)...)
}

func TestSeasonOfTheDemo(t *testing.T) {
	r := seasonOf(t, examples.Files(), examples.Sheet, examples.WrongCage)
	require.Len(t, r.Season.Events, 8)
	require.Len(t, r.Season.People, 3)
	years := map[int]int{}
	for _, e := range r.Season.Events {
		years[e.First.Year()]++
		require.True(t, e.HasEntryCloses)
	}
	require.Equal(t, map[int]int{2027: 3, 2028: 5}, years)
	for i, e := range r.Cars[0].Events {
		want := "2027"
		if i >= 3 {
			want = "2028"
		}
		require.Equal(t, want, e.Book.Edition, e.Event.Name)
	}
	t.Run("Tessel 16", func(t *testing.T) { tesselOverTheSeason(t, r.Cars[0]) })
	t.Run("Curlew 9", func(t *testing.T) { curlewOverTheSeason(t, r.Cars[1]) })
}

func tesselOverTheSeason(t *testing.T, car *engine.CarSeason) {
	// A belt that its label ends between the third event and the fourth.
	require.Equal(t, upTo(3, engine.Meets, engine.Gap), atEvents(t, car, "8.2", "left crotch strap of harness driver"))
	require.Equal(t, "2027-12-31", lastDay(t, car, "left crotch strap of harness driver"))

	// A service that falls due on the second day of the fourth: met on the day before.
	require.Equal(t, upTo(3, engine.ByEye, engine.Gap)[3:], atEvents(t, car, "11.9", "")[3:])
	require.Equal(t, "2028-02-19", lastDay(t, car, "extinguisher behind the seats"))
	frost := clause(t, car.Events[3].Whole, "11.9")
	require.Contains(t, frost.Subjects[0].Notes, "on 2028-02-20")

	// A label with a month: the seat holds to that month's last day, five years on.
	require.Equal(t, upTo(6, engine.Meets, engine.Gap), atEvents(t, car, "7.2", "seat co-driver"))
	require.Equal(t, "2028-06-30", lastDay(t, car, "seat co-driver"))

	// Gear of people: the head restraint of one of them, at the events that they start at.
	require.Equal(t, "2028-03-31", lastDay(t, car, "head restraint of B. Oakhollow"))
	for i, want := range []engine.Verdict{engine.Meets, engine.Meets, engine.Meets, engine.Meets, engine.Meets, engine.Gap, engine.Gap, engine.Meets} {
		require.Equal(t, want, atEvents(t, car, "9.3", "")[i], i)
	}

	// Papers: a note that nobody has struck out, a closed one, a dispensation up to June.
	require.Equal(t, upTo(8, engine.Gap, engine.Gap), atEvents(t, car, "note L2", ""))
	require.Equal(t, upTo(8, engine.Meets, engine.Meets), atEvents(t, car, "note L1", ""))
	require.Equal(t, upTo(2, engine.UnderDispensation, engine.Gap), atEvents(t, car, "13.3", "mud flap rear right"))
	lapsed := clause(t, car.Events[2].Whole, "13.3").Subjects
	require.Contains(t, lapsed[3].Notes, "dispensation 2027/2 does not count: it ended on 2027-06-30")
	require.Equal(t, upTo(6, engine.ByEye, engine.Gap), atEvents(t, car, "1.1", ""), "the log book is renewed in July")

	// The cage of 2026 keeps to the edition of its day, which asked for less.
	feet := clause(t, car.Events[7].Whole, "6.7")
	require.Equal(t, engine.Meets, feet.Verdict)
	require.Contains(t, feet.Subjects[0].Notes, "by edition 2027, in force on 2026-10-30")

	// One event has a class of its own.
	for i, e := range car.Events {
		two := clause(t, e.Whole, "1.3").Verdict != engine.DoesNotApply
		require.Equal(t, i != 5, two, e.Event.Name)
	}
}

// Belts whose labels show the year of their making alone: what ends them is the bulletin.
func curlewOverTheSeason(t *testing.T, car *engine.CarSeason) {
	require.Equal(t, upTo(2, engine.Meets, engine.Gap), atEvents(t, car, "8.2", "left lap strap of harness driver"))
	require.Equal(t, "2027-06-30", lastDay(t, car, "left lap strap of harness driver"))
	require.Equal(t, upTo(8, engine.Meets, engine.Meets), atEvents(t, car, "8.2", "left lap strap of harness co-driver"))
	require.Equal(t, "2028-08-13", lastDay(t, car, "seat driver"), "the last day of an event")
	require.Equal(t, upTo(7, engine.Meets, engine.Gap), atEvents(t, car, "7.2", "seat driver"))
}

func lastDay(t *testing.T, car *engine.CarSeason, name string) string {
	t.Helper()
	at := slices.IndexFunc(car.Dated, func(d *engine.DatedPart) bool { return d.Name == name })
	require.GreaterOrEqual(t, at, 0, name)
	require.True(t, car.Dated[at].HasLastDay, name)
	return car.Dated[at].LastDay.String()
}
