package figurestest

import (
	"fmt"
	"hash/fnv"
	"maps"
	"math"
	"math/rand/v2"
	"slices"
	"strconv"
	"strings"
	"testing"

	"trialfit/internal/figures"
)

// How samples are thrown.
const (
	pointsPerBox = 50
	mostItems    = 6    // in a column
	mostBoxes    = 5000 // drawn for one that meets a figure's conditions
	tolerance    = 1e-9 // relative to the larger end of the range
)

// generic is the window for an input without declared bounds, SI.
var generic = figures.Bounds{Low: 0.1, High: 10}

// Sample throws n seeded random points of random boxes inside the declared
// bounds at f, corners included, and fails t when a value falls outside the
// range that the engine gives for the box. The points depend on the id of f
// only.
func Sample(t *testing.T, f *figures.Figure, n int) {
	t.Helper()
	if err := sample(f, n); err != nil {
		t.Error(err)
	}
}

// sample returns the first value outside its range as an error.
func sample(f *figures.Figure, n int) error {
	seed := fnv.New64a()
	seed.Write([]byte(f.ID))
	g := &generator{rand.New(rand.NewPCG(seed.Sum64(), 0)), f}
	for thrown := 0; thrown < n; {
		box := g.box()
		want, err := only(f, box)
		for drawn := 1; drawn < mostBoxes && unconditional(f, want); drawn++ {
			box = g.box()
			want, err = only(f, box)
		}
		if err != nil {
			return err
		}
		slack := tolerance * max(math.Abs(want.Low), math.Abs(want.High))
		for range min(pointsPerBox, n-thrown) {
			point := g.point(box)
			got, err := only(f, point)
			if err != nil {
				return err
			}
			if y := got.Low; y < want.Low-slack || y > want.High+slack {
				return fmt.Errorf("%s: %v at a point, but %v to %v over its box\nbox:%s\npoint:%s",
					f.ID, y, want.Low, want.High, write(box), write(point))
			}
			thrown++
		}
	}
	return nil
}

// unconditional says whether conditions of f are all that r lacks.
func unconditional(f *figures.Figure, r figures.Result) bool {
	return len(f.Conditions) > 0 && len(r.Outside) > 0 && !slices.ContainsFunc(r.Outside, func(e figures.Excess) bool {
		return !slices.ContainsFunc(f.Conditions, func(c figures.Condition) bool { return c.Figure.ID == e.Path })
	})
}

// only returns the one result of f in values.
func only(f *figures.Figure, values Fixed) (figures.Result, error) {
	results, _ := figures.Evaluate(f, values)
	if len(results) != 1 || !results[0].Ok() {
		var r figures.Result
		if len(results) == 1 {
			r = results[0]
		}
		return r, fmt.Errorf("%s: no value with%s\nresults: %+v", f.ID, write(values), results)
	}
	return results[0], nil
}

// write lists leaves by path.
func write(values Fixed) string {
	var b strings.Builder
	for _, path := range slices.Sorted(maps.Keys(values.Leaves)) {
		leaf := values.Leaves[path]
		b.WriteString("\n  " + path + ": ")
		switch {
		case leaf.State == figures.None:
			b.WriteString("none")
		case leaf.Word != "":
			b.WriteString(leaf.Word)
		default:
			b.WriteString(strconv.FormatFloat(leaf.Low, 'g', -1, 64) + " to " + strconv.FormatFloat(leaf.High, 'g', -1, 64))
		}
	}
	return b.String()
}

type generator struct {
	*rand.Rand
	figure *figures.Figure
}

// box returns values that give the figure one subject, with every input in a
// random part of its bounds.
func (g *generator) box() Fixed {
	values := Fixed{Leaves: map[string]figures.Leaf{}, Lists: map[string][]string{}}
	var pattern, bound string
	if g.figure.Per != "" {
		pattern, bound = g.figure.Per+".*", strings.ReplaceAll(g.figure.Per+".*", "*", "one")
		for path := bound; path != ""; {
			list, _, found := cutLast(path, ".one")
			if !found {
				break
			}
			values.Lists[list] = []string{"one"}
			path = list
		}
	}
	bounds := g.bounds()
	for i := range g.figure.Inputs {
		in := &g.figure.Inputs[i]
		paths := []string{bind(in.Path, pattern, bound)}
		if list, rest, column := strings.Cut(paths[0], ".*"); column {
			paths = nil
			for _, id := range g.items(values, list, in) {
				paths = append(paths, list+"."+id+rest)
			}
		}
		for _, path := range paths {
			if _, seen := values.Leaves[path]; !seen {
				values.Leaves[path] = g.leaf(in, bounds[in.Path])
			}
		}
	}
	return values
}

// cutLast cuts s at the last sep.
func cutLast(s, sep string) (before, after string, found bool) {
	if i := strings.LastIndex(s, sep); i >= 0 {
		return s[:i], s[i+len(sep):], true
	}
	return s, "", false
}

// bind fills in the stars that a path shares with the Per pattern.
func bind(path, pattern, bound string) string {
	shared := 0
	segments, stars, ids := strings.Split(path, "."), strings.Split(pattern, "."), strings.Split(bound, ".")
	for shared < min(len(segments), len(stars)) && segments[shared] == stars[shared] {
		segments[shared] = ids[shared]
		shared++
	}
	return strings.Join(segments, ".")
}

// items returns the ids of a column's list; columns of one list share them.
func (g *generator) items(values Fixed, list string, in *figures.Input) []string {
	if _, seen := values.Lists[list]; !seen {
		least := 0
		for i := range g.figure.Inputs {
			other := &g.figure.Inputs[i]
			if other.NonEmpty && listOf(other.Path) == listOf(in.Path) {
				least = 1
			}
		}
		var ids []string // nil: none
		for i := range least + g.IntN(mostItems+1-least) {
			ids = append(ids, "item"+strconv.Itoa(i+1))
		}
		values.Lists[list] = ids
	}
	return values.Lists[list]
}

// listOf returns the path of a column's list, its stars as declared.
func listOf(path string) string {
	list, _, _ := cutLast(path, ".*")
	return list
}

// bounds returns what all inputs with the same path allow.
func (g *generator) bounds() map[string]figures.Bounds {
	all := map[string]figures.Bounds{}
	for _, in := range g.figure.Inputs {
		valid := in.Valid
		if valid == (figures.Bounds{}) {
			continue
		}
		if before, seen := all[in.Path]; seen {
			valid = figures.Bounds{Low: max(valid.Low, before.Low), High: min(valid.High, before.High)}
		}
		all[in.Path] = valid
	}
	return all
}

// leaf returns a random leaf for an input: a word, none where the figure has a
// value for it, a point, a narrow or a wide range.
func (g *generator) leaf(in *figures.Input, valid figures.Bounds) figures.Leaf {
	if g.mayBeNone(in.Path) && g.IntN(8) == 0 {
		return None()
	}
	if len(in.Choices) > 0 {
		words := slices.Sorted(maps.Keys(in.Choices))
		return Word(words[g.IntN(len(words))])
	}
	w := window(valid)
	low, high := g.within(w), g.within(w)
	switch g.IntN(5) {
	case 0:
		high = low
	case 1, 2:
		high = low + (high-low)/20
	case 3:
		low, high = w.Low, w.High
	}
	return Between(min(low, high), max(low, high))
}

// mayBeNone says whether every input with this path has a value for none.
func (g *generator) mayBeNone(path string) bool {
	for i := range g.figure.Inputs {
		if in := &g.figure.Inputs[i]; in.Path == path && in.WhenNone == nil {
			return false
		}
	}
	return true
}

// window makes bounds finite.
func window(valid figures.Bounds) figures.Bounds {
	if valid == (figures.Bounds{}) {
		return generic
	}
	switch below, above := math.IsInf(valid.Low, -1), math.IsInf(valid.High, 1); {
	case below && above:
		return figures.Bounds{Low: -generic.High, High: generic.High}
	case below:
		valid.Low = valid.High - generic.High
	case above:
		valid.High = valid.Low + generic.High
	}
	return valid
}

// within returns a random value in w, over wide windows often of another
// order of magnitude.
func (g *generator) within(w figures.Bounds) float64 {
	if w.Low > 0 && w.High > 100*w.Low && g.IntN(2) == 0 {
		x := w.Low * math.Exp(g.Float64()*math.Log(w.High/w.Low))
		return max(w.Low, min(w.High, x))
	}
	if w.Low == 0 && g.IntN(2) == 0 {
		return w.High * math.Pow(g.Float64(), 4)
	}
	return between(w.Low, w.High, g.Float64())
}

// between returns the point a share of the way from low to high, never beyond.
func between(low, high, share float64) float64 {
	return max(low, min(high, low+share*(high-low)))
}

// point returns a random point of a box: one in three is a corner, one in
// three lies on faces.
func (g *generator) point(box Fixed) Fixed {
	point := Fixed{Leaves: map[string]figures.Leaf{}, Lists: box.Lists}
	style := g.IntN(3)
	for _, path := range slices.Sorted(maps.Keys(box.Leaves)) {
		leaf := box.Leaves[path]
		share := g.Float64()
		if style == 0 || style == 1 && g.IntN(2) == 0 {
			share = math.Round(share)
		}
		x := between(leaf.Low, leaf.High, share)
		if share == 1 {
			x = leaf.High
		}
		leaf.Low, leaf.High = x, x
		point.Leaves[path] = leaf
	}
	return point
}
