package schema

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"time"

	"trialfit/internal/quantity"
)

type readCloser = io.ReadCloser

// place is what a document may hold at one pointer, for messages.
type place struct {
	name     string // how to call the thing: "a waiver", "engine"
	expects  string // "a mass such as "312 kg""
	keys     []string
	required []string
	list     bool
	words    []string
	check    func(any) bool
}

func (p place) accepts(v any) bool { return p.check != nil && p.check(v) }

func (p place) hint(v any) string {
	if s, ok := v.(string); ok && len(p.words) > 0 {
		return suggest(s, p.words)
	}
	return ""
}

// resolve walks document and shape together.
func (v *Validator) resolve(doc any, pointer string) (any, place, error) {
	at, value := v.shape, doc
	p := v.place(at, "the manifest")
	if pointer == "" {
		return value, p, nil
	}
	inItem := false
	for _, raw := range strings.Split(pointer, "/")[1:] {
		step := unescape(raw)
		switch container := value.(type) {
		case map[string]any:
			value = container[step]
		case []any:
			i, err := strconv.Atoi(step)
			if err != nil || i >= len(container) {
				return nil, place{}, fmt.Errorf("no item %q", step)
			}
			value = container[i]
		}
		switch {
		case at.Type == Leaf && at.Leaf == LeafRefs, at.Type == Leaf && step != "value" && step != "basis" && step != "evidence" && !slices.Contains(longFields, step):
			p = idPlace(at)
		case at.Type == Leaf:
			p = longPlace(at, step)
		case at.Type == List && !inItem:
			inItem = true
			p = place{name: "an item of " + at.Name, expects: "a section with an id", keys: at.Names(), required: at.Required}
		default:
			next := at.Field(step)
			if next == nil {
				return nil, place{}, fmt.Errorf("unknown key %q%s", step, suggest(step, at.Names()))
			}
			at, inItem = next, false
			p = v.place(at, at.Name)
		}
	}
	return value, p, nil
}

func idPlace(s *Shape) place {
	return place{name: "an id", expects: "the id of an item under " + s.Ref}
}

func longPlace(s *Shape, field string) place {
	switch field {
	case "basis":
		return place{name: "basis", expects: "one of " + strings.Join(Bases, ", "), words: Bases}
	case "evidence":
		return place{name: "evidence", expects: "a list of ids under evidence", list: true}
	default:
		return leafPlace(s)
	}
}

func (v *Validator) place(s *Shape, name string) place {
	p := place{name: name}
	switch s.Type {
	case Object:
		p.expects, p.keys, p.required = "a section with "+few(s.Names()), s.Names(), s.Required
	case List:
		p.expects, p.list = "a list of items, each with an id", true
	default:
		p = leafPlace(s)
		p.name = name
		if s.Leaf != LeafRefs && s.Leaf != LeafID && s.Leaf != LeafVersion && s.Leaf != LeafShown && s.QuantityOf == "" && (len(s.Words) == 0 || s.Kinds == nil) {
			p.keys, p.required = longFields, []string{"value"}
		}
	}
	if s.None {
		p.expects += ", or none"
		p.words = append(slices.Clip(p.words), "none")
		inner := p.check
		p.check = func(v any) bool { return v == "none" || inner != nil && inner(v) }
	}
	return p
}

func leafPlace(s *Shape) place {
	text := func(v any) bool { t, ok := v.(string); return ok && t != "" }
	switch s.Leaf {
	case LeafQuantity:
		if s.QuantityOf != "" {
			return place{expects: "a value with a unit", check: text}
		}
		p := place{expects: fmt.Sprintf("a %s with a unit (%s)", s.Quantity, few(quantity.Symbols(s.Quantity))), check: text}
		if s.Quantity == quantity.Ratio {
			p.expects = "a ratio such as 4.10 or 62 %"
			p.check = func(v any) bool { _, number := v.(json.Number); return number || text(v) }
		}
		return p
	case LeafWord:
		return place{expects: "one of " + strings.Join(s.Words, ", "), words: s.Words,
			check: func(v any) bool { t, ok := v.(string); return ok && slices.Contains(s.Words, t) }}
	case LeafInteger:
		return place{expects: "a whole number", check: func(v any) bool {
			n, ok := v.(json.Number)
			if !ok {
				return false
			}
			_, err := n.Int64()
			return err == nil
		}}
	case LeafBoolean:
		return place{expects: "true or false", check: func(v any) bool { _, ok := v.(bool); return ok }}
	case LeafDate:
		return place{expects: "a date such as 2026-05-14", check: func(v any) bool {
			t, _ := v.(string)
			_, err := time.Parse(time.DateOnly, t)
			return err == nil
		}}
	case LeafThread:
		return place{expects: `a thread such as "1/2 NPT internal"`, check: text}
	case LeafID:
		return place{expects: "an id of letters a to z, digits and hyphens", check: func(v any) bool {
			t, ok := v.(string)
			return ok && isID(t)
		}}
	case LeafVersion:
		return place{expects: "the number 1"}
	case LeafRefs:
		return place{expects: "a list of ids under " + s.Ref, list: true}
	case LeafShown:
		return place{expects: "the value that the paper shows", check: func(v any) bool { return v != nil }}
	default:
		return place{expects: "text in quotes", check: text}
	}
}

func isID(s string) bool {
	for i, r := range s {
		if !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '-' && i > 0) {
			return false
		}
	}
	return s != ""
}

func few(names []string) string {
	const most = 8
	if len(names) <= most {
		return strings.Join(names, ", ")
	}
	return strings.Join(names[:most], ", ") + ", …"
}

func escape(key string) string {
	return strings.NewReplacer("~", "~0", "/", "~1").Replace(key)
}

func unescape(key string) string {
	return strings.NewReplacer("~1", "/", "~0", "~").Replace(key)
}
