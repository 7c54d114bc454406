package prebuy

import (
	"cmp"
	"math/big"
	"slices"
)

// exact is the number of combinations that are compared leaf by leaf.
const exact = 60

// rank orders the combinations that may work. The rank of one is one more than
// the number of those that certainly cost less to finish; combinations that
// may go either way share it. Among those that share one, fewer unproven musts
// come first, then the lower middle.
//
// Costs are compared by what differs, so that a price both pay does not make
// them seem uncertain against one another. Of a long list this is done for the
// leading ones; the rest are compared by their totals, which can only make
// more of them share.
func (r *Result) rank() {
	slices.SortStableFunc(r.Ranked, func(a, b *Combination) int {
		return cmp.Or(cmpOpen(a.Total, b.Total), a.Total.Middle().Cmp(b.Total.Middle()), cmp.Compare(a.ID, b.ID))
	})
	r.Exact = min(exact, len(r.Ranked))
	var ends []*big.Rat // the high ends of those that have one, rising
	for _, x := range r.Ranked {
		if !x.Total.OpenHigh {
			ends = append(ends, x.Total.High)
		}
	}
	slices.SortFunc(ends, func(a, b *big.Rat) int { return a.Cmp(b) })
	for i, x := range r.Ranked {
		below, _ := slices.BinarySearchFunc(ends, x.Total.Low, func(a, b *big.Rat) int { return a.Cmp(b) })
		x.Rank = 1 + below
		for k, y := range r.Ranked[:r.Exact] {
			byTotals := !y.Total.OpenHigh && y.Total.High.Cmp(x.Total.Low) < 0
			if i < r.Exact && k != i && !byTotals && Cheaper(y.Cost, x.Cost) {
				x.Rank++
			}
		}
	}
	slices.SortStableFunc(r.Ranked, func(a, b *Combination) int {
		return cmp.Or(cmp.Compare(a.Rank, b.Rank), cmpOpen(a.Total, b.Total), cmp.Compare(a.Unproven(), b.Unproven()), a.Total.Middle().Cmp(b.Total.Middle()), cmp.Compare(a.ID, b.ID))
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
