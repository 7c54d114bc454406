package mounts_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/mounts"
)

const (
	rpm    = math.Pi / 30
	inch   = 0.0254
	sheet  = "https://reuven.tools/tools/vibration-isolation"
	note   = "https://newsletter.onedfrk.com/archive/0bf16181-b7d4-4d94-8571-054baa0b1336"
	order  = "engine orders: http://www.diracdelta.co.uk/science/source/e/n/engine%20orders/source.html"
	slings = "load shared by two pick points: https://www.certifiedslings.com/load-limits/center-of-gravity-and-sling-loading/"
)

// No worked example was found of the couple that a low gear puts on engine
// mounts; marine engine makers ask for a call instead.
func TestChecks(t *testing.T) {
	settled25 := mounts.BounceFrequencySettled(0.025)
	figurestest.Run(t, []figurestest.Check{
		{Name: "natural frequency of 25 mm settling", Got: settled25, Want: 3.15, Within: 0.005,
			Kind: figurestest.Published, Source: sheet},
		{Name: "1500 1/min over it", Got: 25 / settled25, Want: 7.93, Within: 0.005,
			Kind: figurestest.Published, Source: sheet},
		{Name: "share passed on at a ratio of 7.93 and a damping of 0.05", Got: mounts.Transmission(7.93, 0.05), Want: 0.0206, Within: 5e-5,
			Kind: figurestest.Published, Source: sheet},
		{Name: "natural frequency of 6 mm settling", Got: mounts.BounceFrequencySettled(0.006), Want: 6.4, Within: 0.05,
			Kind: figurestest.Published, Source: note},
		{Name: "constant of the rule of thumb in Hz and mm", Got: mounts.BounceFrequencySettled(0.001), Want: 15.76, Within: 0.005,
			Kind: figurestest.Published, Source: note},
		{Name: "settling for a natural frequency of 9.7 Hz", Got: mounts.BounceFrequencySettled(0.0026), Want: 9.7, Within: 0.1,
			Kind: figurestest.Published, Source: note + ", which rounds 2.64 mm"},
		{Name: "no gain at √2", Got: mounts.Transmission(math.Sqrt2, mounts.Damping), Want: 1, Within: 1e-9,
			Kind: figurestest.Published, Source: sheet},
		{Name: "a four-cylinder fires twice a turn", Got: mounts.FiringFrequency(60*rpm, 4), Want: 2, Within: 1e-12,
			Kind: figurestest.Published, Source: order},
		{Name: "an eight-cylinder fires twice as often as a four-cylinder", Got: mounts.FiringFrequency(900*rpm, 8) / mounts.FiringFrequency(900*rpm, 4), Want: 2, Within: 1e-12,
			Kind: figurestest.Published, Source: order},
		{Name: "load nearer the front mounts", Got: 2 * mounts.EngineMountLoad(10_000, 2, 0, 10), Want: 8000, Within: 1e-9,
			Kind: figurestest.Published, Source: slings},
		{Name: "load further from the gearbox mount", Got: mounts.GearboxMountLoad(10_000, 2, 0, 10), Want: 2000, Within: 1e-9,
			Kind: figurestest.Published, Source: slings},

		{Name: "natural frequency of 490 kg on 930 kN/m", Got: mounts.BounceFrequency(490, 930_000), Want: 6.93374, Within: 1e-4,
			Kind: figurestest.Computed, Source: "another program from the same formula"},
		{Name: "the same by its settling", Got: mounts.BounceFrequencySettled(490 * 9.80665 / 930_000), Want: 6.93374, Within: 1e-4,
			Kind: figurestest.Computed, Source: "another program from the same formula"},
		{Name: "couple of 393 N·m in 5.61 and 2.72", Got: mounts.RollCouple(393, 5.61, 2.72), Want: 5996.87, Within: 0.1,
			Kind: figurestest.Computed, Source: "another program from the same formula"},
		{Name: "couple of 1000 N·m over 24 in", Got: mounts.TorqueLoad(1000, 24*inch), Want: 167.2763, Within: 1e-3,
			Kind: figurestest.Computed, Source: "another program from the same formula"},
	})
}
