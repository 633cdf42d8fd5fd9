package report

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// oneDecimal writes a figure with one decimal, never as a minus zero.
func oneDecimal(v float64) string {
	text := strconv.FormatFloat(v, 'f', 1, 64)
	if text == "-0.0" {
		return "0.0"
	}
	return text
}

// inMillimetres writes metres in millimetres with one decimal.
func inMillimetres(metres float64) string { return oneDecimal(1000 * metres) }

// inDegrees writes radians in degrees with one decimal.
func inDegrees(radians float64) string { return oneDecimal(radians * 180 / math.Pi) }

// sizeWords writes a tube's size in millimetres as it would be ordered, "" where neither
// figure is recorded.
func sizeWords(outside, wall float64) string {
	figure := func(metres float64) string {
		if metres == 0 {
			return "?"
		}
		return strconv.FormatFloat(math.Round(metres*1e6)/1e3, 'f', -1, 64)
	}
	if outside == 0 && wall == 0 {
		return ""
	}
	return figure(outside) + " x " + figure(wall) + " mm"
}

// cageNames names the tubes and joints of a frame in sentences, their labels made safe: a
// label may hold line breaks.
type cageNames struct{ frame *vehicle.Frame }

func (n cageNames) tube(number int) string { return "tube " + Safe(n.frame.Tubes[number].Number) }

func (n cageNames) joint(number int) string { return "joint " + Safe(n.frame.Joints[number].Name) }

// member is the tube with the member of the cage that it is.
func (n cageNames) member(number int) string {
	if member := n.frame.Tubes[number].Member; member != "" {
		return n.tube(number) + " (" + member + ")"
	}
	return n.tube(number)
}

// findingWords puts a finding into sentences, the thing at fault first.
func findingWords(f *vehicle.Frame, found vehicle.FrameFinding) string {
	n := cageNames{f}
	text := ""
	switch found.Kind {
	case vehicle.LooseJoint:
		text = fmt.Sprintf("%s: no tube goes through it, and it lies on none. Write it into the tube it belongs to, or take it out.", n.joint(found.Joints[0])) + nearestWords(f, found.Joints[0], -1)
	case vehicle.EndInTheAir:
		text = fmt.Sprintf("%s ends in the air at %s: neither a foot nor another tube is there.", n.member(found.Tubes[0]), n.joint(found.Joints[0])) + nearestWords(f, found.Joints[0], found.Tubes[0])
	case vehicle.DoubledTube:
		text = fmt.Sprintf("%s runs the same way as %s: most likely it is written twice.", n.member(found.Tubes[0]), n.member(found.Tubes[1]))
	case vehicle.SameEnds:
		text = fmt.Sprintf("%s and %s run between the same two ends by different ways.", n.member(found.Tubes[0]), n.member(found.Tubes[1]))
	case vehicle.OnePlace:
		text = onePlaceWords(f, found)
	case vehicle.ImageOnSameSide, vehicle.ImageFarOff, vehicle.LabelOfOtherSide:
		text = sideWords(f, found)
	case vehicle.BendsDoNotFit:
		text = fmt.Sprintf("%s: its bends of %s mm radius do not fit between %s and %s; %s mm are missing. Take a smaller radius, at most %s mm, or move a joint.",
			n.member(found.Tubes[0]), inMillimetres(f.Tubes[found.Tubes[0]].Course.Radius), n.joint(found.Joints[0]), n.joint(found.Joints[1]), inMillimetres(found.Fault.Missing), greatestRadius(f.Tubes[found.Tubes[0]]))
	case vehicle.ThroughEachOther:
		text = fmt.Sprintf("%s and %s go through each other at about %s, their axes %s mm apart: end one of them there, as two tubes with a joint, or move it.",
			n.member(found.Tubes[0]), n.member(found.Tubes[1]), placeWords(found.At), inMillimetres(found.Away))
	case vehicle.HeadInTube:
		text = fmt.Sprintf("the helmet of %s is inside %s by %s mm. Look at both places: no head can be there.", Safe(found.Part.Name()), n.member(found.Tubes[0]), inMillimetres(found.Away))
	case vehicle.LongerThanBars:
		text = fmt.Sprintf("%s is longer than every bar of its stock by %s mm. Order longer bars, or make it of two tubes with a joint.", n.member(found.Tubes[0]), inMillimetres(found.Away))
	case vehicle.TooFewBars:
		text = fmt.Sprintf("%s: %s too few bought for the way of cutting below.", Safe(found.Part.Name()), numberOf(found.Count, "bar"))
	case vehicle.RadiusUnknown:
		text = fmt.Sprintf("%s turns at %s, and its bend_radius is not recorded: its bends and its length cannot be told.", n.member(found.Tubes[0]), n.joint(found.Joints[0]))
	case vehicle.NoDieFits:
		outside := f.Tubes[found.Tubes[0]].Outside
		text = fmt.Sprintf("%s cannot be bent: none of the dies is for a tube of %s mm outside.", n.member(found.Tubes[0]), inMillimetres(outside)) + otherDieWords(f, f.Tubes[found.Tubes[0]])
	case vehicle.DieImpossible:
		text = dieWords(f, found)
	case vehicle.NotchImpossible, vehicle.SizeUnknown, vehicle.RunsStraightOn, vehicle.NotchInBend:
		text = notchWords(f, found)
	case vehicle.NoTubes:
		text = "the sheet has no tube. Write each as a block tube, with the joints it goes through."
	case vehicle.PartUnplaced:
		text = unplacedWords(f, found.Part)
	case vehicle.FootWithoutPlace:
		text = footWords(f, found.Part)
	}
	if found.Weight == vehicle.StillOpen && (found.Kind == vehicle.LooseJoint || found.Kind == vehicle.EndInTheAir) {
		text += " What is not written down, or has no place yet, may be there."
	}
	if found.Also != nil {
		text += " Also " + Safe(found.Also.Name()) + ", its image."
	}
	return sentence(text)
}

// placeWords is a place in whole millimetres: forward, left, up.
func placeWords(at cage.Vector) string {
	whole := func(metres float64) int { return int(math.Round(1000 * metres)) }
	return fmt.Sprintf("(%d, %d, %d)", whole(at.X), whole(at.Y), whole(at.Z))
}

// notchWords says what is with the notch of one tube on another.
func notchWords(f *vehicle.Frame, found vehicle.FrameFinding) string {
	n := cageNames{f}
	branch, main := found.Tubes[0], found.Tubes[1]
	where := fmt.Sprintf("%s meets %s at %s", n.member(branch), n.member(main), n.joint(found.Joints[0]))
	switch {
	case found.Kind == vehicle.SizeUnknown:
		return where + ": the outside diameters are not both recorded, so its notch cannot be told."
	case found.Kind == vehicle.RunsStraightOn:
		return where + " in one line: there is no notch, and it is cut square at the joint."
	case found.Kind == vehicle.NotchInBend:
		return where + ": its notch reaches into its own bend. The template is for a straight end."
	case found.Fault.Problem == cage.NotALength:
		return where + ": its notch cannot be worked out from these sizes."
	}
	for _, end := range f.Tubes[branch].Ends {
		if end.Fault != found.Fault {
			continue
		}
		if away, misses := f.Misses(end); misses {
			return fmt.Sprintf("%s, but its axis passes the other's %s mm away, so that it hangs over by %s mm and no saddle can be cut.%s",
				where, inMillimetres(away), inMillimetres(found.Fault.Missing), bendAdvice(f, main, found.Joints[0]))
		}
	}
	return fmt.Sprintf("%s, but at %s mm outside it is thicker than that one's %s mm: no saddle can be cut for it.", where,
		inMillimetres(f.Tubes[branch].Outside), inMillimetres(f.Tubes[main].Outside))
}

// bendAdvice says what to do where a tube misses another because that one bends at the
// joint.
func bendAdvice(f *vehicle.Frame, main, joint int) string {
	tube := f.Tubes[main]
	for _, inner := range tube.Through[1 : len(tube.Through)-1] {
		if _, away := tube.Course.Nearest(f.Joints[inner].At); inner == joint && away > f.Structure.Tolerance {
			return fmt.Sprintf(" %s bends there, and its arc passes %s mm from the joint: give this tube a joint of its own that lies on the straight or the arc.",
				sentenceStart(cageNames{f}.tube(main)), inMillimetres(away)) + straightWords(tube, f.Joints[inner].At)
		}
	}
	return ""
}

// greatestRadius is the greatest bend radius that fits a tube, in millimetres, rounded down.
func greatestRadius(tube vehicle.FrameTube) string {
	return oneDecimal(math.Floor(1e4*tube.Course.GreatestRadius()+1e-6) / 10)
}

// sentenceStart gives a text a capital letter.
func sentenceStart(text string) string { return strings.TrimSuffix(sentence(text), ".") }

// dieWords says why a die cannot make a bend of a tube, and by how much.
func dieWords(f *vehicle.Frame, found vehicle.FrameFinding) string {
	tube, die, fault := cageNames{f}.member(found.Tubes[0]), Safe(found.Die.Part.Name()), found.DieFault
	short := inMillimetres(fault.Needed - fault.Found)
	switch fault.Problem {
	case cage.OtherOutside:
		return fmt.Sprintf("%s measures %s mm outside, and %s is for %s mm.", tube, inMillimetres(fault.Found), die, inMillimetres(fault.Needed)) + otherDieWords(f, f.Tubes[found.Tubes[0]])
	case cage.OtherRadius:
		return fmt.Sprintf("%s is to have bends of %s mm radius, and %s bends to %s mm: %s mm apart.", tube, inMillimetres(fault.Found), die, inMillimetres(fault.Needed), inMillimetres(math.Abs(fault.Needed-fault.Found))) + otherDieWords(f, f.Tubes[found.Tubes[0]])
	case cage.TooLittleGrip:
		return fmt.Sprintf("%s has no more than %s mm of straight at either end, and %s grips %s mm: %s mm are missing. Leave it that much longer and cut it off afterwards.",
			tube, inMillimetres(fault.Found), die, inMillimetres(fault.Needed), short)
	case cage.BendsTooClose:
		return fmt.Sprintf("%s has %s mm of straight between bends %d and %d, and %s needs %s mm: %s mm are missing.",
			tube, inMillimetres(fault.Found), fault.Bend, fault.Bend+1, die, inMillimetres(fault.Needed), short)
	case cage.BeyondHalfTurn:
		return fmt.Sprintf("bend %d of %s would have to be bent to %s deg on %s for its springback, beyond a half turn by %s deg.",
			fault.Bend+1, tube, inDegrees(fault.Found), die, inDegrees(fault.Found-fault.Needed))
	case cage.MarkBeforeStart:
		return fmt.Sprintf("the mark of bend %d of %s on %s would be %s mm ahead of the tube's first joint: leave its first end that much longer and cut it off afterwards.",
			fault.Bend+1, tube, die, inMillimetres(-fault.Found))
	}
	panic("a die's fault without words: " + string(fault.Problem))
}

// unplacedWords says why a part has no place.
func unplacedWords(f *vehicle.Frame, part *vehicle.Part) string {
	lacking, fault := f.WhyUnplaced(part)
	if fault != nil {
		return fmt.Sprintf("%s cannot be drawn: %s.", Safe(part.Name()), fault.Problem)
	}
	return fmt.Sprintf("%s has no place: %s.", Safe(part.Name()), lackWords(part, lacking))
}

// lackWords names what is not recorded; of the part itself by the particular alone.
func lackWords(part *vehicle.Part, lacking []vehicle.Base) string {
	var words []string
	for at := 0; at < len(lacking); {
		of := lacking[at].Part
		var names []string
		for ; at < len(lacking) && lacking[at].Part == of; at++ {
			names = append(names, lacking[at].Particular.Name)
		}
		if of == part {
			words = append(words, list(names))
		} else {
			words = append(words, list(names)+" of "+Safe(of.Name()))
		}
	}
	verb := " is not recorded"
	if len(lacking) > 1 {
		verb = " are not recorded"
	}
	return list(words) + verb
}
