package vehicle

import (
	"embed"
	"io/fs"
	"slices"
	"sync"

	"github.com/hashicorp/hcl/v2"
)

// Vocabulary is everything a build sheet can say: the types of parts and the particulars
// of each. It is never changed once it is made; Extend makes another one. It may be used
// by several goroutines at once.
type Vocabulary struct {
	Root  *PartType // stands for the whole sheet; its parts are those of the car itself
	types []*PartType
	lists []*ChoiceList // those that are declared by a name, for several particulars
}

// builtInFiles declares the vocabulary that every sheet has, one file for each area, in
// the order in which a car is gone over.
//
//go:embed vocabulary/*.hcl
var builtInFiles embed.FS

var builtIn = sync.OnceValue(func() *Vocabulary {
	folder, err := fs.Sub(builtInFiles, "vocabulary")
	if err != nil {
		panic(err)
	}
	sources, faults := ReadSources(folder, ".", "vocabulary", "vocabulary")
	v, found := readVocabulary(sources)
	if faults = append(faults, found...); len(faults) > 0 {
		panic("vehicle: the built-in vocabulary is faulty: " + faults.Error())
	}
	return v
})

// BuiltIn returns the vocabulary that every sheet has. It is read from the embedded files
// once; every call returns the same. A fault in those files panics.
//
// Until a rulebook says which classes there are, the car's class is a text.
func BuiltIn() *Vocabulary { return builtIn() }

// Types returns all types of parts in the order in which they are declared, those that
// rulebooks add behind the built-in ones; the root is left out. The list may not be changed.
func (v *Vocabulary) Types() []*PartType { return v.types }

// Type returns the type of part whose block in a sheet has that name, nil when there is
// none. "club" is the block of the rulebook that the vocabulary was last extended for.
func (v *Vocabulary) Type(name string) *PartType { return visible(v.Root, v.types, name) }

// Club returns the type of the part that holds what one rulebook adds to the car itself,
// nil when it adds nothing or is not in the vocabulary.
func (v *Vocabulary) Club(book string) *PartType {
	for _, t := range v.types {
		if t.Club != "" && FoldText(t.Club) == FoldText(book) {
			return t
		}
	}
	return nil
}

// choices returns the list of choices that is declared under a name, nil when none is.
func (v *Vocabulary) choices(name string) *ChoiceList {
	for _, list := range v.lists {
		if FoldText(list.Name) == FoldText(name) {
			return list
		}
	}
	return nil
}

// Particular returns the particular of the part with that name, nil when there is none.
// What rulebooks other than the one the vocabulary was last extended for have added is not
// found: two clubs can use one name for different things. ClubParticular finds those.
func (t *PartType) Particular(name string) *Particular {
	for _, x := range t.Particulars {
		if x.Name == name && t.sees(x.Club) {
			return x
		}
	}
	return nil
}

// ClubParticular returns the particular that a rulebook has added to the part under that
// name, nil when there is none.
func (t *PartType) ClubParticular(book, name string) *Particular {
	for _, x := range t.Particulars {
		if x.Name == name && x.Club != "" && FoldText(x.Club) == FoldText(book) {
			return x
		}
	}
	return nil
}

// PartNamed returns the type of part that belongs to this one and whose block has that
// name, nil when there is none.
func (t *PartType) PartNamed(name string) *PartType { return visible(t, t.Parts, name) }

// PartsNamed returns the type of part that belongs to this one and whose list has that
// name, nil when there is none.
func (t *PartType) PartsNamed(plural string) *PartType {
	i := slices.IndexFunc(t.Parts, func(inner *PartType) bool { return inner.Repeats() && inner.Plural == plural })
	if i < 0 {
		return nil
	}
	return t.Parts[i]
}

// sees reports whether formulas of the rulebook that the vocabulary was last extended for
// see what the named rulebook adds.
func (t *PartType) sees(club string) bool { return club == "" || club == t.book }

// visible returns the type of that name among types that of's rulebook sees.
func visible(of *PartType, types []*PartType, name string) *PartType {
	i := slices.IndexFunc(types, func(t *PartType) bool { return t.Name == name && of.sees(t.Club) })
	if i < 0 {
		return nil
	}
	return types[i]
}

// sortFaults brings faults into the order of the text, those of one place in the order in
// which they were found.
func sortFaults(faults hcl.Diagnostics) hcl.Diagnostics {
	slices.SortStableFunc(faults, func(a, b *hcl.Diagnostic) int { return a.Subject.Start.Byte - b.Subject.Start.Byte })
	return faults
}
