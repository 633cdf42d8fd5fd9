package report

import (
	"fmt"
	"math"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// notchTemplate is the template of one end of a tube. Places round the tube are angles p
// as in cage.Notch.Profile; lengths are in millimetres.
type notchTemplate struct {
	end   templateEnd
	notch cage.Notch
	seam  float64 // p where the edges of the paper meet: the line W along the tube
	marks []templateMark
	notes []string // what it wants by hand
	steps int      // so many chords follow the curve closely enough
}

// templateEnd is one end of a tube, as it is named on paper.
type templateEnd struct {
	tube        *vehicle.FrameTube
	last        bool
	joint, onto string // of onto "" where it is cut square
	other       bool   // the tube's other end has a template too
}

// name is what an end is called.
func (e templateEnd) name() string {
	if e.last {
		return "last end"
	}
	return "first end"
}

// withoutTemplate is an end that has no template, and why.
type withoutTemplate struct {
	end    templateEnd
	square bool // it needs none
	reason string
}

// planTemplates goes through the ends of all tubes in the order of the sheet.
func planTemplates(s *templateSheet, f *vehicle.Frame) (planned []*notchTemplate, without []withoutTemplate) {
	for i := range f.Tubes {
		tube := &f.Tubes[i]
		var notched [2]bool
		for which := range tube.Ends {
			notched[which] = whyNot(f, tube, tube.Ends[which]) == ""
		}
		for which, end := range tube.Ends {
			named := templateEnd{tube: tube, last: which == 1, joint: f.Joints[end.Joint].Name, other: notched[1-which]}
			if end.Onto < 0 {
				without = append(without, withoutTemplate{named, true, "cut square"})
				continue
			}
			named.onto = f.Tubes[end.Onto].Number
			if !notched[which] {
				without = append(without, withoutTemplate{named, false, whyNot(f, tube, end)})
				continue
			}
			t := &notchTemplate{end: named, notch: end.Seat.Notch, steps: stepsFor(end.Seat.Notch)}
			t.setMarks(f)
			for _, words := range endNotes(f, i, which) {
				t.notes = append(t.notes, sentence(words))
			}
			planned = append(planned, t)
		}
	}
	return planned, without
}

// whyNot says why an end has no notch that can be drawn, "" where it has one.
func whyNot(f *vehicle.Frame, tube *vehicle.FrameTube, end vehicle.FrameEnd) string {
	if end.Onto < 0 {
		return "cut square"
	}
	onto := f.Tubes[end.Onto]
	fault := end.Fault
	if fault == nil {
		fault = end.Seat.Notch.Check()
	}
	switch {
	case fault == nil:
		return ""
	case !(tube.Outside > 0):
		return "its outside diameter is not recorded"
	case !(onto.Outside > 0):
		return fmt.Sprintf("the outside diameter of tube %s is not recorded", onto.Number)
	case fault.Problem == cage.BranchTooBig && tube.Outside > onto.Outside:
		return fmt.Sprintf("it is thicker than tube %s: %.1f mm on %.1f mm", onto.Number, 1000*tube.Outside, 1000*onto.Outside)
	case fault.Problem == cage.BranchTooBig:
		return fmt.Sprintf("it hangs over the side of tube %s by %.1f mm, as their centrelines pass each other", onto.Number, max(0.1, 1000*fault.Missing))
	case fault.Problem == cage.NoMeeting:
		return fmt.Sprintf("it runs along tube %s", onto.Number)
	}
	return fmt.Sprintf("no notch onto tube %s: %s", onto.Number, fault.Problem)
}

// chordTolerance is how far a chord may be off the curve, in metres.
const chordTolerance = 0.00002

// stepsFor returns how many equal steps round the tube keep every chord close to the
// profile. They are a multiple of four, as a profile is sharpest a quarter turn from where
// it begins: it has a corner there where branch and main tube are of one size.
func stepsFor(n cage.Notch) int {
	steps := 180
	for ; steps < 5760; steps *= 2 {
		if chordsOff(n, steps) <= chordTolerance {
			break
		}
	}
	return steps
}

// chordsOff returns how far the middles of chords are from the profile, along the tube.
func chordsOff(n cage.Notch, steps int) float64 {
	worst, step := 0.0, 2*math.Pi/float64(steps)
	for i := range steps {
		p := float64(i) * step
		chord := (n.Profile(p) + n.Profile(p+step)) / 2
		worst = max(worst, math.Abs(n.Profile(p+step/2)-chord))
	}
	return worst
}

// circumference is the way round the tube's outside, in millimetres.
func (t *notchTemplate) circumference() float64 { return 2000 * math.Pi * t.notch.Branch }

// depth is from the long point to the bottom of the notch, in millimetres.
func (t *notchTemplate) depth() float64 { return 1000 * t.notch.Depth() }
