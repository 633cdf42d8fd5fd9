package rules

import (
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// BenchmarkCheck times reading and checking one formula, as gapsheet try --lines does it
// for every line; the goal is 25 microseconds for a short one.
func BenchmarkCheck(b *testing.B) {
	given := []GivenName{{"a", Type{Kind: Truth}}, {"x", Type{Kind: Number, Dimension: quantity.Length}}}
	base := testScope()
	for _, x := range []struct{ name, source string }{
		{"short", "a and x <= 5*mm"},
		{"long", "a ? (x >= 44.45*mm and x <= 2*inch) : all([1, 2, 3], # * x < 90*km/hour * 3*second) or not (x in [1*mm, 2*mm])"},
	} {
		for _, way := range []struct {
			name  string
			scope *Scope
		}{{"once", base.Quick(10_000)}, {"twice", base}} {
			b.Run(x.name+"/"+way.name, func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					tree, faults := CheckText(x.source, way.scope.WithGiven(given...), Type{Kind: Truth})
					require.NotNil(b, tree, faults)
				}
			})
		}
	}
}
