package evidence_test

import (
	"io"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/evidence"
)

// TestOpen: an ordinary file inside the folder is read, and nothing else.
func TestOpen(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "build")
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "folder"), 0o755))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "good.txt"), []byte("good"), 0o644))
	require.NoError(t, os.WriteFile(filepath.Join(dir, "..", "away.txt"), []byte("away"), 0o644))
	require.NoError(t, os.Symlink("good.txt", filepath.Join(dir, "link.txt")))
	f, err := evidence.Open(dir, "good.txt")
	require.NoError(t, err)
	defer f.Close()
	data, err := io.ReadAll(f)
	require.NoError(t, err)
	require.Equal(t, "good", string(data))
	for path, want := range map[string]string{
		"gone.txt":    "is not there",
		"folder":      "names a folder",
		"link.txt":    "is a symbolic link",
		"../away.txt": "leaves the build's folder",
	} {
		_, err := evidence.Open(dir, path)
		require.ErrorContains(t, err, want)
		require.IsType(t, &evidence.PathError{}, err)
	}
}
