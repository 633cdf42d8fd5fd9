package engine

import (
	"regexp"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle/quantity"
)

// patternTag begins the signature of a text test.
const patternTag = 'x'

// A textTest is contains, startsWith, endsWith or matches.
type textTest struct {
	test    rules.TextTestKind
	of      symbolNode
	text    string
	pattern *regexp.Regexp
}

func (n *textTest) truth(m *machine) quantity.Truth {
	saved := m.unsure
	m.unsure = false
	number := n.of.symbol(m)
	unsure := m.unsure
	m.unsure = saved
	if unsure {
		return quantity.Open
	}
	if number < firstText {
		if m.tampered {
			if t, ok := m.assumed[signature(m, n)]; ok {
				return t
			}
		}
		return quantity.Open
	}
	text := m.texts[number]
	var holds bool
	switch n.test {
	case rules.Contains:
		holds = strings.Contains(text, n.text)
	case rules.StartsWith:
		holds = strings.HasPrefix(text, n.text)
	case rules.EndsWith:
		holds = strings.HasSuffix(text, n.text)
	default:
		holds = n.pattern.MatchString(text)
	}
	return sureWhen(holds, !holds)
}

func (n *textTest) survey(m *machine, s *survey) {
	t := n.truth(m)
	if t != quantity.Open && !s.everything {
		return
	}
	n.of.survey(m, s)
	if t == quantity.Open {
		s.atom(signature(m, n))
	}
}

func (n *textTest) sign(m *machine, s *signer) {
	s.tag(patternTag)
	s.int(int64(n.test))
	s.text(n.text)
	n.of.sign(m, s)
}
