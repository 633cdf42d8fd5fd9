package engine

// Verdict is the outcome of a clause for a subject, a clause as a whole, a chapter or a car.
type Verdict uint8

// The verdicts in the order of a roll-up: a whole is as bad as its worst part, and the
// greatest is the worst.
const (
	DoesNotApply Verdict = iota
	Meets
	UnderDispensation
	ByEye
	Marginal
	NotRecorded
	Gap
	verdictCount
)

var verdictWords = [verdictCount]string{
	DoesNotApply:      "does not apply",
	Meets:             "meets",
	UnderDispensation: "under dispensation",
	ByEye:             "by eye",
	Marginal:          "marginal",
	NotRecorded:       "not recorded",
	Gap:               "gap",
}

// String is the verdict's word as printed and as written in a worked case.
func (v Verdict) String() string {
	if v < verdictCount {
		return verdictWords[v]
	}
	return "unknown verdict"
}

// Verdicts lists all verdicts, worst first.
func Verdicts() []Verdict {
	all := make([]Verdict, 0, verdictCount)
	for v := Gap; ; v-- {
		all = append(all, v)
		if v == DoesNotApply {
			return all
		}
	}
}

// VerdictNamed finds a verdict by its word.
func VerdictNamed(word string) (Verdict, bool) {
	for v, w := range verdictWords {
		if w == word {
			return Verdict(v), true
		}
	}
	return 0, false
}

// Worse returns the worse of two verdicts.
func (v Verdict) Worse(w Verdict) Verdict { return max(v, w) }
