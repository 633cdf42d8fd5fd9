package quantity

import (
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

func TestDimensionsHaveNames(t *testing.T) {
	for _, n := range namedDimensions() {
		found, ok := DimensionNamed(n.name)
		require.True(t, ok, n.name)
		require.Equal(t, n.of, found, n.name)
		if !n.of.IsNone() {
			require.Equal(t, n.name, n.of.String())
		}
	}
	joined, ok := DimensionNamed("mass_per_length")
	require.True(t, ok)
	require.Equal(t, MassPerLength, joined)
	_, ok = DimensionNamed("colour")
	require.False(t, ok)
	require.Equal(t, "a plain number", Plain.String())
}

func TestDimensionsWithoutANameAreSpeltOut(t *testing.T) {
	for text, d := range map[string]Dimension{
		"length^5":                           Length.Power(5),
		"length^2 × mass / (time^2 × angle)": Torque.Over(Angle),
		"1 / length":                         Plain.Over(Length),
		"1 / (mass × time)":                  Plain.Over(Mass).Over(Time),
		"mass / time^2":                      Force.Over(Length),
	} {
		require.Equal(t, text, d.String())
	}
}

func TestDimensionsMultiply(t *testing.T) {
	require.Equal(t, Pressure, Force.Over(Area))
	require.Equal(t, Torque, Force.Times(Length))
	require.Equal(t, Power, Torque.Over(Time))
	require.Equal(t, Power, Voltage.Times(Current))
	require.Equal(t, Density, Mass.Over(Volume))
	require.Equal(t, SecondMoment, Length.Power(4))

	root, ok := Area.Root(2)
	require.True(t, ok)
	require.Equal(t, Length, root)
	_, ok = Length.Root(2)
	require.False(t, ok, "a length has no square root")
	_, ok = Area.Root(0)
	require.False(t, ok)
	root, ok = Plain.Root(7)
	require.True(t, ok)
	require.True(t, root.IsNone())
}

func TestDimensionExponentsAreCutAndDoNotWrap(t *testing.T) {
	require.EqualValues(t, 127, Length.Power(1000).Length)
	require.EqualValues(t, -127, Length.Power(-1000).Length)
	require.EqualValues(t, 127, Length.Power(100).Times(Length.Power(100)).Length)
	require.EqualValues(t, -127, Plain.Over(Length.Power(100)).Over(Length.Power(100)).Length)
}

func TestDimensionAlgebra(t *testing.T) {
	small := rapid.Custom(func(t *rapid.T) Dimension {
		e := rapid.Int8Range(-7, 7)
		return Dimension{e.Draw(t, "length"), e.Draw(t, "mass"), e.Draw(t, "time"), e.Draw(t, "angle"), e.Draw(t, "temperature"), e.Draw(t, "current")}
	})
	checkRounds(t, func(t *rapid.T) {
		a, b := small.Draw(t, "a"), small.Draw(t, "b")
		n := rapid.IntRange(1, 5).Draw(t, "n")
		require.Equal(t, a.Times(b), b.Times(a))
		require.Equal(t, a, a.Times(b).Over(b))
		root, ok := a.Power(n).Root(n)
		require.True(t, ok)
		require.Equal(t, a, root)
		require.Equal(t, a == b, a.Over(b).IsNone())
	})
}

func TestSameFigureRuleByDimension(t *testing.T) {
	for _, c := range []struct {
		of    Dimension
		floor float64
	}{
		{Length, 1e-9}, {Area, 1e-12}, {Volume, 1e-15}, {SecondMoment, 1e-21}, {Mass, 1e-6}, {Time, 1e-9},
		{Angle, 1e-9}, {Temperature, 1e-6}, {Current, 1e-9}, {Force, 1e-6}, {Pressure, 1e-3}, {Speed, 1e-9},
		{Plain, 1e-12}, {Torque, 0}, {Voltage, 0}, {Acceleration, 0}, {Length.Power(6), 0},
	} {
		require.Equal(t, Tolerance{Relative: 1e-9, Absolute: c.floor}, c.of.Same(), c.of.String())
	}
}
