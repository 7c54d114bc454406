package prebuy

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"sync"

	"trialfit/internal/check"
	"trialfit/internal/evidence"
	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/manifest"
	"trialfit/internal/rulebook"
	"trialfit/internal/schema"
	"trialfit/internal/verdict"
)

// Judgement is what the rules say of a combination in one region.
type Judgement struct {
	Region string
	// NotMet and Unproven list the musts that stand in the way at plan.
	NotMet, Unproven []string
	// Questions is how many questions to the authority are open; Collected how
	// many of the unproven musts stand for them.
	Questions, Collected int
	// Out is the first must that is not met, nil where there is none.
	Out *Reason
}

// Open is the number of musts and questions that are open.
func (j Judgement) Open() int { return len(j.Unproven) - j.Collected + j.Questions }

// ruling is what is kept of the judgement of a rule.
type ruling struct {
	outcome string
	open    int           // findings that are unproven
	against *verdict.Rule // what was found, where it is not met
}

// together adds what one unit says of a rule to what another said: the
// questions of a region are judged one by one.
func (r ruling) together(other ruling) ruling {
	r.outcome, r.open = worst(r.outcome, other.outcome), r.open+other.open
	if r.against == nil {
		r.against = other.against
	}
	return r
}

// worst is the outcome of a rule on several subjects, as the verdict rolls it up.
func worst(a, b string) string {
	for _, o := range []string{verdict.NotMet, verdict.Unproven, verdict.Waived, verdict.Met} {
		if a == o || b == o {
			return o
		}
	}
	return verdict.NotApplicable
}

// ruled are rulings by the id of the rule.
type ruled map[string]ruling

func (r ruled) add(more ruled) {
	for id, said := range more {
		if before, twice := r[id]; twice {
			said = before.together(said)
		}
		r[id] = said
	}
}

// rulings remembers what was decided of pairs that tell a unit the same.
type rulings struct {
	mu sync.Mutex
	by map[string]ruled
}

// mostKept bounds what each unit remembers, so that memory does not grow with
// the number of pairs.
const mostKept = 1000

func (k *rulings) get(key string) (ruled, bool) {
	k.mu.Lock()
	defer k.mu.Unlock()
	r, known := k.by[key]
	return r, known
}

func (k *rulings) put(key string, r ruled) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.by == nil || len(k.by) >= mostKept {
		k.by = map[string]ruled{} // neighbours in the list tell alike: begin anew
	}
	k.by[key] = r
}

// jury judges combinations. What depends on the intent, the chassis or the
// donor alone is decided once each.
type jury struct {
	s       *Shortlist
	checker *check.Checker
	chains  [][]rulebook.Region
	units   []*unit
	musts   []*rulebook.Meta // in the order of ids
	cruise  *figures.Figure
	files   map[string]evidence.State // of the papers, as they are written
}

func (s *Shortlist) jury(ctx context.Context, checker *check.Checker) (*jury, error) {
	chains, err := s.chains(checker.Book)
	if err != nil {
		return nil, err
	}
	all, err := s.units(ctx, checker.Book, checker.Figures, chains)
	if err != nil {
		return nil, err
	}
	files, err := s.inspect()
	if err != nil {
		return nil, err
	}
	j := &jury{s: s, checker: checker, chains: chains, units: all, files: files}
	for _, meta := range checker.Book.Catalogue() {
		if meta.Level == "must" && meta.Hold == hold {
			j.musts = append(j.musts, meta)
		}
	}
	for _, f := range checker.Figures {
		if f.ID == "gearing.top_speed" {
			j.cruise = f
		}
	}
	return j, nil
}

// subject is a manifest that is being judged, with what was computed of it.
type subject struct {
	m        *manifest.Manifest
	states   map[string]evidence.State
	computed map[*figures.Figure]input.Computed
}

func (j *jury) subject(m *manifest.Manifest) *subject {
	b := &subject{m: m, computed: map[*figures.Figure]input.Computed{}, states: map[string]evidence.State{}}
	for _, paper := range m.Node("evidence").Items {
		if file := paper.Field("file"); file.Value != nil {
			b.states[paper.ID] = j.files[file.Value.Text]
		}
	}
	return b
}

// figure computes a figure once.
func (j *jury) figure(b *subject, f *figures.Figure) input.Computed {
	c, done := b.computed[f]
	if !done {
		results, state := figures.Evaluate(f, input.Values{Manifest: b.m, Today: j.checker.Options.Today})
		c = input.Computed{Figure: f, Results: results, State: state}
		b.computed[f] = c
	}
	return c
}

// decide judges the units that pick chooses and gives the rules by id, for
// each chain.
func (j *jury) decide(ctx context.Context, b *subject, pick func(*unit) bool) ([]ruled, error) {
	out := make([]ruled, len(j.chains))
	for i := range out {
		out[i] = ruled{}
	}
	for _, u := range j.units {
		if !pick(u) {
			continue
		}
		key := ""
		if u.told {
			key = u.key(b)
		}
		var free ruled // of a unit that no region changes
		for i := range j.chains {
			if u.judges[i] == nil {
				continue
			}
			rules := free
			if rules == nil {
				var err error
				if rules, err = j.one(ctx, b, u, i, key); err != nil {
					return nil, err
				}
				if !u.chained {
					free = rules
				}
			}
			out[i].add(rules)
		}
	}
	return out, nil
}

// one judges one unit in one chain, or remembers where it has a key.
func (j *jury) one(ctx context.Context, b *subject, u *unit, chain int, key string) (ruled, error) {
	if key != "" {
		if u.chained {
			key = strconv.Itoa(chain) + key
		}
		if rules, known := u.kept.get(key); known {
			return rules, nil
		}
	}
	decision, err := u.judges[chain].Decide(ctx, j.document(b, u, chain))
	if err != nil {
		return nil, err
	}
	v, err := verdict.Read(decision)
	if err != nil {
		return nil, err
	}
	rules := ruled{}
	for id, r := range v.Rules {
		if r.Level == "must" {
			rules[id] = kept(r)
		}
	}
	if key != "" {
		u.kept.put(key, rules)
	}
	return rules, nil
}

// kept is what is kept of a judgement.
func kept(r verdict.Rule) ruling {
	out := ruling{outcome: r.Outcome}
	for _, f := range r.Findings {
		if f.Outcome == verdict.Unproven {
			out.open++
		}
	}
	if r.Outcome == verdict.NotMet {
		out.against = &r
	}
	return out
}

// document holds what a unit reads and no more.
func (j *jury) document(b *subject, u *unit, chain int) map[string]any {
	part, root := *b.m, *b.m.Root
	root.Fields = slices.Clone(root.Fields)
	root.Fields = slices.DeleteFunc(root.Fields, func(n *manifest.Node) bool { return !slices.Contains(u.sections, n.Shape.Name) })
	part.Root = &root
	var computed []input.Computed
	for _, f := range u.figures {
		computed = append(computed, j.figure(b, f))
	}
	return input.Document(input.Parts{
		Manifest: &part, Figures: computed, Evidence: b.states, Chain: j.chains[chain],
		Hold: hold, Today: j.checker.Options.Today, BlockOn: []string{"must"},
	})
}

// key holds everything that a unit reads of a manifest.
func (u *unit) key(b *subject) string {
	var k strings.Builder
	var texts []string
	for _, p := range u.reads {
		n := placed(p, b.m.Node)
		switch {
		case n == nil:
		case u.likened[p] && n.Value != nil:
			same := slices.Index(texts, n.Value.Text)
			if same < 0 {
				same = len(texts)
				texts = append(texts, n.Value.Text)
			}
			k.WriteByte('=')
			k.WriteString(strconv.Itoa(same))
		default:
			write(&k, n, b.m.Root)
		}
	}
	if u.asks {
		for _, paper := range b.m.Node("evidence").Items {
			if answers(paper) {
				write(&k, paper, b.m.Root)
			}
		}
	}
	return k.String()
}

// answers says that a paper is an authority's answer to some question.
func answers(paper *manifest.Node) bool { return paper.Field("answers").State == manifest.Given }

// placed is the place that a path of a rule names, the list where it names all
// its items, the leaf where it names a part of one.
func placed(path string, find func(string) *manifest.Node) *manifest.Node {
	path, _, _ = strings.Cut(path, ".*")
	for path != "" {
		if n := find(path); n != nil {
			return n
		}
		path = path[:max(0, strings.LastIndexByte(path, '.'))]
	}
	return nil
}

// write adds all that a place and those below it tell, with the papers that
// their values name. Paths are those below root.
func write(k *strings.Builder, n, root *manifest.Node) {
	n.Walk(func(n *manifest.Node) {
		if n.Shape.Type != schema.Leaf && n.State == manifest.Given {
			return
		}
		k.WriteByte('|')
		k.WriteString(strings.TrimPrefix(n.Path, root.Path))
		k.WriteByte(byte('0' + int(n.State)))
		if n.Value == nil {
			return
		}
		k.WriteString(strconv.Quote(n.Value.Text))
		k.WriteString(n.Value.Basis)
		for _, id := range n.Value.Evidence {
			if paper := root.Find("evidence." + id); paper != nil {
				write(k, paper, root)
			}
		}
	})
}

// judgement sums up what the rules say in one chain.
func (j *jury) judgement(b *subject, chain int, rules ruled) Judgement {
	out := Judgement{Region: j.s.Intent.Regions[chain]}
	for _, meta := range j.musts {
		r, judged := rules[meta.ID]
		if !judged {
			continue
		}
		switch r.outcome {
		case verdict.NotMet:
			out.NotMet = append(out.NotMet, meta.ID)
		case verdict.Unproven:
			out.Unproven = append(out.Unproven, meta.ID)
			if meta.Collects != "" {
				out.Collected++
				out.Questions += r.open
			}
		}
	}
	if len(out.NotMet) > 0 {
		out.Out = j.reason(b, out.NotMet[0], *rules[out.NotMet[0]].against)
		out.Out.Region = out.Region
	}
	return out
}

// reason words why a rule is not met.
func (j *jury) reason(b *subject, id string, r verdict.Rule) *Reason {
	var computed []input.Computed
	for _, c := range b.computed {
		computed = append(computed, c)
	}
	items := verdict.Case{
		Manifest: b.m, Book: j.checker.Book, Computed: computed,
		Verdict: &verdict.Verdict{Rules: map[string]verdict.Rule{id: r}},
	}.Items()
	for _, i := range items {
		if i.Finding.Outcome == verdict.NotMet {
			return &Reason{Rule: id, Text: fmt.Sprintf("%s: found %s, needed %s", i.Rule.Title, i.Found, i.Needed), Source: i.Rule.Source, At: i.At}
		}
	}
	return &Reason{Rule: id, Text: j.checker.Book.Rules[id].Title}
}
