package report

import (
	"fmt"
	"math"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// nearestWords says which tube is nearest to a joint that nothing holds, "" without another.
// But is the tube that ends there, -1 for none.
func nearestWords(f *vehicle.Frame, joint, but int) string {
	nearest, away, at := f.NearestTube(f.Joints[joint].At, but)
	if nearest < 0 {
		return ""
	}
	n := cageNames{f}
	words := fmt.Sprintf(" The nearest tube is %s: its axis passes %s mm away at %s mm, and the readings allow %s mm.",
		n.member(nearest), inMillimetres(away), placeWords(at), inMillimetres(f.Structure.Tolerance))
	if away < f.Tubes[nearest].Outside/2 {
		words += fmt.Sprintf(" So the joint is inside the metal of %s: give it that place.", n.tube(nearest))
	}
	return words
}

// straightWords says where the straight of a tube is nearest to a joint, "" where it has none.
func straightWords(tube vehicle.FrameTube, joint cage.Vector) string {
	least, at := math.Inf(1), cage.Vector{}
	for _, piece := range tube.Course.Pieces() {
		if share, away := piece.Nearest(joint); piece.Turn == 0 && away < least {
			least, at = away, piece.At(share)
		}
	}
	if math.IsInf(least, 1) {
		return ""
	}
	return fmt.Sprintf(" The nearest place on the straight is %s mm.", placeWords(at))
}

// footWords says why a foot has no place.
func footWords(f *vehicle.Frame, foot *vehicle.Part) string {
	name := Safe(foot.Name())
	named, _ := foot.Value(foot.Type.Particular("tube"))
	joint, _ := foot.Value(foot.Type.Particular("joint"))
	if named.Named == nil || joint.Named != nil {
		return fmt.Sprintf("%s is at no joint that has a place: write the one it stands under as joint = \"…\".", name)
	}
	under := "…"
	lowest := math.Inf(1)
	for _, tube := range f.Tubes {
		if tube.Part != named.Named {
			continue
		}
		for _, end := range tube.Ends {
			if at := f.Joints[end.Joint]; at.At.Z < lowest-1e-6 {
				lowest, under = at.At.Z, Safe(at.Name)
			}
		}
	}
	return fmt.Sprintf("%s names %s, but no joint: write joint = \"%s\" in it, the end of the tube that it stands under.", name, Safe(named.Named.Name()), under)
}

// otherDieWords says which of the sheet's dies a tube could be bent with, or what to change.
func otherDieWords(f *vehicle.Frame, tube vehicle.FrameTube) string {
	const same = 1e-4
	var others, near []string
	for _, die := range f.Dies {
		if math.Abs(die.Outside-tube.Outside) > same {
			others = append(others, fmt.Sprintf("%s mm (%s)", inMillimetres(die.Outside), Safe(die.Part.Name())))
			continue
		}
		if math.Abs(die.Radius-tube.Course.Radius) <= same {
			return fmt.Sprintf(" %s fits: write die = \"%s\".", sentenceStart(Safe(die.Part.Name())), Safe(die.Part.Label))
		}
		near = append(near, fmt.Sprintf("%s mm (%s)", inMillimetres(die.Radius), Safe(die.Part.Name())))
	}
	if len(near) > 0 {
		return fmt.Sprintf(" For its outside there is a bend_radius of %s: take that, or another die.", strings.Join(near, ", "))
	}
	return fmt.Sprintf(" There are dies for %s: take a stock of such a size, or another die.", strings.Join(others, ", "))
}

// findingPlace is where in the sheet the part stands that a finding is about first, "" where
// it stands nowhere.
func findingPlace(f *vehicle.Frame, found vehicle.FrameFinding) string {
	part := found.Part
	switch {
	case len(found.Tubes) > 0:
		part = f.Tubes[found.Tubes[0]].Part
	case len(found.Joints) > 0:
		part = f.Joints[found.Joints[0]].Part
	}
	if part == nil || part.Range.Start.Line < 1 {
		return ""
	}
	return fmt.Sprintf("%s:%d", Safe(part.Range.Filename), part.Range.Start.Line)
}

// exactWords say what counts as exact though nobody said so: coordinates without tolerance,
// and bends on a die without springback.
func exactWords(f *vehicle.Frame) []string {
	var words []string
	if len(f.Joints) > 0 && !f.HasTolerance() {
		words = append(words, "no tolerance of a joint is stated: figures that follow count as exact")
	}
	var dies []string
	for _, die := range f.Dies {
		if !die.HasSpringback {
			dies = append(dies, Safe(die.Part.Name()))
		}
	}
	if len(dies) > 0 {
		words = append(words, "no springback is recorded of "+list(dies)+": bend angles are those of the finished tube")
	}
	return words
}
