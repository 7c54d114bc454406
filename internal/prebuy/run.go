package prebuy

import (
	"context"
	"errors"
	"fmt"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"trialfit/internal/check"
	"trialfit/internal/manifest"
	"trialfit/internal/verdict"
)

// leading is the number of combinations that are looked at closely.
const leading = 10

// Result is what a shortlist comes to.
type Result struct {
	*Shortlist
	Today string
	// Ranked are the combinations that may work, the best first; the leading
	// ones are told of closely.
	Ranked []*Combination
	Close  []*Close
	// Ruled are those that can't work, by reason.
	Ruled []Ruled
	// Notes are contradictions and what else a person should look at.
	Notes []Note
	Asks  []Ask
	// Offices are the questions to authorities that the leading ones raise.
	Offices []Office
	Even    []Even
	// Blanks are candidates of which next to nothing is known.
	Blanks []Blank
	// Combinations is how many there are.
	Combinations int
}

// Combination is a chassis with a donor, and what a list tells of it: there may
// be thousands. What is taken from where is reckoned again for the leading ones.
type Combination struct {
	ID      string
	Chassis *Candidate
	Donor   *Candidate
	Total   Range
	// Regions holds what the rules say, in the order of the intent's regions;
	// combinations of which the same is said share it.
	Regions []Judgement
	// Wishes are the demands of the intent that are not known to be met.
	Wishes []string
	// Out is why it can't work, nil where it may.
	Out *Reason

	Rank   int
	Shared bool // the rank is shared
}

// joint is the name of a combination.
func joint(c, d *Candidate) string { return c.ID + "+" + d.ID }

// Close is a leading combination reckoned and judged in full.
type Close struct {
	*Combination
	Reckoning
	Manifest *manifest.Manifest
	// Reports are the full judgement in each region of the intent.
	Reports []*check.Report
	Items   [][]verdict.Item
	Notes   []Note
}

// Ruled is a reason and whom it rules out.
type Ruled struct {
	Reason
	// Who are the combinations; where the chassis or the donor alone is at
	// fault, that one with anything.
	Who []string
	// Own are the reasons of each in its own numbers: the same rule, at the same
	// line. The first is the Reason.
	Own []string
}

// Differs says that the numbers are not the same for all.
func (u Ruled) Differs() bool {
	return slices.ContainsFunc(u.Own, func(text string) bool { return text != u.Text })
}

// Progress is told how many combinations of how many are done.
type Progress func(done, total int)

// Run compares everything on a shortlist.
func Run(ctx context.Context, s *Shortlist, checker *check.Checker, progress Progress) (*Result, error) {
	j, err := s.jury(ctx, checker)
	if err != nil {
		return nil, err
	}
	r := &Result{Shortlist: s, Today: checker.Options.Today, Notes: s.contradictions()}
	fit, err := j.alone(ctx)
	if err != nil {
		return nil, err
	}
	books := s.ledger()
	all, err := j.pairs(ctx, fit, books, progress)
	if err != nil {
		return nil, err
	}
	r.Combinations = len(all)
	r.sort(all)
	r.rank(books)
	if err := r.close(ctx, checker); err != nil {
		return nil, err
	}
	r.ask(checker.Book)
	r.even()
	r.blanks()
	slices.SortStableFunc(r.Notes, func(a, b Note) int {
		if a.At.Line != b.At.Line {
			return a.At.Line - b.At.Line
		}
		return a.At.Column - b.At.Column
	})
	r.Notes = slices.Compact(r.Notes)
	return r, nil
}

// single is a candidate judged by what depends on it alone.
type single struct {
	rules []ruled
	out   *Reason // in every region
	at    []*Reason
	wish  string
}

type singles struct {
	intent  []ruled
	chassis []single
	donors  []single
}

// alone decides what depends on the intent, each chassis and each donor alone.
func (j *jury) alone(ctx context.Context) (*singles, error) {
	out := &singles{chassis: make([]single, len(j.s.Chassis)), donors: make([]single, len(j.s.Donors))}
	var problems manifest.Problems
	one := func(c, d *Candidate, want origin) (single, error) {
		m, _, err := j.s.manifest(j.checker.Loader, c, d, nil)
		var faults manifest.Problems
		switch {
		case errors.As(err, &faults):
			problems = append(problems, faults...)
			return single{}, nil
		case err != nil:
			return single{}, err
		}
		b := j.subject(m)
		rules, err := j.decide(ctx, b, func(u *unit) bool { return u.origin == want })
		if err != nil {
			return single{}, err
		}
		x := single{rules: rules, at: make([]*Reason, len(j.chains))}
		out := 0
		for i := range j.chains {
			if x.at[i] = j.judgement(b, i, rules[i]).Out; x.at[i] != nil {
				x.at[i].Alone = alone(c, d)
				out++
			}
		}
		if out == len(j.chains) && out > 0 {
			x.out = x.at[0]
		}
		return x, nil
	}
	first, err := one(nil, nil, ofIntent)
	if err != nil {
		return nil, err
	}
	out.intent = first.rules
	for i, c := range j.s.Chassis {
		if out.chassis[i], err = one(c, nil, ofChassis); err != nil {
			return nil, err
		}
	}
	for i, d := range j.s.Donors {
		if out.donors[i], err = one(nil, d, ofDonor); err != nil {
			return nil, err
		}
		reason, wish := j.s.engine(d)
		if reason != nil && out.donors[i].out == nil {
			out.donors[i].out = reason
		}
		out.donors[i].wish = wish
	}
	if len(problems) > 0 {
		return nil, problems.Sorted()
	}
	return out, nil
}

func alone(c, d *Candidate) string {
	switch {
	case c != nil:
		return c.ID
	case d != nil:
		return d.ID
	}
	return ""
}

// pairs judges and reckons every combination, on all processors.
func (j *jury) pairs(ctx context.Context, fit *singles, books *ledger, progress Progress) ([]*Combination, error) {
	all := make([]*Combination, len(j.s.Chassis)*len(j.s.Donors))
	said := map[string][]Judgement{}
	var (
		wg   sync.WaitGroup
		mu   sync.Mutex
		done int
		last error
	)
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for n := range next {
				x, err := j.pair(ctx, fit, books, j.s.Chassis[n/len(j.s.Donors)], j.s.Donors[n%len(j.s.Donors)])
				mu.Lock()
				all[n] = x
				share(x, said)
				if err != nil && last == nil {
					last = err
				}
				done++
				if progress != nil {
					progress(done, len(all))
				}
				mu.Unlock()
			}
		})
	}
	for n := range all {
		if ctx.Err() != nil {
			break
		}
		next <- n
	}
	close(next)
	wg.Wait()
	if last == nil {
		last = ctx.Err()
	}
	return all, last
}

// share lets combinations of which the same is said hold it once.
func share(x *Combination, said map[string][]Judgement) {
	var key strings.Builder
	for _, r := range x.Regions {
		fmt.Fprintln(&key, r.Region, r.NotMet, r.Unproven, r.Questions, r.Collected)
		if r.Out != nil {
			fmt.Fprintln(&key, *r.Out)
		}
	}
	if same, known := said[key.String()]; known {
		x.Regions = same
		return
	}
	said[key.String()] = x.Regions
}

// pair judges one combination: what can't work is not reckoned any further.
func (j *jury) pair(ctx context.Context, fit *singles, books *ledger, c, d *Candidate) (*Combination, error) {
	chassis, donor := fit.chassis[c.Index], fit.donors[d.Index]
	x := &Combination{ID: joint(c, d), Chassis: c, Donor: d}
	if x.Out = firstReason(chassis.out, donor.out, j.s.oneVehicle(c, d)); x.Out != nil {
		return x, nil
	}
	bill := j.s.reckon(c, d)
	x.Total = bill.Cost.Total()
	overspent, budget := j.s.budget(x)
	if x.Out = overspent; overspent != nil {
		return x, nil
	}
	m, _, err := j.s.manifest(j.checker.Loader, c, d, bill.Takes)
	if err != nil {
		return x, err
	}
	b := j.subject(m)
	slow, speed := j.speed(b)
	if x.Out = slow; slow != nil {
		return x, nil
	}
	for _, wish := range []string{donor.wish, budget, speed} {
		if wish != "" {
			x.Wishes = append(x.Wishes, wish)
		}
	}
	rules, err := j.decide(ctx, b, func(u *unit) bool { return u.origin == ofPair && u.region == "" })
	if err != nil {
		return x, err
	}
	if x.Out = j.everywhere(b, rules); x.Out != nil {
		return x, nil
	}
	regional, err := j.decide(ctx, b, func(u *unit) bool { return u.origin == ofPair && u.region != "" })
	if err != nil {
		return x, err
	}
	out := 0
	for i := range j.chains {
		for _, more := range []ruled{regional[i], fit.intent[i], chassis.rules[i], donor.rules[i]} {
			rules[i].add(more)
		}
		said := j.judgement(b, i, rules[i])
		if alone := firstReason(chassis.at[i], donor.at[i]); alone != nil {
			said.Out = alone
		}
		if said.Out != nil {
			out++
		}
		x.Regions = append(x.Regions, said)
	}
	if out == len(j.chains) && out > 0 {
		x.Out = x.Regions[0].Out
		return x, nil
	}
	books.enter(x, bill.Cost)
	return x, nil
}

// everywhere is why a combination fails wherever it is registered: no region
// needs to be looked at then.
func (j *jury) everywhere(b *subject, rules []ruled) *Reason {
	var fails *Reason
	for i := range j.chains {
		if fails = j.judgement(b, i, rules[i]).Out; fails == nil {
			return nil
		}
	}
	if fails != nil {
		fails.Region = ""
	}
	return fails
}

func firstReason(all ...*Reason) *Reason {
	for _, r := range all {
		if r != nil {
			return r
		}
	}
	return nil
}

// oneVehicle refuses to take a vehicle for both.
func (s *Shortlist) oneVehicle(c, d *Candidate) *Reason {
	if c.ID != d.ID {
		return nil
	}
	return &Reason{Text: "chassis and donor are one vehicle", At: d.At}
}

// sort parts what may work from what can't, and puts together what the same
// rule rules out at the same line.
func (r *Result) sort(all []*Combination) {
	type fault struct {
		rule, alone string
		at          manifest.Position
	}
	type told struct {
		reason int
		who    string
	}
	known, before := map[fault]int{}, map[told]bool{}
	for _, x := range all {
		if x.Out == nil {
			r.Ranked = append(r.Ranked, x)
			continue
		}
		why := x.Out
		who := x.ID
		if why.Alone != "" {
			who = why.Alone
		}
		same := fault{why.Rule, why.Alone, why.At}
		i, is := known[same]
		if !is {
			i = len(r.Ruled)
			known[same] = i
			r.Ruled = append(r.Ruled, Ruled{Reason: *why})
		}
		if key := (told{i, who}); !before[key] {
			before[key] = true
			r.Ruled[i].Who = append(r.Ruled[i].Who, who)
			r.Ruled[i].Own = append(r.Ruled[i].Own, why.Text)
		}
	}
}

// close reckons and judges the leading combinations in full.
func (r *Result) close(ctx context.Context, checker *check.Checker) error {
	plan := *checker
	plan.Options.Hold = hold
	r.Close = make([]*Close, min(leading, len(r.Ranked)))
	faults := make([]error, len(r.Close))
	var (
		wg   sync.WaitGroup
		next atomic.Int64
	)
	for range runtime.GOMAXPROCS(0) {
		wg.Go(func() {
			for i := int(next.Add(1)) - 1; i < len(r.Close); i = int(next.Add(1)) - 1 {
				r.Close[i], faults[i] = r.look(ctx, &plan, r.Ranked[i])
			}
		})
	}
	wg.Wait()
	for i, c := range r.Close {
		if faults[i] != nil {
			return faults[i]
		}
		r.Notes = append(r.Notes, c.Notes...)
	}
	return nil
}

// look reckons and judges one combination in full.
func (r *Result) look(ctx context.Context, plan *check.Checker, x *Combination) (*Close, error) {
	c := &Close{Combination: x, Reckoning: r.reckon(x.Chassis, x.Donor)}
	var err error
	if c.Manifest, c.Notes, err = r.manifest(plan.Loader, x.Chassis, x.Donor, c.Takes); err != nil {
		return nil, err
	}
	if c.Reports, err = plan.Across(ctx, c.Manifest, r.Intent.Regions); err != nil {
		return nil, err
	}
	for _, report := range c.Reports {
		report.Input = nil // the largest part, and nobody reads it again
		c.Items = append(c.Items, verdict.Case{
			Manifest: c.Manifest, Book: plan.Book, Computed: report.Computed, Verdict: report.Verdict,
		}.Items())
	}
	return c, nil
}
