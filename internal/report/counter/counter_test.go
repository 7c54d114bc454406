package counter_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/report"
	"trialfit/internal/report/counter"
	"trialfit/internal/verdict"
)

// TestListIsWhole: each rule and question of the chain stands in the list once,
// under the hold point it is due at.
func TestListIsWhole(t *testing.T) {
	c, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	for _, code := range c.Book.Regions() {
		chain, err := c.Book.Chain(code)
		require.NoError(t, err)
		var out strings.Builder
		require.NoError(t, counter.List(&out, c.Book, chain, 80))
		for _, m := range c.Book.Catalogue() {
			want := 0
			for _, r := range chain {
				if r.Code == m.Region && m.Collects == "" {
					want = 1
				}
			}
			require.Equal(t, want, strings.Count(out.String(), "  "+m.ID+" · "), "%s: %s", code, m.ID)
		}
		for line := range strings.Lines(out.String()) {
			require.LessOrEqual(t, len([]rune(strings.TrimSuffix(line, "\n"))), 100, line)
		}
	}
}

// TestLetter: facts are filled in, what is not known is named, each question
// that the verdict raises is asked once.
func TestLetter(t *testing.T) {
	c, err := check.New(check.Options{Today: "2026-11-25", Hold: "handover"})
	require.NoError(t, err)
	r, err := c.File(t.Context(), "../../../examples/patrol-truck/patrol-truck.build.yaml")
	require.NoError(t, err)
	items := verdict.Case{Manifest: r.Manifest, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	var out strings.Builder
	require.NoError(t, counter.Letter(&out, report.Build{Report: r, Items: items}, c.Book, 80))
	raised := 0
	for _, i := range items {
		if i.Rule.Collects == "" {
			continue
		}
		n := strings.Count(out.String(), "("+i.Finding.Subject+", by ")
		if i.Finding.Outcome == verdict.NotApplicable {
			require.Zero(t, n, i.Finding.Subject)
		} else {
			raised++
			require.Equal(t, 1, n, i.Finding.Subject)
		}
	}
	require.Greater(t, raised, 3)
	require.Contains(t, out.String(), "engine that goes in, displacement: 3.9 L")
	require.Contains(t, out.String(), "not known yet: ")
	require.Contains(t, out.String(), "Final approval rests with the local authority.")
}
