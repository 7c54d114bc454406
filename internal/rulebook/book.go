package rulebook

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"slices"
	"strings"
	"sync"
	"time"

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
	patience    time.Duration

	ready *ready
}

// ready holds what was made for a chain of regions, by the codes of the chain.
// Books that judge by fewer rules share the compilers.
type ready struct {
	sync.Mutex
	compilers  map[string]*ast.Compiler
	evaluators map[string]*Evaluator
}

func newReady() *ready {
	return &ready{compilers: map[string]*ast.Compiler{}, evaluators: map[string]*Evaluator{}}
}

// Only returns a book that judges by the rules named and no others. It shares
// what is compiled: a rule alone is judged in a fraction of the time of all.
func (b *Book) Only(ids ...string) *Book {
	only := *b
	only.Rules = map[string]*Meta{}
	for _, id := range ids {
		only.Rules[id] = b.Rules[id]
	}
	b.ready.Lock()
	defer b.ready.Unlock()
	only.ready = newReady()
	maps.Copy(only.ready.compilers, b.ready.compilers)
	return &only
}

// Open loads the shipped pack and the local packs in the given folders. The
// error is a *PackError when the fault is in a pack.
func Open(figs []*figures.Figure, folders ...string) (*Book, error) {
	locals := make([]fs.FS, len(folders))
	for i, folder := range folders {
		info, err := os.Stat(folder)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return nil, &PackError{folder, errors.New("does not exist")}
		case err != nil:
			return nil, &PackError{folder, err}
		case !info.IsDir():
			return nil, &PackError{folder, errors.New("is not a folder")}
		}
		locals[i] = os.DirFS(folder)
	}
	return open(figs, policies.FS, locals, folders)
}

func open(figs []*figures.Figure, shipped fs.FS, locals []fs.FS, names []string) (*Book, error) {
	b := newBook()
	for _, f := range figs {
		b.figurePaths = append(b.figurePaths, FigurePath(f))
	}
	slices.Sort(b.figurePaths)
	if err := b.addShipped(shipped); err != nil {
		return nil, &PackError{shippedName, err}
	}
	if err := b.addLocals(locals, names); err != nil {
		return nil, err
	}
	return b, nil
}

func newBook() *Book {
	return &Book{
		Rules:    map[string]*Meta{},
		limits:   map[string]*Limit{},
		regions:  map[string]*Region{},
		patience: patience,
		ready:    newReady(),
	}
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
	if err := b.collect(fsys, pack); err != nil {
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
