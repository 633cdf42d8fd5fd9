package examples_test

import (
	"flag"
	"io/fs"
	"os"
	"path"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/examples"
	"gapsheet/rules"
)

var update = flag.Bool("update", false, "write what both editions have in common into the edition of 2028")

// printedAnew are the files of the edition of 2028 that are its own. All others are those of
// 2027, which is where they are changed.
var printedAnew = map[string]bool{
	"00_book.hcl": true, "06_feet.hcl": true, "08_harnesses.hcl": true, "90_worked_cases.hcl": true,
}

// A club prints its whole book anew; what it did not change is the same word for word.
func TestEditionsHaveOneSource(t *testing.T) {
	entries, err := fs.ReadDir(examples.Files(), examples.Rulebook)
	require.NoError(t, err)
	next, err := fs.ReadDir(examples.Files(), examples.NextBook)
	require.NoError(t, err)
	require.Len(t, next, len(entries))
	for _, entry := range entries {
		name := entry.Name()
		if printedAnew[name] {
			continue
		}
		data, err := fs.ReadFile(examples.Files(), path.Join(examples.Rulebook, name))
		require.NoError(t, err)
		if *update {
			require.NoError(t, os.WriteFile(path.Join(examples.NextBook, name), data, 0o666))
			continue
		}
		copied, err := fs.ReadFile(examples.Files(), path.Join(examples.NextBook, name))
		require.NoError(t, err)
		require.Equal(t, string(data), string(copied), "%s: go test ./examples -update", name)
	}
}

// wording is what a clause says, apart from where it stands.
type wording struct {
	title, text, applies, where, demand, asAt, rectify string
	period                                             rules.Period
}

func wordings(b *rules.Rulebook) map[string][]wording {
	all := map[string][]wording{}
	source := func(f *rules.Formula) string {
		if f == nil {
			return ""
		}
		return f.Source
	}
	for _, chapter := range b.Chapters {
		for _, c := range chapter.Clauses {
			all[c.Number] = append(all[c.Number], wording{c.Title, c.Text, source(c.Applies), source(c.Where),
				source(c.Demand), source(c.AsAt), c.Rectify, c.Period})
		}
	}
	return all
}

// The edition of 2028 says one thing that is new, and says 8.2 as the bulletin of 2027 does.
func TestWhatIsNewIn2028(t *testing.T) {
	book, _ := rulebook(t)
	after, _ := loadEdition(t, examples.NextBook)
	require.Equal(t, book.Name, after.Name)
	require.Equal(t, book.Period.Until+1, after.Period.From, "one edition follows the other")
	then, now := wordings(book), wordings(after)
	require.Len(t, now, len(then))
	var changed []string
	for _, chapter := range after.Chapters {
		for _, c := range chapter.Clauses {
			is, was := now[c.Number][0], then[c.Number][0]
			is.period, was.period = rules.Always, rules.Always
			if len(then[c.Number]) > 1 || is != was {
				changed = append(changed, c.Number)
			}
		}
	}
	require.Equal(t, []string{"6.7", "8.2"}, changed)
	require.Equal(t, "cage.built", now["6.7"][0].asAt)
	bulletin := then["8.2"][1]
	require.Equal(t, dayOf(t, "2027-07-01"), bulletin.period.From)
	bulletin.period = now["8.2"][0].period
	require.Equal(t, bulletin, now["8.2"][0])
}
