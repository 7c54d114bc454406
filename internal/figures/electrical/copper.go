package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Annealed copper by the IACS, ASTM B3 and B258 from memory.
const (
	resistivity = 17.241e-9 // Ω·m at 20 °C
	coefficient = 0.00393   // 1/K, of the resistance at 20 °C
	reference   = 293.15    // K: 20 °C
)

// copper is the source of what conductors resist.
var copper = figures.Source{
	Title: "copper of 17.241 nΩ·m at 20 °C, ASTM B258 and B3 (from memory); resistances agree with the table of wire gauges",
	URL:   "https://en.m.wikibooks.org/wiki/Engineering_Tables/American_Wire_Gauge",
	Basis: "memory",
}

// Resistance is that in Ω of parallel copper conductors of an area in m² each
// and a length in m at a temperature in K. The area is taken as solid copper;
// the lay of a stranded cable adds 2 to 4 % that no size tells.
func Resistance(area, length, parallel, temperature float64) float64 {
	return resistivity * length / (area * parallel) * (1 + coefficient*(temperature-reference))
}

// metricSizes are the sections of wire and battery cable by ISO 6722, from memory.
var metricSizes = func() *figures.Series {
	s := &figures.Series{Title: "copper conductor, mm²"}
	for _, size := range []string{"0.5", "0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50", "70", "95", "120"} {
		s.Sizes = append(s.Sizes, figures.Size{Label: size + " mm²", SI: sectionOf(size + " mm²")})
	}
	return s
}()

// awgSizes are the sizes that wire and battery cable are sold in.
var awgSizes = func() *figures.Series {
	s := &figures.Series{Title: "copper conductor, AWG", Metric: metricSizes}
	for _, size := range []string{"20", "18", "16", "14", "12", "10", "8", "6", "4", "2", "1", "1/0", "2/0", "3/0", "4/0"} {
		s.Sizes = append(s.Sizes, figures.Size{Label: size + " AWG", SI: areaOf(size)})
	}
	return s
}()

// areaOf is the section in m² of an AWG size, as the manifest reads it.
func areaOf(awg string) float64 { return sectionOf(awg + " AWG") }

// sectionOf is the section in m² of a conductor as the manifest writes it.
func sectionOf(written string) float64 {
	v, err := quantity.Parse(written, quantity.Conductor)
	if err != nil {
		panic("electrical: " + err.Error())
	}
	area, _ := v.Floats()
	return area
}
