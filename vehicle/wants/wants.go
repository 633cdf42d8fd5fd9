// Package wants compares the faults found in files with those that the files themselves
// announce, for tests. Beside a fault stands a remark
//
//	wall = "2.5"   # want 8 unit-missing "Write the unit too"
//
// with the column at which the fault has to point, the fault's code, and a regular
// expression that has to fit its summary and detail, joined by ": ". Several faults of one
// line stand in one remark, one behind the other. want@+2 and want@-1 announce a fault so
// many lines below or above, for lines that can have no remark. warn in place of want
// announces a warning. A fault that is not announced is as wrong as one that is announced
// and not found.
package wants

import (
	"bytes"
	"fmt"
	"io/fs"
	"path"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
)

// Want is one announced fault.
type Want struct {
	File         string
	Line, Column int
	Code         string
	Severity     hcl.DiagnosticSeverity
	Message      *regexp.Regexp
}

// String is where the fault is announced, and as what.
func (w Want) String() string {
	return fmt.Sprintf("%s:%d:%d: %s %q", w.File, w.Line, w.Column, w.Code, w.Message)
}

var (
	remark = regexp.MustCompile(`# (want|warn)(@[+-]\d+)? (\d.*)$`)
	single = regexp.MustCompile(`^(\d+) ([a-z0-9-]+) `)
)

// Read returns the faults that a file announces. name is the file name that the faults
// will have. A remark that cannot be read fails the test.
func Read(t testing.TB, name string, data []byte) []Want {
	t.Helper()
	var wants []Want
	for i, line := range bytes.Split(data, []byte("\n")) {
		found := remark.FindSubmatch(bytes.TrimSuffix(line, []byte("\r")))
		if found == nil {
			continue
		}
		offset, _ := strconv.Atoi(strings.TrimPrefix(string(found[2]), "@"))
		severity := hcl.DiagError
		if string(found[1]) == "warn" {
			severity = hcl.DiagWarning
		}
		for rest := string(found[3]); rest != ""; {
			want := Want{File: name, Line: i + 1 + offset, Severity: severity}
			var err error
			if rest, err = want.parse(rest); err != nil {
				t.Fatalf("%s:%d: a remark that cannot be read, at %q: %v", name, i+1, rest, err)
			}
			wants = append(wants, want)
		}
	}
	return wants
}

// parse reads column, code and regular expression and returns what follows them.
func (w *Want) parse(text string) (rest string, err error) {
	head := single.FindStringSubmatch(text)
	if head == nil {
		return text, fmt.Errorf("column, code and a quoted regular expression are wanted")
	}
	w.Column, _ = strconv.Atoi(head[1])
	w.Code = head[2]
	text = text[len(head[0]):]
	quoted, err := strconv.QuotedPrefix(text)
	if err != nil {
		return text, err
	}
	pattern, err := strconv.Unquote(quoted)
	if err != nil {
		return text, err
	}
	w.Message, err = regexp.Compile(pattern)
	return strings.TrimLeft(text[len(quoted):], " "), err
}

// ReadAll is Read for a file, or for all files of a folder. name is where it is in fsys,
// shown the path by which faults speak of it.
func ReadAll(t testing.TB, fsys fs.FS, name, shown string) []Want {
	t.Helper()
	info, err := fs.Stat(fsys, name)
	if err != nil {
		t.Fatal(err)
	}
	if !info.IsDir() {
		data, err := fs.ReadFile(fsys, name)
		if err != nil {
			t.Fatal(err)
		}
		return Read(t, shown, data)
	}
	entries, err := fs.ReadDir(fsys, name)
	if err != nil {
		t.Fatal(err)
	}
	var wants []Want
	for _, entry := range entries {
		if !entry.IsDir() {
			wants = append(wants, ReadAll(t, fsys, path.Join(name, entry.Name()), path.Join(shown, entry.Name()))...)
		}
	}
	return wants
}

// Compare returns a line for each announced fault that was not found and for each fault
// found that is not announced; none when all is as announced.
func Compare(wants []Want, found hcl.Diagnostics) []string {
	var problems []string
	left := append(hcl.Diagnostics{}, found...)
	for _, want := range wants {
		at := -1
		for i, d := range left {
			if want.fits(d) {
				at = i
				break
			}
		}
		if at < 0 {
			problems = append(problems, "not found: "+want.String())
			continue
		}
		left = append(left[:at], left[at+1:]...)
	}
	for _, d := range left {
		problems = append(problems, fmt.Sprintf("not announced: %s:%d:%d: %v %q",
			d.Subject.Filename, d.Subject.Start.Line, d.Subject.Start.Column, d.Extra, message(d)))
	}
	return problems
}

// fits reports whether a fault is the announced one.
func (w Want) fits(d *hcl.Diagnostic) bool {
	return d.Subject != nil && d.Severity == w.Severity &&
		d.Subject.Filename == w.File && d.Subject.Start.Line == w.Line && d.Subject.Start.Column == w.Column &&
		fmt.Sprint(d.Extra) == w.Code && w.Message.MatchString(message(d))
}

// message is what a fault says.
func message(d *hcl.Diagnostic) string { return d.Summary + ": " + d.Detail }

// Check fails the test with a line for each difference between the announced faults and
// those found.
func Check(t testing.TB, wants []Want, found hcl.Diagnostics) {
	t.Helper()
	for _, problem := range Compare(wants, found) {
		t.Error(problem)
	}
}
