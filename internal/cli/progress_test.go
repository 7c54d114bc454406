package cli

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestProgress(t *testing.T) {
	var out bytes.Buffer
	p := progress{&out, 12}
	p.at(1, "a.build.yaml")
	p.at(2, "b.build.yaml")
	p.end()
	require.Equal(t, "\r\x1b[Kchecking 1 of 12: a.build.yaml\r\x1b[Kchecking 2 of 12: b.build.yaml\r\x1b[K", out.String())
}

// Neither a buffer nor a file is a terminal: logs of a CI job stay clean.
func TestProgressOnlyOnATerminal(t *testing.T) {
	file, err := os.Create(filepath.Join(t.TempDir(), "log"))
	require.NoError(t, err)
	defer file.Close()
	for _, p := range []progress{newProgress(&bytes.Buffer{}, 1000), newProgress(file, 1000)} {
		p.at(1, "a.build.yaml")
		p.end()
	}
	info, err := file.Stat()
	require.NoError(t, err)
	require.Zero(t, info.Size())
}
