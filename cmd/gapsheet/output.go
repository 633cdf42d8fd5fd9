package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"

	"gapsheet/vehicle"
)

// output is one file to be written.
type output struct {
	flag, path string
	what       string // it is
	begins     string // every such file does
	text       []byte
}

// svgBegins is how an SVG of this program begins.
const svgBegins = `<?xml version="1.0" encoding="UTF-8"?>` + "\n<svg"

// wanted are the outputs that were asked for: those with a path.
func wanted(outputs ...output) []output {
	return slices.DeleteFunc(outputs, func(one output) bool { return one.path == "" })
}

// onePlaceEach refuses one file for two outputs, however it is spelt.
func onePlaceEach(outputs []output) error {
	seen := map[string]string{}
	for _, one := range outputs {
		whole, err := filepath.Abs(one.path)
		if err != nil {
			return fmt.Errorf("finding the working folder: %w", err)
		}
		if before, ok := seen[whole]; ok {
			return wrong("%s and %s name the same file, %q. Name one for each.", before, one.flag, filepath.ToSlash(one.path))
		}
		seen[whole] = one.flag
	}
	return nil
}

// input is a file that was read, as a slash path from the working folder.
type input struct {
	name string
	of   string // what it belongs to: "the sheet"
}

// refuse says why an output must not be written where it is asked for: over a file that was
// read or a paper that one of those names, over anything that is no file, or over a file that
// is none of this program's, such as a rulebook or one of its tables.
func (o *output) refuse(read []input) error {
	shown := filepath.ToSlash(o.path)
	there, err := os.Stat(o.path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return wrongTarget(o.path, err)
	case !there.Mode().IsRegular():
		return wrong("%s cannot be written into %q, which is no file. Name a file.", o.flag, shown)
	}
	for _, one := range read {
		if own, err := os.Stat(filepath.FromSlash(one.name)); err == nil && os.SameFile(own, there) {
			return wrong("%s would write over %q, which belongs to %s. Name another file.", o.flag, shown, one.of)
		}
	}
	if !o.isEarlier() {
		return wrong("%s would write over %q, which is no %s. Name another file, or move that one away.", o.flag, shown, o.what)
	}
	return nil
}

// isEarlier reports whether the file that is there is empty or one of the kind that is to be
// written.
func (o *output) isEarlier() bool {
	file, err := os.Open(o.path)
	if err != nil {
		return false
	}
	defer file.Close()
	begins := make([]byte, len(o.begins))
	n, _ := file.Read(begins)
	return n == 0 || bytes.Equal(begins[:n], []byte(o.begins))
}

// filesOf lists the files of a sheet and the papers it names.
func filesOf(sheet *vehicle.Sheet) []input {
	return withPapers(inputs(sheet.Sources, "the sheet"), sheet.Root, "the sheet")
}

// inputs lists files that were read.
func inputs(sources []*vehicle.Source, of string) []input {
	var read []input
	for _, source := range sources {
		read = append(read, input{source.Name, of})
	}
	return read
}

// withPapers adds the papers that a part and all that belong to it name. They lie in the
// folder of the files that were read.
func withPapers(read []input, part *vehicle.Part, of string) []input {
	for _, evidence := range part.Evidence {
		if evidence.File != "" && len(read) > 0 {
			read = append(read, input{path.Join(path.Dir(read[0].name), evidence.File), of})
		}
	}
	for _, list := range part.Lists {
		for _, inner := range list.Parts {
			read = withPapers(read, inner, of)
		}
	}
	return read
}

// writeAll writes files whole or not at all: each beside its place first, and when all of
// them are there, each into its place.
func writeAll(outputs []output) error {
	var beside []string
	defer func() {
		for _, name := range beside {
			os.Remove(name) // gone already where it was moved into its place
		}
	}()
	for _, one := range outputs {
		name, err := writeBeside(one.path, one.text)
		if err != nil {
			return wrongTarget(one.path, err)
		}
		beside = append(beside, name)
	}
	for i, one := range outputs {
		err := os.Rename(beside[i], one.path)
		var moved *os.LinkError
		if errors.As(err, &moved) {
			err = moved.Err // the rest of it names the file beside
		}
		if err != nil {
			return wrongTarget(one.path, err)
		}
	}
	return nil
}

// writeBeside writes a file under a name of its own in the folder of another.
func writeBeside(target string, text []byte) (name string, err error) {
	for try := range 100 {
		name = fmt.Sprintf("%s.%d.part", target, try)
		file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
		if errors.Is(err, fs.ErrExist) {
			continue
		}
		if err != nil {
			return "", err
		}
		_, err = file.Write(text)
		if err = errors.Join(err, file.Sync(), file.Close()); err != nil {
			os.Remove(name)
			return "", err
		}
		return name, nil
	}
	return "", fmt.Errorf("too many files named %s.0.part and so on are beside it", filepath.Base(target))
}
