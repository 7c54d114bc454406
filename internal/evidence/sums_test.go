package evidence

import (
	"bytes"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSumFile(t *testing.T) {
	require.Equal(t, "x.evidence.sha256", SumFile("x.build.yaml"))
	require.Equal(t, "builds/x.y.evidence.sha256", SumFile("builds/x.y.build.yaml"))
	require.Equal(t, "x.shortlist.evidence.sha256", SumFile("x.shortlist.yaml"))
	require.Equal(t, "x.yaml.evidence.sha256", SumFile("x.yaml"))
}

func TestRecord(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "abc.txt", "abc")
	write(t, dir, "papers/empty", "")
	sums, err := Record(dir, []string{"papers/empty", "abc.txt", "./abc.txt"})
	require.NoError(t, err)
	require.Equal(t, Sums{"abc.txt": digestOfABC, "papers/empty": digestOfEmpty}, sums)

	sums, err = Record(dir, []string{"abc.txt", "x", "../y", "papers", "./x", "../y"})
	require.Nil(t, sums)
	require.EqualError(t, err, strings.Join([]string{
		`evidence path "x" is not there: add the file or take it out of the manifest`,
		`evidence path "../y" leaves the build's folder: put the file beside the manifest`,
		`evidence path "papers" names a folder: name a file in it`,
	}, "\n"))
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	require.Len(t, entries, 2, "nothing is written")

	_, err = Record(filepath.Join(dir, "none"), nil)
	require.ErrorIs(t, err, fs.ErrNotExist)
}

func TestFormatSums(t *testing.T) {
	require.Empty(t, FormatSums(nil))
	require.Equal(t, digestOfEmpty+"  B\n"+digestOfABC+"  a/b c\n"+digestOfTwo+"  a0\n",
		string(FormatSums(Sums{"a0": digestOfTwo, "a/b c": digestOfABC, "B": digestOfEmpty})))
}

func TestParseSums(t *testing.T) {
	for name, text := range map[string]string{
		"as written":  digestOfABC + "  a\n" + digestOfTwo + "  b/c d\n",
		"not sorted":  digestOfTwo + "  b/c d\n" + digestOfABC + "  a\n",
		"CR LF":       digestOfABC + "  a\r\n" + digestOfTwo + "  b/c d\r\n",
		"no last end": digestOfABC + "  a\n" + digestOfTwo + "  b/c d",
		"empty lines": "\n" + digestOfABC + "  a\n\r\n" + digestOfTwo + "  b/c d\n\n",
		"binary mode": digestOfABC + " *a\n" + digestOfTwo + " *b/c d\n",
		"upper case":  strings.ToUpper(digestOfABC) + "  a\n" + digestOfTwo + "  b/c d\n",
		"longer path": digestOfABC + "  ./a\n" + digestOfTwo + "  b//c d\n",
	} {
		got, err := ParseSums("x", strings.NewReader(text))
		require.NoError(t, err, name)
		require.Equal(t, Sums{"a": digestOfABC, "b/c d": digestOfTwo}, got, name)
	}
	got, err := ParseSums("x", strings.NewReader(""))
	require.NoError(t, err)
	require.Equal(t, Sums{}, got)
}

func TestParseSumsRefuses(t *testing.T) {
	const due = ": a line has 64 hexadecimal digits, two spaces and a path"
	for text, message := range map[string]string{
		"abc  a":                        `s:1:1: digest has 3 hexadecimal digits` + due,
		digestOfABC + "0  a":            `s:1:1: digest has 65 hexadecimal digits` + due,
		"# note":                        `s:1:1: found "#" in the digest` + due,
		"\ufeff" + digestOfABC + "  a":  `s:1:1: found "\ufeff" in the digest` + due,
		"bag" + digestOfABC[3:] + "  a": `s:1:3: found "g" in the digest` + due,
		"\\" + digestOfABC + "  a\\n":   `s:1:1: found "\\" in the digest` + due,
		"<<<<<<< HEAD":                  `s:1:1: found "<" in the digest` + due,
		digestOfABC:                     `s:1:65: found "" after the digest` + due,
		digestOfABC + " a":              `s:1:65: found " a" after the digest` + due,
		digestOfABC + "\ta":             `s:1:65: found "\ta" after the digest` + due,
		digestOfABC + "ü a":             `s:1:65: found "ü a" after the digest` + due,
		digestOfABC + "  ":              `s:1:67: evidence path "" is empty: name a file beside the manifest or below it`,
		digestOfABC + "  ../a":          `s:1:67: evidence path "../a" leaves the build's folder: put the file beside the manifest`,
		digestOfABC + "  a\n" + digestOfABC + "  b\n" + digestOfTwo + "  ./a": `s:3:67: path "a" stands in line 1 already: keep one of the two`,
		"x\n" + digestOfABC + "  a\n\ny":                                      `s:1:1: found "x" in the digest` + due + "\n" + `s:4:1: found "y" in the digest` + due,
		digestOfABC + "  a\n" + strings.Repeat("a", 70_000):                   `s:2:1: line is longer than 64 KiB` + due,
	} {
		got, err := ParseSums("s", strings.NewReader(text))
		require.EqualError(t, err, message)
		require.Nil(t, got)
	}
	_, err := ParseSums("s", strings.NewReader(strings.Repeat("x\n", 100)))
	var faults SumsErrors
	require.ErrorAs(t, err, &faults)
	require.Len(t, faults, 20)
	_, err = ParseSums("s", broken{})
	require.EqualError(t, err, `read digests "s": bad sector`)
	_, err = ParseSums("s", bytes.NewReader(bytes.Repeat([]byte{'\n'}, 16<<20+1)))
	require.EqualError(t, err, `read digests "s": is larger than 16 MiB`)
}

func TestWriteSums(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "x.evidence.sha256")
	sums, err := ReadSums(file)
	require.NoError(t, err)
	require.Equal(t, Sums{}, sums, "no side file yet")

	for _, want := range []Sums{{"b": digestOfTwo, "a": digestOfABC}, {"a": digestOfEmpty}, {}} {
		require.NoError(t, WriteSums(file, want))
		got, err := ReadSums(file)
		require.NoError(t, err)
		require.Equal(t, want, got)
		require.Equal(t, []string{"x.evidence.sha256"}, names(t, dir), "no temporary file stays")
	}
	if info, err := os.Stat(file); runtime.GOOS != "windows" {
		require.NoError(t, err)
		require.Equal(t, fs.FileMode(0o644), info.Mode())
	}
}

func TestWriteSumsRefuses(t *testing.T) {
	dir := t.TempDir()
	file := filepath.Join(dir, "s")
	require.NoError(t, WriteSums(file, Sums{"a": digestOfABC}))
	for message, sums := range map[string]Sums{
		`evidence path "../a" leaves the build's folder: put the file beside the manifest`: {"../a": digestOfABC},
		`evidence path "./a" is not in its shortest form: write "a"`:                       {"./a": digestOfABC},
		`digest "abc" of "a" is not 64 lower-case hexadecimal digits`:                      {"a": "abc"},
	} {
		require.ErrorContains(t, WriteSums(file, sums), message)
	}
	require.ErrorContains(t, WriteSums(file, Sums{"a": strings.ToUpper(digestOfABC)}), "lower-case")
	got, err := ReadSums(file)
	require.NoError(t, err)
	require.Equal(t, Sums{"a": digestOfABC}, got, "the old file stays")

	// A folder stands where the file is due: the last step, the renaming, is
	// refused.
	require.NoError(t, os.MkdirAll(filepath.Join(dir, "folder", "x"), 0o755))
	err = WriteSums(filepath.Join(dir, "folder"), Sums{"a": digestOfABC})
	require.ErrorContains(t, err, "write digests ")
	require.NotContains(t, err.Error(), ".folder.", "the temporary name is nobody's business")
	require.Equal(t, []string{"folder", "s"}, names(t, dir), "no temporary file stays")

	require.ErrorIs(t, WriteSums(filepath.Join(dir, "none", "s"), nil), fs.ErrNotExist)
	_, err = ReadSums(filepath.Join(dir, "folder"))
	require.ErrorContains(t, err, "is no ordinary file")
}

func names(t *testing.T, dir string) []string {
	t.Helper()
	entries, err := os.ReadDir(dir)
	require.NoError(t, err)
	names := make([]string, len(entries))
	for i, e := range entries {
		names[i] = e.Name()
	}
	return names
}

// TestSha256sum has coreutils sha256sum judge our side file and read by us what
// it writes itself.
func TestSha256sum(t *testing.T) {
	program, err := exec.LookPath("sha256sum")
	if err != nil || runtime.GOOS == "windows" {
		t.Skip("no sha256sum here")
	}
	run := func(dir string, args ...string) ([]byte, error) {
		cmd := exec.Command(program, args...)
		cmd.Dir = dir
		return cmd.Output()
	}
	dir := t.TempDir()
	var paths []string
	for path, v := range vectors {
		write(t, dir, path, v.content)
		paths = append(paths, path)
	}
	// The mark of binary mode and a blank, as parts of a name.
	for _, path := range []string{"*star", "blank "} {
		write(t, dir, path, "abc")
		paths = append(paths, path)
	}
	sums, err := Record(dir, paths)
	require.NoError(t, err)
	side := SumFile(filepath.Join(dir, "x.build.yaml"))
	require.NoError(t, WriteSums(side, sums))

	_, err = run(dir, "-c", "x.evidence.sha256")
	require.NoError(t, err, "sha256sum finds every file intact")

	for _, mode := range []string{"--text", "--binary"} {
		theirs, err := run(dir, append([]string{mode, "--"}, paths...)...)
		require.NoError(t, err)
		got, err := ParseSums("theirs", bytes.NewReader(theirs))
		require.NoError(t, err)
		require.Equal(t, sums, got)
	}
	for path, v := range vectors {
		require.Equal(t, v.digest, sums[path])
	}

	write(t, dir, "abc.txt", "abd")
	_, err = run(dir, "-c", "x.evidence.sha256")
	require.Error(t, err, "and a changed one changed")
	got, err := Inspect(dir, "abc.txt", sums)
	require.NoError(t, err)
	require.Equal(t, Changed, got.State)
}

func FuzzParseSums(f *testing.F) {
	f.Add(digestOfABC + "  a\n")
	f.Add(digestOfABC + " *./a\r\n\n" + digestOfTwo + "  b")
	f.Add("x")
	f.Fuzz(func(t *testing.T, text string) {
		sums, err := ParseSums("s", strings.NewReader(text))
		if err != nil {
			return
		}
		written := FormatSums(sums)
		again, err := ParseSums("s", bytes.NewReader(written))
		if err != nil || !bytes.Equal(written, FormatSums(again)) {
			t.Fatalf("%q is written as %q and read back as %v, %v", text, written, again, err)
		}
	})
}
