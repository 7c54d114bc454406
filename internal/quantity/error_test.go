package quantity

import (
	"errors"
	"strings"
	"testing"
)

// TestErrors compares whole messages: they are what a user reads.
func TestErrors(t *testing.T) {
	for _, c := range []struct {
		text string
		kind Kind
		want string
	}{
		{"24.5 lb/ft", Torque, `"24.5 lb/ft" is a mass per length, not a torque: write "24.5 lbf·ft"`},
		{"20..25 lb/ft", Torque, `"20..25 lb/ft" is a mass per length, not a torque: write "20..25 lbf·ft"`},
		{"25 ± 2 ft/lb", Torque, `"25 ± 2 ft/lb" has an unknown unit "ft/lb": write "25 ± 2 lbf·ft"`},
		{"3 kg-m", Torque, `"3 kg-m" has an unknown unit "kg-m": write "3 kgf·m"`},
		{"12 kW", Torque, `"12 kW" is a power, not a torque: a torque is written with N·m, lbf·ft, lbf·in, kgf·m, kN·m`},
		{"24 Nm", Energy, `"24 Nm" is a torque, not an energy: an energy is written with J, kJ, MJ, Wh, kWh, ...`},
		{"12 psi", Torque, `"12 psi" is a pressure, not a torque: a torque is written with N·m, lbf·ft, lbf·in, kgf·m, kN·m`},
		{"312", Mass, `"312" has no unit: a mass is written with kg, g, t, lb, oz, ...`},
		{"300..330", Mass, `"300..330" has no unit: a mass is written with kg, g, t, lb, oz, ...`},
		{"312 ± 2 %", Mass, `"312 ± 2 %" has no unit: a mass is written with kg, g, t, lb, oz, ...`},
		{"10", Conductor, `"10" has no unit: a conductor size is written with mm², AWG or SAE, such as "50 mm²" or "2/0 AWG"`},
		{"12 furlong", Length, `"12 furlong" has an unknown unit "furlong": a length is written with mm, cm, m, in, ft, ...`},
		{"12 kgg", Mass, `"12 kgg" has an unknown unit "kgg": did you mean "kg"?`},
		{"12 KG", Mass, `"12 KG" has an unknown unit "KG": did you mean "kg"?`},
		{"12 metrs", Length, `"12 metrs" has an unknown unit "metrs": did you mean "m"?`},
		{"5 kN", Speed, `"5 kN" is a force, not a speed: did you mean "kn"?`},
		{"330..300 kg", Mass, `"330..300 kg" runs backwards: write the smaller value first`},
		{"8..10 AWG", Conductor, `"8..10 AWG" runs backwards: write the thinner conductor first`},
		{"30 psi", AbsolutePressure, `"30 psi" does not say whether it is gauge or absolute: write "30 psia"`},
		{"98..102 kPa", AbsolutePressure, `"98..102 kPa" does not say whether it is gauge or absolute: write "98..102 kPa abs"`},
		{"30 psig", AbsolutePressure, `"30 psig" is a gauge pressure, not an absolute pressure: an absolute pressure is written with psia, kPa abs, bar abs, MPa abs, Pa abs, ...`},
		{"30 psia", GaugePressure, `"30 psia" is an absolute pressure, not a gauge pressure: take off the pressure of the air, about 101 kPa at sea level`},
		{"2 psig", PressureDifference, `"2 psig" is a gauge pressure, not a pressure difference: write "2 psi"`},
		{"5 kg/cm2", GaugePressure, `"5 kg/cm2" has an unknown unit "kg/cm2": write "5 kgf/cm²"`},
		{"12 gal", Volume, `"12 gal" does not say which gallon: write "12 US gal" or "12 imp gal"`},
		{"12 gal", Mass, `"12 gal" is a volume, not a mass: a mass is written with kg, g, t, lb, oz, ...`},
		{"3 gpm", VolumeFlow, `"3 gpm" does not say which gallon: write "3 US gpm" or "3 imp gpm"`},
		{"2 ton", Mass, `"2 ton" does not say which ton: write "2 t", "2 short ton" or "2 long ton"`},
		{"12 oz", Volume, `"12 oz" is a mass, not a volume: write "12 US fl oz" or "12 imp fl oz"`},
		{"200 lb", Force, `"200 lb" is a mass, not a force: write "200 lbf"`},
		{"450 lb/in", Stiffness, `"450 lb/in" is a mass per length, not a stiffness: write "450 lbf/in"`},
		{"95 dB", SoundLevel, `"95 dB" does not say which weighting: write "95 dB(A)"`},
		{"10 ga", Conductor, `"10 ga" does not say which gauge: write "10 AWG" or "10 SAE"`},
		{"5/0 AWG", Conductor, `"5/0 AWG" is not among the AWG sizes: they run from 40 to 4/0`},
		{"50 AWG", Conductor, `"50 AWG" is not among the AWG sizes: they run from 40 to 4/0`},
		{"5 SAE", Conductor, `"5 SAE" is not among the SAE sizes: they run from 18 to 4/0`},
		{"10 AWG ± 5 %", Conductor, `"10 AWG ± 5 %" gives a tolerance to a trade size: write the two sizes, such as "2..1/0 AWG"`},
		{"2/0", Conductor, `"2/0" has no unit: a conductor size is written with mm², AWG or SAE, such as "50 mm²" or "2/0 AWG"`},
		{"3/0 in", Length, `"3/0 in" divides by zero: write the fraction out, such as "3/8"`},
		{"1 9/8 in", Length, `"1 9/8 in" adds a fraction of one or more to a whole number: write "1 3/8" for one and three eighths`},
		{"41:0", Ratio, `"41:0" divides by zero: a ratio is written with no unit, % or :1`},
		{"0.6 kg", Ratio, `"0.6 kg" is a mass, not a ratio: a ratio is written with no unit, % or :1`},
		{"4.1 ± 2 %", Ratio, `"4.1 ± 2 %" does not say what the percentage is of: write the range out, such as "4.0..4.2"`},
		{"90 °C ± 2 %", Temperature, `"90 °C ± 2 %" gives a percentage of a temperature: write the tolerance in °C`},
		{"90°", Temperature, `"90°" does not say which degree: write "90 °C" or "90 °F"`},
		{"312 kg ± -5", Mass, `"312 kg ± -5" has a negative tolerance: write "312 kg ± 5"`},
		{"312 kg ± 5 mm", Mass, `"312 kg ± 5 mm" is a length, not a mass: a mass is written with kg, g, t, lb, oz, ...`},
		{"-300 °C", Temperature, `"-300 °C" is below absolute zero: nothing is colder than -273.15 °C`},
		{"-5 kPa abs", AbsolutePressure, `"-5 kPa abs" is below a perfect vacuum: a pressure less than that of the air is a negative gauge pressure`},
		{"1e3 mm", Length, `"1e3 mm" has an exponent: write the number out, "1000 mm"`},
		{"1e99 mm", Length, `"1e99 mm" has an exponent: write the number out`},
		{"5,9 L", Volume, `"5,9 L" has a decimal comma: write "5.9 L"`},
		{"1,234 lb", Mass, `"1,234 lb" has a comma in its number: write "1234 lb" or "1.234 lb"`},
		{"1,234.5 lb", Mass, `"1,234.5 lb" has a number in groups: write "1234.5 lb"`},
		{"1.234,5 kg", Mass, `"1.234,5 kg" has a decimal comma: write "1234.5 kg"`},
		{"1 234 kg", Mass, `"1 234 kg" has a number in groups: write "1234 kg"`},
		{"1'234 kg", Mass, `"1'234 kg" has a number in groups: write "1234 kg"`},
		{"300-330 kg", Mass, `"300-330 kg" joins two numbers without saying how: write "300..330 kg"`},
		{"300 kg - 330 kg", Mass, `"300 kg - 330 kg" joins two numbers without saying how: write "300 kg..330 kg"`},
		{"300 to 330 kg", Mass, `"300 to 330 kg" joins two numbers without saying how: write "300..330 kg"`},
		{"1.2.3 kg", Mass, `"1.2.3 kg" does not read as one number: write it like "12 kg"`},
		{"300..", Mass, `"300.." does not give both ends of its range: write both, such as "300..330 kg"`},
		{"..330 kg", Mass, `"..330 kg" does not give both ends of its range: write both, such as "300..330 kg"`},
		{"312 kg ±", Mass, `"312 kg ±" does not give a number on both sides of ±: write both, such as "312 kg ± 5"`},
		{"1..2..3 kg", Mass, `"1..2..3 kg" has more than one range: write one, such as "300..330 kg" or "312 kg ± 5"`},
		{"", Mass, `"" is empty: write it like "12 kg"`},
		{"kg", Mass, `"kg" does not start with a number: write it like "12 kg"`},
		{"NaN kg", Mass, `"NaN kg" does not start with a number: write it like "12 kg"`},
		{"inf", Ratio, `"inf" does not start with a number: write it like "4.10"`},
		{"-Inf kg", Mass, `"-Inf kg" does not start with a number: write it like "12 kg"`},
		{"0x10 kg", Mass, `"0x10 kg" has an unknown unit "x10 kg": a mass is written with kg, g, t, lb, oz, ...`},
		{"5 kg\nmore", Mass, `"5 kg\nmore" has an unknown unit "kg\nmore": a mass is written with kg, g, t, lb, oz, ...`},
		{strings.Repeat("1", 31) + " kg", Mass, `"1111111111111111111111111111111 kg" has 31 digits: a quantity has at most 30`},
		{strings.Repeat("x", 101), Mass, `"xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…" is 101 characters long: a quantity has at most 100`},
		{"5 kg", "colour", `"5 kg" is due as "colour", which is no kind of quantity`},
	} {
		_, err := Parse(c.text, c.kind)
		if err == nil {
			t.Errorf("%s %q is accepted", c.kind, c.text)
			continue
		}
		if err.Error() != c.want {
			t.Errorf("%s\n got %s\nwant %s", c.kind, err, c.want)
		}
		var e *Error
		if !errors.As(err, &e) || e.Kind != c.kind || e.Found == "" || len(e.Accepted) != len(Symbols(c.kind)) {
			t.Errorf("%q: %#v", c.text, err)
		}
	}
}
