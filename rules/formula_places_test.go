package rules

import (
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
)

// TestPlacesToTrees holds what formulas on places and tubes become. What the functions mean
// is elementary geometry; above and ahead_of go by the axes of ISO 8855:2011.
func TestPlacesToTrees(t *testing.T) {
	scope := placesScope(t)
	for _, x := range placeFormulas {
		t.Run(x.source, func(t *testing.T) {
			tree, faults := CheckText(x.source, scope, Type{})
			require.Empty(t, faults)
			require.Equal(t, x.shape, shape(tree))
			require.Equal(t, x.is, tree.Type().String())
			require.Equal(t, Span{0, len(x.source)}, tree.Span())
		})
	}
}

// placesScope is the scope of a clause that runs over two tubes and parts with places.
func placesScope(t *testing.T) *Scope {
	t.Helper()
	return withPlaces(clauseScope(t))
}

// withPlaces adds variables for a second tube and for parts with places.
func withPlaces(scope *Scope) *Scope {
	root := scope.names.vocabulary.Root
	cage, harness := root.PartNamed("cage"), root.PartNamed("harness")
	return scope.With(
		&Binding{Name: "other", Is: Type{Kind: Part, PartType: cage.PartNamed("tube")}},
		&Binding{Name: "foot", Is: Type{Kind: Part, PartType: cage.PartNamed("foot")}},
		&Binding{Name: "joint", Is: Type{Kind: Part, PartType: cage.PartNamed("joint")}},
		&Binding{Name: "strap", Is: Type{Kind: Part, PartType: harness.PartNamed("strap")}})
}

var placeFormulas = []struct{ source, shape, is string }{
	{"distance(foot, cage.joint['A'])", "distance(foot, cage.joint[a])", "a length"},
	{"distance(head['driver'].top, strap.anchor_at)", "distance(head[driver].top, strap.anchor_at)", "a length"},
	{"distance(joint.at, tube) >= 150*mm", ">=(distance(joint.at, tube), 150 mm)", "yes or no"},
	{"clearance(tube, head['driver']) <= 150*mm", "<=(clearance(tube, head[driver]), 150 mm)", "yes or no"},
	{"any(heads, clearance(tube, .top) < clearance(#, other))", "any(heads, <(clearance(tube, #.top), clearance(#, other)))", "yes or no"},
	{"distance(tube, other) - head['driver'].helmet_radius", "-(distance(tube, other), head[driver].helmet_radius)", "a length"},
	{"tube | distance(head['driver'])", "distance(tube, head[driver])", "a length"},
	{"angle_between(tube, cage.tube['2']) >= 30*deg", ">=(angle_between(tube, cage.tube[2]), 30 deg)", "yes or no"},
	{"above(joint, head['co-driver'].top)", "above(joint, head[co-driver].top)", "a length"},
	{"ahead_of(joint, head['driver']) > 0", ">(ahead_of(joint, head[driver]), 0)", "yes or no"},
	{"meet(tube, other, 5*mm) and not meet(tube, cage.tube['9'], 0)", "and(meet(tube, other, 5 mm), not(meet(tube, cage.tube[9], 0)))", "yes or no"},
	{"meet(tube, other, tube.outside / 2)", "meet(tube, other, /(tube.outside, 2))", "yes or no"},
	{"any(cage.tubes, meet(#, tube, 5*mm))", "any(cage.tubes, meet(#, tube, 5 mm))", "yes or no"},
	{"all(tube.ends, any(cage.feet, distance(#, joint) <= 0.1*metre))", "all(tube.ends, any(cage.feet, <=(distance(#, joint), 0.1 m)))", "yes or no"},
	{"min(map(heads, distance(.top, tube)))", "min(map(heads, distance(#.top, tube)))", "a length"},
	{"distance(first(tube.ends), last(tube.ends))", "distance(first(tube.ends), last(tube.ends))", "a length"},
	{"distance(a ? tube : other, joint)", "distance(if(given 2, tube, other), joint)", "a length"},
	{"let end = first(tube.ends); above(end, joint)", "let end(first(tube.ends), above(end, joint))", "a length"},
	{"above(joint, head['driver']) == joint.z - head['driver'].top_z", "==(above(joint, head[driver]), -(joint.z, head[driver].top_z))", "yes or no"},
	{"recorded(tube.through)", "recorded(tube.through)", "yes or no"},
	{"recorded(joint.at)", "and(recorded(joint.x), recorded(joint.y), recorded(joint.z))", "yes or no"},
	{"recorded(head['driver'].top)", "and(recorded(head[driver].top_x), recorded(head[driver].top_y), recorded(head[driver].top_z))", "yes or no"},
	{"foot.joint == 'A left'", "==(foot.joint, 'a left')", "yes or no"},
}

// TestFunctionsAreWhole holds that every function on single values or places has a
// signature and a name that no author can give to something else.
func TestFunctionsAreWhole(t *testing.T) {
	for _, f := range Functions() {
		_, known := signatures[f.Code]
		require.True(t, known, "%s has no signature", f.Name)
		require.Equal(t, "a function", Reserved(f.Name, nil))
	}
}

// TestPlaceOf holds by which particular a part stands for a place.
func TestPlaceOf(t *testing.T) {
	root := testVocabulary().Root
	cage := root.PartNamed("cage")
	named := func(t *vehicle.PartType) string {
		if p := PlaceOf(t); p != nil {
			return p.Name
		}
		return ""
	}
	require.Equal(t, "at", named(cage.PartNamed("joint")))
	require.Equal(t, "top", named(root.PartNamed("head")))
	require.Equal(t, "joint", named(cage.PartNamed("foot")))
	require.Equal(t, "joint", named(cage.PartNamed("tube").PartNamed("end")))
	require.Empty(t, named(cage.PartNamed("tube")), "a tube is no place")
	require.Empty(t, named(root.PartNamed("harness").PartNamed("strap")), "two points")
	require.Empty(t, named(root.PartNamed("seat")), "no point")
	require.Empty(t, named(cage.PartNamed("joint").PartNamed("meeting")), "names tubes, no joint")
}

// TestClubsChangeNoPlace holds that what a rulebook adds makes a place only of a part that
// has none.
func TestClubsChangeNoPlace(t *testing.T) {
	folder := fstest.MapFS{"book.hcl": {Data: []byte(clubsPlaces)}}
	book, faults := Load(folder, "book.hcl", "book.hcl", vehicle.BuiltIn())
	require.Empty(t, faults)
	seat, net := book.Vocabulary.Type("seat"), book.Vocabulary.Type("window_net")
	require.NotNil(t, seat.Particular("joint"))
	require.Equal(t, "reference", PlaceOf(seat).Name)
	require.Equal(t, "joint", PlaceOf(net).Name)
	require.Nil(t, PlaceOf(vehicle.BuiltIn().Type("window_net")))
	require.Nil(t, PlaceOf(book.Vocabulary.Type("strap")), "two points of its own")
}

// clubsPlaces is a rulebook that says of three parts at which joint they are.
const clubsPlaces = `
rulebook "Marram" {
  edition = "2027"
}
particular "joint" {
  kind  = "part name"
  part  = "seat"
  names = "joint"
  help  = "The joint nearest to the seat."
  how   = "By eye."
}
particular "joint" {
  kind  = "part name"
  part  = "strap"
  names = "joint"
  help  = "The joint nearest to the strap."
  how   = "By eye along the bar."
}
particular "joint" {
  kind  = "part name"
  part  = "window_net"
  names = "joint"
  help  = "The joint from which the net hangs."
  how   = "By eye from outside."
}
chapter "1" {
  title = "Of the club"
  clause "1.1" {
    title   = "Nets hang high"
    concern = "safety"
    demand  = "all(window_nets, let net = #; all(seats, above(net, #) > 0))"
  }
}
`

// TestFaultyPlaces holds what an author is told of mistakes with places and tubes.
func TestFaultyPlaces(t *testing.T) {
	scope := placesScope(t)
	for _, x := range faultyPlaces {
		t.Run(x.source, func(t *testing.T) {
			tree, faults := CheckText(x.source, scope, Type{})
			require.Nil(t, tree)
			found := []told{}
			for _, f := range faults {
				piece := string([]rune(x.source)[f.At.From:f.At.To])
				found = append(found, told{f.Code, f.At.From + 1, piece, f.Detail()})
			}
			require.Equal(t, x.told, found)
		})
	}
}

var faultyPlaces = []struct {
	source string
	told   []told
}{
	{"distance(cage.tubes, joint) > 0", []told{
		{CodeFormulaKind, 10, "cage.tubes", `"cage.tubes" is a list of tubes, where distance takes a place or a tube. Ask its members one by one: any(cage.tubes, distance(#, …) …), all(cage.tubes, distance(#, …) …).`},
	}},
	{"distance(joint, heads)", []told{
		{CodeFormulaKind, 17, "heads", `"heads" is a list of heads, where distance takes a place or a tube. Ask its members one by one: any(heads, distance(#, …) …), all(heads, distance(#, …) …).`},
	}},
	{"meet(cage.tubes, tube, 5*mm)", []told{
		{CodeFormulaKind, 6, "cage.tubes", `"cage.tubes" is a list of tubes, where meet takes a tube. Ask its members one by one: any(cage.tubes, meet(#, …, 5*mm)), all(cage.tubes, meet(#, …, 5*mm)).`},
	}},
	{"angle_between(tube, cage.joints)", []told{
		{CodeFormulaKind, 21, "cage.joints", `"cage.joints" is a list of joints, where angle_between takes a tube. Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, angle_between(#, …) …).`},
	}},
	{"above(tube, joint)", []told{
		{CodeFormulaKind, 7, "tube", `"tube" is a tube, where above takes a place. Ask the places along it: any(tube.ends, above(#, …) …) or any(tube.corners, above(#, …) …).`},
	}},
	{"above(cage.tubes, joint)", []told{
		{CodeFormulaKind, 7, "cage.tubes", `"cage.tubes" is a list of tubes, where above takes a place. Ask its members one by one: any(cage.tubes, …). Ask the places along it: any(.ends, above(#, …) …) or any(.corners, above(#, …) …).`},
	}},
	{"ahead_of(joint, tube)", []told{
		{CodeFormulaKind, 17, "tube", `"tube" is a tube, where ahead_of takes a place. Ask the places along it: any(tube.ends, ahead_of(#, …) …) or any(tube.corners, ahead_of(#, …) …).`},
	}},
	{"distance(strap, joint)", []told{
		{CodeFormulaKind, 10, "strap", `"strap" is a strap, where distance takes a place or a tube. Of its places name one: strap.leaves_body or strap.anchor_at.`},
	}},
	{"above(seat['x'], joint)", []told{
		{CodeFormulaKind, 7, "seat['x']", `"seat['x']" is a seat, where above takes a place. It can be a joint, an end, a corner, a foot or a head.`},
	}},
	{"above(car, joint)", []told{
		{CodeFormulaKind, 7, "car", `"car" is a car, where above takes a place. It can be a joint, an end, a corner, a foot or a head.`},
	}},
	{"angle_between(tube, joint)", []told{
		{CodeFormulaKind, 21, "joint", `"joint" is a joint, where angle_between takes a tube. Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, angle_between(#, …) …).`},
	}},
	{"angle_between(tube, joint.at)", []told{
		{CodeFormulaKind, 21, "joint.at", `"joint.at" is a place, where angle_between takes a tube. Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, angle_between(#, …) …).`},
	}},
	{"distance(foot.joint, tube)", []told{
		{CodeFormulaKind, 10, "foot.joint", `"foot.joint" is a text, where distance takes a place or a tube. That is only the label of the joint; write foot, which stands for the place.`},
	}},
	{"distance('D left', tube)", []told{
		{CodeFormulaKind, 10, "'D left'", "'D left' is a text, where distance takes a place or a tube. Write cage.joint['D left']."},
	}},
	{"meet(tube, '12', 5*mm)", []told{
		{CodeFormulaKind, 12, "'12'", "'12' is a text, where meet takes a tube. Write cage.tube['12']."},
	}},
	{"angle_between(tube, 3*deg)", []told{
		{CodeFormulaKind, 21, "3*deg", `"3*deg" is an angle, where angle_between takes a tube. Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, angle_between(#, …) …).`},
	}},
	{"distance(tube, 3*mm)", []told{
		{CodeFormulaKind, 16, "3*mm", `"3*mm" is a length, where distance takes a place or a tube. It can be a joint, a tube, an end, a corner, a foot or a head.`},
	}},
	{"distance(tube.through, joint)", []told{
		{CodeFormulaKind, 10, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"any(joint.meetings, angle_between(.one, tube) > 0)", []told{
		{CodeFormulaKind, 35, ".one", `".one" is a text, where angle_between takes a tube. That is only the label of a tube. Write a tube: one that across has named, one by its label as in cage.tube['…'], or # in any(cage.tubes, angle_between(#, …) …).`},
	}},
	{"meet(tube, other)", []told{
		{CodeFormulaArguments, 1, "meet(tube, other)", "meet has 2 arguments here. Write meet(tube, tube, within)."},
	}},
	{"meet(tube, other, 5)", []told{
		{CodeFormulaDimension, 19, "5", `"5" has no unit, but meet takes a length. Write 5*mm.`},
	}},
	{"meet(tube, other, 5*deg)", []told{
		{CodeFormulaKind, 19, "5*deg", `"5*deg" is an angle, where meet takes a length. Write meet(tube, tube, within), as in 5*mm.`},
	}},
	{"meet(tube, other, -5*mm)", []told{
		{CodeFormulaConstant, 19, "-5*mm", `Nothing comes as near as "-5*mm". Write a length from zero up.`},
	}},
	{"meet(tube, other, joint)", []told{
		{CodeFormulaKind, 19, "joint", `"joint" is a joint, where meet takes a length. Write meet(tube, tube, within), as in 5*mm.`},
	}},
	{"clearance(tube, tube.outside)", []told{
		{CodeFormulaKind, 17, "tube.outside", `"tube.outside" is a length, where clearance takes a place or a tube. It can be a joint, a tube, an end, a corner, a foot or a head.`},
	}},
	{"clearance(tube, helmet) <= 150*mm", []told{
		{CodeFormulaName, 17, "helmet", `"helmet" is not the name of a place. Write head['driver']: for distance the top point of a helmet, for clearance the helmet.`},
	}},
	{"distance(anchorage, joint) <= 150*mm", []told{
		{CodeFormulaName, 10, "anchorage", `"anchorage" is not the name of a place. The sheet has the places of a strap: strap.leaves_body or strap.anchor_at.`},
	}},
	{"distance(harness['driver'], joint)", []told{
		{CodeFormulaKind, 10, "harness['driver']", `"harness['driver']" is a harness, where distance takes a place or a tube. Ask its places: any(harness['driver'].straps, distance(.anchor_at, …) …).`},
	}},
	{"distance(seat_back, joint)", []told{
		{CodeFormulaName, 10, "seat_back", `"seat_back" is not the name of anything. A text stands between quotes; a part, table, term or unit is written by its name.`},
	}},
	{"angle_between(tube, helmet)", []told{
		{CodeFormulaName, 21, "helmet", `"helmet" is not the name of anything. A text stands between quotes; a part, table, term or unit is written by its name.`},
	}},
	{"joint['A'].z > 0", []told{
		{CodeFormulaPart, 1, "joint['A']", `"joint" stands for one joint at a time here, so it has no label. For the one with that label write cage.joint['A']; else choose it with where.`},
	}},
	{"distance(tube, cage.joint('A')) > 3*mm", []told{
		{CodeFormulaPart, 16, "cage.joint('A')", `A label stands in square brackets. Write cage.joint['A'].`},
	}},
	{"head('driver').top_z > 3*mm", []told{
		{CodeFormulaPart, 1, "head('driver')", `A label stands in square brackets. Write head['driver'].`},
	}},
	{"below(foot, joint) > 3*mm", []told{
		{CodeFormulaName, 1, "below", `There is no function "below". Did you mean above, with the two the other way round?`},
	}},
	{"tube.outside > 45*kg/2", []told{
		{CodeFormulaDimension, 1, "tube.outside > 45*kg/2", `"tube.outside" is a length, "45*kg/2" is a mass. Only figures of one kind can be compared.`},
	}},
	{"tube.outside > 45 * kg", []told{
		{CodeFormulaDimension, 1, "tube.outside > 45 * kg", `"tube.outside" is a length, "45 * kg" is a mass. Only figures of one kind can be compared. Did you mean 45*mm?`},
	}},
	{"feet['A'].bolt_count > 3", []told{
		{CodeFormulaName, 1, "feet", `"feet" does not say what it belongs to. Write cage.foot['A'].`},
	}},
	{"straps['A'].width > 0", []told{
		{CodeFormulaName, 1, "straps", `"straps" does not say what it belongs to. Write harness['driver'].strap['A'].`},
	}},
	{"cage.jonts['A'].z > 0", []told{
		{CodeFormulaName, 6, "jonts", `The build sheet knows no "jonts" of a cage. Did you mean joints?`},
	}},
	{"corners > 0", []told{
		{CodeFormulaName, 1, "corners", `"corners" does not say what it belongs to. Write tube.corners, or name it in across.`},
	}},
	{"tube.outside > 30°C", []told{
		{CodeFormulaSyntax, 18, "°", `The character "°" has no meaning in a formula. Write celsius(30).`},
	}},
	{"distance(tube)", []told{
		{CodeFormulaArguments, 1, "distance(tube)", "distance has 1 argument here. Write distance(a, b)."},
	}},
	{"above(joint, foot, tube)", []told{
		{CodeFormulaArguments, 1, "above(joint, foot, tube)", "above has 3 arguments here. Write above(place, place)."},
	}},
	{"distance(tube, tube)", []told{
		{CodeFormulaArguments, 1, "distance(tube, tube)", `Both are "tube". Name two: distance(a, b).`},
	}},
	{"meet(#, tube, 5*mm)", []told{
		{CodeFormulaElement, 6, "#", `"#" means the member of a list, and there is no list here. It stands only inside a list function, as in all(cage.tubes, .wall >= 2*mm). For a part write its name before the dot; a remark begins with //.`},
	}},
	{"joint.at", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"joint.at == cage.joint['A'].at", []told{
		{CodeFormulaKind, 1, "joint.at == cage.joint['A'].at", "Two places are never the same to the last digit. Write distance(joint.at, cage.joint['A'].at) <= 1*mm."},
	}},
	{"joint.at == 3*mm", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"joint.at > 0", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"joint.at.x > 0", []told{
		{CodeFormulaKind, 10, "x", `"joint.at" is a place; nothing follows it after a dot. Write joint.x.`},
	}},
	{"head['driver'].top.z > 0", []told{
		{CodeFormulaKind, 20, "z", `"head['driver'].top" is a place; nothing follows it after a dot. Write head['driver'].top_z.`},
	}},
	{"head['driver'].top.height > 0", []told{
		{CodeFormulaKind, 20, "height", `"head['driver'].top" is a place; nothing follows it after a dot. Read head['driver'].top_x, head['driver'].top_y and head['driver'].top_z.`},
	}},
	{"joint.at + 3*mm", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"-joint.at", []told{
		{CodeFormulaKind, 2, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"not joint.at", []told{
		{CodeFormulaKind, 5, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"abs(joint.at)", []told{
		{CodeFormulaKind, 5, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"let p = joint.at; distance(p, tube)", []told{
		{CodeFormulaKind, 9, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"a ? joint.at : cage.joint['A'].at", []told{
		{CodeFormulaKind, 5, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
		{CodeFormulaKind, 16, "cage.joint['A'].at", `"cage.joint['A'].at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read cage.joint['A'].x, cage.joint['A'].y and cage.joint['A'].z.`},
	}},
	{"map(cage.joints, .at)", []told{
		{CodeFormulaKind, 18, ".at", `".at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read #.x, #.y and #.z.`},
	}},
	{"any(cage.tubes, .through == 'A')", []told{
		{CodeFormulaKind, 17, ".through", `".through" names joints, which are no value by themselves. Ask #.ends, #.corners or meet(#, …) instead, or recorded(.through) whether they are on the sheet.`},
	}},
	{"any(cage.feet, distance(.joint, tube) > 0)", []told{
		{CodeFormulaKind, 25, ".joint", `".joint" is a text, where distance takes a place or a tube. That is only the label of the joint; write #, which stands for the place.`},
	}},
	{"any(heads, .top.x > 0)", []told{
		{CodeFormulaKind, 17, "x", `".top" is a place; nothing follows it after a dot. Write #.top_x.`},
	}},
	{"above(harness['driver'].straps, joint)", []told{
		{CodeFormulaKind, 7, "harness['driver'].straps", `"harness['driver'].straps" is a list of straps, where above takes a place. Ask its members one by one: any(harness['driver'].straps, …). Of its places name one: .leaves_body or .anchor_at.`},
	}},
	{"len(joint.at)", []told{
		{CodeFormulaKind, 5, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"joint.at in [3*mm]", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"[joint.at]", []told{
		{CodeFormulaKind, 2, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"joint.at contains 'x'", []told{
		{CodeFormulaKind, 1, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"(joint.at ?? x)", []told{
		{CodeFormulaKind, 2, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"fitted(joint.at)", []told{
		{CodeFormulaKind, 8, "joint.at", `"joint.at" is not the name of a part. For a particular write recorded(joint.at).`},
	}},
	{"tube.through == 'A'", []told{
		{CodeFormulaKind, 1, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"tube.through contains 'A'", []told{
		{CodeFormulaKind, 1, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"'A' in tube.through", []told{
		{CodeFormulaKind, 8, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"any(tube.through, # == 'A')", []told{
		{CodeFormulaKind, 5, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"tube.through.x", []told{
		{CodeFormulaKind, 1, "tube.through", `"tube.through" names joints, which are no value by themselves. Ask tube.ends, tube.corners or meet(tube, …) instead, or recorded(tube.through) whether they are on the sheet.`},
	}},
	{"distance > 0", []told{
		{CodeFormulaName, 1, "distance", `"distance" is a function. Write what it is applied to in brackets behind it.`},
	}},
	{"let above = 3*mm; above", []told{
		{CodeFormulaReserved, 5, "above", `"above" is a function. Choose another name.`},
	}},
	{"tube.distance(joint) > 0", []told{
		{CodeFormulaRefused, 1, "tube.distance(joint)", "Nothing is called behind a dot. Write the function first: floor(x), not x.floor()."},
	}},
	{"thick(joint.at)", []told{
		{CodeFormulaKind, 7, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
	{"in_band(table.foot_area, joint.at)", []told{
		{CodeFormulaKind, 26, "joint.at", `"joint.at" is a place, which is no figure by itself. Give it to distance, above or ahead_of, or read joint.x, joint.y and joint.z.`},
	}},
}
