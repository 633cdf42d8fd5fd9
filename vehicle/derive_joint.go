package vehicle

import (
	"slices"

	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// joint finds what follows for one joint.
func (d *deriver) joint(part *Part) {
	if part.Original != nil && part.Values[d.particular(part.Type, "y").Index].State == Nothing {
		var from bases
		from.put(d.base(part.Original, "y"))
		d.add(part, from, nil, func(from, gives []quantity.Range) { gives[0] = from[0].Negate() }, "y")
	}
	d.meetingTubes(part)
	for _, list := range part.Lists {
		for _, inner := range list.Parts {
			if list.Type.Name == "meeting" {
				d.meeting(part, inner)
			}
		}
	}
}

// meetingTubes derives how many tubes meet at a joint, and the least angle between two.
func (d *deriver) meetingTubes(part *Part) {
	var from bases
	if d.structure == nil {
		if !slices.ContainsFunc(d.through, func(through []int) bool { return through != nil }) {
			return
		}
		from.list = d.unknown
		d.add(part, from, d.open("tube"), nothing, "tubes_meeting", "least_angle")
		return
	}
	joint := d.numbers[part]
	tubes := d.structure.Beside(-1, joint, d.resting)
	for _, tube := range tubes {
		from.put(d.base(d.tubes[tube], "through"))
	}
	count := quantity.Exactly(float64(len(tubes)))
	d.add(part, from, d.open("tube"), func(_, gives []quantity.Range) { gives[0] = count }, "tubes_meeting")
	if len(tubes) < 2 {
		return
	}
	var places bases
	meetings := d.placed(&places, d.structure.MeetingsAt(joint, d.resting))
	d.add(part, places, d.open("tube"), func(from, gives []quantity.Range) {
		gives[0] = meetings.least(from)
	}, "least_angle")
}

// meeting derives the angle between two tubes at a joint. That of two that go through it
// hangs on the joints beside it alone.
func (d *deriver) meeting(joint, part *Part) {
	one, other := d.value(part, "one").Named, d.value(part, "other").Named
	if one == nil || other == nil {
		return
	}
	at := d.numbers[joint]
	a, b := d.numbers[one], d.numbers[other]
	var met []cage.Meeting
	if slices.Contains(d.through[a], at) && slices.Contains(d.through[b], at) {
		met = []cage.Meeting{{Joint: at, Ways: [2]cage.Leaving{cage.LeavingOf(d.through[a], at), cage.LeavingOf(d.through[b], at)}}}
	} else if d.structure == nil {
		d.add(part, bases{list: d.unknown}, nil, nothing, "angle")
		return
	}
	if len(met) == 0 {
		met = d.structure.MeetingsAt(at, d.resting)
		met = slices.DeleteFunc(met, func(m cage.Meeting) bool { return !slices.Contains(m.Tubes[:], a) || !slices.Contains(m.Tubes[:], b) })
	}
	if len(met) == 0 {
		return
	}
	var from bases
	placed := d.placed(&from, met)
	d.add(part, from, nil, func(from, gives []quantity.Range) { gives[0] = placed.least(from) }, "angle")
}

// placedMeetings are meetings at one joint with the places of all joints they are about,
// and their numbers among these.
type placedMeetings struct {
	meetings []cage.Meeting
	places   []place
}

// placed adds the places of the joints that meetings at one joint are about.
func (d *deriver) placed(b *bases, meetings []cage.Meeting) placedMeetings {
	var joints []int
	number := func(joint int) int {
		at := slices.Index(joints, joint)
		if at < 0 {
			at = len(joints)
			joints = append(joints, joint)
		}
		return at
	}
	p := placedMeetings{}
	for _, meeting := range meetings {
		local := cage.Meeting{Joint: number(meeting.Joint)}
		for i, way := range meeting.Ways {
			local.Ways[i].OnTube = way.OnTube
			for _, to := range way.To {
				local.Ways[i].To = append(local.Ways[i].To, number(to))
			}
		}
		p.meetings = append(p.meetings, local)
	}
	p.places = d.placesAt(b, joints)
	return p
}

// least returns the least of the angles of the meetings.
func (p placedMeetings) least(from []quantity.Range) quantity.Range {
	return cage.LeastAngle(p.meetings, pointsIn(p.places, from))
}
