package examples_test

import (
	"slices"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/examples"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// An edition of the rulebook, with the season read in its words.
type edition struct {
	book    *rules.Rulebook
	program *engine.Program
	season  *vehicle.Season
}

func editionsOfTheDemo() []edition {
	var editions []edition
	for _, name := range []string{examples.Rulebook, examples.NextBook} {
		book, _ := rules.Load(examples.Files(), name, name, vehicle.BuiltIn())
		program, _ := engine.Compile(book)
		season, _ := vehicle.LoadSeason(examples.Files(), examples.Season, examples.Season, nil, book.Vocabulary)
		editions = append(editions, edition{book, program, season})
	}
	return editions
}

// workSeason works sheets over the demo's events, under both editions.
func workSeason(sheets ...string) *engine.SeasonResult {
	editions := editionsOfTheDemo()
	var cars []engine.CarEntries
	for _, name := range sheets {
		car := engine.CarEntries{}
		entered := map[string]engine.Editions{} // by class and second of the crew
		for _, event := range editions[0].season.Events {
			as := event.Class + "\n" + event.Crew[1]
			if entered[as] == nil {
				var given []engine.Edition
				for _, e := range editions {
					car.Sheet, _ = vehicle.Load(examples.Files(), name, name, e.book.Vocabulary, vehicle.Options{})
					entry := car.Sheet.WithCrew(e.season, event.Crew).WithClass(event.Class)
					given = append(given, engine.Edition{Program: e.program, Car: e.program.Car(entry)})
				}
				entered[as] = engine.NewEditions(given...)
			}
			car.Entries = append(car.Entries, engine.Entry{Event: event, Editions: entered[as]})
		}
		cars = append(cars, car)
	}
	days, _ := quantity.ParseDays(examples.Day)
	return engine.WorkSeason(editions[0].season, cars, engine.Request{Day: days.From})
}

// The season has neither faults nor warnings, and its classes are those of both editions.
func TestSeasonIsFaultless(t *testing.T) {
	for _, name := range []string{examples.Rulebook, examples.NextBook} {
		book, _ := loadEdition(t, name)
		season, found := vehicle.LoadSeason(examples.Files(), examples.Season, examples.Season, nil, book.Vocabulary)
		require.Empty(t, found)
		require.Len(t, season.People, 3)
		for _, event := range season.Events {
			require.Nil(t, event.ClassFault(book.Vocabulary, book.Edition), event.Name)
		}
		for _, sheet := range []string{examples.Sheet, examples.WrongCage} {
			car, found := vehicle.Load(examples.Files(), sheet, sheet, book.Vocabulary, vehicle.Options{})
			require.Empty(t, found)
			require.Empty(t, season.Strangers(car))
		}
	}
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

// demoSeason is the season of the demo's two cars, worked once for all tests that look at it.
var demoSeason = sync.OnceValue(func() *engine.SeasonResult {
	return workSeason(examples.Sheet, examples.WrongCage)
})

func TestSeasonOfTheDemo(t *testing.T) {
	r := demoSeason()
	require.Len(t, r.Season.Events, 8)
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

// The list to order by: what misses an event, by the first one that it misses.
func TestOrderListOfTheDemo(t *testing.T) {
	r := demoSeason()
	type line struct{ event, part, orderBy string }
	var list []line
	for _, d := range r.Renew {
		if d.Car == r.Cars[0].Sheet {
			list = append(list, line{d.Missed.Name, d.Name, d.OrderBy.String()})
		}
	}
	require.Equal(t, []line{
		{"Samphire Stages 2027", "right lap strap of harness co-driver", "2027-02-13"},
		{"Frost Tide Stages", "cockpit fire bottle of fire system", "2028-02-08"},
		{"Frost Tide Stages", "engine bay fire bottle of fire system", "2028-02-08"},
		{"Frost Tide Stages", "left crotch strap of harness driver", "2028-01-21"},
		{"Frost Tide Stages", "extinguisher behind the seats", "2028-02-11"},
		{"Samphire Stages 2028", "brakes", "2028-03-24"},
		{"Heron Wood Trial", "head restraint of B. Oakhollow", "2028-05-13"},
		{"Heron Wood Trial", "fuel cell", "2028-03-25"},
		{"Heron Wood Trial", "first aid kit", "2028-05-27"},
		{"Sluice Night", "seat co-driver", "2028-07-01"},
		{"Sluice Night", "log book of car Tessel 16", "2028-07-22"},
	}, list)
	at := slices.IndexFunc(r.Renew, func(d *engine.DatedPart) bool { return d.Name == "seat co-driver" })
	require.Equal(t, "2023-10", r.Renew[at].Earliest.String(), "five years on, October 2028 has the last event in it")
}

func lastDay(t *testing.T, car *engine.CarSeason, name string) string {
	t.Helper()
	at := slices.IndexFunc(car.Dated, func(d *engine.DatedPart) bool { return d.Name == name })
	require.GreaterOrEqual(t, at, 0, name)
	require.True(t, car.Dated[at].HasLastDay, name)
	return car.Dated[at].LastDay.String()
}
