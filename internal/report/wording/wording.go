// Package wording holds the sentences that every report carries.
package wording

// Deferral stands in every report: trialfit never approves a vehicle.
const Deferral = "This is the builder's own check. Final approval rests with the local authority."

// NotLegal stands beside verdicts on regions: what is not looked at is not allowed by that.
const NotLegal = "A PASS says that what these rules ask for is met and the questions they raise are answered. Not tested is not the same as legal."

// Cautions returns what is said to people who work at a hold point.
func Cautions(hold string) []string { return cautions[hold] }

var cautions = map[string][]string{
	"plan": {
		"figures at plan rest on what people claim: weigh and measure before metal is cut",
	},
	"strip": {
		"support the vehicle on stands on level ground; a jack alone holds nothing",
		"drain fuel away from flames, sparks and pits; cap lines and tank",
		"refrigerant is recovered by a certified technician before a line is opened",
		"disconnect the battery, negative first",
	},
	"mockup": {
		"nobody stands under a hanging engine; the crane's plate at the boom hole used governs",
		"keep the load low and chock the crane before reaching in",
	},
	"install": {
		"before welding: batteries and control units off, tank out or purged, extinguisher at hand",
		"structural and brake work is for people licensed for it where the law says so",
	},
	"first-start": {
		"the means to stop a runaway diesel is proved and in somebody's hand",
		"wheels chocked, out of gear, exhaust led outside, extinguisher at hand, nobody near belts and fan",
	},
	"road-test": {
		"brakes and steering are proved at walking pace before the road",
		"drive on the road only as local law allows for an unregistered or changed vehicle",
	},
	"inspection": {
		"bring the vehicle the way the authority asks, on a trailer where it may not be driven yet",
	},
	"handover": {
		"tell the owner what changed: mass, braking, fuel, maintenance; and that the insurer must know",
	},
}
