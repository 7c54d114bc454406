package formula

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strings"

	"trialfit/internal/figures"
)

const (
	triedSamples = 9
	leastSamples = 3
	closest      = 2e-3 // formulas show their constants rounded
	mostPhrases  = 5
	mostFree     = 6 // inputs that phrases can stand for
)

// guesses are the ways to take the phrases of a formula for inputs that it does
// not name, those first whose words agree best with the paths of the inputs.
func (r *Reading) guesses(f *figures.Figure, names []string) []map[string]string {
	var phrases []string
	free := slices.Clone(names)
	for _, c := range r.clauses {
		for _, u := range c.uses {
			if !u.phrase {
				free = slices.DeleteFunc(free, func(name string) bool { return name == u.key })
			} else if !slices.Contains(phrases, u.key) {
				phrases = append(phrases, u.key)
			}
		}
	}
	if len(phrases) > mostPhrases || len(free) > mostFree {
		return nil
	}
	paths := map[string]string{}
	for _, in := range f.Inputs {
		paths[in.Name] = in.Path
	}
	type guess struct {
		phrases map[string]string
		score   int
	}
	var all []guess
	var extend func(taken []string, score int)
	extend = func(taken []string, score int) {
		if len(taken) == len(phrases) {
			g := guess{map[string]string{}, score}
			for i, phrase := range phrases {
				g.phrases[phrase] = taken[i]
			}
			all = append(all, g)
			return
		}
		for _, name := range free {
			if !slices.Contains(taken, name) {
				extend(append(slices.Clone(taken), name), score+common(phrases[len(taken)], paths[name]))
			}
		}
	}
	extend(nil, 0)
	slices.SortStableFunc(all, func(a, b guess) int { return cmp.Compare(b.score, a.score) })
	out := make([]map[string]string, len(all))
	for i, g := range all {
		out[i] = g.phrases
	}
	return out
}

// common counts the words of a phrase that are in a manifest path too, in the
// singular or the plural.
func common(phrase, path string) int {
	n := 0
	words := strings.FieldsFunc(path, func(r rune) bool { return r == '.' || r == '_' })
	for _, word := range strings.FieldsFunc(phrase, func(r rune) bool { return r == ' ' || r == '-' }) {
		if slices.ContainsFunc(words, func(w string) bool { return w == word || w == word+"s" || w+"s" == word }) {
			n++
		}
	}
	return n
}

// gives says whether the reading has the values of the figure.
func (r *Reading) gives(known []sample) bool {
	for _, s := range known {
		if !near(r.at(s.inputs, 0), s.value) {
			return false
		}
	}
	return true
}

func near(got, want float64) bool {
	return math.Abs(got-want) <= closest*math.Max(math.Abs(got), math.Abs(want))
}

// at is the value of the formula; zero is added to the temperatures in its text.
func (r *Reading) at(inputs map[string]float64, zero float64) float64 {
	return r.eval(scope{inputs: maps.Clone(inputs), zero: zero})
}

// eval completes a scope, whose inputs it may write to, and evaluates in it.
func (r *Reading) eval(s scope) float64 {
	s.definitions = map[string]node{}
	for _, c := range r.clauses[1:] {
		s.definitions[c.symbol] = c.value
	}
	for phrase, name := range r.phrases {
		s.inputs[phrase] = s.inputs[name]
	}
	return r.clauses[0].value.eval(s)
}

// OnlyDifferences says whether temperatures may be counted from any zero: the
// inputs named, and those in the text of the formula.
func (r *Reading) OnlyDifferences(temperatures []string) bool {
	for _, s := range r.known {
		const zero = 1000
		moved := maps.Clone(s.inputs)
		for _, name := range temperatures {
			moved[name] += zero
		}
		if !near(r.at(moved, zero), s.value) {
			return false
		}
	}
	return true
}

// Degree is the power by which the value grows with all the inputs named, so
// that 0 stands for a ratio of them. It is not ok where there is none.
func (r *Reading) Degree(names []string) (degree int, ok bool) {
	for i, s := range r.known {
		grown := maps.Clone(s.inputs)
		for _, name := range names {
			grown[name] *= 2
		}
		power := math.Log2(r.at(grown, 0) / s.value)
		if i == 0 && !math.IsNaN(power) && !math.IsInf(power, 0) {
			degree = int(math.Round(power))
		}
		if !(math.Abs(power-float64(degree)) < 0.01) {
			return 0, false
		}
	}
	return degree, true
}

// sample is the value of a figure with each input at one exact value.
type sample struct {
	inputs map[string]float64 // by name
	value  float64
}

// samples evaluates f at points of its range where it has a value.
func samples(f *figures.Figure) []sample {
	var all []sample
	for i := range triedSamples {
		p := pointOf(f, i)
		results, _ := figures.Evaluate(f, p)
		if len(results) != 1 || !results[0].Ok() || results[0].Low == 0 {
			continue
		}
		s := sample{map[string]float64{}, results[0].Low}
		for _, in := range f.Inputs {
			s.inputs[in.Name] = p.numbers[in.Path]
		}
		all = append(all, s)
	}
	return all
}

// point gives each input of a figure one exact value.
type point struct {
	numbers map[string]float64 // by declared path
	words   map[string]string
}

// pointOf spreads the inputs over their ranges, no two alike.
func pointOf(f *figures.Figure, i int) point {
	p := point{map[string]float64{}, map[string]string{}}
	for k, in := range f.Inputs {
		if _, seen := p.numbers[in.Path]; seen {
			continue
		}
		if len(in.Choices) > 0 {
			var list []string
			for word := range in.Choices {
				list = append(list, word)
			}
			slices.Sort(list)
			word := list[(i+k)%len(list)]
			p.words[in.Path], p.numbers[in.Path] = word, in.Choices[word]
			continue
		}
		// Multiples of the golden section never come near each other.
		_, share := math.Modf(float64((k+1)*(i+3)) * 0.6180339887)
		low, high := in.Valid.Low, in.Valid.High
		switch {
		case low == high:
			p.numbers[in.Path] = 0.5 + 4*share
		case low > 0:
			p.numbers[in.Path] = low * math.Pow(high/low, share)
		default:
			p.numbers[in.Path] = low + (high-low)*share
		}
	}
	return p
}

// item is the id of the one item that each list has.
const item = "#"

func (p point) Leaf(path string) figures.Leaf {
	path = strings.TrimSuffix(strings.ReplaceAll(path+".", "."+item+".", ".*."), ".")
	if word, ok := p.words[path]; ok {
		return figures.Leaf{State: figures.Given, Word: word}
	}
	x, ok := p.numbers[path]
	if !ok {
		return figures.Leaf{}
	}
	return figures.Leaf{State: figures.Given, Low: x, High: x}
}

func (p point) IDs(string) ([]string, figures.State) { return []string{item}, figures.Given }
