package quantity

// fluids holds the kinds from GaugePressure to TemperatureDifference.
func fluids() []family {
	return []family{
		{GaugePressure, "Pa", gauge(pressures())},
		{AbsolutePressure, "Pa", absolute(pressures())},
		{PressureDifference, "Pa", pressures()},
		{Temperature, "K", []unit{
			shifted("°C", "1", celsiusZero, "C,degC,deg C,celsius"),
			shifted("°F", fahrenheit, fahrenheit0, "F,degF,deg F,fahrenheit"),
			u("K", "1", "°K,kelvin"),
		}},
		{TemperatureDifference, "K", []unit{
			u("K", "1", "°K,kelvin"),
			u("°C", "1", "C,degC,deg C,celsius"),
			u("°F", fahrenheit, "F,degF,deg F,fahrenheit"),
		}},
	}
}

// pressures are the bare units. What they are measured from is the kind's to
// say.
func pressures() []unit {
	return []unit{
		u("psi", psi, "lbf/in²,lb/in²"),
		u("kPa", "1000", ""),
		u("bar", "100000", ""),
		u("MPa", "1000000", ""),
		u("Pa", "1", ""),
		u("hPa", "100", ""),
		u("mbar", "100", ""),
		u("inHg", inchMercury, "in Hg"),
		u("mmHg", mmMercury, "mm Hg"),
		u("inH2O", inchWater, "in H2O,inWC,in WC"),
		u("mmH2O", mmWater, "mm H2O"),
		u("kgf/cm²", quotient(kilogramForce, "1/10000"), ""),
		u("atm", "101325", ""),
	}
}

// gauge adds the suffixes that say gauge to the bare spellings.
func gauge(units []unit) []unit {
	for i := range units {
		t := &units[i]
		for _, bare := range append([]string{t.symbol}, t.aliases...) {
			t.aliases = append(t.aliases, bare+" gauge", bare+" g", bare+"g")
		}
	}
	return units
}

// absolute replaces the bare spellings by those that say absolute.
func absolute(units []unit) []unit {
	for i := range units {
		t := &units[i]
		var said []string
		for _, bare := range append([]string{t.symbol}, t.aliases...) {
			said = append(said, bare+" abs", bare+" absolute", bare+" a", bare+"a")
		}
		t.symbol, t.aliases = absoluteSymbol(t.symbol), said
	}
	return units
}

func absoluteSymbol(bare string) string {
	if bare == "psi" {
		return "psia"
	}
	return bare + " abs"
}
