package report

import (
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestSpool: what is read is what was written, below the size from which a file
// is made, at it and above; and no file is left.
func TestSpool(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("TMPDIR", dir)
	t.Setenv("TMP", dir) // Windows
	for _, size := range []int{0, 1, inMemory - 1, inMemory, inMemory + 1, 3*inMemory + 7} {
		var s Spool
		text := strings.Repeat("0123456789abcde\n", size/16+1)[:size]
		for rest := text; rest != ""; {
			n := min(len(rest), 1000)
			_, err := io.WriteString(&s, rest[:n])
			require.NoError(t, err)
			rest = rest[n:]
		}
		require.Equal(t, size > inMemory, s.file != nil)
		back, err := io.ReadAll(&s)
		require.NoError(t, err)
		require.True(t, text == string(back), size)
		s.Close()
		left, err := os.ReadDir(dir)
		require.NoError(t, err)
		require.Empty(t, left)
	}
}

// TestSpoolWithoutAPlace: where no file can be made the report is whole all the
// same.
func TestSpoolWithoutAPlace(t *testing.T) {
	none := filepath.Join(t.TempDir(), "none")
	t.Setenv("TMPDIR", none)
	t.Setenv("TMP", none)
	var s Spool
	defer s.Close()
	text := make([]byte, inMemory+1)
	for range 2 {
		_, err := s.Write(text)
		require.NoError(t, err)
	}
	require.Nil(t, s.file)
	back, err := io.ReadAll(&s)
	require.NoError(t, err)
	require.Len(t, back, 2*len(text))
}

// TestSpoolFull: what could not be kept is an error, never a shorter report.
func TestSpoolFull(t *testing.T) {
	t.Setenv("TMPDIR", t.TempDir())
	t.Setenv("TMP", t.TempDir())
	var s Spool
	_, err := s.Write(make([]byte, inMemory+1))
	require.NoError(t, err)
	require.NoError(t, s.file.Close()) // nothing more can be written to it
	_, err = s.Write([]byte("x"))
	require.NoError(t, err, "held back")
	_, err = io.ReadAll(&s)
	require.ErrorContains(t, err, "keeping a report until it is whole")
}
