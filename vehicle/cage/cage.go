package cage

import (
	"math"

	"gapsheet/vehicle/quantity"
)

// Cage is a whole cage over ranges: joints, the tubes through them, and the joints with a
// foot.
type Cage struct {
	Joints    []Point // one without a reading number is a reading of its own
	Tubes     []CageTube
	Feet      []int   // joints with a foot
	Tolerance float64 // how near is at the same place, metres: whether a joint lies on a tube
}

// CageTube is one tube of a cage. Of a size or a material that is not known the range is
// Everything, and so is what follows from it, but for what is never below zero.
type CageTube struct {
	Through    []int          // joints, by number
	Radius     quantity.Range // of the centreline in bends, metres
	Outside    quantity.Range // diameter, metres
	Wall       quantity.Range // metres
	Density    quantity.Range // kg/m³
	Elasticity quantity.Range // Pa
	Yield      quantity.Range // Pa
}

// TubeValues are what follows from one tube, in SI units.
type TubeValues struct {
	Measures
	Section          Section
	Mass             quantity.Range // kg, of the developed length: before its ends are notched
	BendingStiffness quantity.Range // N·m²
	YieldMoment      quantity.Range // N·m
	RadiusRatio      quantity.Range // bend radius over outside diameter
	Chord            Angles         // of the straight between its ends
	Ends             [2]EndValues
	Spans            []Span
	Unsupported      quantity.Range // the longest of the spans, metres
	Faults           []*Fault       // what is wrong with its course and size
}

// Angles are those of a run, from 0 to π/2.
type Angles struct {
	ToVertical, ToHorizontal       quantity.Range
	SideToVertical, SideHorizontal quantity.Range // as seen from the side
	FrontVertical, FrontHorizontal quantity.Range // as seen from the front
}

// Angles returns the angles of the run.
func (r Run) Angles() Angles {
	return Angles{
		r.AngleToVertical(), r.AngleToHorizontal(),
		r.SideViewToVertical(), r.SideViewToHorizontal(),
		r.FrontViewToVertical(), r.FrontViewToHorizontal(),
	}
}

// EndValues say what is near one end of a tube, in metres. Without a foot or a joint the
// number is -1 and the distances are Everything. A joint is one at which at least two other
// tubes meet, going through it or with it on them; the end's own joint may be one, at the
// distance 0. Between the surfaces is meant of this tube and of the thickest other one there,
// not below 0, to whichever joint that leaves least.
type EndValues struct {
	Foot         int            // the nearest joint with a foot, which may be the end itself
	FootAway     quantity.Range // from axis to axis
	FootSurface  quantity.Range // between the surfaces of this tube and of those on the foot
	Joint        int            // the nearest joint where other tubes meet
	JointAway    quantity.Range // from axis to axis
	JointSurface quantity.Range // between the surfaces
}

// Values are what follows from a cage.
type Values struct {
	Tubes     []TubeValues
	Meetings  []Meeting // in order of joints and tubes
	Mass      quantity.Range
	Length    quantity.Range // of all tubes, developed, metres
	Structure *Structure
	Findings  Findings
	Faults    []*Fault // tubes that cannot be drawn; At says which
}

// Derive returns all that follows from the cage. It is a pure function: the same cage gives
// the same values. Of a tube that cannot be drawn, or that goes through a joint without
// bounds, nothing is known, and so the cage's mass and length have no upper bound.
func (c *Cage) Derive() *Values {
	points := c.numbered()
	through, radii := make([][]int, len(c.Tubes)), make([]float64, len(c.Tubes))
	places := make([]Vector, len(points))
	for i, p := range points {
		places[i] = p.Middle()
		if !p.isBounded() {
			places[i] = Vector{math.NaN(), math.NaN(), math.NaN()}
		}
	}
	for i, tube := range c.Tubes {
		through[i], radii[i] = tube.Through, Tube{Radius: tube.Radius}.AsRead().Radius
	}
	values := &Values{Tubes: make([]TubeValues, len(c.Tubes)), Mass: anySize, Length: anySize}
	var lengths, masses []Weighed
	values.Structure, values.Faults = NewStructure(places, through, radii, c.Feet, c.Tolerance)
	values.Findings = values.Structure.LookOver()
	for i := range c.Tubes {
		if len(values.Structure.Members[i].Through) == 0 {
			values.Tubes[i] = unknownTube // a fault of the structure
			continue
		}
		values.Tubes[i] = c.tubeValues(i, points, values)
		tube := c.tube(i, points)
		lengths = append(lengths, Weighed{tube, quantity.Exactly(1)})
		masses = append(masses, Weighed{tube, c.massPerLength(i)})
	}
	if len(lengths) == len(c.Tubes) {
		values.Length, values.Mass = SumOf(lengths), SumOf(masses)
	}
	values.Meetings = values.Structure.Meetings(values.Findings.Resting)
	for i := range values.Meetings {
		values.Meetings[i].Angle = values.Meetings[i].AngleOf(points)
	}
	return values
}

// numbered returns the joints with a reading number each.
func (c *Cage) numbered() []Point {
	points := append([]Point(nil), c.Joints...)
	for i := range points {
		if points[i].Reading == 0 {
			points[i].Reading = -i - 1
		}
	}
	return points
}
