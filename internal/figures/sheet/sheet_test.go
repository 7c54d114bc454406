package sheet_test

import (
	"encoding/json"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/sheet"
	"trialfit/internal/quantity"
)

func TestDeclarations(t *testing.T) {
	all := sheet.All()
	require.NotEmpty(t, all)
	bases := []string{"physics", "standard", "handbook", "manufacturer", "common-practice", "memory"}
	for i, f := range all {
		if i > 0 {
			assert.Less(t, all[i-1].ID, f.ID, "sorted, each id once")
		}
		assert.Same(t, f, sheet.Find(f.ID))
		assert.Regexp(t, `^[a-z]+(\.[a-z][a-z_]*)$`, f.ID)
		assert.NotEmpty(t, f.Title, f.ID)
		assert.NotEmpty(t, f.Symbol, f.ID)
		assert.NotEmpty(t, f.Formula, f.ID)
		assert.True(t, quantity.Known(f.Kind), f.ID)
		if f.Unit != "" {
			_, err := quantity.In(1, f.Kind, f.Unit)
			assert.NoError(t, err, f.ID)
		}
		assert.NotEmpty(t, f.Source.Title, f.ID)
		assert.Contains(t, bases, f.Source.Basis, f.ID)
		assert.NotNil(t, f.Compute, f.ID)
		names := map[string]string{}
		for _, in := range f.Inputs {
			before, taken := names[in.Name]
			assert.False(t, taken && before != in.Path, "%s: %s and %s are both called %s", f.ID, before, in.Path, in.Name)
			names[in.Name] = in.Path
			assert.True(t, len(in.Choices) > 0 || in.Valid != figures.Bounds{}, "%s: %s has neither bounds nor words", f.ID, in.Path)
			if s := in.Series; s != nil {
				assert.True(t, slices.IsSortedFunc(s.Sizes, func(a, b figures.Size) int {
					if a.SI < b.SI {
						return -1
					}
					return 1
				}), "%s: sizes of %s rise", f.ID, in.Path)
			}
		}
	}
	assert.Nil(t, sheet.Find("mass.nothing"))
}

// Every condition reads only what its figure reads, so that what a figure lacks
// is said in full.
func TestConditionsReadNoMore(t *testing.T) {
	for _, f := range sheet.All() {
		for _, c := range f.Conditions {
			assert.Equal(t, f.Per, c.Figure.Per, f.ID)
			assert.False(t, math.IsInf(c.Valid.Low, 0) || math.IsInf(c.Valid.High, 0), "%s: bounds are written out as numbers", f.ID)
			for _, in := range c.Figure.Inputs {
				assert.True(t, slices.ContainsFunc(f.Inputs, func(own figures.Input) bool { return own.Path == in.Path }),
					"%s does not read %s of %s", f.ID, in.Path, c.Figure.ID)
			}
		}
	}
}

// Every leaf that a figure reads is in the manifest's schema, of a fitting
// form, and every word that the schema allows has a number.
func TestPathsAreInTheSchema(t *testing.T) {
	text, err := os.ReadFile("../../../schemas/manifest.json")
	require.NoError(t, err)
	var schema node
	require.NoError(t, json.Unmarshal(text, &schema))
	for _, f := range sheet.All() {
		for _, in := range f.Inputs {
			if in.Path == figures.Today {
				continue // the day of the judgement
			}
			if strings.HasPrefix(in.Path, "fittings.*.joints.") {
				continue // derived from port, adapters and end
			}
			if strings.HasSuffix(in.Path, "_size.diameter") {
				continue // a part of a tyre's size code
			}
			leaf, ok := schema.leaf(schema.Defs, strings.Split(in.Path, "."))
			if !assert.True(t, ok, "%s: no %s in the schema", f.ID, in.Path) {
				continue
			}
			var words []string
			if len(leaf.AnyOf) > 0 {
				words = leaf.AnyOf[0].Enum
				if leaf.AnyOf[0].Type == "boolean" {
					words = []string{"true", "false"}
				}
			}
			for _, word := range words {
				assert.Contains(t, in.Choices, word, "%s: %s", f.ID, in.Path)
			}
			assert.Len(t, in.Choices, len(words), "%s: %s", f.ID, in.Path)
		}
	}
}

// node is what the test needs of a JSON Schema.
type node struct {
	Ref        string          `json:"$ref"`
	Defs       map[string]node `json:"$defs"`
	Properties map[string]node `json:"properties"`
	Items      *node           `json:"items"`
	AnyOf      []node          `json:"anyOf"`
	Enum       []string        `json:"enum"`
	Type       any             `json:"type"` // a word or a list of words
}

// leaf follows a path; a star stands for the items of a list.
func (n node) leaf(defs map[string]node, path []string) (node, bool) {
	if len(path) == 0 {
		if def, ok := defs[strings.TrimPrefix(n.Ref, "#/$defs/")]; ok {
			n = def
		}
		return n, true
	}
	if path[0] == "*" && n.Items != nil {
		return n.Items.leaf(defs, path[1:])
	}
	if child, ok := n.Properties[path[0]]; ok {
		return child.leaf(defs, path[1:])
	}
	for _, choice := range n.AnyOf {
		if leaf, ok := choice.leaf(defs, path); ok {
			return leaf, true
		}
	}
	return node{}, false
}
