package rules

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// csvBook reads its one table from sizes.csv.
const csvBook = `rulebook "Marram" {
  edition = "2027"
}
table "sizes" {
  columns = { outside = "tube.outside", wall = "tube.wall", pieces = "count", remark = "text", alloy = "truth", form = "tube.forming", until = "car.homologation_ended" }
  rows_from = "sizes.csv"
}
chapter "1" {
  title = "Tubes"
  clause "1.1" {
    title   = "Sizes"
    concern = "safety"
    demand  = "any(table.sizes, .outside >= 1*mm)"
  }
}
`

// loadCSV loads csvBook with a file beside it.
func loadCSV(file string) (*Rulebook, hcl.Diagnostics) {
	return Load(fstest.MapFS{
		"club/book.hcl":  {Data: []byte(csvBook)},
		"club/sizes.csv": {Data: []byte(file)},
	}, "club", "club", vehicle.BuiltIn())
}

const csvHeader = "outside,wall,pieces,remark,alloy,form,until\n"

func TestCSVAsSpreadsheetsWriteIt(t *testing.T) {
	row := `45 mm,2.5 mm,1,"a, ""b"" é",TRUE,Seamless,2030-12-31`
	for name, file := range map[string]string{
		"plain":                   csvHeader + row + "\n",
		"without a last newline":  csvHeader + row,
		"CRLF":                    strings.ReplaceAll(csvHeader+row+"\n", "\n", "\r\n"),
		"byte order mark":         "\xef\xbb\xbf" + csvHeader + row + "\n",
		"all in quotes":           csvHeader + `"45 mm","2.5 mm","1","a, ""b"" é","TRUE","Seamless","2030-12-31"` + "\n",
		"blank lines":             "\n" + csvHeader + "\n\n" + row + "\n\n",
		"blanks around cells":     " outside , wall,pieces,remark,alloy,form,until\n 45 mm , 2.5 mm,1,\"a, \"\"b\"\" é\",TRUE,Seamless,2030-12-31\n",
		"columns in another turn": "until,wall,pieces,remark,alloy,form,outside\n" + `2030-12-31,2.5 mm,1,"a, ""b"" é",TRUE,Seamless,45 mm` + "\n",
	} {
		t.Run(name, func(t *testing.T) {
			book, faults := loadCSV(file)
			require.Empty(t, describe(faults))
			require.Len(t, book.Tables[0].Rows, 1)
			cells := book.Tables[0].Rows[0]
			require.Equal(t, []float64{0.045, 0.0025, 1}, []float64{cells[0].Figure.Reading, cells[1].Figure.Reading, cells[2].Figure.Reading})
			require.Equal(t, `a, "b" é`, cells[3].Text)
			require.True(t, cells[4].Truth)
			require.Equal(t, book.Tables[0].Columns[5].Is.Choices.Find("seamless"), cells[5].Choice)
			require.Equal(t, days(t, "2030-12-31"), cells[6].Days)
		})
	}
}

func TestFaultyCSV(t *testing.T) {
	good := "45 mm,2.5 mm,1,a,true,seamless,2030-12-31\n"
	for _, c := range []struct {
		name, file string
		want       []string // place code
		says       string
	}{
		{"empty", "", []string{"1:1 rows-form"}, "Write a first line with the names of the columns (outside, wall,"},
		{"first line alone", csvHeader, []string{"1:1 rows-form"}, "Found no row"},
		{"unknown column", "outside,wall,pieces,remark,alloy,form,untill\n" + good, []string{"1:39 csv-column"}, "Add it to columns"},
		{"missing column", "outside,wall,pieces,remark,alloy,form\n", []string{"1:1 csv-column"}, "Found no column until"},
		{"column twice", "outside,wall,wall,remark,alloy,form,until\n" + good, []string{"1:14 said-twice"}, "Found column wall again"},
		{"semicolons", "outside;wall;pieces\n45 mm;2,5 mm;1\n", []string{"1:1 csv-column"}, "Separate the columns by commas"},
		{"short row", csvHeader + good + "45 mm,2.5 mm\n", []string{"3:1 row-length"}, "Found a line of 2 for the 7 columns"},
		{"long row", csvHeader + "45 mm,2,5 mm,1,a,true,seamless,2030-12-31\n", []string{"2:1 row-length"}, "a cell with a comma in it in double quotes"},
		{"no unit, é before it", csvHeader + "45 mm,2.5 mm,1,é e\u0301,true,seamless,2030-12-31\n45,2 mm,1,é,true,seamless,2030-12-31\n",
			[]string{"3:1 unit-missing"}, `as in "45 mm"`},
		{"columns count what is seen", csvHeader + "45 mm,2.5 mm,1,é e\u0301,truth,seamless,2030-12-31\n", []string{"2:20 truth-wanted"}, "Write true or false."},
		{"a cell over two lines", csvHeader + "45 mm,2.5 mm,1,\"é\nb\",true,seamless,2030\n", []string{"2:16 one-line-wanted", "3:18 day-wanted"}, "Write it on one."},
		{"part of a cell", csvHeader + "45 mm,2.5 mm,1,a,true,seamless,2030-02-30\n", []string{"2:40 date-no-such-day"}, "28 days"},
		{"a cell in quotes", csvHeader + "45 mm,2.5 mm,1,a,true,seamless,\"2030-02-30\"\n", []string{"2:32 date-no-such-day"}, "28 days"},
		{"two faults in one run", csvHeader + "45 mm,99 mm,1,a,true,seamless,2030-12-31\n,2.5 mm,1,b,true,seamless,2030-12-31\n",
			[]string{"2:7 not-plausible", "3:1 cell-empty"}, "wall is 0.5 to 10 mm"},
		{"same row", csvHeader + good + "45.0 mm,2.5 mm,1, A,true,CDS,2030-12-31\n", []string{"3:1 said-twice"}, "it was said first at club/sizes.csv:2:1"},
		{"a quote in the midst", csvHeader + "45 mm,2.5 mm,1,1 3/4\" tube,true,seamless,2030-12-31\n", []string{"2:21 csv-form"}, "a quote inside it is doubled"},
		{"a quote that does not close", csvHeader + "45 mm,2.5 mm,1,\"a,true\n", []string{"3:1 csv-form"}, "double quote out of place"},
		{"zero byte", csvHeader + "45 mm\x00\n", []string{"2:6 binary-file"}, "no text file holds"},
		{"escape sequence", csvHeader + "\x1b[2J\n", []string{"2:1 control-character"}, "U+001B"},
		{"not UTF-8", csvHeader + "45 mm,2.5 mm,1,\xff\n", []string{"2:16 not-utf8"}, "0xFF"},
	} {
		t.Run(c.name, func(t *testing.T) {
			book, faults := loadCSV(c.file)
			require.Nil(t, book)
			var places []string
			for _, d := range faults {
				require.Equal(t, "club/sizes.csv", d.Subject.Filename)
				places = append(places, fmt.Sprintf("%d:%d %s", d.Subject.Start.Line, d.Subject.Start.Column, vehicle.CodeOf(d)))
			}
			require.Equal(t, c.want, places)
			require.Contains(t, strings.Join(describe(faults), "\n"), c.says)
		})
	}
}

func TestTablesThatAreNotFiles(t *testing.T) {
	for name, c := range map[string]struct {
		beside *fstest.MapFile
		code   vehicle.Code
	}{
		"missing":   {nil, "no-such-file"},
		"folder":    {&fstest.MapFile{Mode: 0o755 | 1<<31}, "not-a-file"},
		"too large": {&fstest.MapFile{Data: []byte(strings.Repeat("a", vehicle.LargestFile+1))}, "file-too-large"},
	} {
		files := fstest.MapFS{"book.hcl": {Data: []byte(csvBook)}}
		if c.beside != nil {
			files["sizes.csv"] = c.beside
		}
		_, faults := Load(files, "book.hcl", "book.hcl", vehicle.BuiltIn())
		require.Len(t, faults, 1, name)
		require.Equal(t, c.code, vehicle.CodeOf(faults[0]), name)
		require.Equal(t, "book.hcl:6:15", vehicle.PlaceText(*faults[0].Subject), "%s: told where the file is named", name)
	}
}

func TestTablesOfAnySizeTakeNoTime(t *testing.T) {
	for name, file := range map[string]string{
		"many rows":         csvHeader + strings.Repeat("45 mm,2.5 mm,1,a,true,seamless,2030-12-31\n", 24_000),
		"many faulty rows":  csvHeader + strings.Repeat("45,2.5 mm,1,a,true,seamless,2030-12-31\n", 24_000),
		"many short rows":   csvHeader + strings.Repeat("45 mm\n", 170_000),
		"one line":          strings.Repeat("a,", 500_000),
		"a long second one": csvHeader + strings.Repeat("a,", 500_000),
		"quotes":            csvHeader + strings.Repeat(`"`, 1_000_000),
	} {
		start := time.Now()
		_, faults := loadCSV(file)
		require.True(t, faults.HasErrors(), name)
		require.Less(t, time.Since(start), soon, name)
		require.LessOrEqual(t, len(faults), mostFaults+1, name)
	}
}
