package dossier

import (
	"fmt"
	"strings"

	"trialfit/internal/manifest"
)

// compared are the values of an engine that tell old from new, below
// outgoing_engine and engine.
var compared = []string{
	"family", "fuel", "displacement", "cylinders", "induction", "injection", "model_year",
	"rated_power", "rated_speed", "peak_torque", "torque_speed", "governed_speed", "mass", "date",
}

// driveLine says what else of the drive line is in the vehicle now.
var driveLine = []string{
	"transmission.family", "transmission.type", "transmission.mass", "transfer_case.family", "axles.front.ratio", "axles.rear.ratio",
	"exhaust.muffler", "fuel.tank_capacity", "hydraulics.brakes.assist", "vacuum.source",
}

// change says what was taken out, put in and altered.
func (a *author) change() []Block {
	blocks := []Block{a.engines()}
	if line := a.labelled(a.known(driveLine...)...); line != nil {
		blocks = append(blocks, line)
	}
	for _, t := range []Table{a.emission(), a.weights(), a.frame(), a.hot(), a.parts(), a.before(), a.workDone()} {
		if len(t.Rows) > 0 {
			blocks = append(blocks, t)
		}
	}
	return blocks
}

func (a *author) engines() Table {
	t := Table{Caption: captionEngines, Head: []string{colWhat, colOld, colNew}, Shares: []float64{3, 4, 4}}
	for _, field := range compared {
		old, fresh := a.m.Node("outgoing_engine."+field), a.m.Node("engine."+field)
		if fresh == nil || old == nil && fresh.Value == nil {
			continue
		}
		was := say(notRecorded)
		if old != nil {
			was = a.value(old)
		}
		label := fresh.Shape.Title
		if field == "date" {
			label = colDate
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{cell(say(label)), cell(was), cell(a.value(fresh))}})
	}
	return t
}

func (a *author) emission() Table {
	t := Table{Caption: captionEmission, Head: []string{colWhat, colOf, colState}, Shares: []float64{5, 2, 4}}
	for _, list := range []struct{ path, of string }{{"chassis.emission_equipment", ofChassis}, {"engine.emission_equipment", ofEngine}} {
		for _, item := range a.items(list.path) {
			f := item.Field("fitted")
			state := a.value(f)
			if f.Value != nil && f.Value.Bool != nil {
				state[0].Text = notFitted
				if *f.Value.Bool {
					state[0].Text = fitted
				}
			}
			t.Rows = append(t.Rows, Row{Cells: []Cell{a.cellOf(item, "what"), cell(say(list.of)), cell(state)}})
		}
	}
	return t
}

func (a *author) weights() Table {
	t := Table{Caption: captionWeights, Head: []string{colWhat, colChange, colDate, colMass, colPlace}, Shares: []float64{5, 3, 2, 3, 3}}
	for _, list := range []struct{ path, words string }{{"masses.added", added}, {"masses.removed", removed}, {"masses.carried", carried}} {
		for _, item := range a.items(list.path) {
			date := cell(say(item.Word("date"))) // what is carried has none
			t.Rows = append(t.Rows, Row{Cells: []Cell{
				a.cellOf(item, "what"), cell(say(list.words)), date, cell(a.value(item.Field("mass"))), cell(a.value(item.Field("x"))),
			}})
		}
	}
	return t
}

func (a *author) frame() Table {
	t := Table{Caption: captionFrame, Head: []string{colWhat, colDetail, colDate}, Shares: []float64{5, 5, 2}}
	add := func(what string, detail Text, date *manifest.Node) {
		when := Text{}
		if date != nil {
			when = say(a.text(date))
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{cell(say(what)), cell(detail), cell(when)}})
	}
	for _, h := range a.items("frame.holes") {
		add(fmt.Sprintf(hole, h.ID, a.text(h.Field("place"))), a.value(h.Field("diameter")), nil)
	}
	for _, w := range a.items("frame.welds") {
		add(fmt.Sprintf(weld, a.text(w.Field("what"))), say(fmt.Sprintf(waiverBy, a.text(w.Field("by")))), w.Field("date"))
	}
	for _, o := range a.items("frame.openings") {
		add(fmt.Sprintf(opening, a.text(o.Field("what"))), say(a.text(o.Field("edge"))), nil)
	}
	for _, c := range a.items("frame.covered") {
		detail := say(a.text(c.Field("state")))
		if papers := a.papers(c.Word("photograph")); papers != nil {
			detail = detail.and(say(", "), papers)
		}
		add(fmt.Sprintf(covered, a.text(c.Field("what"))), detail, nil)
	}
	for _, r := range a.items("frame.rust") {
		add(fmt.Sprintf(rust, a.text(r.Field("what"))), say(a.text(r.Field("state"))), nil)
	}
	return t
}

// hot are the parts that heat, and what they could harm.
func (a *author) hot() Table {
	t := Table{Caption: captionHot, Head: []string{colHot, colNear, colDistance, colShielded}, Shares: []float64{4, 4, 3, 2}}
	for _, n := range a.items("bay.neighbours") {
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			a.cellOf(n, "hot"), a.cellOf(n, "sensitive"), cell(a.value(n.Field("distance"))), a.cellOf(n, "shielded"),
		}})
	}
	return t
}

// before is what was wrong, and what was photographed, before the change.
func (a *author) before() Table {
	t := Table{Caption: captionBefore, Head: []string{colWhat, colDetail, colDate}, Shares: []float64{5, 5, 2}}
	for _, f := range a.items("baseline.faults") {
		work := Cell{}
		if w := a.m.Node("work." + f.Word("work")); w != nil {
			work = cell(say(fmt.Sprintf(seenTo, a.cellOf(w, "what")[0].String())))
		}
		t.Rows = append(t.Rows, Row{Cells: []Cell{cell(say(fmt.Sprintf(fault, a.text(f.Field("what"))))), work, nil}})
	}
	for _, p := range a.items("baseline.photographs") {
		t.Rows = append(t.Rows, Row{Cells: []Cell{cell(say(fmt.Sprintf(photographed, a.text(p.Field("what"))))), nil, a.cellOf(p, "date")}})
	}
	return t
}

func (a *author) parts() Table {
	t := Table{Caption: captionParts, Head: []string{colWhat, colSource, colState}, Shares: []float64{5, 5, 2}}
	for _, p := range a.items("parts") {
		t.Rows = append(t.Rows, Row{Cells: []Cell{a.cellOf(p, "what"), a.cellOf(p, "source"), a.cellOf(p, "state")}})
	}
	return t
}

// cellOf is the bare value of a field; of "what" the id where it is not given.
func (a *author) cellOf(item *manifest.Node, field string) Cell {
	f := item.Field(field)
	if field == "id" || field == "what" && (f == nil || f.Value == nil) {
		return cell(say(spaced(item.ID)))
	}
	if f == nil {
		return nil
	}
	return cell(say(a.text(f)))
}

// capital begins a label.
func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// workDone says who did what, and when.
func (a *author) workDone() Table {
	t := Table{Caption: captionWorkDone, Head: []string{colWhat, colPerson, colDate}, Shares: []float64{7, 3, 2}}
	for _, w := range a.items("work") {
		if w.Word("done") != "" {
			t.Rows = append(t.Rows, Row{Cells: []Cell{a.cellOf(w, "what"), a.cellOf(w, "by"), a.cellOf(w, "done")}})
		}
	}
	return t
}
