package report

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Caution is the sentence every report on a car begins with.
const Caution = "Pre-check of what was written down. It has not seen the car: no weld, crack, rust, fit or workmanship. The official technical inspection decides."

// Bulletins reminds of what the club may have published since.
const Bulletins = "Check for later bulletins."

// shortHash is how many characters of a rulebook's hash a page shows: enough to tell two
// editions of one book apart and few enough to read out over a telephone.
const shortHash = 12

// Head is what stands above a report: what was held against what, and when.
type Head struct {
	Book       *rules.Rulebook // nil when no rulebook is involved
	Sheet      *vehicle.Sheet  // nil when there is none, as for a tube that is yet to be bought
	Asked      string          // stands in for the sheet: what was asked about
	Day        quantity.Day
	DayIsToday bool // nobody named a day
	Stage      vehicle.Stage
	Only       []string
}

const headLabel = 10

func writeCaution(p *page) {
	p.prose(0, Strong, Caution)
}

// writeHead names the rulebook with its edition and hash, the sheet and the day.
func writeHead(p *page, h Head) {
	p.blank()
	if h.Book != nil {
		p.labelled(2, "Rulebook", headLabel, bookLine(h.Book))
		if h.Book.Standing != "" {
			p.labelled(2, "", headLabel, sentence(h.Book.Standing))
		}
		if line := outsideLine(h.Book, h.Day); line != "" {
			p.labelled(2, "", headLabel, sentence(line))
		}
		p.labelled(2, "", headLabel, Bulletins)
	}
	if h.Sheet != nil {
		p.labelled(2, "Sheet", headLabel, sheetLine(h.Sheet))
	}
	if h.Asked != "" {
		p.labelled(2, "Asked", headLabel, h.Asked)
	}
	p.labelled(2, "Day", headLabel, dayLine(h.Day, h.DayIsToday))
	if h.Stage != vehicle.StageUnset {
		p.labelled(2, "Stage", headLabel, stageWord(h.Stage))
	}
	if len(h.Only) > 0 {
		p.labelled(2, "Only", headLabel, list(h.Only))
	}
}

// dayLine is the day of a check, and whose clock said it where nobody named one.
func dayLine(day quantity.Day, isToday bool) string {
	if isToday {
		return day.String() + ", today by this machine's clock, as no day was named"
	}
	return day.String()
}

// outsideLine says that a rulebook is not in force on the day of the check, "" where it is.
func outsideLine(book *rules.Rulebook, day quantity.Day) string {
	if book.Period.Holds(day) {
		return ""
	}
	what := "the rulebook"
	if book.Edition != "" {
		what = "edition " + book.Edition
	}
	return what + " is in force " + book.Period.String() + "; the day of the check is " + day.String()
}

func bookLine(book *rules.Rulebook) string {
	line := book.Name
	if book.Edition != "" {
		line += ", edition " + book.Edition
	}
	return line + ", hash " + book.Hash[:min(shortHash, len(book.Hash))]
}

func sheetLine(sheet *vehicle.Sheet) string {
	if car := sheet.Car(); car != nil && car.Label != "" {
		return sheet.Name + ", " + car.Label
	}
	return sheet.Name
}
