package meta

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

const root = "../.."

func TestTopLevel(t *testing.T) {
	allowed := strings.Fields("cmd policies schemas internal examples testdata go.mod go.sum README.md DEVELOPERS.md")
	entries, err := os.ReadDir(root)
	require.NoError(t, err)
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			require.Contains(t, allowed, e.Name())
		}
	}
}

// layers lists the packages from the innermost outwards; a package may import
// only from layers before its own. Tests are free.
var layers = [][]string{
	{"internal/quantity", "internal/thread", "internal/tyre", "internal/vin", "internal/evidence", "schemas", "policies", "internal/report/wording", "internal/dossier/photo", "internal/meta"},
	{"internal/schema", "internal/figures", "internal/figures/fluid"},
	{
		"internal/figures/air", "internal/figures/bell", "internal/figures/approval", "internal/figures/cooling", "internal/figures/electrical", "internal/figures/fasteners", "internal/figures/fittings", "internal/figures/fuel", "internal/figures/gearing",
		"internal/figures/hydraulics", "internal/figures/lifting", "internal/figures/mass", "internal/figures/shafts", "internal/figures/torque", "internal/figures/figurestest",
	},
	{"internal/figures/exhaust", "internal/figures/mounts"},
	{"internal/figures/sheet", "internal/manifest"},
	{"internal/rulebook"},
	{"internal/input"},
	{"internal/verdict"},
	{"internal/check"},
	{"internal/report"},
	{"internal/report/lines", "internal/prebuy"},
	{"internal/report/pictures", "internal/report/text", "internal/report/json", "internal/report/junit", "internal/report/markdown", "internal/report/annotations", "internal/report/reporttest"},
	{"internal/report/figuresheet/formula", "internal/start", "internal/rulecase", "internal/generate", "internal/parity", "internal/mutation"},
	{"internal/report/choice", "internal/report/counter", "internal/report/figuresheet", "internal/report/matrix", "internal/report/sarif"},
	{"internal/dossier"},
	{"internal/dossier/page", "internal/dossier/paper", "internal/dossier/dossiertest"},
	{"internal/cli"},
	{"cmd/trialfit"},
}

func TestImportsPointInward(t *testing.T) {
	rank := map[string]int{}
	for i, layer := range layers {
		for _, pkg := range layer {
			rank[pkg] = i
		}
	}
	err := filepath.WalkDir(root, func(name string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && name != root && strings.HasPrefix(d.Name(), ".") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
			return nil
		}
		rel, err := filepath.Rel(root, name)
		require.NoError(t, err)
		pkg := path.Dir(filepath.ToSlash(rel))
		own, known := rank[pkg]
		require.True(t, known, "%s has no layer", pkg)
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.ImportsOnly)
		require.NoError(t, err)
		for _, imp := range file.Imports {
			target, err := strconv.Unquote(imp.Path.Value)
			require.NoError(t, err)
			if inside, ok := strings.CutPrefix(target, "trialfit/"); ok {
				require.Less(t, rank[inside], own, "%s imports %s, which does not lie further in", pkg, inside)
			}
		}
		return nil
	})
	require.NoError(t, err)
}
