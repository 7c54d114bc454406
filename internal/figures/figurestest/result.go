package figurestest

import (
	"testing"

	"trialfit/internal/figures"
)

// Result evaluates the figure with an id, one of those given. It fails the test
// when there is none, or when it has not exactly one result.
func Result(t *testing.T, all []*figures.Figure, id string, values figures.Values) figures.Result {
	t.Helper()
	for _, f := range all {
		if f.ID != id {
			continue
		}
		results, _ := figures.Evaluate(f, values)
		if len(results) != 1 {
			t.Fatalf("%s: %d results, want one", id, len(results))
		}
		return results[0]
	}
	t.Fatalf("no figure %s", id)
	return figures.Result{}
}

// Value is the lower end of a figure in SI units. It fails the test when the
// figure has no value.
func Value(t *testing.T, all []*figures.Figure, id string, values figures.Values) float64 {
	t.Helper()
	r := Result(t, all, id, values)
	if !r.Ok() {
		t.Fatalf("%s: %+v", id, r)
	}
	return r.Low
}
