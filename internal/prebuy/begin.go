package prebuy

import (
	"bytes"
	"fmt"

	"gopkg.in/yaml.v3"
)

// Begin writes the manifest of a build that starts with a combination: all
// that the shortlist knows of it, who meets which need, the parts to find and
// what is to be put right, so that nothing is typed twice.
func (s *Shortlist) Begin(c, d *Candidate) ([]byte, error) {
	takes := s.reckon(c, d).Takes
	k := &composer{s: s, chassis: c, donor: d, takes: takes}
	root := k.root()
	if parts := k.parts(takes); parts != nil {
		set(root, "parts", parts)
	}
	var b bytes.Buffer
	fmt.Fprintf(&b, "# Begun from %s with the combination %s.\n", s.Base()+Suffix, joint(c, d))
	enc := yaml.NewEncoder(&b)
	enc.SetIndent(2)
	if err := enc.Encode(root); err != nil {
		return nil, fmt.Errorf("writing the manifest: %w", err)
	}
	if err := enc.Close(); err != nil {
		return nil, fmt.Errorf("writing the manifest: %w", err)
	}
	return b.Bytes(), nil
}

// parts lists what is to be had for the needs.
func (k *composer) parts(takes []Taken) *yaml.Node {
	out := list(nil)
	for _, t := range takes {
		source, origin := "", ""
		what := t.Need.What
		switch t.By {
		case ByDonor:
			source, origin, what = t.Part.Of.ID, "donor", t.Part.What
		case ByBought:
			source, origin = "to buy", "new"
		case ByMade:
			source, origin = "to make", "shop"
		case ByNobody:
			source = "nobody yet"
		default:
			continue
		}
		item := mapping(nil)
		set(item, "id", word(t.Need.ID, nil))
		set(item, "what", word(what, nil))
		set(item, "source", word(source, nil))
		if origin != "" {
			set(item, "origin", word(origin, nil))
		}
		set(item, "state", word("to-find", nil))
		out.Content = append(out.Content, item)
	}
	if len(out.Content) == 0 {
		return nil
	}
	return out
}
