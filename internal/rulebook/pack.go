package rulebook

import (
	"errors"
	"fmt"
	"io/fs"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Version of trialfit that packs are measured against.
const Version = "0.1.0"

const shippedName = "trialfit"

// Pack identifies a folder of rules.
type Pack struct {
	Name    string `yaml:"name" json:"name"`
	Version string `yaml:"version" json:"version"`
	Contact string `yaml:"contact" json:"contact,omitempty"`
	// Needs is the oldest trialfit version that can read the pack.
	Needs string `yaml:"needs" json:"needs,omitempty"`
	// EvidenceKinds are words that evidence[].kind accepts beside the shipped ones.
	EvidenceKinds []string `yaml:"evidence_kinds" json:"evidence_kinds,omitempty"`

	folder string // as the user named it
}

func (p Pack) local() bool { return p.Name != shippedName }

// PackError says that a pack can't be used. It stops the run: a broken pack
// never turns into a pass.
type PackError struct {
	// Pack is the folder of a local pack as it was named, "trialfit" for the shipped one.
	Pack string
	Err  error
}

// Error names the pack and the fault on one line.
func (e *PackError) Error() string {
	return fmt.Sprintf("pack %s: %s", e.Pack, strings.ReplaceAll(e.Err.Error(), "\n", "; "))
}

func (e *PackError) Unwrap() error { return e.Err }

// word is the form of pack, area, rule and limit names: what Rego and paths
// take without quotes.
var word = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

var (
	versionRow   = regexp.MustCompile(`^\d+\.\d+(\.\d+)?$`)
	evidenceKind = regexp.MustCompile(`^[a-z][a-z0-9]*(-[a-z0-9]+)*$`)
)

func readPack(fsys fs.FS) (Pack, error) {
	p, err := packFile(fsys)
	if err != nil {
		return Pack{}, err
	}
	switch {
	case !word.MatchString(p.Name):
		err = fmt.Errorf("name is %q, needs lower-case letters, digits and _", p.Name)
	case !versionRow.MatchString(p.Version):
		err = fmt.Errorf("version is %q, needs a version such as 1.0", p.Version)
	case p.Needs != "" && !versionRow.MatchString(p.Needs):
		err = fmt.Errorf("needs is %q, needs a version of trialfit such as %s", p.Needs, Version)
	case p.Needs != "" && older(Version, p.Needs):
		err = fmt.Errorf("needs trialfit %s or newer, this is %s", p.Needs, Version)
	}
	for _, kind := range p.EvidenceKinds {
		if err == nil && !evidenceKind.MatchString(kind) {
			err = fmt.Errorf("evidence kind is %q, needs lower-case words joined by hyphens", kind)
		}
	}
	if err != nil {
		return Pack{}, within("pack.yaml", err)
	}
	return p, nil
}

func packFile(fsys fs.FS) (Pack, error) {
	var p Pack
	data, err := fs.ReadFile(fsys, "pack.yaml")
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return p, errors.New("has no pack.yaml")
	case err != nil:
		return p, err
	}
	if err := strictYAML(data, &p); err != nil {
		return p, within("pack.yaml", err)
	}
	return p, nil
}

// older says whether version a comes before version b.
func older(a, b string) bool {
	return slices.Compare(versionNumbers(a), versionNumbers(b)) < 0
}

func versionNumbers(v string) []int {
	numbers := make([]int, 3)
	for i, part := range strings.Split(v, ".") {
		numbers[i], _ = strconv.Atoi(part) // versionRow has seen to the digits
	}
	return numbers
}
