package mounts_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/mounts"
)

func TestRanges(t *testing.T) {
	for _, f := range mounts.Figures() {
		t.Run(f.ID, func(t *testing.T) {
			figurestest.Sample(t, f, 300)
			figurestest.Refuses(t, f)
		})
	}
}

func unit() figurestest.Fixed {
	leaves := map[string]figures.Leaf{}
	for path, x := range map[string]float64{
		"frame.mounts.unit_mass": 490, "frame.mounts.unit_x": 0.36, "frame.mounts.engine_x": 0.15, "frame.mounts.gearbox_x": 1.32,
		"frame.mounts.spread": 0.61, "frame.mounts.engine_rating": 270, "frame.mounts.gearbox_rating": 230,
		"engine.peak_torque": 393, "transmission.first": 5.61,
	} {
		leaves[path] = figurestest.Exact(x)
	}
	leaves["transfer_case.low"] = figurestest.None()
	leaves["transmission.stall_ratio"] = figurestest.None()
	leaves["engine.rating_method"] = figurestest.Word("net")
	return figurestest.Fixed{Leaves: leaves}
}

// Two engine mounts and the gearbox mount bear the whole mass, and what torque
// adds on one side it takes off the other.
func TestLoadsAddUp(t *testing.T) {
	at := func(id string) float64 { return value(t, id, unit()) }
	require.InDelta(t, 490, 2*at("mounts.engine_mount_load")+at("mounts.gearbox_mount_load"), 1e-9)
	require.InDelta(t, 2*at("mounts.engine_mount_load"), at("mounts.pressed_load")+at("mounts.lifted_load"), 1e-9)
	require.InDelta(t, at("mounts.pressed_load")/270, at("mounts.pressed_use"), 1e-12)
	require.InDelta(t, at("mounts.gearbox_mount_load")/230, at("mounts.gearbox_mount_use"), 1e-12)
	require.InDelta(t, 393*5.61, at("mounts.roll_couple"), 1e-9, "neither converter nor transfer case")
	require.Negative(t, at("mounts.lifted_load"), "full torque pulls the other mount")
}

// A gearbox mount ahead of the engine mounts, and an idle at the natural
// frequency, have no value.
func TestNoSense(t *testing.T) {
	v := unit()
	v.Leaves["frame.mounts.gearbox_x"] = figurestest.Exact(0.1)
	r := result(t, "mounts.engine_mount_load", v)
	require.Len(t, r.Outside, 1)
	require.Equal(t, "mounts.span", r.Outside[0].Path)

	v.Leaves["engine.idle_speed"] = figurestest.Exact(80)
	v.Leaves["engine.cylinders"] = figurestest.Exact(4)
	v.Leaves["frame.mounts.settled"] = figurestest.Exact(0.0004)
	r = result(t, "mounts.idle_transmission_settled", v)
	require.Len(t, r.Outside, 1)
	require.Equal(t, "mounts.idle_ratio_settled", r.Outside[0].Path)
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, mounts.Figures(), id, values)
}

func value(t *testing.T, id string, values figurestest.Fixed) float64 {
	t.Helper()
	return figurestest.Value(t, mounts.Figures(), id, values)
}
