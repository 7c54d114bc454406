package meta

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"gopkg.in/yaml.v3"
)

const actionFile = ".github/actions/check/action.yml"

type action struct {
	Inputs  map[string]struct{ Description, Default string }
	Outputs map[string]struct{ Description, Value string }
	Runs    struct {
		Using string
		Steps []step
	}
}

type step struct {
	Name, ID, Uses, Shell, Run, If string
	Env, With                      map[string]string
}

func readAction(t *testing.T) action {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(root, actionFile))
	require.NoError(t, err)
	var a action
	require.NoError(t, yaml.Unmarshal(text, &a))
	require.Equal(t, "composite", a.Runs.Using)
	return a
}

var expression = regexp.MustCompile(`\$\{\{\s*([^}]*?)\s*\}\}`)

// job is what a runner gives a composite action, with files in its place.
type job struct {
	status           int
	stdout, stderr   string
	outputs, summary string
}

// runAction runs the shell steps of the action in a folder as a runner would:
// bash with "-e -o pipefail", expressions filled in, files for outputs and
// summary. It knows nothing of what the steps say.
func runAction(t *testing.T, folder string, inputs map[string]string) job {
	t.Helper()
	a := readAction(t)
	temp := t.TempDir()
	path, err := filepath.Abs(filepath.Join(root, filepath.Dir(actionFile)))
	require.NoError(t, err)
	known := map[string]string{"github.action_path": path, "runner.temp": temp}
	for name, in := range a.Inputs {
		known["inputs."+name] = in.Default
	}
	for name, value := range inputs {
		require.Contains(t, a.Inputs, name)
		known["inputs."+name] = value
	}
	outputs, summary := filepath.Join(temp, "outputs"), filepath.Join(temp, "summary")
	for _, file := range []string{outputs, summary} {
		require.NoError(t, os.WriteFile(file, nil, 0o644))
	}
	var j job
	for _, s := range a.Runs.Steps {
		if s.Uses != "" {
			continue
		}
		require.Equal(t, "bash", s.Shell)
		require.NotContains(t, s.Run, "${{", "text from outside must not become part of a script")
		cmd := exec.CommandContext(t.Context(), "bash", "--noprofile", "--norc", "-e", "-o", "pipefail", "-c", s.Run)
		cmd.Dir = folder
		cmd.Env = append(os.Environ(), "GITHUB_OUTPUT="+outputs, "GITHUB_STEP_SUMMARY="+summary)
		for name, value := range s.Env {
			cmd.Env = append(cmd.Env, name+"="+expression.ReplaceAllStringFunc(value, func(e string) string {
				text, ok := known[expression.FindStringSubmatch(e)[1]]
				require.True(t, ok, "nothing is known of %s", e)
				return text
			}))
		}
		var stdout, stderr bytes.Buffer
		cmd.Stdout, cmd.Stderr = &stdout, &stderr
		err := cmd.Run()
		j.stdout, j.stderr = j.stdout+stdout.String(), j.stderr+stderr.String()
		j.status = cmd.ProcessState.ExitCode()
		if err != nil {
			break
		}
	}
	for file, to := range map[string]*string{outputs: &j.outputs, summary: &j.summary} {
		text, err := os.ReadFile(file)
		require.NoError(t, err)
		*to = string(text)
	}
	return j
}

// TestAction runs the composite action over the examples: what a job of
// somebody's own repository would show.
func TestAction(t *testing.T) {
	folder := t.TempDir()
	require.NoError(t, os.CopyFS(filepath.Join(folder, "builds"), os.DirFS(filepath.Join(root, "examples"))))

	failing := runAction(t, folder, map[string]string{"paths": "builds/patrol-truck\nbuilds/patrol-truck-finished\n", "today": "2026-11-25"})
	require.Equal(t, 1, failing.status, failing.stderr)
	require.Contains(t, failing.stdout, "patrol-truck: FAIL at install")
	require.Contains(t, failing.stdout, "patrol-truck-finished: PASS at inspection")
	require.Contains(t, failing.stdout, "::error file=builds/patrol-truck/patrol-truck.build.yaml,line=")
	require.Contains(t, failing.summary, "patrol-truck: FAIL at install")
	require.Contains(t, failing.outputs, "verdict=FAIL\n")
	for _, line := range strings.Split(strings.TrimSpace(failing.outputs), "\n") {
		name, file, _ := strings.Cut(line, "=")
		require.Contains(t, readAction(t).Outputs, name)
		if name != "verdict" {
			text, err := os.ReadFile(filepath.Join(folder, file))
			require.NoError(t, err)
			require.Equal(t, strings.HasSuffix(file, ".xml"), bytes.HasPrefix(text, []byte("<?xml")))
			require.Equal(t, !strings.HasSuffix(file, ".xml"), json.Valid(text))
		}
	}

	passing := runAction(t, folder, map[string]string{"paths": "builds/patrol-truck-finished", "today": "2026-11-25", "reports": "out put"})
	require.Equal(t, 0, passing.status, passing.stderr)
	require.Contains(t, passing.outputs, "verdict=PASS\n")
	require.FileExists(t, filepath.Join(folder, "out put", "trialfit.sarif"))

	// What can't be run is no pass, and a stale report of an earlier run is gone.
	for name, inputs := range map[string]map[string]string{
		"nothing to check": {"paths": "nowhere", "reports": "out put"},
		"a false region":   {"paths": "builds/creek-wagon", "region": "Atlantis", "reports": "out put"},
		"text as command":  {"paths": "$(touch owned); touch owned", "hold": "`touch owned`", "reports": "out put"},
		"text as flag":     {"paths": "--help", "reports": "out put"},
	} {
		j := runAction(t, folder, inputs)
		require.Contains(t, j.outputs, "verdict=ERROR\n", name)
		require.Equal(t, 2, j.status, name)
		require.NotEmpty(t, j.stderr, name)
		require.NoFileExists(t, filepath.Join(folder, "owned"))
		if text, err := os.ReadFile(filepath.Join(folder, "out put", "trialfit.sarif")); err == nil {
			require.Regexp(t, `"executionSuccessful":\s*false`, string(text), name)
		}
	}
}

// TestWorkflow: the workflow to copy names only inputs and outputs that the
// action has.
func TestWorkflow(t *testing.T) {
	text, err := os.ReadFile(filepath.Join(root, "examples/workflow/check-builds.yml"))
	require.NoError(t, err)
	var w struct {
		Jobs map[string]struct{ Steps []step }
	}
	require.NoError(t, yaml.Unmarshal(text, &w))
	a := readAction(t)
	used := false
	for _, s := range w.Jobs["check"].Steps {
		if strings.Contains(s.Uses, filepath.ToSlash(filepath.Dir(actionFile))) {
			used = true
			require.Equal(t, "trialfit", s.ID)
			for name := range s.With {
				require.Contains(t, a.Inputs, name)
			}
		}
		for _, value := range s.With {
			for _, e := range expression.FindAllStringSubmatch(value, -1) {
				if name, ours := strings.CutPrefix(e[1], "steps.trialfit.outputs."); ours {
					require.Contains(t, a.Outputs, name)
				}
			}
		}
	}
	require.True(t, used)
}
