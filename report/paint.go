package report

import (
	"fmt"
	"io"
	"os"

	"github.com/fatih/color"
	"golang.org/x/term"

	"gapsheet/engine"
)

// ColorChoice says when colour is used.
type ColorChoice string

// The choices of --color.
const (
	ColorAuto   ColorChoice = "auto" // only to a terminal that has not asked for none
	ColorAlways ColorChoice = "always"
	ColorNever  ColorChoice = "never"
)

// ColorChoices lists the choices in the order they are offered.
func ColorChoices() []ColorChoice { return []ColorChoice{ColorAuto, ColorAlways, ColorNever} }

// WantsColor decides for one writer. With auto, colour goes to terminals only, and not
// where the environment says NO_COLOR (set and not empty) or TERM=dumb. The decision is
// taken for each writer apart: results may go to a file while faults go to the screen.
func WantsColor(w io.Writer, choice ColorChoice, environment func(string) string) bool {
	switch choice {
	case ColorAlways:
		return true
	case ColorNever:
		return false
	}
	if environment("NO_COLOR") != "" || environment("TERM") == "dumb" {
		return false
	}
	file, ok := w.(*os.File)
	return ok && term.IsTerminal(int(file.Fd()))
}

// Ink is the part a piece of text plays; a Paint gives it its colour.
type Ink uint8

// The inks. Each verdict but meets has its own; none is told by its colour alone, as the
// word stands in the text too.
const (
	Plain      Ink = iota
	Strong         // headings, clause numbers
	Faint          // places, codes
	Mark           // the mark under a faulty piece of a line
	verdictInk     // and from here on one for each verdict
)

// InkOf is the ink of a verdict.
func InkOf(v engine.Verdict) Ink { return verdictInk + Ink(v) }

// Paint colours text for one writer, or leaves it alone.
type Paint struct{ inks map[Ink]*color.Color }

// NewPaint makes a paint. Only the sixteen colours every terminal has are used. They do
// not rest on red against green: a gap is reversed, what is open is set apart by hue and
// weight, what meets is plain.
func NewPaint(colored bool) *Paint {
	paint := &Paint{inks: map[Ink]*color.Color{
		Strong:                          color.New(color.Bold),
		Faint:                           color.New(color.Faint),
		Mark:                            color.New(color.FgMagenta, color.Bold),
		InkOf(engine.Gap):               color.New(color.FgMagenta, color.Bold, color.ReverseVideo),
		InkOf(engine.NotRecorded):       color.New(color.FgCyan, color.Bold),
		InkOf(engine.Marginal):          color.New(color.FgYellow, color.Bold),
		InkOf(engine.ByEye):             color.New(color.FgBlue, color.Bold),
		InkOf(engine.UnderDispensation): color.New(color.FgYellow),
		InkOf(engine.DoesNotApply):      color.New(color.Faint),
	}}
	for _, ink := range paint.inks {
		if colored {
			ink.EnableColor()
		} else {
			ink.DisableColor()
		}
	}
	return paint
}

// With gives text the colour of an ink.
func (p *Paint) With(ink Ink, text string) string {
	c := p.inks[ink]
	if c == nil || text == "" {
		return text
	}
	return c.Sprint(text)
}

// ParseColorChoice reads the value of --color.
func ParseColorChoice(text string) (ColorChoice, error) {
	for _, choice := range ColorChoices() {
		if text == string(choice) {
			return choice, nil
		}
	}
	return "", fmt.Errorf("--color takes auto, always or never, not %q", Safe(text))
}
