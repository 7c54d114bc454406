package thread

import (
	"math"
	"slices"
	"strconv"
	"strings"
)

const (
	inch       = 0.0254
	millimetre = 0.001
	degree     = math.Pi / 180
	pipeTaper  = 1.0 / 16
)

// Depths of thread as multiples of the pitch, measured on the radius. The first is
// ASME B1.20.1 2.4 (https://www.freestandardsintroduction.com/asme-b1-20-1-pdf-download.html),
// the greatest depth of the truncated thread; the others follow from the sharp triangle: the Whitworth form
// loses a sixth of its height at crest and root, the ISO 68 form (metric and unified)
// an eighth at the crest and a quarter at the root.
const (
	pipeDepth      = 0.8
	whitworthDepth = 0.640327
	isoDepth       = 0.541266
	isoAddendum    = 0.649519 // major less pitch diameter, on the diameter
)

// PitchDiameterE0 is the pitch diameter at the small end of an NPT thread, in metres,
// from the outside diameter of the pipe and the pitch, both in metres:
// E0 = D − (0.05·D + 1.1)·p with D and p in inches (ASME B1.20.1).
func PitchDiameterE0(outside, pitch float64) float64 {
	d, p := outside/inch, pitch/inch
	return (d - (0.05*d+1.1)*p) * inch
}

// EffectiveLength is the length L2 of effective external NPT thread, in metres, from
// the outside diameter of the pipe and the pitch, both in metres:
// L2 = (0.8·D + 6.8)·p with D and p in inches (ASME B1.20.1).
func EffectiveLength(outside, pitch float64) float64 {
	d, p := outside/inch, pitch/inch
	return (0.8*d + 6.8) * p * inch
}

// pipeSizes are the basic dimensions of ASME B1.20.1 that no formula gives: outside
// diameter and hand-tight engagement L1 in inches. Read on
// https://www.unifiedalloys.com/p/pipe-threads/ and http://itexpp.com/tech-data/technical-data/ansi-asme-b1.20.1.
//
// Some copies print L1 of 1-1/2 as 0.402 and L2 of 3/8 as 0.0478. Both are
// transposed digits: E1 = E0 + L1/16 of the same copies needs 0.420, the formula
// for L2 gives 0.4078.
var pipeSizes = []struct {
	size                        string
	outside, perInch, handTight float64
}{
	{"1/16", 0.3125, 27, 0.160},
	{"1/8", 0.405, 27, 0.1615},
	{"1/4", 0.540, 18, 0.2278},
	{"3/8", 0.675, 18, 0.240},
	{"1/2", 0.840, 14, 0.320},
	{"3/4", 1.050, 14, 0.339},
	{"1", 1.315, 11.5, 0.400},
	{"1-1/4", 1.660, 11.5, 0.420},
	{"1-1/2", 1.900, 11.5, 0.420},
	{"2", 2.375, 11.5, 0.436},
	{"2-1/2", 2.875, 8, 0.682},
	{"3", 3.500, 8, 0.766},
}

// pitchDiameterE1 is the pitch diameter at the hand-tight plane, where an internal
// NPT thread has its mouth, in metres. NPSM threads have it all along.
func pitchDiameterE1(size string) float64 {
	for _, row := range pipeSizes {
		if row.size == size {
			return PitchDiameterE0(row.outside*inch, inch/row.perInch) + row.handTight*inch*pipeTaper
		}
	}
	return 0
}

// whitworthSizes are the basic major diameters, in millimetres, common to ISO 228 and
// ISO 7, and the gauge length of ISO 7, in millimetres and from memory;
// parallelOnly marks sizes that ISO 7 does not have. Up to 2 from
// https://code.dcldesign.co.uk/index.php/Pipework_-_BSP_threads, 2-1/2 and 3 from
// https://threadchart.net/standard/bsp.html.
var whitworthSizes = []struct {
	size                  string
	major, perInch, gauge float64
	parallelOnly          bool
}{
	{"1/16", 7.723, 28, 4.0, false},
	{"1/8", 9.728, 28, 4.0, false},
	{"1/4", 13.157, 19, 6.0, false},
	{"3/8", 16.662, 19, 6.4, false},
	{"1/2", 20.955, 14, 8.2, false},
	{"5/8", 22.911, 14, 0, true},
	{"3/4", 26.441, 14, 9.5, false},
	{"7/8", 30.201, 14, 0, true},
	{"1", 33.249, 11, 10.4, false},
	{"1-1/4", 41.910, 11, 12.7, false},
	{"1-1/2", 47.803, 11, 12.7, false},
	{"2", 59.614, 11, 15.9, false},
	{"2-1/2", 75.184, 11, 17.5, false},
	{"3", 87.884, 11, 20.6, false},
}

// dashSizes are the sizes counted in sixteenths of an inch of tube, with the screw
// thread of each standard, empty where it has none. From memory of SAE J514,
// J1926 and J512; that -2, -3, -4, -5, -8 and -10 share their thread between the 37°
// and the 45° flare is confirmed by
// https://instrumentationforum.com/t/society-of-automotive-engineers-thread-sae/9449.
var dashSizes = []struct{ size, jicAndBoss, sae45 string }{
	{"-2", "5/16-24", "5/16-24"},
	{"-3", "3/8-24", "3/8-24"},
	{"-4", "7/16-20", "7/16-20"},
	{"-5", "1/2-20", "1/2-20"},
	{"-6", "9/16-18", "5/8-18"},
	{"-8", "3/4-16", "3/4-16"},
	{"-10", "7/8-14", "7/8-14"},
	{"-12", "1-1/16-12", "1-1/16-14"},
	{"-14", "1-3/16-12", ""},
	{"-16", "1-5/16-12", ""},
	{"-20", "1-5/8-12", ""},
	{"-24", "1-7/8-12", ""},
	{"-32", "2-1/2-12", ""},
}

// The unified threads met on flares and bosses, for plain ports sealed by a washer.
var (
	fineSizes   = []string{"5/16-24", "3/8-24", "7/16-20", "1/2-20", "9/16-18", "5/8-18", "3/4-16", "7/8-14"}
	twelveSizes = []string{"1-1/16-12", "1-3/16-12", "1-5/16-12", "1-5/8-12", "1-7/8-12", "2-1/2-12"}
)

// Metric ports. Parallel and taper from https://www.sealexcel.com/bite-lok-tube-fittings/stud-forms/,
// O-ring ports from https://tlh.jiayuanfittings.com/info/metric-thread-o-ring-port-fitting-size-chart-44538885.html.
// Taper 1:16 and flank angle of DIN 158 from
// https://www.gewindebohrer.de/en/service/technische-daten/thread-type-m-conical.
var (
	metricSizes = []string{"M10×1", "M12×1.5", "M14×1.5", "M16×1.5", "M18×1.5", "M20×1.5", "M22×1.5",
		"M26×1.5", "M27×2", "M33×2", "M42×2", "M48×2"}
	metricTaperSizes = []string{"M10×1", "M12×1.5", "M14×1.5", "M16×1.5", "M18×1.5", "M20×1.5", "M22×1.5"}
	iso6149Sizes     = []string{"M8×1", "M10×1", "M12×1.5", "M14×1.5", "M16×1.5", "M18×1.5", "M22×1.5",
		"M27×2", "M33×2", "M42×2", "M48×2", "M60×2"}
)

var table = build()

// All lists every thread of every standard, standard by standard in the order of the
// constants above and small sizes first, with Gender and Text empty.
func All() []Thread { return slices.Clone(table) }

func build() []Thread {
	var all []Thread
	for _, standard := range standards {
		all = append(all, rowsOf(standard)...)
	}
	return all
}

// standards is every standard in the order in which messages and All list them.
var standards = []string{NPT, NPTF, NPSM, G, R, Rc, Rp, Metric, MetricTaper, ISO6149, JIC37, SAE45, ORB, UNF, UN}

func rowsOf(standard string) []Thread {
	switch standard {
	case NPT, NPTF, NPSM:
		return pipeRows(standard)
	case G, R, Rc, Rp:
		return whitworthRows(standard)
	case Metric:
		return metricRows(standard, metricSizes, 0, "face")
	case MetricTaper:
		return metricRows(standard, metricTaperSizes, pipeTaper, "thread")
	case ISO6149:
		return metricRows(standard, iso6149Sizes, 0, "o-ring boss")
	case UNF:
		return unifiedRows(standard, fineSizes)
	case UN:
		return unifiedRows(standard, twelveSizes)
	default:
		return dashRows(standard)
	}
}

func pipeRows(standard string) []Thread {
	var rows []Thread
	for _, s := range pipeSizes {
		t := Thread{Standard: standard, Size: s.size, Major: s.outside * inch, Pitch: inch / s.perInch,
			PerInch: s.perInch, Angle: 60 * degree, Taper: pipeTaper, Seal: "thread"}
		switch standard {
		case NPTF:
			t.Seal = "dry thread"
		case NPSM:
			// The ISO form on the pitch diameter E1 (from memory of ASME B1.20.1); the
			// swivel's cone from https://vdocuments.site/fittings-guidelines-340-appendix-alfagomma-appendix-fittings-guidelines.html.
			t.Major = pitchDiameterE1(s.size) + isoAddendum*t.Pitch
			t.Taper, t.Seal = 0, "30° cone"
		}
		if t.Taper > 0 {
			t.Engagement = EffectiveLength(t.Major, t.Pitch)
			t.HandTight = s.handTight * inch
		}
		rows = append(rows, t)
	}
	return rows
}

func whitworthRows(standard string) []Thread {
	var rows []Thread
	for _, s := range whitworthSizes {
		if s.parallelOnly && standard != G {
			continue
		}
		t := Thread{Standard: standard, Size: s.size, Major: s.major * millimetre, Pitch: inch / s.perInch,
			PerInch: s.perInch, Angle: 55 * degree, Seal: "thread"}
		switch standard {
		case G:
			t.Seal = "face"
		case R, Rc:
			t.Taper, t.HandTight = pipeTaper, s.gauge*millimetre
		}
		rows = append(rows, t)
	}
	return rows
}

func metricRows(standard string, sizes []string, taper float64, seal string) []Thread {
	var rows []Thread
	for _, size := range sizes {
		major, pitch, _ := strings.Cut(strings.TrimPrefix(size, "M"), "×")
		rows = append(rows, Thread{Standard: standard, Size: size, Major: value(major) * millimetre,
			Pitch: value(pitch) * millimetre, Angle: 60 * degree, Taper: taper, Seal: seal})
	}
	return rows
}

func unifiedRows(standard string, sizes []string) []Thread {
	var rows []Thread
	for _, size := range sizes {
		rows = append(rows, unified(standard, size, size, "face"))
	}
	return rows
}

func dashRows(standard string) []Thread {
	seal := map[string]string{JIC37: "37° cone", SAE45: "45° cone", ORB: "o-ring boss"}[standard]
	var rows []Thread
	for _, s := range dashSizes {
		if screw := screwOf(standard, s.size); screw != "" {
			rows = append(rows, unified(standard, s.size, screw, seal))
		}
	}
	return rows
}

// unified is a thread of the unified form from its screw designation, "1-1/16-12".
func unified(standard, size, screw, seal string) Thread {
	cut := strings.LastIndex(screw, "-")
	perInch := value(screw[cut+1:])
	return Thread{Standard: standard, Size: size, Major: value(screw[:cut]) * inch, Pitch: inch / perInch,
		PerInch: perInch, Angle: 60 * degree, Seal: seal}
}

// screwOf is the screw thread of a dash size, "" where the standard has none.
func screwOf(standard, size string) string {
	for _, s := range dashSizes {
		if s.size != size {
			continue
		}
		switch standard {
		case JIC37, ORB:
			return s.jicAndBoss
		case SAE45:
			return s.sae45
		}
	}
	return ""
}

// value reads "1.5", "3/8" or "1-1/16"; it is NaN for anything else.
func value(text string) float64 {
	if whole, fraction, ok := strings.Cut(text, "-"); ok {
		return value(whole) + value(fraction)
	}
	if over, under, ok := strings.Cut(text, "/"); ok {
		return value(over) / value(under)
	}
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return math.NaN()
	}
	return v
}

func decimal(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
