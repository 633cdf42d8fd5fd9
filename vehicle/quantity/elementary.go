package quantity

import "math"

// Sin returns the range of the sine of x radians.
func (a Range) Sin() Range {
	return a.waves(sineOf, 0, 2)
}

// Cos returns the range of the cosine of x radians.
func (a Range) Cos() Range {
	return a.waves(cosineOf, 3, 1)
}

// waves returns the range of sine or cosine, which is 1 at the upper end of one quadrant
// and -1 at the upper end of another, and rises or falls in between. More than a full turn
// has all values; less than 6.5 radians ends no more than 5 quadrants, so that counting
// them modulo 8 is enough.
func (a Range) waves(at func(angle float64, t turn) Range, crest, trough int) Range {
	if !(a.High-a.Low < 6.5) {
		return Range{-1, 1}
	}
	low := turnOf(a.Low)
	result := at(a.Low, low)
	if a.Low == a.High {
		return result
	}
	high := turnOf(a.High)
	result = result.Hull(at(a.High, high))
	for quadrant := low.quadrant; quadrant != high.quadrant; quadrant = (quadrant + 1) & 7 {
		switch quadrant & 3 {
		case crest:
			result.High = 1
		case trough:
			result.Low = -1
		}
	}
	return result
}

// Tan returns the range of the tangent of x radians: Everything where a right angle from
// which it has no bound lies in the range.
func (a Range) Tan() Range {
	if !(a.High-a.Low < 3.25) {
		return Everything
	}
	low := turnOf(a.Low)
	if a.Low == a.High {
		return tangentOf(a.Low, low)
	}
	high := turnOf(a.High)
	for quadrant := low.quadrant; quadrant != high.quadrant; quadrant = (quadrant + 1) & 7 {
		if quadrant&1 == 0 {
			return Everything
		}
	}
	return Range{tangentOf(a.Low, low).Low, tangentOf(a.High, high).High}
}

// The relative errors allowed for. The angle's rest errs by less than 2^-72 and each series
// by less than 2^-72, so sine and cosine by less than 2^-70 and their quotient by less than
// 2^-69; the rest is room. No sine, cosine or tangent of a float64 but 0 is a float64 (it
// is transcendental, by the Lindemann–Weierstrass theorem), so rounding outward always is
// right.
const (
	waveError    = 0x1p-66
	tangentError = 0x1p-65
)

// tinyAngle is an angle t from which t³/2 is less than a quarter ulp of t downward, and
// t² less than a quarter ulp of 1.
const tinyAngle = 0x1p-28

func sineOf(angle float64, t turn) Range {
	if math.Abs(angle) < tinyAngle { // between angle and angle - angle³/6
		return justInside(angle)
	}
	return waveOf(t, t.nearest)
}

func cosineOf(angle float64, t turn) Range {
	if math.Abs(angle) < tinyAngle { // between 1 and 1 - angle²/2
		if angle == 0 {
			return Range{1, 1}
		}
		return justInside(1)
	}
	return waveOf(t, t.nearest+1)
}

// waveOf encloses the sine of t.rest plus the given number of right angles.
func waveOf(t turn, rightAngles int) Range {
	var value doubled
	if rightAngles&1 == 0 {
		value = sineSeries(t.rest)
	} else {
		value = cosineSeries(t.rest)
	}
	if rightAngles&2 != 0 {
		value = value.negate()
	}
	r := value.enclose(waveError * math.Abs(value.high))
	return Range{max(r.Low, -1), min(r.High, 1)}
}

func tangentOf(angle float64, t turn) Range {
	if math.Abs(angle) < tinyAngle { // between angle and angle + angle³/2
		return justOutside(angle)
	}
	over, under := sineSeries(t.rest), cosineSeries(t.rest)
	if t.nearest&1 == 1 {
		over, under = under.negate(), over
	}
	value := over.over(under)
	return value.enclose(tangentError * math.Abs(value.high))
}

// justInside returns the range from x to the next float64 towards zero.
func justInside(x float64) Range {
	inside := math.Nextafter(x, 0)
	return Range{plainZero(min(x, inside)), plainZero(max(x, inside))}
}

// justOutside returns the range from x to the next float64 away from zero; of zero, zero.
func justOutside(x float64) Range {
	outside := x
	if x != 0 {
		outside = math.Nextafter(x, math.Copysign(math.Inf(1), x))
	}
	return Range{plainZero(min(x, outside)), plainZero(max(x, outside))}
}
