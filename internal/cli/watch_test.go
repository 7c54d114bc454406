package cli

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"github.com/fsnotify/fsnotify"
	"github.com/stretchr/testify/require"
)

func TestAgain(t *testing.T) {
	ctx, cancel := context.WithCancel(t.Context())
	changes := make(chan struct{}, 2)
	changes <- struct{}{}
	changes <- struct{}{}
	runs := 0
	again(ctx, changes, func() {
		if runs++; runs == 3 {
			cancel()
		}
	})
	require.Equal(t, 3, runs, "once at the start, once for each change")
}

// TestForward: saving a file in a watched folder, or in one below it, is told
// as a change; the wait is for the event itself, not for a time.
func TestForward(t *testing.T) {
	dir := t.TempDir()
	below := filepath.Join(dir, "evidence")
	require.NoError(t, os.MkdirAll(below, 0o755))
	w, err := fsnotify.NewWatcher()
	require.NoError(t, err)
	defer w.Close()
	require.NoError(t, addFolders(w, dir))
	changes := make(chan struct{}, 1)
	go forward(t.Context(), w, changes)
	for _, name := range []string{filepath.Join(dir, "x.build.yaml"), filepath.Join(below, "ticket.txt")} {
		require.NoError(t, os.WriteFile(name, []byte("x"), 0o644))
		select {
		case <-changes:
		case <-t.Context().Done():
			t.Fatal("no change was told")
		}
	}
}
