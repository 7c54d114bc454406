package rulebook

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"time"
)

// Region is a country, state or province whose requirements a pack examines.
type Region struct {
	Code        string      `yaml:"code" json:"code"`
	Name        string      `yaml:"name" json:"name"`
	Inherits    string      `yaml:"inherits" json:"inherits,omitempty"`
	Reviewed    string      `yaml:"reviewed" json:"reviewed,omitempty"`
	Authorities []Authority `yaml:"authorities" json:"authorities,omitempty"`
	// Pack says that a pack examines this region; without one nothing about
	// registration there was examined.
	Pack bool `yaml:"-" json:"pack"`
}

// Authority decides something in a region.
type Authority struct {
	Name    string `yaml:"name" json:"name"`
	Decides string `yaml:"decides" json:"decides"`
}

var regionCode = regexp.MustCompile(`^[A-Z]{2}(-[A-Z0-9]{1,3})?$`)

func readRegion(data []byte) (*Region, error) {
	r := &Region{Pack: true}
	if err := strictYAML(data, r); err != nil {
		return nil, err
	}
	if !regionCode.MatchString(r.Code) {
		return nil, fmt.Errorf("code is %q, needs an ISO 3166 code such as US or US-CA", r.Code)
	}
	if r.Name == "" || len(r.Authorities) == 0 {
		return nil, fmt.Errorf("%s: needs a name and at least one authority", r.Code)
	}
	if _, err := time.Parse(time.DateOnly, r.Reviewed); err != nil {
		return nil, fmt.Errorf("%s: reviewed is %q, needs a date", r.Code, r.Reviewed)
	}
	return r, nil
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
