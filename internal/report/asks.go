package report

import (
	"cmp"
	"slices"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// Ask is one place of the manifest to find out, and how many findings wait for it.
type Ask struct {
	// Path is the manifest path to write the answer at.
	Path string
	// What is the place's own description, without a full stop.
	What    string
	Waiting int
}

// Stage is what is to be found out for one hold point.
type Stage struct {
	Hold string
	Asks []Ask
}

// Lacking says whether a finding is open only because values are not known.
func Lacking(i verdict.Item) bool {
	return i.Finding.Outcome == verdict.Unproven && len(i.Finding.Missing) > 0 &&
		slices.Contains([]string{"missing", "applies", "examined-nothing"}, i.Finding.Reason)
}

// ToFindOut lists what the open musts lack, hold point by hold point from the
// first that a build passes. A place is told once, where it is first needed. What most
// findings wait for comes first, then what stands first in the manifest.
func (b Build) ToFindOut() []Stage {
	type place struct{ hold, waiting int }
	places := map[string]place{}
	for _, i := range b.Items {
		if i.Level != "must" {
			continue
		}
		hold := slices.Index(rulebook.HoldPoints, i.Rule.Hold)
		for _, path := range i.Finding.Missing {
			p, seen := places[path]
			switch {
			case !seen || hold < p.hold:
				p = place{hold, 1}
			case hold == p.hold:
				p.waiting++
			}
			places[path] = p
		}
	}
	stages := make([]Stage, len(rulebook.HoldPoints))
	b.Report.Manifest.Root.Walk(func(node *manifest.Node) {
		p, asked := places[node.Path]
		if !asked || node.Path == "" {
			return
		}
		delete(places, node.Path)
		stage := &stages[p.hold]
		stage.Hold = rulebook.HoldPoints[p.hold]
		stage.Asks = append(stage.Asks, Ask{node.Path, strings.TrimSuffix(node.Shape.Description, "."), p.waiting})
	})
	stages = slices.DeleteFunc(stages, func(s Stage) bool { return len(s.Asks) == 0 })
	for _, s := range stages {
		slices.SortStableFunc(s.Asks, func(a, b Ask) int { return cmp.Compare(b.Waiting, a.Waiting) })
	}
	return stages
}
