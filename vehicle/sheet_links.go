package vehicle

import "fmt"

// link is a particular that names a part, to be looked up when all parts are known.
type link struct {
	value      *Value
	part       *Part // the part that the value is of
	particular *Particular
	what       string // the block it stands in
	name       told
	at         int // KindPartNames: which of the parts
}

// fill keeps the part that is meant.
func (l *link) fill(meant *Part) {
	if l.particular.Kind == KindPartNames {
		l.value.Several[l.at] = meant
		return
	}
	l.value.Named, l.value.Text = meant, meant.Label
}

// resolve finds the parts that are named.
func (r *sheetReader) resolve() {
	known := map[*PartType]map[string][]*Part{}
	for _, l := range r.links {
		t, label := l.particular.Names, FoldText(l.name.text)
		if known[t] == nil {
			known[t] = byLabel(partsOf(r.sheet.Root, t, nil))
		}
		meant := known[t][label]
		if len(meant) > 1 {
			// A harness means its own straps before those of another.
			if own := byLabel(partsOf(l.part, t, nil))[label]; len(own) == 1 {
				meant = own
			}
		}
		switch {
		case len(meant) == 1:
			l.fill(meant[0])
		case len(meant) > 1:
			r.fault("label-of-several", l.name.all, "Several parts of that name", fmt.Sprintf(
				"Found %s as %s of the %s, but it is the %s and the %s. Give one of them another label.",
				Quote(l.name.text), l.particular.Name, l.what, meant[0].Name(), meant[1].Name()))
		case r.whole && !r.unreadLabels[label]:
			r.unknownLink(l, partsOf(r.sheet.Root, t, nil))
		}
	}
}

// byLabel files parts by their label, folded.
func byLabel(parts []*Part) map[string][]*Part {
	filed := map[string][]*Part{}
	for _, p := range parts {
		label := FoldText(p.Label)
		filed[label] = append(filed[label], p)
	}
	return filed
}

// mostLabels is among how many labels the nearest one is looked for.
const mostLabels = 200

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
	for _, p := range parts[:min(len(parts), mostLabels)] {
		labels = append(labels, p.Label)
	}
	block := fmt.Sprintf("%s %s { }", t.Name, Quote(l.name.text))
	near := Nearest(l.name.text, labels)
	advice := ""
	switch {
	case near != "":
		advice = fmt.Sprintf("Did you mean %s?", Quote(near))
	case len(parts) == 0:
		advice = fmt.Sprintf("The sheet has no %s yet; write %s.", t.Name, block)
	case len(parts) > fewChoices:
		advice = fmt.Sprintf("Write the label of one, or describe it: %s.", block)
	default:
		advice = fmt.Sprintf("There are %s. Write one of those, or describe it: %s.", quotedList(labels, "and"), block)
	}
	r.fault("unknown-label", l.name.all, "No such part",
		fmt.Sprintf("Found %s as %s of the %s, but no %s has that label. %s", Quote(l.name.text), l.particular.Name, l.what, t.Name, advice))
}
