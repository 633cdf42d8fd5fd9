package rules

import (
	"os"
	"testing"
	"testing/fstest"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// soon is what reading takes at the very most on a busy machine. It takes milliseconds; what
// goes through a list for each of its members takes minutes.
const soon = 15 * time.Second

// mustLoad loads a rulebook that has no fault.
func mustLoad(t *testing.T, folder, name string) *Rulebook {
	t.Helper()
	book, faults := Load(os.DirFS(folder), name, name, vehicle.BuiltIn())
	require.Empty(t, describe(faults))
	require.NotNil(t, book)
	return book
}

// loadText loads a rulebook of one file.
func loadText(text string) (*Rulebook, hcl.Diagnostics) {
	return Load(fstest.MapFS{"book.hcl": {Data: []byte(text)}}, "book.hcl", "book.hcl", vehicle.BuiltIn())
}

// describe puts diagnostics in a form that a failing test can show.
func describe(faults hcl.Diagnostics) []string {
	var list []string
	for _, d := range faults {
		list = append(list, vehicle.PlaceText(*d.Subject)+" "+string(vehicle.CodeOf(d))+": "+d.Summary+": "+d.Detail)
	}
	return list
}

func days(t *testing.T, text string) quantity.DayRange {
	t.Helper()
	d, fault := quantity.ParseDays(text)
	require.Nil(t, fault)
	return d
}

func TestLoadReadsTheBook(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	require.Equal(t, "Marram Point Rally Car Rules", book.Name)
	require.Equal(t, "2027, second issue", book.Edition)
	require.Equal(t, days(t, "2027-01-01"), book.InForce)
	require.Equal(t, Proved, book.Judged)
	require.True(t, book.MeanOfReadings)
	require.Equal(t, "for trying the program, not a rulebook to build to", book.Standing)
	require.Equal(t, []vehicle.Choice{
		{Value: "two-wheel drive open", Synonyms: []string{"2WD open", "class 5"}, Means: "one driven axle, any engine"},
		{Value: "four-wheel drive open"},
	}, book.Classes.Choices)
	require.Equal(t, "marram/1_book.hcl", book.Range.Filename)
	require.Equal(t, 2, book.Range.Start.Line)
	class := book.Vocabulary.Type("car").Particular("class")
	require.Equal(t, vehicle.KindChoice, class.Kind)
	require.Equal(t, 1, class.Choices.Find("Four-wheel  drive OPEN"))
	require.NotSame(t, vehicle.BuiltIn(), book.Vocabulary)
	require.Len(t, book.Hash, 64)
}

func TestLoadReadsChaptersAndClauses(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	require.Len(t, book.Chapters, 2)
	cage, harness := book.Chapters[0], book.Chapters[1]
	require.Equal(t, []string{"4", "Safety cage", "6", "Harness"}, []string{cage.Number, cage.Title, harness.Number, harness.Title})
	require.Len(t, cage.Clauses, 2)

	hoop := cage.Clauses[0]
	require.Equal(t, "4.1", hoop.Number)
	require.Same(t, cage, hoop.Chapter)
	require.Equal(t, "Main hoop tube", hoop.Title)
	require.Equal(t, Safety, hoop.Concern)
	require.Equal(t, "31", hoop.Page)
	require.Equal(t, vehicle.StageBeforeCutting, hoop.Stage)
	require.Equal(t, "The main hoop is one piece of a listed tube.\nCafé racers' tubes are not listed.", hoop.Text)
	require.Equal(t, 1, hoop.AtLeast)
	require.Equal(t, "One piece, no joint.", hoop.LookFor)
	require.Equal(t, "Re-make the hoop in a listed size.", hoop.Rectify)
	require.Equal(t, AsRead, hoop.Judged)
	require.Equal(t, 0.0001, hoop.Allowance)
	require.Equal(t, quantity.Length, hoop.AllowanceDimension)
	require.Nil(t, hoop.Applies)
	require.Len(t, hoop.Across, 1)
	tube := hoop.Across[0]
	require.Equal(t, "tube", tube.Binding.Name)
	require.Equal(t, Type{Kind: Part, PartType: book.Vocabulary.Type("tube")}, tube.Binding.Is)
	require.IsType(t, &Parts{}, tube.List.Tree)
	require.Equal(t, Span{8, 18}, tube.List.Tree.Span())
	require.Equal(t, "tube in cage.tubes", tube.List.Source)
	require.IsType(t, &Gather{}, hoop.Demand.Tree)
	require.Equal(t, "any(table.hoop_sizes, tube.outside >= .outside and tube.wall >= .wall)\n", hoop.Demand.Source)
	require.Equal(t, 32, hoop.Demand.Position.Range(0, 3).Start.Line)
	require.Equal(t, 7, hoop.Demand.Position.Range(0, 3).Start.Column)

	mass := cage.Clauses[1]
	require.Equal(t, "K4.2(e)", mass.Number)
	require.Equal(t, Eligibility, mass.Concern)
	require.Equal(t, "32 to 33", mass.Page)
	require.Equal(t, "Marram Point Rally Car Rules, p. 32", mass.TextAt)
	require.Equal(t, Proved, mass.Judged)
	require.Equal(t, vehicle.StageUnset, mass.Stage)
	require.IsType(t, &Compare{}, mass.Applies.Tree)
	require.IsType(t, &Mention{}, mass.Where.Tree)

	strap := harness.Clauses[0]
	require.Equal(t, Advice, strap.Concern)
	require.Equal(t, []string{"label photo", "receipt"}, strap.Evidence)
	require.Len(t, strap.Across, 2)
	require.Same(t, strap.Across[0].Binding, strap.Across[1].List.Tree.(*Parts).Of.(*Variable).Binding)
}

func TestLoadReadsTables(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	require.Len(t, book.Tables, 2)
	sizes := book.Tables[0]
	require.Equal(t, days(t, "2026-11"), sizes.Issued)
	require.Equal(t, []string{"wall", "outside", "pieces", "remark", "alloy", "form", "until"}, columnNames(sizes))
	require.Same(t, book.Vocabulary.Type("tube").Particular("wall"), sizes.Columns[0].Like)
	require.Equal(t, Type{Kind: Number, Dimension: quantity.Length}, sizes.Columns[0].Is)
	require.Equal(t, Type{Kind: Number, Whole: true}, sizes.Columns[2].Is)
	require.Equal(t, Type{Kind: Text}, sizes.Columns[3].Is)
	require.Equal(t, Type{Kind: Truth}, sizes.Columns[4].Is)
	require.Equal(t, Date, sizes.Columns[6].Is.Kind)
	require.Nil(t, sizes.Columns[3].Like)
	require.Nil(t, sizes.Band)
	require.Len(t, sizes.Rows, 2)
	first, second := sizes.Rows[0], sizes.Rows[1]
	require.Equal(t, []float64{0.0025, 0.045, 1}, []float64{first[0].Figure.Reading, first[1].Figure.Reading, first[2].Figure.Reading})
	require.Equal(t, []float64{0.0021082, 0.0508, 2}, []float64{second[0].Figure.Reading, second[1].Figure.Reading, second[2].Figure.Reading})
	require.Equal(t, ".083 in", second[0].Figure.String())
	require.Equal(t, `inch "pair"`, second[3].Text)
	require.False(t, first[4].Truth)
	require.True(t, second[4].Truth)
	require.Equal(t, sizes.Columns[5].Is.Choices.Find("seamless"), first[5].Choice)
	require.Equal(t, first[5].Choice, second[5].Choice)
	require.Equal(t, days(t, "2031-06-30"), second[6].Days)
	require.Equal(t, "marram/2_tables.hcl:12:6", vehicle.PlaceText(first[0].Range))

	mass := book.Tables[1]
	require.Equal(t, &Band{Low: 0, High: 1, HighOpen: true}, mass.Band)
	require.Equal(t, days(t, "2026-11-01"), mass.Issued)
	require.Len(t, mass.Rows, 3)
	require.True(t, mass.Rows[0][0].Empty)
	require.Equal(t, 1000.0, mass.Rows[0][1].Figure.Reading)
	require.Equal(t, 0.04, mass.Rows[1][2].Figure.Reading)
	require.Equal(t, "marram/by_mass.csv:3:1", vehicle.PlaceText(mass.Rows[1][2].Range))
	require.Equal(t, 8, mass.Rows[1][2].Range.End.Column)
	require.True(t, mass.Rows[2][1].Empty)
}

func TestLoadReadsTermsInAnyOrder(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	require.Len(t, book.Terms, 3)
	thick, least, heavy := book.Terms[0], book.Terms[1], book.Terms[2]
	require.Equal(t, "tube", thick.Given.Name)
	require.Equal(t, Part, thick.Given.Is.Kind)
	require.Equal(t, Truth, thick.Means.Tree.Type().Kind)
	require.Equal(t, Type{Kind: Number, Dimension: quantity.Length}, least.Means.Tree.Type())
	require.Nil(t, heavy.Given)
	used := map[*Term]bool{}
	for n := range Walk(thick.Means.Tree) {
		if m, ok := n.(*Mention); ok {
			used[m.Term] = true
		}
	}
	require.Equal(t, map[*Term]bool{least: true, heavy: true}, used)
}

func TestLoadReadsWorkedCases(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	require.Len(t, book.Cases, 1)
	thin := book.Cases[0]
	require.Equal(t, "thin wall", thin.Name)
	require.Same(t, book.Chapters[0].Clauses[0], thin.Clause)
	require.Equal(t, "12", thin.Subject)
	require.True(t, thin.HasOn)
	require.Equal(t, days(t, "2027-03-14"), thin.On)
	require.Equal(t, "gap", thin.Answer)
	require.Equal(t, "p. 31: 2.5 mm.", thin.Reason)
	require.Equal(t, "Marram Point Rally Car Rules, 2027, p. 31", thin.Source)
	require.Equal(t, "computed", thin.Status)
	require.Equal(t, []string{"12"}, labelsOf(thin.AsBuilt.Root, book.Vocabulary.Type("tube")))
}

func TestHashIsOfNamesAndBytes(t *testing.T) {
	book := mustLoad(t, "../testdata/rulebook", "marram")
	elsewhere, faults := Load(os.DirFS("../testdata/rulebook/marram"), ".", "some/other/name", vehicle.BuiltIn())
	require.Empty(t, describe(faults))
	require.Equal(t, book.Hash, elsewhere.Hash, "the hash is the same wherever the folder stands")

	files := fstest.MapFS{}
	for _, name := range []string{"1_book.hcl", "2_tables.hcl", "by_mass.csv"} {
		data, err := os.ReadFile("../testdata/rulebook/marram/" + name)
		require.NoError(t, err)
		files[name] = &fstest.MapFile{Data: data}
	}
	files["by_mass.csv"].Data = append(files["by_mass.csv"].Data, '\n')
	changed, faults := Load(files, ".", ".", vehicle.BuiltIn())
	require.Empty(t, describe(faults))
	require.NotEqual(t, book.Hash, changed.Hash, "a table beside the rulebook counts")
}
