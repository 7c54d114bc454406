package prebuy

import (
	"context"
	"fmt"
	"slices"
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

// jury judges combinations. What depends on the intent, the chassis or the
// donor alone is decided once each.
type jury struct {
	s       *Shortlist
	checker *check.Checker
	chains  [][]rulebook.Region
	units   []*unit
	musts   []*rulebook.Meta // in the order of ids
	cruise  *figures.Figure

	mu    sync.Mutex
	known map[string]map[string]verdict.Rule
	kept  int // entries of known that belong to a pair
}

// mostPairs bounds what is kept of pairs that read the same.
const mostPairs = 20000

func (s *Shortlist) jury(ctx context.Context, checker *check.Checker) (*jury, error) {
	chains, err := s.chains(checker.Book)
	if err != nil {
		return nil, err
	}
	all, err := units(ctx, checker.Book, checker.Figures, s.origins(), chains)
	if err != nil {
		return nil, err
	}
	j := &jury{s: s, checker: checker, chains: chains, units: all, known: map[string]map[string]verdict.Rule{}}
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
	b := &subject{m: m, computed: map[*figures.Figure]input.Computed{}}
	list := m.Node("evidence")
	if list == nil || len(list.Items) == 0 {
		return b
	}
	sums, err := evidence.ReadSums(evidence.SumFile(strings.TrimSuffix(m.File, Suffix) + manifest.Suffix))
	if err != nil {
		sums = nil // files without digests are unrecorded, which blocks where it matters
	}
	b.states = map[string]evidence.State{}
	for _, item := range list.Items {
		file := item.Field("file")
		if file.Value == nil {
			continue
		}
		f, err := evidence.Inspect(m.Dir, file.Value.Text, sums)
		if err != nil {
			f.State = evidence.Missing
		}
		b.states[item.ID] = f.State
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
// each chain. who names the candidates a build is made of.
func (j *jury) decide(ctx context.Context, b *subject, who string, pick func(*unit) bool) ([]map[string]verdict.Rule, error) {
	out := make([]map[string]verdict.Rule, len(j.chains))
	for i := range out {
		out[i] = map[string]verdict.Rule{}
	}
	for _, u := range j.units {
		if !pick(u) {
			continue
		}
		var free map[string]verdict.Rule // of a unit that no region changes
		for i := range j.chains {
			if u.judges[i] == nil {
				continue
			}
			rules := free
			if rules == nil {
				var err error
				if rules, err = j.one(ctx, b, u, i, who); err != nil {
					return nil, err
				}
				if !u.chained {
					free = rules
				}
			}
			for id, r := range rules {
				out[i][id] = together(out[i], id, r)
			}
		}
	}
	return out, nil
}

// together adds what a unit says of a rule to what others said: the questions
// of a region are judged one by one.
func together(rules map[string]verdict.Rule, id string, r verdict.Rule) verdict.Rule {
	before, twice := rules[id]
	if !twice {
		return r
	}
	before.Findings = slices.Concat(before.Findings, r.Findings)
	before.Outcome = worst(before.Outcome, r.Outcome)
	return before
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

// one judges one unit in one chain, or remembers.
func (j *jury) one(ctx context.Context, b *subject, u *unit, chain int, who string) (map[string]verdict.Rule, error) {
	key, pair := "", false
	switch {
	case u.origin == ofPair && u.words:
		key, pair = j.key(b, u, chain), true
	case u.origin != ofPair:
		key = fmt.Sprintf("%s|%d|%s", strings.Join(u.rules, ","), chain, who)
	}
	if key != "" {
		j.mu.Lock()
		rules, known := j.known[key]
		j.mu.Unlock()
		if known {
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
	rules := map[string]verdict.Rule{}
	for id, r := range v.Rules {
		if r.Level == "must" {
			rules[id] = r
		}
	}
	if key == "" {
		return rules, nil
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	if pair {
		if j.kept >= mostPairs {
			return rules, nil
		}
		j.kept++
	}
	j.known[key] = rules
	return rules, nil
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

// key holds every word that a unit reads.
func (j *jury) key(b *subject, u *unit, chain int) string {
	var k strings.Builder
	fmt.Fprintf(&k, "%s|%d", strings.Join(u.rules, ","), chain)
	for _, p := range u.reads {
		path, _, _ := strings.Cut(p, ".*")
		if n := b.m.Node(path); n != nil {
			n.Walk(func(n *manifest.Node) {
				if n.Shape.Type == schema.Leaf || n.State != manifest.Given {
					k.WriteByte('|')
					k.WriteString(n.Path)
					k.WriteByte(byte('0' + int(n.State)))
					if n.Value != nil {
						fmt.Fprintf(&k, "%q %s %v", n.Value.Text, n.Value.Basis, n.Value.Evidence)
					}
				}
			})
		}
	}
	return k.String()
}

// judgement sums up what the rules say in one chain.
func (j *jury) judgement(b *subject, chain int, rules map[string]verdict.Rule) Judgement {
	out := Judgement{Region: j.s.Intent.Regions[chain]}
	for _, meta := range j.musts {
		r, judged := rules[meta.ID]
		if !judged {
			continue
		}
		switch r.Outcome {
		case verdict.NotMet:
			out.NotMet = append(out.NotMet, meta.ID)
		case verdict.Unproven:
			out.Unproven = append(out.Unproven, meta.ID)
			if meta.Collects != "" {
				out.Collected++
				for _, f := range r.Findings {
					if f.Outcome == verdict.Unproven {
						out.Questions++
					}
				}
			}
		}
	}
	if len(out.NotMet) > 0 {
		out.Out = j.reason(b, out.NotMet[0], rules[out.NotMet[0]])
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
