package evidence

import (
	"io/fs"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestClean(t *testing.T) {
	for written, want := range map[string]string{
		"ticket.pdf":              "ticket.pdf",
		"papers/ticket.pdf":       "papers/ticket.pdf",
		"./papers//ticket.pdf":    "papers/ticket.pdf",
		"papers/./a b.jpg":        "papers/a b.jpg",
		"..ticket":                "..ticket",
		"a..b/...":                "a..b/...",
		".hidden":                 ".hidden",
		"Foto Kühler.jpg":         "Foto Kühler.jpg",
		"3.04\u202fPM.png":        "3.04\u202fPM.png",
		"12:30.jpg":               "12:30.jpg",
		"-x":                      "-x",
		strings.Repeat("a", 1024): strings.Repeat("a", 1024),
	} {
		got, err := Clean(written)
		require.NoError(t, err, "%q", written)
		require.Equal(t, want, got)
	}
}

func TestCleanRefuses(t *testing.T) {
	for _, c := range []struct {
		written, message string
		escapes          bool
	}{
		{"../secret.txt", `evidence path "../secret.txt" leaves the build's folder: put the file beside the manifest`, true},
		{"..", `evidence path ".." leaves the build's folder: put the file beside the manifest`, true},
		{"a/../../b", `evidence path "a/../../b" leaves the build's folder: put the file beside the manifest`, true},
		{"./..//../b", `evidence path "./..//../b" leaves the build's folder: put the file beside the manifest`, true},
		{"/etc/passwd", `evidence path "/etc/passwd" is absolute: write it relative to the manifest's folder`, true},
		{"//server/share", `evidence path "//server/share" is absolute: write it relative to the manifest's folder`, true},
		{"C:/a.pdf", `evidence path "C:/a.pdf" names a drive: write it relative to the manifest's folder`, true},
		{"c:a.pdf", `evidence path "c:a.pdf" names a drive: write it relative to the manifest's folder`, true},
		{"./c:a.pdf", `evidence path "c:a.pdf" names a drive: write it relative to the manifest's folder`, true},
		{`papers\a.pdf`, `evidence path "papers\\a.pdf" has a backslash: write "papers/a.pdf"`, false},
		{`..\a.pdf`, `evidence path "..\\a.pdf" has a backslash: write it with forward slashes, relative to the manifest's folder`, false},
		{"", `evidence path "" is empty: name a file beside the manifest or below it`, false},
		{".", `evidence path "." names the build's folder: name a file in it`, false},
		{"a/..", `evidence path "a/.." names the build's folder: name a file in it`, false},
		{"a/../b", `evidence path "a/../b" climbs with "..": write "b"`, false},
		{"papers/", `evidence path "papers/" names a folder: name a file in it`, false},
		{"-", `evidence path "-" stands for standard input: rename the file`, false},
		{"a\x00b", `evidence path "a\x00b" has a control character: rename the file`, false},
		{"a\nb", `evidence path "a\nb" has a control character: rename the file`, false},
		{"a\rb", `evidence path "a\rb" has a control character: rename the file`, false},
		{"a\x1b[2Jb", `evidence path "a\x1b[2Jb" has a control character: rename the file`, false},
		{"a\xff", `evidence path "a\xff" is not UTF-8: rename the file`, false},
		{strings.Repeat("a", 1025), `evidence path "` + strings.Repeat("a", 100) + `…" is 1025 bytes long: keep it to 1024 bytes`, false},
	} {
		got, err := Clean(c.written)
		require.EqualError(t, err, c.message)
		require.Empty(t, got)
		var pathErr *PathError
		require.ErrorAs(t, err, &pathErr)
		require.Equal(t, c.escapes, pathErr.Escapes, "%q", c.written)
	}
}

// FuzzClean: a path that Clean returns never leaves the folder, is its own
// shortest form and survives the side file. io/fs and path/filepath of the
// standard library judge it.
func FuzzClean(f *testing.F) {
	for _, seed := range []string{"a/b.pdf", "../a", "a/../b", "/a", `a\..\..\b`, "C:a", "./-", "a\nb", "a\x00", "…/…", "./c:/x", "*a", " a ", "#a", "a\u2028b", "a\u0085"} {
		f.Add(seed)
	}
	f.Fuzz(func(t *testing.T, written string) {
		clean, err := Clean(written)
		if err != nil {
			if clean != "" || strings.ContainsAny(err.Error(), "\n\r\x00") {
				t.Fatalf("%q gives %q, %q", written, clean, err)
			}
			return
		}
		if !fs.ValidPath(clean) || !filepath.IsLocal(clean) || clean == "." || strings.ContainsAny(clean, "\\\n\r\x00") {
			t.Fatalf("%q gives %q", written, clean)
		}
		if again, err := Clean(clean); err != nil || again != clean {
			t.Fatalf("%q gives %q, then %q, %v", written, clean, again, err)
		}
		sums := Sums{clean: digestOfABC}
		back, err := ParseSums("x", strings.NewReader(string(FormatSums(sums))))
		if err != nil || len(back) != 1 || back[clean] != digestOfABC {
			t.Fatalf("%q gives %q, read back as %v, %v", written, clean, back, err)
		}
	})
}
