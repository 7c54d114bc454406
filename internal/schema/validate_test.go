package schema_test

import (
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/schema"
)

// TestForeignKeywords: what a local pack's schema refuses by a keyword that
// the shape knows nothing of is told in the validator's words, never let pass.
func TestForeignKeywords(t *testing.T) {
	v, err := schema.NewValidator(map[string][]byte{"x-shop": []byte(`{
		"title": "Shop", "description": "Our own.", "type": "object",
		"properties": {
			"crew": {"title": "Crew", "description": "How many.", "x-leaf": "integer", "anyOf": [{"type": "integer", "minimum": 2}, {"$ref": "#/$defs/long"}], "examples": [2]},
			"code": {"title": "Code", "description": "Ours.", "x-leaf": "text", "anyOf": [{"type": "string", "maxLength": 3}, {"$ref": "#/$defs/long"}], "examples": ["abc"]},
			"jigs": {"title": "Jigs", "description": "Ours.", "type": "array", "minItems": 2, "items": {"type": "object", "properties": {"id": {"title": "Id", "description": "Ours.", "$ref": "#/$defs/id", "examples": ["a"]}}, "required": ["id"], "additionalProperties": false}}
		},
		"minProperties": 1,
		"additionalProperties": false
	}`)})
	require.NoError(t, err)
	for text, want := range map[string]string{
		`{"crew": 1}`:             `/x-shop/crew: found 1: must be >= 2 but found 1`,
		`{"crew": 2}`:             ``,
		`{"code": "abcd"}`:        `/x-shop/code: found "abcd": length must be <= 3, but got 4`,
		`{"jigs": [{"id": "a"}]}`: `/x-shop/jigs: minimum 2 items required, but found 1 items`,
		`{}`:                      `/x-shop: minimum 1 properties allowed, but found 0 properties`,
		`{"crewe": 2}`:            `/x-shop/crewe: unknown key "crewe", did you mean "crew"?`,
	} {
		dec := json.NewDecoder(strings.NewReader(`{"trialfit": 1, "build": {}, "x-shop": ` + text + `}`))
		dec.UseNumber()
		var doc any
		require.NoError(t, dec.Decode(&doc))
		var got []string
		for _, f := range v.Validate(doc) {
			got = append(got, f.Pointer+": "+f.Message)
		}
		require.Equal(t, want, strings.Join(got, "\n"), text)
	}
}

func TestNearest(t *testing.T) {
	known := []string{"diesel", "petrol", "lpg"}
	for word, want := range map[string]string{
		"deisel": "diesel", "DIESEL": "diesel", "petroll": "petrol", "gas": "", "lgp": "lpg", "": "", "zzz": "",
		strings.Repeat("diesel", 1000): "",
	} {
		require.Equal(t, want, schema.Nearest(word, known), word)
	}
}

func TestQuoteClips(t *testing.T) {
	require.Equal(t, `"a\nb"`, schema.Quote("a\nb"))
	require.Equal(t, `"`+strings.Repeat("ü", 60)+`…"`, schema.Quote(strings.Repeat("ü", 500)))
}
