// Package fluid holds what several disciplines need of what flows: air as an
// ideal gas, the standard atmosphere, round pipes. It declares no figures.
package fluid

import "math"

// Dry air: the constants of the US Standard Atmosphere 1976, and its heat
// capacity between 0 and 100 °C.
const (
	// Atmosphere is the standard pressure at sea level in Pa.
	Atmosphere = 101_325
	// AirConstant is the gas constant of dry air in J/(kg·K).
	AirConstant = 287.05
	// AirHeat is the heat capacity of air at constant pressure in J/(kg·K).
	AirHeat = 1007
	// AirExponent is the ratio of the heat capacities of air.
	AirExponent = 1.4
)

// AirDensity is the density in kg/m³ of dry air at an absolute pressure in Pa
// and a temperature in K.
func AirDensity(pressure, temperature float64) float64 {
	return pressure / (AirConstant * temperature)
}

// SoundSpeed is the speed of sound in m/s in air at a temperature in K.
func SoundSpeed(temperature float64) float64 {
	return math.Sqrt(AirExponent * AirConstant * temperature)
}

// AirViscosity is the dynamic viscosity in Pa·s of air at a temperature in K,
// by Sutherland's law with the constants of the US Standard Atmosphere 1976
// (from memory). Exhaust gas of a diesel is close to it.
func AirViscosity(temperature float64) float64 {
	return 1.458e-6 * math.Pow(temperature, 1.5) / (temperature + 110.4)
}

// StandardTemperature is the temperature in K of the US Standard Atmosphere
// 1976 at an altitude in m, from below the sea to 11 km.
func StandardTemperature(altitude float64) float64 { return 288.15 - 0.0065*altitude }

// StandardPressure is the pressure in Pa of the US Standard Atmosphere 1976 at
// an altitude in m, from below the sea to 11 km.
func StandardPressure(altitude float64) float64 {
	return Atmosphere * math.Pow(StandardTemperature(altitude)/288.15, 5.25588)
}
