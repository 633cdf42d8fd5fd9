package quantity

import (
	"strconv"
	"strings"
)

// Dimension says what a figure measures, as exponents of six base dimensions of the
// International System and of the plane angle. Two figures can be compared or added only
// when their dimensions are equal by ==. The zero value is a plain number.
//
// The angle is kept apart, although the System calls it a plain number, so that 30 deg
// and 30 are told from each other. A torque is force times length and therefore equal to
// an energy, as in the System.
type Dimension struct{ Length, Mass, Time, Angle, Temperature, Current int8 }

// The dimensions that have a name. They are never written to.
var (
	Plain            = Dimension{}
	Length           = Dimension{Length: 1}
	Mass             = Dimension{Mass: 1}
	Time             = Dimension{Time: 1}
	Angle            = Dimension{Angle: 1}
	Temperature      = Dimension{Temperature: 1}
	Current          = Dimension{Current: 1}
	Area             = Dimension{Length: 2}
	Volume           = Dimension{Length: 3}
	SecondMoment     = Dimension{Length: 4} // of the area of a section
	Force            = Dimension{Length: 1, Mass: 1, Time: -2}
	Torque           = Dimension{Length: 2, Mass: 1, Time: -2} // and energy
	Pressure         = Dimension{Length: -1, Mass: 1, Time: -2}
	Speed            = Dimension{Length: 1, Time: -1}
	MassPerLength    = Dimension{Length: -1, Mass: 1}
	Density          = Dimension{Length: -3, Mass: 1}
	Power            = Dimension{Length: 2, Mass: 1, Time: -3}
	Voltage          = Dimension{Length: 2, Mass: 1, Time: -3, Current: -1}
	Acceleration     = Dimension{Length: 1, Time: -2}
	RotationalSpeed  = Dimension{Angle: 1, Time: -1}
	Flow             = Dimension{Length: 3, Time: -1}          // volume in a time
	BendingStiffness = Dimension{Length: 3, Mass: 1, Time: -2} // second moment times modulus of elasticity
)

// namedDimension joins a dimension with the word for it.
type namedDimension struct {
	name string
	of   Dimension
}

// namedDimensions lists every dimension with a word of its own, base dimensions first
// and in the order of the fields.
func namedDimensions() [22]namedDimension {
	return [...]namedDimension{
		{"length", Length}, {"mass", Mass}, {"time", Time}, {"angle", Angle},
		{"temperature", Temperature}, {"current", Current},
		{"number", Plain}, {"area", Area}, {"volume", Volume}, {"second moment", SecondMoment},
		{"force", Force}, {"torque", Torque}, {"pressure", Pressure}, {"speed", Speed},
		{"mass per length", MassPerLength}, {"density", Density}, {"power", Power},
		{"voltage", Voltage}, {"acceleration", Acceleration},
		{"rotational speed", RotationalSpeed}, {"flow", Flow},
		{"bending stiffness", BendingStiffness},
	}
}

// DimensionNamed returns the dimension with the given name: "length", "mass", "second
// moment", "number" for a plain number. Words may be joined by a blank or an underscore.
// It answers false for a name it does not know.
func DimensionNamed(name string) (Dimension, bool) {
	name = strings.ReplaceAll(name, "_", " ")
	for _, n := range namedDimensions() {
		if n.name == name {
			return n.of, true
		}
	}
	return Plain, false
}

// exponents returns the six exponents in the order of the fields.
func (d Dimension) exponents() [6]int8 {
	return [6]int8{d.Length, d.Mass, d.Time, d.Angle, d.Temperature, d.Current}
}

// dimensionOf is the inverse of exponents. An exponent beyond ±127 is cut to that; the
// parsers refuse a dimension long before it gets there.
func dimensionOf(exponents [6]int) Dimension {
	var e [6]int8
	for i, n := range exponents {
		e[i] = int8(max(-127, min(127, n)))
	}
	return Dimension{e[0], e[1], e[2], e[3], e[4], e[5]}
}

// Times returns the dimension of a product. Exponents are cut to ±127.
func (d Dimension) Times(e Dimension) Dimension {
	a, b := d.exponents(), e.exponents()
	var sum [6]int
	for i := range sum {
		sum[i] = int(a[i]) + int(b[i])
	}
	return dimensionOf(sum)
}

// Over returns the dimension of a quotient. Exponents are cut to ±127.
func (d Dimension) Over(e Dimension) Dimension { return d.Times(e.Power(-1)) }

// Power returns the dimension of the n-th power, n of either sign. Exponents are cut to ±127.
func (d Dimension) Power(n int) Dimension {
	n = max(-127, min(127, n)) // cuts no less, and cannot overflow
	var product [6]int
	for i, exponent := range d.exponents() {
		product[i] = int(exponent) * n
	}
	return dimensionOf(product)
}

// Root returns the dimension of the n-th root. It answers false when n is less than one
// or an exponent is not a multiple of n: an area has a square root, a length has none.
func (d Dimension) Root(n int) (Dimension, bool) {
	if n < 1 {
		return Plain, false
	}
	var root [6]int
	for i, exponent := range d.exponents() {
		if int(exponent)%n != 0 {
			return Plain, false
		}
		root[i] = int(exponent) / n
	}
	return dimensionOf(root), true
}

// IsNone reports whether the dimension is that of a plain number.
func (d Dimension) IsNone() bool { return d == Plain }

// Same returns the same-figure rule for figures of the dimension: 1e-9 relative, or closer
// than any workshop can measure (1 nm, 1 mg, 1e-9 rad, 1 mPa ...). For a dimension without
// such a floor the relative rule stands alone. Counts and dates are compared exactly,
// which is the zero Tolerance.
func (d Dimension) Same() Tolerance {
	t := Tolerance{Relative: 1e-9}
	switch d {
	case Length, Time, Angle, Current, Speed:
		t.Absolute = 1e-9 // m, s, rad, A, m/s
	case Mass, Temperature, Force:
		t.Absolute = 1e-6 // kg, K, N
	case Area:
		t.Absolute = 1e-12 // m2
	case Volume:
		t.Absolute = 1e-15 // m3
	case SecondMoment:
		t.Absolute = 1e-21 // m4
	case Pressure:
		t.Absolute = 1e-3 // Pa
	case Plain:
		t.Absolute = 1e-12
	}
	return t
}

// String names the dimension for a sentence: "length", "second moment", "a plain number".
// One without a name is spelt out in base dimensions: "length^2 × mass / time".
func (d Dimension) String() string {
	if d.IsNone() {
		return "a plain number"
	}
	names := namedDimensions()
	for _, n := range names {
		if n.of == d {
			return n.name
		}
	}
	var above, below []string
	for i, exponent := range d.exponents() {
		switch {
		case exponent > 0:
			above = append(above, powerText(names[i].name, int(exponent)))
		case exponent < 0:
			below = append(below, powerText(names[i].name, -int(exponent)))
		}
	}
	text := strings.Join(above, " × ")
	if text == "" {
		text = "1"
	}
	switch len(below) {
	case 0:
		return text
	case 1:
		return text + " / " + below[0]
	}
	return text + " / (" + strings.Join(below, " × ") + ")"
}

// powerText writes a base dimension with its exponent, which is left out when it is one.
func powerText(name string, exponent int) string {
	if exponent == 1 {
		return name
	}
	return name + "^" + strconv.Itoa(exponent)
}
