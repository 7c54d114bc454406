package manifest

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"trialfit/internal/schema"
)

// want notes that an id of a list is referred to. Ids are only known when the
// whole document is read.
func (r *resolver) want(list, id string, at Position) {
	r.wanted = append(r.wanted, wanted{list: list, id: id, at: at})
}

type wanted struct {
	list, id string
	at       Position
}

// references checks every id that one place of the manifest says of another.
func (r *resolver) references(root *Node) {
	ids := map[string][]string{}
	for _, want := range r.wanted {
		if _, read := ids[want.list]; !read {
			known := []string{}
			if list := root.Find(want.list); list != nil {
				for _, item := range list.Items {
					known = append(known, item.ID)
				}
			}
			ids[want.list] = known
		}
		if !slices.Contains(ids[want.list], want.id) {
			r.fault(want.at, "%q is not an id under %s%s", want.id, want.list, orList(want.id, ids[want.list]))
		}
	}
	r.paths(root)
}

func orList(word string, known []string) string {
	if near := schema.Nearest(word, known); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	if len(known) == 0 {
		return ", where nothing is listed"
	}
	sorted := slices.Sorted(slices.Values(known))
	return ": there are " + strings.Join(sorted[:min(len(sorted), 8)], ", ")
}

// paths checks the manifest paths that evidence says it shows, and reads the
// values it shows in the kind of the place they belong to.
func (r *resolver) paths(root *Node) {
	evidence := root.Find("evidence")
	if evidence == nil {
		return
	}
	for _, item := range evidence.Items {
		shows := item.Field("shows")
		for _, shown := range shows.Items {
			path := shown.Field("path")
			if path.Value == nil {
				continue
			}
			target := root.Find(path.Value.Text)
			if target == nil || target.Shape.Type != schema.Leaf {
				r.fault(path.At, "%q is not the path of a value%s", path.Value.Text, nearPath(root, path.Value.Text))
				continue
			}
			r.shown(shown.Field("value"), target)
		}
	}
}

// shown reads what a paper says as the same kind of thing the manifest says.
func (r *resolver) shown(n, target *Node) {
	if n == nil || n.Value == nil {
		return
	}
	kind := target.Shape.Quantity
	if target.Shape.QuantityOf != "" && target.Value != nil {
		kind = target.Value.Kind
	}
	switch target.Shape.Leaf {
	case schema.LeafQuantity:
		exact := &Node{Shape: &schema.Shape{Leaf: schema.LeafQuantity, Quantity: kind, Exact: true}}
		v := &Value{Text: n.Value.Text}
		if r.quantity(exact, v, v.Text, "", n.At) {
			n.Value = v
		}
	case schema.LeafInteger, schema.LeafBoolean, schema.LeafText, schema.LeafWord, schema.LeafDate, schema.LeafThread:
	default:
		r.fault(n.At, "%s is not a value that a paper can show", target.Path)
	}
}

func nearPath(root *Node, path string) string {
	known := map[string]bool{}
	root.Walk(func(n *Node) {
		if n.Shape.Type == schema.Leaf {
			known[n.Path] = true
		}
	})
	if near := schema.Nearest(path, slices.Sorted(maps.Keys(known))); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ""
}
