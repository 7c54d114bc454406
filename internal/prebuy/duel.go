package prebuy

import (
	"fmt"
	"math/big"
	"slices"
)

// duel is the first choice against another one that may cost less.
type duel struct{ a, b *Close }

// leaves are the uncertain numbers in which two costs differ, the widest first.
func (d duel) leaves() []*Leaf {
	var out []*Leaf
	width := map[*Leaf]*big.Rat{}
	all := slices.Concat(d.a.Cost, d.b.Cost).Leaves()
	whole := d.a.Cost.Less(d.b.Cost)
	for _, l := range all {
		if !l.Uncertain() {
			continue
		}
		known := d.a.Cost.less(d.b.Cost, map[*Leaf]Span{l: exactly(l.Span.Middle())})
		gain := zero().Sub(whole.Width(), known.Width())
		if l.Missing && d.differs(l) {
			gain = big.NewRat(1<<40, 1) // nothing is wider than what nobody has named
		}
		if gain.Sign() > 0 {
			width[l] = gain
			out = append(out, l)
		}
	}
	slices.SortStableFunc(out, func(a, b *Leaf) int { return width[b].Cmp(width[a]) })
	return out
}

// differs says that a leaf does not cancel.
func (d duel) differs(l *Leaf) bool {
	s := sum{times: map[factor]int64{}}
	s.add(d.a.Cost, 1)
	s.add(d.b.Cost, -1)
	return slices.ContainsFunc(s.order, func(f factor) bool { return (f.leaf == l || f.rate == l) && s.times[f] != 0 })
}

// side is -1 where a certainly costs less than b, 1 where it costs more.
func (d duel) side(at map[*Leaf]Span) int {
	r := d.a.Cost.less(d.b.Cost, at)
	switch {
	case !r.OpenHigh && r.High.Sign() < 0:
		return -1
	case !r.OpenLow && r.Low.Sign() > 0:
		return 1
	}
	return 0
}

// steps of the search for the answer at which a duel turns.
const halvings = 40

// decides finds the share of a leaf's range in which it alone settles a duel,
// and what follows from an answer below or above. The difference of the costs
// moves one way with each leaf, so what is settled lies at the ends.
func (r *Result) decides(d duel, l *Leaf) (float64, []string) {
	span := l.Span
	if l.Missing {
		span = Span{zero(), r.ceiling(d)}
	}
	at := func(x *big.Rat) int { return d.side(map[*Leaf]Span{l: exactly(x)}) }
	width := span.Width()
	if width.Sign() == 0 {
		return 0, nil
	}
	settled := zero()
	var ifs []string
	tell := func(end *big.Rat, below bool) {
		s := at(end)
		if s == 0 {
			return
		}
		other := span.High
		if !below {
			other = span.Low
		}
		in, out := end, other
		if at(out) == s {
			in = out
		}
		for range halvings {
			if in.Cmp(out) == 0 {
				break
			}
			middle := Span{in, out}.Middle()
			if at(middle) == s {
				in = middle
			} else {
				out = middle
			}
		}
		part := zero().Sub(in, end)
		settled.Add(settled, part.Abs(part))
		first := d.a.ID
		second := d.b.ID
		if s > 0 {
			first, second = second, first
		}
		ifs = append(ifs, fmt.Sprintf("%s: %s costs less than %s, whatever else", r.answer(l, in, below), first, second))
	}
	tell(span.Low, true)
	tell(span.High, false)
	share, _ := zero().Quo(settled, width).Float64()
	if l.Missing {
		share = 1 // nothing is known of it, so nothing is settled without it
	}
	return min(share, 1), ifs
}

// ceiling is where the search for a missing price ends: well above what the
// dearer of two comes to without it.
func (r *Result) ceiling(d duel) *big.Rat {
	return zero().Mul(big.NewRat(2, 1), zero().Add(big.NewRat(100, 1), larger(d.a.Total.High, d.b.Total.High)))
}
