// Package figuresheet writes the calculation sheet of a build: every figure with
// its formula, the numbers put in, its inputs and where they stand, its range,
// the limits that rules hold it against, and its source.
package figuresheet

import (
	"fmt"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/verdict"
)

// Sheet is what the figures of one judged build are written from.
type Sheet struct {
	Build report.Build
	// Figures holds the ids of those to write, nil for all.
	Figures []string
}

// States of a figure for one subject.
const (
	computed = "computed"
	missing  = "missing"
	none     = "none"
	outside  = "outside"
)

// entry is one figure for one subject, or a figure whose list is not there.
type entry struct {
	figure  *figures.Figure
	subject string
	state   string
	// result is nil where the list of subjects is missing or none.
	result *figures.Result
	// lacks are the manifest paths that are missing or none.
	lacks []string
	// excess tells which inputs lie outside the formula's range.
	excess []string
	unit   string
	held   []held
	// enough lists the sizes that would do, by path.
	enough []size
}

// held is a rule that holds a figure against a limit.
type held struct{ verdict.Item }

// size is the smallest of a row of standard sizes that meets the limit of a rule.
type size struct{ path, label, rule string }

// entries lists the figures to write, in the order of ids and of the manifest.
func (s Sheet) entries() []entry {
	found := map[string][]held{}
	for _, i := range s.Build.Items {
		if path := i.Finding.Path; strings.HasPrefix(path, "figures.") {
			found[path] = append(found[path], held{i})
		}
	}
	var list []entry
	for _, c := range s.Build.Report.Computed {
		if !s.wants(c.Figure.ID) {
			continue
		}
		if len(c.Results) == 0 {
			list = append(list, listless(c))
		}
		for i := range c.Results {
			list = append(list, s.entry(&c.Results[i], found))
		}
	}
	return list
}

// listless is the entry of a figure that has no subject.
func listless(c input.Computed) entry {
	list, _, _ := strings.Cut(c.Figure.Per, ".*")
	e := entry{figure: c.Figure, subject: list, state: none, lacks: []string{list}}
	if c.State == figures.Missing {
		e.state = missing
	}
	return e
}

func (s Sheet) entry(r *figures.Result, found map[string][]held) entry {
	e := entry{figure: r.Figure, subject: r.Subject, result: r, state: computed, unit: s.unit(r)}
	switch {
	case len(r.Missing) > 0:
		e.state, e.lacks = missing, s.written(r.Missing)
	case len(r.None) > 0:
		e.state, e.lacks = none, s.written(r.None)
	case len(r.Outside) > 0:
		e.state = outside
		for _, x := range r.Outside {
			e.excess = append(e.excess, s.outside(x))
		}
	}
	e.held = found[strings.Join(append([]string{"figures", r.Figure.ID}, r.IDs...), ".")]
	for _, h := range e.held {
		if would, ok := h.enough(r, input.Metric(s.Build.Report.Manifest)); ok {
			e.enough = append(e.enough, would)
		}
	}
	return e
}

// enough offers a size where a limit is not known to be met.
func (h held) enough(r *figures.Result, metric func(path string) bool) (size, bool) {
	f := h.Finding
	if f.Outcome == verdict.Met || f.Outcome == verdict.NotApplicable || !f.Limit.Numeric() ||
		f.Comparator != string(figures.AtMost) && f.Comparator != string(figures.AtLeast) {
		return size{}, false
	}
	path, found, ok := figures.Enough(*r, figures.Comparator(f.Comparator), *f.Limit.Low, *f.Limit.High, metric)
	return size{path, found.Label, h.Rule.ID}, ok
}

// unit is the one that the numbers of a figure are written in: that of its
// declaration or of the builder, mm² for a conductor that is no trade size.
func (s Sheet) unit(r *figures.Result) string {
	unit := input.Unit(s.Build.Report.Manifest, *r)
	if _, err := quantity.In(0, r.Figure.Kind, unit); err != nil {
		unit = ""
		if r.Figure.Kind == quantity.Conductor {
			unit = "mm²"
		}
	}
	if unit == "" {
		unit = quantity.SI(r.Figure.Kind)
	}
	return unit
}

func (s Sheet) wants(id string) bool {
	if s.Figures == nil {
		return true
	}
	for _, wanted := range s.Figures {
		if wanted == id {
			return true
		}
	}
	return false
}

func (s Sheet) written(paths []string) []string {
	out := make([]string, len(paths))
	for i, p := range paths {
		out[i] = input.Written(s.Build.Report.Manifest, p)
	}
	return out
}

// outside words what lies beyond the bounds of a formula: an input, or another
// figure that it divides by.
func (s Sheet) outside(e figures.Excess) string {
	m := s.Build.Report.Manifest
	what, kind, unit := input.Written(m, e.Path), quantity.Ratio, ""
	if k, u, ok := input.Quantity(m, e.Path); ok {
		kind, unit = k, u
	}
	for _, c := range s.Build.Report.Computed {
		if c.Figure.ID == e.Path && len(c.Results) > 0 {
			what, kind, unit = c.Figure.Title, c.Figure.Kind, input.Unit(m, c.Results[0])
		}
	}
	return fmt.Sprintf("%s is %s, needs %s", what, quantity.Print(e.Low, e.High, kind, unit),
		quantity.Print(e.Bounds.Low, e.Bounds.High, kind, unit))
}

// counts sums up a sheet in words, a line each for values and for limits.
func counts(list []entry) []string {
	states, outcomes, limits := map[string]int{}, map[string]int{}, 0
	for _, e := range list {
		states[e.state]++
		for _, h := range e.held {
			outcomes[h.Finding.Outcome]++
			limits++
		}
	}
	values := fmt.Sprintf("%d with a value", states[computed])
	for _, c := range []struct{ state, words string }{
		{missing, "without: something is not known"}, {none, "without: the manifest says there is none"},
		{outside, "outside the range of the formula"},
	} {
		if n := states[c.state]; n > 0 {
			values += fmt.Sprintf(", %d %s", n, c.words)
		}
	}
	lines := []string{fmt.Sprintf("%s: %s", number(len(list), "figure"), values)}
	if limits == 0 {
		return lines
	}
	var parts []string
	for _, o := range []string{verdict.Met, verdict.NotMet, verdict.Unproven, verdict.Waived, verdict.NotApplicable} {
		if outcomes[o] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", outcomes[o], o))
		}
	}
	return append(lines, number(limits, "limit")+": "+strings.Join(parts, ", "))
}

func number(n int, what string) string {
	if n != 1 {
		what += "s"
	}
	return fmt.Sprintf("%d %s", n, what)
}
