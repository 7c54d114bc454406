package schema_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/schema"
)

// TestShortlist: the form of a shortlist is documented at every place, and
// what is known of a candidate has the form of the manifest.
func TestShortlist(t *testing.T) {
	shape := schema.Shortlist()
	var walk func(*schema.Shape)
	walk = func(s *schema.Shape) {
		for _, f := range s.Fields {
			require.NotEmpty(t, f.Title, f.Name)
			require.NotEmpty(t, f.Description, f.Name)
			require.NotEmpty(t, f.Examples, f.Name)
			walk(f)
		}
	}
	walk(shape)
	for _, path := range []string{"chassis.a.known.chassis.ratings.gross", "donors.a.known.engine.mass", "intent.masses.trailer.mass"} {
		s, err := shape.At(path)
		require.NoError(t, err)
		require.Equal(t, "mass", string(s.Quantity), path)
	}

	v, err := schema.ShortlistValidator()
	require.NoError(t, err)
	faults := v.Validate(map[string]any{"shortlist": "1", "chassis": []any{map[string]any{"id": "a", "known": map[string]any{"chasis": map[string]any{}}, "price": map[string]any{}}}})
	var told []string
	for _, f := range faults {
		told = append(told, f.Pointer+": "+f.Message)
	}
	require.Contains(t, told, `/chassis/0/known/chasis: unknown key "chasis", did you mean "chassis"?`)
	require.Contains(t, told, "/chassis/0/price: value is not given: price needs it")
	require.Contains(t, told, `: currency is not given: a shortlist needs it`)
}
