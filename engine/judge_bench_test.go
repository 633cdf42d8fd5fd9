package engine

import (
	"math"
	"slices"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A judged is one formula on the judges' model, compiled once for all worlds.
type judged struct {
	formula string
	tree    rules.Node
	program *Program
	node    truthNode
	given   []int32 // references of the names handed in

	limits map[quantity.Dimension][]float64 // what it holds figures against
	days   []float64                        // and dates
	texts  []string                         // and texts
	reads  map[*vehicle.Particular]bool     // what it asks about
	names  map[int]bool                     // names handed in that it asks about
	lists  map[*vehicle.PartType]bool       // types of part that it asks about
	asks   bool                             // it asks whether something is recorded
}

// judgeTexts are the texts that a world may hold beside those of the formula.
var judgeTexts = []string{"plain", "ts-0417", "ts-0418", "abc", "none of these"}

// newJudged checks and compiles a formula; faults are those of the checker.
func newJudged(formula string) (*judged, []rules.Fault) {
	tree, faults := rules.CheckText(formula, judgeScope(), rules.Type{Kind: rules.Truth})
	if len(faults) > 0 {
		return nil, faults
	}
	p, diagnostics := Compile(&rules.Rulebook{Vocabulary: judgeVocabulary(), Tables: judgeTables()})
	if len(diagnostics) > 0 {
		panic(diagnostics)
	}
	j := &judged{formula: formula, tree: tree, program: p}
	j.survey(tree)
	for _, g := range judgeGiven() {
		j.given = append(j.given, p.ground.lay(g))
	}
	for _, text := range slices.Concat(judgeTexts, j.texts) {
		p.ground.text(text)
	}
	p.root = int32(len(p.ground.refs))
	c := p.compiler()
	c.given = j.given
	j.node, _ = c.whole(&rules.Formula{Source: formula, Tree: tree})
	p.slots = c.most
	return j, nil
}

// survey collects what the formula asks about and what it holds it against.
func (j *judged) survey(tree rules.Node) {
	j.limits = map[quantity.Dimension][]float64{}
	j.reads, j.names, j.lists = map[*vehicle.Particular]bool{}, map[int]bool{}, map[*vehicle.PartType]bool{}
	for n := range rules.Walk(tree) {
		switch n := n.(type) {
		case *rules.Constant:
			j.constant(n)
		case *rules.Rows:
			j.table(n.Table)
		case *rules.InBand:
			j.table(n.Table)
		case *rules.TextTest:
			j.texts = append(j.texts, n.Text)
		case *rules.Read:
			j.reads[n.Particular] = true
		case *rules.Recorded:
			j.asks = true
		case *rules.Given:
			j.names[n.Index] = true
		case *rules.Root:
			j.lists[n.IsPart] = true
		case *rules.Parts:
			j.lists[n.IsPart] = true
		case *rules.Pick:
			j.lists[n.IsPart] = true
		}
	}
	slices.Sort(j.texts)
	j.texts = slices.Compact(j.texts)
}

func (j *judged) constant(n *rules.Constant) {
	switch is := n.Type(); is.Kind {
	case rules.Number:
		j.limits[is.Dimension] = append(j.limits[is.Dimension], n.Number)
	case rules.Date:
		j.days = append(j.days, float64(n.Days.From))
	case rules.Text:
		j.texts = append(j.texts, n.Text)
	}
}

func (j *judged) table(t *rules.Table) {
	for _, row := range t.Rows {
		for i, cell := range row {
			if d := t.Columns[i].Is.Dimension; !cell.Empty && !d.IsNone() {
				j.limits[d] = append(j.limits[d], cell.Figure.Reading)
			}
		}
	}
}

// machine lays a world out for the formula.
func (j *judged) machine(w *world) (*machine, *Car) {
	sheet := w.sheet()
	c := j.program.Car(sheet)
	c.label(w.root, sheet.Root)
	m := c.machine(j.program, false, Request{Day: w.on})
	for i, ref := range j.given {
		facts := w.given[i]
		if len(facts) == 1 {
			at := &m.cells[m.refs[ref]]
			*at = facts[0].cell(*at, c.numbers)
			continue
		}
		for k, base := range m.lists[m.refs[ref]].elements {
			at := &m.cells[m.refs[base]]
			*at = facts[k].cell(*at, c.numbers)
		}
	}
	return m, c
}

// label gives the dates of a part the labels they were written with.
func (c *Car) label(b *block, p *vehicle.Part) {
	for i, x := range b.of.Particulars {
		if x.Kind == vehicle.KindDate && b.facts[i].state == vehicle.Stated {
			at := c.refs[c.bases[p]+particularOffset(x)]
			c.full[at].label = b.facts[i].label
		}
	}
	for i := range b.lists {
		for k, of := range b.lists[i].of {
			c.label(of, p.Lists[i].Parts[k])
		}
	}
}

// answer is what the engine says of the formula in a world.
func (j *judged) answer(w *world) quantity.Truth {
	m, _ := j.machine(w)
	return m.decide(j.node)
}

// interesting are numbers of a dimension at which the formula may change its answer: each
// limit, its neighbours, and where the same figure ends.
func (j *judged) interesting(d quantity.Dimension) []float64 {
	var all []float64
	for _, v := range j.limits[d] {
		all = append(all, around(v)...)
	}
	if !d.IsNone() {
		all = append(all, j.limits[quantity.Plain]...)
	}
	return all
}

// around is a limit, its neighbours, and what is 1e-9 of it off.
func around(v float64) []float64 {
	up, down := math.Nextafter(v, math.Inf(1)), math.Nextafter(v, math.Inf(-1))
	return []float64{v, up, down, v * (1 + 1e-9), v * (1 - 1e-9), v * (1 + 3e-9), v * (1 - 3e-9)}
}
