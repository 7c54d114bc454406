package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// reserveCurrent is the current in A by which reserve capacity is measured.
const reserveCurrent = 25.0

var reserveTest = figures.Source{
	Title: "reserve capacity: minutes at 25 A down to 10.5 V (SAE J537)",
	URL:   "https://calculator.academy/battery-reserve-capacity-to-amp-hours-calculator/",
	Basis: "standard",
}

func reserve(d figures.Direction) figures.Input {
	return figures.Input{Name: "RC", Path: "electrical.battery.reserve_capacity", Direction: d, Valid: reserveBounds}
}

// ReserveCharge is the charge in C that a battery gives at 25 A, from its
// reserve capacity in s.
func ReserveCharge(capacity float64) float64 { return reserveCurrent * capacity }

var reserveCharge = &figures.Figure{
	ID:      "electrical.reserve_charge",
	Title:   "charge the batteries hold, at 25 A",
	Symbol:  "Q",
	Kind:    quantity.Charge,
	Unit:    "Ah",
	Formula: "Q = 25 A·RC, RC reserve capacity",
	Inputs:  []figures.Input{reserve(figures.Rising)},
	Source:  reserveTest,
	Compute: func(a figures.Args) float64 { return ReserveCharge(a.At("RC")) },
}

// StandbyTime is the time in s that a battery feeds a current of up to 25 A,
// from its reserve capacity in s. A lesser current lasts a little longer than
// this, and the engine does not start any more at its end.
func StandbyTime(capacity, current float64) float64 { return ReserveCharge(capacity) / current }

var standbyTime = &figures.Figure{
	ID:      "electrical.standby_time",
	Title:   "time until the load with the engine stopped has emptied the batteries",
	Symbol:  "t",
	Kind:    quantity.Time,
	Unit:    "h",
	Formula: "t = 25 A·RC/I, RC reserve capacity, I load with the engine stopped, up to 25 A",
	Inputs: []figures.Input{
		reserve(figures.Rising),
		{Name: "I", Path: "electrical.standby_current", Direction: figures.Falling, Valid: standbyBounds},
	},
	Source:  reserveTest,
	Compute: func(a figures.Args) float64 { return StandbyTime(a.At("RC"), a.At("I")) },
}
