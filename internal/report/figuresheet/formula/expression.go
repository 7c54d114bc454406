package formula

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"trialfit/internal/quantity"
)

// node is a part of an expression.
type node interface {
	// eval is NaN where a symbol has no value.
	eval(scope) float64
	// symbols adds those that the formula has to define.
	symbols(list []string) []string
}

// scope is what an expression is evaluated with.
type scope struct {
	inputs      map[string]float64
	definitions map[string]node
	// zero is added to temperatures that the formula names.
	zero float64
	// grown takes constants in smaller units, as dimension.go has them.
	grown bool
}

type (
	constant struct {
		x           float64
		temperature bool
		si          string // unit, "" for a bare number
	}
	input  string
	symbol string
	call   struct {
		f    func(x, y float64) float64
		x, y node
	}
)

func (c constant) eval(s scope) float64 {
	x := c.x
	if c.temperature {
		x += s.zero
	}
	if f, ok := size(c.si); ok && s.grown {
		x *= f
	}
	return x
}
func (constant) symbols(list []string) []string { return list }

func (i input) eval(s scope) float64 {
	if x, ok := s.inputs[string(i)]; ok {
		return x
	}
	return math.NaN()
}
func (input) symbols(list []string) []string { return list }

func (y symbol) eval(s scope) float64 {
	if d, ok := s.definitions[string(y)]; ok {
		return d.eval(s)
	}
	return math.NaN()
}
func (y symbol) symbols(list []string) []string { return append(list, string(y)) }

func (c call) eval(s scope) float64           { return c.f(c.x.eval(s), c.y.eval(s)) }
func (c call) symbols(list []string) []string { return c.y.symbols(c.x.symbols(list)) }

// nothing is the operand that an operation has no use for.
var nothing = constant{}

var (
	add = func(x, y float64) float64 { return x + y }
	sub = func(x, y float64) float64 { return x - y }
	mul = func(x, y float64) float64 { return x * y }
	div = func(x, y float64) float64 { return x / y }
)

// functions take the factor that follows them.
var functions = map[string]func(float64) float64{
	"√": math.Sqrt, "ln": math.Log, "exp": math.Exp, "sin": math.Sin, "cos": math.Cos, "tan": math.Tan,
	"arcsin": math.Asin, "arccos": math.Acos, "arctan": math.Atan,
}

// parser reads one expression by descent.
type parser struct {
	text    string
	at      int
	names   []string // of inputs
	defined []string
	uses    []use
}

// parse reads the whole text; ok is false where some of it is no arithmetic.
func (p *parser) parse() (node, bool) {
	n, ok := p.sum()
	p.space()
	return n, ok && p.at == len(p.text)
}

func (p *parser) space() {
	for p.at < len(p.text) && p.text[p.at] == ' ' {
		p.at++
	}
}

// take steps over the first of the signs that comes next.
func (p *parser) take(signs ...string) string {
	p.space()
	for _, s := range signs {
		if strings.HasPrefix(p.text[p.at:], s) {
			p.at += len(s)
			return s
		}
	}
	return ""
}

func (p *parser) sum() (node, bool) {
	left, ok := p.product()
	for ok {
		sign := p.take("+", "−", "-")
		if sign == "" {
			break
		}
		var right node
		right, ok = p.product()
		f := sub
		if sign == "+" {
			f = add
		}
		left = call{f, left, right}
	}
	return left, ok
}

func (p *parser) product() (node, bool) {
	left, ok := p.signed()
	for ok {
		sign := p.take("·", "×", "*", "/")
		if sign == "" {
			break
		}
		var right node
		right, ok = p.signed()
		f := mul
		if sign == "/" {
			f = div
		}
		left = call{f, left, right}
	}
	return left, ok
}

func (p *parser) signed() (node, bool) {
	if p.take("−", "-") != "" {
		n, ok := p.power()
		return call{sub, nothing, n}, ok
	}
	return p.power()
}

func (p *parser) power() (node, bool) {
	base, ok := p.atom()
	if !ok {
		return nil, false
	}
	for i, sign := range []string{"²", "³", "⁴", "⁵"} {
		if strings.HasPrefix(p.text[p.at:], sign) {
			p.at += len(sign)
			return call{math.Pow, base, constant{x: float64(i + 2)}}, true
		}
	}
	if strings.HasPrefix(p.text[p.at:], "^") {
		p.at++
		exponent, ok := p.signed()
		return call{math.Pow, base, exponent}, ok
	}
	return base, true
}

func (p *parser) atom() (node, bool) {
	switch p.take("(", "|") {
	case "(":
		n, ok := p.sum()
		return n, ok && p.take(")") != ""
	case "|":
		n, ok := p.sum()
		return call{func(x, _ float64) float64 { return math.Abs(x) }, n, nothing}, ok && p.take("|") != ""
	}
	if n, ok := p.number(); ok {
		return n, true
	}
	return p.word()
}

// word reads what stands here as a whole: a function, a name, a symbol that the
// formula defines, or else a phrase.
func (p *parser) word() (node, bool) {
	rest := p.text[p.at:]
	for name, f := range functions {
		if after, ok := strings.CutPrefix(rest, name); ok && (name == "√" || !goesOn(after)) {
			p.at += len(name)
			p.space()
			of, ok := p.power()
			return call{func(x, _ float64) float64 { return f(x) }, of, nothing}, ok
		}
	}
	longest := ""
	for _, name := range slices.Concat(p.names, p.defined, []string{"π"}) {
		after, ok := strings.CutPrefix(rest, name)
		if ok && len(name) > len(longest) && !goesOn(after) && !goesOn(strings.TrimPrefix(after, " ")) {
			longest = name
		}
	}
	if longest == "" {
		return p.phrase()
	}
	from := p.at
	p.at += len(longest)
	switch {
	case slices.Contains(p.names, longest):
		p.uses = append(p.uses, use{from: from, to: p.at, key: longest})
		return input(longest), true
	case slices.Contains(p.defined, longest):
		return symbol(longest), true
	}
	return constant{x: math.Pi}, true
}

var words = regexp.MustCompile(`^[\pL_'′]+(?:[ -][\pL_'′]+)*`)

// phrase reads words that must stand for an input.
func (p *parser) phrase() (node, bool) {
	found := words.FindString(p.text[p.at:])
	if found == "" || strings.Contains(found, "Σ") {
		return nil, false
	}
	p.uses = append(p.uses, use{p.at, p.at + len(found), found, true})
	p.at += len(found)
	return input(found), true
}

// goesOn says whether a name is only the beginning of a longer one.
func goesOn(rest string) bool {
	r, _ := utf8.DecodeRuneInString(rest)
	return rest != "" && (unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune("_'′₀₁₂₃₄₅₆₇₈₉", r))
}

var digits = regexp.MustCompile(`^\d+( \d{3})*(\.\d+)?`)

// number reads a constant, with its unit where it has one.
func (p *parser) number() (node, bool) {
	written := digits.FindString(p.text[p.at:])
	if written == "" {
		return nil, false
	}
	x, err := strconv.ParseFloat(strings.ReplaceAll(written, " ", ""), 64)
	if err != nil {
		return nil, false
	}
	p.at += len(written)
	spaced := strings.TrimPrefix(p.text[p.at:], " ")
	for _, u := range units() {
		if after, ok := strings.CutPrefix(spaced, u.symbol); ok && !goesOn(after) {
			p.at = len(p.text) - len(after)
			return constant{x*u.factor + u.offset, u.si == "K", u.si}, true
		}
	}
	return constant{x: x}, true
}

type unit struct {
	symbol         string
	factor, offset float64
	si             string
}

// units are those that constants are written in, the longest symbol first.
var units = sync.OnceValue(func() []unit {
	known := map[string]unit{}
	for _, u := range []unit{ // that no value of a manifest has
		{"nΩ·m", 1e-9, 0, "Ω·m"}, {"m/s²", 1, 0, "m/s²"}, {"K/m", 1, 0, "K/m"},
		{"J/(kg·K)", 1, 0, "J/(kg·K)"}, {"kJ/(kg·K)", 1e3, 0, "J/(kg·K)"}, {"MJ/(m³·K)", 1e6, 0, "J/(m³·K)"},
		{"MJ/kg", 1e6, 0, "J/kg"}, {"MJ/L", 1e9, 0, "J/m³"},
	} {
		known[u.symbol] = u
	}
	for _, kind := range quantity.Kinds() {
		for _, symbol := range quantity.Symbols(kind) {
			if _, seen := known[symbol]; seen || kind == quantity.Conductor {
				continue
			}
			// Temperatures have an offset: two points tell both.
			zero, err := quantity.Parse("0 "+symbol, kind)
			if err != nil {
				zero = quantity.Value{}
			}
			one, err := quantity.Parse("1 "+symbol, kind)
			if err != nil {
				continue
			}
			offset := 0.0
			if zero.Low != nil {
				offset, _ = zero.Floats()
			}
			factor, _ := one.Floats()
			known[symbol] = unit{symbol, factor - offset, offset, quantity.SI(kind)}
		}
	}
	return slices.SortedFunc(maps.Values(known), func(a, b unit) int {
		if len(a.symbol) != len(b.symbol) {
			return len(b.symbol) - len(a.symbol)
		}
		return strings.Compare(a.symbol, b.symbol)
	})
})
