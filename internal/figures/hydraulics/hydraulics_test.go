package hydraulics_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/hydraulics"
)

const (
	inch  = 0.0254
	litre = 1e-3
)

// Worked example: a 3/4 in master that moves 1/4 in moves a 5/8 in slave by
// 0.360 in: http://ftp.team.net/mharc/archives/html/spridgets/2010-01/msg00051.html.
func TestSlaveTravelPublished(t *testing.T) {
	assert.InDelta(t, 0.360, hydraulics.SlaveTravel(inch/4, 3.0/4, 5.0/8)/inch, 0.0005)
}

// Worked example: 1000 m³ from 1000 to 200 mbar in 10 min take 160 m³/min (the
// page rounds down):
// https://www.vacuum-guide.com/english/vacuum_units/evacuation_time_vacuum_pump_sizing.htm.
func TestPumpDownPublished(t *testing.T) {
	assert.InEpsilon(t, 10*60, hydraulics.PumpDownTime(1000, 160.0/60, 1000, 200), 0.01)
}

func TestHydraulicsRegression(t *testing.T) {
	truck := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"hydraulics.clutch.pedal_travel": figurestest.Exact(0.150),
			"hydraulics.clutch.pedal_ratio":  figurestest.Exact(6),
			"hydraulics.clutch.master_bore":  figurestest.Exact(0.01905),
			"hydraulics.clutch.slave_bore":   figurestest.Exact(0.0222),
			"hydraulics.clutch.slave_need":   figurestest.Exact(0.015),
			"vacuum.level":                   figurestest.Exact(67_525),
			"vacuum.volume":                  figurestest.Exact(9 * litre),
			"vacuum.pump_speed":              figurestest.Exact(1.6 * litre),
			"vacuum.consumers.booster.need":  figurestest.Exact(54_000),
		},
		Lists: map[string][]string{"vacuum.consumers": {"booster"}},
	}
	for id, want := range map[string]float64{
		"hydraulics.slave_travel":   0.01748830,
		"hydraulics.release_margin": 1.165887,
		"hydraulics.vacuum_margin":  1.250463,
		"hydraulics.pump_down_time": 6.175532,
	} {
		assert.InEpsilon(t, want, value(t, id, truck), 1e-5, id)
	}
}

func TestRanges(t *testing.T) {
	for _, f := range hydraulics.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	for _, f := range hydraulics.Figures() {
		if f.ID == id {
			results, _ := figures.Evaluate(f, values)
			require.Len(t, results, 1)
			require.True(t, results[0].Ok(), "%s: %+v", id, results[0])
			return results[0].Low
		}
	}
	require.Fail(t, "no figure", id)
	return 0
}
