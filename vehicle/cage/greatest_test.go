package cage

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

// Two square bends 200 mm apart have room for 100 mm each; less where an end is nearer.
func TestTheGreatestRadiusThatFits(t *testing.T) {
	c := Course{Points: []Vector{{}, {Z: 1}, {X: 0.2, Z: 1}, {X: 0.2}}}
	require.InDelta(t, 0.1, c.GreatestRadius(), 1e-12)
	c.Radius = 0.1
	require.Empty(t, c.Check())
	c.Radius = 0.1001
	require.Equal(t, RadiusTooBig, c.Check()[0].Problem)
	c.Points[0].Z = 0.95
	require.InDelta(t, 0.05, c.GreatestRadius(), 1e-12)
	require.True(t, math.IsInf(Course{Points: c.Points[:2]}.GreatestRadius(), 1))
}
