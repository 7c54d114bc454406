package prebuy

import (
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
)

func between(low, high int64) *Leaf {
	return &Leaf{Span: Span{big.NewRat(low, 1), big.NewRat(high, 1)}}
}

// TestLess draws values for every leaf and adds the terms up as anybody would:
// no draw may fall outside the range, and draws at the ends reach it.
func TestLess(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for range 200 {
		rates := []*Leaf{between(40, 40+rng.Int64N(30)), between(1, 3)}
		leaves := make([]*Leaf, 5)
		for i := range leaves {
			low := rng.Int64N(100)
			leaves[i] = between(low, low+rng.Int64N(50))
		}
		draw := func() Cost {
			var c Cost
			for range 5 {
				term := Term{Leaf: leaves[rng.IntN(len(leaves))], Times: []int64{1, 2, -1}[rng.IntN(3)]}
				if rng.IntN(2) == 0 {
					term.Rate = rates[rng.IntN(2)]
				}
				c = append(c, term)
			}
			return c
		}
		a, b := draw(), draw()
		r := a.Less(b)
		all := append(append([]*Leaf{}, leaves...), rates...)
		low, high := new(big.Rat), new(big.Rat)
		for corner := range 1 << len(all) {
			at := map[*Leaf]*big.Rat{}
			for i, l := range all {
				at[l] = l.Span.Low
				if corner>>i&1 == 1 {
					at[l] = l.Span.High
				}
			}
			sum := new(big.Rat)
			for sign, c := range map[int64]Cost{1: a, -1: b} {
				for _, term := range c {
					x := new(big.Rat).Mul(at[term.Leaf], new(big.Rat).SetInt64(sign*term.Times))
					if term.Rate != nil {
						x.Mul(x, at[term.Rate])
					}
					sum.Add(sum, x)
				}
			}
			if corner == 0 || sum.Cmp(low) < 0 {
				low.Set(sum)
			}
			if corner == 0 || sum.Cmp(high) > 0 {
				high.Set(sum)
			}
		}
		// Leaves stand with a rate and without one, and then don't move together
		// in the range: it may be wider than the corners, never narrower.
		require.LessOrEqual(t, r.Low.Cmp(low), 0)
		require.GreaterOrEqual(t, r.High.Cmp(high), 0)
	}
}

func TestSharedLeavesCancel(t *testing.T) {
	price, rate, hours := between(4000, 9000), between(40, 80), between(10, 60)
	cheap, dear := between(200, 300), between(400, 500)
	a := Cost{{Leaf: price, Times: 1}, {Leaf: hours, Rate: rate, Times: 1}, {Leaf: cheap, Times: 1}}
	b := Cost{{Leaf: price, Times: 1}, {Leaf: hours, Rate: rate, Times: 1}, {Leaf: dear, Times: 1}}
	d := a.Less(b)
	require.Equal(t, "-300", d.Low.RatString())
	require.Equal(t, "-100", d.High.RatString())
	require.True(t, Cheaper(a, b), "although the totals overlap by thousands")
	require.False(t, Cheaper(b, a))
}

// TestMissingIsNotNothing: a price nobody named opens a cost upwards, and
// cancels where both lack it.
func TestMissingIsNotNothing(t *testing.T) {
	gap := missing("needs.x", "x", KindQuote, manifest.Position{})
	a := Cost{{Leaf: between(100, 200), Times: 1}, {Leaf: gap, Times: 1}}
	b := Cost{{Leaf: between(300, 400), Times: 1}, {Leaf: gap, Times: 1}}
	require.True(t, a.Total().OpenHigh)
	require.Equal(t, "at least 100 USD", a.Total().Print("USD"))
	require.True(t, Cheaper(a, b))
	require.False(t, Cheaper(a, Cost{{Leaf: between(900, 900), Times: 1}}), "it may cost anything")
}
