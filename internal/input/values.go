package input

import (
	"strconv"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/manifest"
	"trialfit/internal/schema"
)

// Values lets figures look their inputs up in a manifest.
type Values struct {
	Manifest *manifest.Manifest
	// Today is the day of the judgement, as 2026-11-25.
	Today string
}

// Leaf returns the leaf at a manifest path, or the number of a leaf's part at a
// path that ends in one.
func (v Values) Leaf(path string) figures.Leaf {
	if path == figures.Today {
		x, ok := date(v.Today)
		if !ok {
			return figures.Leaf{Path: path}
		}
		return figures.Leaf{Path: path, State: figures.Given, Low: x, High: x}
	}
	n := v.Manifest.Node(path)
	if n == nil {
		return v.part(path)
	}
	l := figures.Leaf{Path: path, State: state(n.State)}
	if n.Value == nil {
		if l.State == figures.Given {
			l.State = figures.Missing
		}
		return l
	}
	l.Basis = n.Value.Basis
	switch {
	case n.Value.Numeric:
		l.Low, l.High = n.Value.Low, n.Value.High
	case n.Shape.Leaf == schema.LeafDate:
		l.Low, _ = date(n.Value.Text)
		l.High = l.Low
	default:
		l.Word = n.Value.Text
	}
	return l
}

// date writes 2026-11-25 as the number 20261125.
func date(text string) (float64, bool) {
	x, err := strconv.ParseFloat(strings.ReplaceAll(text, "-", ""), 64)
	return x, err == nil
}

func (v Values) part(path string) figures.Leaf {
	leaf := figures.Leaf{Path: path}
	cut := strings.LastIndexByte(path, '.')
	if cut < 0 {
		return leaf
	}
	n := v.Manifest.Node(path[:cut])
	if n == nil || n.Value == nil {
		return leaf
	}
	for _, p := range parts(n) {
		if p.name == path[cut+1:] {
			leaf.State, leaf.Low, leaf.High = state(p.state), p.si, p.si
		}
	}
	return leaf
}

// Written returns the path under which the builder writes what a figure reads
// at path: a derived joint's thread is written at the chain.
func Written(m *manifest.Manifest, path string) string {
	n := m.Node(path)
	if n == nil {
		if cut := strings.LastIndexByte(path, '.'); cut >= 0 {
			n = m.Node(path[:cut])
		}
	}
	if n == nil {
		return path
	}
	return n.Origin()
}

// IDs returns the item ids of a list in manifest order.
func (v Values) IDs(list string) ([]string, figures.State) {
	n := v.Manifest.Node(list)
	if n == nil {
		return nil, figures.Missing
	}
	ids := make([]string, len(n.Items))
	for i, item := range n.Items {
		ids[i] = item.ID
	}
	return ids, state(n.State)
}

func state(s manifest.State) figures.State {
	switch s {
	case manifest.Given:
		return figures.Given
	case manifest.None:
		return figures.None
	default:
		return figures.Missing
	}
}
