package quantity

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"
)

// benchRanges are readings of everyday size with a tolerance of a thousandth.
func benchRanges(seed uint64) (ranges [256]Range) {
	source := rand.New(rand.NewPCG(seed, 2))
	for i := range ranges {
		x := source.Float64()*4 + 0.001
		ranges[i] = Range{x, x * 1.001}
	}
	return ranges
}

var (
	sinkRange Range
	sinkTruth Truth
)

func TestArithmeticAndComparisonsAllocateNothing(t *testing.T) {
	a, b := benchRanges(1)[0], benchRanges(2)[0]
	length := Tolerance{1e-9, 1e-9}
	require.Zero(t, testing.AllocsPerRun(100, func() {
		sinkRange = a.Plus(b).Minus(b).Times(b).Over(b).Hypot(b).Sqrt().Power(3).Sin().Cos().Tan().Round(length)
		sinkRange = Atan2(a, b).Hull(length.Band(a.Low))
		sinkTruth = IsAtLeast(a, b, length).And(IsMoreThan(a, b, length)).Or(IsEqual(a, b, length).Not())
	}))
}

func BenchmarkRanges(b *testing.B) {
	left, right := benchRanges(1), benchRanges(2)
	length := Tolerance{1e-9, 1e-9}
	pairs := []struct {
		name string
		of   func(a, b Range) Range
	}{
		{"nothing", func(a, _ Range) Range { return a }},
		{"plus", Range.Plus}, {"minus", Range.Minus}, {"times", Range.Times}, {"over", Range.Over},
		{"min", Range.Min}, {"max", Range.Max}, {"hull", Range.Hull}, {"hypot", Range.Hypot}, {"atan2", Atan2},
		{"negate", func(a, _ Range) Range { return a.Negate() }},
		{"abs", func(a, _ Range) Range { return a.Abs() }},
		{"square", func(a, _ Range) Range { return a.Square() }},
		{"sqrt", func(a, _ Range) Range { return a.Sqrt() }},
		{"power 3", func(a, _ Range) Range { return a.Power(3) }},
		{"power -2", func(a, _ Range) Range { return a.Power(-2) }},
		{"floor", func(a, _ Range) Range { return a.Floor(length) }},
		{"ceil", func(a, _ Range) Range { return a.Ceil(length) }},
		{"round", func(a, _ Range) Range { return a.Round(length) }},
		{"sin", func(a, _ Range) Range { return a.Sin() }},
		{"cos", func(a, _ Range) Range { return a.Cos() }},
		{"tan", func(a, _ Range) Range { return a.Tan() }},
		{"sin exact", func(a, _ Range) Range { return Exactly(a.Low).Sin() }},
		{"sin of 1e300", func(a, _ Range) Range { return Exactly(a.Low * 1e300).Sin() }},
		{"atan2 exact", func(a, b Range) Range { return Atan2(Exactly(a.Low), Exactly(b.Low)) }},
		{"hypot exact", func(a, b Range) Range { return Exactly(a.Low).Hypot(Exactly(b.Low)) }},
		{"band", func(a, _ Range) Range { return length.Band(a.Low) }},
	}
	for _, pair := range pairs {
		b.Run(pair.name, func(b *testing.B) {
			b.ReportAllocs()
			for i := 0; b.Loop(); i++ {
				sinkRange = pair.of(left[i&255], right[i&255])
			}
		})
	}
}

func BenchmarkComparisons(b *testing.B) {
	left, right := benchRanges(1), benchRanges(2)
	length := Tolerance{1e-9, 1e-9}
	b.Run("at least", func(b *testing.B) {
		b.ReportAllocs()
		for i := 0; b.Loop(); i++ {
			sinkTruth = IsAtLeast(left[i&255], right[i&255], length)
		}
	})
	b.Run("more than", func(b *testing.B) {
		b.ReportAllocs()
		for i := 0; b.Loop(); i++ {
			sinkTruth = IsMoreThan(left[i&255], right[i&255], length)
		}
	})
	b.Run("equal", func(b *testing.B) {
		b.ReportAllocs()
		for i := 0; b.Loop(); i++ {
			sinkTruth = IsEqual(left[i&255], right[i&255], length)
		}
	})
	b.Run("plus called directly", func(b *testing.B) {
		for i := 0; b.Loop(); i++ {
			sinkRange = left[i&255].Plus(right[i&255])
		}
	})
	b.Run("times called directly", func(b *testing.B) {
		for i := 0; b.Loop(); i++ {
			sinkRange = left[i&255].Times(right[i&255])
		}
	})
}
