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
		Inputs:  tyres(axle, figures.Rising),
		Source:  tyreRules,
		Compute: capacityOf,
	}
}

var tyreRules = figures.Source{
	Title: "load index table; division by 1.10: FMVSS 120 S5.1.2, as quoted in NHTSA interpretation nht76-1.47",
	URL:   "https://www.nhtsa.gov/node/71386",
	Basis: "standard",
}

// tyres declares what the capacity of the tyres on an axle reads; more capacity
// moves the figure the way d.
func tyres(axle string, d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "index", Path: "chassis.tyres." + axle + "_load_index", Direction: d,
			Valid: figures.Bounds{Low: leastLoadIndex, High: mostLoadIndex}, Series: loadIndices},
		{Name: "count", Path: "chassis.tyres." + axle + "_count", Direction: d,
			Valid: figures.Bounds{Low: 1, High: 8}},
		{Name: "passenger tyre", Path: "chassis.tyres.type",
			Choices: map[string]float64{"passenger": 1, "light-truck": 0}},
		{Name: "passenger car", Path: "chassis.category",
			Choices: map[string]float64{"passenger-car": 1, "light-truck": 0, "off-road-wagon": 0, "van": 0, "truck": 0}},
	}
}

func capacityOf(a figures.Args) float64 {
	reduced := a.At("passenger tyre") == 1 && a.At("passenger car") == 0
	return TyreCapacity(a.At("index"), a.At("count"), reduced)
}

var (
	tyreUseFront = tyreUse("front", axleLoadFrontLaden, loadOf{front: true, positions: true, laden: true}, frontWay)
	tyreUseRear  = tyreUse("rear", axleLoadRearLaden, loadOf{rear: true, positions: true, laden: true}, rearWay)
)

// tyreUse declares what an axle load that moves the way w takes of the tyres.
func tyreUse(axle string, load *figures.Figure, of loadOf, w way) *figures.Figure {
	return &figures.Figure{
		ID:      "mass.tyre_use_" + axle,
		Title:   axle + " axle load against what its tyres carry, laden",
		Symbol:  load.Symbol + "/C",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: load.Formula + "; " + load.Symbol + " / load capacity of the tyres on the axle",
		// More capacity helps as long as the load presses down.
		Inputs:     join(inputs(of, w), tyres(axle, figures.Falling)),
		Conditions: []figures.Condition{{Figure: load, Valid: loadBounds}},
		Source:     tyreRules,
		Compute:    func(a figures.Args) float64 { return load.Compute(a) / capacityOf(a) },
	}
}
