package gearing_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/gearing"
	"trialfit/internal/tyre"
)

func TestChecks(t *testing.T) {
	const (
		crawl = "http://www.wanderingtrail.com/Mechanical/Crawl_Speed.htm (loaded radius 15.25 in)"
		steps = "https://community.goodsam.com/discussions/traveltrailerforum-board/super-duty-10-speed-gear-ratios/3241193/replies/3241203"
	)
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "engine speed in rpm of a truck at 50 mph with 6.66 gears on 37.5 in",
			Got:  gearing.EngineSpeed(50*mph, gearing.OverallRatio(1, 1, 6.66), 37.5*inch) / rpm, Want: 2983, Within: 2,
			Kind: figurestest.Published, Source: "http://sagebrushstudebaker.com/fixlst20.html (rounds 336.14 to 336)",
		},
		{
			Name: "engine speed in rpm at 70 mph, axle 3.42, top gear 0.70, 28 in",
			Got:  gearing.EngineSpeed(70*mph, gearing.OverallRatio(0.70, 1, 3.42), 28*inch) / rpm, Want: 2011, Within: 1,
			Kind: figurestest.Published, Source: "https://axletally-v2.pages.dev/gear-ratio-calculator/",
		},
		{
			Name: "road speed in mph at 1750 rpm, ratio 2.72, 29 in",
			Got:  gearing.RoadSpeed(1750*rpm, 2.72, 29*inch) / mph, Want: 55.51, Within: 0.005,
			Kind: figurestest.Published, Source: "https://wagoneers.com/tech/gears.html",
		},
		{
			Name: "road speed in mph at 3000 rpm in a 1.302 gear, axle 3.916, 25.032 in",
			Got:  gearing.RoadSpeed(3000*rpm, gearing.OverallRatio(1.302, 1, 3.916), 25.032*inch) / mph, Want: 43.79, Within: 0.05,
			Kind: figurestest.Published, Source: "https://forums.nicoclub.com/drivetrain-gear-ratio-final-drive-ratio-t73303.html (rounds π to 3.14)",
		},
		{
			Name: "engine speed in rpm at 60 mph, axle 3.70, overdrive 0.78, 26.5 in",
			Got:  gearing.EngineSpeed(60*mph, gearing.OverallRatio(0.78, 1, 3.70), 26.5*inch) / rpm, Want: 2196, Within: 1.5,
			Kind: figurestest.Published, Source: "https://www.mercurycougar.net/threads/rear-diff-question.393/ (rounds 761.05 turns a mile to 761)",
		},
		{
			Name: "crawl speed in mph at 750 rpm, first low 4.04 × 4 × 4.1",
			Got:  gearing.RoadSpeed(750*rpm, gearing.OverallRatio(4.04, 4, 4.1), 2*15.25*inch) / mph, Want: 1.03, Within: 0.005,
			Kind: figurestest.Published, Source: crawl,
		},
		{
			Name: "road speed in km/h at 750 rpm, third gear high 1.38 × 1 × 4.1",
			Got:  gearing.RoadSpeed(750*rpm, gearing.OverallRatio(1.38, 1, 4.1), 2*15.25*inch) / kmh, Want: 19.36, Within: 0.005,
			Kind: figurestest.Published, Source: crawl,
		},
		{
			Name: "road speed in mph at 750 rpm, fifth gear high 0.78 × 1 × 4.1",
			Got:  gearing.RoadSpeed(750*rpm, gearing.OverallRatio(0.78, 1, 4.1), 2*15.25*inch) / mph, Want: 21.28, Within: 0.005,
			Kind: figurestest.Published, Source: crawl,
		},
		{
			Name: "crawl ratio of 6.32, 2.72 and 4.56",
			Got:  gearing.OverallRatio(6.32, 2.72, 4.56), Want: 78.39, Within: 0.005,
			Kind: figurestest.Published, Source: "http://www.high-impact.net/transmission_and_gear/definitions_page.htm",
		},
		{
			Name: "true speed in mph where 60 is shown, 34.6 in after 36.03 in",
			Got:  60 * (1 + gearing.SpeedometerError(34.6*inch, 36.03*inch)), Want: 57.62, Within: 0.005,
			Kind: figurestest.Published, Source: "https://tacomaworld.com/tirecalc?tires=36-12.5r16.5-315-75r16",
		},
		{
			Name: "true speed in mph where 60 is shown, 30.93 in after 30.35 in",
			Got:  60 * (1 + gearing.SpeedometerError(30.93*inch, 30.35*inch)), Want: 61.15, Within: 0.01,
			Kind: figurestest.Published, Source: "https://www.tacomaworld.com/tirecalc?tires=325-60r15-31-13.5r15",
		},
		{
			Name: "rise of engine speed in % from second down to first, 4.615 and 2.919",
			Got:  100 * (gearing.LargestStep([]float64{4.615, 2.919, 2.132, 1.773, 1.519, 1.277, 1, 0.851, 0.687, 0.632}) - 1), Want: 58.10208976, Within: 1e-6,
			Kind: figurestest.Published, Source: steps,
		},
		{
			Name: "rise of engine speed in % among the nine higher gears",
			Got:  100 * (gearing.LargestStep([]float64{2.919, 2.132, 1.773, 1.519, 1.277, 1, 0.851, 0.687, 0.632}) - 1), Want: 36.91369606, Within: 1e-6,
			Kind: figurestest.Published, Source: steps,
		},
		{
			Name: "turns a mile of a tyre with a loaded radius of 23.5 in",
			Got:  mile * gearing.TurnsPerLength(23.5*inch), Want: 429, Within: 0.5,
			Kind: figurestest.Published, Source: "http://www.greatlakes4x4.com/showpost.php?p=65198&postcount=5",
		},
		{
			Name: "rolling radius in in of a 31 in tyre, of which its maker prints 14.94",
			Got:  tyre.RollingRadius(31*inch) / inch, Want: 14.94, Within: 0.12,
			Kind: figurestest.Published, Source: "http://www.greatlakes4x4.com/showpost.php?p=65198&postcount=5 (real inch sizes stand a little lower than they say)",
		},
		{
			Name: "turns a mile of a tyre 31.6 in high, not flattened",
			Got:  mile * gearing.TurnsPerLength(31.6*inch/2), Want: 638.13, Within: 0.15,
			Kind: figurestest.Published, Source: "http://dodgeforum.com/forum/dodge-ram/9778-formula-for-wheel-and-tire-circumfrunce.html (rounds the circumference to 99.29 in)",
		},
		{
			Name: "height in in of 265/70R17",
			Got:  height(t, "265/70R17") / inch, Want: 31.6, Within: 0.05,
			Kind: figurestest.Published, Source: "http://dodgeforum.com/forum/dodge-ram/9778-formula-for-wheel-and-tire-circumfrunce.html",
		},
		{
			Name: "height in in of 265/85R16",
			Got:  height(t, "265/85R16") / inch, Want: 33.68, Within: 0.06,
			Kind: figurestest.Published, Source: "http://www.virtual-cafe.com/~wheelin/cliffhangers/calc.html (rounds 10.43 in of width to 10.4)",
		},
		{
			Name: "height in in of 225/65R16",
			Got:  height(t, "225/65R16") / inch, Want: 27.52, Within: 0.01,
			Kind: figurestest.Published, Source: "https://ecomodder.com/forum/332209-post30.html",
		},
	})
}

const mile = 1609.344 // m

func height(t *testing.T, code string) float64 {
	t.Helper()
	size, err := tyre.Parse(code)
	require.NoError(t, err)
	return size.Diameter
}
