package manifest

import (
	"errors"
	"fmt"
	"io"
	"math/big"
	"os"
	"path/filepath"
	"strings"

	"trialfit/internal/quantity"
	"trialfit/internal/schema"
)

// Suffix ends the name of every build manifest.
const Suffix = ".build.yaml"

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
}

// File reads the manifest at path. The error is Problems when the fault is in
// the manifest.
func (l *Loader) File(path string) (*Manifest, error) {
	name := filepath.ToSlash(path)
	f, err := os.Open(path)
	if err != nil {
		return nil, fileProblem(name, err)
	}
	defer f.Close()
	if info, err := f.Stat(); err == nil && !info.Mode().IsRegular() {
		return nil, Problems{{File: name, Message: "is not a regular file"}}
	}
	return l.Read(f, name, filepath.Dir(path))
}

func fileProblem(name string, err error) Problems {
	reason := err.Error()
	var pathErr *os.PathError
	switch {
	case errors.Is(err, os.ErrNotExist):
		reason = "does not exist"
	case errors.Is(err, os.ErrPermission):
		reason = "may not be read: permission denied"
	case errors.As(err, &pathErr):
		reason = pathErr.Err.Error()
	}
	return Problems{{File: name, Message: reason}}
}

// Read reads a manifest from r; name is what messages call it and dir is the
// folder its evidence lies in.
func (l *Loader) Read(r io.Reader, name, dir string) (*Manifest, error) {
	data, err := io.ReadAll(io.LimitReader(r, MaxBytes+1))
	if err != nil {
		return nil, fileProblem(name, err)
	}
	doc, problems := parse(data)
	if len(problems) == 0 {
		var root *Node
		root, problems = l.resolve(doc)
		if len(problems) == 0 {
			m := &Manifest{File: name, Dir: dir, Data: data, Root: root, byPath: map[string]*Node{}}
			root.Walk(func(n *Node) { m.byPath[n.Path] = n })
			return m, nil
		}
	}
	for i := range problems {
		problems[i].File = name
	}
	return nil, problems.sorted()
}

func (l *Loader) resolve(doc *document) (*Node, Problems) {
	res := &resolver{doc: doc, spread: l.Spread}
	for _, fault := range l.Validator.Validate(doc.value) {
		res.problems = append(res.problems, Problem{Position: res.faultPosition(fault), Message: fault.Message})
	}
	root := res.node(l.Validator.Shape(), "", "", Position{1, 1})
	res.references(root)
	return root, res.problems
}

func (r *resolver) faultPosition(f schema.Fault) Position {
	pointer := f.Pointer
	for {
		if n, ok := r.doc.nodes[pointer]; ok {
			if f.AtKey && pointer == f.Pointer {
				return n.keyPosition()
			}
			return n.position()
		}
		cut := strings.LastIndexByte(pointer, '/')
		if cut < 0 {
			return Position{1, 1}
		}
		pointer = pointer[:cut]
	}
}

// Node returns the node at a manifest path, nil if there is none.
func (m *Manifest) Node(path string) *Node { return m.byPath[path] }

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
