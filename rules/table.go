package rules

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle"
)

// mostColumns is how many columns a table may have: more can no longer be read in one row.
const mostColumns = 100

var tableKeys = []string{"columns", "rows", "rows_from", "issued", "bands"}

// rawRow is a row of a table as written, in the order of its columns.
type rawRow struct {
	cells []rawCell
	at    hcl.Range
}

// rawCell is a cell as written, inline or in a CSV file.
type rawCell struct {
	text  string
	place func(from, to int) hcl.Range // of the runes of text
	all   hcl.Range
}

// readTables reads the tables. Every table with a usable header becomes known to formulas,
// so that a wrong cell is told once, in the table.
func (l *loader) readTables() {
	places := map[string]hcl.Range{}
	for _, block := range l.blocks["table"] {
		name, ok := l.nameOf(block, "table", `"hoop_sizes"`, places)
		f := l.fieldsOf(block, strings.TrimSpace("table "+name), tableKeys, nil)
		table := &Table{Name: name, Range: vehicle.HeaderOf(block.Block)}
		if !f.want("columns", `{ outside = "tube.outside" }`) || !l.readColumns(table, f) {
			continue
		}
		table.Issued, _ = f.days("issued")
		table.Band = l.readBands(table, f)
		l.readCells(table, l.readRows(table, f))
		if ok {
			l.book.Tables = append(l.book.Tables, table)
		}
	}
	l.scope = NewScope(l.book.Vocabulary, l.book.Tables...)
}

// nameOf reads the label of a table or term: a name for formulas, given once.
func (l *loader) nameOf(block located, what, example string, places map[string]hcl.Range) (name string, ok bool) {
	if name, ok = l.label(block, what, example); !ok {
		return "", false
	}
	at := block.LabelRanges[0]
	if found := l.nameFault(name); found != "" {
		l.report(vehicle.Fault("name-taken", at, "A name that cannot be used", fmt.Sprintf(
			"Found %s as name of a %s. %s", vehicle.Quote(name), what, found)))
		return "", false
	}
	if first, twice := places[name]; twice {
		l.report(vehicle.SaidTwice(at, what+" "+name, first))
		return name, false
	}
	places[name] = at
	return name, true
}

// item is one name = value of a group in braces.
type item struct {
	name  string
	at    hcl.Range // of the name
	value hclsyntax.Expression
}

// group reads a group in braces in the order of the file; each name once.
func (f *fields) group(key, example string) []item {
	e, ok := f.value(key).(*hclsyntax.ObjectConsExpr)
	if !ok {
		f.fault("group-wanted", f.at(key), "A group is wanted", fmt.Sprintf(
			"Found %s as %s of the %s. Write a group in braces: %s = %s.", vehicle.Describe(f.value(key)), key, f.what, key, example))
		return nil
	}
	var items []item
	for _, pair := range e.Items {
		name := hcl.ExprAsKeyword(pair.KeyExpr)
		if name == "" {
			t, ok := f.textOf(key, pair.KeyExpr)
			if !ok {
				continue
			}
			name = t.text
		}
		at := pair.KeyExpr.Range()
		if i := slices.IndexFunc(items, func(o item) bool { return o.name == name }); i >= 0 {
			f.report(vehicle.SaidTwice(at, name, items[i].at))
			continue
		}
		items = append(items, item{name, at, pair.ValueExpr})
	}
	return items
}

// readColumns reads the columns; not ok when a cell could not be told to be right or wrong.
func (l *loader) readColumns(t *Table, f *fields) (ok bool) {
	items := f.group("columns", `{ outside = "tube.outside", pieces = "count" }`)
	ok = 0 < len(items) && len(items) <= mostColumns
	if len(items) > mostColumns {
		f.fault("columns-too-many", f.at("columns"), "Too many columns", fmt.Sprintf(
			"Found %d columns in the %s; a table has at most %d.", len(items), f.what, mostColumns))
		return false
	}
	for _, item := range items {
		if found := l.columnNameFault(item.name); found != "" {
			f.fault("name-taken", item.at, "A name that cannot be used", fmt.Sprintf(
				"Found %s as name of a column. %s", vehicle.Quote(item.name), found))
			ok = false
		}
		column, good := l.column(f, item)
		ok = ok && good
		t.Columns = append(t.Columns, column)
	}
	if object, is := f.value("columns").(*hclsyntax.ObjectConsExpr); is && len(object.Items) == 0 {
		f.fault("columns-missing", f.at("columns"), "No columns", fmt.Sprintf(
			"The %s has no column. Name at least one: columns = { outside = \"tube.outside\" }.", f.what))
	}
	return ok
}

// columnNameFault says why a column cannot have a name. Roots of the car are free: a
// column is always read of a row.
func (l *loader) columnNameFault(name string) string {
	if !nameForm.MatchString(name) {
		return "A name is written in small letters a to z, digits and underlines, and begins with a letter."
	}
	if means := Reserved(name, nil); means != "" {
		return fmt.Sprintf("It is %s in every formula. Choose another name.", means)
	}
	return ""
}

// column reads what a column holds: "count", "text", "truth", or a particular whose kind
// it has, "tube.outside".
func (l *loader) column(f *fields, item item) (c Column, ok bool) {
	c.Name = item.name
	t, ok := f.textOf("columns", item.value)
	if !ok {
		return c, false
	}
	switch kind := strings.TrimSpace(t.text); kind {
	case "count":
		c.Is = Type{Kind: Number, Whole: true}
		return c, true
	case "text":
		c.Is = Type{Kind: Text}
		return c, true
	case "truth":
		c.Is = Type{Kind: Truth}
		return c, true
	default:
		found, advice := "", ""
		if c.Like, found, advice = l.particular(kind); c.Like == nil {
			f.fault("column-kind", t.all, "Not the kind of a column", fmt.Sprintf(
				"Found %s as kind of the column %s. %s %s Or write \"count\", \"text\" or \"truth\".", vehicle.Quote(kind), item.name, found, advice))
			return c, false
		}
	}
	c.Is = typeOfParticular(c.Like)
	return c, true
}

// particular finds a particular by its path, "tube.outside" or "harness.strap.not_after".
// Without one it says what was found and what to write.
func (l *loader) particular(path string) (p *vehicle.Particular, found, advice string) {
	words := strings.Split(path, ".")
	if len(words) < 2 {
		return nil, "This names no particular.", "Write a part and a particular of it, as in \"tube.outside\"."
	}
	part := l.book.Vocabulary.Type(words[0])
	if part == nil {
		return nil, fmt.Sprintf("There is no part %s.", vehicle.Quote(words[0])), near(words[0], l.partNames())
	}
	for _, word := range words[1 : len(words)-1] {
		inner := part.PartNamed(word)
		if inner == nil {
			return nil, fmt.Sprintf("The part %s has no part %s.", part.Name, vehicle.Quote(word)), near(word, namesOf(part.Parts))
		}
		part = inner
	}
	last := words[len(words)-1]
	p = part.Particular(last)
	switch {
	case p == nil:
		return nil, fmt.Sprintf("The part %s has no particular %s.", part.Name, vehicle.Quote(last)), near(last, particularNames(part))
	case p.Kind == vehicle.KindSize:
		return nil, fmt.Sprintf("%s is a pair of figures.", path), fmt.Sprintf(
			"Write a column each for %s.%s and %s.%s.", part.Name, p.Fills[0], part.Name, p.Fills[1])
	case p.Kind == vehicle.KindPoint:
		return nil, fmt.Sprintf("%s is a place, three figures.", path), fmt.Sprintf(
			"Write a column each for %s.%s, %s.%s and %s.%s.", part.Name, p.Fills[0], part.Name, p.Fills[1], part.Name, p.Fills[2])
	case p.Kind == vehicle.KindPartNames:
		return nil, fmt.Sprintf("%s names several parts.", path), "Write a particular that is one value."
	}
	return p, "", ""
}

// near is the advice for a name that is not known.
func near(word string, known []string) string {
	if name := vehicle.Nearest(word, known); name != "" {
		return "Did you mean " + name + "?"
	}
	return "Look at its spelling."
}

func (l *loader) partNames() []string { return namesOf(l.book.Vocabulary.Types()) }

func namesOf(types []*vehicle.PartType) []string {
	names := make([]string, len(types))
	for i, t := range types {
		names[i] = t.Name
	}
	return names
}

func particularNames(t *vehicle.PartType) []string {
	names := make([]string, len(t.Particulars))
	for i, p := range t.Particulars {
		names[i] = p.Name
	}
	return names
}
