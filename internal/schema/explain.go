package schema

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"trialfit/internal/quantity"
)

// part says which part of a place of the shape a value stands at.
type part int

const (
	whole     part = iota
	item           // of a list
	longValue      // the parts of the long form of a leaf
	longBasis
	longEvidence
	oneRef // one id of a list of ids
)

// place is a value of a document and where the shape has it.
type place struct {
	value any
	shape *Shape
	part  part
	// key is what messages call the place.
	key string
	// kind is that of a quantity, "" where the sibling that names it does not.
	kind quantity.Kind
	// needed says that it can't be left out.
	needed bool
	root   *Shape
}

// locate walks document and shape together; false where the shape has no such place.
func (v *Validator) locate(doc any, pointer string) (place, bool) {
	at := place{value: doc, shape: v.shape, key: v.noun, root: v.shape}
	for _, step := range steps(pointer) {
		next, ok := at.step(step)
		if !ok {
			return at, false
		}
		at = next
	}
	return at, true
}

func (p place) step(step string) (place, bool) {
	next := place{shape: p.shape, key: step, kind: p.kind, root: p.root}
	var siblings map[string]any
	switch container := p.value.(type) {
	case map[string]any:
		siblings = container
		next.value = container[step]
	case []any:
		i, err := strconv.Atoi(step)
		if err != nil || i >= len(container) {
			return p, false
		}
		next.value, next.key = container[i], p.key
	default:
		return p, false
	}
	switch {
	case p.part == longEvidence || p.shape.Leaf == LeafRefs:
		next.part = oneRef
	case p.shape.Type == Leaf:
		parts := map[string]part{"value": longValue, "basis": longBasis, "evidence": longEvidence}
		next.part = parts[step]
		return next, next.part != whole
	case p.shape.Type == List && p.part == whole:
		next.part = item
	default:
		field := p.shape.Field(step)
		if field == nil {
			return p, false
		}
		next.shape, next.kind, next.needed = field, field.Quantity, slices.Contains(p.shape.Required, step)
		if field.QuantityOf != "" {
			word, _ := siblings[field.QuantityOf].(string)
			next.kind = field.Kinds[word]
		}
	}
	return next, true
}

// explain words what is wrong at a place that was refused; raw is what the
// validator says.
func (p place) explain(pointer, raw string) []Fault {
	switch value := p.value.(type) {
	case map[string]any:
		if keys := p.keys(); keys != nil {
			return p.keyFaults(value, keys, pointer)
		}
		hint := ""
		if p.part == whole && p.shape.Type == List {
			hint = `; each begins with "- id: "`
		}
		return p.fault(pointer, "found a section, needed "+p.expects()+hint)
	case []any:
		if p.isList() {
			return twice(value, pointer)
		}
		return p.fault(pointer, "found a list, needed "+p.expects())
	case nil:
		return []Fault{{Pointer: pointer, AtKey: true, Message: p.nothing()}}
	}
	if message := p.refusal(raw); message != "" {
		return p.fault(pointer, message)
	}
	return p.fault(pointer, fmt.Sprintf("found %s: %s", show(p.value), raw))
}

func (p place) fault(pointer, message string) []Fault {
	return []Fault{{Pointer: pointer, Message: message}}
}

// keys lists the keys of a section at this place, nil if it can be none.
func (p place) keys() []string {
	switch {
	case p.part == item, p.part == whole && p.shape.Type == Object:
		return p.shape.Names()
	case p.part == whole && p.shape.Long:
		return longFields
	}
	return nil
}

func (p place) required() []string {
	if p.shape.Type == Leaf {
		return longFields[:1]
	}
	return p.shape.Required
}

func (p place) isList() bool {
	return p.part == longEvidence || p.part == whole && (p.shape.Type == List || p.shape.Leaf == LeafRefs)
}

// expects says in words what this place takes.
func (p place) expects() string {
	switch {
	case p.part == item:
		return "a section with an id"
	case p.part == longBasis:
		return "one of " + strings.Join(Bases, ", ")
	case p.part == longEvidence:
		return "a list of ids under evidence"
	case p.part == oneRef:
		return "the id of an item under " + p.refList()
	case p.shape.Type == Object:
		return "a section with " + few(p.shape.Names()) + p.shape.orNone()
	case p.shape.Type == List:
		return "a list of items" + p.shape.orNone()
	case p.part == longValue:
		return p.shape.expects()
	default:
		return p.shape.expects() + p.shape.orNone()
	}
}

func (p place) refList() string {
	if p.shape.Leaf == LeafRefs {
		return p.shape.Ref
	}
	return "evidence"
}

// nothing words a value that is left out after its key.
func (p place) nothing() string {
	if p.part == item || p.part == oneRef {
		return "an empty item: leave it out"
	}
	return p.key + " has no value: " + p.leaveOut()
}

func (p place) leaveOut() string {
	switch {
	case p.shape.None && p.part == longValue:
		return "write none alone if there is none, without basis and evidence"
	case p.part == longValue:
		return "leave basis and evidence out too while it is not known"
	case p.needed:
		return "it can't be left out"
	case p.shape.None:
		return "write none if there is none, leave the line out while it is not known"
	}
	return "leave the line out while it is not known"
}

// isNone tells the words by which people and other formats say none.
func isNone(text string) bool {
	return slices.Contains([]string{"none", "null", "nil"}, strings.ToLower(text))
}

// notFailed is what the validator says of the words that $defs/written refuses.
const notFailed = "not failed"

// refusal words why a single word or number can't stand here, "" if the shape
// does not know.
func (p place) refusal(raw string) string {
	text, isText := p.value.(string)
	switch p.part {
	case longBasis:
		return fmt.Sprintf("found %s, needed %s", show(p.value), p.expects()) + suggest(text, Bases)
	case oneRef:
		return p.id()
	case item, longEvidence:
		hint := ""
		if p.part == longEvidence && isID(text) {
			hint = ": write [" + text + "]"
		}
		return fmt.Sprintf("found %s, needed %s", show(p.value), p.expects()) + hint
	}
	switch p.shape.Leaf {
	case LeafID:
		return p.id()
	case LeafText:
		if p.shape.Ref != "" {
			return p.id()
		}
	case LeafVersion:
		return p.version()
	}
	if p.shape.Type != Leaf {
		message := fmt.Sprintf("found %s, needed %s", show(p.value), p.expects())
		if isNone(text) {
			message = fmt.Sprintf("found %s: %s", Quote(text), p.leaveOut())
		}
		return message
	}
	message := p.shape.Refusal(p.value, p.kind)
	if isText && (isNone(text) || message == "" && (raw == notFailed || strings.TrimSpace(text) == "")) {
		// It has the right form and says nothing: it holds a place.
		message = fmt.Sprintf("found %s, needed %s: %s", Quote(text), p.shape.expects(), p.leaveOut())
	}
	return message
}

func (p place) version() string {
	switch value := p.value.(type) {
	case json.Number:
		return fmt.Sprintf("found version %s, needed %s", Clip(value.String()), p.shape.expects())
	case string:
		return fmt.Sprintf("found text %s, needed %s: write it without quotes", Quote(value), p.shape.expects())
	}
	return fmt.Sprintf("found %s, needed %s", show(p.value), p.shape.expects())
}

func (p place) id() string {
	if message := idRefusal(p.value); message != "" {
		return message
	}
	return fmt.Sprintf("id %s has a meaning of its own: choose another", show(p.value))
}

// keyFaults words unknown keys and those that are required and not given.
func (p place) keyFaults(section map[string]any, keys []string, pointer string) []Fault {
	var faults []Fault
	meant := map[string]bool{}
	for _, key := range slices.Sorted(maps.Keys(section)) {
		if slices.Contains(keys, key) {
			continue
		}
		near := Nearest(key, keys)
		homes := p.root.homes("", key)
		hint := ""
		switch {
		case near != "":
			hint = fmt.Sprintf(", did you mean %q?", near)
		case len(homes) == 1:
			hint = ": it belongs under " + homes[0]
		default:
			hint = ": accepted here are " + strings.Join(keys, ", ")
		}
		meant[near] = true
		faults = append(faults, Fault{Pointer: Pointer(pointer, key), AtKey: true, Message: "unknown key " + Quote(key) + hint})
	}
	for _, key := range p.required() {
		if _, has := section[key]; !has && !meant[key] {
			faults = append(faults, Fault{Pointer: pointer, Lacks: key, Message: p.lacks(key, section)})
		}
	}
	return faults
}

func (p place) lacks(key string, section map[string]any) string {
	id, _ := section["id"].(string)
	switch {
	case p.part == item && id != "" && isID(id):
		return fmt.Sprintf("%s is not given: %s under %s needs it", key, Quote(id), p.key)
	case p.part == item:
		return fmt.Sprintf("%s is not given: every item of %s needs it", key, p.key)
	default:
		return fmt.Sprintf("%s is not given: %s needs it", key, p.key)
	}
}

// homes lists the sections that have a field called key: a line indented too
// little or too much lands elsewhere.
func (s *Shape) homes(path, key string) []string {
	var found []string
	for _, f := range s.Fields {
		if f.Name == key && path != "" {
			found = append(found, path)
		}
		found = append(found, f.homes(strings.TrimPrefix(path+"."+f.Name, "."), key)...)
	}
	return found
}

// twice finds what stands twice in a list of ids.
func twice(list []any, pointer string) []Fault {
	var faults []Fault
	seen := map[string]bool{}
	for i, entry := range list {
		id, ok := entry.(string)
		if !ok {
			continue
		}
		if seen[id] {
			faults = append(faults, Fault{Pointer: PointerAt(pointer, i), Message: Quote(id) + " stands twice in this list: once is enough"})
		}
		seen[id] = true
	}
	return faults
}
