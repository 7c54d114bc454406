package mutation

import (
	"context"
	"flag"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/require"

	"trialfit/internal/rulebook"
)

// graft holds every mutant of the judge and the verdict in one program, because
// compiling them one by one would take minutes. A clause that a mutant changes
// is off while data.off names it; what the mutant puts in its place is on while
// data.mutant is its number.
type graft struct {
	compiler *ast.Compiler
	mutants  map[int]mutant
	off      map[int]map[string]any
}

// graft compiles the law with all mutants of files that begin with one of the
// prefixes, without those that are no Rego or do not compile.
func (l *law) graft(t *testing.T, prefixes ...string) graft {
	t.Helper()
	g := graft{mutants: map[int]mutant{}, off: map[int]map[string]any{}}
	variants := map[int][]*ast.Rule{}
	for _, file := range slices.Sorted(maps.Keys(l.modules)) {
		if !slices.ContainsFunc(prefixes, func(p string) bool { return strings.HasPrefix(file, p) }) {
			continue
		}
		for _, m := range mutants(file, l.text[file], logic...) {
			i := len(g.mutants) + 1
			changed, err := ast.ParseModule(strconv.Itoa(i), m.text)
			if err != nil {
				continue
			}
			from, to, other := difference(l.modules[file].Rules, changed.Rules)
			if from == to && len(other) == 0 {
				continue // nothing but space
			}
			g.mutants[i], g.off[i], variants[i] = m, map[string]any{}, other
			for k := from; k < to; k++ {
				g.off[i][clause(file, k)] = true
			}
		}
	}
	tests := beside(t)
	for {
		var faults ast.Errors
		grafted := g.modules(l, variants)
		maps.Copy(grafted, tests)
		g.compiler, faults = l.compile(grafted)
		if len(faults) == 0 {
			return g
		}
		for _, fault := range faults {
			i, err := strconv.Atoi(fault.Location.File)
			require.NoError(t, err, "%v", fault)
			delete(g.mutants, i)
			delete(variants, i)
		}
	}
}

// difference returns the clauses from..to of a module that the other one has
// changed, and what it has instead.
func difference(old, other []*ast.Rule) (from, to int, instead []*ast.Rule) {
	for from < min(len(old), len(other)) && old[from].Equal(other[from]) {
		from++
	}
	end := 0
	for end < min(len(old), len(other))-from && old[len(old)-1-end].Equal(other[len(other)-1-end]) {
		end++
	}
	return from, len(old) - end, other[from : len(other)-end]
}

func clause(file string, k int) string { return fmt.Sprintf("%s#%d", file, k) }

// modules returns the files with the variants grafted in.
func (g graft) modules(l *law, variants map[int][]*ast.Rule) map[string]*ast.Module {
	out := map[string]*ast.Module{}
	touched := map[string]bool{}
	for _, off := range g.off {
		for name := range off {
			touched[name] = true
		}
	}
	for file, m := range l.modules {
		copied := m.Copy()
		for k, rule := range copied.Rules {
			if touched[clause(file, k)] {
				guard(rule, fmt.Sprintf("not data.off[%q]", clause(file, k)))
			}
		}
		out[file] = copied
	}
	for i, rules := range variants {
		module := out[g.mutants[i].file]
		for _, rule := range rules {
			variant := rule.Copy()
			guard(variant, fmt.Sprintf("data.mutant == %q", strconv.Itoa(i)))
			variant.Module = module
			module.Rules = append(module.Rules, variant)
		}
	}
	return out
}

// guard puts a condition before every branch of a rule.
func guard(rule *ast.Rule, condition string) {
	for ; rule != nil; rule = rule.Else {
		rule.Body = ast.NewBody(append([]*ast.Expr{ast.MustParseExpr(condition)}, rule.Body...)...)
	}
}

// slow asks for the faults in the judge and the verdict as well: some minutes.
var slow = flag.Bool("judge", false, "try the faults in the judge and the verdict too")

// wording are the lines of a finding that only say what was compared with what.
var wording = regexp.MustCompile(`^without: "(?:comparator|limit_path|value|limit)":`)

// testJudge puts one fault after the other into the library that knows ranges,
// missing values, basis and age, and into the verdict. A case must notice, or a
// test beside them.
func testJudge(t *testing.T, l *law, cases map[string][]trial) {
	if !*slow {
		t.Skip("takes minutes: go test ./internal/mutation -run TestCases/judge -judge")
	}
	g := l.graft(t, "lib/judge/", "verdict/")
	own, err := l.own(t.Context(), g, 0)
	require.NoError(t, err)
	maps.DeleteFunc(g.mutants, func(_ int, m mutant) bool { return wording.MatchString(m.what) })
	tried := slices.Sorted(maps.Keys(g.mutants))
	left := survivors(tried, func(i int) bool {
		if l.caught(t.Context(), g, i, cases) {
			return true
		}
		now, err := l.own(t.Context(), g, i)
		return err != nil || now != own
	})
	requireNoticed(t, g.named(tried), g.named(left))
}

func (g graft) named(numbers []int) []mutant {
	out := make([]mutant, len(numbers))
	for i, n := range numbers {
		out[i] = g.mutants[n]
	}
	return out
}

// own returns what the Rego tests beside the judge and the verdict say.
func (l *law) own(ctx context.Context, g graft, i int) (string, error) {
	k, err := l.sit(ctx, g.compiler, "said := [data.lib.judge_test, data.verdict_test]", g.switched(i))
	if err != nil {
		return "", err
	}
	result, err := k.query.Eval(ctx)
	if err != nil {
		return "", err
	}
	said, err := rulebook.Canonical(result[0].Bindings["said"])
	return string(said), err
}

// switched is the data that puts a mutant in force; 0 is none of them.
func (g graft) switched(i int) map[string]any {
	off := g.off[i]
	if off == nil {
		off = map[string]any{}
	}
	return map[string]any{"mutant": strconv.Itoa(i), "off": off}
}

// caught says whether some case of some rule notices.
func (l *law) caught(ctx context.Context, g graft, i int, cases map[string][]trial) bool {
	for _, meta := range l.book.Catalogue() {
		data := g.switched(i)
		data["catalogue"] = l.alone(meta.ID, meta.At)
		k, err := l.court(ctx, g.compiler, data)
		if err != nil || slices.ContainsFunc(cases[meta.ID], func(c trial) bool { return c.notices(ctx, k) }) {
			return true
		}
	}
	return false
}

// beside parses the Rego tests that lie beside the judge and the verdict.
func beside(t *testing.T) map[string]*ast.Module {
	t.Helper()
	modules := map[string]*ast.Module{}
	pack := os.DirFS("../../policies")
	for _, folder := range []string{"lib/judge", "verdict"} {
		files, err := fs.Glob(pack, folder+"/*_test.rego")
		require.NoError(t, err)
		require.NotEmpty(t, files)
		for _, name := range files {
			data, err := fs.ReadFile(pack, name)
			require.NoError(t, err)
			modules[name], err = ast.ParseModule(name, string(data))
			require.NoError(t, err)
		}
	}
	return modules
}
