package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// truckReduction divides the load rating of a passenger car tyre on any other
// vehicle.
const truckReduction = 1.10

// TyreCapacity is the load in kg that count tyres of a load index carry
// together. Twin tyres have an index of their own, the second on the sidewall.
// A passenger car tyre on a truck, van or off-road wagon counts for less:
// reduced is true.
func TyreCapacity(index, count float64, reduced bool) float64 {
	capacity := LoadIndexMass(index) * count
	if reduced {
		capacity /= truckReduction
	}
	return capacity
}

var (
	tyreCapacityFront = tyreCapacity("front")
	tyreCapacityRear  = tyreCapacity("rear")
)

func tyreCapacity(axle string) *figures.Figure {
	return &figures.Figure{
		ID:     "mass.tyre_capacity_" + axle,
		Title:  "load capacity of the " + axle + " tyres",
		Symbol: "C",
		Kind:   quantity.Mass,
		Formula: "load of the load index × number of tyres on the axle; " +
			"divided by 1.10 for a passenger tyre on anything but a passenger car",
		Inputs: []figures.Input{
			{Name: "index", Path: "chassis.tyres." + axle + "_load_index", Direction: figures.Rising,
				Valid: figures.Bounds{Low: leastLoadIndex, High: mostLoadIndex}, Series: loadIndices},
			{Name: "count", Path: "chassis.tyres." + axle + "_count", Direction: figures.Rising,
				Valid: figures.Bounds{Low: 1, High: 8}},
			{Name: "passenger tyre", Path: "chassis.tyres.type",
				Choices: map[string]float64{"passenger": 1, "light-truck": 0}},
			{Name: "passenger car", Path: "chassis.category",
				Choices: map[string]float64{"passenger-car": 1, "light-truck": 0, "off-road-wagon": 0, "van": 0, "truck": 0}},
		},
		Source: figures.Source{
			Title: "load index table; division by 1.10: FMVSS 120 S5.1.2, as quoted in NHTSA interpretation nht76-1.47",
			URL:   "https://www.nhtsa.gov/node/71386",
			Basis: "standard",
		},
		Compute: func(a figures.Args) float64 {
			reduced := a.At("passenger tyre") == 1 && a.At("passenger car") == 0
			return TyreCapacity(a.At("index"), a.At("count"), reduced)
		},
	}
}
