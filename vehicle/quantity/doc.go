// Package quantity holds what a build sheet or a rulebook can say with a figure: dimensions
// and units, ranges of numbers and of civil days, the parsing and printing of both, and
// three-valued truth.
//
// # Ranges
//
// A [Range] is a closed range of real numbers in SI units. A reading with its tolerance is
// a range, an exact constant is a range of no width, a figure that nobody has recorded is
// its whole plausible range. Arithmetic on ranges encloses: whatever numbers the operands
// stand for, the true result for them lies in the resulting range. An end is moved outward
// only where the operation on it was inexact, and then by no more than two units in the
// last place, so that sums of whole millimetres stay what they are.
//
// The rules for unbounded ranges, for overflow and for division through zero are those of
// IEEE Std 1788-2015, set-based intervals, with two differences: a range is never empty
// (what would be empty there is [Everything] here), and nothing is ever NaN.
//
// # The same figure
//
// Every comparison, and every rounding to whole numbers, follows the same-figure rule of
// [Tolerance]: two numbers closer than any measurement could tell are one figure. So
// 1.75 in and 44.45 mm meet the same limit however they were worked out.
//
// # Truth
//
// A comparison of ranges answers Yes if every pair of numbers in them satisfies it, No if
// none does, and Open otherwise.
//
// Nothing in this package panics, whatever it is given, and nothing in it changes after
// the program has started.
package quantity
