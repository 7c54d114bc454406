package prebuy

import (
	"context"
	"io/fs"
	"maps"
	"regexp"
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
	asks     bool // a question: an answer among the papers settles it
	// told says that no figure is read: pairs of which the same is told are
	// decided once.
	told bool
	// likened are the reads of which only matters whether they say the same as
	// others of them, not what they say.
	likened map[string]bool

	judges []*rulebook.Evaluator // by chain
	kept   rulings
}

// origins knows from whom each section of a manifest comes in a shortlist.
type origins struct {
	chassis, donors map[string]bool
	answers         origin   // those whose papers answer questions
	shown           []string // what papers show
}

func (s *Shortlist) origins() origins {
	told := func(all []*Candidate) map[string]bool {
		out := map[string]bool{}
		for _, c := range all {
			if len(c.Lacks) > 0 {
				out["work"] = true
			}
			if c.known == nil {
				continue
			}
			for i := 0; i < len(c.known.Content); i += 2 {
				out[c.known.Content[i].Value] = true
			}
		}
		return out
	}
	o := origins{chassis: told(s.Chassis), donors: told(s.Donors)}
	for _, c := range slices.Concat(s.Chassis, s.Donors) {
		if slices.ContainsFunc(c.evidence(), answers) {
			o.answers |= c.origin()
		}
	}
	for _, paper := range s.evidence() {
		for _, shown := range paper.Field("shows").Items {
			o.shown = append(o.shown, shown.Word("path"))
		}
	}
	return o
}

func (c *Candidate) origin() origin {
	if c.Donor {
		return ofDonor
	}
	return ofChassis
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
func (s *Shortlist) units(ctx context.Context, book *rulebook.Book, figs []*figures.Figure, chains [][]rulebook.Region) ([]*unit, error) {
	o := s.origins()
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
		u := &unit{
			rules: ids, region: meta.Region, chained: chained(asked, reads), asks: meta.Collects != "",
			told: len(reads) > 0 || shipped(asked) != "",
		}
		u.read(reads, byPath, o)
		if u.asks {
			u.likened = likened(asked)
		}
		if u.told = u.told && u.origin == ofPair && s.alike(u); u.told {
			all = append(all, u)
			return
		}
		key := strings.Join([]string{meta.Region, string(rune('0' + int(u.origin))), flag(u.chained)}, "|")
		if into := merged[key]; into != nil {
			into.merge(u)
			return
		}
		merged[key] = u
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

// alike says that many pairs tell a unit the same, so that remembering pays.
func (s *Shortlist) alike(u *unit) bool {
	told := func(all []*Candidate) int {
		different := map[string]bool{}
		for _, c := range all {
			var k strings.Builder
			for _, p := range u.reads {
				known := c.node.Field("known")
				if n := placed(p, known.Find); n != nil && !u.likened[p] {
					write(&k, n, known)
				}
			}
			different[k.String()] = true
		}
		return len(different)
	}
	return 2*told(s.Chassis)*told(s.Donors) <= len(s.Chassis)*len(s.Donors)
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
	text := shipped(meta)
	return text == "" || strings.Contains(text, "in_region")
}

// shipped is the text of a shipped rule, "" of any other.
func shipped(meta *rulebook.Meta) string {
	text, err := fs.ReadFile(policies.FS, strings.Join(meta.At, "/")+"/rule.rego")
	if err != nil {
		return ""
	}
	return string(text)
}

// likening is where a rule asks whether two places say the same, and no more.
var likening = regexp.MustCompile(`judge\.(?:when_differs|differs|equals)\(\s*"build\.([^"]*)",\s*"build\.([^"]*)",?\s*\)`)

// likened are the free texts that a question reads only to tell whether two of
// them are the same: an engine family, say. A question says whether it is
// raised and nothing of what it read.
func likened(q *rulebook.Meta) map[string]bool {
	text := shipped(q)
	if q.Question == nil || text == "" {
		return nil
	}
	out := map[string]bool{}
	for _, pair := range likening.FindAllStringSubmatch(text, -1) {
		if freeText(pair[1]) && freeText(pair[2]) {
			out[pair[1]], out[pair[2]] = true, true
		}
	}
	rest := likening.ReplaceAllString(text, "")
	for _, p := range q.Reads {
		if place, _ := strings.CutPrefix(p, "build."); freeText(place) && (!out[place] || strings.Contains(rest, `"`+p+`"`)) {
			return nil // what it says counts, beside others or alone
		}
	}
	return out
}

func freeText(path string) bool {
	at, err := schema.Manifest().At(path)
	return err == nil && at.Leaf == schema.LeafText
}

// read takes in the paths of a rule: sections, figures and what those read.
func (u *unit) read(paths []string, byPath map[string]*figures.Figure, o origins) {
	places := []string{"waivers"}
	if u.asks {
		u.origin |= o.answers
	}
	if u.region != "" {
		places = append(places, "registration.zone") // areas are named by the judge
	}
	for _, p := range paths {
		if rest, ok := strings.CutPrefix(p, "build."); ok {
			places = append(places, rest)
			if strings.HasPrefix(rest, "evidence") {
				places = append(places, o.shown...) // papers are compared with what they show
			}
			continue
		}
		if f := byPath[p]; f != nil {
			u.told = false
			u.figures = append(u.figures, f)
			places = append(places, inputs(f)...)
		}
	}
	u.reads = slices.Compact(slices.Sorted(slices.Values(places)))
	u.sections = []string{"evidence"} // of what it reads; another one's makes no difference
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
	u.likened = nil
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
