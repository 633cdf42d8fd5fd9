package main

import (
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle"
)

// opened is a file or folder named on the command line. Its own folder is opened as a
// root, so that neither ".." nor a symbolic link inside it leads out of that folder.
type opened struct {
	files fs.FS
	name  string // in files; "." for the folder itself
	shown string // slash path as the user knows it
	base  string // shown path of the folder that files opens
}

// open opens a file or folder. A path that is not there is left for the reader of it to
// report, as long as its folder is there.
func open(named, what string) (*opened, error) {
	shown := path.Clean(filepath.ToSlash(named))
	folder, name := filepath.Dir(named), filepath.Base(named)
	if info, err := os.Stat(named); err == nil && info.IsDir() {
		folder, name = named, "."
	}
	root, err := os.OpenRoot(folder)
	if err != nil {
		return nil, wrongFolder(folder, what, err)
	}
	o := &opened{files: root.FS(), name: name, shown: shown, base: shown}
	if name != "." {
		o.base = path.Dir(shown)
	}
	return o, nil
}

func wrongFolder(folder, what string, err error) error {
	reason := "cannot be opened"
	switch {
	case os.IsNotExist(err):
		reason = "is not there"
	case os.IsPermission(err):
		reason = "may not be read"
	}
	return wrong("The folder %q %s. Name the file or folder of the %s.", filepath.ToSlash(folder), reason, what)
}

// bytes hands out a file by its shown path, nil when it is not in this folder.
func (o *opened) bytes(shown string) []byte {
	name := shown
	if o.base != "." {
		inside, ok := strings.CutPrefix(shown, strings.TrimSuffix(o.base, "/")+"/")
		if !ok {
			return nil
		}
		name = inside
	}
	if !fs.ValidPath(name) {
		return nil
	}
	info, err := fs.Stat(o.files, name)
	if err != nil || !info.Mode().IsRegular() || info.Size() > vehicle.LargestFile {
		return nil
	}
	data, err := fs.ReadFile(o.files, name)
	if err != nil {
		return nil
	}
	return data
}

// shelf remembers what was opened and what was found wrong with it, so that messages can
// show the lines they speak of.
type shelf struct {
	opened []*opened
	extra  map[string][]byte // texts that are in no file: formulas of the command line
	cache  map[string][]byte
	found  hcl.Diagnostics
}

func (s *shelf) open(named, what string) (*opened, error) {
	o, err := open(named, what)
	if err == nil {
		s.opened = append(s.opened, o)
	}
	return o, err
}

// text adds a text that is in no file, under the name that messages give it.
func (s *shelf) text(shown string, text []byte) {
	if s.extra == nil {
		s.extra = map[string][]byte{}
	}
	s.extra[shown] = text
}

// file hands out the bytes behind a shown name, nil when there are none.
func (s *shelf) file(shown string) []byte {
	if text, ok := s.extra[shown]; ok {
		return text
	}
	if text, ok := s.cache[shown]; ok {
		return text
	}
	if s.cache == nil {
		s.cache = map[string][]byte{}
	}
	for _, o := range s.opened {
		if text := o.bytes(shown); text != nil {
			s.cache[shown] = text
			return text
		}
	}
	s.cache[shown] = nil
	return nil
}

// add notes what was found.
func (s *shelf) add(found hcl.Diagnostics) { s.found = append(s.found, found...) }

// faults is the error for the faults found so far, nil when there is none.
func (s *shelf) faults() error {
	if !s.found.HasErrors() {
		return nil
	}
	return &wrongFiles{found: s.found, file: s.file}
}
