package wants

import (
	"testing"
	"testing/fstest"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"
)

// fault makes a fault as a reader of files would.
func fault(line, column int, code, detail string) *hcl.Diagnostic {
	at := hcl.Range{Filename: "a.hcl", Start: hcl.Pos{Line: line, Column: column}}
	return &hcl.Diagnostic{Severity: hcl.DiagError, Summary: "Wrong", Detail: detail, Subject: &at, Extra: code}
}

func TestAnnouncedFaultsAreRead(t *testing.T) {
	text := "a = 1 # want 5 one \"Wrong: it is\" 7 two `x\\.y`\r\n# warn@+1 1 three \"\"\nb = 2\n# want nothing here\n"
	read := Read(t, "a.hcl", []byte(text))
	require.Len(t, read, 3)
	require.Equal(t, `a.hcl:1:5: one "Wrong: it is"`, read[0].String())
	require.Equal(t, `a.hcl:1:7: two "x\\.y"`, read[1].String())
	require.Equal(t, `a.hcl:3:1: three ""`, read[2].String())
	require.Equal(t, hcl.DiagWarning, read[2].Severity)
}

func TestAllFilesOfAFolderAreRead(t *testing.T) {
	folder := fstest.MapFS{
		"f/a.hcl":   {Data: []byte("# want 1 one \"\"\n")},
		"f/b.csv":   {Data: []byte("# want 1 two \"\"\n")},
		"f/g/c.hcl": {Data: []byte("# want 1 three \"\"\n")},
	}
	require.Len(t, ReadAll(t, folder, "f", "shown"), 2)
	require.Equal(t, "shown/b.csv", ReadAll(t, folder, "f", "shown")[1].File)
	require.Equal(t, "x.hcl", ReadAll(t, folder, "f/a.hcl", "x.hcl")[0].File)
}

func TestFoundAndAnnouncedAreComparedBothWays(t *testing.T) {
	announced := Read(t, "a.hcl", []byte("a # want 5 one \"it is\" 5 one \"it was\"\n"))
	require.Empty(t, Compare(announced, hcl.Diagnostics{fault(1, 5, "one", "it was"), fault(1, 5, "one", "it is")}))
	for name, found := range map[string]*hcl.Diagnostic{
		"line": fault(2, 5, "one", "it is"), "column": fault(1, 6, "one", "it is"),
		"code": fault(1, 5, "two", "it is"), "message": fault(1, 5, "one", "there is"),
	} {
		require.Len(t, Compare(announced[:1], hcl.Diagnostics{found}), 2, "another %s", name)
	}
	require.Len(t, Compare(announced, hcl.Diagnostics{fault(1, 5, "one", "it is")}), 1, "one is found, two are announced")
	require.Len(t, Compare(announced[:1], hcl.Diagnostics{fault(1, 5, "one", "it is"), fault(1, 5, "one", "it is")}), 1)
	warning := fault(1, 5, "one", "it is")
	warning.Severity = hcl.DiagWarning
	require.Len(t, Compare(announced[:1], hcl.Diagnostics{warning}), 2, "a warning is no fault")
}
