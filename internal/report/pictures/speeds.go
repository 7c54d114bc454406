package pictures

import (
	"slices"

	"trialfit/internal/report"
)

// speeds plots the road speed over the engine speed in every gear, up to
// governed speed, with the band in which the engine burns least.
func speeds(f facts) Picture {
	p := Picture{Name: "road-speeds", Title: "Road speed by engine speed in every gear"}
	governed, lacks := f.leaf("engine.governed_speed")
	p.Missing = lacks
	gears := f.items("transmission.gears")
	if len(gears) == 0 {
		p.Missing = append(p.Missing, "transmission.gears")
	}
	plot := speedPlot{name: p.Name, title: f.heading(p.Title), governed: governed}
	for _, id := range gears {
		v, lacks := f.figure("gearing.gear_speed", id)
		p.Missing = distinct(p.Missing, lacks)
		plot.gears = append(plot.gears, row{report.Plain(id), v})
	}
	if p.Missing != nil {
		return p
	}
	low, lacksLow := f.leaf("engine.economy_low")
	high, lacksHigh := f.leaf("engine.economy_high")
	if lacks := distinct(lacksLow, lacksHigh); lacks == nil {
		plot.economy = &[2]value{low, high}
	} else {
		plot.notes = append(plot.notes, lacking("The economy band", lacks))
	}
	p.Drawing = plot.draw()
	return p
}

type speedPlot struct {
	name, title string
	governed    value
	gears       []row
	economy     *[2]value // from, to
	notes       []string
}

func (p speedPlot) draw() *Drawing {
	const plotHeight = 300
	c := &canvas{}
	unit := p.gears[0].value.unit
	labels := 0.0
	speeds := []value{{kind: p.gears[0].value.kind}} // from standstill
	for _, g := range p.gears {
		labels = max(labels, textWidth(g.label+"  "+g.value.in(unit)))
		speeds = append(speeds, g.value)
	}
	labels = min(labels, 280)
	left, right := edge+44.0, width-edge-labels-30
	engine := value{kind: p.governed.kind, unit: p.governed.unit}
	x := newScale(p.governed.unit, 6, left, right, engine, p.governed)

	y0 := 0.0
	for _, line := range wrap(p.title, width-2*edge) {
		y0 += 22
		c.text(edge, y0, start, bold, line)
	}
	description := []string{p.title}
	note := y0 + 22
	if p.economy != nil {
		note += 18
	}
	top := note + 12
	bottom := top + plotHeight
	y := newScale(unit, 6, bottom, top, speeds...)

	numbers, texts := x.ticks()
	for i, n := range numbers {
		c.line(x.place(n), top, x.place(n), bottom, faint)
		c.text(x.place(n), bottom+16, middle, tick, texts[i])
	}
	c.text((left+right)/2, bottom+34, middle, tick, "engine speed in "+x.name())
	numbers, texts = y.ticks()
	for i, n := range numbers {
		c.line(left, y.place(n), right, y.place(n), faint)
		c.text(left-6, y.place(n)+4, end, tick, texts[i])
	}
	c.text(edge, top-8, start, tick, y.name())

	if p.economy != nil {
		from, to := p.economy[0], p.economy[1]
		words := "economy band from " + from.in(p.governed.unit) + " to " + to.in(p.governed.unit)
		description = append(description, words)
		p.span(c, x, from.low, to.high, top, bottom)
		p.span(c, x, from.high, to.low, top, bottom)
		p.caption(c, x.at(from.low), y0+22, words, x.at(to.high))
	}
	words := "governed speed " + p.governed.in(p.governed.unit)
	description = append(description, words)
	c.line(x.at(p.governed.low), top-6, x.at(p.governed.low), bottom, dashed)
	c.line(x.at(p.governed.high), top-6, x.at(p.governed.high), bottom, dashed)
	c.text(min(x.at(p.governed.high), width-edge), note, end, number, words)

	c.line(left, bottom, right, bottom, plain)
	c.line(left, top, left, bottom, plain)
	at := p.places(y)
	for i, g := range p.gears {
		tipLow, tipHigh := y.at(g.value.low), y.at(g.value.high)
		c.polygon(gear, x.place(0), y.place(0), x.at(p.governed.low), tipLow, x.at(p.governed.high), tipHigh)
		c.line(x.at(p.governed.high), (tipLow+tipHigh)/2, right+22, at[i], faint)
		speed := "  " + g.value.in(unit)
		c.text(right+26, at[i]+4, start, number, fit(g.label, labels-textWidth(speed))+speed)
		description = append(description, "gear "+g.label+" at governed speed: "+g.value.in(unit))
	}
	foot := bottom + 56
	for _, note := range p.notes {
		for _, line := range wrap(note, width-2*edge) {
			c.text(edge, foot, start, tick, line)
			foot += 17
		}
		description = append(description, note)
	}
	return c.document(p.name, p.title, foot-10, description)
}

func (p speedPlot) span(c *canvas, x scale, from, to, top, bottom float64) {
	if to > from {
		c.rect(x.at(from), top, x.at(to)-x.at(from), bottom-top, zone)
	}
}

// caption writes the name of a band above it, inside the picture.
func (p speedPlot) caption(c *canvas, from, y float64, words string, to float64) {
	half := textWidth(words) / 2
	c.text(min(max((from+to)/2, edge+half), width-edge-half), y, middle, number, words)
}

// places keeps the names of gears apart that end close to each other.
func (p speedPlot) places(y scale) []float64 {
	const apart = 17
	order := make([]int, len(p.gears))
	for i := range order {
		order[i] = i
	}
	middleOf := func(i int) float64 { return (y.at(p.gears[i].value.low) + y.at(p.gears[i].value.high)) / 2 }
	slices.SortStableFunc(order, func(a, b int) int { // from the bottom upwards
		switch {
		case middleOf(a) > middleOf(b):
			return -1
		case middleOf(a) < middleOf(b):
			return 1
		}
		return 0
	})
	places := make([]float64, len(p.gears))
	last := y.from + apart
	for _, i := range order {
		places[i] = min(middleOf(i), last-apart)
		last = places[i]
	}
	return places
}
