package mutation

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/rulebook"
)

// testLimits makes each limit looser by a hundredth and by a quarter. A case of
// a rule that reads it must notice, so that the number itself is held, not only
// its order of size.
func testLimits(t *testing.T, l *law, cases map[string][]trial) {
	compiler, faults := l.compile(nil)
	require.Empty(t, faults)
	var all []looser
	for _, limit := range l.book.Limits() {
		if strings.HasPrefix(limit.Path, "limits.spread.") {
			continue // widens what the manifest says, before any rule
		}
		for _, share := range []float64{0.01, 0.25} {
			all = append(all, looser{limit, share})
		}
	}
	require.NotEmpty(t, all)
	for _, m := range survivors(all, func(m looser) bool { return l.held(t, compiler, cases, m) }) {
		assert.Fail(t, "no case notices", m)
	}
}

// looser is a limit made looser by a share of itself.
type looser struct {
	limit *rulebook.Limit
	share float64
}

// step is the change in SI units: a share of the limit, but where it is zero a
// whole unit, and where it is a count a whole one.
func (m looser) step() float64 {
	x, _ := m.limit.Value.Floats()
	step := m.share * x
	if x == 0 {
		step = 100 * m.share
	}
	if count, err := strconv.Atoi(m.limit.Value.Text); err == nil && count > 1 {
		step = max(1, step)
	}
	if m.limit.Tighter == "higher" {
		step = -step
	}
	return step
}

func (m looser) String() string {
	return fmt.Sprintf("%s: %s becomes looser by %g %%", m.limit.Path, m.limit.Value.Text, 100*m.share)
}

func (l *law) held(t *testing.T, compiler *ast.Compiler, cases map[string][]trial, m looser) bool {
	low, high := m.limit.Value.Floats()
	steps := strings.Split(m.limit.Path, ".")
	limits := maps.Clone(l.data["limits"].(map[string]any))
	area := maps.Clone(limits[steps[1]].(map[string]any))
	entry := maps.Clone(area[steps[2]].(map[string]any))
	entry["low"], entry["high"] = number(low+m.step()), number(high+m.step())
	area[steps[2]], limits[steps[1]] = entry, area
	for _, meta := range l.book.Catalogue() {
		if !slices.Contains(meta.Reads, m.limit.Path) {
			continue
		}
		k, err := l.court(t.Context(), compiler, map[string]any{"catalogue": l.alone(meta.ID, meta.At), "limits": limits})
		if err != nil || slices.ContainsFunc(cases[meta.ID], func(c trial) bool { return c.notices(t.Context(), k) }) {
			return true
		}
	}
	return false
}

func number(x float64) json.Number { return json.Number(strconv.FormatFloat(x, 'g', -1, 64)) }
