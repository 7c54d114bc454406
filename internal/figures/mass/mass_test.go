package mass_test

import (
	"maps"
	"strconv"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/mass"
)

// Every index carries more than the one below.
func TestLoadIndicesRise(t *testing.T) {
	for index := 61.0; index <= 150; index++ {
		assert.Greater(t, mass.LoadIndexMass(index), mass.LoadIndexMass(index-1))
	}
}

// Only a passenger tyre on anything but a passenger car counts for less.
func TestTyreReduction(t *testing.T) {
	for _, c := range []struct {
		tyre, category string
		want           float64
	}{
		{"light-truck", "light-truck", 2240},
		{"passenger", "light-truck", 2240 / 1.1},
		{"passenger", "off-road-wagon", 2240 / 1.1},
		{"passenger", "passenger-car", 2240},
	} {
		r := one(t, "mass.tyre_capacity_rear", figurestest.Fixed{Leaves: map[string]figures.Leaf{
			"chassis.tyres.rear_load_index": figurestest.Exact(112),
			"chassis.tyres.rear_count":      figurestest.Exact(2),
			"chassis.tyres.type":            figurestest.Word(c.tyre),
			"chassis.category":              figurestest.Word(c.category),
		}})
		assert.InDelta(t, c.want, r.Low, 1e-9, "%s tyre on a %s", c.tyre, c.category)
	}
}

// The smallest index that does: 1450 kg on two tyres needs 725 kg each, 97
// (730 kg); 2100 kg needs 114 (1180 kg) of a passenger tyre and 110 (1060 kg)
// of a truck tyre. By hand from the table.
func TestTyreEnough(t *testing.T) {
	for _, c := range []struct {
		axle, tyre string
		load       float64
		want       string
	}{
		{"front", "light-truck", 1450, "97"},
		{"rear", "passenger", 2100, "114"},
		{"rear", "light-truck", 2100, "110"},
	} {
		r := result(t, "mass.tyre_capacity_"+c.axle, figurestest.Fixed{Leaves: map[string]figures.Leaf{
			"chassis.tyres." + c.axle + "_count": figurestest.Exact(2),
			"chassis.tyres.type":                 figurestest.Word(c.tyre),
			"chassis.category":                   figurestest.Word("light-truck"),
		}})
		path, size, ok := figures.Enough(r, figures.AtLeast, c.load, c.load, nil)
		require.True(t, ok)
		assert.Equal(t, "chassis.tyres."+c.axle+"_load_index", path)
		assert.Equal(t, c.want, size.Label)
	}
}

func TestTyreIndexOutsideTheTable(t *testing.T) {
	leaves := map[string]figures.Leaf{
		"chassis.tyres.front_load_index": figurestest.Exact(151),
		"chassis.tyres.front_count":      figurestest.Exact(2),
		"chassis.tyres.type":             figurestest.Word("light-truck"),
		"chassis.category":               figurestest.Word("truck"),
	}
	r := result(t, "mass.tyre_capacity_front", figurestest.Fixed{Leaves: leaves})
	require.Len(t, r.Outside, 1)
	assert.Equal(t, "chassis.tyres.front_load_index", r.Outside[0].Path)
}

// Loads and shares belong together, whatever the masses are.
func TestLoadsAddUp(t *testing.T) {
	v := truck()
	v.add("added", "winch", 60, -0.7)
	v.add("removed", "bumper", 25, -0.8)
	v.add("carried", "crew", 150, 1.3)
	v.add("carried", "tools", 200, 2.9)
	at := func(id string) float64 { return one(t, id, v).Low }

	assert.InDelta(t, at("mass.total"), at("mass.axle_load_front")+at("mass.axle_load_rear"), 1e-9)
	assert.InDelta(t, at("mass.total_laden"), at("mass.axle_load_front_laden")+at("mass.axle_load_rear_laden"), 1e-9)
	assert.InDelta(t, at("mass.total")+350, at("mass.total_laden"), 1e-9)
	assert.InDelta(t, at("mass.axle_load_front")/at("mass.total"), at("mass.front_share"), 1e-12)
	assert.InDelta(t, at("mass.axle_load_front_laden")/at("mass.total_laden"), at("mass.front_share_laden"), 1e-12)
	assert.InDelta(t, 2.85*(1-at("mass.front_share")), at("mass.cg_behind_front_axle"), 1e-12)
	assert.InDelta(t, 1-at("mass.axle_load_front_laden")/1300, at("mass.margin_front"), 1e-12)
	assert.InDelta(t, 1-at("mass.axle_load_rear_laden")/1500, at("mass.margin_rear"), 1e-12)
	assert.InDelta(t, 1-at("mass.total_laden")/2600, at("mass.margin_gross"), 1e-12)
}

// A list that is not spoken of leaves the figure without a value.
func TestMissingLists(t *testing.T) {
	v := truck()
	delete(v.Lists, "masses.carried")
	assert.True(t, result(t, "mass.axle_load_front", v.Fixed).Ok())
	assert.Equal(t, []string{"masses.carried"}, result(t, "mass.axle_load_front_laden", v.Fixed).Missing)
}

// More taken off than there was: loads say so, shares have no value.
func TestNothingLeftToShare(t *testing.T) {
	v := truck()
	v.add("removed", "slip", 5000, 1.4)
	assert.Negative(t, one(t, "mass.total", v).High)
	for id, condition := range map[string]string{
		"mass.front_share": "mass.total", "mass.cg_behind_front_axle": "mass.total",
		"mass.margin_front": "mass.axle_load_front_laden", "mass.margin_gross": "mass.total_laden",
	} {
		r := result(t, id, v.Fixed)
		require.Len(t, r.Outside, 1, id)
		assert.Equal(t, condition, r.Outside[0].Path, id)
	}
}

// Ten uncertain masses on each list still give the exact corners of the loads.
func TestManyMasses(t *testing.T) {
	v := truck()
	front, rear := 0.0, 0.0
	for i := range 10 {
		id, x := "item"+strconv.Itoa(i), -1+0.5*float64(i)
		v.add("added", id, 20, x)
		v.Leaves["masses.added."+id+".mass"] = figurestest.Between(18, 22)
		front += 2 * max(1-x/2.85, -(1-x/2.85))
		rear += 2 * max(x/2.85, -x/2.85)
	}
	r := one(t, "mass.axle_load_front", v)
	assert.InDelta(t, 2*front, r.High-r.Low, 1e-9)
	r = one(t, "mass.axle_load_rear", v)
	assert.InDelta(t, 2*rear, r.High-r.Low, 1e-9)
}

func TestRanges(t *testing.T) {
	for _, f := range mass.Figures() {
		t.Run(f.ID, func(t *testing.T) {
			figurestest.Sample(t, f, 300)
			figurestest.Refuses(t, f)
		})
	}
}

// vehicle is a set of values that masses can be put into.
type vehicle struct{ figurestest.Fixed }

// heights and sides tell where the truck's masses lie on the other axes.
func (v vehicle) heightsAndSides() vehicle {
	for path, x := range map[string]float64{
		"chassis.track_front": 1.5, "chassis.track_rear": 1.46,
		"baseline.rear_raised.lift": 0.5, "baseline.rear_raised.front_mass": 1118, "baseline.rear_raised.wheel_height": 0.37,
		"outgoing_engine.cg.y": 0, "outgoing_engine.cg.z": 0.75, "engine.cg.y": 0.02, "engine.cg.z": 0.85,
	} {
		v.Leaves[path] = figurestest.Exact(x)
	}
	return v
}

// A heavier and taller engine raises the centre of gravity by its moment, and
// the static stability factor falls in the same measure.
func TestHeight(t *testing.T) {
	v := truck().heightsAndSides()
	before, after := one(t, "mass.cg_height_before", v).Low, one(t, "mass.cg_height", v).Low
	assert.InDelta(t, (2000*before+330*0.85-185*0.75)/2145, after, 1e-12)
	assert.InDelta(t, before/after, one(t, "mass.static_stability", v).Low/one(t, "mass.static_stability_before", v).Low, 1e-12)
	assert.InDelta(t, (2000*one(t, "mass.cg_to_the_right_before", v).Low+330*0.02)/2145, one(t, "mass.cg_to_the_right", v).Low, 1e-12)
	assert.Equal(t, after, one(t, "mass.cg_height_laden", v).Low, "nothing is carried")
}

// A mass without its height leaves the height without a value, nothing else.
func TestHeightOfAMassMissing(t *testing.T) {
	v := truck().heightsAndSides()
	v.add("added", "winch", 60, -0.7)
	assert.True(t, result(t, "mass.axle_load_front", v.Fixed).Ok())
	assert.Equal(t, []string{"masses.added.winch.z"}, result(t, "mass.cg_height", v.Fixed).Missing)
	assert.Equal(t, []string{"masses.added.winch.y"}, result(t, "mass.cg_to_the_right", v.Fixed).Missing)
}

// Where nothing is towed, figures of towing have no value, and say why.
func TestNothingTowed(t *testing.T) {
	v := truck()
	for _, leaf := range []string{"mass", "tongue", "hitch"} {
		v.Leaves["masses.trailer."+leaf] = figurestest.None()
	}
	r := result(t, "mass.axle_load_rear_towing", v.Fixed)
	assert.Equal(t, []string{"masses.trailer.hitch", "masses.trailer.tongue"}, r.None)
}

// The hitch lies behind the rear axle: it loads the rear by more than the
// tongue and lightens the front.
func TestTowing(t *testing.T) {
	v := truck()
	v.Leaves["masses.trailer.mass"] = figurestest.Exact(1600)
	v.Leaves["masses.trailer.tongue"] = figurestest.Exact(160)
	v.Leaves["masses.trailer.hitch"] = figurestest.Exact(4.1)
	v.Leaves["chassis.ratings.combination"] = figurestest.Exact(4200)
	at := func(id string) float64 { return one(t, id, v).Low }
	assert.InDelta(t, at("mass.axle_load_rear_laden")+160*4.1/2.85, at("mass.axle_load_rear_towing"), 1e-9)
	assert.InDelta(t, at("mass.total_towing"), at("mass.axle_load_front_towing")+at("mass.axle_load_rear_towing"), 1e-9)
	assert.InDelta(t, 1-at("mass.combination")/4200, at("mass.margin_combination"), 1e-12)
	assert.InDelta(t, 4200-at("mass.total_laden"), at("mass.trailer_left"), 1e-9)
	assert.InDelta(t, 0.1, at("mass.tongue_share"), 1e-12)
}

// The front sinks by what its load grows, and the ride height falls as far.
func TestSink(t *testing.T) {
	v := truck()
	v.add("carried", "tank", 120, 2.85)
	for path, x := range map[string]float64{
		"chassis.springs.front_rate": 45_000, "chassis.springs.rear_rate": 37_000, "chassis.springs.rear_bump": 0.1,
		"baseline.ride_heights.front_left": 0.50, "baseline.ride_heights.front_right": 0.49,
	} {
		v.Leaves[path] = figurestest.Exact(x)
	}
	at := func(id string) float64 { return one(t, id, v).Low }
	assert.InDelta(t, (1198.95-1050)*9.80665/90_000, at("mass.sink_front"), 1e-4)
	assert.InDelta(t, 0.495-at("mass.sink_front"), at("mass.ride_height_front"), 1e-12)
	assert.InDelta(t, at("mass.sink_front"), at("mass.sink_front_laden"), 1e-12, "the load rests on the rear axle")
	assert.InDelta(t, at("mass.sink_rear_laden")/0.1, at("mass.bump_use_rear"), 1e-12)
}

// truck weighs 1050 kg on the front and 950 kg on the rear axle; an engine of
// 330 kg replaces one of 185 kg.
func truck() vehicle {
	values := map[string]float64{
		"baseline.corner_weights.front_left": 530, "baseline.corner_weights.front_right": 520,
		"baseline.corner_weights.rear_left": 470, "baseline.corner_weights.rear_right": 480,
		"chassis.wheelbase": 2.85, "chassis.ratings.front_axle": 1300, "chassis.ratings.rear_axle": 1500, "chassis.ratings.gross": 2600,
		"outgoing_engine.mass": 185, "outgoing_engine.cg.x": 0.15, "engine.mass": 330, "engine.cg.x": 0.05,
	}
	v := vehicle{figurestest.Fixed{
		Leaves: map[string]figures.Leaf{},
		Lists:  map[string][]string{"masses.added": nil, "masses.removed": nil, "masses.carried": nil},
	}}
	for path, x := range maps.All(values) {
		v.Leaves[path] = figurestest.Exact(x)
	}
	return v
}

func (v vehicle) add(list, id string, mass, x float64) {
	list = "masses." + list
	v.Lists[list] = append(v.Lists[list], id)
	v.Leaves[list+"."+id+".mass"] = figurestest.Exact(mass)
	v.Leaves[list+"."+id+".x"] = figurestest.Exact(x)
}

// result evaluates a figure of the whole build.
func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, mass.Figures(), id, values)
}

// one is result where there must be a value.
func one(t *testing.T, id string, values any) figures.Result {
	t.Helper()
	fixed, ok := values.(figurestest.Fixed)
	if !ok {
		fixed = values.(vehicle).Fixed
	}
	r := result(t, id, fixed)
	require.True(t, r.Ok(), "%s: %+v", id, r)
	return r
}
