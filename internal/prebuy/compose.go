package prebuy

import (
	"fmt"
	"slices"
	"strings"

	"gopkg.in/yaml.v3"

	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
)

// ofEngine are the sections, and parts of sections, that belong to an engine:
// where chassis and donor both tell of them, the donor's holds.
var ofEngine = []string{
	"engine", "intake", "charge_air", "exhaust", "cooling", "controls", "vacuum", "transmission", "transfer_case",
	"electrical.alternator", "electrical.starter",
}

// whole are sections of one thing, never put together from two.
var whole = []string{"transmission", "transfer_case", "axles"}

// Note is something about the shortlist that a person should look at.
type Note struct {
	At   manifest.Position
	Text string
}

// composer puts the manifest of one combination together from parts of the
// shortlist; either candidate may be nil.
type composer struct {
	s       *Shortlist
	chassis *Candidate
	donor   *Candidate
	takes   []Taken
	notes   []Note
}

// manifest reads the manifest of the combination. Positions are those of the
// shortlist.
func (s *Shortlist) manifest(loader *manifest.Loader, c, d *Candidate, takes []Taken) (*manifest.Manifest, []Note, error) {
	k := &composer{s: s, chassis: c, donor: d, takes: takes}
	root := k.root()
	m, err := loader.Nodes(root, s.File, s.dir)
	return m, k.notes, err
}

func word(text string, at *yaml.Node) *yaml.Node {
	n := &yaml.Node{Kind: yaml.ScalarNode, Tag: "!!str", Value: text, Line: 1, Column: 1}
	if at != nil {
		n.Line, n.Column = at.Line, at.Column
	}
	return n
}

func at(p manifest.Position) *yaml.Node { return &yaml.Node{Line: p.Line, Column: p.Column} }

func mapping(near *yaml.Node) *yaml.Node {
	n := word("", near)
	n.Kind, n.Tag = yaml.MappingNode, "!!map"
	return n
}

func list(near *yaml.Node) *yaml.Node {
	n := word("", near)
	n.Kind, n.Tag = yaml.SequenceNode, "!!seq"
	return n
}

func set(m *yaml.Node, key string, value *yaml.Node) {
	m.Content = append(m.Content, word(key, value), value)
}

// root is the manifest's mapping in the order of its form.
func (k *composer) root() *yaml.Node {
	intent := child(k.s.root, "intent")
	root := mapping(intent)
	version := word("1", intent)
	version.Tag = "!!int"
	set(root, "trialfit", version)
	build := mapping(intent)
	set(build, "name", word(k.s.Name, child(k.s.root, "name")))
	set(build, "hold", word("none", intent))
	set(root, "build", build)
	for _, section := range schema.Manifest().Fields {
		var n *yaml.Node
		switch section.Name {
		case "trialfit", "build", "parts":
			continue
		case "registration":
			n = k.registration(intent)
		case "work":
			n = k.work(intent)
		case "waivers":
			n = word("none", intent)
		default:
			n = k.section(section.Name, intent)
		}
		if n != nil {
			set(root, section.Name, n)
		}
	}
	return root
}

func known(c *Candidate, section string) *yaml.Node {
	if c == nil {
		return nil
	}
	return child(c.known, section)
}

// section is what chassis, donor and intent tell of a section.
func (k *composer) section(name string, intent *yaml.Node) *yaml.Node {
	c, d := known(k.chassis, name), known(k.donor, name)
	switch name {
	case "masses":
		return k.lists(name, child(intent, name), c, d)
	case "evidence":
		papers := joined(child(intent, name), c, d)
		if papers == nil {
			return word("none", intent)
		}
		return papers
	case "chassis":
		return k.brings(c, intent)
	}
	switch {
	case c == nil:
		return d
	case d == nil:
		return c
	}
	return k.both(name, c, d)
}

// both puts together a section that chassis and donor both tell of.
func (k *composer) both(path string, c, d *yaml.Node) *yaml.Node {
	if slices.Contains(whole, path) || c.Kind != yaml.MappingNode || d.Kind != yaml.MappingNode {
		return k.choose(path, c, d)
	}
	out := mapping(c)
	for i := 0; i+1 < len(c.Content); i += 2 {
		key, value := c.Content[i], c.Content[i+1]
		if other := child(d, key.Value); other != nil && !same(value, other) {
			value = k.choose(path+"."+key.Value, value, other)
		}
		out.Content = append(out.Content, key, value)
	}
	for i := 0; i+1 < len(d.Content); i += 2 {
		if child(c, d.Content[i].Value) == nil {
			out.Content = append(out.Content, d.Content[i], d.Content[i+1])
		}
	}
	return out
}

// choose takes one of two that differ, and says so.
func (k *composer) choose(path string, c, d *yaml.Node) *yaml.Node {
	chosen, of := c, k.chassis.ID
	if slices.ContainsFunc(ofEngine, func(p string) bool { return path == p || strings.HasPrefix(path, p+".") }) {
		chosen, of = d, k.donor.ID
	}
	k.notes = append(k.notes, Note{
		At:   manifest.Position{Line: d.Line, Column: d.Column},
		Text: fmt.Sprintf("%s is told of %s (line %d) and of %s (line %d): that of %s is taken", path, k.chassis.ID, c.Line, k.donor.ID, d.Line, of),
	})
	return chosen
}

// same compares two pieces of YAML by what they say.
func same(a, b *yaml.Node) bool {
	return a.Kind == b.Kind && a.Value == b.Value && len(a.Content) == len(b.Content) &&
		slices.EqualFunc(a.Content, b.Content, same)
}

// lists puts a section of lists together: what is added, removed and carried
// is all of it.
func (k *composer) lists(name string, parts ...*yaml.Node) *yaml.Node {
	var out *yaml.Node
	for _, part := range parts {
		if part == nil || part.Kind != yaml.MappingNode {
			continue
		}
		if out == nil {
			out = mapping(part)
		}
		for i := 0; i+1 < len(part.Content); i += 2 {
			key := part.Content[i]
			if child(out, key.Value) != nil {
				continue
			}
			var all []*yaml.Node
			for _, p := range parts {
				if v := child(p, key.Value); v != nil {
					all = append(all, v)
				}
			}
			value := joined(all...)
			if value == nil {
				value = all[0]
			}
			out.Content = append(out.Content, key, value)
		}
	}
	return out
}

// joined is one list of the items of several, nil where none is a list.
func joined(parts ...*yaml.Node) *yaml.Node {
	var out *yaml.Node
	for _, p := range parts {
		if p == nil || p.Kind != yaml.SequenceNode {
			continue
		}
		if out == nil {
			out = list(p)
		}
		out.Content = append(out.Content, p.Content...)
	}
	return out
}

// registration is the intent's, with what the papers of the chassis say.
func (k *composer) registration(intent *yaml.Node) *yaml.Node {
	out := mapping(intent)
	if len(k.s.Intent.Regions) > 0 {
		set(out, "region", word(k.s.Intent.Regions[0], child(intent, "regions")))
	}
	wanted, papers := child(intent, "registration"), known(k.chassis, "registration")
	for _, part := range []*yaml.Node{papers, wanted} {
		if part == nil || part.Kind != yaml.MappingNode {
			continue
		}
		for i := 0; i+1 < len(part.Content); i += 2 {
			key, value := part.Content[i], part.Content[i+1]
			if key.Value != "region" && child(out, key.Value) == nil {
				out.Content = append(out.Content, key, value)
			}
		}
	}
	return out
}

// brings adds to the chassis who meets which need.
func (k *composer) brings(c *yaml.Node, intent *yaml.Node) *yaml.Node {
	said := child(c, "brings")
	brings := mapping(intent)
	if c != nil {
		brings = mapping(c)
	}
	if said != nil && said.Kind == yaml.MappingNode {
		brings.Content = slices.Clone(said.Content)
	}
	for _, t := range k.takes {
		if t.Need.Usual == nil || t.Need.Usual.Brings == "" || child(brings, t.Need.Usual.Brings) != nil {
			continue
		}
		where := t.Need.At
		if t.Part != nil {
			where = t.Part.At
		}
		set(brings, t.Need.Usual.Brings, word(string(t.By), at(where)))
	}
	if len(k.takes) > 0 {
		// What a combination does not need at all is settled too.
		for _, n := range k.s.Needs {
			if n.Usual != nil && n.Usual.Brings != "" && child(brings, n.Usual.Brings) == nil {
				set(brings, n.Usual.Brings, word(string(ByNotNeeded), at(n.At)))
			}
		}
	}
	if c == nil {
		if len(brings.Content) == 0 {
			return nil
		}
		out := mapping(intent)
		set(out, "brings", brings)
		return out
	}
	if c.Kind != yaml.MappingNode || len(brings.Content) == 0 {
		return c
	}
	out := mapping(c)
	for i := 0; i+1 < len(c.Content); i += 2 {
		if c.Content[i].Value != "brings" {
			out.Content = append(out.Content, c.Content[i], c.Content[i+1])
		}
	}
	set(out, "brings", brings)
	return out
}

// work is what is to be put right on the candidates.
func (k *composer) work(intent *yaml.Node) *yaml.Node {
	out := list(intent)
	for _, c := range []*Candidate{k.chassis, k.donor} {
		if c == nil {
			continue
		}
		for _, l := range c.Lacks {
			item := mapping(at(l.At))
			set(item, "id", word(c.ID+"-"+l.ID, at(l.At)))
			set(item, "what", word("put right on "+c.ID+": "+l.What, at(l.At)))
			set(item, "close_by", word("install", at(l.At)))
			out.Content = append(out.Content, item)
		}
	}
	if len(out.Content) == 0 {
		return word("none", intent)
	}
	return out
}

// chains are the regions of the intent with what each inherits.
func (s *Shortlist) chains(book *rulebook.Book) ([][]rulebook.Region, error) {
	chains := make([][]rulebook.Region, len(s.Intent.Regions))
	for i, code := range s.Intent.Regions {
		chain, err := book.Chain(code)
		if err != nil {
			return nil, err
		}
		chains[i] = chain
	}
	return chains, nil
}
