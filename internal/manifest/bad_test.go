package manifest_test

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
	"trialfit/internal/schema"
)

var update = flag.Bool("update", false, "write the .want files from what is found")

// newLoader reads manifests of the shipped form, without default spreads.
func newLoader(tb testing.TB) *manifest.Loader {
	v, err := schema.NewValidator(nil)
	require.NoError(tb, err)
	return &manifest.Loader{Validator: v}
}

// TestBad compares every line that a bad manifest is answered with. To add
// one: write testdata/bad/NAME.build.yaml, run with -update, and read what a
// mechanic would read.
func TestBad(t *testing.T) {
	l := newLoader(t)
	files, err := filepath.Glob("testdata/bad/*" + manifest.Suffix)
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), manifest.Suffix)
		t.Run(name, func(t *testing.T) {
			data, err := os.ReadFile(file)
			require.NoError(t, err)
			m, err := l.Read(bytes.NewReader(data), name+manifest.Suffix, filepath.Dir(file))
			require.Nil(t, m)
			require.IsType(t, manifest.Problems{}, err)
			got := strings.ReplaceAll(err.Error(), name+manifest.Suffix+":", "") + "\n"
			want := filepath.Join(filepath.Dir(file), name+".want")
			if *update {
				require.NoError(t, os.WriteFile(want, []byte(got), 0o644))
			}
			expected, err := os.ReadFile(want)
			require.NoError(t, err)
			require.Equal(t, string(expected), got)
		})
	}
}
