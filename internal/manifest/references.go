package manifest

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"trialfit/internal/evidence"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
)

type wanted struct {
	list, id string
	at       Position
}

// want notes that an id of a list is referred to. Ids are only known when the
// whole document is read.
func (r *resolver) want(list, id string, at Position) {
	r.wanted = append(r.wanted, wanted{list, id, at})
}

// references checks every id, path and file that one place of the manifest
// says of another. What hangs on a fault told already is left alone.
func (r *resolver) references(byPath map[string]*Node) {
	for _, w := range r.wanted {
		if byPath[join(w.list, w.id)] == nil && !r.incomplete[w.list] {
			r.fault(w.at, "%s is not an id under %s%s", schema.Quote(w.id), w.list, orName(w.id, names(byPath[w.list])))
		}
	}
	papers := byPath["evidence"]
	if papers == nil {
		return
	}
	for _, paper := range papers.Items {
		if file := paper.Field("file"); file.Value != nil && !r.takePaths {
			if _, err := evidence.Clean(file.Value.Text); err != nil {
				r.fault(file.At, "%v", err)
			}
		}
		r.shows(paper, byPath)
	}
}

// shows checks what a paper shows: paths of values, each once, and values of
// the kind that belongs there.
func (r *resolver) shows(paper *Node, byPath map[string]*Node) {
	first := map[string]int{}
	for _, shown := range paper.Field("shows").Items {
		path := shown.Field("path")
		if path.Value == nil {
			continue
		}
		if line, twice := first[path.Value.Text]; twice {
			r.fault(path.At, "%s shows %s twice; the first is on line %d", paper.Path, schema.Quote(path.Value.Text), line)
			continue
		}
		first[path.Value.Text] = path.At.Line
		if target := r.target(path, byPath); target != nil {
			r.shown(shown.Field("value"), target)
		}
	}
}

// target finds the value that a path names, nil if it names none.
func (r *resolver) target(path *Node, byPath map[string]*Node) *Node {
	text := path.Value.Text
	target := byPath[text]
	switch {
	case target == nil:
		if hint, known := r.lost(text, byPath); known {
			r.fault(path.At, "%s is not the path of a value%s", schema.Quote(text), hint)
		}
	case target.WrittenAt != "" || strings.Contains(text, "."+schema.Joints.Name+"."):
		r.fault(path.At, "%s is derived: name the value as written, %q", schema.Quote(text), target.Origin())
	case target.Shape.Type != schema.Leaf:
		r.fault(path.At, "%s is not the path of one value%s", schema.Quote(text), inside(target))
	case slices.Contains([]string{schema.LeafID, schema.LeafVersion, schema.LeafRefs, schema.LeafShown}, target.Shape.Leaf):
		r.fault(path.At, "%s is nothing that a paper can show", schema.Quote(text))
	default:
		return target
	}
	return nil
}

// inside offers what there is below a path.
func inside(n *Node) string {
	known := names(n)
	if len(known) == 0 {
		return ": nothing is listed there"
	}
	return fmt.Sprintf(": name one in it, %q", join(n.Path, known[0]))
}

// lost says where a path leaves the manifest and what may have been meant;
// false where that hangs on another fault.
func (r *resolver) lost(path string, byPath map[string]*Node) (hint string, known bool) {
	steps := strings.Split(path, ".")
	n := len(steps) - 1
	for n > 0 && byPath[strings.Join(steps[:n], ".")] == nil {
		n--
	}
	around := strings.Join(steps[:n], ".")
	if r.incomplete[around] {
		return "", false
	}
	here := names(byPath[around])
	if near := schema.Nearest(steps[n], here); near != "" {
		meant := join(join(around, near), strings.Join(steps[n+1:], "."))
		if byPath[strings.TrimSuffix(meant, ".")] != nil {
			return fmt.Sprintf(", did you mean %q?", strings.TrimSuffix(meant, ".")), true
		}
	}
	for _, whole := range slices.Sorted(maps.Keys(byPath)) {
		if strings.HasSuffix(whole, "."+path) && byPath[whole].Shape.Type == schema.Leaf {
			return fmt.Sprintf(", did you mean %q?", whole), true
		}
	}
	switch {
	case len(here) == 0:
		return ": nothing is listed under " + around, true
	case around == "":
		around = "the manifest"
	}
	return fmt.Sprintf(": %s has no %s%s", around, schema.Quote(steps[n]), orName(steps[n], here)), true
}

// shown reads what a paper says as the same kind of thing the manifest says.
func (r *resolver) shown(n, target *Node) {
	if n.Value == nil || target.Shape.None && n.Value.Text == "none" {
		return
	}
	kind := target.Shape.Quantity
	if target.Shape.QuantityOf != "" && kind == "" {
		return // what it is a reading of is at fault, and told
	}
	if message := target.Shape.Refusal(n.Value.raw, kind); message != "" {
		r.fault(n.At, "%s", message)
		return
	}
	v := *n.Value
	switch target.Shape.Leaf {
	case schema.LeafQuantity:
		if !r.quantity(&v, kind, n.At) {
			return
		}
	case schema.LeafInteger:
		v.integer()
	case schema.LeafThread:
		t, err := thread.Parse(v.Text)
		if err != nil {
			r.fault(n.At, "%v", err)
			return
		}
		v.Thread = &t
	}
	n.Value = &v
}

// names lists what can follow the path of a node: its fields or item ids.
func names(n *Node) []string {
	var out []string
	switch {
	case n == nil:
	case n.Shape.Type == schema.List && n.ID == "":
		for _, item := range n.Items {
			out = append(out, item.ID)
		}
	default:
		for _, f := range n.Fields {
			if f.Shape != schema.Joints {
				out = append(out, f.Shape.Name)
			}
		}
	}
	return out
}

// orName offers the nearest of the known names, or the first of them.
func orName(word string, known []string) string {
	const most = 8
	if near := schema.Nearest(word, known); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	switch {
	case len(known) == 0:
		return ": nothing is listed there"
	case len(known) > most:
		return ": known are " + strings.Join(known[:most], ", ") + ", …"
	}
	return ": known are " + strings.Join(known, ", ")
}
