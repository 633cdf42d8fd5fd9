package engine

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The next label that tells an end has to tell one behind the season, which lies ahead of the
// event that is missed.
func TestEarliestEndOfALabel(t *testing.T) {
	for stated, want := range map[string]string{"2027-02": "2028-02", "2026": "2028", "2027-06-30": "2028-02-12"} {
		sheet := strings.Replace(beltAndBottle, "2031", stated, 1)
		r := seasonOf(t, threeEvents, sheet, "2027-01-10", datedBook)
		found := false
		for _, d := range r.Renew {
			if d.Name == "seat driver" {
				found = true
				require.True(t, d.HasEarliest, stated)
				require.Equal(t, want, d.Earliest.String(), stated)
			}
		}
		require.True(t, found, stated)
	}
}
