package electrical

import (
	"strconv"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var balance = figures.Source{
	Title: "balance of currents: what runs all the time against what the alternator gives",
	Basis: "physics",
}

// alternatorRatings are ratings in A that alternators of cars and light trucks
// are sold in: common practice, from memory.
var alternatorRatings = func() *figures.Series {
	s := &figures.Series{Title: "alternator, rated output"}
	for _, rating := range []float64{45, 55, 65, 70, 80, 90, 100, 120, 140, 160, 180, 200, 240, 270, 320} {
		s.Sizes = append(s.Sizes, figures.Size{Label: strconv.FormatFloat(rating, 'f', -1, 64) + " A", SI: rating})
	}
	return s
}()

// ratedOutput is what the alternator's label says.
var ratedOutput = figures.Input{
	Name: "rated output", Path: "electrical.alternator.rated_output", Direction: figures.Falling, Valid: alternatorBounds,
	Series: alternatorRatings,
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
		ratedOutput,
		loads(figures.Rising),
	},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return ChargingUse(a.At("rated output"), a.Column("loads")) },
}

// HotShare is what a hot alternator gives of its rated output: 20 to 25 % less
// than cold (common practice).
const HotShare = 0.78

// AlternatorNeed is the rated output in A of an alternator that, hot, carries
// loads in A and refills the battery with a current in A.
func AlternatorNeed(loads []float64, recharge float64) float64 {
	return (ContinuousLoad(loads) + recharge) / HotShare
}

const needFormula = "(ΣI + recharge current)/0.78, ΣI continuous load; a hot alternator gives 0.78 of its rating"

var needInputs = []figures.Input{
	loads(figures.Rising),
	{Name: "recharge current", Path: "electrical.alternator.recharge_current", Direction: figures.Rising, Valid: loadBounds},
}

var hotOutput = figures.Source{
	Title: "rated at 25 °C, an alternator gives 20 to 25 % less hot: common practice",
	Basis: "common-practice",
}

var alternatorNeed = &figures.Figure{
	ID:      "electrical.alternator_need",
	Title:   "rating the alternator needs",
	Symbol:  "In",
	Kind:    quantity.Current,
	Formula: "In = " + needFormula,
	Inputs:  needInputs,
	Source:  hotOutput,
	Compute: needed,
}

var alternatorUse = &figures.Figure{
	ID:      "electrical.alternator_use",
	Title:   "rating the alternator needs against the one it has",
	Symbol:  "In/Irated",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "In/rated output, In = " + needFormula,
	Inputs:  with(needInputs, ratedOutput),
	Source:  hotOutput,
	Compute: func(a figures.Args) float64 { return needed(a) / a.At("rated output") },
}

func needed(a figures.Args) float64 {
	return AlternatorNeed(a.Column("loads"), a.At("recharge current"))
}
