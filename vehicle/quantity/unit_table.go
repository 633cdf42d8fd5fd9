package quantity

// definition is one row of the table of units.
type definition struct {
	name      string // as printed
	formula   string // name in formulas; "" when it has none
	spellings string // further spellings in written figures, parted by |
	factor    string // SI per unit: numbers and pi joined by * and /
	dimension Dimension
}

// everydayUnits lists the units of the trade. The definitions of the inch, pound, gallon
// and ounce are those of NIST Special Publication 811 (2008), appendix B, and the United
// Kingdom's Weights and Measures Act 1985, schedule 1; a kilogram-force rests on the
// standard acceleration of 9.80665 m/s2 (3rd General Conference on Weights and Measures,
// 1901). hp is the mechanical horsepower of 550 ft.lbf/s, PS the metric one of 75 kgf.m/s.
func everydayUnits() []definition {
	return []definition{
		{"mm", "mm", "millimetre|millimetres|millimeter|millimeters", "0.001", Length},
		{"cm", "cm", "centimetre|centimetres|centimeter|centimeters", "0.01", Length},
		{"m", "metre", "metres|meter|meters", "1", Length},
		{"in", "inch", `in.|inches|"|″`, "0.0254", Length},
		{"ft", "ft", "ft.|foot|feet|'|′", "0.3048", Length},
		{"thou", "thou", "", "0.0000254", Length},
		{"km", "km", "kilometre|kilometres|kilometer|kilometers", "1000", Length},
		{"mile", "mile", "mi|miles", "1609.344", Length},
		{"yd", "yd", "yd.|yard|yards", "0.9144", Length},
		{"micron", "micron", "microns|µm|um|micrometre|micrometer", "0.000001", Length},
		{"mm2", "sq_mm", "", "0.000001", Area},
		{"cm2", "sq_cm", "", "0.0001", Area},
		{"m2", "sq_m", "", "1", Area},
		{"in2", "sq_in", "", "0.0254 * 0.0254", Area},
		{"ft2", "sq_ft", "", "0.3048 * 0.3048", Area},
		{"mm3", "cu_mm", "", "0.000000001", Volume},
		{"cm3", "cu_cm", "ccm", "0.000001", Volume},
		{"cc", "cc", "", "0.000001", Volume},
		{"m3", "cu_m", "", "1", Volume},
		{"in3", "cu_in", "", "0.0254 * 0.0254 * 0.0254", Volume},
		{"ml", "ml", "mL|millilitre|millilitres|milliliter|milliliters", "0.000001", Volume},
		{"l", "litre", "L|litres|liter|liters", "0.001", Volume},
		{"US gal", "us_gal", "US gallon|US gallons|us gal|U.S. gal|gal (US)", "0.003785411784", Volume},
		{"imp gal", "imp_gal", "imp gallon|imp gallons|imperial gallon|imperial gallons|UK gal|gal (imp)|brgallon", "0.00454609", Volume},
		{"mm4", "mm4", "", "0.000000000001", SecondMoment},
		{"cm4", "cm4", "", "0.00000001", SecondMoment},
		{"in4", "in4", "", "0.0254 * 0.0254 * 0.0254 * 0.0254", SecondMoment},
		{"g", "gram", "grams|gramme|grammes", "0.001", Mass},
		{"kg", "kg", "kilogram|kilograms|kilogramme|kilogrammes", "1", Mass},
		{"t", "tonne", "tonnes", "1000", Mass},
		{"lb", "lb", "lb.|lbs|lbs.|lbm|pound|pounds", "0.45359237", Mass},
		{"oz", "oz", "oz.|ounce|ounces", "0.45359237 / 16", Mass},
		{"N", "newton", "newtons", "1", Force},
		{"kN", "kN", "kilonewton|kilonewtons", "1000", Force},
		{"daN", "daN", "", "10", Force},
		{"kgf", "kgf", "kp", "9.80665", Force},
		{"lbf", "lbf", "", "0.45359237 * 9.80665", Force},
		{"Pa", "Pa", "pascal", "1", Pressure},
		{"kPa", "kPa", "", "1000", Pressure},
		{"MPa", "MPa", "", "1000000", Pressure},
		{"N/mm2", "MPa", "", "1000000", Pressure},
		{"bar", "bar", "", "100000", Pressure},
		{"psi", "psi", "", "0.45359237 * 9.80665 / 0.0254 / 0.0254", Pressure},
		{"lb/in2", "psi", "", "0.45359237 * 9.80665 / 0.0254 / 0.0254", Pressure},
		{"ksi", "ksi", "", "1000 * 0.45359237 * 9.80665 / 0.0254 / 0.0254", Pressure},
		{"N.m", "Nm", "newton metre|newton metres|newton meter|newton meters", "1", Torque},
		{"kN.m", "", "kNm", "1000", Torque},
		{"deg", "deg", "°|degree|degrees", "pi / 180", Angle},
		{"rad", "rad", "radian|radians", "1", Angle},
		{"s", "second", "sec|seconds", "1", Time},
		{"min", "minute", "mins|minutes", "60", Time},
		{"h", "hour", "hr|hrs|hours", "3600", Time},
		{"day", "day", "d|days", "86400", Time},
		{"km/h", "", "kph|kmh", "1000 / 3600", Speed},
		{"mph", "mph", "", "1609.344 / 3600", Speed},
		{"g0", "g0", "", "9.80665", Acceleration},
		{"V", "volt", "volts", "1", Voltage},
		{"A", "ampere", "amp|amps|amperes", "1", Current},
		{"W", "watt", "watts", "1", Power},
		{"kW", "kW", "kilowatt|kilowatts", "1000", Power},
		{"hp", "hp", "bhp|horsepower", "550 * 0.3048 * 0.45359237 * 9.80665", Power},
		{"PS", "PS", "metric hp|metric horsepower|metrichorsepower", "75 * 9.80665", Power},
		{"rpm", "rpm", "r/min", "2 * pi / 60", RotationalSpeed},
		{"%", "percent", "per cent|pct", "0.01", Plain},
		{"K", "", "kelvin", "1", Temperature},
	}
}

// otherUnits lists what test certificates, data sheets and other trades write. Formulas
// have no names for them. The ones that no workshop uses are spelt out in full, so that
// no slip of the pen in a short unit lands on one.
func otherUnits() []definition {
	const mercury = "0.001 * 13595.1 * 9.80665" // a millimetre of it, conventional: NIST SP 811 (2008), B.8
	return []definition{
		{"dm", "", "", "0.1", Length},
		{"nmi", "", "nautical mile|nautical miles|nauticalmile", "1852", Length},
		{"mg", "", "", "0.000001", Mass},
		{"µg", "", "ug", "0.000000001", Mass},
		{"stone", "", "", "14 * 0.45359237", Mass},
		{"slug", "", "slugs", "0.45359237 * 9.80665 / 0.3048", Mass},
		{"short ton", "", "short tons|US ton|US tons", "2000 * 0.45359237", Mass},
		{"long ton", "", "long tons|imp ton|UK ton", "2240 * 0.45359237", Mass},
		{"grain", "", "grains", "0.45359237 / 7000", Mass},
		{"cl", "", "cL", "0.00001", Volume},
		{"dl", "", "dL", "0.0001", Volume},
		{"hl", "", "hL", "0.1", Volume},
		{"US qt", "", "US quart|US quarts", "0.003785411784 / 4", Volume},
		{"US pt", "", "US pint|US pints", "0.003785411784 / 8", Volume},
		{"US fl oz", "", "US floz", "0.003785411784 / 128", Volume},
		{"imp qt", "", "imp quart|imp quarts", "0.00454609 / 4", Volume},
		{"imp pt", "", "imp pint|imp pints", "0.00454609 / 8", Volume},
		{"imp fl oz", "", "imp floz", "0.00454609 / 160", Volume},
		{"mN", "", "", "0.001", Force},
		{"cN", "", "", "0.01", Force},
		{"MN", "", "", "1000000", Force},
		{"kip", "", "kips|klbf", "1000 * 0.45359237 * 9.80665", Force},
		{"dyne", "", "dyn|dynes", "0.00001", Force},
		{"poundal", "", "poundals", "0.45359237 * 0.3048", Force},
		{"psf", "", "", "0.45359237 * 9.80665 / 0.3048 / 0.3048", Pressure},
		{"hPa", "", "", "100", Pressure},
		{"GPa", "", "", "1000000000", Pressure},
		{"mbar", "", "", "100", Pressure},
		{"atm", "", "", "101325", Pressure},
		{"torr", "", "Torr", "101325 / 760", Pressure},
		{"mmHg", "", "mm Hg", mercury, Pressure},
		{"inHg", "", "in Hg", mercury + " * 25.4", Pressure},
		{"J", "", "joule|joules", "1", Torque},
		{"kJ", "", "", "1000", Torque},
		{"MJ", "", "", "1000000", Torque},
		{"Wh", "", "", "3600", Torque},
		{"kWh", "", "", "3600000", Torque},
		{"erg", "", "ergs", "0.0000001", Torque},
		{"mrad", "", "milliradian|milliradians", "0.001", Angle},
		{"rev", "", "revs|revolution|revolutions|turn|turns", "2 * pi", Angle},
		{"gon", "", "grade|grades|gradian|gradians", "pi / 200", Angle},
		{"arcmin", "", "", "pi / 180 / 60", Angle},
		{"arcsec", "", "", "pi / 180 / 3600", Angle},
		{"ms", "", "", "0.001", Time},
		{"µs", "", "us", "0.000001", Time},
		{"week", "", "weeks|wk", "604800", Time},
		{"knot", "", "knots", "1852 / 3600", Speed},
		{"Hz", "", "hertz", "1", Dimension{Time: -1}},
		{"kHz", "", "", "1000", Dimension{Time: -1}},
		{"mV", "", "", "0.001", Voltage},
		{"kV", "", "", "1000", Voltage},
		{"mA", "", "", "0.001", Current},
		{"kA", "", "", "1000", Current},
		{"mW", "", "", "0.001", Power},
		{"MW", "", "", "1000000", Power},
		{"hectare", "", "hectares", "10000", Area},
		{"acre", "", "acres", "4840 * 0.9144 * 0.9144", Area},
		{"furlong", "", "furlongs", "201.168", Length},
		{"rod", "", "rods", "5.0292", Length},
		{"fathom", "", "fathoms", "1.8288", Length},
	}
}

// affineUnits lists the temperatures whose zero is not that of the kelvin, with the place
// of that zero: 0 degC is 273.15 K, and 0 degF is 459.67 degrees of 5/9 K above it
// (NIST SP 811, 2008, appendix B.8).
func affineUnits() []struct {
	definition
	zero string
} {
	return []struct {
		definition
		zero string
	}{
		{definition{"degC", "", "°C|deg C|deg. C|° C|celsius", "1", Temperature}, "273.15"},
		{definition{"degF", "", "°F|deg F|deg. F|° F|fahrenheit", "5 / 9", Temperature}, "459.67 * 5 / 9"},
	}
}
