package fuel_test

import (
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/figures/fuel"
)

const (
	hour  = 3600.0
	kWh   = 3.6e6 // J
	pound = 0.45359237
	hp    = 745.6998715822702
	ps    = 735.49875
	litre = 1e-3
	usgal = 3.785411784e-3
	mile  = 1609.344
	km100 = 1e5 // m
	g     = 9.81
)

func TestChecks(t *testing.T) {
	figurestest.Run(t, []figurestest.Check{{
		Name: "burn of 75 kW at 210 g/kWh, 0.84 kg/L, L/h",
		Got:  fuel.Burn(0.210/kWh, 75e3, 840) / litre * hour, Want: 18.75, Within: 1e-9,
		Kind:   figurestest.Published,
		Source: "https://calculator7.snowdaycalculatornow.com/how-to-calculate-fuel-consumption-of-diesel-engine-per-hour/",
	}, {
		Name: "burn of 16 hp at 196 g/hp·h, 885 g/L, L/h",
		Got:  fuel.Burn(0.196/(ps*hour), 16*ps, 885) / litre * hour, Want: 3.543502825, Within: 1e-9,
		Kind:   figurestest.Published,
		Source: "https://forums.ybw.com/threads/fuel-consumption.247514",
	}, {
		Name: "burn of 65 hp at 0.45 lb/hp·h, 6.39 lb/US gal, US gal/h",
		Got:  fuel.Burn(0.45*pound/(hp*hour), 65*hp, 6.39*pound/usgal) / usgal * hour, Want: 4.577, Within: 5e-4,
		Kind:   figurestest.Published,
		Source: "http://www.allpar.com/forums/topic/98785-fuel-economy-calculations/",
	}, {
		Name: "the same at 65 mph, miles to the US gallon",
		Got:  usgal / mile / fuel.PerDistance(4.577*usgal/hour, 65*mile/hour), Want: 14.20, Within: 5e-3,
		Kind:   figurestest.Published,
		Source: "http://www.allpar.com/forums/topic/98785-fuel-economy-calculations/",
	}, {
		Name: "60 L over 450 km, L/100 km",
		Got:  fuel.PerDistance(60*litre, 450e3) / litre * km100, Want: 13.3, Within: 0.05,
		Kind:   figurestest.Published,
		Source: "https://www.utilitysmarts.com/automobile/diesel/how-to-calculate-fuel-consumption-of-a-diesel-engine/",
	}, {
		Name: "velocity of 0.3 m³/s in 250 mm, m/s",
		Got:  fluid.PipeSpeed(0.3, 0.25), Want: 6.11, Within: 0.005,
		Kind:   figurestest.Published,
		Source: "https://www.assignmentexpert.com/homework-answers/engineering/mechanical-engineering/question-178424",
	}, {
		Name: "Reynolds number of the same at 10 mm²/s (the page cuts the velocity)",
		Got:  fuel.Reynolds(0.3, 0.25, 1e-5), Want: 152_750, Within: 50,
		Kind:   figurestest.Published,
		Source: "https://www.assignmentexpert.com/homework-answers/engineering/mechanical-engineering/question-178424",
	}, {
		Name: "velocity of 1 mL/min in 0.75 mm, cm/s",
		Got:  fluid.PipeSpeed(1e-6/60, 0.75e-3) * 100, Want: 3.77, Within: 0.005,
		Kind:   figurestest.Published,
		Source: "https://wlb03.jobilize.com/question/water-flows-through-a-narrow-id-750-micron-steve-gibbs-the-saylor",
	}, {
		Name: "Reynolds number of the same in water of 1 mm²/s",
		Got:  fuel.Reynolds(1e-6/60, 0.75e-3, 1e-6), Want: 28, Within: 0.5,
		Kind:   figurestest.Published,
		Source: "https://wlb03.jobilize.com/question/water-flows-through-a-narrow-id-750-micron-steve-gibbs-the-saylor",
	}, {
		Name: "laminar loss of 0.01 m³/s over 1 km of 100 mm at Re 800, m of head (the page rounds 8/π²g to 1/12.1)",
		Got:  fuel.LineLoss(0.01, 1000, 0.1, 1000, fluid.PipeSpeed(0.01, 0.1)*0.1/800) / (1000 * g), Want: 66.11, Within: 0.02,
		Kind:   figurestest.Published,
		Source: "https://byjus.com/question-answer/water-is-pumped-at-a-steady-uniform-flow-rate-of-0-01-m-3-s",
	}, {
		Name: "turbulent loss of 12 m³/h over 200 m of 50.5 mm, 867 kg/m³, 0.75 mPa·s, m of head (the page takes the law of Blasius and rounds the bore)",
		Got:  fuel.LineLoss(12/hour, 200, 0.0505, 867, 0.75e-3/867) / (867 * g), Want: 10, Within: 0.1,
		Kind:   figurestest.Published,
		Source: "Example 8.4 of chapter 8, pipe friction and turbulent flow, in https://huggingface.co/datasets/nvidia/Nemotron-CC-Math-v1",
	}, {
		Name: "Reynolds number of the same",
		Got:  fuel.Reynolds(12/hour, 0.0505, 0.75e-3/867), Want: 97_152.8, Within: 50,
		Kind:   figurestest.Published,
		Source: "Example 8.4 of chapter 8, pipe friction and turbulent flow, in https://huggingface.co/datasets/nvidia/Nemotron-CC-Math-v1",
	}, {
		Name: "a gauge of 33 to 240 Ω shows three quarters at 188 Ω (the page rounds to 1 Ω)",
		Got:  fuel.Reading(188, 33, 240), Want: 0.75, Within: 0.0025,
		Kind:   figurestest.Published,
		Source: "https://100techdirect.com/blogs/faq-s/why-does-my-fuel-gauge-read-backwards",
	}, {
		Name: "a gauge of 33 to 240 Ω shows a half at 136 Ω (the page cuts to 1 Ω)",
		Got:  fuel.Reading(136, 33, 240), Want: 0.5, Within: 0.0025,
		Kind:   figurestest.Published,
		Source: "https://100techdirect.com/blogs/faq-s/why-does-my-fuel-gauge-read-backwards",
	}, {
		Name: "a gauge of 190 to 0 Ω shows three quarters at 48 Ω (the page rounds to 1 Ω)",
		Got:  fuel.Reading(48, 190, 0), Want: 0.75, Within: 0.003,
		Kind:   figurestest.Published,
		Source: "https://100techdirect.com/blogs/faq-s/why-does-my-fuel-gauge-read-backwards",
	}, {
		Name: "a gauge of 190 to 0 Ω shows a quarter at 143 Ω (the page rounds to 1 Ω)",
		Got:  fuel.Reading(143, 190, 0), Want: 0.25, Within: 0.003,
		Kind:   figurestest.Published,
		Source: "https://100techdirect.com/blogs/faq-s/why-does-my-fuel-gauge-read-backwards",
	}, {
		Name: "1 lb/hp·h, g/kWh",
		Got:  fuel.Burn(pound/(hp*hour), 1e3, 1e-3) * hour, Want: 608.277, Within: 5e-4,
		Kind:   figurestest.Table,
		Source: "https://en.wikipedia.org/wiki/Brake-specific_fuel_consumption",
	}, {
		Name: "burn of 95 kW at 230 g/kWh, 0.835 kg/L, L/h",
		Got:  figure(t, "fuel.full_load_burn") / litre * hour, Want: 26.168, Within: 5e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "velocity of 104 L/h in 8 mm, m/s",
		Got:  fluid.PipeSpeed(104*litre/hour, 0.008), Want: 0.5747, Within: 5e-5,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "loss of 104 L/h over 4 m of 8 mm at 4 mm²/s, Pa",
		Got:  fuel.LineLoss(104*litre/hour, 4, 0.008, 835, 4e-6), Want: 3839.2, Within: 0.1,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "loss of 104 L/h over 4 m of 6 mm at 12 mm²/s, kPa",
		Got:  fuel.LineLoss(104*litre/hour, 4, 0.006, 835, 12e-6) / 1000, Want: 36.401, Within: 1e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "lift of diesel by 0.5 m, Pa",
		Got:  fuel.Lift(835, 0.5), Want: 4094.3, Within: 0.05,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "suction of the truck, cold, kPa",
		Got:  figure(t, "fuel.suction_cold") / 1000, Want: 15.612, Within: 5e-3,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "range of 73.6 L at 11.5 L/100 km, km",
		Got:  figure(t, "fuel.range") / 1000, Want: 640, Within: 1e-9,
		Kind: figurestest.Computed, Source: "worked by another program",
	}})
}
