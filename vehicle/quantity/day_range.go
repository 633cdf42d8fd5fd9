package quantity

// Precision says how precisely a date was written.
type Precision uint8

// The precisions. A range that no date was written for, such as the one from the earliest
// to the latest of two dates, has none.
const (
	PrecisionNone Precision = iota
	ToDay                   // 2027-03-14
	ToMonth                 // 2027-03: some day of March
	ToYear                  // 2027: some day of the year
)

// DayRange is an uncertain date: some day from From to To, both included. Precision is how
// the date was written, kept as it stands beside the range.
type DayRange struct {
	From, To  Day
	Precision Precision
}

// String writes the date as its author did: 2027-03-14, 2027-03, 2027. A range without a
// precision is one day, or "2027-01-01 to 2027-03-14".
func (r DayRange) String() string {
	text := r.From.String()
	switch {
	case r.Precision == ToMonth:
		return text[:len(text)-len("-01")]
	case r.Precision == ToYear:
		return text[:len(text)-len("-01-01")]
	case r.From == r.To || r.Precision == ToDay:
		return text
	}
	return text + " to " + r.To.String()
}
