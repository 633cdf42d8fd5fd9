package rules

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// TestStandardsInAFileOfTheirOwn holds that a club can keep its equipment standards in one
// file of the folder, and write them in formulas, tables and worked cases.
func TestStandardsInAFileOfTheirOwn(t *testing.T) {
	folder := fstest.MapFS{
		"book/standards.hcl": {Data: []byte("standard \"SFI 16.7\" {\n  list     = \"harness standard\"\n  synonyms = [\"16.7\"]\n  means    = \"the one after 16.6\"\n}\n")},
		"book/a_harness.hcl": {Data: []byte(`rulebook "Marram" {
  edition = "2027"
}
table "lives" {
  columns = { standard = "harness.standard", years = "count" }
  rows    = [["16.7", 3], ["SFI 16.1", 2]]
}
chapter "4" {
  title = "Harness"
  clause "4.1" {
    title   = "Standard"
    concern = "safety"
    across  = "harness in harnesses"
    demand  = "harness.standard in ['16.7', 'SFI 16.1'] or harness.standard startsWith 'SFI 16'"
  }
}
worked_case "new standard" {
  clause = "4.1"
  answer = "meets"
  reason = "listed"
  as_built {
    harness "driver" { standard = "SFI 16.7" }
  }
}
`)},
	}
	book, faults := Load(folder, "book", "book", vehicle.BuiltIn())
	require.Empty(t, describe(faults))
	list := book.Vocabulary.Type("harness").Particular("standard").Choices
	require.Equal(t, "SFI 16.7", list.Choices[list.Find("16.7")].Value)
	require.Equal(t, list.Find("SFI 16.7"), book.Tables[0].Rows[0][0].Choice)
	alone, _ := Load(fstest.MapFS{"book/a_harness.hcl": folder["book/a_harness.hcl"]}, "book", "book", vehicle.BuiltIn())
	require.Nil(t, alone, "without the file nobody knows the standard")
}
