package cli

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
)

func TestTellIsCapped(t *testing.T) {
	problems := make(manifest.Problems, 1000)
	for i := range problems {
		problems[i] = manifest.Problem{File: "x.build.yaml", Position: manifest.Position{Line: i + 1, Column: 1}, Message: "unknown key"}
	}
	var out strings.Builder
	tell(&out, problems)
	lines := strings.Split(strings.TrimSpace(out.String()), "\n")
	require.Len(t, lines, mostProblems+1)
	require.Equal(t, "x.build.yaml: … and 950 more like these", lines[mostProblems])
}
