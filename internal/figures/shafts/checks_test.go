package shafts_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/shafts"
)

const (
	inch   = 0.0254           // m
	rpm    = 2 * math.Pi / 60 // rad/s
	degree = math.Pi / 180    // rad
)

// inPlane is a joint whose angle in degrees lies in the side view.
func inPlane(angle float64) shafts.Joint {
	return shafts.JointOf(shafts.Line{}, shafts.Line{Side: angle * degree})
}

// swing is the difference in rpm between the highest and the lowest speed behind
// an angular acceleration of second order at a speed in rpm: (α/2ω) either way.
func swing(acceleration, speed float64) float64 { return acceleration / (speed * rpm) / rpm }

// No page was found that works out the length change of a shaft with the travel
// of its axle or what is left of its slip (searched: slip yoke travel, plunge,
// driveshaft length at bump and droop); both are Pythagoras and a difference.
func TestChecks(t *testing.T) {
	const (
		hooke = "textbook question on two cardan joints of 20° at 500 rpm, "
		chart = "two-joint chart: the angles of one row leave the same acceleration, https://host.engineersedge.com/vehicle_driveline_design.htm"
		angle = "power take-off manual, table of joint angles \"based on angular acceleration of 100 rad/sec²\" (a slip for 1000), https://manualarchiveguide.com/manuals/Parker-892-Series-Owner-s-Manual-4054751?page=9"
	)
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "true joint angle in degrees of 2.15° in plan and 2.5° in side view",
			Got:  shafts.Angle(shafts.Line{}, shafts.Line{Side: 2.5 * degree, Plan: 2.15 * degree}) / degree, Want: 3.3, Within: 0.05,
			Kind:   figurestest.Published,
			Source: "driveline installation manual, https://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=13",
		},
		{
			Name: "shaft speed in rpm at 2196 rpm in a 0.78 overdrive",
			Got:  shafts.Speed(2196, 0.78, 1, true), Want: 2815, Within: 1,
			Kind:   figurestest.Published,
			Source: "761 turns a minute × 3.70 and × 0.78, https://www.mercurycougar.net/threads/rear-diff-question.393/",
		},
		{
			Name: "shaft speed in rpm at 3000 rpm in a 1.302 gear",
			Got:  shafts.Speed(3000, 1.302, 1, true), Want: 2304.15, Within: 0.005,
			Kind:   figurestest.Published,
			Source: "https://forums.nicoclub.com/drivetrain-gear-ratio-final-drive-ratio-t73303.html",
		},
		{
			Name: "critical speed in rpm of a steel tube 3.5 × 0.083 in, 45 in long",
			Got:  shafts.CriticalSpeed(3.5*inch, 3.334*inch, 45*inch) / rpm, Want: 11_390, Within: 170,
			Kind:   figurestest.Published,
			Source: "worked with 30 Mpsi and 0.283 lb/in³, which give 1.3 % more than the makers' constant, https://calcady.com/trade/automotive/driveshaft-critical-speed",
		},
		{
			Name: "swing in rpm behind one joint of 20° at 500 rpm",
			Got:  swing(shafts.TorsionalAcceleration(500*rpm, inPlane(20), 0, 0), 500), Want: 532.1 - 469.85, Within: 1.5,
			Kind:   figurestest.Published,
			Source: hooke + "exact where ours is for small angles, https://qna.carrieradda.com/26514/universal-connect-intermediate-inclined-driving-minimum-intermediate-driving-constant",
		},
		{
			Name: "swing in rpm behind two joints of 20° out of phase at 500 rpm",
			Got:  swing(shafts.TorsionalAcceleration(500*rpm, inPlane(20), inPlane(20), 90*degree), 500), Want: 566.25 - 441.5, Within: 3.1,
			Kind:   figurestest.Published,
			Source: hooke + "exact where ours is for small angles, https://qna.carrieradda.com/26773/double-universal-connect-shafts-intermediate-inclined-driving-maximum-driving-constant and https://www.bissoy.com/mcq/376914",
		},
		{
			Name: "swing in rpm behind one joint of 16.2° at 1200 rpm",
			Got:  swing(shafts.InertiaAcceleration(1200*rpm, 16.2*degree), 1200), Want: 100, Within: 4.5,
			Kind:   figurestest.Published,
			Source: "exact where ours is for small angles, https://askfilo.com/user-question-answers-smart-solutions/two-shafts-are-connected-by-a-universal-joint-the-driving-3431373033373734",
		},
		{
			Name: "acceleration in rad/s² of the shaft's inertia at 2000 rpm and 8°40′",
			Got:  shafts.InertiaAcceleration(2000*rpm, (8+40.0/60)*degree), Want: 1000, Within: 25,
			Kind: figurestest.Published, Source: angle,
		},
		{
			Name: "acceleration in rad/s² of the shaft's inertia at 3000 rpm and 5°50′",
			Got:  shafts.InertiaAcceleration(3000*rpm, (5+50.0/60)*degree), Want: 1000, Within: 25,
			Kind: figurestest.Table, Source: angle,
		},
		{
			Name: "largest joint angle in degrees at 2500 rpm",
			Got:  shafts.AngleLimit(2500*rpm) / degree, Want: 7, Within: 1e-9,
			Kind: figurestest.Table, Source: angle,
		},
		{
			Name: "what 5° and 8.9° leave against 0° and 7.3°, at 1500 rpm",
			Got: shafts.TorsionalAcceleration(1500*rpm, inPlane(5), inPlane(8.9), 0) /
				shafts.TorsionalAcceleration(1500*rpm, inPlane(0), inPlane(7.3), 0), Want: 1, Within: 0.02,
			Kind: figurestest.Table, Source: chart,
		},
		{
			Name: "what 9° and 11.6° leave against 0° and 7.3°, at 1500 rpm",
			Got: shafts.TorsionalAcceleration(1500*rpm, inPlane(9), inPlane(11.6), 0) /
				shafts.TorsionalAcceleration(1500*rpm, inPlane(0), inPlane(7.3), 0), Want: 1, Within: 0.02,
			Kind: figurestest.Table, Source: chart,
		},
		{
			Name: "what 0° and 6.9° leave at 1600 rpm against 0° and 7.3° at 1500 rpm",
			Got: shafts.TorsionalAcceleration(1600*rpm, inPlane(0), inPlane(6.9), 0) /
				shafts.TorsionalAcceleration(1500*rpm, inPlane(0), inPlane(7.3), 0), Want: 1, Within: 0.02,
			Kind: figurestest.Table, Source: "two-joint chart: its rows leave the same acceleration, https://host.engineersedge.com/vehicle_driveline_design.htm",
		},
		{
			Name: "torsional acceleration in rad/s² of 5° and 4° at 3000 rpm",
			Got:  shafts.TorsionalAcceleration(3000*rpm, inPlane(5), inPlane(-4), 0), Want: 270.6, Within: 0.1,
			Kind: figurestest.Computed, Source: "Python: ω²·(θ1² − θ2²)",
		},
		{
			Name: "critical speed in rpm of a tube 2.5 × 0.083 in, 62 in long",
			Got:  shafts.CriticalSpeed(2.5*inch, 2.334*inch, 62*inch) / rpm, Want: 4186.2, Within: 0.1,
			Kind: figurestest.Computed, Source: "Python: 4.705e6·√(D² + d²)/L²",
		},
		{
			Name: "true joint angle in degrees of 4° in plan and 5.5° in side view",
			Got:  shafts.Angle(shafts.Line{}, shafts.Line{Side: 5.5 * degree, Plan: 4 * degree}) / degree, Want: 6.7864, Within: 1e-4,
			Kind: figurestest.Computed, Source: "Python: atan √(tan² + tan²)",
		},
	})
}
