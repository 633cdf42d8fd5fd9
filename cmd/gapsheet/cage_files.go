package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"path/filepath"

	"gapsheet/vehicle"
)

// refuse says why an output must not be written where it is asked for: over a file of the
// sheet or one of its papers, over anything that is no file, or over a file that is none of
// this program's, such as a rulebook or one of its tables.
func (o *output) refuse(sheet *vehicle.Sheet) error {
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
	for _, name := range filesOf(sheet) {
		if own, err := os.Stat(filepath.FromSlash(name)); err == nil && os.SameFile(own, there) {
			return wrong("%s would write over %q, which belongs to the sheet. Name another file.", o.flag, shown)
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

// filesOf lists the files of a sheet and the papers it names, as slash paths from the
// working folder.
func filesOf(sheet *vehicle.Sheet) []string {
	var names []string
	folder := sheet.Name
	for _, source := range sheet.Sources {
		names = append(names, source.Name)
		folder = path.Dir(source.Name)
	}
	var papers func(part *vehicle.Part)
	papers = func(part *vehicle.Part) {
		for _, evidence := range part.Evidence {
			if evidence.File != "" {
				names = append(names, path.Join(folder, evidence.File))
			}
		}
		for _, list := range part.Lists {
			for _, inner := range list.Parts {
				papers(inner)
			}
		}
	}
	papers(sheet.Root)
	return names
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
