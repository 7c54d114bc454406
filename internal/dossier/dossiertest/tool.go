package dossiertest

import (
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// Tool is the path of a program that a test needs: without it the test is
// skipped, but never in CI.
func Tool(t testing.TB, name string) string {
	t.Helper()
	path, err := exec.LookPath(name)
	if err != nil {
		absent(t, name)
	}
	return path
}

// Axe is the script of axe-core, which AXE_CORE names.
func Axe(t testing.TB) string {
	t.Helper()
	file := os.Getenv("AXE_CORE")
	if file == "" {
		absent(t, "axe-core, named by AXE_CORE")
	}
	script, err := os.ReadFile(file)
	require.NoError(t, err)
	return string(script)
}

func absent(t testing.TB, what string) {
	t.Helper()
	if os.Getenv("CI") != "" {
		t.Fatalf("needs %s, which CI installs", what)
	}
	t.Skipf("needs %s", what)
}
