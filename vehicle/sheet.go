package vehicle

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// Sheet is a build sheet that was read without fault. It is not changed any more and may
// be used by several goroutines at once.
type Sheet struct {
	Name        string // path as it is shown, of the file or folder
	Root        *Part  // stands for the whole sheet; its lists are those of the car itself
	Instruments []*Instrument
	Logbook     *Logbook // the papers that travel with the car; never nil
	Clubs       []string // names of rulebooks for which club blocks stand in the sheet unread, as this vocabulary does not have them
	Sources     []*Source
	Vocabulary  *Vocabulary
	Hash        string // SHA-256 over the files in the order of their names, hex; "" for a scrap

	derivations []*Derivation // set once, when the sheet has been read
}

// Instrument is a measuring instrument that readings name.
type Instrument struct {
	Label     string
	Tolerance quantity.Figure // half the width on either side of a reading
	Note      string
	Range     hcl.Range // of the block's header
}

// Options is what Load needs to know beside the sheet.
type Options struct {
	Papers      fs.FS  // a further folder in which evidence files are looked for, nil for none
	PapersShown string // the slash path by which messages speak of it
	ClassGiven  bool   // the class comes from elsewhere, as from an event: one that the vocabulary does not have is passed over
}

// Load reads a build sheet: a file, or a folder whose *.hcl files are read as one, with
// exactly one car block. name is where it is in fsys, "." for fsys itself; shown is the
// slash path by which messages speak of it. What the sheet can say is in v.
//
// The sheet is nil when the diagnostics hold an error. They hold every fault that can be
// told in one run, in the order of the files. Warnings, such as an evidence file that is
// not there, come with a usable sheet. Evidence files are looked for in the folder of the
// sheet in fsys and in o.Papers, nowhere else; whether symbolic links can lead out of those
// is a matter of the file systems given: os.Root.FS does not follow one that does.
func Load(fsys fs.FS, name, shown string, v *Vocabulary, o Options) (*Sheet, hcl.Diagnostics) {
	sources, faults := ReadSources(fsys, name, shown, "build sheet")
	folder := name
	if info, err := fs.Stat(fsys, name); err == nil && !info.IsDir() {
		folder = path.Dir(name)
	}
	r := newSheetReader(shown, sources, v)
	r.folder = &paperCase{folder: fsys, dir: folder, further: o.Papers, shown: o.PapersShown}
	r.faults, r.classGiven = faults, o.ClassGiven
	r.whole = AllRead(sources, faults)
	if !r.isSheet() {
		return nil, r.faults
	}
	var pages []page
	for _, source := range sources {
		pages = append(pages, page{source, source.Body})
	}
	r.read(pages)
	r.wantCar(sources)
	return r.result(HashSources(sources))
}

// DecodeScrap reads a scrap of a build sheet that stands inside another file, such as a
// worked case of a rulebook. It is like a sheet, but needs no car, and evidence files are
// not looked for. The sheet is nil when the diagnostics hold an error.
func DecodeScrap(src *Source, body *hclsyntax.Body, v *Vocabulary) (*Sheet, hcl.Diagnostics) {
	r := newSheetReader(src.Name, []*Source{src}, v)
	r.whole, r.scrap = true, true
	r.read([]page{{src, body}})
	return r.result("")
}

// Car returns the car that the sheet is about; nil for a scrap without a car block.
func (s *Sheet) Car() *Part {
	if list := s.Root.List(s.Root.Type.PartNamed("car")); len(list.Parts) > 0 {
		return list.Parts[0]
	}
	return nil
}

// HashSources is HashFiles of files by their names without the folder.
func HashSources(sources []*Source) string {
	files := map[string][]byte{}
	for _, source := range sources {
		files[path.Base(source.Name)] = source.Bytes
	}
	return HashFiles(files)
}

// HashFiles is the SHA-256 over files, in hex: for each in the order of their names its
// name, its length and its bytes.
func HashFiles(files map[string][]byte) string {
	sum := sha256.New()
	for _, name := range slices.Sorted(maps.Keys(files)) {
		fmt.Fprintf(sum, "%s\n%d\n", name, len(files[name]))
		sum.Write(files[name])
	}
	return hex.EncodeToString(sum.Sum(nil))
}

// AllRead reports whether faults of reading left every file usable. Otherwise what is
// missing may stand in the file that could not be read.
func AllRead(sources []*Source, faults hcl.Diagnostics) bool {
	for _, fault := range faults {
		if !slices.ContainsFunc(sources, func(s *Source) bool { return s.Name == fault.Subject.Filename }) {
			return false
		}
	}
	return len(sources) > 0
}
