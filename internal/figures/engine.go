package figures

import (
	"fmt"
	"slices"
	"strings"
)

// Range is a closed interval of SI values.
type Range struct{ Low, High float64 }

// Excess is what reaches beyond the bounds of a formula, in SI units.
type Excess struct {
	// Path is that of an input, or the id of the figure that a Condition bounds.
	Path      string
	Low, High float64
	Bounds    Bounds
}

// Result is one figure for one subject.
type Result struct {
	Figure *Figure
	// Subject is "build" for a figure of the whole build, else the manifest
	// path of the list item: "electrical.circuits.starter".
	Subject string
	// IDs are bound to the stars of Per and to its item: ["coolant", "bushing"]
	// for Per "fittings.*.joints".
	IDs []string
	// Low and High are in SI units and have a meaning when Ok.
	Low, High float64
	// Basis is the weakest one among the given inputs; "" when all are exact.
	Basis string
	// Inputs holds every leaf read, once, in the order of declaration, columns
	// in manifest order.
	Inputs []Leaf
	// Missing lists the leaves and lists that are not given, sorted.
	Missing []string
	// None lists the leaves and lists said to be none where the formula needs
	// a value, sorted.
	None []string
	// Outside lists the inputs beyond the bounds of the formula, or where there
	// are none the first condition that does not hold.
	Outside []Excess

	box *box
}

// Ok says whether the figure has a value.
func (r Result) Ok() bool {
	return r.Figure != nil && len(r.Missing) == 0 && len(r.None) == 0 && len(r.Outside) == 0
}

// At returns the extremes of the figure with some leaves replaced, the others
// at their full range, in SI units. It has none when a path is not an input
// held as a number, when another input has no value, or outside the bounds of
// the formula.
func (r Result) At(replace map[string]Range) (low, high float64, ok bool) {
	if r.box == nil || r.box.broken {
		return 0, 0, false
	}
	dims := slices.Clone(r.box.dims)
	found := 0
	for i := range dims {
		if window, is := replace[dims[i].path]; is {
			dims[i].Range, dims[i].known = window, true
			found++
		}
	}
	if found != len(replace) || len(r.box.gaps(dims)) > 0 || len(r.box.excesses(dims)) > 0 {
		return 0, 0, false
	}
	for _, c := range r.box.conditions {
		if _, broken := c.broken(replace); broken {
			return 0, 0, false
		}
	}
	low, high = r.box.extremes(dims)
	return low, high, true
}

// Evaluate computes f for every subject in v: for a whole-build figure exactly
// one result, else one for each item of the Per list in manifest order. The
// state says why there are no results, or with a nested Per list that some
// inner list is missing.
//
// It panics on a mistake in the figure: a word without a number, a path with
// too many stars, a value that is not finite within the declared bounds.
func Evaluate(f *Figure, v Values) ([]Result, State) {
	subjects, state := f.subjects(v)
	results := make([]Result, len(subjects))
	for i, ids := range subjects {
		results[i] = f.evaluate(ids, v)
	}
	return results, state
}

// subjects returns the ids that bind Per, one row for each subject.
func (f *Figure) subjects(v Values) ([][]string, State) {
	rows := [][]string{nil}
	if f.Per == "" {
		return rows, Given
	}
	lists := strings.Split(f.Per, ".*.")
	state := Given
	for depth := range lists {
		var next [][]string
		none := len(rows) > 0
		for _, row := range rows {
			list := fill(strings.Join(lists[:depth+1], ".*."), row)
			ids, s := v.IDs(list)
			switch s {
			case Missing:
				state, none = Missing, false
			case Given:
				none = false
				for _, id := range ids {
					next = append(next, append(slices.Clone(row), id))
				}
			}
		}
		if none && state == Given {
			return nil, None
		}
		rows = next
	}
	return rows, state
}

// fill puts ids in the place of the first stars of a path.
func fill(path string, ids []string) string {
	for _, id := range ids {
		path = strings.Replace(path, "*", id, 1)
	}
	return path
}

// Path is the manifest path of an input for the subject that ids name. Stars
// that are left stand for the items of a list.
func (f *Figure) Path(in *Input, ids []string) string {
	segments := strings.Split(in.Path, ".")
	if f.Per != "" {
		for i, want := range strings.Split(f.Per+".*", ".") {
			if i == len(segments) || segments[i] != want {
				break
			}
			if want == "*" {
				segments[i], ids = ids[0], ids[1:]
			}
		}
	}
	return strings.Join(segments, ".")
}

// bind puts a subject's ids into an input path. What is left for a column is
// its list and the rest of the path below each item; for a scalar list is "".
func (f *Figure) bind(in *Input, ids []string) (path, list, rest string) {
	path = f.Path(in, ids)
	segments := strings.Split(path, ".")
	switch star := slices.Index(segments, "*"); {
	case star < 0:
		return path, "", ""
	case slices.Contains(segments[star+1:], "*"):
		panic(fmt.Sprintf("figures: %s: input path %s leaves more than one star open", f.ID, in.Path))
	default:
		return path, strings.Join(segments[:star], "."), strings.Join(segments[star+1:], ".")
	}
}

// evaluate computes f for the subject that ids name.
func (f *Figure) evaluate(ids []string, v Values) Result {
	subject := "build"
	if f.Per != "" {
		subject = fill(f.Per+".*", ids)
	}
	r := reader{
		Result: Result{Figure: f, Subject: subject, IDs: ids, box: &box{figure: f}},
		values: v,
		leaves: map[string]Leaf{},
		dims:   map[string]int{},
	}
	for i := range f.Inputs {
		r.input(&f.Inputs[i])
	}
	for _, c := range f.Conditions {
		r.box.conditions = append(r.box.conditions, condition{c.Figure.evaluate(ids, v), c.Valid})
	}
	return r.finish()
}

// condition is a Condition for one subject.
type condition struct {
	result Result
	valid  Bounds
}

// broken returns the excess of a condition that does not hold with some leaves
// replaced. One without a value does not hold either.
func (c condition) broken(replace map[string]Range) (Excess, bool) {
	low, high, ok := c.result.Low, c.result.High, c.result.Ok()
	own := map[string]Range{}
	for path, window := range replace {
		if slices.ContainsFunc(c.result.box.dims, func(d dim) bool { return d.path == path }) {
			own[path] = window
		}
	}
	if len(own) > 0 {
		low, high, ok = c.result.At(own)
	}
	return Excess{c.result.Figure.ID, low, high, c.valid}, !ok || low < c.valid.Low || high > c.valid.High
}

// reader gathers the inputs of one result.
type reader struct {
	Result
	values Values
	leaves map[string]Leaf
	dims   map[string]int
}

func (r *reader) input(in *Input) {
	path, list, rest := r.Figure.bind(in, r.IDs)
	if list == "" {
		r.slot(in, path, scalar)
		return
	}
	ids, state := r.values.IDs(list)
	if state == Missing {
		r.Missing = append(r.Missing, list)
		r.box.broken = true
		return
	}
	if state == None {
		ids = nil
	}
	if len(ids) == 0 && in.NonEmpty {
		r.None = append(r.None, list)
		r.box.broken = true
		return
	}
	r.box.columns = append(r.box.columns, column{in.Name, len(ids)})
	for i, id := range ids {
		item := list + "." + id
		if rest != "" {
			item += "." + rest
		}
		r.slot(in, item, i)
	}
}

// slot reads one leaf and gives it its place in Args.
func (r *reader) slot(in *Input, path string, index int) {
	leaf := r.leaf(path)
	s := slot{input: in, index: index, dim: -1}
	switch {
	case leaf.State == Given && leaf.Word != "":
		number, ok := in.Choices[leaf.Word]
		if !ok {
			panic(fmt.Sprintf("figures: %s: no number for the word %q of %s", r.Figure.ID, leaf.Word, path))
		}
		s.fixed, s.hasFixed = number, true
	case leaf.State == None && in.WhenNone != nil:
		s.fixed, s.hasFixed = *in.WhenNone, true
		s.dim = r.dim(in, leaf)
	default:
		s.dim = r.dim(in, leaf)
	}
	r.box.slots = append(r.box.slots, s)
}

// leaf reads a path the first time it is asked for.
func (r *reader) leaf(path string) Leaf {
	leaf, seen := r.leaves[path]
	if !seen {
		leaf = r.values.Leaf(path)
		leaf.Path = path
		r.leaves[path] = leaf
		r.Inputs = append(r.Inputs, leaf)
	}
	return leaf
}

// dim returns the dimension of a leaf: inputs with the same path share one, so
// that they move together.
func (r *reader) dim(in *Input, leaf Leaf) int {
	i, seen := r.dims[leaf.Path]
	if !seen {
		i = len(r.box.dims)
		r.dims[leaf.Path] = i
		r.box.dims = append(r.box.dims, dim{
			Range:     Range{leaf.Low, leaf.High},
			path:      leaf.Path,
			known:     leaf.State == Given,
			direction: in.Direction,
		})
	}
	if r.box.dims[i].direction != in.Direction {
		r.box.dims[i].direction = Either
	}
	return i
}

func (r *reader) finish() Result {
	for _, path := range r.box.gaps(r.box.dims) {
		if r.leaves[path].State == None {
			r.None = append(r.None, path)
		} else {
			r.Missing = append(r.Missing, path)
		}
	}
	slices.Sort(r.Missing)
	slices.Sort(r.None)
	r.Missing = slices.Compact(r.Missing)
	r.None = slices.Compact(r.None)
	r.Outside = r.box.excesses(r.box.dims)
	r.Basis = weakest(r.Inputs)
	for _, c := range r.box.conditions {
		if !r.Ok() {
			break
		}
		if excess, broken := c.broken(nil); broken {
			r.Outside = append(r.Outside, excess)
		}
	}
	if r.Ok() {
		r.Low, r.High = r.box.extremes(r.box.dims)
	}
	return r.Result
}

// bases ranks the bases of values from weak to strong.
var bases = []string{"estimated", "claimed", "documented", "measured", ""}

// weakest returns the weakest basis among the given leaves.
func weakest(leaves []Leaf) string {
	rank := len(bases) - 1
	for _, leaf := range leaves {
		if leaf.State != Given {
			continue
		}
		i := slices.Index(bases, leaf.Basis)
		if i < 0 {
			panic(fmt.Sprintf("figures: unknown basis %q of %s", leaf.Basis, leaf.Path))
		}
		rank = min(rank, i)
	}
	return bases[rank]
}
