package manifest

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"math/big"
	"regexp"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/schema"
)

// document is a parsed YAML file: its plain value for the schema, and the
// nodes by JSON pointer for positions.
type document struct {
	value any
	nodes map[string]yamlNode
	// told marks the places whose fault is reported already; their value is nil.
	told map[string]bool
	// partial marks the sections of which a key could not be read.
	partial map[string]bool
}

// yamlNode is one value and, inside a mapping, the key it stands under.
type yamlNode struct{ key, value *yaml.Node }

func (n yamlNode) keyPosition() Position {
	if n.key != nil {
		return Position{n.key.Line, n.key.Column}
	}
	return n.position()
}

func (n yamlNode) position() Position { return Position{n.value.Line, n.value.Column} }

// parse reads exactly one YAML document and refuses what would be read
// differently by a person and by a parser. Without a document the problems
// say why; with one, they are those of single places. empty is what is said of
// a file with nothing in it.
func parse(data []byte, empty string) (*document, Problems) {
	data, problem := readable(data)
	if problem != nil {
		return nil, Problems{*problem}
	}
	dec := yaml.NewDecoder(bytes.NewReader(data))
	var root, second yaml.Node
	err := dec.Decode(&root)
	switch {
	case errors.Is(err, io.EOF) || err == nil && (len(root.Content) == 0 || isEmpty(root.Content[0])):
		return nil, Problems{{Message: empty}}
	case err != nil:
		return nil, Problems{syntaxProblem(err, data)}
	}
	doc, problems := readNodes(root.Content[0])
	switch err := dec.Decode(&second); {
	case err == nil:
		problems = append(problems, Problem{Position: Position{second.Line, second.Column}, Message: "a second document begins here: one file holds one manifest"})
	case !errors.Is(err, io.EOF):
		problems = append(problems, syntaxProblem(err, data))
	}
	return doc, problems
}

func readNodes(root *yaml.Node) (*document, Problems) {
	r := &yamlReader{doc: &document{nodes: map[string]yamlNode{}, told: map[string]bool{}, partial: map[string]bool{}}}
	r.doc.value = r.read("", yamlNode{value: root}, 0)
	return r.doc, r.problems
}

func isEmpty(n *yaml.Node) bool { return n.Kind == yaml.ScalarNode && n.ShortTag() == "!!null" }

// deepest is how deep a manifest may be nested; the form needs less than half.
const deepest = 24

type yamlReader struct {
	doc      *document
	problems Problems
}

func (r *yamlReader) refuse(at *yaml.Node, format string, args ...any) {
	r.problems = append(r.problems, Problem{Position: Position{at.Line, at.Column}, Message: fmt.Sprintf(format, args...)})
}

// tell refuses the value at pointer.
func (r *yamlReader) tell(pointer string, at *yaml.Node, format string, args ...any) any {
	r.refuse(at, format, args...)
	r.doc.told[pointer] = true
	return nil
}

func (r *yamlReader) read(pointer string, n yamlNode, depth int) any {
	r.doc.nodes[pointer] = n
	node := n.value
	if node.Anchor != "" {
		r.refuse(node, "anchor &%s: write the value out where it is needed, so that every line says what it means", schema.Clip(node.Anchor))
	}
	switch {
	case node.Kind == yaml.AliasNode:
		return r.tell(pointer, node, "alias *%s: write the value out here", schema.Clip(node.Value))
	case node.Style&yaml.TaggedStyle != 0:
		return r.tell(pointer, node, "tag %s: write the value without a tag", schema.Clip(node.Tag))
	case depth > deepest:
		return r.tell(pointer, node, "is nested more than %d deep, deeper than any manifest", deepest)
	case node.Kind == yaml.MappingNode:
		return r.mapping(pointer, node, depth)
	case node.Kind == yaml.SequenceNode:
		list := make([]any, len(node.Content))
		for i, item := range node.Content {
			list[i] = r.read(schema.PointerAt(pointer, i), yamlNode{value: item}, depth+1)
		}
		return list
	default:
		return r.scalar(pointer, node)
	}
}

func (r *yamlReader) mapping(pointer string, node *yaml.Node, depth int) any {
	out := make(map[string]any, len(node.Content)/2)
	first := map[string]int{}
	for i := 0; i+1 < len(node.Content); i += 2 {
		key, value := node.Content[i], node.Content[i+1]
		if message := unfitKey(key); message != "" {
			r.refuse(key, "%s", message)
			r.doc.partial[pointer] = true
			continue
		}
		if line, seen := first[key.Value]; seen {
			r.refuse(key, "key %s stands twice; the first is on line %d", schema.Quote(key.Value), line)
			continue
		}
		first[key.Value] = key.Line
		out[key.Value] = r.read(schema.Pointer(pointer, key.Value), yamlNode{key: key, value: value}, depth+1)
	}
	return out
}

// unfitKey says why a node can't be a key, "" if it can.
func unfitKey(key *yaml.Node) string {
	switch {
	case key.Anchor != "":
		return "anchor &" + schema.Clip(key.Anchor) + ": keys have none"
	case key.Kind == yaml.AliasNode:
		return "alias *" + schema.Clip(key.Value) + ": write the key out here"
	case key.Kind != yaml.ScalarNode:
		return "a key is a word, not a list or a section"
	case key.Style&yaml.TaggedStyle != 0:
		return "tag " + schema.Clip(key.Tag) + ": write the key without a tag"
	}
	switch key.ShortTag() {
	case "!!str":
		return ""
	case "!!merge":
		return "merge key <<: write the values out here"
	case "!!null":
		return "a value without a key: keys are words"
	case "!!int", "!!float":
		return "the key " + schema.Clip(key.Value) + " reads as a number: keys are words"
	case "!!bool":
		return "the key " + key.Value + " reads as true or false: keys are words"
	default:
		return "the key " + schema.Clip(key.Value) + " reads as a date: keys are words"
	}
}

func (r *yamlReader) scalar(pointer string, node *yaml.Node) any {
	switch node.ShortTag() {
	case "!!bool":
		return strings.EqualFold(node.Value, "true")
	case "!!int", "!!float":
		if message := unfitNumber(node.Value); message != "" {
			return r.tell(pointer, node, "%s", message)
		}
		return json.Number(node.Value)
	case "!!null":
		return nil
	default: // an unquoted date is text like any other
		for _, c := range node.Value {
			if c != '\n' && c != '\t' && unseen(c) {
				return r.tell(pointer, node, "text holds the unseen character U+%04X: delete it", c)
			}
		}
		return node.Value
	}
}

const mostDigits = 30

var (
	plainNumber  = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)
	pointNumber  = regexp.MustCompile(`^[+-]?[0-9]*\.?[0-9]*$`)
	basedInteger = regexp.MustCompile(`^[+-]?(0[xob])?[0-9a-fA-F_]+$`)
)

// unfitNumber says why a number is not taken as it is written, "" if it is.
func unfitNumber(text string) string {
	switch {
	case len(text) > mostDigits:
		return fmt.Sprintf("number %s has %d characters: %d are enough for any measurement", schema.Clip(text), len(text), mostDigits)
	case plainNumber.MatchString(text):
		return ""
	case strings.HasSuffix(strings.ToLower(text), ".inf"), strings.EqualFold(text, ".nan"):
		return text + " is no number of anything: leave the line out while it is not known"
	}
	offer := ""
	if n, ok := new(big.Int).SetString(text, 0); ok && basedInteger.MatchString(text) && len(strings.TrimLeft(text, "+-0")) < mostDigits {
		offer = n.String()
	} else if pointNumber.MatchString(text) {
		if x, ok := new(big.Rat).SetString(text); ok {
			offer = strings.TrimSuffix(strings.TrimRight(x.FloatString(mostDigits), "0"), ".")
		}
	}
	// A leading zero counts in eights for some readers, and not for others.
	if digits := strings.TrimLeft(text, "+-"); len(digits) > 1 && digits[0] == '0' && digits[1] >= '0' && digits[1] <= '9' {
		offer = ""
	}
	if offer != "" {
		offer = " (" + offer + "?)"
	}
	return fmt.Sprintf("%s is a number that readers take differently: write it in plain decimals%s, or in quotes if it is text", text, offer)
}
