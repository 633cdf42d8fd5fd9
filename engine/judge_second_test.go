package engine

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strings"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/builtin"
	exprchecker "github.com/expr-lang/expr/checker"
	exprcompiler "github.com/expr-lang/expr/compiler"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/optimizer"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/vm"
)

// The second judge is expr's own machine: it walks logic, conditions, lists and predicates
// by its own compiler and code. What it knows nothing of, figures with dimensions and the
// same-figure rule, is put into its tree as calls of functions on fractions.

// A secondJudge is one formula compiled for expr's machine.
type secondJudge struct {
	program *vm.Program
	run     vm.VM
	ruling  *ruling
}

// newSecondJudge compiles a formula.
func newSecondJudge(formula string) (*secondJudge, error) {
	j := &secondJudge{ruling: &ruling{}}
	config := conf.CreateNew()
	for _, name := range []string{"floor", "ceil", "round"} {
		config.Functions[name] = &builtin.Function{Name: name} // more arguments than expr's own
	}
	tree, err := parser.ParseWithConfig(formula, config)
	if err != nil {
		return nil, err
	}
	p := &patcher{}
	tree.Node = p.patch(tree.Node)
	if len(p.unknown) > 0 {
		return nil, fmt.Errorf("no way to patch %v", p.unknown)
	}
	config = conf.CreateNew()
	config.MaxNodes = 0
	j.functions(config)
	if _, err = exprchecker.Check(tree, config); err != nil {
		return nil, err
	}
	if err = optimizer.Optimize(&tree.Node, config); err != nil {
		return nil, err
	}
	j.program, err = exprcompiler.Compile(tree, config)
	return j, err
}

// rule works the formula out over an exact world; where a comparison has no answer,
// suppose is taken for one.
func (j *secondJudge) rule(env map[string]any, suppose bool) (answer bool, r ruling, err error) {
	*j.ruling = ruling{suppose: suppose}
	out, err := j.run.Run(j.program, env)
	if err != nil {
		return false, *j.ruling, err
	}
	answer, ok := out.(bool)
	if !ok {
		return false, *j.ruling, fmt.Errorf("it yields %T", out)
	}
	return answer, *j.ruling, nil
}

// functions adds what patched trees call.
func (j *secondJudge) functions(c *conf.Config) {
	yields := func(name string, f func(of []any) any, types ...any) {
		expr.Function(name, func(of ...any) (any, error) { return f(of), nil }, types...)(c)
	}
	truth := new(func(...any) bool)
	value := new(func(...any) any)
	list := new(func(...any) []any)
	for _, sense := range []string{"==", "!=", "<", "<=", ">", ">="} {
		yields("cmp"+sense, func(of []any) any { return j.ruling.compareAny(sense, of[0], of[1]) }, truth)
	}
	for name, f := range fractionFunctions {
		yields("f_"+name, func(of []any) any { return f(j.ruling, fractions(of)) }, value)
	}
	for name, f := range secondDates {
		yields("f_"+name, func(of []any) any { return f(fractions(of)) }, value)
	}
	for _, name := range []string{"sum", "min", "max", "mean", "median"} {
		yields("f_"+name, func(of []any) any { return j.ruling.gather(name, fractions(flat(of))) }, value)
	}
	for _, test := range []string{"contains", "startsWith", "endsWith", "matches"} {
		yields("t_"+test, func(of []any) any { return j.ruling.text(test, of[0], of[1].(string)) }, truth)
	}
	yields("isIn", func(of []any) any { return j.ruling.isIn(of[0], of[1].([]any)) }, truth)
	yields("member", func(of []any) any { return member(of[0], of[1].(string)) }, value)
	yields("asTruth", func(of []any) any { return j.ruling.truth(of[0]) }, truth)
	yields("asList", func(of []any) any { l, _ := of[0].([]any); return l }, list)
	yields("backwards", func(of []any) any {
		l := slices.Clone(of[0].([]any))
		slices.Reverse(l)
		return l
	}, list)
	yields("otherwise", func(of []any) any { return otherwise(of[0], of[1]) }, value)
	yields("isRecorded", func(of []any) any { return j.ruling.recorded(of[0]) }, truth)
	yields("isFitted", func(of []any) any {
		if l, ok := of[0].([]any); ok {
			return len(l) > 0
		}
		return of[0] != nil
	}, truth)
	yields("counted", func(of []any) any { return exactFraction(float64(of[0].(int)), exponents{}, true) }, value)
	yields("inBand", func(of []any) any { return j.ruling.inBand(of[0].([]any), asFraction(of[1])) }, list)
}

// fractionFunctions are functions on figures and days.
var fractionFunctions = map[string]func(r *ruling, of []*fraction) *fraction{
	"+":      func(_ *ruling, of []*fraction) *fraction { return addFractions(of[0], of[1], 1) },
	"-":      func(_ *ruling, of []*fraction) *fraction { return addFractions(of[0], of[1], -1) },
	"*":      func(_ *ruling, of []*fraction) *fraction { return multiply(of[0], of[1]) },
	"/":      func(_ *ruling, of []*fraction) *fraction { return divide(of[0], of[1]) },
	"negate": func(_ *ruling, of []*fraction) *fraction { return negateFraction(of[0]) },
	"power":  func(_ *ruling, of []*fraction) *fraction { return powerFraction(of[0], int(of[1].near)) },
	"abs": func(_ *ruling, of []*fraction) *fraction {
		if !of[0].lacking && of[0].near < 0 {
			return negateFraction(of[0])
		}
		return of[0]
	},
	"floor": func(r *ruling, of []*fraction) *fraction { return r.stepped("floor", of[0], stepOf(of)) },
	"ceil":  func(r *ruling, of []*fraction) *fraction { return r.stepped("ceil", of[0], stepOf(of)) },
	"round": func(r *ruling, of []*fraction) *fraction { return r.stepped("round", of[0], stepOf(of)) },
	"sqrt":  func(_ *ruling, of []*fraction) *fraction { return root(of[0]) },
	"hypot": func(_ *ruling, of []*fraction) *fraction {
		return fromFloats(math.Hypot, of[0], of[1], either(of[0], of[1]))
	},
	"atan2": func(_ *ruling, of []*fraction) *fraction {
		return fromFloats(math.Atan2, of[0], of[1], exponents{0, 0, 0, 1})
	},
	"sin": func(_ *ruling, of []*fraction) *fraction { return fromAngle(math.Sin, of[0]) },
	"cos": func(_ *ruling, of []*fraction) *fraction { return fromAngle(math.Cos, of[0]) },
	"tan": func(_ *ruling, of []*fraction) *fraction { return fromAngle(math.Tan, of[0]) },
	"arc": func(_ *ruling, of []*fraction) *fraction {
		f := *multiply(of[0], of[1])
		f.dimension[3] = 0
		return &f
	},
}

// stepOf is the second argument of floor, ceil and round, or one.
func stepOf(of []*fraction) *fraction {
	if len(of) > 1 {
		return of[1]
	}
	return exactFraction(1, exponents{}, true)
}

func root(a *fraction) *fraction {
	if a.lacking || a.exact.Sign() < 0 {
		return nothingThere
	}
	d := a.dimension
	for i := range d {
		d[i] /= 2
	}
	v := math.Sqrt(a.near)
	off := math.Sqrt(a.off)
	if v > 0 {
		off = a.off / v
	}
	return approximate(v, off, d)
}

func fromFloats(f func(a, b float64) float64, a, b *fraction, d exponents) *fraction {
	if lacks(a, b) {
		return nothingThere
	}
	off := a.off + b.off
	if size := math.Hypot(a.near, b.near); d != either(a, b) {
		off /= size // and without bound where both are zero and there is no direction
		if size == 0 {
			off = math.Pi
		}
	}
	return approximate(f(a.near, b.near), 2*off, d)
}

func fromAngle(f func(float64) float64, a *fraction) *fraction {
	if a.lacking {
		return nothingThere
	}
	v := f(a.near)
	return approximate(v, 4*(a.off+ulp(a.near))*(1+v*v), exponents{})
}

// asFraction takes a value of the machine for a figure.
func asFraction(v any) *fraction {
	switch v := v.(type) {
	case *fraction:
		return v.rounded()
	case int:
		return exactFraction(float64(v), exponents{}, true)
	}
	return nothingThere
}

func fractions(of []any) []*fraction {
	out := make([]*fraction, len(of))
	for i, v := range of {
		out[i] = asFraction(v)
	}
	return out
}

// flat puts the members of lists among the other arguments; a list among several is its
// own least or greatest, which comes to the same.
func flat(of []any) []any {
	var out []any
	for _, v := range of {
		if l, ok := v.([]any); ok {
			out = append(out, l...)
		} else {
			out = append(out, v)
		}
	}
	return out
}

// member reads a particular of a part, or a list of its parts. Of a part that is not there
// all particulars lack.
func member(of any, name string) any {
	part, ok := of.(map[string]any)
	if !ok || part == nil {
		if name == "straps" {
			return []any{}
		}
		return nothingThere
	}
	v, ok := part[name]
	if !ok {
		return nil // a part by a label that is not there
	}
	return v
}

func otherwise(x, y any) any {
	if f, ok := x.(*fraction); ok && f.none {
		return y
	}
	return x
}

// open is the answer of a comparison that has none.
func (r *ruling) open() bool {
	r.undefined = true
	return r.suppose
}

func (r *ruling) truth(v any) bool {
	if b, ok := v.(bool); ok {
		return b
	}
	return r.open()
}

func (r *ruling) recorded(v any) bool {
	if f, ok := v.(*fraction); ok && f.lacking {
		if f.none {
			return false
		}
		return r.open()
	}
	return true
}

// compareAny compares two values of one kind.
func (r *ruling) compareAny(sense string, a, b any) bool {
	order := 0
	switch x := a.(type) {
	case bool:
		y, ok := b.(bool)
		if !ok {
			return r.open()
		}
		if x != y {
			order = 1
		}
	case string:
		y, ok := b.(string)
		if !ok {
			return r.open()
		}
		order = strings.Compare(folded(x), folded(y))
	default:
		x1, y1 := asFraction(a), asFraction(b)
		if lacks(x1, y1) {
			return r.open()
		}
		order = r.compare(x1, y1)
	}
	switch sense {
	case "==":
		return order == 0
	case "!=":
		return order != 0
	case "<":
		return order < 0
	case "<=":
		return order <= 0
	case ">":
		return order > 0
	}
	return order >= 0
}

func folded(s string) string { return strings.ToLower(strings.Join(strings.Fields(s), " ")) }

func (r *ruling) isIn(x any, list []any) bool {
	found, undefined := false, false
	for _, y := range list {
		before := r.undefined
		r.undefined = false
		holds := r.compareAny("==", x, y)
		if undefined = undefined || r.undefined; !r.undefined && holds {
			found = true
		}
		r.undefined = before || r.undefined
	}
	return found || undefined && r.suppose
}

func (r *ruling) text(test string, of any, with string) bool {
	text, ok := of.(string)
	if !ok {
		return r.open()
	}
	text = folded(text)
	switch test {
	case "contains":
		return strings.Contains(text, folded(with))
	case "startsWith":
		return strings.HasPrefix(text, folded(with))
	case "endsWith":
		return strings.HasSuffix(text, folded(with))
	}
	return regexp.MustCompile("(?i)" + with).MatchString(text)
}

// inBand is the rows of the model's table of bands that hold a mass: from, below.
func (r *ruling) inBand(rows []any, mass *fraction) []any {
	var out []any
	for _, row := range rows {
		from, below := asFraction(member(row, "mass_from")), asFraction(member(row, "mass_below"))
		if mass.lacking {
			if r.open() {
				out = append(out, row)
			}
			continue
		}
		if (from.none || r.compare(mass, from) >= 0) && (below.none || r.compare(mass, below) < 0) {
			out = append(out, row)
		}
	}
	return out
}
