package fittings_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fittings"
)

// Six turns of 1/4 NPT are some two beyond hand-tight.
func TestMadeUp(t *testing.T) {
	tight := joint(t, "1/4 NPT internal", "1/4 NPT external")
	tight.Leaves["fittings.coolant.joints.end.turns"] = figurestest.Exact(6)
	assert.InDelta(t, 6*25.4/18*mm, value(t, "fittings.engagement", tight), 1e-12)
	assert.InDelta(t, 0.2278*18, value(t, "fittings.hand_tight_turns", tight), 1e-9)
	assert.InDelta(t, 6-0.2278*18, value(t, "fittings.wrench_turns", tight), 1e-9)
}

// A parallel thread stops at its face and has no turns by hand.
func TestParallelThreadHasNoHandTight(t *testing.T) {
	parallel := joint(t, "G 1/4 internal", "G 1/4 external")
	parallel.Leaves["fittings.coolant.joints.end.turns"] = figurestest.Exact(6)
	assert.Equal(t, []string{"fittings.coolant.joints.end.outer.hand_tight"}, result(t, "fittings.wrench_turns", parallel).None)
	assert.InDelta(t, 6*25.4/19*mm, value(t, "fittings.engagement", parallel), 1e-12)
}

// A chain is as wide as its narrowest part, with adapters and without.
func TestChain(t *testing.T) {
	long := chain()
	assert.InDelta(t, 6*mm, value(t, "fittings.through_bore", long), 1e-12)
	assert.InDelta(t, 0.5, value(t, "fittings.bore_use", long), 1e-12)
	assert.InDelta(t, -4*mm, value(t, "fittings.wetted_depth", long), 1e-12)
	assert.InDelta(t, -14*mm, value(t, "fittings.wetted_margin", long), 1e-12)

	direct := chain()
	direct.Lists["fittings.coolant.adapters"] = nil
	assert.InDelta(t, 12*mm, value(t, "fittings.through_bore", direct), 1e-12)
	assert.InDelta(t, 24*mm, value(t, "fittings.wetted_depth", direct), 1e-12)

	delete(long.Leaves, "fittings.coolant.adapters.elbow.bore")
	assert.Equal(t, []string{"fittings.coolant.adapters.elbow.bore"}, result(t, "fittings.through_bore", long).Missing)
}

func TestBadInput(t *testing.T) {
	for _, f := range fittings.Figures() {
		figurestest.Refuses(t, f)
	}
}

func TestRanges(t *testing.T) {
	for _, f := range fittings.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

// chain is a coolant probe behind a bushing and an elbow.
func chain() figurestest.Fixed {
	return figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"fittings.coolant.port_bore":               figurestest.Exact(12 * mm),
			"fittings.coolant.bore_need":               figurestest.Exact(3 * mm),
			"fittings.coolant.probe_length":            figurestest.Exact(38 * mm),
			"fittings.coolant.boss_depth":              figurestest.Exact(14 * mm),
			"fittings.coolant.wetted_need":             figurestest.Exact(10 * mm),
			"fittings.coolant.adapters.bushing.bore":   figurestest.Exact(10 * mm),
			"fittings.coolant.adapters.bushing.length": figurestest.Exact(8 * mm),
			"fittings.coolant.adapters.elbow.bore":     figurestest.Exact(6 * mm),
			"fittings.coolant.adapters.elbow.length":   figurestest.Exact(20 * mm),
		},
		Lists: map[string][]string{"fittings": {"coolant"}, "fittings.coolant.adapters": {"bushing", "elbow"}},
	}
}

// joint is a chain with one joint of two threads.
func joint(t *testing.T, inner, outer string) figurestest.Fixed {
	t.Helper()
	values := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{},
		Lists:  map[string][]string{"fittings": {"coolant"}, "fittings.coolant.joints": {"end"}},
	}
	for end, text := range map[string]string{"inner": inner, "outer": outer} {
		size := parse(t, text)
		path := "fittings.coolant.joints.end." + end
		values.Leaves[path+".major"] = figurestest.Exact(size.Major)
		values.Leaves[path+".pitch"] = figurestest.Exact(size.Pitch)
		values.Leaves[path+".hand_tight"] = figurestest.Exact(size.HandTight)
		if size.HandTight == 0 {
			values.Leaves[path+".hand_tight"] = figurestest.None()
		}
	}
	return values
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, fittings.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, fittings.Figures(), id, values)
}
