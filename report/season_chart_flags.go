package report

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"gapsheet/vehicle"
)

// Flags stand above the days, each on a pole at its event's first day.
const (
	flagRoom = 0.7  // between flags, and between a pole and its words, mm
	mostHigh = 29.0 // of all flags, mm
	flagLine = 5    // lines of a flag at most
)

// flagWides are the widths to which the words of a flag are broken, in millimetres.
var flagWides = []float64{70, 56, 46, 38, 31, 25, 20, 16}

// eventFlag is an event with its words above the days.
type eventFlag struct {
	event  *vehicle.Event
	number int // in the list of events, from 1
	band   area
	pole   float64  // x
	lines  []string // none where there is no room
	box    area     // of the lines; y from the foot of the flags, so below zero
	ends   bool     // the lines end at the pole rather than begin there
}

// flagWords are what a flag says: a name, and days, which are not broken, "" for none.
type flagWords struct{ name, days func(f *eventFlag) string }

// flags are the events of the chart with their flags, and how high those are. All have
// their names with their days, or, where there is no room for that, all their names, or all
// their numbers in the list of events.
func (d *chartDays) flags(events []*vehicle.Event) ([]eventFlag, float64) {
	var flags []eventFlag
	for i, event := range events {
		from, to, ok := d.stretch(event.First, event.Last)
		if !ok {
			continue
		}
		if to-from < bandWide {
			from, to = (from+to-bandWide)/2, (from+to+bandWide)/2
		}
		flags = append(flags, eventFlag{event: event, number: i + 1, band: area{x: from, wide: to - from}, pole: from})
	}
	name := func(f *eventFlag) string { return fmt.Sprintf("%d %s", f.number, shortened(f.event.Name, longestName)) }
	none := func(*eventFlag) string { return "" }
	texts := []flagWords{
		{name, func(f *eventFlag) string { return shortDays(f.event.First, f.event.Last) }},
		{name, none},
		{func(f *eventFlag) string { return strconv.Itoa(f.number) }, none},
	}
	for i, text := range texts {
		if high, fits := d.hoist(flags, text); fits || i == len(texts)-1 {
			return flags, high
		}
	}
	return flags, 0
}

// hoist gives every flag its lines and a place for them, each as low as it can be: first
// those whose words have room after their pole, from the last to the first, so that no pole
// runs through words below; then the others, whose words end at the pole, the other way
// round. It is false where one has no room.
func (d *chartDays) hoist(flags []eventFlag, words flagWords) (high float64, fits bool) {
	var begin, end []*eventFlag
	var taken []area
	for i := range flags {
		f := &flags[i]
		f.lines, f.ends = nil, false
		if f.ends = len(d.shapes(f, words)) == 0; f.ends {
			end = append(end, f)
			taken = append(taken, area{f.pole - 0.1, -mostHigh, 0.2, mostHigh})
		} else {
			begin = append(begin, f)
		}
	}
	byPole := func(a, b *eventFlag) int { return cmp.Compare(a.pole, b.pole) }
	slices.SortStableFunc(begin, byPole)
	slices.SortStableFunc(end, byPole)
	slices.Reverse(begin)
	poles := len(taken)
	fits = true
	for i, f := range append(begin, end...) {
		if i == len(begin) {
			taken = taken[poles:]
		}
		if !f.settle(d.shapes(f, words), taken) {
			fits = false
			continue
		}
		taken = append(taken, f.box.grown(flagRoom/2), f.poleArea())
		high = max(high, -f.box.y)
	}
	return high, fits
}

// poleArea is the pole, up to the upper edge of the words.
func (f *eventFlag) poleArea() area { return area{f.pole - 0.1, f.box.y, 0.2, -f.box.y} }

// shapes are the flag with its words broken to lines in all ways that have room from left to
// right. None breaks a word, but for the widest.
func (d *chartDays) shapes(f *eventFlag, words flagWords) []eventFlag {
	var shapes []eventFlag
	for i, wide := range flagWides {
		lines := words.lines(f, wide)
		if len(lines) > flagLine || i > 0 && breaksWords(words.name(f), wide) {
			break
		}
		s := *f
		s.lines = lines
		s.box = area{f.pole + flagRoom, 0, 0, float64(len(lines)) * noteLine}
		for _, line := range lines {
			s.box.wide = max(s.box.wide, textWidth(line, smallText))
		}
		if f.ends {
			s.box.x = f.pole - flagRoom - s.box.wide
		}
		if s.box.x >= d.left && s.box.right() <= d.right {
			shapes = append(shapes, s)
		}
	}
	return shapes
}

// lines breaks the words to a width: on one line where there is room, else the days on a
// line of their own.
func (w *flagWords) lines(f *eventFlag, wide float64) []string {
	name, days := w.name(f), w.days(f)
	if days == "" {
		return wrapped(name, wide, smallText)
	}
	if text := Safe(name + ", " + days); textWidth(text, smallText) <= wide {
		return []string{text}
	}
	return append(wrapped(name, wide, smallText), days)
}

// breaksWords says whether a word of a text is wider than a line.
func breaksWords(text string, wide float64) bool {
	return slices.ContainsFunc(strings.Fields(text), func(word string) bool { return textWidth(word, smallText) > wide })
}

// settle takes of some shapes the one whose upper edge is lowest where it touches nothing
// that is taken, and of several such the widest. It is false where none has room.
func (f *eventFlag) settle(shapes []eventFlag, taken []area) bool {
	for _, shape := range shapes {
		if shape.raise(taken) && (len(f.lines) == 0 || shape.box.y > f.box.y+0.1) {
			*f = shape
		}
	}
	return len(f.lines) > 0
}

// raise puts the flag as low as it touches nothing. It is false where that is too high.
func (f *eventFlag) raise(taken []area) bool {
	for f.box.y = -f.box.high; f.box.y >= -mostHigh; f.box.y -= 0.5 {
		if !slices.ContainsFunc(taken, func(t area) bool { return f.box.meets(t) || f.poleArea().meets(t) }) {
			return true
		}
	}
	return false
}
