package dossier_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/dossier"
	"trialfit/internal/dossier/dossiertest"
	"trialfit/internal/report"
	"trialfit/internal/verdict"
)

const fileList = `trialfit: 1
build: {name: files}
evidence:
  - {id: good, kind: photograph, title: a good one, file: good.jpg, shows: none}
  - {id: text, kind: photograph, title: a text, file: text.jpg, shows: none}
  - {id: broken, kind: photograph, title: a broken one, file: broken.png, shows: none}
  - {id: changed, kind: photograph, title: a changed one, file: changed.jpg, shows: none}
  - {id: unrecorded, kind: photograph, title: an unrecorded one, file: unrecorded.jpg, shows: none}
  - {id: gone, kind: photograph, title: a missing one, file: missing.jpg, shows: none}
  - {id: folder, kind: photograph, title: a folder, file: folder.jpg, shows: none}
  - {id: linked, kind: photograph, title: a link, file: linked.jpg, shows: none}
  - {id: outside, kind: photograph, title: outside, file: ../outside.jpg, shows: none}
`

// TestHostileFiles: what is wrong with a file is told at its number, the
// picture is not shown, and the dossier comes out.
func TestHostileFiles(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "build")
	require.NoError(t, os.Mkdir(dir, 0o755))
	write := func(name string, data []byte) {
		require.NoError(t, os.WriteFile(filepath.Join(dir, name), data, 0o644))
	}
	picture := dossiertest.Photograph(t, 64, 48, false)
	write("good.jpg", picture)
	write("text.jpg", []byte("not a picture"))
	write("broken.png", dossiertest.Photograph(t, 64, 48, true)[:60])
	write("changed.jpg", picture)
	write("../outside.jpg", picture)
	require.NoError(t, os.Mkdir(filepath.Join(dir, "folder.jpg"), 0o755))
	require.NoError(t, os.Symlink("../outside.jpg", filepath.Join(dir, "linked.jpg")))
	name := filepath.Join(dir, "files.build.yaml")
	c := dossiertest.Checker(t)
	m, err := c.Loader.Read(strings.NewReader(strings.SplitAfter(fileList, "changed.jpg, shows: none}\n")[0]), name, dir)
	require.NoError(t, err)
	_, err = check.Record(m)
	require.NoError(t, err)
	write("changed.jpg", append(picture, 0))
	write("unrecorded.jpg", picture)
	m, err = c.Loader.Read(strings.NewReader(fileList), name, dir)
	require.NoError(t, err)

	strict, err := check.New(check.Options{Today: "2026-11-25"})
	require.NoError(t, err)
	_, err = strict.Loader.Read(strings.NewReader(fileList), name, dir)
	require.ErrorContains(t, err, "leaves the build's folder", "a check still stops")
	_, err = strict.Prepare(m)
	require.ErrorContains(t, err, "leaves the build's folder", "a check still stops")

	r, err := c.Check(t.Context(), m)
	require.NoError(t, err)
	b := report.Build{Report: r, Items: verdict.Case{Manifest: m, Book: c.Book, Computed: r.Computed, Verdict: r.Verdict}.Items()}
	d := dossiertest.Document(t, b)
	told := strings.Join(dossiertest.Texts(&dossier.Document{Sections: []dossier.Section{section(t, d, "open")}}), "\n")
	for _, want := range []string{
		"E2 is no picture that can be shown: the file is neither a JPEG nor a PNG",
		"E3 is no picture that can be shown: the file is broken (",
		"E4: not the file whose digest was recorded",
		"E5: no digest was recorded",
		"E6: the file is not there",
		`E7: evidence path "folder.jpg" names a folder`,
		`E8: evidence path "linked.jpg" is a symbolic link, escaping the build's folder`,
		`E9: evidence path "../outside.jpg" leaves the build's folder`,
	} {
		require.Contains(t, told, want)
	}
	require.NotContains(t, told, dir)
	shown := 0
	for _, b := range section(t, d, "evidence").Blocks {
		if photos, ok := b.(dossier.Photos); ok {
			shown += len(photos)
		}
	}
	require.Equal(t, 1, shown)
}
