package rules

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// withClause is a rulebook whose only clause has the given lines.
func withClause(lines string) string {
	return "rulebook \"Marram\" {\n  edition = \"2027\"\n}\nchapter \"1\" {\n  title = \"One\"\n  clause \"1.1\" {\n" +
		"    title   = \"A\"\n    concern = \"safety\"\n" + lines + "\n  }\n}\n"
}

// placesOf lists place and code of faults.
func placesOf(t *testing.T, text string) []string {
	t.Helper()
	_, faults := loadText(text)
	var list []string
	for _, d := range faults {
		list = append(list, fmt.Sprintf("%d:%d-%d:%d %s", d.Subject.Start.Line, d.Subject.Start.Column,
			d.Subject.End.Line, d.Subject.End.Column, vehicle.CodeOf(d)))
	}
	return list
}

func TestFormulaFaultsStandWhereTheyAreWritten(t *testing.T) {
	heredoc := "    demand = <<-FORMULA\n      any(cage.tubes,\n        .part == 'é' or\n\n        e\u0301tage > 1 and .wal >= 2*mm)\n    FORMULA"
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"quoted":         {`    demand  = "car.weighed_mas >= 900*kg"`, []string{"9:20-9:31 formula-name"}},
		"quoted, escape": {`    demand  = "any(cage.tubes, .part == \"x\" or .wal > 1*mm)"`, []string{"9:41-9:46 formula-choice", "9:51-9:54 formula-name"}},
		"escaped letter": {`    demand  = "car.driven_wheels == '\u00e9' and x"`, []string{"9:37-9:45 formula-choice", "9:50-9:51 formula-name"}},
		"heredoc":        {heredoc, []string{"11:18-11:21 formula-choice", "13:9-13:14 formula-name", "13:24-13:27 formula-name"}},
		"flush heredoc":  {"    demand = <<TEXT\nnot\n  x\nTEXT", []string{"11:3-11:4 formula-name"}},
		"across":         {`    across = "tube  in   cage.tubs"` + "\n    look_for = \"x\"", []string{"9:31-9:35 formula-name"}},
		"second list":    {`    across = ["harness in harnesses", "strap in harness.strapps"]` + "\n    look_for = \"x\"", []string{"9:57-9:64 formula-name"}},
	} {
		t.Run(name, func(t *testing.T) {
			require.Equal(t, c.want, placesOf(t, withClause(c.text)))
			require.Equal(t, c.want, placesOf(t, strings.ReplaceAll(withClause(c.text), "\n", "\r\n")), "with CRLF")
		})
	}
}

func TestEveryFormulaIsCheckedInOneRun(t *testing.T) {
	var text strings.Builder
	text.WriteString("rulebook \"Marram\" {\n  edition = \"2027\"\n}\nterm \"t\" {\n  means = \"nowhere\"\n}\nchapter \"1\" {\n  title = \"One\"\n")
	for i := range 40 {
		fmt.Fprintf(&text, "  clause \"1.%d\" {\n    title = \"A\"\n    concern = \"safety\"\n    applies = \"car.a\"\n    demand = \"car.b or car.c\"\n  }\n", i)
	}
	text.WriteString("}\n")
	require.Len(t, placesOf(t, text.String()), 1+40*3)
}

func TestInputThatIsNoRulebook(t *testing.T) {
	million := strings.Repeat("[", 1_000_000)
	for name, c := range map[string]struct {
		data string
		code vehicle.Code
	}{
		"empty":              {"", "no-rulebook"},
		"blank":              {"\n \n# nothing\n", "no-rulebook"},
		"binary":             {"\x00\x7fELF", "binary-file"},
		"not UTF-8":          {"rulebook \"\xff\" {}", "not-utf8"},
		"five megabytes":     {strings.Repeat("# a\n", 5<<18), "file-too-large"},
		"a million brackets": {"a = " + million, "too-deep"},
		"a sheet":            {"car \"Tessel 16\" {}\n", "sheet-for-rulebook"},
		"escape sequences":   {"rulebook \"\x1b[2J\" {}", "control-character"},
	} {
		start := time.Now()
		book, faults := loadText(c.data)
		require.Nil(t, book, name)
		require.Len(t, faults, 1, name)
		require.Equal(t, c.code, vehicle.CodeOf(faults[0]), name)
		require.Equal(t, "book.hcl", faults[0].Subject.Filename)
		require.Less(t, time.Since(start), soon, name)
	}
}

func TestFoldersThatAreNoRulebook(t *testing.T) {
	for name, c := range map[string]struct {
		files fstest.MapFS
		code  vehicle.Code
	}{
		"nothing there":    {fstest.MapFS{"other/a.hcl": {}}, "no-such-file"},
		"no file of ours":  {fstest.MapFS{"club/readme.txt": {}}, "folder-without-files"},
		"no rulebook":      {fstest.MapFS{"club/a.hcl": {Data: []byte("term \"a\" {}")}}, "no-rulebook"},
		"a file unread":    {fstest.MapFS{"club/a.hcl": {Data: []byte("\x00")}, "club/b.hcl": {Data: []byte("rulebook {}")}}, "binary-file"},
		"a sheet in there": {fstest.MapFS{"club/a.hcl": {Data: []byte("seat \"d\" {}")}, "club/b.hcl": {Data: []byte("car \"a\" {}")}}, "sheet-for-rulebook"},
	} {
		book, faults := Load(c.files, "club", "shown/club", vehicle.BuiltIn())
		require.Nil(t, book, name)
		require.Len(t, faults, 1, name)
		require.Equal(t, c.code, vehicle.CodeOf(faults[0]), name)
		require.True(t, strings.HasPrefix(faults[0].Subject.Filename, "shown/club"), name)
	}
}

func TestAFileThatCannotBeReadKeepsTheOthersWaiting(t *testing.T) {
	folder := fstest.MapFS{
		"club/1.hcl": {Data: []byte("chapter 4 {\n}\n")},
		"club/2.hcl": {Data: []byte("rulebook \"Marram\" {\n  editon = \"2027\"\n}\n")},
	}
	_, faults := Load(folder, "club", "club", vehicle.BuiltIn())
	require.Len(t, faults, 1)
	require.Equal(t, vehicle.Code("label-without-quotes"), vehicle.CodeOf(faults[0]))
	require.Contains(t, faults[0].Detail, "Nothing else in the file was looked at: mend this first, more may follow. The other files of the rulebook wait for this one.")
}

func TestFaultsOfSeveralFilesComeInTheirOrder(t *testing.T) {
	files := fstest.MapFS{
		"club/2.hcl":   {Data: []byte("table \"a\" {\n  columns = { n = \"count\" }\n  rows_from = \"a.csv\"\n  issued = \"x\"\n}\nrulebook \"M\" {\n  editon = \"1\"\n}\n")},
		"club/1.hcl":   {Data: []byte("chapter \"4\" {\n  clause \"4.1\" {}\n}\n")},
		"club/3.hcl":   {Data: []byte("chapter \"4\" {\n  title = \"x\"\n}\n")},
		"club/a.csv":   {Data: []byte("n\nx\n")},
		"club/.b.hcl":  {Data: []byte("not read")},
		"club/c/d.hcl": {Data: []byte("not read")},
	}
	_, faults := Load(files, "club", "club", vehicle.BuiltIn())
	var places []string
	for _, d := range faults {
		places = append(places, vehicle.PlaceText(*d.Subject)+" "+string(vehicle.CodeOf(d)))
	}
	require.Equal(t, []string{
		"club/1.hcl:1:1 key-missing",
		"club/1.hcl:2:3 key-missing", "club/1.hcl:2:3 key-missing", "club/1.hcl:2:3 clause-asks-nothing",
		"club/2.hcl:4:13 date-form",
		"club/2.hcl:6:1 key-missing", "club/2.hcl:7:3 unknown-key",
		"club/3.hcl:1:9 said-twice",
		"club/a.csv:2:1 number-not-readable",
	}, places)
	require.Contains(t, describe(faults)[7], "it was said first at club/1.hcl:1:9")
}

func TestARulebookWithoutClausesIsWarnedOf(t *testing.T) {
	book, faults := loadText("rulebook \"Marram\" {\n  edition = \"2027\"\n}\n")
	require.NotNil(t, book)
	require.Len(t, faults, 1)
	require.False(t, faults.HasErrors())
	require.Equal(t, vehicle.Code("no-clauses"), vehicle.CodeOf(faults[0]))
	require.Equal(t, AsRead, book.Judged)
	require.False(t, book.MeanOfReadings)
	require.Nil(t, book.Classes)
}

func TestTermsThatMultiplyTheWorkAreRefused(t *testing.T) {
	var text strings.Builder
	text.WriteString("rulebook \"Marram\" {\n  edition = \"2027\"\n}\nterm \"t0\" {\n  means = \"car.weighed_mass > 1000*kg\"\n}\n")
	for i := 1; i <= 60; i++ {
		fmt.Fprintf(&text, "term \"t%d\" {\n  means = \"t%d or t%d\"\n}\n", i, i-1, i-1)
	}
	text.WriteString("chapter \"1\" {\n  title = \"One\"\n  clause \"1.1\" {\n    title = \"A\"\n    concern = \"safety\"\n    demand = \"t60\"\n  }\n}\n")
	start := time.Now()
	_, faults := loadText(text.String())
	require.Less(t, time.Since(start), soon)
	require.Len(t, faults, 1, "the terms that use it are not told again")
	require.Equal(t, CodeFormulaLarge, vehicle.CodeOf(faults[0]))
}

func TestListsInTermsCountAsNested(t *testing.T) {
	text := "rulebook \"Marram\" {\n  edition = \"2027\"\n}\n" +
		"term \"inner\" {\n  given = \"a in cage.tubes\"\n  means = \"any(cage.tubes, let b = .wall; any(cage.tubes, .wall > b and a.wall > b))\"\n}\n" +
		"chapter \"1\" {\n  title = \"One\"\n  clause \"1.1\" {\n    title = \"A\"\n    concern = \"safety\"\n    demand = \"%s\"\n  }\n}\n"
	_, faults := loadText(fmt.Sprintf(text, "all(cage.tubes, inner(#))"))
	require.Empty(t, describe(faults))
	_, faults = loadText(fmt.Sprintf(text, "all(cage.tubes, any(cage.tubes, inner(#)))"))
	require.Len(t, faults, 1)
	require.Equal(t, CodeFormulaDeep, vehicle.CodeOf(faults[0]))
	require.Contains(t, faults[0].Detail, "nested 4 deep")
}

func TestAnAllowanceOfATemperatureIsADifference(t *testing.T) {
	book, faults := loadText(withClause("    demand    = \"all(lines, .rated_temperature >= celsius(135))\"\n    allowance = \"1.8 degF\""))
	require.Empty(t, describe(faults))
	require.InDelta(t, 1.0, book.Chapters[0].Clauses[0].Allowance, 1e-12)
	book, faults = loadText(withClause("    demand    = \"all(cage.tubes, .wall >= 2.5*mm)\"\n    allowance = \"-0.1 mm\""))
	require.Empty(t, describe(faults))
	require.Equal(t, -0.0001, book.Chapters[0].Clauses[0].Allowance)
}

func TestEveryReservedNameIsRefused(t *testing.T) {
	require.Greater(t, len(reserved()), 100)
	for _, name := range []string{"mm", "kg", "all", "round", "on", "event", "table", "club", "and", "matches", "recorded", "in_band", "now", "pi", "car", "seats"} {
		require.NotEmpty(t, Reserved(name, vehicle.BuiltIn()), name)
	}
	for _, name := range []string{"tube", "thick", "strap", "m1"} {
		require.Empty(t, Reserved(name, vehicle.BuiltIn()), name)
	}
	require.Empty(t, Reserved("car", nil))
}

func TestTooManyTermsAreRefused(t *testing.T) {
	var text strings.Builder
	text.WriteString("rulebook \"Marram\" {\n  edition = \"2027\"\n}\n")
	for i := range mostTerms + 2 {
		fmt.Fprintf(&text, "term \"t%d\" {\n  means = \"true\"\n}\n", i)
	}
	_, faults := loadText(text.String())
	require.Len(t, faults, 1)
	require.Equal(t, vehicle.Code("terms-too-many"), vehicle.CodeOf(faults[0]))
	require.Equal(t, 4+3*mostTerms, faults[0].Subject.Start.Line)
}
