package engine

import (
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// seatYears is a club whose seats last so many years.
func seatYears(club, years string) string {
	return `rulebook "` + club + `" {
  edition = "1"
  class "blue" { means = "any" }
  class "green" { means = "any" }
}
chapter "1" {
  title = "Dates"
  clause "1.1" {
    title   = "Seats"
    concern = "safety"
    across  = "seat in seats"
    demand  = "on <= years_after(end_of_label(seat.made), ` + years + `)"
  }
  clause "1.2" {
    title   = "Fuel cells of the blue class"
    concern = "safety"
    applies = "car.class == 'blue'"
    demand  = "on <= years_after(fuel_cell.made, 5)"
  }
}
`
}

const seatAndCell = `car "tried" {
  class = "green"
}
seat "driver" {
  made = "2024-01"
}
fuel_cell {
  made = "2022-03-20"
}
`

// wayAt is how a car comes to an event.
type wayAt struct{ book, class string }

// seasonIn works a car that comes to each of the three events in a way of its own.
func seasonIn(t *testing.T, from string, books map[string]string, at ...wayAt) map[string]*DatedPart {
	t.Helper()
	read, faults := vehicle.LoadSeason(fstest.MapFS{"s.hcl": {Data: []byte(threeEvents)}}, "s.hcl", "s.hcl", nil, vehicle.BuiltIn())
	require.False(t, faults.HasErrors(), "%v", faults)
	day, fault := quantity.ParseDays(from)
	require.Nil(t, fault)
	known := map[wayAt]Editions{}
	car := CarEntries{}
	for i, event := range read.Events {
		if known[at[i]] == nil {
			book, faults := rules.Load(fstest.MapFS{"b.hcl": {Data: []byte(books[at[i].book])}}, "b.hcl", "b.hcl", vehicle.BuiltIn())
			require.False(t, faults.HasErrors(), "%v", faults)
			p, faults := Compile(book)
			require.Empty(t, faults)
			sheet, faults := vehicle.Load(fstest.MapFS{"c.hcl": {Data: []byte(seatAndCell)}}, "c.hcl", "c.hcl", book.Vocabulary, vehicle.Options{})
			require.False(t, faults.HasErrors(), "%v", faults)
			known[at[i]] = Editions{{p, p.Car(sheet.WithClass(at[i].class))}}
			car.Sheet = sheet
		}
		car.Entries = append(car.Entries, Entry{event, known[at[i]]})
	}
	r := WorkSeason(read, []CarEntries{car}, Request{Day: day.From})
	parts := map[string]*DatedPart{}
	for _, d := range r.Cars[0].Dated {
		parts[d.Name] = d
	}
	return parts
}

// Each event is asked by the rules under which the car comes to it: a seat that lasts three
// years with one club and five with another misses the event of the first.
func TestSeasonOfTwoClubs(t *testing.T) {
	books := map[string]string{"three": seatYears("Club 3", "3"), "five": seatYears("Club 5", "5")}
	three, five := wayAt{"three", "green"}, wayAt{"five", "green"}

	seat := seasonIn(t, "2027-01-10", books, five, three, five)["seat driver"]
	require.Equal(t, "Two", seat.Missed.Name, "it is inspected on 2027-03-12 by Club 5, which has it to January 2029")
	require.Equal(t, seat.Missed, seat.AsEntered)
	require.Equal(t, "2027-01-31", seat.LastDay.String())
	require.Equal(t, "2027-08-21", seat.OrderBy.String(), "14 days before the first day of Two")
	require.Equal(t, "2024-09", seat.Earliest.String())

	seat = seasonIn(t, "2027-10-01", books, five, three, five)["seat driver"]
	require.Nil(t, seat.Missed, "only the event of Club 5 is still to come")
	require.Nil(t, seat.AsEntered)
	require.Equal(t, "2029-01-31", seat.LastDay.String())

	books["three"] = strings.Replace(books["three"], "made), 3", "made), 4", 1)
	seat = seasonIn(t, "2027-01-10", books, five, three, five)["seat driver"]
	require.Equal(t, []string{"2028-01-31", "Two"}, []string{seat.LastDay.String(), seat.AsEntered.Name}, "no event is missed; it ends first by the rules of Two")
	require.Nil(t, seat.Missed)
}

// What is asked of one class does not end a part where the car comes in another.
func TestSeasonOfTwoClasses(t *testing.T) {
	books := map[string]string{"five": seatYears("Club 5", "5")}
	green, blue := wayAt{"five", "green"}, wayAt{"five", "blue"}

	parts := seasonIn(t, "2027-01-10", books, green, green, blue)
	cell := parts["fuel cell"]
	require.Equal(t, "Three", cell.Missed.Name)
	require.Equal(t, []string{"2027-03-20", "Three"}, []string{cell.LastDay.String(), cell.AsEntered.Name})
	require.Equal(t, "2023-02-12", cell.Earliest.String(), "five years before the last day of Three")
	require.Nil(t, parts["seat driver"].AsEntered, "which lasts as long in both classes")

	cell = seasonIn(t, "2027-01-10", books, blue, green, green)["fuel cell"]
	require.Nil(t, cell.Missed, "no event in the blue class comes after it has ended")
	require.Equal(t, []string{"2027-03-20", "One"}, []string{cell.LastDay.String(), cell.AsEntered.Name})
}
