//go:build unix

package check_test

import (
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestPipe must not wait for a writer.
func TestPipe(t *testing.T) {
	c := lay(t, nil)
	require.NoError(t, syscall.Mkfifo("pipe.build.yaml", 0o644))
	_, err := c.Loader.File("pipe.build.yaml")
	require.EqualError(t, err, "pipe.build.yaml: is a device, pipe or socket: name an ordinary file")
}
