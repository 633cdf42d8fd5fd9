package vehicle

import (
	"strconv"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
)

// Code names one kind of fault. It is stable: whatever steers on a fault steers on its
// code, never on its wording.
type Code string

// Fault makes a diagnostic for a mistake in a file: summary says what is wrong in a few
// words, detail what was found and what to write instead, in sentences. It points at at
// and carries code.
func Fault(code Code, at hcl.Range, summary, detail string) *hcl.Diagnostic {
	return &hcl.Diagnostic{
		Severity: hcl.DiagError,
		Summary:  summary,
		Detail:   detail,
		Subject:  &at,
		Extra:    code,
	}
}

// Warning makes a diagnostic like Fault for something that does not stop the run.
func Warning(code Code, at hcl.Range, summary, detail string) *hcl.Diagnostic {
	d := Fault(code, at, summary, detail)
	d.Severity = hcl.DiagWarning
	return d
}

// CodeOf returns the code of a diagnostic made by Fault or Warning, "" for any other.
func CodeOf(d *hcl.Diagnostic) Code {
	code, _ := d.Extra.(Code)
	return code
}

// quotedLimit is how many characters of an author's text a message repeats.
const quotedLimit = 60

// Quote repeats a text of an author in a message: in double quotes, control characters
// spelt out, cut with an ellipsis after 60 characters.
func Quote(text string) string {
	if utf8.RuneCountInString(text) > quotedLimit {
		text = string([]rune(text)[:quotedLimit-1]) + "…"
	}
	return strconv.Quote(text)
}
