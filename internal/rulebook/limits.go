package rulebook

import (
	"fmt"
	"maps"
	"math/big"
	"slices"
	"strings"
	"time"

	"gopkg.in/yaml.v3"

	"trialfit/internal/quantity"
)

// Limit is one number that rules compare with.
type Limit struct {
	Path     string // "limits.mass.axle_margin"
	Title    string
	Value    quantity.Value
	Tighter  string // the direction in which a shop may move it: "lower" or "higher"
	Source   string
	Basis    string
	Reviewed string
	// SetBy is the pack that tightened it, "" for the shipped value.
	SetBy string
}

type limitFile struct {
	Area   string                `yaml:"area"`
	Limits map[string]limitEntry `yaml:"limits"`
}

type limitEntry struct {
	Title    string        `yaml:"title"`
	Value    string        `yaml:"value"`
	Kind     quantity.Kind `yaml:"kind"`
	Tighter  string        `yaml:"tighter"`
	Source   string        `yaml:"source"`
	Basis    string        `yaml:"basis"`
	Reviewed string        `yaml:"reviewed"`
}

// readLimits reads a limits.yaml of a pack that defines limits.
func readLimits(data []byte) ([]*Limit, error) {
	var file limitFile
	if err := strictYAML(data, &file); err != nil {
		return nil, err
	}
	if file.Area == "" {
		return nil, fmt.Errorf("names no area")
	}
	var limits []*Limit
	for _, name := range slices.Sorted(maps.Keys(file.Limits)) {
		e := file.Limits[name]
		value, err := quantity.Parse(e.Value, e.Kind)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		switch {
		case e.Tighter != "lower" && e.Tighter != "higher":
			return nil, fmt.Errorf("%s: tighter is %q, needs lower or higher", name, e.Tighter)
		case e.Title == "" || e.Source == "":
			return nil, fmt.Errorf("%s: needs a title and a source", name)
		case !slices.Contains(bases, e.Basis):
			return nil, fmt.Errorf("%s: basis is %q, needs one of %s", name, e.Basis, strings.Join(bases, ", "))
		}
		if _, err := time.Parse(time.DateOnly, e.Reviewed); err != nil {
			return nil, fmt.Errorf("%s: reviewed is %q, needs a date such as 2026-11-25", name, e.Reviewed)
		}
		limits = append(limits, &Limit{
			Path: "limits." + file.Area + "." + name, Title: e.Title, Value: value, Tighter: e.Tighter,
			Source: e.Source, Basis: e.Basis, Reviewed: e.Reviewed,
		})
	}
	return limits, nil
}

// tighten reads the limits that a local pack sets: paths without "limits."
// and values.
func (b *Book) tighten(pack string, data []byte) error {
	var file struct {
		Limits map[string]string `yaml:"limits"`
	}
	if err := strictYAML(data, &file); err != nil {
		return err
	}
	for _, name := range slices.Sorted(maps.Keys(file.Limits)) {
		limit := b.limits["limits."+name]
		if limit == nil {
			return fmt.Errorf("no limit is called %q", name)
		}
		value, err := quantity.Parse(file.Limits[name], limit.Value.Kind)
		if err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		looser := value.High.Cmp(limit.Value.High) > 0 || value.Low.Cmp(limit.Value.Low) > 0
		if limit.Tighter == "higher" {
			looser = value.High.Cmp(limit.Value.High) < 0 || value.Low.Cmp(limit.Value.Low) < 0
		}
		if looser {
			return fmt.Errorf("%s: %s is looser than %s: a pack may only set it %s", name, file.Limits[name], limit.Value.Text, limit.Tighter)
		}
		tightened := *limit
		tightened.Value, tightened.SetBy = value, pack
		b.limits[limit.Path] = &tightened
	}
	return nil
}

// limitData is the document that rules see under data.limits.
func (b *Book) limitData() map[string]any {
	out := map[string]any{}
	for path, limit := range b.limits {
		at := out
		steps := strings.Split(path, ".")
		for _, step := range steps[1 : len(steps)-1] {
			next, ok := at[step].(map[string]any)
			if !ok {
				next = map[string]any{}
				at[step] = next
			}
			at = next
		}
		low, high := limit.Value.Floats()
		at[steps[len(steps)-1]] = map[string]any{
			"low": number(low), "high": number(high), "unit": quantity.SI(limit.Value.Kind),
			"kind": string(limit.Value.Kind), "text": limit.Value.Text,
		}
	}
	return out
}

// Spread is the default spread of a basis, from the limits of the area "spread".
func (b *Book) Spread(kind quantity.Kind, basis string) (relative, floor *big.Rat) {
	if l := b.limits["limits.spread."+basis]; l != nil {
		relative = l.Value.High
	}
	name := strings.ReplaceAll(string(kind), " ", "_")
	if l := b.limits["limits.spread."+name+"_"+basis]; l != nil {
		floor = l.Value.High
	}
	return relative, floor
}

func strictYAML(data []byte, into any) error {
	dec := yaml.NewDecoder(strings.NewReader(string(data)))
	dec.KnownFields(true)
	if err := dec.Decode(into); err != nil {
		return fmt.Errorf("%s", strings.Join(strings.Fields(strings.TrimPrefix(err.Error(), "yaml: ")), " "))
	}
	return nil
}
