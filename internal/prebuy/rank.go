package prebuy

import (
	"cmp"
	"math/big"
	"runtime"
	"slices"

	"golang.org/x/sync/errgroup"
)

// rank orders the combinations that may work. The rank of one is one more than
// the number of those that certainly cost less to finish; combinations that
// may go either way share it. Among those that share one, fewer unproven musts
// come first, then the lower middle.
//
// Costs are compared by what differs, so that a price both pay does not make
// them seem uncertain against one another.
func (r *Result) rank(books *ledger) {
	middle := map[*Combination]*big.Rat{}
	for _, x := range r.Ranked {
		middle[x] = x.Total.Middle()
	}
	byMiddle := func(a, b *Combination) int {
		return cmp.Or(middle[a].Cmp(middle[b]), cmp.Compare(a.ID, b.ID))
	}
	slices.SortFunc(r.Ranked, func(a, b *Combination) int {
		return cmp.Or(cmpOpen(a.Total, b.Total), byMiddle(a, b))
	})
	var g errgroup.Group
	g.SetLimit(runtime.GOMAXPROCS(0))
	for i, x := range r.Ranked {
		g.Go(func() error {
			x.Rank = 1 + books.below(x, r.Ranked[:i])
			return nil
		})
	}
	g.Wait() // none fails
	slices.SortFunc(r.Ranked, func(a, b *Combination) int {
		return cmp.Or(cmp.Compare(a.Rank, b.Rank), cmpOpen(a.Total, b.Total), cmp.Compare(a.Unproven(), b.Unproven()), byMiddle(a, b))
	})
	count := map[int]int{}
	for _, x := range r.Ranked {
		count[x.Rank]++
	}
	for _, x := range r.Ranked {
		x.Shared = count[x.Rank] > 1
	}
}

// cmpOpen puts a total that is known before one that is open.
func cmpOpen(a, b Range) int {
	switch {
	case a.OpenHigh == b.OpenHigh:
		return 0
	case b.OpenHigh:
		return -1
	}
	return 1
}

// Unproven is the number of musts and demands not known to be met, in the
// region where they are fewest.
func (x *Combination) Unproven() int {
	least := -1
	for _, j := range x.Regions {
		if j.Out == nil && (least < 0 || j.Open() < least) {
			least = j.Open()
		}
	}
	return max(least, 0) + len(x.Wishes)
}
