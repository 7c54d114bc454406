package evidence

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// SHA-256 of the one-block, two-block and empty messages. Source: example
// values published by NIST for FIPS 180, from memory; TestSha256sum has
// sha256sum agree with them.
const (
	digestOfABC   = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
	digestOfTwo   = "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
	digestOfEmpty = "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
)

var vectors = map[string]struct{ content, digest string }{
	"abc.txt":           {"abc", digestOfABC},
	"papers/two.txt":    {"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq", digestOfTwo},
	"papers/ empty.txt": {"", digestOfEmpty},
	"papers/a #ü.txt":   {"abc", digestOfABC},
	"papers/-deep/a.b":  {"abc", digestOfABC},
}

// pointer is the example of the Git LFS specification (docs/spec.md, "The
// Pointer").
const (
	pointerOID = "4d7a214614ab2935c943f9e0ff69d22eadbb8f32b1258daaa5e2ca24d17e2393"
	pointer    = "version https://git-lfs.github.com/spec/v1\noid sha256:" + pointerOID + "\nsize 12345\n"
)

func write(t *testing.T, dir, path, content string) {
	t.Helper()
	file := filepath.Join(dir, filepath.FromSlash(path))
	require.NoError(t, os.MkdirAll(filepath.Dir(file), 0o755))
	require.NoError(t, os.WriteFile(file, []byte(content), 0o644))
}

func link(t *testing.T, target, file string) {
	t.Helper()
	if err := os.Symlink(target, file); err != nil {
		t.Skip("no symbolic links here:", err)
	}
}

func TestInspectStates(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "papers/abc.txt", "abc")
	abc := File{Path: "papers/abc.txt", Digest: digestOfABC, Size: 3}
	with := func(f File, s State) File { f.State = s; return f }
	dotted := with(abc, Intact)
	dotted.Path = "./papers//abc.txt"
	for name, c := range map[string]struct {
		path string
		sums Sums
		want File
	}{
		"intact":           {"papers/abc.txt", Sums{"papers/abc.txt": digestOfABC}, with(abc, Intact)},
		"as written":       {"./papers//abc.txt", Sums{"papers/abc.txt": digestOfABC}, dotted},
		"changed":          {"papers/abc.txt", Sums{"papers/abc.txt": digestOfTwo}, with(abc, Changed)},
		"no digest at all": {"papers/abc.txt", Sums{"papers/abc.txt": ""}, with(abc, Changed)},
		"unrecorded":       {"papers/abc.txt", Sums{"abc.txt": digestOfABC}, with(abc, Unrecorded)},
		"no sums":          {"papers/abc.txt", nil, with(abc, Unrecorded)},
		"missing":          {"papers/x.txt", Sums{"papers/x.txt": digestOfABC}, File{Path: "papers/x.txt", State: Missing}},
		"never there":      {"x/y/z.txt", nil, File{Path: "x/y/z.txt", State: Missing}},
	} {
		got, err := Inspect(dir, c.path, c.sums)
		require.NoError(t, err, name)
		require.Equal(t, c.want, got, name)
	}
}

func TestInspectDigests(t *testing.T) {
	dir := t.TempDir()
	for path, v := range vectors {
		write(t, dir, path, v.content)
		got, err := Inspect(dir, path, Sums{path: v.digest})
		require.NoError(t, err)
		require.Equal(t, File{Path: path, State: Intact, Digest: v.digest, Size: int64(len(v.content))}, got)
	}
	// One million times "a", longer than any buffer on the way. Source: NIST
	// example value, from memory.
	write(t, dir, "long", strings.Repeat("a", 1_000_000))
	got, err := Inspect(dir, "long", nil)
	require.NoError(t, err)
	require.Equal(t, "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0", got.Digest)
	require.EqualValues(t, 1_000_000, got.Size)
}

func TestInspectRefuses(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "papers/abc.txt", "abc")
	for path, message := range map[string]string{
		"papers":           `evidence path "papers" names a folder: name a file in it`,
		"papers/abc.txt/x": `evidence path "papers/abc.txt/x" goes through "papers/abc.txt", which is no folder: name the file itself`,
		"../x":             `evidence path "../x" leaves the build's folder: put the file beside the manifest`,
	} {
		got, err := Inspect(dir, path, nil)
		require.EqualError(t, err, message)
		require.Empty(t, got)
	}
	_, err := Inspect(filepath.Join(dir, "none"), "a", nil)
	require.ErrorIs(t, err, fs.ErrNotExist)
	require.ErrorContains(t, err, "open the build's folder ")
}

func TestInspectLinks(t *testing.T) {
	outside := t.TempDir()
	write(t, outside, "secret.txt", "secret")
	dir := t.TempDir()
	write(t, dir, "papers/abc.txt", "abc")
	link(t, "papers/abc.txt", filepath.Join(dir, "inner"))
	link(t, "papers", filepath.Join(dir, "folder"))
	link(t, "nowhere", filepath.Join(dir, "dangling"))
	link(t, "loop", filepath.Join(dir, "loop"))
	link(t, filepath.Join(outside, "secret.txt"), filepath.Join(dir, "absolute"))
	link(t, "..", filepath.Join(dir, "papers", "up"))
	link(t, "../..", filepath.Join(dir, "papers", "out"))
	link(t, "../absolute", filepath.Join(dir, "papers", "chain"))
	for _, c := range []struct {
		path, found string
		escapes     bool
	}{
		{"inner", `is a symbolic link`, false},
		{"./inner", `is a symbolic link`, false},
		{"dangling", `is a symbolic link`, false},
		{"loop", `is a symbolic link`, false},
		{"folder/abc.txt", `goes through the symbolic link "folder"`, false},
		{"papers/up/papers/abc.txt", `goes through the symbolic link "papers/up"`, false},
		{"absolute", `is a symbolic link, escaping the build's folder`, true},
		{"papers/chain", `is a symbolic link, escaping the build's folder`, true},
		{"papers/out/x", `goes through the symbolic link "papers/out", escaping the build's folder`, true},
	} {
		_, err := Inspect(dir, c.path, nil)
		require.Equal(t, &PathError{Path: c.path, Found: c.found, Do: "put the file itself there", Escapes: c.escapes}, err)
	}
}

func TestInspectDevice(t *testing.T) {
	if info, err := os.Stat("/dev/null"); err != nil || info.Mode()&fs.ModeDevice == 0 {
		t.Skip("no /dev/null here")
	}
	_, err := Inspect("/dev", "null", nil)
	require.EqualError(t, err, `evidence path "null" names a device, pipe or socket: name an ordinary file`)
}

func TestInspectUnreadable(t *testing.T) {
	if os.Geteuid() == 0 || runtime.GOOS == "windows" {
		t.Skip("everything is readable here")
	}
	dir := t.TempDir()
	write(t, dir, "abc.txt", "abc")
	require.NoError(t, os.Chmod(filepath.Join(dir, "abc.txt"), 0))
	_, err := Inspect(dir, "abc.txt", nil)
	require.EqualError(t, err, `evidence path "abc.txt" can't be read (permission denied): allow reading it`)
}

func TestInspectTooLarge(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "video.mp4", "")
	// The file has a hole: nothing of that size is written.
	if err := os.Truncate(filepath.Join(dir, "video.mp4"), MaxBytes+1); err != nil {
		t.Skip("no files of that size here:", err)
	}
	_, err := Inspect(dir, "video.mp4", nil)
	require.EqualError(t, err, `evidence path "video.mp4" has 2147483649 bytes, more than 2 GiB: split it or keep an excerpt`)
}

type broken struct{}

func (broken) Read([]byte) (int, error) { return 0, errors.New("bad sector") }

func TestDigestOfABrokenDisk(t *testing.T) {
	_, _, _, err := digest(broken{})
	require.EqualError(t, err, "bad sector")
}

func TestInspectPointer(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, "video.mp4", pointer)
	got, err := Inspect(dir, "video.mp4", Sums{"video.mp4": pointerOID})
	require.NoError(t, err)
	require.Equal(t, File{Path: "video.mp4", State: Intact, Digest: pointerOID, Size: 12345, Pointer: true}, got)
	sums, err := Record(dir, []string{"video.mp4"})
	require.NoError(t, err)
	require.Equal(t, Sums{"video.mp4": pointerOID}, sums)
}

// What is not exactly a pointer has the digest of its own bytes.
func TestInspectNearlyPointers(t *testing.T) {
	for name, content := range map[string]string{
		"other version":    strings.Replace(pointer, "spec/v1", "spec/v2", 1),
		"other method":     strings.Replace(pointer, "sha256", "sha512", 1),
		"short oid":        strings.Replace(pointer, pointerOID, pointerOID[1:], 1),
		"long oid":         strings.Replace(pointer, pointerOID, pointerOID+"0", 1),
		"upper-case oid":   strings.Replace(pointer, pointerOID, strings.ToUpper(pointerOID), 1),
		"negative size":    strings.Replace(pointer, "12345", "-1", 1),
		"no size":          strings.Replace(pointer, "size 12345\n", "", 1),
		"size overflowing": strings.Replace(pointer, "12345", "99999999999999999999", 1),
		"CR LF":            strings.ReplaceAll(pointer, "\n", "\r\n"),
		"no last newline":  strings.TrimSuffix(pointer, "\n"),
		"more behind":      pointer + "more\n",
		"more before":      "\n" + pointer,
		"extension":        strings.Replace(pointer, "oid", "ext-0-x sha256:"+pointerOID+"\noid", 1),
		"padded":           pointer + strings.Repeat("\n", 2000),
	} {
		dir := t.TempDir()
		write(t, dir, "x", content)
		got, err := Inspect(dir, "x", Sums{"x": pointerOID})
		require.NoError(t, err, name)
		require.False(t, got.Pointer, name)
		require.Equal(t, Changed, got.State, name)
		require.EqualValues(t, len(content), got.Size, name)
	}
}
