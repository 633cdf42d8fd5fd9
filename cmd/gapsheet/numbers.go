package main

import (
	"fmt"
	"os"
	"strings"

	"gapsheet/rules"
	"gapsheet/vehicle"
	"gapsheet/vehicle/quantity"
)

// checkOnly reports the first number of --only that picks nothing in any of the rulebooks, by
// their editions of the day.
func checkOnly(only []string, groups []bookGroup, day quantity.Day) error {
	books := booksOn(groups, day)
	for _, number := range only {
		if !picksAny(number, books) {
			if picksAny(number, allBooks(groups)) {
				return wrong("--only %s picks nothing: no chapter or clause of the edition for %s has that number, only one of another edition.%s", number, day, numbersNear(number, books))
			}
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

// clauseIn finds the first rulebook whose edition of the day has a clause of the number. sheet
// is what was named as the sheet, to see whether the two changed places.
func clauseIn(groups []bookGroup, number, sheet string, day quantity.Day) (bookGroup, error) {
	books := booksOn(groups, day)
	for i, book := range books {
		if book.ClauseNumbered(number) != nil {
			return groups[i], nil
		}
	}
	for _, book := range books {
		if book.ClauseNumbered(sheet) != nil || chapterIn(books, sheet) != nil && isThere(number) {
			return nil, wrong("The clause and the sheet changed places. Write: gapsheet working %s %s.", argument(sheet), argument(number))
		}
	}
	for _, book := range allBooks(groups) {
		if book.ClauseNumbered(number) != nil {
			return nil, wrong("Clause %s is one of %s, and %s is not judged by that edition. Name a day on which it is in force (%s): --on DAY.",
				argument(number), editionWords(book), day, book.Period)
		}
	}
	if chapter := chapterIn(books, number); chapter != nil {
		return nil, wrong("%s is a chapter, %q, and working wants one clause.%s", chapter.Number, chapter.Title, clausesOf(chapter))
	}
	return nil, wrong("No clause has the number %q.%s", number, numbersNear(number, books))
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
