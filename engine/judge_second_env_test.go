package engine

import (
	"sync"

	"gapsheet/vehicle"
)

// kindWords are the kinds of particulars as the second judge tells them apart.
var kindWords = map[vehicle.Kind]string{
	vehicle.KindNumber: "number", vehicle.KindCount: "count", vehicle.KindDate: "date",
	vehicle.KindText: "text", vehicle.KindChoice: "choice", vehicle.KindTruth: "truth",
}

// env puts a part's particulars and the parts it has into a map for expr's machine.
func (b *block) env(to map[string]any) {
	for i, x := range b.of.Particulars {
		to[x.Name] = b.facts[i].env(kindWords[x.Kind], exponentsOf(x.Dimension), x.Choices)
	}
	for i, t := range b.of.Parts {
		of := b.lists[i].of
		if !t.Repeats() {
			to[t.Name] = nil
			if len(of) > 0 {
				part := map[string]any{}
				of[0].env(part)
				to[t.Name] = part
			}
			continue
		}
		list, byLabel := []any{}, map[string]any{}
		for _, one := range of {
			part := map[string]any{}
			one.env(part)
			list = append(list, part)
			byLabel[one.label] = part
		}
		to[t.Plural], to[t.Name] = list, byLabel
	}
}

// env is a fact as expr's machine reads it.
func (f *fact) env(kind string, d exponents, choices *vehicle.ChoiceList) any {
	if f.state == vehicle.None {
		return &fraction{lacking: true, none: true}
	}
	switch kind {
	case "truth":
		return f.truth
	case "text":
		return f.text
	case "choice":
		return choices.Choices[int(f.low)].Value
	case "date":
		return dayFraction(f.low, f.label)
	case "count":
		return exactFraction(f.low, d, true)
	}
	return exactFraction(f.low, d, false)
}

// tablesEnv is the model's tables for expr's machine.
var tablesEnv = sync.OnceValue(func() map[string]any {
	tables := map[string]any{}
	for _, t := range judgeTables() {
		rows := []any{}
		for _, cells := range t.Rows {
			row := map[string]any{}
			for i, c := range t.Columns {
				if cells[i].Empty {
					row[c.Name] = &fraction{lacking: true, none: true}
					continue
				}
				row[c.Name] = exactFraction(cells[i].Figure.Reading, exponentsOf(c.Is.Dimension), c.Is.Whole)
			}
			rows = append(rows, row)
		}
		tables[t.Name] = rows
	}
	return tables
})
