package quantity

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestUsualUnits(t *testing.T) {
	for dimension, name := range usualUnits {
		unit := UsualUnit(dimension)
		require.NotEqual(t, Unit{}, unit, name)
		require.Equal(t, dimension, unit.Dimension(), name)
	}
	require.Equal(t, Unit{}, UsualUnit(Plain))
	require.Equal(t, Unit{}, UsualUnit(Dimension{Length: 9}))
}
