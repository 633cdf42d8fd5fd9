package rules

import (
	"errors"
	"maps"
	"reflect"
	"strings"
	"time"

	"github.com/expr-lang/expr/builtin"
	exprcheck "github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/checker/nature"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/types"

	"gapsheet/vehicle"
)

// The second reading. expr's own checker reads every formula of a rulebook again, against
// an environment generated from the vocabulary: numbers are float64 (counts int), dates
// time.Time, texts and choices string, parts maps of what they hold. It knows nothing of
// dimensions; it is there so that a slip in our own walk does not go unseen.

// overridden is the functions that expr has too, but that take other arguments here.
var overridden = map[string]bool{"floor": true, "ceil": true, "round": true}

// parseConfig is the configuration of expr's parser. It is only read after it is made.
func parseConfig(parts int) *conf.Config {
	config := conf.CreateNew()
	config.MaxNodes = uint(parts)
	for name := range overridden {
		config.Functions[name] = &builtin.Function{Name: name}
	}
	return config
}

// secondReading notes what expr's own checker finds wrong in a formula that has no fault
// so far.
func (c *checker) secondReading(tree *parser.Tree) {
	c.scope.names.reading.Lock() // expr fills caches inside the types of an environment
	defer c.scope.names.reading.Unlock()
	config := *c.scope.second()
	config.NtCache = nature.Cache{}
	_, err := exprcheck.Check(tree, &config)
	var found *file.Error
	switch {
	case err == nil:
	case errors.As(err, &found):
		at := Span{min(max(found.From, 0), c.runes), min(max(found.To, 0), c.runes)}
		message := strings.TrimSpace(strings.Join(strings.Fields(found.Message), " "))
		c.fault(CodeFormulaSecond, at, "Write it in smaller steps.", "The kinds do not go together here (%s).", message)
	default:
		c.fault(CodeFormulaSecond, Span{0, c.runes}, "Write it in smaller steps.", "The kinds do not go together (%s).", err)
	}
}

// environment is what the names of a scope are to expr's checker.
func (s *Scope) environment() *conf.Config {
	fields := types.Map{}
	for name, is := range s.names.base() {
		fields[name] = settled{is}
	}
	functions := maps.Clone(exprFunctions)
	for name, t := range s.names.terms {
		is := exprType(termType(t))
		if t.Given == nil {
			fields[name] = is
		} else {
			out := reflectType(termType(t))
			functions[name] = function(name, reflect.FuncOf([]reflect.Type{anyType}, []reflect.Type{out}, false))
		}
	}
	for _, b := range s.variables {
		fields[b.Name] = exprType(b.Is)
	}
	for _, g := range s.given {
		fields[g.Name] = exprType(g.Is)
	}
	config := conf.New(fields)
	config.Functions = functions
	return config
}

// termType is what a term yields, the zero type when it has a fault.
func termType(t *Term) Type {
	if t.Means == nil || t.Means.Tree == nil {
		return Type{}
	}
	return t.Means.Tree.Type()
}

// baseEnvironment is the part of the environment that all scopes of a rulebook share.
func (n *names) baseEnvironment() map[string]nature.Nature {
	days := types.Map{"inspection_day": exprDate, "first_day": exprDate, "last_day": exprDate}
	tables := types.Map{}
	for name, t := range n.tables {
		tables[name] = types.Array(exprType(Type{Kind: Row, Table: t}))
	}
	fields := types.Map{"on": exprDate, "event": days, "table": tables, "pi": types.Float64}
	for name := range unitNames() {
		fields[name] = types.Float64
	}
	if n.vocabulary != nil {
		maps.Copy(fields, exprParts(n.vocabulary.Root))
	}
	out := map[string]nature.Nature{}
	for name, is := range fields {
		out[name] = is.Nature()
	}
	return out
}

// settled is a type whose nature is worked out already.
type settled struct{ is nature.Nature }

func (s settled) Nature() nature.Nature   { return s.is }
func (s settled) Equal(t types.Type) bool { return t == types.Type(s) }
func (s settled) String() string          { return s.is.String() }

var (
	exprDate  = types.TypeOf(time.Time{})
	exprPlace = types.TypeOf(place{})
	anyType   = reflect.TypeFor[any]()
)

// place is a place on the car to expr's checker, which reads and compares nothing of it.
type place struct{}

// exprType is a type as expr's checker knows it.
func exprType(t Type) types.Type {
	switch t.Kind {
	case Truth:
		return types.Bool
	case Number:
		if t.Whole {
			return types.Int
		}
		return types.Float64
	case Date:
		return exprDate
	case Text, Choice:
		return types.String
	case Part:
		return exprParts(t.PartType)
	case Row:
		row := types.Map{}
		for _, column := range t.Table.Columns {
			row[column.Name] = exprType(column.Is)
		}
		return row
	case List:
		return types.Array(exprType(*t.Item))
	case Place:
		return exprPlace
	}
	return types.Any
}

// reflectType is the type of a function's result.
func reflectType(t Type) reflect.Type {
	switch t.Kind {
	case Truth:
		return reflect.TypeFor[bool]()
	case Number:
		if t.Whole {
			return reflect.TypeFor[int]()
		}
		return reflect.TypeFor[float64]()
	case Date:
		return reflect.TypeFor[time.Time]()
	case Text, Choice:
		return reflect.TypeFor[string]()
	}
	return anyType
}

// exprParts is a part as expr's checker knows it: its particulars and what belongs to it.
func exprParts(t *vehicle.PartType) types.Map {
	fields := types.Map{}
	for _, p := range t.Particulars {
		if t.Particular(p.Name) != p {
			continue // of a rulebook whose formulas are not read now
		}
		fields[p.Name] = exprType(typeOfParticular(p))
	}
	for _, inner := range t.Parts {
		if !inner.Repeats() && t.PartNamed(inner.Name) != inner {
			continue
		}
		part := exprParts(inner)
		if !inner.Repeats() {
			fields[inner.Name] = part
			continue
		}
		fields[inner.Name] = types.Map{types.Extra: part} // tube['12']
		fields[inner.Plural] = types.Array(part)
	}
	return fields
}

// function is a function as expr's checker knows it, by its Go types.
func function(name string, of ...reflect.Type) *builtin.Function {
	return &builtin.Function{Name: name, Types: of}
}

// exprFunctions is our functions as expr's checker knows them. Figures are any there: an
// int is no float64 to it; places and parts are too.
var exprFunctions = func() conf.FunctionsTable {
	oneFigure, twoFigures := reflect.TypeFor[func(any) float64](), reflect.TypeFor[func(any, any) float64]()
	stepped := []reflect.Type{reflect.TypeFor[func(any) int](), twoFigures}
	later, moved := reflect.TypeFor[func(time.Time, any) time.Time](), reflect.TypeFor[func(time.Time) time.Time]()
	between, asked := reflect.TypeFor[func(time.Time, time.Time) int](), reflect.TypeFor[func(any) bool]()
	chosen := reflect.TypeFor[func(...any) time.Time]()
	out := conf.FunctionsTable{}
	for name, of := range map[string][]reflect.Type{
		"floor": stepped, "ceil": stepped, "round": stepped,
		"sqrt": {oneFigure}, "sin": {oneFigure}, "cos": {oneFigure}, "tan": {oneFigure},
		"celsius": {oneFigure}, "fahrenheit": {oneFigure},
		"hypot": {twoFigures}, "atan2": {twoFigures}, "arc": {twoFigures},
		"days_after": {later}, "weeks_after": {later}, "months_after": {later}, "years_after": {later},
		"end_of_month": {moved}, "end_of_year": {moved}, "start_of_year": {moved}, "end_of_label": {moved},
		"year_of":      {reflect.TypeFor[func(time.Time) int]()},
		"days_between": {between}, "months_between": {between}, "years_between": {between},
		"earliest": {chosen}, "latest": {chosen},
		"week_year": {reflect.TypeFor[func(string) time.Time]()},
		"distance":  {twoFigures}, "clearance": {twoFigures}, "angle_between": {twoFigures}, "above": {twoFigures}, "ahead_of": {twoFigures},
		"meet":     {reflect.TypeFor[func(any, any, any) bool]()},
		"recorded": {asked}, "fitted": {asked},
		"in_band": {reflect.TypeFor[func(any, any) []any]()},
	} {
		out[name] = function(name, of...)
	}
	return out
}()
