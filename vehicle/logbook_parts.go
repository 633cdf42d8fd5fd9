package vehicle

import (
	"fmt"
	"slices"
	"strings"
)

// partsByName finds parts by what people call them.
type partsByName struct {
	parts map[string][]*Part
	types map[string]*PartType // by name in words, singular and plural
	crew  *PartType

	labels map[*PartType][]string // of messages
}

// callParts files all parts of a sheet under every name that a paper may use.
func callParts(root *Part, v *Vocabulary) *partsByName {
	called := &partsByName{parts: map[string][]*Part{}, types: map[string]*PartType{}, labels: map[*PartType][]string{}, crew: v.Type("crew_member")}
	for _, t := range v.Types() {
		if t.Within != nil {
			called.types[inWords(t.Name)] = t
			if t.Plural != "" {
				called.types[inWords(t.Plural)] = t
			}
		}
	}
	called.file(root)
	return called
}

// file files the parts of a part.
func (c *partsByName) file(of *Part) {
	for i := range of.Lists {
		for _, p := range of.Lists[i].Parts {
			for _, name := range p.names() {
				if filed := c.parts[name]; len(filed) == 0 || filed[len(filed)-1] != p {
					c.parts[name] = append(filed, p)
				}
			}
			c.file(p)
		}
	}
}

// inWords is a name folded, with blanks for underlines.
func inWords(name string) string { return FoldText(plain(name)) }

// names is what a part may be called by, folded: "left shoulder strap of harness driver",
// "harness driver", "harness", and of one without a label by that of what it belongs to,
// "helmet driver".
func (p *Part) names() []string {
	kind := inWords(p.Type.Name)
	names := []string{inWords(p.Name()), kind}
	if p.Type.Plural != "" {
		names = append(names, inWords(p.Type.Plural))
	}
	label := p.Label
	if label == "" && p.Within != nil {
		label = p.Within.Label
	}
	if label != "" {
		names = append(names, kind+" "+inWords(label))
	}
	if p.Within != nil && p.Within.Person != "" {
		names = append(names, kind+" "+inWords(p.Within.Person), kind+" of "+inWords(p.Within.Person))
	}
	if p.Person != "" {
		names = append(names, kind+" "+inWords(p.Person))
	}
	return names
}

// isGear reports whether parts of a type belong to one of the crew.
func (c *partsByName) isGear(t *PartType) bool { return isGearOf(c.crew, t) }

// isGearOf is isGear, where crew is the type of the crew; nil for a vocabulary without.
func isGearOf(crew, t *PartType) bool {
	for ; t != nil && crew != nil; t = t.Within {
		if t == crew {
			return true
		}
	}
	return false
}

// typeOf is the type of part that a name begins with, and the rest of the name; nil where
// it begins with none. The longest counts: a fuel cell is no fuel.
func (c *partsByName) typeOf(name string) (t *PartType, rest string) {
	words := strings.Fields(name)
	for n := len(words); n > 0; n-- {
		if t := c.types[strings.Join(words[:n], " ")]; t != nil {
			return t, strings.Join(words[n:], " ")
		}
	}
	// The long form of a name has its type in the middle: "overalls garment of A. Oakhollow".
	for at := range words {
		for n := min(len(words)-at, 3); n > 0; n-- {
			if t := c.types[strings.Join(words[at:at+n], " ")]; t != nil && at+n < len(words) && words[at+n] == "of" {
				return t, name
			}
		}
	}
	return nil, ""
}

// filedAs is a name as parts are filed under it, where it begins with a type and the label is
// written in another way than the sheet does.
func (c *partsByName) filedAs(text string) string {
	name := inWords(text)
	t, rest := c.typeOf(name)
	if t == nil || rest == "" || len(c.parts[name]) > 0 {
		return name
	}
	labels := t.Labels
	if labels == nil && t.Within != nil {
		labels = t.Within.Labels
	}
	if labels != nil && labels.Find(rest) >= 0 {
		return inWords(t.Name) + " " + inWords(labels.Choices[labels.Find(rest)].Value)
	}
	return name
}

// byName returns the parts of the sheet by name.
func (r *sheetReader) byName() *partsByName {
	if r.called == nil {
		r.called = callParts(r.sheet.Root, r.sheet.Vocabulary)
	}
	return r.called
}

// subject reads what a paper is about: a part by its name, or anything else in words.
func (r *sheetReader) subject(k *keys) (text string, part *Part, gear *gearNamed) {
	t := k.text("subject")
	if t.text == "" {
		return "", nil, nil
	}
	called := r.byName()
	name := called.filedAs(t.text)
	of, rest := called.typeOf(name)
	parts := called.parts[name]
	switch {
	case of != nil && called.isGear(of) && !r.isSlipOfPlace(of, rest):
		gear = &gearNamed{of, t.text, rest, t.all}
		if len(parts) == 1 {
			part = parts[0]
		}
	case len(parts) == 1:
		part = parts[0]
	case len(parts) > 1 && rest != "":
		k.fault("label-of-several", t.all, "Several parts of that name", fmt.Sprintf(
			"Found %s as subject of the %s, but it is the %s and the %s. Write the whole name of one.", Quote(t.text), k.what, parts[0].Name(), parts[1].Name()))
	case len(parts) == 0 && of != nil && r.isMeant(of, rest):
		k.faults = append(k.faults, r.unknownPart(k, "subject", t, of, rest))
	}
	return t.text, part, gear
}

// isMeant reports whether what stands behind the name of a type was meant as a label of one
// of its parts, not as words about it: "tube 55", but not "seat rail bent".
func (r *sheetReader) isMeant(t *PartType, rest string) bool {
	if !r.whole || rest == "" || strings.HasPrefix(rest, "of ") {
		return false
	}
	return t.Labels == nil && !strings.Contains(rest, " ") && t.Labelled || Nearest(rest, r.labelsOf(t)) != ""
}

// labelsOf is the labels of the parts of a type, or of what those belong to.
func (r *sheetReader) labelsOf(t *PartType) []string {
	labels, ok := r.byName().labels[t]
	if ok {
		return labels
	}
	for _, p := range partsOf(r.sheet.Root, t, nil) {
		if p.Label == "" && p.Within != nil {
			p = p.Within
		}
		if p.Label != "" && len(labels) < mostLabels && !slices.Contains(labels, p.Label) {
			labels = append(labels, p.Label)
		}
	}
	r.called.labels[t] = labels
	return labels
}

// isSlipOfPlace reports whether what stands behind gear looks like a place of the crew and
// is none.
func (r *sheetReader) isSlipOfPlace(t *PartType, rest string) bool {
	places := r.byName().crew.Labels
	return rest != "" && places.Find(rest) < 0 && (t.Labels == nil || t.Labels.Find(rest) < 0) &&
		Nearest(rest, places.Values()) != ""
}
