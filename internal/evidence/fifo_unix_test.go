//go:build unix

package evidence

import (
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// A pipe without a writer would hold the run up for ever.
func TestPipesAreNotOpened(t *testing.T) {
	dir := t.TempDir()
	pipe := filepath.Join(dir, "pipe")
	require.NoError(t, syscall.Mkfifo(pipe, 0o644))
	_, err := Inspect(dir, "pipe", nil)
	require.EqualError(t, err, `evidence path "pipe" names a device, pipe or socket: name an ordinary file`)
	_, err = ReadSums(pipe)
	require.ErrorContains(t, err, "is no ordinary file")
}
