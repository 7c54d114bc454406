package rulebook

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// allowed lists the built-in functions that rules may use, ours and everyone's:
// logic on values, sets and strings. No network, clock, environment,
// randomness, and no arithmetic: sums are figures.
var allowed = []string{
	"eq", "equal", "assign", "neq", "lt", "lte", "gt", "gte",
	"internal.member_2", "internal.member_3",
	"count", "min", "max", "sort", "and", "or", "union", "intersection",
	"array.concat", "array.slice", "array.reverse", "array.flatten",
	"object.get", "object.keys", "object.union", "object.union_n", "object.filter", "object.remove", "object.subset",
	"concat", "contains", "endswith", "startswith", "split", "sprintf", "lower", "upper",
	"trim", "trim_left", "trim_right", "trim_prefix", "trim_suffix", "trim_space", "replace", "indexof", "substring", "strings.any_prefix_match", "strings.any_suffix_match",
	"is_array", "is_boolean", "is_null", "is_number", "is_object", "is_set", "is_string", "type_name",
}

// capabilities restricts a compiler to the allowed built-ins.
func capabilities() *ast.Capabilities {
	c := ast.CapabilitiesForThisVersion()
	c.Builtins = slices.DeleteFunc(c.Builtins, func(b *ast.Builtin) bool { return !slices.Contains(allowed, b.Name) })
	c.AllowNet = []string{}
	return c
}

// checkSyntax refuses what a rule may not do: reach the input or other data
// past the judge, compute, suppose, or name a path that does not exist.
func (b *Book) checkSyntax(m *ast.Module) error {
	w := walker{book: b, own: m.Package.Path}
	for _, imp := range m.Imports {
		path := imp.Path.Value.(ast.Ref)
		if !libraryRef(path) && !path.HasPrefix(ast.MustParseRef("rego.v1")) {
			w.refuse(imp.Location, "imports %s: a rule may import data.lib only", path)
		}
	}
	for _, rule := range m.Rules {
		ast.WalkExprs(rule, func(e *ast.Expr) bool {
			if len(e.With) > 0 {
				w.refuse(e.Location, "uses with: a rule judges what is, not what might be")
			}
			return false
		})
		ast.WalkTerms(rule, w.term)
	}
	return w.fault
}

// walker looks at the terms of a rule and keeps the first fault.
type walker struct {
	book  *Book
	own   ast.Ref
	fault error
}

func (w *walker) refuse(at *ast.Location, format string, args ...any) {
	if w.fault == nil {
		w.fault = fmt.Errorf("%s:%d:%d: %s", at.File, at.Row, at.Col, fmt.Sprintf(format, args...))
	}
}

// term says whether to stop at a term.
func (w *walker) term(t *ast.Term) bool {
	switch v := t.Value.(type) {
	case ast.Ref:
		w.ref(t.Location, v)
		for _, step := range v[1:] {
			if _, field := step.Value.(ast.String); !field {
				ast.WalkTerms(step, w.term)
			}
		}
		_, variable := v[0].Value.(ast.Var)
		return variable
	case *ast.Array:
		// What concat and sprintf put together; alone, "build" is a subject.
		v.Foreach(func(item *ast.Term) {
			if s, ok := item.Value.(ast.String); ok && slices.Contains(roots, string(s)) {
				w.refuse(item.Location, "%v", glued(string(s)))
			}
		})
	case ast.String:
		if err := w.book.checkPath(string(v)); err != nil {
			w.refuse(t.Location, "%v", err)
		}
	}
	return false
}

func (w *walker) ref(at *ast.Location, v ast.Ref) {
	head, _ := v[0].Value.(ast.Var)
	switch builtin := ast.BuiltinMap[v.String()]; {
	case head == "input":
		w.refuse(at, "reads %s past the judge: use a path, so that a missing value can't pass", v)
	case head == "data" && !libraryRef(v) && !v.HasPrefix(w.own):
		w.refuse(at, "reads %s: a rule may refer to data.lib only", v)
	case builtin != nil && !slices.Contains(allowed, builtin.Name):
		w.refuse(at, "uses %s: a rule compares and selects; sums are figures, and there is no clock, chance or network", cmp.Or(builtin.Infix, builtin.Name))
	}
}

func libraryRef(r ast.Ref) bool { return r.HasPrefix(ast.MustParseRef("data.lib")) }

// roots are what paths begin with.
var roots = []string{"build", "figures", "limits"}

func glued(s string) error {
	return fmt.Errorf("%q is put together into a path: write the whole path, so that it can be checked", s)
}

// checkPath checks a string that looks like an input, figure or limit path.
func (b *Book) checkPath(s string) error {
	root, _ := strings.CutSuffix(s, ".")
	switch {
	case root != s && slices.Contains(roots, root):
		return glued(s)
	case strings.HasPrefix(s, "build."):
		if _, err := b.Form.Shape().At(strings.TrimPrefix(s, "build.")); err != nil {
			return fmt.Errorf("path %q: %w", s, err)
		}
	case strings.HasPrefix(s, "figures."):
		if !slices.Contains(b.figurePaths, s) {
			return fmt.Errorf("path %q: no such figure%s", s, nearest(s, b.figurePaths))
		}
	case strings.HasPrefix(s, "limits."):
		if b.limits[s] == nil {
			return fmt.Errorf("path %q: no such limit%s", s, nearest(s, slices.Sorted(maps.Keys(b.limits))))
		}
	}
	return nil
}

// readPaths lists the paths that a module names, sorted.
func readPaths(m *ast.Module) []string {
	paths := []string{}
	ast.WalkTerms(m, func(t *ast.Term) bool {
		if v, ok := t.Value.(ast.String); ok {
			if root, _, below := strings.Cut(string(v), "."); below && slices.Contains(roots, root) {
				paths = append(paths, string(v))
			}
		}
		return false
	})
	slices.Sort(paths)
	return slices.Compact(paths)
}
