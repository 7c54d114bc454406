package quantity

// electrics holds the kinds from Current to Conductor.
func electrics() []family {
	perHorsepowerHour := quotient("1", product(horsepower, hour))
	return []family{
		{Current, "A", []unit{
			u("A", "1", "amp,amps"),
			u("mA", "1/1000", ""),
			u("kA", "1000", ""),
		}},
		{Voltage, "V", []unit{
			u("V", "1", "volt,volts"),
			u("mV", "1/1000", ""),
			u("kV", "1000", ""),
		}},
		{Resistance, "Ω", []unit{
			u("Ω", "1", "ohms"),
			u("mΩ", "1/1000", "mohms,milliohm,milliohms"),
			u("kΩ", "1000", "kohms"),
			u("MΩ", "1000000", ""),
			u("µΩ", "1/1000000", ""),
		}},
		{ResistancePerLength, "Ω/m", []unit{
			u("Ω/km", "1/1000", ""),
			u("mΩ/m", "1/1000", ""),
			u("Ω/m", "1", ""),
			u("Ω/kft", quotient("1/1000", foot), "Ω/1000 ft"),
			u("mΩ/ft", quotient("1/1000", foot), ""),
		}},
		{Charge, "C", []unit{
			u("Ah", hour, "A·h"),
			u("mAh", product("1/1000", hour), "mA·h"),
			u("C", "1", ""),
		}},
		{VolumeFlow, "m³/s", []unit{
			u("L/min", quotient("1/1000", minute), "l/min,lpm,LPM"),
			u("L/h", quotient("1/1000", hour), "l/h"),
			u("L/s", "1/1000", "l/s"),
			u("m³/h", quotient("1", hour), ""),
			u("m³/min", quotient("1", minute), ""),
			u("m³/s", "1", ""),
			u("cfm", quotient(cubicFoot, minute), "CFM,ft³/min"),
			u("US gpm", quotient(gallonUS, minute), "US gal/min,gpm US"),
			u("imp gpm", quotient(gallonImp, minute), "imp gal/min,gpm imp"),
			u("US gal/h", quotient(gallonUS, hour), "US gph,gph US"),
			u("imp gal/h", quotient(gallonImp, hour), "imp gph,gph imp"),
			u("mL/min", quotient("1/1000000", minute), "ml/min,cc/min,cm³/min"),
		}},
		{MassFlow, "kg/s", []unit{
			u("kg/h", quotient("1", hour), ""),
			u("kg/s", "1", ""),
			u("g/s", "1/1000", ""),
			u("lb/min", quotient(pound, minute), "lbs/min"),
			u("lb/h", quotient(pound, hour), "lb/hr,lbs/h,lbs/hr"),
			u("kg/min", quotient("1", minute), ""),
		}},
		{MassPerLength, "kg/m", []unit{
			u("kg/m", "1", ""),
			u("g/m", "1/1000", ""),
			u("lb/ft", quotient(pound, foot), "lbs/ft"),
			u("lb/in", quotient(pound, inch), "lbs/in"),
		}},
		{Density, "kg/m³", []unit{
			u("kg/m³", "1", ""),
			u("kg/L", "1000", "kg/l,kg/dm³"),
			u("g/cm³", "1000", "g/mL,g/ml,g/cc"),
			u("g/L", "1", "g/l"),
			u("lb/ft³", quotient(pound, cubicFoot), ""),
			u("lb/US gal", quotient(pound, gallonUS), ""),
		}},
		{SpecificConsumption, "kg/J", []unit{
			u("g/kWh", quotient("1/1000", kilowattHour), "g/kW·h,g/(kW·h)"),
			u("lb/hp·h", product(pound, perHorsepowerHour), "lb/(hp·h),lb/hph,lb/hp·hr,lb/bhp·h,lb/bhp·hr"),
			u("kg/kWh", quotient("1", kilowattHour), "kg/kW·h,kg/(kW·h)"),
			u("g/PS·h", quotient("1/1000", product(metricHP, hour)), "g/PSh,g/(PS·h)"),
			u("kg/J", "1", ""),
		}},
		{VolumePerDistance, "m³/m", []unit{
			u("L/100 km", "1/100000000", "l/100 km,L/100km,l/100km"),
			u("US gal/100 mi", quotient(gallonUS, product("100", mile)), "gal/100 mi US"),
			u("imp gal/100 mi", quotient(gallonImp, product("100", mile)), "gal/100 mi imp"),
			u("m³/m", "1", ""),
		}},
		{KinematicViscosity, "m²/s", []unit{
			u("mm²/s", "1/1000000", ""),
			u("cSt", "1/1000000", "centistokes"),
			u("St", "1/10000", "stokes"),
			u("m²/s", "1", ""),
		}},
		{Absorption, "1/m", []unit{
			u("1/m", "1", "m⁻¹,m-1,m^-1"),
		}},
		{SoundLevel, "dB(A)", []unit{
			u("dB(A)", "1", "dBA"),
		}},
		{Stiffness, "N/m", []unit{
			u("N/mm", "1000", ""),
			u("lbf/in", quotient(poundForce, inch), "lbsf/in"),
			u("kN/m", "1000", ""),
			u("N/m", "1", ""),
			u("kgf/mm", product(kilogramForce, "1000"), ""),
			u("lbf/ft", quotient(poundForce, foot), ""),
		}},
		{CurrentPerVolume, "A/m³", []unit{
			u("A/L", "1000", "A/l"),
			u("A/in³", quotient("1", cubicInch), "A/ci,A/cid,A/cu in"),
			u("A/m³", "1", ""),
		}},
		{AngularAcceleration, "rad/s²", []unit{
			u("rad/s²", "1", "rad/s/s"),
			u("°/s²", quotient(pi, "180"), "deg/s²"),
		}},
		{TurnsPerLength, "1/m", []unit{
			u("rev/km", "1/1000", "revs/km,r/km"),
			u("rev/mi", quotient("1", mile), "rev/mile,revs/mile,revs/mi,r/mi"),
			u("1/m", "1", "rev/m"),
		}},
		{PowerPerMass, "W/kg", []unit{
			u("kW/t", "1", "W/kg"),
			u("hp/lb", quotient(horsepower, pound), ""),
			u("hp/short ton", quotient(horsepower, product("2000", pound)), ""),
			u("PS/t", quotient(metricHP, "1000"), ""),
		}},
		{Stress, "Pa", []unit{
			u("MPa", "1000000", "N/mm²"),
			u("ksi", product("1000", psi), ""),
			u("psi", psi, "lbf/in²"),
			u("kPa", "1000", ""),
			u("Pa", "1", "N/m²"),
		}},
		{Ratio, "1", []unit{
			u("", "1", ""),
			u("%", "1/100", "percent"),
			u(":1", "1", ": 1"),
		}},
		{Conductor, "m²", []unit{
			u("mm²", "1/1000000", "sq mm"),
			u("kcmil", product("1000", circularMil), "MCM"),
			u("m²", "1", ""),
		}},
	}
}
