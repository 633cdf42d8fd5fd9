// Package examples holds what gapsheet demo shows: the rulebook of an invented club, a
// complete invented car that was checked in the week before its first event, a second one
// whose cage has a wrong diagonal and a steep backstay, and a third at the stage of a bare
// shell. The figures are for trying the program, not for building to.
package examples

import "embed"

// What the demo checks: slash paths within Files, and the day as it would be written on the
// command line. The day is fixed so that the demo tells everybody the same.
const (
	Rulebook  = "saltmarsh/rulebook"            // a folder, one file a chapter
	Sheet     = "saltmarsh/tessel16"            // a folder: three gaps, two marginal readings, two particulars not recorded
	WrongCage = "saltmarsh/curlew9"             // a folder: the layout of a cage alone, with two gaps in chapter 4
	BareShell = "saltmarsh/dunlin4/dunlin4.hcl" // a file, to be checked at Stage
	Day       = "2027-03-14"
	Stage     = "bare shell"
)

//go:embed saltmarsh
var files embed.FS

// Files is everything the demo reads, papers included, as the repository has it below
// examples.
func Files() embed.FS { return files }
