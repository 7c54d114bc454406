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
	go forward(t.Context(), w, nil, changes)
	for _, name := range []string{filepath.Join(dir, "x.build.yaml"), filepath.Join(below, "ticket.txt")} {
		require.NoError(t, os.WriteFile(name, []byte("x"), 0o644))
		select {
		case <-changes:
		case <-t.Context().Done():
			t.Fatal("no change was told")
		}
	}
}

// TestConcerns: a report written beside the manifest must not call for the
// next check, or the command would never come to rest.
func TestConcerns(t *testing.T) {
	dir := t.TempDir()
	ours := map[string]bool{filepath.Join(dir, "report.json"): true}
	for _, c := range []struct {
		name string
		op   fsnotify.Op
		want bool
	}{
		{"x.build.yaml", fsnotify.Write, true},
		{"x.build.yaml", fsnotify.Create, true},
		{"ticket.txt", fsnotify.Remove, true},
		{"x.build.yaml", fsnotify.Chmod, false},
		{".x.build.yaml.swp", fsnotify.Write, false},
		{"report.json", fsnotify.Create, false},
		{"./report.json", fsnotify.Write, false},
	} {
		require.Equal(t, c.want, concerns(fsnotify.Event{Name: dir + "/" + c.name, Op: c.op}, ours), c)
	}
}
