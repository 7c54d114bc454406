package input

import (
	"trialfit/internal/figures"
	"trialfit/internal/manifest"
)

// Unit is the unit to print a figure in: the one its declaration names, else
// the one most of its inputs of the same kind were written in, else "" for SI.
func Unit(m *manifest.Manifest, r figures.Result) string {
	if r.Figure.Unit != "" {
		return r.Figure.Unit
	}
	count := map[string]int{}
	best := ""
	for _, l := range r.Inputs {
		n := m.Node(l.Path)
		if n == nil || n.Value == nil || n.Value.Kind != r.Figure.Kind {
			continue
		}
		count[n.Value.Unit]++
		if best == "" || count[n.Value.Unit] > count[best] {
			best = n.Value.Unit
		}
	}
	return best
}
