package report

import (
	"slices"
	"strconv"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// alike are dated parts of one whole that are told of as one: the straps of a harness that
// end together. There is at least one, and all are like the first.
type alike []*engine.DatedPart

// alikes puts the dated parts together that belong to one whole, are of one type and stand
// the same on every day, each group where its first part is. Gear of a person is one thing
// in whatever car it is worn.
func alikes(dated []*engine.DatedPart) []alike {
	var groups []alike
	for _, d := range dated {
		at := slices.IndexFunc(groups, func(g alike) bool { return isAlike(g[0], d) })
		if at >= 0 {
			groups[at] = append(groups[at], d)
		} else {
			groups = append(groups, alike{d})
		}
	}
	return groups
}

// isAlike says whether two parts are told of as one: of one whole, or the gear of a person
// in several cars. The words of
// their limits may differ, as those name the part.
func isAlike(a, b *engine.DatedPart) bool {
	inOne := a.Part.Within != nil && a.Part.Within.Within != nil && a.Part.Within == b.Part.Within
	gear := personOf(a.Part) != "" && a.Name == b.Name
	return (inOne || gear) && a.Part.Type == b.Part.Type && a.Particular == b.Particular && a.Renewal == b.Renewal &&
		a.HasLastDay == b.HasLastDay && a.LastDay == b.LastDay && a.IsOver == b.IsOver && a.Uncertain == b.Uncertain &&
		a.Clause == b.Clause && a.Missed == b.Missed && a.AsEntered == b.AsEntered && a.HasOrderBy == b.HasOrderBy && a.OrderBy == b.OrderBy &&
		a.NextDate() == b.NextDate() && a.NextUntil() == b.NextUntil() && a.EarliestOf == b.EarliestOf && a.AnewFrom == b.AnewFrom &&
		slices.EqualFunc(a.Spans, b.Spans, func(s, t engine.Span) bool {
			return s.From == t.From && s.Until == t.Until && s.Verdict == t.Verdict && s.Clause == t.Clause
		})
}

// fewAlike is how many parts are named one by one where they are told of as one.
const fewAlike = 2

// name is what the parts are called: "harness driver", "left lap and right lap straps of
// harness driver", "6 straps of harness driver".
func (g alike) name() string {
	var things []named
	for _, d := range g {
		if !slices.ContainsFunc(things, func(n named) bool { return n.name == d.Name }) {
			things = append(things, named{d.Name, d.Part})
		}
	}
	if _, after := shared(things[0]); len(things) > fewAlike && after != "" {
		return strconv.Itoa(len(things)) + after
	}
	return nameList(things)
}

// cars are what the cars of the parts are called, each once.
func (g alike) cars() []string {
	var names []string
	for _, d := range g {
		if name := carName(d.Car); !slices.Contains(names, name) {
			names = append(names, name)
		}
	}
	return names
}

// datedGroup is what belongs to a car, or to a person in whatever car.
type datedGroup struct {
	car    *vehicle.Sheet // nil where it belongs to a person
	person string
	parts  []alike
}

// datedGroups are the dated parts of a season: those of each car in turn, then the gear of
// each person, as they come.
func datedGroups(r *engine.SeasonResult) []datedGroup {
	var cars, people []datedGroup
	gear := map[string][]*engine.DatedPart{}
	for _, car := range r.Cars {
		var own []*engine.DatedPart
		for _, d := range car.Dated {
			person := personOf(d.Part)
			if person == "" {
				own = append(own, d)
				continue
			}
			if gear[person] == nil {
				people = append(people, datedGroup{person: person})
			}
			gear[person] = append(gear[person], d)
		}
		if len(own) > 0 {
			cars = append(cars, datedGroup{car: car.Sheet, parts: alikes(own)})
		}
	}
	for i := range people {
		people[i].parts = alikes(gear[people[i].person])
	}
	return append(cars, people...)
}

// whose is what some parts of a group are called among all cars: gear by its person, with
// the cars where it does not stand the same in all; everything else with its car.
func (g *datedGroup) whose(parts alike) string {
	name := parts.name()
	if g.car == nil && !slices.ContainsFunc(g.parts, func(other alike) bool { return other[0] != parts[0] && other.name() == name }) {
		return name
	}
	return name + " (" + list(parts.cars()) + ")"
}
