package manifest_test

import (
	"bytes"
	"encoding/json"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"

	"trialfit/internal/manifest"
	"trialfit/internal/schema"
	"trialfit/schemas"
)

// everything builds a document that says something at every place of the form,
// from the examples in the schema; lists have one item.
func everything(s *schema.Shape) any {
	if s.Type == schema.Leaf {
		return s.Examples[0]
	}
	section := map[string]any{}
	for _, f := range s.Fields {
		section[f.Name] = everything(f)
	}
	if s.Type == schema.List {
		return []any{section}
	}
	return section
}

func fullDocument() map[string]any {
	doc := everything(schema.Manifest()).(map[string]any)
	// The examples know one paper.
	waiver := doc["waivers"].([]any)[0].(map[string]any)
	waiver["document"] = doc["evidence"].([]any)[0].(map[string]any)["id"]
	return doc
}

// eachPlace visits every place of the full document, in a document that has
// only its section and what every document needs.
func eachPlace(visit func(doc map[string]any, path []string, put func(any, func()))) {
	whole := fullDocument()
	for _, key := range slices.Sorted(maps.Keys(whole)) {
		doc := map[string]any{"trialfit": json.Number("1"), "build": map[string]any{"name": "full"}}
		if key != "evidence" {
			doc["evidence"] = []any{map[string]any{"id": "weigh-before", "kind": "letter", "file": "a.txt"}}
		}
		doc[key] = whole[key]
		places(nil, doc, func(path []string, put func(any, func())) {
			if path[0] == key {
				visit(doc, path, put)
			}
		})
	}
}

// standard is the schema as anybody's validator compiles it.
func standard(t *testing.T) *jsonschema.Schema {
	data, err := schemas.FS.ReadFile("manifest.json")
	require.NoError(t, err)
	c := jsonschema.NewCompiler()
	c.Draft, c.AssertFormat = jsonschema.Draft2020, true
	require.NoError(t, c.AddResource("manifest.json", bytes.NewReader(data)))
	s, err := c.Compile("manifest.json")
	require.NoError(t, err)
	return s
}

// places calls visit for every value below v with a function that puts another
// in its place for as long as it runs.
func places(path []string, v any, visit func(path []string, put func(any, func()))) {
	switch v := v.(type) {
	case map[string]any:
		for _, key := range slices.Sorted(maps.Keys(v)) {
			below := append(slices.Clip(path), key)
			was := v[key]
			visit(below, func(other any, while func()) { v[key] = other; while(); v[key] = was })
			places(below, was, visit)
		}
	case []any:
		for i, was := range v {
			below := append(slices.Clip(path), strconv.Itoa(i))
			visit(below, func(other any, while func()) { v[i] = other; while(); v[i] = was })
			places(below, was, visit)
		}
	}
}

func mutants() []any {
	return []any{
		nil, true, json.Number("5"), json.Number("5.5"), "zzz zzz", "", "none", "NONE", "5", "2026-02-30", "zzz",
		[]any{}, []any{"zzz zzz"}, []any{"zzz", "zzz"}, map[string]any{}, map[string]any{"zzz": "zzz"},
		map[string]any{"value": "zzz zzz"}, map[string]any{"value": nil}, map[string]any{"value": "none"},
		map[string]any{"value": json.Number("5"), "basis": "hearsay"},
	}
}

// TestFormFaultsAgree puts wrong things at every place of the form: the schema
// package finds fault exactly where a validator without our extensions does.
func TestFormFaultsAgree(t *testing.T) {
	plain := standard(t)
	v, err := schema.NewValidator(nil)
	require.NoError(t, err)
	require.NoError(t, plain.Validate(fullDocument()))
	eachPlace(func(doc map[string]any, path []string, put func(any, func())) {
		for _, m := range mutants() {
			put(m, func() {
				faults := v.Validate(doc)
				require.Equal(t, plain.Validate(doc) != nil, len(faults) > 0, "%s: %v: %v", path, m, faults)
				for _, f := range faults {
					require.NotEmpty(t, f.Message)
					require.NotContains(t, f.Message, "\n")
					require.NotContains(t, f.Message, "does not match", "%s: %v: the validator's own words", path, m)
				}
			})
		}
	})
}

// TestOneFaultOneLine puts something at every place that no place accepts and
// expects one line that points at it.
func TestOneFaultOneLine(t *testing.T) {
	l := newLoader(t)
	text, problems := load(t, l, fullDocument())
	require.Empty(t, problems, text)
	eachPlace(func(doc map[string]any, path []string, put func(any, func())) {
		for _, m := range []any{nil, map[string]any{"zzz": "zzz"}, "NONE"} {
			put(m, func() {
				text, problems := load(t, l, doc)
				n := nodeAt(t, text, path)
				for _, p := range problems {
					require.Contains(t, []int{n.key, n.value, n.value + 1}, p.Line, "%s: %v: %s", path, m, p)
				}
				// A section without the keys it needs lacks each of them.
				if _, section := m.(map[string]any); !section {
					require.Len(t, problems, 1, "%s: %v", path, m)
				}
				require.NotEmpty(t, problems, "%s: %v", path, m)
			})
		}
	})
}

func load(t *testing.T, l *manifest.Loader, doc any) (string, manifest.Problems) {
	text, err := json.MarshalIndent(doc, "", " ")
	require.NoError(t, err)
	_, err = l.Read(bytes.NewReader(text), "full"+manifest.Suffix, ".")
	problems, ok := err.(manifest.Problems)
	require.Equal(t, err != nil, ok)
	return string(text), problems
}

type lines struct{ key, value int }

func nodeAt(t *testing.T, text string, path []string) lines {
	var root yaml.Node
	require.NoError(t, yaml.Unmarshal([]byte(text), &root))
	at := root.Content[0]
	key := at.Line
	for _, step := range path {
		if at.Kind == yaml.SequenceNode {
			i, err := strconv.Atoi(step)
			require.NoError(t, err)
			at = at.Content[i]
			key = at.Line
			continue
		}
		i := slices.IndexFunc(at.Content, func(n *yaml.Node) bool { return n.Value == step })
		for i%2 == 1 { // a value that reads like the key
			i += 1 + slices.IndexFunc(at.Content[i+1:], func(n *yaml.Node) bool { return n.Value == step })
		}
		require.GreaterOrEqual(t, i, 0, "%s", strings.Join(path, "."))
		key, at = at.Content[i].Line, at.Content[i+1]
	}
	return lines{key, at.Line}
}
