package cli

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"trialfit": func() { os.Exit(Main(os.Args[1:], os.Stdin, os.Stdout, os.Stderr)) },
	})
}

// TestScripts runs the end-to-end scenarios. Each starts in a folder that
// holds a copy of the examples. With UPDATE_SCRIPTS=1 the expected output in the
// scripts is rewritten; read the difference before committing it.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "../../testdata/scripts",
		UpdateScripts:       os.Getenv("UPDATE_SCRIPTS") != "",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			return os.CopyFS(filepath.Join(env.WorkDir, "examples"), os.DirFS("../../examples"))
		},
	})
}
