package cli

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"gopkg.in/yaml.v3"
)

// projectFile names the local packs of a repository.
const projectFile = "trialfit.yaml"

// localPacks returns the packs named in trialfit.yaml at the root of the
// repository, then those named by flags.
func (a *app) localPacks() ([]string, error) {
	packs, err := projectPacks(".")
	if err != nil {
		return nil, err
	}
	return append(packs, a.packs...), nil
}

// projectPacks looks for trialfit.yaml from dir up to the root of the
// repository. Folders in it are relative to the file.
func projectPacks(dir string) ([]string, error) {
	at, err := filepath.Abs(dir)
	if err != nil {
		return nil, err
	}
	back := "."
	for {
		data, err := os.ReadFile(filepath.Join(at, projectFile))
		if err == nil {
			return readProject(data, back)
		}
		if !errors.Is(err, fs.ErrNotExist) {
			return nil, fmt.Errorf("reading %s: %w", projectFile, err)
		}
		if _, err := os.Lstat(filepath.Join(at, ".git")); err == nil || at == filepath.Dir(at) {
			return nil, nil
		}
		at, back = filepath.Dir(at), filepath.Join(back, "..")
	}
}

func readProject(data []byte, base string) ([]string, error) {
	var project struct {
		Packs []string `yaml:"packs"`
	}
	dec := yaml.NewDecoder(strings.NewReader(string(data)))
	dec.KnownFields(true)
	if err := dec.Decode(&project); err != nil {
		return nil, fmt.Errorf("%s: %s", projectFile, strings.Join(strings.Fields(err.Error()), " "))
	}
	packs := make([]string, len(project.Packs))
	for i, p := range project.Packs {
		if filepath.IsAbs(p) {
			return nil, fmt.Errorf("%s: %q is an absolute path: name a folder relative to the file", projectFile, p)
		}
		packs[i] = filepath.Join(base, filepath.FromSlash(p))
	}
	return packs, nil
}
