package vehicle

import (
	"fmt"
	"slices"

	"gapsheet/vehicle/quantity"
)

// datePairs are dates of one part of which the second is never before the first, with what
// is to be said of one that is.
var datePairs = []struct{ first, second, because string }{
	{"made", "first_used", notThere}, {"made", "serviced", notThere}, {"made", "recertified", notThere},
	{"made", "foam_renewed", notThere}, {"made", "weighed_on", notThere},
	{"made", "not_after", "it would have ended before"}, {"made", "extended_until", "it would have ended before"},
	{"made", "recertified_until", "it would have ended before"}, {"made", "service_due", notThere},
	{"issued", "not_after", "it would have ended before"}, {"issued", "recertified", "there was none yet"},
	{"recertified", "recertified_until", "it would have ended before"}, {"recertified", "extended_until", "it would have ended before"},
	{"serviced", "service_due", "it would have been due before"}, {"built", "modified", notThere},
}

const notThere = "it was not there yet"

// endDates are dates on which something ends or is due.
var endDates = []string{"not_after", "extended_until", "recertified_until", "service_due", "end_of_life", "homologation_ended"}

// IsEnd reports whether a date is one on which something ends or is due, which lies ahead
// when a part is fitted; all others are days on which something was done.
func (x *Particular) IsEnd() bool { return slices.Contains(endDates, x.Name) }

// checkDates reports dates of a part, and of the parts that belong to it, that contradict
// each other or the kind of its label.
func (r *sheetReader) checkDates(p *Part) {
	for _, pair := range datePairs {
		first, second := p.dated(pair.first), p.dated(pair.second)
		if first == nil || second == nil {
			continue
		}
		for _, days := range append([]quantity.DayRange{second.Days}, second.Earlier...) {
			if days.To < first.Days.From {
				r.fault("dates-order", second.Range, "Dates out of order", fmt.Sprintf(
					"Found %q as %s of the %s, whose %s is %s: %s. Look at both dates.", days, pair.second, p.blockName(), pair.first, first.Days, pair.because))
			}
		}
	}
	r.checkLabel(p)
	for i := range p.Lists {
		for _, inner := range p.Lists[i].Parts {
			r.checkDates(inner)
		}
	}
}

// dated is what the sheet states of a date of the part; nil where it states none.
func (p *Part) dated(name string) *Value {
	if x := p.Type.Particular(name); x != nil && x.Kind == KindDate && p.Values[x.Index].State == Stated {
		return &p.Values[x.Index]
	}
	return nil
}

// labelPrecision is how much of the date of manufacture a label shows, by the words for its
// kind.
var labelPrecision = map[string]quantity.Precision{
	"day, month and year": quantity.ToDay, "month and year": quantity.ToMonth, "year only": quantity.ToYear,
}

// checkLabel holds the dates of a part against the kind of its label.
func (r *sheetReader) checkLabel(p *Part) {
	x := p.Type.Particular("label_kind")
	if x == nil || p.Values[x.Index].State != Stated {
		return
	}
	kind, at := x.Choices.Choices[p.Values[x.Index].Choice].Value, p.Values[x.Index].Range
	made, end := p.dated("made"), p.dated("not_after")
	precision, isOfMaking := labelPrecision[kind]
	advice := ""
	switch {
	case kind == "not valid after" && made != nil && end == nil:
		advice = fmt.Sprintf("it has made = %q and no not_after. Write the end that the label names as not_after, or the kind of label that shows when it was made", made.Days)
	case isOfMaking && made == nil && end != nil:
		advice = fmt.Sprintf("it has not_after = %q and no made. Write when it was made as the label shows it, or \"not valid after\" as label_kind", end.Days)
	case isOfMaking && made == nil && p.saysNone("made"):
		advice = `its made is "none". Write when it was made as the label shows it, or "no date" as label_kind`
	case isOfMaking && made != nil && made.Days.Precision != precision:
		advice = fmt.Sprintf("its made is %q. Write it with as much as the label shows, no more and no less, as its life is counted from that", made.Days)
	case kind == "no date" || kind == "label missing":
		for _, name := range []string{"made", "not_after"} {
			if v := p.dated(name); v != nil {
				advice = fmt.Sprintf("it has %s = %q. Write the kind of label that shows it; what only a paper says stands in a note", name, v.Days)
			}
		}
	}
	if advice != "" {
		r.fault("label-kind", at, "A label that contradicts its date", fmt.Sprintf("Found %q as label_kind of the %s, but %s.", kind, p.blockName(), advice))
	}
}

// saysNone reports whether the sheet says that there is no such thing.
func (p *Part) saysNone(name string) bool {
	x := p.Type.Particular(name)
	return x != nil && p.Values[x.Index].State == None
}
