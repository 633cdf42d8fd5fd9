package engine

import "gapsheet/vehicle/quantity"

// The compiled nodes. Each walks itself in three ways: it evaluates (fast, without
// allocation), it is surveyed (which cells are behind an open answer, see survey.go),
// and it signs (what it reads, as bytes, to find the same comparison twice).

// A node is what all compiled nodes share.
type node interface {
	survey(m *machine, s *survey)
	sign(m *machine, s *signer)
}

// A truthNode yields yes, no or open.
type truthNode interface {
	node
	truth(m *machine) quantity.Truth
}

// A numberNode yields a range: of a number in SI, or of day numbers for a date. It sets
// m.unsure where the number may not exist, and leaves it alone where it surely does.
type numberNode interface {
	node
	number(m *machine) quantity.Range
}

// A symbolNode yields a choice (as a set of bits) or a text (as its number). It sets
// m.unsure as a numberNode does.
type symbolNode interface {
	node
	symbol(m *machine) uint64
}

// A partNode yields the base of one part.
type partNode interface {
	node
	base(m *machine) int32
}

// A source yields the members of a list by position. Members may be uncertain: at
// returns the truth of membership and fills the source's slot for any but a sure no.
type source interface {
	sign(m *machine, s *signer)
	length(m *machine) int
	at(m *machine, i int) quantity.Truth
	complete(m *machine) bool              // no members beyond those
	surveyAt(m *machine, s *survey, i int) // what the membership of a member hangs on
	surveyMember(m *machine, s *survey)    // what the value of the member in the slot hangs on
	signMember(m *machine, s *signer)
	bound() int32                       // the slot that it fills
	surveyOthers(m *machine, s *survey) // why there may be members beyond those
}
