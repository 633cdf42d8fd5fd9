package vehicle

import (
	"fmt"
	"slices"
	"strings"
)

// otherNames is what shops call particulars that the vocabulary names otherwise, most likely
// first.
var otherNames = map[string][]string{
	"expires": {"not_after"}, "expiry": {"not_after"}, "expiry_date": {"not_after"}, "expiration": {"not_after"},
	"valid_until": {"not_after"}, "valid_to": {"not_after"}, "end_of_life": {"not_after"},
	"manufactured": {"made"}, "date_of_manufacture": {"made"}, "manufacture_date": {"made"}, "year": {"made"},
	"diameter": {"outside"}, "od": {"outside"}, "outside_diameter": {"outside"}, "wall_thickness": {"wall"}, "thickness": {"wall"},
	"weight": {"weighed_mass", "mass"}, "mass": {"weighed_mass"}, "radius": {"bend_radius"}, "serial_number": {"serial"},
	"number_of_bends": {"bends"}, "dented": {"deepest_dent"}, "dents": {"deepest_dent"},
	"manufacturer": {"maker"}, "brand": {"maker"}, "approval": {"standard"}, "homologation": {"homologation_number"},
}

// NameMeant is the known name, or the few, that a name was most likely meant to be: what a
// shop calls it otherwise, the nearest, or those that hold its words. It is "" when nothing
// comes to mind.
func NameMeant(name string, known []string) string {
	if meant := knownAs(name, known); meant != "" {
		return meant
	}
	if near := Nearest(name, known); near != "" && len(name) >= longestShort {
		return near
	}
	return plainList(namesWith(name, known), "or")
}

// knownAs is the known name of what a shop calls by another, "" when there is none.
func knownAs(name string, known []string) string {
	for _, other := range otherNames[name] {
		if slices.Contains(known, other) {
			return other
		}
	}
	return ""
}

// otherEvidence is what shops call evidence.
var otherEvidence = []string{"photo", "photos", "picture", "image", "paper", "document", "scan"}

// nameMeant says which name was meant by one that the block does not have, as a sentence;
// "" when nothing comes to mind.
func (r *sheetReader) nameMeant(b *opened, name string) string {
	known := b.knownNames()
	if meant := knownAs(name, known); meant != "" && b.club == "" {
		return fmt.Sprintf("Did you mean %s?", meant)
	}
	if b.club == "" && b.part != r.sheet.Root {
		for _, meant := range append([]string{name}, otherNames[name]...) {
			if inner := holderBelow(b.part.Type, meant); inner != nil {
				return fmt.Sprintf("%s stands in %s: write it inside %s { }.", meant, inner.Name, inner.example())
			}
		}
	}
	if advice := r.elsewhere(b, name); advice != "" {
		return advice
	}
	if meant := NameMeant(name, known); meant != "" {
		return fmt.Sprintf("Did you mean %s?", meant)
	}
	return ""
}

// holderBelow returns the type of part, written within blocks of a type, that has a
// particular of that name, nil when there is none.
func holderBelow(t *PartType, name string) *PartType {
	for _, inner := range t.Parts {
		if inner.AtTop || inner.Club != "" {
			continue
		}
		if x := inner.Particular(name); x != nil && x.Club == "" {
			return inner
		}
		if deeper := holderBelow(inner, name); deeper != nil {
			return deeper
		}
	}
	return nil
}

// mostMeant is how many names with a word a message offers; more say nothing.
const mostMeant = 3

// namesWith returns the known names that hold every word of a name, such as deepest_dent for
// dent and seat_count for seats; none where they are too many to offer.
func namesWith(name string, known []string) []string {
	words := strings.Split(name, "_")
	if len(name) < longestShort {
		return nil
	}
	var with []string
	for _, candidate := range known {
		parts := strings.Split(candidate, "_")
		if len(parts) > len(words) && !slices.ContainsFunc(words, func(word string) bool {
			return !slices.Contains(parts, word) && !slices.Contains(parts, strings.TrimSuffix(word, "s"))
		}) {
			with = append(with, candidate)
		}
	}
	if len(with) > mostMeant {
		return nil
	}
	return with
}
