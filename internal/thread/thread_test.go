package thread

import (
	"math"
	"strings"
	"testing"
)

// must parses a thread that the test relies on.
func must(t testing.TB, text string) Thread {
	t.Helper()
	got, err := Parse(text)
	if err != nil {
		t.Fatalf("parse: %v", err)
	}
	return got
}

// row finds a row of All.
func row(t testing.TB, standard, size string) Thread {
	t.Helper()
	for _, r := range All() {
		if r.Standard == standard && r.Size == size {
			return r
		}
	}
	t.Fatalf("no row %s %s", standard, size)
	return Thread{}
}

func within(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// Source: table "Basic dimensions of American National Standard taper threads, NPT
// (ASME B1.20.1)" on https://www.unifiedalloys.com/p/pipe-threads/, columns threads per
// inch, E1 and L2 in inches. L2 of 3/8 is 0.4078 as corrected there; an uncorrected copy of
// the page prints 0.0478 (and L1 of 1-1/2 as 0.402 for 0.420).
func TestPipeThreadTable(t *testing.T) {
	for _, want := range []struct {
		size            string
		perInch, e1, l2 float64
	}{
		{"1/8", 27, 0.37360, 0.2639},
		{"1/4", 18, 0.49163, 0.4018},
		{"3/8", 18, 0.62701, 0.4078},
		{"1/2", 14, 0.77843, 0.5337},
		{"3/4", 14, 0.98887, 0.5457},
		{"1", 11.5, 1.23863, 0.6828},
		{"1-1/4", 11.5, 1.58338, 0.7068},
		{"1-1/2", 11.5, 1.82234, 0.7235},
		{"2", 11.5, 2.29627, 0.7565},
		{"2-1/2", 8, 2.76215, 1.1375},
		{"3", 8, 3.38850, 1.2000},
	} {
		got := row(t, NPT, want.size)
		if e1 := (PitchDiameterE0(got.Major, got.Pitch) + got.HandTight*pipeTaper) / inch; !within(e1, want.e1, 0.00002) {
			t.Errorf("%s: hand-tight engagement leads to E1 %.5f in, want %.5f", want.size, e1, want.e1)
		}
		if got.PerInch != want.perInch {
			t.Errorf("%s: %v threads per inch, want %v", want.size, got.PerInch, want.perInch)
		}
		if e1 := pitchDiameterE1(want.size) / inch; !within(e1, want.e1, 0.00002) {
			t.Errorf("%s: E1 %.5f in, want %.5f", want.size, e1, want.e1)
		}
		if l2 := got.Engagement / inch; !within(l2, want.l2, 0.00006) {
			t.Errorf("%s: L2 %.4f in, want %.4f", want.size, l2, want.l2)
		}
	}
}

// The formulas of ASME B1.20.1 worked by us; these guard against change and prove
// nothing about the standard.
func TestFormulaRegression(t *testing.T) {
	for _, want := range []struct {
		what      string
		got, want float64
		tolerance float64
	}{
		{"1/4 NPT E0, in", PitchDiameterE0(0.540*inch, inch/18) / inch, 0.47739, 5e-6},
		{"1/2 NPT L2, in", EffectiveLength(0.840*inch, inch/14) / inch, 0.5337, 5e-5},
		{"1/2 NPT L2, turns", EffectiveLength(0.840*inch, inch/14) / (inch / 14), 7.472, 5e-4},
		{"18 per inch, growth per turn, in", pipeTaper / 18, 0.003472, 5e-7},
		{"1/8 NPT against 1/8 BSP over 6, mm", PitchError(row(t, NPT, "1/8"), row(t, G, "1/8"), 6) / millimetre, 0.2016, 5e-5},
		{"1 NPT against 1 BSP over 8, mm", PitchError(row(t, NPT, "1"), row(t, R, "1"), 8) / millimetre, 0.8032, 5e-5},
		{"-12 JIC against M27×2, gap, mm", Gap(row(t, JIC37, "-12"), row(t, Metric, "M27×2")) / millimetre, 0.0125, 5e-5},
	} {
		if !within(want.got, want.want, want.tolerance) {
			t.Errorf("%s: %v, want %v", want.what, want.got, want.want)
		}
	}
	if got := PitchError(row(t, NPT, "1"), row(t, R, "1"), -3); got != 0 {
		t.Errorf("pitch error over no threads: %v", got)
	}
}

// Sources: threads per inch, pitch and gauge-plane diameters of 1/8, 1/4 and 3/8 from
// "ISO pipe threads, tapered: basic sizes", section 4.1.38 of the handbook at
// https://www.oreilly.com/library/view/mechanical-engineers-pocket/9780750665087/B9780750665087500046_2.xhtml;
// the rest from https://threadchart.net/standard/bsp.html, which prints inches.
func TestWhitworthPipeTable(t *testing.T) {
	for _, want := range []struct {
		size                  string
		unit                  float64
		perInch, major, pitch float64 // pitch diameter
		tolerance             float64
	}{
		{"1/8", millimetre, 28, 9.728, 9.147, 0.0006},
		{"1/4", millimetre, 19, 13.157, 12.301, 0.0006},
		{"3/8", millimetre, 19, 16.662, 15.806, 0.0006},
		{"1/2", inch, 14, 0.8250, 0.7793, 0.0001},
		{"5/8", inch, 14, 0.9020, 0.8563, 0.0001},
		{"3/4", inch, 14, 1.0410, 0.9953, 0.0001},
		{"7/8", inch, 14, 1.1890, 1.1433, 0.0001},
		{"1", inch, 11, 1.3090, 1.2508, 0.0001},
		{"1-1/4", inch, 11, 1.6500, 1.5918, 0.0001},
		{"1-1/2", inch, 11, 1.8820, 1.8238, 0.0001},
		{"2", inch, 11, 2.3470, 2.2888, 0.0001},
		{"2-1/2", inch, 11, 2.9600, 2.9018, 0.0001},
		{"3", inch, 11, 3.4600, 3.4018, 0.0001},
	} {
		got := row(t, G, want.size)
		major, pitch := got.Major/want.unit, entry(got, Internal)/want.unit
		if got.PerInch != want.perInch || !within(major, want.major, want.tolerance) || !within(pitch, want.pitch, want.tolerance) {
			t.Errorf("G %s: %v per inch, major %.4f, pitch diameter %.4f; want %v, %v, %v",
				want.size, got.PerInch, major, pitch, want.perInch, want.major, want.pitch)
		}
	}
}

// Gauge lengths of ISO 7-1, from memory: those of R and Rc are one, parallel threads
// have none.
func TestGaugeLengths(t *testing.T) {
	for size, want := range map[string]float64{"1/8": 4.0, "1/4": 6.0, "3/8": 6.4, "1/2": 8.2, "3/4": 9.5, "1": 10.4} {
		for standard, want := range map[string]float64{R: want, Rc: want, Rp: 0, G: 0} {
			if got := row(t, standard, size).HandTight / millimetre; !within(got, want, 1e-9) {
				t.Errorf("%s %s: gauge length %.1f mm, want %.1f", standard, size, got, want)
			}
		}
	}
}

// Source: from memory of SAE J514, J512 and J1926; the dash number counts sixteenths
// of an inch of tube.
func TestDashSizes(t *testing.T) {
	for _, want := range []struct {
		standard, size string
		major, perInch float64
		name           string
	}{
		{JIC37, "-4", 7. / 16, 20, "-4 JIC 37 (7/16-20)"},
		{JIC37, "-6", 9. / 16, 18, "-6 JIC 37 (9/16-18)"},
		{SAE45, "-6", 5. / 8, 18, "-6 SAE 45 (5/8-18)"},
		{JIC37, "-12", 17. / 16, 12, "-12 JIC 37 (1-1/16-12)"},
		{SAE45, "-12", 17. / 16, 14, "-12 SAE 45 (1-1/16-14)"},
		{ORB, "-8", 3. / 4, 16, "-8 ORB (3/4-16)"},
		{ORB, "-32", 2.5, 12, "-32 ORB (2-1/2-12)"},
	} {
		got := row(t, want.standard, want.size)
		if !within(got.Major/inch, want.major, 1e-9) || got.PerInch != want.perInch || got.Name() != want.name {
			t.Errorf("%s: major %.4f in, %v per inch; want %q, %.4f, %v",
				got.Name(), got.Major/inch, got.PerInch, want.name, want.major, want.perInch)
		}
	}
}

func TestAllIsWellFormed(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range All() {
		if seen[r.Name()] {
			t.Errorf("%s: listed twice", r.Name())
		}
		seen[r.Name()] = true
		if r.Gender != "" || r.Text != "" || r.Seal == "" || !(r.Major > 0.005 && r.Major < 0.1) || !(r.Pitch > 0.0005 && r.Pitch < 0.004) {
			t.Errorf("%s: malformed row %+v", r.Name(), r)
		}
		if r.PerInch > 0 && !within(r.Pitch*r.PerInch, inch, 1e-12) {
			t.Errorf("%s: pitch and threads per inch disagree", r.Name())
		}
		for _, gender := range []string{External, Internal} {
			if only := onlyGender(r.Standard); only != "" && only != gender {
				continue
			}
			r.Gender = gender
			back, err := Parse(r.Name())
			if err != nil || !Same(back, r) {
				t.Errorf("%s reads back as %q: %v", r.Name(), back.Name(), err)
			}
		}
	}
	All()[0].Size = "changed"
	if All()[0].Size == "changed" {
		t.Error("a caller of All changes the table")
	}
}

// Sources beside each row.
func TestMates(t *testing.T) {
	for _, c := range []struct {
		internal, external string
		want               bool
		source             string
	}{
		{"1/2 NPT female", "1/2 NPT male", true, "ASME B1.20.1 3.1"},
		{"1/2 NPT female", "3/8 NPT male", false, "size"},
		{"1/2 NPT male", "1/2 NPT male", false, "gender"},
		{"1/8 NPTF female", "1/8 NPTF male", true, "ASME B1.20.3 1.4.1.1"},
		{"1/8 NPT female", "1/8 NPTF male", true, "with sealant, see mating"},
		{"1/8 NPTF female", "1/8 NPT male", true, "with sealant, see mating"},
		{"1/2 NPSM female", "1/2 NPT male", false, "the cone is not part of the pipe thread"},
		{"G 1/4 female", "G 1/4 male", true, "ISO 228"},
		{"Rc 1/4", "R 1/4", true, "ISO 7, from memory"},
		{"Rp 1/4", "R 1/4", true, "ISO 7, from memory"},
		{"Rc 1/4", "G 1/4 male", false, "https://titanfittings.com/fitting-thread-chart_a/343.htm"},
		{"G 1/4 female", "R 1/4", false, "https://titanfittings.com/fitting-thread-chart_a/343.htm"},
		{"G 1/2 female", "1/2 NPT male", false, "https://titanfittings.com/fitting-thread-chart_a/343.htm"},
		{"-6 JIC female", "-6 AN male", true, "common practice"},
		{"-4 JIC female", "-4 SAE 45 male", false, "https://instrumentationforum.com/t/society-of-automotive-engineers-thread-sae/9449"},
		{"-6 ORB female", "-6 ORB male", true, "SAE J1926, from memory"},
		{"-6 JIC female", "-6 ORB male", false, "sealing element differs"},
		{"M14x1.5 female", "M14x1.5 male", true, "DIN 3852-1"},
		{"M10x1 female", "M10x1 taper male", true, "https://www.gewindebohrer.de/en/service/technische-daten/thread-type-m-conical"},
		{"M14x1.5 ISO 6149 female", "M14x1.5 male", false, "seal geometry differs, from memory of ISO 6149 and ISO 9974"},
	} {
		if got := Mates(must(t, c.internal), must(t, c.external)); got != c.want {
			t.Errorf("%s into %s: mates %v, want %v (%s)", c.external, c.internal, got, c.want, c.source)
		}
	}
}

// Common practice: a 3/8 NPT coolant sender sits in a 1/2 NPT port through a 1/2 male ×
// 3/8 female bushing; a 1/4 NPT oil sender in a 1/8 NPT port through a 1/8 male × 1/4
// female adapter. Neither goes in without.
func TestSenderChains(t *testing.T) {
	for _, c := range []struct{ port, into, out, sender string }{
		{"1/2 NPT female", "1/2 NPT male", "3/8 NPT female", "3/8 NPT male"},
		{"1/8 NPT female", "1/8 NPT male", "1/4 NPT female", "1/4 NPT male"},
	} {
		port, into, out, sender := must(t, c.port), must(t, c.into), must(t, c.out), must(t, c.sender)
		if !Mates(port, into) || !Mates(out, sender) {
			t.Errorf("%s through %s × %s to %s does not mate", c.port, c.into, c.out, c.sender)
		}
		if Mates(port, sender) {
			t.Errorf("%s mates with %s directly", c.sender, c.port)
		}
	}
}

func TestName(t *testing.T) {
	for text, want := range map[string]string{
		"1/2 NPT external":   "1/2-14 NPT external",
		"1 NPT male":         "1-11.5 NPT external",
		"M14x1.5 male":       "M14×1.5 external",
		"g1/2 female":        "G 1/2 internal",
		"9/16-18 JIC male":   "-6 JIC 37 (9/16-18) external",
		"M10x1 taper male":   "M10×1 taper external",
		"M8X1 iso 6149 male": "M8×1 ISO 6149 external",
		"3/4-16 UNF female":  "3/4-16 UNF internal",
	} {
		if got := must(t, text).Name(); got != want {
			t.Errorf("%q is named %q, want %q", text, got, want)
		}
	}
	odd := Thread{Standard: JIC37, Size: "-7", Gender: External}
	if got := odd.Name(); strings.Contains(got, "(") {
		t.Errorf("a size outside the table got a screw thread: %q", got)
	}
}
