package dossier

import (
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/quantity"
)

// TestBeside: exact definitions of the units, NIST SP 811 appendix B.
func TestBeside(t *testing.T) {
	us, si, gb := system{customary: true}, system{si: true}, system{si: true, customary: true, imperial: true}
	for _, c := range []struct {
		s    system
		x    float64
		kind quantity.Kind
		unit string
		want string
	}{
		{us, 300, quantity.Mass, "kg", " (661.4 lb)"},
		{us, 300, quantity.Mass, "lb", ""},
		{si, 0.45359237, quantity.Mass, "lb", " (0.4536 kg)"},
		{si, 0.0254, quantity.Length, "in", " (25.4 mm)"},
		{gb, 0.0254, quantity.Length, "mm", " (1 in)"},
		{gb, 0.00454609, quantity.Volume, "L", " (1 imp gal)"},
		{us, 0.003785411784, quantity.Volume, "L", " (1 US gal)"},
		{us.of("engine.displacement"), 0.0025, quantity.Volume, "L", " (152.6 in³)"},
		{gb.of("engine.displacement"), 0.0025, quantity.Volume, "L", ""},
		{us, 273.15, quantity.Temperature, "°C", " (32 °F)"},
		{si, 310.15, quantity.Temperature, "°F", " (37 °C)"},
		{us, 5, quantity.TemperatureDifference, "K", " (9 °F)"},
		{us, 745.6998715822702, quantity.Power, "kW", " (1 hp)"},
		{si, 6894.757293168362, quantity.GaugePressure, "psi", " (6.895 kPa)"},
		{gb, 12, quantity.Voltage, "V", ""},
		{us, 0.000025, quantity.Conductor, "mm²", ""},
	} {
		require.Equal(t, c.want, c.s.beside(c.x, c.x, c.kind, c.unit), "%v %s", c.x, c.unit)
	}
}

// TestCounterparts: each unit named here is one that some kind has, and its
// counterpart belongs to the same kind.
func TestCounterparts(t *testing.T) {
	for _, table := range []map[string]string{customary, metric, imperial} {
		for from, to := range table {
			shared := slices.ContainsFunc(quantity.Kinds(), func(k quantity.Kind) bool {
				symbols := quantity.Symbols(k)
				return slices.Contains(symbols, from) && slices.Contains(symbols, to)
			})
			require.True(t, shared, "%s and %s are not units of one kind", from, to)
		}
	}
}
