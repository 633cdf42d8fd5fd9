package vehicle

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
	"gapsheet/vehicle/wants"
)

// fullSheet says something of every kind of particular.
const fullSheet = `car "Tessel 16" {
  chassis          = "TS-0417"
  first_registered = "2011-05"
  logbook_number   = "None"
  seat_count       = 2
  driven_wheels    = "all-wheel drive"
  weighed_mass     = { reading = "1085 kg", measured_with = "Wheel Pads", note = "level floor" }
  overall_width    = "5 ft 9 in"
  note             = <<-NOTE
    Weighed twice.
  NOTE
  evidence "homologation form" {
    file  = "papers/form.pdf"
    dated = "2026-03"
    note  = "all pages"
  }
}
instrument "wheel pads" { tolerance = "± 5 kg" }
instrument "micrometer" {
  tolerance = "0.01 mm"
  note      = "checked on the gauge block"
}
tube_stock "A" {
  ordered  = "45 x 2.5 mm"
  wall     = { readings = ["2.52 mm", "2.49 mm"], measured_with = "micrometer" }
  material = "chromium-molybdenum steel"
}
tube "1" {
  part    = "main roll hoop"
  stock   = "a"
  outside = "45.1 ± 0.1 mm"
}
tube "2" { stock = "A" }
tube "3" {}
foot "left front" { tube = "1" }
seat "driver" {}
ballast "front" { sealable = true }
harness "driver" {
  seat = "driver"
  strap "Left  Shoulder" {
    serial = "H-2231"
    anchorage {}
  }
  unfinished = ["strap"]
}
not_fitted = ["window_net", "gusset"]
unfinished = ["tube"]
`

// loadText loads a sheet that stands in one file, beside further files.
func loadText(t testing.TB, text string, beside ...string) (*Sheet, hcl.Diagnostics) {
	t.Helper()
	folder := fstest.MapFS{"cars/a.hcl": {Data: []byte(text)}}
	for _, name := range beside {
		folder[name] = &fstest.MapFile{}
	}
	return Load(folder, "cars/a.hcl", "a.hcl", clubVocabulary(t), Options{})
}

// goodSheet is loadText for a sheet without a fault.
func goodSheet(t testing.TB, text string, beside ...string) *Sheet {
	t.Helper()
	sheet, faults := loadText(t, text, beside...)
	require.Empty(t, faults)
	return sheet
}

// list is what a sheet says of one type of part; of nested ones, in the first part.
func list(t testing.TB, of *Part, name string) *PartList {
	t.Helper()
	for i := range of.Lists {
		if of.Lists[i].Type.Name == name {
			return &of.Lists[i]
		}
	}
	require.Fail(t, "no such list", name)
	return nil
}

// value is what a part says of a particular.
func value(t testing.TB, p *Part, name string) *Value {
	t.Helper()
	x := p.Type.Particular(name)
	require.NotNil(t, x, name)
	return &p.Values[x.Index]
}

func TestValuesAreReadByTheirKind(t *testing.T) {
	sheet := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	car := sheet.Car()
	require.Equal(t, "TS-0417", value(t, car, "chassis").Text)
	require.Equal(t, "2011-05", value(t, car, "first_registered").Days.String())
	require.Equal(t, None, value(t, car, "logbook_number").State)
	require.Equal(t, 2.0, value(t, car, "seat_count").Readings[0].Figure.Reading)
	require.Equal(t, "four", car.Type.Particular("driven_wheels").Choices.Choices[value(t, car, "driven_wheels").Choice].Value)
	require.Equal(t, Nothing, value(t, car, "model").State)
	require.Equal(t, hcl.Range{}, value(t, car, "model").Range)
	require.Equal(t, "Weighed twice.", car.Note)

	mass := value(t, car, "weighed_mass")
	require.Equal(t, quantity.Range{Low: 1080, High: 1090}, mass.Readings[0].Figure.Range)
	require.Equal(t, "wheel pads", mass.Readings[0].Instrument)
	require.Equal(t, "level floor", mass.Note)
	require.InDelta(t, 1.7526, value(t, car, "overall_width").Readings[0].Figure.Reading, 1e-12)
	require.Empty(t, value(t, car, "overall_width").Readings[0].Instrument)

	stock := list(t, list(t, sheet.Root, "cage").Parts[0], "tube_stock").Parts[0]
	wall := value(t, stock, "wall")
	require.Len(t, wall.Readings, 2)
	require.InDelta(t, 0.00248, wall.Readings[1].Figure.Range.Low, 1e-12)
	require.Equal(t, "45 x 2.5 mm", value(t, stock, "ordered").Text)
	require.Equal(t, 0.045, value(t, stock, "ordered_outside").Readings[0].Figure.Reading)
	require.Equal(t, 0.0025, value(t, stock, "ordered_wall").Readings[0].Figure.Reading)
	require.True(t, value(t, list(t, sheet.Root, "ballast").Parts[0], "sealable").Truth)
	harness := list(t, sheet.Root, "harness").Parts[0]
	require.Same(t, list(t, sheet.Root, "seat").Parts[0], value(t, harness, "seat").Named)
	require.Equal(t, []*Instrument{sheet.Instruments[0], sheet.Instruments[1]}, sheet.Instruments)
	require.Equal(t, "checked on the gauge block", sheet.Instruments[1].Note)
}

func TestEveryValueKeepsItsPlace(t *testing.T) {
	sheet := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	car := sheet.Car()
	cage := list(t, sheet.Root, "cage").Parts[0]
	stock := list(t, cage, "tube_stock").Parts[0]
	text := func(r hcl.Range) string { return fullSheet[r.Start.Byte:r.End.Byte] }
	require.Equal(t, `car "Tessel 16"`, text(car.Range))
	require.Equal(t, `"TS-0417"`, text(value(t, car, "chassis").Range))
	require.Equal(t, "5 ft 9 in", text(value(t, car, "overall_width").Readings[0].Range))
	require.Equal(t, "2", text(value(t, car, "seat_count").Readings[0].Range))
	require.Equal(t, "2.49 mm", text(value(t, stock, "wall").Readings[1].Range))
	require.Equal(t, "45", text(value(t, stock, "ordered_outside").Readings[0].Range))
	require.Equal(t, "2.5 mm", text(value(t, stock, "ordered_wall").Readings[0].Range))
	require.Equal(t, `evidence "homologation form"`, text(car.Evidence[0].Range))
	require.Equal(t, `"window_net"`, text(list(t, sheet.Root, "window_net").Range))
	require.Equal(t, `instrument "micrometer"`, text(sheet.Instruments[1].Range))
	require.Equal(t, hcl.Range{}, cage.Range, "the cage is only implied by its tubes")
}

func TestPartsAreCalledByName(t *testing.T) {
	sheet := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	cage := list(t, sheet.Root, "cage").Parts[0]
	strap := list(t, list(t, sheet.Root, "harness").Parts[0], "strap").Parts[0]
	for want, p := range map[string]*Part{
		"the sheet":                             sheet.Root,
		"car Tessel 16":                         sheet.Car(),
		"cage":                                  cage,
		"tube 1":                                list(t, cage, "tube").Parts[0],
		"tube stock A":                          list(t, cage, "tube_stock").Parts[0],
		"harness driver":                        strap.Within,
		"left shoulder strap of harness driver": strap,
		"anchorage of left shoulder strap of harness driver": list(t, strap, "anchorage").Parts[0],
	} {
		require.Equal(t, want, p.Name())
	}
}

// TestListsSayWhatElseThereCanBe follows what is agreed of parts and lists: a list is
// complete with a block unless it is unfinished, and without one only when not fitted.
func TestListsSayWhatElseThereCanBe(t *testing.T) {
	sheet := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	cage := list(t, sheet.Root, "cage").Parts[0]
	harness := list(t, sheet.Root, "harness").Parts[0]
	for _, want := range []struct {
		of        *Part
		name      string
		parts     int
		complete  bool
		notFitted bool
		fitted    quantity.Truth
	}{
		{sheet.Root, "car", 1, true, false, quantity.Yes},
		{sheet.Root, "cage", 1, true, false, quantity.Yes},
		{cage, "tube", 3, false, false, quantity.Yes},
		{cage, "tube_stock", 1, true, false, quantity.Yes},
		{cage, "gusset", 0, true, true, quantity.No},
		{cage, "padding", 0, false, false, quantity.Open},
		{sheet.Root, "window_net", 0, true, true, quantity.No},
		{sheet.Root, "fuel_cell", 0, false, false, quantity.Open},
		{harness, "strap", 1, false, false, quantity.Yes},
	} {
		l := list(t, want.of, want.name)
		require.Len(t, l.Parts, want.parts, want.name)
		require.Equal(t, want.complete, l.Complete, want.name)
		require.Equal(t, want.notFitted, l.NotFitted, want.name)
		require.Equal(t, want.fitted, l.Fitted, want.name)
		require.Same(t, l, want.of.List(l.Type))
	}
}

func TestABlockMayFollowThoseThatImplyIt(t *testing.T) {
	sheet := goodSheet(t, "car \"x\" {}\ntube \"1\" {}\ncage { note = \"bolted\" }\n")
	cage := list(t, sheet.Root, "cage")
	require.Len(t, cage.Parts, 1)
	require.Equal(t, "bolted", cage.Parts[0].Note)
	require.Equal(t, 3, cage.Parts[0].Range.Start.Line)
	require.Len(t, list(t, cage.Parts[0], "tube").Parts, 1)
}

func TestACageThatOnlyListsSpeakOfIsNotFittedYet(t *testing.T) {
	sheet := goodSheet(t, `car "x" {}
unfinished = ["tube"]
not_fitted = ["gusset"]
`)
	cage := list(t, sheet.Root, "cage")
	require.Equal(t, quantity.Open, cage.Fitted)
	require.False(t, cage.Complete)
	require.True(t, list(t, cage.Parts[0], "gusset").NotFitted)
	require.False(t, list(t, cage.Parts[0], "tube").Complete)
}

func TestAnInheritedValueStandsInTheNamedPart(t *testing.T) {
	sheet := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	cage := list(t, sheet.Root, "cage").Parts[0]
	stock, tubes := list(t, cage, "tube_stock").Parts[0], list(t, cage, "tube").Parts
	x := tubes[0].Type.Particular("wall")
	v, holder := tubes[0].Value(x)
	require.Same(t, stock, holder)
	require.Same(t, value(t, stock, "wall"), v)
	v, holder = tubes[0].Value(tubes[0].Type.Particular("outside"))
	require.Same(t, tubes[0], holder, "a tube that states its own")
	require.Equal(t, Stated, v.State)
	v, holder = tubes[1].Value(tubes[1].Type.Particular("outside"))
	require.Same(t, tubes[1], holder, "a stock that says nothing")
	require.Equal(t, Nothing, v.State)
	_, holder = tubes[2].Value(tubes[2].Type.Particular("wall"))
	require.Same(t, tubes[2], holder, "a tube of no stock")
	v, holder = tubes[1].Value(tubes[1].Type.Particular("part"))
	require.Same(t, tubes[1], holder, "what is not inherited")
	require.Equal(t, Nothing, v.State)
}

func TestEvidenceIsLookedForInTheFolderAndThePapers(t *testing.T) {
	text := `car "x" {
  evidence "one" { file = "./papers//one.pdf" }
  evidence "two" { file = "two.pdf" }
  evidence "three" { file = "three.pdf" }
  evidence "mention" { dated = "2027" }
}
`
	folder := fstest.MapFS{
		"cars/a.hcl":          {Data: []byte(text)},
		"cars/papers/one.pdf": {},
		"three.pdf":           {},
	}
	papers := fstest.MapFS{"two.pdf": {}}
	sheet, faults := Load(folder, "cars/a.hcl", "a.hcl", BuiltIn(), Options{Papers: papers, PapersShown: "all/papers"})
	requireOne(t, faults, "evidence-missing", 4, 29, `in the sheet's folder nor in "all/papers"`)
	require.False(t, faults.HasErrors())
	evidence := sheet.Car().Evidence
	require.Equal(t, "papers/one.pdf", evidence[0].File)
	require.Equal(t, []bool{true, true, false, false}, []bool{evidence[0].Found, evidence[1].Found, evidence[2].Found, evidence[3].Found})
	require.Empty(t, evidence[3].File)
	require.True(t, evidence[3].HasDate)

	sheet, faults = Load(folder, "cars", "cars", BuiltIn(), Options{})
	require.Len(t, faults, 2, "the folder of the papers was not named")
	require.True(t, sheet.Car().Evidence[0].Found)
}

func TestEvidenceDoesNotLeadOutOfTheFolder(t *testing.T) {
	outside, inside := t.TempDir(), t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(outside, "form.pdf"), nil, 0o600))
	require.NoError(t, os.Symlink(filepath.Join(outside, "form.pdf"), filepath.Join(inside, "form.pdf")))
	require.NoError(t, os.WriteFile(filepath.Join(inside, "a.hcl"), []byte(`car "x" {
  evidence "form" { file = "form.pdf" }
}
`), 0o600))
	root, err := os.OpenRoot(inside)
	require.NoError(t, err)
	defer root.Close()
	sheet, faults := Load(root.FS(), "a.hcl", "a.hcl", BuiltIn(), Options{})
	requireOne(t, faults, "evidence-missing", 2, 28, "leads out of the folder")
	require.False(t, sheet.Car().Evidence[0].Found)
}

func TestClubsHaveTheirOwnBlocks(t *testing.T) {
	sheet := goodSheet(t, `car "x" {}
club "saltmarsh stage RALLYE" { decal = true }
club "Far Hills Autumn Trial" { whatever = 3 }
tube "1" {
  club "Saltmarsh Stage Rallye" { paint_mark = "red" }
  club "Far Hills Autumn Trial" { whatever = 3 }
}
`)
	require.Equal(t, []string{"Far Hills Autumn Trial"}, sheet.Clubs)
	club := sheet.Vocabulary.Club("Saltmarsh Stage Rallye")
	part := sheet.Root.List(club).Parts[0]
	require.True(t, part.Values[club.ClubParticular("Saltmarsh Stage Rallye", "decal").Index].Truth)
	tube := list(t, list(t, sheet.Root, "cage").Parts[0], "tube").Parts[0]
	require.Equal(t, "red", value(t, tube, "paint_mark").Text)
}

func TestAPartMeansItsOwnPartsFirst(t *testing.T) {
	sheet := goodSheet(t, `car "x" {}
harness "driver" {
  strap "left lap" {}
}
harness "co-driver" {
  strap "left lap" {}
  club "Quarry Sprint Rules" { checked_strap = "LEFT LAP" }
}
`)
	harness := list(t, sheet.Root, "harness").Parts[1]
	x := harness.Type.ClubParticular("Quarry Sprint Rules", "checked_strap")
	require.Same(t, list(t, harness, "strap").Parts[0], harness.Values[x.Index].Named)
}

func TestASheetCanServeSeveralClubs(t *testing.T) {
	text := `car "x" {}
tube "1" {
  club "Saltmarsh Stage Rallye" { paint_mark = "red" }
}
`
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(text)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	require.Equal(t, []string{"Saltmarsh Stage Rallye"}, sheet.Clubs)
}

func TestAScrapNeedsNoCar(t *testing.T) {
	source, faults := ParseSource("book.hcl", []byte(`
as_built {
  tube "1" { wall = "2.4 mm" }
  car { seat_count = 2 }
  seat "driver" {
    evidence "label photo" { file = "nowhere.jpg" }
  }
}
as_built {
  tube "1" { wall = "2.4 kg" } # want 22 wrong-dimension "figure of mass"
}
as_built {}
`))
	require.Empty(t, faults)
	blocks := source.Body.Blocks
	scrap, faults := DecodeScrap(source, blocks[0].Body, BuiltIn())
	require.Empty(t, faults)
	require.Empty(t, scrap.Hash)
	require.Equal(t, "car", scrap.Car().Name())
	require.False(t, list(t, scrap.Root, "seat").Parts[0].Evidence[0].Found)

	scrap, faults = DecodeScrap(source, blocks[1].Body, BuiltIn())
	require.Nil(t, scrap)
	wants.Check(t, wants.Read(t, "book.hcl", source.Bytes), faults)

	scrap, faults = DecodeScrap(source, blocks[2].Body, BuiltIn())
	require.Empty(t, faults)
	require.Nil(t, scrap.Car())
}

func TestAFolderIsReadAsOneSheet(t *testing.T) {
	folder := fstest.MapFS{
		"f/b.hcl": {Data: []byte("car \"x\" {}\nnot_fitted = [\"window_net\"]\n")},
		"f/a.hcl": {Data: []byte("tube \"1\" {\n stock = \"A\"\n wall = { reading = \"2.5 mm\", measured_with = \"tape\" }\n}\nnot_fitted = [\"fuel_cell\"]\n")},
		"f/c.hcl": {Data: []byte("tube_stock \"A\" {}\ninstrument \"tape\" { tolerance = \"1 mm\" }\ntube \"2\" {}\n")},
	}
	sheet, faults := Load(folder, "f", "f", BuiltIn(), Options{})
	require.Empty(t, faults)
	cage := list(t, sheet.Root, "cage").Parts[0]
	require.Len(t, list(t, cage, "tube").Parts, 2)
	require.True(t, list(t, sheet.Root, "fuel_cell").NotFitted)
	require.True(t, list(t, sheet.Root, "window_net").NotFitted)
	require.Equal(t, "tape", value(t, list(t, cage, "tube").Parts[0], "wall").Readings[0].Instrument)
}

func TestTheHashIsOfNamesAndBytes(t *testing.T) {
	hash := func(files ...string) string {
		folder := fstest.MapFS{}
		for i := 0; i < len(files); i += 2 {
			folder["f/"+files[i]] = &fstest.MapFile{Data: []byte(files[i+1])}
		}
		sheet, faults := Load(folder, "f", "some/where/f", BuiltIn(), Options{})
		require.Empty(t, faults)
		return sheet.Hash
	}
	first := hash("a.hcl", "car \"x\" {}\n", "b.hcl", "cage {}\n")
	require.Len(t, first, 64)
	require.Equal(t, first, hash("b.hcl", "cage {}\n", "a.hcl", "car \"x\" {}\n"))
	require.NotEqual(t, first, hash("a.hcl", "car \"x\" {}\n", "b.hcl", "cage {} \n"))
	require.NotEqual(t, first, hash("a.hcl", "car \"x\" {}\n", "c.hcl", "cage {}\n"))
	require.NotEqual(t, first, hash("a.hcl", "car \"x\" {}\ncage {}\n"))
	// printf 'a.hcl\n11\ncar "x" {}\n' | sha256sum
	require.Equal(t, "81c5043f68fc1405070259177ffacb46e0103a6faa043aaf391eeb0bbb7b7e2c", goodSheet(t, "car \"x\" {}\n").Hash)
}

func TestSheetsOfOtherLineEndsAndMarksAreTheSame(t *testing.T) {
	plain := goodSheet(t, fullSheet, "cars/papers/form.pdf")
	for name, text := range map[string]string{
		"Windows":    strings.ReplaceAll(fullSheet, "\n", "\r\n"),
		"marked":     "\ufeff" + fullSheet,
		"unindented": strings.ReplaceAll(fullSheet, "\n  ", "\n"),
	} {
		other := goodSheet(t, text, "cars/papers/form.pdf")
		require.Equal(t, plain.Car().Note, other.Car().Note, name)
		require.Equal(t, value(t, plain.Car(), "weighed_mass").Readings[0].Figure, value(t, other.Car(), "weighed_mass").Readings[0].Figure, name)
		require.Equal(t, "TS-0417", value(t, other.Car(), "chassis").Text, name)
	}
}

func FuzzLoadSheet(f *testing.F) {
	f.Add([]byte(fullSheet))
	f.Add([]byte(geometrySheet))
	entries, err := os.ReadDir(faultySheets)
	require.NoError(f, err)
	for _, entry := range entries {
		if data, err := os.ReadFile(filepath.Join(faultySheets, entry.Name())); err == nil {
			f.Add(data)
		}
	}
	v := clubVocabulary(f)
	f.Fuzz(func(t *testing.T, data []byte) {
		load := func() (*Sheet, hcl.Diagnostics) {
			return Load(fstest.MapFS{"a.hcl": {Data: data}}, "a.hcl", "a.hcl", v, Options{})
		}
		sheet, faults := load()
		for _, d := range faults {
			requireInside(t, d, map[string][]byte{"a.hcl": data})
		}
		require.Equal(t, faults.HasErrors(), sheet == nil)
		again, second := load()
		require.Equal(t, faults.Error(), second.Error(), "the same faults every time")
		if sheet != nil {
			require.Equal(t, sheet.Hash, again.Hash)
			requireSound(t, sheet.Root, len(data))
		}
	})
}

// requireSound wants every value of a part to be what its particular allows.
func requireSound(t *testing.T, p *Part, size int) {
	for _, x := range p.Type.Particulars {
		v := p.Values[x.Index]
		require.LessOrEqual(t, v.Range.End.Byte, size)
		switch {
		case v.State == Nothing:
			require.Equal(t, hcl.Range{}, v.Range)
		case v.State == None:
			require.True(t, x.MayBeAbsent, x.Name)
		case x.Kind == KindNumber || x.Kind == KindCount:
			require.NotEmpty(t, v.Readings)
			for _, r := range v.Readings {
				require.True(t, x.IsPlausible(r.Figure.Reading), x.Name)
			}
		case x.Kind == KindChoice:
			require.Less(t, v.Choice, len(x.Choices.Choices))
		case x.Kind == KindPartName:
			require.NotNil(t, v.Named)
		case x.Kind == KindPartNames:
			require.NotEmpty(t, v.Several)
			require.NotContains(t, v.Several, (*Part)(nil))
		}
	}
	for _, l := range p.Lists {
		require.False(t, l.NotFitted && len(l.Parts) > 0 && l.Fitted == quantity.Yes)
		for _, inner := range l.Parts {
			require.Same(t, p, inner.Within)
			requireSound(t, inner, size)
		}
	}
}
