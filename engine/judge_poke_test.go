package engine

import (
	"fmt"

	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A poker goes through exact worlds that agree with one quickly: it lays the world out once
// and then puts exact cells in the place of those that are open.
type poker struct {
	j       *judged
	machine *machine
	names   []string // of the open facts
	missing []bool   // whether nothing at all is known of them
	at      []int32
	options [][]cell
}

// poker makes a poker for a world whose lists are settled. The options of facts are those
// that options gives.
func (d *drawer) poker(w *world, finer bool) *poker {
	d.collect(w)
	m, c := d.j.machine(w)
	where := d.j.cells(w, c, m)
	p := &poker{j: d.j, machine: m}
	k := 0
	w.eachFact(func(name string, x *vehicle.Particular, f *fact) {
		at := k
		k++
		if f.exact() {
			return
		}
		var options []cell
		for _, of := range d.options(x, kindOfName(name, x), f, finer) {
			v := w.clone()
			*v.fact(at) = of
			laid, _ := d.j.machine(v)
			options = append(options, laid.cells[where[name]])
		}
		p.names = append(p.names, name)
		p.missing = append(p.missing, f.state == vehicle.Nothing)
		p.at = append(p.at, where[name])
		p.options = append(p.options, options)
	})
	return p
}

// fact is the fact at a place in the order of eachFact.
func (w *world) fact(at int) (found *fact) {
	i := 0
	w.eachFact(func(_ string, _ *vehicle.Particular, f *fact) {
		if i == at {
			found = f
		}
		i++
	})
	return found
}

// combinations is how many exact worlds there are, at most limit.
func (p *poker) combinations(limit int) int {
	n := 1
	for _, options := range p.options {
		if n *= len(options); n > limit {
			return limit
		}
	}
	return n
}

// answer is the answer in the exact world that choose picks.
func (p *poker) answer(choose choosing) quantity.Truth {
	for i, options := range p.options {
		p.machine.cells[p.at[i]] = options[choose(len(options))]
	}
	return p.machine.decide(p.j.node)
}

// number picks combination number n.
func (p *poker) number(n int) quantity.Truth {
	return p.answer(func(of int) int {
		pick := n % of
		n /= of
		return pick
	})
}

// cells says which cell holds which fact, by the name of the fact.
func (j *judged) cells(w *world, c *Car, m *machine) map[string]int32 {
	where := map[string]int32{}
	for i, ref := range j.given {
		name := judgeGivenWords[i][0]
		if len(w.given[i]) == 1 {
			where[name] = m.refs[ref]
			continue
		}
		for k, base := range m.lists[m.refs[ref]].elements {
			where[fmt.Sprintf("%s %d", name, k+1)] = m.refs[base]
		}
	}
	w.root.cells(c, c.Sheet.Root, "", where)
	return where
}

func (b *block) cells(c *Car, p *vehicle.Part, path string, to map[string]int32) {
	for _, x := range b.of.Particulars {
		to[path+x.Name] = c.refs[c.bases[p]+particularOffset(x)]
	}
	for i := range b.lists {
		for k, of := range b.lists[i].of {
			of.cells(c, p.Lists[i].Parts[k], path+of.name(k)+".", to)
		}
	}
}

// name is the part as facts about it are named.
func (b *block) name(k int) string {
	if b.of.Repeats() {
		return fmt.Sprintf("%s %d", b.of.Name, k+1)
	}
	return b.of.Name
}
