package vehicle

import (
	"gapsheet/vehicle/cage"
)

// Frame returns the cage as read: every joint of which the three coordinates are recorded,
// mirror images included, and every tube of which all joints are. A figure with several
// readings is their mean; of a reading with a tolerance, the reading itself. A tube with a
// corner and no recorded bend radius has sharp corners. What is left out is in Unplaced, and
// WhyUnplaced says why. The vocabulary must be the built-in one or extend it.
func (s *Sheet) Frame() *Frame {
	f, tolerance := s.placed()
	f.Build(tolerance)
	f.findDies()
	f.Heads = s.heads()
	return f
}

// placed returns the joints, tubes and feet of a frame, and how near is at the same place,
// in metres.
func (s *Sheet) placed() (f *Frame, tolerance float64) {
	f = &Frame{Sheet: s}
	numbers := map[*Part]int{}
	tolerance = leastTolerance
	for _, part := range s.partsNamed("joint") {
		at, ok := placeOf(part)
		if !ok {
			f.Unplaced = append(f.Unplaced, part)
			continue
		}
		numbers[part] = len(f.Joints)
		f.Joints = append(f.Joints, FrameJoint{Part: part, Name: part.Label, At: at})
		tolerance = max(tolerance, toleranceOf(part))
	}
	for _, part := range s.partsNamed("tube") {
		tube, ok := f.tube(part, numbers)
		if !ok {
			f.Unplaced = append(f.Unplaced, part)
			continue
		}
		f.Tubes = append(f.Tubes, tube)
	}
	for _, part := range s.partsNamed("foot") {
		if joint := part.stated("joint").Named; joint != nil {
			if number, ok := numbers[joint]; ok {
				f.Feet = append(f.Feet, FrameFoot{Part: part, Joint: number})
			}
		}
	}
	return f, tolerance
}

// Build works out the structure of the frame's joints, tubes and feet, and how each tube
// ends. Tolerance is how near is at the same place, in metres. It panics where a tube goes
// through a joint that is not there, repeats one, or turns straight back.
func (f *Frame) Build(tolerance float64) {
	f.trace(tolerance)
	f.findEnds()
}

// trace works out the structure, and the course of each tube in it.
func (f *Frame) trace(tolerance float64) {
	var joints []cage.Vector
	for _, joint := range f.Joints {
		joints = append(joints, joint.At)
	}
	var through [][]int
	var radii []float64
	for _, tube := range f.Tubes {
		through = append(through, tube.Through)
		radii = append(radii, tube.Course.Radius)
	}
	var feet []int
	for _, foot := range f.Feet {
		feet = append(feet, foot.Joint)
	}
	structure, faults := cage.NewStructure(joints, through, radii, feet, tolerance)
	if len(faults) > 0 {
		panic("a frame holds a tube that cannot be drawn: " + faults[0].Error())
	}
	f.Structure, f.looked = structure, structure.LookOver()
	for i := range f.Tubes {
		f.Tubes[i].straighten(structure.Members[i].Course)
	}
}

// straighten sets the tube's course to one without the inner points at which it turns by no
// more than what counts as straight: nobody bends a tube there, and no die could.
func (t *FrameTube) straighten(course cage.Course) {
	t.Course = cage.Course{Points: course.Points[:1:1], Radius: course.Radius}
	t.Corners = t.Through[:1:1]
	for i, point := range course.Points[1:] {
		if i+2 < len(course.Points) {
			before, behind := t.Course.Points[len(t.Course.Points)-1], course.Points[i+2]
			if point.Minus(before).Angle(behind.Minus(point)) <= straightWithin {
				continue
			}
		}
		t.Course.Points = append(t.Course.Points, point)
		t.Corners = append(t.Corners, t.Through[i+1])
	}
}

// leastTolerance is how near counts as the same place where the sheet's joints say no
// greater tolerance, in metres: coordinates are written in whole millimetres.
const leastTolerance = 1e-3

// tube returns a tube of the sheet, and whether it can be drawn.
func (f *Frame) tube(part *Part, numbers map[*Part]int) (FrameTube, bool) {
	tube := FrameTube{Part: part, Number: part.Label, Member: part.choiceWord("part"), Stock: part.stated("stock").Named}
	for _, joint := range part.stated("through").Several {
		number, ok := numbers[joint]
		if !ok {
			return tube, false
		}
		tube.Through = append(tube.Through, number)
		tube.Course.Points = append(tube.Course.Points, f.Joints[number].At)
	}
	tube.Course.Radius, _ = part.asRead("bend_radius")
	if undrawable(tube.Course) != nil {
		return tube, false
	}
	tube.Outside = part.firstRead("outside", "ordered_outside")
	tube.Wall = part.firstRead("wall", "ordered_wall")
	tube.MassPerLength = massPerLength(tube.Outside, tube.Wall, density(part))
	return tube, true
}

// undrawable returns why a course cannot be drawn, nil where it can, if only with sharp
// corners or with straights that run backward.
func undrawable(course cage.Course) *cage.Fault {
	for _, fault := range course.Check() {
		if fault.Problem != cage.RadiusTooBig && fault.Problem != cage.NoRadius {
			return fault
		}
	}
	return nil
}

// WhyUnplaced says what a part in Unplaced lacks: what is not recorded, or why a tube whose
// joints are all known cannot be drawn through them.
func (f *Frame) WhyUnplaced(part *Part) (lacking []Base, fault *cage.Fault) {
	if part.Type.Name == "joint" {
		return unreadCoordinates(part), nil
	}
	joints := part.stated("through").Several
	if len(joints) == 0 {
		return []Base{{Part: part.statedBy("through"), Particular: part.Type.Particular("through")}}, nil
	}
	course := cage.Course{}
	for _, joint := range joints {
		lacking = append(lacking, unreadCoordinates(joint)...)
		at, _ := placeOf(joint)
		course.Points = append(course.Points, at)
	}
	if len(lacking) > 0 {
		return lacking, nil
	}
	return nil, undrawable(course)
}
