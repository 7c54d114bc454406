package manifest_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
	"trialfit/internal/schema"
)

const example = "../../examples/patrol-truck/patrol-truck.build.yaml"

func read(t *testing.T, text string) *manifest.Manifest {
	m, err := newLoader(t).Read(strings.NewReader(text), "good"+manifest.Suffix, ".")
	require.NoError(t, err)
	return m
}

// TestPositions marks places with ^ in the line below them.
func TestPositions(t *testing.T) {
	m := read(t, `trialfit: 1
build:
  name: Größe # characters count, not bytes
  customer_reference: >-
    two
    lines
  holds:
    - {id: plan, date: 2026-03-02, by: "R. Vance (invented)"}
chassis:
  wheelbase: {value: "118 in", basis: measured, evidence: [tape]}
engine: {"fuel": diesel, mass:   745 lb}
electrical:
  alternator: none
  circuits:
    - id: pump
      fuse: none
      conductor:
        basis: documented
        value: 10 AWG
fittings:
  - {id: oil, port: 1/8 NPT internal, adapters: none, end: 1/8 NPT external}
work: []
evidence:
  - {id: tape, kind: photograph, file: tape.png, shows: [{id: w, path: chassis.wheelbase, value: "118 in"}]}
`)
	at := func(line, column int) manifest.Position { return manifest.Position{Line: line, Column: column} }
	for path, want := range map[string]manifest.Position{
		"":                                   at(1, 1),
		"trialfit":                           at(1, 11),
		"build":                              at(2, 1), // a section stands at its key
		"build.name":                         at(3, 9),
		"build.customer_reference":           at(4, 23),
		"build.shop":                         at(2, 1), // missing: the section around it
		"build.holds":                        at(7, 3),
		"build.holds.plan":                   at(8, 7),
		"build.holds.plan.date":              at(8, 24),
		"build.holds.plan.by":                at(8, 40),
		"chassis.wheelbase":                  at(10, 22), // the value in the long form
		"chassis.ratings.gross":              at(9, 1),
		"engine.fuel":                        at(11, 18),
		"engine.mass":                        at(11, 34),
		"electrical.alternator":              at(13, 15), // none is a value
		"electrical.alternator.pulley":       at(13, 15),
		"electrical.circuits":                at(14, 3),
		"electrical.circuits.pump":           at(15, 7),
		"electrical.circuits.pump.fuse":      at(16, 13),
		"electrical.circuits.pump.length":    at(15, 7),
		"electrical.circuits.pump.conductor": at(19, 16),
		"fittings.oil.port":                  at(21, 21),
		"fittings.oil.joints":                at(21, 5),
		"fittings.oil.joints.end.inner":      at(21, 21),
		"work":                               at(22, 1),
		"waivers":                            at(1, 1),
		"evidence.tape.shows.w.value":        at(24, 98),
		"registration.region":                at(1, 1),
		"no.such.path":                       at(1, 1),
		"electrical.circuits.fan.fuse":       at(14, 3),
	} {
		require.Equal(t, want, m.Position(path), path)
	}
}

func TestStates(t *testing.T) {
	m := read(t, `trialfit: 1
build: {}
electrical: {alternator: none, loads: [], circuits: [{id: a, fuse: none}, {id: b}]}
masses: {added: none}
`)
	for path, want := range map[string]manifest.State{
		"electrical.alternator":             manifest.None,
		"electrical.alternator.idle_output": manifest.None,
		"electrical.loads":                  manifest.None, // an empty list says as much
		"electrical.circuits":               manifest.Given,
		"electrical.circuits.a.fuse":        manifest.None,
		"electrical.circuits.b.fuse":        manifest.Missing,
		"electrical.grounds":                manifest.Missing,
		"masses.added":                      manifest.None,
		"masses.removed":                    manifest.Missing,
		"build":                             manifest.Given,
		"build.name":                        manifest.Missing,
		"chassis":                           manifest.Missing,
		"chassis.ratings.gross":             manifest.Missing,
	} {
		require.Equal(t, want, m.Node(path).State, path)
	}
}

// TestReadAsMeant holds what YAML readers get wrong elsewhere.
func TestReadAsMeant(t *testing.T) {
	m := read(t, "\xEF\xBB\xBF%YAML 1.1\r\n---\r\ntrialfit: 1\r\n"+`build:
  name: NO
  shop: on
  customer_reference: "007"
  holds: [{id: plan, date: 2026-03-02}]
registration: {zone: "NO", first_registered: 1999-04-12}
chassis: {model: 2026-01-01, model_year: 1999.0, make:	tabbed }
engine:
  family: |
    two
      lines
baseline: {fuel_level: 0.5}
  
# the end
...
`)
	for path, want := range map[string]string{
		"build.name":                    "NO",
		"build.shop":                    "on",
		"build.customer_reference":      "007",
		"build.holds.plan.date":         "2026-03-02",
		"registration.zone":             "NO",
		"registration.first_registered": "1999-04-12",
		"chassis.model":                 "2026-01-01",
		"chassis.make":                  "tabbed",
		"engine.family":                 "two lines",
		"baseline.fuel_level":           "0.5",
	} {
		require.Equal(t, want, m.Root.Word(path), path)
	}
	require.InDelta(t, 1999, m.Node("chassis.model_year").Value.Low, 0)
}

func TestLongForm(t *testing.T) {
	m := read(t, `trialfit: 1
build: {}
chassis:
  vin: ZZZ1A2B33X1000001
  model_year: {value: 1999, basis: documented, evidence: [label]}
  wheelbase: {value: "118 in"}
  ratings: {gross: {value: "6000 lb", basis: documented, evidence: [label]}}
readings:
  - {id: front, of: front_axle_mass, value: "2890 lb", evidence: [label]}
evidence:
  - {id: label, kind: label, file: label.txt}
`)
	require.Equal(t, manifest.DefaultBasis, m.Node("chassis.vin").Value.Basis)
	require.Equal(t, "documented", m.Node("chassis.model_year").Value.Basis)
	require.Equal(t, []string{"label"}, m.Node("chassis.model_year").Value.Evidence)
	require.Equal(t, manifest.DefaultBasis, m.Node("chassis.wheelbase").Value.Basis)
	require.Empty(t, m.Node("chassis.ratings.gross").Value.Basis, "a plate value is exact")
	require.Equal(t, "measured", m.Node("readings.front.value").Value.Basis, "a reading is a measurement")
	require.Equal(t, []string{"label"}, m.Node("readings.front.evidence").Value.Refs)
}

// TestJoints derives one joint more than there are adapters. Mates is thread's
// own judgement, tested there.
func TestJoints(t *testing.T) {
	adapter := func(id string) string {
		return "{id: " + id + ", into: 3/8 NPT external, takes: 3/8 NPT internal, seal: paste}"
	}
	for name, tc := range map[string]struct {
		adapters string
		ids      []string
		state    manifest.State
	}{
		"none":    {"adapters: none, ", []string{"end"}, manifest.Given},
		"empty":   {"adapters: [], ", []string{"end"}, manifest.Given},
		"one":     {"adapters: [" + adapter("a") + "], ", []string{"a", "end"}, manifest.Given},
		"three":   {"adapters: [" + adapter("c") + "," + adapter("a") + "," + adapter("b") + "], ", []string{"c", "a", "b", "end"}, manifest.Given},
		"missing": {"", nil, manifest.Missing},
	} {
		t.Run(name, func(t *testing.T) {
			m := read(t, "trialfit: 1\nbuild: {}\nfittings:\n  - {id: x, port: 3/8 NPT internal, "+tc.adapters+"end: 3/8 NPT external, seal: paste}\n")
			list := m.Node("fittings.x.joints")
			require.Equal(t, tc.state, list.State)
			var ids []string
			for _, j := range list.Items {
				ids = append(ids, j.ID)
				require.True(t, *j.Field("mates").Value.Bool)
				require.Equal(t, "paste", j.Field("seal").Value.Text)
			}
			require.Equal(t, tc.ids, ids)
			if tc.state == manifest.Missing {
				require.Equal(t, "fittings.x.adapters", list.Origin())
				return
			}
			// Each joint is written where its threads are.
			require.Equal(t, "fittings.x.port", list.Items[0].Field("inner").Origin())
			last := list.Items[len(list.Items)-1]
			require.Equal(t, "fittings.x.end", last.Field("outer").Origin())
			require.Equal(t, "fittings.x.seal", last.Field("seal").Origin())
		})
	}
}

// TestJointsOfEitherSex: a port may be a stub, an adapter may have one sex at both
// ends, and turns belong to the joint of the part that was turned.
func TestJointsOfEitherSex(t *testing.T) {
	m := read(t, `trialfit: 1
build: {}
fittings:
  - id: x
    port: 1/4 NPT external
    adapters:
      - {id: coupling, into: 1/4 NPT internal, takes: 1/4 NPT internal, turns: 6}
      - {id: nipple, into: 1/4 NPT external, takes: 1/4 NPT external}
    end: 1/4 NPT internal
    turns: 6.5
`)
	for id, want := range map[string]string{"coupling": "6", "nipple": "", "end": "6.5"} {
		j := m.Node("fittings.x.joints." + id)
		require.True(t, *j.Field("mates").Value.Bool, id)
		if turns := j.Field("turns"); want == "" {
			require.Equal(t, "fittings.x.adapters.nipple.turns", turns.Origin())
		} else {
			require.Equal(t, want, turns.Value.Text, id)
		}
	}
}

func TestJointWithoutThreads(t *testing.T) {
	m := read(t, "trialfit: 1\nbuild: {}\nfittings:\n  - {id: x, adapters: none, end: 3/8 NPT external}\n")
	mates := m.Node("fittings.x.joints.end.mates")
	require.Equal(t, manifest.Missing, mates.State)
	require.Nil(t, mates.Value)
	require.Equal(t, "fittings.x.port", mates.Origin(), "what to write")
}

// TestEveryPlaceHasANode walks form and nodes together.
func TestEveryPlaceHasANode(t *testing.T) {
	for _, text := range []string{"trialfit: 1\nbuild: {}\n", readFile(t, example)} {
		m := read(t, text)
		same(t, m, m.Root)
	}
}

func same(t *testing.T, m *manifest.Manifest, n *manifest.Node) {
	require.Same(t, n, m.Node(n.Path), n.Path)
	switch {
	case n.Shape.Type == schema.Object || n.ID != "":
		fields := manifest.Fields(n.Shape)
		require.Len(t, n.Fields, len(fields), n.Path)
		for i, f := range n.Fields {
			require.Equal(t, fields[i].Name, f.Shape.Name)
			same(t, m, f)
		}
	case n.Shape.Type == schema.List:
		for _, item := range n.Items {
			same(t, m, item)
		}
	case n.State == manifest.Given:
		require.NotNil(t, n.Value, n.Path)
	default:
		require.Nil(t, n.Value, n.Path)
	}
}

func readFile(tb testing.TB, path string) string {
	data, err := os.ReadFile(filepath.FromSlash(path))
	require.NoError(tb, err)
	return string(data)
}
