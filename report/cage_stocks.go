package report

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
)

// writeStocks tells length and mass by stock, and how many bars it takes.
func writeStocks(p *page, f *vehicle.Frame) {
	p.heading(Strong, "MASS AND LENGTH", " by stock, of tubes with a place")
	if len(f.Tubes) == 0 {
		p.prose(0, Plain, "No tube has a place yet.")
		return
	}
	stocks := f.Stocks()
	table := [][]string{{"stock", "size", "tubes", "length", "mass"}}
	var whole vehicle.FrameStock
	for _, s := range stocks {
		table = append(table, stockRow(stockName(s), s))
		whole.Tubes = append(whole.Tubes, s.Tubes...)
		whole.Length, whole.Mass, whole.Weighed = whole.Length+s.Length, whole.Mass+s.Mass, whole.Weighed+s.Weighed
	}
	if len(stocks) > 1 {
		table = append(table, stockRow("together", whole))
	}
	writeTable(p, table)
	p.blank()
	for _, s := range stocks {
		p.hanging(0, "- ", 2, Plain, sentence(stockName(s)+": "+barWords(f, s)))
	}
	p.blank()
	p.prose(0, Plain, "Lengths and masses are those of the centrelines from joint to joint, before the ends are notched. Where no density is stated it is that of steel, 7850 kg/m3 (EN 10219-2).")
}

// stockName names a stock in a sentence.
func stockName(s vehicle.FrameStock) string {
	if s.Part == nil {
		return "no stock"
	}
	return "stock " + Safe(s.Part.Label)
}

func stockRow(name string, s vehicle.FrameStock) []string {
	mass := "not known"
	if s.Weighed > 0 {
		mass = oneDecimal(s.Mass) + " kg"
	}
	if s.Weighed > 0 && s.Weighed < len(s.Tubes) {
		mass = fmt.Sprintf("%s of %d tubes", mass, s.Weighed)
	}
	return []string{name, sizeWords(s.Outside, s.Wall), fmt.Sprint(len(s.Tubes)), fmt.Sprintf("%.2f m", s.Length), mass}
}

// writeTable writes rows in columns under those of the first row, each as wide as its widest
// cell. On a page too narrow for them every row becomes a sentence that names its columns.
func writeTable(p *page, rows [][]string) {
	widths := make([]int, len(rows[0]))
	whole := 2 * (len(widths) - 1)
	for i := range widths {
		for _, row := range rows {
			widths[i] = max(widths[i], Width(row[i]))
		}
		whole += widths[i]
	}
	if whole > p.width {
		for _, row := range rows[1:] {
			p.hanging(0, "- ", 2, Plain, rowInWords(rows[0], row))
		}
		return
	}
	for i, row := range rows {
		var line strings.Builder
		for k, cell := range row {
			line.WriteString(pad(cell, widths[k]) + "  ")
		}
		ink := Plain
		if i == 0 {
			ink = Faint
		}
		p.raw(p.paint.With(ink, strings.TrimRight(line.String(), " ")))
	}
}

// rowInWords is a row as a sentence: its first cell, and the others by the names of their
// columns.
func rowInWords(names, row []string) string {
	var words []string
	for i, cell := range row[1:] {
		if cell != "" {
			words = append(words, names[i+1]+" "+cell)
		}
	}
	return sentence(row[0] + ": " + strings.Join(words, ", "))
}

// barWords says how a stock's tubes are taken out of its bars.
func barWords(f *vehicle.Frame, s vehicle.FrameStock) string {
	if s.Part == nil {
		return "these tubes name no stock, so they are taken out of no bars"
	}
	if s.BarLength == 0 {
		return "its tubes are not taken out of bars, as its bar_length is not recorded"
	}
	n := s.Nesting
	words := []string{fmt.Sprintf("%s of %s mm, %s", numberOf(len(n.Bars), "bar"), inMillimetres(s.BarLength), boundWords(n))}
	if _, ok := f.SawKerf(); !ok {
		words = append(words, "saw_kerf is not recorded and taken as 0")
	}
	words = append(words, allowanceWords(f, s)...)
	if s.HasBought {
		words = append(words, boughtWords(s.Bought, len(n.Bars)))
	}
	for _, fault := range n.Faults {
		words = append(words, cutFaultWords(f, s, fault))
	}
	if left := len(s.Tubes) - len(s.Cuts); left > 0 {
		words = append(words, fmt.Sprintf("%s of which the length cannot be told left out", numberOf(left, "tube")))
	}
	return strings.Join(words, "; ")
}

// tightRest is what should be over for each tube taken out of a bar, in metres: a saw cut
// that runs off square, and an end ground twice.
const tightRest = 5e-3

// allowanceWords says by how much tubes are sawn longer, and warns where nothing is said of it
// and a bar leaves too little for that.
func allowanceWords(f *vehicle.Frame, s vehicle.FrameStock) []string {
	if allowance, ok := f.CutAllowance(); ok {
		return []string{"each tube sawn " + inMillimetres(allowance) + " mm longer than its long-point length"}
	}
	bar, rest := s.TightBar()
	if bar < 0 || rest >= tightRest*float64(len(s.Nesting.Bars[bar].Cuts)) {
		return nil
	}
	return []string{fmt.Sprintf("cut_allowance is not recorded and taken as 0, and bar %d leaves %s mm over for %s: too little to cut long",
		bar+1, inMillimetres(rest), numberOf(len(s.Nesting.Bars[bar].Cuts), "tube"))}
}

// boundWords says how far a nesting is from the lower bound.
func boundWords(n cage.Nesting) string {
	switch {
	case len(n.Bars) == 0:
		return "as nothing can be cut from it"
	case n.IsLeast:
		return "the least there can be"
	}
	return fmt.Sprintf("%s %% over the lower bound of %s mm", oneDecimal(100*n.OverLeast()), inMillimetres(n.Least))
}

func boughtWords(bought, needed int) string {
	if missing := needed - bought; missing > 0 {
		return fmt.Sprintf("%d bought, so %d too few", bought, missing)
	}
	return fmt.Sprintf("%d bought", bought)
}

// cutFaultWords says why a tube is in no bar.
func cutFaultWords(f *vehicle.Frame, s vehicle.FrameStock, fault *cage.Fault) string {
	tube := cageNames{f}.tube(s.Cuts[fault.At])
	if fault.Problem == cage.CutTooLong {
		return fmt.Sprintf("%s is longer than every bar by %s mm", tube, inMillimetres(fault.Missing))
	}
	return fmt.Sprintf("%s is in no bar: %s", tube, fault.Problem)
}
