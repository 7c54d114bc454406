package prebuy

import (
	"context"
	"errors"
	"runtime"
	"slices"
	"sync"

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
	// Combinations is how many there are, and Exact how many of the ranked
	// ones were compared leaf by leaf; the rest by their totals.
	Combinations, Exact int
}

// Close is a leading combination judged in full.
type Close struct {
	*Combination
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
	all, err := j.pairs(ctx, fit, progress)
	if err != nil {
		return nil, err
	}
	r.Combinations = len(all)
	for _, x := range all {
		if x.Out != nil {
			r.rule(x)
		} else {
			r.Ranked = append(r.Ranked, x)
		}
	}
	r.rank()
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
	rules []map[string]verdict.Rule
	out   *Reason // in every region
	at    []*Reason
	wish  *Wish
}

type singles struct {
	intent  []map[string]verdict.Rule
	chassis []single
	donors  []single
}

// alone decides what depends on the intent, each chassis and each donor alone.
func (j *jury) alone(ctx context.Context) (*singles, error) {
	out := &singles{chassis: make([]single, len(j.s.Chassis)), donors: make([]single, len(j.s.Donors))}
	var problems manifest.Problems
	one := func(c, d *Candidate, who string, want origin) (single, error) {
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
		rules, err := j.decide(ctx, b, who, func(u *unit) bool { return u.origin == want })
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
	first, err := one(nil, nil, "", ofIntent)
	if err != nil {
		return nil, err
	}
	out.intent = first.rules
	for i, c := range j.s.Chassis {
		if out.chassis[i], err = one(c, nil, c.node.Path, ofChassis); err != nil {
			return nil, err
		}
	}
	for i, d := range j.s.Donors {
		if out.donors[i], err = one(nil, d, d.node.Path, ofDonor); err != nil {
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
func (j *jury) pairs(ctx context.Context, fit *singles, progress Progress) ([]*Combination, error) {
	all := make([]*Combination, len(j.s.Chassis)*len(j.s.Donors))
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
				x, err := j.pair(ctx, fit, j.s.Chassis[n/len(j.s.Donors)], j.s.Donors[n%len(j.s.Donors)])
				mu.Lock()
				all[n] = x
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

// pair judges one combination: what can't work is not reckoned any further.
func (j *jury) pair(ctx context.Context, fit *singles, c, d *Candidate) (*Combination, error) {
	chassis, donor := fit.chassis[c.Index], fit.donors[d.Index]
	x := &Combination{ID: c.ID + "+" + d.ID, Chassis: c, Donor: d}
	if x.Out = firstReason(chassis.out, donor.out, j.s.oneVehicle(c, d)); x.Out != nil {
		return x, nil
	}
	x = j.s.combine(c, d)
	if donor.wish != nil {
		x.Wishes = append(x.Wishes, *donor.wish)
	}
	reason, wish := j.s.budget(x)
	if x.Out = reason; reason != nil {
		return x, nil
	}
	if wish != nil {
		x.Wishes = append(x.Wishes, *wish)
	}
	m, _, err := j.s.manifest(j.checker.Loader, c, d, x.Takes)
	if err != nil {
		return x, err
	}
	b := j.subject(m)
	reason, wish = j.speed(b)
	if x.Out = reason; reason != nil {
		return x, nil
	}
	if wish != nil {
		x.Wishes = append(x.Wishes, *wish)
	}
	rules, err := j.decide(ctx, b, "", func(u *unit) bool { return u.origin == ofPair && u.region == "" })
	if err != nil {
		return x, err
	}
	var fails *Reason
	for i := range j.chains {
		if fails = j.judgement(b, i, rules[i]).Out; fails == nil {
			break
		}
	}
	if x.Out = fails; fails != nil {
		x.Out.Region = "" // it fails wherever it is registered: no region is looked at
		return x, nil
	}
	regional, err := j.decide(ctx, b, "", func(u *unit) bool { return u.origin == ofPair && u.region != "" })
	if err != nil {
		return x, err
	}
	for i := range rules {
		for id, r := range regional[i] {
			rules[i][id] = together(rules[i], id, r)
		}
	}
	out := 0
	for i := range j.chains {
		for _, more := range []map[string]verdict.Rule{fit.intent[i], chassis.rules[i], donor.rules[i]} {
			for id, r := range more {
				rules[i][id] = together(rules[i], id, r)
			}
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
	}
	return x, nil
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

// rule puts a combination with the others that the same reason rules out.
func (r *Result) rule(x *Combination) {
	who := x.ID
	if x.Out.Alone != "" {
		who = x.Out.Alone
	}
	for i := range r.Ruled {
		if r.Ruled[i].Text == x.Out.Text && r.Ruled[i].Rule == x.Out.Rule && r.Ruled[i].Alone == x.Out.Alone {
			if !slices.Contains(r.Ruled[i].Who, who) {
				r.Ruled[i].Who = append(r.Ruled[i].Who, who)
			}
			return
		}
	}
	r.Ruled = append(r.Ruled, Ruled{*x.Out, []string{who}})
}

// close judges the leading combinations in full.
func (r *Result) close(ctx context.Context, checker *check.Checker) error {
	plan := *checker
	plan.Options.Hold = hold
	for _, x := range r.Ranked[:min(leading, len(r.Ranked))] {
		m, notes, err := r.manifest(checker.Loader, x.Chassis, x.Donor, x.Takes)
		if err != nil {
			return err
		}
		c := &Close{Combination: x, Manifest: m, Notes: notes}
		if c.Reports, err = plan.Across(ctx, m, r.Intent.Regions); err != nil {
			return err
		}
		for _, report := range c.Reports {
			report.Input = nil // the largest part, and nobody reads it again
			c.Items = append(c.Items, verdict.Case{
				Manifest: m, Book: checker.Book, Computed: report.Computed, Verdict: report.Verdict,
			}.Items())
		}
		r.Close = append(r.Close, c)
		r.Notes = append(r.Notes, notes...)
	}
	return nil
}
