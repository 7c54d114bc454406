package prebuy

import (
	"fmt"
	"slices"
	"strings"

	"trialfit/internal/manifest"
)

// By says who meets a need, in the words of chassis.brings.
type By string

// The ways to meet a need.
const (
	ByVehicle   By = "vehicle"
	ByDonor     By = "donor"
	ByBought    By = "bought"
	ByMade      By = "made"
	ByNotNeeded By = "not-needed"
	ByNobody    By = "open"
)

// Taken says how one need of a combination is met.
type Taken struct {
	Need *Need
	By   By
	Part *Part // set where a candidate brings it
	Cost Cost
	// Perhaps names the place that decides whether it is needed at all, nil
	// where that is known.
	Perhaps *Leaf
}

// Left is a part that is left over.
type Left struct {
	Part  *Part
	Value *Leaf // nil where nobody says what it sells for
}

// Reckoning is what a combination takes from where, and what that costs.
type Reckoning struct {
	Takes []Taken
	Left  []Left
	Cost  Cost
}

// reckon reckons a chassis with a donor.
func (s *Shortlist) reckon(c, d *Candidate) Reckoning {
	var r Reckoning
	used := map[*Part]bool{}
	replaced := map[string]bool{} // by need: something is put in
	for _, n := range s.Needs {
		t, asked := s.take(n, c, d, used)
		if !asked {
			continue
		}
		if t.Part != nil {
			used[t.Part] = true
		}
		replaced[n.ID] = t.By != ByNotNeeded
		r.Takes = append(r.Takes, t)
	}
	for _, who := range []*Candidate{c, d} {
		r.Cost = append(r.Cost, Term{HeadPurchase, who.Price, nil, 1})
		if who.Road != nil {
			r.Cost = append(r.Cost, Term{HeadFetching, who.Road, s.Intent.Fetching, 2})
		}
		for _, l := range who.Lacks {
			r.Cost = append(r.Cost, s.effort(HeadRepair, l.Cost, l.Hours)...)
		}
	}
	for _, t := range r.Takes {
		r.Cost = append(r.Cost, t.Cost...)
	}
	for _, p := range slices.Concat(c.Brings, d.Brings) {
		if used[p] || p.Of == c && p.Meets != "" && !replaced[p.Meets] {
			continue // what the vehicle has and nothing takes the place of stays on it
		}
		r.Left = append(r.Left, Left{p, p.Value})
		if p.Value != nil {
			r.Cost = append(r.Cost, Term{HeadLeft, p.Value, nil, -1})
		}
	}
	return r
}

// effort is money and hours; either may be nil.
func (s *Shortlist) effort(head string, cost, hours *Leaf) Cost {
	var c Cost
	if cost != nil {
		c = append(c, Term{head, cost, nil, 1})
	}
	if hours != nil {
		c = append(c, Term{HeadHours, hours, s.Intent.Rate, 1})
	}
	return c
}

// offer is one way to meet a need.
type offer struct {
	by     By
	part   *Part
	cost   Cost
	forgo  *Leaf // what the part would have sold for
	priced bool
}

// take decides who meets a need: the cheapest way by the middles of what is
// known, a way without a price last; among equals the vehicle's own part, then
// the donor's. It is not asked for where the combination does not need it.
func (s *Shortlist) take(n *Need, c, d *Candidate, used map[*Part]bool) (Taken, bool) {
	needed, decides := s.needs(n, c, d)
	switch {
	case needed == no:
		return Taken{}, false
	case n.NotNeeded:
		return Taken{Need: n, By: ByNotNeeded}, true
	}
	var offers []offer
	for _, p := range slices.Concat(c.Brings, d.Brings) {
		if p.Meets != n.ID || used[p] {
			continue
		}
		by := ByVehicle
		if p.Of.Donor {
			by = ByDonor
		}
		o := offer{by: by, part: p, forgo: p.Value}
		o.cost = s.effort(HeadRepair, p.Cost, p.Hours)
		offers = append(offers, o)
	}
	for _, w := range []struct {
		by  By
		way *Way
	}{{ByBought, n.Bought}, {ByMade, n.Made}} {
		if w.way != nil {
			offers = append(offers, offer{by: w.by, cost: s.effort(HeadParts, w.way.Cost, w.way.Hours)})
		}
	}
	t := Taken{Need: n}
	if needed == perhaps {
		t.Perhaps = decides
	}
	if len(offers) == 0 {
		t.By = ByNobody
		t.Cost = Cost{{HeadParts, s.nobody(n), nil, 1}}
		return t, true
	}
	best := 0
	for i := range offers {
		if cheaper(offers[i], offers[best]) {
			best = i
		}
	}
	t.By, t.Part, t.Cost = offers[best].by, offers[best].part, offers[best].cost
	if needed == perhaps && len(t.Cost) > 0 {
		t.Cost = Cost{{HeadParts, decides, nil, 1}} // from nothing to what is not known
	}
	return t, true
}

// cheaper compares the middles of two ways.
func cheaper(a, b offer) bool {
	ra, rb := a.worth().Total(), b.worth().Total()
	if ra.OpenHigh != rb.OpenHigh {
		return rb.OpenHigh
	}
	return ra.Middle().Cmp(rb.Middle()) < 0
}

// worth is the cost of a way with what its part would have sold for.
func (o offer) worth() Cost {
	if o.forgo == nil {
		return o.cost
	}
	return append(slices.Clip(o.cost), Term{HeadLeft, o.forgo, nil, 1})
}

// nobody is the price that nobody has named for a need, the same leaf in every
// combination.
func (s *Shortlist) nobody(n *Need) *Leaf {
	s.unpriced.Lock()
	defer s.unpriced.Unlock()
	if s.unpriced.leaf == nil {
		s.unpriced.leaf = map[string]*Leaf{}
	}
	l := s.unpriced.leaf[n.ID]
	if l == nil {
		l = missing("needs."+n.ID, n.What, KindQuote, n.At)
		s.unpriced.leaf[n.ID] = l
	}
	return l
}

// truth has three values.
type truth int

const (
	no truth = iota
	perhaps
	yes
)

// needs says whether a combination needs a part, and where it is only perhaps
// the place that decides.
func (s *Shortlist) needs(n *Need, c, d *Candidate) (truth, *Leaf) {
	if n.Usual == nil {
		return yes, nil
	}
	w := n.Usual.When
	if w.Wanted != "" && !s.Intent.Wishes[w.Wanted] {
		return no, nil
	}
	into, from := s.fact(d, "engine.fuel"), s.fact(c, "outgoing_engine.fuel")
	if from.word == "" {
		if title := s.fact(c, "registration.title_fuel"); title.word != "" {
			from = title
		}
	}
	box := s.fact(d, "transmission.type")
	if box.word == "" {
		box = s.fact(c, "transmission.type")
	}
	state, decides := yes, (*Leaf)(nil)
	demand := func(asked bool, f fact, fits func(string) bool) {
		switch {
		case !asked || state == no:
		case f.word == "":
			state = perhaps
			if decides == nil {
				decides = f.leaf
			}
		case !fits(f.word):
			state = no
		}
	}
	is := func(want string) func(string) bool { return func(w string) bool { return w == want } }
	demand(w.Into != "", into, is(w.Into))
	demand(w.From != "", from, is(w.From))
	demand(w.Induction != "", s.fact(d, "engine.induction"), is(w.Induction))
	demand(w.Gearbox != "", box, is(w.Gearbox))
	if w.FuelChanges {
		demand(true, into, func(string) bool { return true })
		demand(true, from, func(f string) bool { return into.word == "" || f != into.word })
	}
	return state, decides
}

// fact is a word that is known of a candidate, or the leaf to ask for.
type fact struct {
	word string
	leaf *Leaf
}

// fact looks a word up in what is known of a candidate.
func (s *Shortlist) fact(c *Candidate, path string) fact {
	node := c.node.Find("known." + path)
	if node != nil && node.Value != nil {
		return fact{word: node.Value.Text}
	}
	key := c.node.Path + ".known." + path
	s.unpriced.Lock()
	defer s.unpriced.Unlock()
	if s.unpriced.leaf == nil {
		s.unpriced.leaf = map[string]*Leaf{}
	}
	l := s.unpriced.leaf[key]
	if l == nil {
		what := strings.ReplaceAll(path, ".", " ") + " of " + c.ID
		at := c.At
		if node != nil {
			what = fmt.Sprintf("%s (%s) of %s", node.Shape.Noun(), path, c.ID)
			at = node.At
		}
		l = missing(key, what, KindFact, at)
		s.unpriced.leaf[key] = l
	}
	return fact{leaf: l}
}

// Reason says why a combination can't work.
type Reason struct {
	// Rule is the id of the rule, "" where the intent rules it out.
	Rule string
	// Whole says that the chassis or the donor alone is at fault: its id.
	Alone  string
	Text   string
	Source string
	At     manifest.Position
	// Region is where; "" everywhere.
	Region string
}
