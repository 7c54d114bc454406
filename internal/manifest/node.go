package manifest

import (
	"strings"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
)

// State says what the manifest holds at a place.
type State int

// A place is Missing until the manifest speaks of it; None means it says that
// there is none.
const (
	Missing State = iota
	None
	Given
)

// Node is one place of the manifest's shape, given or not.
type Node struct {
	// Path is the manifest path with item ids: "electrical.circuits.starter.fuse".
	Path  string
	Shape *schema.Shape
	State State
	// At is where the value stands; for a missing value, where the nearest
	// section around it stands.
	At Position

	// Fields are those of an object or of a list item, in schema order.
	Fields []*Node
	// Items are those of a list, in manifest order.
	Items []*Node
	// ID is set on list items.
	ID string

	// Value is set on given leaves.
	Value *Value
	// WrittenAt is the manifest path of a derived leaf's origin, else empty.
	WrittenAt string
}

// Origin returns the path under which the builder writes this value.
func (n *Node) Origin() string {
	if n.WrittenAt != "" {
		return n.WrittenAt
	}
	return n.Path
}

// Value is what a given leaf holds. Exactly one of the groups is set, by
// Shape.Leaf.
type Value struct {
	// Text is what was written.
	Text string
	// Basis is empty for plate values and trade sizes, which are exact.
	Basis    string
	Evidence []string

	// Quantities and whole numbers: SI, after the default spread.
	Kind      quantity.Kind
	Unit      string
	Low, High float64
	Numeric   bool

	Bool   *bool
	Thread *thread.Thread
	Refs   []string

	raw any // of what a paper shows: its kind is known later
}

// Field returns the field called name of an object or item, nil if the shape
// has none.
func (n *Node) Field(name string) *Node {
	for _, f := range n.Fields {
		if f.Shape.Name == name {
			return f
		}
	}
	return nil
}

// Item returns the item with the id, nil if there is none.
func (n *Node) Item(id string) *Node {
	for _, item := range n.Items {
		if item.ID == id {
			return item
		}
	}
	return nil
}

// Find follows a manifest path with ids, nil if nothing is there.
func (n *Node) Find(path string) *Node {
	at := n
	for step := range strings.SplitSeq(path, ".") {
		if at.Shape.Type == schema.List && at.ID == "" {
			at = at.Item(step)
		} else {
			at = at.Field(step)
		}
		if at == nil {
			return nil
		}
	}
	return at
}

// Word returns the text of a given leaf, "" otherwise.
func (n *Node) Word(path string) string {
	if f := n.Find(path); f != nil && f.Value != nil {
		return f.Value.Text
	}
	return ""
}

// Walk calls f for the node and everything below it, in reading order.
func (n *Node) Walk(f func(*Node)) {
	f(n)
	for _, field := range n.Fields {
		field.Walk(f)
	}
	for _, item := range n.Items {
		item.Walk(f)
	}
}
