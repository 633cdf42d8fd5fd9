package engine

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A Program is a compiled rulebook. It is read-only and may be used by several
// goroutines at once.
type Program struct {
	Book *rules.Rulebook

	ground  ground
	root    int32
	slots   int32
	clauses []*compiledClause
	numbers map[*rules.Clause]*compiledClause
}

// A compiledClause is a clause ready to be worked.
type compiledClause struct {
	*rules.Clause
	across   []source
	applies  truthNode // yes where the clause has none
	where    truthNode
	demand   truthNode
	guard    truthNode  // applies and where
	whole    truthNode  // guard implies demand
	asAt     numberNode // day by whose rules it is judged, nil for the day of the check
	stage    vehicle.Stage
	mentions mentions
	traces   struct{ applies, where, demand *trace }
}

// Compile makes a program of a checked rulebook. A formula that grows past all reason
// once its terms and lists are put in place is a fault at its place.
func Compile(book *rules.Rulebook) (*Program, hcl.Diagnostics) {
	p := &Program{Book: book, numbers: map[*rules.Clause]*compiledClause{}}
	p.ground = *newGround()
	for _, t := range book.Tables {
		p.ground.table(t)
	}
	p.root = int32(len(p.ground.refs))
	var faults hcl.Diagnostics
	for _, chapter := range book.Chapters {
		for _, clause := range chapter.Clauses {
			made, fault := p.clause(clause)
			if fault != nil {
				faults = append(faults, fault)
				continue
			}
			p.clauses = append(p.clauses, made)
			p.numbers[clause] = made
		}
	}
	return p, faults
}

func (p *Program) compiler() *compiler {
	return &compiler{ground: &p.ground, root: p.root, names: map[*rules.Binding]meaning{}}
}

// clause compiles one clause.
func (p *Program) clause(clause *rules.Clause) (made *compiledClause, fault *hcl.Diagnostic) {
	c := p.compiler()
	defer func() {
		p.slots = max(p.slots, c.most)
		if r := recover(); r != nil {
			if _, ok := r.(tooLarge); !ok {
				panic(r)
			}
			made, fault = nil, vehicle.Fault("formula-too-large", clause.Range, "Formula too large",
				fmt.Sprintf("Clause %s has more than %d parts once its terms and lists are put in place. Split it into several clauses, or into terms that are used once.", clause.Number, sizeLimit))
		}
	}()
	made = &compiledClause{Clause: clause}
	for _, across := range clause.Across {
		slot := c.slot()
		c.formula = across.List
		list := c.list(across.List.Tree, slot)
		c.bind(across.Binding, list)
		made.across = append(made.across, list)
	}
	made.applies, made.traces.applies = c.whole(clause.Applies)
	made.where, made.traces.where = c.whole(clause.Where)
	c.allowance, c.allowed = clause.Allowance, clause.AllowanceDimension
	made.demand, made.traces.demand = c.whole(clause.Demand)
	if f := clause.AsAt; f != nil {
		c.formula, c.trace, c.size, c.allowance = f, &trace{}, 0, 0
		made.asAt = c.number(f.Tree)
		c.trace = nil
	}
	made.guard = &logic{of: []truthNode{made.applies, made.where}}
	made.whole = &logic{any: true, of: []truthNode{&not{made.guard}, made.demand}}
	made.stage, made.mentions = stageOf(clause), mentionsOf(clause)
	return made, nil
}

// whole compiles a formula of a clause; one that is not there holds.
func (c *compiler) whole(f *rules.Formula) (truthNode, *trace) {
	if f == nil {
		return &constantTruth{quantity.Yes}, nil
	}
	top := &trace{}
	c.formula, c.trace, c.size = f, top, 0
	made := c.truth(f.Tree)
	c.trace = nil
	return made, top.of[0]
}

// stageOf is when a clause is due: as its author says, else when the last of the
// particulars that it reads can be known, else before the event.
func stageOf(c *rules.Clause) vehicle.Stage {
	if c.Stage != vehicle.StageUnset {
		return c.Stage
	}
	stage := vehicle.StageUnset
	for _, f := range []*rules.Formula{c.AsAt, c.Applies, c.Where, c.Demand} {
		if f == nil {
			continue
		}
		for n := range rules.Walk(f.Tree) {
			if read, ok := n.(*rules.Read); ok {
				stage = max(stage, read.Particular.Stage)
			}
		}
	}
	if stage == vehicle.StageUnset {
		return vehicle.StageBeforeEvent
	}
	return stage
}
