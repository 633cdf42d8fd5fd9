package report

import (
	"fmt"
	"slices"
	"strings"

	"gapsheet/engine"
	"gapsheet/vehicle"
)

// Of the key, in millimetres.
const (
	keyLine = 4.7  // from row to row
	keySign = 15.0 // width of the signs beside which the key's words stand
)

// keyRow is a sign with what it means.
type keyRow struct {
	lines []string
	sign  func(out *svgText, at area)
}

func (r *keyRow) high() float64 { return keyLine + float64(len(r.lines)-1)*noteLine }

// key explains the signs that occur on a sheet.
type key struct {
	area
	rows  []keyRow
	notes []string // below the rows
}

// verdictTally is how many drawn tubes have a verdict.
type verdictTally struct {
	style *tubeStyle
	word  string
	count int
}

func (v *verdictTally) words() string {
	return v.word + ": " + engine.Plural(v.count, "tube", "tubes")
}

// counts are the drawn tubes by verdict, the worst first; empty for a plain drawing.
func (d *drawing) counts() []verdictTally {
	if d.verdicts == nil {
		return nil
	}
	byVerdict := map[engine.Verdict]int{}
	unjudged := 0
	for number, course := range d.courses {
		if course == nil {
			continue
		}
		if verdict, judged := d.verdicts[d.frame.Tubes[number].Part]; judged {
			byVerdict[verdict]++
		} else {
			unjudged++
		}
	}
	var all []verdictTally
	for _, verdict := range engine.Verdicts() {
		if byVerdict[verdict] > 0 {
			style := styleOf(map[*vehicle.Part]engine.Verdict{nil: verdict}, nil)
			all = append(all, verdictTally{style, verdict.String(), byVerdict[verdict]})
		}
	}
	if unjudged > 0 {
		all = append(all, verdictTally{plainStyle, "no clause asks", unjudged})
	}
	return all
}

// key lists the signs.
func (d *drawing) key(common scale, within area) *key {
	k := &key{area: within}
	sample := func(style *tubeStyle, width float64) func(*svgText, area) {
		return func(out *svgText, at area) {
			style.band(out, []spot{{at.x, at.middle().y}, {at.x + keySign - 3, at.middle().y}}, width, 0, 0)
		}
	}
	var plain []string
	counts := d.counts()
	for _, count := range counts {
		if count.style != plainStyle {
			k.row(sample(count.style, 1.6), count.words())
			continue
		}
		plain = append(plain, fmt.Sprintf("%s: %d", count.word, count.count))
	}
	if len(counts) == 0 && d.drawn() > 0 {
		plain = []string{"tube, width to scale"}
	}
	if len(plain) > 0 {
		k.row(sample(plainStyle, 1.6), strings.Join(plain, ", "))
	}
	if d.anyUnsized() {
		k.row(sample(plainStyle, 0), "tube of no recorded size")
	}
	d.keyOfLabels(k)
	k.row(func(out *svgText, at area) { drawCone(out, at) }, "first-angle projection")
	k.rows = append(k.rows, keyRow{lines: []string{"", ""}, sign: func(out *svgText, at area) { drawBar(out, at, common) }})
	k.notes = k.wrap("Side, front and plan " + common.String() + " when printed at 100 %. x forward, y left, z up (ISO 8855).")
	if words := d.overAll(); words != "" {
		k.notes = append(k.notes, k.wrap(words)...)
	}
	if len(counts) > 0 {
		k.notes = append(k.notes, k.wrap("Where tubes cover each other, the worst verdict shows.")...)
	}
	for i, words := range []string{"T7: the 7th tube of the cut list.", "J7: the 7th joint of the sheet."} {
		if d.listed[i] {
			k.notes = append(k.notes, k.wrap(words)...)
		}
	}
	k.high = float64(len(k.notes)+3)*noteLine + 2
	for i := range k.rows {
		k.high += k.rows[i].high()
	}
	return k
}

// anyUnsized says whether a tube is drawn as its course only, its size not being recorded.
func (d *drawing) anyUnsized() bool {
	for number, course := range d.courses {
		if course != nil && d.frame.Tubes[number].Outside == 0 && d.styleOf(number) == plainStyle {
			return true
		}
	}
	return false
}

func (d *drawing) keyOfLabels(k *key) {
	if d.drawn() > 0 {
		k.row(func(out *svgText, at area) {
			l := newLabel("7", true)
			l.box = areaAround(spot{at.x + 2, at.middle().y}, l.box.wide, l.box.high)
			l.anchor = spot{at.x + 10, at.middle().y}
			l.draw(out)
		}, "tube, as in the cut list")
	}
	if d.flagged {
		k.row(func(out *svgText, at area) {
			l := newLabel("7"+tubeFlag, true)
			l.box = areaAround(spot{at.x + 4, at.middle().y}, l.box.wide, l.box.high)
			l.anchor = spot{at.x + 11, at.middle().y}
			l.draw(out)
		}, "tube that cannot be built as written, see the cut list")
	}
	if len(d.frame.Joints) > 0 {
		k.row(func(out *svgText, at area) {
			out.put(`<circle cx="%v" cy="%v" r="0.4" fill="#000"/>`, mm(at.x+10), mm(at.middle().y))
			out.words(spot{at.x + 2, at.middle().y + 1}, smallText, "middle", "Al")
		}, d.jointWords())
	}
	if len(d.frame.Feet) > 0 {
		k.row(func(out *svgText, at area) { drawFoot(out, spot{at.x + 10, at.middle().y}) }, "foot")
	}
	if d.hasHelmets() {
		k.row(func(out *svgText, at area) { drawHelmet(out, spot{at.x + 10, at.middle().y}, 1.8) }, "helmet, as a ball")
	}
}

// jointWords says how joints are named.
func (d *drawing) jointWords() string {
	words := "joint, first letters of its name"
	if slices.ContainsFunc(d.pairs, func(pair string) bool { return pair != "" }) {
		words += " (A: Al and Ar)"
	}
	return words + "; of a bend, where its straights meet"
}

func (k *key) row(sign func(*svgText, area), text string) {
	k.rows = append(k.rows, keyRow{wrapped(text, k.wide-keySign, smallText), sign})
}

func (k *key) wrap(text string) []string { return wrapped(text, k.wide, smallText) }

// scaleOf adds what is known only once the isometric view has its place and labels theirs.
func (k *key) scaleOf(v *view, noRoom int) {
	k.notes = append(k.notes, k.wrap("Isometric "+v.scale.String()+", lengths along x, y and z to scale.")...)
	if noRoom > 0 {
		k.notes = append(k.notes, k.wrap(engine.Plural(noRoom, "label", "labels")+" left out for want of room.")...)
	}
}

func (k *key) draw(out *svgText) {
	y := k.y
	for _, row := range k.rows {
		at := area{k.x, y, k.wide, keyLine}
		row.sign(out, at)
		for i, line := range row.lines {
			out.words(spot{k.x + keySign, at.middle().y + 1 + float64(i)*noteLine}, smallText, "start", line)
		}
		y += row.high()
	}
	for i, line := range k.notes {
		out.words(spot{k.x, y + float64(i+1)*noteLine}, smallText, "start", line)
	}
}

// drawCone draws the sign of first-angle projection, a truncated cone from the side and,
// on its right, from its small end (ISO 5456-2, from memory).
func drawCone(out *svgText, at area) {
	y := at.middle().y
	out.put(`<path d="%sZ" stroke="#000" stroke-width="0.25"/>`, path([]spot{{at.x + 1, y - 0.9}, {at.x + 6, y - 1.8}, {at.x + 6, y + 1.8}, {at.x + 1, y + 0.9}}))
	for _, radius := range []float64{0.9, 1.8} {
		out.put(`<circle cx="%v" cy="%v" r="%v" stroke="#000" stroke-width="0.25"/>`, mm(at.x+10), mm(y), mm(radius))
	}
	out.put(`<path d="%s" stroke="#000" stroke-width="0.13" stroke-dasharray="2 0.5 0.5 0.5"/>`, path([]spot{{at.x, y}, {at.x + 13, y}}))
}

// longestBar bounds the scale bar on paper, in millimetres.
const longestBar = 45

// barAreas are the black and white parts of the scale bar, each half of its length.
func barAreas(at area, common scale) [2]area {
	half := common.barLength(longestBar) / float64(common) / 2
	return [2]area{{at.x + 1, at.y + 1.2, half, 1.4}, {at.x + 1 + half, at.y + 1.2, half, 1.4}}
}

// drawBar draws the scale bar with its lengths.
func drawBar(out *svgText, at area, common scale) {
	length := common.barLength(longestBar)
	parts := barAreas(at, common)
	for i, part := range parts {
		out.put(`<rect x="%v" y="%v" width="%v" height="%v" fill="%s" stroke="#000" stroke-width="0.2"/>`,
			mm(part.x), mm(part.y), mm(part.wide), mm(part.high), []string{"#000", "#fff"}[i])
	}
	below := parts[0].bottom() + 3
	out.words(spot{parts[0].x, below}, smallText, "middle", "0")
	out.words(spot{parts[1].x, below}, smallText, "middle", mm(length/2).String())
	out.words(spot{parts[1].right(), below}, smallText, "middle", mm(length).String())
	out.words(spot{parts[1].right() + textWidth(mm(length).String(), smallText)*0.75, below}, smallText, "start", "mm")
}
