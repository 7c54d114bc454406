package cli

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"
	"github.com/spf13/cobra"

	"trialfit/internal/manifest"
)

// settle is how long files must be at rest before they are checked again: an
// editor writes a file in several steps.
const settle = 200 * time.Millisecond

// watch checks at once and again whenever a file beside the manifests
// changes, until the command is interrupted.
func (a *app) watch(cmd *cobra.Command, args []string, f checkFlags) error {
	switch {
	case slices.Contains(args, manifest.Stdin):
		return errors.New(`--watch needs files: standard input, "-", is read once`)
	case f.record:
		return errors.New("--watch and --record-digests exclude each other: a digest is recorded once, by a person who has looked at the file")
	}
	outputs, err := parseWrites(f.writes)
	if err != nil {
		return err
	}
	ours := map[string]bool{}
	for _, o := range outputs {
		ours[place(o.file)] = true
	}
	w, err := fsnotify.NewWatcher()
	if err != nil {
		return fmt.Errorf("watching files: %w", err)
	}
	defer w.Close()
	for _, arg := range args {
		if err := addFolders(w, arg); err != nil {
			return err
		}
	}
	changes := make(chan struct{}, 1)
	go forward(cmd.Context(), w, ours, changes)
	again(cmd.Context(), changes, func() {
		out := cmd.OutOrStdout()
		if emphasis(out) {
			fmt.Fprint(out, "\x1b[H\x1b[2J")
		}
		if err := a.check(cmd, args, f); err != nil && err != errFail && err != errTold {
			fmt.Fprintln(cmd.ErrOrStderr(), "trialfit:", err)
		}
		fmt.Fprintln(out, "\nwatching for changes; interrupt to end")
	})
	return nil
}

// again runs check at once and after every change, until ctx ends.
func again(ctx context.Context, changes <-chan struct{}, check func()) {
	for {
		check()
		select {
		case <-ctx.Done():
			return
		case <-changes:
		}
	}
}

// place is the one name of a file, however it was written.
func place(file string) string {
	if abs, err := filepath.Abs(file); err == nil {
		return abs
	}
	return filepath.Clean(file)
}

// concerns says whether an event may have changed a build. An editor's hidden
// files do not, nor do reports of ours.
func concerns(e fsnotify.Event, ours map[string]bool) bool {
	return !strings.HasPrefix(filepath.Base(e.Name), ".") && !e.Has(fsnotify.Chmod) && !ours[place(e.Name)]
}

// forward turns bursts of file events into single changes.
func forward(ctx context.Context, w *fsnotify.Watcher, ours map[string]bool, changes chan<- struct{}) {
	rest := time.NewTimer(0)
	rest.Stop()
	for {
		select {
		case <-ctx.Done():
			return
		case e := <-w.Events:
			if concerns(e, ours) {
				rest.Reset(settle)
			}
		case <-w.Errors:
			rest.Reset(settle)
		case <-rest.C:
			select {
			case changes <- struct{}{}:
			default: // one is waiting already
			}
		}
	}
}

// addFolders watches the folder of a file, or a folder and all below it.
func addFolders(w *fsnotify.Watcher, path string) error {
	info, err := os.Stat(path)
	if err == nil && !info.IsDir() {
		path = filepath.Dir(path)
	}
	return filepath.WalkDir(path, func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return fmt.Errorf("watching %s: %w", filepath.ToSlash(name), err)
		case !d.IsDir():
			return nil
		case name != path && strings.HasPrefix(d.Name(), "."):
			return filepath.SkipDir
		default:
			return w.Add(name)
		}
	})
}
