package rulebook

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/schema"
)

// placed is a fault at a place of a pack's file; column 0 is not known.
type placed struct {
	line, column int
	text         string
}

func (p *placed) Error() string {
	if p.column == 0 {
		return fmt.Sprintf("%d: %s", p.line, p.text)
	}
	return fmt.Sprintf("%d:%d: %s", p.line, p.column, p.text)
}

func at(n *yaml.Node, format string, args ...any) error {
	return &placed{n.Line, n.Column, fmt.Sprintf(format, args...)}
}

// within names the file that a fault is in.
func within(file string, err error) error {
	var p *placed
	if errors.As(err, &p) {
		return fmt.Errorf("%s:%w", file, p)
	}
	return fmt.Errorf("%s: %w", file, err)
}

// strictYAML reads exactly one YAML document whose keys are those of into.
func strictYAML(data []byte, into any) error {
	var doc yaml.Node
	dec := yaml.NewDecoder(bytes.NewReader(data))
	switch err := dec.Decode(&doc); {
	case errors.Is(err, io.EOF):
		return errors.New("is empty")
	case err != nil:
		return yamlFault(err)
	}
	if err := dec.Decode(new(yaml.Node)); !errors.Is(err, io.EOF) {
		return errors.New("holds more than one YAML document")
	}
	return decodeNode(doc.Content[0], into)
}

func decodeNode(n *yaml.Node, into any) error {
	if err := checkForm(n, reflect.TypeOf(into).Elem()); err != nil {
		return err
	}
	return yamlFault(n.Decode(into))
}

var yamlLine = regexp.MustCompile(`line (\d+): ([^\n]*)`)

func yamlFault(err error) error {
	if err == nil {
		return nil
	}
	if m := yamlLine.FindStringSubmatch(err.Error()); m != nil {
		line, _ := strconv.Atoi(m[1]) // the pattern has seen to the digits
		return &placed{line: line, text: m[2]}
	}
	return errors.New(strings.TrimPrefix(oneLine(err), "yaml: "))
}

// checkForm compares a document with the type it is read into, because the
// YAML library names Go types and no columns.
func checkForm(n *yaml.Node, t reflect.Type) error {
	if n.Kind == yaml.AliasNode {
		n = n.Alias
	}
	switch {
	case t == reflect.TypeFor[yaml.Node]() || t.Kind() == reflect.Interface:
		return nil
	case t.Kind() == reflect.Struct || t.Kind() == reflect.Map:
		return checkKeys(n, t)
	case t.Kind() == reflect.Slice:
		if n.Kind != yaml.SequenceNode {
			return at(n, "found %s, needed a list", form(n))
		}
		for _, item := range n.Content {
			if err := checkForm(item, t.Elem()); err != nil {
				return err
			}
		}
	case n.Kind != yaml.ScalarNode:
		return at(n, "found %s, needed text", form(n))
	}
	return nil
}

func checkKeys(n *yaml.Node, t reflect.Type) error {
	known := map[string]reflect.Type{}
	var names []string
	if t.Kind() == reflect.Struct {
		for _, f := range reflect.VisibleFields(t) {
			if name := f.Tag.Get("yaml"); name != "" && name != "-" {
				known[name] = f.Type
				names = append(names, name)
			}
		}
	}
	if n.Kind != yaml.MappingNode {
		needed := "names with values"
		if len(names) > 0 {
			needed = "keys such as " + names[0]
		}
		return at(n, "found %s, needed %s", form(n), needed)
	}
	var seen []string
	for i := 0; i < len(n.Content); i += 2 {
		key, value := n.Content[i], n.Content[i+1]
		if slices.Contains(seen, key.Value) {
			return at(key, "key %q stands twice", key.Value)
		}
		seen = append(seen, key.Value)
		inner, ok := known[key.Value]
		if t.Kind() == reflect.Map {
			inner, ok = t.Elem(), true
		}
		if !ok {
			return at(key, "unknown key %q%s", key.Value, nearest(key.Value, names))
		}
		if err := checkForm(value, inner); err != nil {
			return err
		}
	}
	return nil
}

func form(n *yaml.Node) string {
	switch {
	case n.Kind == yaml.MappingNode:
		return "a section"
	case n.Kind == yaml.SequenceNode:
		return "a list"
	case n.Tag == "!!null":
		return "nothing"
	default:
		return strconv.Quote(n.Value)
	}
}

// nearest offers the accepted name that is closest, or all when none is close.
func nearest(name string, accepted []string) string {
	if near := schema.Nearest(name, accepted); near != "" {
		return fmt.Sprintf(", did you mean %q?", near)
	}
	return ": accepted are " + strings.Join(accepted, ", ")
}
