package prebuy

import (
	"cmp"
	"context"
	"fmt"
	"runtime"
	"strings"
	"sync"

	"golang.org/x/sync/errgroup"
)

// pairs judges and reckons every combination, on all processors.
func (j *jury) pairs(ctx context.Context, fit *singles, books *ledger, progress Progress) ([]*Combination, error) {
	all := make([]*Combination, len(j.s.Chassis)*len(j.s.Donors))
	said := map[string][]Judgement{}
	var (
		mu   sync.Mutex
		done int
	)
	g, going := errgroup.WithContext(ctx)
	g.SetLimit(runtime.GOMAXPROCS(0))
	for n := range all {
		if going.Err() != nil {
			break
		}
		g.Go(func() error {
			x, err := j.pair(going, fit, books, j.s.Chassis[n/len(j.s.Donors)], j.s.Donors[n%len(j.s.Donors)])
			if err != nil {
				return err
			}
			mu.Lock()
			defer mu.Unlock()
			all[n] = x
			share(x, said)
			done++
			if progress != nil {
				progress(done, len(all))
			}
			return nil
		})
	}
	if err := cmp.Or(g.Wait(), ctx.Err()); err != nil {
		return nil, err
	}
	return all, nil
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
