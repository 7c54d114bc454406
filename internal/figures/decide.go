package figures

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"sort"
	"strconv"
)

// Comparator says on which side of its limit a rule wants a figure.
type Comparator string

// The comparators of rules; the limit itself is allowed.
const (
	AtMost  Comparator = "at most"
	AtLeast Comparator = "at least"
)

// met says whether every value of the figure meets every value of the limit.
func (c Comparator) met(figure, limit Range) bool {
	switch c {
	case AtMost:
		return figure.High <= limit.Low
	case AtLeast:
		return figure.Low >= limit.High
	}
	panic(fmt.Sprintf("figures: unknown comparator %q", string(c)))
}

// settled says whether the figure is on one side of the limit as a whole,
// whichever side that is.
func (c Comparator) settled(figure, limit Range) bool {
	if c == AtMost {
		return c.met(figure, limit) || figure.Low > limit.High
	}
	return c.met(figure, limit) || figure.High < limit.Low
}

// Decider names the one leaf, or the pair, whose uncertainty decides.
type Decider struct {
	Paths []string
	// Now holds the present half widths in SI units.
	Now []float64
	// Need holds the half widths about the present middles that settle the
	// question, in SI units, rounded down to two significant digits.
	Need []float64
}

// Limits of the search for a decider. Nobody re-measures a thousand times
// better, and among many leaves only the most influential can form a pair.
const (
	leastShare  = 1e-3
	pairLeaves  = 6
	pairHalving = 12 // the share to 1 in 4000
)

// Decide returns the leaf that needs the smallest relative tightening for the
// range of r to lie on one side of a limit, all other leaves at their full
// range; if no leaf alone settles it, the pair that does when both are
// tightened by the same share. It returns nil when the range does not straddle
// the limit, or when neither a leaf nor a pair settles it with at least a
// thousandth of its present width. Limits are in SI units.
func Decide(r Result, comparator Comparator, limitLow, limitHigh float64) *Decider {
	limit := Range{limitLow, limitHigh}
	if !r.Ok() || comparator.settled(Range{r.Low, r.High}, limit) {
		return nil
	}
	q := question{r, comparator, limit}
	leaves := q.leaves()
	if d := q.single(leaves); d != nil {
		return d
	}
	return q.pair(leaves)
}

// question is what Decide was asked.
type question struct {
	result     Result
	comparator Comparator
	limit      Range
}

// candidate is an uncertain leaf that may decide.
type candidate struct {
	path        string
	middle, now float64
	left        float64 // width of the figure with this leaf known exactly
	alone       bool    // settles the question when known exactly
}

// window is the range of a leaf with another half width.
func (c candidate) window(half float64) Range {
	if half == 0 {
		return Range{c.middle, c.middle}
	}
	return Range{c.middle - half, c.middle + half}
}

// leaves returns the uncertain leaves in the order of declaration.
func (q question) leaves() []candidate {
	var all []candidate
	for _, d := range q.result.box.dims {
		if !d.known || d.Low == d.High {
			continue
		}
		c := candidate{path: d.path, middle: d.Low + (d.High-d.Low)/2, now: (d.High - d.Low) / 2}
		low, high, _ := q.result.At(map[string]Range{c.path: c.window(0)})
		c.left = high - low
		c.alone = q.comparator.settled(Range{low, high}, q.limit)
		all = append(all, c)
	}
	return all
}

// settles says whether the question is settled with leaves at these windows.
func (q question) settles(windows map[string]Range) bool {
	low, high, ok := q.result.At(windows)
	return ok && q.comparator.settled(Range{low, high}, q.limit)
}

func (q question) single(leaves []candidate) *Decider {
	var best *Decider
	for _, c := range leaves {
		if !c.alone {
			continue
		}
		steps := twoDigits(c.now)
		n := sort.Search(len(steps), func(i int) bool {
			return !q.settles(map[string]Range{c.path: c.window(steps[i])})
		})
		if n == 0 {
			continue
		}
		if need := steps[n-1]; best == nil || need/c.now > best.Need[0]/best.Now[0] {
			best = &Decider{[]string{c.path}, []float64{c.now}, []float64{need}}
		}
	}
	return best
}

func (q question) pair(leaves []candidate) *Decider {
	// The most influential first, then back into the order of declaration.
	order := make([]int, len(leaves))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(leaves[a].left, leaves[b].left) })
	order = order[:min(pairLeaves, len(order))]
	slices.Sort(order)

	var best *Decider
	most := leastShare
	for i, first := range order {
		for _, second := range order[i+1:] {
			a, b := leaves[first], leaves[second]
			at := func(x, y float64) bool {
				return q.settles(map[string]Range{a.path: a.window(x), b.path: b.window(y)})
			}
			if !at(most*a.now, most*b.now) {
				continue // no better than the best so far
			}
			share, beyond := most, 1.0
			for range pairHalving {
				if middle := (share + beyond) / 2; at(middle*a.now, middle*b.now) {
					share = middle
				} else {
					beyond = middle
				}
			}
			// Halving stops just short of the answer, which may be a round number.
			x, y := roundDown(beyond*a.now), roundDown(beyond*b.now)
			if !at(x, y) {
				x, y = roundDown(share*a.now), roundDown(share*b.now)
			}
			if best == nil || share > most {
				most = share
				best = &Decider{[]string{a.path, b.path}, []float64{a.now, b.now}, []float64{x, y}}
			}
		}
	}
	return best
}

// twoDigits returns the numbers of two significant digits from a thousandth of
// x up to x, rising.
func twoDigits(x float64) []float64 {
	exponent := int(math.Floor(math.Log10(x)))
	var steps []float64
	for e := exponent - 4; e <= exponent+1; e++ { // Log10(1000) falls short of 3
		for digits := 10; digits < 100; digits++ {
			if step := decimal(digits, e-1); step >= leastShare*x && step <= x {
				steps = append(steps, step)
			}
		}
	}
	return steps
}

// roundDown returns the largest number of two significant digits up to x > 0.
func roundDown(x float64) float64 {
	steps := twoDigits(x)
	return steps[len(steps)-1]
}

// decimal returns digits × 10^exponent as the nearest float64, which
// multiplying by a power of ten does not always give.
func decimal(digits, exponent int) float64 {
	x, err := strconv.ParseFloat(fmt.Sprintf("%de%d", digits, exponent), 64)
	if err != nil {
		panic(fmt.Sprintf("figures: decimal %de%d: %v", digits, exponent, err))
	}
	return x
}
