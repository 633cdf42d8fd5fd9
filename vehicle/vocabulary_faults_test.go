package vehicle

import (
	"fmt"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"
)

// decodeOne reads a file of one particular block against the built-in vocabulary.
func decodeOne(t *testing.T, text string) (Added, hcl.Diagnostics) {
	t.Helper()
	source, faults := ParseSource("club.hcl", []byte(text))
	require.Empty(t, faults)
	require.Len(t, source.Body.Blocks, 1)
	return DecodeParticular(source, source.Body.Blocks[0], BuiltIn())
}

// told says each fault as "line:column code", with the text it points at.
func placesOf(text string, faults hcl.Diagnostics) []string {
	var list []string
	for _, fault := range faults {
		at := fault.Subject
		list = append(list, fmt.Sprintf("%d:%d %s %s", at.Start.Line, at.Start.Column, CodeOf(fault), text[at.Start.Byte:at.End.Byte]))
	}
	return list
}

const usual = `
  help = "How deep it is."
  how  = "With a rule."
}
`

func TestDecodeParticular(t *testing.T) {
	added, faults := decodeOne(t, `particular "mesh_depth" {
  part          = "window_net"
  kind          = "length"
  unit          = "in"
  plausible     = "1 mm to 6 in"
  may_be_absent = true
  changeable    = false
  measured      = false
  stage         = "Bare  Shell"`+usual)
	require.Empty(t, faults)
	require.Equal(t, "window_net", added.Part)
	x := added.Particular
	require.Equal(t, "mesh_depth", x.Name)
	require.Equal(t, "in", x.Unit.Name())
	require.InDelta(t, 0.001, x.Plausible.Low, 1e-12)
	require.InDelta(t, 0.1524, x.Plausible.High, 1e-12)
	require.True(t, x.MayBeAbsent)
	require.False(t, x.Changeable)
	require.False(t, x.Measured)
	require.Equal(t, StageBareShell, x.Stage)
	require.Equal(t, "With a rule.", x.How)

	for kind, want := range map[string]Particular{
		`kind = "Yes or No"`: {Kind: KindTruth},
		`kind = "text"`:      {Kind: KindText},
		`kind = "count"` + "\n" + `plausible = "0 to 4"`:            {Kind: KindCount},
		`kind = "number"` + "\n" + `plausible = "0 to 1"`:           {Kind: KindNumber, Measured: true},
		`kind = "part name"` + "\n" + `names = "seat"`:              {Kind: KindPartName},
		`kind = "choice"` + "\n" + `choices = ["a", "b"]`:           {Kind: KindChoice},
		`kind = "choice"` + "\n" + `choices = "Bolt grade"`:         {Kind: KindChoice},
		`kind = "choice"` + "\n" + `value "a" { synonyms = ["b"] }`: {Kind: KindChoice},
		`kind = "date"` + "\n" + `plausible = "2001-05 to 2001-06"`: {Kind: KindDate},
		`kind = "tube size"` + "\n" + `fills = ["outside", "wall"]`: {Kind: KindSize},
		`kind = "date"`: {Kind: KindDate},
	} {
		added, faults := decodeOne(t, "particular \"x\" {\n"+kind+usual)
		require.Empty(t, faults, kind)
		require.Equal(t, want.Kind, added.Particular.Kind, kind)
		require.Equal(t, want.Measured, added.Particular.Measured, kind)
		require.True(t, added.Particular.Changeable)
		require.Equal(t, StageUnset, added.Particular.Stage)
		require.Empty(t, added.Part)
	}
}

func TestPlausibleDates(t *testing.T) {
	days := func(text string) string {
		added, faults := decodeOne(t, "particular \"x\" {\nkind = \"date\"\n"+text+usual)
		require.Empty(t, faults)
		return added.Particular.PlausibleDays.From.String() + " " + added.Particular.PlausibleDays.To.String()
	}
	require.Equal(t, "1900-01-01 2200-12-31", days(""))
	require.Equal(t, "2001-02-01 2004-02-29", days(`plausible = "2001-02 to 2004-02"`))
	require.Equal(t, "1999-12-31 2000-12-31", days(`plausible = "1999-12-31 to 2000"`))
}

func TestFaultsOfAParticular(t *testing.T) {
	for _, c := range []struct{ body, want, says string }{
		{`kind = "lenght"`, `2:8 kind-unknown "lenght"`, `Did you mean "length"?`},
		{``, `1:1 key-missing particular "x"`, `Write kind = "length"`},
		{"kind = \"length\"\nplausible = \"1 mm to 2 mm\"", `1:1 key-missing particular "x"`, `Write unit = "m"`},
		{"kind = \"length\"\nunit = \"mm\"", `1:1 key-missing particular "x"`, `Write plausible = "10 mm to 120 mm"`},
		{"kind = \"length\"\nunit = \"kg\"\nplausible = \"1 mm to 2 mm\"", `3:8 unit-unfit "kg"`, "that is for mass, and it is length"},
		{"kind = \"length\"\nunit = \"gal\"\nplausible = \"1 mm to 2 mm\"", `3:8 unit-unknown "gal"`, "gal"},
		{"kind = \"length\"\nunit = \"mm\"\nplausible = \"1 kg to 2 kg\"", `4:13 plausible-unit "1 kg to 2 kg"`, "Write both ends in a unit for length"},
		{"kind = \"length\"\nunit = \"mm\"\nplausible = \"2 mm\"", `4:13 plausible-form "2 mm"`, "Write its two ends"},
		{"kind = \"length\"\nunit = \"mm\"\nplausible = \"> 2 mm\"", `4:13 plausible-form "> 2 mm"`, "Write its two ends"},
		{"kind = \"length\"\nunit = \"mm\"\nplausible = \"1 to 2\"", `4:13 plausible-unit "1 to 2"`, "unit for length"},
		{"kind = \"length\"\nunit = \"mm\"\nplausible = \" 2,5 mm to 3 mm\"", `4:15 number-comma 2,5`, "Write a decimal point: 2.5."},
		{"kind = \"number\"\nunit = \"dB(A)\"\nplausible = \"1 to 2\"", `4:13 plausible-unit "1 to 2"`, ""},
		{"kind = \"count\"\nplausible = \"0.5 to 3\"", `3:13 plausible-count "0.5 to 3"`, "whole numbers"},
		{"kind = \"count\"\nplausible = \"-1 to 3\"", `3:13 plausible-count "-1 to 3"`, "from 0 up"},
		{"kind = \"count\"\nplausible = \"1 mm to 3 mm\"", `3:13 plausible-unit "1 mm to 3 mm"`, ""},
		{"kind = \"date\"\nplausible = \"2001\"", `3:13 plausible-form "2001"`, `"1990 to 2100"`},
		{"kind = \"date\"\nplausible = \"2002 to 2001\"", `3:13 plausible-form "2002 to 2001"`, "earlier one first"},
		{"kind = \"date\"\nplausible = \"2001 to 2001-02-30\"", `3:13 plausible-form "2001 to 2001-02-30"`, ""},
		{"kind = \"date\"\nunit = \"mm\"", `3:1 key-unfit unit`, `means nothing for the kind "date"`},
		{"kind = \"text\"\nvalue \"a\" {}", `3:1 unknown-block value`, ""},
		{"kind = \"text\"\nplausibel = \"1\"", `3:1 unknown-key plausibel`, "Did you mean plausible?"},
		{"kind = \"text\"\nstage = \"before weld\"", `3:9 stage-unknown "before weld"`, "before cutting, bare shell"},
		{"kind = \"text\"\nmay_be_absent = \"yes\"", `3:17 truth-wanted "yes"`, "without quotes"},
		{"kind = \"text\"\nmay_be_absent = null", `3:17 truth-wanted null`, ""},
		{"kind = \"text\"\npart = \"harnes\"", `3:8 part-unknown "harnes"`, "Did you mean harness?"},
		{"kind = \"text\"\npart = \"sheet\"", `3:8 part-unknown "sheet"`, ""},
		{"kind = \"part name\"\nnames = \"cage\"", `3:9 part-unknown "cage"`, ""},
		{"kind = \"part name\"", `1:1 key-missing particular "x"`, `Write names = "tube_stock"`},
		{"kind = \"choice\"", `1:1 choices-missing particular "x"`, "has no choices"},
		{"kind = \"choice\"\nchoices = \"bolt grades\"", `3:11 choices-unknown "bolt grades"`, `Did you mean "bolt grade"?`},
		{"kind = \"choice\"\nchoices = \"classes of the rulebook\"", `3:11 choices-unknown "classes of the rulebook"`, ""},
		{"kind = \"choice\"\nchoices = [\"a\", \" A \"]", `3:17 said-twice " A "`, "3:12"},
		{"kind = \"choice\"\nchoices = [\"a\", \"None\"]", `3:17 choice-none "None"`, "may_be_absent"},
		{"kind = \"choice\"\nchoices = [\"a\"]\nvalue \"b\" {}", `4:1 choices-twice value`, ""},
		{"kind = \"choice\"\nchoices = 3", `3:11 text-wanted 3`, ""},
		{"kind = \"choice\"\nvalue \"b\" { synonym = [\"c\"] }", `3:13 unknown-key synonym`, "Did you mean synonyms?"},
		{"kind = \"choice\"\nvalue \"b\" { synonyms = [\"B\"] }", `3:25 said-twice "B"`, ""},
		{"kind = \"point\"", `2:8 kind-unfit "point"`, `three particulars of the kind "length"`},
		{"kind = \"part names\"", `2:8 kind-unfit "part names"`, `kind "part name"`},
		{"kind = \"yes or no\"\nderived = true", `3:1 unknown-key derived`, ""},
		{"kind = \"yes or no\"\nmirrored = true", `3:1 unknown-key mirrored`, ""},
		{"kind = \"tube size\"", `1:1 key-missing particular "x"`, "Write fills"},
		{"kind = \"tube size\"\nfills = [\"outside\"]", `3:9 fills-form ["outside"]`, ""},
		{"kind = \"text\"\nchoices = \"a\"\ninherits = \"${b}\"", `4:13 not-literal ${`, ""},
	} {
		text := "particular \"x\" {\n" + c.body + usual
		_, faults := decodeOne(t, text)
		require.Contains(t, placesOf(text, faults), c.want, "%s: %v", c.body, faults)
		require.Contains(t, faults.Error()+faultTexts(faults), c.says, c.body)
	}
}

// faultTexts is the details of all faults.
func faultTexts(faults hcl.Diagnostics) string {
	var all strings.Builder
	for _, fault := range faults {
		all.WriteString(fault.Detail + "\n")
	}
	return all.String()
}

func TestFaultsOfNames(t *testing.T) {
	for name, code := range map[string]Code{
		"Mesh": "name-form", "mesh-depth": "name-form", "2nd": "name-form", "mesh_": "name-form", "größe": "name-form",
		"mm": "name-reserved", "bar": "name-reserved", "hour": "name-reserved", "not": "name-reserved", "matches": "name-reserved",
		"on": "name-reserved", "event": "name-reserved", "note": "name-reserved", "readings": "name-reserved", "tolerance": "name-reserved", "mirrored_as": "name-reserved", "club": "name-reserved",
		" ": "text-empty",
	} {
		_, faults := decodeOne(t, fmt.Sprintf("particular %q {\nkind = \"text\"%s", name, usual))
		require.Len(t, faults, 1, name)
		require.Equal(t, code, CodeOf(faults[0]), name)
		require.Equal(t, 12, faults[0].Subject.Start.Column)
	}
	for _, labels := range []string{``, `"a" "b"`} {
		_, faults := decodeOne(t, "particular "+labels+" {\nkind = \"text\""+usual)
		require.Len(t, faults, 1, labels)
		require.Equal(t, Code("label-count"), CodeOf(faults[0]))
	}
}

func TestAllFaultsOfABlockInOneRun(t *testing.T) {
	text := "particular \"mm\" {\n  kind = \"lenght\"\n  stage = \"never\"\n  part = \"sea\"\n}\n"
	_, faults := decodeOne(t, text)
	require.Equal(t, []string{
		`1:1 key-missing particular "mm"`,
		`1:1 key-missing particular "mm"`,
		`1:12 name-reserved "mm"`,
		`2:10 kind-unknown "lenght"`,
		`3:11 stage-unknown "never"`,
		`4:10 part-unknown "sea"`,
	}, placesOf(text, faults))
	for _, fault := range faults {
		require.NotEmpty(t, fault.Summary)
		require.Regexp(t, `[.?]$`, fault.Detail)
	}
}

// TestFaultsOfAVocabulary sees to it that a faulty built-in file cannot go unseen.
func TestFaultsOfAVocabulary(t *testing.T) {
	const seat = "part \"seat\" {\n place = \"cockpit\"\n help = \"A seat.\"\n"
	for _, c := range []struct{ text, want string }{
		{"a = 1", `1:1 unknown-key a`},
		{"tube \"x\" {}", `1:1 unknown-block tube`},
		{"part \"mm\" {\n place = \"x\"\n help = \"y\"\n}", `1:6 name-reserved "mm"`},
		{"part \"x\" {\n help = \"y\"\n}", `1:1 key-missing part "x"`},
		{"part {}", `1:1 label-count part`},
		{seat + "}\n" + seat + "}", `5:6 name-taken "seat"`},
		{seat + "plural = \"Seats\"\n}", `4:10 name-form "Seats"`},
		{seat + "within = \"car\"\n}", `4:10 part-unknown "car"`},
		{seat + "within = \"seat\"\n}", `4:10 part-circle "seat"`},
		{seat + "labels = \"x\"\n}", `4:10 choices-unknown "x"`},
		{seat + "labels = []\n}", `1:1 choices-missing part "seat"`},
		{seat + "stage = \"x\"\n}", `4:9 stage-unknown "x"`},
		{seat + "colour = \"x\"\n}", `4:1 unknown-key colour`},
		{seat + "particular \"a\" {\nkind = \"text\"\npart = \"seat\"\nhelp = \"b\"\nhow = \"c\"\n}\n}", `6:1 unknown-key part`},
		{seat + "particular \"a\" {\nkind = \"text\"\ninherits = \"b\"\nhelp = \"b\"\nhow = \"c\"\n}\n}", `6:12 inherits-unknown "b"`},
		{seat + "particular \"a\" {\nkind = \"text\"\nhelp = \"b\"\nhow = \"c\"\n}\nparticular \"a\" {\nkind = \"text\"\nhelp = \"b\"\nhow = \"c\"\n}\n}", `9:1 said-twice particular "a"`},
		{seat + "particular \"a\" {\nkind = \"tube size\"\nfills = [\"b\", \"c\"]\nhelp = \"b\"\nhow = \"c\"\n}\n}", `6:9 fills-unknown ["b", "c"]`},
		{"choices \"x\" {\nvalue \"a\" {}\n}\nchoices \"X\" {\nvalue \"a\" {}\n}", `4:9 name-taken "X"`},
		{"choices \"x\" {}", `1:1 choices-missing choices "x"`},
		{"choices \"x\" {\n" + manyValues(65) + "}", `1:1 choices-too-many choices "x"`},
	} {
		source, faults := ParseSource("vocabulary/x.hcl", []byte(c.text))
		require.Empty(t, faults)
		_, faults = readVocabulary([]*Source{source})
		require.Contains(t, placesOf(c.text, faults), c.want, "%s: %v", c.text, faults)
	}
}

// manyValues is the blocks of n choices.
func manyValues(n int) string {
	var text strings.Builder
	for i := range n {
		fmt.Fprintf(&text, "value \"v%d\" {}\n", i)
	}
	return text.String()
}
