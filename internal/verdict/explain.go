package verdict

import (
	"cmp"
	"maps"
	"slices"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
)

// Item is one finding with everything a person needs to act on it.
type Item struct {
	Rule    *rulebook.Meta
	Finding Finding
	// Level and Due are those of the judgement.
	Level string
	Due   bool
	At    manifest.Position

	// Found, Needed and Reason are sentences without a full stop; Reason may be empty.
	Found, Needed, Reason string
	// Margin is how much is left or lacking, "" where it has no meaning.
	Margin string
	// Do lists what would settle it, most useful first.
	Do []string
}

// Case is what items are made from.
type Case struct {
	Manifest *manifest.Manifest
	Book     *rulebook.Book
	Computed []input.Computed
	Verdict  *Verdict
}

// Items lists every finding, those that block first: by hold point, level,
// rule and subject.
func (c Case) Items() []Item {
	results := c.results()
	var items []Item
	for _, id := range slices.Sorted(maps.Keys(c.Verdict.Rules)) {
		rule := c.Verdict.Rules[id]
		meta := c.Book.Rules[id]
		for _, f := range rule.Findings {
			item := Item{Rule: meta, Finding: f, Level: rule.Level, Due: rule.Due, At: f.At(c.Manifest)}
			w := wording{c, results, &item}
			w.write()
			items = append(items, item)
		}
	}
	slices.SortStableFunc(items, func(a, b Item) int {
		return cmp.Or(
			cmp.Compare(slices.Index(rulebook.HoldPoints, a.Rule.Hold), slices.Index(rulebook.HoldPoints, b.Rule.Hold)),
			cmp.Compare(levelOrder[a.Level], levelOrder[b.Level]),
			strings.Compare(a.Rule.ID, b.Rule.ID),
			strings.Compare(a.Finding.Subject, b.Finding.Subject),
		)
	})
	return items
}

var levelOrder = map[string]int{"must": 0, "should": 1, "note": 2}

// At is where a person would look: at the value where it stands, else at the
// subject.
func (f Finding) At(m *manifest.Manifest) manifest.Position {
	paths := slices.Clone(f.Missing)
	for _, o := range f.Outside {
		paths = append(paths, o.Path)
	}
	for _, path := range append(paths, f.Path, f.Subject) {
		if m.Node(path) != nil {
			return m.Position(path)
		}
	}
	return m.Position(f.Subject)
}

// results indexes the computed figures by the path that findings use.
func (c Case) results() map[string]figures.Result {
	out := map[string]figures.Result{}
	for _, computed := range c.Computed {
		for _, r := range computed.Results {
			path := "figures." + r.Figure.ID
			if len(r.IDs) > 0 {
				path += "." + strings.Join(r.IDs, ".")
			}
			out[path] = r
		}
	}
	return out
}
