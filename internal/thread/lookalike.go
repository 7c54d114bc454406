package thread

import (
	"fmt"
	"math"
	"strings"
)

// What "starts by hand" means. Looseness and length are the difference between a
// thread that merely looks similar and one that goes in and then leaks.
const (
	// startTurns is how many turns must go in before the flanks have run apart by
	// half a pitch, where crest meets crest: fewer, and nobody is misled.
	startTurns = 2
	// leastOverlap is how much of the internal thread's depth the external one must
	// reach, or it slips in without turning.
	leastOverlap = 1.0 / 3
	// playAllowance is by how much the external pitch diameter may exceed the
	// internal one: about what the tolerances of a commercial pair leave, from memory
	// of ISO 965-1 and ISO 228-1 (0.1 mm to 0.2 mm on either thread).
	playAllowance = 0.25 * millimetre
	// smallEndTurns is how many turns the small end of an R or metric taper thread
	// lies ahead of its gauge plane, rounded down from 4.4 to 7 (from memory of ISO 7-1).
	smallEndTurns = 4
	// reportTurns is the engagement for which a reason prints the pitch error.
	reportTurns = 6
)

// Lookalike reports whether a and b are different threads of which one starts in
// the other by hand, but which do not seal, with the reason. Where genders are given
// only that way round is tried; equal genders never start.
//
// NPT and NPTF are the one pair that is a look-alike and still mates: neither seals
// dry in the other, both do with sealant.
func Lookalike(a, b Thread) (string, bool) {
	if a.Standard == b.Standard && a.Size == b.Size {
		return "", false
	}
	if !startsEitherWay(a, b) {
		return "", false
	}
	pair := fmt.Sprintf("%s and %s start into one another", a.Name(), b.Name())
	if a.Seal != b.Seal && pipeTapered(a) && pipeTapered(b) {
		return pair + " but seal only with sealant: NPTF seals dry in NPTF alone", true
	}
	if matesEitherWay(a, b) {
		return "", false
	}
	return pair + " but do not seal: " + strings.Join(differences(a, b), ", "), true
}

func pipeTapered(t Thread) bool { return t.Standard == NPT || t.Standard == NPTF }

// differences names what sets a and b apart, geometry first.
func differences(a, b Thread) []string {
	var found []string
	if a.Pitch != b.Pitch {
		found = append(found, fmt.Sprintf("pitch %.3f mm against %.3f mm, %.2f mm apart after %d turns",
			a.Pitch/millimetre, b.Pitch/millimetre, PitchError(a, b, reportTurns)/millimetre, reportTurns))
	}
	if gap := Gap(a, b); gap >= 0.01*millimetre {
		found = append(found, fmt.Sprintf("%.2f mm apart in diameter", gap/millimetre))
	}
	if a.Angle != b.Angle {
		found = append(found, fmt.Sprintf("thread angle %.0f° against %.0f°", a.Angle/degree, b.Angle/degree))
	}
	if a.Taper != b.Taper {
		found = append(found, form(a)+" against "+form(b))
	}
	if a.Seal != b.Seal {
		found = append(found, fmt.Sprintf("%s seal against %s seal", a.Seal, b.Seal))
	}
	return found
}

func form(t Thread) string {
	if t.Taper > 0 {
		return "tapered"
	}
	return "parallel"
}

func matesEitherWay(a, b Thread) bool {
	return matesAs(a, b) || matesAs(b, a)
}

func matesAs(internal, external Thread) bool {
	if !canBe(internal, Internal) || !canBe(external, External) {
		return false
	}
	internal.Gender, external.Gender = Internal, External
	return Mates(internal, external)
}

func startsEitherWay(a, b Thread) bool {
	return starts(a, b) || starts(b, a)
}

func canBe(t Thread, gender string) bool {
	if only := onlyGender(t.Standard); only != "" && only != gender {
		return false
	}
	return t.Gender == "" || t.Gender == gender
}

// starts reports whether external goes into internal by hand.
func starts(internal, external Thread) bool {
	if !canBe(internal, Internal) || !canBe(external, External) {
		return false
	}
	if PitchError(internal, external, startTurns) >= max(internal.Pitch, external.Pitch)/2 {
		return false
	}
	if entry(external, External) > entry(internal, Internal)+playAllowance {
		return false
	}
	depth := depthOf(internal)
	minor := mouth(internal) - 2*depth
	return external.Major-minor >= leastOverlap*2*depth
}

// entry is the pitch diameter, in metres, that meets the other thread first: at the
// small end of an external taper, at the mouth of an internal one.
func entry(t Thread, gender string) float64 {
	switch {
	case pipeTapered(t) && gender == External:
		return PitchDiameterE0(t.Major, t.Pitch)
	case pipeTapered(t):
		return pitchDiameterE1(t.Size)
	case gender == External:
		return t.Major - addendum(t) - t.Taper*smallEndTurns*t.Pitch
	default:
		return t.Major - addendum(t)
	}
}

// mouth is the major diameter at the mouth of an internal thread, in metres.
func mouth(t Thread) float64 {
	if pipeTapered(t) {
		return pitchDiameterE1(t.Size) + pipeDepth*t.Pitch
	}
	return t.Major
}

// addendum is major less pitch diameter, in metres.
func addendum(t Thread) float64 {
	if whitworth(t) {
		return whitworthDepth * t.Pitch
	}
	return isoAddendum * t.Pitch
}

// depthOf is the depth of an internal thread measured on the radius, in metres.
func depthOf(t Thread) float64 {
	switch {
	case pipeTapered(t):
		return pipeDepth * t.Pitch
	case whitworth(t):
		return whitworthDepth * t.Pitch
	default:
		return isoDepth * t.Pitch
	}
}

func whitworth(t Thread) bool { return math.Abs(t.Angle-55*degree) < degree }
