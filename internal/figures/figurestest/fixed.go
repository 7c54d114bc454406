// Package figurestest holds what the tests of all figures share: values made
// by hand and a check of a figure's range by random samples.
package figurestest

import "trialfit/internal/figures"

// Fixed is a Values made by hand. What it does not name is missing.
type Fixed struct {
	// Leaves maps a path without stars to its leaf.
	Leaves map[string]figures.Leaf
	// Lists maps the path of a list to its item ids in order; nil says that
	// there is none.
	Lists map[string][]string
}

// Leaf returns the leaf at a path.
func (f Fixed) Leaf(path string) figures.Leaf {
	leaf := f.Leaves[path]
	leaf.Path = path
	return leaf
}

// IDs returns the item ids of a list.
func (f Fixed) IDs(list string) ([]string, figures.State) {
	ids, named := f.Lists[list]
	switch {
	case !named:
		return nil, figures.Missing
	case ids == nil:
		return nil, figures.None
	}
	return ids, figures.Given
}

// Exact is a nominal leaf of one SI value.
func Exact(x float64) figures.Leaf { return Between(x, x) }

// Between is a nominal leaf that ranges from low to high, in SI units.
func Between(low, high float64) figures.Leaf {
	return figures.Leaf{State: figures.Given, Low: low, High: high}
}

// Word is an enumerated leaf, or a boolean as "true" or "false".
func Word(word string) figures.Leaf {
	return figures.Leaf{State: figures.Given, Word: word}
}

// None is a leaf said to be none.
func None() figures.Leaf { return figures.Leaf{State: figures.None} }
