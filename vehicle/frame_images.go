package vehicle

import (
	"fmt"
	"math"
	"slices"
)

// FindingsOnce returns the findings with those of mirror images taken into those of their
// originals, or of whichever is first: what is said of one holds for the other.
func (f *Frame) FindingsOnce() []FrameFinding {
	var once []FrameFinding
	images := f.images()
	first := map[string]int{}
	for _, found := range f.Findings() {
		image, ok := images.of(found)
		if at, isTold := first[findingKey(image)]; ok && isTold && once[at].Also == nil {
			once[at].Also = f.differing(once[at], found)
			continue
		}
		if _, isThere := first[findingKey(found)]; !isThere {
			first[findingKey(found)] = len(once)
		}
		once = append(once, found)
	}
	return once
}

// imageNumbers are the numbers of the mirror images of joints and tubes, and of the
// originals of those that are images: their own where they have none.
type imageNumbers struct{ joints, tubes []int }

func (f *Frame) images() imageNumbers {
	var joints, tubes []*Part
	for _, joint := range f.Joints {
		joints = append(joints, joint.Part)
	}
	for _, tube := range f.Tubes {
		tubes = append(tubes, tube.Part)
	}
	return imageNumbers{imagesAmong(joints), imagesAmong(tubes)}
}

func imagesAmong(parts []*Part) []int {
	numbers, images := map[*Part]int{}, make([]int, len(parts))
	for i, part := range parts {
		numbers[part], images[i] = i, i
	}
	for i, part := range parts {
		if part == nil || part.Original == nil {
			continue
		}
		if original, ok := numbers[part.Original]; ok {
			images[i], images[original] = original, i
		}
	}
	return images
}

// of returns the finding on the other side of the car, and whether that is another one.
func (n imageNumbers) of(found FrameFinding) (FrameFinding, bool) {
	image := found
	image.Tubes, image.Joints = slices.Clone(found.Tubes), slices.Clone(found.Joints)
	for i, tube := range found.Tubes {
		image.Tubes[i] = n.tubes[tube]
	}
	for i, joint := range found.Joints {
		image.Joints[i] = n.joints[joint]
	}
	image.At = found.At.Mirror()
	return image, found.Part == nil && findingKey(image) != findingKey(found)
}

// findingKey is the same for findings that say the same.
func findingKey(found FrameFinding) string {
	tubes := found.Tubes
	if found.Kind == ThroughEachOther { // of two that are alike
		tubes = slices.Sorted(slices.Values(tubes))
	}
	inside := func(metres float64) int { return int(math.Round(1000 * metres)) }
	problem := ""
	if found.Fault != nil {
		problem = string(found.Fault.Problem)
	}
	return fmt.Sprint(found.Kind, found.Weight, tubes, found.Joints, inside(found.At.X), inside(found.At.Y), inside(found.At.Z),
		problem, found.DieFault.Problem, found.DieFault.Bend, found.Part != nil)
}

// differing returns the part by which the second of two findings differs from the first: its
// tube, or else its joint.
func (f *Frame) differing(one, other FrameFinding) *Part {
	for i, tube := range other.Tubes {
		if one.Tubes[i] != tube {
			return f.Tubes[tube].Part
		}
	}
	for i, joint := range other.Joints {
		if one.Joints[i] != joint {
			return f.Joints[joint].Part
		}
	}
	return nil
}
