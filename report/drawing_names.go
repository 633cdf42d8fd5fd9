package report

import (
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
// are where they are short, else the first letters of their words, and where several would
// be the same, the prefix with the place in the list, from 1.
func shortNames(labels []string, longest int, prefix string) []string {
	names := make([]string, len(labels))
	uses := map[string]int{}
	for i, label := range labels {
		names[i] = initials(strings.TrimSpace(Safe(label)), longest)
		uses[names[i]]++
	}
	for i, name := range names {
		if uses[name] == 1 && name != "" {
			continue
		}
		names[i] = prefix + strconv.Itoa(i+1)
		for uses[names[i]] > 0 {
			names[i] += "*"
		}
		uses[names[i]]++
	}
	return names
}

func initials(label string, longest int) string {
	if len([]rune(label)) <= longest {
		return label
	}
	var first []rune
	for word := range strings.FieldsSeq(label) {
		first = append(first, []rune(word)[0])
	}
	return string(first[:min(longest, len(first))])
}

// shortened cuts a text to so many letters.
func shortened(text string, longest int) string {
	letters := []rune(Safe(text))
	if len(letters) <= longest {
		return string(letters)
	}
	return string(letters[:longest-1]) + "…"
}
