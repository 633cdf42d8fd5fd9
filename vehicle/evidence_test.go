package vehicle

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"
)

// TestEvidenceHash holds that a paper's file is known by its SHA-256, here of "abc" (FIPS
// 180-4, the example of its annex), whether it lies beside the sheet or in the folder of
// papers.
func TestEvidenceHash(t *testing.T) {
	const abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	const sheet = `car "Tried" {
  evidence "slip" {
    file = "papers/slip.txt"
  }
  evidence "certificate" {
    file = "certificate.pdf"
  }
  evidence "letter" {
    file = "letter.txt"
  }
  evidence "stamp" {
  }
}
`
	read, faults := Load(fstest.MapFS{"car.hcl": {Data: []byte(sheet)}, "papers/slip.txt": {Data: []byte("abc")}}, "car.hcl", "car.hcl", BuiltIn(),
		Options{Papers: fstest.MapFS{"certificate.pdf": {Data: []byte("abc")}}, PapersShown: "further"})
	require.Len(t, faults, 1, "the letter is nowhere")
	require.Equal(t, Code("evidence-missing"), CodeOf(faults[0]))
	var hashes []string
	for _, e := range read.Car().Evidence {
		require.Equal(t, e.Hash != "", e.Found)
		hashes = append(hashes, e.Hash)
	}
	require.Equal(t, []string{abc, abc, "", ""}, hashes)
}

// TestIncidentNamesGearThatIsNotOnTheSheet holds that gear of the crew which an incident
// loaded is not lost where the sheet has none.
func TestIncidentNamesGearThatIsNotOnTheSheet(t *testing.T) {
	const sheet = `car "Tried" {
}
seat "driver" {
}
crew_member "driver" {
  helmet {
  }
}
incident "bank" {
  day    = "2027-05-15"
  loaded = ["seat", "helmet driver", "helmet co-driver", "head restraint driver"]
}
`
	read, faults := Load(fstest.MapFS{"car.hcl": {Data: []byte(sheet)}}, "car.hcl", "car.hcl", BuiltIn(), Options{})
	require.Empty(t, faults)
	incident := read.Logbook.Incidents[0]
	require.Len(t, incident.Loaded, 2)
	require.Equal(t, []string{"helmet co-driver", "head restraint driver"}, incident.NotOnSheet)
}
