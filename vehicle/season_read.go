package vehicle

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// seasonReader gathers a season and every fault found on the way.
type seasonReader struct {
	season *Season
	gear   *sheetReader // reads what the crew wear, and gathers the faults of all
	events []eventRead  // those that can be used, in the order of the files
	named  map[string]hcl.Range
	people map[string]*Person // by name, folded
	any    bool               // there is a season block
}

// eventRead is an event with what of it has to be looked up when all files are read.
type eventRead struct {
	event *Event
	what  string
	crew  []told
	sound bool // its days can be used
}

// newSeasonReader begins to read a season.
func newSeasonReader(shown string, v *Vocabulary) *seasonReader {
	return &seasonReader{
		season: &Season{leads: map[string]int64{}},
		gear:   newSheetReader(shown, nil, v),
		named:  map[string]hcl.Range{},
		people: map[string]*Person{},
	}
}

// isSeason reports whether what was read can be a season. A sheet, a rulebook or an empty
// file gets a sentence of its own instead of a fault at every line.
func (r *seasonReader) isSeason(sources []*Source) bool {
	has := func(name string) *hclsyntax.Block {
		for _, source := range sources {
			for _, block := range source.Body.Blocks {
				if block.Type == name {
					return block
				}
			}
		}
		return nil
	}
	if has("season") != nil || has("event") != nil || has("crew") != nil {
		return true
	}
	for _, other := range []struct{ block, what, flag string }{
		{"car", "build sheet", "as the first argument"}, {"rulebook", "rulebook", "after --rulebook"}, {"chapter", "rulebook", "after --rulebook"},
	} {
		if block := has(other.block); block != nil {
			r.gear.fault("not-a-season", HeaderOf(block), "No season", fmt.Sprintf(
				"Found a %s where a season is wanted. Name the file or folder that holds the season block, and give the %s %s.", other.what, other.what, other.flag))
			return false
		}
	}
	return len(sources) > 0
}

// wantSeason reports a season that no block speaks of.
func (r *seasonReader) wantSeason(sources []*Source) {
	if r.gear.whole && !r.any {
		r.gear.fault("season-missing", wholeFile(sources[0].Name), "No season", `Found no season block. Write one: season "2027" { event "NAME" { first_day = "2027-03-13" … } }.`)
	}
}

// instruments reads the instruments of all files, which readings of any of them can name.
func (r *seasonReader) instruments(sources []*Source) {
	for _, source := range sources {
		for _, block := range source.Body.Blocks {
			if block.Type == "instrument" {
				r.gear.instrument(source, block)
			}
		}
	}
}

// read reads one file: of the season, or one of crew alone.
func (r *seasonReader) read(source *Source, as string) {
	known := []string{"season", "crew", "instrument"}
	if as == "crew" {
		known = known[1:]
	}
	start := source.Body.SrcRange
	start.End = start.Start
	top := &keys{source: source, block: &hclsyntax.Block{Body: source.Body, TypeRange: start}, what: as + " file"}
	for _, block := range source.Body.Blocks {
		switch {
		case block.Type == "season" && as == "season":
			r.seasonBlock(source, block)
		case block.Type == "crew":
			r.crew(source, block)
		case block.Type == "instrument":
		case block.Type == "event":
			top.fault("block-misplaced", block.TypeRange, "A block out of place", fmt.Sprintf(
				"Found the block %s in the %s. Write it inside season \"NAME\" { }.", Quote(block.Type), top.what))
		case r.gear.typeNamed(block.Type) != nil || slices.Contains(logbookBlocks, block.Type):
			top.fault("block-misplaced", block.TypeRange, "A block out of place", fmt.Sprintf(
				"Found the block %s in the %s. %s", Quote(block.Type), top.what, r.placeOf(block.Type)))
		default:
			top.unknown("unknown-block", block.TypeRange, block.Type, known)
		}
	}
	for _, a := range attributesInOrder(source.Body) {
		top.unknown("unknown-key", a.NameRange, a.Name, known)
	}
	r.gear.faults = append(r.gear.faults, top.faults...)
}

// placeOf says where a block of a sheet belongs that stands in a season.
func (r *seasonReader) placeOf(name string) string {
	if t := r.gear.typeNamed(name); t != nil && t.Within == r.crewType() {
		return `It belongs to a person: write it inside crew "NAME" { }.`
	}
	return "It belongs to a build sheet. Move it there."
}

// crewType is the type of part that a crew block is.
func (r *seasonReader) crewType() *PartType { return r.gear.sheet.Vocabulary.Type("crew_member") }

// seasonBlock reads the season block.
func (r *seasonReader) seasonBlock(source *Source, block *hclsyntax.Block) {
	k := &keys{source: source, block: block, what: "season"}
	label, ok := k.label(`"2027"`)
	if ok {
		k.what += " " + Quote(label.text)
	}
	if r.any {
		k.fault("said-twice", k.header(), "A second season", fmt.Sprintf(
			"Found a second season; the first is at %s. A run is about one: write each in a file or folder of its own.", PlaceText(r.season.Range)))
	} else {
		r.any = true
		r.season.Name, r.season.Range = label.text, k.header()
	}
	if days, ok := k.leadOf("lead", k.value("lead")); ok {
		r.season.lead = days
	}
	r.leads(k)
	r.season.Note = k.note()
	events := k.inner("event")
	for _, event := range events {
		r.event(source, event)
	}
	if len(events) == 0 {
		k.fault("season-empty", k.header(), "A season without events", fmt.Sprintf(
			"Found no event in the %s. Write each inside it: event \"NAME\" { first_day = \"2027-03-13\" … }, on lines of their own.", k.what))
	}
	k.done([]string{"lead", "leads", "note"}, "a season", "event")
	r.gear.faults = append(r.gear.faults, k.faults...)
}

// result is the season, or nil when there are faults in it.
func (r *seasonReader) result(sources, crew []*Source) (*Season, hcl.Diagnostics) {
	s := r.season
	s.Sources = slices.Concat(sources, crew)
	for _, read := range r.events {
		s.Events = append(s.Events, read.event)
	}
	slices.SortStableFunc(s.Events, func(a, b *Event) int { return cmp.Compare(a.First, b.First) })
	faults := r.gear.faults
	slices.SortStableFunc(faults, func(a, b *hcl.Diagnostic) int {
		return cmp.Or(strings.Compare(a.Subject.Filename, b.Subject.Filename), cmp.Compare(a.Subject.Start.Byte, b.Subject.Start.Byte))
	})
	if faults.HasErrors() {
		return nil, faults
	}
	s.Hash = hashSeason(sources, crew)
	return s, faults
}
