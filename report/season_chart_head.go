package report

import (
	"strings"

	"gapsheet/engine"
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// DateCaution stands wherever days are shown up to which a part holds.
const DateCaution = "In date is not sound: replace after a heavy impact, cut, fuel or acid contact. " +
	"Pressurised bottles, fuel and batteries: licensed or maker-approved service only. Never alter a label, date or reading."

// SeasonHead is what a chart or calendar of a season says beside its result.
type SeasonHead struct {
	Version    string // of this program, passed in
	DayIsToday bool   // nobody named the day from which dates are looked at: the clock did
}

// mostOrigins is how many cars and how many editions of rulebooks a sheet names.
const mostOrigins = 4

// seasonBooks are the editions by which the events of a season are looked at, each once, in
// the order of the cars and their events.
func seasonBooks(r *engine.SeasonResult) []*rules.Rulebook {
	var books []*rules.Rulebook
	known := map[*rules.Rulebook]bool{nil: true}
	for _, car := range r.Cars {
		for _, event := range car.Events {
			if !known[event.Book] {
				known[event.Book] = true
				books = append(books, event.Book)
			}
		}
	}
	return books
}

// seasonCautions are the sentences that everything on a season carries.
func seasonCautions(r *engine.SeasonResult) []string {
	cautions := []string{Caution, DateCaution}
	var standings []string
	known := map[string]bool{"": true}
	for _, book := range seasonBooks(r) {
		if !known[book.Standing] {
			known[book.Standing] = true
			standings = append(standings, "Rulebook "+shortened(book.Name, longestName)+": "+sentence(shortened(book.Standing, 120)))
		}
	}
	cautions = append(cautions, atMost(mostOrigins, standings, "rulebook that says of itself what it is", "rulebooks that say of themselves what they are")...)
	return append(cautions, Bulletins)
}

// seasonOrigin are the lines that say what was worked: the season, the cars, the rulebooks
// with their editions, and the program. Texts from files are shortened.
func seasonOrigin(r *engine.SeasonResult, h SeasonHead) []string {
	lines := []string{"Season " + shortened(r.Season.Name, longestName) + hashWords(r.Season.Hash)}
	var cars, books []string
	for _, car := range r.Cars {
		line := "Sheet " + shortened(car.Sheet.Name, longestName)
		if name := carName(car.Sheet); name != car.Sheet.Name {
			line += ", " + shortened(name, longestName)
		}
		cars = append(cars, line+hashWords(car.Sheet.Hash))
	}
	for _, book := range seasonBooks(r) {
		line := "Rulebook " + shortened(book.Name, longestName)
		if book.Edition != "" {
			line += ", edition " + shortened(book.Edition, 20)
		}
		books = append(books, line+hashWords(book.Hash))
	}
	lines = append(lines, atMost(mostOrigins, cars, "sheet", "sheets")...)
	lines = append(lines, atMost(mostOrigins, books, "rulebook", "rulebooks")...)
	if h.Version != "" {
		lines = append(lines, "Made by gapsheet "+shortened(h.Version, 20))
	}
	return lines
}

// atMost keeps so many lines and counts the others.
func atMost(most int, lines []string, one, many string) []string {
	if len(lines) <= most {
		return lines
	}
	return append(lines[:most:most], "And "+engine.Plural(len(lines)-most, "more "+one, "more "+many)+".")
}

// carName is what a car is called: its label, else the name of its sheet.
func carName(sheet *vehicle.Sheet) string {
	if car := sheet.Car(); car != nil && strings.TrimSpace(car.Label) != "" {
		return car.Label
	}
	return sheet.Name
}

// personOf is whose gear a part is, "" where it belongs to the car.
func personOf(part *vehicle.Part) string {
	for ; part != nil; part = part.Within {
		if part.Person != "" {
			return part.Person
		}
	}
	return ""
}
