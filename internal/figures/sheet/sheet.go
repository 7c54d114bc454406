// Package sheet gathers the figures of all disciplines.
package sheet

import (
	"cmp"
	"slices"

	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/approval"
	"trialfit/internal/figures/bell"
	"trialfit/internal/figures/cooling"
	"trialfit/internal/figures/electrical"
	"trialfit/internal/figures/exhaust"
	"trialfit/internal/figures/fasteners"
	"trialfit/internal/figures/fittings"
	"trialfit/internal/figures/fuel"
	"trialfit/internal/figures/gearing"
	"trialfit/internal/figures/hydraulics"
	"trialfit/internal/figures/lifting"
	"trialfit/internal/figures/mass"
	"trialfit/internal/figures/mounts"
	"trialfit/internal/figures/shafts"
	"trialfit/internal/figures/torque"
)

// All returns every figure, in the order of ids.
func All() []*figures.Figure {
	all := slices.Concat(
		air.Figures(), approval.Figures(), bell.Figures(), cooling.Figures(), electrical.Figures(), exhaust.Figures(),
		fasteners.Figures(), fittings.Figures(), fuel.Figures(), gearing.Figures(), hydraulics.Figures(), lifting.Figures(),
		mass.Figures(), mounts.Figures(), shafts.Figures(), torque.Figures(),
	)
	slices.SortFunc(all, func(a, b *figures.Figure) int { return cmp.Compare(a.ID, b.ID) })
	return all
}

// Find returns the figure with an id, nil if there is none.
func Find(id string) *figures.Figure {
	for _, f := range All() {
		if f.ID == id {
			return f
		}
	}
	return nil
}
