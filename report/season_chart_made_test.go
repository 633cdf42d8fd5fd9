package report

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// seasonMaker puts the result of a season together by hand.
type seasonMaker struct {
	t *testing.T
	*engine.SeasonResult
	books []*rules.Rulebook
}

const seasonFile = `
season "2027 and 2028" {
  lead  = "21 days"
  leads = { harness = "28 days", fire_system = "10 days" }
  event "Saltmarsh Opening Stages" {
    inspection_day = "2027-03-12"
    first_day      = "2027-03-13"
    last_day       = "2027-03-14"
    place          = "Saltmarsh quay"
    class          = "two-wheel drive open"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
    entry_closes   = "2027-02-26"
  }
  event "Heron Bank Trophy" {
    first_day = "2027-05-08"
    last_day  = "2027-05-09"
    crew      = ["A. Penrith-Vale", "B. Oakhollow"]
  }
  event "Midsummer Stages" {
    inspection_day = "2027-06-18"
    first_day      = "2027-06-19"
    last_day       = "2027-06-20"
    place          = "Oxbow Hall"
    crew           = ["A. Penrith-Vale", "B. Oakhollow"]
  }
  event "Cinder Hill Night Stages" {
    inspection_day = "2027-09-10"
    first_day      = "2027-09-10"
    last_day       = "2027-09-11"
  }
  event "Reedbed Winter Stages" {
    first_day = "2027-11-27"
    last_day  = "2027-11-27"
  }
  event "Saltmarsh Opening Stages 2028" {
    inspection_day = "2028-03-10"
    first_day      = "2028-03-11"
    last_day       = "2028-03-12"
    entry_closes   = "2028-02-25"
  }
  event "Three Rivers Marathon" {
    inspection_day = "2028-05-25"
    first_day      = "2028-05-27"
    last_day       = "2028-06-07"
    place          = "Tarn Bridge"
  }
  event "Lantern Stages" {
    first_day = "2028-10-07"
    last_day  = "2028-10-08"
  }
}
crew "A. Penrith-Vale" {
  helmet { made = "2019-04" }
}
crew "B. Oakhollow" {
  helmet { made = "2022-10" }
}
`

const seasonSheet = `car "Tessel 16" {
  chassis = "TS-0416"
}
harness "driver" {
  strap "left shoulder" { made = "2022" }
}
`

func loadedSeason(t *testing.T, text string) *vehicle.Season {
	t.Helper()
	season, faults := vehicle.LoadSeason(fstest.MapFS{"season.hcl": {Data: []byte(text)}}, "season.hcl", "season.hcl", nil, vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), faults.Error())
	return season
}

func loadedSheet(t *testing.T, text string) *vehicle.Sheet {
	t.Helper()
	sheet, faults := vehicle.Load(fstest.MapFS{"car.hcl": {Data: []byte(text)}}, "car.hcl", "cars/car.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.False(t, faults.HasErrors(), faults.Error())
	return sheet
}

// newSeason is the result of a season without a dated part; the sheet is its only car.
func newSeason(t *testing.T, season *vehicle.Season, from string, sheets ...*vehicle.Sheet) *seasonMaker {
	m := &seasonMaker{t: t, SeasonResult: &engine.SeasonResult{Season: season, From: dayOf(t, from)}}
	m.Until = m.From.PlusYears(10)
	m.books = []*rules.Rulebook{
		{Name: "Kettleford Stage Car Rules", Edition: "2027", Hash: "fedcba9876543210", Standing: "for trying the program, not a rulebook to build to"},
		{Name: "Kettleford Stage Car Rules", Edition: "2028", Hash: "0011223344556677", Standing: "for trying the program, not a rulebook to build to"},
	}
	for _, sheet := range sheets {
		car := &engine.CarSeason{Sheet: sheet}
		for _, event := range season.Events {
			book := m.books[0]
			if event.First >= dayOf(t, "2028-01-01") {
				book = m.books[1]
			}
			car.Events = append(car.Events, &engine.EventResult{Event: event, Book: book})
		}
		m.Cars = append(m.Cars, car)
	}
	return m
}

// part adds a dated part to a car. Its spans are said as "gap 2027-06-01, meets 2028-01-01":
// each up to the next, the first from the beginning of the season.
func (m *seasonMaker) part(car int, kind, name, clause, spans string) *engine.DatedPart {
	part := &vehicle.Part{Type: vehicle.BuiltIn().Type(kind)}
	require.NotNil(m.t, part.Type, kind)
	if _, person, ok := strings.Cut(name, " of "); ok && m.Season.Person(person) != nil {
		part.Within = m.Season.Person(person).Gear
	}
	d := &engine.DatedPart{Car: m.Cars[car].Sheet, Part: part, Name: name, Particular: part.Type.Particular("made")}
	number := &rules.Clause{Number: clause, Title: "Dates of " + strings.ReplaceAll(kind, "_", " ")}
	for i, said := range strings.Split(spans, ", ") {
		span := engine.Span{From: m.From, Until: m.Until, Verdict: engine.Meets}
		word := said
		if i > 0 {
			at := strings.LastIndex(said, " ")
			word, span.From = said[:at], dayOf(m.t, said[at+1:])
			d.Spans[i-1].Until = span.From - 1
		}
		var known bool
		span.Verdict, known = engine.VerdictNamed(word)
		require.True(m.t, known, word)
		if span.Verdict > engine.ByEye {
			span.Clause = number
		}
		d.Spans = append(d.Spans, span)
	}
	m.ends(d, number)
	m.Cars[car].Dated = append(m.Cars[car].Dated, d)
	return d
}

// ends works out from the spans what the engine says beside them.
func (m *seasonMaker) ends(d *engine.DatedPart, clause *rules.Clause) {
	short := func(s engine.Span) bool { return s.Verdict > engine.ByEye }
	at := slices.IndexFunc(d.Spans, short)
	if at < 0 {
		return
	}
	d.Clause, d.Limit = clause, "years after made is 5.1, at most 5 asked"
	d.IsOver = at == 0
	if at > 0 {
		d.LastDay, d.HasLastDay = d.Spans[at].From-1, true
		d.Uncertain = d.Spans[at].Verdict != engine.Gap
	}
	for _, event := range m.Season.Events {
		if event.Last < m.From || !slices.ContainsFunc(d.Spans, func(s engine.Span) bool { return short(s) && s.From <= event.Last && s.Until >= event.Inspection }) {
			continue
		}
		d.Missed, d.OrderBy, d.HasOrderBy = event, event.Inspection.Plus(-m.Season.LeadOf(d.Part.Type)), true
		m.Renew = append(m.Renew, d)
		break
	}
}

// handMadeSeason is the season of a car over two years, with all that a chart can show.
func handMadeSeason(t *testing.T) *seasonMaker {
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", loadedSheet(t, seasonSheet))
	m.part(0, "harness", "harness driver", "6.4", "meets, gap 2027-06-01")
	m.part(0, "harness", "harness co-driver", "6.4", "meets, gap 2028-01-01")
	m.part(0, "strap", "left shoulder strap of harness co-driver", "6.4", "meets, gap 2028-01-01, meets 2028-04-01, gap 2028-09-01")
	m.part(0, "seat", "seat driver", "6.1", "meets, marginal 2027-07-01, gap 2027-08-01")
	m.part(0, "seat", "seat co-driver", "6.1", "meets, gap 2032-01-01")
	m.part(0, "extinguisher", "extinguisher behind the seats", "11.8", "meets, gap 2027-06-20").Renewal = engine.Service
	m.part(0, "fire_system", "fire system", "11.3", "meets, gap 2028-06-01, meets 2028-07-01, gap 2030-07-01").Renewal = engine.Service
	m.part(0, "fuel_cell", "fuel cell", "10.2", "under dispensation, gap 2027-11-01")
	m.part(0, "battery", "battery", "12.1", "by eye")
	m.part(0, "window_net", "window net left", "5.9", "not recorded")
	m.part(0, "helmet", "helmet of A. Penrith-Vale", "8.1", "gap, meets 2027-03-01, gap 2029-01-01")
	m.part(0, "head_restraint", "head restraint of A. Penrith-Vale", "8.3", "meets")
	m.part(0, "garment", "overalls garment of A. Penrith-Vale", "8.5", "meets, not recorded 2028-02-01")
	m.part(0, "helmet", "helmet of B. Oakhollow", "8.1", "meets, gap 2028-05-28")
	return m
}

// manyParts is a season with so many dated parts that they end one after the other.
func manyParts(t *testing.T, count int) *seasonMaker {
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", loadedSheet(t, seasonSheet))
	for i := range count {
		m.part(0, "harness", fmt.Sprintf("harness %d", i+1), fmt.Sprintf("6.%d", i), "meets, gap "+m.From.Plus(int64(10+i*4)).String())
	}
	return m
}

// eventsIn is the text of a season of so many events of two days, so many days apart.
func eventsIn(count int, first quantity.Day, apart int64) string {
	var text strings.Builder
	text.WriteString("season \"long\" {\n")
	for i := range count {
		day := first.Plus(int64(i) * apart)
		fmt.Fprintf(&text, "  event \"Stages number %d\" {\n    first_day = %q\n    last_day = %q\n  }\n", i+1, day, day+1)
	}
	return text.String() + "}\n"
}

func handMadeSeasonHead() SeasonHead { return SeasonHead{Version: "0.4"} }
