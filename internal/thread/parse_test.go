package thread

import (
	"strings"
	"testing"
)

func TestParseSpellings(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"1/2 NPT external", "1/2-14 NPT external"},
		{"1/2-14 NPT male", "1/2-14 NPT external"},
		{"1/2 - 14 NPT male", "1/2-14 NPT external"},
		{"1/2 in NPT female", "1/2-14 NPT internal"},
		{"1/2\" npt Female", "1/2-14 NPT internal"},
		{"½ NPT female", "1/2-14 NPT internal"},
		{"NPT 1/2 internal", "1/2-14 NPT internal"},
		{"NPT1/2 internal", "1/2-14 NPT internal"},
		{"1/2 FNPT", "1/2-14 NPT internal"},
		{"1/8-27 NPT male", "1/8-27 NPT external"},
		{"1/8-27 NPTF male", "1/8-27 NPTF external"},
		{"1 1/4 NPT male", "1-1/4-11.5 NPT external"},
		{"1-1/4-11.5 NPT male", "1-1/4-11.5 NPT external"},
		{"1-11 1/2 NPT male", "1-11.5 NPT external"},
		{"1¼ npt male", "1-1/4-11.5 NPT external"},
		{"G 1/4 internal", "G 1/4 internal"},
		{"G1/4 female", "G 1/4 internal"},
		{"BSPP 1/4 male", "G 1/4 external"},
		{"1/4 BSPP female", "G 1/4 internal"},
		{"1/4 BSP parallel female", "G 1/4 internal"},
		{"1/4 BSP taper female", "Rc 1/4 internal"},
		{"R 1/8 external", "R 1/8 external"},
		{"R1/8", "R 1/8 external"},
		{"Rp 1/8", "Rp 1/8 internal"},
		{"BSPT 1/8 male", "R 1/8 external"},
		{"BSPT 1/8 female", "Rc 1/8 internal"},
		{"M14x1.5 external", "M14×1.5 external"},
		{"M14 × 1.5 male", "M14×1.5 external"},
		{"m14X1.50 male", "M14×1.5 external"},
		{"M10x1.0 DIN 3852 female", "M10×1 internal"},
		{"M10x1 taper external", "M10×1 taper external"},
		{"M10x1 tapered male", "M10×1 taper external"},
		{"M22x1.5 ISO 6149 female", "M22×1.5 ISO 6149 internal"},
		{"-6 JIC male", "-6 JIC 37 (9/16-18) external"},
		{"JIC -6 male", "-6 JIC 37 (9/16-18) external"},
		{"JIC-6 male", "-6 JIC 37 (9/16-18) external"},
		{"JIC 06 male", "-6 JIC 37 (9/16-18) external"},
		{"-6 JIC 37° male", "-6 JIC 37 (9/16-18) external"},
		{"9/16-18 JIC 37 external", "-6 JIC 37 (9/16-18) external"},
		{"9/16-18 UNF JIC external", "-6 JIC 37 (9/16-18) external"},
		{"1-1/16-12 JIC male", "-12 JIC 37 (1-1/16-12) external"},
		{"1 1/16-12 JIC male", "-12 JIC 37 (1-1/16-12) external"},
		{"2-1/2-12 JIC male", "-32 JIC 37 (2-1/2-12) external"},
		{"-6 AN male", "-6 JIC 37 (9/16-18) external"},
		{"AN6 male", "-6 JIC 37 (9/16-18) external"},
		{"-6AN female", "-6 JIC 37 (9/16-18) internal"},
		{"#6 AN female", "-6 JIC 37 (9/16-18) internal"},
		{"SAE J514 -6 male", "-6 JIC 37 (9/16-18) external"},
		{"-6 ORB female", "-6 ORB (9/16-18) internal"},
		{"-6 SAE O-ring boss female", "-6 ORB (9/16-18) internal"},
		{"-6 SAE 45 male", "-6 SAE 45 (5/8-18) external"},
		{"-6 45° flare male", "-6 SAE 45 (5/8-18) external"},
		{"7/8-14 UNF female", "7/8-14 UNF internal"},
		{"1-1/16-12 UN female", "1-1/16-12 UN internal"},
	} {
		got, err := Parse(c.text)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		if got.Name() != c.want || got.Text != c.text {
			t.Errorf("%q reads as %q (text %q), want %q", c.text, got.Name(), got.Text, c.want)
		}
	}
}

func TestParseErrors(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"", `"": no standard; accepted: NPT, NPTF, NPSM, G, R, Rc, Rp, metric, metric taper, ISO 6149, JIC 37, SAE 45, ORB, UNF, UN`},
		{"1/2 NTP external", `unknown standard "ntp"; nearest NPT; accepted: NPT, NPTF`},
		{"1/2 external", `no standard; that size exists as NPT, NPTF, NPSM, G, R, Rc, Rp; write which`},
		{"9/16-18 male", `no standard; that size exists as JIC 37, ORB, UNF; write which`},
		{"-6 male", `no standard; that size exists as JIC 37, SAE 45, ORB; write which`},
		{"-6 SAE male", `unknown standard "sae"; nearest SAE 45 (flare), JIC 37 (flare) or ORB (o-ring boss)`},
		{"5/8 NPT male", `NPT has no size 5/8; nearest 1/2; accepted: 1/16, 1/8, 1/4, 3/8, 1/2, 3/4, 1,`},
		{"NPT male", `no size; NPT has 1/16, 1/8`},
		{"1/2-13 NPT", `1/2 NPT has 14 threads per inch, not 13`},
		{"G 1/4-18 male", `G 1/4 has 19 threads per inch, not 18`},
		{"1/2 NPT", `no gender; write "1/2-14 NPT external" (male) or "1/2-14 NPT internal" (female)`},
		{"BSPT 1/8", `no gender; write R (external, male) or Rc (internal, female)`},
		{"R 1/8 female", `R is the external taper thread; internal is Rc (taper) or Rp (parallel)`},
		{"male Rc 1/8", `Rc is an internal thread; external is R`},
		{"1/2 NPT mael", `unknown word "mael"; nearest male`},
		{"1/2 NPT male female", `both external and internal; write one thread at a time`},
		{"1/4 BSP male", `BSP may be parallel or tapered; write G (parallel), R (external taper) or Rc (internal taper)`},
		{"M14×1,5 male", `decimal comma; write 1.5`},
		{"M14 male", `no pitch; write M14×1.5`},
		{"M14x1.25 male", `metric has no size M14×1.25; nearest M14×1.5; accepted: M10×1,`},
		{"M10x1 taper female", `only the external metric thread is tapered; its port is parallel: leave out "taper"`},
		{"M10x1 taper", `no gender; write "M10×1 taper external"`},
		{"M14x1.5 NPT male", `M is a metric size, NPT is not`},
		{"NPT 1/2 parallel male", `NPT is tapered, not parallel`},
		{"NPSM 1/2 taper male", `NPSM is parallel, not taper`},
		{"1/2 NPT JIC male", `both NPT and JIC 37; write one standard`},
		{"3/8 JIC male", `JIC 37 has no size 3/8; nearest -6 (9/16-18); accepted: -2 (5/16-24),`},
		{"-6 3/4-16 JIC male", `-6 JIC 37 has thread 9/16-18, not 3/4-16`},
		{"9/16-20 JIC male", `JIC 37 has no size 9/16-20; nearest -6 (9/16-18)`},
		{"5/8-14 NPT male", `NPT has no size 5/8-14; nearest 1/2`},
		{"-14 SAE 45 male", `SAE 45 has no size -14; nearest -12 (1-1/16-14)`},
		{strings.Repeat("1/2 ", 40), `thread of 160 characters; accepted: at most 80`},
	} {
		got, err := Parse(c.text)
		if err == nil {
			t.Errorf("%q reads as %q, want an error with %q", c.text, got.Name(), c.want)
			continue
		}
		if !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%q: got %q, want %q", c.text, err, c.want)
		}
	}
}

func FuzzParse(f *testing.F) {
	for _, seed := range []string{"1/2 NPT external", "1-11 1/2 NPT male", "M14×1.5 male", "-6 JIC (9/16-18) female",
		"M14×1,5", "½", "G1/4", "--/.", "-\xff", "AN6 male", "1/0-0 NPT male", "M1e999x1 male"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, err := Parse(text)
		if err != nil {
			if strings.ContainsAny(err.Error(), "\n\r") {
				t.Errorf("%q: the error takes more than one line: %q", text, err)
			}
			return
		}
		back, err := Parse(got.Name())
		if err != nil || !Same(back, got) {
			t.Errorf("%q is named %q, which reads as %q: %v", text, got.Name(), back.Name(), err)
		}
	})
}
