package figuresheet

import (
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"trialfit/internal/figures"
	"trialfit/internal/input"
	"trialfit/internal/quantity"
	"trialfit/internal/report/figuresheet/formula"
	"trialfit/internal/schema"
)

// numbers is the formula of a figure with its numbers put in. Where the text of
// the formula can't be read as arithmetic that gives the figure, the numbers
// are listed by name instead.
func (s Sheet) numbers(e entry) string {
	if e.state != computed {
		return ""
	}
	if r := formula.Read(e.figure); r != nil {
		plain := s.plainUnits(e, r)
		return r.PutIn(func(name string) string {
			in := &e.figure.Inputs[slices.IndexFunc(e.figure.Inputs, func(in figures.Input) bool { return in.Name == name })]
			return enclosed(s.amount(in, leaves(e.result, in)[0], plain))
		})
	}
	var parts []string
	for i := range e.figure.Inputs {
		in := &e.figure.Inputs[i]
		var values []string
		for _, leaf := range leaves(e.result, in) {
			values = append(values, s.amount(in, leaf, nil))
		}
		if len(values) == 0 {
			values = []string{"none"}
		}
		parts = append(parts, name(e.figure, in)+" = "+strings.Join(values, ", "))
	}
	return "with " + strings.Join(parts, "; ")
}

// enclosed keeps a value together where it stands in a formula.
func enclosed(value string) string {
	if strings.Trim(value, "0123456789.") == "" && !strings.Contains(value, "..") {
		return value
	}
	return "(" + value + ")"
}

// leaves returns those of an input, in manifest order.
func leaves(r *figures.Result, in *figures.Input) []figures.Leaf {
	pattern := strings.Split(r.Figure.Path(in, r.IDs), ".")
	var list []figures.Leaf
	for _, leaf := range r.Inputs {
		path := strings.Split(leaf.Path, ".")
		if slices.EqualFunc(path, pattern, func(step, want string) bool { return step == want || want == "*" }) {
			list = append(list, leaf)
		}
	}
	return list
}

// plainUnits are those in which numbers stand in arithmetic that a person can
// follow with a calculator, where the builder's would lead astray: 20 °C are no
// 20, neither revolutions nor degrees are radians, and a formula with a bare
// constant holds in SI units only. It is never nil.
func (s Sheet) plainUnits(e entry, r *formula.Reading) map[quantity.Kind]string {
	f := e.figure
	plain := map[quantity.Kind]string{quantity.Conductor: "mm²"}
	inputs, units := map[quantity.Kind][]string{}, map[string]string{}
	for i := range f.Inputs {
		in := &f.Inputs[i]
		for _, leaf := range leaves(e.result, in) {
			if kind := s.kind(leaf.Path); kind != "" {
				inputs[kind] = append(inputs[kind], in.Name)
				units[in.Name] = quantity.SI(kind)
			}
		}
	}
	if !r.Consistent(units, quantity.SI(f.Kind)) {
		for _, kind := range quantity.Kinds() {
			plain[kind] = quantity.SI(kind)
		}
	}
	plain[quantity.Temperature], plain[quantity.TemperatureDifference] = "°C", "K"
	if !r.OnlyDifferences(inputs[quantity.Temperature]) {
		plain[quantity.Temperature] = "K"
	}
	for _, kind := range []quantity.Kind{quantity.RotationalSpeed, quantity.Angle} {
		if kind == quantity.Angle && trigonometry.MatchString(f.Formula) {
			delete(plain, kind)
			continue
		}
		degree, ok := r.Degree(inputs[kind])
		if same := ok && (degree == 0 || degree == 1 && f.Kind == kind); !same {
			plain[kind] = quantity.SI(kind)
		}
	}
	return plain
}

// kind is that of the number at a manifest path, "" where there is none.
func (s Sheet) kind(path string) quantity.Kind {
	if kind, _, ok := input.Quantity(s.Build.Report.Manifest, path); ok {
		return kind
	}
	if n := s.Build.Report.Manifest.Node(path); n != nil {
		return n.Shape.Quantity
	}
	return ""
}

var trigonometry = regexp.MustCompile(`sin|cos|tan`)

// amount prints what a figure takes for a leaf; as a number, and in a plain unit
// where there is one, if it stands in arithmetic: plain is nil if not.
func (s Sheet) amount(in *figures.Input, leaf figures.Leaf, plain map[quantity.Kind]string) string {
	m := s.Build.Report.Manifest
	if n := m.Node(leaf.Path); n != nil && n.Value != nil && n.Shape.Leaf == schema.LeafDate {
		return n.Value.Text
	}
	if leaf.Path == figures.Today {
		return s.Build.Report.Verdict.Today
	}
	kind, unit, ok := input.Quantity(m, leaf.Path)
	switch {
	case leaf.State == figures.None && in.WhenNone != nil:
		if kind = s.kind(leaf.Path); kind == "" {
			kind = quantity.Ratio
		}
		return quantity.Print(*in.WhenNone, *in.WhenNone, kind, "")
	case leaf.Word != "" && plain != nil:
		return quantity.Print(in.Choices[leaf.Word], in.Choices[leaf.Word], quantity.Ratio, "")
	case leaf.Word != "":
		return leaf.Word
	case !ok:
		return quantity.Print(leaf.Low, leaf.High, quantity.Ratio, "")
	}
	if u, ok := plain[kind]; ok {
		unit = u
	}
	return quantity.Print(leaf.Low, leaf.High, kind, unit)
}

// name is what an input is called: its symbol where the formula has it, else
// the title of its place in the manifest, or the path where titles are alike.
func name(f *figures.Figure, in *figures.Input) string {
	if mentions(f.Formula, in.Name) {
		return in.Name
	}
	title := noun(in)
	for i := range f.Inputs {
		if other := &f.Inputs[i]; other.Path != in.Path && noun(other) == title {
			return in.Path
		}
	}
	return title
}

func noun(in *figures.Input) string {
	shape, err := schema.Manifest().At(in.Path)
	if err != nil || shape.Title == "" {
		return in.Path
	}
	return shape.Noun()
}

// mentions says whether a symbol stands in a formula as a whole.
func mentions(formula, symbol string) bool {
	for rest := formula; ; {
		i := strings.Index(rest, symbol)
		if i < 0 {
			return false
		}
		before, _ := utf8.DecodeLastRuneInString(rest[:i])
		after, _ := utf8.DecodeRuneInString(rest[i+len(symbol):])
		if !part(before) && !part(after) {
			return true
		}
		rest = rest[i+len(symbol):]
	}
}

func part(r rune) bool {
	return unicode.IsLetter(r) || unicode.IsDigit(r) || strings.ContainsRune("_'′", r)
}
