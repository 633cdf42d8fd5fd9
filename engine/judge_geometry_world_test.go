package engine

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing/fstest"

	"github.com/stretchr/testify/require"

	"gapsheet/vehicle"
	"gapsheet/vehicle/cage"
	"gapsheet/vehicle/quantity"
)

// A frameWorld is a small cage with tolerances, drawn by chance: joints A to F, the images
// of C and D on the other side, and tubes between them.
type frameWorld struct {
	at        map[string]cage.Vector // of joints that are no images, metres
	tolerance map[string]float64     // of every coordinate of a joint, metres
	radius    float64                // of the bends of tube 4, metres
	slack     float64                // of that radius
	top       cage.Vector            // of the driver's helmet
	topSlack  float64
	helmet    float64 // radius, metres
	outside   float64 // of every tube, metres
	sizeSlack float64 // of the outside diameters and the helmet's radius
}

// frameTubes are the tubes of every frameWorld by their joints.
var frameTubes = map[string][]string{
	"1": {"A", "B"}, "2": {"B", "C"}, "3": {"C", "D"}, "4": {"A", "E", "F", "B"}, "5": {"C'", "D'"}, "6": {"C", "C'"},
}

// frameNames are the tubes in their order.
var frameNames = []string{"1", "2", "3", "4", "5", "6"}

// mirrored are the images and their originals.
var mirrorImages = map[string]string{"C'": "C", "D'": "D"}

func drawFrame(r *rand.Rand) *frameWorld {
	w := &frameWorld{at: map[string]cage.Vector{}, tolerance: map[string]float64{}}
	near := func(x, y, z float64) cage.Vector {
		f := func(v float64) float64 { return math.Round((v+0.2*r.Float64()-0.1)*1e4) / 1e4 }
		return cage.Vector{X: f(x), Y: f(y), Z: f(z)}
	}
	w.at["A"], w.at["B"] = near(0, 0.6, 0.1), near(-0.3, 0.5, 1.2)
	w.at["C"], w.at["D"] = near(-1, 0.4, 0.9), near(-1.6, 0.5, 0.2)
	w.at["E"], w.at["F"] = near(0.1, 0.6, 0.6), near(0, 0.5, 1.1)
	for name := range w.at {
		w.tolerance[name] = float64(r.IntN(6)) / 1000
	}
	w.radius, w.slack = 0.08+0.04*r.Float64(), float64(r.IntN(3))/1000
	w.radius = math.Round(w.radius*1e4) / 1e4
	w.top, w.topSlack, w.helmet = near(-0.5, 0.35, 0.95), float64(r.IntN(10))/1000, 0.14
	w.outside, w.sizeSlack = 0.04, float64(r.IntN(3))/2000
	return w
}

// wider is the world with every tolerance so many times as wide.
func (w *frameWorld) wider(by float64) *frameWorld {
	out := *w
	out.tolerance = map[string]float64{}
	for name, t := range w.tolerance {
		out.tolerance[name] = t*by + 0.001
	}
	out.slack, out.topSlack, out.sizeSlack = w.slack*by, w.topSlack*by, w.sizeSlack*by
	return &out
}

// exactly is one exact world within the tolerances: with corner, at their ends.
func (w *frameWorld) exactly(r *rand.Rand, corner bool) *frameWorld {
	out := &frameWorld{at: map[string]cage.Vector{}, tolerance: map[string]float64{}}
	shift := func(v, by float64) float64 {
		share := 2*r.Float64() - 1
		if corner {
			share = math.Copysign(1, share)
		}
		return v + share*by
	}
	vector := func(v cage.Vector, by float64) cage.Vector {
		return cage.Vector{X: shift(v.X, by), Y: shift(v.Y, by), Z: shift(v.Z, by)}
	}
	for _, name := range []string{"A", "B", "C", "D", "E", "F"} {
		out.at[name] = vector(w.at[name], w.tolerance[name])
	}
	out.radius = shift(w.radius, w.slack)
	out.outside, out.helmet = shift(w.outside, w.sizeSlack), shift(w.helmet, w.sizeSlack)
	out.top = vector(w.top, w.topSlack)
	return out
}

// text is the world as a build sheet.
func (w *frameWorld) text() string {
	var b strings.Builder
	figure := func(v, slack float64) string {
		if slack == 0 {
			return fmt.Sprintf("%.12f mm", v*1000)
		}
		return fmt.Sprintf("%.12f mm +/- %.12f mm", v*1000, slack*1000)
	}
	point := func(v cage.Vector, slack float64) string {
		return fmt.Sprintf("[%q, %q, %q]", figure(v.X, slack), figure(v.Y, slack), figure(v.Z, slack))
	}
	b.WriteString("car \"drawn\" {\n}\n")
	for _, name := range []string{"A", "B", "C", "D", "E", "F"} {
		fmt.Fprintf(&b, "joint %q {\n  at = %s\n", name, point(w.at[name], w.tolerance[name]))
		for image, of := range mirrorImages {
			if of == name {
				fmt.Fprintf(&b, "  mirrored_as = %q\n", image)
			}
		}
		b.WriteString("}\n")
	}
	for _, name := range frameNames {
		joints := frameTubes[name]
		fmt.Fprintf(&b, "tube %q {\n  through = [%s]\n  outside = %q\n  wall = \"2 mm\"\n", name, `"`+strings.Join(joints, `", "`)+`"`, figure(w.outside, w.sizeSlack))
		if len(joints) > 2 {
			fmt.Fprintf(&b, "  bend_radius = %q\n", figure(w.radius, w.slack))
		}
		b.WriteString("}\n")
	}
	fmt.Fprintf(&b, "head \"driver\" {\n  top = %s\n  helmet_radius = %q\n}\n", point(w.top, w.topSlack), figure(w.helmet, w.sizeSlack))
	return b.String()
}

// sheet reads the world as a build sheet.
func (w *frameWorld) sheet(t require.TestingT) *vehicle.Sheet {
	files := fstest.MapFS{"drawn.hcl": {Data: []byte(w.text())}}
	sheet, faults := vehicle.Load(files, "drawn.hcl", "drawn.hcl", vehicle.BuiltIn(), vehicle.Options{})
	require.Empty(t, faults, w.text())
	return sheet
}

// joint is where a joint is, an image's mirrored.
func (w *frameWorld) joint(name string) cage.Vector {
	if of, ok := mirrorImages[name]; ok {
		v := w.at[of]
		return cage.Vector{X: v.X, Y: -v.Y, Z: v.Z}
	}
	return w.at[name]
}

func (w *frameWorld) way(from, to string) cage.Vector {
	return minus(w.joint(to), w.joint(from))
}

func minus(a, b cage.Vector) cage.Vector {
	return cage.Vector{X: a.X - b.X, Y: a.Y - b.Y, Z: a.Z - b.Z}
}

func norm(v cage.Vector) float64 { return math.Sqrt(v.X*v.X + v.Y*v.Y + v.Z*v.Z) }

func dot(a, b cage.Vector) float64 { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }

// angleOf is the angle between two vectors by the law of cosines (elementary geometry): the
// program's own way is another.
func angleOf(a, b cage.Vector) float64 {
	return math.Acos(max(-1, min(1, dot(a, b)/(norm(a)*norm(b)))))
}

// A frameFigure is an expression on a frameWorld with its closed form.
type frameFigure struct {
	formula string
	unit    string
	value   func(w *frameWorld) float64 // SI
}

// frameFigures are figures that follow from joints: elementary geometry all of them.
var frameFigures = []frameFigure{
	{"cage.tube['1'].angle_to_vertical", "deg", func(w *frameWorld) float64 {
		v := w.way("A", "B")
		return math.Acos(math.Abs(v.Z) / norm(v))
	}},
	{"cage.tube['2'].angle_to_horizontal", "deg", func(w *frameWorld) float64 {
		v := w.way("B", "C")
		return math.Asin(math.Abs(v.Z) / norm(v))
	}},
	{"cage.tube['3'].side_angle_to_vertical", "deg", func(w *frameWorld) float64 {
		v := w.way("C", "D")
		return math.Atan2(math.Abs(v.X), math.Abs(v.Z))
	}},
	{"cage.tube['5'].front_angle_to_horizontal", "deg", func(w *frameWorld) float64 {
		v := w.way("C'", "D'")
		return math.Atan2(math.Abs(v.Z), math.Abs(v.Y))
	}},
	{"cage.tube['3'].node_length", "mm", func(w *frameWorld) float64 { return norm(w.way("C", "D")) }},
	{"cage.tube['6'].node_length", "mm", func(w *frameWorld) float64 { return 2 * math.Abs(w.at["C"].Y) }},
	{"cage.tube['4'].greatest_bend_angle", "deg", func(w *frameWorld) float64 {
		return max(angleOf(w.way("A", "E"), w.way("E", "F")), angleOf(w.way("E", "F"), w.way("F", "B")))
	}},
	{"cage.tube['4'].developed_length", "mm", func(w *frameWorld) float64 {
		length := norm(w.way("A", "E")) + norm(w.way("E", "F")) + norm(w.way("F", "B"))
		for _, turn := range []float64{angleOf(w.way("A", "E"), w.way("E", "F")), angleOf(w.way("E", "F"), w.way("F", "B"))} {
			length -= w.radius * (2*math.Tan(turn/2) - turn)
		}
		return length
	}},
	{"distance(cage.joint['A'], cage.joint['D'])", "mm", func(w *frameWorld) float64 { return norm(w.way("A", "D")) }},
	{"distance(cage.joint['D'], cage.tube['1'])", "mm", func(w *frameWorld) float64 { return w.toRun("D", "A", "B") }},
	{"clearance(cage.joint['D'], cage.tube['1'])", "mm", func(w *frameWorld) float64 { return w.toRun("D", "A", "B") - w.outside/2 }},
	{"clearance(cage.tube['3'], cage.tube['5'])", "mm", func(w *frameWorld) float64 {
		return 2*min(w.at["C"].Y, w.at["D"].Y) - w.outside // images of each other
	}},
	{"clearance(cage.tube['1'], head['driver'])", "mm", func(w *frameWorld) float64 {
		return nearRun(w.middle(), w.joint("A"), w.joint("B")) - w.outside/2 - w.helmet
	}},
	{"clearance(head['driver'], cage.joint['C'])", "mm", func(w *frameWorld) float64 {
		return norm(minus(w.middle(), w.joint("C"))) - w.helmet
	}},
	{"distance(head['driver'], cage.joint['C'])", "mm", func(w *frameWorld) float64 { return norm(minus(w.top, w.joint("C"))) }},
	{"above(cage.joint['B'], cage.joint['C'])", "mm", func(w *frameWorld) float64 { return w.at["B"].Z - w.at["C"].Z }},
	{"ahead_of(cage.joint['C'], cage.joint['D\\'']) ", "mm", func(w *frameWorld) float64 { return w.at["C"].X - w.at["D"].X }},
	{"angle_between(cage.tube['2'], cage.tube['3'])", "deg", func(w *frameWorld) float64 {
		return angleOf(w.way("C", "B"), w.way("C", "D"))
	}},
	{"angle_between(cage.tube['1'], cage.tube['3'])", "deg", func(w *frameWorld) float64 {
		angle := angleOf(w.way("A", "B"), w.way("C", "D"))
		return min(angle, math.Pi-angle)
	}},
	{"cage.joint['C'].least_angle", "deg", func(w *frameWorld) float64 {
		b, d, c := w.way("C", "B"), w.way("C", "D"), w.way("C", "C'")
		return min(angleOf(b, d), angleOf(b, c), angleOf(d, c))
	}},
}

// toRun is the distance of a joint from the straight between two others.
func (w *frameWorld) toRun(p, from, to string) float64 {
	return nearRun(w.joint(p), w.joint(from), w.joint(to))
}

// middle is the middle of the helmet.
func (w *frameWorld) middle() cage.Vector {
	return cage.Vector{X: w.top.X, Y: w.top.Y, Z: w.top.Z - w.helmet}
}

// nearRun is the distance of a point from a straight.
func nearRun(p, from, to cage.Vector) float64 {
	a, b := minus(p, from), minus(to, from)
	share := max(0, min(1, dot(a, b)/dot(b, b)))
	return norm(cage.Vector{X: a.X - share*b.X, Y: a.Y - share*b.Y, Z: a.Z - share*b.Z})
}

// inUnit is an SI figure in the unit of an expression.
func (f *frameFigure) inUnit(v float64) float64 {
	u, err := quantity.FindUnit(f.unit)
	if err != nil {
		panic(err)
	}
	return u.FromSI(v)
}
