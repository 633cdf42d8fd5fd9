package vehicle

import (
	"fmt"
	"math"
	"strings"
	"testing/fstest"

	"pgregory.net/rapid"

	"gapsheet/vehicle/cage"
)

// drawnCage writes the sheet of a small cage with two hoops, backstays, door bars and a
// diagonal that ends on a hoop's leg, all places, tolerances and radii drawn. The left side
// is written, the right side is its image.
func drawnCage(rt *rapid.T) string {
	between := func(low, high float64) float64 { return rapid.Float64Range(low, high).Draw(rt, "figure") }
	tolerance := func() string {
		if rapid.IntRange(0, 3).Draw(rt, "per axis") == 0 {
			return fmt.Sprintf(`["%.2f mm", "%.2f mm", "%.2f mm"]`, between(0.1, 4), between(0.1, 4), between(0.1, 4))
		}
		return fmt.Sprintf(`"%.2f mm"`, between(0.1, 4))
	}
	var text strings.Builder
	joint := func(name string, at cage.Vector, more string) {
		fmt.Fprintf(&text, "joint %q {\nat = [\"%.3f mm\", \"%.3f mm\", \"%.3f mm\"]\ntolerance = %s\n%s}\n", name, at.X*1000, at.Y*1000, at.Z*1000, tolerance(), more)
	}
	near := func(x, y, z float64) cage.Vector {
		return cage.Vector{X: x + between(-0.05, 0.05), Y: y + between(-0.05, 0.05), Z: z + between(-0.05, 0.05)}
	}
	image := func(name string) string {
		return fmt.Sprintf("mirrored_as = %q\n", strings.Replace(name, "left", "right", 1))
	}
	foot, roof, front := near(0, 0.6, 0), near(-0.05, 0.53, 1.15), near(1.2, 0.6, 0.02)
	leg := foot.Along(roof, between(0.3, 0.6))
	knee := front.Along(leg, between(0.35, 0.6)).Plus(cage.Vector{Y: between(0, 0.004), Z: between(-0.004, 0.01)})
	for _, j := range []struct {
		name string
		at   cage.Vector
	}{{"a left", foot}, {"b left", roof}, {"c left", near(-1.1, 0.5, 0.3)}, {"d left", leg}, {"e left", front}, {"f left", near(0.75, 0.5, 1.08)}, {"g left", knee}} {
		joint(j.name, j.at, image(j.name))
	}
	joint("m", cage.Vector{X: leg.X + between(-0.003, 0.003), Z: leg.Z + between(-0.003, 0.003)}, "")
	if rapid.Bool().Draw(rt, "own reading") {
		fmt.Fprintf(&text, "joint \"c right\" { z = \"%.1f mm ± 2 mm\" }\n", 300+between(-5, 5))
	}
	fmt.Fprintf(&text, "car \"Tessel 16\" {}\ntube_stock \"A\" {\nordered = \"45 x 2.5 mm\"\noutside = \"%.2f mm ± %.2f mm\"\nwall = \"2.5 mm ± %.3f mm\"\nmaterial = \"T45\"\nyield = \"500 MPa\"\n}\n", 45+between(-0.1, 0.1), between(0.01, 0.2), between(0.01, 0.1))
	text.WriteString("tube_stock \"B\" {\nordered = \"38 x 2 mm\"\nmaterial = \"25CrMo4\"\nyield = \"460 MPa\"\nelasticity = \"205 GPa\"\n}\n")
	tube := func(name, stock, image string, radius float64, through ...string) {
		fmt.Fprintf(&text, "tube %q {\nstock = %q\nthrough = [\"%s\"]\n", name, stock, strings.Join(through, `", "`))
		if radius > 0 {
			fmt.Fprintf(&text, "bend_radius = \"%.1f mm ± %.2f mm\"\n", 1000*radius, between(0, 2))
		}
		if image != "" {
			fmt.Fprintf(&text, "mirrored_as = %q\n", image)
		}
		text.WriteString("}\n")
	}
	tube("1", "A", "", between(0.12, 0.2), "a left", "b left", "b right", "a right")
	tube("2", "A", "3", 0, "b left", "c left")
	tube("4", "B", "5", between(0.1, 0.16), "e left", "f left", "b left")
	tube("6", "B", "", 0, "d left", "b right")
	tube("7", "B", "", 0, "f left", "f right")
	tube("8", "B", "9", between(0.1, 0.2), "e left", "g left", "d left")
	radius := 0.0 // not recorded, of a tube that is straight or nearly so
	if rapid.Bool().Draw(rt, "radius") {
		radius = 0.15
	}
	tube("10", "A", "", radius, "d left", "m", "d right")
	text.WriteString("foot \"1\" {\njoint = \"a left\"\nmirrored_as = \"2\"\ncontact_length = \"120 mm ± 1 mm\"\ncontact_width = \"100 mm\"\n}\nfoot \"3\" {\njoint = \"c left\"\nmirrored_as = \"4\"\n}\n")
	text.WriteString("foot \"5\" {\njoint = \"e left\"\nmirrored_as = \"6\"\n}\npadding \"1\" {\ntube = \"1\"\nbetween = [\"d left\", \"b left\"]\n}\ndoor_aperture \"left\" { corners = [\"e left\", \"f left\", \"b left\", \"a left\"] }\n")
	fmt.Fprintf(&text, "head \"driver\" {\ntop = [\"%.0f mm\", \"%.0f mm\", \"%.0f mm\"]\ntolerance = \"%.1f mm\"\nhelmet_radius = \"140 mm ± %.1f mm\"\n}\n", between(-250, 300), between(250, 400), between(900, 1080), between(1, 10), between(0, 3))
	text.WriteString("harness \"driver\" {\n")
	for side, y := range []float64{1, -1} {
		fmt.Fprintf(&text, "strap \"%s shoulder\" {\nleaves_body = [\"-50 mm\", \"%.1f mm ± 4 mm\", \"%.1f mm ± 5 mm\"]\nanchor_at = [\"-350 mm ± 3 mm\", \"%.1f mm ± 3 mm\", \"%.1f mm ± 3 mm\"]\n}\n",
			[]string{"left", "right"}[side], 360+y*between(60, 90), between(550, 620), 360+y*between(30, 90), between(450, 600))
	}
	text.WriteString("}\n")
	return text.String()
}

// readDrawn reads a drawn sheet.
func readDrawn(rt *rapid.T, text string) *Sheet {
	sheet, faults := Load(fstest.MapFS{"a.hcl": {Data: []byte(text)}}, "a.hcl", "a.hcl", BuiltIn(), Options{})
	if len(faults) > 0 {
		rt.Fatalf("%v\n%s", faults, text)
	}
	return sheet
}

// exactCar is one car that agrees with a sheet: a figure for everything that something
// follows from. What follows for it is worked out here once more, from places without
// ranges, by elementary geometry.
type exactCar struct {
	sheet  *Sheet
	is     map[Base]float64
	liesOn map[[2]*Part]int // see liesOnAsRead
}

// figure is a figure of a part, as measured, else as ordered.
func (e *exactCar) figure(part *Part, names ...string) float64 {
	for _, name := range names {
		if v, holder := part.Value(part.Type.Particular(name)); v.State == Stated {
			return e.is[Base{holder, holder.Type.Particular(name)}]
		}
	}
	panic("nothing is said of " + names[0] + " of " + part.Name())
}

func (e *exactCar) place(part *Part, names ...string) cage.Vector {
	return cage.Vector{X: e.figure(part, names[0]), Y: e.figure(part, names[1]), Z: e.figure(part, names[2])}
}

// joint is where a joint is: an image on the other side of the car where it says nothing.
func (e *exactCar) joint(part *Part) cage.Vector {
	y := part.Type.Particular("y")
	if part.Original == nil || part.Values[y.Index].State == Stated {
		return e.place(part, "x", "y", "z")
	}
	return cage.Vector{X: e.figure(part, "x"), Y: -e.figure(part.Original, "y"), Z: e.figure(part, "z")}
}

func (e *exactCar) course(tube *Part) cage.Course {
	c := cage.Course{}
	for _, joint := range tube.stated("through").Several {
		c.Points = append(c.Points, e.joint(joint))
	}
	if len(c.Points) > 2 {
		radius, holder := tube.Type.Particular("bend_radius"), tube
		if tube.Original != nil {
			holder = tube.Original
		}
		c.Radius = 0.15 // where it makes no difference
		if is, ok := e.is[Base{holder, radius}]; ok {
			c.Radius = is
		}
	}
	return c
}

// perMetre is the mass of a metre of a tube of steel.
func (e *exactCar) perMetre(tube *Part) float64 {
	outside, wall := e.figure(tube, "outside", "ordered_outside"), e.figure(tube, "wall", "ordered_wall")
	return math.Pi * wall * (outside - wall) * 7850
}
