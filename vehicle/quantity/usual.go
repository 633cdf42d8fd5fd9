package quantity

// usualUnits names the unit that a workshop would use for each dimension.
var usualUnits = map[Dimension]string{
	Length: "mm", Area: "mm2", Volume: "l", SecondMoment: "mm4", Mass: "kg", Time: "s",
	Angle: "deg", Temperature: "K", Current: "A", Force: "N", Torque: "N.m", Pressure: "MPa",
	Speed: "km/h", MassPerLength: "kg/m", Density: "kg/m3", Power: "kW", Voltage: "V",
	Acceleration: "g0", RotationalSpeed: "rpm", Flow: "l/min", BendingStiffness: "N.m2",
}

// UsualUnit returns the unit in which a figure is printed when no author chose one: the
// millimetre for a length, the megapascal for a pressure. A plain number, and a dimension
// without a usual unit, have the zero Unit.
func UsualUnit(d Dimension) Unit {
	name, ok := usualUnits[d]
	if !ok {
		return Unit{}
	}
	u, err := FindUnit(name)
	if err != nil {
		return Unit{}
	}
	return u
}
