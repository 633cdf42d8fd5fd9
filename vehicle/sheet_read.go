package vehicle

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// sheetReader gathers a sheet and every fault found on the way.
type sheetReader struct {
	sheet        *Sheet
	folder       *paperCase // nil where evidence files are not looked for
	scrap        bool
	classGiven   bool      // a class that the vocabulary does not have is passed over
	whole        bool      // every file could be read
	noted        hcl.Range // of the note at the top level
	links        []link
	namesRead    int                    // in lists of names
	images       []image                // mirror images, in the order in which they are named
	imageOf      map[*Part]*Part        // by original
	following    map[*PartList]bool     // lists of parts that follow from others, all of them there
	parts        map[partKey]*Part      // those written, to find what is written twice
	papers       map[paperKey]hcl.Range // evidence likewise
	instruments  map[string]*Instrument // by label, folded
	books        []string               // rulebooks that have added to the vocabulary
	others       map[string]bool        // rulebooks that have not, but have blocks in the sheet, folded
	aside        []logbookBlock         // the papers that travel with the car, read once all parts are known
	logged       map[logbookKey]hcl.Range
	called       *partsByName    // all parts, once the papers ask for one
	unreadLabels map[string]bool // labels of blocks that are none of a sheet, folded
	faults       hcl.Diagnostics
}

// partKey is what no two parts have in common.
type partKey struct {
	list  *PartList
	label string // folded, "" where there can be one part only
}

// page is the part of a file that a sheet stands in.
type page struct {
	source *Source
	body   *hclsyntax.Body
}

// opened is a block that is being read, or the top level of a file.
type opened struct {
	*keys
	part *Part
	club string // the rulebook whose particulars it holds, "" for those of the built-in vocabulary
}

// newSheetReader begins to read a sheet.
func newSheetReader(shown string, sources []*Source, v *Vocabulary) *sheetReader {
	return &sheetReader{
		sheet: &Sheet{
			Name:       shown,
			Root:       newPart(v.Root, "", nil, hcl.Range{}),
			Logbook:    &Logbook{},
			Sources:    sources,
			Vocabulary: v,
		},
		parts:        map[partKey]*Part{},
		papers:       map[paperKey]hcl.Range{},
		imageOf:      map[*Part]*Part{},
		following:    map[*PartList]bool{},
		instruments:  map[string]*Instrument{},
		books:        booksOf(v),
		others:       map[string]bool{},
		logged:       map[logbookKey]hcl.Range{},
		unreadLabels: map[string]bool{},
	}
}

// read reads all pages. Instruments come first, since a reading can name one that is
// described further down.
func (r *sheetReader) read(pages []page) {
	if r.isTooLarge(pages) {
		return
	}
	for _, p := range pages {
		for _, block := range p.body.Blocks {
			if block.Type == "instrument" {
				r.instrument(p.source, block)
			}
		}
	}
	for _, p := range pages {
		start := p.body.SrcRange
		start.End = start.Start
		top := &hclsyntax.Block{Body: p.body, TypeRange: start}
		r.body(&opened{keys: &keys{source: p.source, block: top, what: "sheet"}, part: r.sheet.Root})
	}
	r.makeImages()
	r.resolve()
	r.nameImages()
	r.implied()
	r.checkCage()
	r.settle(r.sheet.Root)
	r.checkDates(r.sheet.Root)
	r.meetings()
	r.logbook()
}

// result is the sheet, or nil when there are faults in it.
func (r *sheetReader) result(hash string) (*Sheet, hcl.Diagnostics) {
	r.findDerived()
	slices.SortStableFunc(r.faults, func(a, b *hcl.Diagnostic) int {
		return cmp.Or(strings.Compare(a.Subject.Filename, b.Subject.Filename),
			cmp.Compare(a.Subject.Start.Byte, b.Subject.Start.Byte))
	})
	if r.faults.HasErrors() {
		return nil, r.faults
	}
	r.sheet.Hash = hash
	return r.sheet, r.faults
}

// fault notes a fault.
func (r *sheetReader) fault(code Code, at hcl.Range, summary, detail string) {
	r.faults = append(r.faults, Fault(code, at, summary, detail))
}

// body reads what stands in a block, or at the top level.
func (r *sheetReader) body(b *opened) {
	for _, a := range attributesInOrder(b.block.Body) {
		r.attribute(b, a)
	}
	r.pointTolerance(b)
	for _, block := range b.block.Body.Blocks {
		r.block(b, block)
	}
	r.faults = append(r.faults, b.faults...)
}

// attribute reads one name = value.
func (r *sheetReader) attribute(b *opened, a *hclsyntax.Attribute) {
	switch {
	case b.club != "":
	case a.Name == "note":
		r.note(b, a)
		return
	case a.Name == "not_fitted" || a.Name == "unfinished":
		r.list(b, a)
		return
	case a.Name == "mirrored_as" && b.part.Type.isMirrored():
		r.mirror(b, a)
		return
	case a.Name == "tolerance" && b.part.Type.hasPoint():
		return // once all coordinates of the block are read
	}
	if x := b.particular(a.Name); x != nil {
		e := &entry{sheetReader: r, opened: b, particular: x, all: a.Expr.Range()}
		e.read(a.Expr)
		return
	}
	r.unknownName(b, a)
}

// particular returns the particular that a name stands for in the block.
func (b *opened) particular(name string) *Particular {
	if b.club != "" {
		return b.part.Type.ClubParticular(b.club, name)
	}
	if x := b.part.Type.Particular(name); x != nil && x.Club == "" {
		return x
	}
	return nil
}

// note reads a note. The top level can be in several files, but has one note only.
func (r *sheetReader) note(b *opened, a *hclsyntax.Attribute) {
	if b.part == r.sheet.Root && r.noted != (hcl.Range{}) {
		r.faults = append(r.faults, SaidTwice(a.NameRange, "note", r.noted))
		return
	}
	if b.part == r.sheet.Root {
		r.noted = a.NameRange
	}
	b.part.Note = b.prose("note", a.Expr)
}

// prose reads a text that may have several lines.
func (k *keys) prose(key string, e hclsyntax.Expression) string {
	text, _, fault := k.source.Text(e)
	if fault != nil {
		k.faults = append(k.faults, fault)
	}
	return strings.TrimSpace(text)
}

// block reads one block.
func (r *sheetReader) block(b *opened, block *hclsyntax.Block) {
	switch {
	case b.club != "":
		b.fault("unknown-block", block.TypeRange, "A block out of place",
			fmt.Sprintf("Found the block %s in the %s, which holds name = value only. Take it out.", Quote(block.Type), b.what))
	case block.Type == "evidence":
		r.evidence(b, block)
	case block.Type == "club":
		r.club(b, block)
	case slices.Contains(logbookBlocks, block.Type):
		r.putAside(b, block)
	case block.Type == "instrument":
		if b.part != r.sheet.Root {
			b.fault("block-misplaced", block.TypeRange, "An instrument out of place",
				fmt.Sprintf("Found an instrument in the %s. Write it at the top level of the sheet; readings name it by measured_with.", b.what))
		}
	default:
		if t := r.partHere(b.part, block.Type); t != nil {
			r.open(b, t, block)
			return
		}
		r.unknownBlock(b, block)
	}
}

// partHere returns the type of part whose blocks can stand in a part's block, at the top
// level for the root; nil when there is none of that name.
func (r *sheetReader) partHere(p *Part, name string) *PartType {
	for _, t := range r.partsHere(p) {
		if t.Name == name {
			return t
		}
	}
	return nil
}

// partsHere returns the types of parts whose blocks can stand in a part's block.
func (r *sheetReader) partsHere(p *Part) []*PartType {
	var types []*PartType
	if p != r.sheet.Root {
		for _, t := range p.Type.Parts {
			if !t.AtTop && t.Club == "" {
				types = append(types, t)
			}
		}
		return types
	}
	for _, t := range r.sheet.Vocabulary.Types() {
		if t.Club == "" && (t.AtTop || t.Within == p.Type) {
			types = append(types, t)
		}
	}
	return types
}
