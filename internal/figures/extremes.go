package figures

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"
)

// How finely a search looks. A lattice over all axes finds the valleys as long
// as it stays affordable; beyond that, starts at chosen corners must do, which
// is enough for the sums over many items that engineering is full of.
const (
	latticePoints  = 1000  // at most, over all axes
	latticeAxes    = 9     // 2 points on each of 9 axes
	latticeValleys = 6     // followed down from the lattice
	pairAxes       = 5     // up to here a search also moves along diagonals
	coarsePoints   = 9     // on a line, with more than latticeAxes axes
	finePoints     = 17    // on a line
	lonePoints     = 65    // on the line of a lone axis
	edge           = 1e-6  // of the line: how near its end the slope is tested
	sweeps         = 40    // at most, of one refinement
	standstill     = 1e-14 // relative gain below which a refinement stops
	indifferent    = 1e-12 // the same as a share of what the starts differ by
	mostPivots     = 6     // 2^6 ways to hold them
	closely        = 64    // golden sections of a line: 0.618^64 of it, 4e-14
	roughly        = 14    // the same while a search still moves on: 1e-3
)

// minimum returns the lowest value of sign × Compute over dims: exact where it
// lies at a corner of the box, to rounding at smooth interior turning points.
// It is deterministic and takes a few thousand evaluations, more where a narrow
// curved valley must be followed, and next to none where every input has a
// direction.
func (b *box) minimum(dims []dim, sign float64) float64 {
	p := b.probe(dims, sign)
	switch n := len(p.free); {
	case n == 0:
		return p.atEnds()
	case n == 1:
		_, y := scan(p.along(0), p.free[0].Range, lonePoints, closely)
		return y
	case n <= latticeAxes:
		return p.refine(append(p.lattice(), p.aligned()...), latticeValleys, finePoints)
	default:
		starts := append(p.corners(), p.aligned()...)
		for i := range starts {
			p.descend(&starts[i])
		}
		return p.refine(starts, 1, coarsePoints)
	}
}

// atEnds returns the lowest value with every axis at one of its ends: for each
// way to hold the pivots, the others move one after the other until none gains.
func (p *probe) atEnds() float64 {
	lowest := math.Inf(1)
	for way := range 1 << len(p.pivot) {
		for i, a := range p.pivot {
			p.point[a.dim] = a.step(way>>i&1, 2)
		}
		y := p.value()
		for gained := true; gained; {
			gained = false
			for _, a := range p.ends {
				at := p.point[a.dim]
				if p.point[a.dim] = a.Low; at == a.Low {
					p.point[a.dim] = a.High
				}
				if moved := p.value(); moved < y {
					y, gained = moved, true
				} else {
					p.point[a.dim] = at
				}
			}
		}
		lowest = min(lowest, y)
	}
	return lowest
}

// start is a point on the free axes and its value.
type start struct {
	at    []float64
	value float64
}

func (p *probe) start(at []float64) start {
	p.move(at)
	return start{at, p.value()}
}

func (p *probe) move(at []float64) {
	for i, a := range p.free {
		p.point[a.dim] = at[i]
	}
}

// lattice returns the valleys of an even grid over the free axes, ends
// included: its points that no neighbour along an axis lies below.
func (p *probe) lattice() []start {
	n := len(p.free)
	points := min(finePoints, int(math.Pow(latticePoints, 1/float64(n))+1e-9))
	// The first axis steps fastest.
	strides := make([]int, n)
	count := 1
	for k := range strides {
		strides[k] = count
		count *= points
	}
	place := func(i int, at []float64) []float64 {
		for k, a := range p.free {
			at[k] = a.step(i/strides[k]%points, points)
		}
		return at
	}
	values, at := make([]float64, count), make([]float64, n)
	for i := range values {
		p.move(place(i, at))
		values[i] = p.value()
	}
	var valleys []start
	for i, y := range values {
		lower := slices.ContainsFunc(strides, func(stride int) bool {
			step := i / stride % points
			return step > 0 && values[i-stride] < y || step < points-1 && values[i+stride] < y
		})
		if !lower {
			valleys = append(valleys, start{place(i, make([]float64, n)), y})
		}
	}
	return valleys
}

// step returns point i of an even row of points, exact at both ends.
func (r Range) step(i, points int) float64 {
	if i == points-1 {
		return r.High
	}
	return r.Low + (r.High-r.Low)*float64(i)/float64(points-1)
}

// corners returns the low, the high and some scattered corners, and the middle.
func (p *probe) corners() []start {
	scatter := rand.New(rand.NewPCG(1, 2))
	var all []start
	for _, choose := range []func(Range) float64{
		func(r Range) float64 { return r.Low },
		func(r Range) float64 { return r.High },
		func(r Range) float64 { return r.step(1, 3) },
		func(r Range) float64 { return r.step(scatter.IntN(2), 2) },
		func(r Range) float64 { return r.step(scatter.IntN(2), 2) },
	} {
		at := make([]float64, len(p.free))
		for i, a := range p.free {
			at[i] = choose(a.Range)
		}
		all = append(all, p.start(at))
	}
	return all
}

// aligned returns points at which the axes come as near to one common value as
// their ranges allow. Spreads and differences are smallest there, on a ridge
// that no search along single axes can follow.
func (p *probe) aligned() []start {
	common := Range{math.Inf(1), math.Inf(-1)}
	for _, a := range p.free {
		common.Low, common.High = min(common.Low, a.High), max(common.High, a.Low)
	}
	if common.Low > common.High {
		common.Low, common.High = common.High, common.Low
	}
	all := make([]start, 3)
	for i := range all {
		at := make([]float64, len(p.free))
		for j, a := range p.free {
			at[j] = max(a.Low, min(a.High, common.step(i, len(all))))
		}
		all[i] = p.start(at)
	}
	return all
}

// descend moves a start to the best of low, middle and high on one axis after
// the other until none gains.
func (p *probe) descend(s *start) {
	p.move(s.at)
	for gained := true; gained; {
		gained = false
		for i, a := range p.free {
			for j := range 3 {
				p.point[a.dim] = a.step(j, 3)
				if y := p.value(); y < s.value {
					s.at[i], s.value, gained = p.point[a.dim], y, true
				}
			}
			p.point[a.dim] = s.at[i]
		}
	}
}

// refine improves the best few starts and returns the lowest value found.
func (p *probe) refine(starts []start, best, points int) float64 {
	slices.SortStableFunc(starts, func(a, b start) int { return cmp.Compare(a.value, b.value) })
	// Towards a lowest value of nothing, a share of the value itself is never reached.
	enough := indifferent * (starts[len(starts)-1].value - starts[0].value)
	starts = starts[:min(best, len(starts))]
	goal := math.Inf(1)
	for i := range starts {
		p.polish(&starts[i], goal, points, false, enough)
		goal = min(goal, starts[i].value)
	}
	lowest := slices.MinFunc(starts, func(a, b start) int { return cmp.Compare(a.value, b.value) })
	if len(p.free) <= pairAxes {
		p.polish(&lowest, goal, points, true, enough)
	}
	return lowest.value
}

// polish searches along each axis, along the diagonals of each pair when asked
// to, and along the way the last round went, until a round does not gain enough:
// roughly first, for what one line gains the next one moves away from. It gives
// up on what would not come down to the goal at the pace of its last round.
func (p *probe) polish(s *start, goal float64, points int, pairs bool, enough float64) {
	sections := roughly
	for range sweeps {
		from, before := slices.Clone(s.at), s.value
		for i, a := range p.free {
			p.move(s.at)
			if t, y := scan(p.along(i), a.Range, points, sections); y < s.value {
				s.at[i], s.value = t, y
			}
		}
		if pairs {
			for i := range p.free {
				for j := range i {
					for _, slant := range []float64{1, -1} {
						direction := make([]float64, len(p.free))
						direction[i] = p.free[i].High - p.free[i].Low
						direction[j] = slant * (p.free[j].High - p.free[j].Low)
						p.stride(s, direction, coarsePoints, sections)
						direction[i], direction[j] = 1, slant
						p.stride(s, direction, coarsePoints, sections)
					}
				}
			}
		}
		way := make([]float64, len(from))
		moved := 0
		for i := range way {
			if way[i] = s.at[i] - from[i]; way[i] != 0 {
				moved++
			}
		}
		if moved > 1 {
			p.stride(s, way, points, sections)
		}
		gain := before - s.value
		hopeless := s.value-sweeps*gain > goal
		if gain > max(standstill*math.Abs(before), enough) && !hopeless {
			continue
		}
		if sections == closely {
			return
		}
		sections = closely
	}
}

// along returns the function of one axis, the others standing still.
func (p *probe) along(i int) func(float64) float64 {
	return func(t float64) float64 {
		p.point[p.free[i].dim] = t
		return p.value()
	}
}

// stride searches from s along a direction as far as the box reaches.
func (p *probe) stride(s *start, direction []float64, points, sections int) {
	reach := Range{math.Inf(-1), math.Inf(1)}
	for i, a := range p.free {
		if direction[i] == 0 {
			continue
		}
		t, u := (a.Low-s.at[i])/direction[i], (a.High-s.at[i])/direction[i]
		reach.Low, reach.High = max(reach.Low, min(t, u)), min(reach.High, max(t, u))
	}
	if !(reach.Low < reach.High) {
		return
	}
	at := make([]float64, len(p.free))
	place := func(t float64) {
		for i, a := range p.free {
			at[i] = max(a.Low, min(a.High, s.at[i]+t*direction[i]))
		}
		p.move(at)
	}
	t, y := scan(func(t float64) float64 { place(t); return p.value() }, reach, points, sections)
	if y < s.value {
		place(t)
		copy(s.at, at)
		s.value = y
	}
}

// scan returns the lowest point of f on a line: the best of an even row of
// points, and of the turning points between them.
func scan(f func(float64) float64, line Range, points, sections int) (t, y float64) {
	var places, heights [lonePoints]float64
	row, values := places[:points], heights[:points]
	for i := range row {
		row[i] = line.step(i, points)
		values[i] = f(row[i])
	}
	best := 0
	for i := range values {
		if values[i] < values[best] {
			best = i
		}
	}
	t, y = row[best], values[best]
	highest := slices.Max(values)
	if highest-y <= standstill*math.Abs(y) {
		return t, y // flat but for rounding
	}
	turn := func(low, high float64) {
		if u, v := golden(f, low, high, sections); v < y {
			t, y = u, v
		}
	}
	last := points - 1
	for i := 1; i < last; i++ {
		if values[i] < values[i-1] && values[i] <= values[i+1] {
			turn(row[i-1], row[i+1])
		}
	}
	// A turning point may hide between an end and its neighbour.
	step := edge * (line.High - line.Low)
	if values[0] <= values[1] && f(line.Low+step) < values[0] {
		turn(row[0], row[1])
	}
	if values[last] <= values[last-1] && f(line.High-step) < values[last] {
		turn(row[last-1], row[last])
	}
	return t, y
}

// golden returns the lowest point of f between low and high by golden-section
// search, where f falls and then rises.
func golden(f func(float64) float64, low, high float64, sections int) (t, y float64) {
	const ratio = 1 / math.Phi
	t1, t2 := high-ratio*(high-low), low+ratio*(high-low)
	y1, y2 := f(t1), f(t2)
	for n := range sections {
		if n > 32 && y1 == y2 {
			break // where f is smooth, rounding hides what is left
		}
		if y1 <= y2 {
			high, t2, y2 = t2, t1, y1
			t1 = high - ratio*(high-low)
			y1 = f(t1)
		} else {
			low, t1, y1 = t1, t2, y2
			t2 = low + ratio*(high-low)
			y2 = f(t2)
		}
	}
	if y1 <= y2 {
		return t1, y1
	}
	return t2, y2
}
