package lifting_test

import (
	"math"
	"testing"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/lifting"
)

const (
	degree  = math.Pi / 180
	pound   = 0.45359237 // kg
	gravity = 9.80665    // m/s²
	sharrow = "a sling maker: https://www.sharrowlifting.com/wp-content/themes/sharrowliftingproducts/assets/flipbook/files/simple/99.html"
	ashley  = "a sling maker: https://ashleysling.com/calculating-sling-angles/"
	course  = "a rigging course, whose lengths do not close to triangles: https://covamap.vmasc.org/?p=4551"
	moment  = "a crane maker: http://www.liftmoore.com/faq-whichcrane.htm"
	tutor   = "https://www.wyzant.com/resources/answers/810603/magnitude-of-tension-vectors"
	cables  = "https://homeworksource.com/p/1066554/a-weight-of-100-kg-is-suspended-from-the-ceiling-by-cables-t-1066554"
	picks   = "a sling maker: https://www.certifiedslings.com/load-limits/center-of-gravity-and-sling-loading/"
	script  = "another program from the same formula"
)

// No worked example was found of the tilt of a hanging load or of a workshop
// crane that tips; pages on both give the principle only.
func TestChecks(t *testing.T) {
	lift := engineLift()
	leg := func(angle float64) float64 { return lifting.LegTension(1, 1, angle*degree) }
	figurestest.Run(t, []figurestest.Check{
		{Name: "10000 lb on two legs at 45°, lb", Got: lifting.LegTension(10_000, 2, 45*degree), Want: 7070, Within: 2,
			Kind: figurestest.Published, Source: sharrow},
		{Name: "1200 lb a leg, 120 in long and 96 in high, lb", Got: lifting.LegTension(2*1200, 2, math.Asin(96.0/120)), Want: 1500, Within: 1e-6,
			Kind: figurestest.Published, Source: ashley},
		{Name: "angle of a leg that pulls 1800 N of 500 N on two", Got: lifting.LegTension(500, 2, 7.98*degree), Want: 1800, Within: 2,
			Kind: figurestest.Published, Source: "https://www.wyzant.com/resources/answers/379661/question_is_below_please_answer_asap"},
		{Name: "first of two legs at 32° and 28°, lb", Got: lifting.UnevenLegTension(600, 32*degree, 28*degree), Want: 611.72, Within: 0.05,
			Kind: figurestest.Published, Source: tutor},
		{Name: "second of two legs at 32° and 28°, lb", Got: lifting.UnevenLegTension(600, 28*degree, 32*degree), Want: 587.514, Within: 0.05,
			Kind: figurestest.Published, Source: tutor},
		{Name: "first of two legs at 30° and 60°, kg", Got: lifting.UnevenLegTension(100, 30*degree, 60*degree), Want: 49.978, Within: 0.03,
			Kind: figurestest.Published, Source: cables + ", which rounds on the way"},
		{Name: "second of two legs at 30° and 60°, kg", Got: lifting.UnevenLegTension(100, 60*degree, 30*degree), Want: 86.617, Within: 0.03,
			Kind: figurestest.Published, Source: cables + ", which rounds on the way"},
		{Name: "short leg of 4000 lb by tape, lb", Got: lifting.UnevenLegTensionByTape(4000, 4, 2, 10, 3), Want: 4444.44, Within: 0.01,
			Kind: figurestest.Published, Source: course},
		{Name: "long leg of 4000 lb by tape, lb", Got: lifting.UnevenLegTensionByTape(4000, 14, 10, 2, 3), Want: 3111.11, Within: 0.01,
			Kind: figurestest.Published, Source: course},
		{Name: "pick point near the centre of gravity, lb", Got: lifting.EndLoad(10_000, 2, 8), Want: 8000, Within: 1e-9,
			Kind: figurestest.Published, Source: picks},
		{Name: "pick point far from the centre of gravity, lb", Got: lifting.EndLoad(10_000, 8, 2), Want: 2000, Within: 1e-9,
			Kind: figurestest.Published, Source: picks},
		{Name: "crane of 10000 lb at 7.2 ft, at 12 ft, lb", Got: lifting.LimitByMoment(10_000, 7.2, 12), Want: 6000, Within: 1e-9,
			Kind: figurestest.Published, Source: moment},
		{Name: "crane of 10000 lb at 7.2 ft, at 20 ft, lb", Got: lifting.LimitByMoment(10_000, 7.2, 20), Want: 3600, Within: 1e-9,
			Kind: figurestest.Published, Source: moment},

		{Name: "load angle factor at 90°", Got: leg(90), Want: 1.000, Within: 0.0005, Kind: figurestest.Table, Source: sharrow},
		{Name: "load angle factor at 75°", Got: leg(75), Want: 1.035, Within: 0.0006, Kind: figurestest.Table, Source: sharrow},
		{Name: "load angle factor at 60°", Got: leg(60), Want: 1.155, Within: 0.0005, Kind: figurestest.Table, Source: sharrow},
		{Name: "load angle factor at 45°", Got: leg(45), Want: 1.414, Within: 0.0005, Kind: figurestest.Table, Source: ashley},
		{Name: "load angle factor at 30°", Got: leg(30), Want: 2.000, Within: 0.0005, Kind: figurestest.Table, Source: ashley},

		{Name: "420 kg on two legs at 35°, N", Got: gravity * lifting.LegTension(420, 2, 35*degree), Want: 3590.4, Within: 0.05, Kind: figurestest.Computed, Source: script},
		{Name: "500 kg at 60° and 45°, N", Got: gravity * lifting.UnevenLegTension(500, 60*degree, 45*degree), Want: 3589.5, Within: 0.05, Kind: figurestest.Computed, Source: script},
		{Name: "500 kg at 45° and 60°, N", Got: gravity * lifting.UnevenLegTension(500, 45*degree, 60*degree), Want: 2538.1, Within: 0.05, Kind: figurestest.Computed, Source: script},
		{Name: "610 kg at 260 and 390 mm", Got: lifting.EndLoad(610, 260, 390), Want: 366, Within: 1e-9, Kind: figurestest.Computed, Source: script},
		{Name: "1000 kg at 1.10 m, at 1.45 m", Got: lifting.LimitByMoment(1000, 1.10, 1.45), Want: 758.62, Within: 0.005, Kind: figurestest.Computed, Source: script},
		{Name: "tilt of 2 in off on 26 in, degrees", Got: lifting.Tilt(2, 26) / degree, Want: 4.39871, Within: 1e-4, Kind: figurestest.Computed, Source: script},
		{Name: "mass on the hook", Got: value(t, "lifting.hook_load", lift), Want: 658, Within: 1e-9, Kind: figurestest.Computed, Source: script},
		{Name: "mass on the hook against the plate", Got: value(t, "lifting.crane_use", lift), Want: 1.316, Within: 5e-4, Kind: figurestest.Computed, Source: script},
		{Name: "pull in a leg", Got: value(t, "lifting.leg_tension", lift), Want: 379.8965, Within: 5e-4, Kind: figurestest.Computed, Source: script},
		{Name: "pull in a leg against its tag", Got: value(t, "lifting.leg_use", lift), Want: 0.3798965, Within: 5e-7, Kind: figurestest.Computed, Source: script},
	})
}

// engineLift is an engine with its gearbox on four legs, on a boom hole with a
// plate of 500 kg.
func engineLift() figurestest.Fixed {
	return figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"lifting.lifts.engine.load":        figurestest.Exact(640),
			"lifting.lifts.engine.tackle":      figurestest.Exact(18),
			"lifting.lifts.engine.legs":        figurestest.Exact(4),
			"lifting.lifts.engine.leg_angle":   figurestest.Exact(60 * degree),
			"lifting.lifts.engine.leg_limit":   figurestest.Exact(1000),
			"lifting.lifts.engine.crane_limit": figurestest.Exact(500),
		},
		Lists: map[string][]string{"lifting.lifts": {"engine"}},
	}
}
