package schema_test

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"
	"github.com/stretchr/testify/require"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
	"trialfit/schemas"
)

func manifestJSON(t *testing.T) ([]byte, map[string]any) {
	data, err := schemas.FS.ReadFile("manifest.json")
	require.NoError(t, err)
	var doc map[string]any
	require.NoError(t, json.Unmarshal(data, &doc))
	return data, doc
}

// standard compiles the manifest schema as anybody's validator would.
func standard(t *testing.T) *jsonschema.Schema {
	data, _ := manifestJSON(t)
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	c.AssertFormat = true
	require.NoError(t, c.AddResource("manifest.json", strings.NewReader(string(data))))
	s, err := c.Compile("manifest.json")
	require.NoError(t, err)
	return s
}

// TestWrittenInTheStandard holds the schema to JSON Schema 2020-12: compiling
// checks it against the meta-schema of the dialect, which jsonschema carries.
func TestWrittenInTheStandard(t *testing.T) {
	_, doc := manifestJSON(t)
	require.Equal(t, "https://json-schema.org/draft/2020-12/schema", doc["$schema"])
	standard(t)
}

// keywords are those of our own, as the package documents them.
var keywords = []string{"x-leaf", "x-quantity", "x-exact", "x-ref", "x-joints", "x-kinds", "x-quantity-of", "x-reader"}

// TestEverySubschema looks at every object of the file.
func TestEverySubschema(t *testing.T) {
	_, doc := manifestJSON(t)
	defs := doc["$defs"].(map[string]any)
	each("", doc, func(path string, o map[string]any) {
		for key := range o {
			if strings.HasPrefix(key, "x-") {
				require.Contains(t, keywords, key, path)
			}
		}
		if o["type"] == "object" {
			require.Equal(t, false, o["additionalProperties"], "%s is open", path)
		}
		if o["type"] == "array" {
			requireItems(t, path, o, defs)
		}
		refined := o["$ref"] == "#/$defs/long"
		properties, _ := o["properties"].(map[string]any)
		for name, p := range properties {
			if !refined {
				requireExplained(t, path+"."+name, p.(map[string]any), defs)
			}
		}
	})
}

func each(path string, v any, visit func(string, map[string]any)) {
	switch v := v.(type) {
	case map[string]any:
		visit(path, v)
		for key, below := range v {
			if key != "examples" {
				each(path+"/"+key, below, visit)
			}
		}
	case []any:
		for i, below := range v {
			each(fmt.Sprintf("%s/%d", path, i), below, visit)
		}
	}
}

func requireItems(t *testing.T, path string, o, defs map[string]any) {
	items := o["items"].(map[string]any)
	if items["x-ref"] != nil {
		return
	}
	id := items["properties"].(map[string]any)["id"]
	require.NotNil(t, id, "items of %s have no id", path)
	require.Contains(t, items["required"], "id", path)
}

func requireExplained(t *testing.T, path string, p, defs map[string]any) {
	def := map[string]any{}
	if ref, ok := p["$ref"].(string); ok {
		def = defs[strings.TrimPrefix(ref, "#/$defs/")].(map[string]any)
	}
	for _, key := range []string{"title", "description"} {
		text, _ := p[key].(string)
		if text == "" {
			text, _ = def[key].(string)
		}
		require.NotEmpty(t, strings.TrimSpace(text), "%s has no %s", path, key)
	}
	examples, _ := p["examples"].([]any)
	if examples == nil {
		examples, _ = def["examples"].([]any)
	}
	require.NotEmpty(t, examples, "%s has no example", path)
}

// TestExamplesAreAccepted puts every example where it belongs: as far as form
// goes, and read as the leaf it stands for.
func TestExamplesAreAccepted(t *testing.T) {
	v, err := schema.NewValidator(nil)
	require.NoError(t, err)
	plain := standard(t)
	walk(nil, v.Shape(), func(path []*schema.Shape) {
		last := path[len(path)-1]
		require.NotEmpty(t, last.Examples, last.Name)
		for _, example := range last.Examples {
			doc := around(path, example)
			require.NoError(t, plain.Validate(doc), "%s: %v", names(path), example)
			require.Empty(t, v.Validate(doc), "%s: %v", names(path), example)
			readable(t, last, example, names(path))
		}
	})
}

func walk(path []*schema.Shape, s *schema.Shape, visit func([]*schema.Shape)) {
	for _, f := range s.Fields {
		below := append(slices.Clip(path), f)
		visit(below)
		walk(below, f, visit)
	}
}

func names(path []*schema.Shape) string {
	out := make([]string, len(path))
	for i, s := range path {
		out[i] = s.Name
	}
	return strings.Join(out, ".")
}

// around builds the smallest manifest that holds value at path: what else is
// required is filled in from its own examples.
func around(path []*schema.Shape, value any) map[string]any {
	root := fill(schema.Manifest(), map[string]any{})
	at := root
	for i, s := range path {
		if i == len(path)-1 {
			at[s.Name] = value
			break
		}
		next := fill(s, map[string]any{})
		if s.Type == schema.List {
			at[s.Name] = []any{next}
		} else {
			at[s.Name] = next
		}
		at = next
	}
	return root
}

func fill(s *schema.Shape, section map[string]any) map[string]any {
	for _, name := range s.Required {
		switch f := s.Field(name); f.Type {
		case schema.Leaf:
			section[name] = f.Examples[0]
		case schema.Object:
			section[name] = fill(f, map[string]any{})
		}
	}
	return section
}

func readable(t *testing.T, s *schema.Shape, example any, path string) {
	switch s.Leaf {
	case schema.LeafQuantity:
		kinds := []quantity.Kind{s.Quantity}
		if s.QuantityOf != "" {
			kinds = nil
			for _, k := range s.Kinds {
				kinds = append(kinds, k)
			}
		}
		require.True(t, slices.ContainsFunc(kinds, func(k quantity.Kind) bool {
			_, err := quantity.Parse(fmt.Sprint(example), k)
			return err == nil
		}), "%s: %v", path, example)
	case schema.LeafThread:
		_, err := thread.Parse(example.(string))
		require.NoError(t, err, path)
	}
}
