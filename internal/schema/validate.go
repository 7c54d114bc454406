package schema

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"trialfit/schemas"
)

// Fault is one place where a document has not the form it should have.
type Fault struct {
	// Pointer is the JSON pointer of the place.
	Pointer string
	// AtKey says that the fault is in the key, not in the value.
	AtKey bool
	// Lacks is the required key that is not given, where that is the fault.
	Lacks   string
	Message string
}

// Validator checks documents against a JSON Schema and its shape.
type Validator struct {
	compiled *jsonschema.Schema
	shape    *Shape
	noun     string // what messages call the document
}

// NewValidator compiles the manifest schema, extended by the given properties
// (the raw schemas of local packs, by key) and by their kinds of evidence.
func NewValidator(extensions map[string][]byte, evidenceKinds ...string) (*Validator, error) {
	data, err := schemas.FS.ReadFile(manifestFile)
	if err != nil {
		return nil, fmt.Errorf("reading the manifest schema: %w", err)
	}
	shape := Manifest()
	if len(extensions)+len(evidenceKinds) > 0 {
		data, shape, err = extend(data, shape, extensions, evidenceKinds)
		if err != nil {
			return nil, err
		}
	}
	compiled, err := compile(manifestFile, data)
	if err != nil {
		return nil, err
	}
	return &Validator{compiled: compiled, shape: shape, noun: "a manifest"}, nil
}

// ShortlistValidator compiles the schema of shortlists, once.
var ShortlistValidator = sync.OnceValues(shortlistValidator)

func shortlistValidator() (*Validator, error) {
	var files [2][]byte
	for i, name := range []string{shortlistFile, manifestFile} {
		data, err := schemas.FS.ReadFile(name)
		if err != nil {
			return nil, fmt.Errorf("reading the schema of shortlists: %w", err)
		}
		files[i] = data
	}
	compiled, err := compile(shortlistFile, files[0], resource{manifestFile, files[1]})
	if err != nil {
		return nil, err
	}
	return &Validator{compiled: compiled, shape: Shortlist(), noun: "a shortlist"}, nil
}

// resource is a schema that another one refers to.
type resource struct {
	name string
	data []byte
}

// Noun is what messages call a document of this form: "a manifest".
func (v *Validator) Noun() string { return v.noun }

// Shape returns the shape the validator checks.
func (v *Validator) Shape() *Shape { return v.shape }

func compile(name string, data []byte, beside ...resource) (*jsonschema.Schema, error) {
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	c.AssertFormat = true
	c.LoadURL = func(url string) (io.ReadCloser, error) {
		return nil, fmt.Errorf("%s is not part of this schema; nothing is fetched", url)
	}
	for _, r := range append(beside, resource{name, data}) {
		if err := c.AddResource(r.name, bytes.NewReader(r.data)); err != nil {
			return nil, fmt.Errorf("reading schema %s: %w", r.name, err)
		}
	}
	compiled, err := c.Compile(name)
	if err != nil {
		return nil, fmt.Errorf("compiling schema %s: %w", name, err)
	}
	return compiled, nil
}

// Validate returns the faults of a decoded document, sorted by pointer: none
// exactly when it is valid. The document holds map[string]any, []any, string,
// bool, json.Number and nil.
func (v *Validator) Validate(doc any) []Fault {
	err := v.compiled.Validate(doc)
	if err == nil {
		return nil
	}
	var ve *jsonschema.ValidationError
	if !errors.As(err, &ve) {
		return []Fault{{Message: err.Error()}}
	}
	refusals := map[string]string{}
	collect(ve, refusals)
	var faults []Fault
	deepest := ""
	for _, pointer := range slices.Sorted(maps.Keys(refusals)) {
		if strings.Count(pointer, "/") >= strings.Count(deepest, "/") {
			deepest = pointer
		}
		at, known := v.locate(doc, pointer)
		if !known {
			faults = append(faults, Fault{Pointer: pointer, Message: refusals[pointer]})
			continue
		}
		faults = append(faults, at.explain(pointer, refusals[pointer])...)
	}
	if len(faults) == 0 {
		// Refused by a keyword that the shape knows nothing of.
		faults = append(faults, Fault{Pointer: deepest, Message: refusals[deepest]})
	}
	return faults
}

// collect gathers the places of the innermost errors. Which keyword refused
// them matters only where the shape can't say better what is accepted.
func collect(e *jsonschema.ValidationError, refusals map[string]string) {
	if len(e.Causes) == 0 {
		if _, known := refusals[e.InstanceLocation]; !known { // the short form comes first
			refusals[e.InstanceLocation] = e.Message
		}
		return
	}
	for _, cause := range e.Causes {
		collect(cause, refusals)
	}
}
