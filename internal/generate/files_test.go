package main

import (
	"os"
	"testing"

	"github.com/stretchr/testify/require"
)

// TestCurrent fails when a generated file is not what its sources say.
func TestCurrent(t *testing.T) {
	files, err := Files("../..")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	for name, want := range files {
		got, err := os.ReadFile(name)
		require.NoError(t, err)
		require.Equal(t, string(want), string(got), "%s is out of date: go run ./internal/generate", name)
	}
}
