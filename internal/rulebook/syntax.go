package rulebook

import (
	"fmt"
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
// past the judge, replace data, or name a path that does not exist.
func (b *Book) checkSyntax(file string, m *ast.Module) error {
	var fault error
	refuse := func(at *ast.Location, format string, args ...any) {
		if fault == nil {
			fault = fmt.Errorf("%s:%d:%d: %s", file, at.Row, at.Col, fmt.Sprintf(format, args...))
		}
	}
	for _, imp := range m.Imports {
		path := imp.Path.Value.(ast.Ref)
		if !libraryRef(path) && !path.HasPrefix(ast.MustParseRef("rego.v1")) {
			refuse(imp.Location, "imports %s: a rule may import data.lib only", path)
		}
	}
	own := m.Package.Path
	ast.WalkTerms(m, func(t *ast.Term) bool {
		switch v := t.Value.(type) {
		case ast.Ref:
			head, ok := v[0].Value.(ast.Var)
			if !ok {
				return false
			}
			switch {
			case head == "input":
				refuse(t.Location, "reads %s past the judge: use a path, so that a missing value can't pass", v)
			case head == "data" && !libraryRef(v) && !v.HasPrefix(own):
				refuse(t.Location, "reads %s: a rule may refer to data.lib only", v)
			}
		case ast.String:
			if err := b.checkPath(string(v)); err != nil {
				refuse(t.Location, "%v", err)
			}
		}
		return false
	})
	ast.WalkExprs(m, func(e *ast.Expr) bool {
		if len(e.With) > 0 {
			refuse(e.Location, "uses with: a rule judges what is, not what might be")
		}
		return false
	})
	return fault
}

func libraryRef(r ast.Ref) bool { return r.HasPrefix(ast.MustParseRef("data.lib")) }

// checkPath checks a string that looks like an input, figure or limit path.
func (b *Book) checkPath(s string) error {
	switch {
	case slices.Contains([]string{"build", "figures", "limits"}, strings.TrimSuffix(s, ".")):
		return fmt.Errorf("%q is put together into a path: write the whole path, so that it can be checked", s)
	case strings.HasPrefix(s, "build."):
		if _, err := b.Form.Shape().At(strings.TrimPrefix(s, "build.")); err != nil {
			return fmt.Errorf("path %q: %w", s, err)
		}
	case strings.HasPrefix(s, "figures."):
		if !slices.Contains(b.figurePaths, s) {
			return fmt.Errorf("path %q: no such figure; there are %s", s, strings.Join(b.figurePaths, ", "))
		}
	case strings.HasPrefix(s, "limits."):
		if b.limits[s] == nil {
			return fmt.Errorf("path %q: no such limit", s)
		}
	}
	return nil
}

// readPaths lists the paths that a module names, sorted.
func readPaths(m *ast.Module) []string {
	paths := []string{}
	ast.WalkTerms(m, func(t *ast.Term) bool {
		if v, ok := t.Value.(ast.String); ok {
			for _, root := range []string{"build.", "figures.", "limits."} {
				if strings.HasPrefix(string(v), root) {
					paths = append(paths, string(v))
				}
			}
		}
		return false
	})
	slices.Sort(paths)
	return slices.Compact(paths)
}
