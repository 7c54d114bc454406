package meta

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/rulebook"
)

// TestContract freezes the two documents that others build on: what the rules
// see, and what they decide. UPDATE_CONTRACT=1 rewrites them; a difference is a
// change of the contract and needs a release note.
func TestContract(t *testing.T) {
	dir := filepath.Join(root, "testdata", "contract")
	c, err := check.New(check.Options{Hold: "install", Today: "2026-11-25"})
	require.NoError(t, err)
	r, err := c.File(t.Context(), filepath.Join(dir, "small.build.yaml"))
	require.NoError(t, err)
	input, err := rulebook.Canonical(r.Input)
	require.NoError(t, err)
	for name, got := range map[string][]byte{"small.input.json": input, "small.verdict.json": r.Decision} {
		file := filepath.Join(dir, name)
		if os.Getenv("UPDATE_CONTRACT") != "" {
			require.NoError(t, os.WriteFile(file, got, 0o644))
			continue
		}
		want, err := os.ReadFile(file)
		require.NoError(t, err)
		require.Equal(t, string(want), string(got), name)
	}
}
