package meta

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/cli"
)

// TestReadmeOutput runs the README's first command and compares what it
// prints with what the README shows.
func TestReadmeOutput(t *testing.T) {
	t.Chdir(root)
	data, err := os.ReadFile("README.md")
	require.NoError(t, err)
	readme := string(data)
	_, block, ok := strings.Cut(readme, "```sh\ngo run ./cmd/trialfit ")
	require.True(t, ok)
	command, _, _ := strings.Cut(block, "\n")
	_, shown, ok := strings.Cut(readme, "```text\n")
	require.True(t, ok)
	shown, _, ok = strings.Cut(shown, "```")
	require.True(t, ok)

	var out, errs bytes.Buffer
	code := cli.Main(strings.Fields(command), strings.NewReader(""), &out, &errs)
	require.Equal(t, 1, code)
	require.Empty(t, errs.String())
	if os.Getenv("UPDATE_README") != "" {
		require.NoError(t, os.WriteFile("README.md", []byte(strings.Replace(readme, "```text\n"+shown+"```", "```text\n"+out.String()+"```", 1)), 0o644))
		return
	}
	require.Equal(t, out.String(), shown, "UPDATE_README=1 go test ./internal/meta puts it in")
}

// TestHelpFitsAScreen: trialfit --help is read on a terminal of 24 lines.
func TestHelpFitsAScreen(t *testing.T) {
	var out bytes.Buffer
	require.Zero(t, cli.Main([]string{"--help"}, strings.NewReader(""), &out, &out))
	lines := strings.Split(strings.TrimRight(out.String(), "\n"), "\n")
	require.LessOrEqual(t, len(lines), 24)
	for _, line := range lines {
		require.LessOrEqual(t, len([]rune(line)), 100)
	}
}
