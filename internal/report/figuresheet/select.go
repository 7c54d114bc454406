package figuresheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"

	"trialfit/internal/figures"
)

// Select returns the ids of the figures that names ask for: figures by id, or
// all of a discipline. The error names the nearest where there is none.
func Select(all []*figures.Figure, names []string) ([]string, error) {
	var ids []string
	for _, name := range names {
		found := false
		for _, f := range all {
			if area, _, _ := strings.Cut(f.ID, "."); f.ID == name || area == strings.TrimSuffix(name, ".") {
				ids, found = append(ids, f.ID), true
			}
		}
		if !found {
			return nil, fmt.Errorf("%q is neither a figure nor a discipline: nearest are %s", name, strings.Join(nearest(all, name), ", "))
		}
	}
	return ids, nil
}

// nearest returns the three ids, or disciplines, that look most like a name.
func nearest(all []*figures.Figure, name string) []string {
	type candidate struct {
		id   string
		away int
	}
	var list []candidate
	name = strings.ToLower(name)
	add := func(id string, away int) {
		if !slices.ContainsFunc(list, func(c candidate) bool { return c.id == id }) {
			list = append(list, candidate{id, away})
		}
	}
	for _, f := range all {
		area, own, _ := strings.Cut(f.ID, ".")
		add(f.ID, min(levenshtein.ComputeDistance(name, f.ID), levenshtein.ComputeDistance(name, own)))
		add(area, levenshtein.ComputeDistance(name, area))
	}
	slices.SortStableFunc(list, func(a, b candidate) int {
		return cmp.Or(cmp.Compare(a.away, b.away), cmp.Compare(a.id, b.id))
	})
	var ids []string
	for _, c := range list[:min(3, len(list))] {
		ids = append(ids, c.id)
	}
	return ids
}
