package prebuy

import (
	"cmp"
	"encoding/binary"
	"slices"
	"strings"
	"sync"
)

// ledger holds the costs of all combinations while they are ranked. Each is cut
// into what the chassis, the donor and the rest of the build cost. Combinations
// share most of these portions, so that any two are compared by adding three
// differences that are known.
type ledger struct {
	rates [3]*Leaf // what the sums of a portion are multiplied with; nil is money

	mu       sync.Mutex
	of       map[*Combination][3]*portion // by origin: the build, its chassis, its donor
	known    [3]map[string]*portion
	number   map[*Leaf]int32
	leaf     []end
	scale    [3]end
	portions [3]int
}

// portion is the part of a cost whose numbers belong to one owner.
type portion struct {
	id    int // among those of its origin
	of    *Candidate
	cost  Cost
	items []item
	sums  [3]end // by rate
}

// item is a term of a portion.
type item struct {
	leaf  int32
	rate  int8
	times float64
}

// end is a range of numbers near the exact ones, perhaps open at either end.
type end struct {
	low, high         float64
	openLow, openHigh bool
}

func near(l *Leaf) end {
	if l == nil {
		return end{low: 1, high: 1}
	}
	e := end{openHigh: l.Missing}
	e.low, _ = l.Span.Low.Float64()
	e.high, _ = l.Span.High.Float64()
	return e
}

func (e end) scaled(by float64) end {
	if by < 0 {
		return end{e.high * by, e.low * by, e.openHigh, e.openLow}
	}
	return end{e.low * by, e.high * by, by > 0 && e.openLow, by > 0 && e.openHigh}
}

func (e end) plus(o end) end {
	return end{e.low + o.low, e.high + o.high, e.openLow || o.openLow, e.openHigh || o.openHigh}
}

func (s *Shortlist) ledger() *ledger {
	l := &ledger{
		rates: [3]*Leaf{nil, s.Intent.Rate, s.Intent.Fetching},
		of:    map[*Combination][3]*portion{}, number: map[*Leaf]int32{},
	}
	for i, rate := range l.rates {
		l.known[i] = map[string]*portion{}
		l.scale[i] = near(rate)
	}
	return l
}

// enter takes in what a combination costs.
func (l *ledger) enter(x *Combination, cost Cost) {
	var parts [3]Cost
	owners := [3]*Candidate{nil, x.Chassis, x.Donor}
	chassis, donor := x.Chassis.node.Path+".", x.Donor.node.Path+"."
	for _, t := range cost {
		whose := ofIntent
		switch {
		case strings.HasPrefix(t.Leaf.Path, chassis):
			whose = ofChassis
		case strings.HasPrefix(t.Leaf.Path, donor):
			whose = ofDonor
		}
		parts[whose] = append(parts[whose], t)
	}
	l.mu.Lock()
	defer l.mu.Unlock()
	var of [3]*portion
	for o, part := range parts {
		of[o] = l.portion(origin(o), owners[o], part)
	}
	l.of[x] = of
}

func (l *ledger) portion(o origin, of *Candidate, cost Cost) *portion {
	p := &portion{of: of, cost: cost}
	for _, t := range cost {
		n, numbered := l.number[t.Leaf]
		if !numbered {
			n = int32(len(l.leaf))
			l.number[t.Leaf] = n
			l.leaf = append(l.leaf, near(t.Leaf))
		}
		rate := 0
		if t.Rate != nil {
			rate = slices.Index(l.rates[:], t.Rate)
		}
		p.items = append(p.items, item{n, int8(rate), float64(t.Times)})
	}
	slices.SortStableFunc(p.items, func(a, b item) int { return cmp.Or(cmp.Compare(a.leaf, b.leaf), cmp.Compare(a.rate, b.rate)) })
	var key []byte
	for _, i := range p.items {
		key = binary.AppendVarint(key, int64(i.leaf))
		key = append(key, byte(i.rate))
		key = binary.AppendVarint(key, int64(i.times))
	}
	if known := l.known[o][string(key)]; known != nil && known.of == of {
		return known
	}
	for _, i := range p.items {
		p.sums[i.rate] = p.sums[i.rate].plus(l.leaf[i.leaf].scaled(i.times))
	}
	p.id = l.portions[o]
	l.portions[o]++
	l.known[o][string(key)] = p
	return p
}

// unsure is how near to nothing a difference is reckoned anew, exactly.
const unsure = 1e-6

// below counts those of others that certainly cost less than x.
func (l *ledger) below(x *Combination, others []*Combination) int {
	mine := l.of[x]
	var known [3][]*[3]end // differences from x by portion
	for o := range known {
		known[o] = make([]*[3]end, l.portions[o])
	}
	count := 0
	for _, y := range others {
		theirs := l.of[y]
		var sums [3]end
		for o, p := range theirs {
			d := known[o][p.id]
			if d == nil {
				d = l.less(p, mine[o])
				known[o][p.id] = d
			}
			for rate := range sums {
				sums[rate] = sums[rate].plus(d[rate])
			}
		}
		high, open := 0.0, false
		for rate, s := range sums {
			by := l.scale[rate]
			high += max(s.high*by.low, s.high*by.high)
			open = open || s.openHigh || by.openHigh && s.high > unsure
		}
		switch {
		case open || high > unsure:
		case high < -unsure || Cheaper(costOf(theirs), costOf(mine)):
			count++
		}
	}
	return count
}

// less is what portion a may come to more than portion b, by rate. What both
// hold cancels.
func (l *ledger) less(a, b *portion) *[3]end {
	var out [3]end
	switch {
	case a == b:
	case a.of != b.of:
		for rate := range out {
			out[rate] = a.sums[rate].plus(b.sums[rate].scaled(-1))
		}
	default:
		i, j := 0, 0
		for i < len(a.items) || j < len(b.items) {
			var t item
			switch {
			case j == len(b.items) || i < len(a.items) && before(a.items[i], b.items[j]):
				t = a.items[i]
				i++
			case i == len(a.items) || before(b.items[j], a.items[i]):
				t = b.items[j]
				t.times = -t.times
				j++
			default:
				t = a.items[i]
				t.times -= b.items[j].times
				i, j = i+1, j+1
			}
			out[t.rate] = out[t.rate].plus(l.leaf[t.leaf].scaled(t.times))
		}
	}
	return &out
}

func before(a, b item) bool {
	return cmp.Or(cmp.Compare(a.leaf, b.leaf), cmp.Compare(a.rate, b.rate)) < 0
}

func costOf(parts [3]*portion) Cost {
	return slices.Concat(parts[0].cost, parts[1].cost, parts[2].cost)
}
