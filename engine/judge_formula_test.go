package engine

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
)

// A piece is one piece of a formula that is drawn: a form with a %s for each of the pieces
// it is made of.
type piece struct {
	kind string
	form string
	of   []*piece
}

func (p *piece) String() string {
	if len(p.of) == 0 {
		return p.form
	}
	values := make([]any, len(p.of))
	for i, of := range p.of {
		values[i] = of.String()
	}
	return fmt.Sprintf(p.form, values...)
}

// A growth draws formulas.
type growth struct {
	*rand.Rand
	element string            // the kind of list whose member the dot means, "" for none
	names   map[string]string // names of lets, by name the kind
	order   []string          // names of lets in the order of their making
	nested  int               // list functions around
	made    int               // names made so far
	carOnly bool              // without names that are handed in
}

// drawFormula draws a truth of about that depth.
func drawFormula(r *rand.Rand, depth int) *piece {
	g := &growth{Rand: r, names: map[string]string{}}
	return g.piece("truth", depth)
}

// deepest is how many list functions may stand within each other.
const deepest = 3

// piece draws a piece of a kind. "truth@tubes" is one in which the dot means a tube,
// "truth@@straps" one that stands in two lists at once.
func (g *growth) piece(kind string, depth int) *piece {
	levels := strings.Count(kind, "@")
	kind, element, inside := strings.Cut(kind, "@")
	if inside {
		saved, names := g.element, len(g.order)
		g.element = strings.TrimPrefix(element, "@")
		g.nested += levels
		p := g.piece(kind, depth)
		g.nested -= levels
		g.element = saved
		g.forget(names)
		return p
	}
	if depth <= 0 || g.IntN(5) == 0 {
		if p := g.leaf(kind); p != nil {
			return p
		}
	}
	if g.IntN(9) == 0 && (kind == "truth" || kind == "length") {
		return g.let(kind, depth)
	}
	for {
		form := growths[kind][g.IntN(len(growths[kind]))]
		if g.nested+strings.Count(form[1], "@") > deepest && strings.Contains(form[1], "@") || g.element != "tubes" && strings.Contains(form[0], "(.scar") {
			continue
		}
		return g.grown(kind, form, depth)
	}
}

// grown draws the pieces of a form.
func (g *growth) grown(kind string, form [2]string, depth int) *piece {
	p := &piece{kind: kind, form: form[0]}
	for of := range strings.FieldsSeq(form[1]) {
		p.of = append(p.of, g.piece(of, depth-1))
	}
	return p
}

// let draws a let with a name of its own, sometimes of a tube.
func (g *growth) let(kind string, depth int) *piece {
	g.made++
	name := fmt.Sprintf("own%d", g.made)
	of := []string{"length", "length", "mass", "count", "truth", "class", "date", "plain", "text"}[g.IntN(9)]
	value := &piece{}
	if g.IntN(5) == 0 && g.nested < deepest {
		of = "tube"
		value = &piece{kind: of, form: "find(tubes, %s)", of: []*piece{g.piece("truth@tubes", depth-2)}}
	} else {
		value = g.piece(of, depth-1)
	}
	known := len(g.order)
	g.names[name] = of
	g.order = append(g.order, name)
	rest := g.piece(kind, depth-1)
	g.forget(known)
	return &piece{kind: kind, form: "(let " + name + " = %s; %s)", of: []*piece{value, rest}}
}

// forget takes back the names made since.
func (g *growth) forget(known int) {
	for _, name := range g.order[known:] {
		delete(g.names, name)
	}
	g.order = g.order[:known]
}

// leaf draws a piece without pieces, nil for a kind that has none here.
func (g *growth) leaf(kind string) *piece {
	choices := strings.Split(leaves[kind], "; ")
	if leaves[kind] == "" {
		choices = nil
	}
	if more := members[g.element+" "+kind]; more != "" {
		for range 3 { // what the dot means is what is mostly asked about
			choices = append(choices, strings.Split(more, "; ")...)
		}
	}
	for _, name := range g.order {
		switch of := g.names[name]; {
		case of == kind:
			choices = append(choices, name, name)
		case of == "tube" && members["tubes "+kind] != "":
			for member := range strings.SplitSeq(members["tubes "+kind], "; ") {
				if member[0] == '.' {
					choices = append(choices, name+member)
				}
			}
		}
	}
	if g.carOnly {
		choices = slices.DeleteFunc(choices, handedIn.MatchString)
	}
	if len(choices) == 0 {
		return nil
	}
	return &piece{kind: kind, form: choices[g.IntN(len(choices))]}
}

// leaves are what a kind can be without further pieces.
var leaves = map[string]string{
	"truth":     "a; b; c; a; b; c; a; b; c; car.guarded; car.guarded; car.guarded; car.hydraulic; fire_system.armed; fitted(fire_system); fitted(tube['2']); recorded(car.seal); heavy; heavy; stout(tube['1'])",
	"length":    "x; y; z; x; y; car.dent; 45*mm; 40*mm; 2.5*mm; 1.75*inch; 0*mm; tube['1'].wall; harness['driver'].strap['1'].width; spread",
	"limit":     "45*mm; 40*mm; 44.45*mm; 2.5*mm; 50*mm; 2*mm; 0*mm; .095*inch",
	"masslimit": "1000*kg; 1100*kg; 950*kg; 2000*lb; 1.2*tonne; 0*kg",
	"mass":      "u; v; car.mass; car.mass; car.front; car.rear; fire_system.charge; 1000*kg; 500*kg",
	"plain":     "p; q; car.grip; 0.5; 2.5; 1.5; 3",
	"count":     "i; j; car.doors; car.wheels; fire_system.nozzles; 0; 1; 2; 3; harness['driver'].points",
	"date":      "d; e; car.belts_until; car.spare_until; fire_system.made; harness['driver'].until; on; event.last_day; date('2024-02-29'); date('2027-12-31'); date('2027-01-01')",
	"text":      "s; t; car.chassis; car.seal; 'TS-0417'; 'ts-0418'; tube['1'].cast",
	"literal":   "'ts-0417'; 'TS-0418'; 'plain'; 'abc'",
	"class":     "car.class; car.class; car.shade",
	"classes":   "'open'; 'junior'; 'production'; 'historic'",
	"parts":     "'main hoop'; 'front hoop'; 'backstay'; 'diagonal'",
	"area":      "20*sq_cm; 1600*mm**2; 3*sq_in",
	"angle":     "30*deg; 0*deg; 10*deg; tube['1'].lean",
	"tubes":     "tubes",
	"harnesses": "harnesses",
	"straps":    "harness['driver'].straps",
	"sizes":     "table.sizes",
	"bands":     "table.bands",
	"lengths":   "xs; [x, y]; [45*mm, x, 40*mm]; map(tubes, .wall); map(table.sizes, .wall)",
	"counts":    "[i, j, 2]; [i, j]; map(tubes, .bends)",
	"dates":     "[d, e]; map(tubes, .made); map(harnesses, .until)",
	"masses":    "[u, v]; [car.front, car.rear, 100*kg]",
	"step":      "1*mm; 5*mm; 0.5*inch; 1*cm",
	"few":       "0; 1; 2; 3; 6; 12; 5",
}

// members are what the dot means in a predicate over a list, by list and kind.
var members = map[string]string{
	"tubes truth": ".straight; recorded(.scar)", "tubes length": ".outside; .wall; .wall; .scar", "tubes count": ".bends",
	"tubes date": ".made", "tubes text": ".cast", "tubes angle": ".lean", "tubes tubepart": ".part",
	"harnesses count": ".points", "harnesses date": ".until", "harnesses straps": ".straps",
	"straps truth": ".damaged", "straps length": ".width",
	"sizes length": ".outside; .wall", "bands length": ".outside", "bands mass": ".mass_from; .mass_below", "bands count": ".tubes_wanted",
	"lengths length": "#", "counts count": "#", "dates date": "#", "masses mass": "#",
}

// growths are the forms of each kind that have pieces: the form and the kinds of its pieces.
var growths = map[string][][2]string{
	"truth": {
		{"%s and %s", "bracketed bracketed"}, {"%s or %s", "bracketed bracketed"}, {"not (%s)", "truth"},
		{"%s and %s and %s", "bracketed bracketed bracketed"}, {"%s or %s or %s", "bracketed bracketed bracketed"},
		{"(%s and %s) or (%s and %s)", "bracketed bracketed bracketed bracketed"},
		{"(%s ? %s : %s)", "truth truth truth"}, {"(%s) == (%s)", "truth truth"},
		{"%s >= %s", "length limit"}, {"%s < %s", "length limit"}, {"%s <= %s", "length limit"}, {"%s > %s", "length limit"},
		{"%s == %s", "length limit"}, {"%s != %s", "length length"}, {"%s >= %s", "length length"}, {"%s < %s", "length length"},
		{"%s <= %s <= %s", "limit length length"}, {"%s > 0", "length"}, {"%s <= %s < %s", "masslimit mass masslimit"},
		{"%s >= %s", "mass masslimit"}, {"%s > %s", "mass masslimit"}, {"%s <= %s", "mass mass"}, {"%s == %s", "mass masslimit"},
		{"%s >= %s", "plain plain"}, {"%s < %s", "plain plain"}, {"%s == %s", "plain plain"},
		{"%s >= %s", "count count"}, {"%s == %s", "count count"}, {"%s != %s", "count few"}, {"%s < %s", "count few"}, {"%s in %s..12", "count few"},
		{"%s in [1, 3, 4]", "count"}, {"%s not in [0, 2]", "count"},
		{"%s >= %s", "date date"}, {"%s < %s", "date date"}, {"%s == %s", "date date"}, {"%s <= %s", "date date"},
		{"%s == %s", "class classes"}, {"%s != %s", "class classes"}, {"%s in [%s, %s]", "class classes classes"}, {"%s == %s", "class class"},
		{"%s == %s", "text literal"}, {"%s != %s", "text text"}, {"%s in [%s, %s]", "text literal literal"}, {"%s == %s", "text text"},
		{"%s startsWith 'TS'", "text"}, {"%s contains '04'", "text"}, {"%s endsWith '7'", "text"}, {"%s matches '^TS-[0-9]{4}$'", "text"},
		{"%s >= %s", "area area"}, {"%s <= %s", "angle angle"}, {"%s > %s", "angle angle"},
		{"all(%s, %s)", "tubes truth@tubes"}, {"any(%s, %s)", "tubes truth@tubes"}, {"none(%s, %s)", "tubes truth@tubes"}, {"one(%s, %s)", "tubes truth@tubes"},
		{"all(%s, %s)", "tubes truth@tubes"}, {"any(%s, %s)", "tubes truth@tubes"}, {"any(%s, %s == %s)", "tubes tubepart@tubes parts"},
		{"all(%s, %s in [%s, %s])", "tubes tubepart@tubes parts parts"}, {"count(%s, %s) >= %s", "tubes truth@tubes few"}, {"count(%s, %s) == %s", "tubes truth@tubes few"},
		{"all(%s, %s)", "harnesses truth@harnesses"}, {"any(%s, %s)", "harnesses truth@harnesses"}, {"all(%s, all(%s, %s))", "harnesses straps@harnesses truth@@straps"},
		{"any(%s, %s)", "straps truth@straps"}, {"all(%s, %s)", "sizes truth@sizes"}, {"any(%s, %s)", "sizes truth@sizes"},
		{"any(%s, %s)", "bands truth@bands"}, {"all(%s, %s)", "lengths truth@lengths"}, {"any(%s, %s)", "counts truth@counts"}, {"one(%s, %s)", "dates truth@dates"},
		{"%s in %s", "length lengths"}, {"%s in %s", "count counts"}, {"all(%s, stout(#))", "tubes"}, {"any(filter(%s, %s), %s)", "tubes truth@tubes truth@tubes"},
		{"(car.hydraulic ?? %s)", "bracketed"}, {"find(%s, %s).straight", "tubes truth@tubes"}, {"any(map(%s, %s), #)", "tubes truth@tubes"}, {"recorded(car.dent)", ""}, {"fitted(tube)", ""},
	},
	"bracketed": {{"(%s)", "truth"}},
	"length": {
		{"(%s + %s)", "length length"}, {"(%s - %s)", "length length"}, {"%s * %s", "length plain"}, {"(%s / (%s))", "length plain"}, {"%s * %s", "few length"},
		{"min(%s, %s)", "length length"}, {"max(%s, %s, %s)", "length length limit"}, {"abs(%s)", "length"}, {"(-%s)", "length"}, {"sqrt(%s)", "area"}, {"hypot(%s, %s)", "length length"},
		{"(%s ? %s : %s)", "truth length length"}, {"(%s ? %s : %s)", "truth limit limit"}, {"sum(%s, %s)", "tubes length@tubes"}, {"sum(%s)", "lengths"}, {"min(%s)", "lengths"},
		{"max(%s)", "lengths"}, {"mean(%s)", "lengths"}, {"median(%s)", "lengths"}, {"first(%s)", "lengths"}, {"last(%s)", "lengths"},
		{"max(map(%s, %s))", "tubes length@tubes"}, {"min(map(filter(%s, %s), %s))", "tubes truth@tubes length@tubes"},
		{"find(%s, %s).wall", "tubes truth@tubes"}, {"findLast(%s, %s).outside", "tubes truth@tubes"}, {"first(%s).wall", "tubes"}, {"last(filter(%s, %s)).outside", "tubes truth@tubes"},
		{"round(%s, %s)", "length step"}, {"floor(%s, %s)", "length step"}, {"ceil(%s, %s)", "length step"}, {"arc(%s, %s)", "length angle"}, {"(%s / (%s))", "area length"},
		{"(car.dent ?? (%s))", "length"}, {"(.scar ?? (%s))", "length"}, {"(tube['2'].scar ?? (%s))", "length"}, {"(find(%s, %s).scar ?? (%s))", "tubes truth@tubes length"},
		{"max(map(filter(%s, %s), %s))", "tubes truth@tubes length@tubes"}, {"min(filter(%s, %s))", "lengths truth@lengths"}, {"sum(filter(%s, %s), %s)", "tubes truth@tubes length@tubes"}, {"first(%s).outside", "sizes"}, {"find(%s, %s).outside", "bands truth@bands"},
		{"max(map(%s, .width))", "straps"},
	},
	"limit": {{"%s", "limit"}}, "masslimit": {{"%s", "masslimit"}}, "step": {{"%s", "step"}}, "few": {{"%s", "few"}},
	"literal": {{"%s", "literal"}}, "classes": {{"%s", "classes"}}, "parts": {{"%s", "parts"}},
	"mass": {
		{"(%s + %s)", "mass mass"}, {"(%s - %s)", "mass mass"}, {"%s * %s", "mass plain"}, {"max(%s, %s)", "mass mass"}, {"min(%s, %s)", "mass masslimit"},
		{"sum(%s)", "masses"}, {"mean(%s)", "masses"}, {"(%s ? %s : %s)", "truth mass masslimit"}, {"(%s ? %s : %s)", "truth masslimit masslimit"},
		{"round(%s, 5*kg)", "mass"}, {"floor(%s, 1*lb)", "mass"}, {"max(%s)", "masses"}, {"sum(filter(%s, %s))", "masses truth@masses"},
	},
	"plain": {
		{"(%s / (%s))", "length length"}, {"(%s / (%s))", "mass mass"}, {"(%s + %s)", "plain plain"}, {"%s * %s", "plain plain"}, {"(%s - %s)", "plain plain"}, {"(%s / (%s))", "plain plain"},
		{"(%s)**2", "plain"}, {"sqrt(%s)", "plain"}, {"abs(%s)", "plain"}, {"(%s ? %s : %s)", "truth plain plain"}, {"(%s / (%s))", "count count"}, {"mean(%s)", "counts"},
		{"sin(%s)", "angle"}, {"cos(%s)", "angle"}, {"max(%s, %s)", "plain count"}, {"tan(%s)", "angle"}, {"(%s)**3", "plain"}, {"(%s)**-1", "plain"},
	},
	"count": {
		{"(%s + %s)", "count count"}, {"(%s - %s)", "count count"}, {"%s * %s", "few count"}, {"abs(%s)", "count"}, {"min(%s, %s)", "count count"}, {"max(%s, %s)", "count few"},
		{"count(%s, %s)", "tubes truth@tubes"}, {"count(%s, %s)", "tubes truth@tubes"}, {"len(%s)", "tubes"}, {"sum(%s)", "counts"}, {"max(%s)", "counts"}, {"sum(%s, .bends)", "tubes"},
		{"year_of(%s)", "date"}, {"days_between(%s, %s)", "date date"}, {"months_between(%s, %s)", "date date"}, {"years_between(%s, %s)", "date date"},
		{"floor(%s)", "plain"}, {"ceil(%s)", "plain"}, {"round(%s)", "plain"}, {"(%s ? %s : %s)", "truth count count"}, {"(%s ? %s : %s)", "truth few few"}, {"(car.wheels ?? (%s))", "count"},
		{"count(%s, %s)", "lengths truth@lengths"}, {"len(filter(%s, %s))", "harnesses truth@harnesses"}, {"first(in_band(table.bands, %s)).tubes_wanted", "mass"}, {"len(%s)", "bands"},
		{"count(%s, %s)", "dates truth@dates"}, {"sum(%s, count(%s, %s))", "harnesses straps@harnesses truth@@straps"},
	},
	"date": {
		{"days_after(%s, %s)", "date few"}, {"weeks_after(%s, %s)", "date few"}, {"months_after(%s, %s)", "date few"}, {"years_after(%s, %s)", "date few"}, {"months_after(%s, %s)", "date count"},
		{"end_of_month(%s)", "date"}, {"end_of_year(%s)", "date"}, {"start_of_year(%s)", "date"}, {"end_of_label(%s)", "date"}, {"end_of_label(%s)", "date"}, {"years_after(end_of_label(%s), %s)", "date few"},
		{"earliest(%s, %s)", "date date"}, {"latest(%s, %s, %s)", "date date date"}, {"(%s ? %s : %s)", "truth date date"}, {"earliest(%s)", "dates"}, {"latest(%s)", "dates"}, {"first(%s)", "dates"},
		{"(car.spare_until ?? (%s))", "date"}, {"find(%s, %s).made", "tubes truth@tubes"},
	},
	"text":      {{"(%s ? %s : %s)", "truth text text"}, {"(car.seal ?? (%s))", "text"}, {"find(%s, %s).cast", "tubes truth@tubes"}, {"(%s ? %s : %s)", "truth literal literal"}},
	"class":     {{"(%s ? %s : %s)", "truth class class"}, {"(car.shade ?? %s)", "class"}, {"(%s ? %s : %s)", "truth class classes"}},
	"tubepart":  {{".part", ""}},
	"area":      {{"%s * %s", "length length"}, {"(%s)**2", "length"}, {"(%s + %s)", "area area"}},
	"angle":     {{"atan2(%s, %s)", "length length"}, {"abs(%s)", "angle"}, {"(%s + %s)", "angle angle"}},
	"tubes":     {{"filter(%s, %s)", "tubes truth@tubes"}, {"(%s ? %s : %s)", "truth tubes tubes"}, {"tubes", ""}},
	"harnesses": {{"filter(%s, %s)", "harnesses truth@harnesses"}},
	"straps":    {{"filter(%s, %s)", "straps truth@straps"}},
	"sizes":     {{"filter(%s, %s)", "sizes truth@sizes"}},
	"bands":     {{"in_band(table.bands, %s)", "mass"}, {"filter(%s, %s)", "bands truth@bands"}},
	"lengths":   {{"map(%s, %s)", "tubes length@tubes"}, {"[%s, %s]", "length length"}, {"filter(%s, %s)", "lengths truth@lengths"}, {"map(filter(%s, %s), %s)", "tubes truth@tubes length@tubes"}, {"map(%s, .outside)", "sizes"}},
	"counts":    {{"[%s, %s, %s]", "count count count"}, {"map(%s, %s)", "tubes count@tubes"}},
	"dates":     {{"[%s, %s]", "date date"}, {"map(%s, %s)", "tubes date@tubes"}},
	"masses":    {{"[%s, %s]", "mass mass"}},
}
