package rules

import (
	"cmp"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle"
)

// blockTypes are the blocks that stand at the top level of a rulebook.
var blockTypes = []string{"rulebook", "chapter", "term", "table", "particular", "standard", "worked_case"}

// located is a block and the file it stands in.
type located struct {
	*hclsyntax.Block
	source *vehicle.Source
}

// loader gathers what is read of one rulebook and every fault found on the way.
type loader struct {
	folder   fs.FS  // that holds the rulebook
	dir      string // path in folder of the directory that the files stand in
	sources  []*vehicle.Source
	beside   map[string][]byte // CSV files read, by path relative to dir
	blocks   map[string][]located
	book     *Rulebook
	scope    *Scope
	extents  map[*Term]extent
	wordings map[string][]wording // clauses read, by number
	faults   hcl.Diagnostics
}

// Load reads a rulebook: a file, or a folder whose *.hcl files are read as one. name is
// its path in folder, shown the path to show in messages. v is the vocabulary that the
// rulebook adds to; it is left as it is.
//
// Tables in CSV files are looked for in the folder of the rulebook, nowhere else; whether
// symbolic links can lead out of it is a matter of the file system given: os.Root.FS does
// not follow one that does.
//
// The rulebook is nil when the diagnostics hold an error. They hold every fault that can
// be told in one run, in the order of the files: a formula is checked even where another
// clause is wrong. Warnings come with a usable rulebook.
func Load(folder fs.FS, name, shown string, v *vehicle.Vocabulary) (*Rulebook, hcl.Diagnostics) {
	sources, faults := vehicle.ReadSources(folder, name, shown, "rulebook")
	l := &loader{
		folder:   folder,
		dir:      name,
		sources:  sources,
		beside:   map[string][]byte{},
		blocks:   map[string][]located{},
		extents:  map[*Term]extent{},
		wordings: map[string][]wording{},
		book:     &Rulebook{Vocabulary: v},
		faults:   faults,
	}
	if info, err := fs.Stat(folder, name); err == nil && !info.IsDir() {
		l.dir = path.Dir(name)
	}
	switch {
	case vehicle.AllRead(sources, faults):
		if l.sortBlocks() {
			l.readBlocks()
		}
	case len(sources) > 0:
		l.faults[len(l.faults)-1].Detail += " The other files of the rulebook wait for this one."
	}
	l.sortFaults()
	if l.faults.HasErrors() {
		return nil, l.faults
	}
	l.book.Hash = l.hash()
	return l.book, l.faults
}

// readBlocks reads the blocks in the order in which they need each other.
func (l *loader) readBlocks() {
	l.readBook()
	l.readStandards()
	l.readParticulars()
	l.readTables()
	l.readTerms()
	l.readChapters()
	l.readCases()
}

// report adds a fault.
func (l *loader) report(fault *hcl.Diagnostic) { l.faults = append(l.faults, fault) }

// sortBlocks files the blocks of all sources by type. It returns false when what was given
// is no rulebook at all, so that only this is reported.
func (l *loader) sortBlocks() bool {
	for _, source := range l.sources {
		for _, block := range source.Body.Blocks {
			l.blocks[block.Type] = append(l.blocks[block.Type], located{block, source})
		}
	}
	if len(l.blocks["rulebook"]) == 0 {
		l.report(l.noRulebook())
		return false
	}
	for _, source := range l.sources {
		l.refuseStrangers(source)
	}
	return true
}

// noRulebook says that there is no rulebook block, and what was given instead.
func (l *loader) noRulebook() *hcl.Diagnostic {
	if cars := l.blocks["car"]; len(cars) > 0 {
		return vehicle.Fault("sheet-for-rulebook", vehicle.HeaderOf(cars[0].Block), "A build sheet, not a rulebook",
			"Found the build sheet of a car where a rulebook is wanted. Name the file or folder that holds the club's rulebook block.")
	}
	at := l.sources[0].Body.SrcRange
	at.End = at.Start
	return vehicle.Fault("no-rulebook", at, "Not a rulebook",
		"Found no rulebook block. A rulebook begins with: rulebook \"NAME OF THE RULES\" { edition = \"2027\" }, and its chapters follow.")
}

// refuseStrangers reports what has no place at the top level of a rulebook.
func (l *loader) refuseStrangers(source *vehicle.Source) {
	for name, attribute := range source.Body.Attributes {
		l.report(vehicle.Fault("unknown-key", attribute.NameRange, "A value outside any block", fmt.Sprintf(
			"Found %s at the top level of a rulebook, which holds blocks only: %s. Move it into the block it belongs to.", name, listOf(blockTypes, "and"))))
	}
	for _, block := range source.Body.Blocks {
		if slices.Contains(blockTypes, block.Type) {
			continue
		}
		advice := "A rulebook holds " + listOf(blockTypes, "and") + "."
		if block.Type == "car" {
			advice = "A build sheet stands in a file of its own, outside the folder of the rulebook."
		} else if block.Type == "clause" {
			advice = "A clause stands in its chapter: write it inside chapter \"4\" { … }, on lines of its own."
		} else if near := vehicle.Nearest(block.Type, blockTypes); near != "" {
			advice = fmt.Sprintf("Did you mean %s? %s", near, advice)
		}
		l.report(vehicle.Fault("unknown-block", block.TypeRange, "Unknown block", fmt.Sprintf(
			"Found the block %s at the top level of a rulebook. %s", block.Type, advice)))
	}
}

// mostFaults is how many faults of a rulebook are told one by one.
const mostFaults = 500

// sortFaults brings the faults into the order of the files, and within a file into that of
// the text, whatever order they were found in. What is too much to read is cut off.
func (l *loader) sortFaults() {
	order := map[string]int{}
	for i, source := range l.sources {
		order[source.Name] = i - len(l.sources)
	}
	slices.SortStableFunc(l.faults, func(a, b *hcl.Diagnostic) int {
		return cmp.Or(
			cmp.Compare(order[a.Subject.Filename], order[b.Subject.Filename]),
			strings.Compare(a.Subject.Filename, b.Subject.Filename),
			cmp.Compare(a.Subject.Start.Byte, b.Subject.Start.Byte))
	})
	if more := len(l.faults) - mostFaults; more > 0 {
		next := *l.faults[mostFaults].Subject
		l.faults = append(l.faults[:mostFaults], vehicle.Fault("more-faults", next, "More faults follow", fmt.Sprintf(
			"Found %d more faults from here on. Mend those above first.", more)))
	}
}

// hash is the SHA-256 over the files of the rulebook, tables beside it included, in the
// order of their paths relative to the rulebook's folder.
func (l *loader) hash() string {
	files := maps.Clone(l.beside)
	for _, source := range l.sources {
		files[path.Base(source.Name)] = source.Bytes
	}
	return vehicle.HashFiles(files)
}
