package manifest

import (
	"encoding/json"
	"strconv"
	"strings"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
	"trialfit/internal/thread"
)

// DefaultBasis is the basis of a value written in the short form: somebody says so.
const DefaultBasis = "claimed"

// readingBasis is the basis of a reading, which is a measurement.
const readingBasis = "measured"

// leaf reads the value of a leaf that has the right form.
func (r *resolver) leaf(n *Node, s spot) {
	v := &Value{}
	if !n.Shape.Exact {
		v.Basis = DefaultBasis
	}
	if long, ok := s.value.(map[string]any); ok {
		if basis, ok := long["basis"].(string); ok && !n.Shape.Exact {
			v.Basis = basis
		}
		v.Evidence = r.refs(s.field("evidence"), "evidence")
		s = s.field("value")
		if s.value == nil || r.told[s.pointer] {
			return
		}
		n.At = r.doc.nodes[s.pointer].position()
	}
	v.Text = text(s.value)
	if r.read(v, n, s) {
		n.Value = v
	}
}

// read sets what v holds besides its text.
func (r *resolver) read(v *Value, n *Node, s spot) bool {
	switch n.Shape.Leaf {
	case schema.LeafQuantity:
		if n.Shape.QuantityOf != "" && !n.Shape.Exact {
			v.Basis = readingBasis
		}
		return r.quantity(v, n.Shape.Quantity, n.At)
	case schema.LeafInteger:
		return v.integer()
	case schema.LeafBoolean:
		b, _ := s.value.(bool)
		v.Bool = &b
	case schema.LeafThread:
		t, err := thread.Parse(v.Text)
		if err != nil {
			r.fault(n.At, "%v", err)
			return false
		}
		v.Thread = &t
	case schema.LeafRefs:
		v.Refs, v.Basis = r.refs(s, n.Shape.Ref), ""
	case schema.LeafShown:
		v.Basis, v.raw = "", s.value
	case schema.LeafID, schema.LeafVersion:
		v.Basis = ""
	case schema.LeafText:
		if n.Shape.Ref != "" {
			v.Basis = ""
			r.want(n.Shape.Ref, v.Text, n.At)
		}
	}
	return true
}

func (v *Value) integer() bool {
	f, err := strconv.ParseFloat(v.Text, 64)
	v.Numeric, v.Low, v.High, v.Kind = true, f, f, quantity.Ratio
	return err == nil
}

// quantity reads the text of v as a quantity and gives it the spread of its
// basis where it has none of its own.
func (r *resolver) quantity(v *Value, kind quantity.Kind, at Position) bool {
	if kind == "" {
		return false // the word that names the kind is at fault, and told
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

// refs reads a list of ids of another list.
func (r *resolver) refs(s spot, list string) []string {
	items, _ := s.value.([]any)
	var out []string
	for i, item := range items {
		pointer := schema.PointerAt(s.pointer, i)
		if id, ok := item.(string); ok && !r.told[pointer] {
			r.want(list, id, r.doc.nodes[pointer].position())
			out = append(out, id)
		}
	}
	return out
}

// text is a value as one line of text.
func text(raw any) string {
	switch v := raw.(type) {
	case string:
		return strings.Join(strings.FieldsFunc(v, func(r rune) bool { return r == '\n' || r == '\t' || r == ' ' }), " ")
	case json.Number:
		return v.String()
	case bool:
		return strconv.FormatBool(v)
	default:
		return ""
	}
}
