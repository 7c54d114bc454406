package prebuy

import (
	"fmt"
	"math/big"
	"math/rand/v2"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/manifest"
)

// market writes a shortlist whose candidates bring, lack and cost all sorts of
// things; a few prices are missing, and some are exact and the same. Everything
// in it is invented.
func market(tb testing.TB, chassis, donors int, seed uint64) *Shortlist {
	dice := rand.New(rand.NewPCG(seed, 1))
	var b strings.Builder
	b.WriteString("shortlist: 1\nname: market\ncurrency: EUR\nintent: {regions: IE, hourly_rate: \"40..55 EUR\", fetching: \"0.50 EUR/km\"}\n")
	ids := []string{"tank-return", "second-battery", "gearbox", "radiator", "shafts", "exhaust"}
	candidate := func(name string) {
		fmt.Fprintf(&b, "  - id: %s\n    distance: \"%d km\"\n", name, 10*dice.IntN(9))
		low := 100 * (10 + dice.IntN(20))
		switch dice.IntN(12) {
		case 0: // nobody named a price
		case 1, 2:
			fmt.Fprintf(&b, "    price: \"%d EUR\"\n", low)
		default:
			fmt.Fprintf(&b, "    price: \"%d..%d EUR\"\n", low, low+50*dice.IntN(8))
		}
		b.WriteString("    brings:\n")
		for n, id := range ids {
			if dice.IntN(3) == 0 {
				fmt.Fprintf(&b, "      - {id: p%d, meets: %s, hours: \"%d..%d h\", value: \"%d EUR\"}\n", n, id, dice.IntN(3), 3+dice.IntN(3), 20*dice.IntN(9))
			}
		}
		fmt.Fprintf(&b, "      - {id: rest, value: \"%d..%d EUR\"}\n", 50*dice.IntN(3), 150+50*dice.IntN(3))
		if dice.IntN(2) == 0 {
			fmt.Fprintf(&b, "    lacks: [{id: rust, what: rust, cost: \"%d..%d EUR\", hours: \"%d h\"}]\n", 50*dice.IntN(3), 150+50*dice.IntN(3), dice.IntN(9))
		}
	}
	b.WriteString("chassis:\n")
	for i := range chassis {
		candidate(fmt.Sprintf("c%d", i))
		fmt.Fprintf(&b, "    known: {registration: {title_fuel: %s}}\n", []string{"petrol", "diesel"}[dice.IntN(2)])
	}
	b.WriteString("donors:\n")
	for i := range donors {
		candidate(fmt.Sprintf("d%d", i))
		if dice.IntN(4) > 0 { // else it is not known what needs it raises
			b.WriteString("    known: {engine: {fuel: diesel, induction: turbocharged}, transmission: {type: manual}}\n")
		}
	}
	b.WriteString("needs:\n")
	for _, u := range Forgotten() {
		fmt.Fprintf(&b, "  - {id: %s, bought: {cost: \"100..%d EUR\", hours: \"2..5 h\"}, made: {cost: \"60 EUR\", hours: \"4..8 h\"}}\n", u.ID, 150+10*dice.IntN(9))
	}
	file := filepath.Join(tb.TempDir(), "market"+Suffix)
	require.NoError(tb, os.WriteFile(file, []byte(b.String()), 0o644))
	s, err := Read(file, checker(tb).Book)
	require.NoError(tb, err)
	return s
}

// TestRank: the rank of each is one more than the number of those that certainly
// cost less, found by comparing every two of them leaf by leaf.
func TestRank(t *testing.T) {
	for seed := range uint64(3) {
		s := market(t, 10, 8, seed)
		books := s.ledger()
		r := &Result{Shortlist: s}
		costs := map[*Combination]Cost{}
		for _, c := range s.Chassis {
			for _, d := range s.Donors {
				cost := s.reckon(c, d).Cost
				x := &Combination{ID: joint(c, d), Chassis: c, Donor: d, Total: cost.Total()}
				costs[x] = cost
				books.enter(x, cost)
				r.Ranked = append(r.Ranked, x)
			}
		}
		r.rank(books)
		open := 0
		for _, x := range r.Ranked {
			rank := 1
			for _, y := range r.Ranked {
				if Cheaper(costs[y], costs[x]) {
					rank++
				}
			}
			require.Equal(t, rank, x.Rank, "list %d: %s", seed, x.ID)
			if x.Total.OpenHigh {
				open++
			}
		}
		require.NotZero(t, open)
		require.NotEqual(t, open, len(r.Ranked))
		require.Greater(t, r.Ranked[len(r.Ranked)-1].Rank, len(r.Ranked)/5, "many are certainly dearer than others")
	}
}

// TestRetained: what is kept of a combination beyond the leading ones is small,
// and does not grow with what there is to take and to pay for. Counted are the
// bytes that can be reached, not the state of the heap.
func TestRetained(t *testing.T) {
	s := market(t, 12, 6, 7)
	r, err := Run(t.Context(), s, checker(t), nil)
	require.NoError(t, err)
	require.Len(t, r.Close, leading)
	rest := r.Ranked[leading:]
	require.Greater(t, len(rest), leading)
	const most = 900 // a name, a total of exact numbers, and three open demands
	require.Less(t, reachable(reflect.ValueOf(rest), map[uintptr]bool{})/len(rest), most)
	require.Greater(t, reachable(reflect.ValueOf(r.Close[0].Cost), map[uintptr]bool{}), 3*most, "a reckoning would not fit")
}

// reachable counts the bytes behind a value, each once, candidates left out:
// they belong to the shortlist.
func reachable(v reflect.Value, seen map[uintptr]bool) int {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() || seen[v.Pointer()] || v.Type() == reflect.TypeFor[*Candidate]() {
			return 0
		}
		seen[v.Pointer()] = true
		return int(v.Type().Elem().Size()) + reachable(v.Elem(), seen)
	case reflect.String:
		return v.Len()
	case reflect.Slice:
		if v.IsNil() || seen[v.Pointer()] {
			return 0
		}
		seen[v.Pointer()] = true
		n := v.Cap() * int(v.Type().Elem().Size())
		for i := range v.Len() {
			n += reachable(v.Index(i), seen)
		}
		return n
	case reflect.Struct:
		n := 0
		for i := range v.NumField() {
			n += reachable(v.Field(i), seen)
		}
		return n
	case reflect.Map, reflect.Interface, reflect.Func, reflect.Chan:
		panic("not looked into: " + v.Type().String())
	}
	return 0
}

// TestLedger: what a portion shares with another of the same owner cancels, down
// to a leaf that both hold a different number of times.
func TestLedger(t *testing.T) {
	s := market(t, 1, 1, 0)
	c, d := s.Chassis[0], s.Donors[0]
	price := &Leaf{Path: c.node.Path + ".price", Span: span(1000, 2000)}
	hours := &Leaf{Path: c.node.Path + ".hours", Span: span(2, 3)}
	cost := func(times int64, more ...Term) Cost {
		return append(Cost{{HeadPurchase, price, nil, 1}, {HeadHours, hours, s.Intent.Rate, times}}, more...)
	}
	books := s.ledger()
	x, y := &Combination{ID: "x", Chassis: c, Donor: d}, &Combination{ID: "y", Chassis: c, Donor: d}
	books.enter(x, cost(2))
	books.enter(y, cost(1))
	require.Equal(t, 1, books.below(x, []*Combination{y}))
	require.Zero(t, books.below(y, []*Combination{x}))
	require.Zero(t, books.below(x, []*Combination{x}), "the same is not less")
}

func span(low, high int64) Span { return Span{big.NewRat(low, 1), big.NewRat(high, 1)} }

// TestSort: what one rule rules out at one line is one reason, each with its own
// numbers; a donor at fault alone is told once.
func TestSort(t *testing.T) {
	out := func(id, alone, text string, line int) *Combination {
		return &Combination{ID: id, Out: &Reason{Rule: "mass/front_axle_rating", Alone: alone, Text: text, At: manifest.Position{Line: line}}}
	}
	r := &Result{}
	r.sort([]*Combination{
		out("a+x", "", "found 1400 kg", 9), out("a+y", "", "found 1500 kg", 9), out("b+y", "", "found 1500 kg", 30),
		out("a+z", "z", "one", 50), out("b+z", "z", "one", 50), {ID: "b+x"},
	})
	require.Len(t, r.Ranked, 1)
	require.Len(t, r.Ruled, 3)
	require.Equal(t, []string{"a+x", "a+y"}, r.Ruled[0].Who)
	require.Equal(t, []string{"found 1400 kg", "found 1500 kg"}, r.Ruled[0].Own)
	require.True(t, r.Ruled[0].Differs())
	require.False(t, r.Ruled[1].Differs())
	require.Equal(t, []string{"z"}, r.Ruled[2].Who)
}
