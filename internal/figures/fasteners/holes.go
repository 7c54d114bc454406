package fasteners

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// EdgeDistance is that of a hole's centre in diameters, from its diameter and
// the metal between its edge and the edge of the plate, both in m.
func EdgeDistance(metal, diameter float64) float64 { return metal/diameter + 0.5 }

// HoleDistance is that between the centres of two like holes in diameters, from
// their diameter and the metal between their edges, both in m.
func HoleDistance(metal, diameter float64) float64 { return metal/diameter + 1 }

var spacing = figures.Source{
	Title: "EN 1993-1-8 table 3.3, distances in diameters of the hole",
	URL:   "https://rys.com.sg/LIT/EC03/Connections_Bolts.php",
	Basis: "standard",
}

func metal(name string) []figures.Input {
	return []figures.Input{
		{Name: "m", Path: holes + ".*." + name, Direction: figures.Rising, Valid: metalBounds},
		{Name: "d0", Path: holes + ".*.diameter", Direction: figures.Falling, Valid: holeBounds},
	}
}

var edgeDistance = &figures.Figure{
	ID:      "fasteners.edge_distance",
	Title:   "edge distance of the hole in diameters, from its centre",
	Symbol:  "e/d0",
	Kind:    quantity.Ratio,
	Per:     holes,
	Formula: "(m + d0/2) / d0, with m from the edge of the hole to the inside of the nearer flange",
	Inputs:  metal("edge"),
	Source:  spacing,
	Compute: func(a figures.Args) float64 { return EdgeDistance(a.At("m"), a.At("d0")) },
}

var holeDistance = &figures.Figure{
	ID:      "fasteners.hole_distance",
	Title:   "distance to the next hole in diameters, centre to centre of like holes",
	Symbol:  "p/d0",
	Kind:    quantity.Ratio,
	Per:     holes,
	Formula: "(m + d0) / d0, with m between the edges of the two holes",
	Inputs:  metal("gap"),
	Source:  spacing,
	Compute: func(a figures.Args) float64 { return HoleDistance(a.At("m"), a.At("d0")) },
}
