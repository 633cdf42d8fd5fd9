package report

import (
	"gapsheet/vehicle"
)

// jsonPapersOf lists the evidence that a sheet names, with the hashes of the files that are
// there.
func jsonPapersOf(sheet *vehicle.Sheet) []jsonPaper {
	return jsonPapers(sheet.Root, []jsonPaper{})
}

// jsonPapers adds the papers of a part and of all that belongs to it.
func jsonPapers(part *vehicle.Part, papers []jsonPaper) []jsonPaper {
	for i := range part.Evidence {
		e := &part.Evidence[i]
		written := jsonPaper{Label: e.Label, Part: part.Name(), File: e.File, Found: e.Found, Hash: e.Hash, Place: jsonPlaceOf(e.Range)}
		if e.HasDate {
			written.Dated = e.Dated.String()
		}
		if e.HasEnd {
			written.ValidUntil = e.ValidUntil.String()
		}
		papers = append(papers, written)
	}
	for i := range part.Lists {
		for _, inner := range part.Lists[i].Parts {
			papers = jsonPapers(inner, papers)
		}
	}
	return papers
}
