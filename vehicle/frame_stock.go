package vehicle

import (
	"math"
	"slices"

	"gapsheet/vehicle/cage"
)

// FrameStock is what is cut from one delivery of tube.
type FrameStock struct {
	Part          *Part // nil for tubes without one
	Outside, Wall float64
	Tubes         []int   // by number
	Length        float64 // of their centrelines from node to node, metres
	Mass          float64 // of those, kg
	Weighed       int     // how many of the tubes have a known mass

	BarLength float64 // metres, 0 where it is not recorded
	Bought    int     // bars, as recorded
	HasBought bool
	Cuts      []int // the tubes that are nested, in the order of Nesting's cuts
	Nesting   cage.Nesting
}

// Stocks returns the tubes by the delivery they are cut from, in the order of the sheet,
// those without one last, with how their long-point lengths are taken out of bars of the
// recorded length. A tube whose length to cut cannot be told is in none.
func (f *Frame) Stocks() []FrameStock {
	var stocks []FrameStock
	for i, tube := range f.Tubes {
		at := slices.IndexFunc(stocks, func(s FrameStock) bool { return s.Part == tube.Stock })
		if at < 0 {
			at = len(stocks)
			stocks = append(stocks, newStock(tube))
		}
		stocks[at].add(i, tube)
	}
	if f.Sheet != nil {
		order := f.Sheet.partsNamed("tube_stock")
		place := func(s FrameStock) int {
			if s.Part == nil {
				return len(order)
			}
			return slices.Index(order, s.Part)
		}
		slices.SortStableFunc(stocks, func(a, b FrameStock) int { return place(a) - place(b) })
	}
	for i := range stocks {
		stocks[i].nest(f)
	}
	return stocks
}

func newStock(tube FrameTube) FrameStock {
	stock := FrameStock{Part: tube.Stock}
	if stock.Part == nil {
		return stock
	}
	stock.Outside = stock.Part.firstRead("outside", "ordered_outside")
	stock.Wall = stock.Part.firstRead("wall", "ordered_wall")
	stock.BarLength = stock.Part.firstRead("bar_length")
	bought, ok := stock.Part.asRead("bars")
	stock.Bought, stock.HasBought = int(bought), ok
	return stock
}

func (s *FrameStock) add(number int, tube FrameTube) {
	s.Tubes = append(s.Tubes, number)
	s.Length += tube.Course.Developed()
	s.Mass += tube.Mass()
	if tube.MassPerLength > 0 {
		s.Weighed++
	}
}

func (s *FrameStock) nest(f *Frame) {
	if s.BarLength == 0 {
		return
	}
	allowance, _ := f.CutAllowance()
	var lengths []float64
	for _, number := range s.Tubes {
		if tube := f.Tubes[number]; tube.Cuttable() {
			s.Cuts = append(s.Cuts, number)
			lengths = append(lengths, tube.Lengths().LongPoint+allowance)
		}
	}
	kerf, _ := f.SawKerf()
	s.Nesting = cage.Nest(lengths, []cage.Bar{{Length: s.BarLength}}, kerf)
}

// SawKerf returns the width of the saw cut in metres, and whether it is recorded.
func (f *Frame) SawKerf() (float64, bool) {
	if whole := f.Cage(); whole != nil {
		return whole.asRead("saw_kerf")
	}
	return 0, false
}

// CutAllowance returns by how much each tube is sawn longer than its long-point length, in
// metres, and whether that is recorded.
func (f *Frame) CutAllowance() (float64, bool) {
	if whole := f.Cage(); whole != nil {
		return whole.asRead("cut_allowance")
	}
	return 0, false
}

// TightBar returns the bar of the stock that leaves least over for each tube taken out of it,
// and how much it leaves in all, in metres; -1 where there is none.
func (s FrameStock) TightBar() (bar int, rest float64) {
	bar = -1
	least := math.Inf(1)
	for i, use := range s.Nesting.Bars {
		if each := use.Rest / float64(len(use.Cuts)); each < least {
			bar, least, rest = i, each, use.Rest
		}
	}
	return bar, rest
}

// barFindings are the tubes that no bar is long enough for, and the stocks of which too few
// bars were bought for the way of cutting that was found.
func (f *Frame) barFindings() []FrameFinding {
	var found []FrameFinding
	for _, s := range f.Stocks() {
		for _, fault := range s.Nesting.Faults {
			if fault.Problem == cage.CutTooLong {
				found = append(found, FrameFinding{Kind: LongerThanBars, Tubes: []int{s.Cuts[fault.At]}, Away: fault.Missing})
			}
		}
		if missing := len(s.Nesting.Bars) - s.Bought; s.HasBought && missing > 0 {
			found = append(found, FrameFinding{Kind: TooFewBars, Weight: ToLookAt, Part: s.Part, Count: missing})
		}
	}
	return found
}

// Cage returns the part that stands for the cage as a whole; nil where the sheet says
// nothing of a cage.
func (f *Frame) Cage() *Part {
	if f.Sheet == nil {
		return nil
	}
	if parts := f.Sheet.partsNamed("cage"); len(parts) > 0 {
		return parts[0]
	}
	return nil
}
