package vehicle

import (
	"bytes"
	"fmt"
	"strconv"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
	"github.com/hashicorp/hcl/v2"
)

// Limits of one file. They are far above what anyone writes and far below what could
// exhaust the parser, which goes as deep as the file does.
const (
	LargestFile = 1 << 20 // bytes
	longestText = 1 << 16 // bytes of one text
	mostPieces  = 4000    // lines of one text, signs $ and % counted like lines
	deepest     = 100     // brackets open at once, or signs in one value
	longest     = 60      // characters of a plain number
	widestPower = 30      // exponent of a plain number
)

// guardBytes looks at a file before the parser does.
func guardBytes(name string, data []byte) hcl.Diagnostics {
	if len(data) > LargestFile {
		return hcl.Diagnostics{Fault("file-too-large", wholeFile(name), "File too large", fmt.Sprintf(
			"Found more than %d bytes (1 MB), which is the most that a file may have. Split it into several files in one folder.", LargestFile))}
	}
	if fault := guardCharacters(name, data); fault != nil {
		return hcl.Diagnostics{fault}
	}
	return guardShape(name, data)
}

// wholeFile is the range that stands for a whole file: its first character.
func wholeFile(name string) hcl.Range {
	return hcl.Range{Filename: name, Start: hcl.InitialPos, End: hcl.InitialPos}
}

// guardCharacters wants UTF-8 without control characters.
func guardCharacters(name string, data []byte) *hcl.Diagnostic {
	if bytes.HasPrefix(data, []byte("\xff\xfe")) || bytes.HasPrefix(data, []byte("\xfe\xff")) {
		return Fault("not-utf8", wholeFile(name), "Not a UTF-8 file",
			"Found a file in UTF-16. Save it as UTF-8 in the editor and try again.")
	}
	for at := 0; at < len(data); {
		if c := data[at]; ' ' <= c && c < 0x7f || c == '\n' || c == '\t' || c == '\r' && at+1 < len(data) && data[at+1] == '\n' {
			at++
			continue
		}
		r, size := utf8.DecodeRune(data[at:])
		switch {
		case data[at] == 0:
			return Fault("binary-file", placeAt(name, data, at, 1), "Not a text file",
				"Found a zero byte, which no text file holds. Name a file written in a text editor.")
		case r == utf8.RuneError && size == 1:
			return Fault("not-utf8", placeAt(name, data, at, 1), "Not a UTF-8 file", fmt.Sprintf(
				"Found the byte 0x%02X, which is not valid UTF-8. Save the file as UTF-8 in the editor and try again.", data[at]))
		case isSteering(r):
			return Fault("control-character", placeAt(name, data, at, size), "A control character in the file",
				fmt.Sprintf("Found the invisible character U+%04X. Take it out.", r))
		}
		at += size
	}
	return nil
}

// placeAt is the range of size bytes at offset at. Columns count grapheme clusters of the
// line before it.
func placeAt(name string, data []byte, at, size int) hcl.Range {
	lineStart := bytes.LastIndexByte(data[:at], '\n') + 1
	before := bytes.TrimPrefix(data[lineStart:at], []byte("\ufeff"))
	clusters, _ := textseg.TokenCount(before, textseg.ScanGraphemeClusters)
	start := hcl.Pos{Line: bytes.Count(data[:at], []byte("\n")) + 1, Column: clusters + 1, Byte: at}
	end := start
	end.Column, end.Byte = start.Column+1, at+size
	return hcl.Range{Filename: name, Start: start, End: end}
}

// guardNumber looks at the plain number that data begins with at at and returns where it
// ends. What may belong to a number is taken as the parser takes it.
func guardNumber(name string, data []byte, at int) (end int, fault *hcl.Diagnostic) {
	end = at
	power := ""
	for end < len(data) {
		c := data[end]
		if c >= '0' && c <= '9' || c == '.' {
			end++
			continue
		}
		if c|0x20 != 'e' {
			break
		}
		digits := end + 1
		if digits < len(data) && (data[digits] == '+' || data[digits] == '-') {
			digits++
		}
		if digits >= len(data) || data[digits] < '0' || data[digits] > '9' {
			break
		}
		for end = digits; end < len(data) && data[end] >= '0' && data[end] <= '9'; end++ {
		}
		power = string(data[digits:end])
	}
	if n, err := strconv.Atoi(power); power != "" && (err != nil || n > widestPower) {
		return end, Fault("number-out-of-bounds", placeAt(name, data, at, end-at), "A number out of all bounds", fmt.Sprintf(
			"Found %s. Powers of ten go from -%d to %d. Write the figure with a unit that suits it.", Quote(string(data[at:end])), widestPower, widestPower))
	}
	if end-at > longest {
		return end, Fault("number-out-of-bounds", placeAt(name, data, at, end-at), "A number out of all bounds", fmt.Sprintf(
			"Found a number of %d characters; %d are enough for any figure. Write it shorter.", end-at, longest))
	}
	return end, nil
}
