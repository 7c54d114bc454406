package manifest

import (
	"fmt"
	"slices"

	"trialfit/internal/schema"
	"trialfit/internal/thread"
)

// joints derives the joints of a chain from its port to its end. A joint has
// the id of the part it adds: that of an adapter, or "end".
func joints(chain *Node) *Node {
	port, adapters, end := chain.Field(chain.Shape.Joints[0]), chain.Field(chain.Shape.Joints[1]), chain.Field(chain.Shape.Joints[2])
	list := &Node{Path: join(chain.Path, schema.Joints.Name), Shape: schema.Joints, State: Given, At: chain.At}
	if adapters.State == Missing {
		list.State, list.WrittenAt = Missing, adapters.Origin()
		return list
	}
	inner := port
	for _, adapter := range adapters.Items {
		list.Items = append(list.Items, joint(list, adapter.ID, adapter.At, inner, adapter.Field("into"), adapter))
		inner = adapter.Field("takes")
	}
	list.Items = append(list.Items, joint(list, end.Shape.Name, end.At, inner, end, chain))
	return list
}

// joint is one of a list of joints; made is what says how it was made up: the
// adapter, or the chain for its end.
func joint(list *Node, id string, at Position, inner, outer, made *Node) *Node {
	item := &Node{Path: join(list.Path, id), Shape: schema.Joints, State: Given, At: at, ID: id}
	field := func(name string, from *Node) *Node {
		f := *from
		f.Shape = schema.Joints.Field(name)
		// A thread is missing where it would be written, so its path stays.
		f.Path, f.WrittenAt = join(item.Path, name), from.Origin()
		item.Fields = append(item.Fields, &f)
		return &f
	}
	field("inner", inner)
	field("outer", outer)
	field("seal", made.Field("seal"))
	field("turns", made.Field("turns"))
	fit := []*Node{field("mates", outer), field("lookalike", outer)}
	if inner.Value == nil || outer.Value == nil {
		for _, f := range fit {
			f.Value, f.State = nil, Missing
			if inner.Value == nil {
				f.WrittenAt = inner.Origin()
			}
		}
		return item
	}
	a, b := *inner.Value.Thread, *outer.Value.Thread
	mates := thread.Mates(a, b) || thread.Mates(b, a)
	_, alike := thread.Lookalike(a, b)
	both := fmt.Sprintf("%s on %s", b.Name(), a.Name())
	fit[0].Value = &Value{Text: both, Bool: &mates}
	fit[1].Value = &Value{Text: both, Bool: &alike}
	return item
}

// Fields lists the fields of a shape as nodes have them: those of the form,
// and the joints that are derived from a chain.
func Fields(s *schema.Shape) []*schema.Shape {
	if len(s.Joints) == 0 {
		return s.Fields
	}
	return append(slices.Clip(s.Fields), schema.Joints)
}
