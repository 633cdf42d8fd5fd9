package vehicle

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// extended is a vocabulary with the particular blocks of a rulebook added.
func extended(t require.TestingT, v *Vocabulary, book, blocks string, classes *ChoiceList) (*Vocabulary, []string) {
	source, faults := ParseSource("club.hcl", []byte(blocks))
	require.Empty(t, faults)
	var added []Added
	for _, block := range source.Body.Blocks {
		one, found := DecodeParticular(source, block, v)
		require.Empty(t, found)
		added = append(added, one)
	}
	out, found := v.Extend(book, classes, added)
	return out, placesOf(blocks, found)
}

// block is a particular block with the given keys.
func block(name, keys string) string {
	return fmt.Sprintf("particular %q {\n%s%s", name, keys, usual)
}

func TestExtend(t *testing.T) {
	v := BuiltIn()
	classes := &ChoiceList{Name: "classes", Choices: []Choice{{Value: "open"}, {Value: "historic", Synonyms: []string{"H"}}}}
	w, faults := extended(t, v, "Saltmarsh", block("tide", "kind = \"count\"\nplausible = \"0 to 3\"\n")+
		block("patina", "part = \"tube\"\nkind = \"choice\"\nchoices = [\"light\", \"deep\"]\n")+
		block("spare_seat", "kind = \"part name\"\nnames = \"seat\"\n"), classes)
	require.Empty(t, faults)

	club := w.Type("club")
	require.NotNil(t, club)
	require.Same(t, club, w.Root.PartNamed("club"))
	require.Same(t, club, w.Club("  SALTMARSH"))
	require.Same(t, club, w.Root.Parts[club.Index])
	require.True(t, club.Labelled)
	require.Equal(t, "Saltmarsh", club.Club)
	tide := club.Particular("tide")
	require.Equal(t, KindCount, tide.Kind)
	require.Equal(t, "Saltmarsh", tide.Club)
	require.Same(t, w.Type("seat"), club.Particular("spare_seat").Names)

	patina := w.Type("tube").Particular("patina")
	require.Same(t, w.Type("tube"), patina.Part)
	require.Same(t, patina, patina.Part.Particulars[patina.Index])
	require.Same(t, patina, w.Type("tube").ClubParticular("saltmarsh", "patina"))

	class := w.Type("car").Particular("class")
	require.Equal(t, KindChoice, class.Kind)
	require.Same(t, classes, class.Choices)

	// The vocabulary that was extended is as it was.
	require.Nil(t, v.Type("club"))
	require.Nil(t, v.Type("tube").Particular("patina"))
	require.Equal(t, KindText, v.Type("car").Particular("class").Kind)
	require.NotSame(t, v.Type("tube"), w.Type("tube"))

	bare, faults := extended(t, v, "Fens", "", nil)
	require.Empty(t, faults)
	require.Nil(t, bare.Club("Fens"), "a book that adds nothing has no club part")
}

func TestExtendTwice(t *testing.T) {
	first := &ChoiceList{Name: "classes", Choices: []Choice{{Value: "open"}, {Value: "historic", Synonyms: []string{"H"}}}}
	second := &ChoiceList{Name: "classes", Choices: []Choice{{Value: "H", Synonyms: []string{"old"}}, {Value: "junior", Synonyms: []string{"OPEN", "J"}}}}
	tide := "kind = \"count\"\nplausible = \"0 to 3\"\n"
	a, faults := extended(t, BuiltIn(), "Saltmarsh", block("tide", tide)+block("patina", "part = \"tube\"\nkind = \"text\"\n"), first)
	require.Empty(t, faults)
	b, faults := extended(t, a, "Fens", block("tide", "kind = \"text\"\n")+block("patina", "part = \"tube\"\nkind = \"date\"\n"), second)
	require.Empty(t, faults)

	require.Equal(t, KindText, b.Type("club").Particular("tide").Kind, "a book sees its own particular")
	require.Equal(t, KindCount, b.Club("Saltmarsh").ClubParticular("Saltmarsh", "tide").Kind)
	require.Equal(t, KindDate, b.Type("tube").Particular("patina").Kind)
	require.Equal(t, KindText, b.Type("tube").ClubParticular("Saltmarsh", "patina").Kind)
	require.Nil(t, b.Club("Saltmarsh").Particular("tide"), "and not that of another book")

	// Places in the list of classes stay; a class that both know is one.
	classes := b.Type("car").Particular("class").Choices
	require.Equal(t, []string{"open", "historic", "junior"}, classes.Values())
	require.Equal(t, 1, classes.Find("old"))
	require.Equal(t, 0, classes.Find("OPEN"))
	require.Equal(t, 2, classes.Find("j"))
	require.Equal(t, []string{"H"}, first.Choices[1].Synonyms, "the list of the first book is as it was")
}

func TestEditionsOfOneBook(t *testing.T) {
	old, faults := extended(t, BuiltIn(), "Saltmarsh", block("tide", "kind = \"choice\"\nchoices = [\"low\", \"high\"]\n")+block("depth", "kind = \"text\"\n"), nil)
	require.Empty(t, faults)
	both, faults := extended(t, old, "Saltmarsh", block("tide", "kind = \"choice\"\nchoices = [\"high\", \"spring\"]\n"), nil)
	require.Empty(t, faults)
	require.Len(t, both.Type("club").Particulars, 2)
	require.Equal(t, []string{"low", "high", "spring"}, both.Type("club").Particular("tide").Choices.Values())
	require.Equal(t, 0, both.Type("club").Particular("tide").Index)

	blocks := block("depth", "kind = \"date\"\n")
	_, faults = extended(t, old, "Saltmarsh", blocks, nil)
	require.Equal(t, []string{`1:1 particular-differs particular "depth"`}, faults)
}

func TestFaultsOfExtending(t *testing.T) {
	for _, c := range []struct{ blocks, want string }{
		{block("tide", "kind = \"text\"\n") + block("tide", "kind = \"text\"\n"), `7:1 said-twice particular "tide"`},
		{block("wall", "part = \"tube\"\nkind = \"text\"\n"), `1:1 name-taken particular "wall"`},
		{block("tubes", "part = \"cage\"\nkind = \"text\"\n"), `1:1 name-taken particular "tubes"`},
		{block("certificate", "part = \"cage\"\nkind = \"text\"\n"), `1:1 name-taken particular "certificate"`},
		{block("tide", "part = \"tube\"\ninherits = \"stock\"\nkind = \"text\"\n"), `3:12 inherits-unfit "stock"`},
		{block("tide", "part = \"tube\"\ninherits = \"part\"\nkind = \"text\"\n"), `3:12 inherits-unknown "part"`},
		{block("tide", "part = \"tube\"\nkind = \"tube size\"\nfills = [\"outside\", \"bends\"]\n"), `4:9 fills-unknown ["outside", "bends"]`},
	} {
		v, faults := extended(t, BuiltIn(), "Saltmarsh", c.blocks, nil)
		require.Equal(t, []string{c.want}, faults, c.blocks)
		require.NotNil(t, v)
	}
	// A particular of tubes may be taken from their stock, where the same book declares it.
	text := "kind = \"text\"\n"
	v, faults := extended(t, BuiltIn(), "Saltmarsh", block("tide", "part = \"tube_stock\"\n"+text)+block("tide", "part = \"tube\"\ninherits = \"stock\"\n"+text), nil)
	require.Empty(t, faults)
	require.Equal(t, "stock", v.Type("tube").Particular("tide").Inherits)

	classes := &ChoiceList{Name: "classes"}
	for i := range 40 {
		classes.Choices = append(classes.Choices, Choice{Value: fmt.Sprint("a", i)})
	}
	others := &ChoiceList{Name: "classes"}
	for i := range 40 {
		others.Choices = append(others.Choices, Choice{Value: fmt.Sprint("b", i)})
	}
	a, found := BuiltIn().Extend("Saltmarsh", classes, nil)
	require.Empty(t, found)
	_, found = a.Extend("Fens", others, nil)
	require.Len(t, found, 1)
	require.Equal(t, Code("choices-too-many"), CodeOf(found[0]))
}

// TestExtendOnlyAdds draws rulebooks that add particulars, and holds that whatever has a
// place keeps it: an engine reads values by place, with trees checked against an earlier
// vocabulary.
func TestExtendOnlyAdds(t *testing.T) {
	parts := []string{"", "tube", "seat", "harness", "strap", "cage", "tyre"}
	rapid.Check(t, func(t *rapid.T) {
		v := BuiltIn()
		for range rapid.IntRange(1, 4).Draw(t, "books") {
			blocks := ""
			names := rapid.SliceOfNDistinct(rapid.SampledFrom([]string{"tide", "depth", "patina", "moss"}), 1, 4, rapid.ID[string]).Draw(t, "names")
			for _, name := range names {
				keys := "kind = \"text\"\n"
				if part := rapid.SampledFrom(parts).Draw(t, "part"); part != "" {
					keys += fmt.Sprintf("part = %q\n", part)
				}
				blocks += block(name, keys)
			}
			book := rapid.SampledFrom([]string{"Saltmarsh", "Fens", "Downs"}).Draw(t, "book")
			next, faults := extended(t, v, book, blocks, nil)
			require.Empty(t, faults)
			requireKept(t, v, next)
			v = next
		}
	})
}

// requireKept holds that whatever v has stands at the same place in next.
func requireKept(t require.TestingT, v, next *Vocabulary) {
	require.GreaterOrEqual(t, len(next.Types()), len(v.Types()))
	for i, part := range v.Types() {
		now := next.Types()[i]
		require.Equal(t, [3]any{part.Name, part.Index, part.Club}, [3]any{now.Name, now.Index, now.Club})
		require.Equal(t, part.Within.Name, now.Within.Name)
		for j, x := range part.Particulars {
			require.Equal(t, [4]any{x.Name, x.Club, x.Index, x.Kind}, [4]any{now.Particulars[j].Name, now.Particulars[j].Club, j, now.Particulars[j].Kind})
			require.Same(t, now, now.Particulars[j].Part)
		}
	}
}
