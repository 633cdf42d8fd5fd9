package rules

import (
	"fmt"

	"gapsheet/vehicle"
)

// weighLimits warns of figures, counts and days that a formula compares directly with a
// particular although no such particular can plausibly come near: the comparison says the
// same of every car, most likely by a slip in the number or its unit. A 0 is left alone; it
// asks whether there is anything at all. What a term compares is told where the term is.
func (l *loader) weighLimits(f *fields, formula *Formula) {
	Inspect(formula.Tree, func(n Node) bool {
		if c, ok := n.(*Compare); ok {
			l.weighLimit(f, formula, c.Left, c.Right)
			l.weighLimit(f, formula, c.Right, c.Left)
		}
		_, mention := n.(*Mention)
		return !mention
	})
}

// weighLimit warns where limit is written out and of is a particular that cannot come near.
func (l *loader) weighLimit(f *fields, formula *Formula, of, limit Node) {
	read, ok := of.(*Read)
	k, written := limit.(*Constant)
	if !ok || !written {
		return
	}
	plausible := plausibleFor(read.Particular, k)
	if plausible == "" {
		return
	}
	source := []rune(formula.Source)
	l.report(vehicle.Warning("limit-not-plausible", formula.Position.Range(k.At.From, k.At.To), "A limit out of all proportion", fmt.Sprintf(
		"Found %s as limit for %s in the %s, but plausible is %s, so every car would be answered alike. Look at the number and its unit.",
		quoteCode(string(source[k.At.From:k.At.To])), plainCode(string(source[read.At.From:read.At.To])), f.what, plausible)))
}

// plausibleFor is what is plausible for a particular where a value written out lies outside
// of that, else "".
func plausibleFor(x *vehicle.Particular, k *Constant) string {
	switch x.Kind {
	case vehicle.KindNumber, vehicle.KindCount:
		if k.Number != 0 && !x.IsPlausible(k.Number) {
			return x.Plausible.In(x.Unit, -1)
		}
	case vehicle.KindDate:
		if k.Days.To < x.PlausibleDays.From || k.Days.From > x.PlausibleDays.To {
			return fmt.Sprintf("%s to %s", x.PlausibleDays.From, x.PlausibleDays.To)
		}
	}
	return ""
}
