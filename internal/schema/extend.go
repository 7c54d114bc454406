package schema

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
)

// extend adds the properties and the kinds of evidence of local packs to the
// manifest schema.
func extend(data []byte, shape *Shape, extensions map[string][]byte, evidenceKinds []string) ([]byte, *Shape, error) {
	var doc map[string]any
	if err := json.Unmarshal(data, &doc); err != nil {
		return nil, nil, fmt.Errorf("reading the manifest schema: %w", err)
	}
	ordered, err := decodeOrdered(data)
	if err != nil {
		return nil, nil, fmt.Errorf("reading the manifest schema: %w", err)
	}
	defs, _ := ordered.(*object).get("$defs").(*object)
	properties := doc["properties"].(map[string]any)
	for _, key := range slices.Sorted(maps.Keys(extensions)) {
		field, err := parse(key, extensions[key], defs, nil)
		if err != nil {
			return nil, nil, fmt.Errorf("the schema of %s: %w", key, err)
		}
		var own map[string]any
		if err := json.Unmarshal(extensions[key], &own); err != nil {
			return nil, nil, fmt.Errorf("the schema of %s: %w", key, err)
		}
		// Extensions share the definitions of the manifest: a mass is a mass.
		if _, has := own["$defs"]; has {
			return nil, nil, fmt.Errorf("the schema of %s has its own $defs; use those of the manifest", key)
		}
		if field.Type != Object {
			return nil, nil, fmt.Errorf("the schema of %s is not an object", key)
		}
		shape = shape.With(field)
		delete(own, "$schema")
		delete(own, "$id")
		properties[key] = own
	}
	if shape, err = extendKinds(doc, shape, evidenceKinds); err != nil {
		return nil, nil, err
	}
	out, err := json.Marshal(doc)
	return out, shape, err
}

// extendKinds adds words that evidence[].kind accepts.
func extendKinds(doc map[string]any, shape *Shape, kinds []string) (*Shape, error) {
	if len(kinds) == 0 {
		return shape, nil
	}
	known, _ := shape.At("evidence.*.kind")
	var added []string
	for _, kind := range slices.Compact(slices.Sorted(slices.Values(kinds))) {
		if slices.Contains(known.Words, kind) {
			return nil, fmt.Errorf("evidence kind %q is there already", kind)
		}
		added = append(added, kind)
	}
	words := slices.Concat(known.Words, added)
	short := doc["$defs"].(map[string]any)["evidence_kind"].(map[string]any)["anyOf"].([]any)[0]
	short.(map[string]any)["enum"] = words
	return shape.replace([]string{"evidence", "kind"}, func(s *Shape) { s.Words = words }), nil
}

// With returns a copy of the root shape with one more field: the extension of
// a local pack.
func (s *Shape) With(field *Shape) *Shape {
	copied := *s
	copied.Fields = append(slices.Clip(s.Fields), field)
	return &copied
}

// replace returns a copy of the shape in which the field at the end of the
// names was changed.
func (s *Shape) replace(names []string, change func(*Shape)) *Shape {
	copied := *s
	if len(names) == 0 {
		change(&copied)
		return &copied
	}
	copied.Fields = slices.Clone(s.Fields)
	for i, f := range copied.Fields {
		if f.Name == names[0] {
			copied.Fields[i] = f.replace(names[1:], change)
		}
	}
	return &copied
}
