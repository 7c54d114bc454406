package fittings_test

import (
	"testing"

	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fittings"
	"trialfit/internal/thread"
)

const (
	inch = 0.0254
	mm   = 1e-3
)

// Outside diameters and turns of NPT as the one page prints them, diameters of
// BSP as the other does.
const (
	npt = "http://piping-designer.com/National_Pipe_Thread"
	bsp = "https://code.dcldesign.co.uk/index.php/Pipework_-_BSP_threads"
)

func TestChecks(t *testing.T) {
	figurestest.Run(t, []figurestest.Check{{
		Name: "1/8 NPT and R 1/8 apart in diameter, mm",
		Got:  gap(t, "1/8 NPT internal", "R 1/8 external") / mm, Want: 0.405*25.4 - 9.728, Within: 1e-6,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "1/2 NPT and R 1/2 apart in diameter, mm",
		Got:  gap(t, "1/2 NPT internal", "R 1/2 external") / mm, Want: 0.840*25.4 - 20.955, Within: 1e-6,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "3/8 NPT and 1/4 NPT apart in diameter, mm",
		Got:  gap(t, "3/8 NPT internal", "1/4 NPT external") / mm, Want: (0.675 - 0.540) * 25.4, Within: 1e-6,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "1 NPT and G 1 apart in diameter, mm",
		Got:  gap(t, "1 NPT internal", "G 1 external") / mm, Want: 1.315*25.4 - 33.249, Within: 1e-6,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "1/8 NPT of 27 and R 1/8 of 28 threads per inch apart over six, mm",
		Got:  error6(t, "1/8 NPT internal", "R 1/8 external") / mm, Want: 6 * (25.4/27 - 25.4/28), Within: 1e-6,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "1/2 NPT and R 1/2 of 14 threads per inch apart over six, mm",
		Got:  error6(t, "1/2 NPT internal", "R 1/2 external") / mm, Want: 0, Within: 1e-9,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "1 NPT of 11.5 and G 1 of 11 threads per inch apart over six, mm",
		Got:  error6(t, "1 NPT internal", "G 1 external") / mm, Want: 6 * (25.4/11 - 25.4/11.5), Within: 1e-6,
		Kind: figurestest.Table, Source: npt + " and " + bsp,
	}, {
		Name: "1/4 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "1/4 NPT external"), Want: 4, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "1/2 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "1/2 NPT external"), Want: 4.5, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "3/4 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "3/4 NPT external"), Want: 4.5, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "2 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "2 NPT external"), Want: 5, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "2-1/2 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "2-1/2 NPT external"), Want: 5.5, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "3 NPT by hand, turns (the page rounds to half turns)",
		Got:  handTight(t, "3 NPT external"), Want: 6, Within: 0.25,
		Kind: figurestest.Table, Source: npt,
	}, {
		Name: "well of 7-3/4 in behind 3/4 in of flats, 1 in of thread and 2 in of insulation, in",
		Got:  fittings.WettedDepth(7.75, 1, []float64{0.75, 2}), Want: 4, Within: 1e-9,
		Kind:   figurestest.Published,
		Source: "https://www.globalspec.com/FeaturedProducts/Detail/Pyromation/341671/AN_OVERVIEW_OF_THERMOWELL_DIMENSIONS",
	}, {
		Name: "1/2 NPT port and 1/2 NPT male of a bushing apart in diameter, mm",
		Got:  gap(t, "1/2 NPT internal", "1/2 NPT external") / mm, Want: 0, Within: 1e-9,
		Kind: figurestest.Published, Source: "common practice: a 3/8 NPT coolant sender sits in a 1/2 NPT port through a 1/2 male × 3/8 female bushing",
	}, {
		Name: "1/8 NPT port and 1/8 NPT male of an adapter apart over six, mm",
		Got:  error6(t, "1/8 NPT internal", "1/8 NPT external") / mm, Want: 0, Within: 1e-9,
		Kind: figurestest.Published, Source: "common practice: a 1/4 NPT oil sender sits in a 1/8 NPT port through a 1/8 male × 1/4 female adapter",
	}, {
		Name: "1/8 NPT and 1/8 BSP over six threads, mm",
		Got:  error6(t, "1/8 NPT internal", "R 1/8 external") / mm, Want: 0.2016, Within: 5e-5,
		Kind: figurestest.Computed, Source: "worked by another program",
	}, {
		Name: "1/2 NPT after seven turns, in",
		Got:  fittings.Engagement(7, parse(t, "1/2 NPT external").Pitch) / inch, Want: 0.5, Within: 1e-9,
		Kind: figurestest.Computed, Source: "by hand",
	}, {
		Name: "R 1/4 by hand: gauge length 6.0 mm, turns",
		Got:  handTight(t, "R 1/4 external"), Want: 4.488, Within: 5e-4,
		Kind: figurestest.Computed, Source: "by hand",
	}})
}

func parse(t *testing.T, text string) thread.Thread {
	t.Helper()
	size, err := thread.Parse(text)
	if err != nil {
		t.Fatal(err)
	}
	return size
}

func gap(t *testing.T, inner, outer string) float64 {
	return value(t, "fittings.diameter_gap", joint(t, inner, outer))
}

func error6(t *testing.T, inner, outer string) float64 {
	return value(t, "fittings.pitch_error", joint(t, inner, outer))
}

func handTight(t *testing.T, outer string) float64 {
	size := parse(t, outer)
	return fittings.HandTightTurns(size.HandTight, size.Pitch)
}
