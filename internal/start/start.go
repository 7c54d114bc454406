// Package start writes a first manifest from the manifest's own schema, and
// says what to find out first.
package start

import (
	"bytes"
	"encoding/json"
	"fmt"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/schema"
)

// columns is where comments wrap.
const columns = 88

// Manifest returns a first manifest: the name, and every section of the form
// as comments that show what is written where. It loads as it stands.
func Manifest(shape *schema.Shape, name string) ([]byte, error) {
	var b bytes.Buffer
	wrapped(&b, "# ", "A build manifest for trialfit. Take the # away in front of what you know and put your own value in place of the example. What stays a comment is not known yet; none means that there is none. Quantities carry a unit; a value may be a range, or say how it is known: {value: \"312 kg\", basis: measured, evidence: [weigh-1]}.")
	named, err := yaml.Marshal(map[string]any{"name": name})
	if err != nil {
		return nil, fmt.Errorf("writing the name: %w", err)
	}
	fmt.Fprintf(&b, "trialfit: 1\n\nbuild:\n  %s", named)
	for _, section := range shape.Fields {
		switch section.Name {
		case "trialfit":
		case "build":
			for _, f := range section.Fields {
				if f.Name != "name" {
					field(&b, f, "  # ")
				}
			}
		default:
			b.WriteByte('\n')
			field(&b, section, "# ")
		}
	}
	return b.Bytes(), nil
}

// Lacking returns the sections of the form that a manifest does not have yet,
// as comments to append to it; nothing when it has them all.
func Lacking(shape *schema.Shape, manifest []byte) ([]byte, error) {
	var present map[string]any
	if err := yaml.Unmarshal(manifest, &present); err != nil {
		return nil, fmt.Errorf("reading the manifest: %w", err)
	}
	var b bytes.Buffer
	for _, section := range shape.Fields {
		if _, has := present[section.Name]; !has {
			b.WriteByte('\n')
			field(&b, section, "# ")
		}
	}
	return b.Bytes(), nil
}

// modeline is how YAML editors learn which schema a file follows:
// https://github.com/redhat-developer/yaml-language-server, "Using inlined schema".
const modeline = "# yaml-language-server: $schema="

// Modeline returns a manifest whose first line names its schema, in place of
// the one that it may have there.
func Modeline(manifest []byte, schema string) []byte {
	if bytes.HasPrefix(manifest, []byte(modeline)) {
		_, manifest, _ = bytes.Cut(manifest, []byte("\n"))
	}
	return append([]byte(modeline+schema+"\n"), manifest...)
}

// field writes one place of the form and all below it, each line behind the
// lead that makes it a comment.
func field(b *bytes.Buffer, s *schema.Shape, lead string) {
	switch s.Type {
	case schema.Object:
		wrapped(b, lead+"# ", s.Description)
		fmt.Fprintf(b, "%s%s:\n", lead, s.Name)
		for _, f := range s.Fields {
			field(b, f, lead+"  ")
		}
	case schema.List:
		wrapped(b, lead+"# ", s.Description)
		fmt.Fprintf(b, "%s%s:\n", lead, s.Name)
		for i, f := range s.Fields {
			inner := lead + "    "
			if i == 0 {
				fmt.Fprintf(b, "%s  - %s: %s\n", lead, f.Name, example(f))
				continue
			}
			field(b, f, inner)
		}
	default:
		value := example(s)
		line := fmt.Sprintf("%s%s: %s", lead, s.Name, value)
		if comment := "  # " + s.Description; len([]rune(line+comment)) <= columns {
			b.WriteString(line + comment + "\n")
			return
		}
		wrapped(b, lead+"# ", s.Description)
		b.WriteString(line + "\n")
	}
}

// example is the first example of a place, as it is written in YAML.
func example(s *schema.Shape) string {
	if len(s.Examples) == 0 {
		return ""
	}
	if n, ok := s.Examples[0].(json.Number); ok {
		return n.String()
	}
	out, err := yaml.Marshal(s.Examples[0])
	if err != nil {
		panic(fmt.Sprintf("start: example of %s: %v", s.Name, err)) // the schema's own example
	}
	text := strings.TrimRight(string(out), "\n")
	if s.Leaf == schema.LeafRefs {
		return "[" + strings.TrimPrefix(strings.ReplaceAll(text, "\n- ", ", "), "- ") + "]"
	}
	return text
}

func wrapped(b *bytes.Buffer, lead, text string) {
	used := 0
	for word := range strings.FieldsSeq(text) {
		if used > 0 && used+1+len([]rune(word)) > columns {
			b.WriteByte('\n')
			used = 0
		}
		if used == 0 {
			b.WriteString(lead)
			used = len([]rune(lead))
		} else {
			b.WriteByte(' ')
			used++
		}
		b.WriteString(word)
		used += len([]rune(word))
	}
	b.WriteByte('\n')
}
