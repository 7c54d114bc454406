// Package quantity reads and prints physical quantities as a workshop writes them.
package quantity

// Kind is a dimension as the trade distinguishes it: torque and energy, gauge
// and absolute pressure are different kinds although they share SI units.
type Kind string

// The kinds of quantity a manifest can hold.
const (
	Mass                  Kind = "mass"
	Length                Kind = "length"
	Area                  Kind = "area"
	Volume                Kind = "volume"
	Angle                 Kind = "angle"
	Speed                 Kind = "speed"
	RotationalSpeed       Kind = "rotational speed"
	Time                  Kind = "time"
	Frequency             Kind = "frequency"
	Force                 Kind = "force"
	Torque                Kind = "torque"
	Energy                Kind = "energy"
	Power                 Kind = "power"
	GaugePressure         Kind = "gauge pressure"
	AbsolutePressure      Kind = "absolute pressure"
	PressureDifference    Kind = "pressure difference"
	Temperature           Kind = "temperature"
	TemperatureDifference Kind = "temperature difference"
	Current               Kind = "current"
	Voltage               Kind = "voltage"
	Resistance            Kind = "resistance"
	ResistancePerLength   Kind = "resistance per length"
	Charge                Kind = "charge"
	VolumeFlow            Kind = "volume flow"
	MassFlow              Kind = "mass flow"
	MassPerLength         Kind = "mass per length"
	Density               Kind = "density"
	SpecificConsumption   Kind = "specific fuel consumption"
	VolumePerDistance     Kind = "volume per distance"
	KinematicViscosity    Kind = "kinematic viscosity"
	SoundLevel            Kind = "sound level"
	Absorption            Kind = "absorption coefficient"
	Stiffness             Kind = "stiffness"
	CurrentPerVolume      Kind = "current per volume"
	AngularAcceleration   Kind = "angular acceleration"
	TurnsPerLength        Kind = "turns per length"
	PowerPerMass          Kind = "power per mass"
	Stress                Kind = "stress"
	Ratio                 Kind = "ratio"
	Conductor             Kind = "conductor size"
)

// Kinds lists every kind, in the order in which an unknown unit is looked for.
func Kinds() []Kind {
	kinds := make([]Kind, len(families))
	for i, f := range families {
		kinds[i] = f.kind
	}
	return kinds
}

// Known reports whether kind is one of Kinds.
func Known(kind Kind) bool { return familyOf(kind) != nil }

// Symbols lists the canonical unit symbols of a kind, the most usual first.
// The bare number that a Ratio may be is not listed. It is nil for an unknown
// kind.
func Symbols(kind Kind) []string {
	f := familyOf(kind)
	if f == nil {
		return nil
	}
	var symbols []string
	for _, u := range f.units {
		if u.symbol != "" {
			symbols = append(symbols, u.symbol)
		}
	}
	if kind == Conductor {
		symbols = append(symbols, gaugeAWG, gaugeSAE)
	}
	return symbols
}

// SI is the symbol of the coherent SI unit in which values of the kind are
// held: "kg", "N·m", "Pa" for every pressure, "rad/s", "kg/J", "1" for a
// ratio, "m²" of copper for a conductor. A sound level is held in dB(A). It is
// "" for an unknown kind.
func SI(kind Kind) string {
	if f := familyOf(kind); f != nil {
		return f.si
	}
	return ""
}
