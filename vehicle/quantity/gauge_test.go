package quantity

import (
	"fmt"
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"
)

// The walls in inches. bwg: the table of Birmingham or Stubs gauges in use by tube makers,
// and a nineteenth-century table after Holtzapffel; swg: the Imperial Standard table in the
// same book. Both quoted by others; the swg column also agrees with the gauge function of
// the program GNU Units.
func TestWallGauges(t *testing.T) {
	for _, c := range []struct {
		number   int
		bwg, swg string
	}{
		{7, ".180", ".176"}, {8, ".165", ".160"}, {9, ".148", ".144"}, {10, ".134", ".128"}, {11, ".120", ".116"},
		{12, ".109", ".104"}, {13, ".095", ".092"}, {14, ".083", ".080"}, {15, ".072", ".072"}, {16, ".065", ".064"},
		{17, ".058", ".056"}, {18, ".049", ".048"}, {19, ".042", ".040"}, {20, ".035", ".036"},
	} {
		for name, wall := range map[string]string{"bwg": c.bwg, "swg": c.swg} {
			f, fault := ParseFigure(fmt.Sprintf("%d %s", c.number, name))
			require.Nil(t, fault)
			inches, fault := ParseFigure(wall + " in")
			require.Nil(t, fault)
			require.Equal(t, inches.Range, f.Range, "%d %s", c.number, name)
			require.Equal(t, inches.Unit, f.Unit)
			require.Equal(t, 3, f.Decimals)
			require.Equal(t, fmt.Sprintf("%d %s", c.number, name), f.String())
		}
	}
}

func TestGaugesOutsideTheTable(t *testing.T) {
	for _, text := range []string{"6 bwg", "21 swg", "12.5 bwg", "-13 bwg", "0 swg", "999999999999999999999999 bwg"} {
		_, fault := ParseFigure(text)
		require.NotNil(t, fault, text)
		require.Equal(t, FaultGauge, fault.Code, text)
	}
	_, ok := gaugeWall("awg", big.NewRat(13, 1))
	require.False(t, ok)
}
