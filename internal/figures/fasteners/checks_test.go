package fasteners_test

import (
	"testing"

	"trialfit/internal/figures/fasteners"
	"trialfit/internal/figures/figurestest"
)

const (
	lbf      = 4.4482216152605    // N
	lbfFt    = 1.3558179483314004 // N·m
	psi      = 6894.757293168361  // Pa
	inch     = 0.0254             // m
	mm       = 1e-3               // m
	squareMM = 1e-6               // m²
	actuator = "torque chart of an actuator maker, K = 0.2, 75 % of proof: https://manualshive.com/en/manual/emerson/bettis-500/102051?page=97"
	supplier = "torque guide of a bolt supplier after IFI: http://www.hillcofasteners.com/Home/Page/gr5-gr8-torque-guide"
	hardware = "torque chart of a hardware dealer, 75 % of proof: https://coxhardware.com/t-bolt-torque.aspx"
	conveyor = "bolt chart of a conveyor maker, 75 % of yield: http://38.142.81.21:8001/manual/martin-sprocket-gear/drag-conveyor/safety-user-guide-english/page-14.html"
	guide    = "a supplier's guide by grades: https://studylib.net/doc/26058660/bolt-torque-guide"
	metric   = "https://vibromera.eu/calculators/bolt-strength-class-iso898"
	steel    = "a steelmaker's design data to EN 1993-1-8: https://orangebook.arcelormittal.com/node/"
	connect  = "capacities to EN 1993-1-8: https://steelcalculator.app/reference/eu-bolt-grade-selector/"
	forge    = "capacities to EN 1993-1-8: https://strokeforge.tech/engineering/eng-008"
	areas    = "https://www.google.co.il/amp/s/www.engineeringtoolbox.com/amp/metric-bolts-minimum-ultimate-tensile-proof-loads-d_2026.html"
	rules    = "common practice: https://unanswered.io/guide/how-to-calculate-thread-depth"
	metal    = "common practice: https://www.cocoandlowe.com/what-is-proper-thread-engagement-dc42feb1/"
	byScript = "another program from the same formula"
)

func class(name string) fasteners.Class {
	for _, c := range fasteners.Classes {
		if c.Name == name {
			return c
		}
	}
	panic(name)
}

// clamp is three quarters of the proof load in lbf of an inch bolt.
func clamp(grade string, diameter, perInch float64) float64 {
	return fasteners.Reusable * fasteners.ProofLoad(class(grade), diameter*inch, inch/perInch) / lbf
}

// torque is what gives it, in lbf·ft.
func torque(grade string, diameter, perInch, factor float64) float64 {
	return fasteners.TighteningTorque(clamp(grade, diameter, perInch)*lbf, factor, diameter*inch) / lbfFt
}

// yielded is the torque in lbf·ft for a stress in psi.
func yielded(stress, diameter, perInch, factor float64) float64 {
	force := stress * psi * fasteners.Unified.StressArea(diameter*inch, inch/perInch)
	return fasteners.TighteningTorque(force, factor, diameter*inch) / lbfFt
}

func TestChecks(t *testing.T) {
	shear := func(name string, d, p float64) float64 {
		return fasteners.ShearResistance(class(name), d*mm, p*mm) / 1000
	}
	pull := func(name string, d, p float64) float64 {
		return fasteners.TensionResistance(class(name), d*mm, p*mm) / 1000
	}
	area := func(d, p float64) float64 { return fasteners.Metric.StressArea(d*mm, p*mm) / squareMM }
	// What EN 1993-1-8 preloads a bolt of class 8.8 to, in kN.
	clamped := func(d, p float64) float64 { return 0.7 * 800 * area(d, p) / 1000 }

	figurestest.Run(t, []figurestest.Check{
		{Name: "clamp of 1/4-20 grade 2, lbf", Got: clamp("grade-2", 0.25, 20), Want: 1312, Within: 1.5,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 3/8-16 grade 2, lbf·ft", Got: torque("grade-2", 0.375, 16, 0.2), Want: 20.0, Within: 0.05,
			Kind: figurestest.Published, Source: actuator},
		{Name: "clamp of 1/2-13 grade 5, lbf", Got: clamp("grade-5", 0.5, 13), Want: 9046, Within: 2,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 1/2-13 grade 5, lbf·ft", Got: torque("grade-5", 0.5, 13, 0.2), Want: 75.4, Within: 0.05,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 7/16-14 grade 8, lbf·ft", Got: torque("grade-8", 0.4375, 14, 0.2), Want: 69.8, Within: 0.05,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 3/4-10 grade 8, lbf·ft", Got: torque("grade-8", 0.75, 10, 0.2), Want: 376, Within: 0.5,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 1-8 grade 8, lbf·ft", Got: torque("grade-8", 1, 8, 0.2), Want: 909, Within: 1,
			Kind: figurestest.Published, Source: actuator},
		{Name: "torque of 5/8-11 grade 5, lbf·ft", Got: torque("grade-5", 0.625, 11, 0.2), Want: 150, Within: 0.5,
			Kind: figurestest.Published, Source: supplier},
		{Name: "clamp of 3/8-24 grade 5, lbf", Got: clamp("grade-5", 0.375, 24), Want: 5588, Within: 12,
			Kind: figurestest.Published, Source: supplier + ", which rounds to 25 lbf or so"},
		{Name: "torque of plated 1/2-13 grade 8, lbf·ft", Got: torque("grade-8", 0.5, 13, 0.15), Want: 80, Within: 0.5,
			Kind: figurestest.Published, Source: supplier},
		{Name: "torque of plated 9/16-18 grade 8, lbf·ft", Got: torque("grade-8", 0.5625, 18, 0.15), Want: 129, Within: 0.7,
			Kind: figurestest.Published, Source: supplier},
		{Name: "torque of 7/16-20 grade 5, lbf·ft", Got: torque("grade-5", 0.4375, 20, 0.2), Want: 55.2, Within: 0.05,
			Kind: figurestest.Published, Source: hardware},
		{Name: "clamp of 5/8-11 grade 2, lbf", Got: clamp("grade-2", 0.625, 11), Want: 9323, Within: 3,
			Kind: figurestest.Published, Source: hardware},
		{Name: "torque of plain 1/2-13 at 69 ksi, lbf·ft", Got: yielded(69_000, 0.5, 13, 0.20), Want: 82, Within: 0.5,
			Kind: figurestest.Published, Source: conveyor},
		{Name: "torque of plated 1/2-13 at 69 ksi, lbf·ft", Got: yielded(69_000, 0.5, 13, 0.22), Want: 90, Within: 0.5,
			Kind: figurestest.Published, Source: conveyor},
		{Name: "torque of plain 3/4-10 at 98 ksi, lbf·ft", Got: yielded(98_000, 0.75, 10, 0.20), Want: 409, Within: 1.1,
			Kind: figurestest.Published, Source: conveyor + ", with an area of 0.3340 for 0.3345 in²"},
		{Name: "clamp of 1/2-13 grade 2, lbf", Got: clamp("grade-2", 0.5, 13), Want: 5840, Within: 15,
			Kind: figurestest.Published, Source: guide + ", rounded to 20 lbf"},
		{Name: "proof load of M12 8.8, kN", Got: fasteners.ProofLoad(class("class-8.8"), 12*mm, 1.75*mm) / 1000, Want: 48.9, Within: 0.05,
			Kind: figurestest.Published, Source: metric},

		{Name: "shear of M16 8.8, kN", Got: shear("class-8.8", 16, 2), Want: 60.3, Within: 0.15,
			Kind: figurestest.Published, Source: steel + "50, area rounded to 157 mm²"},
		{Name: "shear of M20 8.8, kN", Got: shear("class-8.8", 20, 2.5), Want: 94.1, Within: 0.15,
			Kind: figurestest.Published, Source: steel + "50, area rounded to 245 mm²"},
		{Name: "shear of M16 10.9, kN", Got: shear("class-10.9", 16, 2), Want: 62.8, Within: 0.15,
			Kind: figurestest.Published, Source: steel + "75"},
		{Name: "shear of M12 10.9, kN", Got: shear("class-10.9", 12, 1.75), Want: 33.7, Within: 0.05,
			Kind: figurestest.Published, Source: connect},
		{Name: "shear of M12 8.8, kN", Got: shear("class-8.8", 12, 1.75), Want: 32.4, Within: 0.05,
			Kind: figurestest.Published, Source: connect},
		{Name: "shear of M10 8.8, kN", Got: shear("class-8.8", 10, 1.5), Want: 22.3, Within: 0.05,
			Kind: figurestest.Published, Source: forge},
		{Name: "shear of M12 12.9, kN", Got: shear("class-12.9", 12, 1.75), Want: 40.5, Within: 0.06,
			Kind: figurestest.Published, Source: forge},
		{Name: "tension of M12 4.6 doubled in strength, kN", Got: pull("class-8.8", 12, 1.75) / 2, Want: 24.3, Within: 0.05,
			Kind: figurestest.Published, Source: steel + "45: class 4.6 has half the tensile stress of 8.8"},
		{Name: "tension of M20 4.6 doubled in strength, kN", Got: pull("class-8.8", 20, 2.5) / 2, Want: 70.6, Within: 0.15,
			Kind: figurestest.Published, Source: steel + "45, area rounded to 245 mm²"},
		{Name: "slip of M12 8.8 at 0.2, kN", Got: fasteners.SlipResistance(clamped(12, 1.75), 0.2, 1.1), Want: 8.58, Within: 0.01,
			Kind: figurestest.Published, Source: steel + "50, in service"},
		{Name: "slip of M16 8.8 at 0.3, kN", Got: fasteners.SlipResistance(clamped(16, 2), 0.3, 1.1), Want: 24.0, Within: 0.08,
			Kind: figurestest.Published, Source: steel + "50, in service, area rounded to 157 mm²"},

		{Name: "thread in steel, diameters", Got: fasteners.EngagementNeeded("steel", 1), Want: 1, Within: 0,
			Kind: figurestest.Published, Source: metal},
		{Name: "thread in aluminium, diameters", Got: fasteners.EngagementNeeded("aluminium", 1), Want: 2, Within: 0,
			Kind: figurestest.Published, Source: metal},
		{Name: "thread in cast iron, diameters", Got: fasteners.EngagementNeeded("cast-iron", 1), Want: 1.5, Within: 0,
			Kind: figurestest.Published, Source: rules},
		{Name: "thread in a nut, diameters", Got: fasteners.EngagementNeeded("nut", 1), Want: 0.8, Within: 0,
			Kind: figurestest.Published, Source: rules},

		{Name: "stress area of M6, mm²", Got: area(6, 1), Want: 20.1, Within: 0.05, Kind: figurestest.Table, Source: areas},
		{Name: "stress area of M10, mm²", Got: area(10, 1.5), Want: 58.0, Within: 0.05, Kind: figurestest.Table, Source: areas},
		{Name: "stress area of M12, mm²", Got: area(12, 1.75), Want: 84.3, Within: 0.05, Kind: figurestest.Table, Source: areas},
		{Name: "stress area of M24, mm²", Got: area(24, 3), Want: 353, Within: 0.6, Kind: figurestest.Table, Source: areas},
		{Name: "stress area of 1/2-20, in²", Got: fasteners.Unified.StressArea(0.5, 0.05), Want: 0.1599, Within: 1e-4, Kind: figurestest.Table, Source: conveyor},

		{Name: "proof load of M14×1.5 10.9, kN", Got: fasteners.ProofLoad(class("class-10.9"), 14*mm, 1.5*mm) / 1000, Want: 103.37, Within: 0.01,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "proof load of M20 8.8, kN", Got: fasteners.ProofLoad(class("class-8.8"), 20*mm, 2.5*mm) / 1000, Want: 146.88, Within: 0.01,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "torque of M10 10.9 at 0.2, N·m", Got: fasteners.TighteningTorque(0.75*fasteners.ProofLoad(class("class-10.9"), 10*mm, 1.5*mm), 0.2, 10*mm), Want: 72.2, Within: 0.05,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "clamp by 90 N·m on M12×1.25 at 0.18, kN", Got: fasteners.Preload(90, 0.18, 12*mm) / 1000, Want: 41.667, Within: 0.001,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "the same against the proof load of 10.9", Got: fasteners.Preload(90, 0.18, 12*mm) / fasteners.ProofLoad(class("class-10.9"), 12*mm, 1.25*mm), Want: 0.5452, Within: 1e-4,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "edge of a 14.3 mm hole with 42.85 mm of metal, diameters", Got: fasteners.EdgeDistance(42.85, 14.3), Want: 50 / 14.3, Within: 1e-9,
			Kind: figurestest.Computed, Source: byScript},
		{Name: "two 14.3 mm holes 33 mm apart, diameters", Got: fasteners.HoleDistance(18.7, 14.3), Want: 33 / 14.3, Within: 1e-9,
			Kind: figurestest.Computed, Source: byScript},
	})
}
