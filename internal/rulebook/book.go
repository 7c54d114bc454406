package rulebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"trialfit/internal/figures"
	"trialfit/internal/schema"
	"trialfit/policies"
)

// Book is the set of packs in force: rules, limits, regions, and the form of
// the manifests they judge.
type Book struct {
	// Form validates manifests, with the extensions of local packs.
	Form *schema.Validator
	// Rules holds the metadata of every rule, by id.
	Rules map[string]*Meta
	// Packs are the packs in force, the shipped one first.
	Packs []Pack

	limits      map[string]*Limit
	regions     map[string]*Region
	readings    any
	figurePaths []string
	sources     []source
	prepared    map[string]*Evaluator
}

// Pack identifies a folder of rules.
type Pack struct {
	Name    string `yaml:"name" json:"name"`
	Version string `yaml:"version" json:"version"`
	Contact string `yaml:"contact" json:"contact,omitempty"`
	// Needs is the oldest trialfit version that can read the pack.
	Needs string `yaml:"needs" json:"needs,omitempty"`
}

// source is one Rego file of the book.
type source struct {
	name   string // path inside the bundle
	data   []byte
	region string // folder of the region it belongs to, "" for all
}

// PackError says that a pack can't be used. It stops the run: a broken pack
// never turns into a pass.
type PackError struct {
	Pack string
	Err  error
}

// Error names the pack and the fault on one line.
func (e *PackError) Error() string {
	return fmt.Sprintf("pack %s: %s", e.Pack, strings.ReplaceAll(e.Err.Error(), "\n", "; "))
}

func (e *PackError) Unwrap() error { return e.Err }

// Open loads the shipped pack and the local packs in the given folders.
func Open(figs []*figures.Figure, folders ...string) (*Book, error) {
	locals := make([]fs.FS, len(folders))
	for i, folder := range folders {
		info, err := os.Stat(folder)
		if err != nil || !info.IsDir() {
			return nil, &PackError{folder, fmt.Errorf("is not a folder")}
		}
		locals[i] = os.DirFS(folder)
	}
	return open(figs, policies.FS, locals, folders)
}

func open(figs []*figures.Figure, shipped fs.FS, locals []fs.FS, names []string) (*Book, error) {
	b := &Book{
		Rules:    map[string]*Meta{},
		limits:   map[string]*Limit{},
		regions:  map[string]*Region{},
		prepared: map[string]*Evaluator{},
	}
	for _, f := range figs {
		b.figurePaths = append(b.figurePaths, FigurePath(f))
	}
	slices.Sort(b.figurePaths)
	if err := b.addShipped(shipped); err != nil {
		return nil, &PackError{"trialfit", err}
	}
	extensions := map[string][]byte{}
	for i, local := range locals {
		if err := b.announce(local, extensions); err != nil {
			return nil, &PackError{names[i], err}
		}
	}
	var err error
	b.Form, err = schema.NewValidator(extensions)
	if err != nil {
		return nil, err
	}
	for i, local := range locals {
		if err := b.addLocal(local, b.Packs[i+1]); err != nil {
			return nil, &PackError{names[i], err}
		}
	}
	return b, nil
}

// FigurePath is the pattern under which rules find a figure: a '*' for each
// item id its subjects have.
func FigurePath(f *figures.Figure) string {
	p := "figures." + f.ID
	if f.Per != "" {
		p += strings.Repeat(".*", strings.Count(f.Per, "*")+1)
	}
	return p
}

// addShipped loads the embedded pack. Its catalogue is generated, so that no
// annotation is parsed at run time.
func (b *Book) addShipped(fsys fs.FS) error {
	pack, err := readPack(fsys)
	if err != nil {
		return err
	}
	b.Packs = append(b.Packs, pack)
	if err := b.collect(fsys, "policies/", b.define); err != nil {
		return err
	}
	data, err := fs.ReadFile(fsys, "catalogue.json")
	if err != nil {
		return fmt.Errorf("reading the catalogue: %w", err)
	}
	var list []*Meta
	if err := json.Unmarshal(data, &list); err != nil {
		return fmt.Errorf("reading the catalogue: %w", err)
	}
	for _, meta := range list {
		b.Rules[meta.ID] = meta
	}
	return nil
}

// collect walks a pack and takes in its Rego files, limits and regions.
func (b *Book) collect(fsys fs.FS, prefix string, limits func(string, []byte) error) error {
	return fs.WalkDir(fsys, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		if d.Type()&fs.ModeSymlink != 0 {
			return fmt.Errorf("%s is a symbolic link: a pack holds its own files", name)
		}
		rego := strings.HasSuffix(name, ".rego") && !strings.HasSuffix(name, "_test.rego")
		base := path.Base(name)
		if !rego && base != "limits.yaml" && base != "region.yaml" && base != "readings.yaml" {
			return nil
		}
		data, err := fs.ReadFile(fsys, name)
		if err != nil {
			return err
		}
		switch {
		case rego:
			s := source{name: prefix + name, data: data}
			if rest, ok := strings.CutPrefix(name, "regions/"); ok {
				s.region, _, _ = strings.Cut(rest, "/")
			}
			b.sources = append(b.sources, s)
		case base == "limits.yaml":
			err = limits(name, data)
		case base == "region.yaml":
			var r *Region
			if r, err = readRegion(data); err == nil {
				if _, known := b.regions[r.Code]; known {
					err = fmt.Errorf("region %s is defined already: a pack may add rules to it, not replace it", r.Code)
				}
				b.regions[r.Code] = r
			}
		case base == "readings.yaml":
			err = strictYAML(data, &b.readings)
		}
		if err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		return nil
	})
}

func (b *Book) define(_ string, data []byte) error {
	limits, err := readLimits(data)
	if err != nil {
		return err
	}
	for _, l := range limits {
		if _, twice := b.limits[l.Path]; twice {
			return fmt.Errorf("limit %s is defined already", l.Path)
		}
		b.limits[l.Path] = l
	}
	return nil
}

// Catalogue returns every rule's metadata, sorted by id.
func (b *Book) Catalogue() []*Meta {
	list := make([]*Meta, 0, len(b.Rules))
	for _, id := range slices.Sorted(maps.Keys(b.Rules)) {
		list = append(list, b.Rules[id])
	}
	return list
}

// Limit returns the limit at a path such as "limits.mass.axle_margin", nil if there is none.
func (b *Book) Limit(path string) *Limit { return b.limits[path] }

// Limits returns every limit, sorted by path.
func (b *Book) Limits() []*Limit {
	list := make([]*Limit, 0, len(b.limits))
	for _, p := range slices.Sorted(maps.Keys(b.limits)) {
		list = append(list, b.limits[p])
	}
	return list
}

// data is the document below every rule: catalogue, limits, hold points and readings.
func (b *Book) data() (map[string]any, error) {
	raw, err := json.Marshal(b.Rules)
	if err != nil {
		return nil, fmt.Errorf("writing the catalogue: %w", err)
	}
	var catalogue any
	if err := json.Unmarshal(raw, &catalogue); err != nil {
		return nil, fmt.Errorf("writing the catalogue: %w", err)
	}
	doc := map[string]any{
		"catalogue": catalogue,
		"limits":    b.limitData(),
		"holds":     HoldPoints,
		"readings":  b.readings,
	}
	// One pass through JSON, so that memory and bundle hold the same numbers.
	raw, err = json.Marshal(doc)
	if err != nil {
		return nil, fmt.Errorf("writing the data: %w", err)
	}
	var out map[string]any
	dec := json.NewDecoder(bytes.NewReader(raw))
	dec.UseNumber()
	if err := dec.Decode(&out); err != nil {
		return nil, fmt.Errorf("writing the data: %w", err)
	}
	return out, nil
}

// Build generates the catalogue of the shipped pack from its annotations.
func Build(fsys fs.FS) ([]*Meta, error) {
	b := &Book{Rules: map[string]*Meta{}, limits: map[string]*Limit{}, regions: map[string]*Region{}}
	pack, err := readPack(fsys)
	if err != nil {
		return nil, err
	}
	if err := b.collect(fsys, "policies/", b.define); err != nil {
		return nil, err
	}
	for _, s := range b.sources {
		meta, _, err := b.annotated(s, pack.Name, "policies/")
		if err != nil {
			return nil, err
		}
		if meta != nil {
			b.Rules[meta.ID] = meta
		}
	}
	return b.Catalogue(), nil
}

// annotated parses a rule with its annotations; helpers outside rule folders give nil.
func (b *Book) annotated(s source, pack, prefix string) (*Meta, *ast.Module, error) {
	m, err := ast.ParseModuleWithOpts(s.name, string(s.data), ast.ParserOptions{ProcessAnnotation: true, Capabilities: capabilities()})
	if err != nil {
		return nil, nil, fmt.Errorf("%s", oneLine(err))
	}
	inside := strings.TrimPrefix(s.name, prefix)
	if !strings.HasPrefix(inside, "rules/") && !strings.HasPrefix(inside, "regions/") {
		return nil, m, nil
	}
	meta, err := readMeta(m)
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", s.name, err)
	}
	if err := b.place(meta, m, inside, pack); err != nil {
		return nil, nil, fmt.Errorf("%s: %w", s.name, err)
	}
	if err := meta.check(); err != nil {
		return nil, nil, fmt.Errorf("%s: %s", s.name, strings.ReplaceAll(err.Error(), "\n", "; "))
	}
	return meta, m, nil
}

// place derives id, area and region from the folder and demands that the
// package says the same.
func (b *Book) place(meta *Meta, m *ast.Module, inside, pack string) error {
	steps := strings.Split(path.Dir(inside), "/") // rules/<area>/<rule> or regions/<code>/<rule>
	if len(steps) != 3 || path.Base(inside) != "rule.rego" {
		return fmt.Errorf("a rule lies in %s/<area or region>/<rule>/rule.rego", steps[0])
	}
	meta.Pack, meta.Area, meta.Reads = pack, steps[1], readPaths(m)
	meta.At, meta.ID = steps, steps[1]+"/"+steps[2]
	if steps[0] == "regions" {
		meta.Region = strings.ToUpper(steps[1])
		if b.regions[meta.Region] == nil {
			return fmt.Errorf("there is no region.yaml for %s", meta.Region)
		}
	}
	if pack != shippedName {
		meta.At = []string{"local", pack, steps[1], steps[2]}
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

const shippedName = "trialfit"

func oneLine(err error) string { return strings.Join(strings.Fields(err.Error()), " ") }

// Rule returns the metadata of a rule by its id or an earlier one, nil if
// there is none.
func (b *Book) Rule(id string) *Meta {
	if m := b.Rules[id]; m != nil {
		return m
	}
	for _, m := range b.Rules {
		if slices.Contains(m.Aliases, id) {
			return m
		}
	}
	return nil
}

// Spreads returns the limits that say how far a value may be off by its basis.
func (b *Book) Spreads() []*Limit {
	return slices.DeleteFunc(b.Limits(), func(l *Limit) bool { return !strings.HasPrefix(l.Path, "limits.spread.") })
}
