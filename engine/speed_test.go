package engine

import (
	"fmt"
	"math"
	"regexp"
	"testing"
	"time"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/vm"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A form is one form of clause in three hands: ours, expr's machine on a map, bare Go.
type form struct {
	name    string
	formula string
	same    string // for expr's machine, units folded
	plain   func(*plainCar) bool
}

type plainCar struct {
	mass, front, rear float64
	class, chassis    string
	guarded           bool
	beltsUntil        int
	tubes             []plainTube
}

type plainTube struct {
	outside, wall float64
	part          string
}

var chassisPattern = regexp.MustCompile(`(?i)^ts-[0-9]{4}$`)

var forms = []form{
	{"compare", "car.mass >= 1080*kg", "car.mass >= 1080.0", func(c *plainCar) bool { return c.mass >= 1080 }},
	{"band", "1000*kg <= car.mass and car.mass <= 1200*kg", "1000.0 <= car.mass and car.mass <= 1200.0", func(c *plainCar) bool { return c.mass >= 1000 && c.mass <= 1200 }},
	{"ratio", "car.rear / car.front >= 0.8", "car.rear / car.front >= 0.8", func(c *plainCar) bool { return c.rear/c.front >= 0.8 }},
	{"choice list", "car.class in ['open', 'production', 'junior']", "car.class in ['open', 'production', 'junior']", func(c *plainCar) bool {
		return c.class == "open" || c.class == "production" || c.class == "junior"
	}},
	{"implication", "not (car.mass > 1000*kg) or car.guarded", "not (car.mass > 1000.0) or car.guarded", func(c *plainCar) bool { return !(c.mass > 1000) || c.guarded }},
	{"regular expression", "car.chassis matches '^ts-[0-9]{4}$'", "car.chassis matches '(?i)^ts-[0-9]{4}$'", func(c *plainCar) bool { return chassisPattern.MatchString(c.chassis) }},
	{"date", "car.belts_until >= date('2027-03-14')", "car.belts_until >= 20891", func(c *plainCar) bool { return c.beltsUntil >= 20891 }},
	{"all", "all(tubes, .outside >= 38*mm and .wall >= 2*mm)", "all(tubes, .outside >= 0.038 and .wall >= 0.002)", func(c *plainCar) bool {
		for i := range c.tubes {
			if !(c.tubes[i].outside >= 0.038 && c.tubes[i].wall >= 0.002) {
				return false
			}
		}
		return true
	}},
	{"count", "count(tubes, .part == 'backstay') >= 2", "count(tubes, .part == 'backstay') >= 2", func(c *plainCar) bool {
		n := 0
		for i := range c.tubes {
			if c.tubes[i].part == "backstay" {
				n++
			}
		}
		return n >= 2
	}},
	{"sum", "sum(tubes, .outside) >= 1*metre", "sum(tubes, .outside) >= 1.0", func(c *plainCar) bool {
		total := 0.0
		for i := range c.tubes {
			total += c.tubes[i].outside
		}
		return total >= 1
	}},
	{"function", "hypot(car.front, car.rear) <= 900*kg", "hypot(car.front, car.rear) <= 900.0", func(c *plainCar) bool { return math.Hypot(c.front, c.rear) <= 900 }},
}

// plain is a sheet as bare Go, and as the map that expr's machine works on.
func plain(sheet *vehicle.Sheet, m *model) (*plainCar, map[string]any) {
	values := sheet.Root.Lists[0].Parts[0].Values
	number := func(v vehicle.Value) float64 { return v.Readings[0].Figure.Reading }
	c := &plainCar{
		mass: number(values[0]), front: number(values[1]), rear: number(values[2]),
		class: "production", chassis: values[4].Text, guarded: values[5].Truth, beltsUntil: int(values[6].Days.To),
	}
	var tubes []any
	for _, p := range sheet.Root.Lists[1].Parts {
		x := plainTube{number(p.Values[0]), number(p.Values[1]), m.parts.Choices[p.Values[2].Choice].Value}
		c.tubes = append(c.tubes, x)
		tubes = append(tubes, map[string]any{"outside": x.outside, "wall": x.wall, "part": x.part})
	}
	return c, map[string]any{
		"car": map[string]any{
			"mass": c.mass, "front": c.front, "rear": c.rear, "class": c.class, "chassis": c.chassis,
			"guarded": c.guarded, "belts_until": c.beltsUntil,
		},
		"tubes": tubes,
	}
}

func exprProgram(t testing.TB, formula string, env map[string]any) *vm.Program {
	t.Helper()
	p, err := expr.Compile(formula, expr.Env(env), expr.AsBool(), expr.Function("hypot", func(x ...any) (any, error) {
		return math.Hypot(x[0].(float64), x[1].(float64)), nil
	}, new(func(float64, float64) float64)))
	require.NoError(t, err, formula)
	return p
}

// TestFormsAgree makes sure that the three hands of a benchmark work out the same thing.
func TestFormsAgree(t *testing.T) {
	m := newModel()
	sheet := m.sheet(t, 60)
	car, env := plain(sheet, m)
	for _, f := range forms {
		node, machine := m.compiled(t, f.formula, sheet)
		require.Equal(t, quantity.Yes, node.truth(machine), f.name)
		got, err := expr.Run(exprProgram(t, f.same, env), env)
		require.NoError(t, err, f.name)
		require.Equal(t, true, got, f.name)
		require.True(t, f.plain(car), f.name)
	}
}

// TestFastWalkAllocatesNothing holds every form of clause to no allocation.
func TestFastWalkAllocatesNothing(t *testing.T) {
	m := newModel()
	sheet := m.sheet(t, 60)
	for _, f := range forms {
		node, machine := m.compiled(t, f.formula, sheet)
		require.Zero(t, testing.AllocsPerRun(100, func() { machine.decide(node) }), f.name)
	}
}

// BenchmarkForms times each form in the three hands within one run and reports how many
// times faster than expr's machine we are, and how many times slower than bare Go; the
// last lines are the geometric means.
func BenchmarkForms(b *testing.B) {
	m := newModel()
	sheet := m.sheet(b, 60)
	car, env := plain(sheet, m)
	overExpr, overGo := 0.0, 0.0
	for _, f := range forms {
		node, machine := m.compiled(b, f.formula, sheet)
		program := exprProgram(b, f.same, env)
		var run vm.VM
		ours := timed(func() { machine.decide(node) })
		theirs := timed(func() {
			if _, err := run.Run(program, env); err != nil {
				b.Fatal(err)
			}
		})
		bare := timed(func() { kept = f.plain(car) })
		fmt.Printf("%-20s ours %8.1f ns  expr %8.1f ns  go %7.1f ns  expr/ours %5.1f  ours/go %5.1f\n",
			f.name, ours, theirs, bare, theirs/ours, ours/bare)
		overExpr += math.Log(theirs / ours)
		overGo += math.Log(ours / bare)
	}
	n := float64(len(forms))
	b.ReportMetric(math.Exp(overExpr/n), "expr/ours")
	b.ReportMetric(math.Exp(overGo/n), "ours/go")
	fmt.Printf("geometric mean: %.1f times faster than expr's machine, %.1f times bare Go\n", math.Exp(overExpr/n), math.Exp(overGo/n))
}

// kept keeps the compiler from dropping what is timed.
var kept bool

// timed is the least time of one call over several short runs, in nanoseconds.
func timed(f func()) float64 {
	n, best := 1, math.Inf(1)
	for run := 0; run < 7; {
		start := time.Now()
		for range n {
			f()
		}
		took := time.Since(start)
		if took < 10*time.Millisecond {
			n *= 2
			continue
		}
		best = min(best, float64(took.Nanoseconds())/float64(n))
		run++
	}
	return best
}
