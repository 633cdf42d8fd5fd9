package vehicle

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/vehicle/quantity"
)

// distinctNames reports where one name means two things of a part: particulars, the parts
// that belong to it, and their lists.
func distinctNames(t *PartType) hcl.Diagnostics {
	var faults hcl.Diagnostics
	places := map[string]hcl.Range{}
	note := func(name string, at hcl.Range) {
		if first, twice := places[name]; twice {
			faults = append(faults, SaidTwice(at, fmt.Sprintf("the name %s of %s", Quote(name), t.Name), first))
			return
		}
		places[name] = at
	}
	for _, x := range t.Particulars {
		note(x.Name, x.Range)
	}
	for _, inner := range t.Parts {
		note(inner.Name, inner.Range)
		if inner.Repeats() {
			note(inner.Plural, inner.Range)
		}
	}
	return faults
}

// checkLinks reports particulars that speak of others that are not there or do not fit.
// Every one of them must belong to its part already.
func checkLinks(added []Added) hcl.Diagnostics {
	var faults hcl.Diagnostics
	for _, a := range added {
		if a.Particular.Inherits != "" {
			faults = append(faults, checkInherits(a)...)
		}
		if len(a.Particular.Fills) > 0 {
			faults = append(faults, checkFills(a)...)
		}
	}
	return faults
}

// checkInherits reports a value that cannot be taken from another part: the part is to be
// named by a particular beside this one, and has to have a particular like this one.
func checkInherits(a Added) hcl.Diagnostics {
	x := a.Particular
	through := x.Part.Particular(x.Inherits)
	if through == nil || through.Kind != KindPartName || through.Names == nil {
		return hcl.Diagnostics{Fault("inherits-unknown", a.inherits, "Nothing to inherit from", fmt.Sprintf(
			"Found inherits = %q, but %s has no particular of that name that names a part. Name one of kind \"part name\".", x.Inherits, x.Part.Name))}
	}
	like := through.Names.Particular(x.Name)
	if like == nil || !alike(like, x) {
		return hcl.Diagnostics{Fault("inherits-unfit", a.inherits, "Nothing alike to inherit", fmt.Sprintf(
			"Found inherits = %q, but %s has no %s of the same kind. Declare it there first.", x.Inherits, through.Names.Name, x.Name))}
	}
	return nil
}

// alike reports whether two particulars hold the same sort of value.
func alike(a, b *Particular) bool {
	return a.Kind == b.Kind && a.Dimension == b.Dimension && a.Choices == b.Choices && a.Unit.Convertible() == b.Unit.Convertible()
}

// checkFills reports a size or a point whose particulars are not lengths of the same part.
func checkFills(a Added) hcl.Diagnostics {
	var faults hcl.Diagnostics
	for _, name := range a.Particular.Fills {
		if filled := a.Particular.Part.Particular(name); filled == nil || filled.Kind != KindNumber || filled.Dimension != quantity.Length {
			faults = append(faults, Fault("fills-unknown", a.fills, "Nothing to fill", fmt.Sprintf(
				"Found %s in fills, but %s has no length of that name. Declare it as a particular of kind \"length\".", Quote(name), a.Particular.Part.Name)))
		}
	}
	return faults
}
