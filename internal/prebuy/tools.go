package prebuy

import (
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/schema"
)

// Ways to find something out.
const (
	AskSeller = "ask"
	Measure   = "measure"
	GetPrice  = "price"
)

// byPlace names the tool for places whose kind does not tell; the longest
// prefix counts.
var byPlace = []struct{ prefix, way, tool string }{
	{"chassis.vin", Measure, "phone: photograph the plate and the stamp on the frame"},
	{"chassis.ratings", Measure, "phone: photograph the certification label"},
	{"chassis.model_year", Measure, "phone: photograph the certification label"},
	{"chassis.category", Measure, "phone: photograph the certification label"},
	{"chassis.certification", Measure, "phone: photograph the emission label under the bonnet"},
	{"chassis.emission_equipment", Measure, "phone: photograph the emission label under the bonnet, then look for each item on it"},
	{"chassis.emission_stage", Measure, "phone: photograph the registration paper"},
	{"chassis.engine_options", AskSeller, "brochure or parts list of the chassis line"},
	{"chassis.tyres", Measure, "phone: photograph the sidewall; tape for the diameter"},
	{"registration.zone", AskSeller, "the address where it will be kept"},
	{"registration", Measure, "phone: photograph title and registration paper"},
	{"baseline.corner_weights", Measure, "wheel scales, or a public weighbridge axle by axle"},
	{"engine.number", Measure, "wire brush and phone: photograph the stamp on the block"},
	{"engine.family", Measure, "phone: photograph the engine plate"},
	{"engine.model_year", Measure, "phone: photograph the emission label on the engine"},
	{"engine.certification", Measure, "phone: photograph the emission label on the engine"},
	{"engine.emission_equipment", Measure, "phone: photograph the emission label on the engine, then look for each item on it"},
	{"engine.diagnostics", Measure, "look for the diagnostic socket"},
	{"engine.displacement", Measure, "phone: photograph the engine plate"},
	{"engine.mass", AskSeller, "data sheet of the maker, or a crane scale"},
	{"outgoing_engine.mass", AskSeller, "data sheet of the maker, or a crane scale"},
	{"engine.donor", AskSeller, "a cold start with you beside it"},
	{"transmission", Measure, "phone: photograph the tag on the gearbox"},
	{"transfer_case", Measure, "phone: photograph the tag on the transfer case"},
	{"axles", Measure, "tag on the axle; or chalk, and count the turns of the shaft for one of the wheel"},
}

// byKind names the tool for a kind of quantity.
var byKind = map[quantity.Kind][2]string{
	quantity.Length:          {Measure, "tape"},
	quantity.Mass:            {Measure, "scale"},
	quantity.Angle:           {Measure, "inclinometer"},
	quantity.Temperature:     {Measure, "thermometer"},
	quantity.GaugePressure:   {Measure, "pressure gauge"},
	quantity.Current:         {Measure, "clamp meter"},
	quantity.Voltage:         {Measure, "voltmeter"},
	quantity.RotationalSpeed: {AskSeller, "engine plate or data sheet of the maker"},
	quantity.Power:           {AskSeller, "engine plate or data sheet of the maker"},
	quantity.Torque:          {AskSeller, "data sheet of the maker"},
	quantity.Ratio:           {AskSeller, "tag, plate or data sheet"},
	quantity.Time:            {AskSeller, "watch"},
	quantity.Volume:          {AskSeller, "plate or data sheet"},
}

// tool says how a place of the manifest is found out.
func tool(n *manifest.Node) (way, with string) {
	best := -1
	for i, p := range byPlace {
		if (n.Path == p.prefix || strings.HasPrefix(n.Path, p.prefix+".")) && (best < 0 || len(p.prefix) > len(byPlace[best].prefix)) {
			best = i
		}
	}
	if best >= 0 {
		return byPlace[best].way, byPlace[best].tool
	}
	if n.Shape.Leaf == schema.LeafQuantity {
		if t, ok := byKind[n.Shape.Quantity]; ok {
			return t[0], t[1]
		}
	}
	return AskSeller, "the seller"
}
