package quantity

import "strings"

// question is a unit that means several things, with what to ask its author.
type question struct {
	spellings string // parted by |, without case
	means     string // completes "… can mean "
	advice    string
}

// questions lists the units that are refused until their author says which is meant.
func questions() []question {
	return []question{
		{"gal|gals|gallon|gallons", "3.785 litres in the United States or 4.546 litres in Britain", `Write "US gal" or "imp gal".`},
		{"mil|mils", "a millimetre to some and a thousandth of an inch to others", `Write "mm" or "thou".`},
		{"ton|tons", "1000 kg, 2000 lb or 2240 lb", `Write "t", "short ton" or "long ton".`},
		{"qt|qts|quart|quarts", "a quarter of a U.S. or of an imperial gallon", `Write "US qt" or "imp qt".`},
		{"pt|pts|pint|pints", "an eighth of a U.S. or of an imperial gallon", `Write "US pt" or "imp pt".`},
		{"fl oz|fl. oz.|fl.oz|floz|fluid ounce|fluid ounces", "the U.S. or the imperial fluid ounce", `Write "US fl oz" or "imp fl oz".`},
		{"ga|ga.|gauge|gage|awg|wg", "several tables of wire and sheet gauges", `Write the number with "swg" or "bwg", or better the wall in mm or in.`},
		{"db", "a level under any weighting", `Write "dB(A)" for a noise measured with the A weighting.`},
		{"cal|kcal|calorie|calories|btu|btus", "several amounts of heat, by who defined it", `Write the energy in "J" or "kWh".`},
		{"mo|month|months|yr|yrs|year|years|a", "28 to 366 days", `Write the time in "day", or use dates.`},
		{"nm", "a nanometre, or a newton metre with a small n", `Write "N.m" for a torque.`},
		{"c", "no unit on its own", `Write "degC" for a temperature.`},
		{"f", "no unit on its own", `Write "degF" for a temperature.`},
		{"ftlb|ftlbs|lbft|lb-ft|ft-lb|ft-lbs|lbs-ft|lb.ft|ft.lb|lb ft|ft lb|lbs ft|ft lbs", "a pound-force or a pound of mass times a foot", `Write "lbf.ft" for a torque.`},
		{"inlb|inlbs|lbin|lb-in|in-lb|in-lbs|lbs-in|lb.in|in.lb|lb in|in lb|in lbs", "a pound-force or a pound of mass times an inch", `Write "lbf.in" for a torque.`},
	}
}

// whichUnit returns the question for a unit that means several things, nil for any other.
// It is asked after the known spellings, which tell case, so that Nm is not asked about.
func whichUnit(text string, from, to int) *Fault {
	folded := strings.ToLower(text)
	if folded == "swg" || folded == "bwg" {
		return &Fault{FaultGauge, from, to, folded + " is a table of numbered walls, not a unit.", "Write a whole number before it, as in 13 bwg."}
	}
	for _, q := range questions() {
		for _, spelling := range strings.Split(q.spellings, "|") {
			if folded == spelling {
				return &Fault{FaultUnitWhich, from, to, quoted(text) + " can mean " + q.means + ".", q.advice}
			}
		}
	}
	return nil
}

// poundWithoutForce refuses a pound or kilogram, which are masses, where the rest of the
// product says that a force was meant: lb times a length is written for a torque, kg/cm2
// for a pressure. (lb/in2 is so common for psi that the table reads it as that.)
func poundWithoutForce(product []factorOfUnit, from, to int) *Fault {
	if len(product) != 2 {
		return nil
	}
	mass, other := product[0], product[1]
	if mass.unit.dimension != Mass {
		mass, other = other, mass
	}
	if mass.unit.dimension != Mass || mass.exponent != 1 || other.unit.dimension != Length {
		return nil
	}
	name, length := mass.unit.name, other.unit.name
	if name != "lb" && name != "kg" {
		return nil
	}
	force := name + "f"
	switch {
	case other.exponent == 1:
		return &Fault{FaultUnitWhich, from, to, name + " is a mass, so " + name + " times " + length + " is no torque.",
			"Write " + quoted(force+"."+length) + " for a torque."}
	case other.exponent == -2 && name == "lb" && length != "in", other.exponent == -2 && name == "kg" && (length == "cm" || length == "mm"):
		return &Fault{FaultUnitWhich, from, to, name + " is a mass, so " + name + " over " + length + "2 is no pressure.",
			"Write " + quoted(force+"/"+length+"2") + " for a pressure; a mass per area is written in kg/m2."}
	}
	return nil
}

// unknownUnit makes the fault for a word that is no unit, with the nearest spelling.
func unknownUnit(word string, from, to int) *Fault {
	fault := &Fault{FaultUnitUnknown, from, to, quoted(word) + " is not a unit known here.", "Write one such as mm, in, kg, lb, MPa, l or deg."}
	if near := nearestUnit(word); near != "" {
		fault.Advice = "Write " + quoted(near) + " if that is meant."
	}
	return fault
}

// nearestUnit returns the known spelling nearest to a word, "" when none is near: the same
// letters in another case, else one slip in three letters, two in six. Everyday units win
// over others at the same distance.
func nearestUnit(word string) string {
	folded := []rune(strings.ToLower(word))
	if len(folded) > 30 {
		return ""
	}
	best, bestSlips := "", len(folded)/3+1
	for _, spelling := range knownUnits.order {
		if slips := slipsBetween(folded, []rune(strings.ToLower(spelling))); slips < bestSlips {
			best, bestSlips = spelling, slips
		}
	}
	return best
}

// slipsBetween counts the letters that must be put in, left out, changed or swapped with
// their neighbour to turn one word into another (optimal string alignment distance).
func slipsBetween(a, b []rune) int {
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := range a {
		row[0] = i + 1
		for j := range b {
			cost := 1
			if a[i] == b[j] {
				cost = 0
			}
			row[j+1] = min(last[j]+cost, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && a[i] == b[j-1] && a[i-1] == b[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
