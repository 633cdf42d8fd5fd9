package vehicle

import (
	"fmt"
	"io/fs"

	"github.com/hashicorp/hcl/v2"
)

// ReadBeside reads a text file that a sheet or rulebook names, such as a table in a file
// of its own. It holds to the limits of one file: at most 1 MB, UTF-8, no control
// characters. name is where it is in fsys, shown the slash path by which messages speak of
// it, what says what it is to be. A fault that is not in its text (no such file, not
// readable, too large) stands at named, where the author names the file.
func ReadBeside(fsys fs.FS, name, shown, what string, named hcl.Range) ([]byte, *hcl.Diagnostic) {
	data, fault := readBytes(fsys, name, shown, what)
	if fault == nil && len(data) > LargestFile {
		fault = Fault("file-too-large", named, "File too large", fmt.Sprintf(
			"Found more than %d bytes in %s, but a file may have at most that many (1 MB).", LargestFile, Quote(shown)))
	}
	if fault != nil {
		fault.Subject = &named
		return nil, fault
	}
	if fault := guardCharacters(shown, data); fault != nil {
		return nil, fault
	}
	return data, nil
}
