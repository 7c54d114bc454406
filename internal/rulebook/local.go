package rulebook

import (
	"encoding/json"
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

var (
	packName   = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)
	versionRow = regexp.MustCompile(`^\d+\.\d+(\.\d+)?$`)
)

func readPack(fsys fs.FS) (Pack, error) {
	data, err := fs.ReadFile(fsys, "pack.yaml")
	if errors.Is(err, fs.ErrNotExist) {
		return Pack{}, errors.New("has no pack.yaml")
	}
	if err != nil {
		return Pack{}, err
	}
	var p Pack
	if err := strictYAML(data, &p); err != nil {
		return Pack{}, fmt.Errorf("pack.yaml: %w", err)
	}
	if !packName.MatchString(p.Name) {
		return Pack{}, fmt.Errorf("pack.yaml: name is %q, needs lower-case letters, digits and _", p.Name)
	}
	if !versionRow.MatchString(p.Version) {
		return Pack{}, fmt.Errorf("pack.yaml: version is %q, needs a version such as 1.0", p.Version)
	}
	if p.Needs != "" && (!versionRow.MatchString(p.Needs) || older(Version, p.Needs)) {
		return Pack{}, fmt.Errorf("pack.yaml: needs trialfit %s or newer, this is %s", p.Needs, Version)
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
		if i < len(numbers) {
			numbers[i], _ = strconv.Atoi(part) // versionRow has seen to the digits
		}
	}
	return numbers
}

// announce reads a local pack's name and manifest extension; the form of
// manifests must be known before its rules are read.
func (b *Book) announce(fsys fs.FS, extensions map[string][]byte) error {
	pack, err := readPack(fsys)
	if err != nil {
		return err
	}
	if slices.ContainsFunc(b.Packs, func(p Pack) bool { return p.Name == pack.Name }) {
		return fmt.Errorf("the name %q is taken by another pack", pack.Name)
	}
	b.Packs = append(b.Packs, pack)
	data, err := fs.ReadFile(fsys, "manifest.json")
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	if !json.Valid(data) {
		return errors.New("manifest.json is not JSON")
	}
	extensions["x-"+pack.Name] = data
	return nil
}

// addLocal takes in a local pack. Its rules are parsed, checked and placed
// below data.local.<pack>.
func (b *Book) addLocal(fsys fs.FS, pack Pack) error {
	prefix := "local/" + pack.Name + "/"
	first := len(b.sources)
	var overrides [][]byte
	err := b.collect(fsys, prefix, func(name string, data []byte) error {
		if name == "limits.yaml" {
			overrides = append(overrides, data)
			return nil
		}
		return b.defineLocal(pack.Name, data)
	})
	if err != nil {
		return err
	}
	for _, data := range overrides {
		if err := b.tighten(pack.Name, data); err != nil {
			return fmt.Errorf("limits.yaml: %w", err)
		}
	}
	for _, s := range b.sources[first:] {
		meta, m, err := b.annotated(s, pack.Name, prefix)
		if err != nil {
			return err
		}
		if meta == nil {
			return fmt.Errorf("%s: a pack's Rego lies in rules/<area>/<rule>/ or regions/<code>/<rule>/", s.name)
		}
		if err := b.checkSyntax(s.name, m); err != nil {
			return err
		}
		b.Rules[meta.ID] = meta
	}
	if len(b.sources) == first && len(overrides) == 0 {
		return errors.New("holds neither rules nor limits")
	}
	return nil
}

// defineLocal takes the limits of a pack's own rules; their area starts with
// the pack's name, so that they can't stand in for shipped ones.
func (b *Book) defineLocal(pack string, data []byte) error {
	limits, err := readLimits(data)
	if err != nil {
		return err
	}
	for _, l := range limits {
		if !strings.HasPrefix(l.Path, "limits."+pack+".") && !strings.HasPrefix(l.Path, "limits."+pack+"_") {
			return fmt.Errorf("area of its limits must be %q", pack)
		}
		if _, twice := b.limits[l.Path]; twice {
			return fmt.Errorf("limit %s is defined already", l.Path)
		}
		l.SetBy = pack
		b.limits[l.Path] = l
	}
	return nil
}
