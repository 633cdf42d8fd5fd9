package report

import (
	"gapsheet/rules"
	"gapsheet/vehicle"
)

// The cautions of whatever a shop makes a cage from.
const (
	TrialCaution     = "Make a trial bend, cut long, offer up to the shell: springback and notch differ by machine."
	CertifiedCaution = "Do not weld, drill or add to a certified cage without its maker's and the club's consent."
)

// CageHead says of what sheet a cut list, templates or a drawing are. Its texts are as in
// the files, so each form of output makes them safe in its own way.
type CageHead struct {
	Sheet     string // slash path as it is shown
	SheetHash string // SHA-256 of its files in hex, "" for a scrap
	Car       string // the car's name, "" where it has none
	Rulebook  string // its name, "" where none was asked for
	Edition   string // of the rulebook, "" where it has none
	BookHash  string // SHA-256 of the rulebook's files in hex, "" without one
	Standing  string // what the rulebook says of itself ("for trying the program, …"), may be ""
	Version   string // of this program
}

// CageHeadOf is the head for a sheet; book is nil where none was asked for.
func CageHeadOf(sheet *vehicle.Sheet, book *rules.Rulebook, version string) CageHead {
	head := CageHead{Sheet: sheet.Name, SheetHash: sheet.Hash, Version: version}
	if car := sheet.Car(); car != nil {
		head.Car = car.Label
	}
	if book != nil {
		head.Rulebook, head.Edition, head.BookHash, head.Standing = book.Name, book.Edition, book.Hash, book.Standing
	}
	return head
}

// Cautions are the sentences every output of a cage carries, in the order to print them.
func (h CageHead) Cautions() []string {
	cautions := []string{Caution, TrialCaution, CertifiedCaution}
	if h.Rulebook == "" {
		return cautions
	}
	if h.Standing != "" {
		cautions = append(cautions, "Rulebook: "+sentence(h.Standing))
	}
	return append(cautions, Bulletins)
}

// Origin are the lines that say what an output was made from: sheet with car and hash, the
// rulebook if there is one, and the program.
func (h CageHead) Origin() []string {
	line := "Sheet " + h.Sheet
	if h.Car != "" {
		line += ", " + h.Car
	}
	lines := []string{line + hashWords(h.SheetHash)}
	if h.Rulebook != "" {
		line = "Rulebook " + h.Rulebook
		if h.Edition != "" {
			line += ", edition " + h.Edition
		}
		lines = append(lines, line+hashWords(h.BookHash))
	}
	if h.Version != "" {
		lines = append(lines, "Made by gapsheet "+h.Version)
	}
	return lines
}

func hashWords(hash string) string {
	if hash == "" {
		return ""
	}
	return ", hash " + hash[:min(shortHash, len(hash))]
}
