package evidence

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Sums maps paths, in the form Clean returns, to digests: SHA-256 in
// lower-case hexadecimal.
type Sums map[string]string

// SumSuffix ends the name of every side file.
const SumSuffix = ".evidence.sha256"

// SumFile is the name of the side file of a manifest, beside it: "x.build.yaml"
// has "x.evidence.sha256", "x.shortlist.yaml" has "x.shortlist.evidence.sha256".
func SumFile(manifest string) string {
	if name, is := strings.CutSuffix(manifest, ".shortlist.yaml"); is {
		return name + ".shortlist" + SumSuffix
	}
	return strings.TrimSuffix(manifest, ".build.yaml") + SumSuffix
}

// FormatSums returns the content of a side file: one line per path,
// "<64 hexadecimal digits><two spaces><path>\n", sorted by path. Without sums
// it is empty.
func FormatSums(sums Sums) []byte {
	var b bytes.Buffer
	for _, path := range slices.Sorted(maps.Keys(sums)) {
		fmt.Fprintf(&b, "%s  %s\n", sums[path], path)
	}
	return b.Bytes()
}

// ReadSums reads a side file. One that isn't there gives empty sums. The error
// is SumsErrors, or of the file system.
func ReadSums(file string) (Sums, error) {
	info, err := os.Lstat(file)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Sums{}, nil
	case err != nil:
		return nil, fmt.Errorf("read digests %q: %w", file, cause(err))
	case !info.Mode().IsRegular():
		return nil, fmt.Errorf("read digests %q: is no ordinary file", file)
	}
	f, err := os.Open(file)
	if err != nil {
		return nil, fmt.Errorf("read digests %q: %w", file, cause(err))
	}
	defer f.Close()
	return ParseSums(file, f)
}

// WriteSums writes a side file whole or not at all: into a temporary file in
// the same folder, which then takes its name. Sums that ReadSums would refuse
// are not written.
func WriteSums(file string, sums Sums) (err error) {
	for _, path := range slices.Sorted(maps.Keys(sums)) {
		clean, err := Clean(path)
		switch {
		case err != nil:
			return fmt.Errorf("write digests %q: %w", file, err)
		case clean != path:
			return fmt.Errorf("write digests %q: evidence path %q is not in its shortest form: write %q", file, path, clean)
		case !isDigest(sums[path]):
			return fmt.Errorf("write digests %q: digest %q of %q is not %d lower-case hexadecimal digits", file, sums[path], path, hexDigits)
		}
	}
	temp, err := os.CreateTemp(filepath.Dir(file), "."+filepath.Base(file)+".*")
	if err != nil {
		return fmt.Errorf("write digests %q: %w", file, cause(err))
	}
	defer func() {
		if err != nil {
			temp.Close()
			os.Remove(temp.Name())
			err = fmt.Errorf("write digests %q: %w", file, cause(err))
		}
	}()
	if _, err := temp.Write(FormatSums(sums)); err != nil {
		return err
	}
	// A temporary file is private; a side file is for everyone who reads the
	// build.
	if err := temp.Chmod(0o644); err != nil {
		return err
	}
	if err := temp.Sync(); err != nil {
		return err
	}
	if err := temp.Close(); err != nil {
		return err
	}
	return os.Rename(temp.Name(), file)
}

const hexDigits = 2 * sha256.Size

func isDigest(text string) bool {
	_, err := hex.DecodeString(text)
	return err == nil && len(text) == hexDigits && text == strings.ToLower(text)
}
