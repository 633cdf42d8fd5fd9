package vehicle

import "slices"

// kindWords are the words for the kinds that are not a dimension, by Kind.
var kindWords = [...]string{
	KindCount:     "count",
	KindDate:      "date",
	KindText:      "text",
	KindChoice:    "choice",
	KindTruth:     "yes or no",
	KindSize:      "tube size",
	KindPartName:  "part name",
	KindPartNames: "part names",
	KindPoint:     "point",
}

// dimensionWords are the dimensions that a particular is most likely to have, for advice.
var dimensionWords = []string{
	"length", "mass", "area", "volume", "angle", "temperature", "pressure", "force", "torque", "time", "speed",
	"rotational speed", "acceleration", "voltage", "current", "power", "mass per length", "density", "second moment", "bending stiffness", "number",
}

// String returns the word for a kind as it is written in a particular: "yes or no". For a
// figure, whose word is its dimension, it is "figure".
func (k Kind) String() string {
	if k == KindNumber {
		return "figure"
	}
	if int(k) < len(kindWords) && kindWords[k] != "" {
		return kindWords[k]
	}
	return "unknown kind"
}

// kindNamed returns the kind with a word of its own.
func kindNamed(word string) (Kind, bool) {
	i := slices.Index(kindWords[:], word)
	return Kind(i), i > 0
}

// stageWords are the words for the stages, by Stage.
var stageWords = [...]string{
	StageUnset:         "",
	StageBeforeCutting: "before cutting",
	StageBareShell:     "bare shell",
	StageBeforePaint:   "before paint",
	StageBeforeTrim:    "before trim",
	StageBeforeEvent:   "before event",
}

// StageWords returns the words for the stages in the order of the build.
func StageWords() []string { return slices.Clone(stageWords[StageBeforeCutting:]) }

// StageNamed returns the stage with that word, however its letters and blanks are written.
// It answers false for a word that is none.
func StageNamed(word string) (Stage, bool) {
	i := slices.Index(stageWords[:], FoldText(word))
	return Stage(max(i, 0)), i > 0
}

// String returns the word for a stage: "bare shell". It is empty for StageUnset.
func (s Stage) String() string {
	if int(s) < len(stageWords) {
		return stageWords[s]
	}
	return ""
}
