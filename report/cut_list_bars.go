package report

import (
	"fmt"
	"strings"

	"gapsheet/vehicle"
)

// barRows are the bars of every stock with the tubes to be sawn off each, in the order to
// saw them, and last of each stock how many bars that takes.
func (c *cutList) barRows() [][]string {
	f := c.frame
	rows := [][]string{{"Bars"}, {"stock", "bar", "bar length mm", "tubes with their long-point length and cut_allowance mm, in this order", "rest mm", "remark"}}
	allowance, _ := f.CutAllowance()
	kerf, ok := f.SawKerf()
	kerfWords := "saw kerf not recorded, taken as 0"
	if ok {
		kerfWords = "saw kerf " + inMillimetres(kerf) + " mm"
	}
	for _, s := range f.Stocks() {
		for i, bar := range s.Nesting.Bars {
			var cuts []string
			for _, cut := range bar.Cuts {
				tube := f.Tubes[s.Cuts[cut]]
				cuts = append(cuts, tube.Number+": "+inMillimetres(tube.Lengths().LongPoint+allowance))
			}
			rows = append(rows, []string{stockLabel(s), fmt.Sprint(i + 1), inMillimetres(s.BarLength), strings.Join(cuts, "; "), inMillimetres(bar.Rest), kerfWords})
		}
		rows = append(rows, []string{stockLabel(s), "together", "", "", "", sentence(barWords(f, s))})
	}
	return rows
}

func stockLabel(s vehicle.FrameStock) string {
	if s.Part == nil {
		return "no stock"
	}
	return s.Part.Label
}
