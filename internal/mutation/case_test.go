package mutation

import (
	"context"
	"os"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulecase"
	"trialfit/internal/verdict"
)

// TestCases puts faults where no case may let them by.
func TestCases(t *testing.T) {
	t.Parallel()
	base := checker(t, "")
	l := read(t, base.Book)
	cases := trials(t, l, base)
	t.Run("value taken away", func(t *testing.T) { testLess(t, l, base, cases) })
	t.Run("fault in a rule", func(t *testing.T) { testRules(t, l, cases) })
	t.Run("looser limit", func(t *testing.T) { testLimits(t, l, cases) })
	t.Run("fault in the judge", func(t *testing.T) { testJudge(t, l, cases) })
}

// trial is one case of a rule with what the rule, unchanged, says of it.
type trial struct {
	rulecase.Case
	report  *check.Report
	input   ast.Value
	outcome string
	marks   []rulecase.Mark
}

// trials assembles every case once, by rule, in the order of the file.
func trials(t *testing.T, l *law, base *check.Checker) map[string][]trial {
	t.Helper()
	cases, err := rulecase.Load(os.DirFS("../../policies"))
	require.NoError(t, err)
	all := map[string][]trial{}
	shared := pool{}
	for _, c := range cases {
		require.Contains(t, base.Book.Rules, c.Rule, "go run ./internal/generate")
		r, err := c.Prepare(base, t.TempDir())
		require.NoError(t, err, "%s: %s", c.Rule, c.Name)
		input, err := ast.InterfaceToValue(r.Input)
		require.NoError(t, err)
		r.Input, r.Computed = nil, nil // of thousands of cases nothing is held that nobody reads
		all[c.Rule] = append(all[c.Rule], trial{Case: c, report: r, input: shared.value(input)})
	}
	compiler, faults := l.compile(nil)
	require.Empty(t, faults)
	for rule, list := range all {
		k, err := l.court(t.Context(), compiler, map[string]any{"catalogue": l.alone(rule, base.Book.Rules[rule].At)})
		require.NoError(t, err)
		for i := range list {
			v, err := k.judge(t.Context(), list[i].input)
			require.NoError(t, err)
			list[i].outcome, list[i].marks = list[i].found(v)
			require.Equal(t, list[i].Outcome, list[i].outcome, "%s: %s", rule, list[i].Name)
		}
	}
	return all
}

// pool holds parts of input documents by their hash. Documents of small builds
// differ in little: what they have in common is held once.
type pool map[int][]*ast.Term

func (p pool) term(t *ast.Term) *ast.Term {
	key := t.Hash()
	for _, held := range p[key] {
		if held.Equal(t) {
			return held
		}
	}
	held := ast.NewTerm(p.value(t.Value))
	p[key] = append(p[key], held)
	return held
}

func (p pool) value(v ast.Value) ast.Value {
	switch v := v.(type) {
	case ast.Object:
		pairs := make([][2]*ast.Term, 0, v.Len())
		v.Foreach(func(name, part *ast.Term) { pairs = append(pairs, [2]*ast.Term{p.term(name), p.term(part)}) })
		return ast.NewObject(pairs...)
	case *ast.Array:
		parts := make([]*ast.Term, 0, v.Len())
		v.Foreach(func(part *ast.Term) { parts = append(parts, p.term(part)) })
		return ast.NewArray(parts...)
	default:
		return v
	}
}

func (c *trial) found(v *verdict.Verdict) (string, []rulecase.Mark) {
	r := *c.report
	r.Verdict = v
	return c.Found(&r)
}

// notices says whether a case has another outcome or points at other lines
// than it should. An evaluation that breaks is noticed too.
func (c *trial) notices(ctx context.Context, k *court) bool {
	v, err := k.judge(ctx, c.input)
	if err != nil {
		return true
	}
	outcome, marks := c.found(v)
	return outcome != c.outcome || !slices.Equal(marks, c.marks)
}

// survivors tries every mutant, side by side, and returns what nobody noticed.
func survivors[M any](all []M, noticed func(M) bool) []M {
	lived := make([]bool, len(all))
	var next atomic.Int64
	var wg sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for i := next.Add(1) - 1; i < int64(len(all)); i = next.Add(1) - 1 {
				lived[i] = !noticed(all[i])
			}
		})
	}
	wg.Wait()
	var left []M
	for i, m := range all {
		if lived[i] {
			left = append(left, m)
		}
	}
	return left
}

// requireNoticed fails for each mutant left that is not listed as equivalent, and
// for each among those tried that is listed and was noticed.
func requireNoticed(t *testing.T, tried, left []mutant) {
	t.Helper()
	equivalent := lines(t, "testdata/equivalent.txt")
	var fresh, stale []string
	lived := map[string]bool{}
	for _, m := range left {
		lived[m.name()] = true
		if !slices.Contains(equivalent, m.name()) {
			fresh = append(fresh, m.String())
		}
	}
	for _, m := range tried {
		if slices.Contains(equivalent, m.name()) && !lived[m.name()] {
			stale = append(stale, m.name())
		}
	}
	slices.Sort(fresh)
	require.Empty(t, strings.Join(fresh, "\n"), "nothing notices")
	require.Empty(t, strings.Join(stale, "\n"), "listed as equivalent, and noticed")
	t.Logf("%d faults, %d equivalent", len(tried), len(left))
}
