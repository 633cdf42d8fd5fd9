package main

import (
	"fmt"
	"os"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
)

// checkOnly reports the first number of --only that picks nothing in any of the books.
func checkOnly(only []string, books []*rules.Rulebook) error {
	for _, number := range only {
		if !picksAny(number, books) {
			return wrong("--only %s picks nothing: no chapter or clause has that number.%s", number, numbersNear(number, books))
		}
	}
	return nil
}

func picksAny(number string, books []*rules.Rulebook) bool {
	for _, book := range books {
		for _, chapter := range book.Chapters {
			if rules.Selects(number, chapter.Number) {
				return true
			}
			for _, clause := range chapter.Clauses {
				if rules.Selects(number, clause.Number) {
					return true
				}
			}
		}
	}
	return false
}

// clauseIn finds a clause by its number; the first rulebook that has it is taken. sheet is
// what was named as the sheet, to see whether the two changed places.
func clauseIn(books []*rules.Rulebook, number, sheet string) (*rules.Clause, *rules.Rulebook, error) {
	for _, book := range books {
		if clause := book.ClauseNumbered(number); clause != nil {
			return clause, book, nil
		}
	}
	for _, book := range books {
		if book.ClauseNumbered(sheet) != nil || chapterIn(books, sheet) != nil && isThere(number) {
			return nil, nil, wrong("The clause and the sheet changed places. Write: gapsheet working %s %s.", argument(sheet), argument(number))
		}
	}
	if chapter := chapterIn(books, number); chapter != nil {
		return nil, nil, wrong("%s is a chapter, %q, and working wants one clause.%s", chapter.Number, chapter.Title, clausesOf(chapter))
	}
	return nil, nil, wrong("No clause has the number %q.%s", number, numbersNear(number, books))
}

func chapterIn(books []*rules.Rulebook, number string) *rules.Chapter {
	for _, book := range books {
		for _, chapter := range book.Chapters {
			if vehicle.FoldText(chapter.Number) == vehicle.FoldText(number) {
				return chapter
			}
		}
	}
	return nil
}

func isThere(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

// clausesOf is a sentence that lists the clauses of a chapter.
func clausesOf(chapter *rules.Chapter) string {
	if len(chapter.Clauses) == 0 {
		return fmt.Sprintf(" Chapter %s has no clauses.", chapter.Number)
	}
	var numbers []string
	for _, clause := range chapter.Clauses {
		numbers = append(numbers, clause.Number)
	}
	return fmt.Sprintf(" Chapter %s has: %s.", chapter.Number, strings.Join(numbers, ", "))
}

// numbersNear is a sentence that lists the clauses of the chapter that a number would be in,
// and where there is no such chapter, the chapters.
func numbersNear(number string, books []*rules.Rulebook) string {
	var chapters []string
	for _, book := range books {
		for _, chapter := range book.Chapters {
			if rules.Selects(chapter.Number, number) {
				return clausesOf(chapter)
			}
			chapters = append(chapters, chapter.Number)
		}
	}
	return fmt.Sprintf(" The chapters are: %s.", strings.Join(chapters, ", "))
}
