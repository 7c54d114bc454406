package check

import (
	"context"
	"maps"

	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
)

// Across judges one manifest in several regions. What does not depend on the
// region is read and computed once, and the rules of all the regions are
// compiled together: the verdict itself picks those in force.
func (c *Checker) Across(ctx context.Context, m *manifest.Manifest, codes []string) ([]*Report, error) {
	var all []rulebook.Region
	chains := make([][]rulebook.Region, len(codes))
	for i, code := range codes {
		chain, err := c.Book.Chain(code)
		if err != nil {
			return nil, err
		}
		chains[i] = chain
		all = append(all, chain...)
	}
	abroad := *c
	abroad.Options.Region = codes[0] // the one in the manifest need not be known
	first, err := abroad.Prepare(m)
	if err != nil {
		return nil, err
	}
	judge, err := c.Book.Prepare(ctx, all)
	if err != nil {
		return nil, err
	}
	reports := make([]*Report, len(codes))
	for i, chain := range chains {
		r := *first
		r.Chain = chain
		r.Input = maps.Clone(first.Input)
		r.Input["regions"] = input.Regions(chain)
		if err := r.decide(ctx, judge); err != nil {
			return nil, err
		}
		reports[i] = &r
	}
	return reports, nil
}
