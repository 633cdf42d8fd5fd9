package quantity

import (
	"encoding/csv"
	"errors"
	"io/fs"
	"maps"
	"math"
	"math/big"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// tally counts outside vectors and says at the end what became of them.
type tally struct {
	run, wrong int
	skipped    map[string]int
}

func (c *tally) skip(reason string) {
	if c.skipped == nil {
		c.skipped = map[string]int{}
	}
	c.skipped[reason]++
}

func (c *tally) report(t *testing.T, least int) {
	t.Helper()
	for _, reason := range slices.Sorted(maps.Keys(c.skipped)) {
		t.Logf("skipped %4d: %s", c.skipped[reason], reason)
	}
	t.Logf("run %d, wrong %d", c.run, c.wrong)
	require.Zero(t, c.wrong)
	require.GreaterOrEqual(t, c.run, least, "most vectors apply")
}

// outside opens a file of outside vectors, or skips the test.
func outside(t *testing.T, name string) *os.File {
	t.Helper()
	file, err := os.Open(filepath.Join("../../../shared/oracles", filepath.FromSlash(name)))
	if errors.Is(err, fs.ErrNotExist) {
		t.Skip("outside vectors not at hand")
	}
	require.NoError(t, err)
	t.Cleanup(func() { _ = file.Close() })
	return file
}

// outsideRows reads a file of comma-separated outside vectors without its header.
func outsideRows(t *testing.T, name string) [][]string {
	t.Helper()
	rows, err := csv.NewReader(outside(t, name)).ReadAll()
	require.NoError(t, err)
	return rows[1:]
}

// GNU Units writes some units by names that are refused here until their author says which
// is meant; there they have one meaning, which is the one below.
var gnuNames = map[string]string{
	"gal": "US gal", "quart": "US qt", "pint": "US pt", "floz": "US fl oz", "ton": "short ton", "mil": "thou", "Gal": "cm/s^2",
}

var gnuWord = regexp.MustCompile(`[A-Za-z]+`)

// gnuUnit finds the unit that GNU Units has under a name. It gives a reason when we have
// none.
func gnuUnit(t *testing.T, name string) (Unit, string) {
	if strings.Contains(name, "btu") || strings.Contains(name, "cal") {
		return Unit{}, "calorie and Btu are refused: several amounts of heat have the name"
	}
	u, err := FindUnit(gnuWord.ReplaceAllStringFunc(name, func(word string) string {
		if ours, ok := gnuNames[word]; ok {
			return ours
		}
		return word
	}))
	require.NoError(t, err, name)
	return u, ""
}

// Factors that the program GNU Units 2.22 works out.
func TestConversionsAgainstOutsideVectors(t *testing.T) {
	var c tally
	for _, row := range outsideRows(t, "gnu-units/conversions.csv") {
		from, reason := gnuUnit(t, row[1])
		to, second := gnuUnit(t, row[2])
		if reason != "" || second != "" {
			c.skip(max(reason, second))
			continue
		}
		c.run++
		wanted, err := strconv.ParseFloat(row[3], 64)
		require.NoError(t, err)
		factor, _ := new(big.Rat).Quo(from.Factor(), to.Factor()).Float64()
		if from.Dimension() != to.Dimension() || !(math.Abs(factor-wanted) <= 1e-12*math.Abs(wanted)) {
			c.wrong++
			t.Errorf("%v: %v against %v", row, factor, wanted)
		}
		back := to.FromSI(from.ToSI(big.NewRat(1, 1)))
		if !(math.Abs(back-wanted) <= 1e-12*math.Abs(wanted)) {
			c.wrong++
			t.Errorf("%v: %v by way of SI", row, back)
		}
	}
	c.report(t, 450)
}

// Pairs of units that GNU Units refuses to convert, and two that it converts.
func TestPairsThatDoNotConformAgainstOutsideVectors(t *testing.T) {
	var c tally
	for _, row := range outsideRows(t, "gnu-units/nonconformable.csv") {
		a, reason := gnuUnit(t, row[1])
		b, second := gnuUnit(t, row[3])
		require.Empty(t, reason+second)
		c.run++
		if (a.Dimension() == b.Dimension()) != (row[4] == "conformable") {
			c.wrong++
			t.Errorf("%v: %s and %s", row, a.Dimension(), b.Dimension())
		}
	}
	c.report(t, 180)
}

// Our spelling of units in the code of QUDT (Unified Code for Units of Measure, 2.2). A
// unit that is not here is tried as it stands.
var ucumNames = map[string]string{
	"[in_i]": "in", "[ft_i]": "ft", "[yd_i]": "yd", "[mi_i]": "mile", "[nmi_i]": "nmi", "[fth_i]": "fathom", "[rd_br]": "rod", "[fur_us]": "",
	"[lb_av]": "lb", "[oz_av]": "oz", "[gr]": "grain", "[stone_av]": "stone", "[ston_av]": "short ton", "ston_av": "short ton", "[lton_av]": "long ton",
	"[lbf_av]": "lbf", "k[lbf_av]": "kip", "[psi]": "psi", "[pdl]": "poundal", "gf": "", "kgf": "kgf", "dyn": "dyne",
	"[gal_us]": "US gal", "[gal_br]": "imp gal", "[qt_us]": "US qt", "[qt_br]": "imp qt", "[pt_us]": "US pt", "[pt_br]": "imp pt",
	"[foz_us]": "US fl oz", "[foz_br]": "imp fl oz", "har": "hectare", "[HP]": "hp", "[g]": "g0", "um": "micron", "d": "day", "wk": "week", "[kn_i]": "knot",
	"a": "", "mo": "", "u": "", "nm": "", "P": "", "G": "", "'": "arcmin", "''": "arcsec", "gon": "gon",
}

var (
	ucumFactor  = regexp.MustCompile(`^(.*?)(-?[0-9]+)?$`)
	ucumRemarks = regexp.MustCompile(`\{[^}]*\}`)
	ucumVector  = regexp.MustCompile(`^A0E(-?\d+)L(-?\d+)I0M(-?\d+)H(-?\d+)T(-?\d+)D[01]$`)
)

// ucumUnit finds the unit with a code, or gives a reason why it is not tried.
func ucumUnit(code string) (Unit, string) {
	const notKept = "a unit that is not kept here"
	if code == "" || ucumRemarks.ReplaceAllString(code, "") == "" {
		return Unit{}, "no code"
	}
	if ucumRemarks.MatchString(code) {
		return Unit{}, "the code has a remark in braces that changes its meaning"
	}
	var text []string
	for _, part := range strings.Split(code, ".") {
		found := ucumFactor.FindStringSubmatch(part)
		name, exponent := found[1], found[2]
		if ours, ok := ucumNames[name]; ok {
			name = ours
		}
		if name == "" {
			return Unit{}, notKept
		}
		if _, ok := knownUnits.factors[name]; !ok {
			return Unit{}, notKept
		}
		if exponent != "" {
			name += "^" + exponent
		}
		text = append(text, name)
	}
	u, err := FindUnit(strings.Join(text, "."))
	var fault *Fault
	if errors.As(err, &fault) {
		if fault.Code == FaultUnitWhich {
			return Unit{}, "refused here: a mass where a force may be meant"
		}
		return Unit{}, fault.Error()
	}
	return u, ""
}

// vectorDimension reads a dimension vector of QUDT, which has no angle in it.
func vectorDimension(t *testing.T, text string) Dimension {
	found := ucumVector.FindStringSubmatch(text)
	require.NotNil(t, found, text)
	var e [5]int
	for i, digits := range found[1:] {
		e[i], _ = strconv.Atoi(digits)
	}
	return dimensionOf([6]int{e[1], e[2], e[4], 0, e[3], e[0]})
}

// Factors and dimensions of the mechanical units of QUDT (QUDT.org, CC BY 4.0).
func TestFactorsAgainstQUDT(t *testing.T) {
	var c tally
	for _, row := range outsideRows(t, "qudt/units-mechanical.csv") {
		wanted, err := strconv.ParseFloat(row[4], 64)
		require.NoError(t, err)
		switch {
		case row[7] != "":
			c.skip("deprecated there")
			continue
		case wanted == 0:
			c.skip("its factor is 0.0")
			continue
		case row[5] != "":
			c.skip("has an offset")
			continue
		case row[1] == "[lb_av].[in_i]-2":
			c.skip("lb/in2 is read as psi here, a pound-force on a square inch")
			continue
		}
		u, reason := ucumUnit(row[1])
		if reason != "" {
			c.skip(reason)
			continue
		}
		c.run++
		factor, _ := u.Factor().Float64()
		dimension := u.Dimension()
		dimension.Angle = 0
		if !(math.Abs(factor-wanted) <= 1e-7*wanted) || dimension != vectorDimension(t, row[3]) {
			c.wrong++
			t.Errorf("%s %s: %v against %v, %s", row[0], row[1], factor, wanted, u.Dimension())
		}
	}
	c.report(t, 400)
}
