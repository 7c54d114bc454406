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
	Area   string               `yaml:"area"`
	Limits map[string]yaml.Node `yaml:"limits"`
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

// define takes in the limits that a pack's rules compare with. The area of a
// local pack's limits is its name, so that they can't stand in for others.
func (b *Book) define(pack Pack, data []byte) error {
	var file limitFile
	if err := strictYAML(data, &file); err != nil {
		return err
	}
	if pack.local() && file.Area != pack.Name {
		return fmt.Errorf("area is %q, needs %q: the limits of a pack bear its name", file.Area, pack.Name)
	}
	if !word.MatchString(file.Area) {
		return fmt.Errorf("area is %q, needs lower-case letters, digits and _", file.Area)
	}
	for _, name := range slices.Sorted(maps.Keys(file.Limits)) {
		node := file.Limits[name]
		l, err := readLimit(&node)
		if err != nil {
			return err
		}
		l.Path = "limits." + file.Area + "." + name
		if pack.local() {
			l.SetBy = pack.Name
		}
		switch {
		case !word.MatchString(name):
			return at(&node, "limit is called %q, needs lower-case letters, digits and _", name)
		case b.limits[l.Path] != nil:
			return at(&node, "limit %s is defined already", l.Path)
		}
		b.limits[l.Path] = l
	}
	return nil
}

func readLimit(node *yaml.Node) (*Limit, error) {
	var e limitEntry
	if err := decodeNode(node, &e); err != nil {
		return nil, err
	}
	_, dateErr := time.Parse(time.DateOnly, e.Reviewed)
	switch {
	case !quantity.Known(e.Kind):
		return nil, at(node, "kind is %q, needs a kind of quantity such as length or ratio", e.Kind)
	case e.Tighter != "lower" && e.Tighter != "higher":
		return nil, at(node, "tighter is %q, needs lower or higher", e.Tighter)
	case e.Title == "" || e.Source == "":
		return nil, at(node, "needs a title and a source")
	case !slices.Contains(bases, e.Basis):
		return nil, at(node, "basis is %q, needs one of %s", e.Basis, strings.Join(bases, ", "))
	case dateErr != nil:
		return nil, at(node, "reviewed is %q, needs a date such as 2026-11-25", e.Reviewed)
	}
	value, err := quantity.Parse(e.Value, e.Kind)
	if err != nil {
		return nil, at(node, "value: %v", err)
	}
	return &Limit{Title: e.Title, Value: value, Tighter: e.Tighter, Source: e.Source, Basis: e.Basis, Reviewed: e.Reviewed}, nil
}

// tighten reads the limits that a local pack sets: paths without "limits."
// and values.
func (b *Book) tighten(pack Pack, data []byte) error {
	var file struct {
		Limits map[string]yaml.Node `yaml:"limits"`
	}
	if err := strictYAML(data, &file); err != nil {
		return err
	}
	if len(file.Limits) == 0 {
		return fmt.Errorf("sets no limit")
	}
	for _, name := range slices.Sorted(maps.Keys(file.Limits)) {
		node := file.Limits[name]
		var written string
		if err := decodeNode(&node, &written); err != nil {
			return err
		}
		limit := b.limits["limits."+name]
		if limit == nil {
			return at(&node, "no limit is called %q%s", name, nearest(name, b.limitNames()))
		}
		value, err := quantity.Parse(written, limit.Value.Kind)
		if err != nil {
			return at(&node, "%s: %v", name, err)
		}
		if looser(value, limit) {
			return at(&node, "%s: %s is looser than %s%s: a pack may only set it %s", name, written, limit.Value.Text, limit.setBy(), limit.Tighter)
		}
		tightened := *limit
		tightened.Value, tightened.SetBy = value, pack.Name
		b.limits[limit.Path] = &tightened
	}
	return nil
}

func looser(value quantity.Value, limit *Limit) bool {
	if limit.Tighter == "higher" {
		return value.High.Cmp(limit.Value.High) < 0 || value.Low.Cmp(limit.Value.Low) < 0
	}
	return value.High.Cmp(limit.Value.High) > 0 || value.Low.Cmp(limit.Value.Low) > 0
}

func (l *Limit) setBy() string {
	if l.SetBy == "" {
		return ""
	}
	return ", set by pack " + l.SetBy
}

// limitNames lists the limits as a pack names them, sorted.
func (b *Book) limitNames() []string {
	var names []string
	for _, l := range b.Limits() {
		names = append(names, strings.TrimPrefix(l.Path, "limits."))
	}
	return names
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
