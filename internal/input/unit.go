package input

import (
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
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

// Quantity tells the kind of number that figures read at a path, and the unit
// to print it in: the one written, or mm for a length that a thread or a size
// code stands for. It is not ok where there is no number.
func Quantity(m *manifest.Manifest, path string) (kind quantity.Kind, unit string, ok bool) {
	if n := m.Node(path); n != nil {
		if n.Value == nil || !n.Value.Numeric || n.Value.Kind == "" {
			return "", "", false
		}
		return n.Value.Kind, n.Value.Unit, true
	}
	cut := strings.LastIndexByte(path, '.')
	if cut < 0 {
		return "", "", false
	}
	n := m.Node(path[:cut])
	if n == nil || n.Value == nil {
		return "", "", false
	}
	for _, p := range parts(n) {
		if p.name != path[cut+1:] || p.kind == "" {
			continue
		}
		if p.kind == quantity.Length {
			return p.kind, "mm", true
		}
		return p.kind, "", true
	}
	return "", "", false
}

// Metric says of a path whether the builder wrote its value in millimetres or
// square millimetres.
func Metric(m *manifest.Manifest) func(path string) bool {
	return func(path string) bool {
		_, unit, ok := Quantity(m, path)
		return ok && (unit == "mm" || unit == "mm²")
	}
}
