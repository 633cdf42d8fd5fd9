package engine

import (
	"fmt"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// A model is a small vocabulary with a car and tubes, built by hand, so that tests of the
// engine do not hang on the real one.
type model struct {
	vocabulary *vehicle.Vocabulary
	car, tube  *vehicle.PartType
	parts      *vehicle.ChoiceList
}

func newModel() *model {
	choices := func(name string, values ...string) *vehicle.ChoiceList {
		l := &vehicle.ChoiceList{Name: name}
		for _, v := range values {
			l.Choices = append(l.Choices, vehicle.Choice{Value: v})
		}
		return l
	}
	m := &model{parts: choices("tube part", "main hoop", "front hoop", "backstay", "diagonal")}
	root := &vehicle.PartType{Name: "sheet"}
	part := func(name, plural string) *vehicle.PartType {
		t := &vehicle.PartType{Name: name, Plural: plural, Within: root, Index: len(root.Parts)}
		root.Parts = append(root.Parts, t)
		return t
	}
	particular := func(t *vehicle.PartType, x vehicle.Particular) {
		x.Part, x.Index = t, len(t.Particulars)
		t.Particulars = append(t.Particulars, &x)
	}
	number := func(t *vehicle.PartType, name string, d quantity.Dimension, low, high float64) {
		particular(t, vehicle.Particular{
			Name: name, Kind: vehicle.KindNumber, Dimension: d, Unit: quantity.UsualUnit(d),
			Plausible: quantity.Range{Low: low, High: high}, Measured: true,
		})
	}
	m.car = part("car", "")
	number(m.car, "mass", quantity.Mass, 300, 4000)
	number(m.car, "front", quantity.Mass, 100, 2000)
	number(m.car, "rear", quantity.Mass, 100, 2000)
	particular(m.car, vehicle.Particular{Name: "class", Kind: vehicle.KindChoice, Choices: choices("class", "open", "production", "historic", "junior")})
	particular(m.car, vehicle.Particular{Name: "chassis", Kind: vehicle.KindText})
	particular(m.car, vehicle.Particular{Name: "guarded", Kind: vehicle.KindTruth})
	particular(m.car, vehicle.Particular{Name: "belts_until", Kind: vehicle.KindDate, PlausibleDays: quantity.DayRange{From: 0, To: 60000}})
	m.tube = part("tube", "tubes")
	number(m.tube, "outside", quantity.Length, 0.01, 0.12)
	number(m.tube, "wall", quantity.Length, 0.0005, 0.01)
	particular(m.tube, vehicle.Particular{Name: "part", Kind: vehicle.KindChoice, Choices: m.parts})
	m.vocabulary = &vehicle.Vocabulary{Root: root}
	return m
}

// figure is a stated figure.
func figure(t testing.TB, text string) vehicle.Value {
	t.Helper()
	f, fault := quantity.ParseFigure(text)
	require.Nil(t, fault, text)
	return vehicle.Value{State: vehicle.Stated, Readings: []vehicle.Reading{{Figure: f}}}
}

// sheet is a car with tubes, everything stated.
func (m *model) sheet(t testing.TB, tubes int) *vehicle.Sheet {
	t.Helper()
	root := &vehicle.Part{Type: m.vocabulary.Root}
	belts, fault := quantity.ParseDays("2027-12-31")
	require.Nil(t, fault)
	car := &vehicle.Part{Type: m.car, Within: root, Values: []vehicle.Value{
		figure(t, "1085 kg"), figure(t, "600 kg"), figure(t, "485 kg"),
		{State: vehicle.Stated, Choice: 1},
		{State: vehicle.Stated, Text: "TS-0417"},
		{State: vehicle.Stated, Truth: true},
		{State: vehicle.Stated, Days: belts},
	}}
	list := vehicle.PartList{Type: m.tube, Complete: true, Fitted: quantity.Yes}
	for i := range tubes {
		list.Parts = append(list.Parts, &vehicle.Part{
			Type: m.tube, Label: fmt.Sprint(i), Within: root,
			Values: []vehicle.Value{figure(t, "45 mm"), figure(t, "2.5 mm"), {State: vehicle.Stated, Choice: i % 4}},
		})
	}
	root.Lists = []vehicle.PartList{{Type: m.car, Parts: []*vehicle.Part{car}, Complete: true, Fitted: quantity.Yes}, list}
	return &vehicle.Sheet{Name: "model", Root: root}
}

// compiled is a formula compiled alone, with a machine to work it on.
func (m *model) compiled(t testing.TB, formula string, sheet *vehicle.Sheet) (truthNode, *machine) {
	t.Helper()
	tree, faults := rules.CheckText(formula, rules.NewScope(m.vocabulary), rules.Type{Kind: rules.Truth})
	require.Empty(t, faults, formula)
	p, diagnostics := Compile(&rules.Rulebook{Vocabulary: m.vocabulary})
	require.Empty(t, diagnostics)
	c := p.compiler()
	made, _ := c.whole(&rules.Formula{Source: formula, Tree: tree})
	p.slots = c.most
	return made, p.Car(sheet).machine(p, false, Request{})
}
