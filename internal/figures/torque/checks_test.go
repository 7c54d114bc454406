package torque_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/torque"
	"trialfit/internal/tyre"
)

const (
	inch      = 0.0254             // m
	pound     = 0.45359237         // kg
	poundFeet = 1.3558179483314004 // N·m
	gravity   = 9.80665            // m/s²
	hp        = 745.6998715822702  // W
	rpm       = 2 * math.Pi / 60   // rad/s
)

// No page was found that works out the low gear torque or the wheel slip torque
// of a shaft in numbers; the formulas are those of the manual that the figures
// name (searched: driveshaft low gear torque, wheel slip torque, tyre slip).
func TestChecks(t *testing.T) {
	const (
		clutch = "V. B. Bhandari, Machine Design Data Book, worked in https://github.com/FOSSEE/Scilab-TBC-Uploads, "
		shear  = "https://drbuc2jl8158i.cloudfront.net/shared/Engeneering/mecmovies/"
	)
	figurestest.Run(t, []figurestest.Check{
		{
			Name: "axle torque in lbf·in of 1000 lbf·in through 4 and 20",
			Got:  torque.TractiveEffort(1000, 4*20, 1, 1), Want: 80_000, Within: 1e-6,
			Kind: figurestest.Published, Source: "https://en.webtec.com/education/axel-torque/",
		},
		{
			Name: "torque in lbf·ft at each of two driven tyres, 400 lbf·ft through 4.00 and 2.73",
			Got:  torque.TractiveEffort(400, 4*2.73, 1, 1) / 2, Want: 2184, Within: 1e-6,
			Kind: figurestest.Published, Source: "http://www.fourwheeler.com/how-to/1106-4wd-choosing-gearing-that-works-for-your-4x4/photo-16.html",
		},
		{
			Name: "pull in lbf of 606 lbf·ft gross × 0.85 net, ratio 52.9, 85 %, radius 19.5 in",
			Got:  torque.TractiveEffort(606*0.85*poundFeet, 52.9, 0.85, 19.5*inch) / (pound * gravity), Want: 14_253, Within: 0.6,
			Kind: figurestest.Published, Source: "https://www.scribd.com/document/432584157/Cacl-Traction",
		},
		{
			Name: "pull in lbf of 41 lbf·ft through 3.43 on 15 in",
			Got:  torque.TractiveEffort(41*poundFeet, 3.43, 1, 15*inch) / (pound * gravity), Want: 112, Within: 0.6,
			Kind: figurestest.Published, Source: "https://ecomodder.com/forum/276156-post24.html",
		},
		{
			Name: "gradient in % of 1000 lbf·in through 12 on 15 in, 10 000 lb, 1.5 % of rolling resistance",
			Got:  100 * torque.Gradeability(torque.TractiveEffort(1000, 12, 1, 15)/10_000, 0.015), Want: 6.5, Within: 0.05,
			Kind: figurestest.Published, Source: "http://www.webtec.co.uk/techinfo/equation/eqnfr/eqn04.htm (for small gradients)",
		},
		{
			Name: "gradient in % of 117 N·m through 12 on 400 mm, 4500 kg, 1.5 % of rolling resistance",
			Got:  100 * torque.Gradeability(torque.TractiveEffort(117, 12, 1, 0.4)/(4500*gravity), 0.015), Want: 6.5, Within: 0.1,
			Kind: figurestest.Published, Source: "https://www.scribd.com/doc/250720312/Vehicle-Cal (for small gradients)",
		},
		{
			Name: "pull in lbf that holds 10 000 lb on 5 %, without rolling resistance",
			Got:  10_000 * torque.Gradeability(0.05, 0), Want: 500, Within: 1,
			Kind: figurestest.Published, Source: "https://de.webtec.com/education/grade-resistance/ (for small gradients)",
		},
		{
			Name: "reserve of a worn-in clutch of 9 × 800 N, lining 250/175 mm, μ 0.35, for 250 N·m",
			Got:  torque.ClutchTorque(9*800, 0.250, 0.175, 2, 0.35) / 250, Want: 2.142, Within: 0.0005,
			Kind: figurestest.Published, Source: clutch + "764/CH11/EX11.6.b/result11_6.txt",
		},
		{
			Name: "torque in N·mm of one face, lining 200/100 mm, μ 0.2, 15 708 N",
			Got:  1000 * torque.ClutchTorque(15_707.963268, 0.200, 0.100, 1, 0.2), Want: 235_619.45, Within: 0.01,
			Kind: figurestest.Published, Source: clutch + "764/CH11/EX11.1.b/result11_1.txt",
		},
		{
			Name: "torque in N·mm of eight faces, 150/75 mm, μ 0.1, 2650.7 N",
			Got:  1000 * torque.ClutchTorque(2650.718801, 0.150, 0.075, 8, 0.1), Want: 119_282.35, Within: 0.01,
			Kind: figurestest.Published, Source: clutch + "764/CH11/EX11.8.b/result11_8.txt",
		},
		{
			Name: "worn-in clutch against a new one, lining 250/50 mm",
			Got:  torque.ClutchTorque(1, 250, 50, 1, 1) / ((250*250*250 - 50*50*50) / (3.0 * (250*250 - 50*50))), Want: 0.871, Within: 0.0005,
			Kind: figurestest.Published, Source: "https://byjus.com/question-answer/in-a-disc-type-axial-clutch-the-frictional-contact-takes-place-within-an-annular-region-1",
		},
		{
			Name: "shear stress in MPa of a tube 114/102 mm under 5000 N·m",
			Got:  torque.TubeShear(5000, 0.114, 0.102) / 1e6, Want: 47.86, Within: 0.005,
			Kind: figurestest.Published, Source: shear + "ch15/m15_01_s041.html",
		},
		{
			Name: "shear stress in MPa of a tube 100/75 mm under 13.42 kN·m",
			Got:  torque.TubeShear(13_420, 0.100, 0.075) / 1e6, Want: 100, Within: 0.05,
			Kind: figurestest.Published, Source: "https://answer.ya.guru/questions/2392032-a-shaft-is-made-of-an-aluminum-alloy-having-an-allowable-shear.html",
		},
		{
			Name: "power for the mass in kW/kg of 330 hp and 835 lb",
			Got:  torque.PowerPerMass(330*hp, 835*pound) / 1000, Want: 0.65, Within: 0.005,
			Kind: figurestest.Published, Source: "http://image.absoluteastronomy.com/topics/Power-to-weight_ratio",
		},
		{
			Name: "what the makers of shafts reckon the tyres to hold, as their formula in pounds and inches has it",
			Got:  torque.ShaftSlip(3300*pound, 15.4*inch, 4.10) / poundFeet, Want: 0.71 * 3300 * 15.4 / (11.4 * 4.10), Within: 1e-6,
			Kind: figurestest.Computed, Source: "WST = (.71 x W x RR) / (11.4 x AR), http://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=5",
		},
		{
			Name: "torque in N·m at which the tyres of an axle slip, 1650 kg on 33 in tyres",
			Got:  torque.SlipTorque(1650, tyre.RollingRadius(33*inch)), Want: 4674.9, Within: 1,
			Kind: figurestest.Computed, Source: "Python: μ·m·g·r",
		},
		{
			Name: "gradient where the tyres slip",
			Got:  torque.GradeabilityOnGrip(math.Inf(1), 0.05), Want: 0.66, Within: 1e-9,
			Kind: figurestest.Computed, Source: "by hand: 0.71 − 0.05",
		},
	})
}
