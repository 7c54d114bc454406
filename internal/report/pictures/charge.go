package pictures

// temperatures shows the air on its way into the engine.
func temperatures(f facts) Picture {
	p := Picture{Name: "charge-temperature", Title: "Temperature of the air from the compressor to the manifold"}
	var list []row
	for _, at := range []struct{ label, leaf string }{
		{"surrounding air", "ambient"}, {"behind the compressor", "compressor_out"}, {"at the manifold", "manifold_in"},
	} {
		v, lacks := f.leaf("charge_air." + at.leaf)
		p.Missing = distinct(p.Missing, lacks)
		list = append(list, row{at.label, v})
	}
	if p.Missing == nil {
		p.Drawing = rows{
			name: p.Name, title: f.heading(p.Title), unit: list[0].value.unit, groups: []group{{rows: list}}, linked: true,
		}.draw()
	}
	return p
}
