package vehicle

import "fmt"

// link is a particular that names a part, to be looked up when all parts are known.
type link struct {
	value      *Value
	part       *Part // the part that the value is of
	particular *Particular
	what       string // the block it stands in
	name       told
}

// resolve finds the parts that are named.
func (r *sheetReader) resolve() {
	for _, l := range r.links {
		parts := partsOf(r.sheet.Root, l.particular.Names, nil)
		meant := l.among(parts)
		if own := l.among(partsOf(l.part, l.particular.Names, nil)); len(own) == 1 {
			meant = own // a harness means its own straps before those of another
		}
		switch {
		case len(meant) == 1:
			l.value.Named, l.value.Text = meant[0], meant[0].Label
		case len(meant) > 1:
			r.fault("label-of-several", l.name.all, "Several parts of that name", fmt.Sprintf(
				"Found %s as %s of the %s, but it is the %s and the %s. Give one of them another label.",
				Quote(l.name.text), l.particular.Name, l.what, meant[0].Name(), meant[1].Name()))
		case r.whole:
			r.unknownLink(l, parts)
		}
	}
}

// among returns those of some parts that have the label.
func (l link) among(parts []*Part) []*Part {
	var meant []*Part
	for _, p := range parts {
		if FoldText(p.Label) == FoldText(l.name.text) {
			meant = append(meant, p)
		}
	}
	return meant
}

// partsOf gathers the parts of one type that are written in the sheet, in the order of
// their blocks.
func partsOf(p *Part, t *PartType, found []*Part) []*Part {
	for _, list := range p.Lists {
		for _, inner := range list.Parts {
			if list.Type == t {
				found = append(found, inner)
			}
			found = partsOf(inner, t, found)
		}
	}
	return found
}

// unknownLink reports the name of a part that is not in the sheet.
func (r *sheetReader) unknownLink(l link, parts []*Part) {
	t := l.particular.Names
	var labels []string
	for _, p := range parts {
		labels = append(labels, p.Label)
	}
	advice := fmt.Sprintf("The sheet has no %s yet; write %s %s { }.", t.Name, t.Name, Quote(l.name.text))
	if near := Nearest(l.name.text, labels); near != "" {
		advice = fmt.Sprintf("Did you mean %s?", Quote(near))
	} else if len(labels) > 0 {
		advice = fmt.Sprintf("There are %s. Write one of those, or describe it: %s %s { }.", quotedList(labels, "and"), t.Name, Quote(l.name.text))
	}
	r.fault("unknown-label", l.name.all, "No such part",
		fmt.Sprintf("Found %s as %s of the %s, but no %s has that label. %s", Quote(l.name.text), l.particular.Name, l.what, t.Name, advice))
}
