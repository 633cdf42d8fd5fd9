package quantity

import (
	"math"
	"strings"
	"testing"
	"unicode"

	"github.com/stretchr/testify/require"
)

// mustFigure reads a figure that the test relies on.
func mustFigure(t require.TestingT, text string) Figure {
	f, fault := ParseFigure(text)
	require.Nil(t, fault, "%s: %v", text, fault)
	return f
}

func TestFormsOfFigures(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		text     string
		range_   Range
		reading  float64
		unit     string
		decimals int
		printed  string
	}{
		{"45 mm", Range{0.045, 0.045}, 0.045, "mm", 0, "45 mm"},
		{"  45mm ", Range{0.045, 0.045}, 0.045, "mm", 0, "45 mm"},
		{"45.0 mm", Range{0.045, 0.045}, 0.045, "mm", 1, "45.0 mm"},
		{".095 in", Range{0.002413, 0.002413}, 0.002413, "in", 3, ".095 in"},
		{"1.75 in", Range{0.04445, 0.04445}, 0.04445, "in", 2, "1.75 in"},
		{`1.75"`, Range{0.04445, 0.04445}, 0.04445, "in", 2, "1.75 in"},
		{"44.45 millimetres", Range{0.04445, 0.04445}, 0.04445, "mm", 2, "44.45 mm"},
		{"1 3/4 in", Range{0.04445, 0.04445}, 0.04445, "in", 2, "1 3/4 in"},
		{"1-3/4 in", Range{0.04445, 0.04445}, 0.04445, "in", 2, "1 3/4 in"},
		{"1¾ in", Range{0.04445, 0.04445}, 0.04445, "in", 2, "1 3/4 in"},
		{"1 ¾ inch", Range{0.04445, 0.04445}, 0.04445, "in", 2, "1 3/4 in"},
		{"3/16 in", Range{0.0047625, 0.0047625}, 0.0047625, "in", 4, "3/16 in"},
		{"7⁄16 in", Range{0.0111125, 0.0111125}, 0.0111125, "in", 4, "7/16 in"},
		{"010/16 in", Range{0.015875, 0.015875}, 0.015875, "in", 3, "010/16 in"}, // no octal
		{"08 mm", Range{0.008, 0.008}, 0.008, "mm", 0, "08 mm"},
		{"1/3 m", Range{1. / 3, 1. / 3}, 1. / 3, "m", 4, "1/3 m"},
		{"-1-3/4 deg", Range{-0.030543261909900768, -0.030543261909900768}, -0.030543261909900768, "deg", 2, "-1 3/4 deg"},
		{"5 ft 2 1/2 in", Range{1.5875, 1.5875}, 1.5875, "in", 1, "5 ft 2 1/2 in"},
		{`5' 2 1/2"`, Range{1.5875, 1.5875}, 1.5875, "in", 1, "5 ft 2 1/2 in"},
		{`5'2"`, Range{1.5748, 1.5748}, 1.5748, "in", 0, "5 ft 2 in"},
		{"1 h 2 min 3 s", Range{3723, 3723}, 3723, "s", 0, "1 h 2 min 3 s"},
		{"-5 ft 2 in", Range{-1.5748, -1.5748}, -1.5748, "in", 0, "-5 ft 2 in"},
		{"45 mm +/- 0.1 mm", Range{0.0449, 0.0451}, 0.045, "mm", 1, "45 ± 0.1 mm"},
		{"45 ± 0.1 mm", Range{0.0449, 0.0451}, 0.045, "mm", 1, "45 ± 0.1 mm"},
		{"45±0.1mm", Range{0.0449, 0.0451}, 0.045, "mm", 1, "45 ± 0.1 mm"},
		{"45 mm +- 0.1", Range{0.0449, 0.0451}, 0.045, "mm", 1, "45 ± 0.1 mm"},
		{"1.75 in ± 0.1 mm", Range{0.04435, 0.04455}, 0.04445, "in", 2, "1.75 in ± 0.1 mm"},
		{"1 3/4 ± 1/16 in", Range{0.0428625, 0.0460375}, 0.04445, "in", 4, "1 3/4 ± 1/16 in"},
		{"5 ft 2 in ± 1/8 in", Range{1.571625, 1.577975}, 1.5748, "in", 3, "5 ft 2 in ± 1/8 in"},
		{"45 mm ± 0 mm", Range{0.045, 0.045}, 0.045, "mm", 0, "45 ± 0 mm"},
		{"45 mm +0.1/-0.2 mm", Range{0.0448, 0.0451}, 0.045, "mm", 1, "45 +0.1/-0.2 mm"},
		{"45 mm -0.2/+0.1 mm", Range{0.0448, 0.0451}, 0.045, "mm", 1, "45 +0.1/-0.2 mm"},
		{"45 +0.1 −0.2 mm", Range{0.0448, 0.0451}, 0.045, "mm", 1, "45 +0.1/-0.2 mm"},
		{"45 mm +0.1 mm / -0.2 mm", Range{0.0448, 0.0451}, 0.045, "mm", 1, "45 +0.1/-0.2 mm"},
		{".095 in +.002/-.003 in", Range{0.0023368, 0.0024638}, 0.002413, "in", 3, ".095 +.002/-.003 in"},
		{"1.7 in +.005/-0 in", Range{0.04318, 0.043307}, 0.04318, "in", 3, "1.7 +.005/-0 in"},
		{"1 3/4 +1/16/-1/8 in", Range{0.041275, 0.0460375}, 0.04445, "in", 4, "1 3/4 +1/16/-1/8 in"},
		{"44.9 to 45.1 mm", Range{0.0449, 0.0451}, 0.045, "mm", 1, "44.9 to 45.1 mm"},
		{"44.9mm to 4.6 cm", Range{0.0449, 0.046}, 0.04545, "mm", 1, "44.9 mm to 4.6 cm"},
		{"-20 to +10 deg", Range{-0.3490658503988659, 0.17453292519943295}, -0.08726646259971647, "deg", 0, "-20 to 10 deg"},
		{"> 44 mm", Range{0.044, inf}, 0.044, "mm", 0, "> 44 mm"},
		{">= 44 mm", Range{0.044, inf}, 0.044, "mm", 0, ">= 44 mm"},
		{"≥44mm", Range{0.044, inf}, 0.044, "mm", 0, ">= 44 mm"},
		{"at least 44 mm", Range{0.044, inf}, 0.044, "mm", 0, ">= 44 mm"},
		{"more than 44 mm", Range{0.044, inf}, 0.044, "mm", 0, "> 44 mm"},
		{"< 50 mm", Range{-inf, 0.05}, 0.05, "mm", 0, "< 50 mm"},
		{"at most 50 mm", Range{-inf, 0.05}, 0.05, "mm", 0, "<= 50 mm"},
		{"13 bwg", Range{0.002413, 0.002413}, 0.002413, "in", 3, "13 bwg"},
		{"14 SWG ± 0.1 mm", Range{0.001932, 0.002132}, 0.002032, "in", 3, "14 swg ± 0.1 mm"},
		{"45", Range{45, 45}, 45, "", 0, "45"},
		{"0.9 ± 0.05", Range{0.85, 0.95}, 0.9, "", 2, "0.9 ± 0.05"},
		{"90 %", Range{0.9, 0.9}, 0.9, "%", 0, "90 %"},
		{"135 degC", Range{408.15, 408.15}, 408.15, "degC", 0, "135 degC"},
		{"135 °C ± 2 °C", Range{406.15, 410.15}, 408.15, "degC", 0, "135 ± 2 degC"},
		{"275 degF", Range{408.15, 408.15}, 408.15, "degF", 0, "275 degF"},
		{"135 degC ± 2 K", Range{406.15, 410.15}, 408.15, "degC", 0, "135 degC ± 2 K"},
		{"96 dB(A) ± 1", Range{95, 97}, 96, "dB(A)", 0, "96 ± 1 dB(A)"},
		{"1.5E+3 N", Range{1500, 1500}, 1500, "N", 0, "1.5e3 N"},
		{"1.5e-3 m", Range{0.0015, 0.0015}, 0.0015, "m", 4, "1.5e-3 m"},
		{"40 Nm", Range{40, 40}, 40, "N.m", 0, "40 N.m"},
		{"90 km/h", Range{25, 25}, 25, "km/h", 0, "90 km/h"},
		{"350 N/mm²", Range{3.5e8, 3.5e8}, 3.5e8, "N/mm2", 0, "350 N/mm2"},
		{"120 sq cm", Range{0.012, 0.012}, 0.012, "cm2", 0, "120 cm2"},
		{"1.5 g0", Range{14.709975, 14.709975}, 14.709975, "g0", 1, "1.5 g0"},
		{"2.62 kg/m", Range{2.62, 2.62}, 2.62, "kg/m", 2, "2.62 kg/m"},
	} {
		f := mustFigure(t, c.text)
		require.Equal(t, c.range_, f.Range, c.text)
		require.Equal(t, c.reading, f.Reading, c.text)
		require.Equal(t, c.unit, f.Unit.Name(), c.text)
		require.Equal(t, c.decimals, f.Decimals, c.text)
		require.Equal(t, c.printed, f.String(), c.text)
		require.Equal(t, f, mustFigure(t, f.String()), c.text)
		require.Equal(t, math.IsInf(f.Range.Width(), 1), f.OneSided, c.text)
		require.Equal(t, strings.ContainsAny(c.printed, "±+") || strings.Contains(c.printed, " to "), f.Toleranced, c.text)
	}
}

func TestFaultyFigures(t *testing.T) {
	for _, c := range []struct {
		text, code string
		from, to   int
		advice     string // part of it
	}{
		{"", FaultEmpty, 0, 0, "as in 45 mm"},
		{" \t ", FaultEmpty, 0, 3, "as in 45 mm"},
		{"mm", FaultNumber, 0, 2, "Write a number in digits"},
		{"about 45 mm", FaultNumber, 0, 11, "Write a number in digits"},
		{"45.", FaultNumber, 0, 3, "leave out the point"},
		{"1.2.3 mm", FaultNumber, 0, 4, "Write one point"},
		{"> ", FaultNumber, 1, 1, "Write a number in digits"},
		{"45 mm ±", FaultNumber, 7, 7, "Write a number in digits"},
		{"45,5 mm", FaultComma, 0, 4, "Write a decimal point: 45.5."},
		{"1,085 kg", FaultComma, 0, 5, "Write 1085 if thousands are meant, or 1.085 with a decimal point."},
		{"1.085,5 kg", FaultComma, 0, 7, "no mark between thousands"},
		{"45 ± 0,1 mm", FaultComma, 5, 8, "Write a decimal point: 0.1."},
		{"45 mm, 46 mm", FaultComma, 5, 12, "one figure in each place"},
		{"1 085 kg", FaultForm, 2, 8, "without blanks"},
		{"45 mm 0.1 mm", FaultForm, 6, 12, "Write ± before a tolerance"},
		{"45 mm 3", FaultForm, 6, 7, "Write ± before a tolerance"},
		{"44.9-45.1 mm", FaultForm, 4, 12, "44.9 to 45.1 mm"},
		{"44.9–45.1 mm", FaultForm, 4, 12, "44.9 to 45.1 mm"},
		{"44.9..45.1 mm", FaultForm, 4, 13, "44.9 to 45.1 mm"},
		{"44mm-46mm", FaultForm, 4, 9, "44.9 to 45.1 mm"},
		{"45 x 2.5 mm", FaultForm, 3, 11, "a tube's size"},
		{"45×2.5 mm", FaultForm, 2, 9, "a tube's size"},
		{"5 ft 14 in", FaultForm, 5, 10, "in one unit"},
		{"5.5 ft 2 in", FaultForm, 7, 11, "5 ft 2.5 in"},
		{"5 in 2 ft", FaultForm, 5, 9, "Write ± before a tolerance"},
		{"13 bwg 2 mm", FaultForm, 7, 11, "Write ± before a tolerance"},
		{"5 1/s", FaultForm, 2, 5, "a unit behind each figure"},
		{"44 to 45 to 46 mm", FaultForm, 9, 17, "Write one figure"},
		{"45 ± 0.1 ± 0.2 mm", FaultTolerance, 9, 17, "one tolerance"},
		{"> 44 mm ± 1 mm", FaultTolerance, 8, 14, "one tolerance"},
		{"45 mm +0.1", FaultTolerance, 6, 10, "+0.1/-0.2"},
		{"45 mm +0.1/+0.2 mm", FaultTolerance, 6, 18, "+0.1/-0.2"},
		{"45 mm +0.1/0.2 mm", FaultTolerance, 6, 17, "+0.1/-0.2"},
		{"45 mm -0.2/+-0.1 mm", FaultNumber, 11, 19, "Write a number in digits"},
		{"45 mm -1/-+0.1 mm", FaultNumber, 9, 17, "Write a number in digits"},
		{"45 mm +0.1 mm/-0.2 kg", FaultUnitMixed, 14, 21, "units of one kind"},
		{"96 dB(A) ± 2 mm", FaultUnitMixed, 11, 15, "units of one kind"},
		{"45 ± -0.1 mm", FaultTolerance, 5, 12, "without a sign"},
		{"45 mm ± 2 %", FaultUnitMixed, 8, 11, "units of one kind"},
		{"45 mm to 46 kg", FaultUnitMixed, 9, 14, "units of one kind"},
		{"45.1 to 44.9 mm", FaultOrder, 0, 15, "lower end first"},
		{"5 ft 2 in ± 1", FaultUnitMissing, 12, 13, "Write its unit"},
		{"45 ± 13 bwg", FaultUnitMissing, 0, 2, "Write its unit"},
		{"45 mmm", FaultUnitUnknown, 3, 6, `"mm"`},
		{"45 ± 0.1 mmm", FaultUnitUnknown, 9, 12, `"mm"`},
		{"45 mm approx", FaultUnitUnknown, 6, 12, "Write one such as"},
		{"5 gal", FaultUnitWhich, 2, 5, `"US gal" or "imp gal"`},
		{"40 mil", FaultUnitWhich, 3, 6, `"mm" or "thou"`},
		{"16 ga", FaultUnitWhich, 3, 5, `"swg" or "bwg"`},
		{"40 ft-lb", FaultUnitWhich, 3, 8, "lbf.ft"},
		{"1/0 in", FaultFraction, 0, 3, "decimal number"},
		{"1 5/4 in", FaultFraction, 0, 5, "decimal number"},
		{"1e31 m", FaultTooLarge, 0, 4, "a unit that suits it"},
		{"1e-31 m", FaultTooLarge, 0, 5, "a unit that suits it"},
		{"1e99999999999999999999 m", FaultTooLarge, 0, 22, "a unit that suits it"},
		{strings.Repeat("9", 31) + " m", FaultTooLarge, 0, 31, "a unit that suits it"},
		{strings.Repeat("4", 200), FaultText, 0, 200, "as in 45 mm"},
		{"45\u202emm", FaultText, 2, 3, "as in 45 mm"},
		{"45 mm\x1b[2J", FaultText, 5, 6, "as in 45 mm"},
		{"45 mm\x00", FaultText, 5, 6, "as in 45 mm"},
		{"45 \xff mm", FaultText, 0, 7, "as in 45 mm"},
		{"１４ mm", FaultNumber, 0, 5, "Write a number in digits"},
	} {
		f, fault := ParseFigure(c.text)
		require.NotNil(t, fault, c.text)
		require.Equal(t, Figure{}, f, c.text)
		require.Equal(t, c.code, fault.Code, "%q: %v", c.text, fault)
		require.Equal(t, []int{c.from, c.to}, []int{fault.From, fault.To}, "%q: %v", c.text, fault)
		require.Contains(t, fault.Advice, c.advice, c.text)
		requireSentences(t, fault)
	}
}

// requireSentences checks that a fault can be shown to a person on a terminal.
func requireSentences(t require.TestingT, fault *Fault) {
	for _, sentence := range []string{fault.Found, fault.Advice} {
		require.True(t, len(sentence) > 10 && strings.HasSuffix(sentence, "."), "a sentence: %q", sentence)
		for _, c := range sentence {
			require.True(t, unicode.IsPrint(c), "%q", sentence)
		}
	}
}

func TestSizesOfTubes(t *testing.T) {
	for _, c := range []struct{ text, outside, wall string }{
		{"45 x 2.5 mm", "45 mm", "2.5 mm"},
		{"45x2.5mm", "45 mm", "2.5 mm"},
		{"45 × 2.5 mm", "45 mm", "2.5 mm"},
		{"45 X 2.5 mm", "45 mm", "2.5 mm"},
		{"45 mm x 2.5", "45 mm", "2.5 mm"},
		{"45mmx2.5mm", "45 mm", "2.5 mm"},
		{"1.75 x .095 in", "1.75 in", ".095 in"},
		{"1-3/4 x .120 in", "1 3/4 in", ".120 in"},
		{"1.75 in x 13 bwg", "1.75 in", "13 bwg"},
		{`1 3/4" x 13 swg`, "1 3/4 in", "13 swg"},
		{"45 mm x .095 in", "45 mm", ".095 in"},
		{"45 ± 0.2 x 2.5 ± 0.1 mm", "45 ± 0.2 mm", "2.5 ± 0.1 mm"},
	} {
		outside, wall, fault := ParseSize(c.text)
		require.Nil(t, fault, c.text)
		require.Equal(t, mustFigure(t, c.outside), outside, c.text)
		require.Equal(t, mustFigure(t, c.wall), wall, c.text)
	}
}

func TestFaultySizes(t *testing.T) {
	for _, c := range []struct {
		text, code string
		from, to   int
		advice     string
	}{
		{"", FaultEmpty, 0, 0, "as in 45 x 2.5 mm"},
		{"45 mm", FaultForm, 0, 5, "with an x between them"},
		{"x 2.5 mm", FaultForm, 0, 8, "with an x between them"},
		{"45 * 2.5 mm", FaultForm, 0, 11, "with an x between them"},
		{"45 x 2.5 x 6000 mm", FaultForm, 9, 18, "the outside diameter and the wall alone"},
		{"45 x 2.5", FaultUnitMissing, 0, 2, "Write mm or in"},
		{"1.75 x 13 bwg", FaultUnitMissing, 0, 4, "Write mm or in"},
		{"45 kg x 2.5 mm", FaultUnitMixed, 0, 5, "Write mm or in"},
		{"2.5 x 45 mm", FaultOrder, 0, 11, "outside diameter first"},
		{"45 x 22.5 mm", FaultOrder, 0, 12, "outside diameter first"},
		{"45 x 0 mm", FaultOrder, 0, 9, "outside diameter first"},
		{"> 45 x 2.5 mm", FaultForm, 2, 4, "on the certificate"},
		{"45 x 2,5 mm", FaultComma, 5, 8, "Write a decimal point: 2.5."},
		{"45 mm x 2.5 kg", FaultUnitMixed, 8, 14, "Write mm or in"},
		{"45 mm x 2.6 to 2.4 mm", FaultOrder, 8, 21, "lower end first"},
		{"45 x 2.5 mm\x00", FaultText, 11, 12, "as in 45 x 2.5 mm"},
		{"45 x 2.5 gal", FaultUnitWhich, 9, 12, "US gal"},
		{"forty x 2.5 mm", FaultNumber, 0, 6, "Write a number in digits"},
	} {
		_, _, fault := ParseSize(c.text)
		require.NotNil(t, fault, c.text)
		require.Equal(t, c.code, fault.Code, "%q: %v", c.text, fault)
		require.Equal(t, []int{c.from, c.to}, []int{fault.From, fault.To}, "%q: %v", c.text, fault)
		require.Contains(t, fault.Advice, c.advice, c.text)
		requireSentences(t, fault)
	}
}

func TestToleranceOfAnInstrument(t *testing.T) {
	for _, c := range []struct{ reading, half, together string }{
		{"2.53 mm", "0.05 mm", "2.53 ± 0.05 mm"},
		{".095 in", "0.05 mm", ".095 in ± 0.05 mm"},
		{"135 degC", "2 degC", "135 ± 2 degC"},
		{"5 ft 2 in", "1/8 in", "5 ft 2 in ± 1/8 in"},
		{"13 bwg", "0.1 mm", "13 bwg ± 0.1 mm"},
		{"0.91", "0.01", "0.91 ± 0.01"},
	} {
		f, ok := mustFigure(t, c.reading).WithTolerance(mustFigure(t, c.half))
		require.True(t, ok, c.reading)
		require.Equal(t, mustFigure(t, c.together), f)
		require.True(t, f.Toleranced)
	}
	for _, c := range []struct{ reading, half string }{
		{"2.53 ± 0.02 mm", "0.05 mm"}, {"2.5 to 2.6 mm", "0.05 mm"}, {"> 2.5 mm", "0.05 mm"}, {"2.53 mm", "1 %"}, {"2.53 mm", "0.05"},
		{"2.53", "0.05 mm"}, {"2.53 mm", "-0.05 mm"}, {"2.53 mm", "0.04 to 0.06 mm"}, {"96 dB(A)", "1 %"},
	} {
		f := mustFigure(t, c.reading)
		same, ok := f.WithTolerance(mustFigure(t, c.half))
		require.False(t, ok, "%s ± %s", c.reading, c.half)
		require.Equal(t, f, same)
	}
	long := mustFigure(t, "5 ft "+strings.Repeat(" ", 50)+"2.000000000000000000000000000 in")
	_, ok := long.WithTolerance(mustFigure(t, "0.00000000000000000000000000001 in"))
	require.True(t, ok, "length is no reason")
}

func TestFiguresMadeByHand(t *testing.T) {
	mm := mustUnit(t, "mm")
	f := Figure{Range: Exactly(0.045), Reading: 0.045, Unit: mm, Decimals: 1}
	require.Equal(t, "45.0 mm", f.String())
	g, ok := f.WithTolerance(mustFigure(t, "0.1 mm"))
	require.True(t, ok)
	require.Equal(t, "45.0 ± 0.1 mm", g.String())
}
