package prebuy

import (
	"context"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"

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
	var g errgroup.Group
	g.SetLimit(runtime.GOMAXPROCS(0))
	for i := range r.Close {
		g.Go(func() (err error) {
			r.Close[i], err = r.look(ctx, &plan, r.Ranked[i])
			return err
		})
	}
	if err := g.Wait(); err != nil {
		return err
	}
	for _, c := range r.Close {
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
