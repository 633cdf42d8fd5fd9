package quantity

import (
	"bufio"
	"encoding/json"
	"errors"
	"io/fs"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The vectors are those of the ITF1788 test framework for IEEE Std 1788-2015 (Nehmeier and
// Kiesner, University of Würzburg), in one line each. They pass if our range contains the
// expected one and is at most 2 ulp wider at each end; numbers and truths must be equal.
const rangeVectors = "../../../shared/oracles/itf1788"

type vector struct {
	Case   string
	Op     string
	Args   []vectorItem
	Expect []vectorItem
}

type vectorItem struct {
	Iv   json.RawMessage // a word, or two numbers as texts
	Num  string
	Bool *bool
}

// unlike says why an operation of the standard has no counterpart here.
var unlike = map[string]string{
	"exp": "no exponential or logarithm in formulas", "log": "no exponential or logarithm in formulas",
	"log2": "no exponential or logarithm in formulas", "log10": "no exponential or logarithm in formulas",
	"asin": "the only inverse of an angle's function is atan2", "acos": "the only inverse of an angle's function is atan2",
	"sign": "no function of this meaning in formulas", "trunc": "no function of this meaning in formulas",
	"roundTiesToEven": "halves are rounded away from zero",
	"isEmpty":         "a range is never empty", "interior": "no question about open ends is asked",
	"strictLess": "no question about open ends is asked", "rad": "no radius, only a width",
}

func TestRangesAgainstOutsideVectors(t *testing.T) {
	run := map[string]int{}
	skipped := map[string]int{}
	wrong := 0
	for _, v := range readVectors(t) {
		reason := unlike[v.Op]
		if reason == "" {
			reason = v.check(func(format string, args ...any) {
				wrong++
				t.Errorf(v.Case+" "+v.Op+" "+string(v.line())+": "+format, args...)
			})
		}
		if reason != "" {
			skipped[reason]++
			continue
		}
		run[v.Op]++
	}
	total := 0
	for _, op := range slices.Sorted(maps.Keys(run)) {
		t.Logf("run %4d %s", run[op], op)
		total += run[op]
	}
	for _, reason := range slices.Sorted(maps.Keys(skipped)) {
		t.Logf("skipped %4d: %s", skipped[reason], reason)
	}
	t.Logf("run %d, wrong %d", total, wrong)
	require.Zero(t, wrong)
	require.Greater(t, total, 1000, "most vectors have a counterpart")
}

func readVectors(t *testing.T) []vector {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(rangeVectors, "*.jsonl"))
	require.NoError(t, err)
	if len(files) == 0 {
		t.Skip("outside vectors not at hand")
	}
	var vectors []vector
	for _, name := range files {
		file, err := os.Open(name)
		if errors.Is(err, fs.ErrNotExist) {
			t.Skip("outside vectors not at hand")
		}
		require.NoError(t, err)
		for lines := bufio.NewScanner(file); lines.Scan(); {
			var v vector
			require.NoError(t, json.Unmarshal(lines.Bytes(), &v))
			vectors = append(vectors, v)
		}
		require.NoError(t, file.Close())
	}
	return vectors
}

func (v vector) line() []byte {
	line, _ := json.Marshal(v)
	return line
}

// check runs one vector and returns why it was skipped, or "".
func (v vector) check(fail func(string, ...any)) (skip string) {
	var ranges []Range
	var numbers []float64
	for _, arg := range v.Args {
		if arg.Num != "" {
			numbers = append(numbers, vectorNumber(arg.Num))
			continue
		}
		r, word := arg.asRange()
		if word == "nai" {
			return "no counterpart of a failed construction (NaI)"
		}
		if word == "empty" {
			return "a range is never empty"
		}
		ranges = append(ranges, r)
	}
	switch expect := v.Expect[0]; {
	case expect.Bool != nil:
		if got := vectorRelations[v.Op](ranges[0], ranges[len(ranges)-1]); got != *expect.Bool {
			fail("got %v", got)
		}
	case v.Op == "overlap":
		return checkOverlap(ranges[0], ranges[1], expect.Num, fail)
	case expect.Num != "":
		if got := vectorNumbers[v.Op](ranges[0]); got != vectorNumber(expect.Num) {
			fail("got %v", got)
		}
	default:
		return v.checkRange(ranges, numbers, fail)
	}
	return ""
}

func (v vector) checkRange(ranges []Range, numbers []float64, fail func(string, ...any)) (skip string) {
	want, word := v.Expect[0].asRange()
	var got Range
	switch {
	case v.Op == "intersection":
		meet, meets := ranges[0].Meet(ranges[1])
		if meets != (word != "empty") {
			fail("whether there is a meet: got %v", meets)
		}
		if !meets {
			return ""
		}
		got = meet
	case word == "empty":
		return "a result that would be empty is Everything, or all directions"
	case v.Op == "pow":
		exponent := ranges[1].Low
		if !ranges[1].IsExact() || exponent != math.Trunc(exponent) || ranges[0].Low < 0 || exponent <= 0 && ranges[0].Low == 0 {
			return "power: not a whole exponent, or a base that the standard cuts off at zero"
		}
		got = ranges[0].Power(int(exponent))
	case v.Op == "pown":
		got = ranges[0].Power(int(numbers[0]))
	case len(ranges) == 2:
		got = vectorPairs[v.Op](ranges[0], ranges[1])
	default:
		got = vectorSingles[v.Op](ranges[0])
	}
	if got.Low > want.Low || got.High < want.High {
		fail("got %v, which does not hold it", got)
	}
	if got.Low < floatSteps(want.Low, -2) || got.High > floatSteps(want.High, 2) {
		fail("got %v, which is too wide", got)
	}
	return ""
}

var vectorSingles = map[string]func(Range) Range{
	"pos":   func(r Range) Range { return r.Plus(Range{}) },
	"neg":   Range.Negate,
	"recip": func(r Range) Range { return Exactly(1).Over(r) },
	"sqr":   Range.Square, "sqrt": Range.Sqrt, "abs": Range.Abs,
	"sin": Range.Sin, "cos": Range.Cos, "tan": Range.Tan,
	"atan":            func(r Range) Range { return Atan2(r, Exactly(1)) },
	"floor":           func(r Range) Range { return r.Floor(Tolerance{}) },
	"ceil":            func(r Range) Range { return r.Ceil(Tolerance{}) },
	"roundTiesToAway": func(r Range) Range { return r.Round(Tolerance{}) },
}

var vectorPairs = map[string]func(Range, Range) Range{
	"add": Range.Plus, "sub": Range.Minus, "mul": Range.Times, "div": Range.Over, "atan2": Atan2,
	"min": Range.Min, "max": Range.Max, "convexHull": Range.Hull,
}

// The relations of the standard, said with what we have. Comparisons are of every pair.
var vectorRelations = map[string]func(a, b Range) bool{
	"isEntire":       func(a, _ Range) bool { return a == Everything },
	"equal":          func(a, b Range) bool { return a == b },
	"subset":         func(a, b Range) bool { return a.Hull(b) == b },
	"less":           func(a, b Range) bool { return a.Min(b) == a },
	"precedes":       func(a, b Range) bool { return IsAtMost(a, b, Tolerance{}) == Yes },
	"strictPrecedes": func(a, b Range) bool { return IsLessThan(a, b, Tolerance{}) == Yes },
	"disjoint":       func(a, b Range) bool { return IsEqual(a, b, Tolerance{}) == No },
}

var vectorNumbers = map[string]func(Range) float64{
	"inf": func(r Range) float64 { return r.Low }, "sup": func(r Range) float64 { return r.High },
	"mid": Range.Middle, "midRad": Range.Middle, "wid": Range.Width,
	"mag": func(r Range) float64 { return r.Abs().High }, "mig": func(r Range) float64 { return r.Abs().Low },
}

// checkOverlap compares what our comparisons tell of the thirteen relative positions.
func checkOverlap(a, b Range, position string, fail func(string, ...any)) (skip string) {
	_, meets := a.Meet(b)
	apart := position == "before" || position == "after"
	if got := IsLessThan(a, b, Tolerance{}) == Yes; got != (position == "before") {
		fail("every pair is less: got %v", got)
	}
	if got := IsMoreThan(a, b, Tolerance{}) == Yes; got != (position == "after") {
		fail("every pair is more: got %v", got)
	}
	if meets == apart {
		fail("whether there is a meet: got %v", meets)
	}
	if (a == b) != (position == "equals") {
		fail("equal: got %v", a == b)
	}
	return ""
}

func (i vectorItem) asRange() (r Range, word string) {
	if json.Unmarshal(i.Iv, &word) == nil {
		if word == "entire" {
			return Everything, ""
		}
		return Range{}, word
	}
	var ends [2]string
	if err := json.Unmarshal(i.Iv, &ends); err != nil {
		panic(err)
	}
	return Range{vectorNumber(ends[0]), vectorNumber(ends[1])}, ""
}

func vectorNumber(text string) float64 {
	if strings.HasPrefix(strings.ToLower(strings.TrimLeft(text, "+-")), "0x") && !strings.ContainsAny(text, "pP") {
		text += "p0"
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		panic(err)
	}
	return x
}

// floatSteps moves x by that many floats.
func floatSteps(x float64, steps int) float64 {
	for ; steps > 0; steps-- {
		x = nextAbove(x)
	}
	for ; steps < 0; steps++ {
		x = nextBelow(x)
	}
	return x
}
