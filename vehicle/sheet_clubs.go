package vehicle

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// club reads a block of what one rulebook has added: at the top level for the car itself,
// in a part for that part. A block for a rulebook that the vocabulary does not have is kept
// unread, so that a sheet can serve several clubs.
func (r *sheetReader) club(b *opened, block *hclsyntax.Block) {
	if len(block.LabelRanges) != 1 {
		b.fault("label-count", HeaderOf(block), "One name is wanted",
			fmt.Sprintf("Found %d names behind club. Write the name of the rulebook: club \"NAME OF THE RULES\" {.", len(block.LabelRanges)))
		return
	}
	label, ok := b.labelOf(block)
	if !ok {
		return
	}
	book := r.book(label)
	if book == "" {
		r.unread(label, block.LabelRanges[0])
		return
	}
	inner := &opened{keys: &keys{source: b.source, block: block, what: "club " + Quote(book)}, part: b.part, club: book}
	if b.part == r.sheet.Root {
		if inner.part = r.clubPart(book, HeaderOf(block)); inner.part == nil {
			return
		}
	} else {
		inner.what = fmt.Sprintf("club %s of the %s", Quote(book), b.what)
	}
	r.body(inner)
}

// clubPart is the part that holds what a rulebook adds to the car itself.
func (r *sheetReader) clubPart(book string, at hcl.Range) *Part {
	t := r.sheet.Vocabulary.Club(book)
	if t == nil {
		r.fault("unknown-block", at, "A block out of place", fmt.Sprintf(
			"Found a club block at the top level, but %s adds nothing to the car itself. Write it in the part that it is about.", Quote(book)))
		return nil
	}
	list := r.sheet.Root.List(t)
	if len(list.Parts) > 0 {
		r.faults = append(r.faults, SaidTwice(at, "club "+Quote(book), list.Parts[0].Range))
	} else {
		list.Parts = append(list.Parts, newPart(t, book, r.sheet.Root, at))
	}
	return list.Parts[0]
}

// booksOf are the names of the rulebooks that have added to a vocabulary, in its order.
func booksOf(v *Vocabulary) []string {
	var books []string
	add := func(club string) {
		if club != "" && !slices.Contains(books, club) {
			books = append(books, club)
		}
	}
	for _, t := range v.Types() {
		add(t.Club)
		for _, x := range t.Particulars {
			add(x.Club)
		}
	}
	return books
}

// book returns the name of the rulebook of the vocabulary that a label means, "" for none.
func (r *sheetReader) book(label string) string {
	for _, book := range r.books {
		if FoldText(book) == FoldText(label) {
			return book
		}
	}
	return ""
}

// unread keeps in mind that blocks of a club were not read, and warns when its name looks
// like a slip of the pen.
func (r *sheetReader) unread(label string, at hcl.Range) {
	if folded := FoldText(label); !r.others[folded] {
		r.others[folded] = true
		r.sheet.Clubs = append(r.sheet.Clubs, label)
	}
	if near := Nearest(label, r.books); near != "" {
		r.faults = append(r.faults, Warning("club-unread", at, "A block that was not read",
			fmt.Sprintf("Found a block for %s, which is no rulebook of this run. Did you mean %s?", Quote(label), Quote(near))))
	}
}
