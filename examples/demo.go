// Package examples holds what gapsheet demo shows: the rulebook of an invented club in two
// editions, a complete invented car that was checked in the week before its first event, a
// second one whose cage has a wrong diagonal and a steep backstay, a third at the stage of a
// bare shell, and two years of events with those who crew the cars. The figures are for
// trying the program, not for building to.
package examples

import "embed"

// What the demo checks: slash paths within Files, and the day as it would be written on the
// command line. The day is fixed so that the demo tells everybody the same.
const (
	Rulebook  = "saltmarsh/rulebook"            // a folder, one file a chapter: edition 2027, with a bulletin in mid-season
	NextBook  = "saltmarsh/rulebook_2028"       // the edition of 2028: one clause is new, the rest is the same word for word
	Sheet     = "saltmarsh/tessel16"            // a folder: three gaps and an open note, two marginal readings, two particulars not recorded
	WrongCage = "saltmarsh/curlew9"             // a folder: the layout of a cage, with two gaps in chapter 4, and what runs out
	Season    = "saltmarsh/season"              // a folder: eight events, and three people with their gear
	BareShell = "saltmarsh/dunlin4/dunlin4.hcl" // a file, to be checked at Stage
	Day       = "2027-03-14"
	Stage     = "bare shell"
)

//go:embed saltmarsh
var files embed.FS

// Files is everything the demo reads, papers included, as the repository has it below
// examples.
func Files() embed.FS { return files }
