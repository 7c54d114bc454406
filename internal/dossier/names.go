package dossier

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/report"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// author writes one document of one build.
type author struct {
	report.Build
	m    *manifest.Manifest
	book *rulebook.Book
	// figures holds the title of each figure by its path below "figures.".
	figures map[string]string
	// numbers counts the evidence from 1, by id.
	numbers map[string]int
	units   system
	albums  album
}

// newAuthor reads what every document needs.
func newAuthor(b report.Build, book *rulebook.Book) *author {
	a := &author{Build: b, m: b.Report.Manifest, book: book, figures: map[string]string{}, numbers: map[string]int{}}
	a.units = unitsOf(b.Report.Chain)
	for _, c := range b.Report.Computed {
		a.figures[c.Figure.ID] = c.Figure.Title
	}
	for i, e := range a.items("evidence") {
		a.numbers[e.ID] = i + 1
	}
	return a
}

// items are those of a list, none where it is not given.
func (a *author) items(path string) []*manifest.Node {
	if n := a.m.Node(path); n != nil {
		return n.Items
	}
	return nil
}

// name says in words what stands at a manifest path, a figure's path or a
// rule's id.
func (a *author) name(path string) string {
	if path == "build" {
		return wholeVehicle
	}
	if inside, ok := strings.CutPrefix(path, "figures."); ok {
		for steps := strings.Split(inside, "."); len(steps) > 1; steps = steps[:len(steps)-1] {
			id := strings.Join(steps, ".")
			if title, ok := a.figures[id]; ok {
				return strings.TrimSpace(title + " " + strings.Trim(inside[len(id):], "."))
			}
		}
	}
	if rule := a.book.Rules[path]; rule != nil {
		return rule.Title
	}
	var parts []string
	at := a.m.Root
	for step := range strings.SplitSeq(strings.TrimPrefix(path, "build."), ".") {
		if at != nil {
			at = at.Find(step)
		}
		switch {
		case step == "*":
			continue
		case at == nil && parts == nil:
			return path
		case at == nil || at.ID != "":
			parts = append(parts, spaced(step))
		default:
			parts = append(parts, at.Shape.Noun())
		}
	}
	return strings.Join(parts, ", ")
}

// shortName is the name of an input of a figure, without what goes without
// saying: the list item it belongs to by name, else the last two places.
func (a *author) shortName(n *manifest.Node, subject string) string {
	if rest, ok := strings.CutPrefix(n.Path, subject+"."); ok && subject != "build" {
		parts := strings.Split(a.name(n.Path), ", ")
		return strings.Join(parts[len(parts)-strings.Count(rest, ".")-1:], ", ")
	}
	parts := strings.Split(a.name(n.Path), ", ")
	return strings.Join(parts[max(0, len(parts)-2):], ", ")
}

var dotted = regexp.MustCompile(`[a-z_]+(?:\.(?:\*|[A-Za-z0-9_-]*[A-Za-z0-9]))+`)

// plain puts names in the place of the manifest paths in a sentence.
func (a *author) plain(sentence string) string {
	return dotted.ReplaceAllStringFunc(sentence, func(path string) string {
		top, _, _ := strings.Cut(path, ".")
		if top == "figures" || a.m.Node(top) != nil {
			return "“" + a.name(path) + "”"
		}
		return path
	})
}

// papers are links to the evidence that ids name.
func (a *author) papers(ids ...string) Text {
	var t Text
	seen := map[string]bool{}
	for _, id := range ids {
		n, known := a.numbers[id]
		if !known || seen[id] {
			continue
		}
		seen[id] = true
		if t != nil {
			t = append(t, Span{Text: ", "})
		}
		t = append(t, Span{Text: paperNumber(n), Link: "#" + paperNumber(n)})
	}
	return t
}

// paperNumber is what an item of evidence is called in the document.
func paperNumber(n int) string { return "E" + strconv.Itoa(n) }

// fact is the value at a manifest path with its title.
func (a *author) fact(path string) Fact {
	n := a.m.Node(path)
	if n == nil {
		return Fact{Label: path, Value: cell(say(notKnown))}
	}
	return Fact{Label: n.Shape.Title, Value: cell(a.value(n))}
}

// labelled are facts whose labels speak for themselves: a title of one word
// carries that of its place. What is not known is said too.
func (a *author) labelled(paths ...string) Facts {
	var facts Facts
	for _, path := range paths {
		n := a.m.Node(path)
		if n == nil {
			continue
		}
		f := a.fact(path)
		if !strings.Contains(n.Shape.Title, " ") {
			f.Label = capital(a.shortName(n, "build"))
		}
		facts = append(facts, f)
	}
	return facts
}

// known leaves out the paths at which nothing is given.
func (a *author) known(paths ...string) []string {
	var out []string
	for _, path := range paths {
		if a.given(path) {
			out = append(out, path)
		}
	}
	return out
}

// given is whether a value stands at a path.
func (a *author) given(path string) bool {
	n := a.m.Node(path)
	return n != nil && (n.Value != nil || n.State == manifest.None)
}

// value is what the manifest says at a node, how it is known and by which paper.
func (a *author) value(n *manifest.Node) Text {
	t := say(a.text(n))
	if n == nil || n.Value == nil {
		return t
	}
	if b := n.Value.Basis; b != "" && (n.Value.Numeric || b != manifest.DefaultBasis) {
		t = t.and(say(", " + b))
	}
	if papers := a.papers(n.Value.Evidence...); papers != nil {
		t = t.and(say(", "), papers)
	}
	return t
}

// text is the bare value of a node.
func (a *author) text(n *manifest.Node) string {
	switch {
	case n == nil || n.State == manifest.Missing:
		return notKnown
	case n.State == manifest.None:
		return none
	case n.Shape.Type == schema.List && n.ID == "":
		return fmt.Sprintf(listed, len(n.Items))
	case n.Value == nil:
		return notKnown
	}
	v := n.Value
	switch {
	case v.Bool != nil && *v.Bool:
		return yes
	case v.Bool != nil:
		return no
	case v.Refs != nil:
		return strings.Join(v.Refs, ", ")
	case n.Shape.Leaf == schema.LeafWord:
		return spaced(v.Text)
	case v.Numeric && v.Kind != "":
		return v.Text + a.converted(n)
	}
	return v.Text
}

// converted is the value of a node in the units of the region, in brackets, as
// written: without the spread that was laid on it.
func (a *author) converted(n *manifest.Node) string {
	q, err := quantity.Parse(n.Value.Text, n.Value.Kind)
	if err != nil {
		return ""
	}
	low, high := q.Floats()
	return a.units.of(n.Path).beside(low, high, n.Value.Kind, n.Value.Unit)
}

// word is the bare value at a path, "" where there is none.
func (a *author) word(path string) string {
	if n := a.m.Node(path); n != nil && n.Value != nil {
		return a.text(n)
	}
	return ""
}

// spaced writes a word of the manifest as words.
func spaced(word string) string {
	return strings.NewReplacer("-", " ", "_", " ").Replace(word)
}

// distinct keeps the first of each.
func distinct(list []string) []string {
	var out []string
	for _, s := range list {
		if !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}
