// Package cage is the geometry of a safety cage: points, straight runs, bends, lengths,
// angles, distances, tube sections, mass, notches, bend schedules and cut lists. It knows
// nothing of sheets and rulebooks; everything in it is a pure function of what it is given.
//
// # Axes and units
//
// Axes are those of ISO 8855:2011: x forward, y to the left, z up. Figures are in SI units:
// metres, radians, kilograms, pascals.
//
// # Ranges and readings
//
// A [Point] has a range for each coordinate. A value derived from points is a range that
// holds the value for every choice of coordinates within theirs, and is close to the least
// such range: where a coordinate occurs twice in a formula, ranges alone would forget that
// it is the same number, so a value is computed a second time in a first-order form with a
// proved remainder, and the two are met. Points that stand for the same reading (a joint
// used by two tubes, a joint and its mirror image) say so by the same reading number, and
// count as one.
//
// What a workshop takes away (drawings, cut lists, templates, bend schedules) has no ranges
// and is computed on [Vector] from the readings as read.
//
// # Faults
//
// What cannot be built is a [Fault]: a value with a problem, a place and, where there is
// one, the missing length. Nothing here panics on figures, and no result is NaN.
package cage
