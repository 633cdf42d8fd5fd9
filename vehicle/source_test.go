package vehicle

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"
)

// requireOne wants exactly one fault, with a code, at a line and column, and sentences that
// say what was found and what to write.
func requireOne(t *testing.T, faults hcl.Diagnostics, code Code, line, column int, words string) {
	t.Helper()
	require.Len(t, faults, 1, faults.Error())
	d := faults[0]
	require.Equal(t, code, CodeOf(d))
	require.Equal(t, [2]int{line, column}, [2]int{d.Subject.Start.Line, d.Subject.Start.Column}, d.Error())
	require.Contains(t, d.Detail, words)
	require.True(t, strings.HasSuffix(d.Detail, "."), d.Detail)
}

// TestWrongInputsGetASentence gives what is no sheet at all. Each has to be told at once: a
// parser that saw it would take minutes, or end the process.
func TestWrongInputsGetASentence(t *testing.T) {
	for name, wrong := range map[string]struct {
		data         string
		code         Code
		line, column int
		words        string
	}{
		"five megabytes":         {strings.Repeat("# nothing\n", 500_000), "file-too-large", 1, 1, "more than 1048576 bytes"},
		"one byte too many":      {strings.Repeat("#", LargestFile+1), "file-too-large", 1, 1, "more than 1048576 bytes"},
		"a million brackets":     {"a = " + strings.Repeat("(", 1_000_000), "too-deep", 1, 105, "100 brackets"},
		"a million blocks":       {strings.Repeat("a {\n", 250_000), "too-deep", 101, 3, "100 brackets"},
		"a million negations":    {"a = " + strings.Repeat("!", 1_000_000), "too-deep", 1, 105, "100 signs"},
		"a million choices":      {"a = " + strings.Repeat("b?", 500_000), "too-deep", 1, 206, "100 signs"},
		"a million fillings":     {"a = \"" + strings.Repeat("%{if b}", 140_000), "text-too-long", 1, 5, "65536 characters"},
		"fillings in fillings":   {"a = " + strings.Repeat("\"${", 300_000), "too-deep", 1, 307, "100 brackets"},
		"a text of a megabyte":   {"a = <<-TEXT\n" + strings.Repeat("$", 1_000_000) + "\nTEXT\n", "text-too-long", 1, 5, "65536 characters"},
		"a text of many lines":   {"a = <<-TEXT\n" + strings.Repeat("\n", 5_000) + "TEXT\n", "text-too-long", 1, 5, "4000 lines"},
		"a name in many parts":   {"a = " + strings.Repeat("b::", 300_000) + "c()", "too-deep", 1, 307, "100 signs"},
		"remarks without end":    {strings.Repeat("/* ", 300_000), "not-closed", 1, 1, "nowhere a */"},
		"a zero byte":            {"car \"x\" {\n\x00", "binary-file", 2, 1, "zero byte"},
		"a picture":              {"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR", "not-utf8", 1, 1, "0x89"},
		"a UTF-16 file":          {"\xff\xfec\x00a\x00r\x00", "not-utf8", 1, 1, "UTF-16"},
		"half a character":       {"car \"\u00e9\xc3\" {}", "not-utf8", 1, 7, "0xC3"},
		"old line ends":          {"car \"x\" {\r}\r", "control-character", 1, 10, "U+000D"},
		"an escape sequence":     {"car \"\x1b[2J\" {}", "control-character", 1, 6, "U+001B"},
		"turned writing":         {"car \"\u202ex\" {}", "control-character", 1, 6, "U+202E"},
		"an exponent":            {"a = 1.5e31", "number-out-of-bounds", 1, 5, "1.5e31"},
		"a small exponent":       {"a = [1e-30, 1e-31]", "number-out-of-bounds", 1, 13, "1e-31"},
		"a strange closing word": {"a = <<-\u00dcBER\n\u00dcBER\n", "heredoc-word", 1, 5, "plain letters"},
		"an empty file":          {"", "empty-sheet", 1, 1, `car "NAME"`},
		"blanks":                 {" \n\t\n", "empty-sheet", 1, 1, `car "NAME"`},
	} {
		t.Run(name, func(t *testing.T) {
			began := time.Now()
			sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(wrong.data)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
			require.Nil(t, sheet)
			requireOne(t, faults, wrong.code, wrong.line, wrong.column, wrong.words)
			require.Less(t, time.Since(began), time.Second)
		})
	}
}

func TestWhatIsJustWithinTheGuardsIsRead(t *testing.T) {
	for name, text := range map[string]string{
		"a file of a megabyte":  "a = 1\n" + strings.Repeat("#", LargestFile-6),
		"a hundred brackets":    "a = " + strings.Repeat("[", 100) + strings.Repeat("]", 100),
		"brackets in texts":     "a = \"" + strings.Repeat("({[", 300) + "\"\n",
		"brackets in remarks":   "# " + strings.Repeat("({[", 300) + "\n/* " + strings.Repeat("({[", 300) + " */ a = 1 // " + strings.Repeat("{", 300),
		"brackets in a heredoc": "a = <<-TEXT\n  \"" + strings.Repeat("({[", 300) + "\n  TEXT\n",
		"escaped quotes":        `a = "\"` + strings.Repeat("(", 300) + `\\"` + "\nb = 2",
		"escaped fillings":      `a = "` + strings.Repeat("$${", 300) + `"` + "\nb = 2",
		"many dashes":           "a = \"" + strings.Repeat("-", 300) + "\"\n# " + strings.Repeat("-", 300) + "\n",
		"many negative numbers": "a = [" + strings.Repeat("-1, ", 300) + "]\n",
		"exponents":             "a = [1e30, 1e-30, 1E+30]",
	} {
		source, faults := ParseSource("a.hcl", []byte(text))
		require.Empty(t, faults, name)
		require.Contains(t, source.Body.Attributes, "a", name)
	}
}

// closedFS is a folder in which nothing may be read.
type closedFS struct{ fstest.MapFS }

func (c closedFS) Open(name string) (fs.File, error) {
	return nil, &fs.PathError{Op: "open", Path: "/secret/" + name, Err: fs.ErrPermission}
}

func TestWhatCannotBeReadGetsASentence(t *testing.T) {
	folder := fstest.MapFS{
		"f/readme.txt":    {Data: []byte("x")},
		"f/.hidden.hcl":   {Data: []byte("x")},
		"f/inner/car.hcl": {Data: []byte("x")},
		"pipe.hcl":        {Mode: fs.ModeNamedPipe},
	}
	closed := closedFS{fstest.MapFS{"car.hcl": {Data: []byte("x")}}}
	for name, wrong := range map[string]struct {
		fsys  fs.FS
		name  string
		code  Code
		words string
	}{
		"not there":       {folder, "car.hcl", "no-such-file", `Found no file or folder "shown/car.hcl"`},
		"no path":         {folder, "../car.hcl", "no-such-file", "build sheet"},
		"no sheet inside": {folder, "f", "folder-without-files", ".hcl"},
		"neither":         {folder, "pipe.hcl", "not-a-file", "neither a file nor a folder"},
		"not to be read":  {closed, "car.hcl", "unreadable", "may not read it"},
	} {
		t.Run(name, func(t *testing.T) {
			sheet, faults := Load(wrong.fsys, wrong.name, "shown/"+wrong.name, BuiltIn(), Options{})
			require.Nil(t, sheet)
			requireOne(t, faults, wrong.code, 0, 0, wrong.words)
			require.Equal(t, "shown/"+wrong.name, faults[0].Subject.Filename)
			require.NotContains(t, faults.Error(), "secret", "no path of the machine is shown")
		})
	}
}

func TestLinksDoNotLeadOutOfTheFolder(t *testing.T) {
	outside := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(outside, "car.hcl"), []byte(`car "x" {}`), 0o600))
	inside := t.TempDir()
	require.NoError(t, os.Symlink(filepath.Join(outside, "car.hcl"), filepath.Join(inside, "car.hcl")))
	root, err := os.OpenRoot(inside)
	require.NoError(t, err)
	defer root.Close()
	sheet, faults := Load(root.FS(), "car.hcl", "car.hcl", BuiltIn(), Options{})
	require.Nil(t, sheet)
	requireOne(t, faults, "unreadable", 0, 0, "cannot be read")
	require.NotContains(t, faults.Error(), outside)
}

func TestAFolderIsReadInTheOrderOfNames(t *testing.T) {
	folder := fstest.MapFS{
		"f/b.hcl":   {Data: []byte("b = 1")},
		"f/a.hcl":   {Data: []byte("a = 1")},
		"f/c.hcl":   {Data: []byte("c = ")},
		"f/d.txt":   {Data: []byte("d = 1")},
		"f/e/e.hcl": {Data: []byte("e = 1")},
	}
	sources, faults := ReadSources(folder, "f", "cars/f/", "build sheet")
	require.Len(t, sources, 2)
	require.Equal(t, "cars/f/a.hcl", sources[0].Name)
	require.Equal(t, "cars/f/b.hcl", sources[1].Name)
	requireOne(t, faults, "value-missing", 1, 5, "The file ends here.")
	sources, faults = ReadSources(folder, "f", ".", "build sheet")
	require.Equal(t, "a.hcl", sources[0].Name)
	require.Equal(t, "c.hcl", faults[0].Subject.Filename)
}

func TestAFolderHasItsLimits(t *testing.T) {
	folder := fstest.MapFS{}
	for i := range mostFiles + 5 {
		folder[strings.Repeat("a", i+1)+".hcl"] = &fstest.MapFile{Data: []byte("a = 1")}
	}
	_, faults := ReadSources(folder, ".", "f", "build sheet")
	requireOne(t, faults, "folder-too-large", 0, 0, "500 files")
}

// TestTheParserIsReworded pins the titles by which the parser's faults are told apart.
func TestTheParserIsReworded(t *testing.T) {
	said := map[string]bool{}
	for text, want := range map[string]struct {
		code   Code
		column int
		words  string
	}{
		"a = 1\na = 2":           {"said-twice", 1, "it was said first at a.hcl:1:1"},
		"\"a\" = 1":              {"line-not-understood", 1, "Names stand without quotes"},
		"a {\n b = 1":            {"not-closed", 3, "No closing }"},
		"a { b = 1":              {"not-closed", 3, "No closing }"},
		"] = 1":                  {"line-not-understood", 1, "name = value"},
		"a { b {} }":             {"one-line-block", 5, "one name = value only"},
		"a { b = 1, c = 2 }":     {"one-line-block", 10, "Give each its own line"},
		"a { b = 1\n}":           {"one-line-block", 10, "ends with } on that line"},
		"a \"b\" = 1":            {"line-not-understood", 7, "with the { on the same line"},
		"a = 1 2":                {"line-too-long", 7, "A value ends its line"},
		"a = 1,":                 {"line-too-long", 6, "Take the comma out"},
		"a {} b {}":              {"line-too-long", 6, "begin a new line"},
		"a = ":                   {"value-missing", 5, "The file ends here. Write a value after the ="},
		"a = # none\n":           {"value-missing", 5, "The line ends here. Write a value after the ="},
		"a = ]":                  {"value-missing", 5, "Write a text or a figure"},
		"a = 1.2.3":              {"value-missing", 5, "plain decimal number"},
		"a = [1":                 {"not-closed", 5, "closing ]"},
		"a = [1 2]":              {"comma-missing", 8, "separated by commas"},
		"a = { b }":              {"value-missing", 9, "name = value"},
		"a = { b\n}":             {"value-missing", 8, "name = value"},
		"a = { b = 1":            {"not-closed", 5, "closing }"},
		"a = { b = 1 c = 2 }":    {"comma-missing", 13, "commas or line breaks"},
		"a \"${b}\" {}":          {"not-literal", 4, "A label is a plain text"},
		"a \"b":                  {"not-closed", 3, "closing double quote"},
		"a = \"b":                {"not-closed", 5, "closing double quote"},
		"a = \"b\nc\"":           {"not-closed", 7, "ends on its line"},
		"a = <<-TEXT\n b\n TEXT": {"not-closed", 5, "a line break after it"},
		"a = \"\\d\"":            {"bad-escape", 6, `write \\ for a backslash`},
		"a = 'b'":                {"strange-character", 5, "straight double quotes"},
		"a = 1 ** 2":             {"value-missing", 8, "Write a text or a figure"},
		"a = f(":                 {"value-missing", 7, "The file ends here"},
		"a = [for x in y : x y]": {"not-literal", 21, "Values are literals"},
		"a = \"${b\"":            {"not-literal", 6, "Values are literals"},
		"a = \"%{if b}c\"":       {"not-literal", 14, "Values are literals"},
		"a = b[":                 {"value-missing", 7, "The file ends here"},
		"a = (1":                 {"not-literal", 7, "Values are literals"},
		"a = 1 << 2\n":           {"value-missing", 8, "Write a text or a figure"},
		"a = << 2":               {"value-missing", 5, "Write a text or a figure"},
		"a = <<a.b\n":            {"value-missing", 5, "Write a text or a figure"},
		"a = b ? 1":              {"not-literal", 10, "Values are literals"},
	} {
		t.Run(text, func(t *testing.T) {
			_, faults := ParseSource("a.hcl", []byte(text))
			require.NotEmpty(t, faults)
			d := faults[0]
			said[d.Summary] = true
			require.Equal(t, want.code, CodeOf(d), d)
			require.Equal(t, want.column, d.Subject.Start.Column, d)
			require.Contains(t, d.Detail, want.words)
		})
	}
	require.Greater(t, len(said), 20)
}

func TestManySyntaxFaultsAreCounted(t *testing.T) {
	_, faults := ParseSource("a.hcl", bytes.Repeat([]byte("a = ]\n"), 1000))
	require.Len(t, faults, syntaxLimit+1)
	require.Equal(t, Code("more-faults"), CodeOf(faults[syntaxLimit]))
	require.Contains(t, faults[syntaxLimit].Detail, "950 more")
}
