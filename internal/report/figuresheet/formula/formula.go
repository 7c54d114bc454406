// Package formula puts numbers into the text of a figure's formula.
//
// A formula is written for people. It is read here as arithmetic, and what was
// read is trusted only where it gives the figure's own value at several points
// of its range. So a phrase such as "rating of the fuse" is the input that makes
// the formula true; and words that are no arithmetic, sums over lists and
// symbols that stand for something else lead to no reading, never to a wrong one.
package formula

import (
	"slices"
	"strings"

	"trialfit/internal/figures"
)

// Reading is a formula that was understood.
type Reading struct {
	clauses []clause
	// phrases gives the input that words stand for.
	phrases map[string]string
	known   []sample
}

// clause is one equation of a formula, "ΔU = I·R", or a bare expression.
type clause struct {
	symbol string // left of the sign of equality, "" for a bare expression
	text   string // right of it
	uses   []use
	value  node
}

// use is the place in the text of a clause where an input stands, by name or
// in words.
type use struct {
	from, to int
	key      string
	phrase   bool
}

// Read reads the formula of f. It returns nil where the formula is not
// arithmetic or does not give the value of f.
func Read(f *figures.Figure) *Reading {
	names := scalars(f)
	defined := symbols(f.Formula)
	var read []clause
	for _, text := range clauses(f.Formula) {
		if c, ok := parseClause(text, names, defined); ok {
			read = append(read, c)
		}
	}
	if len(read) == 0 {
		return nil
	}
	known := samples(f)
	if len(known) < leastSamples {
		return nil
	}
	for i, main := range read {
		r := reading(main, slices.Delete(slices.Clone(read), i, i+1))
		if r == nil {
			continue
		}
		for _, phrases := range r.guesses(f, names) {
			if r.phrases, r.known = phrases, known; r.gives(known) {
				return r
			}
		}
	}
	return nil
}

// PutIn is the formula with what value returns in the place of each input.
func (r *Reading) PutIn(value func(input string) string) string {
	parts := make([]string, len(r.clauses))
	for i, c := range r.clauses {
		var b strings.Builder
		if c.symbol != "" {
			b.WriteString(c.symbol + equals)
		}
		at := 0
		for _, u := range c.uses {
			b.WriteString(c.text[at:u.from] + value(r.input(u)))
			at = u.to
		}
		parts[i] = b.String() + c.text[at:]
	}
	return strings.Join(parts, ", ")
}

func (r *Reading) input(u use) string {
	if u.phrase {
		return r.phrases[u.key]
	}
	return u.key
}

// reading is the main clause with the definitions that it needs, in their
// order; nil where they go round in a circle or one could not be read.
func reading(main clause, others []clause) *Reading {
	needed := map[string]bool{}
	var need func(c clause, depth int) bool
	need = func(c clause, depth int) bool {
		for _, symbol := range c.value.symbols(nil) {
			i := slices.IndexFunc(others, func(o clause) bool { return o.symbol == symbol })
			if i < 0 || depth == 0 {
				return false
			}
			needed[symbol] = true
			if !need(others[i], depth-1) {
				return false
			}
		}
		return true
	}
	if !need(main, len(others)) {
		return nil
	}
	r := &Reading{clauses: []clause{main}}
	for _, c := range others {
		if needed[c.symbol] {
			r.clauses = append(r.clauses, c)
		}
	}
	return r
}

// clauses cuts a formula at the commas and semicolons outside parentheses.
func clauses(formula string) []string {
	var list []string
	depth, from := 0, 0
	for i, c := range formula {
		switch c {
		case '(':
			depth++
		case ')':
			depth--
		case ',', ';':
			if depth == 0 && strings.HasPrefix(formula[i+1:], " ") {
				list = append(list, formula[from:i])
				from = i + 1
			}
		}
	}
	return append(list, formula[from:])
}

const equals = " = "

// symbols are those that a formula defines itself.
func symbols(formula string) []string {
	var list []string
	for _, text := range clauses(formula) {
		if symbol, _, ok := strings.Cut(text, equals); ok && strings.Count(text, equals) == 1 {
			list = append(list, strings.TrimSpace(symbol))
		}
	}
	return list
}

func parseClause(text string, names, defined []string) (clause, bool) {
	c := clause{text: strings.TrimSpace(text)}
	if symbol, right, ok := strings.Cut(c.text, equals); ok {
		c.symbol, c.text = symbol, right
	}
	p := parser{text: c.text, names: names, defined: slices.DeleteFunc(slices.Clone(defined), func(s string) bool { return s == c.symbol })}
	value, ok := p.parse()
	if !ok {
		return clause{}, false
	}
	c.value, c.uses = value, p.uses
	return c, true
}

// scalars are the names of the inputs that are one number each.
func scalars(f *figures.Figure) []string {
	var names []string
	for _, in := range f.Inputs {
		if !column(f, in) {
			names = append(names, in.Name)
		}
	}
	return names
}

// column says whether an input has a value for each item of a list.
func column(f *figures.Figure, in figures.Input) bool {
	return strings.Contains(f.Path(&in, subject(f)), "*")
}

// subject gives each list of a figure the one item of a point.
func subject(f *figures.Figure) []string {
	return slices.Repeat([]string{item}, strings.Count(f.Per, "*")+1)
}
