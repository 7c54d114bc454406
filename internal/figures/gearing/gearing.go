// Package gearing holds the figures of the way from crankshaft to road: speeds
// in every gear, the crawl ratio, what the speedometer makes of other tyres.
//
// Nothing slips: the clutch is closed or the converter locked. A tyre counts
// with its overall diameter; loaded it rolls about 3 % less far (common
// practice), so that the engine turns that much faster than the figure.
package gearing

import (
	"math"
	"strconv"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		topSpeed, gearSpeed, cruiseSpeed, cruiseShare, crawlRatio, crawlSpeed, largestStep, ratedSpeedRatio, axleMismatch,
		speedometerError, tyreAgreement, rollingRadius, tyreTurns,
	}
}

const (
	rpm = 2 * math.Pi / 60 // rad/s
	kmh = 1 / 3.6          // m/s
	// Cruise is the road speed in m/s at which the engine's speed is looked at.
	Cruise = 100 * kmh
)

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	gearBounds  = figures.Bounds{Low: 0.3, High: 20}                 // of a gearbox or transfer case
	axleBounds  = figures.Bounds{Low: 1, High: 20}                   // of an axle
	tyreBounds  = figures.Bounds{Low: 0.3, High: 2}                  // m
	speedBounds = figures.Bounds{Low: 200 * rpm, High: 10_000 * rpm} // rad/s
)

// direct is the ratio of a vehicle without a transfer case.
var direct = 1.0

func gear(name, path string, d figures.Direction) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: gearBounds, WhenNone: transferless(path)}
}

// transferless lets shafts run straight through where there is no transfer case.
func transferless(path string) *float64 {
	if path == "transfer_case.high" || path == "transfer_case.low" {
		return &direct
	}
	return nil
}

// axleRatio is the ratio of the rear axle.
func axleRatio(d figures.Direction) figures.Input {
	return figures.Input{Name: "ia", Path: "axles.rear.ratio", Direction: d, Valid: axleBounds}
}

// axleRatios are final drive ratios that are sold (common practice); not each
// for every axle.
var axleRatios = func() *figures.Series {
	s := &figures.Series{Title: "axle ratio"}
	for _, ratio := range []float64{
		3.07, 3.21, 3.31, 3.42, 3.54, 3.73, 3.90, 4.10, 4.27, 4.56, 4.88, 5.13, 5.29, 5.38, 5.71, 6.17,
	} {
		s.Sizes = append(s.Sizes, figures.Size{Label: strconv.FormatFloat(ratio, 'f', 2, 64), SI: ratio})
	}
	return s
}()

// soldAxleRatio is the ratio of the rear axle where the next larger one helps.
func soldAxleRatio(d figures.Direction) figures.Input {
	in := axleRatio(d)
	in.Series = axleRatios
	return in
}

// tyreInput is the overall diameter of the rear tyre.
func tyreInput(d figures.Direction) figures.Input {
	return figures.Input{Name: "D", Path: "chassis.tyres.rear_diameter", Direction: d, Valid: tyreBounds}
}

// topGear is the way from crankshaft to road in the highest gear.
func topGear(ratio, diameter figures.Direction) []figures.Input {
	return []figures.Input{
		gear("ig", "transmission.top", ratio), gear("it", "transfer_case.high", ratio),
		axleRatio(ratio), tyreInput(diameter),
	}
}

func overall(a figures.Args) float64 { return OverallRatio(a.At("ig"), a.At("it"), a.At("ia")) }

// OverallRatio is turns of the crankshaft for one turn of the wheels, from the
// ratios of gearbox, transfer case and axle.
func OverallRatio(gear, transfer, axle float64) float64 { return gear * transfer * axle }

var rolling = figures.Source{
	Title: "rolling without slip: the trade's 336 = 63 360/(60·π) for rpm, mph and inches",
	URL:   "http://www.thedirtforum.com/carmath.htm",
	Basis: "handbook",
}

var gears = figures.Source{
	Title: "gears in series: their ratios multiply",
	URL:   "http://www.high-impact.net/transmission_and_gear/definitions_page.htm",
	Basis: "physics",
}

var crawlRatio = &figures.Figure{
	ID:      "gearing.crawl_ratio",
	Title:   "crawl ratio",
	Symbol:  "ic",
	Kind:    quantity.Ratio,
	Formula: "lowest gear × transfer case low × rear axle ratio; 1 for the transfer case where there is none",
	Inputs: []figures.Input{
		gear("ig", "transmission.first", figures.Rising), gear("it", "transfer_case.low", figures.Rising),
		soldAxleRatio(figures.Rising),
	},
	Source:  gears,
	Compute: overall,
}
