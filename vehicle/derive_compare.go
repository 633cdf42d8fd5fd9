package vehicle

import (
	"fmt"

	"gapsheet/vehicle/quantity"
)

// findDerived finds out what follows from what in the sheet, once there is no fault in it,
// and reports what is stated and cannot be, by what follows from the rest.
func (r *sheetReader) findDerived() {
	if r.faults.HasErrors() {
		return
	}
	r.sheet.derivations = derive(r.sheet)
	for _, d := range r.sheet.derivations {
		if len(d.Open) == 0 && d.isStated() {
			r.compare(d)
		}
	}
}

// isStated reports whether the sheet states any of what a derivation gives.
func (d *Derivation) isStated() bool {
	for _, x := range d.Gives {
		if d.Part.Values[x.Index].State != Nothing {
			return true
		}
	}
	return false
}

// compare reports what is stated and has nothing in common with what follows.
func (r *sheetReader) compare(d *Derivation) {
	from := bases{list: d.From}
	gives := make([]quantity.Range, len(d.Gives))
	d.Work(from.known(), gives)
	for i, x := range d.Gives {
		v := &d.Part.Values[x.Index]
		if gives[i] == quantity.Everything || v.State == Nothing || x.agrees(v, gives[i]) {
			continue
		}
		r.fault("stated-and-derived", v.Range, "Stated and derived do not agree", fmt.Sprintf(
			"Found %s as %s of the %s; from %s it follows that it is %s. Both cannot be true. Measure again, or take one of them away.",
			x.statedText(v), x.Name, d.Part.blockName(), d.sources(), x.derivedText(gives[i])))
	}
}

// agrees reports whether what is stated of a particular can be what follows from others.
func (x *Particular) agrees(v *Value, derived quantity.Range) bool {
	switch {
	case v.State == None, derived == NoSuch:
		return v.State == None && derived == NoSuch
	case x.Kind == KindTruth:
		return !v.Truth && derived.Low <= 0 || v.Truth && derived.High >= 1
	}
	stated := v.hull()
	same := x.Dimension.Same()
	_, meet := stated.Meet(derived)
	return meet || same.Same(stated.High, derived.Low) || same.Same(stated.Low, derived.High)
}

func (x *Particular) statedText(v *Value) string {
	switch {
	case v.State == None:
		return "none"
	case x.Kind == KindTruth && v.Truth:
		return "yes"
	case x.Kind == KindTruth:
		return "no"
	}
	var readings []string
	for _, reading := range v.Readings {
		readings = append(readings, Quote(reading.Figure.String()))
	}
	return plainList(readings, "and")
}

func (x *Particular) derivedText(derived quantity.Range) string {
	if x.Kind == KindTruth {
		return map[bool]string{true: "yes", false: "no"}[derived.Low >= 1]
	}
	if derived == NoSuch {
		return "none"
	}
	return derived.In(x.Unit, 1)
}

// mostSources is how many parts a message names at most of those that something follows
// from.
const mostSources = 4

// sources names the parts that a derivation follows from, with their places.
func (d *Derivation) sources() string {
	var named []string
	seen := map[*Part]bool{}
	for _, base := range d.From {
		if base.Particular.Kind == KindPartNames && len(d.From) > 1 {
			continue // that a tube goes through these joints is said by naming them
		}
		if !seen[base.Part] && len(named) < mostSources {
			named = append(named, fmt.Sprintf("the %s (%s)", base.Part.blockName(), PlaceText(base.Part.place())))
		}
		seen[base.Part] = true
	}
	if more := len(seen) - len(named); more > 0 {
		named = append(named, fmt.Sprintf("%d more", more))
	}
	return plainList(named, "and")
}
