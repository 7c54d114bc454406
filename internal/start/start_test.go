package start

import (
	"bytes"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/report"
	"trialfit/internal/schema"
	"trialfit/internal/verdict"
)

func checker(t *testing.T) *check.Checker {
	t.Helper()
	c, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	return c
}

// TestManifestLoads: the first manifest is read without a fault, names the
// build, and leads to at most ten first questions.
func TestManifestLoads(t *testing.T) {
	c := checker(t)
	text, err := Manifest(schema.Manifest(), `Ridge truck: "one"`)
	require.NoError(t, err)
	m, err := c.Loader.Read(bytes.NewReader(text), "first"+manifest.Suffix, t.TempDir())
	require.NoError(t, err)
	require.Equal(t, `Ridge truck: "one"`, m.Root.Word("build.name"))
	r, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	require.Equal(t, verdict.Fail, r.Verdict.Verdict)
	items := verdict.Case{Manifest: m, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()
	next := report.Build{Report: r, Items: items}.ToFindOut()[0]
	require.Equal(t, "plan", next.Hold)
	require.Greater(t, len(next.Asks), 10)
	require.GreaterOrEqual(t, next.Asks[0].Waiting, next.Asks[9].Waiting)
}

// TestManifestUncommented: with every comment sign taken away the examples are
// a manifest of the right form: nothing in it is refused by key or by unit.
func TestManifestUncommented(t *testing.T) {
	text, err := Manifest(schema.Manifest(), "whole")
	require.NoError(t, err)
	var rows []string
	for row := range strings.SplitSeq(string(text), "\n") {
		indent := row[:len(row)-len(strings.TrimLeft(row, " "))]
		bare := strings.TrimLeft(row, " ")
		if rest, comment := strings.CutPrefix(bare, "# "); comment {
			bare = rest
		}
		rows = append(rows, indent+bare)
	}
	whole := strings.Join(rows[4:], "\n")
	_, err = checker(t).Loader.Read(strings.NewReader(whole), "whole"+manifest.Suffix, t.TempDir())
	if err == nil {
		return
	}
	for line := range strings.SplitSeq(err.Error(), "\n") {
		require.Regexp(t, `is not an id under|escap|does not exist|evidence`, line, "only references may hang in the air")
	}
}

func TestLacking(t *testing.T) {
	text, err := Manifest(schema.Manifest(), "whole")
	require.NoError(t, err)
	rest, err := Lacking(schema.Manifest(), text)
	require.NoError(t, err)
	require.Contains(t, string(rest), "# chassis:")
	require.NotContains(t, string(rest), "# build:")

	var all strings.Builder
	for _, s := range schema.Manifest().Fields {
		all.WriteString(s.Name + ": 1\n")
	}
	rest, err = Lacking(schema.Manifest(), []byte(all.String()))
	require.NoError(t, err)
	require.Empty(t, rest)
}
