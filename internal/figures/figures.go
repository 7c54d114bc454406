// Package figures computes engineering values as ranges.
//
// A figure is a pure function and its declaration. The disciplines live in
// packages below this one; this package holds what they share: the declaration,
// the range engine, the question which input decides, and size series.
package figures

import (
	"trialfit/internal/quantity"
)

// Direction says how a figure moves when one input grows and the others stand still.
type Direction int

const (
	// Either leaves the engine to search inside the input's range.
	Either Direction = iota
	// Rising and Falling promise that the extremes lie at the ends, and at which.
	Rising
	Falling
	// Ends promises that the extremes lie at the ends; at which depends on the
	// other inputs. With the inputs of direction Pivot held, moving one of these
	// after the other to its better end must lead to the extreme, as it does for
	// sums of products, and for their ratio where the divisor keeps its sign.
	Ends
	// Pivot promises the same of the ends, but not of the way there: both are
	// tried with everything else. A figure has few of them.
	Pivot
)

// Bounds is the closed interval of SI values for which a formula holds.
// The zero value means no bound was declared.
type Bounds struct{ Low, High float64 }

// Input declares one leaf that a figure reads.
type Input struct {
	// Name is the symbol used in the formula and the key in Args.
	Name string
	// Path is the manifest path of the leaf. Each '*' stands for the id of a
	// list item: those under the figure's Per list are bound to the subject,
	// one more makes the input a column with a value per item.
	Path string
	// Direction applies to a scalar and to every value of a column.
	Direction Direction
	// Valid bounds the formula, in SI units. Words and WhenNone are the
	// figure's own numbers and are not held against it.
	Valid Bounds
	// WhenNone is the value used where the manifest says "none"; nil means
	// that the figure has no value then.
	WhenNone *float64
	// NonEmpty marks a column that needs at least one item, such as one that
	// is averaged: without any, the figure has no value.
	NonEmpty bool
	// Choices maps the words of an enumerated leaf (or "true", "false") to numbers.
	Choices map[string]float64
	// Series names the standard sizes this input is bought in, nil if none.
	Series *Series
}

// Series is a row of standard sizes in rising order.
type Series struct {
	Title string // "copper battery cable, AWG"
	Sizes []Size
	// Metric is the row that is sold where people measure in millimetres, nil
	// where that is the same one.
	Metric *Series
}

// Size is one member of a Series: its trade name and its SI value.
type Size struct {
	Label string
	SI    float64
}

// Today is the path at which figures read the day of the judgement, as a number
// of the form yyyymmdd like every date. It is no place of the manifest.
const Today = "today"

// Source says where a formula comes from.
type Source struct {
	// Title names the clause, table or page; never invented.
	Title string
	// URL is empty where the source is not on the web.
	URL string
	// Basis is one of physics, standard, handbook, manufacturer,
	// common-practice, memory.
	Basis string
}

// Figure declares one engineering value.
type Figure struct {
	ID     string // "mass.axle_load_front"
	Title  string // "front axle load, unladen"
	Symbol string // "F'"
	Kind   quantity.Kind
	// Unit is the unit people read the figure in; "" means the one its inputs
	// are written in.
	Unit    string
	Per     string // "" for the whole build, or a list: "electrical.circuits", "fittings.*.joints"
	Formula string // in words and symbols
	Inputs  []Input
	// Conditions must hold over the whole range of the inputs, else the figure
	// has no value.
	Conditions []Condition
	Source     Source
	// Compute is pure and total on the declared bounds. SI in, SI out.
	Compute func(Args) float64
}

// Condition bounds another figure, where bounds on single inputs are not
// enough: a total of many inputs that a formula divides by. That figure has the
// same Per and no inputs beyond those of the figure it conditions.
type Condition struct {
	Figure *Figure
	Valid  Bounds
}

// Args carries one point of the input box to Compute.
type Args struct {
	scalars []named[float64]
	columns []named[[]float64]
}

// named is one entry of Args. A figure has a handful of inputs: to look through
// them takes less time than to hash a name, and a search asks thousands of times.
type named[V any] struct {
	name  string
	value V
}

func find[V any](all []named[V], kind, name string) V {
	for i := range all {
		if all[i].name == name {
			return all[i].value
		}
	}
	panic("figures: no " + kind + " input " + name)
}

// At returns the scalar input called name. It panics on a name the figure did
// not declare: that is a mistake in the figure, not in the manifest.
func (a Args) At(name string) float64 {
	return find(a.scalars, "scalar", name)
}

// Column returns the values of the list input called name, in manifest order.
// They are only lent: the slice must not be kept after Compute returns.
func (a Args) Column(name string) []float64 {
	return find(a.columns, "column", name)
}

// NewArgs builds Args by hand; tests of single figures use it.
func NewArgs(scalars map[string]float64, columns map[string][]float64) Args {
	var a Args
	for name, v := range scalars {
		a.scalars = append(a.scalars, named[float64]{name, v})
	}
	for name, v := range columns {
		a.columns = append(a.columns, named[[]float64]{name, v})
	}
	return a
}

// State says what a leaf or a list holds.
type State int

// A leaf or list is Missing until the manifest speaks of it; None means that
// the manifest says there is none.
const (
	Missing State = iota
	None
	Given
)

// Leaf is one manifest value as the engine sees it.
type Leaf struct {
	State     State
	Path      string  // manifest path with ids filled in
	Low, High float64 // SI, meaningful when Given and Word is empty
	Word      string  // text of an enumerated leaf or boolean
	Basis     string  // measured, documented, claimed, estimated; "" for an exact nominal value
}

// Values is where the engine looks its inputs up.
type Values interface {
	// Leaf returns the leaf at a path without stars.
	Leaf(path string) Leaf
	// IDs returns the item ids of the list at a path without stars, in
	// manifest order, and whether the list is given, none or missing.
	IDs(list string) ([]string, State)
}
