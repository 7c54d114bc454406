package rulecase

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
	"trialfit/internal/verdict"
)

// TestCases runs every case of every shipped rule: the outcome is the one
// expected, and the lines marked are exactly the lines found.
func TestCases(t *testing.T) {
	cases, err := Load(os.DirFS("../../policies"))
	require.NoError(t, err)
	base, err := check.New(check.Options{})
	require.NoError(t, err)
	reached := map[string]bool{}
	for _, c := range cases {
		reached[c.Rule+" "+c.Outcome] = true // each case below proves its own
	}
	for _, m := range base.Book.Catalogue() {
		for _, outcome := range m.Outcomes {
			require.True(t, reached[m.ID+" "+outcome], "%s: no case reaches %q", m.ID, outcome)
		}
	}
	// Everything is compiled once, before books with one rule are split off.
	chains := [][]rulebook.Region{nil}
	for _, code := range base.Book.Regions() {
		chain, err := base.Book.Chain(code)
		require.NoError(t, err)
		chains = append(chains, chain)
	}
	require.NoError(t, base.Book.Together(chains...))
	alone := map[string]*check.Checker{}
	for _, m := range base.Book.Catalogue() {
		alone[m.ID] = Alone(base, m.ID)
	}
	var lib library
	t.Cleanup(func() { lib.require(t, base.Book) })
	for _, c := range cases {
		t.Run(c.Rule+"/"+c.Name, func(t *testing.T) {
			t.Parallel()
			require.Contains(t, base.Book.Rules, c.Rule)
			r, err := c.Run(t.Context(), alone[c.Rule], t.TempDir())
			require.NoError(t, err)
			outcome, marks := c.Found(r)
			require.Equal(t, c.Outcome, outcome, "%s", r.Decision)
			require.Equal(t, c.Marks(), marks)
			lib.add(c.Rule, r)
			if meta := base.Book.Rules[c.Rule]; c.Outcome != verdict.Waived || !meta.Waivable {
				require.Contains(t, meta.Outcomes, c.Outcome, "an outcome the rule does not declare")
			}
		})
	}
}
