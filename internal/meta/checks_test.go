package meta

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"sort"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
)

// counted is how many rows that are no regressions the figures are held
// against, and how many of these may be look-ups in a table.
const (
	counted     = 150
	mostLookups = 40
	perSubject  = 3
)

// TestEnoughChecks counts the rows of figurestest.Check in the tests of each
// discipline, by the kind spelled out in each. A discipline with fewer than
// three published ones says in its file that none was found.
func TestEnoughChecks(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(root, "internal/figures/*/*_test.go"))
	require.NoError(t, err)
	rows := map[string]map[string]int{}
	says := map[string]bool{}
	for _, file := range files {
		discipline := filepath.Base(filepath.Dir(file))
		if rows[discipline] == nil {
			rows[discipline] = map[string]int{}
		}
		parsed, err := parser.ParseFile(token.NewFileSet(), file, nil, parser.ParseComments)
		require.NoError(t, err)
		ast.Inspect(parsed, func(n ast.Node) bool {
			if pair, ok := n.(*ast.KeyValueExpr); ok {
				key, isKey := pair.Key.(*ast.Ident)
				value, isValue := pair.Value.(*ast.SelectorExpr)
				if isKey && isValue && key.Name == "Kind" {
					rows[discipline][value.Sel.Name]++
				}
			}
			return true
		})
		for _, c := range parsed.Comments {
			if strings.Contains(strings.ToLower(c.Text()), "was found") {
				says[discipline] = true
			}
		}
	}
	published, lookups := 0, 0
	disciplines := map[string]bool{}
	for _, f := range sheet.All() {
		discipline, _, _ := strings.Cut(f.ID, ".")
		disciplines[discipline] = true
	}
	names := make([]string, 0, len(disciplines))
	for d := range disciplines {
		names = append(names, d)
	}
	sort.Strings(names)
	for _, d := range names {
		of := rows[d]
		t.Logf("%-12s %3d published %3d looked up %3d computed", d, of["Published"], of["Table"], of["Computed"])
		published += of["Published"]
		lookups += of["Table"]
		require.True(t, of["Published"] >= perSubject || says[d], "%s has %d published checks, and does not say that no more was found", d, of["Published"])
	}
	t.Logf("in all %d published, %d looked up", published, lookups)
	require.GreaterOrEqual(t, published+min(lookups, mostLookups), counted)
}
