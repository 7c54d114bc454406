package schema

import (
	"cmp"
	"fmt"
	"strings"
	"sync"

	"trialfit/internal/quantity"
	"trialfit/schemas"
)

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

// Shortlist returns the shape of a shortlist.
var Shortlist = sync.OnceValue(func() *Shape {
	data, err := schemas.FS.ReadFile(shortlistFile)
	if err != nil {
		panic(err)
	}
	shape, err := parse("", data, nil, Manifest())
	if err != nil {
		panic(fmt.Sprintf("schema: reading %s: %v", shortlistFile, err))
	}
	return shape
})

const (
	manifestFile  = "manifest.json"
	shortlistFile = "shortlist.json"
	// section begins a reference to a section of the manifest.
	section = manifestFile + "#/properties/"
)

// Parse reads the shape from a JSON Schema written in our dialect.
func Parse(data []byte) (*Shape, error) { return parse("", data, nil, nil) }

// parse reads the shape called name; defs, where they are given, stand in for
// those of the schema itself. References into the manifest are to the shape of
// it that is given.
func parse(name string, data []byte, defs *object, manifest *Shape) (*Shape, error) {
	v, err := decodeOrdered(data)
	if err != nil {
		return nil, err
	}
	root, ok := v.(*object)
	if !ok {
		return nil, fmt.Errorf("the schema is not an object")
	}
	if defs == nil {
		defs, _ = root.get("$defs").(*object)
	}
	return (&reader{defs, manifest}).shape(name, root)
}

type reader struct {
	defs     *object
	manifest *Shape
}

func (r *reader) shape(name string, o *object) (*Shape, error) {
	s := &Shape{
		Name:   name,
		Exact:  o.flag("x-exact"),
		Ref:    o.str("x-ref"),
		Joints: o.strings("x-joints"),
		Reader: o.str("x-reader"),
	}
	s.describe(o)
	if name, ok := strings.CutPrefix(o.str("$ref"), section); ok && r.manifest != nil {
		return s.section(r.manifest, name)
	}
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
		r.forms(s, body)
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

// section is a section of the manifest in another form, under the title and
// description it has there.
func (s *Shape) section(manifest *Shape, name string) (*Shape, error) {
	of := manifest.Field(name)
	if of == nil {
		return nil, fmt.Errorf("the manifest has no section %q", name)
	}
	copied := *of
	copied.Name = s.Name
	copied.Title = cmp.Or(s.Title, of.Title)
	copied.Description = cmp.Or(s.Description, of.Description)
	return &copied, nil
}

// describe takes what an object says of itself and nobody said before.
func (s *Shape) describe(o *object) {
	if s.Title == "" {
		s.Title = o.str("title")
	}
	if s.Description == "" {
		s.Description = o.str("description")
	}
	if s.Examples == nil {
		s.Examples, _ = plain(o.get("examples")).([]any)
	}
}

// forms reads the short form of a leaf, for its words, and whether there is a
// long one.
func (r *reader) forms(s *Shape, body *object) {
	either, _ := body.get("anyOf").([]any)
	if len(either) != 2 {
		return
	}
	s.Long = true
	if short, ok := either[0].(*object); ok {
		s.Words = short.strings("enum")
	}
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
			s.describe(o)
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
