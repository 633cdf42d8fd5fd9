package vehicle

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"gapsheet/vehicle/quantity"
)

// list reads not_fitted or unfinished: names of types of parts that belong to the block's
// part, at the top level of those written there. The lists of several files add up.
func (r *sheetReader) list(b *opened, a *hclsyntax.Attribute) {
	for _, t := range b.texts(a.Name) {
		if of := r.listed(b, a.Name, t); of != nil {
			r.enter(a.Name, r.within(b, of).List(of), t)
		}
	}
}

// listed returns the type of part that an entry of a list names, nil when there is none.
func (r *sheetReader) listed(b *opened, key string, t told) *PartType {
	of := r.partHere(b.part, t.text)
	switch {
	case of == nil:
		b.fault("unknown-part", t.all, "Unknown part", fmt.Sprintf("Found %s in %s of the %s. %s", Quote(t.text), key, b.what, r.listAdvice(b, key, t.text)))
	case key == "unfinished" && !of.Repeats():
		b.fault("unfinished-single", t.all, "Not a list of parts",
			fmt.Sprintf("Found %s in unfinished, but there can be one %s only. Take it out; what is not written of it is not recorded anyway.", Quote(t.text), of.Name))
		return nil
	}
	return of
}

// listAdvice says what to write in a list instead of a name that is none.
func (r *sheetReader) listAdvice(b *opened, key, name string) string {
	var known []string
	for _, t := range r.partsHere(b.part) {
		if t.Plural == name {
			return fmt.Sprintf("Write the name of its block: %q.", t.Name)
		}
		known = append(known, t.Name)
	}
	if t := r.typeNamed(name); t != nil {
		if t.AtTop || t.Within == r.sheet.Root.Type {
			return fmt.Sprintf("Write it in %s at the top level of the sheet.", key)
		}
		return fmt.Sprintf("Write it inside the block it belongs to: %s { %s = [%q] }.", t.Within.example(), key, name)
	}
	if len(known) == 0 {
		return fmt.Sprintf("A %s has no parts of its own. Take the line out.", b.part.Type.Name)
	}
	if near := Nearest(name, known); near != "" {
		return fmt.Sprintf("Did you mean %q?", near)
	}
	if len(known) > fewChoices {
		return "Write the name of a part's block, such as \"window_net\" or \"fuel_cell\"."
	}
	return "Write the name of a part's block: " + plainList(known, "or") + "."
}

// enter notes that a type of part is in not_fitted or unfinished.
func (r *sheetReader) enter(key string, list *PartList, t told) {
	notFitted := key == "not_fitted"
	switch {
	case list.Range == (hcl.Range{}):
		list.NotFitted, list.Range = notFitted, t.all
	case list.NotFitted == notFitted:
		r.faults = append(r.faults, SaidTwice(t.all, Quote(t.text)+" in "+key, list.Range))
	default:
		r.fault("not-fitted-and-unfinished", t.all, "Not fitted and unfinished at once", fmt.Sprintf(
			"Found %s in %s; at %s it is in the other list. Not fitted means there is none and will be none. Keep one of the two.", Quote(t.text), key, PlaceText(list.Range)))
	}
}

// settle works out for every list of the part, and of its parts, whether it is complete
// and whether such a part is fitted.
func (r *sheetReader) settle(p *Part) {
	for i := range p.Lists {
		list := &p.Lists[i]
		at := slices.IndexFunc(list.Parts, func(inner *Part) bool { return inner.place() != (hcl.Range{}) })
		switch {
		case list.NotFitted && at < 0 && r.following[list] && len(list.Parts) > 0:
			r.fault("fitted-and-not-fitted", list.Range, "Fitted and not fitted at once", fmt.Sprintf(
				"Found %s in not_fitted of the %s, but what it goes through makes one at %s. Take it out.", Quote(list.Type.Name), p.blockName(), Quote(list.Parts[0].Label)))
		case list.NotFitted && at >= 0:
			r.fault("fitted-and-not-fitted", list.Range, "Fitted and not fitted at once", fmt.Sprintf(
				"Found %s in not_fitted, but one is described at %s. Keep one of the two.", Quote(list.Type.Name), PlaceText(list.Parts[at].place())))
		case list.NotFitted:
			list.Complete, list.Fitted = true, quantity.No
		case r.following[list]:
			list.Complete, list.Fitted = true, quantity.Yes
			if len(list.Parts) == 0 {
				list.Fitted = quantity.No
			}
		case at >= 0:
			list.Complete, list.Fitted = list.Range == (hcl.Range{}), quantity.Yes
		}
		for _, inner := range list.Parts {
			r.settle(inner)
		}
	}
}
