package verdict

import (
	"cmp"
	"fmt"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/schema"
)

// wording turns one finding into sentences. All numbers go through one place,
// so that a figure and its limit are always in the same unit.
type wording struct {
	Case
	results map[string]figures.Result
	item    *Item
}

// reasons words the codes that the judge gives; a rule words its own.
var reasons = map[string]string{
	"missing":            "a value it rests on is not known",
	"applies":            "whether the rule applies is not known",
	"examined-nothing":   "nothing was found to examine",
	"units-differ":       "the rule compares things of different dimension: the rule is at fault",
	"unjudged":           "the rule gave a finding that can't be judged",
	"none":               "the manifest says there is none",
	"straddles":          "the value may lie on either side of the limit",
	"weak":               "known, but not well enough for this hold point",
	"stale":              "something it depends on has changed since it was measured",
	"outside":            "an input lies outside the range the formula holds for",
	"open":               "it is not done",
	"future":             "the date lies in the future",
	"same-day":           "another reading of the same day says something else, and which is newer is not known",
	"no-evidence":        "no evidence is named",
	"evidence-silent":    "the evidence named does not show this value",
	"evidence-undated":   "the evidence has no date",
	"evidence-later":     "the evidence is dated after today",
	"evidence-disagrees": "the evidence says something else",
	"file-missing":       "the file is not there",
	"file-changed":       "the file is not the one whose digest was recorded",
	"file-unrecorded":    "no digest was recorded for the file",
	"no-answer":          "the authority has not answered",
	"answer-kind":        "it is not of kind authority-answer",
	"answer-office":      "it does not name the office that answers",
	"no-region-pack":     "no pack examines this region, so nothing about registration was looked at",
}

func (w wording) write() {
	f := w.item.Finding
	if text, ok := w.item.Rule.Reasons[f.Reason]; ok {
		w.item.Reason = text
	} else {
		w.item.Reason = reasons[f.Reason]
	}
	w.item.Found, w.item.Needed = w.sentences(f)
	w.item.Margin = w.margin(f)
	w.item.Do = w.steps(f)
}

func (w wording) sentences(f Finding) (found, needed string) {
	value := w.shown(f.Value, f.Path)
	if value == unknown {
		value = w.unmeasured(f.Path)
	}
	found = w.beside(f.Path, f.Value) + w.label(f.Path, f.Value) + value
	switch f.Comparator {
	case "at most", "at least", "the same as", "other than", "not after":
		limit, title := w.shown(f.Limit, f.Path), w.title(f.LimitPath)
		if title == w.title(f.Path) {
			title += w.whose(f.LimitPath)
		}
		switch {
		case title == "":
		case limit == unknown:
			limit = "the " + title
		default:
			limit += " (" + title + ")"
		}
		needed = f.Comparator + " " + limit
	case "one of":
		needed = w.item.Rule.Title
		if f.Limit != nil && f.Limit.Text != "" && f.Limit.Text != "true" && f.Limit.Text != "false" {
			words := strings.Split(f.Limit.Text, ", ")
			for n, word := range words {
				words[n] = cmp.Or(truths[word], word)
			}
			needed = strings.Join(words, ", ")
			if len(words) > 1 {
				needed = "one of " + needed
			}
		}
	case "done by":
		found, needed = w.what(f.Subject)+"open", "done by the hold point it names"
		if hold := text(f.Limit); hold != "" {
			needed = "done by " + hold
		}
		if f.Value != nil && f.Value.Text != "" {
			found = w.what(f.Subject) + "done " + f.Value.Text
		}
	case "answered":
		found, needed = "no answer on file", "an answer from the authority"
		q := w.item.Rule.Question
		if q == nil {
			if asked := w.Book.Rules[f.Subject]; asked != nil {
				q = asked.Question
			}
		}
		if q != nil {
			needed = "an answer from " + q.Office + ": " + q.Ask
		}
		switch papers := strings.Join(f.Evidence, ", "); {
		case f.Outcome == Met:
			found = "answered: " + papers
		case papers != "":
			found = "on file: " + papers
		}
	case "intact":
		found, needed = text(f.Value), "the file whose digest was recorded"
	case "agrees with":
		needed = "the same as the paper, which says " + w.shown(f.Limit, f.Path)
	case "joined":
		found, needed = "no strap listed", "a strap or cable from "+text(f.Limit)
		if f.Outcome == Met {
			found = "joined"
		}
	case "lists":
		found, needed = "none listed", "one listed as "+text(f.Limit)
		if f.Outcome == Met {
			found = "listed"
		}
	case "possible":
		needed = w.item.Rule.Title
		for n, o := range f.Outside {
			if n == 0 {
				needed = "what the formulas hold for: " + w.bounds(o)
			}
		}
		if f.Outcome == Met {
			found = "nothing strange"
		}
	case "examined":
		found, needed = "region "+text(f.Value), "a region whose requirements a pack examines"
	default:
		needed = w.item.Rule.Title
	}
	if len(f.Missing) > 0 && (f.Value == nil || !f.Value.Numeric()) && f.Comparator != "answered" && f.Comparator != "joined" {
		found = "not known: " + strings.Join(f.Missing, ", ")
		if f.Reason == "none" {
			found = "none: " + strings.Join(f.Missing, ", ")
		}
	}
	if found == "" {
		found = w.item.Reason
	}
	return found, needed
}

// beside says what a yes or no is about: the texts that stand beside it in its
// list item.
func (w wording) beside(path string, v *Shown) string {
	if v == nil || derived(v) {
		return ""
	}
	if _, truth := v.Value.(bool); !truth {
		return ""
	}
	item := w.Manifest.Node(path[:max(0, strings.LastIndex(path, "."))])
	if item == nil || item.ID == "" {
		return ""
	}
	var texts strings.Builder
	for _, f := range item.Fields {
		if f.Shape.Leaf == schema.LeafText && f.Value != nil {
			fmt.Fprintf(&texts, "%s: %s; ", f.Shape.Noun(), f.Value.Text)
		}
	}
	return texts.String()
}

// whose tells apart what bears the same title in a list item and outside of it.
func (w wording) whose(path string) string {
	item := w.Manifest.Node(path[:max(0, strings.LastIndex(path, "."))])
	if item == nil || item.ID == "" {
		return ""
	}
	return " of " + item.ID
}

// what names the thing a list item is about.
func (w wording) what(subject string) string {
	if n := w.Manifest.Node(subject); n != nil {
		if what := n.Field("what"); what != nil && what.Value != nil {
			return what.Value.Text + ": "
		}
	}
	return ""
}

func (w wording) label(path string, v *Shown) string {
	if derived(v) {
		return ""
	}
	if title := w.title(path); title != "" && v != nil {
		return title + ": "
	}
	return ""
}

// derived says that a truth value comes with words of its own: two threads and
// whether they mate. They need no label.
func derived(v *Shown) bool {
	if v == nil {
		return false
	}
	_, truth := v.Value.(bool)
	return truth && v.Text != "true" && v.Text != "false"
}

// title is what people call the value at a finding's path.
func (w wording) title(path string) string {
	switch {
	case strings.HasPrefix(path, "figures."):
		if r, ok := w.results[path]; ok {
			return r.Figure.Title
		}
	case strings.HasPrefix(path, "limits."):
		if l := w.Book.Limit(path); l != nil {
			return l.Title
		}
	default:
		if read := w.read(path); read != "" {
			return read
		}
		if n := w.Manifest.Node(path); n != nil && n.Shape.Type == schema.Leaf && n.Shape.Title != "" {
			return n.Shape.Noun()
		}
	}
	return ""
}

// read names the value of a reading by what was read, and in which condition.
func (w wording) read(path string) string {
	reading, ok := strings.CutSuffix(path, ".value")
	if !ok || !strings.HasPrefix(path, "readings.") {
		return ""
	}
	var words []string
	for _, field := range []string{".of", ".condition"} {
		if n := w.Manifest.Node(reading + field); n != nil && n.Value != nil {
			words = append(words, strings.ReplaceAll(n.Value.Text, "_", " "))
		}
	}
	return strings.Join(words, ", ")
}

func text(v *Shown) string {
	if v == nil {
		return ""
	}
	return v.Text
}

const unknown = "not known"

// truths are what people say for a truth value.
var truths = map[string]string{"true": "yes", "false": "no"}

// shown prints a value in the unit of the value at path.
func (w wording) shown(v *Shown, path string) string {
	switch {
	case v == nil:
		return ""
	case v.Numeric():
		kind := quantity.Kind(v.Kind)
		return quantity.Print(*v.Low, *v.High, kind, w.unit(path, kind))
	case v.Value == true:
		if v.Text != "true" && v.Text != "" {
			return v.Text
		}
		return "yes"
	case v.Value == false:
		if v.Text != "false" && v.Text != "" {
			return v.Text
		}
		return "no"
	case v.Text != "":
		return v.Text
	case v.Value != nil:
		return fmt.Sprint(v.Value)
	default:
		return unknown
	}
}

// unmeasured words a place without a value of its own: that there is none, how
// much a list holds, or that it is not known.
func (w wording) unmeasured(path string) string {
	switch n := w.Manifest.Node(path); {
	case n == nil:
		return unknown
	case n.State == manifest.None:
		return "none"
	case len(n.Items) > 0:
		return fmt.Sprintf("%d listed", len(n.Items))
	}
	return unknown
}

// unit is the one the builder used: for the value, for most of the inputs of
// the figure, or else for the limit it is compared with; last the limit's own.
func (w wording) unit(path string, kind quantity.Kind) string {
	if r, ok := w.results[path]; ok {
		if unit := input.Unit(w.Manifest, r); unit != "" {
			return unit
		}
		path = w.item.Finding.LimitPath
	}
	// A value that is not known has no unit: then that of what it is held against.
	for _, at := range []string{path, w.item.Finding.LimitPath} {
		if n := w.Manifest.Node(at); n != nil && n.Value != nil && n.Value.Kind == kind {
			return n.Value.Unit
		}
	}
	if l := w.Book.Limit(w.item.Finding.LimitPath); l != nil && l.Value.Kind == kind {
		return l.Value.Unit
	}
	return ""
}

// margin words the distance between a range and its limit.
func (w wording) margin(f Finding) string {
	room, kind, ok := f.Room()
	if !ok {
		return ""
	}
	unit := w.unit(f.Path, quantity.Kind(f.Value.Kind))
	switch {
	case room >= 0:
		return quantity.Print(room, room, kind, unit) + " left at worst"
	case f.Comparator == "at most":
		return quantity.Print(-room, -room, kind, unit) + " over at worst"
	}
	return quantity.Print(-room, -room, kind, unit) + " short at worst"
}

// difference is the kind of the difference of two values of a kind.
func difference(k quantity.Kind) quantity.Kind {
	if k == quantity.Temperature {
		return quantity.TemperatureDifference
	}
	return k
}
