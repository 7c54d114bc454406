package verdict

import (
	"fmt"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/quantity"
)

// steps lists what would settle a finding that is not met or unproven.
func (w wording) steps(f Finding) []string {
	if f.Outcome != NotMet && f.Outcome != Unproven && f.Outcome != Waived {
		return nil
	}
	var do []string
	if len(f.Weak) > 0 {
		do = append(do, fmt.Sprintf("needed %s: %s", f.NeedsBasis, strings.Join(f.Weak, ", ")))
	}
	switch f.Reason {
	case "missing", "applies", "examined-nothing":
		if len(f.Missing) > 0 {
			do = append(do, "find out and write down: "+strings.Join(f.Missing, ", "))
		}
	case "stale":
		do = append(do, "measure again; since then changed: "+strings.Join(f.Changed, ", "))
	case "outside":
		for _, o := range f.Outside {
			if f.Comparator != "possible" { // which says so in full
				do = append(do, w.outside(o))
			}
		}
	case "straddles":
		if measure := w.decider(f); measure != "" {
			do = append(do, measure)
		}
	}
	for _, would := range []string{w.enough(f), w.adapter(f)} {
		if would != "" {
			do = append(do, would)
		}
	}
	if f.Outcome == NotMet || len(do) == 0 {
		do = append(do, w.item.Rule.Remedy)
	}
	return do
}

func (w wording) outside(o Outside) string {
	what := o.Path
	kind, unit := w.measure(o.Path)
	if r, ok := w.figure(o.Path); ok {
		what = r.Figure.Title
	}
	return fmt.Sprintf("look at %s: %s, the formula holds for %s", what, quantity.Print(o.Low, o.High, kind, unit), w.bounds(o))
}

func (w wording) bounds(o Outside) string {
	kind, unit := w.measure(o.Path)
	return quantity.Print(o.From, o.To, kind, unit)
}

// measure is the kind and unit of a value of the build, or of a figure by its id.
func (w wording) measure(path string) (quantity.Kind, string) {
	if n := w.Manifest.Node(path); n != nil && n.Value != nil {
		return n.Value.Kind, n.Value.Unit
	}
	if r, ok := w.figure(path); ok {
		return r.Figure.Kind, input.Unit(w.Manifest, r)
	}
	return quantity.Ratio, ""
}

// figure is the first result of the figure with this id.
func (w wording) figure(id string) (figures.Result, bool) {
	for _, c := range w.Computed {
		if c.Figure.ID == id && len(c.Results) > 0 {
			return c.Results[0], true
		}
	}
	return figures.Result{}, false
}

// decider names what to measure next when a range lies across its limit.
func (w wording) decider(f Finding) string {
	r, ok := w.results[f.Path]
	if !ok || !f.Limit.Numeric() {
		return ""
	}
	if *f.Value.Low == *f.Value.High {
		return "find out more exactly: " + f.LimitPath
	}
	d := figures.Decide(r, figures.Comparator(f.Comparator), *f.Limit.Low, *f.Limit.High)
	if d == nil && w.limitDecides(f) {
		return "find out more exactly: " + f.LimitPath
	}
	if d == nil {
		return "no single value and no pair decides: narrow the widest ones"
	}
	parts := make([]string, len(d.Paths))
	for i, path := range d.Paths {
		kind, unit := quantity.Ratio, ""
		if n := w.Manifest.Node(input.Written(w.Manifest, path)); n != nil && n.Value != nil {
			kind, unit = difference(n.Value.Kind), n.Value.Unit
		}
		parts[i] = fmt.Sprintf("%s (± %s now, ± %s would settle it)", path,
			quantity.Print(d.Now[i], d.Now[i], kind, unit), quantity.Print(d.Need[i], d.Need[i], kind, unit))
	}
	return "measure " + strings.Join(parts, " and ")
}

// limitDecides says that the finding would be settled if the limit, a value of
// the build with a range of its own, were exactly in the middle of it.
func (w wording) limitDecides(f Finding) bool {
	middle := (*f.Limit.Low + *f.Limit.High) / 2
	return middle < *f.Value.Low || middle > *f.Value.High
}

// enough offers the smallest standard size that would do.
func (w wording) enough(f Finding) string {
	r, ok := w.results[f.Path]
	if !ok || !f.Limit.Numeric() {
		return ""
	}
	path, size, ok := figures.Enough(r, figures.Comparator(f.Comparator), *f.Limit.Low, *f.Limit.High, input.Metric(w.Manifest))
	if !ok {
		return ""
	}
	return fmt.Sprintf("%s would do for %s", size.Label, path)
}

// adapter offers what would join two threads that don't belong together.
func (w wording) adapter(f Finding) string {
	joint, ok := strings.CutSuffix(f.Path, ".mates")
	if !ok || f.Outcome != NotMet {
		return ""
	}
	inner, outer := w.Manifest.Node(joint+".inner"), w.Manifest.Node(joint+".outer")
	if inner == nil || outer == nil || inner.Value == nil || outer.Value == nil {
		return ""
	}
	a, okA := inner.Value.Thread.Counterpart()
	b, okB := outer.Value.Thread.Counterpart()
	if !okA || !okB {
		return ""
	}
	return fmt.Sprintf("an adapter %s × %s would join them", a.Name(), b.Name())
}
