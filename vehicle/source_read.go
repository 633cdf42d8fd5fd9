package vehicle

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"

	"github.com/hashicorp/hcl/v2"
)

// Limits of one folder, for the same reason as those of one file.
const (
	mostFiles     = 500
	largestFolder = 16 << 20 // bytes
)

// ReadSources reads a file, or the *.hcl files of a folder in the order of their names
// (not of folders inside it). name is where it is in fsys, "." for fsys itself; shown is
// the slash path by which messages speak of it; what says what it is to be, "build sheet".
// Whatever cannot be read or parsed is a fault, and what could is returned all the same.
func ReadSources(fsys fs.FS, name, shown, what string) ([]*Source, hcl.Diagnostics) {
	info, err := fs.Stat(fsys, name)
	if err != nil {
		return nil, hcl.Diagnostics{unreadable(shown, what, err)}
	}
	if !info.IsDir() {
		source, faults := readOne(fsys, name, shown, what)
		return withoutNil(source), faults
	}
	entries, err := fs.ReadDir(fsys, name)
	if err != nil {
		return nil, hcl.Diagnostics{unreadable(shown, what, err)}
	}
	var sources []*Source
	var faults hcl.Diagnostics
	files, size := 0, 0
	for _, entry := range entries {
		if entry.IsDir() || path.Ext(entry.Name()) != ".hcl" || strings.HasPrefix(entry.Name(), ".") {
			continue
		}
		files++
		source, found := readOne(fsys, path.Join(name, entry.Name()), joinShown(shown, entry.Name()), what)
		faults = append(faults, found...)
		if source != nil {
			size += len(source.Bytes)
			sources = append(sources, source)
		}
		if files > mostFiles || size > largestFolder {
			return sources, append(faults, Fault("folder-too-large", noPlace(shown), "Folder too large", fmt.Sprintf(
				"Found more than %d files or %d MB. Name the folder of one %s.", mostFiles, largestFolder>>20, what)))
		}
	}
	if files == 0 {
		faults = append(faults, Fault("folder-without-files", noPlace(shown), "No files in the folder", fmt.Sprintf(
			"Found a folder without a file whose name ends in .hcl. Name the file or folder of the %s.", what)))
	}
	return sources, faults
}

// withoutNil is a list of source, or of nothing.
func withoutNil(source *Source) []*Source {
	if source == nil {
		return nil
	}
	return []*Source{source}
}

// joinShown is the path to show for a file of a folder.
func joinShown(folder, file string) string {
	if folder == "." || folder == "" {
		return file
	}
	return strings.TrimSuffix(folder, "/") + "/" + file
}

// readOne reads and parses one file.
func readOne(fsys fs.FS, name, shown, what string) (*Source, hcl.Diagnostics) {
	data, fault := readBytes(fsys, name, shown, what)
	if fault != nil {
		return nil, hcl.Diagnostics{fault}
	}
	return ParseSource(shown, data)
}

// readBytes reads a regular file, and no more of it than tells that it is too large.
func readBytes(fsys fs.FS, name, shown, what string) ([]byte, *hcl.Diagnostic) {
	// Asked before opening: opening a pipe would wait for ever.
	if info, err := fs.Stat(fsys, name); err != nil {
		return nil, unreadable(shown, what, err)
	} else if !info.Mode().IsRegular() {
		return nil, Fault("not-a-file", noPlace(shown), "Not a file", fmt.Sprintf(
			"Found something that is neither a file nor a folder. Name the file or folder of the %s.", what))
	}
	file, err := fsys.Open(name)
	if err != nil {
		return nil, unreadable(shown, what, err)
	}
	defer file.Close()
	data, err := io.ReadAll(io.LimitReader(file, LargestFile+1))
	if err != nil {
		return nil, unreadable(shown, what, err)
	}
	return data, nil
}

// noPlace is the range of a file or folder that cannot be read and so has no place to point
// at: its name alone.
func noPlace(name string) hcl.Range { return hcl.Range{Filename: name} }

// unreadable is the fault for a file or folder that cannot be opened or read.
func unreadable(shown, what string, err error) *hcl.Diagnostic {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Fault("no-such-file", noPlace(shown), "No such file", fmt.Sprintf(
			"Found no file or folder %s. Look at the spelling, and name the file or folder of the %s.", Quote(shown), what))
	case errors.Is(err, fs.ErrPermission):
		return Fault("unreadable", noPlace(shown), "File not readable", fmt.Sprintf(
			"Found %s, but may not read it. Give yourself the right to read it.", Quote(shown)))
	}
	// The path in the error is one of this machine; only the reason is told.
	var inPath *fs.PathError
	if errors.As(err, &inPath) {
		err = inPath.Err
	}
	return Fault("unreadable", noPlace(shown), "File not readable", fmt.Sprintf(
		"%s cannot be read: %v. Name the file or folder of the %s.", Quote(shown), err, what))
}
