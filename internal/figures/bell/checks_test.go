package bell_test

import (
	"testing"

	"trialfit/internal/figures/bell"
	"trialfit/internal/figures/figurestest"
)

// No page was found that works out an adapter's stack-up, the pilot or spline
// engagement, or how far an engine rolls towards its neighbours in numbers
// (searched: adapter plate thickness, pilot bearing engagement, bellhousing
// depth, engine clearance at full bump); all are sums and differences.
func TestChecks(t *testing.T) {
	const (
		offsets = "http://craig.backfire.ca/pages/autos/boxchevy/bell-housing"
		gears   = "module 2, 40 and 20 teeth, https://aionlinecalculator.com/gear-module-calculator.html"
	)
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "total indicator reading in thou of 0, +3, −2 and +3",
			Got:  bell.Dial{Top: 0, Right: 3, Bottom: -2, Left: 3}.Runout(), Want: 5, Within: 1e-9,
			Kind: figurestest.Published, Source: "http://constructionforklifts.tpub.com/TM-10-3930-664-24/css/TM-10-3930-664-24_546.htm",
		},
		{
			Name: "total indicator reading in mm of 0, +0.08, −0.05 and +0.08",
			Got:  bell.Dial{Top: 0, Right: 0.08, Bottom: -0.05, Left: 0.08}.Runout(), Want: 0.13, Within: 1e-9,
			Kind: figurestest.Published, Source: "https://www.manualshelf.com/manual/cummins/n14/specifications-english-spanish-french-german/page-89.html",
		},
		{
			Name: "horizontal difference in thou, twice the offset, of +4 at 9 and −2 at 3 o'clock",
			Got:  2 * bell.Dial{Right: -2, Left: 4}.Offset(), Want: 6, Within: 1e-9,
			Kind: figurestest.Published, Source: "https://www.dieselmechanic.info/6-7l-cummins/6-7l-cummins-mounting-adaptations-flywheel-housing-bore-alignment.html",
		},
		{
			Name: "offset in thou of a reading that swings by 10",
			Got:  bell.Dial{Top: 10, Right: 5, Bottom: 0, Left: 5}.Offset(), Want: 5, Within: 1e-9,
			Kind: figurestest.Published, Source: offsets,
		},
		{
			Name: "offset in thou that dowels of 14 leave of 11",
			Got:  bell.OffsetLeft(11, 14), Want: 3, Within: 1e-9,
			Kind: figurestest.Published, Source: offsets,
		},
		{
			Name: "centre distance in mm of a gear and its pinion",
			Got:  bell.CentreDistance(40, 20, 2), Want: 60, Within: 1e-9,
			Kind: figurestest.Published, Source: gears,
		},
		{
			Name: "clearance in mm at the root, 60 mm less half the gear's root of 75 mm and the pinion's tip of 44 mm",
			Got:  bell.RootClearance(60, 40, 20, 2), Want: 60 - 75.0/2 - 44.0/2, Within: 1e-9,
			Kind: figurestest.Published, Source: gears,
		},
	})
}
