// Package thread knows the threads of ports, adapters and senders: their
// basic dimensions, how a workshop writes them, which ones mate, and which
// ones start into one another by hand and then leak.
//
// Dimensions are basic (without tolerance). They identify a thread and tell two
// apart; they are no substitute for a gauge.
package thread

import (
	"math"
	"strings"
)

// The standards a thread can belong to.
const (
	NPT         = "NPT"          // ASME B1.20.1 taper pipe thread, made up with sealant
	NPTF        = "NPTF"         // ASME B1.20.3 taper pipe thread, crests crush and seal dry
	NPSM        = "NPSM"         // ASME B1.20.1 straight pipe thread for mechanical joints
	G           = "G"            // ISO 228 parallel pipe thread (BSPP)
	R           = "R"            // ISO 7 external taper pipe thread (BSPT)
	Rc          = "Rc"           // ISO 7 internal taper pipe thread (BSPT)
	Rp          = "Rp"           // ISO 7 internal parallel pipe thread
	Metric      = "metric"       // DIN 3852-1 / ISO 9974 parallel, sealed on the spot face
	MetricTaper = "metric taper" // DIN 158 external taper, screwed into a parallel port
	ISO6149     = "ISO 6149"     // metric port with an O-ring in the chamfer
	JIC37       = "JIC 37"       // SAE J514 flare; AN is the same thread and cone, closer toleranced
	SAE45       = "SAE 45"       // SAE J512 flare
	ORB         = "ORB"          // SAE J1926 / ISO 11926 straight thread O-ring boss
	UNF         = "UNF"          // unified fine, sealed by a washer on the face
	UN          = "UN"           // unified 12 per inch, sealed by a washer on the face
)

// The two genders. A workshop also says male and female.
const (
	External = "external"
	Internal = "internal"
)

// Thread is one end of a port, adapter or sender. Lengths are in metres.
type Thread struct {
	// Standard is one of the constants of this package.
	Standard string
	// Size is the size as that standard prints it: "1/2", "1-1/4", "M14×1.5",
	// "-6", "9/16-18".
	Size string
	// Gender is External or Internal, empty for a row of All.
	Gender string
	// Major is the basic major diameter: the pipe's outside diameter for NPT and
	// NPTF, the diameter at the gauge plane for R and Rc.
	Major float64
	// Pitch is the axial distance between neighbouring threads.
	Pitch float64
	// Angle is the included thread angle in radians: 60° or 55°.
	Angle float64
	// Taper is the growth of diameter per length: 1/16, or 0 for a parallel thread.
	Taper float64
	// Seal is what makes the joint tight: "thread" (with sealant), "dry thread",
	// "face", "o-ring boss", "30° cone", "37° cone" or "45° cone".
	Seal string
	// PerInch is the number of threads per inch, 0 for metric threads.
	PerInch float64
	// Engagement is the effective thread length L2 of NPT and NPTF, 0 for all others.
	Engagement float64
	// HandTight is how far the external thread goes in by hand: L1 of NPT and NPTF,
	// the gauge length of R and Rc, 0 for all others.
	HandTight float64
	// Text is the thread as it was written, empty for a row of All.
	Text string
}

// Name is the one spelling used in reports: "1/2-14 NPT external", "G 1/2 internal",
// "M14×1.5 external", "-6 JIC 37 (9/16-18) external". Parse reads it back.
func (t Thread) Name() string {
	var name string
	switch t.Standard {
	case NPT, NPTF, NPSM:
		name = t.Size + "-" + decimal(t.PerInch) + " " + t.Standard
	case G, R, Rc, Rp:
		name = t.Standard + " " + t.Size
	case Metric:
		name = t.Size
	case MetricTaper:
		name = t.Size + " taper"
	case JIC37, SAE45, ORB:
		name = t.Size + " " + t.Standard
		if screw := screwOf(t.Standard, t.Size); screw != "" {
			name += " (" + screw + ")"
		}
	default:
		name = t.Size + " " + t.Standard
	}
	return strings.TrimSpace(name + " " + t.Gender)
}

// Same reports whether a and b are the same thread of the same gender, however
// each was written.
func Same(a, b Thread) bool {
	return a.Standard == b.Standard && a.Size == b.Size && a.Gender == b.Gender
}

// mating lists, for each internal thread, the external threads its standard
// joins it with at the same size.
//
// NPT and NPTF are cut to the same pitch diameters and lengths, so either goes
// into the other; the joint is then made up with sealant like any NPT joint,
// because only two NPTF threads crush crest to root. Lookalike says so.
// Sources: ASME B1.20.3 (1976) 1.4.1.1, as excerpted on
// https://jiaotongmap.com/asme-b1-20-3-1976-2018-pdf-free-download-dryseai-pipe-threads.html;
// http://iowamidland.com/tech%20tips/Kennametal%20Greenfield-IPG%20Technical%20Tips%20Program073002.htm
//
// ISO 7-1 joins the taper external R with Rc and with Rp; G belongs to ISO 228,
// which does not seal on the thread, and mates with G alone:
// https://titanfittings.com/fitting-thread-chart_a/343.htm
//
// The metric taper of DIN 158 exists on the external thread only and goes, with
// sealant, into the parallel thread of a DIN 3852-1 form Z port:
// https://www.pressol.com/informationen/spezifikationsdokumente-gewinde/kegeliges-metrisches-aussengewinde-nach-din-158/?lang=de
var mating = map[string][]string{
	NPT:     {NPT, NPTF},
	NPTF:    {NPTF, NPT},
	NPSM:    {NPSM},
	G:       {G},
	Rc:      {R},
	Rp:      {R},
	Metric:  {Metric, MetricTaper},
	ISO6149: {ISO6149},
	JIC37:   {JIC37},
	SAE45:   {SAE45},
	ORB:     {ORB},
	UNF:     {UNF},
	UN:      {UN},
}

// onlyGender is the gender of a standard that has just one, "" where it has both.
func onlyGender(standard string) string {
	switch standard {
	case R, MetricTaper:
		return External
	case Rc, Rp:
		return Internal
	}
	return ""
}

// Mates reports whether external screws into internal and seals in the way their
// standard intends, with sealant where that is the way. A pair that is given in
// the wrong order, or whose genders are missing, does not mate.
func Mates(internal, external Thread) bool {
	if internal.Gender != Internal || external.Gender != External || internal.Size != external.Size {
		return false
	}
	for _, standard := range mating[internal.Standard] {
		if standard == external.Standard {
			return true
		}
	}
	return false
}

// Gap is the difference of the basic major diameters, in metres, never negative.
func Gap(a, b Thread) float64 { return math.Abs(a.Major - b.Major) }

// PitchError is how far the flanks of a and b have run apart, in metres, after so
// many engaged threads: the difference of pitch times their number. It is 0 when
// engaged is not positive.
func PitchError(a, b Thread, engaged int) float64 {
	return math.Abs(a.Pitch-b.Pitch) * float64(max(engaged, 0))
}
