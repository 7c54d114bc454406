package check

import (
	"fmt"
	"io/fs"
	"path/filepath"
	"strings"

	"trialfit/internal/manifest"
)

// walk lists the manifests below a folder. Hidden folders are not searched.
func walk(folder string) ([]string, error) {
	var found []string
	err := filepath.WalkDir(folder, func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return fmt.Errorf("%s: %w", filepath.ToSlash(path), err)
		case d.IsDir() && path != folder && strings.HasPrefix(d.Name(), "."):
			return filepath.SkipDir
		case !d.IsDir() && strings.HasSuffix(d.Name(), manifest.Suffix):
			found = append(found, path)
		}
		return nil
	})
	return found, err
}
