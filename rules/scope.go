package rules

import (
	"maps"
	"math/big"
	"slices"
	"sync"

	"github.com/expr-lang/expr/checker/nature"
	"github.com/expr-lang/expr/conf"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// usualParts is how many parts expr's tree of a rulebook's formula may have.
const usualParts = 500

// Scope says what the names in a formula mean. It is made once for a rulebook and never
// changed; the With functions return scopes that know more. A scope may be used by several
// goroutines at once.
type Scope struct {
	names     *names
	variables []*Binding
	given     []GivenName
	quick     bool
	second    func() *conf.Config // what expr's own check is run against
}

// GivenName is a name handed in from outside the formula, such as try --let x=45mm.
type GivenName struct {
	Name string
	Is   Type
}

// names is what all formulas of a rulebook share.
type names struct {
	vocabulary *vehicle.Vocabulary
	tables     map[string]*Table
	terms      map[string]*Term
	parts      int // how many parts expr's tree may have
	parse      *conf.Config
	base       func() map[string]nature.Nature // vocabulary and tables as expr's check knows them
	reading    *sync.Mutex
}

// unitName is a unit under the name it has in formulas.
type unitName struct {
	unit   quantity.Unit
	factor *big.Rat // never written to
	si     float64  // one of the unit, in SI
	is     Type
}

// unitNames is every unit that can be named in a formula.
var unitNames = sync.OnceValue(func() map[string]*unitName {
	units := map[string]*unitName{}
	for _, u := range quantity.FormulaUnits() {
		if units[u.Formula()] != nil {
			continue // N/mm2 after MPa
		}
		factor := u.Factor()
		si, _ := factor.Float64()
		units[u.Formula()] = &unitName{u, factor, si, Type{Kind: Number, Dimension: u.Dimension()}}
	}
	return units
})

// NewScope returns the scope of formulas that see the particulars of a vocabulary and
// tables. Of two tables with one name the first counts.
func NewScope(v *vehicle.Vocabulary, tables ...*Table) *Scope {
	n := &names{vocabulary: v, tables: map[string]*Table{}, parts: usualParts, parse: parseConfig(usualParts), reading: new(sync.Mutex)}
	for _, t := range slices.Backward(tables) {
		n.tables[t.Name] = t
	}
	n.base = sync.OnceValue(n.baseEnvironment)
	s := &Scope{names: n}
	return s.fresh()
}

// fresh gives a scope its own, not yet built, environment for expr's check.
func (s *Scope) fresh() *Scope {
	s.second = sync.OnceValue(s.environment)
	return s
}

// WithTerms returns a scope that also knows terms, which must be checked already: a term
// whose Means.Tree is nil is one that has a fault, and no use of it is a fault again.
func (s *Scope) WithTerms(terms ...*Term) *Scope {
	n := *s.names
	n.terms = maps.Clone(s.names.terms)
	if n.terms == nil {
		n.terms = map[string]*Term{}
	}
	for _, t := range terms {
		n.terms[t.Name] = t
	}
	out := *s
	out.names = &n
	return out.fresh()
}

// With returns a scope in which the bindings' names are variables: those of a
// clause's across, or of a term's given.
func (s *Scope) With(bindings ...*Binding) *Scope {
	out := *s
	out.variables = append(slices.Clip(s.variables), bindings...)
	return out.fresh()
}

// Binding returns the variable of the scope with a name, nil when there is none.
func (s *Scope) Binding(name string) *Binding {
	for _, b := range slices.Backward(s.variables) {
		if b.Name == name {
			return b
		}
	}
	return nil
}

// WithGiven returns a scope that also knows names handed in from outside, by position in
// given. They win over every other name except the variables of a let.
func (s *Scope) WithGiven(given ...GivenName) *Scope {
	out := *s
	out.given = given
	return out.fresh()
}

// Quick returns a scope for working through many formulas that no rulebook holds: without
// the second reading by expr's own check, and with at most parts parts a formula.
func (s *Scope) Quick(parts int) *Scope {
	n := *s.names
	n.parts, n.parse = parts, parseConfig(parts)
	out := *s
	out.names, out.quick = &n, true
	return &out
}

// root returns the type of parts of the car itself that has name as its singular, or as
// its plural.
func (s *Scope) root(name string) (t *vehicle.PartType, plural bool) {
	if s.names.vocabulary == nil {
		return nil, false
	}
	return within(s.names.vocabulary.Root, name)
}

// within returns the type of parts that belong to of and has name as its singular, or as
// its plural.
func within(of *vehicle.PartType, name string) (t *vehicle.PartType, plural bool) {
	if t = of.PartNamed(name); t != nil {
		return t, false
	}
	if t = of.PartsNamed(name); t != nil {
		return t, true
	}
	return nil, false
}
