package vehicle

import (
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// paperCase is where evidence files are looked for, and nowhere else.
type paperCase struct {
	folder  fs.FS
	dir     string // the sheet's folder in folder
	further fs.FS  // the folder of papers that the user named, nil for none
	shown   string // and how messages speak of it
}

// paperKey is what no two papers of a part have in common.
type paperKey struct {
	part        *Part
	label, file string // label folded
}

// evidence reads an evidence block: a paper or photo that shows something of a part.
func (r *sheetReader) evidence(b *opened, block *hclsyntax.Block) {
	k := &keys{source: b.source, block: block, what: "evidence"}
	defer func() { r.faults = append(r.faults, k.faults...) }()
	label, ok := k.label(`"material certificate"`)
	if ok {
		k.what += " " + Quote(label.text)
	}
	made := Evidence{Label: label.text, Range: HeaderOf(block)}
	if dated := k.text("dated"); dated.text != "" {
		days, fault := quantity.ParseDays(dated.text)
		if fault != nil {
			k.faults = append(k.faults, FigureFault(fault, dated.place))
		}
		made.Dated, made.HasDate = days, fault == nil
	}
	if until := k.day("valid_until"); until.is {
		made.ValidUntil, made.HasEnd = until.day, true
		if made.HasDate && until.day < made.Dated.From {
			k.fault("days-order", until.all, "Days out of order", fmt.Sprintf(
				"Found %s as valid_until of the %s, which is dated %s. Look at both days.", until.day, k.what, made.Dated))
		}
	}
	if file := k.text("file"); file.text != "" && k.checkPath(file) {
		made.File = path.Clean(file.text)
		made.Hash, made.Found = r.lookFor(k, file)
	}
	if note := k.value("note"); note != nil {
		made.Note = k.prose("note", note)
	}
	k.done([]string{"file", "dated", "valid_until", "note"}, "evidence")
	key := paperKey{b.part, FoldText(made.Label), made.File}
	if first, twice := r.papers[key]; twice {
		k.faults = append(k.faults, SaidTwice(made.Range, k.what, first))
		return
	}
	r.papers[key] = made.Range
	b.part.Evidence = append(b.part.Evidence, made)
}

// checkPath reports a path that is not one inside a folder.
func (k *keys) checkPath(file told) bool {
	advice := ""
	switch {
	case strings.Contains(file.text, `\`):
		advice = "Write / between folders: " + Quote(strings.ReplaceAll(file.text, `\`, "/")) + "."
	case strings.HasPrefix(file.text, "/") || len(file.text) > 1 && file.text[1] == ':':
		advice = `Write the path as seen from the sheet's folder, as in "papers/tube-A.pdf".`
	case slices.Contains(strings.Split(file.text, "/"), ".."):
		advice = "It leads out of the sheet's folder. Put the file inside, or name its folder with --papers."
	default:
		return true
	}
	k.fault("evidence-path", file.all, "Not a path inside the sheet's folder", fmt.Sprintf("Found %s as file of the %s. %s", Quote(file.text), k.what, advice))
	return false
}

// lookFor reports whether an evidence file is there, with its SHA-256, and warns where it is
// not.
func (r *sheetReader) lookFor(k *keys, file told) (hash string, found bool) {
	if r.folder == nil {
		return "", false
	}
	name := path.Clean(file.text)
	folder, inFolder := r.folder.folder, path.Join(r.folder.dir, name)
	info, err := fs.Stat(folder, inFolder)
	where := "the sheet's folder"
	if err != nil && r.folder.further != nil {
		where += " nor in " + Quote(r.folder.shown)
		if further, second := fs.Stat(r.folder.further, name); second == nil {
			folder, inFolder, info, err = r.folder.further, name, further, nil
		}
	}
	reason := ""
	switch {
	case err == nil && info.Mode().IsRegular():
		if hash, err = hashFile(folder, inFolder); err == nil {
			return hash, true
		}
		reason = "it cannot be read"
	case err == nil:
		reason = "it is a folder or something else that is no file"
	case errors.Is(err, fs.ErrNotExist):
		reason = "there is no such file in " + where
	default:
		reason = "it cannot be looked at, or leads out of the folder by a symbolic link"
	}
	k.faults = append(k.faults, Warning("evidence-missing", file.all, "Evidence that is not there",
		fmt.Sprintf("Found %s as file of the %s, but %s. Put it there, or mend the path.", Quote(file.text), k.what, reason)))
	return "", false
}

// hashFile is the SHA-256 over the bytes of a file, in hex, whatever its size.
func hashFile(folder fs.FS, name string) (string, error) {
	file, err := folder.Open(name)
	if err != nil {
		return "", err
	}
	defer file.Close()
	sum := sha256.New()
	if _, err := io.Copy(sum, file); err != nil {
		return "", err
	}
	return hex.EncodeToString(sum.Sum(nil)), nil
}
