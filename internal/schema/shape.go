// Package schema knows the form of a manifest: its shape as Go values, and
// whether a document has it.
//
// The shape is read from the published JSON Schema, so that form is said once.
// Keywords of our own begin with "x-": x-leaf (what a value is), x-quantity
// (its kind), x-exact (a plate or trade size: no default spread, no basis
// needed), x-ref (the list its ids come from), x-joints (the fields that form
// a chain), x-kinds and x-quantity-of (a kind that a sibling names).
package schema

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"trialfit/internal/quantity"
	"trialfit/schemas"
)

// Type says what a Shape describes.
type Type int

// A shape is an object with named fields, a list of items with ids, or a leaf.
const (
	Object Type = iota
	List
	Leaf
)

// Kinds of leaf.
const (
	LeafQuantity = "quantity"
	LeafText     = "text"
	LeafWord     = "word"
	LeafInteger  = "integer"
	LeafBoolean  = "boolean"
	LeafDate     = "date"
	LeafThread   = "thread"
	LeafID       = "id"   // the item's own id
	LeafRefs     = "refs" // ids of items elsewhere
	LeafShown    = "shown"
	LeafVersion  = "version"
)

// Shape describes one place of a manifest.
type Shape struct {
	Name        string
	Title       string
	Description string
	Examples    []any

	Type Type
	// None says that the word "none" is accepted: there is none.
	None bool

	// Fields are those of an object, or of each item of a list, in schema order.
	Fields   []*Shape
	Required []string
	// Joints names the fields of a list item that form a chain of threads.
	Joints []string

	Leaf string
	// Exact marks plate values and trade sizes: no default spread, and no
	// basis is asked of them.
	Exact    bool
	Quantity quantity.Kind
	// QuantityOf names the sibling whose word chooses the kind out of Kinds.
	QuantityOf string
	Kinds      map[string]quantity.Kind
	Words      []string
	// Ref is the list that ids in this leaf come from.
	Ref string
}

// Field returns the field called name, nil if there is none.
func (s *Shape) Field(name string) *Shape {
	for _, f := range s.Fields {
		if f.Name == name {
			return f
		}
	}
	if len(s.Joints) > 0 && name == Joints.Name {
		return Joints
	}
	return nil
}

// Joints is what the joints of a chain look like to figures and rules: derived
// from the chain, never written in a manifest.
var Joints = &Shape{
	Name: "joints", Title: "Joints", Type: List,
	Description: "The joints of a chain, each where one part screws into the one before it.",
	Fields: []*Shape{
		{Name: "inner", Title: "Inner", Type: Leaf, Leaf: LeafThread, Exact: true, Description: "Thread of the part nearer the port."},
		{Name: "outer", Title: "Outer", Type: Leaf, Leaf: LeafThread, Exact: true, Description: "Thread of the part that screws onto it."},
		{Name: "seal", Title: "Seal", Type: Leaf, Leaf: LeafWord, Exact: true, Description: "What seals the joint."},
		{Name: "mates", Type: Leaf, Leaf: LeafBoolean, Exact: true, Description: "Whether the standards of the two threads say that they fit and seal."},
		{Name: "lookalike", Type: Leaf, Leaf: LeafBoolean, Exact: true, Description: "Whether two different threads start by hand all the same."},
	},
}

// ThreadParts are the parts of a thread that figures and rules can name below it.
var ThreadParts = []string{"standard", "size", "gender", "seal", "major", "pitch", "angle", "taper", "engagement", "per_inch"}

// Names returns the names of the fields in schema order.
func (s *Shape) Names() []string {
	names := make([]string, len(s.Fields))
	for i, f := range s.Fields {
		names[i] = f.Name
	}
	return names
}

// At follows a manifest path pattern such as "electrical.circuits.*.fuse".
// Each '*' (or any id) steps into the items of a list.
func (s *Shape) At(path string) (*Shape, error) {
	at := s
	walked := ""
	inList := false
	for _, step := range strings.Split(path, ".") {
		switch {
		case at.Leaf == LeafThread && slices.Contains(ThreadParts, step):
			// a part of a thread is no place of its own
		case at.Type == List && !inList:
			inList = true // this step is the item's id
		default:
			next := at.Field(step)
			if next == nil {
				return nil, fmt.Errorf("%q has no field %q%s", orRoot(walked), step, suggest(step, at.Names()))
			}
			at, inList = next, false
		}
		walked = strings.TrimPrefix(walked+"."+step, ".")
	}
	return at, nil
}

func orRoot(path string) string {
	if path == "" {
		return "the manifest"
	}
	return path
}

// longFields are the fields of the long form of a leaf.
var longFields = []string{"value", "basis", "evidence"}

// Bases lists the accepted bases of a value, strongest first.
var Bases = []string{"measured", "documented", "claimed", "estimated"}

// Manifest returns the shape of a build manifest.
var Manifest = sync.OnceValue(func() *Shape {
	data, err := schemas.FS.ReadFile(manifestFile)
	if err != nil {
		panic(err)
	}
	shape, err := Parse(data)
	if err != nil {
		panic(fmt.Sprintf("schema: reading %s: %v", manifestFile, err))
	}
	return shape
})

const manifestFile = "manifest.json"

// Parse reads the shape from a JSON Schema written in our dialect.
func Parse(data []byte) (*Shape, error) {
	v, err := decodeOrdered(data)
	if err != nil {
		return nil, err
	}
	root, ok := v.(*object)
	if !ok {
		return nil, fmt.Errorf("the schema is not an object")
	}
	defs, _ := root.get("$defs").(*object)
	return (&reader{defs: defs}).shape("", root)
}

type reader struct{ defs *object }

func (r *reader) shape(name string, o *object) (*Shape, error) {
	s := &Shape{
		Name:        name,
		Title:       o.str("title"),
		Description: o.str("description"),
		Exact:       o.flag("x-exact"),
		Ref:         o.str("x-ref"),
		Joints:      o.strings("x-joints"),
	}
	s.Examples, _ = o.get("examples").([]any)
	body, err := r.body(o, s)
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	if leaf := body.str("x-leaf"); leaf != "" {
		s.Type, s.Leaf = Leaf, leaf
		s.Quantity = quantity.Kind(body.str("x-quantity"))
		s.QuantityOf = body.str("x-quantity-of")
		s.Kinds, err = kinds(body)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		s.Words = body.strings("x-words")
		if s.Leaf == LeafQuantity && s.QuantityOf == "" && !quantity.Known(s.Quantity) {
			return nil, fmt.Errorf("%s: unknown kind of quantity %q", name, s.Quantity)
		}
		return s, nil
	}
	switch {
	case body.get("const") != nil:
		s.Type, s.Leaf = Leaf, LeafVersion
	case body.get("enum") != nil:
		s.Type, s.Leaf, s.Words = Leaf, LeafWord, body.strings("enum")
		s.Exact = true
	case body.str("type") == "string":
		s.Type, s.Leaf = Leaf, LeafID
	case body.str("type") == "object":
		s.Type = Object
		err = r.fields(s, body)
	case body.str("type") == "array":
		err = r.list(s, body)
	default:
		err = fmt.Errorf("is neither an object, a list nor a leaf")
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return s, nil
}

func (r *reader) list(s *Shape, body *object) error {
	items, ok := body.get("items").(*object)
	if !ok {
		return fmt.Errorf("a list without items")
	}
	if ref := items.str("x-ref"); ref != "" {
		s.Type, s.Leaf, s.Ref = Leaf, LeafRefs, ref
		return nil
	}
	s.Type = List
	return r.fields(s, items)
}

func (r *reader) fields(s *Shape, body *object) error {
	s.Required = body.strings("required")
	props, ok := body.get("properties").(*object)
	if !ok {
		return fmt.Errorf("an object without properties")
	}
	if open, ok := body.get("additionalProperties").(bool); !ok || open {
		return fmt.Errorf("an object that is not closed")
	}
	for _, key := range props.keys {
		prop, ok := props.get(key).(*object)
		if !ok {
			return fmt.Errorf("property %q is not an object", key)
		}
		field, err := r.shape(key, prop)
		if err != nil {
			return err
		}
		s.Fields = append(s.Fields, field)
	}
	return nil
}

// body resolves references and the "none, or" form to the object that says
// what the place holds.
func (r *reader) body(o *object, s *Shape) (*object, error) {
	for {
		if o.str("x-leaf") != "" {
			return o, nil
		}
		if s.Ref == "" {
			s.Ref = o.str("x-ref")
		}
		if ref := o.str("$ref"); ref != "" {
			def, ok := r.defs.get(strings.TrimPrefix(ref, "#/$defs/")).(*object)
			if !ok {
				return nil, fmt.Errorf("unknown definition %q", ref)
			}
			o = def
			continue
		}
		either, ok := o.get("anyOf").([]any)
		if !ok {
			return o, nil
		}
		if len(either) != 2 {
			return nil, fmt.Errorf("anyOf other than none and one more")
		}
		first, _ := either[0].(*object)
		second, _ := either[1].(*object)
		if first == nil || second == nil || first.str("const") != "none" {
			return nil, fmt.Errorf("anyOf other than none and one more")
		}
		s.None = true
		o = second
	}
}

func kinds(body *object) (map[string]quantity.Kind, error) {
	o, ok := body.get("x-kinds").(*object)
	if !ok {
		return nil, nil
	}
	out := make(map[string]quantity.Kind, len(o.keys))
	for _, key := range o.keys {
		kind := quantity.Kind(o.str(key))
		if !quantity.Known(kind) {
			return nil, fmt.Errorf("unknown kind of quantity %q", kind)
		}
		out[key] = kind
	}
	return out, nil
}

// With returns a copy of the root shape with one more field: the extension of
// a local pack.
func (s *Shape) With(field *Shape) *Shape {
	copied := *s
	copied.Fields = append(slices.Clip(s.Fields), field)
	return &copied
}
