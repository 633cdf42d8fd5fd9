package report

import (
	"slices"
	"strconv"
	"strings"
)

// The longest names in letters: of a tube and of a joint in the views, and of anything in
// a sentence.
const (
	longestNumber = 5
	longestLetter = 4
	longestName   = 40
)

// shortNames makes labels short enough for a view and different from each other: as they
// are where they are short, else by the first letters of their words, and where several
// would be the same, the prefix with the place in the list, from 1. Numbered says whether
// any of them is one of the last kind.
func shortNames(labels []string, longest int, prefix string) (names []string, numbered bool) {
	names = make([]string, len(labels))
	uses := map[string]int{}
	for i, label := range labels {
		names[i] = initials(Safe(label), longest)
		uses[names[i]]++
	}
	for i, name := range names {
		if uses[name] == 1 && name != "" {
			continue
		}
		numbered = true
		names[i] = prefix + strconv.Itoa(i+1)
		for uses[names[i]] > 0 {
			names[i] += "*"
		}
		uses[names[i]]++
	}
	return names, numbered
}

// initials shortens a label that is too long to the first letters of its words, "A left"
// to "Al"; a first word of two letters stays, so that "AB left" is "ABl".
func initials(label string, longest int) string {
	label = strings.TrimSpace(label)
	if len([]rune(label)) <= longest {
		return label
	}
	var first []rune
	for i, word := range strings.Fields(label) {
		letters := []rune(word)
		if i > 0 || len(letters) > 2 {
			letters = letters[:1]
		}
		first = append(first, letters...)
	}
	return string(first[:min(longest, len(first))])
}

// pairName is what a label shares with that of its image on the other side: all but its
// last word, short. It is empty for a label of one word.
func pairName(label string, longest int) string {
	words := strings.Fields(Safe(label))
	if len(words) < 2 {
		return ""
	}
	return initials(strings.Join(words[:len(words)-1], " "), longest)
}

// paired puts one name in the place of several that are of one pair: "A" for "Al" and
// "Ar", unless something else has it for its name.
func (d *drawing) paired(joints []int) []string {
	count := map[string]int{}
	for _, joint := range joints {
		count[d.pairs[joint]]++
	}
	var names []string
	for _, joint := range joints {
		pair := d.pairs[joint]
		switch {
		case pair == "" || count[pair] < 2 || slices.Contains(d.letters, pair):
			names = append(names, d.letters[joint])
		case !slices.Contains(names, pair):
			names = append(names, pair)
		}
	}
	return names
}

// shortened cuts a text to so many letters.
func shortened(text string, longest int) string {
	letters := []rune(Safe(text))
	if len(letters) <= longest {
		return string(letters)
	}
	return string(letters[:longest-1]) + "…"
}
