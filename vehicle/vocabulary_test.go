package vehicle

import (
	"go/token"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/expr-lang/expr/builtin"
	"github.com/expr-lang/expr/parser/operator"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle/quantity"
)

// eachParticular calls f with every built-in particular and its full name, "tube.wall".
func eachParticular(f func(name string, x *Particular)) {
	for _, part := range BuiltIn().Types() {
		for _, x := range part.Particulars {
			f(part.Name+"."+x.Name, x)
		}
	}
}

// builtInParticular finds a built-in particular by its full name.
func builtInParticular(t *testing.T, name string) *Particular {
	t.Helper()
	part, particular, _ := strings.Cut(name, ".")
	require.NotNil(t, BuiltIn().Type(part), name)
	x := BuiltIn().Type(part).Particular(particular)
	require.NotNil(t, x, name)
	return x
}

func TestVocabularyHoldsWhatACarIsInspectedFor(t *testing.T) {
	count := 0
	eachParticular(func(string, *Particular) { count++ })
	require.GreaterOrEqual(t, count, 180)
	t.Logf("%d particulars in %d types of part", count, len(BuiltIn().Types()))

	// What a stage-rally car is inspected for, area by area.
	for area, names := range map[string]string{
		"car":                "chassis class first_registered first_logbook homologation_form",
		"mass":               "car.weighed_mass car.fuel_when_weighed car.spares_when_weighed car.crew_when_weighed car.crew_equipment_when_weighed car.declared_mass",
		"cut structure":      "body.structure_was_cut structure_cut.member structure_cut.area",
		"cage":               "cage.base_structure cage.route certificate.number certificate.issued_by identity_plate.serial cage.modified_since cage.built",
		"tube":               "part mandatory stock ordered_outside ordered_wall outside wall bends bend_radius least_diameter_at_bend greatest_diameter_at_bend joints straight angle_to_vertical contains_fluid",
		"tube_stock":         "ordered_outside ordered_wall outside wall cast_number material forming yield tensile elongation coated",
		"foot":               "plate_thickness plate_area plate_contact_area plate_longest_side bolt_count bolt_diameter bolt_grade",
		"joint":              "at x y z tubes_meeting least_angle",
		"geometry of a tube": "tube.through tube.die tube.node_length tube.developed_length tube.bend_radius_ratio tube.angle_to_horizontal tube.mass tube.second_moment tube.bending_stiffness tube.yield_moment tube.unsupported_span meeting.angle corner.angle end.to_foot end.to_joint",
		"geometry around it": "cage.datum cage.origin cage.mass cage.longest_span foot.joint foot.shape gusset.joint padding.between door_aperture.corners door_aperture.width seat.reference strap.leaves_body strap.anchor_at head.top head.clearance",
		"die":                "outside centreline_radius grip_length minimum_straight springback bend_start_offset",
		"on the cage":        "gusset.thickness padding.standard padding.thickness inspection_hole.diameter",
		"seat":               "standard homologation_number serial label_kind made not_after",
		"seat_mount":         "bolt_diameter bolt_grade support_thickness counterplate_area",
		"strap":              "label_kind made not_after first_used serial angle_to_horizontal sideways_angle",
		"anchorage":          "plate_area plate_thickness bolt_diameter bolt_grade",
		"harness":            "standard homologation_number shoulder_spacing one_set",
		"crew":               "garment.standard garment.made head_restraint.standard head_restraint.made helmet.standard helmet.made",
		"fuel_cell":          "standard made not_after recertified foam container_thickness capacity serial",
		"fuel":               "fuel_pump.stops_with_engine vent.rollover_valve tank_compartment.sealed_from_cockpit bulkhead.liquid_tight",
		"line":               "fluid working_pressure burst_pressure rated_temperature",
		"fire_system":        "standard agent agent_mass serviced cockpit_nozzles reach_when_belted outside_trigger",
		"fire_bottle":        "full_mass weighed_mass made serviced",
		"extinguisher":       "agent agent_mass agent_volume serviced made straps",
		"circuit_breaker":    "stops_engine reach_when_belted outside_trigger outside_mark_base",
		"electrics":          "battery.terminals_covered wiring.flame_resistant_sleeving lamp.purpose lamp.lit_area",
		"towing_eye":         "inner_diameter colour rated_load",
		"outside":            "mud_flap.thickness mud_flap.ground_distance underbody_guard.covers window.film windscreen.laminated window_net.standard window_net.made mirror.glass_area",
		"brakes":             "circuits hydraulic_handbrake",
		"steering":           "column_lock_removed quick_release",
		"tyre":               "date_code tread_depth standard made",
		"exhaust":            "noise noise_engine_speed",
		"restrictor":         "inner_diameter throat_length sealing_holes",
		"seal":               "number intact",
		"what a crew carry":  "belt_cutter.reach_when_belted warning_triangle.approved first_aid_kit.not_after sos_board.letter_height tow_rope.length camera_mount.fixed_by",
		"wheels and a spare": "wheel.diameter spare_carrier.fixed_by",
	} {
		for _, name := range strings.Fields(names) {
			if !strings.Contains(name, ".") {
				name = area + "." + name
			}
			require.NotNil(t, builtInParticular(t, name), area)
		}
	}
}

func TestEveryParticularIsComplete(t *testing.T) {
	hows, helps := map[string]string{}, map[string]string{}
	eachParticular(func(name string, x *Particular) {
		for what, line := range map[string]string{"help": x.Help, "how": x.How} {
			require.Greater(t, len(line), 10, "%s of %s", what, name)
			require.True(t, strings.HasSuffix(line, "."), "%s of %s is no sentence: %s", what, name, line)
			require.Regexp(t, `^[A-Z0-9]`, line, "%s of %s", what, name)
		}
		require.NotEqual(t, x.Help, x.How, name)
		// The work differs, so what is said of it differs.
		require.Empty(t, hows[x.How], "%s has the same how as %s", name, hows[x.How])
		hows[x.How] = name
		helps[x.Part.Name+x.Help] += name + " "
		require.NotEqual(t, StageUnset, x.Stage, name)
		require.Same(t, x, x.Part.Particulars[x.Index], name)
		requireValues(t, name, x)
	})
	for _, names := range helps {
		require.Len(t, strings.Fields(names), 1, "the same help in one part: %s", names)
	}
}

// requireValues checks that a particular has what its kind needs and nothing else.
func requireValues(t *testing.T, name string, x *Particular) {
	t.Helper()
	figure := x.Kind == KindNumber
	require.Equal(t, figure && !x.Dimension.IsNone(), x.Unit.Dimension() != quantity.Plain, "unit of %s", name)
	if figure {
		require.Equal(t, x.Dimension, x.Unit.Dimension(), name)
		require.True(t, x.Unit.Name() != "" || x.Derived, "a plain number that is written has a unit: %s", name)
	}
	require.Equal(t, figure || x.Kind == KindCount, x.Plausible.Low < x.Plausible.High, "plausible range of %s", name)
	require.Equal(t, x.Kind == KindDate, x.PlausibleDays.From < x.PlausibleDays.To, "plausible days of %s", name)
	require.Equal(t, x.Kind == KindChoice, x.Choices != nil, "choices of %s", name)
	require.Equal(t, x.Kind == KindPartName || x.Kind == KindPartNames, x.Names != nil, "named part of %s", name)
	require.Len(t, x.Fills, map[Kind]int{KindSize: 2, KindPoint: 3}[x.Kind], "what %s fills", name)
	require.False(t, x.Measured && !figure && x.Kind != KindCount, "%s is measured", name)
	require.Empty(t, x.Club, name)
}

func TestPlausibleRanges(t *testing.T) {
	// Values that real cars have, then slips that have to be caught: a wrong unit, a point
	// in the wrong place. The sizes are those of published tube tables (FIA Appendix J,
	// Art. 253-8; SCCA GCR 2008), the rest is common practice.
	for name, values := range map[string][2][]string{
		"tube.outside":                      {{"25 mm", "38 mm", "1.75 in", "50 mm", "2 in"}, {"45 in", "4.5 mm", "450 mm", "45 m"}},
		"tube.wall":                         {{"1.2 mm", ".049 in", "2.5 mm", ".120 in", "13 bwg"}, {"2.5 cm", "2.5 in", "25 mm", "0.25 mm"}},
		"tube_stock.ordered_wall":           {{"2 mm", ".083 in"}, {"20 mm", "2 in"}},
		"tube.yield":                        {{"235 MPa", "60 ksi", "930 N/mm2"}, {"350 Pa", "350 ksi", "350 bar"}},
		"tube.bend_radius":                  {{"135 mm", "6 in"}, {"135 m", "3 mm"}},
		"tube.elongation":                   {{"4 %", "22 %"}, {"220 %"}},
		"tube.angle_to_vertical":            {{"0 deg", "30 deg", "0.5 rad"}, {"30 rad", "180 deg"}},
		"car.weighed_mass":                  {{"780 kg", "1085 kg", "2600 lb"}, {"1085 lb/ft", "85 kg", "10850 kg", "1085 g"}},
		"car.fuel_when_weighed":             {{"0 l", "20 l", "5 US gal"}, {"20 m3", "700 l"}},
		"joint.x":                           {{"-310 mm", "1190 mm", "47 in"}, {"12 m", "310 m", "310 cm2"}},
		"tube.bending_stiffness":            {{"12 kN.m2", "30000 N.m2"}, {"12 kN.m", "12 N/m2"}},
		"tube_stock.density":                {{"7850 kg/m3", "7.85 g/cm3", "0.284 lb/in3"}, {"7850 g/cm3", "7.85 kg"}},
		"tube_stock.elasticity":             {{"210 GPa", "29000 ksi"}, {"210 MPa", "2100 GPa"}},
		"tube_stock.bar_length":             {{"6 m", "20 ft"}, {"6 mm", "60 m"}},
		"die.springback":                    {{"3 %", "0 %"}, {"300 %", "3 deg"}},
		"foot.plate_area":                   {{"120 cm2", "60 cm2", "18.6 in2"}, {"120 mm2", "120 in3", "120 m2"}},
		"foot.bolt_diameter":                {{"8 mm", "10 mm", "7/16 in"}, {"8 in", "0.8 mm"}},
		"strap.angle_to_horizontal":         {{"-5 deg", "10 deg", "45 deg"}, {"10 rad", "135 deg"}},
		"anchorage.bolt_diameter":           {{"12 mm", "7/16 in"}, {"12 in", "1.2 mm"}},
		"fuel_cell.container_thickness":     {{"0.9 mm", ".036 in", ".125 in"}, {"0.09 mm", "36 mm"}},
		"line.burst_pressure":               {{"70 bar", "1000 psi", "280 bar"}, {"70 psi/m", "70 Pa", "70 MPa2"}},
		"line.rated_temperature":            {{"135 degC", "250 degF", "450 degF"}, {"135 degF/m", "1350 degC", "10 degC"}},
		"extinguisher.agent_volume":         {{"2.4 l", "2.25 l"}, {"2.4 m3", "2.4 ml"}},
		"extinguisher.pressure":             {{"8 bar", "13.5 bar"}, {"13.5 psi/s", "1 kPa"}},
		"extinguisher.mount_rating":         {{"25 g0"}, {"250 g0"}},
		"fire_bottle.weighed_mass":          {{"5.62 kg", "12 lb"}, {"5620 kg", "56 g"}},
		"circuit_breaker.outside_mark_base": {{"120 mm", "12 cm"}, {"120 cm", "12 mm"}},
		"towing_eye.inner_diameter":         {{"60 mm", "100 mm"}, {"60 cm", "6 mm"}},
		"window.film_thickness":             {{"0.1 mm", "100 um"}, {"1 mm", "100 mm"}},
		"tyre.tread_depth":                  {{"0 mm", "1.6 mm", "10 mm"}, {"1.6 in", "1.6 m"}},
		"exhaust.noise":                     {{"98 dB(A)"}, {"9.8 dB(A)", "980 dB(A)"}},
		"exhaust.noise_engine_speed":        {{"3500 rpm"}, {"35000 rpm", "3.5 rpm"}},
		"restrictor.inner_diameter":         {{"32 mm", "34 mm", "36 mm"}, {"32 cm", "3.2 mm"}},
		"wheel.nut_torque":                  {{"90 N.m", "80 lbf.ft"}, {"9 N.m"}},
	} {
		x := builtInParticular(t, name)
		holds := func(text string) bool {
			figure, fault := quantity.ParseFigure(text)
			return fault == nil && figure.Unit.Dimension() == x.Dimension && x.Plausible.Contains(figure.Range.Low) && x.Plausible.Contains(figure.Range.High)
		}
		for _, text := range values[0] {
			require.True(t, holds(text), "%s = %s", name, text)
		}
		for _, text := range values[1] {
			require.False(t, holds(text), "%s = %s", name, text)
		}
	}
}

// reservedInFormulas is every name that means something in a formula: operators and
// functions of the language, units, and our own words.
func reservedInFormulas() map[string]bool {
	list := map[string]bool{}
	for _, f := range builtin.Builtins {
		list[f.Name] = true
	}
	for name := range operator.Binary {
		list[name] = true
	}
	for _, u := range quantity.FormulaUnits() {
		list[u.Formula()] = true
	}
	for _, name := range slices.Concat(formulaWords, sheetWords, strings.Fields(
		"recorded fitted in_band celsius fahrenheit arc hypot sin cos tan atan2 sqrt pi earliest latest year_of")) {
		list[name] = true
	}
	return list
}

func TestNames(t *testing.T) {
	reserved := reservedInFormulas()
	check := func(name, of string) {
		require.Regexp(t, `^[a-z]+(_[a-z0-9]+)*$`, name)
		require.False(t, reserved[name] || token.IsKeyword(name), "%s of %s is a reserved name", name, of)
	}
	plurals := map[string]string{}
	for _, part := range BuiltIn().Types() {
		check(part.Name, "the vocabulary")
		require.NotEmpty(t, part.Help, part.Name)
		require.NotEmpty(t, part.Place, part.Name)
		require.NotEmpty(t, part.Particulars, part.Name)
		if part.Repeats() {
			check(part.Plural, part.Name)
			require.Empty(t, plurals[part.Plural], part.Name)
			plurals[part.Plural] = part.Name
			require.True(t, part.Labelled, part.Name)
			require.Nil(t, BuiltIn().Type(part.Plural), "%s is a part and a list", part.Plural)
		}
		for _, x := range part.Particulars {
			if x.Name != "one" { // also a function, which never stands behind a point
				check(x.Name, part.Name)
			}
		}
	}
}

func TestChoiceLists(t *testing.T) {
	lists := map[*ChoiceList]string{}
	eachParticular(func(name string, x *Particular) {
		if x.Choices != nil {
			lists[x.Choices] = name
		}
	})
	for _, part := range BuiltIn().Types() {
		if part.Labels != nil {
			lists[part.Labels] = part.Name
		}
	}
	require.NotContains(t, lists, (*ChoiceList)(nil))
	for list, of := range lists {
		require.LessOrEqual(t, len(list.Choices), 64, of)
		require.GreaterOrEqual(t, len(list.Choices), 2, of)
		for i, choice := range list.Choices {
			require.Equal(t, i, list.Find(choice.Value), "%s of %s", choice.Value, of)
			for _, synonym := range choice.Synonyms {
				require.Equal(t, i, list.Find("  "+strings.ToUpper(synonym)+" "), "%s of %s", synonym, of)
			}
		}
		require.Equal(t, -1, list.Find("none"), of)
		require.Equal(t, -1, list.Find(""), of)
	}
	for _, declared := range BuiltIn().lists {
		require.Contains(t, lists, declared, "nothing uses the choices %s", declared.Name)
	}
}

func TestEquipmentStandards(t *testing.T) {
	// Each by the number its publisher gives it, and by how labels and passports write it.
	for name, spellings := range map[string]string{
		"harness.standard":        "FIA 8853/98|8853-1998|8853/98|FIA 8853-2016|8854/98|SFI 16.1|SFI 16.2|SFI 16.5|SFI 16.6",
		"seat.standard":           "FIA 8855-1999|FIA 8855-2021|FIA 8862-2009|8862/2009",
		"helmet.standard":         "FIA 8859-2015|FIA 8859-2024|FIA 8860-2004|FIA 8860-2010|FIA 8860-2018|FIA 8860-2018-ABP|SA2010|SA2015|Snell SA2020|BS 6658",
		"head_restraint.standard": "FIA 8858-2002|FIA 8858-2010|SFI 38.1",
		"garment.standard":        "FIA 1986|FIA 8856-2000|FIA 8856-2018|SFI 3.2A/5|SFI 3.2A",
		"fuel_cell.standard":      "FIA FT3-1999|FT3|FIA FT3.5-1999|FIA FT5-1999|SFI 28.1|SFI 28.2|SFI 28.3",
		"fire_system.standard":    "FIA 1999|TL16|FIA 8865-2015|SFI 17.1",
		"padding.standard":        "FIA 8857-2001|SFI 45.1",
		"window_net.standard":     "SFI 27.1|FIA 8863-2013",
		"foot.bolt_grade":         "8.8|ISO 8.8|10.9|12.9|SAE grade 8",
		"tube.part":               "main hoop|main rollbar|main roll hoop|front hoop|lateral hoop|backstay|rear brace|door bar|harness bar|windscreen pillar reinforcement",
		"tube.material":           "T45|25CrMo4|4130|15CDV6|unalloyed carbon steel",
	} {
		x := builtInParticular(t, name)
		for _, text := range strings.Split(spellings, "|") {
			require.GreaterOrEqual(t, x.Choices.Find(text), 0, "%s: %s", name, text)
		}
	}
	standards := builtInParticular(t, "harness.standard").Choices
	require.Equal(t, standards.Find("FIA 8853/98"), standards.Find("8853-1998"))
	require.NotEqual(t, standards.Find("FIA 8853/98"), standards.Find("FIA 8853-2016"))
}

func TestShapeOfTheCar(t *testing.T) {
	v := BuiltIn()
	require.Nil(t, v.Type("sheet"))
	require.Same(t, v.Type("cage"), v.Type("tube").Within)
	require.True(t, v.Type("tube").AtTop)
	require.Same(t, v.Type("tube"), v.Type("cage").PartsNamed("tubes"))
	require.Same(t, v.Type("certificate"), v.Type("cage").PartNamed("certificate"))
	require.Same(t, v.Type("strap"), v.Type("harness").PartsNamed("straps"))
	require.Same(t, v.Root, v.Type("harness").Within)
	require.Nil(t, v.Root.PartNamed("tube"))
	require.True(t, v.Type("car").Labelled)
	require.False(t, v.Type("car").Repeats())
	require.Equal(t, 0, v.Type("harness").Labels.Find("DRIVER"))
	require.Equal(t, KindText, v.Type("car").Particular("class").Kind)

	wall := builtInParticular(t, "tube.wall")
	require.Equal(t, "stock", wall.Inherits)
	require.Same(t, v.Type("tube_stock"), builtInParticular(t, "tube.stock").Names)
	require.Equal(t, []string{"ordered_outside", "ordered_wall"}, builtInParticular(t, "tube_stock.ordered").Fills)
	require.Equal(t, []string{"x", "y", "z"}, builtInParticular(t, "joint.at").Fills)
	require.Same(t, v.Type("joint"), builtInParticular(t, "tube.through").Names)
	require.Same(t, v.Type("joint"), v.Type("cage").PartsNamed("joints"))
	require.Same(t, v.Type("meeting"), v.Type("joint").PartsNamed("meetings"))
	require.Same(t, v.Root, v.Type("head").Within)
	require.True(t, builtInParticular(t, "tube.node_length").Derived)
	require.False(t, wall.Derived || wall.Mirrored)
	require.True(t, builtInParticular(t, "foot.carries").Mirrored)
	require.True(t, wall.Measured)
	require.False(t, builtInParticular(t, "tube.ordered_wall").Measured)
	require.False(t, builtInParticular(t, "seat.made").Changeable)
	require.True(t, builtInParticular(t, "seat.not_after").MayBeAbsent)
	require.Equal(t, StageBeforeCutting, wall.Stage)

	for _, part := range v.Types() {
		require.Same(t, part, part.Within.Parts[part.Index], part.Name)
		if part.AtTop {
			require.NotSame(t, v.Root, part.Within, part.Name)
		}
	}
	require.Same(t, v, BuiltIn())
}

func TestHowToMeasureFitsTheWork(t *testing.T) {
	// A wall on a built cage is not read with a caliper, a label date not with a ruler, a
	// bottle is weighed (common practice).
	for name, pattern := range map[string]string{
		"tube.wall":                 `[Uu]ltrasonic.*inspection hole.*caliper only at an open end`,
		"tube_stock.wall":           `micrometer`,
		"strap.made":                `sewn-in label.*photograph`,
		"fire_bottle.weighed_mass":  `scale.*stamped on the neck`,
		"foot.plate_contact_area":   `blue`,
		"restrictor.inner_diameter": `micrometer|plug`,
		"exhaust.noise":             `[Ss]ound level meter`,
	} {
		require.Regexp(t, regexp.MustCompile(pattern), builtInParticular(t, name).How, name)
	}
}

func TestWordsOfKindsAndStages(t *testing.T) {
	for _, word := range dimensionWords {
		_, known := quantity.DimensionNamed(word)
		require.True(t, known, word)
	}
	for kind := KindCount; kind <= KindPoint; kind++ {
		got, ok := kindNamed(kind.String())
		require.True(t, ok, kind)
		require.Equal(t, kind, got)
	}
	require.Equal(t, "figure", KindNumber.String())
	require.Equal(t, "unknown kind", Kind(99).String())
	require.Len(t, StageWords(), 5)
	for i, word := range StageWords() {
		stage, ok := StageNamed(" " + strings.ToUpper(word))
		require.True(t, ok, word)
		require.Equal(t, Stage(i+1), stage)
		require.Equal(t, word, stage.String())
	}
	_, ok := StageNamed("")
	require.False(t, ok)
	require.Empty(t, Stage(99).String())
}

// TestEverydayWordsOfTheTrade holds what a shop calls things that the lists name otherwise.
func TestEverydayWordsOfTheTrade(t *testing.T) {
	for of, words := range map[string]map[string]string{
		"car.driven_wheels": {"RWD": "rear", "rear-wheel drive": "rear", "fwd": "front", "front wheel drive": "front", "AWD": "four", "4x4": "four", "4wd": "four"},
		"engine.fuel":       {"unleaded": "petrol"},
		"tube.part": {"B hoop": "main hoop", "A hoop": "front hoop", "side impact bar": "door bar",
			"rear brace": "backstay", "rear down tube": "backstay", "windshield header": "transverse member", "shoulder harness bar": "harness bar", "rocker bar": "sill bar"},
		"tube.material":       {"chromoly": "25CrMo4", "AISI 4130": "25CrMo4", "aluminum": "aluminium alloy"},
		"seat.shell_material": {"fibreglass": "composite", "carbon fiber": "composite"},
		"harness.standard":    {"seat belt": "ECE R16"},
		"lamp.purpose":        {"turn signal": "direction indicator", "spotlight": "additional headlamp"},
		"battery.place":       {"trunk": "luggage area"},
		"foot.plate_material": {"fiberglass": "composite"},
	} {
		part, name, _ := strings.Cut(of, ".")
		type_ := BuiltIn().Type(part)
		require.NotNil(t, type_, of)
		x := type_.Particular(name)
		require.NotNil(t, x, of)
		for word, value := range words {
			i := x.Choices.Find(word)
			require.GreaterOrEqual(t, i, 0, "%s of %s", word, of)
			require.Equal(t, value, x.Choices.Choices[i].Value, "%s of %s", word, of)
		}
	}
}
