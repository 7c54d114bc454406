package input

import (
	"runtime"
	"slices"
	"strings"

	"golang.org/x/sync/errgroup"

	"trialfit/internal/evidence"
	"trialfit/internal/figures"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
)

// Parts are what an input document is made of.
type Parts struct {
	Manifest *manifest.Manifest
	Figures  []Computed
	// Evidence holds the state of each file, by evidence id.
	Evidence map[string]evidence.State
	// Chain is the region and what it inherits, most general first.
	Chain []rulebook.Region
	// Hold is the hold point the build is judged at.
	Hold string
	// Today is the date of the judgement, as 2026-11-25.
	Today string
	// BlockOn lists the levels that block.
	BlockOn []string
}

// Computed is one figure with its results on one build.
type Computed struct {
	Figure  *figures.Figure
	Results []figures.Result
	// State says whether the list the figure runs over is there.
	State figures.State
}

// Compute evaluates every figure on a manifest, as of a day such as 2026-11-25.
func Compute(all []*figures.Figure, m *manifest.Manifest, today string) []Computed {
	out := make([]Computed, len(all))
	var g errgroup.Group
	g.SetLimit(runtime.GOMAXPROCS(0)) // a few figures take most of the time
	for i, f := range all {
		g.Go(func() error {
			results, state := figures.Evaluate(f, Values{m, today})
			out[i] = Computed{f, results, state}
			return nil
		})
	}
	g.Wait() // none fails
	return out
}

// Document returns the input document: maps, slices, strings, booleans and
// json.Number only.
func Document(p Parts) map[string]any {
	return map[string]any{
		"build":    record(p.Manifest.Root),
		"figures":  figureRecords(p.Manifest, p.Figures),
		"evidence": papers(p.Manifest, p.Evidence),
		"regions":  Regions(p.Chain),
		"hold":     p.Hold,
		"today":    p.Today,
		"block_on": p.BlockOn,
	}
}

// Regions is a chain of regions as the document holds it.
func Regions(chain []rulebook.Region) []any {
	regions := make([]any, len(chain))
	for i, r := range chain {
		regions[i] = map[string]any{"code": r.Code, "name": r.Name, "pack": r.Pack}
	}
	return regions
}

func figureRecords(m *manifest.Manifest, all []Computed) map[string]any {
	out := map[string]any{}
	for _, c := range all {
		area, name, _ := strings.Cut(c.Figure.ID, ".")
		group, ok := out[area].(map[string]any)
		if !ok {
			group = map[string]any{}
			out[area] = group
		}
		if c.Figure.Per == "" {
			group[name] = figureRecord(m, c.Results[0])
			continue
		}
		if c.State == figures.Missing && len(c.Results) == 0 {
			list, _, _ := strings.Cut(c.Figure.Per, ".*")
			group[name] = map[string]any{"missing": list}
			continue
		}
		bySubject := map[string]any{}
		for _, r := range c.Results {
			at := bySubject
			for _, id := range r.IDs[:len(r.IDs)-1] {
				next, ok := at[id].(map[string]any)
				if !ok {
					next = map[string]any{}
					at[id] = next
				}
				at = next
			}
			at[r.IDs[len(r.IDs)-1]] = figureRecord(m, r)
		}
		group[name] = bySubject
	}
	return out
}

func figureRecord(m *manifest.Manifest, r figures.Result) map[string]any {
	out := map[string]any{"subject": r.Subject}
	switch {
	case len(r.Missing) > 0:
		out["missing"] = written(m, r.Missing)
	case len(r.None) > 0:
		out["none"] = written(m, r.None)
	case len(r.Outside) > 0:
	default:
		span(out, r.Low, r.High, r.Figure.Kind)
		out["basis"] = r.Basis
		if r.Basis == "" {
			out["basis"] = exact
		}
		var paths []string
		for _, l := range r.Inputs {
			if l.Path != figures.Today {
				paths = append(paths, l.Path)
			}
		}
		out["inputs"] = written(m, paths)
	}
	// A value that can't be is told even where others are missing too.
	if len(r.Outside) > 0 {
		list := make([]any, len(r.Outside))
		for i, e := range r.Outside {
			list[i] = map[string]any{
				"path": accused(m, r.Figure, e.Path), "low": number(e.Low), "high": number(e.High),
				"from": number(e.Bounds.Low), "to": number(e.Bounds.High),
			}
		}
		out["outside"] = list
	}
	return out
}

// accused is the path of what lies outside: an input as it is written, or the id
// of the figure that a condition bounds, which is no place of the manifest even
// where its discipline is called like one.
func accused(m *manifest.Manifest, f *figures.Figure, path string) string {
	if slices.ContainsFunc(f.Conditions, func(c figures.Condition) bool { return c.Figure.ID == path }) {
		return path
	}
	return Written(m, path)
}

func written(m *manifest.Manifest, paths []string) []string {
	out := make([]string, len(paths))
	for i, path := range paths {
		out[i] = Written(m, path)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// papers writes the evidence: the state of each file and what each shows, by
// the path of the value.
func papers(m *manifest.Manifest, states map[string]evidence.State) map[string]any {
	out := map[string]any{}
	list := m.Node("evidence")
	if list == nil {
		return out
	}
	for _, item := range list.Items {
		paper := map[string]any{"file": string(states[item.ID])}
		for _, name := range []string{"kind", "date", "by", "issuer", "office", "answers"} {
			f := item.Field(name)
			if f.Value == nil {
				paper[name] = missing(f)
			} else {
				paper[name] = f.Value.Text
			}
		}
		shows := map[string]any{}
		for _, shown := range item.Field("shows").Items {
			path, value := shown.Field("path"), shown.Field("value")
			if path.Value != nil && value.Value != nil {
				shows[path.Value.Text] = shownRecord(m, path.Value.Text, value)
			}
		}
		paper["shows"] = shows
		out[item.ID] = paper
	}
	return out
}

// shownRecord writes what a paper says in the form of the value it speaks of,
// so that the two can be compared.
func shownRecord(m *manifest.Manifest, path string, n *manifest.Node) map[string]any {
	v := n.Value
	out := map[string]any{"text": v.Text}
	target := m.Node(path)
	switch {
	case v.Numeric:
		span(out, v.Low, v.High, v.Kind)
	case v.Thread != nil:
		out["value"] = v.Thread.Name()
	case target != nil && target.Value != nil && target.Value.Bool != nil:
		out["value"] = v.Text == "true"
	default:
		out["value"] = v.Text
	}
	return out
}
