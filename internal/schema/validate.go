package schema

import (
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/agnivade/levenshtein"
	"github.com/santhosh-tekuri/jsonschema/v5"

	"trialfit/schemas"
)

// Fault is one place where a document has not the form it should have.
type Fault struct {
	// Pointer is the JSON pointer of the place.
	Pointer string
	// AtKey says that the fault is in the key, not in the value.
	AtKey   bool
	Message string
}

// Validator checks documents against a JSON Schema and its shape.
type Validator struct {
	compiled *jsonschema.Schema
	shape    *Shape
}

// NewValidator compiles the manifest schema, extended by the given properties
// (the raw schemas of local packs, by key).
func NewValidator(extensions map[string][]byte) (*Validator, error) {
	data, err := schemas.FS.ReadFile(manifestFile)
	if err != nil {
		return nil, fmt.Errorf("reading the manifest schema: %w", err)
	}
	shape := Manifest()
	if len(extensions) > 0 {
		data, shape, err = extend(data, shape, extensions)
		if err != nil {
			return nil, err
		}
	}
	compiled, err := compile("manifest.json", data)
	if err != nil {
		return nil, err
	}
	return &Validator{compiled: compiled, shape: shape}, nil
}

// Shape returns the shape the validator checks.
func (v *Validator) Shape() *Shape { return v.shape }

func compile(name string, data []byte) (*jsonschema.Schema, error) {
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	c.AssertFormat = true
	c.LoadURL = func(url string) (r readCloser, err error) {
		return nil, fmt.Errorf("%s is not part of this schema; nothing is fetched", url)
	}
	if err := c.AddResource(name, strings.NewReader(string(data))); err != nil {
		return nil, fmt.Errorf("reading schema %s: %w", name, err)
	}
	compiled, err := c.Compile(name)
	if err != nil {
		return nil, fmt.Errorf("compiling schema %s: %w", name, err)
	}
	return compiled, nil
}

// extend adds the properties of local packs to the manifest schema.
func extend(data []byte, shape *Shape, extensions map[string][]byte) ([]byte, *Shape, error) {
	var doc map[string]any
	if err := json.Unmarshal(data, &doc); err != nil {
		return nil, nil, fmt.Errorf("reading the manifest schema: %w", err)
	}
	properties := doc["properties"].(map[string]any)
	defs := doc["$defs"].(map[string]any)
	for _, key := range slices.Sorted(maps.Keys(extensions)) {
		var own map[string]any
		if err := json.Unmarshal(extensions[key], &own); err != nil {
			return nil, nil, fmt.Errorf("reading the schema of %s: %w", key, err)
		}
		// Extensions share the definitions of the manifest: a mass is a mass.
		if _, has := own["$defs"]; has {
			return nil, nil, fmt.Errorf("the schema of %s has its own $defs; use those of the manifest", key)
		}
		own["$defs"] = defs
		raw, err := json.Marshal(own)
		if err != nil {
			return nil, nil, fmt.Errorf("writing the schema of %s: %w", key, err)
		}
		field, err := Parse(raw)
		if err != nil {
			return nil, nil, fmt.Errorf("reading the schema of %s: %w", key, err)
		}
		if field.Type != Object {
			return nil, nil, fmt.Errorf("the schema of %s is not an object", key)
		}
		field.Name = key
		shape = shape.With(field)
		delete(own, "$defs")
		delete(own, "$schema")
		delete(own, "$id")
		properties[key] = own
	}
	out, err := json.Marshal(doc)
	return out, shape, err
}

// Validate returns the faults of a decoded document, sorted by pointer. The
// document holds map[string]any, []any, string, bool and json.Number.
func (v *Validator) Validate(doc any) []Fault {
	err := v.compiled.Validate(doc)
	if err == nil {
		return nil
	}
	var ve *jsonschema.ValidationError
	if !errors.As(err, &ve) {
		return []Fault{{Message: err.Error()}}
	}
	places := map[string]bool{}
	collect(ve, places)
	var faults []Fault
	for _, pointer := range slices.Sorted(maps.Keys(places)) {
		faults = append(faults, v.explain(doc, pointer)...)
	}
	return faults
}

// collect gathers the places of the innermost errors. Which keyword refused
// them does not matter: the shape says better what is accepted there.
func collect(e *jsonschema.ValidationError, places map[string]bool) {
	if len(e.Causes) == 0 {
		places[e.InstanceLocation] = true
		return
	}
	for _, cause := range e.Causes {
		collect(cause, places)
	}
}

func (v *Validator) explain(doc any, pointer string) []Fault {
	value, place, err := v.resolve(doc, pointer)
	if err != nil {
		return []Fault{{Pointer: pointer, Message: err.Error()}}
	}
	switch value := value.(type) {
	case map[string]any:
		if place.keys == nil {
			return []Fault{{Pointer: pointer, Message: "found a section, needed " + place.expects}}
		}
		return objectFaults(value, pointer, place)
	case []any:
		if place.list {
			return nil // the fault lies in an item and is told there
		}
		return []Fault{{Pointer: pointer, Message: "found a list, needed " + place.expects}}
	default:
		if place.accepts(value) {
			return nil
		}
		return []Fault{{Pointer: pointer, Message: fmt.Sprintf("found %s, needed %s%s", show(value), place.expects, place.hint(value))}}
	}
}

func objectFaults(value map[string]any, pointer string, p place) []Fault {
	var faults []Fault
	for _, key := range slices.Sorted(maps.Keys(value)) {
		if !slices.Contains(p.keys, key) {
			hint := suggest(key, p.keys)
			if hint == "" {
				hint = ": accepted are " + strings.Join(p.keys, ", ")
			}
			faults = append(faults, Fault{Pointer: pointer + "/" + escape(key), AtKey: true,
				Message: fmt.Sprintf("unknown key %q%s", key, hint)})
		}
	}
	for _, key := range p.required {
		if _, has := value[key]; !has {
			faults = append(faults, Fault{Pointer: pointer, Message: fmt.Sprintf("%s is not given: %s needs it", key, p.name)})
		}
	}
	return faults
}

func show(v any) string {
	switch v := v.(type) {
	case nil:
		return "nothing"
	case string:
		return fmt.Sprintf("%q", clip(v))
	default:
		return fmt.Sprint(v)
	}
}

func clip(s string) string {
	const most = 60
	r := []rune(s)
	if len(r) <= most {
		return s
	}
	return string(r[:most]) + "…"
}

// suggest returns a hint at the nearest accepted word, or nothing when none is near.
func suggest(word string, accepted []string) string {
	if near := Nearest(word, accepted); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ""
}

// Nearest returns the accepted word closest to word, or "" when none is close
// enough to be a slip of the pen.
func Nearest(word string, accepted []string) string {
	best, found := len([]rune(word))/3+2, ""
	for _, candidate := range accepted {
		if d := levenshtein.ComputeDistance(strings.ToLower(word), candidate); d < best {
			best, found = d, candidate
		}
	}
	return found
}
