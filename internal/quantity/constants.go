package quantity

import "math/big"

// Definitions follow NIST SP 811 (2008), appendix B; the digits are from
// memory of that appendix and are compared with GNU units in the tests. All
// are exact unless the comment says otherwise.
var (
	pi    = rat("3.14159265358979323846264338327950288419716939937511") // 50 decimals
	inch  = rat("0.0254")                                               // m
	foot  = rat("0.3048")                                               // m
	mile  = rat("1609.344")                                             // m
	pound = rat("0.45359237")                                           // kg, avoirdupois
	gn    = rat("9.80665")                                              // m/s², standard gravity

	poundForce    = product(pound, gn) // N
	kilogramForce = gn                 // N
	cubicInch     = product(inch, inch, inch)
	cubicFoot     = product(foot, foot, foot)
	gallonUS      = product("231", cubicInch)                   // m³
	gallonImp     = rat("0.00454609")                           // m³
	btu           = rat("1055.05585262")                        // J, International Table
	horsepower    = product("550", foot, poundForce)            // W, mechanical: 550 ft·lbf/s
	metricHP      = product("75", kilogramForce)                // W, 75 kgf·m/s
	psi           = quotient(poundForce, product(inch, inch))   // Pa
	celsiusZero   = rat("273.15")                               // K
	fahrenheit    = rat("5/9")                                  // K
	fahrenheit0   = product("459.67", fahrenheit)               // K at 0 °F
	minute        = rat("60")                                   // s
	hour          = rat("3600")                                 // s
	kilowattHour  = rat("3600000")                              // J
	circularMil   = product(pi, "1/4", inch, inch, "1/1000000") // m², disc of 0.001 in
)

// The conventional columns of mercury and water, rounded as NIST SP 811 gives
// them; programs that multiply out the densities differ in late digits.
var (
	inchMercury = rat("3386.389") // Pa
	mmMercury   = rat("133.3224") // Pa
	inchWater   = rat("249.0889") // Pa
	mmWater     = rat("9.80665")  // Pa
)

// rat reads a decimal or a fraction of this file's own constants.
func rat(s string) *big.Rat {
	r, ok := new(big.Rat).SetString(s)
	if !ok {
		panic("quantity: constant " + s)
	}
	return r
}

// product multiplies factors given as *big.Rat or as text for rat.
func product(factors ...any) *big.Rat {
	p := big.NewRat(1, 1)
	for _, f := range factors {
		switch f := f.(type) {
		case *big.Rat:
			p.Mul(p, f)
		case string:
			p.Mul(p, rat(f))
		default:
			panic("quantity: product of something else than numbers")
		}
	}
	return p
}

func quotient(a, b any) *big.Rat {
	return new(big.Rat).Quo(product(a), product(b))
}
