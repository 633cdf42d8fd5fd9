package report

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// apart says that two areas share nothing.
func apart(a, b area) bool {
	return a.right() <= b.x || b.right() <= a.x || a.bottom() <= b.y || b.bottom() <= a.y
}

// within says that an area lies inside another, but for rounding.
func within(a, outer area) bool {
	outer = outer.grown(1e-9)
	return a.x >= outer.x && a.y >= outer.y && a.right() <= outer.right() && a.bottom() <= outer.bottom()
}

// requireRoom holds a sheet to its layout: nothing reaches beyond the frame or into
// anything else, no label lies on another, on the axes or on another view, and no leader
// line runs under another label.
func requireRoom(t *testing.T, d *drawing) []*view {
	t.Helper()
	plan, key, views := d.arrange()
	key.scaleOf(views[3], 99)
	bottom := key.y + float64(len(key.notes))*noteLine
	for _, row := range key.rows {
		bottom += row.high()
	}
	require.LessOrEqual(t, bottom, key.bottom()+1e-9, "the key ends where the isometric view may begin")
	areas := []area{plan.side, plan.front, plan.plan, key.area, plan.notes}
	for i, a := range areas {
		require.True(t, within(a, sheetFrame), "%v", a)
		for _, b := range areas[:i] {
			require.True(t, apart(a, b), "%v and %v", a, b)
		}
	}
	for _, line := range plan.notesLines {
		require.LessOrEqual(t, textWidth(line, smallText), plan.notes.wide)
	}
	for _, v := range views {
		var out svgText
		tubes := drawnTubes(v, d)
		requireApart(t, v, drawLabels(&out, tubes, v, d))
		for _, tube := range tubes {
			for _, p := range tube.line {
				require.True(t, v.field.grown(1e-9).holds(p), "%s: %v", v.title, p)
				require.False(t, slices.ContainsFunc(v.closed, func(a area) bool { return a.holds(p) }), "%s: %v", v.title, p)
			}
		}
	}
	return views
}

func requireApart(t *testing.T, v *view, labels []label) {
	t.Helper()
	for i, l := range labels {
		require.True(t, within(l.box, v.field), "%s: %s", v.title, l.text)
		require.True(t, apart(l.box, v.arrows), "%s: %s on the axes", v.title, l.text)
		for _, closed := range v.closed {
			require.True(t, apart(l.box, closed), "%s: %s on something else", v.title, l.text)
		}
		require.LessOrEqual(t, textWidth(l.text, smallText), l.box.wide)
		for j, other := range labels {
			if i == j {
				continue
			}
			require.True(t, apart(l.box, other.box), "%s: %s on %s", v.title, l.text, other.text)
			for _, p := range l.leader() {
				require.False(t, other.box.grown(-1e-6).holds(p), "%s: leader line of %s ends under %s", v.title, l.text, other.text)
			}
		}
	}
}

// Of a cage of 34 tubes every view numbers every tube, and two of them letter every joint,
// without a label on another.
func TestDrawingLabelsAreApart(t *testing.T) {
	frame := handMadeCage()
	require.GreaterOrEqual(t, len(frame.Tubes), 30)
	d := newDrawing(frame, handMadeVerdicts(frame), judgedHead())
	for _, v := range requireRoom(t, d) {
		require.Zero(t, v.noRoom, v.title)
		var out svgText
		tubes := drawnTubes(v, d)
		var texts []string
		for _, l := range drawLabels(&out, tubes, v, d) {
			texts = append(texts, strings.Split(l.text, ", ")...)
			require.Equal(t, 1, strings.Count(out.String(), ">"+l.text+"<"), l.text)
		}
		for _, tube := range frame.Tubes {
			require.Contains(t, texts, tube.Number, v.title)
		}
		for i, letters := range d.letters {
			told := slices.Contains(texts, letters) || slices.Contains(texts, d.pairs[i])
			require.Equal(t, v.lettered, told, "%s: %s", v.title, letters)
		}
	}
}

// Every label leads to what it names: numbers to the middle line of a tube of theirs.
func TestDrawingLabelsLeadHome(t *testing.T) {
	d := newDrawing(handMadeCage(), nil, handMadeHead())
	_, _, views := d.arrange()
	for _, v := range views {
		var out svgText
		tubes := drawnTubes(v, d)
		for _, l := range drawLabels(&out, tubes, v, d) {
			if !l.framed {
				continue
			}
			home := slices.IndexFunc(tubes, func(tube *drawnTube) bool { return d.numbersOf(tube.members) == l.text })
			require.GreaterOrEqual(t, home, 0)
			along, _ := tubes[home].nearest(l.anchor)
			require.InDelta(t, 0, tubes[home].at(along).distance(l.anchor), 1e-6, "%s: %s", v.title, l.text)
			require.GreaterOrEqual(t, l.leader()[0].distance(l.anchor), nearTube-1e-9)
		}
	}
}

func TestDrawingShortNames(t *testing.T) {
	names, numbered := shortNames([]string{"A left", "A right", "AB left", "roof", "left middle bar", "7"}, 4, "J")
	require.Equal(t, []string{"Al", "Ar", "ABl", "roof", "lmb", "7"}, names)
	require.False(t, numbered)
	names, numbered = shortNames([]string{"door left", "dash low", "J2", "  ", "a b c d e f"}, 4, "J")
	require.Equal(t, []string{"J1", "J2*", "J2", "J4", "abcd"}, names, "no two alike, none empty")
	require.True(t, numbered)
}

// Where a joint and its image are one spot they have one name, if no other joint has it.
func TestDrawingPairedNames(t *testing.T) {
	m := newFrame()
	m.pair("A", 0, 500, 0)
	m.pair("AB", 0, 500, 0)
	m.pair("roof", 0, 500, 0)
	m.joint("roof", 0, 0, 900)
	m.joint("Q left", 0, 500, 0)
	d := newDrawing(m.Frame, nil, handMadeHead())
	require.Equal(t, []string{"A", "AB", "rl", "rr", "Ql"}, d.paired([]int{0, 1, 2, 3, 4, 5, 7}))
	require.Equal(t, []string{"Al", "ABr", "roof"}, d.paired([]int{0, 3, 6}))
}

// Styles differ in the thickness of the edges, in the width of the band and in the
// pattern, each from every other, and their colours stand out from white paper by three to
// one, as WCAG 2.1, success criterion 1.4.11, wants of graphics.
func TestDrawingStylesAreDistinct(t *testing.T) {
	styles := append([]*tubeStyle{plainStyle}, tubeStyles...)
	for i, a := range styles {
		for _, b := range styles[:i] {
			require.NotEqual(t, a.thick, b.thick)
			require.Greater(t, math.Abs(a.wide(1.6)-b.wide(1.6)), 0.15)
			type pattern struct {
				filled, marked, dashed bool
			}
			patternOf := func(s *tubeStyle) pattern { return pattern{s.fill != "#fff", s.mark > 0, s.dash > 1} }
			require.NotEqual(t, patternOf(a), patternOf(b))
			if a != plainStyle && b != plainStyle {
				require.NotEqual(t, a.ink, b.ink)
			}
		}
		if a != plainStyle {
			require.GreaterOrEqual(t, contrast(t, a.ink), 3.0, a.ink)
			require.Contains(t, []string{"#D55E00", "#0072B2", "#CC79A7"}, a.ink, "of the palette of Okabe and Ito")
		}
	}
	require.Greater(t, tubeStyles[0].thick, tubeStyles[2].thick, "a gap is heavier than what is marginal")
	require.Greater(t, tubeStyles[2].thick, tubeStyles[1].thick)
}

// contrast is that of a colour with white, by the relative luminance of WCAG 2.1.
func contrast(t *testing.T, colour string) float64 {
	t.Helper()
	weights, luminance := []float64{0.2126, 0.7152, 0.0722}, 0.0
	for i, weight := range weights {
		value, err := strconv.ParseUint(colour[1+2*i:3+2*i], 16, 8)
		require.NoError(t, err)
		share := float64(value) / 255
		if share <= 0.03928 {
			luminance += weight * share / 12.92
		} else {
			luminance += weight * math.Pow((share+0.055)/1.055, 2.4)
		}
	}
	return 1.05 / (luminance + 0.05)
}

// The key lists what occurs, with its count, and nothing else.
func TestDrawingKeyListsWhatOccurs(t *testing.T) {
	frame := handMadeCage()
	keyOf := func(verdicts map[*vehicle.Part]engine.Verdict) string {
		d := newDrawing(frame, verdicts, judgedHead())
		_, key, _ := d.arrange()
		var lines []string
		for _, row := range key.rows {
			lines = append(lines, strings.Join(row.lines, " "))
		}
		return strings.Join(lines, "\n")
	}
	full := keyOf(handMadeVerdicts(frame))
	for _, line := range []string{"gap: 2 tubes", "marginal: 3 tubes", "not recorded: 5 tubes", "by eye: 2, meets: 22"} {
		require.Contains(t, full, line)
	}
	few := keyOf(judged(frame, map[string]engine.Verdict{"7": engine.Gap}))
	require.Contains(t, few, "gap: 1 tube\n")
	require.Contains(t, few, "tube of no recorded size")
	plain := keyOf(nil)
	for _, word := range []string{"marginal", "not recorded"} {
		require.NotContains(t, few, word+":")
		require.NotContains(t, plain, word+":")
	}
	require.NotContains(t, plain, "gap")
	require.Contains(t, plain, "tube, width to scale")
	require.Contains(t, keyOf(map[*vehicle.Part]engine.Verdict{}), "no clause asks: 34")
}
