package check

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"trialfit/internal/manifest"
)

const nothing = "no manifest found: a manifest's name ends in " + manifest.Suffix

// Find returns the manifests in the given files and folders, in path order,
// each once. Files are not looked at: opening one says what is wrong with it.
// The error is manifest.Problems, one for each folder that holds no manifest
// or can't be searched.
func Find(paths []string) ([]string, error) {
	var found []string
	var problems manifest.Problems
	for _, path := range paths {
		info, err := os.Stat(path)
		if err != nil || !info.IsDir() {
			found = append(found, filepath.Clean(path))
			continue
		}
		inside, faults := walk(path)
		if len(inside) == 0 && len(faults) == 0 {
			faults = manifest.Problems{{File: filepath.ToSlash(path), Message: nothing}}
		}
		found = append(found, inside...)
		problems = append(problems, faults...)
	}
	if len(problems) > 0 {
		return nil, problems
	}
	slices.Sort(found)
	return slices.Compact(found), nil
}

// walk lists the manifests below a folder. Hidden folders and symbolic links
// to folders are not searched.
func walk(folder string) ([]string, manifest.Problems) {
	var found []string
	var problems manifest.Problems
	_ = filepath.WalkDir(folder, func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			problems = append(problems, manifest.FileProblem(filepath.ToSlash(path), err))
			if d != nil && d.IsDir() {
				return filepath.SkipDir
			}
		case d.IsDir() && path != folder && strings.HasPrefix(d.Name(), "."):
			return filepath.SkipDir
		case !d.IsDir() && strings.HasSuffix(d.Name(), manifest.Suffix):
			found = append(found, path)
		}
		return nil
	})
	return found, problems
}
