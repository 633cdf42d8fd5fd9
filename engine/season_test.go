package engine

import (
	"math/rand/v2"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// threeEvents is a season in which a belt lapses between two events, and a service falls due
// on the second day of the last.
const threeEvents = `season "Tried" {
  lead  = "14 days"
  leads = { harness = "28 days" }
  event "One" {
    inspection_day = "2027-03-12"
    first_day      = "2027-03-13"
    last_day       = "2027-03-14"
  }
  event "Two" {
    first_day = "2027-09-04"
    last_day  = "2027-09-05"
  }
  event "Three" {
    inspection_day = "2028-02-10"
    first_day      = "2028-02-11"
    last_day       = "2028-02-12"
  }
}
`

const beltAndBottle = `car "tried" {
}
harness "driver" {
  strap "left shoulder" { made = "2022-06" }
  strap "right shoulder" { made = "2023-06" }
}
seat "driver" {
  not_after = "2031"
}
extinguisher "1" {
  serviced = "2026-02-11"
}
`

const datedBook = `rulebook "Tried" {
  edition  = "1"
  in_force = "2027-01-01"
}
chapter "1" {
  title = "Dates"
  clause "1.1" {
    title   = "Belts"
    concern = "safety"
    across  = "strap in harness['driver'].straps"
    demand  = "on <= years_after(end_of_label(strap.made), 5)"
  }
  clause "1.2" {
    title   = "Extinguishers"
    concern = "safety"
    across  = "bottle in extinguishers"
    demand  = "on <= years_after(bottle.serviced, 2)"
  }
  clause "1.3" {
    title   = "Seats"
    concern = "safety"
    across  = "seat in seats"
    demand  = "on <= end_of_label(seat.not_after)"
  }
  clause "1.4" {
    title   = "Seats, later"
    concern = "safety"
    from    = "2028-01-01"
    across  = "seat in seats"
    demand  = "on <= date('2030-06-30')"
  }
}
`

// seasonOf works one car over a season with one edition.
func seasonOf(t *testing.T, season, sheet string, from string, books ...string) *SeasonResult {
	t.Helper()
	read, faults := vehicle.LoadSeason(fstest.MapFS{"s.hcl": {Data: []byte(season)}}, "s.hcl", "s.hcl", nil, vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), "%v", faults)
	var editions []Edition
	for _, text := range books {
		p := programOf(t, text)
		editions = append(editions, Edition{p, p.Car(sheetOf(t, sheet))})
	}
	day, fault := quantity.ParseDays(from)
	require.Nil(t, fault)
	car := CarEntries{Sheet: editions[0].Car.Sheet}
	for _, event := range read.Events {
		car.Entries = append(car.Entries, Entry{event, NewEditions(editions...)})
	}
	return WorkSeason(read, []CarEntries{car}, Request{Day: day.From})
}

func programOf(t testing.TB, text string) *Program {
	t.Helper()
	book, faults := rules.Load(fstest.MapFS{"b.hcl": {Data: []byte(text)}}, "b.hcl", "b.hcl", vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), "%v", faults)
	p, faults := Compile(book)
	require.Empty(t, faults)
	return p
}

// TestSeason holds what a season comes to, worked out by hand from the dates.
func TestSeason(t *testing.T) {
	r := seasonOf(t, threeEvents, beltAndBottle, "2027-01-10", datedBook)
	car := r.Cars[0]
	require.Equal(t, []Verdict{Meets, Gap, Gap}, []Verdict{car.Events[0].Whole.Worst, car.Events[1].Whole.Worst, car.Events[2].Whole.Worst})

	// 2022-06 and five years is June 2027; 2026-02-11 and two years 2028-02-11, the first day
	// of the third event, so that its second day is past it.
	dated := map[string]*DatedPart{}
	for _, d := range car.Dated {
		dated[d.Name] = d
	}
	left := dated["left shoulder strap of harness driver"]
	require.Equal(t, "2027-06-30", left.LastDay.String())
	require.Equal(t, "1.1", left.Clause.Number)
	require.Equal(t, "made", left.Particular.Name)
	require.Equal(t, Replace, left.Renewal)
	require.Equal(t, "Two", left.Missed.Name)
	require.Equal(t, "2027-08-07", left.OrderBy.String(), "28 days before the first day, on which it is inspected")
	require.True(t, left.HasEarliest)
	require.Equal(t, "2023-02", left.Earliest.String(), "so that five years from its month's end reach 2028-02-12")

	bottle := dated["extinguisher 1"]
	require.Equal(t, "2028-02-11", bottle.LastDay.String())
	require.Equal(t, Service, bottle.Renewal)
	require.Equal(t, "Three", bottle.Missed.Name)
	require.Equal(t, "2028-01-27", bottle.OrderBy.String())
	days := car.Events[2].Days
	require.Equal(t, []int{1, 1, 2}, []int{days[0].Counts[Gap], days[1].Counts[Gap], days[2].Counts[Gap]})

	seat := dated["seat driver"]
	require.Equal(t, "2030-06-30", seat.LastDay.String(), "by 1.4, which is in force by then; its label would do to 2031")
	require.Equal(t, "1.4", seat.Clause.Number)
	require.Nil(t, seat.Missed)

	require.Equal(t, []*DatedPart{left, bottle}, r.Renew)
	require.Len(t, car.Changes, 3)
	require.Equal(t, "1.4", car.Changes[2].Clause.Number, "which comes into force between two events")
}

// TestSeasonWithdrawn holds a standard that is withdrawn for all on a day: it ends the part,
// although no date of the part is read.
func TestSeasonWithdrawn(t *testing.T) {
	book := `rulebook "Tried" {
  edition = "1"
}
chapter "1" {
  title = "Helmets"
  clause "1.1" {
    title   = "Helmets"
    concern = "safety"
    across  = "member in crew_members"
    demand  = "member.helmet.standard != 'Snell SA2015' or on <= date('2027-12-31')"
  }
}
`
	sheet := `car "tried" {
}
crew_member "driver" {
  helmet {
    standard = "Snell SA2015"
  }
}
`
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", book)
	require.Len(t, r.Renew, 1)
	require.Equal(t, "helmet of crew member driver", r.Renew[0].Name)
	require.Equal(t, "2027-12-31", r.Renew[0].LastDay.String())
	require.Equal(t, "Three", r.Renew[0].Missed.Name)
	require.Equal(t, Replace, r.Renew[0].Renewal)
}

// TestSeasonOver holds a part that is over already, and one whose date is known too vaguely.
func TestSeasonOver(t *testing.T) {
	book := `rulebook "Tried" {
  edition = "1"
}
chapter "1" {
  title = "Dates"
  clause "1.1" {
    title   = "Belts"
    concern = "safety"
    across  = "strap in harness['driver'].straps"
    demand  = "on <= years_after(strap.made, 5)"
  }
}
`
	sheet := `car "tried" {
}
harness "driver" {
  strap "left shoulder" { made = "2020-03-10" }
  strap "right shoulder" { made = "2023-06" }
}
`
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", book)
	left, right := r.Cars[0].Dated[0], r.Cars[0].Dated[1]
	require.True(t, left.IsOver)
	require.Equal(t, "2025-03-10", left.LastDay.String())
	require.Equal(t, "One", left.Missed.Name)
	require.Equal(t, "2028-06-01", right.LastDay.String(), "the last day on which it holds whichever day of June 2023 it was made")
	require.True(t, right.Uncertain)
}

// TestSeasonEditions holds editions that take over from one another in mid-season, and a
// clause that is judged by the rules of another day.
func TestSeasonEditions(t *testing.T) {
	edition := func(name, from, until string, years int) string {
		return `rulebook "Tried" {
  edition  = "` + name + `"
  in_force = "` + from + `"
` + until + `}
chapter "1" {
  title = "Dates"
  clause "1.1" {
    title   = "Belts"
    concern = "safety"
    across  = "strap in harness['driver'].straps"
    demand  = "on <= years_after(end_of_label(strap.made), ` + string(rune('0'+years)) + `)"
  }
  clause "1.2" {
    title   = "Hoop"
    concern = "safety"
    as_at   = "cage.built"
    across  = "tube in cage.tubes"
    demand  = "tube.wall >= 2.` + string(rune('0'+years)) + `*mm"
  }
}
`
	}
	sheet := `car "tried" {
}
cage {
  built = "2026-05-02"
}
tube "1" {
  wall = "2.45 mm"
}
harness "driver" {
  strap "left shoulder" { made = "2023-06" }
}
`
	old, new := edition("2026", "2026-01-01", "  until = \"2027-06-30\"\n", 4), edition("2027", "2027-07-01", "", 5)
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", new, old)
	car := r.Cars[0]
	require.Equal(t, []string{"2026", "2027", "2027"}, []string{car.Events[0].Book.Edition, car.Events[1].Book.Edition, car.Events[2].Book.Edition})
	strap := car.Dated[0]
	require.Equal(t, "2028-06-30", strap.LastDay.String(), "four years by the old edition would end in June 2027, but five count from July on")
	hoop := car.Events[2].Whole.Chapters[0].Clauses[1]
	require.Equal(t, Meets, hoop.Verdict, "2.45 mm meet the 2.4 mm of the edition in force when the cage was built")
	require.Contains(t, hoop.Note, "edition 2026")

	alone := seasonOf(t, threeEvents, sheet, "2027-01-10", new)
	require.Equal(t, NotRecorded, alone.Cars[0].Events[2].Whole.Chapters[0].Clauses[1].Verdict, "the edition of then is not given")
}

// TestEventByRulesOfAnotherDay holds a clause whose own wording reads no day while that by
// which it is judged does: each day of an event is told for itself.
func TestEventByRulesOfAnotherDay(t *testing.T) {
	edition := func(head, demand string) string {
		return "rulebook \"Tried\" {\n" + head + "}\nchapter \"1\" {\n  title = \"Seats\"\n  clause \"1.1\" {\n    title = \"Seats\"\n    concern = \"safety\"\n" +
			"    as_at = \"cage.built\"\n    across = \"seat in seats\"\n    demand = \"" + demand + "\"\n  }\n}\n"
	}
	then := edition("edition = \"2026\"\nin_force = \"2026-01-01\"\nuntil = \"2026-12-31\"\n", "on <= date('2027-03-13')")
	now := edition("edition = \"2027\"\nin_force = \"2027-01-01\"\n", "recorded(seat.serial)")
	sheet := "car \"tried\" {\n}\ncage {\n  built = \"2026-05-02\"\n}\nseat \"driver\" {\n  serial = \"S1\"\n}\n"
	r := seasonOf(t, threeEvents, sheet, "2027-01-10", then, now)
	var worst []Verdict
	for _, day := range r.Cars[0].Events[0].Days {
		worst = append(worst, day.Worst)
	}
	require.Equal(t, []Verdict{Meets, Meets, Gap}, worst, "12 and 13 March are within it, 14 March is not")
}

// TestJudgeLastDays holds, on every day of ten years, whether a part holds by what its spans
// say against what the clauses say on that single day.
func TestJudgeLastDays(t *testing.T) {
	t.Parallel()
	s := sit(t)
	from, _ := quantity.CivilDay(2024, 3, 1)
	s.longDraws(func(r *rand.Rand, seed uint64) {
		text, sheetText := drawDatedBook(r, ""), drawDated(r)
		p := programOf(s, text)
		car := p.Car(sheetOf(s, sheetText))
		event := &vehicle.Event{Name: "One", Inspection: from, First: from, Last: from}
		w := WorkSeason(&vehicle.Season{Events: []*vehicle.Event{event}},
			[]CarEntries{{Sheet: car.Sheet, Entries: []Entry{{event, NewEditions(Edition{p, car})}}}}, Request{Day: from})
		single := p.checker(car, Request{})
		single.editions, single.dates = Editions{{p, car}}, true
		for day := from; day <= w.Until; day += 1 + quantity.Day(r.IntN(3)) {
			single.setDay(day)
			short := map[*vehicle.Part]bool{}
			for _, clause := range p.clauses {
				if !single.stands(clause.Clause) {
					continue
				}
				for _, subject := range single.onDay(clause).Subjects {
					dates, _ := subject.endedBy()
					for _, date := range dates {
						short[date.part] = true
					}
				}
			}
			for _, d := range w.Cars[0].Dated {
				if d.Part.Type.Name == "car" {
					continue // of which no date is read
				}
				s.count("parts on a day")
				if got := d.isShortOn(day); got != short[d.Part] {
					s.fail("seed %d: on %s %s is short by its spans: %t, by its clauses: %t\n%s\n%s", seed, day, d.Name, got, short[d.Part], text, sheetText)
					return
				}
			}
		}
	})
}
