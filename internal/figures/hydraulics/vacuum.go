package hydraulics

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// Bounds of brake vacuum, and nothing that is only a slip of the unit.
var (
	vacuumBounds = figures.Bounds{Low: 1_000, High: 100_000} // Pa below the surrounding air
	volumeBounds = figures.Bounds{Low: 0.1e-3, High: 0.2}    // m³
	pumpBounds   = figures.Bounds{Low: 0.01e-3, High: 0.1}   // m³/s
	stopBounds   = figures.Bounds{Low: 0.05e-3, High: 0.05}  // m³
	diaphragms   = figures.Bounds{Low: 0.08, High: 0.6}      // m
	altitudes    = figures.Bounds{Low: -450, High: 6_000}    // m, from the lowest road to the highest
)

func level(d figures.Direction) figures.Input {
	return figures.Input{Name: "Δp", Path: "vacuum.level", Direction: d, Valid: vacuumBounds}
}

// VacuumMargin is a vacuum against the vacuum that a consumer needs, both in
// one unit; 1 is just enough.
func VacuumMargin(level, need float64) float64 { return level / need }

var vacuumMargin = &figures.Figure{
	ID:      "hydraulics.vacuum_margin",
	Title:   "vacuum against what the consumer needs",
	Symbol:  "Δp/Δpn",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     "vacuum.consumers",
	Formula: "vacuum at idle / vacuum needed",
	Inputs: []figures.Input{
		level(figures.Rising),
		{Name: "Δpn", Path: "vacuum.consumers.*.need", Direction: figures.Falling, Valid: vacuumBounds},
	},
	Source:  figures.Source{Title: "the consumer's need by its maker", Basis: "manufacturer"},
	Compute: func(a figures.Args) float64 { return VacuumMargin(a.At("Δp"), a.At("Δpn")) },
}

// VacuumAt is a vacuum in Pa as it is at an altitude in m, from what it is at sea
// level: a pump takes away the same share of the air around.
func VacuumAt(level, altitude float64) float64 {
	return level * fluid.StandardPressure(altitude) / fluid.Atmosphere
}

var vacuumMarginAltitude = &figures.Figure{
	ID:      "hydraulics.vacuum_margin_altitude",
	Title:   "vacuum at the highest altitude against what the consumer needs",
	Symbol:  "Δp/Δpn",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     "vacuum.consumers",
	Formula: "vacuum at idle × p/p0 / vacuum needed, p air pressure of the standard atmosphere at the highest altitude, p0 that at sea level, where the vacuum is measured",
	Inputs: []figures.Input{
		level(figures.Rising),
		{Name: "H", Path: "registration.altitude", Direction: figures.Falling, Valid: altitudes},
		{Name: "Δpn", Path: "vacuum.consumers.*.need", Direction: figures.Falling, Valid: vacuumBounds},
	},
	Source: figures.Source{
		Title: "US Standard Atmosphere 1976; the vacuum to be had falls with the air around",
		URL:   "https://autoedu.info/en/auto-mechanic/brakes/hydraulic-braking-system/checking-vacuum-supply",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return VacuumMargin(VacuumAt(a.At("Δp"), a.At("H")), a.At("Δpn"))
	},
}

// PumpDownTime is the time in s that a pump of constant speed in m³/s takes to
// bring a volume in m³ from one absolute pressure down to another, in one unit.
func PumpDownTime(volume, speed, from, to float64) float64 {
	return volume / speed * math.Log(from/to)
}

var pumpDownTime = &figures.Figure{
	ID:      "hydraulics.pump_down_time",
	Title:   "time to pump the brake vacuum down",
	Symbol:  "t",
	Kind:    quantity.Time,
	Unit:    "s",
	Formula: "t = (V/S)·ln(p1/p2), p1 = 101.325 kPa, p2 = p1 − vacuum at idle; tight lines, pump speed constant",
	Inputs: []figures.Input{
		{Name: "V", Path: "vacuum.volume", Direction: figures.Rising, Valid: volumeBounds},
		{Name: "S", Path: "vacuum.pump_speed", Direction: figures.Falling, Valid: pumpBounds},
		level(figures.Rising),
	},
	Source: figures.Source{
		Title: "evacuation of a tight vessel by a pump of constant speed",
		URL:   "https://www.vacuum-guide.com/english/vacuum_units/evacuation_time_vacuum_pump_sizing.htm",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return PumpDownTime(a.At("V"), a.At("S"), fluid.Atmosphere, fluid.Atmosphere-a.At("Δp"))
	},
}

// ReserveStops is the number of full stops that a vacuum lasts with the pump
// standing: from the vacuum at the start and the least that still assists, the
// volume that holds it, the air that each stop lets in and the pressure of that
// air, pressures in one unit and volumes in another. Each stop lets in as much
// air as the booster sweeps, which then spreads over the whole volume.
func ReserveStops(level, least, volume, stop, atmosphere float64) float64 {
	return (level - least) * volume / (atmosphere * stop)
}

var reserveStops = &figures.Figure{
	ID:      "hydraulics.reserve_stops",
	Title:   "full stops in reserve with the engine stalled",
	Symbol:  "n",
	Kind:    quantity.Ratio,
	Formula: "n = (Δp − Δpr)·V/(101.325 kPa·Vs), Δp vacuum at idle, Δpr least vacuum for a stop, V volume of booster and reservoir, Vs air for one stop",
	Inputs: []figures.Input{
		level(figures.Rising),
		{Name: "Δpr", Path: "vacuum.reserve_level", Direction: figures.Falling, Valid: vacuumBounds},
		// Below the least vacuum there are fewer than no stops, the more so the
		// larger the volume.
		{Name: "V", Path: "vacuum.volume", Direction: figures.Ends, Valid: volumeBounds},
		{Name: "Vs", Path: "vacuum.stop_volume", Direction: figures.Ends, Valid: stopBounds},
	},
	Source: figures.Source{
		Title: "Boyle's law: air at the pressure around, let into a closed volume stroke by stroke",
		URL:   "http://mail.s5g.ru/25853091/%D0%BD%D0%B0%D0%BA%D0%B0%D1%87%D0%B8%D0%B2%D0%B0%D0%B5%D1%82-%D0%BD%D0%B0%D1%87%D0%B0%D0%BB%D1%8C%D0%BD%D0%BE%D0%B5",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 {
		return ReserveStops(a.At("Δp"), a.At("Δpr"), a.At("V"), a.At("Vs"), fluid.Atmosphere)
	},
}

// BoosterEfficiency is what return spring and friction leave of a booster's
// force (common practice).
const BoosterEfficiency = 0.95

// BoosterAssist is the highest force in N that a vacuum in Pa adds at the push
// rod of the master cylinder, from the effective diameter of the booster in m.
func BoosterAssist(level, diameter float64) float64 {
	return BoosterEfficiency * level * fluid.PipeArea(diameter)
}

var boosterAssist = &figures.Figure{
	ID:      "hydraulics.booster_assist",
	Title:   "highest force the vacuum booster adds",
	Symbol:  "F",
	Kind:    quantity.Force,
	Unit:    "N",
	Formula: "F = 0.95·Δp·π/4·D², Δp vacuum at idle, D booster diameter",
	Inputs: []figures.Input{
		level(figures.Rising),
		{Name: "D", Path: "hydraulics.brakes.booster_diameter", Direction: figures.Rising, Valid: diaphragms},
	},
	Source:  figures.Source{Title: "pressure times area; 0.95 for spring and friction by common practice", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return BoosterAssist(a.At("Δp"), a.At("D")) },
}
