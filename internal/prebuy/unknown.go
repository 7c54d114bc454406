package prebuy

import (
	"slices"

	"trialfit/internal/manifest"
)

// Blank is a candidate of which so little is known that its place in the order
// says little, and what to find out of it first.
type Blank struct {
	Candidate string
	Line      int
	Known, Of int
	First     []Find
}

// Find is one thing to find out of a candidate.
type Find struct{ What, Tool, Path string }

// first lists what is worth knowing of a chassis and of a donor before anything
// else, in the order in which it can be had: on the phone, then beside it.
var first = map[bool][]string{
	false: {
		"registration.title_fuel", "chassis.vin", "chassis.model_year", "chassis.category", "outgoing_engine.family",
		"chassis.ratings.front_axle", "chassis.ratings.rear_axle", "chassis.ratings.gross", "chassis.certification.class",
		"chassis.wheelbase", "chassis.tyres.rear_diameter", "axles.rear.ratio", "outgoing_engine.mass",
		"baseline.corner_weights.front_left", "baseline.corner_weights.front_right", "baseline.corner_weights.rear_left", "baseline.corner_weights.rear_right",
	},
	true: {
		"engine.family", "engine.fuel", "engine.number", "engine.model_year", "engine.certification.label", "engine.certification.class",
		"engine.displacement", "engine.induction", "engine.mass", "engine.governed_speed",
	},
}

// mostFirst is how many things are asked of a seller at once.
const mostFirst = 6

// blanks are the candidates of which less than half is known.
func (r *Result) blanks() {
	for _, c := range slices.Concat(r.Chassis, r.Donors) {
		b := Blank{Candidate: c.ID, Line: c.At.Line, Of: len(first[c.Donor]) + 1}
		if c.Price.Missing {
			b.First = append(b.First, Find{"price", "phone", c.Price.Path})
		} else {
			b.Known++
		}
		for _, path := range first[c.Donor] {
			n := c.node.Find("known." + path)
			if n == nil || n.State != manifest.Missing {
				b.Known++
				continue
			}
			place := *n
			place.Path = path
			_, with := tool(&place)
			b.First = append(b.First, Find{n.Shape.Noun(), with, c.node.Path + ".known." + path})
		}
		if 2*b.Known < b.Of {
			b.First = b.First[:min(mostFirst, len(b.First))]
			r.Blanks = append(r.Blanks, b)
		}
	}
}
