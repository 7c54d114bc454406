package quantity

import (
	"fmt"
	"math"
	"math/big"
	"os"
	"os/exec"
	"strconv"
	"strings"
	"testing"
)

// gnuSI is the SI unit of each kind in the language of GNU units.
var gnuSI = map[string]string{
	"kg": "kg", "m": "m", "m²": "m^2", "m³": "m^3", "rad": "radian", "m/s": "m/s",
	"rad/s": "radian/s", "s": "s", "Hz": "Hz", "N": "N", "N·m": "N m", "J": "J", "W": "W",
	"Pa": "Pa", "K": "K", "A": "A", "V": "V", "Ω": "ohm", "Ω/m": "ohm/m", "C": "coulomb",
	"m³/s": "m^3/s", "kg/s": "kg/s", "kg/m": "kg/m", "kg/m³": "kg/m^3", "kg/J": "kg/J",
	"N/m": "N/m", "A/m³": "A/m^3", "rad/s²": "radian/s^2", "1/m": "1/m", "W/kg": "W/kg", "1": "1", "m³/m": "m^3/m", "m²/s": "m^2/s",
}

// gnu is each unit of the table in the language of GNU units 2.22. A unit that
// is missing here fails the test.
var gnu = map[string]string{
	"kg": "kg", "g": "g", "t": "tonne", "lb": "lb", "oz": "oz", "short ton": "shortton", "long ton": "longton",
	"mm": "mm", "cm": "cm", "m": "m", "in": "inch", "ft": "ft", "yd": "yd", "km": "km", "mi": "mile",
	"µm": "um", "thou": "thou",
	"mm²": "mm^2", "cm²": "cm^2", "m²": "m^2", "in²": "in^2", "ft²": "ft^2",
	"L": "liter", "mL": "milliliter", "cm³": "cm^3", "m³": "m^3", "in³": "in^3", "ft³": "ft^3",
	"US gal": "usgallon", "imp gal": "brgallon", "US qt": "usquart", "imp qt": "brquart",
	"US pt": "uspint", "imp pt": "brpint", "US fl oz": "usfloz", "imp fl oz": "brfloz",
	"°": "degree", "rad": "radian",
	"km/h": "km/hour", "mph": "mph", "m/s": "m/s", "kn": "knot", "ft/s": "ft/s", "ft/min": "ft/minute",
	"rpm": "rpm", "rad/s": "radian/s",
	"s": "s", "min": "minute", "h": "hour", "d": "day", "ms": "ms",
	"Hz": "Hz", "kHz": "kHz", "MHz": "MHz",
	"N": "N", "kN": "kN", "daN": "daN", "lbf": "lbf", "kgf": "kgf",
	"N·m": "N m", "lbf·ft": "lbf ft", "lbf·in": "lbf in", "kgf·m": "kgf m", "kN·m": "kN m",
	"J": "J", "kJ": "kJ", "MJ": "MJ", "Wh": "W hour", "kWh": "kW hour", "Btu": "btu",
	"kW": "kW", "hp": "mechanicalhorsepower", "PS": "metrichorsepower", "W": "W",
	"Btu/min": "btu/minute", "Btu/h": "btu/hour",
	"psi": "psi", "kPa": "kPa", "bar": "bar", "MPa": "MPa", "Pa": "Pa", "hPa": "hPa", "mbar": "mbar",
	"inHg": "inHg", "mmHg": "mmHg", "inH2O": "inH2O", "mmH2O": "mmH2O", "kgf/cm²": "kgf/cm^2", "atm": "atm",
	"K": "K", "°C": "degC", "°F": "degF",
	"A": "A", "mA": "mA", "kA": "kA", "V": "V", "mV": "mV", "kV": "kV",
	"Ω": "ohm", "mΩ": "milliohm", "kΩ": "kiloohm", "MΩ": "megaohm", "µΩ": "microohm",
	"Ω/km": "ohm/km", "mΩ/m": "milliohm/m", "Ω/m": "ohm/m", "Ω/kft": "ohm/(1000 ft)", "mΩ/ft": "milliohm/ft",
	"Ah": "A hour", "mAh": "mA hour", "C": "coulomb",
	"L/min": "liter/minute", "L/h": "liter/hour", "L/s": "liter/s", "m³/h": "m^3/hour", "m³/min": "m^3/minute",
	"m³/s": "m^3/s", "cfm": "ft^3/minute", "US gpm": "usgallon/minute", "imp gpm": "brgallon/minute",
	"US gal/h": "usgallon/hour", "imp gal/h": "brgallon/hour", "mL/min": "milliliter/minute",
	"kg/h": "kg/hour", "kg/s": "kg/s", "g/s": "g/s", "lb/min": "lb/minute", "lb/h": "lb/hour", "kg/min": "kg/minute",
	"kg/m": "kg/m", "g/m": "g/m", "lb/ft": "lb/ft", "lb/in": "lb/in",
	"kg/m³": "kg/m^3", "kg/L": "kg/liter", "g/cm³": "g/cm^3", "g/L": "g/liter", "lb/ft³": "lb/ft^3", "lb/US gal": "lb/usgallon",
	"g/kWh": "g/(kW hour)", "lb/hp·h": "lb/(mechanicalhorsepower hour)", "kg/kWh": "kg/(kW hour)",
	"g/PS·h": "g/(metrichorsepower hour)", "kg/J": "kg/J",
	"L/100 km": "liter/(100 km)", "US gal/100 mi": "usgallon/(100 mile)", "imp gal/100 mi": "brgallon/(100 mile)", "m³/m": "m^3/m",
	"mm²/s": "mm^2/s", "cSt": "centistokes", "St": "stokes", "m²/s": "m^2/s",
	"N/mm": "N/mm", "lbf/in": "lbf/in", "kN/m": "kN/m", "N/m": "N/m", "kgf/mm": "kgf/mm", "lbf/ft": "lbf/ft",
	"rad/s²": "radian/s^2", "°/s²": "degree/s^2",
	"rev/km": "1/km", "rev/mi": "1/mile", "1/m": "1/m",
	"hp/lb": "mechanicalhorsepower/lb", "hp/short ton": "mechanicalhorsepower/shortton",
	"PS/t": "metrichorsepower/tonne", "kW/t": "kW/tonne", "ksi": "1000 psi",
	"A/L": "A/liter", "A/in³": "A/in^3", "A/m³": "A/m^3",
	"": "1", "%": "percent", ":1": "1", "kcmil": "1000 cmil",
}

// gnuTolerance holds the relative tolerances that are not the default: GNU
// units multiplies out 13.5951 g/cm³ of mercury and 1 g/cm³ of water, while
// the conventional columns of NIST SP 811 are rounded to seven digits.
var gnuTolerance = map[string]float64{"inHg": 2e-7, "mmHg": 2e-7, "inH2O": 1e-7}

// defaultTolerance is what 12 printed digits can show.
const defaultTolerance = 1e-11

type oracleRow struct {
	name, from, to string
	got            *big.Rat
	tolerance      float64
}

// TestTableAgainstGNUUnits compares every factor, the temperature scales and
// every AWG size with GNU units, one process for all of them. Pitfalls of that
// program: "3/8 in" there means 3/(8 in), so no fraction is written to it, and
// its "gallon" and "ton" are the American ones, so the long names are used.
func TestTableAgainstGNUUnits(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		if os.Getenv("CI") == "true" {
			t.Fatal("GNU units is not installed: CI has to have the package \"units\"")
		}
		t.Skip("GNU units is not installed: install the package \"units\" to compare the unit table with it")
	}
	rows := oracleRows(t)
	var script strings.Builder
	for _, r := range rows {
		fmt.Fprintf(&script, "%s\n%s\n", r.from, r.to)
	}
	cmd := exec.Command(program, "-t", "-d", "12")
	cmd.Env = append(os.Environ(), "LC_ALL=C", "UNITS_ENGLISH=US")
	cmd.Stdin = strings.NewReader(script.String())
	out, err := cmd.CombinedOutput()
	if err != nil {
		t.Fatalf("running GNU units: %v\n%s", err, out)
	}
	lines := strings.Split(strings.TrimSpace(string(out)), "\n")
	if len(lines) != len(rows) {
		t.Fatalf("GNU units answered %d of %d questions:\n%s", len(lines), len(rows), out)
	}
	for i, r := range rows {
		want, err := strconv.ParseFloat(lines[i], 64)
		if err != nil {
			t.Errorf("%s: GNU units says %q", r.name, lines[i])
			continue
		}
		got, _ := r.got.Float64()
		if math.Abs(got-want) > r.tolerance*math.Abs(want) {
			t.Errorf("%s: %.13g, GNU units has %.13g", r.name, got, want)
		}
	}
}

func oracleRows(t *testing.T) []oracleRow {
	var rows []oracleRow
	for _, f := range families {
		if f.kind == SoundLevel {
			continue // a level with a weighting has one unit and no conversion
		}
		for _, u := range f.units {
			name := u.symbol
			if f.kind == AbsolutePressure {
				name = strings.TrimSuffix(strings.Replace(name, "psia", "psi", 1), " abs")
			}
			from, ok := gnu[name]
			if !ok {
				t.Errorf("%s %q has no counterpart in GNU units", f.kind, u.symbol)
				continue
			}
			tolerance := gnuTolerance[name]
			if tolerance == 0 {
				tolerance = defaultTolerance
			}
			rows = append(rows, oracleRow{string(f.kind) + " " + u.symbol, from, gnuSI[f.si], u.factor, tolerance})
		}
	}
	for _, scale := range []struct{ symbol, function string }{{"°C", "tempC"}, {"°F", "tempF"}} {
		for _, degrees := range []string{"-40", "0", "90.5", "195"} {
			v := mustParse(t, degrees+" "+scale.symbol, Temperature)
			rows = append(rows, oracleRow{v.Text, scale.function + "(" + degrees + ")", "K", v.Low, defaultTolerance})
		}
	}
	for n := 40; n >= -3; n-- {
		rows = append(rows, oracleRow{fmt.Sprintf("AWG %d", n), fmt.Sprintf("circlearea(wiregauge(%d)/2)", n), "m^2", awgArea(n), defaultTolerance})
	}
	return rows
}

func mustParse(t testing.TB, text string, kind Kind) Value {
	t.Helper()
	v, err := Parse(text, kind)
	if err != nil {
		t.Fatal(err)
	}
	return v
}
