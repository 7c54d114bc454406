package dossier

import (
	"slices"
	"strings"

	"trialfit/internal/quantity"
	"trialfit/internal/rulebook"
)

// system is what an inspector of a region is used to.
type system struct {
	si, customary bool
	// imperial says that gallons are those of 1824, not of Queen Anne.
	imperial bool
	// swept says that a volume is that of an engine, which nobody fills by the gallon.
	swept bool
}

// of is the system for the value at a path.
func (s system) of(path string) system {
	s.swept = strings.HasSuffix(path, ".displacement")
	return s
}

// unitsOf reads the units of a chain of regions; without any, both are shown.
func unitsOf(chain []rulebook.Region) system {
	units, imperial := "both", false
	for _, r := range chain {
		if r.Units != "" {
			units = r.Units
		}
		imperial = imperial || r.Code == "GB" || r.Code == "IE"
	}
	return system{si: units != "customary", customary: units != "si", imperial: imperial}
}

// paperOf is the paper of a chain of regions, a4 where none is named.
func paperOf(chain []rulebook.Region) string {
	paper := "a4"
	for _, r := range chain {
		if r.Paper != "" {
			paper = r.Paper
		}
	}
	return paper
}

// customary lists units outside the SI and its everyday companions, each with
// the metric one that stands for it.
var customary = map[string]string{
	"lb": "kg", "oz": "g", "short ton": "t", "long ton": "t",
	"in": "mm", "ft": "m", "yd": "m", "mi": "km", "thou": "mm",
	"in²": "cm²", "ft²": "m²",
	"US gal": "L", "imp gal": "L", "US qt": "L", "imp qt": "L", "US pt": "L", "imp pt": "L", "US fl oz": "mL", "imp fl oz": "mL",
	"in³": "cm³", "ft³": "m³",
	"mph": "km/h", "ft/s": "m/s", "ft/min": "m/s",
	"lbf": "N", "lbf·ft": "N·m", "lbf·in": "N·m",
	"hp": "kW", "Btu/min": "kW", "Btu/h": "kW", "Btu": "kJ",
	"psi": "kPa", "inHg": "kPa", "inH2O": "kPa",
	"°F": "°C", "AWG": "mm²", "SAE": "mm²",
	"cfm": "m³/min", "US gpm": "L/min", "imp gpm": "L/min", "US gal/h": "L/h", "imp gal/h": "L/h",
	"lb/min": "kg/min", "lb/h": "kg/h", "lbf/in": "N/mm", "lb/ft³": "kg/m³", "lb/hp·h": "g/kWh",
	"hp/short ton": "kW/t", "hp/lb": "kW/t", "rev/mi": "rev/km", "ksi": "MPa",
}

// metric lists the customary unit for each of the SI and its companions.
var metric = map[string]string{
	"kg": "lb", "g": "oz", "t": "lb",
	"mm": "in", "cm": "in", "m": "ft", "km": "mi", "µm": "thou",
	"cm²": "in²", "m²": "ft²",
	"L": "US gal", "mL": "US fl oz", "cm³": "in³", "m³": "ft³",
	"km/h": "mph", "m/s": "ft/s",
	"N": "lbf", "kN": "lbf", "N·m": "lbf·ft", "kN·m": "lbf·ft",
	"kW": "hp", "W": "hp", "PS": "hp",
	"kPa": "psi", "bar": "psi", "MPa": "psi", "mbar": "psi", "Pa": "inH2O", "hPa": "inH2O",
	"°C": "°F", "K": "°F",
	"m³/s": "cfm", "m³/min": "cfm", "m³/h": "cfm", "L/min": "US gpm", "L/s": "US gpm", "L/h": "US gal/h",
	"kg/s": "lb/min", "kg/min": "lb/min", "kg/h": "lb/h", "N/mm": "lbf/in", "kg/m³": "lb/ft³", "g/kWh": "lb/hp·h",
	"kW/t": "hp/short ton", "rev/km": "rev/mi",
}

var imperial = map[string]string{"US gal": "imp gal", "US fl oz": "imp fl oz", "US gpm": "imp gpm", "US gal/h": "imp gal/h"}

// beside is a range in the other system, in brackets behind a value in unit, ""
// where the region does not use it or a kind has no such unit.
func (s system) beside(low, high float64, kind quantity.Kind, unit string) string {
	to, foreign := customary[unit]
	wanted := s.si
	if !foreign {
		to, wanted = metric[unit], s.customary
	}
	switch {
	case s.swept && to == "US gal" && s.imperial:
		to = ""
	case s.swept && to == "US gal":
		to = "in³"
	case s.imperial && imperial[to] != "":
		to = imperial[to]
	}
	if !wanted || to == "" || kind == quantity.Conductor && to != "mm²" || kind != quantity.Conductor && !slices.Contains(quantity.Symbols(kind), to) {
		return ""
	}
	return " (" + quantity.Print(low, high, kind, to) + ")"
}

// print writes a range in a unit, and in the other system where that is wanted.
func (s system) print(low, high float64, kind quantity.Kind, unit string) string {
	if unit == "" && slices.Contains(quantity.Symbols(kind), quantity.SI(kind)) {
		unit = quantity.SI(kind)
	}
	return quantity.Print(low, high, kind, unit) + s.beside(low, high, kind, unit)
}
