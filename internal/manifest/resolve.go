package manifest

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
)

// DefaultBasis is the basis of a value written in the short form: somebody says so.
const DefaultBasis = "claimed"

// resolver turns a parsed document into nodes along the shape, every place of
// the shape included.
type resolver struct {
	doc      *document
	spread   Spread
	problems Problems
	wanted   []wanted
}

func (r *resolver) fault(at Position, format string, args ...any) {
	r.problems = append(r.problems, Problem{Position: at, Message: fmt.Sprintf(format, args...)})
}

func join(path, step string) string {
	if path == "" {
		return step
	}
	return path + "." + step
}

// node resolves the place at pointer; around is where to point for what is missing.
func (r *resolver) node(s *schema.Shape, path, pointer string, around Position) *Node {
	n := &Node{Path: path, Shape: s, At: around}
	raw, ok := r.doc.nodes[pointer]
	if ok {
		n.At, n.State = raw.position(), Given
		if s.Type != schema.Leaf {
			n.At = raw.keyPosition()
		}
		if s.None && raw.value.Value == "none" && len(raw.value.Content) == 0 {
			n.State = None
			n.At = raw.position()
		}
	}
	switch s.Type {
	case schema.Object:
		r.fields(n, pointer, n.State)
	case schema.List:
		r.items(n, pointer)
	default:
		if n.State == Given {
			r.leaf(n, pointer)
		}
	}
	return n
}

// fields resolves the fields of an object; where it is none, so is all in it.
func (r *resolver) fields(n *Node, pointer string, state State) {
	for _, f := range n.Shape.Fields {
		below := pointer + "/" + escape(f.Name)
		if state != Given {
			below = "/-" // nothing is written below: a pointer that no key can have
		}
		field := r.node(f, join(n.Path, f.Name), below, n.At)
		if state == None {
			field.setNone()
		}
		n.Fields = append(n.Fields, field)
	}
}

func (n *Node) setNone() {
	n.Walk(func(m *Node) { m.State = None })
}

var reserved = []string{"missing", "none"}

func (r *resolver) items(n *Node, pointer string) {
	list, _ := r.value(pointer).([]any)
	seen := map[string]int{}
	for i := range list {
		below := pointer + "/" + strconv.Itoa(i)
		at := r.doc.nodes[below].position()
		entry, _ := list[i].(map[string]any)
		id, _ := entry["id"].(string)
		if id == "" {
			continue // the schema has told
		}
		idAt := r.doc.nodes[below+"/id"].position()
		if line, twice := seen[id]; twice {
			r.fault(idAt, "id %q stands twice under %s; the first is on line %d", id, n.Path, line)
			continue
		}
		if slices.Contains(reserved, id) {
			r.fault(idAt, "id %q has a meaning of its own: choose another", id)
			continue
		}
		seen[id] = idAt.Line
		item := &Node{Path: join(n.Path, id), Shape: n.Shape, State: Given, At: at, ID: id}
		r.fields(item, below, Given)
		if len(n.Shape.Joints) > 0 {
			item.Fields = append(item.Fields, joints(item))
		}
		n.Items = append(n.Items, item)
	}
	if n.State == Given && len(n.Items) == 0 && len(list) == 0 {
		n.State = None // an empty list says as much as none
	}
}

func (r *resolver) value(pointer string) any {
	value := r.doc.value
	if pointer == "" {
		return value
	}
	for step := range strings.SplitSeq(pointer[1:], "/") {
		switch v := value.(type) {
		case map[string]any:
			value = v[strings.NewReplacer("~1", "/", "~0", "~").Replace(step)]
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i >= len(v) {
				return nil
			}
			value = v[i]
		default:
			return nil
		}
	}
	return value
}

func (r *resolver) leaf(n *Node, pointer string) {
	raw := r.value(pointer)
	at := n.At
	v := &Value{}
	if !n.Shape.Exact {
		v.Basis = DefaultBasis
	}
	if long, ok := raw.(map[string]any); ok {
		raw = long["value"]
		at = r.positionOf(pointer+"/value", at)
		n.At = at
		if basis, ok := long["basis"].(string); ok && !n.Shape.Exact {
			v.Basis = basis
		}
		v.Evidence = r.refs(long["evidence"], pointer+"/evidence", "evidence")
	}
	v.Text = text(raw)
	switch n.Shape.Leaf {
	case schema.LeafQuantity:
		if r.quantity(n, v, raw, pointer, at) {
			n.Value = v
		}
		return
	case schema.LeafInteger:
		f, err := strconv.ParseFloat(v.Text, 64)
		if err != nil {
			return // the schema has told
		}
		v.Numeric, v.Low, v.High, v.Kind = true, f, f, quantity.Ratio
	case schema.LeafBoolean:
		b, ok := raw.(bool)
		if !ok {
			return
		}
		v.Bool = &b
	case schema.LeafThread:
		t, err := thread.Parse(v.Text)
		if err != nil {
			r.fault(at, "%v", err)
			return
		}
		v.Thread = &t
	case schema.LeafRefs:
		v.Refs, v.Basis = r.refs(raw, pointer, n.Shape.Ref), ""
	case schema.LeafID, schema.LeafVersion, schema.LeafShown:
		v.Basis = ""
	}
	n.Value = v
}

func (r *resolver) quantity(n *Node, v *Value, raw any, pointer string, at Position) bool {
	kind := n.Shape.Quantity
	if n.Shape.QuantityOf != "" {
		parent := pointer[:strings.LastIndexByte(pointer, '/')]
		word, _ := r.value(parent + "/" + n.Shape.QuantityOf).(string)
		kind = n.Shape.Kinds[word]
		if kind == "" {
			return false // the schema has told
		}
		v.Basis = "measured" // a reading is a measurement
	}
	switch raw.(type) {
	case string, json.Number:
	default:
		return false
	}
	q, err := quantity.Parse(v.Text, kind)
	if err != nil {
		r.fault(at, "%v", err)
		return false
	}
	if !q.Ranged && v.Basis != "" && r.spread != nil {
		q = q.Widen(r.spread(kind, v.Basis))
	}
	v.Numeric, v.Kind, v.Unit = true, kind, q.Unit
	v.Low, v.High = q.Floats()
	return true
}

func (r *resolver) positionOf(pointer string, otherwise Position) Position {
	if n, ok := r.doc.nodes[pointer]; ok {
		return n.position()
	}
	return otherwise
}

func (r *resolver) refs(raw any, pointer, list string) []string {
	items, _ := raw.([]any)
	var out []string
	for i, item := range items {
		id, ok := item.(string)
		if !ok {
			continue
		}
		r.want(list, id, r.positionOf(pointer+"/"+strconv.Itoa(i), Position{}))
		out = append(out, id)
	}
	return out
}

func text(raw any) string {
	switch v := raw.(type) {
	case string:
		return strings.TrimSpace(v)
	case json.Number:
		return v.String()
	case bool:
		return strconv.FormatBool(v)
	default:
		return ""
	}
}
