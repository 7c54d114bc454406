package manifest

import (
	"fmt"

	"trialfit/internal/schema"
)

// resolver turns a parsed document into nodes along the shape, every place of
// the shape included.
type resolver struct {
	doc      *document
	spread   Spread
	problems Problems
	// told marks the places whose fault is reported already, by pointer: one
	// fault, one line.
	told map[string]bool
	// incomplete marks the lists, by path, of which an item's id is not known.
	incomplete map[string]bool
	wanted     []wanted
	takePaths  bool
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

// spot is a place of the document: what stands there, if anything does.
type spot struct {
	pointer string
	value   any // nil where nothing stands
}

// field is the spot of a key below s.
func (s spot) field(key string) spot {
	section, _ := s.value.(map[string]any)
	value, ok := section[key]
	if !ok {
		return spot{}
	}
	return spot{schema.Pointer(s.pointer, key), value}
}

// node resolves the place at s; around is where to point for what is missing.
func (r *resolver) node(shape *schema.Shape, path string, s spot, around Position) *Node {
	n := &Node{Path: path, Shape: shape, At: around}
	if s.value != nil {
		raw := r.doc.nodes[s.pointer]
		n.At, n.State = raw.position(), Given
		if shape.Type != schema.Leaf {
			n.At = raw.keyPosition()
		}
		if shape.None && s.value == "none" {
			n.State = None
			n.At = raw.position()
		}
	}
	switch {
	case shape.Type == schema.Object:
		r.fields(n, s)
	case shape.Type == schema.List:
		r.items(n, s)
	case n.State == Given && !r.told[s.pointer]:
		r.leaf(n, s)
	}
	return n
}

// fields resolves the fields of an object; where it is none, so is all in it.
func (r *resolver) fields(n *Node, s spot) {
	for _, f := range n.Shape.Fields {
		field := r.field(n, f, s)
		if n.State == None {
			field.Walk(func(m *Node) { m.State = None })
		}
		n.Fields = append(n.Fields, field)
	}
}

func (r *resolver) field(n *Node, f *schema.Shape, s spot) *Node {
	if f.QuantityOf != "" {
		f = named(f, s)
	}
	return r.node(f, join(n.Path, f.Name), s.field(f.Name), n.At)
}

// named is the shape of a quantity whose kind a sibling names.
func named(f *schema.Shape, parent spot) *schema.Shape {
	word, _ := parent.field(f.QuantityOf).value.(string)
	copied := *f
	copied.Quantity = f.Kinds[word]
	return &copied
}

func (r *resolver) items(n *Node, s spot) {
	list, isList := s.value.([]any)
	r.incomplete[n.Path] = s.value != nil && !isList && n.State != None || r.told[s.pointer]
	first := map[string]int{}
	for i := range list {
		below := spot{schema.PointerAt(s.pointer, i), list[i]}
		id, fit := r.id(below)
		if !fit {
			r.incomplete[n.Path] = true
		} else if line, twice := first[id]; twice {
			r.fault(r.doc.nodes[below.pointer+"/id"].position(), "id %s stands twice under %s; the first is on line %d", schema.Quote(id), n.Path, line)
			fit = false
		} else {
			first[id] = r.doc.nodes[below.pointer+"/id"].position().Line
		}
		item := r.item(n, id, below)
		if fit {
			n.Items = append(n.Items, item)
		}
	}
	if isList && len(list) == 0 {
		n.State = None // an empty list says as much as none
	}
}

// id is that of an item; false where there is none that could be referred to.
func (r *resolver) id(item spot) (string, bool) {
	at := item.field("id")
	id, ok := at.value.(string)
	return id, ok && !r.told[at.pointer]
}

// item resolves an item of a list, one without a fit id too: its other faults
// are told along with that.
func (r *resolver) item(n *Node, id string, s spot) *Node {
	item := &Node{Path: join(n.Path, id), Shape: n.Shape, State: Given, At: r.doc.nodes[s.pointer].position(), ID: id}
	r.fields(item, s)
	if len(n.Shape.Joints) > 0 {
		item.Fields = append(item.Fields, joints(item))
	}
	return item
}
