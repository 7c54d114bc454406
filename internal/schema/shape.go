// Package schema knows the form of a manifest: its shape as Go values, and
// whether a document has it.
//
// The shape is read from the published JSON Schema, so that form is said once.
// Keywords of our own begin with "x-": x-leaf (what a value is), x-quantity
// (its kind), x-exact (a plate or trade size: no default spread, no basis
// needed), x-ref (the list its ids come from), x-joints (the fields that form
// a chain), x-kinds and x-quantity-of (a kind that a sibling names), x-reader
// (what reads a leaf: figure, rule, judge or document).
package schema

import (
	"fmt"
	"slices"
	"strings"

	"trialfit/internal/quantity"
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
	LeafTyre     = "tyre" // a size code
	LeafVIN      = "vin"
	LeafID       = "id"   // the item's own id
	LeafRefs     = "refs" // ids of items elsewhere
	LeafShown    = "shown"
	LeafVersion  = "version"
	LeafMoney    = "money" // an amount with its currency
)

// Shape describes one place of a manifest.
type Shape struct {
	Name        string
	Title       string
	Description string
	// Examples are values as decoded JSON, numbers as json.Number.
	Examples []any

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
	// Reader says what reads the leaf: a figure, a rule, the judge itself, or
	// only a document.
	Reader string
	// Ref is the list that ids in this leaf come from.
	Ref string
	// Long says that the long form is accepted: value, basis, evidence.
	Long bool
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

// Noun is the title as it stands inside a sentence: in small letters, but "VIN".
func (s *Shape) Noun() string {
	if len(s.Title) > 1 && strings.ToUpper(s.Title[:2]) == s.Title[:2] || s.Title == "" {
		return s.Title
	}
	return strings.ToLower(s.Title[:1]) + s.Title[1:]
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
		{Name: "turns", Title: "Turns", Type: Leaf, Leaf: LeafQuantity, Quantity: quantity.Ratio, Description: "Turns from where the thread first catches to where it is tight."},
		{Name: "mates", Title: "Mates", Type: Leaf, Leaf: LeafBoolean, Exact: true, Description: "Whether the standards of the two threads say that they fit and seal."},
		{Name: "lookalike", Title: "Look-alike", Type: Leaf, Leaf: LeafBoolean, Exact: true, Description: "Whether two different threads start by hand all the same."},
	},
}

// ThreadParts are the parts of a thread that figures and rules can name below it.
var ThreadParts = []string{"standard", "size", "gender", "seal", "major", "pitch", "angle", "taper", "engagement", "hand_tight", "per_inch"}

// Parts are the parts of leaves that figures and rules can name below them, by
// kind of leaf.
var Parts = map[string][]string{
	LeafThread: ThreadParts,
	LeafTyre:   {"diameter"},
	LeafVIN:    {"check_digit", "model_year"},
}

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
		case slices.Contains(Parts[at.Leaf], step):
			// a part of a leaf is no place of its own
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
