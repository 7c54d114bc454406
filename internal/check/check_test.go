package check_test

import (
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/check"
	"trialfit/internal/evidence"
	"trialfit/internal/manifest"
)

var shared = sync.OnceValues(func() (*check.Checker, error) { return check.New(options) })

// lay writes files below a new folder, makes it the working directory and
// returns a checker: messages then name no place on this machine.
func lay(t *testing.T, files map[string]string) *check.Checker {
	t.Chdir(t.TempDir())
	for name, text := range files {
		require.NoError(t, os.MkdirAll(filepath.Dir(name), 0o755))
		require.NoError(t, os.WriteFile(name, []byte(text), 0o644))
	}
	c, err := shared()
	require.NoError(t, err)
	return c
}

const small = "trialfit: 1\nbuild: {}\n"

func TestFind(t *testing.T) {
	lay(t, map[string]string{
		"b.build.yaml":           small,
		"a/z.build.yaml":         small,
		"a/deep/y.build.yaml":    small,
		"a/.hidden/x.build.yaml": small,
		"a/notes.yaml":           small,
		"empty/readme.txt":       "",
		"bare/.keep":             "",
	})
	require.NoError(t, os.Symlink("..", filepath.FromSlash("a/deep/up")))
	require.NoError(t, os.MkdirAll("a/folder.build.yaml", 0o755))

	found, err := check.Find([]string{"b.build.yaml", "a", "./a/z.build.yaml", "gone.build.yaml"})
	require.NoError(t, err)
	require.Equal(t, []string{
		filepath.FromSlash("a/deep/y.build.yaml"), filepath.FromSlash("a/z.build.yaml"), "b.build.yaml", "gone.build.yaml",
	}, found, "links are not followed, hidden folders not searched, each once")

	_, err = check.Find([]string{"empty", "a", "bare", "a/folder.build.yaml"})
	require.EqualError(t, err, strings.Join([]string{
		"empty: no manifest found: a manifest's name ends in .build.yaml",
		"bare: no manifest found: a manifest's name ends in .build.yaml",
		"a/folder.build.yaml: no manifest found: a manifest's name ends in .build.yaml",
	}, "\n"))
}

func TestUnreadableFiles(t *testing.T) {
	c := lay(t, map[string]string{"secret.build.yaml": small, "dir.build.yaml/x": "", "big.build.yaml": ""})
	require.NoError(t, os.Truncate("big.build.yaml", 50<<20))
	require.NoError(t, os.Symlink("loop.build.yaml", "loop.build.yaml"))
	require.NoError(t, os.Symlink("gone", "dangling.build.yaml"))
	require.NoError(t, os.Chmod("secret.build.yaml", 0))
	want := map[string]string{
		"gone.build.yaml":     "gone.build.yaml: does not exist",
		"dir.build.yaml":      "dir.build.yaml: is a folder: name a manifest in it",
		"loop.build.yaml":     "loop.build.yaml: is a symbolic link that leads back to itself",
		"dangling.build.yaml": "dangling.build.yaml: does not exist",
		"big.build.yaml":      "big.build.yaml: holds more than 4 MiB, the most a manifest may have",
		"secret.build.yaml":   "secret.build.yaml: may not be read: permission denied",
		"two\nlines":          `"two\nlines": does not exist`,
	}
	if os.Geteuid() == 0 {
		delete(want, "secret.build.yaml") // nothing is secret from root
	}
	for file, message := range want {
		_, err := c.Loader.File(file)
		require.IsType(t, manifest.Problems{}, err)
		require.EqualError(t, err, message)
	}
}

// TestFaultsBesideTheManifest are those that only the file system shows: told
// together, with the place in the manifest that leads to them.
func TestFaultsBesideTheManifest(t *testing.T) {
	c := lay(t, map[string]string{
		"b.build.yaml": `trialfit: 1
build: {}
registration: {region: California}
evidence:
  - {id: link, kind: letter, file: papers/link.txt}
  - {id: out, kind: letter, file: papers/out.txt}
  - {id: folder, kind: letter, file: papers}
  - {id: through, kind: letter, file: papers/here.txt/x}
  - {id: here, kind: letter, file: papers/here.txt}
  - {id: gone, kind: letter, file: papers/gone.txt}
`,
		"papers/here.txt": "here",
	})
	require.NoError(t, os.Symlink("here.txt", filepath.FromSlash("papers/link.txt")))
	require.NoError(t, os.Symlink("../../../etc/hostname", filepath.FromSlash("papers/out.txt")))
	m, err := c.Loader.File("b.build.yaml")
	require.NoError(t, err)
	_, err = c.Prepare(m)
	require.IsType(t, manifest.Problems{}, err)
	require.EqualError(t, err, strings.Join([]string{
		`b.build.yaml:3:24: "California" is not an ISO 3166 code: write a state or province such as US-CA, or a country such as GB`,
		`b.build.yaml:5:36: evidence path "papers/link.txt" is a symbolic link: put the file itself there`,
		`b.build.yaml:6:35: evidence path "papers/out.txt" is a symbolic link, escaping the build's folder: put the file itself there`,
		`b.build.yaml:7:38: evidence path "papers" names a folder: name a file in it`,
		`b.build.yaml:8:39: evidence path "papers/here.txt/x" goes through "papers/here.txt", which is no folder: name the file itself`,
	}, "\n"))
}

func TestFaultsOfTheSideFile(t *testing.T) {
	c := lay(t, map[string]string{
		"b.build.yaml":      "trialfit: 1\nbuild: {}\nevidence: [{id: a, kind: letter, file: a.txt}]\n",
		"b.evidence.sha256": "abc  a.txt\n" + strings.Repeat("0", 64) + "  ../a.txt\n",
	})
	m, err := c.Loader.File("b.build.yaml")
	require.NoError(t, err)
	_, err = c.Prepare(m)
	require.IsType(t, manifest.Problems{}, err)
	require.EqualError(t, err, strings.Join([]string{
		"b.evidence.sha256:1:1: digest has 3 hexadecimal digits: a line has 64 hexadecimal digits, two spaces and a path",
		`b.evidence.sha256:2:67: evidence path "../a.txt" leaves the build's folder: put the file beside the manifest`,
	}, "\n"))
}

// TestStatesOfFiles: what is missing or changed is no fault of the input; the
// rules see it and judge it.
func TestStatesOfFiles(t *testing.T) {
	c := lay(t, map[string]string{
		"b.build.yaml": `trialfit: 1
build: {}
evidence:
  - {id: intact, kind: letter, file: intact.txt}
  - {id: changed, kind: letter, file: changed.txt}
  - {id: gone, kind: letter, file: gone.txt}
  - {id: fresh, kind: letter, file: fresh.txt}
`,
		"intact.txt": "a", "changed.txt": "a", "fresh.txt": "a",
	})
	sums, err := evidence.Record(".", []string{"intact.txt", "changed.txt"})
	require.NoError(t, err)
	require.NoError(t, evidence.WriteSums("b.evidence.sha256", sums))
	require.NoError(t, os.WriteFile("changed.txt", []byte("b"), 0o644))
	m, err := c.Loader.File("b.build.yaml")
	require.NoError(t, err)
	r, err := c.Prepare(m)
	require.NoError(t, err)
	for id, want := range map[string]evidence.State{
		"intact": evidence.Intact, "changed": evidence.Changed, "gone": evidence.Missing, "fresh": evidence.Unrecorded,
	} {
		require.Equal(t, want, r.Evidence[id].State, id)
	}
}

func TestRegionOfTheCommandLine(t *testing.T) {
	c := lay(t, map[string]string{"b.build.yaml": small})
	other := *c
	other.Options.Region = "California"
	m, err := other.Loader.File("b.build.yaml")
	require.NoError(t, err)
	_, err = other.Prepare(m)
	require.ErrorContains(t, err, `"California" is not an ISO 3166 code`)
	require.NotErrorAs(t, err, &manifest.Problems{}, "the manifest is not at fault")
}
