package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Total is the mass in kg of a vehicle that weighed front and rear kg, after
// masses in kg went in and others came out.
func Total(front, rear float64, in, out []float64) float64 {
	sum := front + rear
	for _, m := range in {
		sum += m
	}
	for _, m := range out {
		sum -= m
	}
	return sum
}

var totalWay = way{front: figures.Rising, rear: figures.Rising, added: figures.Rising}

var total = &figures.Figure{
	ID:      "mass.total",
	Title:   "total mass, unladen",
	Symbol:  "W'",
	Kind:    quantity.Mass,
	Formula: "W' = FL + FR + RL + RR + Σ m over what goes in, less what comes out",
	Inputs:  inputs(loadOf{front: true, rear: true}, totalWay),
	Source:  statics,
	Compute: totalMass(false),
}

var totalLaden = &figures.Figure{
	ID:      "mass.total_laden",
	Title:   "total mass, laden",
	Symbol:  "W'l",
	Kind:    quantity.Mass,
	Formula: "W'l = FL + FR + RL + RR + Σ m over what goes in and what is carried, less what comes out",
	Inputs:  inputs(loadOf{front: true, rear: true, laden: true}, totalWay),
	Source:  statics,
	Compute: totalMass(true),
}

func totalMass(laden bool) func(figures.Args) float64 {
	return func(a figures.Args) float64 {
		in := append([]float64{a.At("m_in")}, a.Column("m_added")...)
		if laden {
			in = append(in, a.Column("m_carried")...)
		}
		out := append([]float64{a.At("m_out")}, a.Column("m_removed")...)
		return Total(frontWeighed(a), rearWeighed(a), in, out)
	}
}
