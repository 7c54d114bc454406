package prebuy

import (
	"context"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"trialfit/internal/figures"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
	"trialfit/policies"
)

// hold is the point that a shortlist is judged at: before money is spent.
const hold = "plan"

// origin says which candidates a value depends on.
type origin int

const (
	ofIntent  origin = 0
	ofChassis origin = 1
	ofDonor   origin = 2
	ofPair    origin = ofChassis | ofDonor
)

// unit is what is decided at once: rules that read values of one origin, or
// one question, of one region.
type unit struct {
	rules    []string // what is asked of the rulebook
	region   string   // "" where the rules belong to no region
	chained  bool     // the outcome depends on the region of the build
	origin   origin
	reads    []string // manifest paths, '*' for any item
	sections []string
	figures  []*figures.Figure
	// words says that no figure and no free text is read, so that many pairs read
	// the same and are decided once.
	words bool

	judges []*rulebook.Evaluator // by chain
}

// origins knows from whom each section of a manifest comes in a shortlist.
type origins struct{ chassis, donors map[string]bool }

func (s *Shortlist) origins() origins {
	told := func(all []*Candidate) map[string]bool {
		out := map[string]bool{}
		for _, c := range all {
			if c.known == nil {
				continue
			}
			for i := 0; i < len(c.known.Content); i += 2 {
				out[c.known.Content[i].Value] = true
			}
			if len(c.Lacks) > 0 {
				out["work"] = true
			}
		}
		return out
	}
	return origins{told(s.Chassis), told(s.Donors)}
}

func (o origins) of(path string) origin {
	section, _, _ := strings.Cut(path, ".")
	var out origin
	if o.chassis[section] {
		out |= ofChassis
	}
	if o.donors[section] {
		out |= ofDonor
	}
	if path == "chassis" || path == "chassis.brings" || strings.HasPrefix(path, "chassis.brings.") {
		out = ofPair // who meets a need depends on both
	}
	return out
}

// units sorts the musts that are due at plan in the chains by what they read.
func units(ctx context.Context, book *rulebook.Book, figs []*figures.Figure, o origins, chains [][]rulebook.Region) ([]*unit, error) {
	if err := book.Together(chains...); err != nil {
		return nil, err
	}
	byPath := map[string]*figures.Figure{}
	for _, f := range figs {
		byPath[rulebook.FigurePath(f)] = f
	}
	var all []*unit
	merged := map[string]*unit{}
	add := func(ids []string, meta *rulebook.Meta, asked *rulebook.Meta) {
		reads := asked.Reads
		u := &unit{rules: ids, region: meta.Region, chained: chained(asked, reads), words: true}
		u.read(reads, byPath, o)
		alone := meta.Collects != "" && u.origin == ofPair && u.words
		if !alone {
			key := strings.Join([]string{meta.Region, string(rune('0' + int(u.origin))), flag(u.chained)}, "|")
			if into := merged[key]; into != nil {
				into.merge(u)
				return
			}
			merged[key] = u
			u.words = false
		}
		all = append(all, u)
	}
	for _, meta := range book.Catalogue() {
		if meta.Level != "must" || meta.Hold != hold || !inForce(meta, chains) {
			continue
		}
		if meta.Collects == "" {
			add([]string{meta.ID}, meta, meta)
			continue
		}
		later := []string{meta.ID} // not due at plan, whatever is built
		for _, q := range book.Catalogue() {
			switch {
			case q.Question == nil || q.Region != meta.Region:
			case q.Hold == hold:
				add([]string{meta.ID, q.ID}, meta, q)
			default:
				later = append(later, q.ID)
			}
		}
		add(later, meta, &rulebook.Meta{})
	}
	for _, u := range all {
		only := book.Only(u.rules...)
		u.judges = make([]*rulebook.Evaluator, len(chains))
		for i, chain := range chains {
			if u.region != "" && !slices.ContainsFunc(chain, func(r rulebook.Region) bool { return r.Code == u.region }) {
				continue
			}
			judge, err := only.Prepare(ctx, chain)
			if err != nil {
				return nil, err
			}
			u.judges[i] = judge
		}
	}
	return all, nil
}

func flag(b bool) string {
	if b {
		return "y"
	}
	return "n"
}

func inForce(meta *rulebook.Meta, chains [][]rulebook.Region) bool {
	return meta.Region == "" || slices.ContainsFunc(chains, func(chain []rulebook.Region) bool {
		return slices.ContainsFunc(chain, func(r rulebook.Region) bool { return r.Code == meta.Region })
	})
}

// chained says whether a rule looks at which region the build is for, beyond
// belonging to it. Of the rules of a local pack that is not known, so it is
// taken for granted.
func chained(meta *rulebook.Meta, reads []string) bool {
	if len(reads) == 0 {
		return true
	}
	text, err := fs.ReadFile(policies.FS, strings.Join(meta.At, "/")+"/rule.rego")
	return err != nil || strings.Contains(string(text), "in_region")
}

// read takes in the paths of a rule: sections, figures and what those read.
func (u *unit) read(paths []string, byPath map[string]*figures.Figure, o origins) {
	places := []string{"waivers", "evidence"}
	if u.region != "" {
		places = append(places, "registration.zone") // areas are named by the judge
	}
	if len(paths) == 0 {
		u.words = false
	}
	for _, p := range paths {
		if rest, ok := strings.CutPrefix(p, "build."); ok {
			places = append(places, rest)
			if at, err := schema.Manifest().At(rest); err != nil || at.Leaf == schema.LeafText {
				u.words = false // names differ from one candidate to the next
			}
			continue
		}
		if f := byPath[p]; f != nil {
			u.words = false
			u.figures = append(u.figures, f)
			places = append(places, inputs(f)...)
		}
	}
	u.reads = slices.Compact(slices.Sorted(slices.Values(places)))
	for _, p := range u.reads {
		section, _, _ := strings.Cut(p, ".")
		if !slices.Contains(u.sections, section) {
			u.sections = append(u.sections, section)
		}
		u.origin |= o.of(p)
	}
}

// inputs lists what a figure and its conditions read.
func inputs(f *figures.Figure) []string {
	var out []string
	if f.Per != "" {
		out = append(out, f.Per)
	}
	for _, in := range f.Inputs {
		if in.Path != figures.Today {
			out = append(out, in.Path)
		}
	}
	for _, c := range f.Conditions {
		out = append(out, inputs(c.Figure)...)
	}
	return out
}

func (u *unit) merge(other *unit) {
	join := func(a, b []string) []string {
		return slices.Compact(slices.Sorted(maps.Keys(setOf(a, b))))
	}
	u.rules = join(u.rules, other.rules)
	u.reads = join(u.reads, other.reads)
	u.sections = join(u.sections, other.sections)
	for _, f := range other.figures {
		if !slices.Contains(u.figures, f) {
			u.figures = append(u.figures, f)
		}
	}
}

func setOf(lists ...[]string) map[string]bool {
	out := map[string]bool{}
	for _, l := range lists {
		for _, s := range l {
			out[s] = true
		}
	}
	return out
}
