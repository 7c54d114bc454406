package report

import (
	"io"
	"os"
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

// TestSpoolWithoutAPlace: a report that can't be kept is an error, never a
// shorter report.
func TestSpoolWithoutAPlace(t *testing.T) {
	t.Setenv("TMPDIR", t.TempDir()+"/none")
	t.Setenv("TMP", t.TempDir()+`\none`)
	var s Spool
	defer s.Close()
	_, err := s.Write(make([]byte, inMemory))
	require.NoError(t, err)
	_, err = s.Write([]byte("x"))
	require.ErrorContains(t, err, "keeping a report until it is whole")
}
