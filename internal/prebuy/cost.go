package prebuy

import (
	"math/big"

	"trialfit/internal/manifest"
)

// Kind says what a leaf of the reckoning is, and so whom to ask for it.
type Kind int

// Kinds of leaf.
const (
	KindMoney Kind = iota
	KindPrice      // what a seller asks
	KindQuote      // what a part or a repair costs
	KindValue      // what a part left over sells for
	KindHours
	KindRate // money for an hour or for a stretch of road
	KindRoad
	KindFact // something that is not known of a candidate
)

// Leaf is one number of the shortlist that costs are reckoned from. Two costs
// that hold the same leaf hold it at the same value, whatever it turns out to be.
type Leaf struct {
	// Path is where it is written, or would be, in the shortlist.
	Path string
	// What names it inside a sentence: "the price of diesel-base".
	What string
	Kind Kind
	At   manifest.Position
	Span Span
	// Missing says that nobody has named it: anything from nothing upwards.
	Missing bool
}

// Uncertain says that the leaf is not one known number.
func (l *Leaf) Uncertain() bool { return l.Missing || l.Span.Low.Cmp(l.Span.High) != 0 }

func missing(path, what string, kind Kind, at manifest.Position) *Leaf {
	return &Leaf{Path: path, What: what, Kind: kind, At: at, Span: exactly(zero()), Missing: true}
}

// Heads of a reckoning.
const (
	HeadPurchase = "purchase"
	HeadFetching = "fetching"
	HeadRepair   = "putting right"
	HeadParts    = "bought and made"
	HeadHours    = "hours × rate"
	HeadLeft     = "left over"
)

// Heads lists them in the order of a reckoning.
var Heads = []string{HeadPurchase, HeadFetching, HeadRepair, HeadParts, HeadHours, HeadLeft}

// Term is a leaf in a cost, times a rate where it has one, times a number.
type Term struct {
	Head  string
	Leaf  *Leaf
	Rate  *Leaf
	Times int64 // 1, 2 there and back, -1 for what comes back
}

// Cost is a sum of terms.
type Cost []Term

// Range is a span that may be open at either end.
type Range struct {
	Span
	OpenLow, OpenHigh bool
}

// Total is what a cost may come to. It is open upwards where a price is missing.
func (c Cost) Total() Range { return c.Less(nil) }

// Under is the total of one head.
func (c Cost) Under(head string) Range {
	var part Cost
	for _, t := range c {
		if t.Head == head {
			part = append(part, t)
		}
	}
	return part.Total()
}

// Less is what a cost may come to more than another one. A leaf that both hold
// cancels: whatever the hour costs and whichever way the price of a chassis
// that both take goes, it moves both alike.
func (c Cost) Less(other Cost) Range { return c.less(other, nil) }

// less is Less with some leaves at other spans.
func (c Cost) less(other Cost, at map[*Leaf]Span) Range {
	s := sum{times: map[factor]int64{}, at: at}
	s.add(c, 1)
	s.add(other, -1)
	return s.extremes()
}

// factor is a leaf and its rate.
type factor struct{ leaf, rate *Leaf }

// sum is a sum of factors with the common ones taken together.
type sum struct {
	order []factor
	times map[factor]int64
	at    map[*Leaf]Span
}

func (s *sum) add(c Cost, sign int64) {
	for _, t := range c {
		f := factor{t.Leaf, t.Rate}
		if _, seen := s.times[f]; !seen {
			s.order = append(s.order, f)
		}
		s.times[f] += sign * t.Times
	}
}

// span is where a leaf lies, and whether it is open upwards.
func (s *sum) span(l *Leaf) (Span, bool) {
	if at, is := s.at[l]; is {
		return at, false
	}
	return l.Span, l.Missing
}

// extremes of the sum: it is linear in every leaf once the rates are held, and
// linear in each rate once the leaves are, so both lie at ends.
func (s *sum) extremes() Range {
	out := Range{Span: exactly(zero())}
	byRate := map[*Leaf][]factor{}
	var rates []*Leaf
	low, high := zero(), zero()
	for _, f := range s.order {
		switch {
		case s.times[f] == 0:
		case f.rate == nil:
			span, open := s.span(f.leaf)
			l, h := scaled(span, s.times[f])
			low.Add(low, l)
			high.Add(high, h)
			out.OpenHigh = out.OpenHigh || open && s.times[f] > 0
			out.OpenLow = out.OpenLow || open && s.times[f] < 0
		default:
			if byRate[f.rate] == nil {
				rates = append(rates, f.rate)
			}
			byRate[f.rate] = append(byRate[f.rate], f)
		}
	}
	for _, rate := range rates {
		netLow, netHigh := zero(), zero()
		price, openPrice := s.span(rate)
		for _, f := range byRate[rate] {
			span, open := s.span(f.leaf)
			l, h := scaled(span, s.times[f])
			netLow.Add(netLow, l)
			netHigh.Add(netHigh, h)
			out.OpenHigh = out.OpenHigh || open && s.times[f] > 0
			out.OpenLow = out.OpenLow || open && s.times[f] < 0
		}
		out.OpenHigh = out.OpenHigh || openPrice && netHigh.Sign() > 0
		out.OpenLow = out.OpenLow || openPrice && netLow.Sign() < 0
		low.Add(low, smaller(zero().Mul(netLow, price.Low), zero().Mul(netLow, price.High)))
		high.Add(high, larger(zero().Mul(netHigh, price.Low), zero().Mul(netHigh, price.High)))
	}
	out.Low, out.High = low, high
	return out
}

func scaled(s Span, times int64) (low, high *big.Rat) {
	by := new(big.Rat).SetInt64(times)
	a, b := zero().Mul(s.Low, by), zero().Mul(s.High, by)
	if times < 0 {
		return b, a
	}
	return a, b
}

func smaller(a, b *big.Rat) *big.Rat {
	if a.Cmp(b) <= 0 {
		return a
	}
	return b
}

func larger(a, b *big.Rat) *big.Rat {
	if a.Cmp(b) >= 0 {
		return a
	}
	return b
}

// Cheaper says that the first cost lies below the second whatever the leaves
// turn out to be.
func Cheaper(a, b Cost) bool {
	d := a.Less(b)
	return !d.OpenHigh && d.High.Sign() < 0
}

// Print writes a range of money.
func (r Range) Print(code string) string {
	if r.OpenHigh {
		return r.Span.AtLeast(code)
	}
	return r.Span.Print(code)
}

// Leaves lists the leaves of a cost, each once, in the order of its terms.
func (c Cost) Leaves() []*Leaf {
	seen := map[*Leaf]bool{}
	var out []*Leaf
	add := func(l *Leaf) {
		if l != nil && !seen[l] {
			seen[l] = true
			out = append(out, l)
		}
	}
	for _, t := range c {
		add(t.Leaf)
		add(t.Rate)
	}
	return out
}
