package quantity

import (
	"go/token"
	"math"
	"math/big"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"
)

// mustUnit finds a unit that the test relies on.
func mustUnit(t require.TestingT, text string) Unit {
	u, err := FindUnit(text)
	require.NoError(t, err, text)
	return u
}

// rat reads an exact number.
func rat(t require.TestingT, text string) *big.Rat {
	r, ok := new(big.Rat).SetString(text)
	require.True(t, ok, text)
	return r
}

// The factors of NIST Special Publication 811 (2008), appendix B.8 and B.9, and of the
// definitions they rest on. Read in a machine-readable transcription; the inch, pound and
// gallons also in 16 CFR 500.19.
func TestFactorsOfSP811(t *testing.T) {
	for _, c := range []struct {
		from, to string
		exact    string  // "" where the definition gives no short one
		table    float64 // seven digits, as printed
	}{
		{"in", "m", "0.0254", 2.54e-2},
		{"ft", "m", "0.3048", 3.048e-1},
		{"thou", "mm", "0.0254", 2.54e-2},
		{"lb", "kg", "0.45359237", 4.535924e-1},
		{"lbf", "N", "4.4482216152605", 4.448222},
		{"kgf", "N", "9.80665", 9.80665},
		{"psi", "Pa", "8896443230521/1290320000", 6.894757e3},
		{"ksi", "MPa", "", 6.894757},
		{"bar", "Pa", "100000", 1e5},
		{"in2", "mm2", "645.16", 645.16},
		{"in3", "mm3", "16387.064", 1.638706e4},
		{"in4", "mm4", "416231.4256", 4.162314e5},
		{"ft.lbf", "J", "1.3558179483314004", 1.355818},
		{"lbf.in", "N.m", "", 1.129848e-1},
		{"US gal", "l", "3.785411784", 3.785412},
		{"imp gal", "l", "4.54609", 4.54609},
		{"lb/ft", "kg/m", "", 1.488164},
		{"lb/in3", "kg/m3", "", 2.767990e4},
		{"deg", "rad", "", 1.745329e-2},
		{"daN", "N", "10", 10},
	} {
		from, to := mustUnit(t, c.from), mustUnit(t, c.to)
		require.Equal(t, to.Dimension(), from.Dimension(), c.from)
		factor := new(big.Rat).Quo(from.Factor(), to.Factor())
		if c.exact != "" {
			require.Zero(t, factor.Cmp(rat(t, c.exact)), "%s to %s is %s", c.from, c.to, factor.RatString())
		}
		near, _ := factor.Float64()
		require.InEpsilon(t, c.table, near, 5e-7, "%s to %s", c.from, c.to)
	}
}

func TestHorsepowers(t *testing.T) {
	// 550 ft.lbf/s and 75 kgf.m/s: NIST SP 811 (2008), B.8, gives 7.456999 E+02 and 7.354988 E+02 W.
	hp, _ := mustUnit(t, "hp").Factor().Float64()
	ps, _ := mustUnit(t, "PS").Factor().Float64()
	require.InEpsilon(t, 745.6999, hp, 1e-7)
	require.InEpsilon(t, 735.4988, ps, 1e-7)
}

func TestEverySpellingIsFoundAndPrintsAsOneUnit(t *testing.T) {
	for _, spelling := range knownUnits.order {
		u := mustUnit(t, spelling)
		require.Equal(t, u, mustUnit(t, "  "+spelling+" "), "blanks around")
		require.Equal(t, u, mustUnit(t, u.Name()), "the printed name of %s", spelling)
		f, fault := ParseFigure("7 " + spelling)
		require.Nil(t, fault, spelling)
		require.Equal(t, u, f.Unit, spelling)
	}
}

func TestUnitsOfFormulas(t *testing.T) {
	names := map[string]bool{}
	for _, u := range FormulaUnits() {
		require.True(t, token.IsIdentifier(u.Formula()), u.Formula())
		require.False(t, names[u.Formula()], "%s twice", u.Formula())
		names[u.Formula()] = true
		require.Equal(t, u, mustUnit(t, u.Formula()), "a formula's spelling stands in written figures too")
		require.True(t, u.Convertible())
		require.False(t, u.Affine())
	}
	for _, wanted := range strings.Fields("mm cm metre inch ft thou sq_mm sq_cm sq_in gram kg tonne lb oz newton kN daN kgf lbf " +
		"Pa kPa MPa bar psi ksi ml litre us_gal imp_gal deg rad second minute hour day km mile volt ampere rpm percent g0") {
		require.True(t, names[wanted], wanted)
	}
	require.False(t, names["mil"] || names["gal"] || names["m"] || names["l"])
	first := FormulaUnits()
	first[0] = Unit{}
	require.NotEqual(t, first[0], FormulaUnits()[0], "the caller's list is its own")
}

func TestProductsAndQuotients(t *testing.T) {
	for _, c := range []struct {
		name      string
		spellings []string
		dimension Dimension
		factor    string // "" where another test has it
	}{
		{"kg/m", []string{"kg/m", "kg / m", "kg per m", "kg.m-1", "kg·m⁻¹"}, MassPerLength, "1"},
		{"lb/ft", []string{"lb/ft", "lb per ft", "lbs/foot"}, MassPerLength, ""},
		{"N/mm2", []string{"N/mm2", "N/mm^2", "N/mm²", "N/sq mm", "N/sq_mm"}, Pressure, "1000000"},
		{"lb/in2", []string{"lb/in2", "lb/in²", "lbs/sq in"}, Pressure, "8896443230521/1290320000"},
		{"N.m", []string{"N.m", "Nm", "N m", "N·m", "N*m", "N-m", "newton metre"}, Torque, "1"},
		{"lbf.ft", []string{"lbf.ft", "lbf ft", "lbf-ft", "lbf*ft"}, Torque, ""},
		{"km/h", []string{"km/h", "kph", "km/hr", "km per hour"}, Speed, "5/18"},
		{"m/s2", []string{"m/s2", "m/s^2", "m/s²", "m.s-2", "m/s/s"}, Acceleration, "1"},
		{"g/cm3", []string{"g/cm3", "g/cu cm", "gram/cm³"}, Density, "1000"},
		{"in2", []string{"in2", "sq in", "square inch", "sq. in", "in^2", "in²", "sq_in"}, Area, "0.00064516"},
		{"mm4", []string{"mm4", "mm^4", "mm⁴"}, SecondMoment, "0.000000000001"},
		{"kg/(m.s2)", []string{"kg/(m.s2)", "kg/m/s2", "kg m-1 s-2"}, Pressure, "1"},
		{"per s", []string{"1/s", "/s", "s-1", "per s"}, Dimension{Time: -1}, "1"},
		{"N.m/deg", []string{"Nm/deg", "N.m/°"}, Torque.Over(Angle), ""},
		{"ft.lbf/s", []string{"ft lbf/s", "ft.lbf/sec"}, Power, ""},
		{"micron", []string{"µm", "μm", "um", "microns"}, Length, "0.000001"},
		{"deg", []string{"°", "º", "degrees"}, Angle, ""},
		{"m3/h", []string{"m3/h", "cu m/h"}, Flow, "1/3600"},
	} {
		for _, spelling := range c.spellings {
			u := mustUnit(t, spelling)
			require.Equal(t, c.name, u.Name(), spelling)
			require.Equal(t, c.dimension, u.Dimension(), spelling)
			require.Equal(t, mustUnit(t, c.name), u, spelling)
			if c.factor != "" {
				require.Zero(t, u.Factor().Cmp(rat(t, c.factor)), "%s is %s", spelling, u.Factor())
			}
		}
	}
}

func TestRefusedUnitsSayWhatToWrite(t *testing.T) {
	for _, c := range []struct {
		text, code, advice string
		from, to           int
	}{
		{"gal", FaultUnitWhich, `Write "US gal" or "imp gal".`, 0, 3},
		{"gal/min", FaultUnitWhich, `Write "US gal" or "imp gal".`, 0, 3},
		{"Gallons", FaultUnitWhich, `Write "US gal" or "imp gal".`, 0, 7},
		{"mil", FaultUnitWhich, `Write "mm" or "thou".`, 0, 3},
		{"ton", FaultUnitWhich, `Write "t", "short ton" or "long ton".`, 0, 3},
		{"gauge", FaultUnitWhich, `Write the number with "swg" or "bwg", or better the wall in mm or in.`, 0, 5},
		{"swg", FaultGauge, "Write a whole number before it, as in 13 bwg.", 0, 3},
		{"nm", FaultUnitWhich, `Write "N.m" for a torque.`, 0, 2},
		{"ft-lb", FaultUnitWhich, `Write "lbf.ft" for a torque.`, 0, 5},
		{"lb.m", FaultUnitWhich, `Write "lbf.m" for a torque.`, 0, 4},
		{"kg.cm", FaultUnitWhich, `Write "kgf.cm" for a torque.`, 0, 5},
		{"kg/cm2", FaultUnitWhich, `Write "kgf/cm2" for a pressure; a mass per area is written in kg/m2.`, 0, 6},
		{"lb/ft2", FaultUnitWhich, `Write "lbf/ft2" for a pressure; a mass per area is written in kg/m2.`, 0, 6},
		{"year", FaultUnitWhich, `Write the time in "day", or use dates.`, 0, 4},
		{"mmm", FaultUnitUnknown, `Write "mm" if that is meant.`, 0, 3},
		{"MM", FaultUnitUnknown, `Write "mm" if that is meant.`, 0, 2},
		{"Mpa", FaultUnitUnknown, `Write "MPa" if that is meant.`, 0, 3},
		{"milimetres", FaultUnitUnknown, `Write "millimetres" if that is meant.`, 0, 10},
		{"kg/mm/xyzzy", FaultUnitUnknown, "Write one such as mm, in, kg, lb, MPa, l or deg.", 6, 11},
		{"kg/m s", FaultUnitForm, "Write brackets, as in kg/(m.s2).", 3, 6},
		{"Nm2", FaultUnitForm, "Write it out as a product of simple units with their powers, as in N.m2.", 0, 3},
		{"m0", FaultUnitForm, "Write a power such as mm2 or s-2.", 1, 2},
		{"m10", FaultUnitForm, "Write a power such as mm2 or s-2.", 1, 3},
		{"m9.m9.m9.m9", FaultUnitForm, "Write the unit in lower powers.", 0, 11},
		{"kg/(m.s2", FaultUnitForm, "Write a pair, as in kg/(m.s2).", 3, 8},
		{"((m))", FaultUnitForm, "Write one pair, as in kg/(m.s2).", 1, 5},
		{"m.m.m.m.m.m.m.m.m", FaultUnitForm, "Write a simpler unit.", 16, 17},
		{"degC/s", FaultUnitForm, "Write K: a difference of one degree Celsius is one kelvin.", 0, 4},
		{"zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz", FaultUnitUnknown, "Write one such as mm, in, kg, lb, MPa, l or deg.", 0, 36},
		{"kg/m)", FaultUnitForm, "Write powers as mm2, products as N.m, quotients as kg/m.", 4, 5},
		{"  ", FaultUnitMissing, "Write one such as mm, in, kg, MPa, l or deg.", 0, 2},
		{strings.Repeat("mm ", 40), FaultText, "Write one such as mm, in, kg, MPa, l or deg.", 0, 119},
	} {
		u, err := FindUnit(c.text)
		require.Error(t, err, c.text)
		require.Equal(t, Unit{}, u)
		var fault *Fault
		require.ErrorAs(t, err, &fault)
		require.Equal(t, c.code, fault.Code, c.text)
		require.Equal(t, c.advice, fault.Advice, c.text)
		require.Equal(t, []int{c.from, c.to}, []int{fault.From, fault.To}, c.text)
		require.Equal(t, fault.Found+" "+fault.Advice, err.Error())
	}
}

func TestOneRoundingOnTheWayToSI(t *testing.T) {
	inches, millimetres := mustUnit(t, "in"), mustUnit(t, "mm")
	require.Equal(t, millimetres.ToSI(rat(t, "44.45")), inches.ToSI(rat(t, "1.75")))
	require.NotEqual(t, 1.75*0.0254, inches.ToSI(rat(t, "1.7501")))
	require.Equal(t, 0.04445, inches.ToSI(rat(t, "1.75")))
	require.Equal(t, math.Pi/4, mustUnit(t, "deg").ToSI(rat(t, "45")))
	require.Equal(t, 2*math.Pi, mustUnit(t, "rev").ToSI(rat(t, "1")))
	require.Equal(t, 0.0, millimetres.ToSI(nil), "no number counts as zero")
	require.True(t, math.IsInf(millimetres.ToSI(new(big.Rat).SetInt(new(big.Int).Lsh(big.NewInt(1), 2000))), 1))
	require.False(t, math.Signbit(millimetres.ToSI(rat(t, "-1e-400"))), "no minus zero")
}

func TestTemperaturesAreAffineAndTheirDifferencesAreNot(t *testing.T) {
	celsius, fahrenheit, kelvin := mustUnit(t, "degC"), mustUnit(t, "°F"), mustUnit(t, "K")
	require.True(t, celsius.Affine() && fahrenheit.Affine() && !kelvin.Affine())
	// Fixed points of water: NIST SP 811 (2008), B.8: T/K = t/degC + 273.15, T/K = (t/degF + 459.67)/1.8.
	require.Equal(t, 273.15, celsius.ToSI(rat(t, "0")))
	require.Equal(t, 273.15, fahrenheit.ToSI(rat(t, "32")))
	require.Equal(t, celsius.ToSI(rat(t, "135")), fahrenheit.ToSI(rat(t, "275")))
	require.Equal(t, 2.0, celsius.DifferenceToSI(rat(t, "2")))
	require.Equal(t, 1.0, fahrenheit.DifferenceToSI(rat(t, "1.8")))
	require.InDelta(t, 275, fahrenheit.FromSI(celsius.ToSI(rat(t, "135"))), 1e-12)
}

func TestLevelsDoNotConvert(t *testing.T) {
	level := mustUnit(t, "dB(A)")
	require.False(t, level.Convertible())
	require.True(t, Unit{}.Convertible() && mustUnit(t, "mm").Convertible())
	_, fault := ParseFigure("96 dB(A) ± 2 %")
	require.NotNil(t, fault)
	require.Equal(t, FaultUnitMixed, fault.Code)
}

func TestNoUnitIsAPlainNumber(t *testing.T) {
	none := Unit{}
	require.Equal(t, "", none.Name()+none.Formula()+none.String())
	require.True(t, none.Dimension().IsNone())
	require.Equal(t, 0.5, none.ToSI(rat(t, "1/2")))
	require.Equal(t, 3.0, none.FromSI(3))
}

func TestBackFromSI(t *testing.T) {
	checkRounds(t, func(t *rapid.T) {
		u := mustUnit(t, rapid.SampledFrom(knownUnits.order).Draw(t, "unit"))
		v := rapid.Float64Range(-1e12, 1e12).Draw(t, "v")
		number := u.FromSI(v)
		exact := new(big.Rat).SetFloat64(number)
		// One rounding each way; an affine unit's zero costs the digits of the larger number.
		room := 3e-16 * math.Max(math.Abs(v), 300)
		require.InDelta(t, v, u.ToSI(exact), room, "%s", u)
	})
	mm := mustUnit(t, "mm")
	require.True(t, math.IsNaN(mm.FromSI(math.NaN())))
	require.True(t, math.IsInf(mm.FromSI(math.Inf(-1)), -1))
}

func TestCoherentUnits(t *testing.T) {
	for name, d := range map[string]Dimension{
		"": Plain, "m": Length, "m2": Area, "m4": SecondMoment, "N": Force, "Pa": Pressure, "N.m": Torque,
		"kg/m": MassPerLength, "m/s": Speed, "rad/s": RotationalSpeed, "V": Voltage, "W": Power,
		"per (m.s)": Plain.Over(Length).Over(Time),
	} {
		u := CoherentUnit(d)
		require.Equal(t, name, u.Name())
		require.Equal(t, d, u.Dimension())
		require.Zero(t, u.Factor().Cmp(big.NewRat(1, 1)), name)
	}
}

func TestSlipsBetweenWords(t *testing.T) {
	for _, c := range []struct {
		a, b  string
		slips int
	}{{"", "", 0}, {"mm", "mm", 0}, {"mmm", "mm", 1}, {"inhc", "inch", 1}, {"tonen", "tonne", 1}, {"kitten", "sitting", 3}, {"", "abc", 3}} {
		require.Equal(t, c.slips, slipsBetween([]rune(c.a), []rune(c.b)), c.a+" "+c.b)
		require.Equal(t, c.slips, slipsBetween([]rune(c.b), []rune(c.a)), c.b+" "+c.a)
	}
}
