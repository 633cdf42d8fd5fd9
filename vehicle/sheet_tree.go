package vehicle

import (
	"strings"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// newPart makes a part of which nothing is said yet.
func newPart(t *PartType, label string, within *Part, at hcl.Range) *Part {
	p := &Part{Type: t, Label: label, Within: within, Range: at}
	p.Values = make([]Value, len(t.Particulars))
	p.Lists = make([]PartList, len(t.Parts))
	for i, inner := range t.Parts {
		p.Lists[i] = PartList{Type: inner, Fitted: quantity.Open}
	}
	return p
}

// Value returns what the sheet says of a particular of the part, and the part that says it:
// the part itself; or, where the particular is not stated there, the part named for what is
// inherited, such as a tube's stock, and of a mirror image its original for what an image
// shares, if those say anything. A stock that the image names itself goes before the
// original. x must be a particular of the part's type.
func (p *Part) Value(x *Particular) (v *Value, holder *Part) {
	own := &p.Values[x.Index]
	if own.State != Nothing {
		return own, p
	}
	var by *Particular
	if x.Inherits != "" {
		by = p.Type.Particular(x.Inherits)
	}
	if by != nil && p.Values[by.Index].State != Nothing {
		if v, holder = inherited(x, p.Values[by.Index].Named); holder != nil {
			return v, holder
		}
	}
	if p.Original == nil {
		return own, p
	}
	if x.Mirrored {
		if v, holder = p.Original.Value(x); v.State != Nothing {
			return v, holder
		}
	}
	if by != nil && p.Values[by.Index].State == Nothing {
		link, _ := p.Value(by)
		if v, holder = inherited(x, link.Named); holder != nil {
			return v, holder
		}
	}
	return own, p
}

// inherited returns what a part that another names says of a particular of the same name;
// no holder where it says nothing.
func inherited(x *Particular, named *Part) (v *Value, holder *Part) {
	if named == nil {
		return nil, nil
	}
	same := named.Type.Particular(x.Name)
	if same == nil || named.Values[same.Index].State == Nothing {
		return nil, nil
	}
	return &named.Values[same.Index], named
}

// List returns what the sheet says of the part's own parts of one type. t must belong to
// the part's type.
func (p *Part) List(t *PartType) *PartList { return &p.Lists[t.Index] }

// Name returns what people call the part: "tube 12", "harness driver", "left shoulder strap
// of harness driver", "fuel cell", and of gear that belongs to a person whose it is: "helmet
// of A. Penrith-Vale". The root is "the sheet".
func (p *Part) Name() string {
	if p.Within == nil {
		return "the sheet"
	}
	kind := strings.ReplaceAll(p.Type.Name, "_", " ")
	inside := !p.Type.AtTop && p.Within.Within != nil
	name := kind
	switch {
	case p.Person != "":
		return kind + " " + p.Person
	case p.Label == "":
	case inside:
		name = p.Label + " " + kind
	default:
		name = kind + " " + p.Label
	}
	if inside && p.Within.Person != "" {
		return name + " of " + p.Within.Person
	}
	if inside {
		return name + " of " + p.Within.Name()
	}
	return name
}

// blockName is the part as its block begins, for messages about the sheet: tube "12".
func (p *Part) blockName() string {
	switch {
	case p.Within == nil:
		return "sheet"
	case p.Label == "":
		return p.Type.Name
	}
	return p.Type.Name + " " + Quote(p.Label)
}

// place is where the part is written, or the first of its parts that is; the zero range
// when none is.
func (p *Part) place() hcl.Range {
	if p.Range != (hcl.Range{}) {
		return p.Range
	}
	for _, list := range p.Lists {
		for _, inner := range list.Parts {
			if at := inner.place(); at != (hcl.Range{}) {
				return at
			}
		}
	}
	return hcl.Range{}
}
