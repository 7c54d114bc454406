package pictures

import (
	"math"
)

// rows is a drawing of values below one another on a common number line.
type rows struct {
	name, title string
	unit        string
	groups      []group
	// linked joins each row to the next: values along a way.
	linked bool
	// fromZero begins the number line at nothing: losses.
	fromZero bool
	notes    []string
}

// group is some rows that share their limits.
type group struct {
	title  string
	rows   []row
	limits []row // drawn as a tick through the group
}

type row struct {
	label string
	value value
}

// Columns of the drawing.
const (
	mostLabel  = 230
	mostNumber = 200
)

func (r rows) draw() *Drawing {
	c := &canvas{}
	labels, numbers := 0.0, 0.0
	var all []value
	for _, g := range r.groups {
		for _, row := range g.rows {
			labels = max(labels, textWidth(row.label))
			for _, line := range row.value.lines(r.unit) {
				numbers = max(numbers, textWidth(line))
			}
			all = append(all, row.value)
		}
		for _, l := range g.limits {
			all = append(all, l.value)
		}
	}
	if r.fromZero {
		all = append(all, value{kind: all[0].kind})
	}
	left := edge + min(labels, mostLabel) + 14
	right := width - edge - min(numbers, mostNumber) - 14
	x := newScale(r.unit, 6, left, right, all...)
	description := []string{r.title}

	lines := wrap(r.title, width-2*edge)
	y := 0.0
	for _, line := range lines {
		y += 22
		c.text(edge, y, start, bold, line)
	}
	top := y + 10
	y = top
	var body canvas
	for _, g := range r.groups {
		y = g.draw(&body, x, y, r)
		description = append(description, g.words(r.unit)...)
	}
	bottom := y + 8
	numbersAt, texts := x.ticks()
	for i, n := range numbersAt {
		c.line(x.place(n), top, x.place(n), bottom, faint)
		c.text(x.place(n), bottom+16, middle, tick, texts[i])
	}
	c.line(left, bottom, right, bottom, plain)
	last := textWidth(texts[len(texts)-1]) / 2
	c.text(right+max(14, last+8), bottom+16, start, tick, x.name())
	c.shapes = append(c.shapes, body.shapes...)
	y = bottom + 38
	for _, note := range r.notes {
		for _, line := range wrap(note, width-2*edge) {
			c.text(edge, y, start, tick, line)
			y += 17
		}
		description = append(description, note)
	}
	return c.document(r.name, r.title, y, description)
}

// draw draws a group from y downwards and returns where it ends.
func (g group) draw(c *canvas, x scale, y float64, r rows) float64 {
	if g.title != "" {
		y += rowHeight
		c.text(edge, y-8, start, bold, fit(g.title, x.from-edge-14))
	}
	// The names of limits stand above the rows, each in a line of its own where
	// there are several.
	at := y - 8
	if g.title == "" && len(g.limits) > 0 {
		y += rowHeight
		at = y - 8
	}
	for i, l := range g.limits {
		if i > 0 {
			y += rowHeight - 8
			at = y - 8
		}
		g.limit(c, x, l, at, y+float64(len(g.rows)*rowHeight)+float64((len(g.limits)-1-i)*(rowHeight-8)), r.unit)
	}
	for i, row := range g.rows {
		middleOf := y + rowHeight/2
		if r.linked && i+1 < len(g.rows) {
			next := g.rows[i+1].value
			c.polygon(link, x.at(row.value.low), middleOf, x.at(row.value.high), middleOf,
				x.at(next.high), middleOf+rowHeight, x.at(next.low), middleOf+rowHeight)
		}
		c.text(x.from-14, middleOf+4, end, plain, fit(row.label, x.from-edge-14))
		band(c, x, row.value, middleOf)
		lines := row.value.lines(r.unit)
		for k, line := range lines {
			c.text(x.to+14, middleOf+4+float64(k)*15-float64(len(lines)-1)*7, start, number, fit(line, width-edge-x.to-14))
		}
		y += rowHeight
	}
	return y
}

// limit draws a tick through the rows of a group, its name above.
func (g group) limit(c *canvas, x scale, l row, above, bottom float64, unit string) {
	text := l.label + " " + l.value.in(unit)
	from, to := x.at(l.value.low), x.at(l.value.high)
	half := textWidth(text) / 2
	at := min(max((from+to)/2, edge+half), width-edge-half)
	c.text(at, above, middle, number, text)
	if to-from > 2 {
		c.rect(from, above+4, to-from, bottom-above-4, shade)
		c.line(from, above+4, from, bottom, dashed)
	}
	c.line(to, above+4, to, bottom, dashed)
}

// band draws a range across its row: a bar with two ends, or a dot where it is
// too narrow to be one.
func band(c *canvas, x scale, v value, y float64) {
	a, b := x.at(v.low), x.at(v.high)
	a, b = math.Min(a, b), math.Max(a, b)
	if b-a < 3 {
		c.add(Circle, plain, (a+b)/2, y, 4)
		return
	}
	c.rect(a, y-4, b-a, 8, solid)
	c.line(a, y-8, a, y+8, heavy)
	c.line(b, y-8, b, y+8, heavy)
}

// words says what a group shows.
func (g group) words(unit string) []string {
	lead := ""
	if g.title != "" {
		lead = g.title + ", "
	}
	var list []string
	for _, r := range g.rows {
		list = append(list, lead+r.label+": "+r.value.in(unit))
	}
	for _, l := range g.limits {
		list = append(list, lead+l.label+": "+l.value.in(unit))
	}
	return list
}
