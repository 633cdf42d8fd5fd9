package quantity

import (
	"math"
	"testing"
	"unicode/utf8"

	"github.com/stretchr/testify/require"
)

// requireFault checks that a fault can be shown beside the text it is about.
func requireFault(t *testing.T, text string, fault *Fault) {
	t.Helper()
	require.True(t, 0 <= fault.From && fault.From <= fault.To && fault.To <= utf8.RuneCountInString(text), "%q: %+v", text, fault)
	require.NotEmpty(t, fault.Code)
	requireSentences(t, fault)
}

// FuzzParseFigure: whatever is written, reading it as a figure, a size or a unit gives a
// sound answer or a fault inside the text, and a figure prints as one that reads back.
func FuzzParseFigure(f *testing.F) {
	f.Fuzz(func(t *testing.T, text string) {
		figure, fault := ParseFigure(text)
		if fault != nil {
			requireFault(t, text, fault)
			require.Equal(t, Figure{}, figure)
		} else {
			requireSound(t, figure)
			again, fault := ParseFigure(figure.String())
			require.Nil(t, fault, "%q prints as %q: %v", text, figure, fault)
			require.Equal(t, figure, again)
			require.NotEmpty(t, figure.Range.In(figure.Unit, figure.Decimals))
			require.NotEmpty(t, figure.Range.In(figure.Unit, -1))
		}
		outside, wall, fault := ParseSize(text)
		if fault != nil {
			requireFault(t, text, fault)
		} else {
			requireSound(t, outside)
			requireSound(t, wall)
			require.Greater(t, outside.Reading, 2*wall.Reading)
		}
		unit, err := FindUnit(text)
		if err != nil {
			requireFault(t, text, err.(*Fault))
			return
		}
		again, err := FindUnit(unit.Name())
		require.NoError(t, err, text)
		require.Equal(t, unit, again)
		require.Positive(t, unit.Factor().Sign())
		require.False(t, math.IsNaN(unit.FromSI(1)))
	})
}

// FuzzParseDays: whatever is written, reading it as a date gives days that print as what
// was written, or a fault inside the text.
func FuzzParseDays(f *testing.F) {
	f.Fuzz(func(t *testing.T, text string) {
		days, fault := ParseDays(text)
		if fault != nil {
			requireFault(t, text, fault)
			require.Equal(t, DayRange{}, days)
			return
		}
		require.LessOrEqual(t, days.From, days.To)
		require.Equal(t, text, days.String())
		require.True(t, days.From.Year() >= 1900 && days.To.Year() <= 2200)
	})
}
