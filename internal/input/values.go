package input

import (
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/manifest"
)

// Values lets figures look their inputs up in a manifest.
type Values struct{ Manifest *manifest.Manifest }

// Leaf returns the leaf at a manifest path, or the number of a leaf's part at a
// path that ends in one.
func (v Values) Leaf(path string) figures.Leaf {
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
	if n.Value.Numeric {
		l.Low, l.High = n.Value.Low, n.Value.High
	} else {
		l.Word = n.Value.Text
	}
	return l
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
