package report

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// A bar that is used up to its last millimetres is told where nobody said how long to cut.
func TestWordsOfBarsAndAllowance(t *testing.T) {
	sheet := `
%s
tube_stock "A" {
  ordered    = "45 x 2.5 mm"
  bar_length = "2.404 m"
  bars       = 1
}
joint "A" { at = ["0 mm", "0 mm", "0 mm"] }
joint "B" { at = ["0 mm", "0 mm", "1200 mm"] }
joint "C" { at = ["0 mm", "200 mm", "0 mm"] }
joint "D" { at = ["0 mm", "200 mm", "1200 mm"] }
tube "1" {
  stock   = "A"
  through = ["A", "B"]
}
tube "2" {
  stock   = "A"
  through = ["C", "D"]
}`
	words := func(line string) (string, []string) {
		f := cageOf(t, strings.Replace(sheet, "%s", line, 1))
		lines, _ := findingLines(f, f.FindingsOnce(), vehicle.ToLookAt)
		return barWords(f, f.Stocks()[0]), lines
	}
	said, _ := words(`cage { saw_kerf = "0 mm" }`)
	require.Contains(t, said, "cut_allowance is not recorded and taken as 0, and bar 1 leaves 4.0 mm over for 2 tubes: too little to cut long")
	said, lines := words(`cage { cut_allowance = "10 mm" }`)
	require.Contains(t, said, "each tube sawn 10.0 mm longer than its long-point length")
	require.NotContains(t, said, "not recorded and taken as 0, and bar")
	require.Contains(t, lines, "Tube stock A: 1 bar too few bought for the way of cutting below. (cars/car.hcl:4)")
}
