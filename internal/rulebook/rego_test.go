package rulebook

import (
	"io/fs"
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
)

// shippedRego returns every Rego file of the shipped pack by its path, tests too.
func shippedRego(t *testing.T) map[string]string {
	t.Helper()
	pack := os.DirFS("../../policies")
	files := map[string]string{}
	err := fs.WalkDir(pack, ".", func(name string, _ fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(name, ".rego") {
			return err
		}
		data, err := fs.ReadFile(pack, name)
		files[name] = string(data)
		return err
	})
	require.NoError(t, err)
	require.NotEmpty(t, files)
	return files
}

// parsed parses the shipped Rego files that are accepted.
func parsed(t *testing.T, accept func(name string) bool) map[string]*ast.Module {
	t.Helper()
	modules := map[string]*ast.Module{}
	for name, text := range shippedRego(t) {
		if accept(name) {
			m, err := ast.ParseModule(name, text)
			require.NoError(t, err)
			modules[name] = m
		}
	}
	return modules
}

func isTest(name string) bool { return strings.HasSuffix(name, "_test.rego") }

// TestRego runs the Rego unit tests of the judge and the verdict, on the data
// that the shipped pack gives them.
func TestRego(t *testing.T) {
	book, err := Open(sheet.All())
	require.NoError(t, err)
	data, err := book.data()
	require.NoError(t, err)
	modules := parsed(t, func(name string) bool {
		return strings.HasPrefix(name, "lib/") || strings.HasPrefix(name, "verdict/")
	})
	store := inmem.NewFromObject(data)
	txn, err := store.NewTransaction(t.Context(), storage.TransactionParams{})
	require.NoError(t, err)
	defer store.Abort(t.Context(), txn)
	results, err := tester.NewRunner().SetStore(store).SetModules(modules).RaiseBuiltinErrors(true).RunTests(t.Context(), txn)
	require.NoError(t, err)
	ran := 0
	for r := range results {
		ran++
		println(r.Name, r.Duration.Milliseconds())
		t.Run(strings.TrimPrefix(r.Package, "data.")+"/"+strings.TrimPrefix(r.Name, "test_"), func(t *testing.T) {
			require.NoError(t, r.Error)
			require.False(t, r.Skip, "%s is skipped", r.Location)
			for path, sub := range r.SubResults.Iter {
				require.False(t, sub.Fail, "%s: case %q", r.Location, path)
			}
			require.True(t, r.Pass(), "%s: %s", r.Location, r.FailedAt)
		})
	}
	require.NotZero(t, ran)
}

// TestRegoIsFormatted holds every Rego file to the form of opa fmt.
func TestRegoIsFormatted(t *testing.T) {
	for name, text := range shippedRego(t) {
		formatted, err := format.SourceWithOpts(name, []byte(text), format.Opts{RegoVersion: ast.RegoV1})
		require.NoError(t, err)
		require.Equal(t, string(formatted), text, "policies/%s: run opa fmt -w on it", name)
	}
}

// TestRegoCompilesRestricted compiles all that ships, the regions together,
// strictly and with the built-in functions that rules may use.
func TestRegoCompilesRestricted(t *testing.T) {
	c := ast.NewCompiler().WithCapabilities(capabilities()).WithStrict(true)
	c.Compile(parsed(t, func(name string) bool { return !isTest(name) }))
	require.False(t, c.Failed(), "%v", c.Errors)
}

// TestRestrictionBites: the same compiler refuses what rules may not use.
func TestRestrictionBites(t *testing.T) {
	for _, call := range []string{
		`http.send({"method": "get", "url": "http://localhost"})`, `time.now_ns()`, `opa.runtime()`,
		`rand.intn("x", 9)`, `plus(1, 1)`, `numbers.range(1, 9)`, `regex.match("a", "a")`,
	} {
		c := ast.NewCompiler().WithCapabilities(capabilities()).WithStrict(true)
		c.Compile(map[string]*ast.Module{"x": ast.MustParseModule("package x\n\ny := " + call + "\n")})
		require.True(t, c.Failed(), "%s compiles", call)
	}
}

// TestShippedRulesPassAsLocalOnes: what is asked of local packs holds for the
// shipped rules as well.
func TestShippedRulesPassAsLocalOnes(t *testing.T) {
	book, err := Open(sheet.All())
	require.NoError(t, err)
	rules := parsed(t, func(name string) bool {
		return !isTest(name) && (strings.HasPrefix(name, "rules/") || strings.HasPrefix(name, "regions/"))
	})
	require.Len(t, rules, len(book.Rules))
	for name, m := range rules {
		require.NoError(t, book.checkSyntax(m), name)
	}
}

// TestRunTimeLeavesTestsOut: the loader takes no test module in.
func TestRunTimeLeavesTestsOut(t *testing.T) {
	book, err := Open(sheet.All())
	require.NoError(t, err)
	require.NotEmpty(t, book.sources)
	require.False(t, slices.ContainsFunc(book.sources, func(s source) bool { return isTest(s.name) }))
}
