package report

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle/quantity"
)

func charted(t *testing.T, r *engine.SeasonResult, h SeasonHead) string {
	t.Helper()
	var out bytes.Buffer
	require.NoError(t, SeasonChart(&out, r, h))
	return out.String()
}

func TestSeasonChartGolden(t *testing.T) {
	text := requireChart(t, handMadeSeason(t).SeasonResult, handMadeSeasonHead())
	requireGolden(t, "season_chart.svg", text)
	require.Equal(t, text, charted(t, handMadeSeason(t).SeasonResult, handMadeSeasonHead()), "the same bytes again")
}

// writtenText is a text of a chart with the room it takes.
type writtenText struct {
	text string
	box  area
}

// requireChart draws a chart and holds it to what every one has to be: XML that a strict
// reader takes, nothing in it that runs or is fetched, a title for those who hear it, texts
// of 2 mm and more that lie in the frame of their sheet and not on each other, and on every
// sheet all cautions.
func requireChart(t *testing.T, r *engine.SeasonResult, h SeasonHead) string {
	t.Helper()
	picture := charted(t, r, h)
	requireHarmless(t, picture)
	c := newSeasonChart(r, h)
	high := mm(sheetHigh * float64(len(c.sheets)))
	require.True(t, strings.HasPrefix(picture, fmt.Sprintf("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"297mm\" height=\"%vmm\" viewBox=\"0 0 297 %v\" role=\"img\"", high, high)))
	var heard []string
	for number, texts := range textsOf(t, picture, &heard) {
		require.Less(t, number, len(c.sheets))
		var said []string
		for i, one := range texts {
			said = append(said, one.text)
			require.True(t, within(one.box, sheetFrame), "%q outside of the frame: %v", one.text, one.box)
			for _, other := range texts[:i] {
				require.True(t, apart(one.box, other.box), "%q %v on %q %v", one.text, one.box, other.text, other.box)
			}
		}
		closed := func(text string) string { return strings.Join(strings.Fields(text), "") } // as long words are broken
		for _, caution := range seasonCautions(r) {
			require.Contains(t, closed(strings.Join(said, "")), closed(allowed.Replace(Safe(caution))))
		}
		require.Contains(t, said, fmt.Sprintf("sheet %d of %d", number+1, len(c.sheets)))
	}
	require.Contains(t, heard[0], "how long dated parts hold")
	require.Contains(t, heard[1], DateCaution)
	return picture
}

// textsOf reads the texts of every sheet, and what is said to those who hear the chart.
func textsOf(t *testing.T, picture string, heard *[]string) map[int][]writtenText {
	t.Helper()
	sheets := map[int][]writtenText{}
	sheet, open := -1, xml.StartElement{}
	reader := xml.NewDecoder(strings.NewReader(picture))
	for {
		token, err := reader.Token()
		if err == io.EOF {
			return sheets
		}
		require.NoError(t, err)
		switch token := token.(type) {
		case xml.StartElement:
			open = token.Copy()
			require.Contains(t, []string{"svg", "title", "desc", "rect", "g", "path", "line", "circle", "text"}, open.Name.Local)
			requireAttributes(t, open)
			if moved := attribute(open, "transform"); moved != "" {
				sheet++
				require.Equal(t, fmt.Sprintf("translate(0 %d)", 210*sheet), moved)
			}
		case xml.CharData:
			switch text := strings.TrimSpace(string(token)); {
			case text == "":
			case open.Name.Local == "text":
				// Fields: blanks that follow each other are one to who reads XML.
				sheets[sheet] = append(sheets[sheet], writtenText{strings.Join(strings.Fields(text), " "), textBox(t, open, string(token))})
			default:
				*heard = append(*heard, text)
			}
		case xml.EndElement:
			open = xml.StartElement{}
		}
	}
}

func attribute(element xml.StartElement, name string) string {
	for _, a := range element.Attr {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// textBox is the room of a text: from 0.75 of the size above the base line to 0.2 below.
func textBox(t *testing.T, element xml.StartElement, text string) area {
	t.Helper()
	number := func(name string) float64 {
		value, err := strconv.ParseFloat(attribute(element, name), 64)
		require.NoError(t, err)
		return value
	}
	size := number("font-size")
	wide := textWidth(text, size)
	x := number("x")
	switch attribute(element, "text-anchor") {
	case "end":
		x -= wide
	case "middle":
		x -= wide / 2
	}
	return area{x + 0.01, number("y") - 0.75*size, wide - 0.02, 0.95 * size}
}

// A bar is as long as the days are, counted by hand: 28 + 31 + 30 + 31 days from 1 February
// to the end of May 2027.
func TestSeasonChartBarsEndWithTheirDay(t *testing.T) {
	m := handMadeSeason(t)
	c := newSeasonChart(m.SeasonResult, handMadeSeasonHead())
	require.Equal(t, "2027-02-01", c.days.first.String())
	require.Equal(t, dayOf(t, "2028-10-08").Plus(615/10).String(), c.days.last.String(), "a tenth of the season after its last event")
	harness := c.rowNamed(t, "harness driver")
	require.InDelta(t, c.days.left, harness.bars[0].from, 1e-9)
	require.InDelta(t, 120*c.days.perDay(), harness.bars[0].to-harness.bars[0].from, 1e-9)
	require.True(t, harness.bars[0].ends)
	require.Equal(t, "2027-05-31, 6.4; order by 2027-05-21", harness.label.text)
	require.InDelta(t, (109+0.5)*c.days.perDay(), harness.marks.order-c.days.left, 1e-9, "109 days after 1 February")
	require.Equal(t, sheetFrame.right(), c.days.x(c.days.last+1))

	strap := c.rowNamed(t, "left shoulder strap of harness co-driver")
	var verdicts []string
	for _, bar := range strap.bars {
		verdicts = append(verdicts, fmt.Sprint(bar.verdict, bar.ends, bar.goesOn))
	}
	require.Equal(t, []string{"meets true false", "gap false false", "meets true false", "gap false true"}, verdicts)
	for name, label := range map[string]string{
		"seat co-driver":                      "2031-12-31, 6.1",
		"battery":                             "no end up to 2037-02-01",
		"seat driver":                         "sure to 2027-06-30, 6.1; order by 2027-08-20",
		"window net left":                     "not recorded, 5.9; record or order by 2027-02-19",
		"helmet of A. Penrith-Vale":           "not in date, 8.1",
		"extinguisher behind the seats":       "2027-06-19, 11.8; service by 2027-05-28",
		"overalls garment of A. Penrith-Vale": "sure to 2028-01-31, 8.5; record or order by 2028-02-18",
		"head restraint of A. Penrith-Vale":   "no end up to 2037-02-01",
		"fuel cell":                           "2027-10-31, 10.2; order by 2027-11-06",
	} {
		require.Equal(t, label, c.rowNamed(t, name).label.text, name)
	}
}

func (c *seasonChart) rowNamed(t *testing.T, name string) *chartRow {
	t.Helper()
	for i := range c.rows {
		if c.rows[i].whole == name {
			return &c.rows[i]
		}
	}
	t.Fatal("no row " + name)
	return nil
}

// Rows stand by car and by person, and within by the last day: what is over first.
func TestSeasonChartOrder(t *testing.T) {
	var rows []string
	c := newSeasonChart(handMadeSeason(t).SeasonResult, handMadeSeasonHead())
	for _, row := range c.rows {
		rows = append(rows, row.group+strings.Join(row.lines, " "))
	}
	require.Equal(t, []string{
		"Tessel 16", "window net left", "harness driver", "extinguisher behind the seats", "seat driver", "fuel cell", "harness co-driver",
		"left shoulder strap of harness co-driver", "fire system", "seat co-driver", "battery",
		"A. Penrith-Vale, crew", "helmet", "overalls garment", "head restraint",
		"B. Oakhollow, crew", "helmet",
	}, rows)
}

// Straps of one harness that stand alike share a row; one that does not has its own.
func TestSeasonChartAlikeShareARow(t *testing.T) {
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", loadedSheet(t, seasonSheet))
	harness := m.Cars[0].Sheet.Root.List(m.Cars[0].Sheet.Root.Type.PartNamed("harness")).Parts[0]
	for _, label := range []string{"left shoulder", "right shoulder", "left lap", "right lap", "crotch"} {
		spans := "meets, gap 2027-06-01"
		if label == "crotch" {
			spans = "meets, gap 2028-06-01"
		}
		d := m.part(0, "strap", label+" strap of harness driver", "6.4", spans)
		d.Part.Within, d.Part.Label = harness, label
		d.Clause = m.Cars[0].Dated[0].Clause
		d.Spans[1].Clause = d.Clause
	}
	names := func() (names []string) {
		for _, row := range newSeasonChart(m.SeasonResult, handMadeSeasonHead()).rows[1:] {
			names = append(names, row.whole)
		}
		return names
	}
	require.Equal(t, []string{"4 straps of harness driver", "crotch strap of harness driver"}, names())
	entries := written(t, m.SeasonResult)
	require.Equal(t, 1, strings.Count(entries, "SUMMARY:Last day: 4 straps of harness driver (Tessel 16)"))
	require.Contains(t, strings.ReplaceAll(entries, "\r\n ", ""), "unless renewed before: 4 straps of harness driver of Tessel 16 (holds to 2027-05-31)")

	m.Cars[0].Dated[0].LastDay--
	m.Cars[0].Dated[3].LastDay--
	require.Equal(t, []string{"left shoulder and right lap straps of harness driver", "right shoulder and left lap straps of harness driver", "crotch strap of harness driver"}, names())
}

// Without colour the bars of two verdicts still differ in whether they are thick, and in
// what is on them; colours stand out from white paper by three to one, as WCAG 2.1, success
// criterion 1.4.11, wants of graphics.
func TestSeasonChartStylesAreDistinct(t *testing.T) {
	type shape struct{ thick, white, comb, dashed, round, cross bool }
	seen := map[shape]engine.Verdict{}
	for _, verdict := range engine.Verdicts() {
		s := barStyles[verdict]
		require.NotNil(t, s, verdict)
		one := shape{s.thick, s.fill == "#fff", s.comb, s.dash > 1, s.round, s.cross}
		if other, ok := seen[one]; ok {
			require.Equal(t, []engine.Verdict{engine.Meets, engine.DoesNotApply}, []engine.Verdict{other, verdict})
		}
		seen[one] = verdict
		require.Equal(t, verdict <= engine.ByEye, s.thick, "a thick bar is a part that holds")
		if !s.thick {
			require.GreaterOrEqual(t, contrast(t, s.ink), 3.0, verdict)
		}
	}
}

func TestSeasonChartKeyListsWhatOccurs(t *testing.T) {
	keyOf := func(m *seasonMaker) string {
		var words []string
		for _, sign := range newSeasonChart(m.SeasonResult, handMadeSeasonHead()).key.signs {
			words = append(words, sign.words)
		}
		return strings.Join(words, "\n")
	}
	require.Equal(t, "meets\nunder dispensation\nby eye\nmarginal\nnot recorded\ngap\n2027-05-31, 6.4: last day it holds, clause that ends it\ngoes on\n"+
		"order, or send for service, by this day\nfirst event it misses\nevent, with its number in the list of events", keyOf(handMadeSeason(t)))
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", loadedSheet(t, seasonSheet))
	require.Equal(t, "event, with its number in the list of events", keyOf(m))
	m.part(0, "battery", "battery", "12.1", "by eye")
	m.Season.Events[3].Inspection -= 20
	require.Equal(t, "by eye\ngoes on\nevent, with its number in the list of events\nits inspection day", keyOf(m))
}

// Of every row there is one bar on one sheet, and a group that goes on says so.
func TestSeasonChartOfManyRows(t *testing.T) {
	for _, count := range []int{0, 1, 17, 18, 19, 20, 60, 200} {
		m := manyParts(t, count)
		picture := requireChart(t, m.SeasonResult, handMadeSeasonHead())
		c := newSeasonChart(m.SeasonResult, handMadeSeasonHead())
		var heard []string
		rows := 0
		for _, texts := range textsOf(t, picture, &heard) {
			for _, one := range texts {
				if strings.HasPrefix(one.text, "harness ") {
					rows++
				}
			}
		}
		require.Equal(t, count, rows)
		for i, sheet := range c.sheets {
			y := c.top()
			for _, row := range sheet.rows {
				y += row.high
			}
			require.LessOrEqual(t, y, c.foot(), "rows end above the key")
			require.True(t, len(sheet.rows) > 0 || len(sheet.events) > 0, "no empty sheet")
			if i > 0 && len(sheet.rows) > 0 {
				require.Equal(t, "Tessel 16, continued", sheet.rows[0].group)
			}
		}
		require.Equal(t, count == 0, strings.Contains(picture, "No part has a date that ends it."))
	}
}

func TestSeasonChartTellsOfAWriterThatFails(t *testing.T) {
	require.ErrorIs(t, SeasonChart(fullWriter{}, handMadeSeason(t).SeasonResult, handMadeSeasonHead()), errFull)
}

// Months and years: as many as there is room for, with the first of January of each year.
func TestSeasonChartAxis(t *testing.T) {
	for last, want := range map[string]string{
		"2027-04-30": "Mar Apr 8 15 22 29 5 12 19 26|2027",
		"2028-01-20": "Mar Apr May Jun Jul Aug Sep Oct Nov Dec Jan|2027 2028",
		"2031-12-31": "Apr Jul Oct Jan Apr Jul Oct Jan Apr Jul Oct Jan Apr Jul Oct Jan Apr Jul Oct|2027 2028 2029 2030 2031",
		"2049-12-31": "|2028 2030 2032 2034 2036 2038 2040 2042 2044 2046 2048",
		"2200-01-01": "|2030 2040 2050 2060 2070 2080 2090 2100 2110 2120 2130 2140 2150 2160 2170 2180 2190",
	} {
		d := chartDays{first: dayOf(t, "2027-03-01"), last: dayOf(t, last), left: 78, right: 273}
		months, years := d.ticks()
		var words [2][]string
		for i, ticks := range [][]tick{months, years} {
			for _, tick := range ticks {
				if tick.word != "" {
					words[i] = append(words[i], tick.word)
				}
				require.False(t, math.IsNaN(tick.x))
				require.GreaterOrEqual(t, tick.x, d.left)
				require.LessOrEqual(t, tick.x, d.right)
			}
		}
		require.Equal(t, want, strings.Join(words[0], " ")+"|"+strings.Join(words[1], " "), last)
	}
}

func TestShortDays(t *testing.T) {
	for want, days := range map[string][2]string{
		"13 Mar": {"2027-03-13", "2027-03-13"}, "13–14 Mar": {"2027-03-13", "2027-03-14"}, "27 May–7 Jun": {"2028-05-27", "2028-06-07"}, "31 Dec–1 Jan": {"2028-12-31", "2029-01-01"},
	} {
		require.Equal(t, want, shortDays(dayOf(t, days[0]), dayOf(t, days[1])))
	}
	var none quantity.Day
	require.Equal(t, "1 Jan", shortDays(none, none))
}

// Gear of a person stands once for all cars in which it holds as long, and by car where it
// does not.
func TestSeasonChartGearOfSeveralCars(t *testing.T) {
	other := loadedSheet(t, strings.NewReplacer("Tessel 16", "Curlew 9", "TS-0416", "CW-9").Replace(seasonSheet))
	m := newSeason(t, loadedSeason(t, seasonFile), "2027-02-01", loadedSheet(t, seasonSheet), other)
	for car, spans := range []string{"meets, gap 2027-06-01", "meets, gap 2028-06-01"} {
		m.part(car, "helmet", "helmet of A. Penrith-Vale", "8.1", "meets, gap 2027-08-01")
		m.part(car, "helmet", "helmet of B. Oakhollow", "8.1", spans)
		m.part(car, "seat", "seat driver", "6.1", "meets, gap 2027-08-01")
	}
	first, second := m.Cars[0].Dated[0], m.Cars[1].Dated[0]
	second.Clause, second.Spans[1].Clause = first.Clause, first.Clause
	second.Part = first.Part
	var rows []string
	for _, row := range newSeasonChart(m.SeasonResult, handMadeSeasonHead()).rows {
		rows = append(rows, row.group+strings.Join(row.lines, " "))
	}
	require.Equal(t, []string{"Tessel 16", "seat driver", "Curlew 9", "seat driver", "A. Penrith-Vale, crew", "helmet",
		"B. Oakhollow, crew", "helmet (Tessel 16)", "helmet (Curlew 9)"}, rows)
	requireChart(t, m.SeasonResult, handMadeSeasonHead())
	var summaries []string
	for _, e := range requireCalendar(t, written(t, m.SeasonResult), m.SeasonResult) {
		if strings.HasPrefix(e.summary, "Last day") {
			summaries = append(summaries, e.summary)
		}
	}
	require.Equal(t, []string{"Last day: helmet of B. Oakhollow (Tessel 16)", "Last day: seat driver (Tessel 16)", "Last day: seat driver (Curlew 9)",
		"Last day: helmet of A. Penrith-Vale", "Last day: helmet of B. Oakhollow (Curlew 9)"}, summaries)
}
