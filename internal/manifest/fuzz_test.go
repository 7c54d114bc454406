package manifest_test

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
)

// FuzzLoad holds the loader to its promise for any bytes: a manifest of which
// every given leaf has a value, or problems of one line each, in file order.
func FuzzLoad(f *testing.F) {
	l := newLoader(f)
	files, err := filepath.Glob("testdata/bad/*" + manifest.Suffix)
	require.NoError(f, err)
	for _, file := range append(files, example) {
		data, err := os.ReadFile(file)
		require.NoError(f, err)
		if len(data) < 12<<10 { // long ones only slow the search down
			f.Add(data)
		}
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		m, err := l.Read(bytes.NewReader(data), "fuzz"+manifest.Suffix, ".")
		if err != nil {
			var problems manifest.Problems
			require.True(t, errors.As(err, &problems))
			requireLines(t, data, problems)
			return
		}
		same(t, m, m.Root)
	})
}

func requireLines(t *testing.T, data []byte, problems manifest.Problems) {
	require.NotEmpty(t, problems)
	last := manifest.Position{}
	rows := bytes.Count(data, []byte("\n")) + 1
	for _, p := range problems {
		line := p.String()
		require.True(t, strings.HasPrefix(line, "fuzz"+manifest.Suffix+":"), line)
		require.NotContains(t, line, "\n")
		require.Less(t, len(line), 2000)
		require.LessOrEqual(t, p.Line, rows, line)
		require.True(t, p.Line > last.Line || p.Line == last.Line && p.Column >= last.Column, line)
		last = p.Position
	}
}
