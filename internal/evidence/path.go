package evidence

import (
	"path"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// mostBytes is the longest path taken, in bytes.
const mostBytes = 1024

// PathError says in one line why a path can't serve as evidence.
type PathError struct {
	Path    string // as written
	Found   string // the fact, to follow the quoted path: `names a folder`
	Do      string // what would do: `name a file in it`
	Escapes bool   // the path, or a link on its way, leaves the build's folder
}

// Error is one line, the fact first.
func (e *PathError) Error() string {
	return "evidence path " + strconv.Quote(shorten(e.Path)) + " " + e.Found + ": " + e.Do
}

// Clean checks a path as written in a manifest and returns its shortest form:
// relative to the build's folder, inside it, with forward slashes, so that it
// means the same on every system and fits on one line of a side file. It looks
// at the text only; Inspect looks at the file. The error is a *PathError.
func Clean(written string) (string, error) {
	refuse := func(found, do string) (string, error) {
		return "", &PathError{Path: written, Found: found, Do: do}
	}
	escapes := func(found, do string) (string, error) {
		return "", &PathError{Path: written, Found: found, Do: do, Escapes: true}
	}
	switch {
	case written == "":
		return refuse("is empty", "name a file beside the manifest or below it")
	case len(written) > mostBytes:
		return refuse("is "+strconv.Itoa(len(written))+" bytes long", "keep it to "+strconv.Itoa(mostBytes)+" bytes")
	case !utf8.ValidString(written):
		return refuse("is not UTF-8", "rename the file")
	case strings.ContainsFunc(written, unicode.IsControl):
		return refuse("has a control character", "rename the file")
	case strings.Contains(written, `\`):
		return refuse("has a backslash", slashes(written))
	case len(written) > 1 && written[1] == ':' && isLetter(written[0]):
		return escapes("names a drive", "write it relative to the manifest's folder")
	case written[0] == '/':
		return escapes("is absolute", "write it relative to the manifest's folder")
	}
	clean := path.Clean(written)
	switch {
	case clean == ".." || strings.HasPrefix(clean, "../"):
		return escapes("leaves the build's folder", "put the file beside the manifest")
	case clean == ".":
		return refuse("names the build's folder", "name a file in it")
	case clean == "-":
		// sha256sum would read its standard input.
		return refuse("stands for standard input", "rename the file")
	case climbs(written):
		return refuse(`climbs with ".."`, "write "+strconv.Quote(clean))
	case strings.HasSuffix(written, "/"):
		return refuse("names a folder", "name a file in it")
	case clean != written:
		// "./C:x" is shortened to a drive.
		return Clean(clean)
	}
	return clean, nil
}

// slashes offers a path written with backslashes the other way round, where
// that would be taken.
func slashes(written string) string {
	turned := strings.ReplaceAll(written, `\`, "/")
	if clean, err := Clean(turned); err == nil {
		return "write " + strconv.Quote(clean)
	}
	return "write it with forward slashes, relative to the manifest's folder"
}

// climbs tells whether any part of the path is "..". Behind a link, "a/../b"
// is not "b".
func climbs(written string) bool {
	for part := range strings.SplitSeq(written, "/") {
		if part == ".." {
			return true
		}
	}
	return false
}

func isLetter(c byte) bool { return 'a' <= c|0x20 && c|0x20 <= 'z' }

// shorten keeps a message to one readable line.
func shorten(text string) string {
	const shown = 100
	runes := []rune(text)
	if len(runes) <= shown {
		return text
	}
	return string(runes[:shown]) + "…"
}
