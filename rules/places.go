package rules

import "gapsheet/vehicle"

// PlaceOf returns the particular by which a part of a type stands for a place where a
// function takes one: its only point, or the joint it is at. Without one, or where there
// are several, it is nil. What a rulebook adds counts only where the built-in vocabulary
// has none, so that no club changes what a part of another one's formula means.
func PlaceOf(t *vehicle.PartType) *vehicle.Particular {
	for _, added := range []bool{false, true} {
		if list := tellingPlace(t, added); len(list) > 0 {
			if len(list) > 1 {
				return nil
			}
			return list[0]
		}
	}
	return nil
}

// tellingPlace is the particulars of a type that tell a place: those of the built-in
// vocabulary, or those that the rulebook at hand has added.
func tellingPlace(t *vehicle.PartType, added bool) []*vehicle.Particular {
	var list []*vehicle.Particular
	for _, p := range t.Particulars {
		if (p.Club != "") == added && t.Particular(p.Name) == p && tellsPlace(p) {
			list = append(list, p)
		}
	}
	return list
}

// tellsPlace reports whether a particular is a point, or the joint that its part is at.
func tellsPlace(p *vehicle.Particular) bool {
	return p.Kind == vehicle.KindPoint || p.Kind == vehicle.KindPartName && p.Name == "joint" && p.Names != nil && p.Names.Name == "joint"
}

// isTube reports whether parts of a type are tubes, which functions on places take by
// their centre line.
func isTube(t *vehicle.PartType) bool { return t.Name == "tube" && t.Club == "" }
