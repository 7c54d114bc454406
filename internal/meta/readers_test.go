package meta

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures/sheet"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// TestReaders: every leaf of the manifest names what reads it, and that is
// true. Leaves that only a document will read and no dossier prints yet are
// listed in testdata/unread-leaves.txt; the list may only shrink.
func TestReaders(t *testing.T) {
	figures, rules := map[string]bool{}, map[string]bool{}
	for _, f := range sheet.All() {
		for _, in := range f.Inputs {
			figures[whole(in.Path)] = true
		}
	}
	book, err := rulebook.Open(sheet.All())
	require.NoError(t, err)
	for _, m := range book.Catalogue() {
		for _, path := range m.Reads {
			if inside, ok := strings.CutPrefix(path, "build."); ok {
				rules[whole(inside)] = true
			}
		}
	}
	unread, shown := map[string]bool{}, printed(t)
	leaves(schema.Manifest(), "", func(path string, s *schema.Shape) {
		switch s.Reader {
		case "figure":
			require.True(t, figures[path], "%s: no figure reads it", path)
		case "rule":
			require.True(t, rules[path], "%s: no rule reads it", path)
		case "judge":
			// What the judge itself works with: ids, records, evidence, waivers.
		case "document":
			require.False(t, figures[path] || rules[path], "%s: is read now; say by what", path)
			if !shown[path] {
				unread[path] = true
			}
		default:
			t.Errorf("%s: x-reader is %q, needs figure, rule, judge or document", path, s.Reader)
		}
	})
	file := filepath.Join(root, "testdata", "unread-leaves.txt")
	got := strings.Join(slices.Sorted(maps.Keys(unread)), "\n") + "\n"
	if os.Getenv("UPDATE_CONTRACT") != "" {
		require.NoError(t, os.WriteFile(file, []byte(got), 0o644))
	}
	want, err := os.ReadFile(file)
	require.NoError(t, err)
	require.Equal(t, string(want), got)
}

// whole is the leaf that a path below it belongs to, such as the diameter in
// a tyre's size code; joints are written at the chain.
func whole(path string) string {
	chain, rest, derived := strings.Cut(path, ".joints.*.")
	if !derived {
		return strings.Replace(path, "_size.diameter", "_size", 1)
	}
	switch part, _, _ := strings.Cut(rest, "."); part {
	case "inner":
		return chain + ".port"
	case "seal", "turns":
		return chain + "." + part
	default:
		return chain + ".end"
	}
}

func leaves(s *schema.Shape, path string, f func(string, *schema.Shape)) {
	if s.Type == schema.Leaf {
		f(path, s)
		return
	}
	if s.Type == schema.List {
		path += ".*"
	}
	for _, field := range s.Fields {
		leaves(field, strings.TrimPrefix(path+"."+field.Name, "."), f)
	}
}
