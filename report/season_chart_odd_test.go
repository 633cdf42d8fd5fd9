package report

import (
	"fmt"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// Whatever a season is, its chart is whole, and every text has its room.
func TestSeasonChartOddSeasons(t *testing.T) {
	first := dayOf(t, "2027-03-01")
	of := func(events, from string, spans ...string) *seasonMaker {
		m := newSeason(t, loadedSeason(t, events), from, loadedSheet(t, seasonSheet))
		for i, said := range spans {
			m.part(0, "harness", fmt.Sprintf("harness %d", i), "6.4", said)
		}
		return m
	}
	for name, m := range map[string]*seasonMaker{
		"no rows":             of(seasonFile, "2027-02-01"),
		"one row":             of(seasonFile, "2027-02-01", "meets, gap 2027-07-01"),
		"one day":             of(eventsIn(1, first, 1), "2027-03-01", "meets, gap 2027-03-02", "gap", "meets", "marginal, meets 2027-03-02, gap 2027-03-03"),
		"ten years":           of(eventsIn(120, first, 30), "2027-02-01", "meets, gap 2030-06-01", "meets, gap 2036-06-01"),
		"a century":           of(eventsIn(300, first, 120), "2027-02-01", "meets, gap 2030-06-01"),
		"events every day":    of(eventsIn(60, first, 1), "2027-02-01", "meets, gap 2027-04-01"),
		"over":                of(seasonFile, "2030-02-01", "meets, gap 2030-06-01"),
		"in the last event":   of(seasonFile, "2028-10-08", "meets, gap 2028-10-09"),
		"flips every day":     of(seasonFile, "2027-02-01", flips(first.String(), 200, 1)),
		"flips every week":    of(seasonFile, "2027-02-01", flips(first.String(), 80, 7)),
		"ends with the chart": of(seasonFile, "2027-02-01", "meets, gap 2028-12-09", "meets, gap 2028-12-08", "meets, gap 2028-12-10"),
	} {
		t.Run(name, func(t *testing.T) {
			picture := requireChart(t, m.SeasonResult, SeasonHead{Version: "0.4", DayIsToday: true})
			require.Contains(t, picture, ">today "+m.From.String()+"<")
		})
	}
	picture := requireChart(t, of(seasonFile, "2027-07-01").SeasonResult, handMadeSeasonHead())
	require.Contains(t, picture, ">3 events before<")
	requireChart(t, &engine.SeasonResult{Season: &vehicle.Season{}}, SeasonHead{})
}

// flips is a part that holds and does not in turn, so many days each.
func flips(from string, count int, days int64) string {
	words := []string{"meets"}
	verdicts := []string{"gap", "meets", "marginal", "by eye", "not recorded", "under dispensation"}
	var t testing.T
	day := dayOf(&t, from)
	for i := range count {
		words = append(words, verdicts[i%len(verdicts)]+" "+day.Plus(int64(i)*days).String())
	}
	return strings.Join(words, ", ")
}

// Texts from files end no element, steer no reader and run out of no field.
func TestSeasonChartHostileTexts(t *testing.T) {
	for _, text := range []string{
		`<script>alert("x")</script>`, `"/><image href="http://invalid/"/>`, "a\x00b\x1b[2J\ufffe\uffff", "\xff\xfe", "]]>&amp;&lt;",
		strings.Repeat("W", 4000), strings.Repeat("very long ", 400), "日本語" + strings.Repeat("工", 300), "\u202etfel", "", "  \n\t ", "e\u0301\u0301\u0301",
		"👩‍🔧" + strings.Repeat("👨‍👩‍👧", 30),
	} {
		m := handMadeSeason(t)
		m.renamed(text)
		picture := requireChart(t, m.SeasonResult, SeasonHead{Version: text})
		require.NotContains(t, picture, "<script")
		require.NotContains(t, picture, "<image")
		require.Less(t, len(picture), 200_000)
	}
}

// Many cars under many rulebooks leave room for rows, and are counted where they have none.
func TestSeasonChartOfManyCars(t *testing.T) {
	var sheets []*vehicle.Sheet
	for range 9 {
		sheets = append(sheets, loadedSheet(t, seasonSheet))
	}
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", sheets...)
	for i := range sheets {
		sheets[i].Car().Label = strings.Repeat("W", 90)
		for j, event := range m.Cars[i].Events {
			book := *event.Book
			book.Name, book.Standing = fmt.Sprint(strings.Repeat("W", 90), i, j), fmt.Sprint(i, j, strings.Repeat("W", 900))
			event.Book = &book
		}
		for range 3 {
			m.part(i, "harness", "harness driver", "6.4", "meets, gap 2027-06-01")
			m.part(i, "helmet", "helmet of A. Penrith-Vale", "8.1", "meets, gap 2027-06-01")
		}
	}
	picture := requireChart(t, m.SeasonResult, handMadeSeasonHead())
	require.Contains(t, wordsOf(picture), "And 5 more sheets.")
	c := newSeasonChart(m.SeasonResult, handMadeSeasonHead())
	for _, sheet := range c.sheets {
		y := c.top()
		for _, row := range sheet.rows {
			y += row.high
		}
		require.LessOrEqual(t, y, c.foot())
	}
}

// Texts of any season at all have their room, whatever ends when.
func TestSeasonChartAnySeason(t *testing.T) {
	season := loadedSeason(t, seasonFile)
	rapid.Check(t, func(draw *rapid.T) {
		m := newSeason(t, season, "2027-02-01", loadedSheet(t, seasonSheet))
		m.From = m.From.Plus(int64(rapid.IntRange(-400, 900).Draw(draw, "from")))
		m.Until = m.From.PlusYears(10)
		for i := range rapid.IntRange(0, 12).Draw(draw, "rows") {
			spans := []string{rapid.SampledFrom([]string{"meets", "gap", "by eye", "not recorded", "marginal"}).Draw(draw, "first")}
			day := m.From
			for range rapid.IntRange(0, 6).Draw(draw, "spans") {
				day = day.Plus(int64(rapid.IntRange(1, 300).Draw(draw, "days")))
				spans = append(spans, rapid.SampledFrom([]string{"meets", "gap", "by eye", "not recorded", "marginal", "under dispensation"}).Draw(draw, "verdict")+" "+day.String())
			}
			m.part(0, "harness", fmt.Sprintf("harness %d", i), "6.4", strings.Join(spans, ", "))
		}
		requireChart(t, m.SeasonResult, handMadeSeasonHead())
	})
}
