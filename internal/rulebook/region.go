package rulebook

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"time"
)

// Region is a country, state or province whose requirements a pack examines.
type Region struct {
	Code     string `yaml:"code" json:"code"`
	Name     string `yaml:"name" json:"name"`
	Inherits string `yaml:"inherits" json:"inherits,omitempty"`
	Reviewed string `yaml:"reviewed" json:"reviewed,omitempty"`
	// ReviewMonths is how long a look at this region's sources is good for.
	ReviewMonths int `yaml:"review_months" json:"review_months,omitempty"`
	// Paper and Units are what an inspector there is used to: a4 or letter;
	// si, customary or both. A region that names none takes them from the one
	// it inherits.
	Paper string `yaml:"paper" json:"paper,omitempty"`
	Units string `yaml:"units" json:"units,omitempty"`
	// Zones are the counties or areas that the authority tells apart, from a
	// list that was read.
	Zones       Zones       `yaml:"zones" json:"zones,omitzero"`
	Authorities []Authority `yaml:"authorities" json:"authorities,omitempty"`
	// Pack says that a pack examines this region; without one nothing about
	// registration there was examined.
	Pack bool `yaml:"-" json:"pack"`

	from string // name of the pack that defines it
}

// Zones is a list of areas with its source.
type Zones struct {
	Means    string   `yaml:"means" json:"means"` // what lies inside these areas
	Names    []string `yaml:"names" json:"names"`
	Source   string   `yaml:"source" json:"source"`
	URL      string   `yaml:"url" json:"url"`
	Reviewed string   `yaml:"reviewed" json:"reviewed"`
}

// whole says that a list of zones is not there at all, or all of it.
func (z Zones) whole() bool {
	if len(z.Names) == 0 {
		return z.Means == "" && z.Source == "" && z.URL == "" && z.Reviewed == ""
	}
	return z.Means != "" && z.Source != "" && isDate(z.Reviewed)
}

// Authority decides something in a region.
type Authority struct {
	Name    string `yaml:"name" json:"name"`
	Decides string `yaml:"decides" json:"decides"`
}

var regionCode = regexp.MustCompile(`^[A-Z]{2}(-[A-Z0-9]{1,3})?$`)

func isDate(text string) bool {
	_, err := time.Parse(time.DateOnly, text)
	return err == nil
}

// addRegion takes in regions/<code>/region.yaml.
func (b *Book) addRegion(pack Pack, name string, data []byte) error {
	r := &Region{Pack: true, from: pack.Name}
	if err := strictYAML(data, r); err != nil {
		return err
	}
	folder := "regions/" + strings.ToLower(r.Code) + "/region.yaml"
	switch {
	case !regionCode.MatchString(r.Code):
		return fmt.Errorf("code is %q, needs an ISO 3166 code such as US or US-CA", r.Code)
	case name != folder:
		return fmt.Errorf("region %s is described in %s", r.Code, folder)
	case r.Inherits != "" && !regionCode.MatchString(r.Inherits):
		return fmt.Errorf("inherits %q, needs an ISO 3166 code such as US", r.Inherits)
	case r.Name == "" || len(r.Authorities) == 0:
		return fmt.Errorf("region %s needs a name and at least one authority", r.Code)
	case !isDate(r.Reviewed):
		return fmt.Errorf("reviewed is %q, needs a date such as 2026-11-25", r.Reviewed)
	case r.ReviewMonths < 1 || r.ReviewMonths > 60:
		return fmt.Errorf("review_months is %d, needs the months from 1 to 60 after which the sources are read again", r.ReviewMonths)
	case !slices.Contains([]string{"", "a4", "letter"}, r.Paper):
		return fmt.Errorf("paper is %q, needs a4 or letter", r.Paper)
	case !slices.Contains([]string{"", "si", "customary", "both"}, r.Units):
		return fmt.Errorf("units is %q, needs si, customary or both", r.Units)
	case !r.Zones.whole():
		return fmt.Errorf("zones need names, what they mean, the list they were read from and the day it was reviewed")
	case b.regions[r.Code] != nil:
		return fmt.Errorf("region %s is defined already: a pack may add rules to it, not replace it", r.Code)
	}
	b.regions[r.Code] = r
	return nil
}

// checkRegions says whether a pack's regions can stop a build at all: a region
// counts as examined, so it needs a rule that blocks, and one that collects
// the questions that are only notes by themselves.
func (b *Book) checkRegions(pack Pack) error {
	has := func(code string, what func(*Meta) bool) bool {
		return slices.ContainsFunc(b.Catalogue(), func(m *Meta) bool { return m.Region == code && what(m) })
	}
	for _, code := range slices.Sorted(maps.Keys(b.regions)) {
		r := b.regions[code]
		if r.from != pack.Name {
			continue
		}
		if _, err := b.Chain(code); err != nil {
			return err
		}
		if r.Inherits != "" && b.regions[r.Inherits] == nil {
			return fmt.Errorf("region %s inherits %s, which no pack describes", code, r.Inherits)
		}
		if !has(code, func(m *Meta) bool { return m.Level == "must" }) {
			return fmt.Errorf("region %s has no rule at level must: nothing there could stop a build", code)
		}
	}
	for _, m := range b.Catalogue() {
		if m.Pack == pack.Name && m.Question != nil && !has(m.Region, func(m *Meta) bool { return m.Collects == "questions" }) {
			return fmt.Errorf("%s is a question, and no rule of region %s collects questions", m.ID, m.Region)
		}
	}
	return nil
}

// Chain returns the region and what it inherits, most general first. A code
// that no pack knows stands in the chain with Pack false. The error says what
// a code should look like.
func (b *Book) Chain(code string) ([]Region, error) {
	if code == "" {
		return nil, nil
	}
	if !regionCode.MatchString(code) {
		return nil, fmt.Errorf("%q is not an ISO 3166 code: write a state or province such as US-CA, or a country such as GB", code)
	}
	var chain []Region
	for at := code; at != ""; {
		region, known := b.regions[at]
		if !known {
			region = &Region{Code: at, Name: at}
			region.Inherits, _, _ = strings.Cut(at, "-")
			if region.Inherits == at || b.regions[region.Inherits] == nil {
				region.Inherits = ""
			}
		}
		if slices.ContainsFunc(chain, func(r Region) bool { return r.Code == at }) {
			return nil, fmt.Errorf("region %s inherits itself", at)
		}
		chain = append(chain, *region)
		at = region.Inherits
	}
	slices.Reverse(chain)
	return chain, nil
}

// Regions returns the codes of the regions that a pack examines, sorted.
func (b *Book) Regions() []string { return slices.Sorted(maps.Keys(b.regions)) }
