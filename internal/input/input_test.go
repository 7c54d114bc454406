package input_test

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/rulecase"
	"trialfit/internal/schema"
	"trialfit/schemas"
)

const example = "../../examples/patrol-truck/patrol-truck.build.yaml"

var shared = sync.OnceValues(func() (*check.Checker, error) {
	return check.New(check.Options{Today: "2026-11-25"})
})

func newChecker(tb testing.TB) *check.Checker {
	c, err := shared()
	require.NoError(tb, err)
	return c
}

func read(t *testing.T, c *check.Checker, text, dir string) *manifest.Manifest {
	m, err := c.Loader.Read(strings.NewReader(text), "test"+manifest.Suffix, dir)
	require.NoError(t, err)
	return m
}

func readExample(t *testing.T) string {
	data, err := os.ReadFile(example)
	require.NoError(t, err)
	return string(data)
}

// document returns the input document of a manifest as bytes and as decoded.
func document(t *testing.T, c *check.Checker, m *manifest.Manifest) ([]byte, map[string]any) {
	r, err := c.Prepare(m)
	require.NoError(t, err)
	data, err := rulebook.Canonical(r.Input)
	require.NoError(t, err)
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.UseNumber()
	var doc map[string]any
	require.NoError(t, dec.Decode(&doc))
	return data, doc
}

// small are manifests that say little.
var small = map[string]string{
	"nothing":        "trialfit: 1\nbuild: {}\n",
	"empty sections": "trialfit: 1\nbuild: {}\nchassis: {}\nelectrical: {alternator: {}, circuits: [{id: a}]}\nfittings: [{id: f}]\nevidence: [{id: e, kind: letter, file: e.txt}]\n",
	"none":           "trialfit: 1\nbuild: {hold: none, holds: none}\nmasses: {added: none}\nelectrical: {alternator: none, circuits: [{id: a, fuse: none}]}\nfittings: none\nevidence: none\nwaivers: none\n",
}

func TestEveryDocumentHasItsForm(t *testing.T) {
	data, err := schemas.FS.ReadFile("input.json")
	require.NoError(t, err)
	compiler := jsonschema.NewCompiler()
	compiler.Draft, compiler.AssertFormat = jsonschema.Draft2020, true
	require.NoError(t, compiler.AddResource("input.json", bytes.NewReader(data)))
	form, err := compiler.Compile("input.json")
	require.NoError(t, err)

	c := newChecker(t)
	cases, err := rulecase.Load(os.DirFS("../../policies"))
	require.NoError(t, err)
	texts := map[string]string{"example": readExample(t)}
	// The cases of a rule have the same sections: its first and its last will do.
	for i, rc := range cases {
		first, last := i == 0 || cases[i-1].Rule != rc.Rule, i == len(cases)-1 || cases[i+1].Rule != rc.Rule
		if first || last {
			texts[rc.Rule+"/"+rc.Name] = rc.Manifest
		}
	}
	for name, text := range small {
		texts[name] = text
	}
	for name, text := range texts {
		_, doc := document(t, c, read(t, c, text, t.TempDir()))
		require.NoError(t, form.Validate(doc), name)
	}
}

// TestMissingIsSaid walks the shape and the document together: whatever the
// form allows at a place that is there is in the document, as a value, as none
// or as missing.
func TestMissingIsSaid(t *testing.T) {
	c := newChecker(t)
	texts := map[string]string{"example": readExample(t)}
	for name, text := range small {
		texts[name] = text
	}
	for name, text := range texts {
		_, doc := document(t, c, read(t, c, text, t.TempDir()))
		present(t, name+": build", schema.Manifest(), doc["build"])
	}
}

func present(t *testing.T, path string, s *schema.Shape, v any) {
	o, ok := v.(map[string]any)
	require.True(t, ok, "%s is %v", path, v)
	switch s.Type {
	case schema.Object:
		section(t, path, s, o)
	case schema.List:
		if alone(o) {
			return
		}
		for id, item := range o {
			section(t, path+"."+id, s, item.(map[string]any))
		}
	case schema.Leaf:
		if alone(o) {
			return
		}
		require.Contains(t, o, "text", path)
		require.Contains(t, o, "basis", path)
		_, word := o["value"]
		_, number := o["low"]
		require.True(t, word || number, "%s has no value: %v", path, o)
	}
}

func section(t *testing.T, path string, s *schema.Shape, o map[string]any) {
	fields := manifest.Fields(s)
	require.Len(t, o, len(fields), path)
	for _, f := range fields {
		require.Contains(t, o, f.Name, path)
		present(t, path+"."+f.Name, f, o[f.Name])
	}
}

// alone tells a record that says missing or none, and where.
func alone(o map[string]any) bool {
	for _, state := range []string{"missing", "none"} {
		if path, ok := o[state].(string); ok {
			return path != "" && len(o) == 1
		}
	}
	return false
}

func TestMissingAndNoneDiffer(t *testing.T) {
	c := newChecker(t)
	_, doc := document(t, c, read(t, c, "trialfit: 1\nbuild: {}\nelectrical: {circuits: [{id: a, fuse: none}, {id: b}]}\n", t.TempDir()))
	circuits := doc["build"].(map[string]any)["electrical"].(map[string]any)["circuits"].(map[string]any)
	require.Equal(t, map[string]any{"none": "electrical.circuits.a.fuse"}, circuits["a"].(map[string]any)["fuse"])
	require.Equal(t, map[string]any{"missing": "electrical.circuits.b.fuse"}, circuits["b"].(map[string]any)["fuse"])
}

func TestSameManifestSameBytes(t *testing.T) {
	c := newChecker(t)
	dir := filepath.Dir(example)
	text := readExample(t)
	first, _ := document(t, c, read(t, c, text, dir))
	second, _ := document(t, c, read(t, c, text, dir))
	require.Equal(t, string(first), string(second))
}

// TestOrderDoesNotMatter turns lists round that are kept by id.
func TestOrderDoesNotMatter(t *testing.T) {
	c := newChecker(t)
	forward := `trialfit: 1
build: {}
masses:
  added:
    - {id: cooler, mass: "26 lb", x: "-24 in"}
    - {id: battery, mass: "52 lb", x: "-6 in"}
electrical:
  loads: [{id: lamps, current: "11 A"}, {id: blower, current: "14 A"}]
evidence:
  - {id: a, kind: letter, file: a.txt, shows: [{id: x, path: masses.added.cooler.mass, value: "26 lb"}, {id: y, path: masses.added.battery.mass, value: "52 lb"}]}
  - {id: b, kind: label, file: b.txt}
`
	backward := `trialfit: 1
build: {}
evidence:
  - {id: b, kind: label, file: b.txt}
  - {id: a, kind: letter, file: a.txt, shows: [{id: y, path: masses.added.battery.mass, value: "52 lb"}, {id: x, path: masses.added.cooler.mass, value: "26 lb"}]}
electrical:
  loads: [{id: blower, current: "14 A"}, {id: lamps, current: "11 A"}]
masses:
  added:
    - {id: battery, mass: "52 lb", x: "-6 in"}
    - {id: cooler, mass: "26 lb", x: "-24 in"}
`
	one, _ := document(t, c, read(t, c, forward, t.TempDir()))
	other, _ := document(t, c, read(t, c, backward, t.TempDir()))
	require.JSONEq(t, string(one), string(other))
	require.Equal(t, string(one), string(other))
}

// TestSpreadsOfBases reads values of each basis with the spreads of
// policies/lib/limits.yaml (common practice): the larger of a share and a
// floor, both ways. The numbers are worked by hand.
func TestSpreadsOfBases(t *testing.T) {
	c := newChecker(t)
	cases := []struct {
		what, engine, leaf string
		low, high          float64 // SI
	}{
		{"measured: 0.5 % above the floor", `mass: {value: "400 kg", basis: measured}`, "mass", 398, 402},
		{"measured: the floor of 0.5 kg", `mass: {value: "20 kg", basis: measured}`, "mass", 19.5, 20.5},
		{"documented: 1 %", `mass: {value: "400 kg", basis: documented}`, "mass", 396, 404},
		{"short form is claimed: 3 %", `mass: "400 kg"`, "mass", 388, 412},
		{"estimated: 10 %", `mass: {value: "400 kg", basis: estimated}`, "mass", 360, 440},
		{"a length of nothing has the floor of 10 mm", `cg: {x: "0 mm"}`, "cg.x", -0.01, 0.01},
		{"a range keeps its own", `mass: {value: "300..330 kg", basis: estimated}`, "mass", 300, 330},
		{"a tolerance keeps its own", `mass: {value: "312 kg ± 5", basis: estimated}`, "mass", 307, 317},
		{"a plate value is exact", `displacement: "3.9 L"`, "displacement", 0.0039, 0.0039},
		{"and stays so in the long form", `displacement: {value: "3.9 L", basis: estimated}`, "displacement", 0.0039, 0.0039},
	}
	for _, tc := range cases {
		t.Run(tc.what, func(t *testing.T) {
			m := read(t, c, "trialfit: 1\nbuild: {}\nengine:\n  "+tc.engine+"\n", ".")
			v := m.Node("engine." + tc.leaf).Value
			require.InDelta(t, tc.low, v.Low, 1e-9)
			require.InDelta(t, tc.high, v.High, 1e-9)
		})
	}
}
