package vehicle

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// withStandards is a vocabulary with the standard blocks of a rulebook added.
func withStandards(t *testing.T, v *Vocabulary, book, blocks string) (*Vocabulary, []string) {
	t.Helper()
	source, faults := ParseSource("club.hcl", []byte(blocks))
	require.Empty(t, faults)
	var added []AddedStandard
	for _, block := range source.Body.Blocks {
		one, found := DecodeStandard(source, block, v)
		require.Empty(t, found)
		added = append(added, one)
	}
	out, found := v.WithStandards(book, added)
	return out, placesOf(blocks, found)
}

// standard is a block for the list of harness standards.
func standard(name string, synonyms ...string) string {
	return fmt.Sprintf("standard %q {\n  list = \"Harness standard\"\n  synonyms = [%s]\n  means = \"the one after\"\n}\n", name, `"`+strings.Join(synonyms, `", "`)+`"`)
}

func TestStandardsOfARulebook(t *testing.T) {
	v := BuiltIn()
	before := v.choices("harness standard")
	w, faults := withStandards(t, v, "Saltmarsh", standard("SFI 16.7", "16.7")+"standard \"Fen 1\" { list = \"seat standard\" }\n")
	require.Empty(t, faults)

	x := w.Type("harness").Particular("standard")
	require.Same(t, w.choices("harness standard"), x.Choices, "the particular takes the list that has more")
	require.Equal(t, len(before.Choices), x.Choices.Find("16.7"), "at the end, so that positions stay")
	require.Equal(t, Choice{Value: "SFI 16.7", Synonyms: []string{"16.7"}, Means: "the one after", Club: "Saltmarsh"}, x.Choices.Choices[len(before.Choices)])
	require.GreaterOrEqual(t, w.Type("seat").Particular("standard").Choices.Find("FEN 1"), 0)
	require.Negative(t, before.Find("SFI 16.7"), "the vocabulary that was extended is as it was")
	require.Same(t, before, v.Type("harness").Particular("standard").Choices)

	// A sheet can say it, by a synonym too, and a particular of the club can take the list.
	sheet, found := Load(fstest.MapFS{"car.hcl": {Data: []byte("car \"Tessel 16\" {}\nharness \"driver\" { standard = \"16.7\" }\n")}}, "car.hcl", "car.hcl", w, Options{})
	require.Empty(t, found)
	require.Equal(t, len(before.Choices), sheet.Root.List(w.Type("harness")).Parts[0].Values[x.Index].Choice)
	y, faults := extended(t, w, "Saltmarsh", block("spare", "kind = \"choice\"\nchoices = \"harness standard\"\n"), nil)
	require.Empty(t, faults)
	require.Same(t, y.Type("harness").Particular("standard").Choices, y.Type("club").Particular("spare").Choices)

	same, faults := withStandards(t, v, "Saltmarsh", "")
	require.Empty(t, faults)
	require.Same(t, v, same, "nothing to add")
}

func TestStandardsOfTwoRulebooks(t *testing.T) {
	a, faults := withStandards(t, BuiltIn(), "Saltmarsh", standard("SFI 16.7", "16.7"))
	require.Empty(t, faults)
	// Another edition has the same standard with one more spelling.
	b, faults := withStandards(t, a, "Saltmarsh", standard("sfi  16.7", "SFI Spec 16.7")+standard("SFI 16.8", "16.8"))
	require.Empty(t, faults)
	list := b.choices("harness standard")
	require.Equal(t, list.Find("16.7"), list.Find("SFI Spec 16.7"))
	require.Len(t, list.Choices, len(a.choices("harness standard").Choices)+1)
	// One that gives a spelling of another book to something else contradicts it.
	text := standard("Fen 1", "16.7")
	c, faults := withStandards(t, b, "Fens", text)
	require.Equal(t, []string{`3:15 standard-exists "16.7"`}, faults)
	require.Negative(t, c.choices("harness standard").Find("Fen 1"))
}

func TestStandardsThatAreThere(t *testing.T) {
	for blocks, want := range map[string][]string{
		standard("FIA 8853/98", "x"):                            {`1:10 standard-exists "FIA 8853/98"`},
		standard("8853-1998", "x"):                              {`1:10 standard-exists "8853-1998"`},
		standard("FIA 8853-2030", "8853/2016"):                  {`3:15 standard-exists "8853/2016"`},
		standard("SFI 16.7", "a") + standard("SFI 16.7", "b"):   {`6:10 said-twice "SFI 16.7"`},
		standard("SFI 16.7", "16.7") + standard("B", "16.7"):    {`8:15 said-twice "16.7"`},
		standard("SFI 16.7", "a") + standard("B", "c", "other"): {`8:20 standard-exists "other"`},
	} {
		_, faults := withStandards(t, BuiltIn(), "Saltmarsh", blocks)
		require.Equal(t, want, faults, blocks)
	}
	_, found := withFault(t, standard("8853-1998", "x"))
	require.Equal(t, `Found "8853-1998", which the list "harness standard" has as a synonym of "FIA 8853/98". Take it out here, and write the standard in clauses and build sheets as it is.`, found)
}

// withFault is the detail of the one fault of adding.
func withFault(t *testing.T, text string) (*Vocabulary, string) {
	t.Helper()
	source, faults := ParseSource("club.hcl", []byte(text))
	require.Empty(t, faults)
	one, faults := DecodeStandard(source, source.Body.Blocks[0], BuiltIn())
	require.Empty(t, faults)
	v, found := BuiltIn().WithStandards("Saltmarsh", []AddedStandard{one})
	require.Len(t, found, 1)
	return v, found[0].Detail
}

func TestStandardsUpToTheMost(t *testing.T) {
	var blocks strings.Builder
	room := mostChoices - len(BuiltIn().choices("harness standard").Choices)
	for i := range room {
		blocks.WriteString(standard(fmt.Sprint("Fen ", i), fmt.Sprint("F", i)))
	}
	full, faults := withStandards(t, BuiltIn(), "Fens", blocks.String())
	require.Empty(t, faults)
	require.Len(t, full.choices("harness standard").Choices, mostChoices)
	_, faults = withStandards(t, BuiltIn(), "Fens", blocks.String()+standard("One more", "1 more"))
	require.Equal(t, []string{fmt.Sprintf("%d:10 choices-too-many \"One more\"", 5*room+1)}, faults)
}
