package report

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// Cage is what there is to say of a sheet's cage as geometry.
type Cage struct {
	Head       CageHead
	Frame      *vehicle.Frame
	Findings   []vehicle.FrameFinding
	Result     *engine.Result // of the rulebook, nil where none was asked for
	Day        quantity.Day   // of the check; read only with Result
	DayIsToday bool
	Written    []string // what was written to files, a sentence each
}

// WriteCage writes what was found on a cage, what the rulebook says of its tubes, and mass,
// length and bars by stock; last what was written to files and the cautions.
func WriteCage(screen *Screen, c *Cage) error {
	p := screen.page()
	writeCaution(p)
	writeCageHead(p, c)
	for _, weight := range []vehicle.Weight{vehicle.CannotBeBuilt, vehicle.StillOpen, vehicle.ToLookAt} {
		writeFindings(p, c, weight)
	}
	if c.Result != nil {
		writeCageVerdicts(p, c)
	}
	writeStocks(p, c.Frame)
	if len(c.Frame.Tubes) > 0 {
		p.heading(Strong, "ENDS", ", which tube each is notched onto")
		p.prose(0, Plain, vehicle.EndRule)
	}
	writeEndNotes(p, c.Frame)
	p.heading(Strong, "BEFORE METAL IS CUT", "")
	for _, line := range c.Written {
		p.prose(0, Plain, line)
	}
	for _, caution := range c.Head.Cautions()[1:] {
		p.prose(0, Strong, caution)
	}
	return p.done()
}

// writeCageHead names the sheet with its hash, where its axes begin, and the rulebook.
func writeCageHead(p *page, c *Cage) {
	p.blank()
	if c.Result != nil {
		p.labelled(2, "Rulebook", headLabel, bookLine(c.Result.Book))
		if c.Head.Standing != "" {
			p.labelled(2, "", headLabel, sentence(c.Head.Standing))
		}
		p.labelled(2, "", headLabel, Bulletins)
	}
	p.labelled(2, "Sheet", headLabel, sheetLine(c.Frame.Sheet)+hashWords(c.Head.SheetHash))
	p.labelled(2, "Axes", headLabel, strings.Join(axesWords(c.Frame), "; "))
	if c.Result != nil {
		p.labelled(2, "Day", headLabel, dayLine(c.Day, c.DayIsToday))
	}
	p.labelled(2, "In short", headLabel, cageInShort(c))
}

// axesWords says how coordinates count: the standard's axes, and the sheet's origin and
// datum.
func axesWords(f *vehicle.Frame) []string {
	words := []string{"x forward, y to the left, z up (ISO 8855)"}
	whole := f.Cage()
	if whole == nil {
		return words
	}
	if origin, _ := whole.Value(whole.Type.Particular("origin")); origin.State == vehicle.Stated {
		words = append(words, "from "+Safe(origin.Text))
	}
	datum := whole.Type.Particular("datum")
	if v, _ := whole.Value(datum); v.State == vehicle.Stated {
		words = append(words, "datum "+datum.Choices.Choices[v.Choice].Value)
	}
	return words
}

func cageInShort(c *Cage) string {
	counts := map[vehicle.Weight]int{}
	for _, found := range c.Findings {
		counts[found.Weight]++
	}
	words := []string{numberOf(len(c.Frame.Tubes), "tube") + " and " + numberOf(len(c.Frame.Joints), "joint") + " with a place"}
	if n := counts[vehicle.CannotBeBuilt]; n > 0 {
		words = append(words, fmt.Sprintf("%d that cannot be built as written", n))
	}
	if n := counts[vehicle.StillOpen]; n > 0 {
		words = append(words, fmt.Sprintf("%d still open", n))
	}
	if n := counts[vehicle.ToLookAt]; n > 0 {
		words = append(words, fmt.Sprintf("%d to look at", n))
	}
	if n := bentWithoutDie(c); n > 0 {
		words = append(words, fmt.Sprintf("the bends of %s not checked, as the sheet has no die", numberOf(n, "tube")))
	}
	words = append(words, exactWords(c.Frame)...)
	if len(c.Findings) == 0 {
		words = append(words, "nothing found loose, in the air or doubled, and no bend or notch that cannot be made")
	}
	return strings.Join(words, "; ")
}

// bentWithoutDie counts the tubes with bends where the sheet has no die to hold them against.
func bentWithoutDie(c *Cage) int {
	if len(c.Frame.Dies) > 0 {
		return 0
	}
	count := 0
	for _, tube := range c.Frame.Tubes {
		if tube.Bends() > 0 {
			count++
		}
	}
	return count
}

// numberOf is a number of things of one kind.
func numberOf(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// weightHeading is the heading over the findings of a weight.
func weightHeading(weight vehicle.Weight) (ink Ink, word, text string) {
	switch weight {
	case vehicle.CannotBeBuilt:
		return InkOf(engine.Gap), "CANNOT BE BUILT", " as it is written"
	case vehicle.StillOpen:
		return InkOf(engine.NotRecorded), "STILL OPEN", ", as something is not recorded"
	}
	return InkOf(engine.ByEye), "TO LOOK AT", ", as it may be meant"
}

func writeFindings(p *page, c *Cage, weight vehicle.Weight) {
	lines, hows := findingLines(c.Frame, c.Findings, weight)
	if len(lines) == 0 {
		return
	}
	ink, word, text := weightHeading(weight)
	p.heading(ink, word, text)
	for _, line := range lines {
		p.hanging(0, "- ", 2, Plain, line)
	}
	for _, how := range hows {
		p.prose(2, Faint, how)
	}
}

// findingLines puts the findings of one weight into sentences. Parts that lack the same
// share one, and how to measure what is lacking is said once for each particular.
func findingLines(f *vehicle.Frame, findings []vehicle.FrameFinding, weight vehicle.Weight) (lines, hows []string) {
	alike := map[string][]named{} // by what parts lack themselves: those parts
	var order []string
	for _, found := range findings {
		if found.Weight != weight {
			continue
		}
		if found.Kind == vehicle.PartUnplaced {
			lacking, _ := f.WhyUnplaced(found.Part)
			hows = addHows(hows, lacking)
			if ownOnly(found.Part, lacking) {
				key := found.Part.Type.Name + " " + lackWords(found.Part, lacking)
				if alike[key] == nil {
					order = append(order, key)
				}
				alike[key] = append(alike[key], named{found.Part.Name(), found.Part})
				continue
			}
		}
		line := findingWords(f, found)
		if at := findingPlace(f, found); at != "" {
			line += " (" + at + ")"
		}
		lines = append(lines, line)
	}
	for _, key := range order {
		verb := " has"
		if len(alike[key]) > 1 {
			verb = " have"
		}
		_, lack, _ := strings.Cut(key, " ")
		lines = append(lines, sentence(Safe(nameList(alike[key]))+verb+" no place: "+lack))
	}
	return lines, hows
}

// ownOnly reports whether a part lacks nothing but what it would state itself.
func ownOnly(part *vehicle.Part, lacking []vehicle.Base) bool {
	return len(lacking) > 0 && !slices.ContainsFunc(lacking, func(b vehicle.Base) bool { return b.Part != part })
}

func addHows(hows []string, lacking []vehicle.Base) []string {
	for _, base := range lacking {
		if how := base.Particular.Name + ": " + base.Particular.How; !slices.Contains(hows, how) {
			hows = append(hows, how)
		}
	}
	return hows
}
