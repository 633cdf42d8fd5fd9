package report

import (
	"crypto/sha256"
	"fmt"
	"strconv"

	"gapsheet/vehicle"
)

// uidMaker makes the UIDs of a calendar, each once: the keys are those it has made.
type uidMaker map[string]bool

// uid names an entry by what it is about and never by its day. It is a UUID (RFC 7986,
// section 5.3, wants no more than that of a UID) of version 8, made from the SHA-256 of the
// names (RFC 9562, section 5.8 and appendix B.2). Where several things have the same names
// they are counted in their order.
func (m uidMaker) uid(names ...string) string {
	for count := 1; ; count++ {
		uid := uuidOf(append(names, strconv.Itoa(count)))
		if !m[uid] {
			m[uid] = true
			return uid
		}
	}
}

// uuidOf is a UUID of version 8 from names. The length before each keeps "a", "bc" and
// "ab", "c" apart.
func uuidOf(names []string) string {
	hash := sha256.New()
	for _, name := range names {
		// Writing to a hash has no error.
		_, _ = fmt.Fprintf(hash, "%d %s\n", len(name), name)
	}
	id := hash.Sum(nil)[:16]
	id[6] = id[6]&0x0f | 0x80 // version 8
	id[8] = id[8]&0x3f | 0x80 // the variant of RFC 9562
	return fmt.Sprintf("%x-%x-%x-%x-%x", id[0:4], id[4:6], id[6:8], id[8:10], id[10:])
}

// carIdentity is what a car is known by from one sheet to the next: its chassis number, else
// its label, else the name of its sheet.
func carIdentity(sheet *vehicle.Sheet) string {
	car := sheet.Car()
	if car == nil {
		return "sheet " + sheet.Name
	}
	if x := car.Type.Particular("chassis"); x != nil {
		if v := car.Values[x.Index]; v.State == vehicle.Stated {
			return "chassis " + v.Text
		}
	}
	return "car " + carName(sheet)
}
