package start

import (
	"cmp"
	"slices"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/verdict"
)

// Question is one thing to find out, and how many findings wait for it.
type Question struct {
	// Path is the manifest path to write the answer at.
	Path string
	// Ask is the place's own description.
	Ask     string
	Waiting int
}

// Questions ranks what the findings that are due lack: what most of them wait
// for comes first, then what stands first in the manifest. At most n are
// returned, and how many there are in all.
func Questions(m *manifest.Manifest, items []verdict.Item, n int) (first []Question, all int) {
	waiting := map[string]int{}
	for _, i := range items {
		if !i.Due || i.Level != "must" {
			continue
		}
		for _, path := range i.Finding.Missing {
			waiting[path]++
		}
	}
	m.Root.Walk(func(node *manifest.Node) {
		count, asked := waiting[node.Path]
		if !asked || node.Path == "" {
			return
		}
		delete(waiting, node.Path)
		first = append(first, Question{node.Path, ask(node), count})
	})
	slices.SortStableFunc(first, func(a, b Question) int { return cmp.Compare(b.Waiting, a.Waiting) })
	all = len(first)
	return first[:min(n, all)], all
}

func ask(n *manifest.Node) string {
	return strings.TrimSuffix(n.Shape.Description, ".")
}
