package engine

import (
	"strconv"
	"strings"
	"sync"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// The judges work on a small vocabulary of their own, so that all that a car may be can be
// gone through. A line without indent is a part: its name, its plural where there can be
// several, the part it belongs to behind "of". A line with an indent is a particular: its
// name, its kind, its plausible range in SI, and "absent" where it may be stated as none.
const judgeWords = `
car
  mass mass 300 4000
  front mass 100 2000
  rear mass 100 2000
  class classes
  chassis text
  guarded truth
  belts_until date
  doors count 0 6
  grip number 0 2
  dent length 0 0.02 absent
  spare_until date absent
  hydraulic truth absent
  shade classes absent
  seal text absent
  wheels count 0 8 absent
fire_system
  charge mass 1 20
  made date
  armed truth
  nozzles count 0 12
tube tubes
  outside length 0.01 0.12
  wall length 0.0005 0.01
  part parts
  straight truth
  bends count 0 5
  scar length 0 0.02 absent
  cast text
  made date
  lean angle -1.6 1.6
harness harnesses
  points count 4 8
  until date
strap straps of harness
  width length 0.03 0.1
  damaged truth
`

// judgeClasses and judgeParts are the choices of the model.
var (
	judgeClasses = choiceList("class", "open", "production", "historic", "junior")
	judgeParts   = choiceList("tube part", "main hoop", "front hoop", "backstay", "diagonal")
	judgeLabels  = choiceList("harness", "driver", "co-driver")
)

func choiceList(name string, values ...string) *vehicle.ChoiceList {
	l := &vehicle.ChoiceList{Name: name}
	for _, v := range values {
		l.Choices = append(l.Choices, vehicle.Choice{Value: v})
	}
	return l
}

// firstDay and lastDay bound the dates of the model: 1 January 1990 to 13 July 2059.
const (
	firstDay = 7305
	lastDay  = 32700
)

// judgeVocabulary is the vocabulary of judgeWords.
var judgeVocabulary = sync.OnceValue(func() *vehicle.Vocabulary {
	root := &vehicle.PartType{Name: "sheet"}
	types := map[string]*vehicle.PartType{}
	var part *vehicle.PartType
	for line := range strings.SplitSeq(strings.TrimSpace(judgeWords), "\n") {
		words := strings.Fields(line)
		if line[0] != ' ' {
			part = judgePart(root, types, words)
			continue
		}
		judgeParticular(part, words)
	}
	types["harness"].Labels = judgeLabels
	return &vehicle.Vocabulary{Root: root}
})

func judgePart(root *vehicle.PartType, types map[string]*vehicle.PartType, words []string) *vehicle.PartType {
	t := &vehicle.PartType{Name: words[0], Within: root}
	if len(words) > 1 {
		t.Plural, t.Labelled = words[1], true
	}
	if len(words) > 3 {
		t.Within = types[words[3]]
	}
	t.Index = len(t.Within.Parts)
	t.Within.Parts = append(t.Within.Parts, t)
	types[t.Name] = t
	return t
}

func judgeParticular(t *vehicle.PartType, words []string) {
	x := &vehicle.Particular{Name: words[0], Part: t, Index: len(t.Particulars)}
	x.MayBeAbsent = words[len(words)-1] == "absent"
	t.Particulars = append(t.Particulars, x)
	switch words[1] {
	case "classes":
		x.Kind, x.Choices = vehicle.KindChoice, judgeClasses
	case "parts":
		x.Kind, x.Choices = vehicle.KindChoice, judgeParts
	case "text":
		x.Kind = vehicle.KindText
	case "truth":
		x.Kind = vehicle.KindTruth
	case "date":
		x.Kind = vehicle.KindDate
		x.PlausibleDays = quantity.DayRange{From: firstDay, To: lastDay}
	case "count":
		x.Kind = vehicle.KindCount
	default:
		x.Kind = vehicle.KindNumber
		x.Dimension, _ = quantity.DimensionNamed(words[1])
		x.Unit = quantity.UsualUnit(x.Dimension)
	}
	if x.Kind == vehicle.KindCount || x.Kind == vehicle.KindNumber {
		x.Plausible.Low, _ = strconv.ParseFloat(words[2], 64)
		x.Plausible.High, _ = strconv.ParseFloat(words[3], 64)
	}
}

// judgeTables are the tables of the model: pairs of sizes, and bands by mass of which one
// end each is without bound.
var judgeTables = sync.OnceValue(func() []*rules.Table {
	length := rules.Type{Kind: rules.Number, Dimension: quantity.Length}
	mass := rules.Type{Kind: rules.Number, Dimension: quantity.Mass}
	return []*rules.Table{
		judgeTable("sizes", nil, []rules.Column{{Name: "outside", Is: length}, {Name: "wall", Is: length}},
			"45 mm|2.5 mm", "50 mm|2 mm", "1.75 in|.095 in"),
		judgeTable("bands", &rules.Band{Low: 0, High: 1, HighOpen: true},
			[]rules.Column{{Name: "mass_from", Is: mass}, {Name: "mass_below", Is: mass}, {Name: "outside", Is: length}, {Name: "tubes_wanted", Is: rules.Type{Kind: rules.Number, Whole: true}}},
			"|1000 kg|38 mm|1", "1000 kg|1500 kg|40 mm|2", "1500 kg||45 mm|3"),
	}
})

func judgeTable(name string, band *rules.Band, columns []rules.Column, rows ...string) *rules.Table {
	t := &rules.Table{Name: name, Band: band, Columns: columns}
	for _, row := range rows {
		var cells []rules.TableCell
		for text := range strings.SplitSeq(row, "|") {
			if text == "" {
				cells = append(cells, rules.TableCell{Empty: true})
				continue
			}
			f, fault := quantity.ParseFigure(text)
			if fault != nil {
				panic(fault)
			}
			cells = append(cells, rules.TableCell{Figure: f})
		}
		t.Rows = append(t.Rows, cells)
	}
	return t
}

// judgeTerms are the terms of the model, in the words that both judges read.
var judgeTermTexts = []struct{ name, given, means string }{
	{"stout", "tube", "tube.outside >= 40*mm and tube.wall >= 2*mm"},
	{"heavy", "", "car.mass > 1200*kg"},
	{"spread", "", "max(map(tubes, .outside)) - min(map(tubes, .outside))"},
}

// judgeScope is the scope that formulas of the judges are checked against.
var judgeScope = sync.OnceValue(func() *rules.Scope {
	scope := rules.NewScope(judgeVocabulary(), judgeTables()...)
	tube := judgeVocabulary().Root.PartNamed("tube")
	for _, text := range judgeTermTexts {
		t := &rules.Term{Name: text.name}
		inner := scope
		if text.given != "" {
			t.Given = &rules.Binding{Name: text.given, Is: rules.Type{Kind: rules.Part, PartType: tube}}
			inner = scope.With(t.Given)
		}
		tree, faults := rules.CheckText(text.means, inner, rules.Type{})
		if len(faults) > 0 {
			panic(faults[0])
		}
		t.Means = &rules.Formula{Source: text.means, Tree: tree}
		scope = scope.WithTerms(t)
	}
	return Scope(scope, judgeGiven())
})

// judgeGivenWords are the names handed in, by kind.
var judgeGivenWords = [][2]string{
	{"a", "truth"}, {"b", "truth"}, {"c", "truth"},
	{"x", "length"}, {"y", "length"}, {"z", "length"},
	{"u", "mass"}, {"v", "mass"},
	{"p", "number"}, {"q", "number"},
	{"i", "count"}, {"j", "count"},
	{"d", "date"}, {"e", "date"},
	{"s", "text"}, {"t", "text"},
	{"xs", "list"},
}

// judgeListLength is how many members the list that is handed in has.
const judgeListLength = 3

// judgeGiven are the names handed in, all missing; a world says what they are.
func judgeGiven() []Given {
	var all []Given
	for _, words := range judgeGivenWords {
		name, kind := words[0], words[1]
		if kind == "list" {
			item := rules.Type{Kind: rules.Number, Dimension: quantity.Length}
			g := Given{Name: name, Is: rules.Type{Kind: rules.List, Item: &item}}
			for range judgeListLength {
				of, _ := GivenMissing("", "length")
				g.list = append(g.list, of)
			}
			all = append(all, g)
			continue
		}
		g, err := GivenMissing(name, kind)
		if err != nil {
			panic(err)
		}
		all = append(all, g)
	}
	return all
}
