package pictures

import (
	"trialfit/internal/report"
)

// jointAngles shows the angles of the two joints of each shaft and what the
// joints allow.
func jointAngles(f facts) Picture {
	p := Picture{Name: "joint-angles", Title: "Working angles of the shafts' joints"}
	shafts := f.items("shafts")
	if len(shafts) == 0 {
		p.Missing = []string{"shafts"}
		return p
	}
	drawing := rows{name: p.Name, title: f.heading(p.Title)}
	var missing []string
	for _, id := range shafts {
		g := group{title: "shaft " + report.Plain(id)}
		driving, lacksDriving := f.figure("shafts.angle_driving_end", id)
		driven, lacksDriven := f.figure("shafts.angle_driven_end", id)
		if lacks := distinct(lacksDriving, lacksDriven); lacks != nil {
			missing = append(missing, lacks...)
			drawing.notes = append(drawing.notes, lacking("Shaft "+id, lacks))
			continue
		}
		drawing.unit = driving.unit
		g.rows = []row{{"driving end", driving}, {"driven end", driven}}
		if difference, lacks := f.figure("shafts.angle_difference", id); lacks == nil {
			g.rows = append(g.rows, row{"difference of the two", difference})
		}
		if limit, lacks := f.leaf("shafts." + id + ".joint_angle_limit"); lacks == nil {
			g.limits = []row{{"the joint allows", limit}}
		} else {
			drawing.notes = append(drawing.notes, lacking("What the joints of shaft "+id+" allow", lacks))
		}
		drawing.groups = append(drawing.groups, g)
	}
	if len(drawing.groups) == 0 {
		p.Missing = distinct(missing)
		return p
	}
	p.Drawing = drawing.draw()
	return p
}
