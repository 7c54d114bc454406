package figurestest

import (
	"fmt"
	"hash/fnv"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"trialfit/internal/figures"
)

// Refuses gives f one input after the other that lies beyond its declared
// bounds, zero and negative values among them, and fails t when f has a value
// all the same, or when the bounds of an input allow what no manifest means.
func Refuses(t *testing.T, f *figures.Figure) {
	t.Helper()
	if err := refuses(f); err != nil {
		t.Error(err)
	}
}

// absurd is larger than anything a manifest means, in whatever SI unit.
const absurd = 1e9

func refuses(f *figures.Figure) error {
	seed := fnv.New64a()
	seed.Write([]byte(f.ID))
	g := &generator{rand.New(rand.NewPCG(seed.Sum64(), 1)), f}
	box := g.box()
	for drawn := 1; drawn < mostBoxes && len(empty(f, box)) > 0; drawn++ {
		box = g.box()
	}
	for i := range f.Inputs {
		in := &f.Inputs[i]
		if len(in.Choices) > 0 || in.Valid == (figures.Bounds{}) {
			continue
		}
		path := first(f, in)
		if in.Valid.Low <= -absurd || in.Valid.High >= absurd {
			return fmt.Errorf("%s: the bounds of %s, %v to %v, allow anything", f.ID, path, in.Valid.Low, in.Valid.High)
		}
		for _, x := range []float64{in.Valid.Low - 1, in.Valid.High + 1, 0, -1, -absurd, absurd} {
			if x >= in.Valid.Low && x <= in.Valid.High {
				continue
			}
			values := Fixed{maps.Clone(box.Leaves), box.Lists}
			values.Leaves[path] = Exact(x)
			results, _ := figures.Evaluate(f, values)
			if len(results) != 1 || !slices.ContainsFunc(results[0].Outside, func(e figures.Excess) bool { return e.Path == path }) {
				return fmt.Errorf("%s: takes %v for %s, beyond %v to %v", f.ID, x, path, in.Valid.Low, in.Valid.High)
			}
		}
	}
	return nil
}

// first is the path at which a box holds the first value of an input.
func first(f *figures.Figure, in *figures.Input) string {
	path := in.Path
	if f.Per != "" {
		path = bind(path, f.Per+".*", strings.ReplaceAll(f.Per+".*", "*", "one"))
	}
	return strings.Replace(path, "*", "item1", 1)
}

// empty lists the columns that have no item in a box.
func empty(f *figures.Figure, box Fixed) []string {
	var paths []string
	for i := range f.Inputs {
		if path := first(f, &f.Inputs[i]); box.Leaves[path].State == figures.Missing {
			paths = append(paths, path)
		}
	}
	return paths
}
