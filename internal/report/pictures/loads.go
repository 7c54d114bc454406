package pictures

// axleLoads shows what stands on each axle before and after the swap, and what
// it may carry.
func axleLoads(f facts) Picture {
	p := Picture{Name: "axle-loads", Title: "Axle loads before and after the swap"}
	drawing := rows{name: p.Name, title: f.heading(p.Title)}
	for _, axle := range []string{"front", "rear"} {
		g := group{title: axle + " axle"}
		load := "mass.axle_load_" + axle
		before, lacks := f.figure(load + "_before")
		p.Missing = distinct(p.Missing, lacks)
		after, lacks := f.figure(load)
		p.Missing = distinct(p.Missing, lacks)
		g.rows = append(g.rows, row{"as weighed before", before}, row{"after, unladen", after})
		drawing.unit = after.unit
		if laden, lacks := f.figure(load + "_laden"); lacks == nil {
			g.rows = append(g.rows, row{"after, laden", laden})
		} else {
			drawing.notes = append(drawing.notes, lacking("The laden "+axle+" axle", lacks))
		}
		if rating, lacks := f.leaf("chassis.ratings." + axle + "_axle"); lacks == nil {
			g.limits = append(g.limits, row{"rating", rating})
		} else {
			drawing.notes = append(drawing.notes, lacking("The rating of the "+axle+" axle", lacks))
		}
		drawing.groups = append(drawing.groups, g)
	}
	if p.Missing == nil {
		p.Drawing = drawing.draw()
	}
	return p
}
