package quantity

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestPrint(t *testing.T) {
	for _, c := range []struct {
		low, high float64
		kind      Kind
		unit      string
		want      string
	}{
		{312, 312, Mass, "kg", "312 kg"},
		{312, 312, Mass, "", "312 kg"},
		{312, 312, Mass, "furlong", "312 kg"},
		{300, 330, Mass, "kg", "300..330 kg"},
		{300, 330, Mass, "pounds", "661.4..727.5 lb"},
		{12345.6, 12345.6, Mass, "kg", "12346 kg"},
		{311.99, 312.01, Mass, "kg", "311.99..312.01 kg"},
		{312, 312.0000000001, Mass, "kg", "312 kg"},
		{4.1, 4.25, Ratio, "", "4.10..4.25"},
		{4.1, 4.1, Ratio, ":1", "4.1:1"},
		{0.62, 0.62, Ratio, "%", "62 %"},
		{0.005883, 0.005883, Volume, "L", "5.883 L"},
		{0.4, 1000, Mass, "kg", "0.4..1000 kg"},
		{1e-18, 5, Mass, "kg", "0..5 kg"},
		{math.Copysign(0, -1), 0, Length, "mm", "0 mm"},
		{-1e-18, 5, Length, "m", "0..5 m"},
		{-0.002, 0.003, Length, "mm", "-2..3 mm"},
		{1e6, 1e6, Force, "N", "1000000 N"},
		{1.23456e-7, 1.23456e-7, Length, "m", "0.0000001235 m"},
		{363.15, 363.15, Temperature, "°C", "90 °C"},
		{353.15, 363.15, Temperature, "°F", "176..194 °F"},
		{137895.14586336722, 137895.14586336722, GaugePressure, "psig", "20 psi"},
		{101325, 101325, AbsolutePressure, "", "101325 Pa abs"},
		{math.Pi / 60, math.Pi / 60, Angle, "deg", "3°"},
		{5e-5, 5e-5, Conductor, "", "0.00005 m²"},
		{5e-5, 5e-5, Conductor, "AWG", "50 mm²"},
		{math.NaN(), 1, Mass, "kg", "undefined"},
		{0, math.Inf(1), Mass, "kg", "undefined"},
	} {
		if got := Print(c.low, c.high, c.kind, c.unit); got != c.want {
			t.Errorf("Print(%v, %v, %s, %q) = %q, want %q", c.low, c.high, c.kind, c.unit, got, c.want)
		}
	}
	for _, text := range []string{"2/0 AWG", "10 AWG", "10..8 AWG", "1/0 SAE", "40 AWG"} {
		v := mustParse(t, text, Conductor)
		low, high := v.Floats()
		if got := Print(low, high, Conductor, v.Unit); got != text {
			t.Errorf("%s prints as %s", text, got)
		}
	}
}

// TestPrintedParses: what Print writes, Parse reads back as the same kind and
// unit, within half of the last digit that four significant digits of the larger
// end show.
func TestPrintedParses(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for _, kind := range Kinds() {
		for _, u := range familyOf(kind).units {
			for range 60 {
				a := math.Exp(random.Float64()*16 - 6)
				b := a * (1 + math.Exp(-12*random.Float64()))
				low, _ := u.toSI(rat(Canonical(a))).Float64()
				high, _ := u.toSI(rat(Canonical(b))).Float64()
				for _, end := range []float64{low, high} {
					printed := Print(low, end, kind, u.symbol)
					v, err := Parse(printed, kind)
					if err != nil {
						t.Fatalf("%s %q: %v", kind, u.symbol, err)
					}
					gotLow, gotHigh := v.Floats()
					gotA, _ := In(gotLow, kind, u.symbol)
					gotB, _ := In(gotHigh, kind, u.symbol)
					wantA, _ := In(low, kind, u.symbol)
					wantB, _ := In(end, kind, u.symbol)
					if v.Unit != u.symbol || math.Abs(gotA-wantA) > 5.001e-4*wantB || math.Abs(gotB-wantB) > 5.001e-4*wantB {
						t.Fatalf("%s: %v..%v printed as %q reads %v..%v %q", kind, wantA, wantB, printed, gotA, gotB, v.Unit)
					}
					if end != low && !(gotLow < gotHigh) {
						t.Fatalf("%s: %v..%v printed as %q: its ends do not differ", kind, wantA, wantB, printed)
					}
				}
			}
		}
	}
}

func TestIn(t *testing.T) {
	if got, err := In(363.15, Temperature, "°C"); err != nil || math.Abs(got-90) > 1e-9 {
		t.Error(got, err)
	}
	for _, c := range []struct {
		si   float64
		kind Kind
		unit string
		want string
	}{
		{1, Length, "furlong", `"furlong" is not a unit of length: a length is written with mm, cm, m, in, ft, ...`},
		{1e-6, Conductor, "AWG", `"AWG" is not a unit of conductor size: a conductor size is written with mm², AWG or SAE, such as "50 mm²" or "2/0 AWG"`},
		{math.NaN(), Length, "mm", `NaN is not a finite length`},
	} {
		if _, err := In(c.si, c.kind, c.unit); err == nil || err.Error() != c.want {
			t.Errorf("got %v, want %s", err, c.want)
		}
	}
}

func TestCanonical(t *testing.T) {
	for x, want := range map[float64]string{
		0: "0", 312: "312", 0.1: "0.1", 1.0 / 3: "0.333333333333", -2.5: "-2.5", 1e21: "1000000000000000000000",
		1e-9: "0.000000001", 0.1 + 0.2: "0.3", 123456789012345: "123456789012000", 5e-324: Canonical(5e-324),
	} {
		if got := Canonical(x); got != want {
			t.Errorf("Canonical(%g) = %s, want %s", x, got, want)
		}
	}
	if got := Canonical(math.Copysign(0, -1)); got != "0" {
		t.Errorf("negative zero is %s", got)
	}
	if got := Canonical(math.MaxFloat64); len(got) != 309 {
		t.Errorf("the largest number has %d digits", len(got))
	}
	for _, x := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("Canonical(%v) does not panic", x)
				}
			}()
			Canonical(x)
		}()
	}
}

func BenchmarkParse(b *testing.B) {
	for b.Loop() {
		if _, err := Parse("300..330 kg", Mass); err != nil {
			b.Fatal(err)
		}
	}
}
