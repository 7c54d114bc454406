package input

import (
	"encoding/json"
	"fmt"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/manifest"
	"trialfit/internal/schema"
)

type object = map[string]any

func closed(properties object, required ...string) object {
	o := object{"type": "object", "properties": properties, "additionalProperties": false}
	if len(required) > 0 {
		o["required"] = required
	}
	return o
}

func ref(name string) object { return object{"$ref": "#/$defs/" + name} }

func anyOf(options ...object) object { return object{"anyOf": options} }

// maybe is what a place holds that may be missing or none.
func maybe(kind string) object { return anyOf(ref("missing"), ref("none"), ref(kind)) }

const idPattern = "^[a-z0-9][a-z0-9-]*$"

// byID is a list as rules see it: an object by item id.
func byID(item object) object {
	return object{"type": "object", "patternProperties": object{idPattern: item}, "additionalProperties": false}
}

// Schema generates the JSON Schema of the input document from the manifest's
// shape and the figures.
func Schema(shape *schema.Shape, all []*figures.Figure) ([]byte, error) {
	text := object{"type": "string"}
	number := object{"type": "number"}
	flag := object{"type": "boolean"}
	texts := object{"type": "array", "items": text}
	basis := object{"enum": []string{"exact", "measured", "documented", "claimed", "estimated"}}
	span := object{"low": number, "high": number, "unit": text, "kind": text}
	with := func(extra ...object) object {
		out := object{"text": text, "basis": basis, "evidence": texts}
		for _, e := range extra {
			for k, v := range e {
				out[k] = v
			}
		}
		return out
	}
	threadParts := object{"value": text}
	for _, part := range schema.ThreadParts {
		threadParts[part] = ref("part")
	}
	threadParts["hand_tight"] = maybe("part")
	outside := closed(object{"path": text, "low": number, "high": number, "from": number, "to": number}, "path", "low", "high", "from", "to")
	excesses := object{"type": "array", "items": outside}
	doc := closed(object{
		"build":    shapeSchema(shape),
		"figures":  figureSchema(all),
		"evidence": byID(ref("paper")),
		"regions":  object{"type": "array", "items": closed(object{"code": text, "name": text, "pack": flag}, "code", "name", "pack")},
		"hold":     text,
		"today":    object{"type": "string", "format": "date"},
		"block_on": texts,
	}, "build", "figures", "evidence", "regions", "hold", "today", "block_on")
	doc["$schema"] = "https://json-schema.org/draft/2020-12/schema"
	doc["$id"] = "https://trialfit.example/schemas/input-1.json"
	doc["title"] = "trialfit input document"
	doc["description"] = "What the rules see: the build with every leaf its form allows, figures, evidence, regions, hold point and date. Generated from the manifest schema and the figures."
	doc["$defs"] = object{
		"missing":  closed(object{"missing": text}, "missing"),
		"none":     closed(object{"none": text}, "none"),
		"quantity": closed(with(span), "low", "high", "unit", "kind", "basis", "text"),
		"word":     closed(with(object{"value": text}), "value", "basis", "text"),
		"boolean":  closed(with(object{"value": flag}), "value", "basis", "text"),
		"ids":      closed(with(object{"value": texts}), "value", "basis", "text"),
		"part":     closed(with(span, object{"value": text})),
		"thread":   closed(with(threadParts), "value", "basis", "text"),
		"tyre":     closed(with(object{"value": text, "diameter": maybe("part")}), "value", "basis", "text", "diameter"),
		"vin":      closed(with(object{"value": text, "check_digit": maybe("boolean"), "model_year": maybe("part")}), "value", "basis", "text", "check_digit", "model_year"),
		"shown":    anyOf(ref("quantity"), ref("word")),
		"figure": anyOf(
			closed(object{"subject": text, "low": number, "high": number, "unit": text, "kind": text, "basis": basis, "inputs": texts}, "subject", "low", "high", "unit", "kind", "basis", "inputs"),
			closed(object{"subject": text, "missing": texts, "outside": excesses}, "subject", "missing"),
			closed(object{"subject": text, "none": texts, "outside": excesses}, "subject", "none"),
			closed(object{"subject": text, "outside": excesses}, "subject", "outside"),
		),
		"paper": closed(object{
			"file": object{"enum": []string{"", "intact", "changed", "missing", "unrecorded"}},
			"kind": ref("said"), "date": ref("said"), "by": ref("said"), "issuer": ref("said"), "office": ref("said"), "answers": ref("said"),
			"shows": object{"type": "object", "additionalProperties": closed(object{"text": text, "value": object{"type": []string{"string", "boolean"}}, "low": number, "high": number, "unit": text, "kind": text}, "text")},
		}, "file", "kind", "date", "by", "issuer", "office", "answers", "shows"),
		"said": anyOf(text, ref("missing")),
	}
	out, err := json.MarshalIndent(doc, "", "  ")
	if err != nil {
		return nil, fmt.Errorf("writing the schema of the input document: %w", err)
	}
	return append(out, '\n'), nil
}

func shapeSchema(s *schema.Shape) object {
	switch s.Type {
	case schema.Object:
		return fieldsSchema(s)
	case schema.List:
		return anyOf(ref("missing"), ref("none"), byID(fieldsSchema(s)))
	}
	kind := "word"
	switch s.Leaf {
	case schema.LeafQuantity, schema.LeafInteger:
		kind = "quantity"
	case schema.LeafBoolean:
		kind = "boolean"
	case schema.LeafThread, schema.LeafTyre, schema.LeafVIN:
		kind = s.Leaf
	case schema.LeafRefs:
		kind = "ids"
	case schema.LeafShown:
		kind = "shown"
	}
	return maybe(kind)
}

func fieldsSchema(s *schema.Shape) object {
	properties := object{}
	var required []string
	for _, f := range manifest.Fields(s) {
		properties[f.Name] = shapeSchema(f)
		required = append(required, f.Name)
	}
	return closed(properties, required...)
}

func figureSchema(all []*figures.Figure) object {
	areas := map[string]object{}
	for _, f := range all {
		area, name, _ := strings.Cut(f.ID, ".")
		if areas[area] == nil {
			areas[area] = object{}
		}
		entry := ref("figure")
		if f.Per != "" {
			for range strings.Count(f.Per, "*") + 1 {
				entry = byID(entry)
			}
			entry = anyOf(ref("missing"), entry)
		}
		areas[area][name] = entry
	}
	properties := object{}
	for area, figs := range areas {
		properties[area] = closed(figs)
	}
	return closed(properties)
}
