package prebuy

import (
	"cmp"
	"fmt"
	"math/big"
	"slices"
	"strings"

	"trialfit/internal/rulebook"
)

// Ask is something to find out before paying, and what it decides.
type Ask struct {
	// Way is how: ask a seller, measure, or get a price.
	Way string
	// Of is the candidate or need it is about, "" for the intent.
	Of string
	// Text is the question or the measurement as a sentence, Tool what it takes.
	Text, Tool string
	// Paths are where the answers are written in the shortlist: one place, or
	// two that decide together.
	Paths []string
	Lines []int
	// Decides is the share of the open question that the answer settles, 0..1:
	// of its present range, the part in which it alone decides. 1 where nothing
	// can be said until it is known.
	Decides float64
	// Settles says what it settles, and Share what Decides means, in words.
	Settles, Share string
	// If lists what follows from which answer.
	If []string
	// Concerns are the leading combinations that hang on it.
	Concerns []string
}

// mostAsks is how many fit a page that is printed.
const mostAsks = 12

// ask ranks what is not known of the leading combinations by how much of the
// order it decides.
func (r *Result) ask(book *rulebook.Book) {
	r.Asks = merged(append(r.prices(), r.facts(book)...))
	slices.SortStableFunc(r.Asks, func(a, b Ask) int {
		return cmp.Or(cmp.Compare(b.Decides, a.Decides), cmp.Compare(len(b.Concerns), len(a.Concerns)), slices.Compare(a.Paths, b.Paths))
	})
	r.Asks = r.Asks[:min(mostAsks, len(r.Asks))]
}

// merged takes together what is asked for several reasons.
func merged(all []Ask) []Ask {
	var out []Ask
	for _, a := range all {
		n := slices.IndexFunc(out, func(b Ask) bool { return slices.Equal(a.Paths, b.Paths) })
		if n < 0 {
			out = append(out, a)
			continue
		}
		b := &out[n]
		if b.Settles != a.Settles {
			b.Settles += "; " + a.Settles
		}
		if a.Decides >= b.Decides {
			b.Decides, b.Share = a.Decides, a.Share
			b.Text, b.Tool, b.Way = a.Text, a.Tool, a.Way
		}
		b.If = append(b.If, a.If...)
		for _, id := range a.Concerns {
			if !slices.Contains(b.Concerns, id) {
				b.Concerns = append(b.Concerns, id)
			}
		}
	}
	return out
}

const (
	openUntil = "open until it is known"
	justKnown = "it has to be known, and no answer rules anything out"
)

func ofRange(share float64) string {
	return fmt.Sprintf("the answer alone does in %.0f %% of its range", 100*share)
}

// prices asks for the numbers of the reckoning that decide which of the
// leading combinations costs least.
func (r *Result) prices() []Ask {
	var duels []duel
	for _, c := range r.Close[min(1, len(r.Close)):] {
		if a := r.Close[0]; !Cheaper(a.Cost, c.Cost) && !Cheaper(c.Cost, a.Cost) {
			duels = append(duels, duel{a, c})
		}
	}
	byLeaf := map[*Leaf]*Ask{}
	var order []*Leaf
	var pairs []Ask
	for _, d := range duels {
		alone := 0.0
		leaves := d.leaves()
		for _, l := range leaves {
			share, ifs := r.decides(d, l)
			alone = max(alone, share)
			if share <= 0 {
				continue
			}
			a := byLeaf[l]
			if a == nil {
				a = r.question(l)
				byLeaf[l] = a
				order = append(order, l)
			}
			if share > a.Decides {
				a.Decides = share
				a.Settles = fmt.Sprintf("which of %s and %s costs less", d.a.ID, d.b.ID)
				a.Share = ofRange(share)
				if l.Missing {
					a.Share = openUntil
				}
			}
			if l.Kind != KindFact {
				a.If = append(a.If, ifs...)
			}
			for _, id := range []string{d.a.ID, d.b.ID} {
				if !slices.Contains(a.Concerns, id) {
					a.Concerns = append(a.Concerns, id)
				}
			}
		}
		if alone == 0 {
			if p, found := r.together(d, leaves); found {
				pairs = append(pairs, p)
			}
		}
	}
	var out []Ask
	var unpriced *Ask
	for _, l := range order {
		a := byLeaf[l]
		if !l.Missing || l.Kind != KindQuote {
			out = append(out, *a)
			continue
		}
		// Prices that nobody has named are one round of calls.
		if unpriced == nil {
			a.Text, a.If = "Get prices: "+l.What, nil
			unpriced = a
			continue
		}
		unpriced.Text += "; " + l.What
		unpriced.Paths = append(unpriced.Paths, a.Paths...)
		unpriced.Lines = append(unpriced.Lines, a.Lines...)
		for _, id := range a.Concerns {
			if !slices.Contains(unpriced.Concerns, id) {
				unpriced.Concerns = append(unpriced.Concerns, id)
			}
		}
	}
	if unpriced != nil {
		out = append(out, *unpriced)
	}
	return append(out, pairs...)
}

// answer words a number at which a question turns, rounded to the safe side.
func (r *Result) answer(l *Leaf, x *big.Rat, below bool) string {
	unit := " " + r.Currency
	switch l.Kind {
	case KindHours:
		unit = " h"
	case KindRoad:
		unit = " " + r.Intent.FetchingUnit
	case KindRate:
		unit = " " + r.Currency + " an hour"
	}
	scale := big.NewRat(1, 1)
	if l.Kind == KindHours || l.Kind == KindRate {
		scale = big.NewRat(10, 1)
	}
	scaled := zero().Mul(x, scale)
	if below {
		return "at most " + tenth(floor(scaled), scale) + unit
	}
	return "at least " + tenth(ceil(scaled), scale) + unit
}

func tenth(whole string, scale *big.Rat) string {
	if scale.IsInt() && scale.Num().Int64() == 1 {
		return whole
	}
	return strings.TrimSuffix(zero().Quo(new(big.Rat).SetInt(mustInt(whole)), scale).FloatString(1), ".0")
}

// grid is how finely a pair of numbers is looked at together, mostLeaves how
// many of the widest may form one.
const (
	grid       = 12
	mostLeaves = 6
)

// together finds the pair of numbers that settles most of a duel that no
// single one settles.
func (r *Result) together(d duel, leaves []*Leaf) (Ask, bool) {
	leaves = leaves[:min(mostLeaves, len(leaves))]
	best, most := [2]*Leaf{}, 0
	for i, a := range leaves {
		for _, b := range leaves[i+1:] {
			if a.Missing || b.Missing {
				continue
			}
			settled := 0
			for x := range grid {
				for y := range grid {
					if d.side(map[*Leaf]Span{a: cell(a, x), b: cell(b, y)}) != 0 {
						settled++
					}
				}
			}
			if settled > most {
				best, most = [2]*Leaf{a, b}, settled
			}
		}
	}
	if most == 0 {
		return Ask{}, false
	}
	first, second := r.question(best[0]), r.question(best[1])
	return Ask{
		Way: first.Way, Of: first.Of, Text: first.Text + " And: " + second.Text, Tool: first.Tool,
		Paths: []string{best[0].Path, best[1].Path}, Lines: []int{best[0].At.Line, best[1].At.Line},
		Decides:  float64(most) / (grid * grid),
		Settles:  fmt.Sprintf("which of %s and %s costs less", d.a.ID, d.b.ID),
		Share:    fmt.Sprintf("neither answer alone does; both do in %.0f %% of what they may be", 100*float64(most)/(grid*grid)),
		Concerns: []string{d.a.ID, d.b.ID},
	}, true
}

// cell is the middle of one of the parts that a range is cut into.
func cell(l *Leaf, n int) Span {
	x := zero().Mul(l.Span.Width(), big.NewRat(int64(2*n+1), 2*grid))
	return exactly(x.Add(x, l.Span.Low))
}

// question words what to ask for a number of the reckoning.
func (r *Result) question(l *Leaf) *Ask {
	a := &Ask{Paths: []string{l.Path}, Lines: []int{l.At.Line}, Way: GetPrice, Tool: "phone"}
	parts := strings.Split(l.Path, ".")
	if len(parts) > 1 && parts[0] != "intent" {
		a.Of = parts[1]
	}
	now := "not known yet"
	if !l.Missing {
		now = r.now(l)
	}
	switch l.Kind {
	case KindPrice:
		a.Way = AskSeller
		a.Text = fmt.Sprintf("What is the lowest price for %s, as it stands, paid today? (%s)", a.Of, now)
	case KindValue:
		a.Text = fmt.Sprintf("Find a buyer: %s? (%s)", l.What, now)
	case KindHours:
		a.Text = fmt.Sprintf("Look at the job and settle %s. (%s)", l.What, now)
		a.Way, a.Tool = Measure, "the vehicle in front of you"
	case KindRate:
		a.Text = fmt.Sprintf("Settle %s with the shop. (%s)", l.What, now)
	case KindRoad:
		a.Text = fmt.Sprintf("How far is %s? (%s)", l.What, now)
		a.Tool = "map"
	case KindFact:
		a.Way = AskSeller
		a.Text = fmt.Sprintf("Find out the %s. (%s)", l.What, now)
	default:
		a.Text = fmt.Sprintf("Get a price: %s. (%s)", l.What, now)
	}
	return a
}

// now is what is known of a number.
func (r *Result) now(l *Leaf) string {
	switch l.Kind {
	case KindHours:
		return "now " + plain(l.Span) + " h"
	case KindRoad:
		return "now " + plain(l.Span) + " " + r.Intent.FetchingUnit
	}
	return "now " + l.Span.Print(r.Currency)
}

// plain writes a span of numbers with at most one decimal.
func plain(s Span) string {
	low, high := strings.TrimSuffix(s.Low.FloatString(1), ".0"), strings.TrimSuffix(s.High.FloatString(1), ".0")
	if low == high {
		return low
	}
	return low + ".." + high
}
