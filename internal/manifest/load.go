package manifest

import (
	"errors"
	"fmt"
	"io"
	"maps"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"

	"gopkg.in/yaml.v3"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
)

// Suffix ends the name of every build manifest.
const Suffix = ".build.yaml"

// Stdin is the name of a manifest that was read from standard input.
const Stdin = "-"

// Spread says how far a value of a kind may be off when its basis is all that
// is known: the larger of a share of the value and a floor in SI units.
type Spread func(kind quantity.Kind, basis string) (relative, floor *big.Rat)

// Manifest is one build as read.
type Manifest struct {
	// File is the name as given by the user, with forward slashes.
	File string
	// Dir is the folder that evidence paths are relative to.
	Dir  string
	Data []byte
	Root *Node

	byPath map[string]*Node
}

// Loader reads manifests of one form.
type Loader struct {
	Validator *schema.Validator
	Spread    Spread
	// Unlinked leaves the ids, paths and files alone that one place says of
	// another: in a file that holds parts of manifests they are looked up when
	// a manifest is put together from them.
	Unlinked bool
	// TakePaths leaves the paths of evidence files alone, for a document that
	// tells what is wrong with them instead of stopping.
	TakePaths bool
}

// File reads the manifest at path. The error is Problems when the fault is in
// the manifest.
func (l *Loader) File(path string) (*Manifest, error) {
	name := filepath.ToSlash(path)
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil, Problems{FileProblem(name, err)}
	case info.IsDir():
		return nil, Problems{{File: name, Message: "is a folder: name a manifest in it"}}
	case !info.Mode().IsRegular(): // opening a pipe would wait for a writer
		return nil, Problems{{File: name, Message: "is a device, pipe or socket: name an ordinary file"}}
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, Problems{FileProblem(name, err)}
	}
	defer f.Close()
	return l.Read(f, name, filepath.Dir(path))
}

// FileProblem words an error of the file system about the file or folder name.
func FileProblem(name string, err error) Problem {
	reason := err.Error()
	var pathErr *os.PathError
	switch {
	case errors.Is(err, os.ErrNotExist):
		reason = "does not exist"
	case errors.Is(err, os.ErrPermission):
		reason = "may not be read: permission denied"
	case errors.Is(err, syscall.ELOOP):
		reason = "is a symbolic link that leads back to itself"
	case errors.As(err, &pathErr):
		reason = pathErr.Err.Error()
	}
	return Problem{File: name, Message: reason}
}

// Read reads a manifest from r; name is what messages call it and dir is the
// folder its evidence lies in. The error is Problems, all of them.
func (l *Loader) Read(r io.Reader, name, dir string) (*Manifest, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxBytes+1))
	if err != nil {
		return nil, Problems{FileProblem(name, err)}
	}
	doc, problems := parse(data, fmt.Sprintf("is empty: %s starts with %q", l.Validator.Noun(), l.Validator.Shape().Fields[0].Name+": 1"))
	return l.finish(&Manifest{File: name, Dir: dir, Data: data}, doc, problems)
}

// Nodes reads a manifest that was put together from parts of a parsed file, so
// that each message points into the file the parts are from; name and dir are
// as for Read. The error is Problems, all of them.
func (l *Loader) Nodes(root *yaml.Node, name, dir string) (*Manifest, error) {
	doc, problems := readNodes(root)
	return l.finish(&Manifest{File: name, Dir: dir}, doc, problems)
}

func (l *Loader) finish(m *Manifest, doc *document, problems Problems) (*Manifest, error) {
	if doc != nil {
		problems = append(problems, l.resolve(m, doc)...)
	}
	if len(problems) == 0 {
		return m, nil
	}
	for i := range problems {
		problems[i].File = m.File
	}
	return nil, problems.Sorted()
}

// resolve reads the document along the shape into m.
func (l *Loader) resolve(m *Manifest, doc *document) Problems {
	res := &resolver{doc: doc, spread: l.Spread, takePaths: l.TakePaths, told: maps.Clone(doc.told), incomplete: map[string]bool{}}
	for _, fault := range l.Validator.Validate(doc.value) {
		if doc.told[fault.Pointer] || fault.Lacks != "" && doc.partial[fault.Pointer] {
			continue
		}
		res.told[fault.Pointer] = res.told[fault.Pointer] || fault.Lacks == ""
		res.problems = append(res.problems, Problem{Position: doc.position(fault), Message: fault.Message})
	}
	m.Root = res.node(l.Validator.Shape(), "", spot{"", doc.value}, Position{1, 1})
	m.byPath = map[string]*Node{}
	m.Root.Walk(func(n *Node) { m.byPath[n.Path] = n })
	if !l.Unlinked {
		res.references(m.byPath)
	}
	return res.problems
}

// position is where to point for a fault.
func (d *document) position(f schema.Fault) Position {
	n, ok := d.nodes[f.Pointer]
	switch {
	case !ok:
		return Position{1, 1}
	case f.AtKey:
		return n.keyPosition()
	default:
		return n.position()
	}
}

// Node returns the node at a manifest path, nil if there is none.
func (m *Manifest) Node(path string) *Node { return m.byPath[path] }

// Pattern is a path with a star for the id of each list item.
func (m *Manifest) Pattern(path string) string {
	steps := strings.Split(path, ".")
	stars := slices.Clone(steps)
	for i := range steps {
		if n := m.Node(strings.Join(steps[:i+1], ".")); n != nil && n.ID != "" {
			stars[i] = "*"
		}
	}
	return strings.Join(stars, ".")
}

// Position returns where a manifest path stands, or where the nearest section
// around it does.
func (m *Manifest) Position(path string) Position {
	for {
		if n := m.byPath[path]; n != nil {
			return n.At
		}
		cut := strings.LastIndexByte(path, '.')
		if cut < 0 {
			return m.Root.At
		}
		path = path[:cut]
	}
}

// Name returns the file's name without folders and suffix: what reports call
// the build.
func (m *Manifest) Name() string {
	base := m.File[strings.LastIndexByte(m.File, '/')+1:]
	return strings.TrimSuffix(base, Suffix)
}

// ProblemAt words a fault at a path of this manifest.
func (m *Manifest) ProblemAt(path, format string, args ...any) Problem {
	return Problem{File: m.File, Position: m.Position(path), Message: fmt.Sprintf(format, args...)}
}
