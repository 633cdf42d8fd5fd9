package quantity

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// Kleene's strong tables (Introduction to Metamathematics, 1952, § 64).
func TestTruthTables(t *testing.T) {
	truths := []Truth{No, Open, Yes}
	and := [][]Truth{{No, No, No}, {No, Open, Open}, {No, Open, Yes}}
	or := [][]Truth{{No, Open, Yes}, {Open, Open, Yes}, {Yes, Yes, Yes}}
	not := []Truth{Yes, Open, No}
	for i, a := range truths {
		require.Equal(t, not[i], a.Not())
		for j, b := range truths {
			require.Equal(t, and[i][j], a.And(b), "%v and %v", a, b)
			require.Equal(t, or[i][j], a.Or(b), "%v or %v", a, b)
		}
	}
	require.Equal(t, Yes, TruthOf(true))
	require.Equal(t, No, TruthOf(false))
	require.Equal(t, []string{"no", "open", "yes"}, []string{No.String(), Open.String(), Yes.String()})
}
