package rulebook

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// source is one Rego file of the book.
type source struct {
	name   string // path inside the bundle
	inside string // path inside its pack
	data   []byte
	region string // folder of the region it belongs to, "" for all
}

// shown is the file as messages call it: from the root of its pack, or of the
// repository for a shipped one.
func (s source) shown() string {
	if strings.HasPrefix(s.name, "local/") {
		return s.inside
	}
	return s.name
}

// packFiles are the files that mean something in a pack, beside Rego.
var packFiles = []string{"pack.yaml", "limits.yaml", "manifest.json", "region.yaml", "cases.yaml"}

// collect walks a pack and takes in its Rego files, limits and regions.
func (b *Book) collect(fsys fs.FS, pack Pack) error {
	return fs.WalkDir(fsys, ".", func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && name != "." && strings.HasPrefix(d.Name(), "."):
			return fs.SkipDir
		case d.IsDir():
			return nil
		case d.Type()&fs.ModeSymlink != 0:
			return fmt.Errorf("%s is a symbolic link: a pack holds its own files", name)
		case !d.Type().IsRegular():
			return fmt.Errorf("%s is not a regular file", name)
		}
		return b.take(fsys, pack, name)
	})
}

func (b *Book) take(fsys fs.FS, pack Pack, name string) error {
	base := path.Base(name)
	var read func(data []byte) error
	switch {
	case strings.HasSuffix(name, "_test.rego"):
		return nil
	case strings.HasSuffix(name, ".rego"):
		read = func(data []byte) error { b.addSource(pack, name, data); return nil }
	case pack.local() && !accepted(name):
		return fmt.Errorf("%s: a pack has no such file%s", name, nearest(base, packFiles))
	case base == "limits.yaml" && name == base:
		read = func(data []byte) error { return b.tighten(pack, data) }
	case base == "limits.yaml":
		read = func(data []byte) error { return b.define(pack, data) }
	case base == "region.yaml":
		read = func(data []byte) error { return b.addRegion(pack, name, data) }
	case base == "readings.yaml" && !pack.local():
		read = func(data []byte) error { return strictYAML(data, &b.readings) }
	default:
		return nil
	}
	data, err := fs.ReadFile(fsys, name)
	if err != nil {
		return err
	}
	if err := read(data); err != nil {
		return within(name, err)
	}
	return nil
}

// accepted refuses files that a slip of the pen would keep from being in
// force, such as limits.yml. Other folders are the author's own.
func accepted(name string) bool {
	top, _, below := strings.Cut(name, "/")
	if below && top != "rules" && top != "regions" {
		return true
	}
	return !slices.Contains([]string{".yaml", ".yml", ".json"}, path.Ext(name)) || slices.Contains(packFiles, path.Base(name))
}

func (b *Book) addSource(pack Pack, name string, data []byte) {
	s := source{name: "policies/" + name, inside: name, data: data}
	if pack.local() {
		s.name = path.Join("local", pack.Name, name)
	}
	if rest, ok := strings.CutPrefix(name, "regions/"); ok {
		s.region, _, _ = strings.Cut(rest, "/")
	}
	b.sources = append(b.sources, s)
}

// Build generates the catalogue of the shipped pack from its annotations.
func Build(fsys fs.FS) ([]*Meta, error) {
	b := newBook()
	pack, err := readPack(fsys)
	if err != nil {
		return nil, err
	}
	if err := b.collect(fsys, pack); err != nil {
		return nil, err
	}
	for _, s := range b.sources {
		if !strings.HasPrefix(s.inside, "rules/") && !strings.HasPrefix(s.inside, "regions/") {
			continue // the judge and the verdict
		}
		if _, err := b.addRule(s, pack); err != nil {
			return nil, err
		}
	}
	return b.Catalogue(), nil
}

// addRule reads a rule with its annotations and returns its syntax tree.
func (b *Book) addRule(s source, pack Pack) (*ast.Module, error) {
	steps := strings.Split(s.inside, "/") // rules/<area>/<rule>/rule.rego or regions/<code>/<rule>/rule.rego
	if len(steps) != 4 || steps[0] != "rules" && steps[0] != "regions" || steps[3] != "rule.rego" {
		return nil, fmt.Errorf("%s: a rule lies in rules/<area>/<rule>/rule.rego or regions/<code>/<rule>/rule.rego", s.shown())
	}
	m, err := ast.ParseModuleWithOpts(s.shown(), string(s.data), ast.ParserOptions{ProcessAnnotation: true, Capabilities: capabilities()})
	if err != nil {
		return nil, regoFault(err)
	}
	meta, err := readMeta(m)
	if err == nil {
		err = b.place(meta, m, steps[:3], pack)
	}
	if err == nil {
		err = meta.check()
	}
	if err == nil {
		err = b.addMeta(meta)
	}
	if err != nil {
		return nil, fmt.Errorf("%s:%d:%d: %w", s.shown(), m.Package.Location.Row, m.Package.Location.Col, err)
	}
	return m, nil
}

// addMeta takes a rule into the catalogue. An id or alias means one rule only,
// so that a pack can't take over the waivers of another's rule.
func (b *Book) addMeta(meta *Meta) error {
	for _, id := range append(slices.Clip(meta.Aliases), meta.ID) {
		if b.Rule(id) != nil {
			return fmt.Errorf("there is a rule %s already", id)
		}
	}
	b.Rules[meta.ID] = meta
	return nil
}

// place derives id, area and region from the folder and demands that the
// package says the same.
func (b *Book) place(meta *Meta, m *ast.Module, steps []string, pack Pack) error {
	meta.Pack, meta.Area, meta.Reads = pack.Name, steps[1], readPaths(m)
	meta.At, meta.ID = steps, steps[1]+"/"+steps[2]
	switch {
	case !word.MatchString(steps[2]):
		return fmt.Errorf("rule is called %q, needs lower-case letters, digits and _", steps[2])
	case steps[0] == "regions":
		meta.Region = strings.ToUpper(steps[1])
		if b.regions[meta.Region] == nil || steps[1] != strings.ToLower(steps[1]) {
			return fmt.Errorf("no region.yaml defines %s", meta.Region)
		}
	case !word.MatchString(steps[1]):
		return fmt.Errorf("area is called %q, needs lower-case letters, digits and _", steps[1])
	}
	if pack.local() {
		meta.At = []string{"local", pack.Name, steps[1], steps[2]}
		meta.ID = strings.Join(meta.At, "/")
	}
	want := ast.Ref{ast.DefaultRootDocument}
	for _, step := range meta.At {
		want = append(want, ast.StringTerm(step))
	}
	if !m.Package.Path.Equal(want) {
		return fmt.Errorf("its package is %s, its folder says %s", m.Package.Path, want)
	}
	return nil
}

func oneLine(err error) string { return strings.Join(strings.Fields(err.Error()), " ") }

// regoFault words the first error of the Rego parser or compiler.
func regoFault(err error) error {
	var list ast.Errors
	var first *ast.Error
	if errors.As(err, &list) && len(list) > 0 {
		list.Sort()
		first = list[0]
	} else if !errors.As(err, &first) {
		return errors.New(oneLine(err))
	}
	text := strings.Join(strings.Fields(first.Message), " ")
	switch {
	case first.Location == nil:
		return errors.New(text)
	case first.Location.Row == 0:
		return fmt.Errorf("%s: %s", first.Location.File, text)
	}
	return within(first.Location.File, &placed{first.Location.Row, first.Location.Col, text})
}
