package vehicle

import (
	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// Source is one file of a build sheet, a rulebook or the vocabulary.
type Source struct {
	Name  string // slash path as it is shown to the user
	Bytes []byte // as read; ranges count bytes from its start, a byte order mark included
	Body  *hclsyntax.Body
}

// ParseSource reads one file. name is the slash path to show. The bytes are guarded
// before the parser sees them: at most 1 MB, UTF-8, no control characters, brackets and
// signs nested at most 100 deep, exponents of numbers within ±30; without that a short file
// could end the process. The source is nil when the file cannot be used at all. Where it is
// not, its body is whole, even when there are faults (a name given twice in one block).
func ParseSource(name string, data []byte) (*Source, hcl.Diagnostics) {
	if faults := guardBytes(name, data); faults.HasErrors() {
		return nil, sayHidden(faults)
	}
	file, found := hclsyntax.ParseConfig(data, name, hcl.InitialPos)
	source := &Source{Name: name, Bytes: data, Body: file.Body.(*hclsyntax.Body)}
	faults, usable := rewordSyntax(source, found)
	if !usable {
		return nil, sayHidden(faults)
	}
	return source, faults
}
