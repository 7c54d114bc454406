package dossier

// proved are the tests and measurements that an inspector asks for by name;
// readings stand by themselves.
var proved = []string{
	"baseline.weighed", "lifting.level", "hydraulics.brakes.proved", "steering.proved", "fuel.stop.proved", "fuel.stop.kind",
	"chassis.headlamps_aimed", "controls.idle_return", "exhaust.back_pressure", "vacuum.level", "vacuum.pump_down",
	"charge_air.compressor_out", "charge_air.manifold_in", "charge_air.ambient",
	"engine.oil_pressure_idle", "engine.oil_pressure_governed",
	"engine.smoke_opacity", "engine.smoke_coefficient", "engine.smoke_plate", "engine.smoke_plume", "engine.noise",
	"road_test.driven", "road_test.distance",
}

// readings lists what was read and proved.
func (a *author) readings() []Block {
	t := Table{
		Caption: captionReadings, Head: []string{colWhat, colValue, colDate, colCondition, colInstrument, colPerson, colPapers},
		Shares: []float64{4, 4, 2.6, 3, 3, 3, 1.8},
	}
	for _, r := range a.items("readings") {
		var papers []string
		if n := r.Field("evidence"); n != nil && n.Value != nil {
			papers = n.Value.Refs
		}
		value := r.Field("value")
		t.Rows = append(t.Rows, Row{Cells: []Cell{
			cell(say(spaced(r.Word("of"))), code(r.ID)), cell(say(a.text(value))), a.cellOf(r, "date"), a.cellOf(r, "condition"),
			a.cellOf(r, "instrument"), a.cellOf(r, "person"), cell(a.papers(papers...)),
		}})
	}
	var blocks []Block
	if len(t.Rows) > 0 {
		blocks = append(blocks, t)
	} else {
		blocks = append(blocks, Paragraph{Text: say(noReading)})
	}
	if len(a.items("road_test.leaks")) > 0 {
		blocks = append(blocks, a.listed("road_test.leaks", captionLeaks, "", column{colWhere, "where", 7}, column{colStopped, "stopped", 3})...)
	}
	tests := a.labelled(a.known(proved...)...)
	if tests == nil {
		return append(blocks, Paragraph{Text: say(noTest)})
	}
	return append(blocks, Heading{captionTests}, tests)
}
