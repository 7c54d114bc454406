package pictures

import (
	"trialfit/internal/report"
)

// losses shows what each item of a list takes of something, and all of them.
type losses struct {
	list, each string // manifest path of the list, and figure of an item
	// also is a figure of what lies between the items, "" for nothing.
	also, alsoLabel string
	whole           string // figure
	wholeLabel      string
	limits          []row
	compared        []row // beside the whole
	notes           []string
}

func (l losses) draw(f facts, p Picture) Picture {
	ids := f.items(l.list)
	if len(ids) == 0 {
		p.Missing = []string{l.list}
		return p
	}
	var parts []row
	get := func(label, figure string, ids ...string) row {
		v, lacks := f.figure(figure, ids...)
		p.Missing = distinct(p.Missing, lacks)
		return row{label, v}
	}
	for _, id := range ids {
		parts = append(parts, get(report.Plain(id), l.each, id))
	}
	if l.also != "" {
		parts = append(parts, get(l.alsoLabel, l.also))
	}
	whole := get(l.wholeLabel, l.whole)
	if p.Missing != nil {
		return p
	}
	p.Drawing = rows{
		name: p.Name, title: f.heading(p.Title), unit: whole.value.unit, fromZero: true, notes: l.notes,
		groups: []group{
			{title: "part by part", rows: parts},
			{title: "together", rows: append([]row{whole}, l.compared...), limits: l.limits},
		},
	}.draw()
	return p
}

// crankingVoltage shows where the voltage between battery and starter is lost.
func crankingVoltage(f facts) Picture {
	l := losses{
		list: "electrical.cranking.cables", each: "electrical.cranking_cable_drop",
		also: "electrical.cranking_contact_drop", alsoLabel: "contacts",
		whole: "electrical.cranking_drop", wholeLabel: "whole loop",
	}
	share, lacks := f.figure("electrical.cranking_drop_share")
	if system, more := f.leaf("electrical.system_voltage"); lacks == nil && more == nil {
		l.notes = append(l.notes, "The whole loop is "+share.text()+" of the system voltage of "+system.text()+".")
	}
	l.notes = append(l.notes, "What the battery itself falls by under load is not in it.")
	return l.draw(f, Picture{Name: "cranking-voltage", Title: "Voltage lost along the cranking loop, from the battery to the starter and back"})
}

// exhaustPressure shows what each stretch of the exhaust takes, from the engine
// to the outlet.
func exhaustPressure(f facts) Picture {
	l := losses{
		list: "exhaust.segments", each: "exhaust.segment_drop",
		whole: "exhaust.pipe_drop", wholeLabel: "whole exhaust, computed",
	}
	if measured, lacks := f.leaf("exhaust.back_pressure"); lacks == nil {
		l.compared = []row{{"back pressure, as read", measured}}
	}
	if limit, lacks := f.leaf("exhaust.back_pressure_limit"); lacks == nil {
		l.limits = []row{{"the engine allows", limit}}
	} else {
		l.notes = []string{lacking("What the engine allows", lacks)}
	}
	return l.draw(f, Picture{Name: "exhaust-pressure", Title: "Pressure that the exhaust takes, stretch by stretch, at rated power"})
}
