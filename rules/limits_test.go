package rules

import (
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// TestLimitsThatSayTheSameOfEveryCarAreWarnedOf holds where a limit beyond what is plausible
// is told, and where not.
func TestLimitsThatSayTheSameOfEveryCarAreWarnedOf(t *testing.T) {
	for demand, warned := range map[string][]string{
		"car.weighed_mass >= 1.000*kg":                     {"1.000*kg", "400 to 3500 kg"},
		"0.5*metre <= tube.outside":                        {"0.5*metre", "10 to 120 mm"},
		"tube.wall == 25*mm or tube.wall >= 2*mm":          {"25*mm", "0.5 to 10 mm"},
		"car.seat_count <= 40":                             {"40", "1 to 9"},
		"car.first_registered < date('1901-01-01')":        nil,
		"car.first_logbook < date('1901-01-01')":           {"date('1901-01-01')", "1950-01-01 to 2100-12-31"},
		"tube.wall > 0":                                    nil,
		"tube.wall >= 0.5*mm and tube.wall <= 10*mm":       nil,
		"2*tube.wall >= 25*mm":                             nil,
		"(tube.bend_radius ?? (9*metre)) > 3*tube.outside": nil,
		"tube.outside >= tube.wall":                        nil,
		"any(cage.tubes, .wall > 1*inch)":                  {"1*inch", "0.5 to 10 mm"},
	} {
		book, faults := loadText(withClause("across = \"tube in cage.tubes\"\n    demand = \"" + demand + "\""))
		require.NotNil(t, book, "%s: %v", demand, describe(faults))
		if warned == nil {
			require.Empty(t, faults, demand)
			continue
		}
		require.Len(t, faults, 1, demand)
		require.Equal(t, hcl.DiagWarning, faults[0].Severity)
		require.Equal(t, vehicle.Code("limit-not-plausible"), vehicle.CodeOf(faults[0]))
		for _, said := range warned {
			require.Contains(t, faults[0].Detail, said)
		}
		require.Contains(t, demand, warned[0])
		require.Equal(t, len(warned[0]), faults[0].Subject.End.Byte-faults[0].Subject.Start.Byte, demand)
	}
}

// TestALimitInATermIsToldOnce holds that a limit of a term is told where the term is.
func TestALimitInATermIsToldOnce(t *testing.T) {
	_, faults := loadText(withClause("demand = \"heavy and not heavy\"") + "term \"heavy\" {\n  means = \"car.weighed_mass > 9*kg\"\n}\n")
	require.Len(t, faults, 1)
	require.Contains(t, faults[0].Detail, "in the term heavy")
}
