package thread

import (
	"strings"
	"testing"
)

// Pairs the trade confuses. Sources: 1 is https://titanfittings.com/fitting-thread-chart_a/343.htm
// and https://vdocuments.site/fittings-guidelines-340-appendix-alfagomma-appendix-fittings-guidelines.html,
// 2 is https://instrumentationforum.com/t/society-of-automotive-engineers-thread-sae/9449,
// 3 is http://www.exact-eng.co.uk/catalogue/Threads.htm,
// 4 is http://iowamidland.com/tech%20tips/Kennametal%20Greenfield-IPG%20Technical%20Tips%20Program073002.htm;
// the rest, marked m, are from memory of the standards' diameters and pitches.
func TestLookalikes(t *testing.T) {
	for _, c := range []struct{ a, b, reason, source string }{
		{"NPT 1/2", "G 1/2", "thread angle 60° against 55°", "1"},
		{"NPT 1/2", "R 1/2", "thread angle 60° against 55°", "1"},
		{"NPT 1/2", "Rc 1/2", "thread angle 60° against 55°", "1"},
		{"NPT 3/4", "G 3/4", "0.23 mm apart in diameter", "1"},
		{"NPT 3/4", "R 3/4", "thread angle", "1"},
		{"NPT 1/8", "G 1/8", "pitch 0.941 mm against 0.907 mm, 0.20 mm apart after 6 turns", "1"},
		{"NPT 1/8", "R 1/8", "pitch", "1"},
		{"NPT 1/8", "metric M10×1", "pitch 0.941 mm against 1.000 mm", "m"},
		{"G 1/8", "metric M10×1", "pitch 0.907 mm against 1.000 mm", "m"},
		{"R 1/8", "metric M10×1", "pitch", "m"},
		{"NPT 1/4", "G 1/4", "pitch 1.411 mm against 1.337 mm", "1"},
		{"NPT 1/4", "R 1/4", "pitch", "1"},
		{"NPT 1/4", "metric M14×1.5", "pitch", "m"},
		{"G 1/4", "metric M14×1.5", "pitch 1.337 mm against 1.500 mm", "m"},
		{"NPT 3/8", "G 3/8", "pitch", "1"},
		{"NPT 3/8", "R 3/8", "pitch", "1"},
		{"NPT 3/8", "metric M18×1.5", "pitch", "m"},
		{"NPT 1", "G 1", "pitch 2.209 mm against 2.309 mm", "1"},
		{"NPT 1-1/4", "R 1-1/4", "pitch", "1"},
		{"NPT 1-1/2", "G 1-1/2", "pitch", "1"},
		{"NPT 2", "R 2", "pitch", "1"},
		{"G 1/4", "Rc 1/4", "parallel against tapered", "1"},
		{"G 1/4", "R 1/4", "face seal against thread seal", "1"},
		{"JIC 37 -2", "SAE 45 -2", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -3", "SAE 45 -3", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -4", "SAE 45 -4", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -5", "SAE 45 -5", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -8", "SAE 45 -8", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -10", "SAE 45 -10", "37° cone seal against 45° cone seal", "2"},
		{"JIC 37 -12", "SAE 45 -12", "pitch 2.117 mm against 1.814 mm", "3"},
		{"JIC 37 -12", "metric M27×2", "pitch 2.117 mm against 2.000 mm", "m"},
		{"JIC 37 -6", "ORB -6", "37° cone seal against o-ring boss seal", "m"},
		{"NPSM 1/2", "NPT 1/2", "parallel against tapered", "1"},
		{"NPTF 1/8", "NPT 1/8", "only with sealant", "4"},
		{"metric M16×1.5", "G 3/8", "0.66 mm apart in diameter", "m"},
		{"metric M22×1.5", "UNF 7/8-14", "pitch 1.500 mm against 1.814 mm", "m"},
		{"metric M22×1.5", "JIC 37 -10", "pitch", "m"},
		{"metric M20×1.5", "G 1/2", "pitch", "m"},
		{"metric M12×1.5", "UNF 7/16-20", "pitch", "m"},
		{"metric M12×1.5", "UNF 1/2-20", "pitch", "m"},
		{"metric M14×1.5", "ISO 6149 M14×1.5", "face seal against o-ring boss seal", "m"},
	} {
		a, b := named(t, c.a), named(t, c.b)
		reason, ok := Lookalike(a, b)
		if !ok || !strings.Contains(reason, c.reason) {
			t.Errorf("%s and %s (source %s): %v %q, want a reason with %q", c.a, c.b, c.source, ok, reason, c.reason)
		}
		if _, back := Lookalike(b, a); back != ok {
			t.Errorf("%s and %s: the order of the two matters", c.a, c.b)
		}
	}
}

// named finds a row of All from "STANDARD SIZE".
func named(t *testing.T, text string) Thread {
	t.Helper()
	cut := strings.LastIndex(text, " ")
	return row(t, text[:cut], text[cut+1:])
}

func TestNotLookalikes(t *testing.T) {
	for _, c := range []struct{ a, b, why string }{
		{"NPT 1/8", "NPT 1/2", "sizes far apart"},
		{"NPT 1/8", "NPT 1/8", "the same thread"},
		{"R 1/4", "Rc 1/4", "they mate"},
		{"R 1/4", "Rp 1/4", "they mate"},
		{"metric M10×1", "metric taper M10×1", "they mate"},
		{"Rc 1/4", "Rp 1/4", "both are internal"},
		{"JIC 37 -6", "SAE 45 -6", "9/16-18 slips through 5/8-18"},
		{"UNF 7/16-20", "UNF 1/2-20", "slips through"},
		{"G 3/8", "metric M18×1.5", "16.66 mm slips through a minor diameter of 16.38 mm less play"},
		{"G 3/8", "metric M22×1.5", "sizes far apart"},
		{"metric M26×1.5", "metric M27×2", "pitches too far apart to start"},
	} {
		if reason, ok := Lookalike(named(t, c.a), named(t, c.b)); ok {
			t.Errorf("%s and %s are no look-alikes (%s): %q", c.a, c.b, c.why, reason)
		}
	}
}

// The smaller thread goes into the larger one, not the other way round.
func TestLookalikeMindsGender(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want bool
	}{
		{"M16x1.5 male", "G 3/8 female", true},
		{"G 3/8 male", "M16x1.5 female", false},
		{"M16x1.5 male", "G 3/8 male", false},
		{"M20x1.5 male", "G 1/2 female", true},
		{"1/2 NPT male", "G 1/2 female", true},
		{"G 1/2 male", "1/2 NPT female", true},
	} {
		reason, ok := Lookalike(must(t, c.a), must(t, c.b))
		if ok != c.want {
			t.Errorf("%s in %s: %v %q, want %v", c.a, c.b, ok, reason, c.want)
		}
	}
}

func TestLookalikeReasonReadsAsOneLine(t *testing.T) {
	reason, _ := Lookalike(must(t, "1/8 NPT male"), must(t, "G 1/8 female"))
	want := "1/8-27 NPT external and G 1/8 internal start into one another but do not seal: " +
		"pitch 0.941 mm against 0.907 mm, 0.20 mm apart after 6 turns, 0.56 mm apart in diameter, " +
		"thread angle 60° against 55°, tapered against parallel, thread seal against face seal"
	if reason != want {
		t.Errorf("got  %q\nwant %q", reason, want)
	}
}
