package report

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// jsonFormat is the number of the form. It grows when a field changes its meaning or goes.
const jsonFormat = 1

// WriteJSON writes a run as one JSON document. Every clause is in it, whatever is asked
// to be shown on a screen: whoever reads it picks.
func WriteJSON(screen *Screen, run *Precheck) error {
	document := jsonRun{
		Caution: Caution, Bulletins: Bulletins, Dates: DateCaution, Format: jsonFormat,
		Program: jsonProgram{"gapsheet", run.Version},
		Day:     run.Day.String(), Today: run.DayIsToday,
		Stage: stageWord(run.Stage), Only: notNil(run.Only),
		Checks: []jsonCheck{},
	}
	for _, result := range run.Results {
		document.Checks = append(document.Checks, jsonCheckOf(result))
	}
	return writeDocument(screen.Writer, document)
}

// writeDocument writes results as one JSON document that is safe on a terminal.
func writeDocument(w io.Writer, document any) error {
	var text bytes.Buffer
	encoder := json.NewEncoder(&text)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(document); err != nil {
		return fmt.Errorf("the results cannot be put into JSON: %w", err)
	}
	_, err := w.Write(SafeJSON(text.Bytes()))
	return err
}

// SafeJSON writes characters that could steer a terminal as JSON escapes, which stand for
// the same text. The encoder itself escapes only those below U+0020.
func SafeJSON(document []byte) []byte {
	if isASCII(document) {
		return document
	}
	out := make([]byte, 0, len(document)+len(document)/16)
	for len(document) > 0 {
		r, size := utf8.DecodeRune(document)
		switch {
		case r == '\n' || !steers(r):
			out = append(out, document[:size]...)
		case r > 0xFFFF:
			out = fmt.Appendf(out, `\u%04x\u%04x`, 0xD800+(r-0x10000)>>10, 0xDC00+(r-0x10000)&0x3FF)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
		document = document[size:]
	}
	return out
}

// isASCII reports whether there is nothing to escape: DEL is the one ASCII character that
// steers and that a JSON encoder leaves alone.
func isASCII(document []byte) bool {
	for _, b := range document {
		if b >= 0x7F {
			return false
		}
	}
	return true
}

func jsonCheckOf(result *engine.Result) jsonCheck {
	book := result.Book
	check := jsonCheck{
		Rulebook: jsonRulebook{book.Name, book.Edition, book.Hash, book.Standing},
		InForce:  book.Period.Holds(result.Request.Day), Outside: outsideLine(book, result.Request.Day),
		Sheet:  jsonSheetOf(result.Sheet),
		Worst:  result.Worst.String(),
		Counts: jsonCounts(result.Counts), Advice: jsonCounts(result.Advice),
		NotDue: result.NotDue, ForAPerson: forAPerson(result), ToLookAt: result.ToLookAt,
		Papers: jsonPapersOf(result.Sheet), Chapters: []jsonChapter{},
	}
	for _, chapter := range result.Chapters {
		written := jsonChapter{chapter.Chapter.Number, chapter.Chapter.Title, chapter.Worst.String(), []jsonClause{}}
		for _, clause := range chapter.Clauses {
			written.Clauses = append(written.Clauses, jsonClauseOf(clause))
		}
		check.Chapters = append(check.Chapters, written)
	}
	return check
}

func jsonSheetOf(sheet *vehicle.Sheet) jsonSheet {
	written := jsonSheet{File: sheet.Name, Hash: sheet.Hash}
	if car := sheet.Car(); car != nil {
		written.Car = car.Label
	}
	return written
}

// verdictCounts are clauses by verdict, as the engine counts them.
type verdictCounts = [engine.Gap + 1]int

func jsonCounts(counts verdictCounts) map[string]int {
	words := map[string]int{}
	for _, v := range engine.Verdicts() {
		words[v.String()] = counts[v]
	}
	return words
}

func jsonClauseOf(result *engine.ClauseResult) jsonClause {
	clause := result.Clause
	written := jsonClause{
		Number: clause.Number, Title: clause.Title,
		Concern: concernWord(clause.Concern), Page: clause.Page, Stage: stageWord(clause.Stage),
		TextAt: clause.TextAt, LookFor: clause.LookFor, Rectify: clause.Rectify,
		NotDue: result.NotDue, Note: result.Note, Remark: result.Remark,
		Subjects: []jsonSubject{},
	}
	if !result.NotDue && !result.Remark {
		written.Verdict = result.Verdict.String()
	}
	for _, subject := range result.Subjects {
		written.Subjects = append(written.Subjects, jsonSubjectOf(subject))
	}
	return written
}

func jsonSubjectOf(subject *engine.SubjectResult) jsonSubject {
	written := jsonSubject{
		Name: subject.Name, Verdict: subject.Verdict.String(),
		Decided: []jsonDecided{}, Causes: []jsonCause{},
		MissingPapers: notNil(subject.MissingPapers), OutdatedPapers: []jsonOutdated{},
		Dispensation: subject.Dispensation, Notes: notNil(subject.Notes),
		Place: jsonPlaceOf(subject.Place),
	}
	for _, paper := range subject.OutdatedPapers {
		written.OutdatedPapers = append(written.OutdatedPapers, jsonOutdated{paper.Label, paper.Why})
	}
	for _, d := range subject.Decided {
		written.Decided = append(written.Decided, jsonDecided{
			d.What, d.Reading, d.Sense, d.Limit, d.Margin, d.Note, d.Truth.String(), jsonPlaceOf(d.Place)})
	}
	for _, cause := range subject.Causes {
		c := jsonCause{Kind: CauseWord(cause.Kind), Text: cause.Text, Place: jsonPlaceOf(cause.Place)}
		if cause.Part != nil {
			c.Part = cause.Part.Name()
		}
		if cause.Particular != nil {
			c.Particular, c.How = cause.Particular.Name, cause.Particular.How
		}
		written.Causes = append(written.Causes, c)
	}
	return written
}

func jsonPlaceOf(at hcl.Range) *jsonPlace {
	if at.Filename == "" || at.Start.Line < 1 {
		return nil
	}
	return &jsonPlace{at.Filename, at.Start.Line, at.Start.Column}
}

func notNil(words []string) []string {
	if words == nil {
		return []string{}
	}
	return words
}
