package gearing

import (
	"slices"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// RoadSpeed is the road speed in m/s at an engine speed in rad/s, from the
// overall ratio and the tyre's diameter in m.
func RoadSpeed(engine, ratio, diameter float64) float64 { return engine / ratio * diameter / 2 }

// EngineSpeed is the engine speed in rad/s at a road speed in m/s, from the
// overall ratio and the tyre's diameter in m.
func EngineSpeed(road, ratio, diameter float64) float64 { return road / (diameter / 2) * ratio }

func governed(d figures.Direction) figures.Input {
	return figures.Input{Name: "n", Path: "engine.governed_speed", Direction: d, Valid: speedBounds}
}

const topRatio = "i = top gear × transfer case high × rear axle ratio"

var topSpeed = &figures.Figure{
	ID:      "gearing.top_speed",
	Title:   "road speed at governed speed in top gear",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "km/h",
	Formula: "v = governed speed × D / (2·i), " + topRatio + ", D the tyre's diameter",
	Inputs:  append(topGear(figures.Falling, figures.Rising), governed(figures.Rising)),
	Source:  rolling,
	Compute: func(a figures.Args) float64 {
		return RoadSpeed(a.At("n"), overall(a), a.At("D"))
	},
}

var cruiseSpeed = &figures.Figure{
	ID:      "gearing.cruise_speed",
	Title:   "engine speed at 100 km/h in top gear",
	Symbol:  "n100",
	Kind:    quantity.RotationalSpeed,
	Unit:    "rpm",
	Formula: "n = 2·v·i/D, v = 100 km/h, " + topRatio + ", D the tyre's diameter",
	Inputs:  topGear(figures.Rising, figures.Falling),
	Source:  rolling,
	Compute: func(a figures.Args) float64 { return EngineSpeed(Cruise, overall(a), a.At("D")) },
}

var gearSpeed = &figures.Figure{
	ID:      "gearing.gear_speed",
	Title:   "road speed at governed speed in this gear, high range",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "km/h",
	Per:     "transmission.gears",
	Formula: "v = n·D/(2·i), n governed speed, D the tyre's diameter, i = ig·it·ia, ig this gear, it transfer case high, ia the rear axle ratio",
	Inputs: []figures.Input{
		gear("ig", "transmission.gears.*.ratio", figures.Falling), gear("it", "transfer_case.high", figures.Falling),
		axleRatio(figures.Falling), tyreInput(figures.Rising), governed(figures.Rising),
	},
	Source:  rolling,
	Compute: func(a figures.Args) float64 { return RoadSpeed(a.At("n"), overall(a), a.At("D")) },
}

var crawlSpeed = &figures.Figure{
	ID:      "gearing.crawl_speed",
	Title:   "road speed at idle in first low",
	Symbol:  "vc",
	Kind:    quantity.Speed,
	Unit:    "km/h",
	Formula: "v = n·D/(2·i), n idle speed, D the tyre's diameter, i = ig·it·ia, ig the lowest gear, it transfer case low, ia the rear axle ratio",
	Inputs: []figures.Input{
		{Name: "n", Path: "engine.idle_speed", Direction: figures.Rising, Valid: figures.Bounds{Low: 200 * rpm, High: 2000 * rpm}},
		gear("ig", "transmission.first", figures.Falling), gear("it", "transfer_case.low", figures.Falling),
		axleRatio(figures.Falling), tyreInput(figures.Rising),
	},
	Source: figures.Source{
		Title: "rolling without slip, crawl speed",
		URL:   "http://www.wanderingtrail.com/Mechanical/Crawl_Speed.htm",
		Basis: "handbook",
	},
	Compute: func(a figures.Args) float64 { return RoadSpeed(a.At("n"), overall(a), a.At("D")) },
}

var cruiseShare = &figures.Figure{
	ID:      "gearing.cruise_share",
	Title:   "engine speed at 100 km/h in top gear against governed speed",
	Symbol:  "n100/n",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "n100 / governed speed, n100 = 2·v·i/D, v = 100 km/h, " + topRatio + ", D the tyre's diameter",
	Inputs:  append(topGear(figures.Rising, figures.Falling), governed(figures.Falling)),
	Source:  rolling,
	Compute: func(a figures.Args) float64 { return EngineSpeed(Cruise, overall(a), a.At("D")) / a.At("n") },
}

var ratedSpeedRatio = &figures.Figure{
	ID:      "gearing.rated_speed_ratio",
	Title:   "rated speed against governed speed",
	Symbol:  "nr/n",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "nr/n, the rated speed over the governed speed; above 100 % one of the two is wrong: the governor cuts beyond rated speed",
	Inputs: []figures.Input{
		{Name: "nr", Path: "engine.rated_speed", Direction: figures.Rising, Valid: speedBounds}, governed(figures.Falling),
	},
	Source:  figures.Source{Title: "definition of rated and governed (high idle) speed", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return a.At("nr") / a.At("n") },
}

// LargestStep is the largest ratio between neighbours among the ratios of a
// gearbox in any order, 1 for a single gear.
func LargestStep(ratios []float64) float64 {
	sorted := slices.Sorted(slices.Values(ratios))
	step := 1.0
	for i := 1; i < len(sorted); i++ {
		step = max(step, sorted[i]/sorted[i-1])
	}
	return step
}

var largestStep = &figures.Figure{
	ID:      "gearing.largest_step",
	Title:   "largest step between neighbouring gears",
	Symbol:  "φ",
	Kind:    quantity.Ratio,
	Formula: "greatest ratio of one gear to the next; the engine falls to one over it of its speed",
	Inputs: []figures.Input{{
		Name: "i", Path: "transmission.gears.*.ratio", Valid: gearBounds, NonEmpty: true,
	}},
	Source: figures.Source{
		Title: "rise of engine speed from gear to gear",
		URL:   "https://community.goodsam.com/discussions/traveltrailerforum-board/super-duty-10-speed-gear-ratios/3241193/replies/3241203",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return LargestStep(a.Column("i")) },
}

// SpeedometerError is how much faster the vehicle goes than its speedometer
// says, as a share, from the diameters of the tyres now and of those it was
// made for, in the same unit. Negative where it goes slower.
func SpeedometerError(diameter, before float64) float64 { return diameter/before - 1 }

var speedometerError = &figures.Figure{
	ID:      "gearing.speedometer_error",
	Title:   "true speed above the speed shown",
	Symbol:  "Δv/v",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "D / D before − 1; holds while the axle ratio and the speedometer's gear are those it was made for",
	Inputs: []figures.Input{
		tyreInput(figures.Rising),
		{Name: "D before", Path: "chassis.tyres.diameter_before", Direction: figures.Falling, Valid: tyreBounds},
	},
	Source:  figures.Source{Title: "geometry: a larger tyre rolls further in one turn", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return SpeedometerError(a.At("D"), a.At("D before")) },
}
