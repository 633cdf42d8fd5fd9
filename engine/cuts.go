package engine

import (
	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// cutBy cuts the cells that a number is held against a limit through: the one it reads, or
// those that it hands on as they are, by a name, a condition, a sign, the least of several.
func (s *survey) cutBy(m *machine, of numberNode, band quantity.Range) {
	switch n := of.(type) {
	case *readNumber:
		s.cut(n.cell(m), band)
	case *otherwiseNumber:
		s.cut(n.cell(m), band)
		s.cutBy(m, n.otherwise, band)
	case *choiceOfNumbers:
		s.cutBy(m, n.then, band)
		s.cutBy(m, n.otherwise, band)
	case *definedNumber:
		s.cutBy(m, n.rest, band)
	case *slotNumber:
		if value, ok := n.from.(*expression); ok && value.asNumber != nil {
			s.cutBy(m, value.asNumber, band)
		}
	case *negatedNumber:
		s.cutBy(m, n.of, band.Negate())
	case *call:
		switch n.code {
		case rules.FunctionMin, rules.FunctionMax, rules.FunctionEarliest, rules.FunctionLatest:
			for _, of := range n.of {
				s.cutBy(m, of, band)
			}
		case rules.FunctionAbs:
			s.cutBy(m, n.of[0], band)
			s.cutBy(m, n.of[0], band.Negate())
		}
	}
}
