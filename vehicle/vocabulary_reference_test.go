package vehicle

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

var update = flag.Bool("update", false, "rewrite the generated part of SHEET.md")

// The generated part of SHEET.md stands between these two lines.
const (
	referenceBegin = "<!-- particulars: written by go test ./vehicle -run TestSheetReference -update -->"
	referenceEnd   = "<!-- end of particulars -->"
)

// TestSheetReference holds that the reference of the build sheet lists every particular as
// the vocabulary has it.
func TestSheetReference(t *testing.T) {
	const file = "SHEET.md"
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	before, rest, found := strings.Cut(string(data), referenceBegin)
	require.True(t, found, "SHEET.md has lost the line %s", referenceBegin)
	_, after, found := strings.Cut(rest, referenceEnd)
	require.True(t, found, "SHEET.md has lost the line %s", referenceEnd)
	want := before + referenceBegin + "\n\n" + reference(BuiltIn()) + "\n" + referenceEnd + after
	if *update {
		require.NoError(t, os.WriteFile(file, []byte(want), 0o644))
		return
	}
	require.Equal(t, want, string(data), "run go test ./vehicle -run TestSheetReference -update")
}

// reference is the tables of all parts, and the lists of choices they share.
func reference(v *Vocabulary) string {
	var out strings.Builder
	for _, part := range v.Types() {
		fmt.Fprintf(&out, "### %s\n\n%s\n\n", part.Name, part.Help)
		fmt.Fprintf(&out, "%s\n\n", whereWritten(part))
		out.WriteString("| particular | kind | unit, plausible | values | absent | due | what it is |\n| --- | --- | --- | --- | --- | --- | --- |\n")
		for _, x := range part.Particulars {
			absent := ""
			if x.MayBeAbsent {
				absent = "`\"none\"`"
			}
			row := []string{"`" + x.Name + "`", kindText(x), plausibleText(x), valuesText(v, x), absent, x.Stage.String(), x.Help}
			out.WriteString("| " + strings.Join(row, " | ") + " |\n")
		}
		out.WriteString("\n")
	}
	out.WriteString("### Lists of values\n")
	for _, list := range v.lists {
		fmt.Fprintf(&out, "\n#### %s\n\n| value | also written | meaning |\n| --- | --- | --- |\n", list.Name)
		for _, c := range list.Choices {
			fmt.Fprintf(&out, "| %s | %s | %s |\n", c.Value, strings.Join(c.Synonyms, ", "), c.Means)
		}
	}
	return out.String()
}

// whereWritten says how the block of a part is written and read.
func whereWritten(t *PartType) string {
	label := ""
	switch {
	case t.Labels != nil:
		label = " " + `"` + t.Labels.Choices[0].Value + `"`
	case t.Labelled:
		label = ` "…"`
	}
	text := fmt.Sprintf("Written `%s%s { … }`", t.Name, label)
	if t.Within.Within != nil && !t.AtTop {
		text += fmt.Sprintf(" inside `%s`", t.Within.Name)
	}
	text += fmt.Sprintf(", read in formulas as `%s`; looked for: %s.", formulaText(t), t.Place)
	if t.Labels != nil {
		text += " Labels: " + strings.Join(t.Labels.Values(), ", ") + "."
	}
	return text
}

// formulaText is the list or part as a formula names it. What belongs to one of several
// parts is named from that part on.
func formulaText(t *PartType) string {
	name := t.Name
	if t.Repeats() {
		name = t.Plural
	}
	switch around := t.Within; {
	case around.Within == nil:
		return name
	case around.Repeats():
		return around.Name + "." + name
	default:
		return formulaText(around) + "." + name
	}
}

// kindText is the kind of a particular, with what it takes from another part or follows from.
func kindText(x *Particular) string {
	text := x.Kind.String()
	if x.Kind == KindNumber {
		text = strings.TrimPrefix(x.Dimension.String(), "a plain ")
		if x.Measured {
			text += ", measured"
		}
	}
	if x.Inherits != "" {
		text += ", else of the " + x.Inherits
	}
	if x.Mirrored {
		text += ", else of the original"
	}
	if x.Derived {
		text += ", else derived"
	}
	switch x.Happens {
	case HappensOnce:
		text += ", once"
	case HappensOften:
		text += " or dates, the last counts"
	}
	return text
}

// plausibleText is the range within which a value is believed.
func plausibleText(x *Particular) string {
	switch x.Kind {
	case KindNumber, KindCount:
		return x.Plausible.In(x.Unit, -1)
	case KindDate:
		return fmt.Sprintf("%d to %d", x.PlausibleDays.From.Year(), x.PlausibleDays.To.Year())
	}
	return ""
}

// valuesText is what a particular can be, where that is a list.
func valuesText(v *Vocabulary, x *Particular) string {
	switch {
	case x.Kind == KindTruth:
		return "true, false"
	case len(x.Fills) > 0:
		return "sets " + strings.Join(x.Fills, ", ")
	case x.Part.Name == "car" && x.Name == "class":
		return classList
	case x.Kind == KindPartNames:
		return "labels of " + strings.ReplaceAll(x.Names.Plural, "_", " ")
	case x.Names != nil:
		return "label of a " + x.Names.Name
	case x.Choices != nil && v.choices(x.Choices.Name) == x.Choices:
		return fmt.Sprintf("[%s](#%s)", x.Choices.Name, strings.ReplaceAll(FoldText(x.Choices.Name), " ", "-"))
	case x.Choices != nil:
		return strings.Join(x.Choices.Values(), ", ")
	}
	return ""
}

func TestReferenceListsEverything(t *testing.T) {
	text := reference(BuiltIn())
	eachParticular(func(name string, x *Particular) {
		require.Contains(t, text, "| `"+x.Name+"` | ", name)
		require.NotContains(t, x.Help+x.How, "|", name)
	})
	require.Contains(t, text, "| `wall` | length, measured, else of the stock | "+quantity.Between(0.0005, 0.01).In(builtInParticular(t, "tube.wall").Unit, -1)+" |")
	require.Contains(t, text, "| `bend_radius` | length, measured, else of the original |")
	require.Contains(t, text, "| `node_length` | length, measured, else derived |")
	require.Contains(t, text, "| `through` | part names, else of the original |  | labels of joints |")
	require.Contains(t, text, "| `at` | point |  | sets x, y, z |")
	require.Contains(t, text, "read in formulas as `cage.tubes`")
	require.Contains(t, text, "Written `strap \"left shoulder\" { … }` inside `harness`, read in formulas as `harness.straps`")
}
