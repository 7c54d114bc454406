package check

import (
	"fmt"
	"maps"
	"os"
	"os/exec"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/quantity"
)

// chains is a manifest whose values GNU units reads as they stand.
const chains = `trialfit: 1
build: {name: chains, hold: plan}
registration: {first_registered: 1999-04-12}
chassis:
  wheelbase: "118 in"
  tyres: {rear_diameter: "31.5 in"}
engine:
  displacement: "3.9 L"
  rated_power: "125 hp"
  rated_speed: "2500 rpm"
  peak_torque: "420 N·m"
  governed_speed: "2800 rpm"
  idle_speed: "780 rpm"
  smoke_opacity: "38 %"
transmission:
  first: "4.02"
  top: "0.75"
  clutch: {clamp_force: "9800 N", lining_outside: "330 mm", lining_inside: "190 mm", discs: 1, friction: "0.28"}
transfer_case: {high: "1", low: "2.72"}
axles: {rear: {ratio: "4.10"}}
shafts:
  - {id: rear, tube_outside: "3 in", tube_wall: "0.083 in", length: "52 in"}
cooling: {heat_rejection: "62 kW", coolant_flow: "150 L/min", glycol: "50 %", fan_diameter: "22 in", fan_ratio: "1.1"}
intake: {volumetric_efficiency: "0.9"}
charge_air: {boost: "18 psi", manifold_in: "55 °C", ambient: "25 °C", compressor_out: "128 °C"}
fuel: {consumption_full: "225 g/kWh", density: "0.84 kg/L", tank_capacity: "26 US gal", consumption: "13 L/100 km"}
electrical:
  alternator: {crank_pulley: "6.5 in", pulley: "2.5 in"}
  circuits:
    - {id: heater, conductor: "2 AWG", length: "9 ft", temperature: "60 °C", current: "95 A"}
hydraulics:
  clutch: {pedal_travel: "150 mm", pedal_ratio: "6", master_bore: "3/4 in", slave_bore: "7/8 in", release_load: "1800 N", fork_ratio: "1.9"}
vacuum: {volume: "9 L", pump_speed: "95 L/min", level: "67 kPa"}
lifting:
  lifts:
    - {id: engine, load: "745 lb", tackle: "40 lb", legs: 2, leg_angle: "55 °"}
frame:
  bolts:
    - {id: mount, torque: "75 lbf·ft", diameter: "1/2 in", nut_factor: "0.2"}
`

// TestChains works whole chains of units and formula out a second time, in GNU
// units from the text of the manifest: https://www.gnu.org/software/units/. An
// expression names a place of the manifest as {path}; the program reads what
// stands there. To that program "a/b c" is a/(b·c).
func TestChains(t *testing.T) {
	program, err := exec.LookPath("units")
	if err != nil {
		require.Empty(t, os.Getenv("CI"), "GNU units is not installed (Debian package units)")
		t.Skip("GNU units is not installed (Debian package units)")
	}
	c, err := New(Options{Today: "2026-11-25"})
	require.NoError(t, err)
	m, err := c.Loader.Read(strings.NewReader(chains), "chains.build.yaml", t.TempDir())
	require.NoError(t, err)

	place := regexp.MustCompile(`\{([^}]+)\}`)
	for id, expression := range map[string]string{
		"gearing.crawl_ratio":              "{transmission.first} {transfer_case.low} {axles.rear.ratio}",
		"gearing.cruise_speed":             "2 (100 km/hour) {transmission.top} {transfer_case.high} {axles.rear.ratio} / {chassis.tyres.rear_diameter} radian",
		"gearing.top_speed":                "{engine.governed_speed} {chassis.tyres.rear_diameter} / (2 {transmission.top} {transfer_case.high} {axles.rear.ratio}) / radian",
		"shafts.critical_speed":            "119507 rpm 1 m sqrt({shafts.rear.tube_outside}^2 + ({shafts.rear.tube_outside} - 2 {shafts.rear.tube_wall})^2) / {shafts.rear.length}^2",
		"cooling.temperature_rise":         "{cooling.heat_rejection} / ({cooling.coolant_flow} (4.065 - 0.69 {cooling.glycol}) MJ/(m^3 K))",
		"cooling.fan_tip_speed":            "pi {cooling.fan_diameter} {engine.governed_speed} {cooling.fan_ratio} / (2 pi radian)",
		"air.flow_rated":                   "{intake.volumetric_efficiency} ((101.325 kPa + {charge_air.boost}) / (287.05 J kg^-1 K^-1 {charge_air.manifold_in})) {engine.displacement} {engine.rated_speed} / (2 pi radian) / 2",
		"air.density_ratio":                "(({charge_air.boost} + 101.325 kPa) / 101.325 kPa) {charge_air.ambient} / {charge_air.manifold_in}",
		"air.cooler_effectiveness":         "({charge_air.compressor_out} - {charge_air.manifold_in}) / ({charge_air.compressor_out} - {charge_air.ambient})",
		"fuel.full_load_burn":              "{fuel.consumption_full} {engine.rated_power} / {fuel.density}",
		"fuel.range":                       "{fuel.tank_capacity} / {fuel.consumption}",
		"electrical.voltage_drop":          "{electrical.circuits.heater.current} 17.241e-9 ohm m {electrical.circuits.heater.length} (1 + 0.00393 ({electrical.circuits.heater.temperature} - 293.15 K) / K) / {electrical.circuits.heater.conductor}",
		"electrical.alternator_speed_idle": "{engine.idle_speed} {electrical.alternator.crank_pulley} / {electrical.alternator.pulley}",
		"hydraulics.slave_travel":          "0.95 ({hydraulics.clutch.pedal_travel} / {hydraulics.clutch.pedal_ratio}) ({hydraulics.clutch.master_bore} / {hydraulics.clutch.slave_bore})^2",
		"hydraulics.line_pressure":         "{hydraulics.clutch.release_load} / {hydraulics.clutch.fork_ratio} / (0.25 pi {hydraulics.clutch.slave_bore}^2)",
		"hydraulics.pump_down_time":        "({vacuum.volume} / {vacuum.pump_speed}) ln(101.325 kPa / (101.325 kPa - {vacuum.level}))",
		"lifting.leg_tension":              "({lifting.lifts.engine.load} + {lifting.lifts.engine.tackle}) / ({lifting.lifts.engine.legs} sin({lifting.lifts.engine.leg_angle}))",
		"fasteners.preload":                "{frame.bolts.mount.torque} / ({frame.bolts.mount.nut_factor} {frame.bolts.mount.diameter})",
		"torque.clutch_capacity":           "{transmission.clutch.friction} {transmission.clutch.clamp_force} 2 {transmission.clutch.discs} ({transmission.clutch.lining_outside} + {transmission.clutch.lining_inside}) / 4",
		"approval.smoke_coefficient":       "ln(1 / (1 - {engine.smoke_opacity})) / (0.430 m)",
	} {
		t.Run(id, func(t *testing.T) {
			r := result(t, input.Compute(c.Figures, m, "2026-11-25"), id)
			nominal := map[string]figures.Range{}
			gnu := place.ReplaceAllStringFunc(expression, func(p string) string {
				n := m.Node(strings.Trim(p, "{}"))
				require.NotNil(t, n, p)
				require.NotNil(t, n.Value, "%s has no value", p)
				if n.Value.Numeric {
					q := nominalOf(t, n.Value.Text, n.Value.Kind)
					nominal[n.Path] = figures.Range{Low: q, High: q}
				}
				return gnuText(n.Value.Text)
			})
			for _, in := range r.Inputs {
				if _, named := nominal[in.Path]; !named && in.Word == "" {
					require.Equal(t, in.Low, in.High, "%s reads %s, which the expression does not", id, in.Path)
				}
			}
			maps.DeleteFunc(nominal, func(path string, _ figures.Range) bool {
				return !slices.ContainsFunc(r.Inputs, func(l figures.Leaf) bool { return l.Path == path && l.Word == "" })
			})
			low, high, ok := r.At(nominal)
			require.True(t, ok, "%s has no value: %+v", id, r.Missing)
			require.InEpsilon(t, low, high, 1e-12)
			out, err := exec.CommandContext(t.Context(), program, "--terse", "--digits", "15", gnu, gnuSI[r.Figure.Kind]).CombinedOutput()
			require.NoError(t, err, "%s: %s", gnu, out)
			want, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
			require.NoError(t, err, "%s: %s", gnu, out)
			require.InEpsilon(t, want, low, 1e-9, "GNU units: %s", gnu)
		})
	}
}

func result(t *testing.T, all []input.Computed, id string) figures.Result {
	t.Helper()
	for _, c := range all {
		if c.Figure.ID == id {
			require.Len(t, c.Results, 1)
			require.Empty(t, c.Results[0].Missing, id)
			return c.Results[0]
		}
	}
	require.Fail(t, "no figure", id)
	return figures.Result{}
}

// nominalOf is the SI value of a text without its spread.
func nominalOf(t *testing.T, text string, kind quantity.Kind) float64 {
	t.Helper()
	q, err := quantity.Parse(text, kind)
	require.NoError(t, err)
	require.Zero(t, q.Low.Cmp(q.High), "%s is a range", text)
	si, _ := q.Low.Float64()
	return si
}

// gnuSI is the SI unit of a kind in the language of GNU units.
var gnuSI = map[quantity.Kind]string{
	quantity.Ratio: "1", quantity.RotationalSpeed: "radian/s", quantity.Speed: "m/s", quantity.TemperatureDifference: "K",
	quantity.MassFlow: "kg/s", quantity.VolumeFlow: "m^3/s", quantity.Length: "m", quantity.Voltage: "V", quantity.GaugePressure: "Pa",
	quantity.Time: "s", quantity.Mass: "kg", quantity.Force: "N", quantity.Torque: "N m", quantity.Absorption: "1/m",
}

// gnuText writes a quantity of the manifest for GNU units: products and
// fractions have other signs there, temperatures are functions, and an AWG
// size is a diameter.
func gnuText(text string) string {
	number, unit, _ := strings.Cut(text, " ")
	switch unit {
	case "°C":
		return "tempC(" + number + ")"
	case "AWG":
		return "(0.25 pi wiregauge(" + number + ")^2)"
	case "°":
		unit = "degree"
	case "US gal":
		unit = "usgallon"
	case "L":
		unit = "liter"
	case "L/min":
		unit = "liter/minute"
	case "L/100 km":
		unit = "liter/(100 km)"
	case "kg/L":
		unit = "kg/liter"
	case "g/kWh":
		unit = "g/(kW hour)"
	case "%":
		unit = "percent"
	case "hp":
		unit = "mechanicalhorsepower"
	case "lb":
		unit = "pound"
	case "lbf·ft":
		unit = "lbf ft"
	case "N·m":
		unit = "N m"
	case "rpm":
		unit = "2 pi radian/minute"
	}
	return fmt.Sprintf("((%s) %s)", strings.ReplaceAll(number, "/", "|"), unit)
}
