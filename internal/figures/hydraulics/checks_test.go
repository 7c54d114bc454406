package hydraulics_test

import (
	"math"
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/hydraulics"
)

const (
	inch   = 0.0254
	litre  = 1e-3
	minute = 60.0
	cc     = 1e-6
	rpm    = 2 * math.Pi / 60
	usgal  = 3.785411784e-3
	lbf    = 4.4482216152605
	psi    = 6894.757293168
	g      = 9.80665
)

// masters prints how far slaves move for 1/4 in of several masters.
const masters = "http://ftp.team.net/mharc/archives/html/spridgets/2010-01/msg00051.html"

func TestChecks(t *testing.T) {
	figurestest.Run(t, []figurestest.Check{{
		Name: "1/4 in of a 3/4 in master on a 5/8 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.750, 0.625), Want: 0.360, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1/4 in of a 5/8 in master on a 3/4 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.625, 0.750), Want: 0.174, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1/4 in of a 5/8 in master on a 7/8 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.625, 0.875), Want: 0.128, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1/4 in of a 3/4 in master on a 7/8 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.750, 0.875), Want: 0.184, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1/4 in of a 7/8 in master on a 5/8 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.875, 0.625), Want: 0.490, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1/4 in of a 7/8 in master on a 3/4 in slave, in",
		Got:  hydraulics.SlaveTravel(0.25, 0.875, 0.750), Want: 0.340, Within: 5e-4,
		Kind: figurestest.Published, Source: masters,
	}, {
		Name: "1.25 in of a 3/4 in master on a bearing of 2.0 in around 1.375 in, in",
		Got:  hydraulics.SlaveTravel(1.25, 0.75, math.Sqrt(2.0*2.0-1.375*1.375)), Want: 0.333, Within: 5e-4,
		Kind: figurestest.Published, Source: "https://calcady.com/trade/automotive/clutch-release-bearing-travel",
	}, {
		Name: "100 lb on a pedal of 14 in with the rod at 4 in give 350 lb, lb",
		Got:  hydraulics.PedalForce(350, 1, 1, 1, 14.0/4), Want: 100, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://blog.americanpowertrain.com/category/info/",
	}, {
		Name: "125 lb on a piston of 1 in² gives 875 lb on one of 7 in², lb",
		Got:  hydraulics.PedalForce(875, 1, math.Sqrt(7), 1, 1), Want: 125, Within: 1e-9,
		Kind: figurestest.Published, Source: "http://www.cordonline.net/michigan/b/b_21.htm",
	}, {
		Name: "75 lb on a piston of 1 in² gives 37.5 lb on one of 0.5 in², lb",
		Got:  hydraulics.PedalForce(37.5, 1, math.Sqrt(0.5), 1, 1), Want: 75, Within: 1e-9,
		Kind: figurestest.Published, Source: "http://www.cordonline.net/michigan/b/b_21.htm",
	}, {
		Name: "600 lb on a master of 1.125 in, psi",
		Got:  hydraulics.LinePressure(600*lbf, 1.125*inch) / psi, Want: 604, Within: 0.5,
		Kind: figurestest.Published, Source: "https://calcady.com/trade/automotive/brake-pressure",
	}, {
		Name: "600 lb on a master of 1.0 in, psi (the page says about)",
		Got:  hydraulics.LinePressure(600*lbf, inch) / psi, Want: 760, Within: 5,
		Kind: figurestest.Published, Source: "https://machinecalcs.com/brake-line-pressure-calculator",
	}, {
		Name: "1000 m³ from 1000 to 200 mbar at 160 m³/min, min (the page rounds the pump down)",
		Got:  hydraulics.PumpDownTime(1000, 160, 1000, 200), Want: 10, Within: 0.1,
		Kind:   figurestest.Published,
		Source: "https://www.vacuum-guide.com/english/vacuum_units/evacuation_time_vacuum_pump_sizing.htm",
	}, {
		Name: "1 m³ from 1000 to 500 mbar at 0.1 m³/s, s",
		Got:  hydraulics.PumpDownTime(1, 0.1, 1000, 500), Want: 6.9, Within: 0.05,
		Kind: figurestest.Published, Source: "https://www.engineeringtoolbox.com/vacuum-evacuation-time-d_844.html",
	}, {
		Name: "1 m³ from 1000 to 100 mbar at 0.1 m³/s, s",
		Got:  hydraulics.PumpDownTime(1, 0.1, 1000, 100), Want: 23, Within: 0.5,
		Kind: figurestest.Published, Source: "https://www.engineeringtoolbox.com/vacuum-evacuation-time-d_844.html",
	}, {
		Name: "1 m³ from 1000 to 10 mbar at 0.1 m³/s, s",
		Got:  hydraulics.PumpDownTime(1, 0.1, 1000, 10), Want: 46, Within: 0.5,
		Kind: figurestest.Published, Source: "https://www.engineeringtoolbox.com/vacuum-evacuation-time-d_844.html",
	}, {
		Name: "strokes of 0.002 m³ of air at 100 kPa that raise 0.05 m³ from 100 to 300 kPa",
		Got:  hydraulics.ReserveStops(300e3, 100e3, 0.05, 0.002, 100e3), Want: 50, Within: 1e-9,
		Kind:   figurestest.Published,
		Source: "http://mail.s5g.ru/25853091/%D0%BD%D0%B0%D0%BA%D0%B0%D1%87%D0%B8%D0%B2%D0%B0%D0%B5%D1%82-%D0%BD%D0%B0%D1%87%D0%B0%D0%BB%D1%8C%D0%BD%D0%BE%D0%B5",
	}, {
		Name: "pump of 18 cm³ at 1500 rpm and 92 %, L/min",
		Got:  hydraulics.PumpFlow(18*cc, 1500*rpm, 0.92) / litre * minute, Want: 24.8, Within: 0.05,
		Kind: figurestest.Published, Source: "https://machinecalc.pages.dev/hydraulic-pump-flow-hp-calculator",
	}, {
		Name: "pump of 50 cm³ at 1450 rpm, L/min",
		Got:  hydraulics.PumpFlow(50*cc, 1450*rpm, 1) / litre * minute, Want: 72.5, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://costcalculator.calculator.city/theoretical-flow-rate-calculator",
	}, {
		Name: "pump of 2.4 in³ at 1750 rpm, US gpm (the page cuts the last digit)",
		Got:  hydraulics.PumpFlow(2.4*inch*inch*inch, 1750*rpm, 1) / usgal * minute, Want: 18.1, Within: 0.1,
		Kind: figurestest.Published, Source: "https://hydrauliccalc.com/en/pump-flow",
	}, {
		Name: "pump of 1.6 cm³ at 2200 rpm, L/min",
		Got:  hydraulics.PumpFlow(1.6*cc, 2200*rpm, 1) / litre * minute, Want: 3.52, Within: 1e-9,
		Kind: figurestest.Published, Source: "https://hydrauliccalc.com/en/pump-flow",
	}, {
		Name: "4500 kg on 5 %, N (the page takes the grade as the sine)",
		Got:  hydraulics.SlopeForce(4500, 0.05), Want: 2207.25, Within: 4,
		Kind: figurestest.Published, Source: "https://de.webtec.com/education/grade-resistance/",
	}, {
		Name: "10 000 lb on 5 %, lb (the page takes the grade as the sine)",
		Got:  hydraulics.SlopeForce(10_000*lbf/g, 0.05) / lbf, Want: 500, Within: 1,
		Kind: figurestest.Published, Source: "https://de.webtec.com/education/grade-resistance/",
	}, {
		Name: "3000 lb on 16°, N (the page takes 0.454 kg/lb and 9.8 m/s²)",
		Got:  hydraulics.SlopeForce(3000*0.454, math.Tan(16*math.Pi/180)), Want: 3679, Within: 3,
		Kind: figurestest.Published, Source: "https://www.jiskha.com/display.cgi?id=1361972618",
	}, {
		Name: "1450 kg on 30°, N (the page rounds the weight to 14 250 N)",
		Got:  hydraulics.SlopeForce(1450, math.Tan(math.Pi/6)), Want: 7125, Within: 16,
		Kind:   figurestest.Published,
		Source: "https://commentfr.ru/voitures/conduite-et-scurit/accidents-de-voiture/13203-comment-calculer-la-force-ncessaire-pour-dplacer.html",
	}, {
		Name: "3/4 in master stroking 1.25 in, in³",
		Got:  hydraulics.PistonVolume(0.75, 1, 1.25), Want: 0.552, Within: 5e-4,
		Kind: figurestest.Published, Source: "https://calcady.com/trade/automotive/clutch-release-bearing-travel",
	}, {
		Name: "0.27 bar against a need of 0.54 bar, margin",
		Got:  hydraulics.VacuumMargin(0.27, 0.54), Want: 0.5, Within: 1e-12,
		Kind: figurestest.Computed, Source: "by hand",
	}, {
		Name: "vacuum booster of 250 mm at 67 kPa, N",
		Got:  hydraulics.BoosterAssist(67e3, 0.250), Want: 3124.4, Within: 0.05,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "vacuum booster of 250 mm at 45 kPa, N",
		Got:  hydraulics.BoosterAssist(45e3, 0.250), Want: 2098.5, Within: 0.05,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "9 L from 101.325 to 33.8 kPa at 1.6 L/s, s",
		Got:  hydraulics.PumpDownTime(9, 1.6, 101.325, 33.8), Want: 6.1755, Within: 1e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "120 N on a pedal of 6:1, master 19.05, slave 22.2 mm, fork 2.2 open 2151.2 N, N",
		Got:  hydraulics.PedalForce(2151.2, 19.05, 22.2, 2.2, 6), Want: 120, Within: 0.01,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "slave travel of the truck, mm",
		Got:  value(t, "hydraulics.slave_travel", truck()) * 1000, Want: 17.48830, Within: 1e-4,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "2145 kg on 20 %, N",
		Got:  hydraulics.SlopeForce(2145, 0.20), Want: 4125.4, Within: 0.1,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "2990 kg on 20 %, tyre of 780 mm, on the shaft ahead of 4.1, N·m",
		Got:  value(t, "hydraulics.parking_torque", truck()), Want: 547.0, Within: 0.05,
		Kind: figurestest.Computed, Source: "worked by another program",
	}})
}
