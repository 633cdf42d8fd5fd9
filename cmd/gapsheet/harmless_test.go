package main

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// firstSteering names the first character of an output that could steer a terminal, "" when
// there is none.
func firstSteering(output string) string {
	if !utf8.ValidString(output) {
		return "bytes that are not UTF-8"
	}
	for _, r := range strings.ReplaceAll(output, "\n", "") {
		if r != '\u200c' && r != '\u200d' && unicode.In(r, unicode.Cc, unicode.Cf, unicode.Zl, unicode.Zp) {
			return fmt.Sprintf("U+%04X", r)
		}
	}
	return ""
}
