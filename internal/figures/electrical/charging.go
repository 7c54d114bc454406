package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var balance = figures.Source{
	Title: "balance of currents: what runs all the time against what the alternator gives",
	Basis: "physics",
}

func loads(d figures.Direction) figures.Input {
	return figures.Input{Name: "loads", Path: "electrical.loads.*.current", Direction: d, Valid: loadBounds}
}

// ContinuousLoad is the sum of currents in A.
func ContinuousLoad(loads []float64) float64 {
	sum := 0.0
	for _, i := range loads {
		sum += i
	}
	return sum
}

var continuousLoad = &figures.Figure{
	ID:      "electrical.continuous_load",
	Title:   "continuous electrical load",
	Symbol:  "ΣI",
	Kind:    quantity.Current,
	Formula: "ΣI = sum of what runs all the time with the engine on",
	Inputs:  []figures.Input{loads(figures.Rising)},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return ContinuousLoad(a.Column("loads")) },
}

// ChargingReserve is what an alternator's output in A leaves to charge the
// battery beside the loads in A; it is negative when the battery is drained.
func ChargingReserve(output float64, loads []float64) float64 {
	return output - ContinuousLoad(loads)
}

var chargingReserveIdle = &figures.Figure{
	ID:      "electrical.charging_reserve_idle",
	Title:   "current left for the battery at hot idle",
	Symbol:  "ΔI",
	Kind:    quantity.Current,
	Formula: "ΔI = output at hot idle − continuous load",
	Inputs: []figures.Input{
		{Name: "idle output", Path: "electrical.alternator.idle_output", Direction: figures.Rising, Valid: loadBounds},
		loads(figures.Falling),
	},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return ChargingReserve(a.At("idle output"), a.Column("loads")) },
}

// ChargingUse is the part of an alternator's rated output in A that the loads
// in A take.
func ChargingUse(rated float64, loads []float64) float64 { return ContinuousLoad(loads) / rated }

var chargingUse = &figures.Figure{
	ID:      "electrical.charging_use",
	Title:   "continuous load against the alternator's rating",
	Symbol:  "ΣI/Irated",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "continuous load / rated output of the alternator",
	Inputs: []figures.Input{
		{Name: "rated output", Path: "electrical.alternator.rated_output", Direction: figures.Falling, Valid: alternatorBounds},
		loads(figures.Rising),
	},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return ChargingUse(a.At("rated output"), a.Column("loads")) },
}
