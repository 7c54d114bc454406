// Package input assembles the document that rules see: the build with every
// leaf its form allows, the figures, the evidence, the regions, the hold point
// and the date.
package input

import (
	"encoding/json"

	"trialfit/internal/manifest"
	"trialfit/internal/quantity"
	"trialfit/internal/schema"
)

func number(x float64) json.Number { return json.Number(quantity.Canonical(x)) }

// exact is the basis of plate values and trade sizes in the input document.
const exact = "exact"

// record writes a node and all below it. Lists become objects by item id, so
// that a path means the same whatever the order.
func record(n *manifest.Node) any {
	switch {
	case n.Shape.Type == schema.Leaf:
		return leaf(n)
	case n.Shape.Type == schema.List && n.ID == "":
		switch n.State {
		case manifest.Missing:
			return missing(n)
		case manifest.None:
			return none(n)
		}
		out := make(map[string]any, len(n.Items))
		for _, item := range n.Items {
			out[item.ID] = fields(item)
		}
		return out
	default:
		return fields(n)
	}
}

func fields(n *manifest.Node) map[string]any {
	out := make(map[string]any, len(n.Fields))
	for _, f := range n.Fields {
		out[f.Shape.Name] = record(f)
	}
	return out
}

func missing(n *manifest.Node) map[string]any { return map[string]any{"missing": n.Origin()} }
func none(n *manifest.Node) map[string]any    { return map[string]any{"none": n.Origin()} }

func leaf(n *manifest.Node) map[string]any {
	switch {
	case n.State == manifest.None:
		return none(n)
	case n.Value == nil:
		return missing(n)
	}
	v := n.Value
	out := map[string]any{"text": v.Text, "basis": exact}
	if v.Basis != "" {
		out["basis"] = v.Basis
	}
	if len(v.Evidence) > 0 {
		out["evidence"] = v.Evidence
	}
	if v.Numeric {
		span(out, v.Low, v.High, v.Kind)
	}
	switch {
	case n.Shape.Leaf == schema.LeafThread:
		out["value"] = v.Thread.Name()
	case v.Bool != nil:
		out["value"] = *v.Bool
	case v.Refs != nil:
		out["value"] = v.Refs
	case !v.Numeric:
		out["value"] = v.Text
	}
	for _, p := range parts(n) {
		out[p.name] = p.record(n)
	}
	return out
}

func span(out map[string]any, low, high float64, kind quantity.Kind) {
	out["low"], out["high"] = number(low), number(high)
	out["unit"], out["kind"] = quantity.SI(kind), string(kind)
}

func ranged(low, high float64, kind quantity.Kind) map[string]any {
	out := map[string]any{}
	span(out, low, high, kind)
	return out
}

func word(s string) map[string]any {
	return map[string]any{"value": s, "text": s, "basis": exact}
}
