package quantity

// Truth is what can be said of a statement about a car of which not everything is known.
// The logic is Kleene's strong three-valued logic (S. C. Kleene, Introduction to
// Metamathematics, 1952, § 64). The values are ordered No < Open < Yes, so that And is the
// lesser and Or the greater of two. The zero value is No.
type Truth uint8

// The three truths.
const (
	No   Truth = iota // false of every car that agrees with what is known
	Open              // true of some such cars and false of others, or not told apart
	Yes               // true of every car that agrees with what is known
)

// TruthOf returns Yes for true and No for false.
func TruthOf(holds bool) Truth {
	if holds {
		return Yes
	}
	return No
}

// And is Yes if both are, No if one is, else Open.
func (t Truth) And(u Truth) Truth { return min(t, u) }

// Or is Yes if one is, No if both are, else Open.
func (t Truth) Or(u Truth) Truth { return max(t, u) }

// Not turns Yes into No and No into Yes, and leaves Open.
func (t Truth) Not() Truth { return Yes - min(t, Yes) }

// String returns "no", "open" or "yes".
func (t Truth) String() string {
	switch t {
	case No:
		return "no"
	case Open:
		return "open"
	default:
		return "yes"
	}
}
