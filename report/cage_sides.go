package report

import (
	"fmt"

	"gapsheet/vehicle"
)

// onePlaceWords says that two joints are at one place; of a joint and its own image that
// cannot be one name for both.
func onePlaceWords(f *vehicle.Frame, found vehicle.FrameFinding) string {
	n := cageNames{f}
	one, other := found.Joints[0], found.Joints[1]
	within := inMillimetres(f.Structure.Tolerance)
	isImageOf := func(image, original int) bool {
		part := f.Joints[image].Part
		return part != nil && part.Original != nil && part.Original == f.Joints[original].Part
	}
	if isImageOf(one, other) {
		one, other = other, one
	}
	if isImageOf(other, one) {
		return fmt.Sprintf("%s and its image %s are at one place, within %s mm: y %s mm. On the middle of the car there is no image: take mirrored_as out; else look at the sign of y.",
			n.joint(one), n.joint(other), within, inMillimetres(f.Joints[other].At.Y))
	}
	return fmt.Sprintf("%s and %s are at one place, within %s mm. They are taken for one; write one name for both if they are.", n.joint(one), n.joint(other), within)
}

// sideWords says why a joint seems to be on the wrong side of the car.
func sideWords(f *vehicle.Frame, found vehicle.FrameFinding) string {
	n := cageNames{f}
	at := f.Joints[found.Joints[0]].At
	switch found.Kind {
	case vehicle.ImageOnSameSide:
		return fmt.Sprintf("%s is on the same side as its original %s, y %s mm. Is its y %s mm?",
			n.joint(found.Joints[0]), n.joint(found.Joints[1]), inMillimetres(at.Y), inMillimetres(-at.Y))
	case vehicle.ImageFarOff:
		return fmt.Sprintf("%s is %s mm from the mirror place of its original %s: it is at %s mm, that at %s mm. Measure both again if the shell is not meant to be so.",
			n.joint(found.Joints[0]), inMillimetres(found.Away), n.joint(found.Joints[1]), placeWords(at), placeWords(f.Joints[found.Joints[1]].At))
	}
	side := "left"
	if at.Y < 0 {
		side = "right"
	}
	return fmt.Sprintf("%s is on the %s of the car, y %s mm, as y counts to the left. Is its sign right, and its name?", n.joint(found.Joints[0]), side, inMillimetres(at.Y))
}
