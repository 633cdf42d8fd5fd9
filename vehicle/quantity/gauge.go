package quantity

import "math/big"

// firstGauge is the number of the first wall in gaugeWalls.
const firstGauge = 7

// gaugeWalls returns the walls of a numbered gauge from number 7 on, in thousandths of an
// inch, nil for a name that is no gauge.
//
// bwg is the Birmingham or Stubs gauge, by which tubes are sold: a nineteenth-century
// table after Holtzapffel, quoted, and the tables of tube makers agree with it. swg is the
// Imperial Standard gauge: the same book's table, quoted, and the gauge function of the
// program GNU Units. The two differ by up to .006 in at one number, which is why a bare
// gauge is refused.
func gaugeWalls(name string) []int64 {
	switch name {
	case "bwg":
		return []int64{180, 165, 148, 134, 120, 109, 95, 83, 72, 65, 58, 49, 42, 35}
	case "swg":
		return []int64{176, 160, 144, 128, 116, 104, 92, 80, 72, 64, 56, 48, 40, 36}
	}
	return nil
}

// gaugeWall returns the wall of a gauge number in inches, exactly. It answers false for a
// name that is no gauge and for a number that is not in its table.
func gaugeWall(name string, number *big.Rat) (*big.Rat, bool) {
	walls := gaugeWalls(name)
	if !number.IsInt() || !number.Num().IsInt64() {
		return nil, false
	}
	index := number.Num().Int64() - firstGauge
	if index < 0 || index >= int64(len(walls)) {
		return nil, false
	}
	return big.NewRat(walls[index], 1000), true
}
