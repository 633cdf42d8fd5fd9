package vehicle

import (
	"bytes"
	"sort"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/apparentlymart/go-textseg/v15/textseg"
	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"golang.org/x/text/unicode/norm"
)

// PositionMap leads from the characters of a decoded text back to the file it stands in.
// The decoded text has its escapes undone, the indent of a heredoc cut and is in Unicode
// NFC, so an offset in it says nothing about the file by itself.
type PositionMap struct {
	source  *Source
	starts  []int     // byte offset in the file where each rune of the text begins
	ends    []int     // and where it ends
	anchors []hcl.Pos // places whose line and column are known, in file order, at least one
	empty   int       // byte offset of the place of an empty text
}

// Range returns the place in the file of the runes from to to (exclusive) of the text.
// Offsets outside the text are taken as its ends, and to before from as from. An empty
// range is a place: before the rune at from, or after the last one.
func (m *PositionMap) Range(from, to int) hcl.Range {
	from = min(max(from, 0), len(m.starts))
	to = min(max(to, from), len(m.starts))
	start := m.empty
	switch {
	case from < len(m.starts):
		start = m.starts[from]
	case from > 0:
		start = m.ends[from-1]
	}
	end := start
	if to > from {
		end = m.ends[to-1]
	}
	return hcl.Range{Filename: m.source.Name, Start: m.place(start), End: m.place(end)}
}

// place is the line and column of a byte of the file at or after the first anchor.
// Columns count grapheme clusters, as everywhere in hcl, and as there a token boundary
// always ends a cluster.
func (m *PositionMap) place(offset int) hcl.Pos {
	next := sort.Search(len(m.anchors), func(i int) bool { return m.anchors[i].Byte > offset })
	at := m.anchors[max(next-1, 0)]
	for at.Byte < offset {
		advance, cluster, _ := textseg.ScanGraphemeClusters(m.source.Bytes[at.Byte:offset], true)
		if advance == 0 {
			break
		}
		at.Byte += advance
		if cluster[len(cluster)-1] == '\n' {
			at.Line, at.Column = at.Line+1, 1
		} else {
			at.Column++
		}
	}
	return at
}

// mappedText collects a decoded text and the place of each of its runes.
type mappedText struct {
	text strings.Builder
	at   *PositionMap
}

// add appends decoded, written in the file from byte start to byte end. All its runes get
// that whole place.
func (t *mappedText) add(decoded string, start, end int) {
	t.text.WriteString(decoded)
	for range decoded {
		t.at.starts = append(t.at.starts, start)
		t.at.ends = append(t.at.ends, end)
	}
}

// addPlain appends text that is written in the file as it is, from byte start on.
func (t *mappedText) addPlain(raw []byte, start int) {
	for len(raw) > 0 {
		_, size := utf8.DecodeRune(raw)
		t.add(string(raw[:size]), start, start+size)
		raw, start = raw[size:], start+size
	}
}

// compose brings the text into NFC. Runes that came about by composing or reordering get
// the place of the whole sequence they were made of.
func (t *mappedText) compose() string {
	text := t.text.String()
	if norm.NFC.IsNormalString(text) {
		return text
	}
	m := t.at
	starts, ends := make([]int, 0, len(m.starts)), make([]int, 0, len(m.ends))
	var composed strings.Builder
	for rest, runes := text, 0; rest != ""; {
		size := norm.NFC.NextBoundaryInString(rest, true)
		piece, count := rest[:size], utf8.RuneCountInString(rest[:size])
		result := norm.NFC.String(piece)
		composed.WriteString(result)
		if result == piece {
			starts = append(starts, m.starts[runes:runes+count]...)
			ends = append(ends, m.ends[runes:runes+count]...)
		} else {
			for range result {
				starts = append(starts, m.starts[runes])
				ends = append(ends, m.ends[runes+count-1])
			}
		}
		rest, runes = rest[size:], runes+count
	}
	m.starts, m.ends = starts, ends
	return composed.String()
}

// addToken appends a literal token, of which the first cut bytes are indent to leave out.
func (t *mappedText) addToken(token hclsyntax.Token, cut int) {
	t.at.anchors = append(t.at.anchors, token.Range.Start)
	raw, start := token.Bytes[cut:], token.Range.Start.Byte+cut
	for len(raw) > 0 {
		plain := bytes.IndexAny(raw, `\$%`)
		if plain < 0 {
			plain = len(raw)
		}
		t.addPlain(raw[:plain], start)
		raw, start = raw[plain:], start+plain
		if len(raw) == 0 {
			return
		}
		size, decoded := unescape(raw, token.Type == hclsyntax.TokenQuotedLit)
		t.add(decoded, start, start+size)
		raw, start = raw[size:], start+size
	}
}

// unescape reads what raw begins with, one of \ $ %: how many bytes it takes and what it
// stands for. The parser has refused every escape that is not one.
func unescape(raw []byte, quoted bool) (size int, decoded string) {
	if raw[0] != '\\' {
		if len(raw) >= 3 && raw[1] == raw[0] && raw[2] == '{' {
			return 3, string(raw[1:3])
		}
		return 1, string(raw[:1])
	}
	if !quoted || len(raw) < 2 {
		return 1, `\`
	}
	switch raw[1] {
	case 'n':
		return 2, "\n"
	case 'r':
		return 2, "\r"
	case 't':
		return 2, "\t"
	case 'u':
		return unescapeHex(raw, 6)
	case 'U':
		return unescapeHex(raw, 10)
	}
	return 2, string(raw[1:2])
}

// unescapeHex reads \uXXXX or \UXXXXXXXX, size bytes in all.
func unescapeHex(raw []byte, size int) (int, string) {
	size = min(size, len(raw))
	var value rune
	for _, c := range raw[2:size] {
		digit := strings.IndexByte("0123456789abcdef", c|0x20)
		value = value<<4 | rune(max(digit, 0))
	}
	return size, string(value)
}

// indents returns for each literal token of a heredoc how many bytes of indent to leave
// out: that of its least indented line, as <<- wants it. Blank lines do not count and keep
// their blanks.
func indents(tokens []hclsyntax.Token) []int {
	cuts := make([]int, len(tokens))
	least, lineStart := -1, true
	var lines []int
	for i, token := range tokens {
		if lineStart {
			blanks := len(token.Bytes) - len(bytes.TrimLeftFunc(token.Bytes, unicode.IsSpace))
			if blanks < len(token.Bytes) || !bytes.HasSuffix(token.Bytes, []byte("\n")) {
				lines = append(lines, i)
				if count, _ := textseg.TokenCount(token.Bytes[:blanks], textseg.ScanGraphemeClusters); least < 0 || count < least {
					least = count
				}
			}
		}
		lineStart = bytes.HasSuffix(token.Bytes, []byte("\n"))
	}
	for _, i := range lines {
		for range least {
			advance, _, _ := textseg.ScanGraphemeClusters(tokens[i].Bytes[cuts[i]:], true)
			cuts[i] += advance
		}
	}
	return cuts
}
