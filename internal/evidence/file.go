// Package evidence finds the evidence files of a build and compares them with
// the digests recorded for them. A digest shows that a file is the one that was
// recorded; it says nothing about what the file shows.
//
// Digests are SHA-256 (FIPS 180-4), kept in a side file in the format of
// coreutils sha256sum, so that anyone can check them without this program. A
// Git LFS pointer (version 1 of its specification) counts with the digest it
// states for the content it stands for; the content itself isn't there then,
// and sha256sum agrees only once it has been fetched.
package evidence

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"syscall"
)

// MaxBytes is the size of the largest file read: 2 GiB.
const MaxBytes int64 = 2 << 30

// State is what rules see of an evidence file.
type State string

const (
	// Intact is a file whose digest equals the recorded one.
	Intact State = "intact"
	// Changed is a file whose digest differs from the recorded one.
	Changed State = "changed"
	// Missing is a file that isn't there, recorded or not.
	Missing State = "missing"
	// Unrecorded is a file that is there, but has no recorded digest.
	Unrecorded State = "unrecorded"
)

// File is an evidence file as it was found.
type File struct {
	// Path is as written in the manifest.
	Path  string
	State State
	// Digest is the SHA-256 of the content, in lower-case hexadecimal; for a
	// Git LFS pointer, of the content it stands for. It is "" if missing.
	Digest string
	// Size is in bytes, of the content or of what a pointer stands for.
	Size int64
	// Pointer tells that the file is a Git LFS pointer: Digest and Size are
	// what it states, the content was not examined.
	Pointer bool
}

// Inspect examines the file at path, as written, below the folder dir. A file
// that isn't there is Missing and no error. Refused with a *PathError: a path
// Clean refuses, a symbolic link anywhere on the way, a folder, a device, a
// file that may not be read or is larger than MaxBytes.
func Inspect(dir, path string, sums Sums) (File, error) {
	clean, err := Clean(path)
	if err != nil {
		return File{}, err
	}
	root, err := openRoot(dir)
	if err != nil {
		return File{}, err
	}
	defer root.Close()
	file, err := examine(root, path, clean)
	if err != nil {
		return File{}, err
	}
	recorded, ok := sums[clean]
	switch {
	case file.State == Missing:
	case !ok:
		file.State = Unrecorded
	case recorded == file.Digest:
		file.State = Intact
	default:
		file.State = Changed
	}
	return file, nil
}

func openRoot(dir string) (*os.Root, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, fmt.Errorf("open the build's folder %q: %w", dir, cause(err))
	}
	return root, nil
}

// examine digests one file. The state is Missing or still empty.
func examine(root *os.Root, written, clean string) (File, error) {
	file := File{Path: written}
	f, err := open(root, written, clean)
	if errors.Is(err, fs.ErrNotExist) {
		file.State = Missing
		return file, nil
	}
	if err != nil {
		return File{}, err
	}
	defer f.Close()
	opened, err := f.Stat()
	if err != nil {
		return File{}, unreadable(written, err)
	}
	if opened.Size() > MaxBytes {
		return tooLarge(written, opened.Size())
	}
	if file.Digest, file.Size, file.Pointer, err = digest(f); err != nil {
		return File{}, unreadable(written, err)
	}
	if file.Size > MaxBytes && !file.Pointer {
		return tooLarge(written, file.Size)
	}
	return file, nil
}

func tooLarge(written string, size int64) (File, error) {
	return File{}, &PathError{Path: written, Found: fmt.Sprintf("has %d bytes, more than 2 GiB", size), Do: "split it or keep an excerpt"}
}

// walk goes down the path one part at a time, so that a link on the way is
// named instead of followed. It returns what stands at the end; the error is
// fs.ErrNotExist or a *PathError.
func walk(root *os.Root, written, clean string) (fs.FileInfo, error) {
	parts := strings.Split(clean, "/")
	for i := range parts {
		step := strings.Join(parts[:i+1], "/")
		info, err := root.Lstat(filepath.FromSlash(step))
		switch last := i == len(parts)-1; {
		case errors.Is(err, fs.ErrNotExist):
			return nil, fs.ErrNotExist
		case err != nil:
			return nil, unreadable(written, err)
		case info.Mode()&fs.ModeSymlink != 0:
			return nil, linked(root, written, step, last)
		case last:
			return info, nil
		case !info.IsDir():
			return nil, &PathError{Path: written, Found: "goes through " + strconv.Quote(shorten(step)) + ", which is no folder", Do: "name the file itself"}
		}
	}
	return nil, fs.ErrNotExist
}

// linked says that a symbolic link stands at step, and whether it leads out.
func linked(root *os.Root, written, step string, last bool) error {
	found := "is a symbolic link"
	if !last {
		found = "goes through the symbolic link " + strconv.Quote(shorten(step))
	}
	// Refusals of the system have a number; the root's own refusal to be left
	// has none.
	_, err := root.Stat(filepath.FromSlash(step))
	_, numbered := errors.AsType[syscall.Errno](err)
	escapes := err != nil && !numbered
	if escapes {
		found += ", escaping the build's folder"
	}
	return &PathError{Path: written, Found: found, Do: "put the file itself there", Escapes: escapes}
}

func unreadable(written string, err error) error {
	e := &PathError{Path: written, Found: "can't be read (" + cause(err).Error() + ")", Do: "check the file and its disk"}
	if errors.Is(err, fs.ErrPermission) {
		e.Do = "allow reading it"
	}
	return e
}

// cause is err without the operation and the system's paths, which a message
// states in its own words.
func cause(err error) error {
	if e, ok := errors.AsType[*fs.PathError](err); ok {
		return e.Err
	}
	if e, ok := errors.AsType[*os.LinkError](err); ok {
		return e.Err
	}
	return err
}

// digest reads r to its end, but no further than one byte above MaxBytes.
func digest(r io.Reader) (sum string, size int64, pointer bool, err error) {
	head, err := io.ReadAll(io.LimitReader(r, pointerBytes))
	if err != nil {
		return "", 0, false, err
	}
	if len(head) < pointerBytes {
		if sum, size, ok := parsePointer(head); ok {
			return sum, size, true, nil
		}
	}
	h := sha256.New()
	size, err = io.Copy(h, io.LimitReader(io.MultiReader(bytes.NewReader(head), r), MaxBytes+1))
	return hex.EncodeToString(h.Sum(nil)), size, false, err
}
