package manifest

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"gopkg.in/yaml.v3"
)

// MaxBytes is the largest manifest that is read. A large real build takes
// well under a tenth of it.
const MaxBytes = 4 << 20

// document is a parsed YAML file: its plain value for the schema, and the
// nodes by JSON pointer for positions.
type document struct {
	value any
	nodes map[string]yamlNode
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
// differently by a person and by a parser.
func parse(data []byte) (*document, Problems) {
	data, problems := readable(data)
	if problems != nil {
		return nil, problems
	}
	dec := yaml.NewDecoder(bytes.NewReader(data))
	var root yaml.Node
	err := dec.Decode(&root)
	if errors.Is(err, io.EOF) || err == nil && len(root.Content) == 0 {
		return nil, one(Position{}, "is empty: a manifest starts with \"trialfit: 1\"")
	}
	if err != nil {
		return nil, one(syntaxError(err, data))
	}
	var second yaml.Node
	switch err := dec.Decode(&second); {
	case err == nil:
		line := second.Line
		if len(second.Content) > 0 {
			line = second.Content[0].Line
		}
		return nil, one(Position{line, 1}, "a second document begins here: one file holds one manifest")
	case !errors.Is(err, io.EOF):
		return nil, one(syntaxError(err, data))
	}
	r := &yamlReader{doc: &document{nodes: map[string]yamlNode{}}}
	top := root.Content[0]
	if isEmpty(top) {
		return nil, one(Position{}, "is empty: a manifest starts with \"trialfit: 1\"")
	}
	r.doc.value = r.read("", yamlNode{value: top})
	if len(r.problems) > 0 {
		return nil, r.problems
	}
	return r.doc, nil
}

func one(at Position, message string) Problems {
	return Problems{{Position: at, Message: message}}
}

func isEmpty(n *yaml.Node) bool { return n.Kind == yaml.ScalarNode && n.ShortTag() == "!!null" }

var bom = []byte{0xEF, 0xBB, 0xBF}

// readable refuses what is not UTF-8 text of a sensible size.
func readable(data []byte) ([]byte, Problems) {
	if len(data) > MaxBytes {
		return nil, one(Position{}, fmt.Sprintf("holds more than %d MB, the most a manifest may have", MaxBytes>>20))
	}
	if bytes.HasPrefix(data, []byte{0xFF, 0xFE}) || bytes.HasPrefix(data, []byte{0xFE, 0xFF}) {
		return nil, one(Position{1, 1}, "is UTF-16: save it as UTF-8")
	}
	// A byte-order mark says nothing in UTF-8; editors on some systems add it.
	data = bytes.TrimPrefix(data, bom)
	line, start := 1, 0
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		at := Position{line, utf8.RuneCount(data[start:i]) + 1}
		switch {
		case r == utf8.RuneError && size == 1:
			return nil, one(at, fmt.Sprintf("byte 0x%02X is not UTF-8 text: save the file as UTF-8", data[i]))
		case r == 0 || r < ' ' && r != '\n' && r != '\r' && r != '\t' || r == 0x7F:
			return nil, one(at, fmt.Sprintf("control character 0x%02X: this is not a text file", r))
		case r == '\n':
			line, start = line+1, i+1
		case r == '\t' && len(bytes.TrimLeft(data[start:i+1], " \t")) == 0:
			return nil, one(at, "a tab indents this line: indent with spaces")
		}
		i += size
	}
	return data, nil
}

var yamlLine = regexp.MustCompile(`^yaml: (?:line (\d+): )?(.*)$`)

// syntaxError words an error of the YAML parser as one line.
func syntaxError(err error, data []byte) (Position, string) {
	text := strings.ReplaceAll(err.Error(), "\n", " ")
	at := Position{1, 1}
	if m := yamlLine.FindStringSubmatch(text); m != nil {
		text = m[2]
		if n, err := strconv.Atoi(m[1]); err == nil {
			at.Line = n
		}
	}
	lines := bytes.Split(data, []byte("\n"))
	if at.Line <= len(lines) {
		row := lines[at.Line-1]
		at.Column = len(row) - len(bytes.TrimLeft(row, " ")) + 1
	}
	return at, "is not YAML: " + text
}

type yamlReader struct {
	doc      *document
	problems Problems
}

func (r *yamlReader) refuse(at *yaml.Node, format string, args ...any) {
	r.problems = append(r.problems, Problem{Position: Position{at.Line, at.Column}, Message: fmt.Sprintf(format, args...)})
}

func (r *yamlReader) read(pointer string, n yamlNode) any {
	r.doc.nodes[pointer] = n
	node := n.value
	if node.Anchor != "" {
		r.refuse(node, "anchor &%s: write the value out where it is needed, so that every line says what it means", node.Anchor)
	}
	switch node.Kind {
	case yaml.AliasNode:
		r.refuse(node, "alias *%s: write the value out here", node.Value)
		return nil
	case yaml.MappingNode:
		return r.mapping(pointer, node)
	case yaml.SequenceNode:
		list := make([]any, len(node.Content))
		for i, item := range node.Content {
			list[i] = r.read(pointer+"/"+strconv.Itoa(i), yamlNode{value: item})
		}
		return list
	default:
		return r.scalar(n)
	}
}

func (r *yamlReader) mapping(pointer string, node *yaml.Node) any {
	out := make(map[string]any, len(node.Content)/2)
	first := map[string]int{}
	for i := 0; i+1 < len(node.Content); i += 2 {
		key, value := node.Content[i], node.Content[i+1]
		switch {
		case key.ShortTag() == "!!merge":
			r.refuse(key, "merge key <<: write the values out here")
			continue
		case key.Kind != yaml.ScalarNode:
			r.refuse(key, "a key is a word, not a list or a section")
			continue
		case key.ShortTag() != "!!str":
			r.refuse(key, "the key %s reads as a %s: keys are words", key.Value, tagName(key))
			continue
		}
		if line, seen := first[key.Value]; seen {
			r.refuse(key, "key %q stands twice; the first is on line %d", key.Value, line)
			continue
		}
		first[key.Value] = key.Line
		out[key.Value] = r.read(pointer+"/"+escape(key.Value), yamlNode{key: key, value: value})
	}
	return out
}

var plainNumber = regexp.MustCompile(`^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`)

func (r *yamlReader) scalar(n yamlNode) any {
	node := n.value
	switch tag := node.ShortTag(); tag {
	case "!!str", "!!timestamp": // an unquoted date is text like any other
		return node.Value
	case "!!bool":
		return node.Value == "true" || node.Value == "True" || node.Value == "TRUE"
	case "!!int", "!!float":
		if !plainNumber.MatchString(node.Value) {
			r.refuse(node, "%s is a number that readers take differently: write it in plain decimals, or in quotes if it is text", node.Value)
			return nil
		}
		return json.Number(node.Value)
	case "!!null":
		at := node
		if n.key != nil {
			r.refuse(n.key, "%s has no value: leave the line out if it is not known, write none if there is none", n.key.Value)
			return nil
		}
		r.refuse(at, "an empty item: leave it out")
		return nil
	default:
		r.refuse(node, "the tag %s is not used in a manifest", tag)
		return nil
	}
}

func tagName(n *yaml.Node) string {
	switch n.ShortTag() {
	case "!!int", "!!float":
		return "number"
	case "!!bool":
		return "yes-or-no value"
	case "!!timestamp":
		return "date"
	default:
		return strings.TrimPrefix(n.ShortTag(), "!!")
	}
}

func escape(key string) string {
	return strings.NewReplacer("~", "~0", "/", "~1").Replace(key)
}
