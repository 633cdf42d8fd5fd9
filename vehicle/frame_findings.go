package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// Weight says how much a finding on a frame weighs.
type Weight uint8

// The weights, heaviest first.
const (
	CannotBeBuilt Weight = iota // as it is written
	StillOpen                   // something is not recorded
	ToLookAt                    // it may be meant
)

// FindingKind says what was found on a frame.
type FindingKind uint8

// The findings. What Tubes, Joints and the other fields of a FrameFinding hold is said beside
// each.
const (
	LooseJoint       FindingKind = iota // no tube holds the joint
	EndInTheAir                         // the tube ends at the joint, and nothing else is there
	DoubledTube                         // the first tube goes the same way as the second
	BendsDoNotFit                       // between the two joints, by Fault.Missing
	ThroughEachOther                    // the two tubes do at At, Away axis to axis, without a joint
	HeadInTube                          // Part's helmet is inside the tube by Away
	NotchImpossible                     // of the first tube on the second at the joint; Fault says why
	LongerThanBars                      // the tube is by Away longer than any bar of its stock
	DieImpossible                       // DieFault of the tube on Die
	NoDieFits                           // none of the sheet's dies is for the tube's outside diameter
	NoTubes                             // the sheet has no tube at all, and does not say that there is no cage
	PartUnplaced                        // Part; see Frame.WhyUnplaced
	RadiusUnknown                       // the tube turns at the joint without a recorded bend radius
	SizeUnknown                         // so that the first tube's notch on the second at the joint cannot be told
	RunsStraightOn                      // the first tube runs along the second at the joint: no notch, cut square
	NotchInBend                         // the first tube's notch on the second at the joint reaches into its bend
	SameEnds                            // the two tubes run between the same ends by different ways
	ImageOnSameSide                     // the first joint, measured by itself, is on the side of the second, whose image it is
	ImageFarOff                         // the first joint, measured by itself, is Away from the mirror place of the second, its original
	LabelOfOtherSide                    // the joint is called left and on the right, or the other way round
	TooFewBars                          // Count more of the stock Part are needed than were bought
	OnePlace                            // the two joints are at one place
	FootWithoutPlace                    // Part names no joint with a known place
)

// FrameFinding is something found on a frame. Tubes and joints are numbers.
type FrameFinding struct {
	Kind     FindingKind
	Weight   Weight
	Tubes    []int
	Joints   []int
	Part     *Part
	At       cage.Vector
	Away     float64 // metres
	Count    int
	Also     *Part // of FindingsOnce: the image, tube or joint, that it is said of as well
	Fault    *cage.Fault
	Die      *FrameDie
	DieFault cage.DieFault
}

// Findings looks a frame over and returns all it finds, the heaviest first, then by kind in
// the order of the sheet. What nothing written holds is still open, not wrong, where tubes
// or feet may be missing from the sheet.
func (f *Frame) Findings() []FrameFinding {
	found := f.heldFindings()
	doubled := map[[2]int]bool{}
	for _, double := range found {
		if double.Kind == DoubledTube {
			doubled[[2]int(double.Tubes)] = true
		}
	}
	for i := range f.Tubes {
		found = append(found, f.bendFindings(i)...)
		for k, end := range f.Tubes[i].Ends {
			if finding, ok := f.endFinding(i, k); ok && !doubled[[2]int{i, end.Onto}] {
				found = append(found, finding)
			}
		}
	}
	found = append(found, f.overlapFindings()...)
	found = append(found, f.headFindings()...)
	found = append(found, f.sideFindings()...)
	found = append(found, f.barFindings()...)
	if f.isEmpty() {
		found = append(found, FrameFinding{Kind: NoTubes, Weight: StillOpen})
	}
	for _, part := range f.Unplaced {
		found = append(found, FrameFinding{Kind: PartUnplaced, Weight: StillOpen, Part: part})
	}
	for _, part := range f.strayFeet() {
		found = append(found, FrameFinding{Kind: FootWithoutPlace, Weight: ToLookAt, Part: part})
	}
	slices.SortStableFunc(found, func(a, b FrameFinding) int {
		if a.Weight != b.Weight {
			return int(a.Weight) - int(b.Weight)
		}
		return int(a.Kind) - int(b.Kind)
	})
	return found
}

// isEmpty reports whether the sheet has no tube, though it may have a cage.
func (f *Frame) isEmpty() bool {
	if len(f.Tubes) > 0 || f.Sheet == nil {
		return false
	}
	root := f.Sheet.Root
	return len(f.Sheet.partsNamed("tube")) == 0 && !root.List(root.Type.PartNamed("cage")).NotFitted
}

// heldFindings are those on what holds joints and tubes.
func (f *Frame) heldFindings() []FrameFinding {
	var found []FrameFinding
	looked := f.looked
	maybe := f.maybeHeld()
	weight := func(joint int, open bool) Weight {
		if open || maybe.all || maybe.joints[joint] {
			return StillOpen
		}
		return CannotBeBuilt
	}
	for _, joint := range looked.Loose {
		found = append(found, FrameFinding{Kind: LooseJoint, Weight: weight(joint, false), Joints: []int{joint}})
	}
	for _, end := range looked.InTheAir {
		found = append(found, FrameFinding{Kind: EndInTheAir, Weight: weight(end.Joint, maybe.feet), Tubes: []int{end.Member}, Joints: []int{end.Joint}})
	}
	for _, double := range looked.Doubled {
		finding := FrameFinding{Kind: SameEnds, Weight: ToLookAt, Tubes: []int{double.Member, double.Other}}
		if double.IsSameCourse {
			finding.Kind, finding.Weight = DoubledTube, CannotBeBuilt
		}
		found = append(found, finding)
	}
	for _, pair := range looked.SamePlaces {
		found = append(found, FrameFinding{Kind: OnePlace, Weight: ToLookAt, Joints: pair[:]})
	}
	return found
}

// mayHold says what could be held by what the sheet does not say yet.
type mayHold struct {
	all    bool         // a tube may go anywhere
	joints map[int]bool // a tube that is not placed goes through the joint
	feet   bool         // a foot may be anywhere
}

func (f *Frame) maybeHeld() mayHold {
	maybe := mayHold{joints: map[int]bool{}}
	whole := f.Cage()
	if whole == nil {
		return maybe
	}
	list := func(name string) *PartList { return whole.List(f.Sheet.Vocabulary.Type(name)) }
	maybe.all = !list("tube").Complete
	maybe.feet = !list("foot").Complete || len(f.strayFeet()) > 0
	for _, part := range f.Unplaced {
		if part.Type.Name != "tube" {
			continue
		}
		through := part.stated("through").Several
		maybe.all = maybe.all || len(through) == 0
		for i, joint := range f.Joints {
			if slices.Contains(through, joint.Part) {
				maybe.joints[i] = true
			}
		}
	}
	return maybe
}

// strayFeet returns the feet that are at no joint with a known place.
func (f *Frame) strayFeet() []*Part {
	if f.Sheet == nil {
		return nil
	}
	return slices.DeleteFunc(f.Sheet.partsNamed("foot"), func(part *Part) bool {
		return slices.ContainsFunc(f.Feet, func(foot FrameFoot) bool { return foot.Part == part })
	})
}

// endFinding is what is wrong with the notch of a tube's end.
func (f *Frame) endFinding(number, k int) (FrameFinding, bool) {
	tube := f.Tubes[number]
	end := tube.Ends[k]
	finding := FrameFinding{Tubes: []int{number, end.Onto}, Joints: []int{end.Joint}, Fault: end.Fault}
	switch {
	case end.Onto < 0:
		return finding, false
	case end.Fault == nil:
		bottom, _ := end.Seat.Notch.ShortPoint()
		finding.Kind, finding.Weight = NotchInBend, ToLookAt
		return finding, tube.Bends() > 0 && bottom+end.Short > tube.endStraight(k)
	case !(tube.Outside > 0 && f.Tubes[end.Onto].Outside > 0):
		finding.Kind, finding.Weight = SizeUnknown, StillOpen
	case end.Fault.Problem == cage.NoMeeting:
		finding.Kind, finding.Weight = RunsStraightOn, ToLookAt
	default:
		finding.Kind, finding.Weight = NotchImpossible, CannotBeBuilt
	}
	return finding, true
}

// endStraight returns the length of the straight at one end of the tube, in metres.
func (t FrameTube) endStraight(end int) float64 {
	pieces := t.Course.Pieces()
	piece := pieces[0]
	if end == 1 {
		piece = pieces[len(pieces)-1]
	}
	if piece.Turn > 0 {
		return 0
	}
	return piece.Length()
}

// bendFindings are those on the bends of a tube.
func (f *Frame) bendFindings(number int) []FrameFinding {
	var found []FrameFinding
	tube := f.Tubes[number]
	for _, fault := range tube.Course.Check() {
		switch fault.Problem {
		case cage.NoRadius:
			joint := tube.Corners[fault.At]
			found = append(found, FrameFinding{Kind: RadiusUnknown, Weight: StillOpen, Tubes: []int{number}, Joints: []int{joint}, Fault: fault})
		case cage.RadiusTooBig:
			between := []int{tube.Corners[fault.At-1], tube.Corners[fault.At]}
			found = append(found, FrameFinding{Kind: BendsDoNotFit, Tubes: []int{number}, Joints: between, Fault: fault})
		}
	}
	schedule, faults := tube.Course.Schedule()
	if len(faults) > 0 || tube.Bends() == 0 {
		return found
	}
	if tube.Die == nil {
		if tube.Outside > 0 && len(f.Dies) > 0 && f.diesKnown() {
			found = append(found, FrameFinding{Kind: NoDieFits, Tubes: []int{number}})
		}
		return found
	}
	for _, fault := range tube.Die.Check(schedule, tube.Outside) {
		if fault.Problem == cage.OtherOutside && tube.Outside == 0 {
			continue
		}
		found = append(found, FrameFinding{Kind: DieImpossible, Tubes: []int{number}, Die: tube.Die, DieFault: fault})
	}
	return found
}

// diesKnown reports whether every die of the sheet says for which tube it is, and no other
// die may come.
func (f *Frame) diesKnown() bool {
	known := !slices.ContainsFunc(f.Dies, func(die FrameDie) bool { return die.Outside == 0 })
	whole := f.Cage()
	return known && (whole == nil || whole.List(f.Sheet.Vocabulary.Type("die")).Complete)
}

// Misses reports whether an end cannot be notched because the tube's axis passes that of the
// other by more than the frame's tolerance, and by how much, in metres; else the tube is
// simply too thick for it.
func (f *Frame) Misses(end FrameEnd) (float64, bool) {
	away := math.Abs(end.Seat.Notch.Offset)
	return away, away > f.Structure.Tolerance
}
