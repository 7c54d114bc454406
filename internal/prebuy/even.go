package prebuy

import (
	"fmt"
	"math/big"
)

// Even is the price of one candidate at which the second choice becomes the
// first, everything else as it is.
type Even struct {
	First, Second string
	Candidate     string
	// Rises says that the price would have to rise to get there, else fall.
	Rises bool
	// At is the price; a range where the rest is not known exactly: at one end
	// the turn is possible, at the other it is certain.
	At Range
	// Never says that no price gets there.
	Never bool
	Text  string
}

// even reckons the prices at which the first two choices change places. A
// price that both pay moves neither past the other.
func (r *Result) even() {
	if len(r.Close) < 2 {
		return
	}
	a, b := r.Close[0], r.Close[1]
	for _, of := range []struct {
		x, other *Close
		rises    bool
	}{{a, b, true}, {b, a, false}} {
		for _, c := range []*Candidate{of.x.Chassis, of.x.Donor} {
			if c == of.other.Chassis || c == of.other.Donor {
				continue
			}
			r.Even = append(r.Even, r.turn(a, b, c, of.rises))
		}
	}
}

// turn finds the price of c: with it at nothing the costs differ by a range,
// and each unit of it moves the difference by one.
func (r *Result) turn(a, b *Close, c *Candidate, rises bool) Even {
	e := Even{First: a.ID, Second: b.ID, Candidate: c.ID, Rises: rises}
	rest := b.Cost.less(a.Cost, map[*Leaf]Span{c.Price: exactly(zero())})
	if !rises {
		rest = a.Cost.less(b.Cost, map[*Leaf]Span{c.Price: exactly(zero())})
	}
	e.At = rest
	code, now := r.Currency, "not known"
	if !c.Price.Missing {
		now = c.Price.Span.Print(code)
	}
	if !rest.OpenHigh && rest.High.Sign() < 0 {
		e.Never = true
		e.Text = fmt.Sprintf("not even as a gift would %s make %s the first choice (asked now: %s)", c.ID, b.ID, now)
		if rises {
			e.Text = fmt.Sprintf("%s stays behind at every price of %s (asked now: %s)", b.ID, c.ID, now)
		}
		return e
	}
	if rest.OpenLow || rest.Low.Sign() < 0 {
		e.At.Low, e.At.OpenLow = zero(), false
	}
	// From one end of the range on the turn is possible, from the other certain.
	verb, possible, certain := "falls", e.At.High, e.At.Low
	open, never := rest.OpenHigh, rest.OpenLow || rest.Low.Sign() <= 0
	if rises {
		verb, possible, certain, open, never = "rises", e.At.Low, e.At.High, rest.OpenLow || rest.Low.Sign() <= 0, rest.OpenHigh
	}
	at := func(x *big.Rat) string { return exactly(x).Print(code) }
	switch {
	case open:
		e.Text = fmt.Sprintf("%s may become the first choice at any price of %s: too much is not known (asked now: %s)", b.ID, c.ID, now)
	case possible.Cmp(certain) == 0:
		e.Text = fmt.Sprintf("%s becomes the first choice when the price of %s %s to %s (asked now: %s)", b.ID, c.ID, verb, at(possible), now)
	case never:
		e.Text = fmt.Sprintf("%s may become the first choice when the price of %s %s to %s, and no price makes it certain (asked now: %s)", b.ID, c.ID, verb, at(possible), now)
	default:
		e.Text = fmt.Sprintf("%s may become the first choice when the price of %s %s to %s, and does for certain at %s (asked now: %s)", b.ID, c.ID, verb, at(possible), at(certain), now)
	}
	return e
}
